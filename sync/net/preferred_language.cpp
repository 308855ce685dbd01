#include "sync/net/preferred_language.h"

#include <algorithm>
#include <boost/beast/core/string.hpp>
#include <boost/beast/http/rfc7230.hpp>
#include <optional>

namespace weavelog {
namespace {

namespace beast = boost::beast;

/// Of what a browser says on languages; people have fewer.
constexpr int kMaxPreferences = 16;

/// "0.8" as 800, 0 to 1000 (RFC 9110, 12.4.2); nothing if it is none.
std::optional<int> weight_from(std::string_view text) {
  if (text.empty() || text.size() > 5 || (text[0] != '0' && text[0] != '1') || (text.size() > 1 && text[1] != '.')) return std::nullopt;
  int value = (text[0] - '0') * 1000, step = 100;
  for (const char c : text.substr(std::min<std::size_t>(2, text.size()))) {
    if (c < '0' || c > '9') return std::nullopt;
    value += (c - '0') * step;
    step /= 10;
  }
  return value <= 1000 ? std::optional(value) : std::nullopt;
}

}  // namespace

std::size_t preferred_language(std::string_view accepted, const std::vector<Language>& languages) {
  std::size_t best = 0;
  int best_weight = 0, looked_at = 0;
  for (const auto& [range, parameters] : beast::http::ext_list(beast::string_view(accepted.data(), accepted.size()))) {
    if (++looked_at > kMaxPreferences) break;
    std::optional<int> weight = 1000;
    for (const auto& [name, value] : parameters)
      if (beast::iequals(name, "q")) weight = weight_from({value.data(), value.size()});
    if (!weight || *weight <= best_weight) continue;
    const beast::string_view base = range.substr(0, range.find('-'));
    for (std::size_t i = 0; i < languages.size(); ++i) {
      const std::string_view own = languages[i].base();
      if (base != "*" && !beast::iequals(base, beast::string_view(own.data(), own.size()))) continue;
      best = i;
      best_weight = *weight;
      break;
    }
  }
  return best;
}

}  // namespace weavelog
