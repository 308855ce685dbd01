#pragma once
// How even a room's work is: what its books say of strung rackets and of pulls against a gauge, as core/quality takes it, and what follows.

#include <optional>
#include <string>
#include <vector>

#include "core/model/quality_rules.h"
#include "core/bed/one_age.h"
#include "core/quality/calibration.h"
#include "core/quality/causes.h"
#include "core/quality/readings.h"
#include "core/quality/watch.h"
#include "core/store/ledger.h"

namespace weavelog {

/// The rules of a room with what is usual where it has said nothing.
struct QualityRulesNow {
  Loaded<QualityRules> held;  ///< without an id where nothing was said
  double tolerance = 4;       ///< per cent of a bed's stiffness, either way
  double every_days = 1;      ///< between two looks at a machine with the gauge
};
[[nodiscard]] QualityRulesNow quality_rules(const Ledger& ledger, const BookId& event);
/// Faults: bad_input (a tolerance that is not from 5 to 200 per mille, days that are not from 1 to 365; nothing new).
[[nodiscard]] Outcome<Draft> set_quality_rules(const BookId& event, const QualityRulesNow& now, const QualityRules& wanted);

/// A strung racket and the reading of its bed that counts: the newest since it was strung last.
struct QualityRacket {
  BookId player;
  EntityId job;
  std::optional<std::int64_t> tag;
  std::string name;  ///< "Ilse Quillon"
  std::string label; ///< of the racket
  Quantity read;
  UnixMs at = 0;
  bool redone = false;  ///< the racket went back to be strung again after that
  std::string stringer, machine, frame, string;  ///< "" where nobody said
  Deviation deviation;
  std::optional<double> after;  ///< s from coming off the machine to the reading; none where no stage tells it
  double aged_percent = 0;      ///< by which the reading was raised, so that it compares with others at one age
  /// Where the averages of its machine and stringer stood after it, in per cent; none where they are not named or it tells nothing.
  std::optional<RoomWatch::Average> machine_average, stringer_average;
};

struct QualityAlarm {
  std::size_t racket = 0;  ///< that set it off: place in rackets()
  WatchAlarm alarm;
  CauseReport causes;      ///< of the newest kAlarmsExplained; otherwise empty
};
inline constexpr std::size_t kAlarmsExplained = 12;

/// How much of the scatter lies between those who, or what, it may come from.
struct VariancePart {
  enum class By { stringer, machine, frame };
  By by = By::stringer;
  std::size_t groups = 0, count = 0;
  double share = 0;  ///< of the variance, 0 to 1: an estimate
  Interval band;     ///< 95 %, from the distribution of F; with groups of unequal size about that
  double chance = 1; ///< of so clear a difference if all were alike
};

struct MachineQuality {
  EntityId machine;
  std::string name;
  Unit unit = Unit::none;
  std::vector<GaugeReading> readings;  ///< in that unit, in order of time
  Outcome<Calibration> calibration;    ///< bad_input where the readings tell no line
  std::optional<UnixMs> due;           ///< when to look again; none if it was never looked at
  bool due_by_drift = false;
};

class RoomQuality {
 public:
  /// Faults: not_found (no event).
  [[nodiscard]] static Outcome<RoomQuality> make(const Ledger& ledger, const BookId& event);

  /// In order of time; those of which a deviation can be told and those of which none can yet (Against::nothing).
  [[nodiscard]] const std::vector<QualityRacket>& rackets() const { return rackets_; }
  /// Readings that can't be of this racket, each with what is wrong with it.
  [[nodiscard]] const std::vector<Fault>& left_out() const { return left_out_; }
  [[nodiscard]] const Scatter& scatter() const { return scatter_; }
  /// What was done about the readings' time since stringing.
  [[nodiscard]] const ReadingAges& ages() const { return ages_; }
  [[nodiscard]] const QualityRulesNow& rules() const { return rules_; }
  /// In order of time.
  [[nodiscard]] const std::vector<QualityAlarm>& alarms() const { return alarms_; }
  [[nodiscard]] const std::vector<MachineQuality>& machines() const { return machines_; }
  /// Of those parts of which something can be told.
  [[nodiscard]] const std::vector<VariancePart>& variance() const { return variance_; }

  /// Against the room's tolerance; of a machine or a stringer alone by its name, Watched::racket for all. Faults: those of capability_of().
  [[nodiscard]] Outcome<Capability> capability(Watched of = Watched::racket, const std::string& name = {}) const;
  /// That racket as core/quality's sentences want it; a machine that is called by a number alone is "Machine 2" there.
  [[nodiscard]] SuspectRacket suspect(const Language& language, std::size_t racket) const;

  /// At the bench, before the stencil.
  struct Verdict {
    enum class State { not_read, too_few, even, off };
    State state = State::not_read;
    std::size_t racket = 0;  ///< place in rackets(), unless not read
    CauseReport causes;      ///< of off
  };
  /// Off is what lies beyond the tolerance, or set an alarm off. Not read is also what goes back to be strung again since.
  [[nodiscard]] Verdict racket_off(const EntityId& job) const;
  /// What was read, why it is probably so and what to do first; what is missing where nothing can be told; "" where nothing was read.
  [[nodiscard]] std::string verdict_words(const Language& language, const Verdict& verdict) const;

 private:
  RoomQuality() = default;
  void judge(std::vector<StrungReading> readings, std::span<const StrungReading> earlier, const std::vector<std::pair<UnixMs, std::string>>& mended);
  void part_variance();
  [[nodiscard]] CauseReport causes(std::size_t racket, CauseQuestion question) const;

  QualityRulesNow rules_;
  std::vector<QualityRacket> rackets_;
  std::vector<SuspectRacket> suspects_;
  std::vector<std::size_t> suspect_places_;  // of rackets, in suspects_; only where a deviation is told
  std::vector<Fault> left_out_;
  Scatter scatter_{kUsualScatter, 0};
  ReadingAges ages_;
  std::vector<QualityAlarm> alarms_;
  std::vector<MachineQuality> machines_;
  std::vector<VariancePart> variance_;
  std::map<std::string, KnownBias> gauged_;
};

/// "the machine’s calibration"
[[nodiscard]] std::string cause_words(const Language& language, Cause cause);

/// The chart's points as a table for other programs; of a machine or a stringer alone by its name.
[[nodiscard]] std::string quality_csv(const RoomQuality& room, Watched of = Watched::racket, const std::string& name = {});

}  // namespace weavelog
