#include "sync/cli/field_input.h"

#include "core/base/iso_time.h"
#include "core/base/text.h"
#include "core/people/table_columns.h"

namespace weavelog::cli {

Outcome<Quantity> quantity_from(std::string_view text, Unit otherwise, const std::string& where) {
  const std::string_view all = trimmed(text);
  std::size_t end = 0;
  while (end < all.size() && (std::string_view("0123456789.,").find(all[end]) != std::string_view::npos ||
                              (end == 0 && (all[end] == '-' || all[end] == '+'))))
    ++end;
  const auto amount = Decimal::parse(all.substr(0, end));
  if (!amount)
    return fail(FaultCode::bad_input, "\"" + shortened(text, 40) + "\" is no quantity", where,
                "write it as 24.5 kg");
  const std::string_view unit = trimmed(all.substr(end));
  if (unit.empty()) {
    if (otherwise != Unit::none) return Quantity{*amount, otherwise};
    return fail(FaultCode::bad_input, "\"" + std::string(all) + "\" has no unit", where,
                "say it with its unit, such as " + std::string(all) + " kg");
  }
  const auto known = unit_from(unit);
  if (!known)
    return fail(FaultCode::bad_input, "\"" + shortened(unit, 20) + "\" is no unit known here", where,
                "use kg, lb, N, mm or %");
  return Quantity{*amount, *known};
}

Outcome<std::int64_t> whole_from(std::string_view text, const std::string& where) {
  std::int64_t number = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc() || end != text.data() + text.size())
    return fail(FaultCode::bad_input, "\"" + shortened(text, 40) + "\" is no whole number", where,
                "write digits only");
  return number;
}

Outcome<std::pair<std::string, std::string>> parted(const std::string& typed) {
  const auto at = typed.find('=');
  if (at == std::string::npos || at == 0)
    return fail(FaultCode::bad_input, "\"" + shortened(typed, 40) + "\" is not FIELD=VALUE", "",
                "write it as mains_tension=24kg");
  return std::pair(typed.substr(0, at), typed.substr(at + 1));
}

Outcome<std::string> typed_form(const boost::json::value& value, const std::string& where) {
  if (const auto* text = value.if_string()) return std::string(text->subview());
  if (value.is_null()) return std::string();
  if (value.is_int64() || value.is_uint64() || value.is_bool()) return boost::json::serialize(value);
  // A JSON number with decimals has lost its spelling (24.50 and 24.5 are one), so it has to be a text.
  if (const auto* object = value.if_object()) {
    const auto* amount = object->if_contains("amount");
    const auto* unit = object->if_contains("unit");
    if (amount && unit && amount->is_string() && unit->is_string())
      return std::string(amount->get_string().subview()) + " " + std::string(unit->get_string().subview());
  }
  return fail(FaultCode::bad_input, boost::json::serialize(value).substr(0, 60) + " is not understood", where,
              "give a text such as \"24.5 kg\" or a whole number");
}

Outcome<std::int64_t> time_from(std::string_view text, const Typing& typing, const std::string& where) {
  auto at = moment_from(text, typing.zone, typing.now);
  if (at) return *at;
  Fault fault = at.error();
  fault.where = where;
  return fail(std::move(fault));
}

Outcome<std::string> cleaned(std::string_view text, const std::string& where) {
  if (text.size() > 4000)
    return fail(FaultCode::bad_input, "the text has more than 4000 bytes", where, "shorten it");
  return clean_text(text, where);
}

tl::unexpected<Fault> no_choice(std::string_view text, const std::string& where,
                                const std::vector<std::string_view>& names) {
  return fail(FaultCode::bad_input, "\"" + shortened(text, 40) + "\" is none of the choices", where,
              "choose among " + listed(names));
}

}  // namespace weavelog::cli
