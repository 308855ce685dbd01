#pragma once
// Which tension keeps the feel when something about a racket changes.

#include "core/base/units.h"
#include "core/bed/corrections.h"
#include "core/bed/setup.h"

namespace weavelog {

struct EquivalentAsk {
  BedSetup from, to;        ///< `to` with the tensions that it would have if nothing were done
  BedWhose of_from, of_to;  ///< for corrections; the same frame and model mean one racket
  BedGoal goal;
  enum class Adjust { both, mains, crosses } adjust = Adjust::both;  ///< both: in the ratio that `to` has
  Unit unit = Unit::kilogram_force;                                  ///< in which the player speaks
  double step = 0;  ///< in that unit, to which the machine is set; 0: half a kilogram, a pound, five newtons
};

/// A tension to set, as an estimate.
struct EquivalentTension {
  Quantity set;              ///< rounded to the step
  double exact = 0;          ///< N
  double low = 0, high = 0;  ///< N: nine times of ten between
  double before = 0;         ///< N, what `from` pulls
};

struct Equivalent {
  EquivalentTension mains, crosses;
  double wanted = 0;       ///< N/m or Hz, what `from` has, corrected
  double reached = 0;      ///< what `to` has with the rounded tensions, corrected
  double relative_sd = 0;  ///< of the ratio of both
  double from_data = 0;    ///< of the corrections; 0 all model
  double correction = 0;   ///< factor that own readings put on the ratio
  std::vector<BedDoubt> doubts;
  BedCorrection readings;  ///< that were there for `to`
};

/// Faults: those of BedReckoner; bad_input (no tension that a machine pulls, 40 to 500 N, keeps it; a step that is none, a unit that is no force).
[[nodiscard]] Outcome<Equivalent> equivalent(const EquivalentAsk& ask, const BedReckoner& reckoner, const BedCorrections& corrections = {});

/// The multiple of `step` next to it, in `unit`, with the decimals of the step; halves away from zero. Faults: bad_input.
[[nodiscard]] Outcome<Quantity> set_to_step(double newtons, Unit unit, double step);

}  // namespace weavelog
