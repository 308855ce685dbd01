#include "core/people/similarity.h"

#include <algorithm>
#include <array>
#include <vector>

namespace weavelog {

double jaro(std::string_view a, std::string_view b) {
  if (a == b) return 1;
  if (a.empty() || b.empty()) return 0;
  const std::size_t half = std::max(a.size(), b.size()) / 2;
  const std::size_t window = half > 0 ? half - 1 : 0;

  std::vector<bool> taken(b.size());
  std::vector<char> matched_a;
  for (std::size_t i = 0; i < a.size(); ++i) {
    const std::size_t begin = i > window ? i - window : 0;
    const std::size_t end = std::min(i + window + 1, b.size());
    for (std::size_t j = begin; j < end; ++j) {
      if (taken[j] || a[i] != b[j]) continue;
      taken[j] = true;
      matched_a.push_back(a[i]);
      break;
    }
  }
  if (matched_a.empty()) return 0;

  std::size_t out_of_place = 0;
  for (std::size_t j = 0, k = 0; j < b.size(); ++j)
    if (taken[j] && matched_a[k++] != b[j]) ++out_of_place;
  const auto matches = static_cast<double>(matched_a.size());
  return (matches / static_cast<double>(a.size()) + matches / static_cast<double>(b.size()) +
          (matches - static_cast<double>(out_of_place) / 2) / matches) /
         3;
}

double jaro_winkler(std::string_view a, std::string_view b) {
  const double base = jaro(a, b);
  std::size_t prefix = 0;
  while (prefix < 4 && prefix < a.size() && prefix < b.size() && a[prefix] == b[prefix]) ++prefix;
  return base + static_cast<double>(prefix) * 0.1 * (1 - base);
}

std::size_t damerau_levenshtein(std::string_view a, std::string_view b) {
  // Lowrance and Wagner (1975): one row and column of sentinels, and for each character the last row where it
  // occurred.
  const std::size_t far = a.size() + b.size();
  const std::size_t width = b.size() + 2;
  std::vector<std::size_t> table((a.size() + 2) * width);
  const auto at = [&](std::size_t i, std::size_t j) -> std::size_t& { return table[i * width + j]; };
  at(0, 0) = far;
  for (std::size_t i = 0; i <= a.size(); ++i) at(i + 1, 0) = far, at(i + 1, 1) = i;
  for (std::size_t j = 0; j <= b.size(); ++j) at(0, j + 1) = far, at(1, j + 1) = j;

  std::array<std::size_t, 256> last_row{};
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t last_column = 0;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t row = last_row[static_cast<unsigned char>(b[j - 1])];
      const std::size_t column = last_column;
      const bool same = a[i - 1] == b[j - 1];
      if (same) last_column = j;
      at(i + 1, j + 1) = std::min({at(i, j) + (same ? 0 : 1), at(i + 1, j) + 1, at(i, j + 1) + 1,
                                   at(row, column) + (i - row - 1) + 1 + (j - column - 1)});
    }
    last_row[static_cast<unsigned char>(a[i - 1])] = i;
  }
  return at(a.size() + 1, b.size() + 1);
}

}  // namespace weavelog
