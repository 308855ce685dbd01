#include "core/desk/bench.h"

#include <algorithm>
#include <array>

#include "core/base/text.h"
#include "core/desk/made_from.h"
#include "core/desk/work_list.h"

namespace weavelog {
namespace {

constexpr std::array kForces{Unit::kilogram_force, Unit::newton, Unit::pound_force};
constexpr std::array kStiffnesses{Unit::kilogram_force_per_centimetre, Unit::newton_per_millimetre, Unit::none, Unit::kilogram_force,
                                  Unit::pound_force};
constexpr std::array kTones{Unit::hertz};

struct Bounds {
  double low, high;
};
/// Wider than anything a racket gives, so that only slips of unit or point are refused: a tension head to 1,000 N; a bed's tone, which is
/// some hundreds of hertz, to 5,000. Common practice, no source.
Bounds bounds_of(ReadingKind what, Unit unit) {
  if (what == ReadingKind::tone) return {10, 5000};
  if (what == ReadingKind::tension_head) return {0.1, unit == Unit::newton ? 1000.0 : unit == Unit::pound_force ? 225.0 : 102.0};
  return {0.1, 1000};
}

EntityId record_id(const EntityId& job, std::int64_t redo) { return made_from(job, "weavelog bench record 1", std::to_string(redo)); }

Fault no_job(const EntityId& job) { return {FaultCode::not_found, "no such job", job.hex(), "look at the board again"}; }

struct Held {
  EntityState seen;
  BenchRecord now;
};
/// What is held of the work going on; a fresh one, begun at the newest step to the bench, where there is none.
Held held_now(const PlayerRecord& record, const EntityId& job, const BenchHand& hand) {
  if (const auto* held = bench_now(record, job)) return {held->seen, held->now};
  Held fresh;
  fresh.seen.book = record.book;
  fresh.seen.kind = kBenchRecord;
  fresh.seen.id = record_id(job, redos_of(record, job));
  fresh.now.job = job;
  fresh.now.by = hand.by;
  fresh.now.started_at = hand.at;
  const StageNow now = record.stage_of(job);
  if ((now.stage == Stage::cut_out || now.stage == Stage::on_machine) && now.at) fresh.now.started_at = now.at;
  return fresh;
}

Outcome<> check_reading(const Reading& measured) {
  const auto units = units_of(measured.what);
  if (units.empty()) return fail(FaultCode::bad_input, "it was not said what was measured", "reading", "choose one");
  if (!measured.value) return fail(FaultCode::bad_input, "there is no value", "reading", "give what the instrument shows");
  for (const std::optional<Quantity>& quantity : {measured.value, measured.set_to}) {
    if (!quantity) continue;
    if (std::find(units.begin(), units.end(), quantity->unit) == units.end()) {
      std::string names;
      for (const Unit unit : units)
        names += (names.empty() ? "" : ", ") + (unit == Unit::none ? std::string("a bare number") : std::string(symbol_of(unit)));
      return fail(FaultCode::bad_input, text_of(*quantity) + " is no such reading", "reading", "give it in one of: " + names);
    }
    const Bounds bounds = bounds_of(measured.what, quantity->unit);
    if (const double value = quantity->amount.to_double(); !(value >= bounds.low && value <= bounds.high))
      return fail(FaultCode::bad_input, text_of(*quantity) + " can’t be", "reading", "read the instrument again, and its unit");
  }
  if (measured.set_to && measured.what != ReadingKind::tension_head)
    return fail(FaultCode::bad_input, "only a tension head is set to something", "reading", "leave it out");
  return {};
}

}  // namespace

std::int64_t redos_of(const PlayerRecord& record, const EntityId& job) {
  return std::count_if(record.checks.begin(), record.checks.end(),
                       [&](const Loaded<CheckResult>& check) { return check.now.job == job && check.now.passed == false; });
}

std::vector<const Loaded<BenchRecord>*> benches_of(const PlayerRecord& record, const EntityId& job) {
  std::vector<const Loaded<BenchRecord>*> own;
  for (const auto& held : record.benches)
    if (held.now.job == job) own.push_back(&held);
  std::stable_sort(own.begin(), own.end(),
                   [](const auto* a, const auto* b) { return a->now.started_at.value_or(0) < b->now.started_at.value_or(0); });
  return own;
}

const Loaded<BenchRecord>* bench_now(const PlayerRecord& record, const EntityId& job) {
  const EntityId id = record_id(job, redos_of(record, job));
  for (const auto& held : record.benches)
    if (held.id() == id && held.now.job == job) return &held;
  return nullptr;
}

std::optional<MachineTime> time_on_machine(const PlayerRecord& record, const EntityId& job) {
  std::optional<MachineTime> time;
  for (const PlacedMark& placed : marks_of(record, job)) {
    if (!placed.mark.at) continue;
    if (placed.mark.stage == Stage::on_machine)
      time = MachineTime{*placed.mark.at, {}};
    else if (time && !time->until)
      // Clocks of two devices may differ: nothing takes less than no time.
      time->until = std::max(*placed.mark.at, time->since);
  }
  return time;
}

MachineSaid machine_of(const PlayerRecord& record, const EntityId& job) {
  MachineSaid said;
  for (const PlacedMark& placed : marks_of(record, job))
    if (placed.mark.stage == Stage::on_machine) said.machine = placed.mark.machine;
  if (said.machine)
    for (const auto* held : benches_of(record, job))
      if (held->now.machine == said.machine) said.name = held->now.machine_name;
  return said;
}

Outcome<Draft> step_at_bench(const PlayerRecord& record, const EntityId& job, const StageStep& step) {
  auto draft = take_step(record, std::span(&job, 1), step);
  if (!draft) return draft;
  Held held = held_now(record, job, {step.by, step.at});
  if (step.to == Stage::cut_out || step.to == Stage::on_machine) {
    held.now.by = step.by;
    if (step.to == Stage::on_machine) {
      const EntityId machine = machine_of_step(record, job, step);
      if (machine != held.now.machine) held.now.machine_name.clear();
      held.now.machine = machine;
      if (step.machine) held.now.machine_name = step.machine_name;
    }
  } else if (step.to == Stage::strung) {
    held.now.finished_at = step.at;
  } else {
    return draft;
  }
  put_changes(*draft, held.seen, held.now);
  return draft;
}

Outcome<Draft> tick_step(const PlayerRecord& record, const EntityId& job, const std::string& name, bool done, const BenchHand& hand) {
  if (!record.job(job)) return fail(no_job(job));
  if (is_blank(name) || name.find('\n') != std::string::npos)
    return fail(FaultCode::bad_input, "no step was named", "step", "choose one of the list");
  Held held = held_now(record, job, hand);
  std::vector<std::string> names = split_names(held.now.steps_done);
  const auto found = std::find(names.begin(), names.end(), name);
  if (done == (found != names.end()))
    return fail(FaultCode::bad_input, done ? "the step is done already" : "the step was not done", name, "nothing needs to be done");
  if (done && names.size() >= kMostSteps)
    return fail(FaultCode::bad_input, "that is more than a list has", name, "look at the list again");
  if (done)
    names.push_back(name);
  else
    names.erase(found);
  held.now.steps_done = join_names(names);
  Draft draft(record.book, kPlayerBook, kActBench);
  put_changes(draft, held.seen, held.now);
  return draft;
}

Outcome<Draft> change_machine_of(const PlayerRecord& record, const EntityId& job, const MachineSaid& said, const BenchHand& hand) {
  if (!record.job(job)) return fail(no_job(job));
  const StageNow now = record.stage_of(job);
  if (now.clash)
    return fail(FaultCode::conflict, "two people moved this racket on while apart", job.hex(), "look where it is, then set its stage with a reason");
  if (now.stage != Stage::on_machine)
    return fail(FaultCode::refused, "the racket is on no machine now", "machine", "say which when it is put on one");
  if (!said.machine || is_blank(said.name))
    return fail(FaultCode::bad_input, "the machine has no name", "machine", "give the name by which the room knows it");
  if (machine_of(record, job).machine == said.machine)
    return fail(FaultCode::bad_input, "the racket is on that machine already", said.name, "nothing needs to be done");
  Held held = held_now(record, job, hand);
  held.now.machine = said.machine;
  held.now.machine_name = said.name;
  Draft draft(record.book, kPlayerBook, kActBench);
  put_changes(draft, held.seen, held.now);
  // The moment stays: it has been there all the time.
  (void)put_new(draft, StageMark{job, Stage::on_machine, now.at.value_or(hand.at), hand.by, {}, join_ids(now.newest), said.machine}, hand.at);
  return draft;
}

Outcome<Draft> note_bench(const PlayerRecord& record, const EntityId& job, const std::string& note, const BenchHand& hand) {
  if (!record.job(job)) return fail(no_job(job));
  Held held = held_now(record, job, hand);
  if (held.now.note == note) return fail(FaultCode::bad_input, "nothing new was said", "bench", "nothing needs to be done");
  held.now.note = note;
  Draft draft(record.book, kPlayerBook, kActBench);
  put_changes(draft, held.seen, held.now);
  return draft;
}

std::span<const Unit> units_of(ReadingKind what) {
  switch (what) {
    case ReadingKind::tension_head:
      return kForces;
    case ReadingKind::bed_stiffness:
      return kStiffnesses;
    case ReadingKind::tone:
      return kTones;
    case ReadingKind::unsaid:
      break;
  }
  return {};
}

Outcome<Draft> put_reading(const PlayerRecord& record, const EntityId& job, const Reading& measured) {
  if (!record.job(job)) return fail(no_job(job));
  if (auto checked = check_reading(measured); !checked) return fail(checked.error());
  Reading reading = measured;
  reading.job = job;
  Draft draft(record.book, kPlayerBook, kActReading);
  (void)put_new(draft, reading, measured.at.value_or(0));
  return draft;
}

Outcome<Draft> put_reading(const BookId& event, const Reading& measured) {
  if (auto checked = check_reading(measured); !checked) return fail(checked.error());
  if (measured.what != ReadingKind::tension_head || !measured.machine)
    return fail(FaultCode::bad_input, "without a racket only a machine's tension head is measured", "reading", "say which machine, or which job");
  Reading reading = measured;
  reading.job = {};
  Draft draft(event, kEventBook, kActReading);
  (void)put_new(draft, reading, measured.at.value_or(0));
  return draft;
}

std::vector<const Loaded<Reading>*> readings_of(const PlayerRecord& record, const EntityId& job) {
  std::vector<const Loaded<Reading>*> own;
  for (const auto& held : record.readings)
    if (held.now.job == job) own.push_back(&held);
  std::stable_sort(own.begin(), own.end(), [](const auto* a, const auto* b) { return a->now.at.value_or(0) > b->now.at.value_or(0); });
  return own;
}

}  // namespace weavelog
