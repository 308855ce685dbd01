#pragma once
// A room's day, ready to be planned: what its book and its players' books say, as core/plan takes it, and the plan back into the book.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/desk/room_hands.h"
#include "core/model/draw.h"
#include "core/plan/durations.h"
#include "core/plan/promise.h"
#include "core/plan/schedule.h"

namespace weavelog {

/// "Given Family", and before it the tag's number where there is one: as people call a racket.
[[nodiscard]] std::string player_words(const OpenJob& racket);
[[nodiscard]] std::string racket_words(const OpenJob& racket);

/// So far ahead is planned: whoever brings a racket in the evening gets it in the morning.
inline constexpr std::int64_t kPlanAhead = 36LL * 3'600'000;

/// Why a racket or a bench is not as the plan would have it.
struct DayDoubt {
  enum class Kind {
    two_at_once,       ///< somebody has two rackets on the machine: one of them is probably strung
    not_of_team,       ///< it is on a machine of somebody whom the team does not have
    machine_out,       ///< the stringer's machine is out of order, and no other is free
    other_machine,     ///< it is out of order, another one is free
    no_machine,        ///< there are more stringers on shift than machines
    no_such_time,      ///< it is wanted, or on the machine, at a time that can't be: left out of the plan until that is corrected
  };
  Kind kind = Kind::two_at_once;
  std::size_t bench = 0;  ///< of two_at_once and the machines'
  std::size_t open_job = 0;  ///< place in RoomDay::open(), of two_at_once, not_of_team and no_such_time
};

class RoomDay {
 public:
  /// Benches are those of the team who string (hands_of_team()), open during their shifts; where the event has no shifts at all, from 8 to
  /// 20 o'clock there. Rackets are those from received to on the machine that wait for no answer, wanted by what was promised less what
  /// is still done after the stringing, or else by the player's next match less the room's margin (60 minutes). Faults: not_found (no event,
  /// nobody who strings); those of check_day().
  [[nodiscard]] static Outcome<RoomDay> make(const Ledger& ledger, const BookId& event, UnixMs now);

  [[nodiscard]] const DayInput& input() const { return input_; }
  /// All that is not strung yet, in order of being taken in.
  [[nodiscard]] const std::vector<OpenJob>& open() const { return open_; }
  /// The racket of a job of the plan.
  [[nodiscard]] const OpenJob& racket(std::size_t job) const { return open_[places_[job]]; }
  /// Those that no plan can place, because an answer is missing; places in open().
  [[nodiscard]] const std::vector<std::size_t>& waiting() const { return waiting_; }
  [[nodiscard]] const std::vector<DayDoubt>& doubts() const { return doubts_; }
  [[nodiscard]] const BenchHands& hands(std::size_t bench) const { return hands_[bench]; }
  [[nodiscard]] const WorkTimes& times() const { return times_; }
  [[nodiscard]] const WorkKind& kind(std::size_t job) const { return kinds_[job]; }
  /// From strung to ready, ms: check, stencil, bag; four of five were faster. Five minutes where nothing is known (common practice, no source).
  [[nodiscard]] std::int64_t finishing() const { return finishing_; }
  [[nodiscard]] bool shifts_assumed() const { return shifts_assumed_; }
  [[nodiscard]] const std::string& zone() const { return zone_; }

  /// What a racket of such a string, frame and number of pieces is to this room.
  [[nodiscard]] WorkKind work_kind(const std::string& mains, const std::string& crosses, const std::string& pattern, std::int64_t pieces) const;
  /// The queue as promises are made from it. Its confidence is what earlier promises of this event call for (confidence_after()).
  [[nodiscard]] PromiseInput promise_input() const;
  /// What has to be written, in this order, so that the book says this plan: the rackets of which another bench or another time is told.
  [[nodiscard]] std::vector<Draft> tell(const DayPlan& plan, const std::string& by, UnixMs at) const;

 private:
  RoomDay() = default;
  struct Reading;

  BookId event_;
  std::string zone_;
  DayInput input_;
  std::vector<OpenJob> open_;
  std::vector<std::size_t> places_, waiting_;
  std::vector<WorkKind> kinds_;
  std::vector<BenchHands> hands_;
  std::vector<Loaded<DayPlace>> told_;
  std::vector<DayDoubt> doubts_;
  std::map<std::string, std::string> materials_;  // by search key of the string's name
  WorkTimes times_;
  std::int64_t finishing_ = 0;
  bool shifts_assumed_ = false;
  double confidence_ = 0, rushes_per_hour_ = 0, rushes_seen_ = 0, again_ = 0;
};

/// What was told of each racket, of those that are still in the book.
[[nodiscard]] std::vector<Loaded<DayPlace>> told_day(const Ledger& ledger, const BookId& event);

}  // namespace weavelog
