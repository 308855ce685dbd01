#pragma once
// What the commands of the story answer, read.

#include <boost/json.hpp>
#include <string>

namespace weavelog::testing {

/// "" if there is no such text.
[[nodiscard]] inline std::string text_at(const boost::json::value& value, const char* name) {
  const auto* object = value.if_object();
  const auto* found = object ? object->if_contains(name) : nullptr;
  const auto* text = found ? found->if_string() : nullptr;
  return text ? std::string(text->subview()) : std::string();
}

}  // namespace weavelog::testing
