#include "core/desk/room_hands.h"

#include <algorithm>
#include <set>

#include "core/base/text.h"

namespace weavelog {

std::vector<BenchHands> hands_of_team(const EventRecord& event, std::span<const Loaded<Machine>> machines,
                                      std::span<const MachineMount> mounts) {
  std::vector<BenchHands> out;
  std::vector<std::string> names;
  std::set<EntityId> taken;
  for (const auto& member : event.team) {
    if (member.now.role != TeamRole::stringer && member.now.role != TeamRole::head) continue;
    if (member.now.role == TeamRole::head && member.now.skills.empty()) continue;
    out.push_back({member.id(), {}});
    names.push_back(search_key(member.now.name));
    for (const auto& machine : machines) {
      if (machine.now.whose.empty() || search_key(machine.now.whose) != names.back() || taken.contains(machine.id())) continue;
      out.back().machine = machine.id();
      taken.insert(machine.id());
      break;
    }
  }
  for (const auto& machine : machines)
    if (!machine.now.whose.empty()) taken.insert(machine.id());
  for (std::size_t i = 0; i < out.size(); ++i) {
    if (out[i].machine) continue;
    const MachineMount* last = nullptr;
    for (const MachineMount& mount : mounts) {
      const bool there = std::any_of(machines.begin(), machines.end(), [&](const auto& machine) { return machine.id() == mount.machine; });
      if (there && !taken.contains(mount.machine) && search_key(mount.by) == names[i] && (last == nullptr || mount.at > last->at)) last = &mount;
    }
    if (last == nullptr) continue;
    out[i].machine = last->machine;
    taken.insert(last->machine);
  }
  return out;
}

}  // namespace weavelog
