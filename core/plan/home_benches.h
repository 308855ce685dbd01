#pragma once
// Home benches: which stringer and machine each player keeps for an event. From draws with their odds, people, benches and wishes to a plan
// with its proof, and why it is so.

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/plan/bench_solve.h"
#include "core/plan/meeting_odds.h"

namespace weavelog {

/// A draw as it stands, with who is on each line: nobody (a bye, a place that is not filled yet), one, or the two of a pair.
struct DrawnPeople {
  const Bracket* bracket = nullptr;
  const MeetingOdds* odds = nullptr;
  std::vector<std::vector<std::string>> people;
  std::vector<int> days;  ///< of each round, from 1; empty: a round a day, finals of all draws on the last
  int further = 0;        ///< rounds of a draw to which this one leads: a section of qualifying
};

/// What is known of a player beside the draw.
struct BenchPerson {
  std::string name;
  double rackets = 2;                  ///< per match
  std::vector<std::string> skills;     ///< asked for: "natural gut", "one-piece", ...
  std::vector<std::string> languages;  ///< spoken
  std::string before;                  ///< stringer of earlier events
};

struct HomeBench {
  std::string name;  ///< of its own
  std::string stringer, machine;
  std::vector<std::string> skills, languages;
  std::optional<double> most;          ///< rackets a day, by stringer and machine
  std::vector<int> days;               ///< on shift, from 1; empty: all
};

/// "Only with ..." or "never with ...": a bench, a stringer or a machine by name.
struct BenchWish {
  std::string player;
  bool never = false;
  std::string with;
  std::string place;  ///< where it was written, for faults
};
struct BenchPin {
  std::string player, bench, place;
};

/// In points, of which a possible meeting of two on one bench in the first rounds costs its odds. The defaults are our own assumption.
struct BenchWeights {
  std::vector<double> rounds{16, 8, 4, 2, 1};  ///< of the final, the semi-final, ...; the last stands for all before
  int hard_places = 8;                         ///< no two who may meet when so many or fewer are left (8: quarter-final); 0: may be
  double hard = 100;                           ///< times, where that can't be avoided
  double over = 0.25;                          ///< per racket and day beyond the even share
  double even_within = 1;                      ///< rackets a day that are even enough
  double continuity = 1;                       ///< of another stringer than at earlier events
  double skill = 4;                            ///< of each skill that the bench lacks
  double language = 0.5;                       ///< of no language in common
  double move = 3;                             ///< of leaving the bench of the last plan
};

struct BenchCase {
  std::vector<DrawnPeople> draws;
  std::vector<BenchPerson> people;  ///< who is not named has the defaults; who is in no draw is left out
  std::vector<HomeBench> benches;
  std::vector<BenchWish> wishes;
  std::vector<BenchPin> pins;
  std::map<std::string, std::string> last;  ///< player to bench of the last plan
  BenchWeights weights;
};

/// Two on one bench who may meet.
struct BenchMeeting {
  std::size_t one = 0, other = 0;  ///< people
  double odds = 0;
  std::size_t draw = 0;
  int round = 0;
  bool hard = false;
};

/// Why a player is where they are.
struct BenchReason {
  enum class Kind { pinned, wished, only_one, apart, even_load, before, stayed, skill, language, as_good };
  Kind kind = Kind::as_good;
  std::size_t other_bench = 0;           ///< the next best; what is said is said of it. Unused: pinned, wished, only_one
  double cheaper = 0;                    ///< points by which the chosen bench is better than that
  bool rule = false;                     ///< there somebody could be met who is to be avoided, and nowhere in this plan is that so
  std::optional<BenchMeeting> meeting{};  ///< of apart: the likeliest there
};

struct BenchPlan {
  BenchSolution solution;
  std::vector<std::size_t> moved;                 ///< people who leave their bench of the last plan
  [[nodiscard]] const BenchChoice& choice() const { return solution.choice; }
};

class HomeBenches {
 public:
  /// Faults, named and located: bad_input (no bench; a bench twice; a wish or pin for nobody or nothing that is there; wishes and pins
  /// that contradict each other; shifts that can't carry the rackets of a day).
  [[nodiscard]] static Outcome<HomeBenches> make(BenchCase given);

  /// Faults: refused (no plan was found that keeps all shifts and limits), naming the worst bench and day.
  [[nodiscard]] Outcome<BenchPlan> plan(const BenchEffort& effort = {}) const;

  /// Those who may still play, in the order of the draws: to them belong the places of a plan.
  [[nodiscard]] const std::vector<BenchPerson>& people() const { return people_; }
  [[nodiscard]] const std::vector<HomeBench>& benches() const { return given_.benches; }
  [[nodiscard]] std::size_t days() const { return problem_.days; }
  [[nodiscard]] const BenchProblem& problem() const { return problem_; }
  [[nodiscard]] std::optional<std::size_t> person(const std::string& name) const;
  [[nodiscard]] std::optional<std::size_t> bench(const std::string& name) const;

  /// Rackets expected on a bench and day (from 0), and its even share.
  [[nodiscard]] double rackets(const BenchChoice& choice, std::size_t bench, std::size_t day) const;
  [[nodiscard]] double even_share(std::size_t bench, std::size_t day) const;
  /// Possible meetings on one bench, what costs most first.
  [[nodiscard]] std::vector<BenchMeeting> meetings(const BenchChoice& choice) const;
  [[nodiscard]] BenchReason why(const BenchChoice& choice, std::size_t person) const;
  /// What the plan would cost with this player there: compare with the plan's own cost. `own` is kNever where a wish, a pin or a shift
  /// forbids it.
  [[nodiscard]] BenchCost with_move(const BenchChoice& choice, std::size_t person, std::size_t bench) const;
  [[nodiscard]] const DrawnPeople& draw(std::size_t number) const { return given_.draws[number]; }

 private:
  class Moves;
  /// What a meeting costs for its odds, by how many rounds come after it.
  [[nodiscard]] double points_of(std::size_t draw, int round) const;
  explicit HomeBenches(BenchCase given) : given_(std::move(given)), problem_(0, 0, 0) {}
  [[nodiscard]] Outcome<> check_benches() const;
  void find_people();
  void weigh_meetings();
  void note_matches(const DrawnPeople& draw, const std::vector<std::vector<std::size_t>>& in);
  void weigh_own();
  void share_loads();
  [[nodiscard]] Outcome<> forbid();
  [[nodiscard]] Outcome<> check_loads() const;

  BenchCase given_;
  std::vector<BenchPerson> people_;
  std::map<std::string, std::size_t> numbers_;   // of people, by search key
  std::vector<BenchMeeting> all_;                // every possible meeting
  std::vector<std::optional<std::size_t>> last_;  // bench by person
  std::vector<char> bound_;                      // by person: 'p' pinned, 'w' wished
  BenchProblem problem_;
};

}  // namespace weavelog
