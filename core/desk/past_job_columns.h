#pragma once
// Columns of a table of past jobs: which there are, and what a header of the file is taken for.

#include <string>
#include <string_view>
#include <vector>

#include "core/base/units.h"

namespace weavelog {

/// What a header of the file was taken for; "" for nothing.
struct ColumnUse {
  std::string header;
  std::string ours;
  Unit unit = Unit::none;  ///< that the header says ("Tension (kg)"), where it is one of what the column holds
  bool operator==(const ColumnUse&) const = default;
};

/// Names of our columns, in the order of past_jobs.h.
[[nodiscard]] std::vector<std::string_view> past_job_columns();
/// Of tensions, which need a unit: both directions in one, or one of them.
[[nodiscard]] bool holds_tension(std::string_view ours);

/// By common words in four languages; of two headers for one thing the first counts. A word that means two things in these languages ("main": French
/// for hand; "tag": German for day) is taken for neither.
[[nodiscard]] std::vector<ColumnUse> recognised_columns(const std::vector<std::string>& header);
/// The unit that a header says of a column of ours.
[[nodiscard]] Unit unit_in_header(std::string_view header, std::string_view ours);

}  // namespace weavelog
