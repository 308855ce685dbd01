#include "tests/sim/plan.h"

#include <algorithm>
#include <array>

#include "tests/sim/random.h"

namespace weavelog::sim {
namespace {

struct KindLine {
  EventKind kind;
  std::string_view name;
  unsigned usual;     ///< weight in every run
  unsigned troubled;  ///< added where the run's temper is of that group
  unsigned group;     ///< 0 people, 1 network, 2 disk, 3 clocks, 4 copies, 5 hostile, 6 forgetting, 7 carriers, 8 revocations
  Kinds since = Kinds::first;
};
constexpr unsigned kHostile = 5, kRevocations = 8;

constexpr std::array<KindLine, kEventKinds> kKinds{{
    {EventKind::new_player, "new_player", 8, 0, 0},
    {EventKind::drop_off, "drop_off", 70, 0, 0},
    {EventKind::step, "step", 200, 0, 0},
    {EventKind::change_agreed, "change_agreed", 150, 0, 0},
    {EventKind::change_plain, "change_plain", 100, 0, 0},
    {EventKind::look, "look", 30, 0, 0},
    {EventKind::close_question, "close_question", 40, 0, 0},
    {EventKind::undo, "undo", 25, 0, 0},
    {EventKind::import_entries, "import_entries", 4, 0, 0},
    {EventKind::consent, "consent", 4, 0, 0},
    {EventKind::team, "team", 8, 0, 0},
    {EventKind::newer_field, "newer_field", 15, 0, 0},
    {EventKind::inspect, "inspect", 60, 0, 0, Kinds::all},
    {EventKind::bench, "bench", 80, 0, 0, Kinds::all},
    {EventKind::picture, "picture", 6, 0, 0, Kinds::all},
    {EventKind::new_time, "new_time", 12, 0, 0, Kinds::all},
    {EventKind::names, "names", 12, 0, 0, Kinds::all},
    {EventKind::money, "money", 70, 0, 0, Kinds::all},
    {EventKind::stock, "stock", 45, 0, 0, Kinds::all},
    {EventKind::papers, "papers", 8, 0, 0, Kinds::all},
    {EventKind::room, "room", 20, 0, 0, Kinds::all},
    {EventKind::draws, "draws", 25, 0, 0, Kinds::all},
    {EventKind::tick_books, "tick_books", 15, 0, 0},
    {EventKind::forget, "forget", 0, 4, 6},
    {EventKind::make_bundle, "make_bundle", 2, 12, 7},
    {EventKind::take_bundle, "take_bundle", 3, 20, 7},
    {EventKind::read_receipt, "read_receipt", 1, 5, 7},
    {EventKind::make_card, "make_card", 2, 8, 7},
    {EventKind::scan_card, "scan_card", 3, 12, 7},
    {EventKind::connect, "connect", 25, 25, 1},
    {EventKind::hang_up, "hang_up", 4, 5, 1},
    {EventKind::cut, "cut", 3, 25, 1},
    {EventKind::corrupt, "corrupt", 0, 10, 1},
    {EventKind::repeat, "repeat", 0, 5, 1},
    {EventKind::part, "part", 2, 20, 1},
    {EventKind::heal, "heal", 2, 20, 1},
    {EventKind::lie, "lie", 0, 30, 5},
    {EventKind::revoke, "revoke", 0, 2, kRevocations},
    {EventKind::end_program, "end_program", 4, 4, 2},
    {EventKind::kill, "kill", 3, 15, 2},
    {EventKind::power_cut, "power_cut", 2, 15, 2},
    {EventKind::stop_at, "stop_at", 3, 40, 2},
    {EventKind::disk_full, "disk_full", 0, 6, 2},
    {EventKind::disk_errors, "disk_errors", 0, 8, 2},
    {EventKind::disk_read_only, "disk_read_only", 0, 4, 2},
    {EventKind::disk_unreadable, "disk_unreadable", 0, 4, 2, Kinds::all},
    {EventKind::disk_well, "disk_well", 0, 15, 2},
    {EventKind::start, "start", 4, 30, 2},
    {EventKind::clock, "clock", 2, 25, 3},
    {EventKind::copy_file, "copy_file", 1, 12, 4},
    {EventKind::restore_file, "restore_file", 0, 8, 4},
    {EventKind::clone, "clone", 0, 3, 4},
    {EventKind::sabotage, "sabotage", 0, 0, 0},
}};

constexpr bool in_order() {
  for (std::size_t i = 0; i < kKinds.size(); ++i)
    if (kKinds[i].kind != static_cast<EventKind>(i)) return false;
  return true;
}
static_assert(in_order());

}  // namespace

std::string_view name_of(EventKind kind) {
  return kKinds.at(static_cast<std::size_t>(kind)).name;
}

Plan plan_of(std::uint64_t seed, Kinds kinds) {
  // Mixed first: from neighbouring numbers this generator would give one and the same stream, begun a step
  // later.
  Random random(Random(seed).next());
  Plan plan;
  plan.seed = seed;
  plan.all_kinds = kinds == Kinds::all;
  plan.servers = 1 + random.below(2);
  plan.tablets = 2 + random.below(4);
  if (random.chance(30)) plan.tablets += 20;
  plan.sector = random.chance(500) ? 512 : 4096;
  plan.mixed_programs = random.chance(400);
  plan.one_connection = seed % 4 != 0;
  plan.page = seed / 4 % 4 == 0 ? 4096 : 1024;
  // Each run has troubles of its own: all at once would hide one behind the other.
  std::array<bool, 9> troubled{};
  for (std::size_t group = 1; group < (plan.all_kinds ? 9 : 8); ++group)
    troubled[group] = random.chance(group == kHostile ? 200 : 400);
  if (!plan.all_kinds) troubled[kRevocations] = troubled[kHostile];
  plan.hostile = troubled[kHostile];
  std::vector<EventKind> urn;
  for (const KindLine& line : kKinds)
    for (unsigned n = line.since > kinds ? 0 : line.usual + (troubled[line.group] ? line.troubled : 0); n > 0; --n)
      urn.push_back(line.kind);
  const std::size_t count = 200 + random.below(1000);
  const std::size_t devices = plan.servers + plan.tablets;
  for (std::size_t i = 0; i < count; ++i) {
    Event event;
    event.number = i;
    event.kind = random.pick(urn);
    event.device = random.below(devices);
    event.other = random.below(devices);
    // Bursts and quiet hours. A device has about 20 actions in a day of ten hours.
    event.wait = random.chance(600)
                     ? random.between(0, 3'000)
                     : random.between(60'000, 2 * 36'000'000 / static_cast<UnixMs>(20 * devices));
    event.salt = random.next();
    plan.events.push_back(event);
  }
  return plan;
}

Plan only(const Plan& plan, const std::vector<std::size_t>& numbers) {
  Plan out = plan;
  std::erase_if(out.events, [&](const Event& event) {
    return std::find(numbers.begin(), numbers.end(), event.number) == numbers.end();
  });
  return out;
}

}  // namespace weavelog::sim
