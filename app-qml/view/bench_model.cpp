#include "app-qml/view/bench_model.h"

#include <QQmlEngine>

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

void BenchModel::choose(const QString& book, const QString& job) {
  chosen_ = Place{bookOf(book), entityOf(job)};
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
  const auto before = chosen_;
  chosen_ = next_ == weavelog::Stage::strung ? std::nullopt : std::optional(Place{book, id});
  if (!work_.commit(weavelog::step_at_bench(*record, id, step), say)) {
    chosen_ = before;
    return false;
  }
  for (const auto caution : cautioned) (void)shown_.first_time(id.hex(), caution);
  return true;
}

std::optional<weavelog::JobRow> BenchModel::pick() {
  if (chosen_) {
    auto row = weavelog::find_job(work_.ledger(), chosen_->book, chosen_->job);
    if (row && benchStep(row->stage) != weavelog::Stage::none) return row;
    chosen_.reset();
  }
  if (!work_.event()) return std::nullopt;
  const std::string who = work_.who().toStdString();
  for (const auto stage : {weavelog::Stage::on_machine, weavelog::Stage::cut_out})
    for (auto& row : weavelog::jobs_at_stage(work_.ledger(), work_.event(), stage, mostQueued))
      if (row.stage_by == who) return std::move(row);
  auto next = weavelog::next_jobs(work_.ledger(), work_.event(), 1);
  return next.empty() ? std::nullopt : std::optional(std::move(next.front()));
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
      next_ = card_->row.clash ? weavelog::Stage::none : benchStep(card_->row.stage);
      describe(*record);
      doing_.look(*record, card_->row.job);
      machine_.look(*record, card_->row.job, next_ == weavelog::Stage::on_machine);
    }
  }
  if (!card_) {
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
