#pragma once
// The tone of a string bed out of a recording of taps: where it is struck, which of the partials is the lowest mode, how sure that is. Where it is
// not sure it says so in place of a number.

#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/base/outcome.h"

namespace weavelog {

struct ListenOptions {
  double lowest = 380, highest = 850;  ///< Hz between which the tone is sought; published: beds sound at some 500 to 700
  /// Hz that the racket is reckoned to have; narrows the search to a third either way.
  std::optional<double> expected;
};

/// Why there is no tone.
enum class ToneDoubt {
  none,
  no_tap,       ///< nothing begins suddenly
  too_noisy,    ///< the tone does not stand out of the noise, or not long enough to be told to half a percent
  several,      ///< several tones could be it
  steady,       ///< what sounds does not die away as a bed does: a voice, a machine, hum
  taps_differ,  ///< taps say different tones
  echoes        ///< the room rings along and may have moved the tone: three taps are needed, the racket moved in between
};
/// "none", "no_tap", ...
[[nodiscard]] std::string_view name_of(ToneDoubt doubt);

/// One tap as heard.
struct HeardTap {
  double at = 0;  ///< s from the beginning
  double hz = 0;
  double relative_sd = 0;
  double decay = 0;        ///< s in which it falls to 1/e
  bool echoes = false;     ///< beside the tone rings what no single tone explains
  double above_noise = 0;  ///< dB, of the matched tone over the noise there
  ToneDoubt doubt = ToneDoubt::none;
};

struct HeardTone {
  std::optional<double> hz;  ///< nothing: it does not know
  double relative_sd = 0;    ///< of hz
  double confidence = 0;     ///< 0 to 1: that hz is within half a percent of the bed's lowest mode
  ToneDoubt doubt = ToneDoubt::none;
  std::vector<HeardTap> taps;  ///< those that were looked at, in time
};

/// Samples of one channel, -1 to 1; `rate` in Hz. At most the first 60 s are heard. Faults, all bad_input: "too short" (under 0.15 s), "silent"
/// (nothing above -66 dB), "clipped" (runs of samples at the top), no rate of 6,000 to 400,000 Hz, a sample that is no number, a range that is none.
[[nodiscard]] Outcome<HeardTone> listen(std::span<const float> samples, double rate, const ListenOptions& options = {});

}  // namespace weavelog
