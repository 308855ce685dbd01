#pragma once

#include <QString>

#include "core/base/phrases.h"

// What papers say, in English, French, Spanish and German: phrases/*.json.
[[nodiscard]] const weavelog::Phrases& paperPhrases();
[[nodiscard]] QString paperSay(const weavelog::Language& language, std::string_view key, const weavelog::PhraseArgs& args = {});

// "24,5 kg"; "" for nothing said.
[[nodiscard]] QString saidOnPaper(const weavelog::Language& language, const std::optional<weavelog::Quantity>& quantity);
// "Mon 26 May, 14:05"; "" for no time.
[[nodiscard]] QString timeOnPaper(const weavelog::Language& language, const std::optional<weavelog::UnixMs>& at, const std::string& zone,
                                  weavelog::Moment::Form form = weavelog::Moment::Form::day_and_time);
// The parts that are not empty, with " · " between, each in its own direction.
[[nodiscard]] QString joinedOnPaper(const QStringList& parts);
// The same below each other.
[[nodiscard]] QString stackedOnPaper(QStringList lines);
