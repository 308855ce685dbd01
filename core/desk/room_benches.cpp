#include "core/desk/room_benches.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/base/text.h"
#include "core/desk/machines.h"
#include "core/log/derived_id.h"

namespace weavelog {
namespace {

std::vector<std::string> split(std::string_view words, std::string_view signs) {
  std::vector<std::string> out;
  while (!words.empty()) {
    const auto end = words.find_first_of(signs);
    if (const auto one = trimmed(words.substr(0, end)); !one.empty()) out.emplace_back(one);
    if (end == std::string_view::npos) break;
    words.remove_prefix(end + 1);
  }
  return out;
}

/// The same on every device.
EntityState derived_state(const BookId& event, EntityKind kind, const std::string& what) {
  EntityState out;
  out.book = event;
  out.kind = kind;
  out.id = derived_id(event, what);
  return out;
}
EntityState place_state(const BookId& event, const std::string& player) {
  return derived_state(event, kHomeBench, "home bench " + search_key(player));
}

Outcome<WinChance> chances_of(const Bracket& bracket, const std::string& rule) {
  const auto lines = bracket.lines();
  const bool rated = std::any_of(lines.begin(), lines.end(), [](const BracketLine& line) { return line.rating.has_value(); });
  const bool seeded = std::any_of(lines.begin(), lines.end(), [](const BracketLine& line) { return line.seed.has_value(); });
  if (rule != "even" && rule != "seed" && rated) return chances_by_rating(bracket);
  if (rule != "even" && seeded) return chances_by_seed(bracket);
  return even_chances();
}

}  // namespace

const Loaded<BenchPlace>* BenchBook::of(const std::string& player) const {
  const std::string key = search_key(player);
  const auto found = std::find_if(places.begin(), places.end(), [&](const auto& one) { return search_key(one.now.player) == key; });
  return found == places.end() ? nullptr : &*found;
}

BenchBook load_bench_book(const Ledger& ledger, const BookId& event) {
  BenchBook out;
  for (EntityState& state : ledger.entities(event, kHomeBench)) {
    Loaded<BenchPlace> place(std::move(state));
    if (!place.now.player.empty() && place.now.stringer) out.places.push_back(std::move(place));
  }
  for (EntityState& state : ledger.entities(event, kBenchWish)) {
    Loaded<BenchAsk> ask(std::move(state));
    if (!ask.now.player.empty() && !ask.now.off.value_or(false) && (ask.now.stringer || ask.now.machine)) out.asks.push_back(std::move(ask));
  }
  for (EntityState& state : ledger.entities(event, kPlanRules)) out.rules = Loaded<PlanRules>(std::move(state));
  return out;
}

Outcome<Draft> set_plan_rules(const BookId& event, const BenchBook& book, const PlanRules& rules) {
  const std::int64_t places = rules.hard_places.value_or(0);
  if (places < 0 || places > 256 || places == 1 || (places & (places - 1)) != 0)
    return fail(FaultCode::bad_input, "no round has " + std::to_string(places) + " places", "keep apart from", "take 2, 4, 8, ... or 0 for no rule");
  if (!rules.chances.empty() && rules.chances != "rating" && rules.chances != "seed" && rules.chances != "even")
    return fail(FaultCode::bad_input, "chances come by rating, seed, or are even", "chances", "take one of these");
  Draft out(event, kEventBook, kActBenches);
  put_changes(out, book.rules.id() ? book.rules.seen : derived_state(event, kPlanRules, "plan rules"), rules);
  return out;
}

std::map<std::string, std::string> home_stringers(const Ledger& ledger, const BookId& event) {
  std::map<std::string, std::string> out;
  const BenchBook book = load_bench_book(ledger, event);
  if (book.places.empty()) return out;
  std::map<EntityId, std::string> names;
  for (EntityState& state : ledger.entities(event, kTeamMember)) {
    const Loaded<TeamMember> member(std::move(state));
    names[member.id()] = member.now.name;
  }
  for (const auto& place : book.places)
    if (const auto name = names.find(place.now.stringer); name != names.end()) out[search_key(place.now.player)] = name->second;
  return out;
}

Outcome<std::unique_ptr<RoomBenches>> RoomBenches::make(const Ledger& ledger, const BookId& event) {
  const auto record = load_event(ledger, event);
  if (!record) return fail(record.error());
  std::unique_ptr<RoomBenches> out(new RoomBenches);
  out->event_ = event;
  out->book_ = load_bench_book(ledger, event);
  out->draws_ = event_draws(ledger, event);
  BenchCase given;
  std::map<EntityId, std::string> stringers, machines;
  const auto held_machines = load_machines(ledger, event);
  std::set<EntityId> taken;
  for (const auto& member : record->team) {
    if (member.now.role != TeamRole::stringer && member.now.role != TeamRole::head) continue;
    if (member.now.role == TeamRole::head && member.now.skills.empty()) continue;  // strings only if something is said of it
    HomeBench bench;
    bench.name = bench.stringer = member.now.name;
    bench.languages = split(member.now.languages, " ,;");
    bench.skills = split(member.now.skills, ",;");
    BenchHands hands{member.id(), {}};
    for (const auto& machine : held_machines) {
      if (search_key(machine.now.whose) != search_key(member.now.name) || taken.contains(machine.id())) continue;
      hands.machine = machine.id();
      bench.machine = machine.now.name;
      taken.insert(machine.id());
      break;
    }
    stringers[member.id()] = bench.name;
    given.benches.push_back(std::move(bench));
    out->hands_.push_back(hands);
  }
  if (given.benches.empty())
    return fail(FaultCode::not_found, "nobody of the team strings", "team", "add the stringers under Team first");
  for (const auto& machine : held_machines) machines[machine.id()] = machine.now.name;

  for (const HeldDraw& draw : out->draws_) {
    if (draw.sheet.now.kind == DrawKind::qualifying) continue;
    if (!draw.draw) return fail(draw.troubles.front());
    const Bracket& bracket = draw.draw->bracket();
    const auto chances = chances_of(bracket, out->book_.rules.now.chances);
    if (!chances) return fail(chances.error());
    out->odds_.push_back(std::make_unique<MeetingOdds>(bracket, *chances));
    DrawnPeople drawn;
    drawn.bracket = &bracket;
    drawn.odds = out->odds_.back().get();
    for (const BracketLine& line : bracket.lines()) drawn.people.push_back(people_of(line));
    given.draws.push_back(std::move(drawn));
  }
  if (given.draws.empty()) return fail(FaultCode::not_found, "there is no draw yet", "draws", "bring the main draw in first");

  std::set<std::string> drawn;
  for (const DrawnPeople& draw : given.draws)
    for (const auto& line : draw.people)
      for (const std::string& one : line) drawn.insert(search_key(one));
  for (const auto& ask : out->book_.asks) {
    if (!drawn.contains(search_key(ask.now.player))) continue;
    BenchWish wish;
    wish.player = ask.now.player;
    wish.never = ask.now.never.value_or(false);
    wish.with = ask.now.stringer ? stringers[ask.now.stringer] : machines[ask.now.machine];
    if (!wish.with.empty()) given.wishes.push_back(std::move(wish));
  }
  for (const auto& place : out->book_.places) {
    const auto bench = stringers.find(place.now.stringer);
    if (bench == stringers.end() || !drawn.contains(search_key(place.now.player))) continue;  // who left the team keeps nobody
    given.last[place.now.player] = bench->second;
    if (place.now.pinned.value_or(false)) given.pins.push_back({place.now.player, bench->second, {}});
  }
  if (out->book_.rules.now.hard_places) given.weights.hard_places = static_cast<int>(std::clamp<std::int64_t>(*out->book_.rules.now.hard_places, 0, 256));
  auto benches = HomeBenches::make(std::move(given));
  if (!benches) return fail(benches.error());
  out->benches_.emplace(std::move(*benches));
  return out;
}

bool RoomBenches::same_room(const RoomBenches& other) const {
  return hands_ == other.hands_ && std::equal(benches_->people().begin(), benches_->people().end(), other.benches_->people().begin(),
                                              other.benches_->people().end(), [](const auto& a, const auto& b) { return a.name == b.name; });
}

std::optional<BenchChoice> RoomBenches::held() const {
  BenchChoice out;
  for (const BenchPerson& person : benches_->people()) {
    const auto* place = book_.of(person.name);
    const auto bench = place == nullptr ? hands_.end()
                                        : std::find_if(hands_.begin(), hands_.end(), [&](const auto& one) { return one.stringer == place->now.stringer; });
    if (bench == hands_.end()) return std::nullopt;
    out.push_back(static_cast<std::size_t>(bench - hands_.begin()));
  }
  return out;
}

void RoomBenches::put(Draft& draft, std::size_t person, std::size_t bench, bool pinned, const std::string& by, UnixMs at) const {
  const std::string& name = benches_->people()[person].name;
  const auto* known = book_.of(name);
  BenchPlace wanted = known != nullptr ? known->now : BenchPlace{};
  if (wanted.player.empty()) wanted.player = name;
  const bool same = known != nullptr && wanted.stringer == hands_[bench].stringer && wanted.machine == hands_[bench].machine &&
                    wanted.pinned.value_or(false) == pinned;
  if (same) return;
  wanted.stringer = hands_[bench].stringer;
  wanted.machine = hands_[bench].machine;
  wanted.pinned = pinned ? std::optional(true) : std::nullopt;
  wanted.by = by;
  wanted.at = at;
  put_changes(draft, known != nullptr ? known->seen : place_state(event_, name), wanted);
}

Draft RoomBenches::keep(const BenchChoice& choice, const std::string& by, UnixMs at) const {
  Draft out(event_, kEventBook, kActBenches);
  for (std::size_t person = 0; person < choice.size(); ++person) {
    const auto* known = book_.of(benches_->people()[person].name);
    put(out, person, choice[person], known != nullptr && known->now.pinned.value_or(false), by, at);
  }
  return out;
}

Outcome<Draft> RoomBenches::move(std::size_t person, std::size_t bench, bool pinned, const std::string& by, UnixMs at) const {
  if (person >= benches_->people().size() || bench >= hands_.size())
    return fail(FaultCode::not_found, "no such player or bench", "home benches", "look at the benches again");
  if (const auto now = held()) {
    BenchChoice wanted = *now;
    wanted[person] = bench;
    // Who was pinned may be moved by whoever pins: the old pin is no reason against it, a wish is.
    const auto* known = book_.of(benches_->people()[person].name);
    const bool was_pinned = known != nullptr && known->now.pinned.value_or(false);
    if (!was_pinned && !(benches_->with_move(*now, person, bench).own < kNever))
      return fail(FaultCode::bad_input, "a wish or a shift keeps " + benches_->people()[person].name + " from that bench", benches_->benches()[bench].name,
                  "take the wish away first, or choose another bench");
  }
  Draft out(event_, kEventBook, kActBenches);
  put(out, person, bench, pinned, by, at);
  return out;
}

}  // namespace weavelog
