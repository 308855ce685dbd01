#pragma once
// The time that can be promised at drop-off, and whether a wish can be kept: by playing the hours to come many times over.
//
// How a room is taken to work: whenever a bench is free it takes, of the rackets that are there and that it may string, an on-court rush
// first, then the one that is due first, if it is expected to be done before the next break. What is on the machine at a break is finished.
// Durations are lognormal around what is expected, with a part that is the stringer's and the same for all of their rackets; on-court rushes
// to come arrive by chance, and of the rackets some fail their check and are strung once more, at once and at the same bench. Every question about one queue meets the same luck (common random numbers), so that two answers differ by what
// was asked alone, and the same question has the same answer on every machine.

#include <span>

#include "core/plan/day.h"

namespace weavelog {

/// A queue and what is not known about it.
struct PromiseInput {
  DayInput day;                  ///< due: what was promised. Expected lengths; home benches and what was told are not looked at
  std::vector<double> own;       ///< by job: standard deviation of the logarithm of its time
  std::vector<double> shared;    ///< by bench: standard deviation of the logarithm of its stringer's pace
  double common = 0;             ///< the same of what all benches have in common
  double rushes_per_hour = 0;    ///< on-court rushes to expect while benches are open
  double rushes_seen = 0;        ///< how many that was learned from
  std::int64_t rush_length = 20 * 60'000;  ///< ms, expected
  double again = 0;              ///< the chance that a racket fails its check and goes on the machine once more
  double confidence = 0.95;
  std::uint64_t luck = 1;
};

struct Promise {
  UnixMs ready_by = 0;   ///< whole five minutes
  double chance = 0;     ///< that it is ready by then; at most five in a thousand below confidence, for the sake of the round time
  UnixMs expected = 0;   ///< as likely before as after
};

/// A promise that would no longer be kept with confidence.
struct EndangeredPromise {
  std::size_t job = 0;  ///< place in DayInput::jobs
  double before = 0, after = 0;
};

struct WishAnswer {
  bool can_be_kept = false;      ///< with confidence, and at nobody's cost
  double chance = 0;             ///< in its turn by the wish
  std::optional<Promise> earliest{};  ///< none: no shift has room
  bool even_first = false;       ///< kept with confidence if it goes before as many as it takes
  std::vector<EndangeredPromise> must_move{};  ///< whose promises that would cost; by what they lose
};

/// The confidence to ask of simulated rooms so that `wanted` of the promises of the real one are kept, by how earlier ones ended (in their
/// order; true: kept). A room that does better than the rule above, or worse, is met by that within some days: each miss raises it, each that
/// is kept lowers it a little (Gibbs and Candes, Adaptive conformal inference under distribution shift, 2021). Between 0.8 and 0.985.
[[nodiscard]] double confidence_after(const std::vector<bool>& kept, double wanted = 0.95);

class Promiser {
 public:
  /// Plays the queue as it is. Faults: those of check_day(); bad_input (spreads that are not one a job and one a bench, or that can't be).
  [[nodiscard]] static Outcome<Promiser> make(PromiseInput input);

  /// By job: the chance that it is ready when due; 1 if it has no time.
  [[nodiscard]] const std::vector<double>& chances() const { return chances_; }
  /// The earliest time that can be kept with confidence, so that no promise that was given falls below confidence by it; of a rush from the court
  /// the earliest of all, as benches take it first. `own`: the standard
  /// deviation of the logarithm of the racket's time. Faults: bad_input (a racket that can't be; no shift has room for it).
  [[nodiscard]] Outcome<Promise> earliest(const DayJob& job, double own) const;
  /// What a wish costs; without `earliest`. Faults: bad_input (a racket that can't be).
  [[nodiscard]] Outcome<WishAnswer> weigh(const DayJob& job, double own, UnixMs wish) const;
  /// The same, with the earliest time that could be promised instead, if there is one. Faults: likewise.
  [[nodiscard]] Outcome<WishAnswer> check(const DayJob& job, double own, UnixMs wish) const;

 private:
  Promiser() = default;
  struct Ends;
  struct Player;
  struct Rush {
    UnixMs arrives = 0;
    double factor = 1;
  };

  void draw_rushes();
  [[nodiscard]] Outcome<> check_new(const DayJob& job, double own) const;
  /// The queue with a new job at a place of it, played; `job` null: without. `alone`: only until the new one is ready.
  [[nodiscard]] Ends play(const DayJob* job, double own, std::size_t place, bool alone = false) const;
  [[nodiscard]] std::vector<double> chances_in(const Ends& ends) const;
  /// What chances are left if the new one comes last: a bench that is free takes it even before one that is yet to come and due sooner, so
  /// that much is not its time's fault.
  [[nodiscard]] std::vector<double> chances_behind(const DayJob& job, double own) const;
  [[nodiscard]] std::vector<EndangeredPromise> endangered(const Ends& ends, const std::vector<double>& behind) const;
  [[nodiscard]] std::size_t place_by(UnixMs due) const;

  PromiseInput input_;
  std::size_t runs_ = 0;
  std::vector<std::vector<TimeSpan>> open_;     // by bench, from now on
  std::vector<std::size_t> queue_;              // jobs not in work, as benches take them
  std::size_t rushes_ = 0;                      // of them on-court, in front
  std::vector<double> job_luck_, bench_luck_;   // factors, by run x jobs, run x benches
  std::vector<std::vector<Rush>> rush_luck_;    // by run
  std::vector<double> chances_;
};

}  // namespace weavelog
