#pragma once
// A cereal archive pair of our own, for everything that is hashed, stored or sent. Integers are variable-length (7 bits a
// byte, least first, shortest form only); signed ones zig-zag. On the way in every size is checked against the bytes that
// are left before anything is allocated, and left-over bytes are an error. Include this in few files: cereal is heavy.

#include <cereal/cereal.hpp>
#include <cstdint>
#include <limits>
#include <stdexcept>
#include <string>
#include <type_traits>
#include <vector>

#include "core/base/bytes.h"
#include "core/base/outcome.h"

namespace weavelog {

/// Thrown inside decoding only; decode() turns it into a malformed fault.
class ArchiveError : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

class OutArchive : public cereal::OutputArchive<OutArchive, cereal::AllowEmptyClassElision> {
 public:
  explicit OutArchive(Bytes& out) : OutputArchive(this), out_(out) {}

  void raw(ByteView bytes) { out_.insert(out_.end(), bytes.begin(), bytes.end()); }
  void byte(std::uint8_t value) { out_.push_back(value); }
  void varint(std::uint64_t value) {
    while (value >= 0x80) {
      out_.push_back(static_cast<std::uint8_t>(value | 0x80));
      value >>= 7;
    }
    out_.push_back(static_cast<std::uint8_t>(value));
  }
  void zigzag(std::int64_t value) {
    varint((static_cast<std::uint64_t>(value) << 1) ^ static_cast<std::uint64_t>(value >> 63));
  }
  void sized(ByteView bytes) {
    varint(bytes.size());
    raw(bytes);
  }

 private:
  Bytes& out_;
};

/// Takes bytes apart; InArchive adds cereal to it. ArchiveError where they are not what they should be.
class ByteReader {
 public:
  explicit ByteReader(ByteView in) : in_(in) {}

  [[nodiscard]] std::size_t left() const { return in_.size(); }
  [[nodiscard]] ByteView take(std::size_t count) {
    if (count > in_.size()) throw ArchiveError("ends too early");
    const ByteView taken = in_.first(count);
    in_ = in_.subspan(count);
    return taken;
  }
  [[nodiscard]] std::uint8_t byte() { return take(1)[0]; }
  [[nodiscard]] std::uint64_t varint() {
    std::uint64_t value = 0;
    for (unsigned shift = 0; shift < 64; shift += 7) {
      const std::uint8_t next = byte();
      if (shift == 63 && next > 1) throw ArchiveError("an integer of more than 64 bits");
      value |= static_cast<std::uint64_t>(next & 0x7f) << shift;
      if ((next & 0x80) == 0) {
        // One value, one encoding: a padded form would give equal content another hash.
        if (next == 0 && shift != 0) throw ArchiveError("an integer not in its shortest form");
        return value;
      }
    }
    throw ArchiveError("an integer of more than 64 bits");
  }
  template <class T>
  [[nodiscard]] T varint_as() {
    const std::uint64_t value = varint();
    if (value > std::numeric_limits<T>::max()) throw ArchiveError("an integer out of its range");
    return static_cast<T>(value);
  }
  [[nodiscard]] std::int64_t zigzag() {
    const std::uint64_t value = varint();
    return static_cast<std::int64_t>(value >> 1) ^ -static_cast<std::int64_t>(value & 1);
  }
  /// A count of things that take at least `smallest` bytes each.
  [[nodiscard]] std::size_t count(std::size_t smallest, std::size_t cap) {
    const std::uint64_t value = varint();
    if (value > cap || value > in_.size() / (smallest == 0 ? 1 : smallest)) throw ArchiveError("a count larger than what follows");
    return static_cast<std::size_t>(value);
  }
  [[nodiscard]] ByteView sized(std::size_t cap) { return take(count(1, cap)); }
  void expect_end() const {
    if (!in_.empty()) throw ArchiveError("left-over bytes");
  }

 private:
  ByteView in_;
};

class InArchive : public ByteReader, public cereal::InputArchive<InArchive, cereal::AllowEmptyClassElision> {
 public:
  explicit InArchive(ByteView in) : ByteReader(in), InputArchive(this) {}
};

}  // namespace weavelog

CEREAL_SETUP_ARCHIVE_TRAITS(weavelog::InArchive, weavelog::OutArchive)

namespace weavelog {

// --- cereal's arithmetic, strings, byte arrays and vectors (cereal itself takes enumerations as their integers)

template <class T>
concept Number = std::is_integral_v<T> && !std::is_same_v<T, bool>;

template <Number T>
void CEREAL_SAVE_FUNCTION_NAME(OutArchive& ar, const T& value) {
  if constexpr (std::is_signed_v<T>) {
    ar.zigzag(value);
  } else {
    ar.varint(value);
  }
}
template <Number T>
void CEREAL_LOAD_FUNCTION_NAME(InArchive& ar, T& value) {
  if constexpr (std::is_signed_v<T>) {
    const std::int64_t wide = ar.zigzag();
    if (wide < std::numeric_limits<T>::min() || wide > std::numeric_limits<T>::max())
      throw ArchiveError("an integer out of its range");
    value = static_cast<T>(wide);
  } else {
    value = ar.varint_as<T>();
  }
}
inline void CEREAL_SAVE_FUNCTION_NAME(OutArchive& ar, const bool& value) { ar.byte(value ? 1 : 0); }
inline void CEREAL_LOAD_FUNCTION_NAME(InArchive& ar, bool& value) {
  const std::uint8_t held = ar.byte();
  if (held > 1) throw ArchiveError("neither true nor false");
  value = held == 1;
}

template <std::size_t N>
void CEREAL_SAVE_FUNCTION_NAME(OutArchive& ar, const std::array<std::uint8_t, N>& value) {
  ar.raw(value);
}
template <std::size_t N>
void CEREAL_LOAD_FUNCTION_NAME(InArchive& ar, std::array<std::uint8_t, N>& value) {
  const ByteView taken = ar.take(N);
  std::copy(taken.begin(), taken.end(), value.begin());
}

inline void CEREAL_SAVE_FUNCTION_NAME(OutArchive& ar, const std::string& value) { ar.sized(as_bytes(value)); }
inline void CEREAL_LOAD_FUNCTION_NAME(InArchive& ar, std::string& value) {
  value = as_text(ar.sized(std::numeric_limits<std::uint32_t>::max()));
}
inline void CEREAL_SAVE_FUNCTION_NAME(OutArchive& ar, const Bytes& value) { ar.sized(value); }
inline void CEREAL_LOAD_FUNCTION_NAME(InArchive& ar, Bytes& value) {
  const ByteView taken = ar.sized(std::numeric_limits<std::uint32_t>::max());
  value.assign(taken.begin(), taken.end());
}

template <class T>
void CEREAL_SAVE_FUNCTION_NAME(OutArchive& ar, const std::vector<T>& values) {
  ar.varint(values.size());
  for (const auto& value : values) ar(value);
}
/// Grows element by element, each of which takes a byte at least: memory stays in proportion to the bytes that came.
template <class T>
void CEREAL_LOAD_FUNCTION_NAME(InArchive& ar, std::vector<T>& values) {
  const std::size_t count = ar.count(1, std::numeric_limits<std::uint32_t>::max());
  values.clear();
  for (std::size_t i = 0; i < count; ++i) ar(values.emplace_back());
}

template <class Tag>
struct Id;
template <class Tag>
void CEREAL_SAVE_FUNCTION_NAME(OutArchive& ar, const Id<Tag>& id) {
  ar.raw(id.bytes);
}
template <class Tag>
void CEREAL_LOAD_FUNCTION_NAME(InArchive& ar, Id<Tag>& id) {
  const ByteView taken = ar.take(id.bytes.size());
  std::copy(taken.begin(), taken.end(), id.bytes.begin());
}

/// The bytes of anything that serialises.
template <class T>
[[nodiscard]] Bytes encode(const T& value) {
  Bytes out;
  OutArchive ar(out);
  ar(value);
  return out;
}

/// The whole of `bytes` as a T, or a malformed fault that names `what`.
template <class T>
[[nodiscard]] Outcome<T> decode(ByteView bytes, const char* what) {
  try {
    InArchive ar(bytes);
    T value{};
    ar(value);
    ar.expect_end();
    return value;
  } catch (const ArchiveError& error) {
    return fail(FaultCode::malformed, error.what(), what);
  }
}

}  // namespace weavelog
