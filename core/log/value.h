#pragma once
// What one field holds.

#include <cstdint>
#include <string>
#include <variant>

#include "core/base/bytes.h"
#include "core/base/id.h"
#include "core/base/units.h"

namespace weavelog {

/// A value of a kind that this version does not know: kept and relayed byte for byte.
struct UnknownValue {
  std::uint8_t head = 0;  ///< the kind byte as it came
  Bytes payload;
  bool operator==(const UnknownValue&) const = default;
};

/// monostate: the field was cleared. Times are UnixMs in an integer.
using Value = std::variant<std::monostate, bool, std::int64_t, Quantity, std::string, Bytes, EntityId, BookId, UnknownValue>;

[[nodiscard]] inline bool is_cleared(const Value& value) { return std::holds_alternative<std::monostate>(value); }
/// For people and logs: "24.5 kg", "true", the text itself, hex of bytes and ids.
[[nodiscard]] std::string text_of(const Value& value);

}  // namespace weavelog
