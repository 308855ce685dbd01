#pragma once
// Outcome<T>: the one way in which expected failures come back. Broken invariants throw std::logic_error instead.

#include <string>
#include <tl/expected.hpp>
#include <utility>

namespace weavelog {

/// What kind of trouble it is; stable, so that scripts, tests and screens can tell faults apart.
enum class FaultCode {
  bad_input,       ///< a value, argument or row that a person can mend
  malformed,       ///< bytes that are not what they claim to be
  not_found,       ///< the thing named does not exist here
  refused,         ///< a rule says no: role, consent, revoked, forgotten
  conflict,        ///< somebody else changed it first
  locked,          ///< another program holds the database or the port
  damaged,         ///< the database or a key file is not intact
  newer,           ///< made by a newer version of Weavelog
  no_space,        ///< the disk is full
  io,              ///< reading, writing or the network failed
  untrusted,       ///< a certificate, signature, code or proof does not hold
  expired,         ///< it was good once
  clock,           ///< a clock is too far off
};

/// The stable lower-case name of a code ("bad_input"), for --json and logs.
[[nodiscard]] const char* name_of(FaultCode code);

/// One clear error: what went wrong, where, and what to do about it. English; each part is a clause without a full stop.
struct Fault {
  FaultCode code = FaultCode::bad_input;
  std::string what;
  std::string where;    ///< file, line and column, field, address; may be empty
  std::string what_to_do;  ///< may be empty

  /// "where: what; what to do" on one line, empty parts left out.
  [[nodiscard]] std::string message() const;
};

template <class T = void>
using Outcome = tl::expected<T, Fault>;

/// `return fail(FaultCode::not_found, "no such player", "", "search again");`
[[nodiscard]] inline tl::unexpected<Fault> fail(FaultCode code, std::string what, std::string where = {},
                                                std::string what_to_do = {}) {
  return tl::unexpected<Fault>(Fault{code, std::move(what), std::move(where), std::move(what_to_do)});
}
/// Hands a fault on: `if (!x) return fail(x.error());`
[[nodiscard]] inline tl::unexpected<Fault> fail(Fault fault) { return tl::unexpected<Fault>(std::move(fault)); }

}  // namespace weavelog
