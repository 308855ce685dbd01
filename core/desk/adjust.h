#pragma once
// "One kilo less": changes to an agreed tension, in the unit in which it was spoken. Nothing is converted
// silently.

#include "core/model/player.h"

namespace weavelog {

enum class StringPart { mains, crosses, both };

/// A change by an amount, negative for less.
struct TensionChange {
  StringPart part = StringPart::both;
  Quantity by;
};

/// The agreed values with the tension changed. Faults: bad_input if there is no tension, if its unit is not
/// the change's (the fault names both; say the change in the tension's unit, or use in_unit() first), or if
/// nothing would be left of it.
[[nodiscard]] Outcome<Agreed> adjusted(const Agreed& agreed, const TensionChange& change);
/// Both tensions in another unit, rounded to `scale` decimals: for a person to look at and agree to.
/// Faults: bad_input if the unit is not one of force.
[[nodiscard]] Outcome<Agreed> in_unit(const Agreed& agreed, Unit unit, std::uint8_t scale);
/// The unit in which the agreed tensions are said; nothing if there is none or they differ.
[[nodiscard]] std::optional<Unit> tension_unit_of(const Agreed& agreed);

}  // namespace weavelog
