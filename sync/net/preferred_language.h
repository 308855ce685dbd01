#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

#include "core/base/language.h"

namespace weavelog {

/// Which of the languages a browser prefers most, by what it says in Accept-Language (RFC 9110, 12.5.4): its place, 0 if none of them or
/// if that is not to be read. Looks at the first sixteen that are named.
[[nodiscard]] std::size_t preferred_language(std::string_view accepted, const std::vector<Language>& languages);

}  // namespace weavelog
