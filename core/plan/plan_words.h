#pragma once
// What a plan says to people: phrases in core/plan/phrases, all four languages.

#include "core/base/phrases.h"
#include "core/plan/home_benches.h"

namespace weavelog {

/// Made by the build from core/plan/phrases.
[[nodiscard]] std::span<const PhraseText> plan_phrases();
[[nodiscard]] const Phrases& plan_words();

/// "final", "quarter-final", "round of 16" of a draw of so many rounds.
[[nodiscard]] std::string round_words(const Language& language, int rounds, int round);
/// The same of a meeting; of one in qualifying just that.
[[nodiscard]] std::string round_words(const Language& language, const HomeBenches& room, const BenchMeeting& meeting);
/// Why a player is on their bench, in one sentence.
[[nodiscard]] std::string reason_words(const Language& language, const HomeBenches& room, const BenchChoice& choice, std::size_t person,
                                       const BenchReason& reason);
/// "apart", "even_load", ...: for programs.
[[nodiscard]] std::string_view name_of(BenchReason::Kind kind);
/// "kept", "impossible", "not_found", "none".
[[nodiscard]] std::string_view name_of(BenchSolution::Rule rule);

}  // namespace weavelog
