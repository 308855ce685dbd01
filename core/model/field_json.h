#pragma once
// Fields as JSON (RFC 8259), for exports and commands: times ISO 8601 in UTC, quantities {"amount": "24.5",
// "unit": "kg"} with the digits as spoken, choices by name, identifiers in hexadecimal, fields without a
// value left out.

#include <boost/json.hpp>
#include <optional>
#include <string>
#include <string_view>

#include "core/model/field.h"

namespace weavelog {

/// `field` is its name in the table: those called at, ready_by or ..._at are moments.
[[nodiscard]] boost::json::value to_json(std::string_view field, const std::string& member);
[[nodiscard]] boost::json::value to_json(std::string_view field, const Bytes& member);
[[nodiscard]] boost::json::value to_json(std::string_view field, const std::optional<bool>& member);
[[nodiscard]] boost::json::value to_json(std::string_view field, const std::optional<std::int64_t>& member);
[[nodiscard]] boost::json::value to_json(std::string_view field, const std::optional<Quantity>& member);
[[nodiscard]] boost::json::value to_json(std::string_view field, Unit member);
template <class Tag>
[[nodiscard]] boost::json::value to_json(std::string_view, const Id<Tag>& member) {
  return boost::json::string(member.hex());
}
template <class Enum>
requires std::is_enum_v<Enum>
[[nodiscard]] boost::json::value to_json(std::string_view, Enum member) {
  const std::string_view name = name_of_choice(member);
  if (name.empty()) return boost::json::value(static_cast<std::int64_t>(member));
  return boost::json::string(name);
}

/// All fields of a struct that have a value, by name.
template <class S>
[[nodiscard]] boost::json::object fields_json(const S& held) {
  boost::json::object out;
  for_each_field<S>([&](FieldTag, std::string_view name, bool, auto member) {
    if (!is_cleared(to_value(held.*member))) out[name] = to_json(name, held.*member);
  });
  return out;
}

}  // namespace weavelog
