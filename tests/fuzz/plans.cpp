// Tables that plans are made from.

#include <cmath>

#include "core/plan/bench_tables.h"
#include "core/plan/draw.h"
#include "core/plan/draw_places.h"
#include "core/plan/order_of_play.h"
#include "core/plan/round_robin.h"
#include "tests/fuzz/target_list.h"

namespace weavelog::fuzz {
namespace {

/// Tables one after the other, each begun by a form feed.
std::vector<std::string_view> tables(ByteView input) {
  std::vector<std::string_view> out;
  const std::string_view text = as_text(input);
  for (std::size_t from = 0; from <= text.size();) {
    const std::size_t to = std::min(text.find('\f', from), text.size());
    out.push_back(text.substr(from, to - from));
    from = to + 1;
  }
  out.resize(4);
  return out;
}

Bytes bytes_of(std::string_view text) { return Bytes(text.begin(), text.end()); }

}  // namespace

void run_plan_draw(ByteView input) {
  const auto parts = tables(input);
  if (const auto entries = read_entries(parts[3], "entries.csv")) {
    (void)RoundRobin::make(*entries);
    if (const auto made = make_draw(*entries, 1)) must_hold(Bracket::make(*made).has_value(), "a draw that was made is none");
  }
  const auto lines = read_bracket(parts[0], "draw.csv");
  if (!lines) return;
  const auto results = read_results(parts[1], *lines, "results.csv");
  const auto draw = Draw::make(*lines, results ? *results : std::vector<BracketResult>());
  (void)Qualifying::make(*lines, 2);
  if (!draw) return;
  const MeetingOdds odds(draw->bracket(), even_chances());
  double wins = 0;
  for (std::size_t line = 0; line < lines->size(); ++line) {
    const double one = odds.reaches(line, draw->bracket().rounds() + 1);
    must_hold(std::isfinite(one) && one >= 0 && one <= 1 + 1e-9, "a chance is none");
    wins += one;
  }
  must_hold(wins <= 1 + 1e-9, "more than one wins");
  if (const auto order = read_order(parts[2], "Europe/Lisbon", "order.csv")) {
    const Bracket bracket = draw->bracket();
    if (const auto times = expected_times(*order, {{"", &bracket}})) must_hold(times->size() == order->size(), "a match has no time");
  }
}

std::vector<Bytes> seeds_plan_draw() {
  return {bytes_of("line,player,seed,rating\n1,Ada,1,1900\n2,bye,,\n3,Bo,,1500\n4,Cleo,,\n\fround,winner,end\n1,Bo,walkover\n2,1,\n\fday,court,round,"
                   "match,at\n2031-06-02,Centre,1,2,11:00\n\f"),
          bytes_of("line;player;partner;entry;withdrawn\n1;Ada;Bo;WC;\n2;Cleo;Dag;;yes\n3;;;Q;\n4;Eva;Finn;LL;\n\fround,winner\n1,Ada / "
                   "Bo\n\f\fplayer,seed\nA,1\nB,2\nC,\nD,\nE,\n"),
          bytes_of("line,player,qualifier\n1,A,\n2,,1\n\f\fday,court,round,match,at,not_before,follows\n2031-06-02,C,1,1,,12:00,1/1\n\f")};
}

void run_plan_benches(ByteView input) {
  const auto parts = tables(input);
  std::vector<BracketLine> lines(8);
  for (std::size_t i = 0; i < 8; ++i) lines[i].player = std::string(1, static_cast<char>('A' + i));
  const Bracket bracket = Bracket::make(lines).value();
  const MeetingOdds odds(bracket, even_chances());
  BenchCase given;
  given.draws.push_back({&bracket, &odds, {}, {}, 0});
  for (const BracketLine& line : lines) given.draws[0].people.push_back(people_of(line));
  auto benches = read_benches(parts[0], "people.csv");
  if (!benches || benches->size() > 5) return;
  given.benches = std::move(*benches);
  if (auto people = read_bench_people(parts[1], "players.csv")) given.people = std::move(*people);
  if (auto wishes = read_bench_wishes(parts[2], "wishes.csv")) given.wishes = std::move(*wishes);
  if (auto pins = read_bench_pins(parts[3], "pins.csv")) given.pins = std::move(*pins);
  const auto room = HomeBenches::make(std::move(given));
  if (!room) return;
  BenchEffort little;
  little.restarts = 1;
  little.steps = 50;
  little.nodes = 2'000;
  const auto plan = room->plan(little);
  if (!plan) return;
  must_hold(plan->solution.cost.kept(), "a plan does not keep its limits");
  must_hold(plan->solution.floor <= plan->solution.cost.total() + 1e-6, "a plan costs less than is proven");
}

std::vector<Bytes> seeds_plan_benches() {
  return {bytes_of("stringer,machine,skills,languages,most,days\nMaren,Table 1,gut|one-piece,de|en,12,1-3\nPio,Table "
                   "2,,fr,,\n\fplayer,rackets,skills,languages,before\nA,3,gut,de,Pio\n\f"
                   "player,wish,with\nB,only,Pio\nC,never,Table 1\n\fplayer,bench\nD,Maren / Table 1\n"),
          bytes_of("stringer\nMaren\nPio\nSuna\n\f\f\f"),
          bytes_of("stringer,most\nMaren,8\nPio,8.5\n\f\fplayer,wish,with\nA,only,Maren\nA,never,Maren\n\f")};
}

}  // namespace weavelog::fuzz
