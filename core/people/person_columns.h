#pragma once
// Cells that every table of persons has.

#include "core/model/choices.h"
#include "core/people/table_columns.h"

namespace weavelog {

/// Column "country": three letters, in capitals; "" if not said.
[[nodiscard]] std::string country_cell(RowReader& reader);
/// Column "birth_year".
[[nodiscard]] std::optional<std::int64_t> birth_year_cell(RowReader& reader);
/// Column "hand": right or left, r or l, in any case.
[[nodiscard]] Hand hand_cell(RowReader& reader);

}  // namespace weavelog
