#pragma once
// What the desk may promise: the earliest time that the queue, the shifts and the spread of the work can keep, and whether a wish can be kept.

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/desk/room_day.h"

namespace weavelog {

/// So many of the promises are to be kept.
inline constexpr double kPromisesKept = 0.95;

/// Rackets that are handed over together.
struct RacketsToCome {
  std::vector<WorkKind> kinds;  ///< one a racket
  Rush rush = Rush::none;
};

/// A promise that was given to somebody else and could no longer be kept with confidence.
struct CostToOthers {
  BookId player;
  EntityId job;
  std::string name;                        ///< given and family name
  std::optional<std::int64_t> tag_number;
  UnixMs ready_by = 0;                     ///< what was promised
  double before = 0, after = 0;            ///< chances
};

struct RoomWish {
  bool can_be_kept = false;               ///< by all of them, with confidence, and at nobody's cost
  double chance = 0;                      ///< that the last one is ready then, each in its turn by the wish
  std::optional<Promise> earliest{};      ///< none: no shift has room
  bool even_first = false;                ///< it could be kept at the cost of others
  std::vector<CostToOthers> must_move{};  ///< those; by what they lose
};

class RoomPromises {
 public:
  /// `without`: rackets of the room that are about to be promised for another time: they are not looked at. Faults: those of RoomDay::make()
  /// and Promiser::make().
  [[nodiscard]] static Outcome<RoomPromises> make(const Ledger& ledger, const BookId& event, UnixMs now, std::span<const EntityId> without = {});

  /// When all of them are ready, stencil and check included. At most 20. Faults: bad_input (none, too many, one that can't be; no shift has room;
  /// no time within two hours of it that endangers nobody else's).
  [[nodiscard]] Outcome<Promise> earliest(const RacketsToCome& rackets) const;
  /// Faults: likewise, but for room in the shifts.
  [[nodiscard]] Outcome<RoomWish> check(const RacketsToCome& rackets, UnixMs wish) const;

  [[nodiscard]] const RoomDay& day() const { return *day_; }
  /// The confidence that is asked of a reckoned promise now, so that kPromisesKept of the real ones are kept (confidence_after()).
  [[nodiscard]] double confidence() const { return input_.confidence; }

 private:
  RoomPromises() = default;
  [[nodiscard]] Outcome<std::vector<DayJob>> jobs_of(const RacketsToCome& rackets) const;
  /// check() without the earliest time.
  [[nodiscard]] Outcome<RoomWish> weigh(const RacketsToCome& rackets, UnixMs wish) const;
  [[nodiscard]] double spread(const RacketsToCome& rackets, std::size_t racket) const;

  std::shared_ptr<const RoomDay> day_;
  PromiseInput input_;
  std::vector<std::size_t> places_;  // by job of input_: its place in the day's jobs
  std::shared_ptr<const Promiser> queue_;
};

}  // namespace weavelog
