#pragma once
// One run: carries out a plan, then lets everybody meet and checks what the product promises.

#include <map>
#include <optional>
#include <string>

#include "tests/sim/acts.h"
#include "tests/sim/carriers.h"
#include "tests/sim/network.h"

namespace weavelog::sim {

struct Result {
  std::optional<Violation> violation;
  Digest digest{};                 ///< over everything that happened: equal for equal runs
  std::vector<std::string> trace;  ///< if it was to be kept
  Counts counts;
};

/// Runs a plan from beginning to end. Deterministic: same plan, same result, to the byte.
[[nodiscard]] Result run(const Plan& plan, bool keep_trace = false);

class World {
 public:
  World(const Plan& plan, bool keep_trace);
  void play();
  /// Heals everything and lets everybody exchange until nothing changes.
  void come_together();
  [[nodiscard]] Room& room() { return room_; }

 private:
  void make_devices();
  void perform(const Event& event);
  void act(const Event& event, Device& device, std::size_t place, Random& random);
  void carry_out(const Act& wanted, Device& device, std::size_t place);
  void carry(const Event& event, Device& device, std::size_t place, Random& random);
  void remember(const Act& act, const Committed& committed, Device& device, std::size_t place);
  void look(Device& device, Random& random);
  void tick_books(Device& device, Random& random);
  void forget(Device& device, std::size_t place, Random& random);
  void meet_some(const Event& event, std::size_t place, Random& random);
  void lie(Random& random);
  void revoke(std::size_t place, std::size_t other);
  /// What a server that runs knows of revocations is known to the room.
  void note_revoked(std::size_t server);
  void trouble(const Event& event, Device& device, Random& random);
  void move_clock(Device& device, Random& random);
  void copy(std::size_t place);
  void restore(std::size_t place, Random& random);
  void clone(std::size_t place);
  void stop(std::size_t place, Stop how);
  void start(std::size_t place);
  void bury();
  void learn();
  void look_for_tried(Device& device);
  [[nodiscard]] std::size_t place_of(std::size_t number, std::uint64_t salt) const;
  std::size_t some_link(Random& random);
  [[nodiscard]] bool withholds(Device& guest, Device& server) const;
  /// True if one of them learned something.
  bool exchange(const Visit& visit);
  [[nodiscard]] std::string time_text() const;

  struct Copy {
    DiskImage image;
    std::vector<std::size_t> promised;
    UnixMs latest_wall = 0;
    std::set<BookId> forgot;
    std::set<Visit> paired;
  };

  const Plan& plan_;
  Room room_;
  Network network_;
  Carriers carriers_;
  std::map<std::size_t, Copy> copies_;
  std::map<std::size_t, std::size_t> clones_;  ///< of which device, at which place
};

}  // namespace weavelog::sim
