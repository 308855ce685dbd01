#pragma once

#include <QVariant>

#include "core/base/language.h"
#include "sync/carry/player_card.h"

// What a player card says, line by line: [{text, detail, kind}], kind "setup" or "racket".
[[nodiscard]] QVariantList cardLines(const weavelog::Language& language, const weavelog::PlayerCard& card);
// Whose it is: "Kova, Mira" and "POR · Deutsch".
[[nodiscard]] QString cardName(const weavelog::PlayerCard& card);
[[nodiscard]] QString cardAbout(const weavelog::PlayerCard& card);
