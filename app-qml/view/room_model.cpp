#include "app-qml/view/room_model.h"

#include <QQmlEngine>

#include <map>

#include "app-qml/view/app_device.h"
#include "app-qml/view/job_brief.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/desk/bench.h"
#include "core/desk/drop_off.h"
#include "core/desk/inspection.h"

namespace {

// Collected rackets have left the room: they are counted, not listed.
constexpr std::array boardStages{weavelog::Stage::received,   weavelog::Stage::inspected,
                                 weavelog::Stage::waiting,    weavelog::Stage::cut_out,
                                 weavelog::Stage::on_machine, weavelog::Stage::strung,
                                 weavelog::Stage::checked,    weavelog::Stage::stencilled,
                                 weavelog::Stage::ready,      weavelog::Stage::aside};
constexpr std::size_t mostCards = 200;
constexpr qint64 oneTap = 500;  // ms

// Why a racket that waits does not go on without a word.
std::optional<weavelog::Fault> unanswered(const weavelog::PlayerRecord& record, const weavelog::EntityId& id) {
  const auto* held = record.job(id);
  const auto now = record.stage_of(id);
  if (held == nullptr || now.clash || now.stage != weavelog::Stage::waiting) return std::nullopt;
  return weavelog::Fault{weavelog::FaultCode::refused, "this racket waits for its player's answer", weavelog::job_place(*held),
                         "take the answer, or write down what was said"};
}

// Tells the marks in which a racket stands from any others.
QString signOf(const weavelog::StageNow& now) {
  QStringList ids;
  for (const auto& id : now.newest) ids.append(idText(id));
  return ids.join(QLatin1Char(' '));
}

}  // namespace

RoomModel::RoomModel(Work& work, QObject* parent) : QObject(parent), work_(work), machine_(work) {
  QJSEngine::setObjectOwnership(&machine_, QJSEngine::CppOwnership);
  for (const auto stage : boardStages)
    columns_.push_back(std::make_unique<StageColumn>(work, stage, nullptr));
  connect(&work_, &Work::changed, this, &RoomModel::refresh);
  connect(&work_, &Work::done, this, [this] { tapped_.start(); });
  refresh();
}

RoomModel* RoomModel::create(QQmlEngine* engine, QJSEngine*) {
  return new RoomModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

QVariantList RoomModel::columns() const {
  QVariantList out;
  for (const auto& column : columns_) {
    QJSEngine::setObjectOwnership(column.get(), QJSEngine::CppOwnership);
    out.append(QVariant::fromValue<QObject*>(column.get()));
  }
  return out;
}

bool RoomModel::tapCounts() {
  const bool counts = !tapped_.isValid() || tapped_.hasExpired(oneTap);
  tapped_.start();
  return counts;
}

void RoomModel::lookAt(const QString& book, const QString& job) {
  lookedBook_ = bookOf(book);
  looked_ = entityOf(job);
  const auto record = weavelog::load_player(work_.ledger(), lookedBook_);
  if (!record) return machine_.lookAtNothing();
  const auto now = record->stage_of(looked_);
  const auto next = weavelog::next_steps(now.stage);
  const bool canMount = std::find(next.begin(), next.end(), weavelog::Stage::on_machine) != next.end();
  machine_.look(*record, looked_, now.clash || canMount);
}

QStringList RoomModel::machineDoubts(const QString& book, const QString& job) {
  const auto record = weavelog::load_player(work_.ledger(), bookOf(book));
  if (!record) return {};
  MachineChoice usual(work_);
  usual.look(*record, entityOf(job), true);
  return usual.doubts();
}

weavelog::StageStep RoomModel::stepOf(const weavelog::PlayerRecord& record, const weavelog::EntityId& job, weavelog::Stage to) {
  weavelog::StageStep step{to, work_.who().toStdString(), {}, work_.now()};
  if (to != weavelog::Stage::on_machine) return step;
  if (job == looked_ && record.book == lookedBook_) {
    machine_.fill(step);
  } else {
    MachineChoice usual(work_);
    usual.look(record, job, true);
    usual.fill(step);
  }
  return step;
}

bool RoomModel::advance(const QString& book, const QString& job, const QString& done) {
  const auto record = weavelog::load_player(work_.ledger(), bookOf(book));
  if (!record) return work_.commit(weavelog::fail(record.error()), {});
  const auto id = entityOf(job);
  if (const auto waits = unanswered(*record, id)) return work_.commit(weavelog::fail(*waits), {});
  const auto draft = weavelog::advance(*record, id, work_.who().toStdString(), work_.now());
  if (!draft) return work_.commit(draft, {});
  const auto to = weavelog::next_steps(record->stage_of(id).stage).front();
  return work_.commit(weavelog::step_at_bench(*record, id, stepOf(*record, id, to)), done);
}

bool RoomModel::take(const QString& book, const QString& job, int stage, const QString& reason,
                     const QString& done, const QString& seen) {
  const auto record = weavelog::load_player(work_.ledger(), bookOf(book));
  if (!record) return work_.commit(weavelog::fail(record.error()), {});
  const auto id = entityOf(job);
  if (!seen.isEmpty() && seen != signOf(record->stage_of(id))) {
    work_.tell({weavelog::FaultCode::conflict, tr("this racket moved on elsewhere meanwhile").toStdString(), {},
                tr("look at it again").toStdString()});
    return false;
  }
  auto step = stepOf(*record, id, static_cast<weavelog::Stage>(stage));
  step.reason = reason.trimmed().toStdString();
  if (const auto waits = unanswered(*record, id); waits && step.reason.empty()) return work_.commit(weavelog::fail(*waits), {});
  return work_.commit(weavelog::step_at_bench(*record, id, step), done);
}

QVariantMap RoomModel::stepsOf(const QString& book, const QString& job) const {
  const auto record = weavelog::load_player(work_.ledger(), bookOf(book));
  const auto id = entityOf(job);
  if (!record || !record->job(id)) return {};
  const auto now = record->stage_of(id);
  QVariantList steps;
  QVariantList others;
  // The usual step first, as on the card.
  const auto next = now.clash ? std::span<const weavelog::Stage>{} : weavelog::next_steps(now.stage);
  for (const auto stage : next) steps.append(static_cast<int>(stage));
  for (const auto& choice : weavelog::choices(weavelog::Stage{})) {
    const bool here = choice.value == now.stage && !now.clash;
    const bool follows = std::find(next.begin(), next.end(), choice.value) != next.end();
    if (choice.value != weavelog::Stage::none && !here && !follows)
      others.append(static_cast<int>(choice.value));
  }
  QVariantList marks;
  std::map<weavelog::EntityId, QString> machines;
  for (const auto& machine : weavelog::load_machines(work_.ledger(), record->job(id)->now.event))
    machines[machine.id()] = QString::fromStdString(machine.now.name);
  for (const auto* held : weavelog::benches_of(*record, id))
    machines.emplace(held->now.machine, QString::fromStdString(held->now.machine_name));
  machines[{}] = QString();
  for (const auto& placed : weavelog::marks_of(*record, id)) {
    marks.prepend(QVariantMap{{QStringLiteral("stage"), static_cast<int>(placed.mark.stage)},
                              {QStringLiteral("at"), work_.timeText(placed.mark.at)},
                              {QStringLiteral("by"), QString::fromStdString(placed.mark.by)},
                              {QStringLiteral("reason"), QString::fromStdString(placed.mark.reason)},
                              {QStringLiteral("machine"), machines[placed.mark.machine]}});
  }
  int bags = 0;
  QString collectedBy;
  for (const auto& handOver : record->drop_offs) {
    if (handOver.id() != record->job(id)->now.drop_off) continue;
    bags = static_cast<int>(std::clamp<std::int64_t>(handOver.now.bags.value_or(0), 0, weavelog::kMostBags));
    collectedBy = QString::fromStdString(handOver.now.collected_by);
  }
  return {{QStringLiteral("stage"), static_cast<int>(now.stage)},
          {QStringLiteral("bags"), bags},
          {QStringLiteral("collectedBy"), collectedBy},
          {QStringLiteral("awaits"), weavelog::held_back(*record, id).has_value()},
          {QStringLiteral("brief"), jobBrief(work_, *record, id)},
          {QStringLiteral("clash"), now.clash},
          {QStringLiteral("steps"), steps},
          {QStringLiteral("others"), others},
          {QStringLiteral("seen"), signOf(now)},
          {QStringLiteral("marks"), marks}};
}

void RoomModel::refresh() {
  if (looked_) lookAt(QString::fromStdString(lookedBook_.hex()), QString::fromStdString(looked_.hex()));
  open_ = shown_ = late_ = collected_ = clashes_ = 0;
  const auto counts = hasEvent() ? weavelog::count_by_stage(work_.ledger(), work_.event())
                                 : std::array<std::int64_t, weavelog::kStageCount>{};
  collected_ = static_cast<int>(counts[static_cast<std::size_t>(weavelog::Stage::collected)]);
  for (const auto& column : columns_) {
    const auto stage = static_cast<weavelog::Stage>(column->stage());
    const auto count = counts[static_cast<std::size_t>(stage)];
    std::vector<JobCard> cards;
    if (count > 0) {
      for (auto& row : weavelog::jobs_at_stage(work_.ledger(), work_.event(), stage, mostCards)) {
        clashes_ += row.clash ? 1 : 0;
        cards.push_back(jobCard(work_, std::move(row)));
      }
    }
    column->take(std::move(cards));
    shown_ += column->count();
    if (weavelog::is_open(stage)) open_ += static_cast<int>(count);
    late_ += column->late();
  }
  emit boardChanged();
}
