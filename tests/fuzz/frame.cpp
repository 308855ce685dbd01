// Frames as a hostile peer may send them, and the messages in them. `frame` takes the bytes as they cross; `message` puts its
// input behind a sound header, so that the fuzzer need not guess one, compressed or not.

#include <zstd.h>

#include "tests/fuzz/every_message.h"
#include "tests/fuzz/target_list.h"

namespace weavelog::fuzz {
namespace {

constexpr std::uint8_t kFrameVersion = 1;
constexpr std::uint8_t kCompressed = 0x80;

void take(ByteView frame) {
  const auto message = decode_frame(frame);
  if (!message) return;
  Bytes again;
  try {
    again = encode_frame(*message);
  } catch (const std::length_error&) {
    return;  // what was inflated to more than a frame holds can be read, but is not sent on
  }
  const auto twice = decode_frame(again);
  must_hold(twice && *twice == *message, "a message does not survive being sent on");
}

/// As encode_frame() would have it if it never compressed.
Bytes plain_frame(const Message& message) {
  const Bytes frame = encode_frame(message);
  if ((frame[1] & kCompressed) == 0) return frame;
  std::size_t at = 2, size = 0;
  for (int shift = 0;; shift += 7) {
    size |= static_cast<std::size_t>(frame[at] & 0x7f) << shift;
    if ((frame[at++] & 0x80) == 0) break;
  }
  Bytes out(2 + size);
  out[0] = frame[0];
  out[1] = static_cast<std::uint8_t>(frame[1] & ~kCompressed);
  must_hold(ZSTD_decompress(out.data() + 2, size, frame.data() + at, frame.size() - at) == size, "zstd");
  return out;
}

}  // namespace

void run_frame(ByteView input) { take(input); }

std::vector<Bytes> seeds_frame() {
  std::vector<Bytes> out;
  for (const Message& message : every_message()) out.push_back(encode_frame(message));
  return out;
}

void run_message(ByteView input) {
  Input in(input);
  const std::uint8_t number = in.byte();
  const ByteView body = in.rest();
  Bytes frame{kFrameVersion, static_cast<std::uint8_t>(number & 0x7f)};
  if ((number & kCompressed) == 0) {
    frame.insert(frame.end(), body.begin(), body.end());
  } else {
    frame[1] |= kCompressed;
    for (std::size_t size = body.size();; size >>= 7) {
      frame.push_back(static_cast<std::uint8_t>((size & 0x7f) | (size >= 0x80 ? 0x80 : 0)));
      if (size < 0x80) break;
    }
    const std::size_t at = frame.size();
    frame.resize(at + ZSTD_compressBound(body.size()));
    const std::size_t packed = ZSTD_compress(frame.data() + at, frame.size() - at, body.data(), body.size(), 1);
    must_hold(ZSTD_isError(packed) == 0, "zstd");
    frame.resize(at + packed);
  }
  take(frame);
}

std::vector<Bytes> seeds_message() {
  std::vector<Bytes> out;
  for (const Message& message : every_message()) {
    Bytes seed = plain_frame(message);
    seed.erase(seed.begin());
    out.push_back(seed);
    seed[0] |= kCompressed;
    out.push_back(std::move(seed));
  }
  return out;
}

}  // namespace weavelog::fuzz
