#pragma once
// Strongly typed 128-bit identifiers, made as UUID version 7 (RFC 9562): they sort by the time they were made.

#include <array>
#include <compare>
#include <cstdint>
#include <cstring>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/bytes.h"

namespace weavelog {

/// 16 raw bytes with a meaning given by Tag; all zero means "none".
template <class Tag>
struct Id {
  std::array<std::uint8_t, 16> bytes{};

  auto operator<=>(const Id&) const = default;
  [[nodiscard]] explicit operator bool() const { return *this != Id{}; }
  [[nodiscard]] ByteView view() const { return bytes; }
  /// 32 lower-case hexadecimal characters.
  [[nodiscard]] std::string hex() const { return to_hex(bytes); }
  [[nodiscard]] static std::optional<Id> from_hex(std::string_view text) {
    Id id;
    if (!weavelog::from_hex(text, id.bytes)) return std::nullopt;
    return id;
  }
  [[nodiscard]] static std::optional<Id> from_bytes(ByteView raw) {
    Id id;
    if (raw.size() != id.bytes.size()) return std::nullopt;
    std::memcpy(id.bytes.data(), raw.data(), raw.size());
    return id;
  }
};

using BookId = Id<struct BookTag>;
using EntityId = Id<struct EntityTag>;
/// Names one incarnation of one device's key: see core/log/author.h.
using AuthorId = Id<struct AuthorTag>;

/// The layout of RFC 9562 section 5.7 from its parts: 48-bit Unix milliseconds, 12 and 62 random bits.
[[nodiscard]] std::array<std::uint8_t, 16> uuid_v7(std::uint64_t unix_ms, std::uint16_t random_a,
                                                   std::uint64_t random_b);
/// Fresh, at that wall time, else securely random; those of one thread and millisecond sort as they were made.
template <class IdType>
[[nodiscard]] IdType make_id(std::int64_t unix_ms);
/// "017f22e2-79b0-7cc3-98c4-dc0c0c07398f"
[[nodiscard]] std::string uuid_text(const std::array<std::uint8_t, 16>& bytes);

/// For unordered containers: the bytes are random enough to be their own hash.
struct IdHash {
  template <class Tag>
  std::size_t operator()(const Id<Tag>& id) const {
    std::size_t out;
    std::memcpy(&out, id.bytes.data() + 8, sizeof out);
    return out;
  }
};

}  // namespace weavelog
