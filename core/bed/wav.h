#pragma once
// Sound files: RIFF WAVE, as recorders write them.

#include <cstdint>
#include <vector>

#include "core/base/bytes.h"
#include "core/base/outcome.h"

namespace weavelog {

struct Recording {
  std::vector<float> samples;  ///< one channel, -1 to 1: of several the loudest
  double rate = 0;             ///< a second
  int channels = 1;            ///< that the file has
  int bits = 16;
  bool floating = false;
  [[nodiscard]] double seconds() const { return rate > 0 ? static_cast<double>(samples.size()) / rate : 0; }
};

/// PCM of 8 (unsigned), 16, 24 or 32 bits, float of 32 or 64 bits, plain or extensible, 1 to 8 channels; chunks that are not known are passed over,
/// of data only the first 60 s are read. A last chunk that is shorter than it says is read as far as it goes. Faults: malformed, with the place in
/// bytes (no RIFF WAVE, no format or data, compressed, sizes that don't fit).
[[nodiscard]] Outcome<Recording> read_wav(ByteView bytes, std::string_view source = {});
/// 16 bits, one channel; samples beyond -1 to 1 are held there. For tests and examples.
[[nodiscard]] Bytes wav_of(const Recording& recording);

}  // namespace weavelog
