#pragma once
// Why a racket, or the chart of a machine or stringer, is off: causes in order of their chance, each with what speaks for it.
//
// Every cause says of which rackets it would have moved the readings: a machine's calibration those of the machine since some racket, a
// stringer those of the stringer, a frame those in that frame, a new reel those with that string, a wrong string this racket alone, a slipping
// clamp some at that machine, low. Normal readings, a normal unknown size of the shift and, where it began, an even chance for each of the last
// rackets give each cause its likelihood against plain scatter; with first guesses of how common each is (common practice, no source) that
// is a chance. One cause at a time is assumed. Where two causes have moved the same rackets, nothing here tells them apart, and that is said.

#include <array>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/phrases.h"
#include "core/quality/line_fit.h"

namespace weavelog {

enum class Cause { scatter, machine_calibration, clamp_slip, wrong_string, frame, stringer };
inline constexpr std::size_t kCauses = 6;
/// "scatter", "machine_calibration", ...: for programs.
[[nodiscard]] std::string_view name_of(Cause cause);

/// A racket as causes look at it.
struct SuspectRacket {
  double percent = 0;  ///< deviation from what was to be expected
  double doubt = 1;    ///< how many times as uncertain as one reading
  std::string stringer, machine, frame, string;  ///< "" where it is not known
};

/// What a gauge said of a machine: how far it pulls from what is set, uncorrected, in per cent; `moved`: the chance that it has moved since.
struct KnownBias {
  double percent = 0, error = 0;
  double moved = 0.2;  ///< common practice, no source
};

/// What is asked: why this racket is as it is, or why the chart of its machine or stringer moved. Where a clamp slips now and then, a racket that
/// reads right is explained by scatter; its machine's chart by the clamp.
enum class CauseQuestion { racket, chart };

struct CauseOptions {
  CauseQuestion question = CauseQuestion::racket;
  double scatter = 1.75;    ///< per cent, of one reading
  std::size_t window = 20;  ///< how many rackets of a machine or stringer are looked back over
  double shift = 4;         ///< how far causes move readings, as a standard deviation, per cent
  double slip = 7, slip_spread = 3;  ///< how far a slip lowers one, per cent
  double wrong = 8;         ///< how far a wrong string moves one, as a standard deviation
  std::array<double, kCauses> before{0.925, 0.02, 0.03, 0.002, 0.003, 0.02};  ///< chances before readings, in the order of Cause
  std::map<std::string, KnownBias> gauged;  ///< by machine
};

struct CauseFinding {
  Cause cause = Cause::scatter;
  double chance = 0;
  double percent = 0;        ///< how far it has moved its rackets: estimate
  Interval band;             ///< 95 %
  std::size_t rackets = 0;   ///< that it would have moved (slip: that were looked at)
  std::size_t low = 0;       ///< slip: of these, more than two scatters low
  std::size_t elsewhere = 0; ///< machine: of its rackets those by others than this stringer; stringer: those on other machines
};
struct CauseReport {
  std::vector<CauseFinding> findings;  ///< the most likely first; all that are possible
  /// These two lead, and neither is more than three times as likely as the other, as they worked together on most of what moved: a gauge, or an
  /// exchange of places, would tell.
  bool machine_or_stringer = false;
  /// The first, scatter left out, is more than three times as likely as the next.
  bool stands_out = false;
};
/// Why racket `at` of a list in order of time is as it is; later ones are not looked at. Faults: bad_input (no such racket, no scatter, a deviation
/// that is no number).
[[nodiscard]] Outcome<CauseReport> causes_of(std::span<const SuspectRacket> rackets, std::size_t at, const CauseOptions& options = {});

/// What speaks for a finding, in one sentence.
[[nodiscard]] std::string evidence_words(const Language& language, const SuspectRacket& racket, const CauseFinding& finding);
/// What to do first.
[[nodiscard]] std::string advice_words(const Language& language, const SuspectRacket& racket, const CauseFinding& finding);

/// Made by the build from core/quality/phrases.
[[nodiscard]] std::span<const PhraseText> quality_phrases();
[[nodiscard]] const Phrases& quality_words();

}  // namespace weavelog
