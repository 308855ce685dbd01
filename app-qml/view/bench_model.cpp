#include "app-qml/view/bench_model.h"

#include <QQmlEngine>

#include <algorithm>

#include "app-qml/view/app_device.h"
#include "app-qml/view/provided.h"
#include "app-qml/view/word_list.h"
#include "core/desk/last_time.h"
#include "core/desk/stages.h"

namespace {

constexpr std::size_t mostQueued = 60;

// What the bench does, whatever else the room has between.
weavelog::Stage benchStep(weavelog::Stage stage) {
  switch (stage) {
    case weavelog::Stage::received:
    case weavelog::Stage::inspected:
      return weavelog::Stage::cut_out;
    case weavelog::Stage::cut_out:
      return weavelog::Stage::on_machine;
    case weavelog::Stage::on_machine:
      return weavelog::Stage::strung;
    default:
      return weavelog::Stage::none;
  }
}

bool begun(weavelog::Stage stage) {
  return stage == weavelog::Stage::cut_out || stage == weavelog::Stage::on_machine;
}

}  // namespace

BenchModel::BenchModel(Work& work, QObject* parent)
    : QObject(parent), work_(work), doing_(work), machine_(work), queue_(work, weavelog::Stage::received, nullptr) {
  QJSEngine::setObjectOwnership(&doing_, QJSEngine::CppOwnership);
  QJSEngine::setObjectOwnership(&machine_, QJSEngine::CppOwnership);
  QJSEngine::setObjectOwnership(&queue_, QJSEngine::CppOwnership);
  connect(&work_, &Work::changed, this, &BenchModel::refresh);
  refresh();
}

BenchModel* BenchModel::create(QQmlEngine* engine, QJSEngine*) {
  return new BenchModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

QString BenchModel::book() const {
  return card_ ? QString::fromStdString(card_->row.book.hex()) : QString();
}
QString BenchModel::job() const {
  return card_ ? QString::fromStdString(card_->row.job.hex()) : QString();
}
QString BenchModel::racket() const {
  return card_ ? QString::fromStdString(card_->row.racket_label) : QString();
}
QString BenchModel::racketModel() const {
  return card_ ? QString::fromStdString(card_->row.racket_model) : QString();
}
QString BenchModel::tag() const {
  return card_ && card_->row.tag_number ? QString::number(*card_->row.tag_number) : QString();
}
QString BenchModel::amount(const std::optional<weavelog::Quantity>& quantity) {
  return quantity ? QString::fromStdString(quantity->amount.text()) : QString();
}
QString BenchModel::unit(const std::optional<weavelog::Quantity>& quantity) {
  if (!quantity) return {};
  const auto symbol = weavelog::symbol_of(quantity->unit);
  return QString::fromUtf8(symbol.data(), static_cast<qsizetype>(symbol.size()));
}

QString BenchModel::tension() const {
  return tensionText(work_, agreed_.mains_tension, agreed_.crosses_tension);
}
QString BenchModel::mainsGauge() const {
  return quantityText(work_, agreed_.mains_gauge);
}
QString BenchModel::crossesGauge() const {
  return quantityText(work_, agreed_.crosses_gauge);
}

void BenchModel::setOnScreen(bool onScreen) {
  if (onScreen_ == onScreen) return;
  onScreen_ = onScreen;
  emit onScreenChanged();
}

void BenchModel::choose(const QString& book, const QString& job) {
  const auto row = weavelog::find_job(work_.ledger(), bookOf(book), entityOf(job));
  lying_.reset();
  if (row && benchStep(row->stage) != weavelog::Stage::none) lay(*row, true);
  refresh();
}

void BenchModel::next() {
  const auto without = lying_ ? lying_->place.job : weavelog::EntityId{};
  lying_.reset();
  left_.reset();
  if (const auto row = takeUp(without)) lay(*row, false);
  refresh();
}

bool BenchModel::step(const QString& say) {
  if (!card_ || next_ == weavelog::Stage::none) return false;
  const auto record = weavelog::load_player(work_.ledger(), card_->row.book);
  if (!record) return work_.commit(weavelog::fail(record.error()), {});
  const auto id = card_->row.job;
  const auto book = card_->row.book;
  weavelog::StageStep step{next_, work_.who().toStdString(), {}, work_.now()};
  machine_.fill(step);
  const auto cautioned = due_;
  // Whoever begins a racket keeps it on the bench; a strung one makes room for the next.
  const auto before = lying_;
  const auto leftBefore = left_;
  left_.reset();
  if (next_ == weavelog::Stage::strung) {
    left_ = Left{Place{book, id}, card_->row.stage_at};
    lying_.reset();
  } else {
    auto stood = lying_ ? lying_->before : std::vector<Stood>{};
    lying_ = Lying{Place{book, id}, true, next_, step.by, tag(), player(), std::move(stood)};
  }
  if (!work_.commit(weavelog::step_at_bench(*record, id, step), say)) {
    lying_ = before;
    left_ = leftBefore;
    return false;
  }
  for (const auto caution : cautioned) (void)shown_.first_time(id.hex(), caution);
  return true;
}

void BenchModel::lay(const weavelog::JobRow& row, bool chosen) {
  std::vector<Stood> before;
  if (lying_ && lying_->place.job == row.job) before = std::move(lying_->before);
  // Once more where it stood: what came after that was taken back.
  const Stood now{row.stage, row.stage_by, row.stage_at};
  before.erase(std::find(before.begin(), before.end(), now), before.end());
  before.push_back(now);
  lying_ = Lying{Place{row.book, row.job}, chosen, row.stage, row.stage_by,
                 row.tag_number ? QString::number(*row.tag_number) : QString(), playerOf(row), std::move(before)};
}

std::optional<weavelog::JobRow> BenchModel::takeUp(const weavelog::EntityId& without) {
  if (!work_.event()) return std::nullopt;
  const std::string who = work_.who().toStdString();
  for (const auto stage : {weavelog::Stage::on_machine, weavelog::Stage::cut_out})
    for (auto& row : weavelog::jobs_at_stage(work_.ledger(), work_.event(), stage, mostQueued))
      if (row.stage_by == who && row.job != without) return std::move(row);
  for (auto& row : weavelog::next_jobs(work_.ledger(), work_.event(), 2))
    if (row.job != without) return std::move(row);
  return std::nullopt;
}

std::optional<weavelog::JobRow> BenchModel::backOnMachine() {
  if (!left_) return std::nullopt;
  auto row = weavelog::find_job(work_.ledger(), left_->place.book, left_->place.job);
  // The moment tells a step that was taken back from a racket that is strung anew.
  if (!row || row->stage != weavelog::Stage::on_machine || row->stage_at != left_->mountedAt) return std::nullopt;
  left_.reset();
  return row;
}

BenchModel::Away BenchModel::awayFrom(const std::optional<weavelog::JobRow>& row) const {
  if (!row) return weavelog::load_player(work_.ledger(), lying_->place.book) ? Away::TakenBack : Away::Forgotten;
  if (row->clash) return Away::TwoTook;
  if (row->stage == weavelog::Stage::aside) return Away::PutAside;
  if (row->stage == weavelog::Stage::collected) return Away::Collected;
  if (row->stage == weavelog::Stage::waiting) return Away::Waits;
  if (benchStep(row->stage) == weavelog::Stage::none) return Away::MovedOn;
  const auto& stood = lying_->before;
  const bool same = (row->stage == lying_->stage && row->stage_by == lying_->by) ||
                    std::find(stood.begin(), stood.end(), Stood{row->stage, row->stage_by, row->stage_at}) != stood.end();
  const bool mine = !row->stage_by.empty() && row->stage_by == work_.who().toStdString();
  return begun(row->stage) && !same && !mine ? Away::Taken : Away::Here;
}

void BenchModel::tellAway(Away how, const std::optional<weavelog::JobRow>& row) {
  // Of a book that was forgotten nothing is left but the number on the racket.
  if (how == Away::Forgotten) lying_->player.clear();
  away_ = {{QStringLiteral("how"), static_cast<int>(how)},
           {QStringLiteral("tag"), lying_->tag},
           {QStringLiteral("player"), lying_->player},
           {QStringLiteral("by"), row ? QString::fromStdString(row->stage_by) : QString()},
           {QStringLiteral("stage"), row ? static_cast<int>(row->stage) : 0}};
}

std::optional<weavelog::JobRow> BenchModel::pick() {
  away_.clear();
  if (const auto back = backOnMachine()) lay(*back, true);
  if (lying_) {
    auto row = weavelog::find_job(work_.ledger(), lying_->place.book, lying_->place.job);
    const Away how = awayFrom(row);
    const bool mine = row && row->stage_by == work_.who().toStdString();
    const bool elsewhere = row && row->event != work_.event();  // another event was chosen
    const bool held = lying_->chosen || (!elsewhere && (onScreen_ || (row && begun(row->stage) && mine)));
    if (how == Away::Here && held) {
      lay(*row, lying_->chosen);
      return row;
    }
    // Whoever moved it on elsewhere on this device knows.
    if (how != Away::Here && !elsewhere && (onScreen_ || (lying_->chosen && !mine))) {
      tellAway(how, row);
      return row;
    }
    lying_.reset();
  }
  auto row = takeUp({});
  if (!row) return std::nullopt;
  lay(*row, false);
  if (row->clash) tellAway(Away::TwoTook, row);
  return row;
}

void BenchModel::refresh() {
  auto row = pick();
  card_.reset();
  agreed_ = {};
  next_ = weavelog::Stage::none;
  lines_.clear();
  comparedWith_.clear();
  cautions_.clear();
  openFields_.clear();
  reasons_.clear();
  due_.clear();
  onCourt_.clear();
  if (row) {
    if (const auto record = weavelog::load_player(work_.ledger(), row->book)) {
      card_ = jobCard(work_, std::move(*row));
      next_ = away_.isEmpty() ? benchStep(card_->row.stage) : weavelog::Stage::none;
      describe(*record);
      if (away_.isEmpty()) {
        doing_.look(*record, card_->row.job);
        machine_.look(*record, card_->row.job, next_ == weavelog::Stage::on_machine);
      }
    }
  }
  // Nothing is done here with a racket that went away.
  if (!card_ || !away_.isEmpty()) {
    doing_.lookAtNothing();
    machine_.lookAtNothing();
  }
  std::vector<JobCard> queue;
  if (work_.event()) {
    for (auto& next : weavelog::next_jobs(work_.ledger(), work_.event(), mostQueued)) {
      if (card_ && next.job == card_->row.job) continue;
      queue.push_back(jobCard(work_, std::move(next)));
    }
  }
  if (!queue.empty() && queue.front().row.rush == weavelog::Rush::on_court &&
      (!card_ || card_->row.rush != weavelog::Rush::on_court)) {
    const auto& first = queue.front().row;
    onCourt_ = {{QStringLiteral("player"), playerOf(first)},
                {QStringLiteral("tag"), first.tag_number ? QString::number(*first.tag_number) : QString()},
                {QStringLiteral("book"), QString::fromStdString(first.book.hex())},
                {QStringLiteral("job"), QString::fromStdString(first.job.hex())},
                {QStringLiteral("begun"), card_ && begun(card_->row.stage)}};
  }
  queue_.take(std::move(queue));
  emit changed();
}

void BenchModel::describe(const weavelog::PlayerRecord& record) {
  const auto* job = record.job(card_->row.job);
  if (job == nullptr) return;
  agreed_ = job->now;
  compareWithLast(record, job->now);
  for (const auto& question : record.questions) {
    if (question.entity != job->id() && question.entity != job->now.setup) continue;
    const auto* field = weavelog::model_registry().find(question.cell.tag);
    if (field != nullptr)
      openFields_.append(QString::fromStdString(weavelog::field_words(work_.language(), field->name)));
  }
  openFields_.removeDuplicates();
  bool frameDoubt = weavelog::doubt_about(record, job->now.racket).has_value();
  for (const auto& placed : weavelog::marks_of(record, job->id())) {
    // What makes a racket wait for its player's answer is most often its frame.
    frameDoubt = frameDoubt || placed.mark.stage == weavelog::Stage::waiting;
    if (!placed.mark.reason.empty()) reasons_.prepend(QString::fromStdString(placed.mark.reason));
  }
  const auto* racket = record.racket(job->now.racket);
  for (const auto caution :
       weavelog::cautions_for(next_, agreed_, racket == nullptr ? nullptr : &racket->now, frameDoubt)) {
    if (shown_.was_shown(job->id().hex(), caution)) continue;
    due_.push_back(caution);
    cautions_.append(QString::fromStdString(weavelog::caution_text(work_.language(), caution)));
  }
}

void BenchModel::compareWithLast(const weavelog::PlayerRecord& record, const weavelog::Job& job) {
  // As the player's book was before this drop-off: rackets of one hand-over are not each other's last time.
  weavelog::PlayerRecord before = record;
  std::erase_if(before.jobs, [&](const auto& other) {
    return other.now.drop_off == job.drop_off || other.now.at.value_or(0) > job.at.value_or(0);
  });
  std::optional<weavelog::Agreed> last;
  if (!before.jobs.empty()) {
    if (const auto found = weavelog::same_as_last_time(before, job.racket)) {
      last = found->as_strung;
      const QString at = work_.timeText(found->at);
      const QString place = QString::fromStdString(found->event_name);
      comparedWith_ = place.isEmpty() || at.isEmpty() ? place + at : place + QStringLiteral(", ") + at;
    }
  }
  weavelog::for_each_field<weavelog::Agreed>([&](weavelog::FieldTag, std::string_view name, bool,
                                                 auto member) {
    if (name == "note") return;
    const weavelog::Value now = weavelog::to_value(agreed_.*member);
    const weavelog::Value then = last ? weavelog::to_value((*last).*member) : now;
    const bool changed = now != then;
    const bool tension = name == "mains_tension" || name == "crosses_tension";
    if (!changed && (tension || weavelog::is_cleared(now))) return;
    lines_.append(QVariantMap{{QStringLiteral("label"), firstUpper(QString::fromStdString(
                                                            weavelog::field_words(work_.language(), name)))},
                              {QStringLiteral("oldValue"),
                               QString::fromStdString(weavelog::value_words(work_.language(), name, then))},
                              {QStringLiteral("newValue"),
                               QString::fromStdString(weavelog::value_words(work_.language(), name, now))},
                              {QStringLiteral("changed"), changed}});
  });
}
