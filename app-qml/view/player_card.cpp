#include "app-qml/view/player_card.h"

#include <algorithm>
#include <map>

#include "app-qml/view/consent_words.h"
#include "app-qml/view/model_text.h"
#include "core/desk/consent.h"
#include "core/desk/last_time.h"
#include "core/desk/phrases.h"
#include "core/desk/questions.h"
#include "core/desk/stages.h"
#include "core/model/queries.h"
#include "sync/carry/known_as.h"

namespace {

QString strings(const std::string& mains, const std::string& crosses) {
  if (mains == crosses || crosses.empty()) return qtext(mains);
  return qtext(mains) + QStringLiteral(" / ") + qtext(crosses);
}

QVariantList changeLines(const weavelog::Language& language, const std::vector<weavelog::Change>& changes) {
  QVariantList lines;
  for (const auto& change : changes)
    lines.append(QVariantMap{{"label", fieldLabel(language, change.name)},
                             {"before", qtext(weavelog::value_words(language, change.name, change.before))},
                             {"after", qtext(weavelog::value_words(language, change.name, change.after))}});
  return lines;
}

// Everything said but tensions and strings, which stand large above.
QVariantList restOf(const weavelog::Language& language, const weavelog::Agreed& agreed) {
  QVariantList lines;
  weavelog::for_each_field<weavelog::Agreed>(
      [&](weavelog::FieldTag, std::string_view name, bool, auto member) {
        if (name == "mains_tension" || name == "crosses_tension" || name == "mains_string" ||
            name == "crosses_string")
          return;
        const auto value = weavelog::to_value(agreed.*member);
        if (weavelog::is_cleared(value)) return;
        lines.append(QVariantMap{{"label", fieldLabel(language, name)},
                                 {"value", qtext(weavelog::value_words(language, name, value))}});
      });
  return lines;
}

QString amount(const std::optional<weavelog::Quantity>& said) {
  return said ? qtext(said->amount.text()) : QString();
}
QString unitText(const std::optional<weavelog::Quantity>& said) {
  return said ? qtext(weavelog::symbol_of(said->unit)) : QString();
}

}  // namespace

PlayerCard::PlayerCard(Work& work, QObject* parent) : QObject(parent), work_(work) {
  connect(&work_, &Work::changed, this, &PlayerCard::refresh);
}

bool PlayerCard::forget() {
  if (!record_) return false;
  const auto report = weavelog::forget_person(work_.ledger(), record_->book);
  if (!report) {
    work_.tell(report.error());
    return false;
  }
  show(QString());
  work_.refresh();
  if (report->not_yet_gone) work_.tell(*report->not_yet_gone);
  return true;
}

void PlayerCard::show(const QString& book) {
  book_ = idFrom<weavelog::BookId>(book);
  jobsWanted_ = 8;
  refresh();
  emit bookChanged();
}

void PlayerCard::showMoreJobs() {
  jobsWanted_ += 24;
  refresh();
}

void PlayerCard::refresh() {
  record_.reset();
  person_.reset();
  questions_.clear();
  agreed_.clear();
  rackets_.clear();
  jobs_.clear();
  holders_.clear();
  heldBeyond_ = false;
  if (book_) {
    if (auto loaded = weavelog::load_person(work_.ledger(), book_)) person_ = std::move(*loaded);
  }
  if (person_) record_ = person_->records.front();
  if (record_) {
    readQuestions();
    readAgreed();
    readRackets();
    readJobs();
    readHolders();
  }
  emit cardChanged();
}

void PlayerCard::readHolders() {
  auto& station = work_.workplace().station();
  std::map<weavelog::PublicKey, std::pair<weavelog::UnixMs, bool>> met;
  for (const auto& record : person_->records)
    for (const auto& one : station.peers().exchanged(record.book)) {
      auto& [last, given] = met.try_emplace(one.peer, 0, false).first->second;
      last = std::max(last, one.last);
      given = given || one.entries.sent > 0;
    }
  std::vector<std::pair<weavelog::PublicKey, std::pair<weavelog::UnixMs, bool>>> rows(met.begin(), met.end());
  std::stable_sort(rows.begin(), rows.end(), [](const auto& a, const auto& b) { return a.second.first > b.second.first; });
  for (const auto& [peer, what] : rows)
    holders_.append(QVariantMap{{"device", qtext(weavelog::device_name(work_.ledger(), station.devices(), peer))},
                                {"day", dayText(work_.language(), what.first, work_.zone())},
                                {"given", what.second},
                                {"as", QString()}});
  // It was agreed to more before, and went somewhere then.
  const auto wider = [](const auto& given) {
    return given.now.choice == weavelog::ConsentChoice::any_room || given.now.choice == weavelog::ConsentChoice::events_entered;
  };
  heldBeyond_ = record_->person.now.consent == weavelog::ConsentChoice::this_room &&
                std::any_of(record_->consents.begin(), record_->consents.end(), wider) &&
                std::any_of(rows.begin(), rows.end(), [](const auto& row) { return row.second.second; });
  // What was made of it for others, one row a receiver.
  std::map<std::pair<weavelog::HandedAs, std::string>, weavelog::UnixMs> made;
  for (const auto& record : person_->records)
    for (const auto& one : station.peers().handed(record.book)) {
      auto& last = made[{one.as, one.receiver}];
      last = std::max(last, one.last);
    }
  for (const auto& [what, last] : made)
    holders_.append(QVariantMap{{"device", qtext(what.second)},
                                {"day", dayText(work_.language(), last, work_.zone())},
                                {"given", true},
                                {"as", qtext(std::string(weavelog::name_of(what.first)))}});
}

void PlayerCard::readQuestions() {
  const auto& language = work_.language();
  std::vector<weavelog::QuestionLine> lines;
  for (const auto& record : person_->records)
    for (auto& line : weavelog::question_lines(work_.ledger(), record)) lines.push_back(std::move(line));
  for (const auto& line : lines) {
    QVariantList answers;
    for (const auto& answer : line.answers)
      answers.append(QVariantMap{{"value", qtext(weavelog::value_words(language, line.field, answer.value))},
                                 {"device", qtext(answer.device)},
                                 {"day", dayText(language, answer.at, work_.zone())}});
    questions_.append(QVariantMap{
        {"subject", qtext(weavelog::setup_words(language, line.subject))}, {"field", fieldLabel(language, line.field)}, {"answers", answers}});
  }
}

void PlayerCard::readAgreed() {
  const auto& language = work_.language();
  struct Wish {
    weavelog::LastTime last;
    QStringList labels;
    bool takenIn = false;  // from received to on the machine: agreed, not yet strung
  };
  std::vector<Wish> wishes;
  const auto both = weavelog::together(*person_);
  auto rackets = weavelog::rackets_of_last_drop_off(both);
  if (rackets.empty()) rackets.push_back({});
  for (auto& last : weavelog::same_for_each(both, rackets)) {
    const auto stage = both.stage_of(last.job).stage;
    const auto* racket = both.racket(last.racket);
    const QString label = racket ? qtext(racket->now.label) : QString();
    auto same = std::find_if(wishes.begin(), wishes.end(), [&](const auto& wish) {
      return wish.last.proposal == last.proposal && wish.last.since == last.since;
    });
    if (same == wishes.end()) same = wishes.insert(wishes.end(), Wish{std::move(last), {}});
    if (!label.isEmpty()) same->labels.append(label);
    same->takenIn = same->takenIn || (stage >= weavelog::Stage::received && stage < weavelog::Stage::strung);
  }
  for (const auto& [last, labels, takenIn] : wishes) {
    const auto& wish = last.proposal;
    agreed_.append(QVariantMap{{"rackets", labels.join(QStringLiteral(", "))},
                               {"mains", amount(wish.mains_tension)},
                               {"mainsUnit", unitText(wish.mains_tension)},
                               {"crosses", amount(wish.crosses_tension)},
                               {"crossesUnit", unitText(wish.crosses_tension)},
                               {"strings", strings(wish.mains_string, wish.crosses_string)},
                               {"lines", restOf(language, wish)},
                               {"since", changeLines(language, last.since)},
                               {"event", qtext(last.event_name)},
                               {"takenIn", takenIn},
                               {"day", dayText(language, last.at, work_.zone())}});
  }
}

void PlayerCard::readRackets() {
  const auto both = weavelog::together(*person_);
  for (const auto& racket : both.rackets) {
    int stage = -1;
    for (const auto& job : both.jobs) {
      if (job.now.racket != racket.id() || job.now.event != work_.event()) continue;
      const auto now = both.stage_of(job.id()).stage;
      if (weavelog::is_open(now)) stage = static_cast<int>(now);
    }
    rackets_.append(QVariantMap{{"id", idText(racket.id())},
                                {"label", qtext(racket.now.label)},
                                {"model", qtext(racket.now.maker + " " + racket.now.model).simplified()},
                                {"fields", editables(racket.now)},
                                {"stage", stage}});
  }
}

void PlayerCard::readJobs() {
  const auto& language = work_.language();
  std::vector<weavelog::JobRow> history;
  for (const auto& record : person_->records)
    for (auto& job : weavelog::history_of(work_.ledger(), record.book, jobsWanted_)) history.push_back(std::move(job));
  std::stable_sort(history.begin(), history.end(), [](const auto& a, const auto& b) { return a.key > b.key; });
  if (history.size() > jobsWanted_) history.resize(jobsWanted_);
  for (const auto& job : history) {
    const QString mains = saidText(language, job.mains_tension);
    const QString crosses = saidText(language, job.crosses_tension);
    jobs_.append(QVariantMap{{"tag", job.tag_number ? QString::number(*job.tag_number) : QString()},
                             {"racket", qtext(job.racket_label)},
                             {"strings", strings(job.mains_string, job.crosses_string)},
                             {"tension", mains == crosses ? mains : mains + QStringLiteral(" / ") + crosses},
                             {"event", qtext(job.event_name)},
                             {"day", dayText(language, job.at, work_.zone())},
                             {"stage", static_cast<int>(job.stage)}});
  }
}

QString PlayerCard::book() const {
  return record_ ? idText(book_) : QString();
}

QString PlayerCard::name() const {
  return record_ ? qtext(weavelog::listed_name(record_->person.now)) : QString();
}

QString PlayerCard::detail() const {
  if (!record_) return {};
  const auto& person = record_->person.now;
  QStringList parts{qtext(person.native_name), qtext(person.country)};
  if (person.birth_year) parts.append(QString::number(*person.birth_year));
  parts.append(languageName(person.language));
  if (parts.first() == name()) parts.removeFirst();
  parts.removeAll(QString());
  return parts.join(QStringLiteral(" · "));
}

QVariantMap PlayerCard::person() const {
  return editables(record_ ? record_->person.now : weavelog::Person{});
}

int PlayerCard::jobCount() const {
  std::size_t count = 0;
  if (person_)
    for (const auto& record : person_->records) count += record.jobs.size();
  return static_cast<int>(count);
}

int PlayerCard::bookCount() const {
  if (!person_) return 0;
  const auto away = std::count_if(person_->elsewhere.begin(), person_->elsewhere.end(),
                                  [this](const auto& book) { return !work_.ledger().is_forgotten(book); });
  return static_cast<int>(person_->records.size()) + static_cast<int>(away);
}

bool PlayerCard::savePerson(const QVariantMap& fields) {
  if (!record_) return false;
  auto wanted = record_->person.now;
  for (auto field = fields.begin(); field != fields.end(); ++field)
    takeEdited(wanted, field.key().toStdString(), field.value(), weavelog::Unit::none);
  if (wanted == record_->person.now) return true;
  weavelog::Draft draft(book_, weavelog::kPlayerBook, weavelog::kActEdit);
  weavelog::put_changes(draft, record_->person.seen, wanted);
  return work_.commit(draft, tr("Player changed"));
}

bool PlayerCard::saveRacket(const QString& id, const QVariantMap& fields) {
  const weavelog::Loaded<weavelog::Racket>* racket = nullptr;
  if (person_)
    for (const auto& record : person_->records)
      if (racket == nullptr) racket = record.racket(idFrom<weavelog::EntityId>(id));
  if (racket == nullptr) return false;
  auto wanted = racket->now;
  for (auto field = fields.begin(); field != fields.end(); ++field)
    takeEdited(wanted, field.key().toStdString(), field.value(), weavelog::Unit::none);
  if (wanted == racket->now) return true;
  weavelog::Draft draft(racket->seen.book, weavelog::kPlayerBook, weavelog::kActEdit);
  weavelog::put_changes(draft, racket->seen, wanted);
  return work_.commit(draft, tr("Racket changed"));
}

QString PlayerCard::consentText(int choice, const QString& language) {
  return qtext(
      weavelog::consent_text(weavelog::Language::from(language.toStdString()).value_or(weavelog::Language{}),
                             static_cast<weavelog::ConsentChoice>(choice)));
}

QVariantMap PlayerCard::consentWords(const QString& language) {
  return ::consentWords(weavelog::Language::from(language.toStdString()).value_or(weavelog::Language{}),
                        true);
}

bool PlayerCard::giveConsent(int choice, const QString& language, const QString& shown) {
  if (!record_) return false;
  const weavelog::Confirmation confirmation{
      shown.toStdString(), weavelog::Language::from(language.toStdString()).value_or(weavelog::Language{}),
      work_.now(), work_.ledger().self().id()};
  const auto drafts =
      weavelog::give_consent(*person_, static_cast<weavelog::ConsentChoice>(choice), confirmation, work_.event());
  if (!drafts) return work_.commit(weavelog::fail(drafts.error()), {});
  // One undo takes back what stands in one book: of several nothing is offered, the question can be answered anew.
  for (const auto& draft : *drafts)
    if (!work_.commit(draft, drafts->size() == 1 ? tr("Consent noted") : QString())) return false;
  return true;
}
