#include "core/log/value.h"

namespace weavelog {
namespace {

struct Teller {
  std::string operator()(std::monostate) const { return {}; }
  std::string operator()(bool value) const { return value ? "true" : "false"; }
  std::string operator()(std::int64_t value) const { return std::to_string(value); }
  std::string operator()(const Quantity& value) const { return text_of(value); }
  std::string operator()(const std::string& value) const { return value; }
  std::string operator()(const Bytes& value) const { return to_hex(value); }
  std::string operator()(const EntityId& value) const { return value.hex(); }
  std::string operator()(const BookId& value) const { return value.hex(); }
  std::string operator()(const UnknownValue& value) const { return "?" + to_hex(value.payload); }
};

}  // namespace

std::string text_of(const Value& value) { return std::visit(Teller{}, value); }

}  // namespace weavelog
