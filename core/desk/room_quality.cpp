#include "core/desk/room_quality.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

#include "core/base/csv.h"
#include "core/base/iso_time.h"
#include "core/base/text.h"
#include "core/desk/bench.h"
#include "core/desk/event_book.h"
#include "core/desk/machines.h"
#include "core/desk/phrases.h"
#include "core/desk/room_bed.h"
#include "core/log/derived_id.h"
#include "core/model/job_facts.h"
#include "core/quality/distributions.h"
#include "core/quality/measured.h"
#include "core/quality/statistics.h"

namespace weavelog {
namespace {

constexpr std::int64_t kLeastTolerance = 5, kMostTolerance = 200;  // per mille
constexpr std::int64_t kMostDaysBack = 365;
constexpr double kDayMs = 86'400'000;
constexpr std::size_t kMostReadings = 20'000;  // of an event: far beyond what a room strings; older ones are not looked at
constexpr std::size_t kMostLeftOut = 300;
constexpr double kLongestAge = 60.0 * 86'400;  // s; longer after stringing than any event lasts nobody reads a racket of the room

bool tolerance_can_be(std::int64_t per_mille) { return per_mille >= kLeastTolerance && per_mille <= kMostTolerance; }
bool days_can_be(std::int64_t days) { return days >= 1 && days <= kMostDaysBack; }

/// Names that tell things apart: a second one of the same name gets a number.
class Names {
 public:
  const std::string& of(const EntityId& id, const std::string& name) {
    const auto [found, fresh] = held_.try_emplace(id.hex(), name);
    if (fresh)
      for (int n = 2; !taken_.insert(found->second).second; ++n) found->second = name + " (" + std::to_string(n) + ")";
    return found->second;
  }

 private:
  std::map<std::string, std::string> held_;
  std::set<std::string> taken_;
};

std::string joined_text(std::initializer_list<std::string> parts, const char* between) {
  std::string out;
  for (const std::string& part : parts)
    if (!part.empty()) out += (out.empty() ? "" : between) + part;
  return out;
}

std::string said(const std::optional<Quantity>& quantity) { return quantity ? text_of(*quantity) : std::string(); }

/// What is pulled for the middle of the bed: linear stiffness follows the geometric mean of mains and crosses.
std::optional<double> pulled(const Agreed& agreed) {
  const auto force = [](const std::optional<Quantity>& tension) -> std::optional<double> {
    return tension ? in_newtons(*tension) : std::nullopt;
  };
  const auto mains = force(agreed.mains_tension), crosses = force(agreed.crosses_tension);
  if (!mains || !(*mains > 0)) return std::nullopt;
  return crosses && *crosses > 0 ? std::sqrt(*mains * *crosses) : *mains;
}

/// Who strung it and on what, as the marks up to a moment say.
struct Strung {
  std::string by;
  EntityId machine;
  std::size_t times = 0;  // how often it had been strung
  std::optional<UnixMs> off;  // when it came off the machine; the reading's moment while it is on it
};
Strung strung_at(const PlayerRecord& record, const EntityId& job, UnixMs at) {
  std::vector<const PlacedMark*> marks;
  for (const PlacedMark& placed : record.marks)
    if (placed.mark.job == job && (placed.mark.stage == Stage::on_machine || placed.mark.stage == Stage::strung)) marks.push_back(&placed);
  std::sort(marks.begin(), marks.end(), [](const auto* a, const auto* b) { return a->stamp < b->stamp; });
  Strung out;
  for (const PlacedMark* placed : marks) {
    const bool mounted = placed->mark.stage == Stage::on_machine;
    // It is read while it is still on the machine, or soon after; whoever says "strung" after the reading says who did it all the same.
    if (placed->mark.at.value_or(0) > at && (mounted || out.times > 0)) continue;
    if (mounted) {
      if (placed->mark.machine) out.machine = placed->mark.machine;
      if (out.times == 0 || out.by.empty()) out.by = placed->mark.by;
    } else {
      out.by = placed->mark.by;
    }
    if (!mounted && placed->mark.at) out.off = std::min(*placed->mark.at, at);
    if (placed->mark.at.value_or(0) <= at && !mounted) ++out.times;
    if (mounted) out.off = at;
  }
  return out;
}

/// It was taken up again after that moment: what was read then is cut out.
bool redone_after(const PlayerRecord& record, const EntityId& job, UnixMs at) {
  return std::any_of(record.marks.begin(), record.marks.end(), [&](const PlacedMark& placed) {
    const Stage stage = placed.mark.stage;
    return placed.mark.job == job && placed.mark.at.value_or(0) > at && stage <= Stage::on_machine && stage != Stage::waiting && stage != Stage::none;
  });
}

struct Gathered {
  QualityRacket racket;
  StrungReading reading;
};

}  // namespace

QualityRulesNow quality_rules(const Ledger& ledger, const BookId& event) {
  QualityRulesNow out;
  for (EntityState& state : ledger.entities(event, kQualityRules)) {
    Loaded<QualityRules> held(std::move(state));
    const QualityRules& now = held.now;
    out = {};
    // What a newer or a careless device wrote beyond any sense is as if nothing were said.
    if (now.tolerance_per_mille && tolerance_can_be(*now.tolerance_per_mille)) out.tolerance = static_cast<double>(*now.tolerance_per_mille) / 10;
    if (now.calibrate_every_days && days_can_be(*now.calibrate_every_days)) out.every_days = static_cast<double>(*now.calibrate_every_days);
    out.held = std::move(held);
  }
  return out;
}

Outcome<Draft> set_quality_rules(const BookId& event, const QualityRulesNow& now, const QualityRules& wanted) {
  if (wanted.tolerance_per_mille && !tolerance_can_be(*wanted.tolerance_per_mille))
    return fail(FaultCode::bad_input, "a bed is not held to " + std::to_string(*wanted.tolerance_per_mille) + " per mille", "tolerance",
                "give 0.5 to 20 per cent; 4 is two pounds of fifty");
  if (wanted.calibrate_every_days && !days_can_be(*wanted.calibrate_every_days))
    return fail(FaultCode::bad_input, "a machine is not checked every " + std::to_string(*wanted.calibrate_every_days) + " days", "calibrate every",
                "give 1 to 365 days");
  if (wanted == now.held.now) return fail(FaultCode::bad_input, "nothing new was said", "quality", "nothing needs to be done");
  EntityState seen = now.held.seen;
  if (!now.held.id()) {
    seen.book = event;
    seen.kind = kQualityRules;
    seen.id = derived_id(event, "quality rules");
  }
  Draft out(event, kEventBook, kActEdit);
  put_changes(out, seen, wanted);
  return out;
}

namespace {

/// Of a hybrid the mains, which are more of it in the middle; "" where nobody said.
std::string material_said(const Agreed& agreed, std::span<const BedStringChoice> strings) {
  for (const BedStringChoice& one : strings)
    if (one.material_said && search_key(one.name) == search_key(agreed.mains_string)) return std::string(name_of(one.kind.material));
  return {};
}

std::vector<Gathered> gather(const Ledger& ledger, const BookId& event, std::span<const Loaded<Machine>> machines, std::vector<StrungReading>& earlier,
                             std::map<std::string, std::vector<GaugeReading>>& pulls, std::map<std::string, Unit>& units) {
  std::vector<Gathered> out;
  Names frames, machine_names;
  const auto strings = bed_strings(ledger, event);
  std::map<std::string, std::string> known;
  for (const auto& machine : machines) known[machine.id().hex()] = machine_names.of(machine.id(), machine.now.name);
  std::set<BookId> players;
  for (const PlayerJobs& one : jobs_by_player(ledger, event)) players.insert(one.player);
  for (const BookId& player : players) {
    if (ledger.entities(player, kReading).empty()) continue;
    const auto record = load_player(ledger, player);
    if (!record) continue;
    // By job and how often it had been strung: the newest.
    std::map<std::pair<std::string, std::size_t>, Gathered> newest;
    for (const auto& held : record->readings) {
      const Reading& reading = held.now;
      const auto* job = record->job(reading.job);
      if (job == nullptr || job->now.event != event || !reading.value || !reading.at) continue;
      const Strung strung = strung_at(*record, reading.job, *reading.at);
      if (reading.what == ReadingKind::tension_head) {
        const EntityId machine = reading.machine ? reading.machine : strung.machine;
        if (machine && reading.set_to) {
          Unit& unit = units.try_emplace(machine.hex(), reading.set_to->unit).first->second;
          const auto set = unit_factor(reading.set_to->unit, unit), shown = unit_factor(reading.value->unit, unit);
          if (set && shown)
            pulls[machine.hex()].push_back({reading.set_to->amount.to_double() * *set, reading.value->amount.to_double() * *shown, reading.at, {}, {}});
        }
        continue;
      }
      const double shown = reading.value->amount.to_double();
      if (reading.what != ReadingKind::bed_stiffness || !(shown > 0) || !std::isfinite(shown)) continue;
      Gathered one;
      QualityRacket& racket = one.racket;
      racket.player = player;
      racket.job = reading.job;
      racket.tag = job->now.tag_number;
      racket.name = joined_text({record->person.now.given_name, record->person.now.family_name}, " ");
      if (racket.name.empty()) racket.name = record->person.now.native_name;
      racket.read = *reading.value;
      racket.at = *reading.at;
      racket.redone = redone_after(*record, reading.job, *reading.at);
      racket.stringer = strung.by;
      racket.string = job->now.mains_string;
      if (search_key(job->now.crosses_string) != search_key(job->now.mains_string))
        racket.string = joined_text({job->now.mains_string, job->now.crosses_string}, " / ");
      if (strung.machine) {
        const auto named = known.find(strung.machine.hex());
        if (named != known.end()) racket.machine = named->second;
      }
      std::string frame;  // what makes beds at one tension comparable
      const auto* held_racket = record->racket(job->now.racket);
      if (held_racket != nullptr) {
        const Racket& what = held_racket->now;
        racket.label = what.label;
        racket.frame = frames.of(held_racket->id(), joined_text({racket.name, what.label}, " "));
        if (!what.model.empty()) {
          frame = search_key(what.maker + " " + what.model) + "|" + said(what.head_size) + "|" + (what.mains_count ? std::to_string(*what.mains_count) : "") + "x" +
                  (what.crosses_count ? std::to_string(*what.crosses_count) : "");
        } else {
          frame = held_racket->id().hex();
        }
      }
      const auto to = unit_factor(reading.value->unit, Unit::kilogram_force_per_centimetre);
      one.reading.value = to ? shown * *to : shown;
      // An instrument's own scale compares with itself alone.
      const std::string scale = to ? std::string() : std::string(symbol_of(reading.value->unit)) + " " + search_key(reading.note);
      one.reading.kind = frame.empty() ? std::string()
                                       : frame + "|" + search_key(job->now.mains_string) + "|" + said(job->now.mains_gauge) + "|" +
                                             search_key(job->now.crosses_string) + "|" + said(job->now.crosses_gauge) + "|" + scale;
      if (!one.reading.kind.empty())
        one.reading.setup = one.reading.kind + "|" + said(job->now.mains_tension) + "|" + said(job->now.crosses_tension) + "|" +
                            said(job->now.mains_prestretch) + "|" + said(job->now.crosses_prestretch);
      one.reading.wanted = pulled(job->now);
      one.reading.at = racket.at;
      if (strung.off) racket.after = one.reading.after = static_cast<double>(racket.at - *strung.off) / 1000;
      if (one.reading.after && *one.reading.after > kLongestAge) racket.after = one.reading.after = std::nullopt;
      one.reading.racket = reading.job.hex() + " " + std::to_string(strung.times);
      one.reading.material = material_said(job->now, strings);
      if (job->now.mains_prestretch && job->now.mains_prestretch->unit == Unit::percent)
        one.reading.pre_stretch = std::clamp(job->now.mains_prestretch->amount.to_double(), 0.0, 30.0);
      one.reading.stringer = racket.stringer, one.reading.machine = racket.machine;
      one.reading.frame = racket.frame, one.reading.string = racket.string;
      const auto key = std::pair(reading.job.hex(), strung.times);
      const auto before = newest.find(key);
      if (before == newest.end()) {
        newest.emplace(key, std::move(one));
      } else if (before->second.racket.at <= racket.at) {
        earlier.push_back(std::exchange(before->second, std::move(one)).reading);
      } else {
        earlier.push_back(std::move(one.reading));
      }
    }
    for (auto& one : newest) out.push_back(std::move(one.second));
  }
  std::sort(out.begin(), out.end(), [](const Gathered& a, const Gathered& b) {
    return std::tuple(a.racket.at, a.racket.job) < std::tuple(b.racket.at, b.racket.job);
  });
  if (out.size() > kMostReadings) out.erase(out.begin(), out.end() - static_cast<std::ptrdiff_t>(kMostReadings));
  return out;
}

void take_cares(const Ledger& ledger, const BookId& event, std::span<const MachineCare> cares,
                std::map<std::string, std::vector<GaugeReading>>& pulls, std::map<std::string, Unit>& units) {
  const auto take = [&](const EntityId& machine, const Quantity& set, const Quantity& shown, const std::optional<std::int64_t>& at) {
    Unit& unit = units.try_emplace(machine.hex(), set.unit).first->second;
    const auto one = unit_factor(set.unit, unit), other = unit_factor(shown.unit, unit);
    if (one && other && set.amount.to_double() > 0 && shown.amount.to_double() > 0)
      pulls[machine.hex()].push_back({set.amount.to_double() * *one, shown.amount.to_double() * *other, at, {}, {}});
  };
  for (const MachineCare& care : cares)
    if (care.what == CareKind::calibrated && care.asked && care.read) take(care.machine, *care.asked, *care.read, care.at);
  for (EntityState& state : ledger.entities(event, kReading)) {
    const Loaded<Reading> held(std::move(state));
    const Reading& reading = held.now;
    if (reading.what == ReadingKind::tension_head && reading.machine && reading.set_to && reading.value)
      take(reading.machine, *reading.set_to, *reading.value, reading.at);
  }
}

}  // namespace

Outcome<RoomQuality> RoomQuality::make(const Ledger& ledger, const BookId& event) {
  if (auto record = load_event(ledger, event); !record) return fail(record.error());
  RoomQuality out;
  out.rules_ = quality_rules(ledger, event);
  const auto machines = load_machines(ledger, event);
  const auto cares = load_cares(ledger, event);
  std::map<std::string, std::vector<GaugeReading>> pulls;
  std::map<std::string, Unit> units;
  std::vector<StrungReading> earlier;
  auto gathered = gather(ledger, event, machines, earlier, pulls, units);
  take_cares(ledger, event, cares, pulls, units);
  Names names;
  CalibrationOptions options;
  options.tolerance = out.rules_.tolerance / 2;  // the other half is for hands, strings and frames
  options.longest_days = out.rules_.every_days;
  for (const auto& machine : machines) {
    auto& readings = pulls[machine.id().hex()];
    std::stable_sort(readings.begin(), readings.end(), [](const GaugeReading& a, const GaugeReading& b) { return a.at < b.at; });
    if (readings.size() > kMostReadings) readings.erase(readings.begin(), readings.end() - static_cast<std::ptrdiff_t>(kMostReadings));
    MachineQuality one{machine.id(), names.of(machine.id(), machine.now.name), Unit::kilogram_force, readings, Calibration::of(readings, options), {}, false};
    if (const auto unit = units.find(machine.id().hex()); unit != units.end()) one.unit = unit->second;
    if (one.calibration && one.calibration->due()) {
      one.due = one.calibration->due()->at;
      one.due_by_drift = one.calibration->due()->by_drift;
    }
    // A single pull is a look at the machine too, though it makes no line.
    if (!readings.empty() && readings.back().at && !one.due_by_drift)
      one.due = std::max(one.due.value_or(0), *readings.back().at + static_cast<UnixMs>(out.rules_.every_days * kDayMs));
    if (one.calibration) {
      const Calibration& line = *one.calibration;
      if (const auto off = line.error_at(line.reference()))
        out.gauged_[one.name] = {off->percent, std::max(0.1, (off->band.high - off->band.low) / 4)};
    }
    out.machines_.push_back(std::move(one));
  }
  std::vector<std::pair<UnixMs, std::string>> mended;
  for (const MachineCare& care : cares)
    if (care.what == CareKind::back_in_order && care.at)
      for (const MachineQuality& machine : out.machines_)
        if (machine.machine == care.machine) mended.emplace_back(*care.at, machine.name);
  std::sort(mended.begin(), mended.end());
  std::vector<StrungReading> readings;
  for (Gathered& one : gathered) {
    out.rackets_.push_back(std::move(one.racket));
    readings.push_back(std::move(one.reading));
  }
  out.judge(std::move(readings), earlier, mended);
  out.part_variance();
  return out;
}

void RoomQuality::judge(std::vector<StrungReading> readings, std::span<const StrungReading> earlier, const std::vector<std::pair<UnixMs, std::string>>& mended) {
  // The fault names the reading by its place; what can't be of its racket is left out and said, and the others are judged without it.
  ReadingTable table;
  table.wanted_unit = Unit::newton;
  {  // how fast strings lose tension, where readings of one stringing tell; then all at one age
    std::vector<StrungReading> over_time(earlier.begin(), earlier.end());
    over_time.insert(over_time.end(), readings.begin(), readings.end());
    table.readings = std::move(readings);
    if (auto ages = bring_to_one_age(table, relaxation_of(over_time))) ages_ = *ages;
    readings = std::move(table.readings);
    for (std::size_t i = 0; i < readings.size(); ++i) rackets_[i].aged_percent = readings[i].aged_percent;
  }
  for (;;) {
    for (std::size_t i = 0; i < readings.size(); ++i) readings[i].place = std::to_string(i);
    table.readings = readings;
    const auto first = deviations_of(table);
    if (first) {
      scatter_ = scatter_of(readings, *first);
      DeviationOptions options;
      options.scatter = scatter_.percent;
      if (const auto second = deviations_of(table, options)) {
        for (std::size_t i = 0; i < rackets_.size(); ++i) rackets_[i].deviation = (*second)[i];
        break;
      }
    }
    // The second look leaves out what the first does: it holds against the same.
    Fault fault = first ? deviations_of(table, {{}, scatter_.percent}).error() : first.error();
    const std::size_t at = std::min<std::size_t>(std::stoul(fault.where), readings.size() - 1);
    const QualityRacket& racket = rackets_[at];
    fault.where = joined_text({racket.tag ? std::to_string(*racket.tag) : std::string(), racket.name, text_of(racket.read)}, " ");
    left_out_.push_back(std::move(fault));
    if (left_out_.size() > kMostLeftOut) {  // that is no room with a few slips: nothing can be told of such a book
      rackets_.clear();
      return;
    }
    rackets_.erase(rackets_.begin() + static_cast<std::ptrdiff_t>(at));
    readings.erase(readings.begin() + static_cast<std::ptrdiff_t>(at));
  }
  WatchDesign design;
  design.scatter = scatter_.percent;
  RoomWatch watch(design);
  suspect_places_.assign(rackets_.size(), 0);
  std::size_t care = 0;
  for (std::size_t i = 0; i < rackets_.size(); ++i) {
    QualityRacket& racket = rackets_[i];
    for (; care < mended.size() && mended[care].first <= racket.at; ++care) watch.restart(Watched::machine, mended[care].second);
    if (racket.deviation.against == Against::nothing) continue;
    suspect_places_[i] = suspects_.size();
    suspects_.push_back({racket.deviation.percent, racket.deviation.doubt, racket.stringer, racket.machine, racket.frame, racket.string});
    for (WatchAlarm& alarm : watch.add(racket.stringer, racket.machine, racket.deviation.percent, racket.deviation.doubt))
      alarms_.push_back({i, std::move(alarm), {}});
    racket.machine_average = watch.average(Watched::machine, racket.machine);
    racket.stringer_average = watch.average(Watched::stringer, racket.stringer);
  }
  for (std::size_t i = alarms_.size() - std::min(alarms_.size(), kAlarmsExplained); i < alarms_.size(); ++i)
    alarms_[i].causes = causes(alarms_[i].racket, alarms_[i].alarm.watched == Watched::racket ? CauseQuestion::racket : CauseQuestion::chart);
}

CauseReport RoomQuality::causes(std::size_t racket, CauseQuestion question) const {
  CauseOptions options;
  options.question = question;
  options.scatter = scatter_.percent;
  options.gauged = gauged_;
  auto report = causes_of(suspects_, suspect_places_[racket], options);
  return report ? std::move(*report) : CauseReport{};
}

SuspectRacket RoomQuality::suspect(const Language& language, std::size_t racket) const {
  const QualityRacket& one = rackets_[racket];
  const bool number = !one.machine.empty() && one.machine.find_first_not_of("0123456789") == std::string::npos;
  return {one.deviation.percent, one.deviation.doubt, one.stringer, number ? desk_words().say(language, "quality.machine", {{"name", one.machine}}) : one.machine,
          one.frame, one.string};
}

Outcome<Capability> RoomQuality::capability(Watched of, const std::string& name) const {
  std::vector<double> percents;
  for (const SuspectRacket& one : suspects_)
    if (of == Watched::racket || (of == Watched::machine ? one.machine : one.stringer) == name) percents.push_back(one.percent);
  return capability_of(percents, -rules_.tolerance, rules_.tolerance);
}

void RoomQuality::part_variance() {
  using By = VariancePart::By;
  for (const By by : {By::stringer, By::machine, By::frame}) {
    std::map<std::string, std::vector<double>> of;
    for (const SuspectRacket& one : suspects_) {
      const std::string& name = by == By::stringer ? one.stringer : by == By::machine ? one.machine : one.frame;
      if (!name.empty()) of[name].push_back(one.percent);
    }
    std::vector<std::vector<double>> groups;
    double squares = 0;
    VariancePart part;
    part.by = by;
    for (auto& one : of) {
      part.count += one.second.size();
      squares += static_cast<double>(one.second.size() * one.second.size());
      groups.push_back(std::move(one.second));
    }
    part.groups = groups.size();
    if (part.count < kSettledLimits) continue;
    const auto table = one_way(std::span<const std::vector<double>>(groups));
    if (!table || !table->f || !table->chance) continue;
    const double total = table->between_variance + table->within_variance;
    if (!(total > 0)) continue;
    part.share = table->between_variance / total;
    part.chance = *table->chance;
    // F over its quantiles is 1 + n0 x the ratio of the two variances (Searle, Casella, McCulloch, Variance Components, 1992; from memory).
    const double n = static_cast<double>(part.count), n0 = (n - squares / n) / table->between.freedom;
    const auto quantile = [&](double above) {
      double low = 1e-9, high = 1e9;
      for (int i = 0; i < 100; ++i) {
        const double middle = std::sqrt(low * high);
        (f_above(middle, table->between.freedom, table->within.freedom) > above ? low : high) = middle;
      }
      return low;
    };
    const auto share_at = [&](double ratio) { return std::max(0.0, (ratio - 1) / (ratio - 1 + n0)); };
    part.band = {share_at(*table->f / quantile(0.025)), share_at(std::max(1.0, *table->f / quantile(0.975)))};
    variance_.push_back(part);
  }
}

RoomQuality::Verdict RoomQuality::racket_off(const EntityId& job) const {
  Verdict out;
  for (std::size_t i = rackets_.size(); i-- > 0;) {
    if (rackets_[i].job != job) continue;
    if (rackets_[i].redone) return out;
    out.racket = i;
    const Deviation& deviation = rackets_[i].deviation;
    if (deviation.against == Against::nothing) {
      out.state = Verdict::State::too_few;
      return out;
    }
    const bool alarmed = std::any_of(alarms_.begin(), alarms_.end(), [&](const QualityAlarm& one) { return one.racket == i; });
    out.state = alarmed || std::fabs(deviation.percent) > rules_.tolerance ? Verdict::State::off : Verdict::State::even;
    if (out.state == Verdict::State::off) out.causes = causes(i, CauseQuestion::racket);
    return out;
  }
  return out;
}

std::string cause_words(const Language& language, Cause cause) { return desk_words().say(language, "quality.cause." + std::string(name_of(cause))); }

std::string RoomQuality::verdict_words(const Language& language, const Verdict& verdict) const {
  using State = Verdict::State;
  if (verdict.state == State::not_read) return {};
  if (verdict.state == State::too_few) return desk_words().say(language, "quality.too_few");
  const QualityRacket& racket = rackets_[verdict.racket];
  const double percent = racket.deviation.percent, half = 1.96 * scatter_.percent * racket.deviation.doubt;
  const PhraseArgs figures{{"percent", Decimal::rounded(std::fabs(percent), 1)},
                           {"band", Decimal::rounded(half, 1)},
                           {"side", std::string(percent < 0 ? "low" : "high")},
                           {"tolerance", Decimal::rounded(rules_.tolerance, 1).trimmed()}};
  if (verdict.state == State::even) return desk_words().say(language, "quality.even", figures);
  std::string out = desk_words().say(language, "quality.off", figures);
  if (verdict.causes.findings.empty()) return out;
  const CauseFinding& likely = verdict.causes.findings.front();
  out += " " + desk_words().say(language, "quality.likely", {{"cause", cause_words(language, likely.cause)},
                                                            {"chance", static_cast<std::int64_t>(std::lround(100 * likely.chance))}});
  const SuspectRacket one = suspect(language, verdict.racket);
  if (likely.cause != Cause::scatter) out += " " + evidence_words(language, one, likely);
  out += " " + advice_words(language, one, likely);
  if (verdict.causes.machine_or_stringer && (likely.cause == Cause::machine_calibration || likely.cause == Cause::stringer))
    out += " " + quality_words().say(language, "together", {{"machine", one.machine}, {"stringer", one.stringer}});
  return out;
}

std::string quality_csv(const RoomQuality& room, Watched of, const std::string& name) {
  CsvWriter csv;
  csv.row({"at", "tag", "player", "racket", "stringer", "machine", "frame", "string", "reading", "unit", "deviation_percent", "uncertainty_percent", "against",
           "compared_with", "limit_percent", "tolerance_percent", "alarms", "after_stringing_s", "raised_for_age_percent"});
  const auto tenth = [](double value) { return Decimal::rounded(value, 2).text(); };
  static constexpr const char* against[] = {"nothing", "wanted", "kind", "setup"};
  for (std::size_t i = 0; i < room.rackets().size(); ++i) {
    const QualityRacket& one = room.rackets()[i];
    if (of != Watched::racket && (of == Watched::machine ? one.machine : one.stringer) != name) continue;
    std::string alarms;
    for (const QualityAlarm& alarm : room.alarms())
      if (alarm.racket == i) alarms += (alarms.empty() ? "" : " ") + std::string(name_of(alarm.alarm.watched));
    const bool told = one.deviation.against != Against::nothing;
    const double scatter = room.scatter().percent * one.deviation.doubt;
    csv.row({iso_utc(one.at), one.tag ? std::to_string(*one.tag) : "", one.name, one.label, one.stringer, one.machine, one.frame, one.string,
             one.read.amount.text(), std::string(symbol_of(one.read.unit)), told ? tenth(one.deviation.percent) : "", told ? tenth(1.96 * scatter) : "",
             against[static_cast<std::size_t>(one.deviation.against)], told ? std::to_string(one.deviation.others) : "", told ? tenth(3 * scatter) : "",
             tenth(room.rules().tolerance), alarms, one.after ? Decimal::rounded(*one.after, 0).text() : "", one.after ? tenth(one.aged_percent) : ""});
  }
  return csv.text();
}

}  // namespace weavelog
