#pragma once
// What the room charges, out of a CSV file. Columns, in any order and case: service, amount (a decimal),
// currency (ISO 4217, three letters); all required. Others are reported as ignored.

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/csv.h"
#include "core/base/decimal.h"
#include "core/model/event.h"

namespace weavelog {

struct PriceListRow {
  std::size_t line = 0;
  Price price;
};

struct PriceList {
  std::vector<PriceListRow> rows;
  std::vector<Fault> faults;  ///< why rows were left out
  std::vector<Fault>
      doubts;  ///< rows that came in and need a look: a service named twice, several currencies
  std::vector<std::string> ignored_columns;
};

[[nodiscard]] Outcome<PriceList> read_price_list(std::string_view bytes, const CsvOptions& options = {},
                                                 std::string_view source = {});

/// Decimals that a currency is counted in (2 for EUR, 0 for JPY); nothing if it is not a currency of ISO
/// 4217.
[[nodiscard]] std::optional<std::uint8_t> decimals_of_currency(std::string_view code);

}  // namespace weavelog
