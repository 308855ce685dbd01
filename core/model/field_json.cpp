#include "core/model/field_json.h"

#include "core/base/iso_time.h"

namespace weavelog {
namespace {

namespace json = boost::json;

/// The naming habit of the tables: numbers so named are moments.
bool is_time(std::string_view field) {
  return field == "at" || field == "ready_by" || field.ends_with("_at");
}

}  // namespace

json::value to_json(std::string_view, const std::string& member) {
  return json::string(member);
}
json::value to_json(std::string_view, const Bytes& member) {
  return json::string(to_hex(member));
}
json::value to_json(std::string_view, const std::optional<bool>& member) {
  return json::value(member.value_or(false));
}
json::value to_json(std::string_view field, const std::optional<std::int64_t>& member) {
  if (is_time(field)) return json::string(iso_utc(member.value_or(0)));
  return json::value(member.value_or(0));
}
json::value to_json(std::string_view, const std::optional<Quantity>& member) {
  const Quantity quantity = member.value_or(Quantity{});
  return json::object{{"amount", quantity.amount.text()}, {"unit", symbol_of(quantity.unit)}};
}
json::value to_json(std::string_view, Unit member) {
  return json::string(symbol_of(member));
}

}  // namespace weavelog
