#pragma once

#include <QString>

#include "core/base/phrases.h"
#include "core/model/queries.h"

// What papers say, in English, French, Spanish and German: phrases/*.json.
[[nodiscard]] const weavelog::Phrases& paperPhrases();
[[nodiscard]] QString paperSay(const weavelog::Language& language, std::string_view key, const weavelog::PhraseArgs& args = {});

// What a player reads: their own language where papers speak it, otherwise the room's.
[[nodiscard]] weavelog::Language languageOnPaper(const std::string& players, const weavelog::Language& rooms);

// "Kova Mira": as people of the player list are called.
[[nodiscard]] QString nameOnPaper(const weavelog::PlayerRow& player);

// As it is, for what a core function already put into words.
[[nodiscard]] inline QString words(const std::string& text) { return QString::fromStdString(text); }
// "24,5 kg"; "" for nothing said.
[[nodiscard]] QString saidOnPaper(const weavelog::Language& language, const std::optional<weavelog::Quantity>& quantity);
// "Mon 26 May, 14:05"; "" for no time.
[[nodiscard]] QString timeOnPaper(const weavelog::Language& language, const std::optional<weavelog::UnixMs>& at, const std::string& zone,
                                  weavelog::Moment::Form form = weavelog::Moment::Form::day_and_time);
// "Mon 26 May 2031": a day that is looked at years later.
[[nodiscard]] QString dateOnPaper(const weavelog::Language& language, weavelog::UnixMs at, const std::string& zone);
// The parts that are not empty, with " · " between, each in its own direction.
[[nodiscard]] QString joinedOnPaper(const QStringList& parts);
// The same below each other.
[[nodiscard]] QString stackedOnPaper(QStringList lines);
