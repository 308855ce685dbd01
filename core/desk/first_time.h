#pragma once
// What to ask a player who has never been here, in the order in which it is natural to ask.

#include <span>
#include <string_view>
#include <vector>

#include "core/model/player.h"

namespace weavelog {

enum class AskedOf : std::uint8_t { person, racket, agreed, drop_off };

struct FirstTimeQuestion {
  AskedOf of;
  std::string_view field;  ///< of Person, Racket, Agreed or DropOff, as in the registry
  bool needed;             ///< stringing cannot begin without it; everything else can be skipped
};

/// All questions, in order.
[[nodiscard]] std::span<const FirstTimeQuestion> first_time_questions();

/// Answers so far.
struct FirstTimeAnswers {
  Person person;
  Racket racket;
  Agreed agreed;
  DropOff drop_off;
};
/// Needed questions that are not answered yet, in order: empty means that stringing could begin.
[[nodiscard]] std::vector<FirstTimeQuestion> still_needed(const FirstTimeAnswers& answers);
[[nodiscard]] bool is_answered(const FirstTimeAnswers& answers, const FirstTimeQuestion& question);

}  // namespace weavelog
