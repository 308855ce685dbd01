#pragma once
// Readings of rackets that were made at different times after stringing, brought to one age, so that they may stand on one chart.

#include <optional>

#include "core/bed/corrections.h"
#include "core/bed/relaxation.h"
#include "core/quality/readings.h"

namespace weavelog {

/// To which age readings are brought, s: the middle of those that are told, so that readings of one age stay as they are and no surer or less
/// sure; none where nobody tells any.
[[nodiscard]] std::optional<double> one_age_of(const ReadingTable& table);

/// The relaxation of these readings' strings: priors, and own data where readings of one racket (`racket` and `setup` alike) tell two ages at least.
/// `rising`: 1 for stiffnesses and tensions, 2 for tones, whose square goes with the tension. What can't belong together leaves the priors.
[[nodiscard]] RelaxationModel relaxation_of(std::span<const StrungReading> readings, double rising = 1);

/// Raises (or lowers) each reading to what it would have been at one_age_of(), and notes by how much and how far that is doubted. Where some tell their
/// time since stringing, those that do not are marked as of unknown age; where none does, nothing is changed and all are taken as of one age.
/// Faults, with the reading's place: bad_input (a time since stringing, pre-stretch or temperature that can't be; a material that is not known).
[[nodiscard]] Outcome<ReadingAges> bring_to_one_age(ReadingTable& table, const RelaxationModel& relaxation);
/// The same with relaxation_of() these very readings.
[[nodiscard]] Outcome<ReadingAges> bring_to_one_age(ReadingTable& table);

}  // namespace weavelog
