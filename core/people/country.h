#pragma once
// Three-letter country codes: entry lists use the Olympic ones, other sources ISO 3166-1 alpha-3.

#include <string>
#include <string_view>

namespace weavelog {

/// Three letters A to Z, in either case.
[[nodiscard]] bool is_country_code(std::string_view code);
/// One code for one country: upper case, Olympic codes turned into ISO 3166-1 alpha-3 where they differ;
/// others as they are.
[[nodiscard]] std::string country_key(std::string_view code);

}  // namespace weavelog
