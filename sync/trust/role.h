#pragma once
// What an enrolled device may do; the exchange and the programs decide by it.

#include <cstdint>
#include <string_view>

#include "core/base/outcome.h"

namespace weavelog {

/// Stable numbers: they stand in files and messages.
enum class Role : std::uint8_t {
  head = 1,      ///< gives work out, invites and revokes devices, closes the event's books
  desk = 2,      ///< takes rackets in and hands them out
  stringer = 3,  ///< strings, and records what was done
  reader = 4,    ///< sees, changes nothing
};

[[nodiscard]] const char* name_of(Role role);
/// Fault: bad_input, naming the four.
[[nodiscard]] Outcome<Role> parse_role(std::string_view name);
/// Fault: malformed for a number that is none.
[[nodiscard]] Outcome<Role> role_from(std::uint64_t number);

}  // namespace weavelog
