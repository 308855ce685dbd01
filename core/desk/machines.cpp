#include "core/desk/machines.h"

#include <algorithm>
#include <charconv>
#include <cmath>

#include "core/base/local_time.h"
#include "core/base/text.h"
#include "core/desk/phrases.h"
#include "core/model/job_facts.h"
#include "core/model/stage_now.h"

namespace weavelog {
namespace {

constexpr std::int64_t kMostPrestretch = 20;  // per cent; common practice, no source
constexpr std::int64_t kEveningHour = 18;
constexpr std::int64_t kMostBetweenCleanings = 1000;

Outcome<> check_force(const std::optional<Quantity>& tension, const char* where) {
  if (!tension) return {};
  const auto newtons = in_newtons(*tension);
  if (!newtons || *newtons <= 0 || *newtons > 1000)
    return fail(FaultCode::bad_input, "\"" + text_of(*tension) + "\" is no tension of a machine", where, "give kg, lb or N");
  return {};
}

Outcome<> check_machine(std::span<const Loaded<Machine>> held, const EntityId& self, const Machine& machine) {
  if (is_blank(machine.name)) return fail(FaultCode::bad_input, "the machine has no name", "name", "give it the name that the room uses");
  for (const auto& other : held)
    if (other.id() != self && search_key(other.now.name) == search_key(machine.name))
      return fail(FaultCode::bad_input, "another machine is called \"" + other.now.name + "\"", "name", "give it a name of its own");
  if (machine.kind == MachineKind::unsaid) return fail(FaultCode::bad_input, "it was not said how the machine pulls", "kind", "choose one");
  if (auto checked = check_force(machine.max_tension, "max tension"); !checked) return fail(checked.error());
  if (auto presets = prestretches_from(machine.prestretch); !presets) return fail(presets.error());
  if (machine.clean_every && (*machine.clean_every < 1 || *machine.clean_every > kMostBetweenCleanings))
    return fail(FaultCode::bad_input, "clamps can't be cleaned every " + std::to_string(*machine.clean_every) + " rackets", "clean every",
                "give 1 to 1000, or nothing for every evening");
  return {};
}

}  // namespace

Outcome<std::vector<std::int64_t>> prestretches_from(const std::string& text) {
  std::vector<std::int64_t> out;
  const char* at = text.data();
  const char* end = at + text.size();
  while (at != end) {
    if (*at == ' ' || *at == ',' || *at == '%') {
      ++at;
      continue;
    }
    std::int64_t number = 0;
    const auto [stop, error] = std::from_chars(at, end, number);
    if (error != std::errc() || number < 0 || number > kMostPrestretch)
      return fail(FaultCode::bad_input, "\"" + text + "\" is no list of pre-stretches", "pre-stretch", "write per cent from 0 to 20, such as 0 10 20");
    out.push_back(number);
    at = stop;
  }
  std::sort(out.begin(), out.end());
  out.erase(std::unique(out.begin(), out.end()), out.end());
  return out;
}

Outcome<Draft> add_machine(const BookId& event, std::span<const Loaded<Machine>> held, const Machine& machine, UnixMs at) {
  if (auto checked = check_machine(held, {}, machine); !checked) return fail(checked.error());
  Draft draft(event, kEventBook, kActMachine);
  (void)put_new(draft, machine, at);
  return draft;
}

Outcome<Draft> change_machine(const BookId& event, std::span<const Loaded<Machine>> held, const Loaded<Machine>& machine,
                              const Machine& wanted) {
  if (auto checked = check_machine(held, machine.id(), wanted); !checked) return fail(checked.error());
  Draft draft(event, kEventBook, kActMachine);
  put_changes(draft, machine.seen, wanted);
  return draft;
}

Outcome<Draft> note_care(const BookId& event, const MachineCare& care, UnixMs now) {
  if (care.what == CareKind::unsaid) return fail(FaultCode::bad_input, "it was not said what was done to the machine", "care", "choose one");
  if (is_blank(care.by)) return fail(FaultCode::bad_input, "nobody is named", "by", "say who did it");
  if (care.what == CareKind::out_of_order && is_blank(care.note))
    return fail(FaultCode::bad_input, "it was not said why the machine is out of order", "note", "say what is wrong with it");
  if (care.what == CareKind::calibrated) {
    if (!care.asked || !care.read)
      return fail(FaultCode::bad_input, "a calibration needs the tension that was set and what the gauge showed", "calibration", "give both");
    for (const auto& tension : {care.asked, care.read})
      if (auto checked = check_force(tension, "calibration"); !checked) return fail(checked.error());
  }
  MachineCare stored = care;
  if (!stored.at) stored.at = now;
  Draft draft(event, kEventBook, kActMachineCare);
  (void)put_new(draft, stored, now);
  return draft;
}

std::optional<std::int64_t> MachineNow::off_per_mille() const {
  if (!calibration || !calibration->asked || !calibration->read) return std::nullopt;
  const auto asked = in_newtons(*calibration->asked), read = in_newtons(*calibration->read);
  if (!asked || !read || *asked <= 0) return std::nullopt;
  const double off = (*read / *asked - 1) * 1000;
  return std::abs(off) < 1e6 ? std::optional(std::llround(off)) : std::nullopt;
}

std::vector<MachineNow> machines_now(std::vector<Loaded<Machine>> machines, std::span<const MachineCare> cares,
                                     std::span<const MachineUse> uses, UnixMs morning, UnixMs evening, UnixMs now) {
  std::vector<MachineNow> out;
  for (auto& machine : machines) {
    MachineNow& one = out.emplace_back();
    one.machine = std::move(machine);
    const EntityId id = one.machine.id();
    std::vector<const MachineCare*> own;
    for (const MachineCare& care : cares)
      if (care.machine == id) own.push_back(&care);
    std::stable_sort(own.begin(), own.end(), [](const auto* a, const auto* b) { return a->at.value_or(0) < b->at.value_or(0); });
    for (const MachineCare* care : own) switch (care->what) {
        case CareKind::clamps_cleaned: one.cleaned_at = care->at; break;
        case CareKind::calibrated: one.calibration = *care; break;
        case CareKind::out_of_order: one.out_of_order = *care; break;
        case CareKind::back_in_order: one.out_of_order.reset(); break;
        default: break;
      }
    for (const MachineUse& use : uses)
      if (use.machine == id && use.at > one.cleaned_at.value_or(INT64_MIN)) ++one.strung;
    const auto& every = one.machine.now.clean_every;
    one.cleaning_due = every ? one.strung >= *every : one.strung > 0 && now >= evening && one.cleaned_at.value_or(INT64_MIN) < morning;
  }
  return out;
}

std::vector<MachineNow> event_machines(const Ledger& ledger, const BookId& event, const std::string& zone, UnixMs now) {
  const LocalTime local(zone);
  const UnixMs morning = local.begin_of(local.day_of(now));
  return machines_now(load_machines(ledger, event), load_cares(ledger, event), machine_uses(ledger, event), morning,
                      morning + kEveningHour * kHourMs, now);
}

Outcome<> require_in_order(const MachineNow& machine) {
  if (!machine.out_of_order) return {};
  return fail(FaultCode::refused, "the machine is out of order: " + machine.out_of_order->note, machine.machine.now.name,
              "take another, or note that it is back in order");
}

std::vector<std::string> machine_doubts(const Language& language, const Machine& machine, const Agreed& agreed) {
  std::vector<std::string> out;
  const auto newtons = [](const std::optional<Quantity>& tension) { return tension ? in_newtons(*tension).value_or(0) : 0; };
  const auto& highest = newtons(agreed.crosses_tension) > newtons(agreed.mains_tension) ? agreed.crosses_tension : agreed.mains_tension;
  if (highest && machine.max_tension && newtons(highest) > newtons(machine.max_tension))
    out.push_back(desk_words().say(language, "machine.over_tension", {{"wanted", *highest}, {"most", *machine.max_tension}}));
  const auto presets = prestretches_from(machine.prestretch);
  if (!presets || presets->empty()) return out;
  std::string list;
  for (const std::int64_t preset : *presets) list += (list.empty() ? "" : ", ") + std::to_string(preset);
  for (const auto& wanted : {agreed.mains_prestretch, agreed.crosses_prestretch}) {
    if (!wanted || wanted->amount.to_double() <= 0) continue;
    const bool has = std::any_of(presets->begin(), presets->end(), [&](std::int64_t one) { return wanted->amount.to_double() == static_cast<double>(one); });
    std::string words = desk_words().say(language, "machine.no_preset", {{"wanted", *wanted}, {"presets", list}});
    if (!has && std::find(out.begin(), out.end(), words) == out.end()) out.push_back(std::move(words));
  }
  return out;
}

EntityId usual_machine(const Ledger& ledger, const BookId& event, std::span<const MachineNow> machines, const std::string& by) {
  EntityId last;
  std::int64_t newest = INT64_MIN;
  for (const MachineMount& mount : machine_mounts(ledger, event)) {
    if (mount.by != by || mount.at < newest) continue;
    newest = mount.at;
    last = mount.machine;
  }
  const MachineNow* usual = nullptr;
  std::size_t in_order = 0;
  for (const MachineNow& one : machines) {
    if (one.machine.id() == last) return one.out_of_order ? EntityId{} : last;
    if (one.out_of_order) continue;
    ++in_order;
    if (!usual || (!by.empty() && one.machine.now.whose == by)) usual = &one;
  }
  return usual && (in_order == 1 || (!by.empty() && usual->machine.now.whose == by)) ? usual->machine.id() : EntityId{};
}

std::vector<Loaded<Machine>> load_machines(const Ledger& ledger, const BookId& event) {
  std::vector<Loaded<Machine>> out;
  for (EntityState& state : ledger.entities(event, kMachine))
    if (exists(state)) out.emplace_back(std::move(state));
  return out;
}

std::vector<MachineUse> machine_uses(const Ledger& ledger, const BookId& event) {
  std::vector<MachineUse> out;
  for (const MachineMount& mount : machine_mounts(ledger, event)) out.push_back({mount.machine, mount.at});
  return out;
}

std::vector<MachineCare> load_cares(const Ledger& ledger, const BookId& event) {
  std::vector<MachineCare> out;
  for (const EntityState& state : ledger.entities(event, kMachineCare))
    if (exists(state)) out.push_back(from_state<MachineCare>(state));
  return out;
}

}  // namespace weavelog
