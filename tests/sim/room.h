#pragma once
// Everything that a run is about, for those who work on it: time, devices, promises, trace.

#include <SQLiteCpp/SQLiteCpp.h>

#include <memory>
#include <set>
#include <vector>

#include "tests/sim/device.h"
#include "tests/sim/promises.h"
#include "tests/sim/trace.h"

namespace weavelog::sim {

struct Counts {
  std::uint64_t acts = 0;  ///< user actions that were acknowledged
  std::uint64_t frames = 0;
  std::uint64_t sessions = 0;
  std::uint64_t agreements = 0;
  std::uint64_t stops = 0;       ///< kills and power cuts
  std::uint64_t lost_bytes = 0;  ///< unsynced bytes that power cuts took
  std::uint64_t restores = 0;    ///< files put back or cloned
  std::uint64_t forks = 0;
  std::uint64_t quarantined = 0;
  std::uint64_t forgotten = 0;  ///< players whose books somebody forgot
  std::uint64_t bundles = 0;    ///< made
  std::uint64_t receipts = 0;   ///< read
  std::uint64_t cards = 0;      ///< made
  std::uint64_t lies = 0;       ///< times that the hostile device spoke
  std::uint64_t revocations = 0;
  std::set<ActionKind> actions;  ///< kinds of them that people did

  void add(const Counts& more) {
    acts += more.acts;
    frames += more.frames;
    sessions += more.sessions;
    agreements += more.agreements;
    stops += more.stops;
    lost_bytes += more.lost_bytes;
    restores += more.restores;
    forks += more.forks;
    quarantined += more.quarantined;
    forgotten += more.forgotten;
    bundles += more.bundles;
    receipts += more.receipts;
    cards += more.cards;
    lies += more.lies;
    revocations += more.revocations;
    actions.insert(more.actions.begin(), more.actions.end());
  }
};

/// A guest at a server, by their places among the devices.
struct Visit {
  std::size_t server = 0;
  std::size_t guest = 0;
  auto operator<=>(const Visit&) const = default;
};

struct Room {
  explicit Room(bool keep_trace) : trace(keep_trace) {}

  Time time;
  Trace trace;
  Promises promises;
  std::vector<std::unique_ptr<Device>>
      devices;  ///< servers first, then tablets, the hostile one, then clones
  std::size_t servers = 0;
  std::set<Visit> paired;  ///< the server enrolled the guest, as far as the guest knows
  std::set<Visit> unsure;  ///< of those: the server was put back to files that may not know of it
  std::set<Visit> revoked;
  std::set<std::pair<BookId, PublicKey>> orders;         ///< which books people forgot, at which devices
  std::set<std::pair<std::size_t, std::size_t>> parted;  ///< from, to: nothing gets through
  Counts counts;

  /// The key of the hostile device, if there is one.
  [[nodiscard]] std::optional<PublicKey> hostile_key() const {
    for (const auto& device : devices)
      if (device->making.duty == Duty::hostile) return device->key();
    return std::nullopt;
  }
  [[nodiscard]] Device& device(std::size_t place) { return *devices.at(place); }
  /// Authors of what the hostile device wrote that this one knows of.
  [[nodiscard]] std::set<AuthorId> hostile_authors(Device& at) const;
  /// Reading writes what is late, so that a disk may refuse there, or its power go. Throws a Violation if no disk here has a reason.
  void blame_disk(const SQLite::Exception& error);
};

}  // namespace weavelog::sim
