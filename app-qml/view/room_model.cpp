#include "app-qml/view/room_model.h"

#include <QQmlEngine>

#include "app-qml/view/app_device.h"
#include "app-qml/view/provided.h"
#include "core/desk/stages.h"

namespace {

// Collected rackets have left the room: they are counted, not listed.
constexpr std::array boardStages{weavelog::Stage::received,   weavelog::Stage::inspected,
                                 weavelog::Stage::waiting,    weavelog::Stage::cut_out,
                                 weavelog::Stage::on_machine, weavelog::Stage::strung,
                                 weavelog::Stage::checked,    weavelog::Stage::stencilled,
                                 weavelog::Stage::ready,      weavelog::Stage::aside};
constexpr std::size_t mostCards = 200;

}  // namespace

RoomModel::RoomModel(Work& work, QObject* parent) : QObject(parent), work_(work) {
  for (const auto stage : boardStages)
    columns_.push_back(std::make_unique<StageColumn>(work, stage, nullptr));
  connect(&work_, &Work::changed, this, &RoomModel::refresh);
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

bool RoomModel::advance(const QString& book, const QString& job, const QString& done) {
  const auto record = weavelog::load_player(work_.ledger(), bookOf(book));
  if (!record) return work_.commit(weavelog::fail(record.error()), {});
  return work_.commit(weavelog::advance(*record, entityOf(job), work_.who().toStdString(), work_.now()),
                      done);
}

bool RoomModel::take(const QString& book, const QString& job, int stage, const QString& reason,
                     const QString& done) {
  const auto record = weavelog::load_player(work_.ledger(), bookOf(book));
  if (!record) return work_.commit(weavelog::fail(record.error()), {});
  const auto id = entityOf(job);
  const weavelog::StageStep step{static_cast<weavelog::Stage>(stage), work_.who().toStdString(),
                                 reason.trimmed().toStdString(), work_.now()};
  return work_.commit(weavelog::take_step(*record, std::span(&id, 1), step), done);
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
  for (const auto& placed : weavelog::marks_of(*record, id)) {
    marks.prepend(QVariantMap{{QStringLiteral("stage"), static_cast<int>(placed.mark.stage)},
                              {QStringLiteral("at"), work_.timeText(placed.mark.at)},
                              {QStringLiteral("by"), QString::fromStdString(placed.mark.by)},
                              {QStringLiteral("reason"), QString::fromStdString(placed.mark.reason)}});
  }
  return {{QStringLiteral("stage"), static_cast<int>(now.stage)},
          {QStringLiteral("clash"), now.clash},
          {QStringLiteral("steps"), steps},
          {QStringLiteral("others"), others},
          {QStringLiteral("marks"), marks}};
}

void RoomModel::refresh() {
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
