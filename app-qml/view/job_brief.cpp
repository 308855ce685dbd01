#include "app-qml/view/job_brief.h"

#include "app-qml/view/job_cards.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/word_list.h"

QVariantMap jobBrief(const Work& work, const weavelog::PlayerRecord& record, const weavelog::EntityId& job) {
  const auto* held = record.job(job);
  if (held == nullptr) return {};
  const auto& now = held->now;
  const QString comma = QStringLiteral(", ");
  const auto bed = [&](const std::string& string, const std::optional<weavelog::Quantity>& gauge, const std::optional<weavelog::Quantity>& tension) {
    return joined({qtext(string), quantityText(work, gauge), quantityText(work, tension)}, comma);
  };
  const auto* racket = record.racket(now.racket);
  const bool counted = racket != nullptr && racket->now.mains_count && racket->now.crosses_count;
  return {{QStringLiteral("mains"), bed(now.mains_string, now.mains_gauge, now.mains_tension)},
          {QStringLiteral("crosses"), bed(now.crosses_string, now.crosses_gauge, now.crosses_tension)},
          {QStringLiteral("pattern"), counted ? QString::number(*racket->now.mains_count) + QStringLiteral(" × ") +
                                                    QString::number(*racket->now.crosses_count)
                                              : QString()},
          {QStringLiteral("racketStencil"), joined({qtext(now.racket_stencil), qtext(now.racket_ink)}, comma)},
          {QStringLiteral("stringStencil"), joined({qtext(now.string_stencil), qtext(now.string_ink)}, comma)},
          {QStringLiteral("readyBy"), work.timeText(now.ready_by)},
          {QStringLiteral("due"), static_cast<int>(dueOf(now.ready_by, record.stage_of(job).stage, work.now()))}};
}
