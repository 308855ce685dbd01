#include "core/bed/wav.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <string>

namespace weavelog {
namespace {

constexpr double kMostWavSeconds = 60;

std::uint32_t number_at(ByteView bytes, std::size_t at, std::size_t width) {
  std::uint32_t out = 0;
  for (std::size_t i = 0; i < width; ++i) out |= std::uint32_t{bytes[at + i]} << (8 * i);
  return out;
}

bool says(ByteView bytes, std::size_t at, std::string_view four) {
  return at + 4 <= bytes.size() && std::equal(four.begin(), four.end(), bytes.begin() + static_cast<std::ptrdiff_t>(at),
                                              [](char a, std::uint8_t b) { return static_cast<std::uint8_t>(a) == b; });
}

float sample_at(ByteView bytes, std::size_t at, int bits, bool floating) {
  if (floating && bits == 32) return std::bit_cast<float>(number_at(bytes, at, 4));
  if (floating)
    return static_cast<float>(std::bit_cast<double>(std::uint64_t{number_at(bytes, at, 4)} | std::uint64_t{number_at(bytes, at + 4, 4)} << 32U));
  if (bits == 8) return (static_cast<float>(bytes[at]) - 128) / 128;
  const auto width = static_cast<std::size_t>(bits / 8);
  const auto shifted = static_cast<std::int32_t>(number_at(bytes, at, width) << (32 - bits));  // the sign comes to the top
  return static_cast<float>(static_cast<double>(shifted) / 2147483648.0);
}

void put(Bytes& to, std::uint32_t value, int width) {
  for (int i = 0; i < width; ++i) to.push_back(static_cast<std::uint8_t>(value >> (8 * i)));
}
void put(Bytes& to, std::string_view text) {
  to.insert(to.end(), text.begin(), text.end());
}

}  // namespace

Outcome<Recording> read_wav(ByteView bytes, std::string_view source) {
  const auto wrong = [&](std::size_t at, const char* what, const char* what_to_do) {
    std::string where = "byte " + std::to_string(at);
    if (!source.empty()) where = std::string(source) + ", " + where;
    return fail(FaultCode::malformed, what, where, what_to_do);
  };
  if (!says(bytes, 0, "RIFF") || !says(bytes, 8, "WAVE")) return wrong(0, "this is no WAV file", "record or save as WAV (PCM)");
  std::size_t at = 12, data = 0, data_size = 0;
  bool has_format = false;
  std::uint32_t code = 0, channels = 0, rate = 0, bits = 0, block = 0;
  while (at + 8 <= bytes.size() && data == 0) {
    const std::size_t size = number_at(bytes, at + 4, 4), from = at + 8, held = std::min(size, bytes.size() - from);
    if (says(bytes, at, "fmt ")) {
      if (held < 16) return wrong(at, "the format's chunk is cut off", "save the file again");
      code = number_at(bytes, from, 2);
      channels = number_at(bytes, from + 2, 2);
      rate = number_at(bytes, from + 4, 4);
      block = number_at(bytes, from + 12, 2);
      bits = number_at(bytes, from + 14, 2);
      if (code == 0xFFFE && held >= 26) code = number_at(bytes, from + 24, 2);  // extensible: the first two bytes of its subformat
      has_format = true;
      if (code != 1 && code != 3) return wrong(from, "this WAV is compressed", "save it as PCM, 16 bits");
      if (channels < 1 || channels > 8) return wrong(from + 2, "a recording has 1 to 8 channels", "save it with one channel");
      if (rate < 1000 || rate > 400'000) return wrong(from + 4, "no recording has this rate", "record with 44,100 samples a second");
      const bool fits = code == 3 ? bits == 32 || bits == 64 : bits == 8 || bits == 16 || bits == 24 || bits == 32;
      if (!fits || block != channels * bits / 8) return wrong(from + 14, "samples of this size are not read", "save it as PCM, 16 bits");
    } else if (says(bytes, at, "data")) {
      if (!has_format) return wrong(at, "the data come before their format", "save the file again");
      data = from;
      data_size = held;
    }
    at = from + size + size % 2;
  }
  if (!has_format) return wrong(at, "the format's chunk is missing", "save the file again");
  if (data == 0) return wrong(at, "there is no sound in this file", "record again");
  Recording out;
  out.rate = rate;
  out.channels = static_cast<int>(channels);
  out.bits = static_cast<int>(bits);
  out.floating = code == 3;
  const std::size_t frames = std::min(data_size / block, static_cast<std::size_t>(kMostWavSeconds * out.rate)), width = bits / 8;
  // The loudest channel: a sum could cancel.
  std::size_t best = 0;
  double loudest = -1;
  for (std::size_t channel = 0; channel < channels && channels > 1; ++channel) {
    double energy = 0;
    for (std::size_t i = 0; i < frames; ++i) {
      const double one = static_cast<double>(sample_at(bytes, data + i * block + channel * width, out.bits, out.floating));
      if (std::isfinite(one)) energy += one * one;
    }
    if (energy > loudest) {
      loudest = energy;
      best = channel;
    }
  }
  out.samples.reserve(frames);
  for (std::size_t i = 0; i < frames; ++i) out.samples.push_back(sample_at(bytes, data + i * block + best * width, out.bits, out.floating));
  return out;
}

Bytes wav_of(const Recording& recording) {
  Bytes out;
  const auto size = static_cast<std::uint32_t>(recording.samples.size() * 2), rate = static_cast<std::uint32_t>(recording.rate);
  put(out, "RIFF");
  put(out, 36 + size, 4);
  put(out, "WAVEfmt ");
  put(out, 16, 4);
  put(out, 1, 2);
  put(out, 1, 2);
  put(out, rate, 4);
  put(out, rate * 2, 4);
  put(out, 2, 2);
  put(out, 16, 2);
  put(out, "data");
  put(out, size, 4);
  for (const float one : recording.samples) {
    const auto value = static_cast<std::int16_t>(std::lround(std::clamp(static_cast<double>(one), -1.0, 1.0) * 32767));
    put(out, static_cast<std::uint16_t>(value), 2);
  }
  return out;
}

}  // namespace weavelog
