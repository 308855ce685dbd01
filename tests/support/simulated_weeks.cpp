#include "tests/support/simulated_weeks.h"

#include "core/quality/run_length.h"

namespace weavelog::test {

std::string machine_name(std::size_t place) { return "Table " + std::to_string(place + 1); }
std::string stringer_name(std::size_t place) { return "stringer " + std::to_string(place + 1); }

bool touched(const Planted& fault, const SuspectRacket& racket) {
  if (fault.kind == Planted::Kind::none) return false;
  return fault.kind == Planted::Kind::stringer_long ? racket.stringer == stringer_name(fault.who) : racket.machine == machine_name(fault.who);
}

std::vector<SuspectRacket> simulated_week(const WeekSetting& setting, const Planted& fault, Chance& chance) {
  std::vector<SuspectRacket> out;
  const std::size_t count = setting.benches * setting.days * setting.each_day;
  out.reserve(count);
  for (std::size_t i = 0; i < count; ++i) {
    SuspectRacket racket;
    const std::size_t stringer = i % setting.benches;
    std::size_t machine = stringer;
    if (setting.benches > 1 && chance.uniform() < setting.away) machine = (stringer + 1 + chance.below(setting.benches - 1)) % setting.benches;
    racket.stringer = stringer_name(stringer);
    racket.machine = machine_name(machine);
    racket.frame = "frame " + std::to_string(chance.below(setting.frames));
    racket.percent = setting.scatter * chance.normal();
    if (i >= fault.from && touched(fault, racket) && (fault.often >= 1 || chance.uniform() < fault.often)) racket.percent += fault.percent;
    out.push_back(std::move(racket));
  }
  return out;
}

namespace {

/// The causes named at a racket, scatter left out, the likeliest first.
std::vector<Cause> named(const std::vector<SuspectRacket>& week, std::size_t at, double scatter, CauseQuestion question, Found* told = nullptr,
                         const std::map<std::string, KnownBias>& gauged = {}) {
  CauseOptions options;
  options.gauged = gauged;
  options.question = question;
  options.scatter = scatter;
  std::vector<Cause> out;
  const CauseReport report = causes_of(week, at, options).value();
  for (const CauseFinding& finding : report.findings)
    if (finding.cause != Cause::scatter) out.push_back(finding.cause);
  if (told != nullptr) told->stands_out = report.stands_out, told->either = report.machine_or_stringer;
  return out;
}

}  // namespace

Found find_fault(const WeekSetting& setting, const Planted& fault, Chance& chance, double believed) {
  WatchDesign design;
  design.scatter = believed > 0 ? believed : setting.scatter;
  RoomWatch watch(design);
  const auto week = simulated_week(setting, fault, chance);
  Found out;
  std::size_t since = 0;
  for (std::size_t i = 0; i < week.size(); ++i) {
    const bool counts = i >= fault.from && touched(fault, week[i]);
    if (counts) ++since;
    for (const WatchAlarm& alarm : watch.add(week[i].stringer, week[i].machine, week[i].percent, week[i].doubt)) {
      if (!counts || out.after) continue;
      const bool meant = alarm.watched == Watched::racket ||
                         (fault.kind == Planted::Kind::stringer_long ? alarm.watched == Watched::stringer : alarm.watched == Watched::machine);
      if (!meant || alarm.percent * fault.percent < 0) continue;
      out.after = since;
      const auto causes = named(week, i, design.scatter, alarm.watched == Watched::racket ? CauseQuestion::racket : CauseQuestion::chart, &out);
      out.first = causes.at(0), out.second = causes.at(1);
      const bool low = fault.kind == Planted::Kind::machine_low && touched(fault, week[i]);
      const KnownBias read{(low ? fault.percent : 0) + 0.5 * chance.normal(), 0.5, 0.02};
      out.gauged = named(week, i, design.scatter, alarm.watched == Watched::racket ? CauseQuestion::racket : CauseQuestion::chart, nullptr,
                         {{week[i].machine, read}})
                       .front();
    }
    if (counts && since == 10) out.at_tenth = named(week, i, design.scatter, CauseQuestion::chart).front();
    if (since >= 10 && out.after) break;
  }
  return out;
}

FalseAlarms false_alarms(const WeekSetting& setting, std::size_t weeks, Chance& chance, double believed) {
  WatchDesign design;
  design.scatter = believed > 0 ? believed : setting.scatter;
  FalseAlarms out;
  out.weeks = weeks;
  for (std::size_t week = 0; week < weeks; ++week) {
    RoomWatch watch(design);
    for (const SuspectRacket& racket : simulated_week(setting, {}, chance)) {
      ++out.rackets;
      for (const WatchAlarm& alarm : watch.add(racket.stringer, racket.machine, racket.percent, racket.doubt))
        ++(alarm.watched == Watched::racket ? out.of_rackets : alarm.watched == Watched::machine ? out.of_machines : out.of_stringers);
    }
  }
  return out;
}

double expected_alarms(const EwmaDesign& design, std::size_t rackets) {
  const RunLength run = ewma_run_length(design, 0, rackets);
  std::vector<double> alarms(rackets + 1, 0);  // expected in so many rackets
  for (std::size_t n = 1; n <= rackets; ++n)
    for (std::size_t first = 1; first <= n; ++first) {
      const double chance = run.by[first - 1] - (first == 1 ? 0 : run.by[first - 2]);
      alarms[n] += chance * (1 + alarms[n - first]);
    }
  return alarms[rackets];
}

}  // namespace weavelog::test
