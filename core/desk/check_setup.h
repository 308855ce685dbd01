#pragma once
// Is what was said plausible? Finds slips before they are strung. It never decides about a frame: the maker's
// instructions, local rules and the player do.

#include <string>
#include <string_view>
#include <vector>

#include "core/desk/phrases.h"
#include "core/model/player.h"

namespace weavelog {

/// The limits, in the units in which rooms speak of them. Common practice, no source.
struct SetupLimits {
  double reach_low_kg = 5;  ///< outside these no frame is strung: refused
  double reach_high_kg = 42;
  double usual_low_kg = 14;  ///< outside these: a warning
  double usual_high_kg = 32;
  double difference_kg = 3;   ///< between mains and crosses
  double gauge_low_mm = 0.8;  ///< outside these it is no string: refused
  double gauge_high_mm = 2.0;
  double usual_gauge_low_mm = 1.0;
  double usual_gauge_high_mm = 1.5;
  double prestretch_high_percent = 20;
  double knot_pretension_high_percent = 20;
};

struct SetupFinding {
  bool refused = false;  ///< otherwise a warning: the person may go on
  std::string_view
      code;  ///< stable: "unit_slip", "tension_beyond_reach", ...; phrase keys check.CODE and check.CODE.do
  std::string_view field;  ///< of Agreed, where it is
  PhraseArgs args;

  /// What, where and what to do, in the language of who reads it.
  [[nodiscard]] std::string what(const Language& language) const;
  [[nodiscard]] std::string where(const Language& language) const;
  [[nodiscard]] std::string what_to_do(const Language& language) const;
  /// The same in English as a fault.
  [[nodiscard]] Fault fault() const;
};

/// The unit of a field of Agreed in which nobody says it; none where the player chooses one.
[[nodiscard]] Unit fixed_unit(std::string_view field);

/// Refusals first, then by field. `racket` may be null.
[[nodiscard]] std::vector<SetupFinding> check_setup(const Agreed& agreed, const Racket* racket,
                                                    const SetupLimits& limits = {});
/// The first refusal as a fault; nothing if there is none.
[[nodiscard]] Outcome<> require_sound(const Agreed& agreed, const Racket* racket);

}  // namespace weavelog
