#pragma once
// Who of the team strings, and at which machine.

#include <optional>
#include <span>
#include <vector>

#include "core/desk/event_book.h"
#include "core/model/job_facts.h"
#include "core/model/machine.h"

namespace weavelog {

/// Whose bench it is, and where; the machine may be unsaid.
struct BenchHands {
  EntityId stringer, machine;
  auto operator<=>(const BenchHands&) const = default;
};

/// The stringers of the team in its order; a head of whom skills are said strings too. Each with the machine that is theirs, else the one on
/// which they strung last, as long as that is nobody else's.
[[nodiscard]] std::vector<BenchHands> hands_of_team(const EventRecord& event, std::span<const Loaded<Machine>> machines,
                                                    std::span<const MachineMount> mounts);

}  // namespace weavelog
