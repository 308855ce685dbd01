#pragma once
// Several taps of one bed heard as one: where each alone is drowned, what all have in common still stands out.

#include <span>
#include <vector>

#include "core/bed/listen.h"

namespace weavelog {

/// What taps say together, of samples between two frequencies. Without an answer `doubt` says why;
/// `too_noisy` where they have too little in common. Fewer than three taps have nothing to say together.
[[nodiscard]] HeardTone taps_together(std::span<const float> samples, double rate, double low, double high);

}  // namespace weavelog
