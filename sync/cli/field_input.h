#pragma once
// Fields as they are typed or piped in: FIELD=VALUE on the command line, {"field": value} in JSON.

#include <boost/json.hpp>
#include <charconv>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/desk/check_setup.h"
#include "core/model/player.h"

namespace weavelog::cli {

/// What is needed to understand what was typed.
struct Typing {
  std::string zone = "UTC";  ///< in which times of day are told
  UnixMs now = 0;
  Unit tension_unit = Unit::none;  ///< of a tension without a unit; none: the unit has to be said
};

/// "24.5 kg", "24,5kg", "1.25". Without a unit it is in `otherwise`; none: bad_input.
[[nodiscard]] Outcome<Quantity> quantity_from(std::string_view text, Unit otherwise,
                                              const std::string& where);
/// A whole number.
[[nodiscard]] Outcome<std::int64_t> whole_from(std::string_view text, const std::string& where);
/// "field=value", parted.
[[nodiscard]] Outcome<std::pair<std::string, std::string>> parted(const std::string& typed);
/// A JSON value as it would have been typed; a quantity's {"amount", "unit"} too. Faults: bad_input.
[[nodiscard]] Outcome<std::string> typed_form(const boost::json::value& value, const std::string& where);
/// A time, as core/base/iso_time.h reads it.
[[nodiscard]] Outcome<std::int64_t> time_from(std::string_view text, const Typing& typing,
                                              const std::string& where);
[[nodiscard]] Outcome<std::string> cleaned(std::string_view text, const std::string& where);
[[nodiscard]] tl::unexpected<Fault> no_choice(std::string_view text, const std::string& where,
                                              const std::vector<std::string_view>& names);

namespace detail {

inline Outcome<> read(std::string& member, std::string_view text, const Typing&, const std::string& field) {
  auto clean = cleaned(text, field);
  if (!clean) return fail(clean.error());
  member = std::move(*clean);
  return {};
}
inline Outcome<> read(std::optional<Quantity>& member, std::string_view text, const Typing& typing,
                      const std::string& field) {
  const Unit usual = fixed_unit(field);
  const auto quantity = quantity_from(text, usual == Unit::none ? typing.tension_unit : usual, field);
  if (!quantity) return fail(quantity.error());
  member = *quantity;
  return {};
}
inline Outcome<> read(std::optional<std::int64_t>& member, std::string_view text, const Typing& typing,
                      const std::string& field) {
  const bool time = field == "at" || field == "ready_by" || field.ends_with("_at");
  const auto number = time ? time_from(text, typing, field) : whole_from(text, field);
  if (!number) return fail(number.error());
  member = *number;
  return {};
}
inline Outcome<> read(Unit& member, std::string_view text, const Typing&, const std::string& field) {
  const auto unit = unit_from(text);
  if (!unit) return no_choice(text, field, {"kg", "lb", "N"});
  member = *unit;
  return {};
}
template <class Enum>
requires std::is_enum_v<Enum> Outcome<> read(Enum& member, std::string_view text, const Typing&,
                                             const std::string& field) {
  if (const auto choice = choice_from<Enum>(text)) {
    member = *choice;
    return {};
  }
  std::vector<std::string_view> names;
  for (const auto& choice : choices(Enum{})) names.push_back(choice.name);
  return no_choice(text, field, names);
}
/// Identifiers, bytes and yes-or-no are never typed by hand.
template <class Other>
Outcome<> read(Other&, std::string_view, const Typing&, const std::string& field) {
  return fail(FaultCode::bad_input, "this field is filled in by the program", field, "leave it out");
}

}  // namespace detail

/// The names of a struct's fields, for help and faults.
template <class S>
[[nodiscard]] std::string field_names() {
  std::string out;
  for_each_field<S>([&](FieldTag, std::string_view name, bool, auto) {
    if (!out.empty()) out += ", ";
    out += name;
  });
  return out;
}

/// Sets one field; an empty text clears it. Faults: bad_input, naming the field and what was expected.
template <class S>
[[nodiscard]] Outcome<> set_field(S& held, std::string_view field, std::string_view text,
                                  const Typing& typing) {
  Outcome<> done = fail(FaultCode::bad_input, "there is no field of that name", std::string(field),
                        "choose among " + field_names<S>());
  for_each_field<S>([&](FieldTag, std::string_view name, bool, auto member) {
    if (name != field) return;
    auto& place = held.*member;
    if (text.empty()) {
      place = {};
      done = {};
    } else {
      done = detail::read(place, text, typing, std::string(field));
    }
  });
  return done;
}

/// Every "field=value" of the list.
template <class S>
[[nodiscard]] Outcome<> set_fields(S& held, std::span<const std::string> typed, const Typing& typing) {
  for (const std::string& one : typed) {
    const auto parts = parted(one);
    if (!parts) return fail(parts.error());
    if (auto set = set_field(held, parts->first, parts->second, typing); !set) return set;
  }
  return {};
}

/// Every member of the object that is not one of `not_these`; `where` names the object.
template <class S>
[[nodiscard]] Outcome<> set_fields(S& held, const boost::json::object& object, const Typing& typing,
                                   const std::string& where,
                                   std::span<const std::string_view> not_these = {}) {
  for (const auto& [key, value] : object) {
    const std::string name(key);
    if (std::find(not_these.begin(), not_these.end(), name) != not_these.end()) continue;
    const std::string place = where.empty() ? name : where + ", " + name;
    const auto text = typed_form(value, place);
    if (!text) return fail(text.error());
    if (auto set = set_field(held, name, *text, typing); !set) {
      Fault fault = set.error();
      fault.where = place;
      return fail(std::move(fault));
    }
  }
  return {};
}

}  // namespace weavelog::cli
