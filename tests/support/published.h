#pragma once
// The published check values in fixtures/published, for tests.

#include <boost/json.hpp>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace weavelog::test {

/// The whole file; throws std::runtime_error if it cannot be read.
[[nodiscard]] std::string published_text(const std::string& file);
[[nodiscard]] boost::json::value published_json(const std::string& file);
/// The rows of a CSV file, each by column name.
[[nodiscard]] std::vector<std::unordered_map<std::string, std::string>> published_rows(
    const std::string& file);
/// A string member of an object.
[[nodiscard]] std::string text_in(const boost::json::value& object, std::string_view key);

}  // namespace weavelog::test
