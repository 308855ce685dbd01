#include "app-qml/view/past_jobs_model.h"

#include <QFileInfo>
#include <QQmlEngine>
#include <algorithm>

#include "app-qml/view/app_device.h"
#include "app-qml/view/csv_words.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/past_jobs_words.h"
#include "app-qml/view/provided.h"
#include "app-qml/view/word_list.h"
#include "core/base/localised.h"
#include "core/desk/player_record.h"

namespace {

using weavelog::MatchBand;
using weavelog::Unit;

constexpr std::size_t shownRows = 30;
constexpr std::size_t shownFaults = 100;
constexpr std::size_t firstValues = 3;
constexpr std::size_t storedTogether = 20;  // drafts between two looks at the screen

// What one file holds of a column, for whoever has to say what it is.
QString firstOf(const weavelog::CsvTable& table, std::size_t column) {
  QStringList out;
  for (const auto& row : table.rows) {
    if (out.size() == static_cast<qsizetype>(firstValues)) break;
    const QString value = column < row.fields.size() ? qtext(row.fields[column]).simplified().left(40) : QString();
    if (!value.isEmpty() && !out.contains(value)) out.append(value);
  }
  return out.join(QStringLiteral(" · "));
}

}  // namespace

PastJobsModel::PastJobsModel(Work& work, QObject* parent) : QObject(parent), work_(work) {
  options_.leave_doubts = true;
  readImports();
}

PastJobsModel* PastJobsModel::create(QQmlEngine* engine, QJSEngine*) {
  return new PastJobsModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

void PastJobsModel::end(Result result, const QString& told) {
  result_ = result;
  told_ = told;
  emit changed();
}

void PastJobsModel::leave() {
  if (storing_) return;
  ++choice_;
  file_.clear();
  bytes_.reset();
  look_.reset();
  options_ = {};
  options_.leave_doubts = true;
  trouble_ = None;
  troubleText_.clear();
  columns_.clear();
  rows_.clear();
  faults_.clear();
  answers_.clear();
  readImports();
  end(Nothing, {});
}

void PastJobsModel::choose(const QUrl& file) {
  if (storing_) return;
  leave();
  const QString path = file.isLocalFile() ? file.toLocalFile() : file.toString();
  file_ = QFileInfo(path).fileName();
  beside_.work(
      [path = path.toStdString(), most = options_.csv.limits.file_bytes] {
        auto bytes = weavelog::read_text_file(path, most);
        return bytes ? weavelog::Outcome<Bytes>(std::make_shared<const std::string>(std::move(*bytes)))
                     : weavelog::Outcome<Bytes>(weavelog::fail(bytes.error()));
      },
      [this, choice = choice_](const weavelog::Outcome<Bytes>& bytes) {
        if (choice != choice_) return emit changed();  // somebody left, or chose another
        if (bytes) {
          bytes_ = *bytes;
          return look();
        }
        trouble_ = NoFile;
        troubleText_ = bytes.error().code == weavelog::FaultCode::io ? tr("Choose it again, or copy it to this device first.")
                                                                     : tr("The file is too large. Split it, or leave out what is not needed.");
        emit changed();
      });
  emit changed();
}

PastJobsModel::Look PastJobsModel::looked(const weavelog::Ledger& ledger, const std::string& bytes, weavelog::PastJobsOptions options,
                                          const std::string& name) {
  Look out;
  auto table = weavelog::read_csv_table(bytes, options.csv, name);
  if (!table) {
    out.noTable = table.error();
    out.trouble = NoTable;
    return out;
  }
  out.table = std::move(*table);
  out.uses = weavelog::recognised_columns(out.table.header);
  if (options.meanings)
    for (std::size_t i = 0; i < out.uses.size() && i < options.meanings->size(); ++i) {
      const std::string& ours = (*options.meanings)[i];
      out.uses[i] = {out.uses[i].header, ours, weavelog::unit_in_header(out.uses[i].header, ours)};
    }
  const auto has = [&](std::initializer_list<const char*> names) {
    return std::any_of(out.uses.begin(), out.uses.end(),
                       [&](const auto& use) { return std::find(names.begin(), names.end(), use.ours) != names.end(); });
  };
  // What is missing is asked for in words of its own, and needs no reading.
  if (!has({"family_name", "name", "native_name"}))
    out.trouble = NoNames;
  else if (!has({"mains_string", "string", "mains_tension", "tension"}))
    out.trouble = NoStrings;
  if (out.trouble != None) return out;
  auto jobs = weavelog::past_jobs_of(out.table, options, name);
  if (!jobs) {
    out.fault = jobs.error();
    out.trouble = Other;
    return out;
  }
  out.jobs = std::move(*jobs);
  out.plan = weavelog::plan_past_jobs(ledger, out.jobs);
  return out;
}

void PastJobsModel::look() {
  answers_.clear();
  options_.last_day = weavelog::last_past_day(work_.now());
  beside_.work([ledger = &work_.ledger(), bytes = bytes_, options = options_,
                name = file_.toStdString()] { return std::make_shared<const Look>(looked(*ledger, *bytes, options, name)); },
               [this, choice = choice_](const std::shared_ptr<const Look>& look) {
                 if (choice != choice_) return emit changed();
                 look_ = look->trouble == None ? look : nullptr;
                 take(*look);
               });
  emit changed();
}

void PastJobsModel::take(const Look& look) {
  trouble_ = look.trouble;
  // Of the columns alone: everything else is asked about.
  troubleText_ = look.noTable ? csvFaultText(*look.noTable) : look.fault ? tr("Two columns are taken for the same. Say which of them it is.") : QString();
  columns_.clear();
  for (std::size_t i = 0; i < look.uses.size(); ++i)
    columns_.append(
        QVariantMap{{QStringLiteral("header"), qtext(look.uses[i].header)},
                    {QStringLiteral("first"), firstOf(look.table, i)},
                    {QStringLiteral("ours"), qtext(look.uses[i].ours)},
                    {QStringLiteral("unit"), look.uses[i].unit == Unit::none ? QString() : qtext(weavelog::symbol_of(look.uses[i].unit))}});
  rows_.clear();
  faults_.clear();
  const auto& language = work_.language();
  for (const auto& row : look.jobs.rows) {
    if (static_cast<std::size_t>(rows_.size()) == shownRows) break;
    const auto pair = [](const QString& mains, const QString& crosses) {
      return crosses.isEmpty() || crosses == mains ? mains : mains + QStringLiteral(" / ") + crosses;
    };
    const QString detail = joined(
        {qtext(row.date), qtext(row.event_name), racketText(row.racket), pair(qtext(row.agreed.mains_string), qtext(row.agreed.crosses_string)),
         pair(saidText(language, row.agreed.mains_tension), saidText(language, row.agreed.crosses_tension))},
        QStringLiteral(" · "));
    rows_.append(QVariantMap{{QStringLiteral("line"), static_cast<int>(row.line)},
                             {QStringLiteral("name"), qtext(weavelog::listed_name(row.person))},
                             {QStringLiteral("detail"), detail}});
  }
  auto faults = look.jobs.faults;  // as the file has them: broken rows were found first
  std::stable_sort(faults.begin(), faults.end(), [](const auto& a, const auto& b) { return a.line < b.line; });
  for (const auto& fault : faults) {
    if (static_cast<std::size_t>(faults_.size()) == shownFaults) break;
    faults_.append(QVariantMap{{QStringLiteral("line"), static_cast<int>(fault.line)}, {QStringLiteral("text"), pastFaultText(fault)}});
  }
  emit changed();
}

void PastJobsModel::setEncoding(int encoding) {
  const auto wanted = static_cast<weavelog::TextEncoding>(encoding);
  if (wanted == options_.csv.encoding || !bytes_ || storing_) return;
  options_.csv.encoding = wanted;
  options_.meanings.reset();
  look();
}

void PastJobsModel::setMeaning(int column, const QString& ours) {
  if (column < 0 || column >= columns_.size() || !bytes_ || storing_) return;
  std::vector<std::string> meanings;
  for (const QVariant& one : columns_) {
    std::string held = one.toMap().value(QStringLiteral("ours")).toString().toStdString();
    meanings.push_back(held == ours.toStdString() ? std::string() : std::move(held));
  }
  meanings[static_cast<std::size_t>(column)] = ours.toStdString();
  options_.meanings = std::move(meanings);
  look();
}

void PastJobsModel::setUnit(const QString& unit) {
  const auto wanted = weavelog::unit_from(unit.toStdString());
  if (!wanted || wanted == options_.unit || !bytes_ || storing_) return;
  options_.unit = wanted;
  look();
}

void PastJobsModel::setDayOrder(int order) {
  const auto wanted = static_cast<weavelog::DayOrder>(order);
  if (wanted == options_.day_order || !bytes_ || storing_) return;
  options_.day_order = wanted;
  look();
}

QVariantList PastJobsModel::meanings() const {
  QVariantList out;
  const auto add = [&](std::string_view ours) {
    out.append(QVariantMap{{QStringLiteral("value"), qtext(ours)}, {QStringLiteral("text"), pastMeaning(ours)}});
  };
  add("");
  for (const std::string_view ours : weavelog::past_job_columns()) add(ours);
  return out;
}

QString PastJobsModel::unit() const {
  return look_ && look_->jobs.unit != Unit::none ? qtext(weavelog::symbol_of(look_->jobs.unit)) : QString();
}

PastJobsModel::Doubt PastJobsModel::unitDoubt() const {
  if (!look_) return Clear;
  if (look_->jobs.unit_open) return Open;
  if (look_->jobs.unit == Unit::none) return Clear;
  return look_->jobs.unit_found ? Found : Said;
}

PastJobsModel::Doubt PastJobsModel::dayDoubt() const {
  switch (look_ ? look_->jobs.day_order_by : weavelog::DayOrderBy::none) {
    case weavelog::DayOrderBy::none:
      return Clear;
    case weavelog::DayOrderBy::said:
      return Said;
    case weavelog::DayOrderBy::table:
      return Found;
    default:
      return Open;
  }
}

weavelog::PastPlan PastJobsModel::answered() const {
  weavelog::PastPlan plan = look_ ? look_->plan : weavelog::PastPlan{};
  for (const auto& [index, answer] : answers_) {
    if (index >= plan.players.size() || answer == LeaveOut) continue;
    auto& player = plan.players[index];
    player.band = answer == Same ? MatchBand::known : MatchBand::new_person;
    if (answer == Another) player.fresh = player.rows.size();
  }
  return plan;
}

int PastJobsModel::newJobs() const {
  std::size_t out = 0;
  for (const auto& player : answered().players)
    if (player.band != MatchBand::likely) out += player.fresh;
  return static_cast<int>(out);
}

int PastJobsModel::heldJobs() const {
  std::size_t out = 0;
  for (const auto& player : answered().players)
    if (player.band != MatchBand::likely) out += player.rows.size() - player.fresh;
  return static_cast<int>(out);
}

int PastJobsModel::knownPlayers() const {
  return static_cast<int>(answered().in_band(MatchBand::known));
}
int PastJobsModel::newPlayers() const {
  return static_cast<int>(answered().in_band(MatchBand::new_person));
}

QVariantList PastJobsModel::likely() const {
  QVariantList out;
  if (!look_) return out;
  for (std::size_t i = 0; i < look_->plan.players.size(); ++i) {
    const auto& player = look_->plan.players[i];
    if (player.band != MatchBand::likely) continue;
    const auto answer = answers_.find(i);
    out.append(QVariantMap{{QStringLiteral("index"), static_cast<int>(i)},
                           {QStringLiteral("name"), qtext(weavelog::listed_name(player.person))},
                           {QStringLiteral("looksLike"), qtext(player.looks_like)},
                           {QStringLiteral("jobs"), static_cast<int>(player.rows.size())},
                           {QStringLiteral("answer"), static_cast<int>(answer == answers_.end() ? LeaveOut : answer->second)}});
  }
  return out;
}

void PastJobsModel::answer(int index, int answer) {
  if (index < 0 || storing_) return;
  answers_[static_cast<std::size_t>(index)] = static_cast<Answer>(answer);
  emit changed();
}

bool PastJobsModel::ready() const {
  return look_ && !busy() && unitDoubt() != Open && dayDoubt() != Open && newJobs() > 0;
}

void PastJobsModel::bringIn() {
  if (!ready()) return;
  const QString who = work_.who();
  const std::string by = who.isEmpty() ? work_.ledger().self().device : who.toStdString();
  import_ = {file_.toStdString(), work_.now(), {}};
  result_ = Nothing;
  stored_ = 0;
  storing_ = true;
  beside_.work(
      [ledger = &work_.ledger(), look = look_, plan = answered(), by, now = import_.at] {
        return std::make_shared<const std::vector<weavelog::Draft>>(
            weavelog::past_job_drafts(*ledger, look->jobs, plan, weavelog::LikelyPlayers::leave_out, by, now));
      },
      [this](const std::shared_ptr<const std::vector<weavelog::Draft>>& drafts) {
        drafts_ = drafts;
        toStore_ = static_cast<int>(drafts->size());
        emit progressed();
        storeFrom(0);
      });
  emit changed();
}

void PastJobsModel::storeFrom(std::size_t next) {
  using Stored = std::pair<weavelog::PastImport, std::optional<weavelog::Fault>>;
  beside_.work(
      [work = &work_, drafts = drafts_, import = import_, next] {
        Stored out{import, std::nullopt};
        const std::size_t last = std::min(drafts->size(), next + storedTogether);
        for (std::size_t i = next; i < last; ++i) {
          const auto stored = work->workplace().commit((*drafts)[i]);
          if (!stored) {
            out.second = stored.error();
            break;
          }
          out.first.actions.emplace_back((*drafts)[i].book(), stored->dot.seq);
        }
        // What is in can be taken back, even if the rest never comes.
        if (out.first.actions.size() > import.actions.size())
          if (const auto noted = weavelog::note_past_import(work->ledger(), out.first); !noted && !out.second) out.second = noted.error();
        return out;
      },
      [this, next](const Stored& stored) {
        import_ = stored.first;
        stored_ = static_cast<int>(import_.actions.size());
        emit progressed();
        const bool all = next + storedTogether >= drafts_->size();
        if (!stored.second && !all) return storeFrom(next + storedTogether);
        drafts_.reset();
        storing_ = false;
        stored_ = toStore_ = 0;
        emit progressed();
        readImports();
        work_.refresh();
        if (stored.second) {
          work_.tell(*stored.second);
          end(NotAllBroughtIn, qtext(stored.second->message()));
        } else {
          end(BroughtIn, {});
        }
        if (bytes_) look();  // what is here now is told as such
      });
}

void PastJobsModel::readImports() {
  imports_.clear();
  int index = 0;
  for (const auto& import : weavelog::past_imports(work_.ledger())) {
    std::vector<weavelog::BookId> books;
    for (const auto& [book, seq] : import.actions)
      if (std::find(books.begin(), books.end(), book) == books.end()) books.push_back(book);
    imports_.append(QVariantMap{{QStringLiteral("index"), index++},
                                {QStringLiteral("name"), qtext(import.name)},
                                {QStringLiteral("when"), work_.timeText(import.at)},
                                {QStringLiteral("players"), static_cast<int>(books.size())}});
  }
}

void PastJobsModel::takeBack(int index) {
  if (busy() || index < 0 || index >= imports_.size()) return;
  result_ = Nothing;
  beside_.work(
      [work = &work_, place = static_cast<std::size_t>(index)] {
        return weavelog::take_back_import(
            work->ledger(), [work](const weavelog::Draft& draft) { return work->workplace().commit(draft); }, place);
      },
      [this](const weavelog::Outcome<weavelog::TakenBack>& taken) {
        readImports();
        work_.refresh();
        if (!taken) {
          end(NotTakenBack, qtext(taken.error().message()));
        } else if (taken->kept.empty()) {
          end(TakenBack, {});
        } else {
          QStringList who;
          for (const auto& fault : taken->kept) who.append(qtext(std::string_view(fault.where).substr(0, fault.where.find(':'))));
          who.removeDuplicates();
          end(PartlyTakenBack, who.join(QStringLiteral(", ")));
        }
        if (bytes_) look();
      });
  emit changed();
}
