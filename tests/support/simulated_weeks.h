#pragma once
// Weeks of a stringing room with a known truth: who strings what on which machine, how readings scatter, and one thing that is wrong from
// some racket on. For tests and the bench of core/quality; the same on every machine.

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/plan/chance.h"
#include "core/quality/causes.h"
#include "core/quality/watch.h"

namespace weavelog::test {

struct WeekSetting {
  std::size_t benches = 4;     ///< each with a stringer and a machine of its own
  std::size_t days = 7;
  std::size_t each_day = 10;   ///< rackets of a bench on a day
  double away = 0.2;           ///< part of the rackets that a stringer does on another's machine
  double scatter = 1.75;       ///< true scatter of a reading, per cent
  std::size_t frames = 120;    ///< players' rackets, each strung about twice a week
};

struct Planted {
  enum class Kind { none, slipping_clamp, machine_low, stringer_long };
  Kind kind = Kind::none;
  std::size_t who = 0;      ///< place of the machine or stringer
  double percent = 0;       ///< how far readings move
  double often = 1;         ///< slips: part of the rackets
  std::size_t from = 0;     ///< racket of the week from which on
};

/// The rackets of a week, in order.
[[nodiscard]] std::vector<SuspectRacket> simulated_week(const WeekSetting& setting, const Planted& fault, Chance& chance);
/// What is strung on that machine (slip, calibration) or by that stringer.
[[nodiscard]] bool touched(const Planted& fault, const SuspectRacket& racket);
[[nodiscard]] std::string machine_name(std::size_t place);
[[nodiscard]] std::string stringer_name(std::size_t place);

/// How a planted fault was met.
struct Found {
  std::optional<std::size_t> after;  ///< rackets of that machine or stringer since it began, when a chart that it moves signalled first
  std::optional<Cause> first, second;  ///< causes named then, scatter left out
  bool stands_out = false;             ///< the first of these is more than three times as likely as the next
  bool either = false;                 ///< machine and stringer lead and are said not to be told apart yet
  std::optional<Cause> gauged;         ///< the first named once a gauge (0.5 per cent uncertain) was put on that machine at the alarm
  std::optional<Cause> at_tenth;       ///< the first one named when ten such rackets were strung
};
/// Plays a week with a fault and looks how soon it is found: by the racket's own chart where it is a touched one, or by the average of the
/// machine or stringer. `limits`: the scatter that the charts believe; 0: the true one.
[[nodiscard]] Found find_fault(const WeekSetting& setting, const Planted& fault, Chance& chance, double believed = 0);

/// False alarms of weeks in which nothing is wrong.
struct FalseAlarms {
  std::size_t weeks = 0, rackets = 0;
  std::size_t of_rackets = 0, of_machines = 0, of_stringers = 0;
};
[[nodiscard]] FalseAlarms false_alarms(const WeekSetting& setting, std::size_t weeks, Chance& chance, double believed = 0);

/// What theory says of the alarms of one average in so many rackets, when each alarm lets it begin anew (a renewal equation over its run
/// length).
[[nodiscard]] double expected_alarms(const EwmaDesign& design, std::size_t rackets);

}  // namespace weavelog::test
