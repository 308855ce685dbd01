#include "core/base/outcome.h"

namespace weavelog {

const char* name_of(FaultCode code) {
  switch (code) {
    case FaultCode::bad_input: return "bad_input";
    case FaultCode::malformed: return "malformed";
    case FaultCode::not_found: return "not_found";
    case FaultCode::refused: return "refused";
    case FaultCode::conflict: return "conflict";
    case FaultCode::locked: return "locked";
    case FaultCode::damaged: return "damaged";
    case FaultCode::newer: return "newer";
    case FaultCode::no_space: return "no_space";
    case FaultCode::io: return "io";
    case FaultCode::untrusted: return "untrusted";
    case FaultCode::expired: return "expired";
    case FaultCode::clock: return "clock";
  }
  return "unknown";
}

std::string Fault::message() const {
  std::string out = where.empty() ? what : where + ": " + what;
  if (!what_to_do.empty()) out += "; " + what_to_do;
  return out;
}

}  // namespace weavelog
