#pragma once

#include <QVariant>

#include "app-qml/view/work.h"
#include "core/desk/player_record.h"

// What a racket in the hand is compared with, in few lines: {mains, crosses, pattern, racketStencil, stringStencil, readyBy, due}.
// mains "Tarnbrook Silk, 1.25 mm, 25 kg", pattern "16 × 19", stencils "open ring, red", readyBy "14:05", due as JobCard::Due; "" for what
// is not said. Empty for a job that is not in the record.
[[nodiscard]] QVariantMap jobBrief(const Work& work, const weavelog::PlayerRecord& record, const weavelog::EntityId& job);
