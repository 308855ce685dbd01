#include "core/desk/room_day.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/base/local_time.h"
#include "core/base/text.h"
#include "core/desk/machines.h"
#include "core/desk/room_benches.h"
#include "core/desk/room_order.h"
#include "core/desk/shifts.h"
#include "core/log/derived_id.h"
#include "core/model/stock.h"
#include "core/plan/day_tables.h"

namespace weavelog {
namespace {

/// Told a little later than planned is no news to anybody.
constexpr std::int64_t kToldStepMs = kMinuteMs;
/// An entry holds 4,096 writes at most; a place has eight.
constexpr std::size_t kPlacesADraft = 400;
/// On-court rushes an hour and bench before a room has seen any, worth so many hours of its own: a guess of ours, small rooms get few.
constexpr double kRushPrior = 0.05, kRushPriorHours = 10;
/// Of rackets strung, those that are strung once more: one of fifty, worth fifty of the room's own; a guess of ours too.
constexpr double kAgainPrior = 0.02, kAgainPriorRackets = 50;

/// "natural gut": as durations call it (core/plan/durations.h).
std::string material_words(StringMaterial material) {
  if (material == StringMaterial::unsaid) return {};
  std::string out(name_of_choice(material));
  std::replace(out.begin(), out.end(), '_', ' ');
  return out;
}

/// When it is that hour there, also on the days on which clocks are put forward or back.
UnixMs hour_of_day(const LocalTime& clock, std::int64_t day, int hour) {
  const UnixMs plain = clock.begin_of(day) + hour * kHourMs;
  return plain + (hour - clock.hour_of(plain)) * kHourMs;
}

bool meets(const std::vector<TimeSpan>& one, const std::vector<TimeSpan>& other) {
  for (const TimeSpan& a : one)
    for (const TimeSpan& b : other)
      if (a.from < b.until && b.from < a.until) return true;
  return false;
}

EntityId place_id(const BookId& event, const EntityId& job) {
  return derived_id(event, "told day " + job.hex());
}

}  // namespace

std::string player_words(const OpenJob& racket) {
  return racket.family_name + (racket.given_name.empty() || racket.family_name.empty() ? "" : " ") + racket.given_name;
}

std::string racket_words(const OpenJob& racket) {
  return racket.tag_number ? std::to_string(*racket.tag_number) + " " + player_words(racket) : player_words(racket);
}

std::vector<Loaded<DayPlace>> told_day(const Ledger& ledger, const BookId& event) {
  std::vector<Loaded<DayPlace>> out;
  for (EntityState& state : ledger.entities(event, kDayPlace)) {
    Loaded<DayPlace> place(std::move(state));
    if (place.now.job && place.now.stringer && place.now.begin && place.now.ready) out.push_back(std::move(place));
  }
  return out;
}

/// What is put together while a day is read.
struct RoomDay::Reading {
  RoomDay& day;
  EventRecord event;
  std::vector<MachineNow> machines;
  std::vector<std::string> names{};  // by bench: search key of the stringer

  void find_hands(const Ledger& ledger);
  void learn(const Ledger& ledger);
  void open_benches(const Ledger& ledger);
  void give_machines();
  void take_jobs(const Ledger& ledger);
  void put_in_work(std::size_t open_job, DayJob& job);
  void note_told(const Ledger& ledger);
  [[nodiscard]] std::string machine_name(const EntityId& id) const {
    for (const MachineNow& machine : machines)
      if (machine.machine.id() == id) return machine.machine.now.name;
    return {};
  }
  [[nodiscard]] bool in_order(const EntityId& id) const {
    return std::any_of(machines.begin(), machines.end(), [&](const auto& one) { return one.machine.id() == id && !one.out_of_order; });
  }
};

void RoomDay::Reading::learn(const Ledger& ledger) {
  for (EntityState& state : ledger.entities(day.event_, kStockItem)) {
    const Loaded<StockItem> item(std::move(state));
    if (const auto words = material_words(item.now.material); !words.empty()) day.materials_[search_key(item.now.name)] = words;
  }
  std::vector<WorkReading> readings;
  std::vector<std::int64_t> finishes;
  std::vector<std::pair<std::int64_t, bool>> settled;
  double rushes = 0, strung = 0, again = 0;
  std::set<std::int64_t> hours;  // in which something was taken in
  for (const JobFacts& facts : job_facts(ledger, day.event_)) {
    const JobTimes& times = facts.times;
    if (times.mounted_at && times.strung_at && !times.strung_by.empty()) {
      const double minutes = static_cast<double>(*times.strung_at - *times.mounted_at) / static_cast<double>(kMinuteMs);
      readings.push_back({times.strung_by, day.work_kind(facts.mains_string, facts.crosses_string, facts.pattern, facts.pieces), minutes});
    }
    strung += times.strung_count > 0;
    again += times.strung_count > 1;
    if (times.strung_at && times.ready_at && *times.ready_at >= *times.strung_at && *times.ready_at - *times.strung_at < 3 * kHourMs)
      finishes.push_back(*times.ready_at - *times.strung_at);
    // A promise waits for the player's answer as the racket does: how it ends says nothing about how well promises are made.
    const bool answered = times.waited == 0 && !times.waiting_since;
    if (answered && facts.ready_by && times.ready_at) settled.emplace_back(*times.ready_at, *times.ready_at <= *facts.ready_by);
    else if (answered && facts.ready_by && *facts.ready_by < day.input_.now && facts.stage != Stage::aside && facts.stage != Stage::collected)
      settled.emplace_back(*facts.ready_by, false);
    if (facts.at) hours.insert(*facts.at / kHourMs);
    if (facts.rush == Rush::on_court) ++rushes;
  }
  day.times_ = WorkTimes(readings);
  if (finishes.size() >= 10) {  // what lay longer than half an hour waited for something else
    const auto rank = finishes.begin() + static_cast<std::ptrdiff_t>(finishes.size() * 4 / 5);
    std::nth_element(finishes.begin(), rank, finishes.end());
    day.finishing_ = std::min(*rank, 30 * kMinuteMs);
  } else {
    day.finishing_ = 5 * kMinuteMs;
  }
  std::sort(settled.begin(), settled.end());
  std::vector<bool> kept;
  for (const auto& one : settled) kept.push_back(one.second);
  day.confidence_ = confidence_after(kept);
  const double guessed = kRushPrior * kRushPriorHours * static_cast<double>(day.hands_.size());
  day.rushes_seen_ = rushes + guessed;
  day.again_ = std::min(0.5, (again + kAgainPrior * kAgainPriorRackets) / (strung + kAgainPriorRackets));
  day.rushes_per_hour_ = day.rushes_seen_ / (static_cast<double>(hours.size()) + kRushPriorHours);
}

void RoomDay::Reading::find_hands(const Ledger& ledger) {
  std::vector<Loaded<Machine>> plain;
  for (const MachineNow& machine : machines) plain.push_back(machine.machine);
  day.hands_ = hands_of_team(event, plain, machine_mounts(ledger, day.event_));
}

void RoomDay::Reading::open_benches(const Ledger& ledger) {
  const auto shifts = load_shifts(ledger, day.event_);
  day.shifts_assumed_ = shifts.empty();
  const UnixMs now = day.input_.now, end = now + kPlanAhead;
  const LocalTime clock(day.zone_);
  std::map<std::string, int> times_named;
  for (const BenchHands& hands : day.hands_) {
    DayBench bench;
    for (const auto& member : event.team)
      if (member.id() == hands.stringer) bench.name = bench.stringer = member.now.name;
    names.push_back(search_key(bench.name));
    if (const int before = times_named[bench.name]++; before > 0) bench.name = bench.stringer += " (" + std::to_string(before + 1) + ")";
    std::vector<TimeSpan> spans;
    if (day.shifts_assumed_) {
      for (std::int64_t one = clock.day_of(now); one <= clock.day_of(end); ++one)
        spans.push_back({hour_of_day(clock, one, 8), hour_of_day(clock, one, 20)});
    } else {
      for (const auto& shift : shifts)
        if (shift.now.member == hands.stringer) spans.push_back({*shift.now.from, *shift.now.until});
    }
    for (TimeSpan& span : spans) span = {std::max(span.from, now), std::min(span.until, end)};
    std::erase_if(spans, [](const TimeSpan& span) { return span.from >= span.until; });
    bench.open = joined(std::move(spans));
    day.input_.benches.push_back(std::move(bench));
  }
  give_machines();
  set_paces(day.input_.benches, day.times_);
}

void RoomDay::Reading::give_machines() {
  auto& benches = day.input_.benches;
  if (machines.empty()) return;  // the room does not say what it strings on
  const auto free_for = [&](std::size_t bench) -> EntityId {
    for (const MachineNow& machine : machines) {
      if (machine.out_of_order) continue;
      if (!machine.machine.now.whose.empty() && search_key(machine.machine.now.whose) != names[bench]) continue;
      bool taken = false;
      for (std::size_t other = 0; other < benches.size() && !taken; ++other)
        taken = other != bench && day.hands_[other].machine == machine.machine.id() && meets(benches[other].open, benches[bench].open);
      if (!taken) return machine.machine.id();
    }
    return {};
  };
  for (std::size_t bench = 0; bench < benches.size(); ++bench) {
    BenchHands& hands = day.hands_[bench];
    const bool out = hands.machine && !in_order(hands.machine);
    if (!hands.machine || out) {
      const EntityId other = free_for(bench);
      if (out) day.doubts_.push_back({other ? DayDoubt::Kind::other_machine : DayDoubt::Kind::machine_out, bench, 0});
      else if (!other && !benches[bench].open.empty()) day.doubts_.push_back({DayDoubt::Kind::no_machine, bench, 0});
      if (!other) benches[bench].open.clear();
      if (other || !out) hands.machine = other;
    }
    benches[bench].machine = machine_name(hands.machine);
  }
  // Two who are said to share a machine share its hours: the first of the team has it.
  for (std::size_t a = 0; a < benches.size(); ++a)
    for (std::size_t b = 0; b < a; ++b)
      if (day.hands_[a].machine && day.hands_[a].machine == day.hands_[b].machine)
        for (const TimeSpan& span : benches[b].open) benches[a].open = cut_out(benches[a].open, span);
}

void RoomDay::Reading::put_in_work(std::size_t open_job, DayJob& job) {
  const OpenJob& racket = day.open_[open_job];
  const std::string by = search_key(racket.stage_by);
  auto& benches = day.input_.benches;
  std::size_t bench = benches.size();
  for (std::size_t i = 0; i < benches.size(); ++i)
    if (names[i] == by && !by.empty()) bench = i;
  if (bench == benches.size())
    for (std::size_t i = 0; i < benches.size(); ++i)
      if (racket.facts.times.machine && day.hands_[i].machine == racket.facts.times.machine) bench = i;
  if (bench == benches.size()) {
    day.doubts_.push_back({DayDoubt::Kind::not_of_team, 0, open_job});
    return;
  }
  job.in_work = InWork{bench, std::min(racket.facts.times.mounted_at.value_or(day.input_.now), day.input_.now)};
}

void RoomDay::Reading::take_jobs(const Ledger& ledger) {
  day.open_ = open_jobs(ledger, day.event_);
  std::map<std::string, EntityId> homes;
  for (EntityState& state : ledger.entities(day.event_, kHomeBench)) {
    const Loaded<BenchPlace> place(std::move(state));
    if (!place.now.stringer) continue;
    if (place.now.book) homes[place.now.book.hex()] = place.now.stringer;
    homes[search_key(place.now.player)] = place.now.stringer;
  }
  std::int64_t margin = 60;
  for (EntityState& state : ledger.entities(day.event_, kPlanRules)) margin = Loaded<PlanRules>(std::move(state)).now.margin_min.value_or(margin);
  const auto matches = next_matches(room_order(event_draws(ledger, day.event_), day.zone_), day.input_.now);
  for (std::size_t i = 0; i < day.open_.size(); ++i) {
    const OpenJob& racket = day.open_[i];
    const JobFacts& facts = racket.facts;
    if (facts.stage == Stage::waiting) {
      day.waiting_.push_back(i);
      continue;
    }
    DayJob job;
    job.id = racket.job.hex();
    job.arrives = day.input_.now;
    const WorkKind kind = day.work_kind(facts.mains_string, facts.crosses_string, facts.pattern, facts.pieces);
    job.length = std::llround(day.times_.of("", kind).mean() * static_cast<double>(kMinuteMs));
    if (facts.ready_by) job.due = *facts.ready_by - day.finishing_;
    job.weight = facts.rush == Rush::on_court ? 10 : facts.rush == Rush::rush ? 3 : 1;
    job.on_court = facts.rush == Rush::on_court && facts.stage != Stage::on_machine;
    if (facts.stage == Stage::on_machine) {
      put_in_work(i, job);
      if (!job.in_work) continue;  // it is on a machine, only not on one that is planned
    }
    auto home = homes.find(racket.player.hex());
    for (const std::string& name : {racket.given_name + " " + racket.family_name, racket.family_name + " " + racket.given_name}) {
      if (home == homes.end()) home = homes.find(search_key(name));
      if (const auto match = matches.find(search_key(name)); match != matches.end() && !facts.ready_by)
        job.due = match->second - std::clamp<std::int64_t>(margin, 0, kMostMarginMin) * kMinuteMs - day.finishing_;
    }
    // One slip at the desk must not take the whole room its day.
    if ((job.due && !can_be_planned(day.input_.now, *job.due)) || (job.in_work && !can_be_planned(day.input_.now, job.in_work->since))) {
      day.doubts_.push_back({DayDoubt::Kind::no_such_time, 0, i});
      continue;
    }
    if (home != homes.end())
      for (std::size_t bench = 0; bench < day.hands_.size(); ++bench)
        if (day.hands_[bench].stringer == home->second) job.home = bench;
    day.input_.jobs.push_back(std::move(job));
    day.places_.push_back(i);
    day.kinds_.push_back(kind);
  }
  // Of two on one machine the one that came first was strung and nobody said so.
  std::map<std::size_t, std::size_t> on;  // by bench: the job
  std::set<std::size_t> strung;
  for (std::size_t i = 0; i < day.input_.jobs.size(); ++i) {
    const auto& work = day.input_.jobs[i].in_work;
    if (!work) continue;
    const auto [held, fresh] = on.emplace(work->bench, i);
    if (fresh) continue;
    const std::size_t earlier = day.input_.jobs[held->second].in_work->since <= work->since ? held->second : i;
    strung.insert(earlier);
    day.doubts_.push_back({DayDoubt::Kind::two_at_once, work->bench, day.places_[earlier]});
    held->second = earlier == i ? held->second : i;
  }
  for (auto one = strung.rbegin(); one != strung.rend(); ++one) {
    const auto at = static_cast<std::ptrdiff_t>(*one);
    day.input_.jobs.erase(day.input_.jobs.begin() + at);
    day.places_.erase(day.places_.begin() + at);
    day.kinds_.erase(day.kinds_.begin() + at);
  }
}

void RoomDay::Reading::note_told(const Ledger& ledger) {
  day.told_ = told_day(ledger, day.event_);
  for (const auto& place : day.told_) {
    if (!can_be_planned(day.input_.now, *place.now.begin) || !can_be_planned(day.input_.now, *place.now.ready)) continue;
    for (std::size_t bench = 0; bench < day.hands_.size(); ++bench)
      if (day.hands_[bench].stringer == place.now.stringer)
        day.input_.told.push_back({place.now.job.hex(), day.input_.benches[bench].name, *place.now.begin, *place.now.ready});
  }
}

Outcome<RoomDay> RoomDay::make(const Ledger& ledger, const BookId& event, UnixMs now) {
  auto record = load_event(ledger, event);
  if (!record) return fail(record.error());
  RoomDay out;
  out.event_ = event;
  out.zone_ = record->event.now.time_zone;
  out.input_.now = now;
  Reading reading{out, std::move(*record), event_machines(ledger, event, out.zone_, now)};
  reading.find_hands(ledger);
  reading.learn(ledger);
  reading.open_benches(ledger);
  if (out.input_.benches.empty())
    return fail(FaultCode::not_found, "nobody of the team strings", "team", "add the stringers under Team first");
  reading.take_jobs(ledger);
  reading.note_told(ledger);
  if (auto checked = check_day(out.input_); !checked) return fail(checked.error());
  return out;
}

WorkKind RoomDay::work_kind(const std::string& mains, const std::string& crosses, const std::string& pattern, std::int64_t pieces) const {
  WorkKind out;
  out.pattern = pattern;
  out.pieces = pieces == 2 ? 2 : 1;
  const auto of = [&](const std::string& name) {
    const auto found = materials_.find(search_key(name));
    return found == materials_.end() ? std::string() : found->second;
  };
  out.material = of(mains);
  if (!crosses.empty() && search_key(crosses) != search_key(mains)) {
    out.pieces = 2;
    if (const std::string other = of(crosses); other != out.material) out.material = "hybrid";
  }
  return out;
}

PromiseInput RoomDay::promise_input() const {
  JobTable table;
  table.kinds = kinds_;
  PromiseInput out = weavelog::promise_input(input_, table, times_);
  out.confidence = confidence_;
  out.rushes_per_hour = rushes_per_hour_;
  out.rushes_seen = rushes_seen_;
  out.again = again_;
  return out;
}

std::vector<Draft> RoomDay::tell(const DayPlan& plan, const std::string& by, UnixMs at) const {
  std::vector<Draft> out;
  std::size_t places = kPlacesADraft;
  for (const PlannedJob& planned : plan.jobs) {
    const OpenJob& one = racket(planned.job);
    const auto held = std::find_if(told_.begin(), told_.end(), [&](const auto& place) { return place.now.job == one.job; });
    const BenchHands& hands = hands_[planned.bench];
    DayPlace wanted = held != told_.end() ? held->now : DayPlace{};
    const bool same = held != told_.end() && wanted.stringer == hands.stringer && wanted.machine == hands.machine &&
                      std::abs(*wanted.begin - planned.begin) < kToldStepMs && std::abs(*wanted.ready - planned.end) < kToldStepMs;
    if (same) continue;
    wanted = {one.job, one.player, hands.stringer, hands.machine, planned.begin, planned.end, at, by};
    EntityState seen;
    if (held != told_.end()) {
      seen = held->seen;
    } else {
      seen.book = event_;
      seen.kind = kDayPlace;
      seen.id = place_id(event_, one.job);
    }
    if (places++ == kPlacesADraft) {
      out.emplace_back(event_, kEventBook, kActDayPlan);
      places = 1;
    }
    put_changes(out.back(), seen, wanted);
  }
  return out;
}

}  // namespace weavelog
