#pragma once
// The home benches of an event: from what its book holds (team, machines, draws, wishes) to a plan, and back into the book.

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/desk/draws.h"
#include "core/desk/room_hands.h"
#include "core/model/machine.h"
#include "core/plan/home_benches.h"

namespace weavelog {

/// What the book says of home benches.
struct BenchBook {
  std::vector<Loaded<BenchPlace>> places;  ///< one of each player
  std::vector<Loaded<BenchAsk>> asks;      ///< wishes that hold
  Loaded<PlanRules> rules;

  /// By the name in the draw, however it is written.
  [[nodiscard]] const Loaded<BenchPlace>* of(const std::string& player) const;
};
[[nodiscard]] BenchBook load_bench_book(const Ledger& ledger, const BookId& event);
/// A racket is ready at most so many minutes before its match: a day.
inline constexpr std::int64_t kMostMarginMin = 24 * 60;
/// By what the room plans from now on. Faults: bad_input (a number of places that no round has; chances that are none of "rating", "seed", "even"; a
/// margin before matches that is no part of a day).
[[nodiscard]] Outcome<Draft> set_plan_rules(const BookId& event, const BenchBook& book, const PlanRules& rules);
/// Somebody's wish: only, or never, with a stringer or a machine. Saying the same again changes nothing. Faults: bad_input (nobody, or neither a
/// stringer nor a machine is named).
[[nodiscard]] Outcome<Draft> add_wish(const BookId& event, const BenchBook& book, const BenchAsk& wish);
[[nodiscard]] Draft remove_wish(const BookId& event, const Loaded<BenchAsk>& wish);
/// The chances of a match by a room's rules: "rating", "seed", "even"; unsaid, or where the draw does not say enough, the best that it says.
[[nodiscard]] Outcome<WinChance> chances_by_rules(const Bracket& bracket, const std::string& rule);
/// The stringer's name by the search key of the player's.
[[nodiscard]] std::map<std::string, std::string> home_stringers(const Ledger& ledger, const BookId& event);

/// An event, ready to be planned. Holds what the solver looks at, so it is neither copied nor moved.
class RoomBenches {
 public:
  /// Benches are those of the team who string (hands_of_team()); draws all knock-out draws, chances by the event's rules.
  /// Faults: not_found (no event, no draw, nobody who strings), bad_input (as HomeBenches::make(), and a draw that can't be understood).
  [[nodiscard]] static Outcome<std::unique_ptr<RoomBenches>> make(const Ledger& ledger, const BookId& event);
  RoomBenches(const RoomBenches&) = delete;
  RoomBenches& operator=(const RoomBenches&) = delete;

  [[nodiscard]] const HomeBenches& benches() const { return *benches_; }
  [[nodiscard]] const BenchHands& hands(std::size_t bench) const { return hands_[bench]; }
  [[nodiscard]] const BenchBook& book() const { return book_; }
  /// The same players and benches in the same order: a plan of the one is a plan of the other.
  [[nodiscard]] bool same_room(const RoomBenches& other) const;
  /// The plan as the book has it; nothing if somebody who may still play has no bench yet.
  [[nodiscard]] std::optional<BenchChoice> held() const;

  /// What has to be written so that the book says this plan: those who are elsewhere, or nowhere yet. Empty: it says so already.
  [[nodiscard]] Draft keep(const BenchChoice& choice, const std::string& by, UnixMs at) const;
  /// One player to a bench, by hand; pinned, no plan moves them. Faults: not_found (no such player or bench), bad_input (a wish forbids it).
  [[nodiscard]] Outcome<Draft> move(std::size_t person, std::size_t bench, bool pinned, const std::string& by, UnixMs at) const;

 private:
  RoomBenches() = default;
  void put(Draft& draft, std::size_t person, std::size_t bench, bool pinned, const std::string& by, UnixMs at) const;

  BookId event_;
  BenchBook book_;
  std::vector<HeldDraw> draws_;
  std::vector<std::unique_ptr<MeetingOdds>> odds_;
  std::vector<BenchHands> hands_;
  std::optional<HomeBenches> benches_;
};

}  // namespace weavelog
