#include "core/desk/room_benches.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/base/decimal.h"
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

/// Faults: bad_input (no numbers from 0 to 1,000, or more than eight).
Outcome<std::vector<double>> weights_from(const std::string& text) {
  std::vector<double> out;
  for (const std::string& word : split(text, " ,;")) {
    const auto number = Decimal::parse(word);
    const double value = number ? number->to_double() : -1;
    if (!(value >= 0 && value <= 1000))
      return fail(FaultCode::bad_input, "\"" + word + "\" is no weight of a round", "round weights",
                  "give numbers from 0 to 1,000, the final's first: 16 8 4 2 1");
    out.push_back(value);
  }
  if (out.size() > 8) return fail(FaultCode::bad_input, "no draw has more than eight rounds", "round weights", "give at most eight numbers, the final's first");
  return out;
}

}  // namespace

Outcome<Draft> add_wish(const BookId& event, const BenchBook& book, const BenchAsk& wish) {
  if (search_key(wish.player).empty()) return fail(FaultCode::bad_input, "a wish needs a player", "wish", "give the name as the draw has it");
  if (static_cast<bool>(wish.stringer) == static_cast<bool>(wish.machine))
    return fail(FaultCode::bad_input, "a wish is for one stringer or one machine", "wish of " + wish.player, "name one of the two");
  Draft out(event, kEventBook, kActBenches);
  for (const auto& held : book.asks)
    if (search_key(held.now.player) == search_key(wish.player) && held.now.stringer == wish.stringer && held.now.machine == wish.machine) {
      BenchAsk wanted = held.now;
      wanted.never = wish.never;
      wanted.note = wish.note;
      put_changes(out, held.seen, wanted);
      return out;
    }
  put_changes(out, derived_state(event, kBenchWish, "wish " + search_key(wish.player) + (wish.stringer ? wish.stringer : wish.machine).hex()), wish);
  return out;
}

Draft remove_wish(const BookId& event, const Loaded<BenchAsk>& wish) {
  Draft out(event, kEventBook, kActBenches);
  BenchAsk wanted = wish.now;
  wanted.off = true;
  put_changes(out, wish.seen, wanted);
  return out;
}

Outcome<WinChance> chances_by_rules(const Bracket& bracket, const std::string& rule) {
  const auto lines = bracket.lines();
  const bool rated = std::any_of(lines.begin(), lines.end(), [](const BracketLine& line) { return line.rating.has_value(); });
  const bool seeded = std::any_of(lines.begin(), lines.end(), [](const BracketLine& line) { return line.seed.has_value(); });
  if (rule != "even" && rule != "seed" && rated) return chances_by_rating(bracket);
  if (rule != "even" && seeded) return chances_by_seed(bracket);
  return even_chances();
}

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
  if (const std::int64_t margin = rules.margin_min.value_or(0); margin < 0 || margin > kMostMarginMin)
    return fail(FaultCode::bad_input, std::to_string(margin) + " minutes are no margin before a match", "margin_min", "give minutes from 0 to " + std::to_string(kMostMarginMin));
  if (const auto weights = weights_from(rules.round_weights); !weights) return fail(weights.error());
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
  for (const auto& machine : held_machines) machines[machine.id()] = machine.now.name;
  out->hands_ = hands_of_team(*record, held_machines, machine_mounts(ledger, event));
  for (const BenchHands& hands : out->hands_) {
    const auto member = std::find_if(record->team.begin(), record->team.end(), [&](const auto& one) { return one.id() == hands.stringer; });
    HomeBench bench;
    bench.name = bench.stringer = member->now.name;
    bench.machine = hands.machine ? machines[hands.machine] : std::string();
    bench.languages = split(member->now.languages, " ,;");
    bench.skills = split(member->now.skills, ",;");
    stringers[member->id()] = bench.name;
    given.benches.push_back(std::move(bench));
  }
  if (given.benches.empty())
    return fail(FaultCode::not_found, "nobody of the team strings", "team", "add the stringers under Team first");

  for (const HeldDraw& draw : out->draws_) {
    // Of a group everybody meets everybody: there is nothing to keep apart by.
    if (draw.sheet.now.kind == DrawKind::qualifying || draw.sheet.now.kind == DrawKind::round_robin) continue;
    if (!draw.draw) return fail(draw.troubles.front());
    const Bracket& bracket = draw.draw->bracket();
    const auto chances = chances_by_rules(bracket, out->book_.rules.now.chances);
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
  if (const auto weights = weights_from(out->book_.rules.now.round_weights); weights && !weights->empty()) given.weights.rounds = *weights;
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
