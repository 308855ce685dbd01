#pragma once
// The one table: a row for each of those who ran the workload and each size, medians of their runs.

#include <boost/json.hpp>
#include <string>
#include <vector>

namespace weavelog::bench {

/// Markdown. Lines of scenarios that the table has no column for are passed over.
[[nodiscard]] std::string table_of(const std::vector<boost::json::object>& lines);

}  // namespace weavelog::bench
