#pragma once
// What tests ask of texts and of faults in words.

#include <string>
#include <string_view>

#include "core/base/outcome.h"

/// True if `part` stands somewhere in `text`.
inline bool holds(std::string_view text, std::string_view part) { return text.find(part) != std::string_view::npos; }

/// What the fault says, or "no fault".
template <class T>
std::string fault_of(const weavelog::Outcome<T>& outcome) {
  return outcome ? std::string("no fault") : outcome.error().message();
}
