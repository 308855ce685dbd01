#include "app-qml/view/job_cards.h"

#include "app-qml/view/model_text.h"
#include "core/base/localised.h"
#include "core/desk/stages.h"

namespace {

constexpr weavelog::UnixMs lastHalfHour = 30 * 60 * 1000;

enum JobRole {
  PlayerRole = Qt::UserRole + 1,
  RacketRole,
  RacketModelRole,
  TagRole,
  TensionRole,
  StringsRole,
  ReadyByRole,
  DueRole,
  RushRole,
  StageRole,
  StageByRole,
  StageAtRole,
  NextStageRole,
  ClashRole,
  EventNameRole,
  TakenInRole,
  BookRole,
  JobIdRole,
};

}  // namespace

QString tensionText(const Work& work, const std::optional<weavelog::Quantity>& mainsPull, const std::optional<weavelog::Quantity>& crossesPull) {
  const QString mains = quantityText(work, mainsPull);
  const QString crosses = quantityText(work, crossesPull);
  if (mains.isEmpty() && crosses.isEmpty()) return {};
  if (mains.isEmpty() || crosses.isEmpty())
    return (mains.isEmpty() ? QStringLiteral("–") : mains) + QStringLiteral(" / ") +
           (crosses.isEmpty() ? QStringLiteral("–") : crosses);
  if (mainsPull->unit != crossesPull->unit) return mains + QStringLiteral(" / ") + crosses;
  return qtext(weavelog::localised(work.language(), mainsPull->amount)) + QStringLiteral(" / ") + crosses;
}

bool JobCard::operator==(const JobCard& other) const {
  const auto& a = row;
  const auto& b = other.row;
  return readyBy == other.readyBy && due == other.due && a.book == b.book && a.job == b.job &&
         a.racket == b.racket && a.family_name == b.family_name && a.given_name == b.given_name &&
         a.native_name == b.native_name && a.racket_label == b.racket_label &&
         a.racket_model == b.racket_model && a.mains_string == b.mains_string &&
         a.mains_tension == b.mains_tension && a.crosses_string == b.crosses_string &&
         a.crosses_tension == b.crosses_tension && a.stage == b.stage && a.stage_at == b.stage_at &&
         a.stage_by == b.stage_by && a.clash == b.clash && a.rush == b.rush && a.tag_number == b.tag_number &&
         a.event_name == b.event_name;
}

JobCard jobCard(const Work& work, weavelog::JobRow row) {
  JobCard card;
  card.readyBy = work.timeText(row.ready_by);
  card.due = dueOf(row.ready_by, row.stage, work.now());
  card.row = std::move(row);
  return card;
}

QString playerOf(const weavelog::JobRow& row) {
  QStringList names{qtext(row.family_name), qtext(row.given_name)};
  names.removeAll(QString());
  return names.isEmpty() ? qtext(row.native_name) : names.join(u' ');
}

JobCard::Due dueOf(const std::optional<std::int64_t>& readyBy, weavelog::Stage stage, weavelog::UnixMs now) {
  if (!readyBy) return JobCard::Due::none;
  // A racket that is ready keeps its promise however late it is collected.
  if (stage == weavelog::Stage::ready || !weavelog::is_open(stage)) return JobCard::Due::calm;
  if (*readyBy < now) return JobCard::Due::late;
  return *readyBy - now < lastHalfHour ? JobCard::Due::soon : JobCard::Due::calm;
}

weavelog::Stage usualStep(weavelog::Stage stage) {
  // A racket put aside is taken up or given back by a person who says why, never by one tap; one that waits goes on by its answer.
  if (stage == weavelog::Stage::aside || stage == weavelog::Stage::waiting) return weavelog::Stage::none;
  const auto steps = weavelog::next_steps(stage);
  return steps.empty() ? weavelog::Stage::none : steps.front();
}

QHash<int, QByteArray> jobCardRoles() {
  return {{PlayerRole, "player"},
          {RacketRole, "racket"},
          {RacketModelRole, "racketModel"},
          {TagRole, "tag"},
          {TensionRole, "tension"},
          {StringsRole, "strings"},
          {ReadyByRole, "readyBy"},
          {DueRole, "due"},
          {RushRole, "rush"},
          {StageRole, "stage"},
          {StageByRole, "stageBy"},
          {StageAtRole, "stageAt"},
          {NextStageRole, "nextStage"},
          {ClashRole, "clash"},
          {EventNameRole, "eventName"},
          {TakenInRole, "takenIn"},
          {BookRole, "book"},
          {JobIdRole, "job"}};
}

QVariant jobCardData(const Work& work, const JobCard& card, int role) {
  const weavelog::JobRow& row = card.row;
  switch (role) {
    case Qt::DisplayRole:
    case PlayerRole:
      return playerOf(row);
    case RacketRole:
      return qtext(row.racket_label);
    case RacketModelRole:
      return qtext(row.racket_model);
    case TagRole:
      return row.tag_number ? QString::number(*row.tag_number) : QString();
    case TensionRole:
      return tensionText(work, row.mains_tension, row.crosses_tension);
    case StringsRole:
      if (row.crosses_string.empty() || row.crosses_string == row.mains_string)
        return qtext(row.mains_string);
      return qtext(row.mains_string) + QStringLiteral(" / ") + qtext(row.crosses_string);
    case ReadyByRole:
      return card.readyBy;
    case DueRole:
      return static_cast<int>(card.due);
    case RushRole:
      return static_cast<int>(row.rush);
    case StageRole:
      return static_cast<int>(row.stage);
    case StageByRole:
      return qtext(row.stage_by);
    case StageAtRole:
      return work.timeText(row.stage_at);
    case NextStageRole:
      return static_cast<int>(usualStep(row.stage));
    case ClashRole:
      return row.clash;
    case EventNameRole:
      return qtext(row.event_name);
    case TakenInRole:
      return work.timeText(row.at);
    case BookRole:
      return qtext(row.book.hex());
    case JobIdRole:
      return qtext(row.job.hex());
    default:
      return {};
  }
}

weavelog::BookId bookOf(const QString& hex) {
  return weavelog::BookId::from_hex(hex.toStdString()).value_or(weavelog::BookId{});
}

weavelog::EntityId entityOf(const QString& hex) {
  return weavelog::EntityId::from_hex(hex.toStdString()).value_or(weavelog::EntityId{});
}

QString quantityText(const Work& work, const std::optional<weavelog::Quantity>& quantity) {
  return quantity ? qtext(weavelog::localised(work.language(), *quantity)) : QString();
}
