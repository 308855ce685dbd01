#pragma once
// A racket's string bed as the books tell it, ready for core/bed: what was said, what had to be assumed because nobody said it, and what this
// player's rackets measured before. No I/O of its own but in bed_strings() and match_of().

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/bed/equivalents.h"
#include "core/desk/player_record.h"

namespace weavelog {

/// What nobody said of a racket, so that something usual stands for it.
enum class BedGap : std::uint8_t {
  head_size,        ///< 632 cm2
  pattern,          ///< 16 x 19
  material,         ///< of mains or crosses: a synthetic gut; neither the stock nor anybody says
  gauge,            ///< 1.30 mm
  crosses_tension,  ///< as the mains
  pieces,           ///< two
  strung_at,        ///< it is not strung yet: as if it came off the machine now
  match_at          ///< no match is known: when the racket is wanted, or two hours from now
};
/// "head_size"; stable.
[[nodiscard]] std::string_view name_of(BedGap gap);

/// A string that can be chosen.
struct BedStringChoice {
  std::string name;
  BedStringKind kind;
  bool material_said = false, gauge_said = false;
};
/// The event's stock, each string and gauge once, by name.
[[nodiscard]] std::vector<BedStringChoice> bed_strings(const Ledger& ledger, const BookId& event);
/// The player's next match of the event's draws, if a time is known for it.
[[nodiscard]] std::optional<UnixMs> match_of(const Ledger& ledger, const BookId& event, const Person& person, UnixMs now);

/// One strung racket.
struct RoomBed {
  BedSetup setup;  ///< `after` is from strung to now
  BedWhose whose;
  Unit unit = Unit::kilogram_force;  ///< in which the player speaks
  std::string mains_string, crosses_string;
  std::vector<BedGap> assumed;  ///< each once, in order
  std::optional<UnixMs> strung_at;
  UnixMs now = 0, match_at = 0;

  /// The same at match time.
  [[nodiscard]] BedSetup at_match() const;
};
/// `at` in place of now counts marks up to then only. `match` as of match_of(); otherwise the job's ready-by if it is to come, otherwise two hours
/// from `at`. Faults: not_found (no such job); bad_input (no tension is said, or in no unit of force; strung more than two years ago).
[[nodiscard]] Outcome<RoomBed> room_bed(const PlayerRecord& record, const EntityId& job, std::span<const BedStringChoice> strings, UnixMs at,
                                        std::optional<UnixMs> match = {});

/// What this player's rackets, and those of others that are held here, measured before, beside what is reckoned for each at that very moment.
struct MeasuredBeds {
  BedReckoner reckoner;       ///< knows how strings of these rackets lose tension, where two readings of one stringing say so
  BedCorrections corrections;
  std::size_t readings = 0;   ///< that count
  std::size_t own = 0;        ///< of these those of this player's rackets
  ReadingAges ages;           ///< of those that count, and how many are kept apart because their time since stringing is not known
  std::size_t left_out = 0;   ///< on an instrument's own scale, of a racket that can't be reckoned, or more than twice or less than half of it
};
/// Players of this device whose beds were measured, but for one; those measured last, 150 at most.
[[nodiscard]] std::vector<PlayerRecord> measured_players(const Ledger& ledger, const BookId& but);
/// Stiffnesses and tones of all jobs; the newest 60 readings of this player and 120 of the others, so that a screen does not wait.
[[nodiscard]] MeasuredBeds measured_beds(const PlayerRecord& record, std::span<const BedStringChoice> strings, std::span<const PlayerRecord> others = {});

/// What is known of a bed now and at its match, all estimates.
struct BedFigures {
  BedEstimate stiffness, stiffness_match;  ///< N/m, small load
  BedEstimate tone, tone_match;            ///< Hz
  BedEstimate mains, crosses;              ///< N in the bed now
  BedEstimate mains_match, crosses_match;
  BedEstimate left_match;  ///< part of the tension now that is left at the match
  double mains_share = 0;  ///< of the stiffness
  double from_data = 0;    ///< 0 all model
  std::size_t readings = 0;
  BedCorrection correction;      ///< with what each level says
  std::vector<BedDoubt> doubts;  ///< of the stiffness without readings
};
/// Faults: those of BedReckoner.
[[nodiscard]] Outcome<BedFigures> figures_of(const RoomBed& bed, const MeasuredBeds& measured);

/// One point of the relaxation curve: what is left of the tension at one minute.
struct BedLeftAt {
  double seconds = 0;
  BedEstimate left;
};
/// From one minute to `until` seconds (a day at least), evenly in the logarithm. Faults: those of RelaxationModel.
[[nodiscard]] Outcome<std::vector<BedLeftAt>> left_over_time(const RoomBed& bed, const MeasuredBeds& measured, double until, int points = 33);

/// What is changed; nothing stays as it is.
struct BedChange {
  enum class Of { both, mains, crosses } of = Of::both;  ///< whose string, gauge and pre-stretch change
  std::optional<BedStringChoice> string;
  std::optional<double> gauge;        ///< mm
  std::optional<double> pre_stretch;  ///< percent
  std::optional<double> area;         ///< cm2: another racket
  std::optional<std::pair<int, int>> pattern;
  double mains_more = 0;    ///< N that the mains are pulled more: the crosses make up for it
  double crosses_more = 0;  ///< the same the other way round; not both
};
/// The tension that keeps the feel at match time, in half units of the player's (five newtons). Faults: those of equivalent(); bad_input (both
/// mains and crosses are pulled otherwise, nothing is changed).
[[nodiscard]] Outcome<Equivalent> same_feel(const RoomBed& bed, const MeasuredBeds& measured, const BedChange& change, const BedGoal& goal = {});

}  // namespace weavelog
