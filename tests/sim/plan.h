#pragma once
// What happens in a run: a list of events, made from the seed before anything runs. Each has its own salt,
// from which all of its choices come, so that leaving others out changes as little of it as possible: that is
// what makes shrinking work.

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/clock.h"

namespace weavelog::sim {

enum class EventKind : std::uint8_t {
  // A person at a device.
  new_player,     ///< a drop-off of a player whose book begins here
  drop_off,       ///< of a known player, "same as last time" with a change
  step,           ///< a racket moves on
  change_agreed,  ///< a guarded field of a setup or a job
  change_plain,   ///< an ordinary field of a person or a racket
  look,           ///< sees questions and a player's page as they stand; later acts go by that
  close_question,
  undo,
  import_entries,
  consent,
  team,
  newer_field,  ///< what only a newer program knows
  inspect,      ///< what was found on a frame, and what the player answers
  bench,        ///< steps, notes, readings, checks
  picture,      ///< what is known of one; not its bytes
  new_time,     ///< another promise
  names,        ///< other names, and books that are one person's
  money,        ///< charges, discounts, payments, what reverses them, a day that is closed
  stock,
  papers,       ///< prices, entries that are known players
  room,         ///< shifts, machines and their care, lists
  draws,        ///< draws, results, order of play, home benches
  tick_books,   ///< ticks books for the host it works at
  forget,       ///< a player withdraws: everything about them is erased
  // Where there is no network.
  make_bundle,   ///< somebody carries books away on a stick
  take_bundle,   ///< and plugs it in somewhere
  read_receipt,  ///< what came back from there
  make_card,
  scan_card,
  // Devices meet.
  connect,
  hang_up,  ///< in order, between two frames
  cut,      ///< in the middle of a frame
  corrupt,  ///< flips a byte of the next frame of a connection
  repeat,   ///< the next frame of a connection comes twice
  part,     ///< two devices can't reach each other, both ways or one way
  heal,
  lie,     ///< the hostile device speaks to a server
  revoke,  ///< a server revokes a tablet
  // Machines.
  end_program,  ///< in order
  kill,         ///< the program dies
  power_cut,    ///< the machine dies now
  stop_at,      ///< the machine or program dies at one of the next operations of its disk
  disk_full,
  disk_errors,
  disk_read_only,
  disk_unreadable,
  disk_well,
  start,         ///< whatever is down comes up again
  clock,         ///< jumps
  copy_file,     ///< somebody keeps a copy of the device's files
  restore_file,  ///< the device goes on from that copy
  clone,         ///< the device's files, key and all, go to another machine
  sabotage,      ///< never in a plan that is made from a seed: the newest entry of a player's book is gone, so that something fails
};
inline constexpr std::size_t kEventKinds = static_cast<std::size_t>(EventKind::sabotage) + 1;
[[nodiscard]] std::string_view name_of(EventKind kind);

struct Event {
  std::size_t number = 0;  ///< in the plan, from 0
  EventKind kind{};
  std::size_t device = 0;  ///< taken modulo the number of devices
  std::size_t other = 0;
  UnixMs wait = 0;  ///< time that passes before it
  std::uint64_t salt = 0;
};

/// Who there is, and what happens.
struct Plan {
  std::uint64_t seed = 0;
  std::size_t servers = 0;
  std::size_t tablets = 0;
  bool hostile = false;         ///< one more device, with a valid key
  bool mixed_programs = false;  ///< some are older, some newer
  std::size_t sector = 512;
  std::size_t page = 4096;      ///< of their databases; SQLite's usual size, or a smaller one, with which less is written
  bool all_kinds = true;        ///< see Kinds
  bool one_connection = false;  ///< every program reads its database where it writes it
  std::vector<Event> events;
};

/// Which kinds of events there are. Some runs that once showed a fault are kept as tests; with today's kinds their seeds would be other runs.
enum class Kinds : std::uint8_t { first, all };
[[nodiscard]] Plan plan_of(std::uint64_t seed, Kinds kinds = Kinds::all);
/// The plan with only the events of those numbers.
[[nodiscard]] Plan only(const Plan& plan, const std::vector<std::size_t>& numbers);

}  // namespace weavelog::sim
