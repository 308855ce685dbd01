#include "core/people/price_list.h"

#include <unicode/ucurr.h>
#include <unicode/unistr.h>

#include <algorithm>
#include <array>
#include <map>

#include "core/base/text.h"
#include "core/people/table_columns.h"

namespace weavelog {
namespace {

constexpr auto kPriceColumns = std::to_array<std::string_view>({"service", "amount", "currency"});

/// Largest price taken: far above any, and far below what an integer of cents holds.
constexpr std::int64_t kMostMinor = 1'000'000'000;

std::optional<std::int64_t> in_minor(const Decimal& amount, std::uint8_t decimals) {
  const Decimal exact = amount.trimmed();
  if (exact.scale > decimals || exact.mantissa < 0) return std::nullopt;
  std::int64_t out = exact.mantissa;
  for (std::uint8_t i = exact.scale; i < decimals && out <= kMostMinor; ++i) out *= 10;
  return out <= kMostMinor ? std::optional(out) : std::nullopt;
}

Price read_price(RowReader& reader) {
  Price price;
  price.service = reader.text("service");
  if (reader.good() && is_blank(price.service)) reader.expected("service", price.service, "a service");
  price.currency = reader.text("currency");
  std::transform(price.currency.begin(), price.currency.end(), price.currency.begin(),
                 [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; });
  const auto decimals = decimals_of_currency(price.currency);
  if (!decimals) reader.expected("currency", price.currency, "a currency of three letters, such as EUR");
  const std::string cell = reader.text("amount");
  const auto amount = Decimal::parse(cell);
  if (amount && decimals) price.amount_minor = in_minor(*amount, *decimals);
  if (!amount || (decimals && !price.amount_minor))
    reader.expected("amount", cell, "an amount such as 25.50, with no more decimals than the currency has");
  return price;
}

}  // namespace

std::optional<std::uint8_t> decimals_of_currency(std::string_view code) {
  if (code.size() != 3 || !std::all_of(code.begin(), code.end(), [](char c) { return c >= 'A' && c <= 'Z'; }))
    return std::nullopt;
  icu::UnicodeString units = icu::UnicodeString::fromUTF8(icu::StringPiece(code.data(), 3));
  UErrorCode status = U_ZERO_ERROR;
  if (!ucurr_isAvailable(units.getTerminatedBuffer(), U_DATE_MIN, U_DATE_MAX, &status)) return std::nullopt;
  const auto digits = ucurr_getDefaultFractionDigits(units.getTerminatedBuffer(), &status);
  if (U_FAILURE(status) || digits < 0 || digits > 9) return std::nullopt;
  return static_cast<std::uint8_t>(digits);
}

Outcome<PriceList> read_price_list(std::string_view bytes, const CsvOptions& options,
                                   std::string_view source) {
  auto table = read_csv(bytes, options, source);
  if (!table) return fail(table.error());
  const auto columns = TableColumns::of(*table, kPriceColumns, kPriceColumns, source);
  if (!columns) return fail(columns.error());

  PriceList list;
  list.faults.assign(table->faults.begin(), table->faults.end());
  list.ignored_columns = columns->ignored();
  std::map<std::string, std::size_t> first_line;
  for (const auto& row : table->rows) {
    RowReader reader(*columns, row, source);
    Price price = read_price(reader);
    if (!reader.good()) {
      list.faults.insert(list.faults.end(), reader.faults().begin(), reader.faults().end());
      continue;
    }
    const auto [first, fresh] = first_line.try_emplace(search_key(price.service), row.line);
    if (!fresh) {
      list.doubts.push_back(
          {FaultCode::bad_input,
           "\"" + shortened(price.service, 40) + "\" again, after line " + std::to_string(first->second),
           csv_place(source, row.line), "leave one of the two out"});
    }
    if (!list.rows.empty() && list.rows.front().price.currency != price.currency) {
      list.doubts.push_back({FaultCode::bad_input,
                             price.currency + " where line " + std::to_string(list.rows.front().line) +
                                 " has " + list.rows.front().price.currency,
                             csv_place(source, row.line, 0, "currency"), "check the currency"});
    }
    list.rows.push_back({row.line, std::move(price)});
  }
  return list;
}

}  // namespace weavelog
