// Tables that plans are made from.

#include <cmath>

#include "core/plan/bench_tables.h"
#include "core/plan/day_tables.h"
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

void run_plan_day(ByteView input) {
  const auto parts = tables(input);
  const PlanClock clock{1'937'548'800'000, "Europe/Lisbon", "2031-05-26"};
  const auto work = read_work(parts[2], "work.csv");
  const WorkTimes times(work ? *work : std::vector<WorkReading>());
  (void)read_settled(parts[3], clock, "settled.csv");
  if (auto players = read_forecast_players(parts[3], times, "players.csv"); players && players->size() <= 20) {
    ForecastInput asked;
    asked.days = {"1", "2"};
    asked.players = std::move(*players);
    if (const auto hours = read_hours(parts[2], "hours.csv")) asked.taken_in = *hours;
    if (const auto forecast = forecast_of(asked)) must_hold(std::isfinite(forecast->rackets.mean) && forecast->rackets.low <= forecast->rackets.high, "a band is none");
  }
  auto benches = read_shifts(parts[0], clock, "shifts.csv");
  if (!benches || benches->size() > 6) return;
  set_paces(*benches, times);
  const auto table = read_jobs(parts[1], *benches, times, clock, "jobs.csv");
  if (!table || table->jobs.size() > 12) return;
  DayInput day{clock.now, *benches, table->jobs};
  const auto plan = plan_day(day, PlanEffort::event);
  if (!plan) return;
  must_hold(plan->jobs.size() + plan->unfitting.size() == day.jobs.size(), "a racket is lost");
  must_hold(plan->bound <= plan->cost.late, "a plan is less late than is proven");
  (void)overload_of(day, *plan);
  const auto room = Promiser::make(promise_input(day, *table, times));
  must_hold(room.has_value(), "a day that is planned can't be promised");
  (void)room->check({"a new racket", clock.now, 25 * 60'000}, 0.2, clock.now + 3'600'000);
}

std::vector<Bytes> seeds_plan_day() {
  return {bytes_of("stringer,machine,from,until,kind\nMaren,T1,08:00,18:00,\nMaren,,12:00,12:30,break\nPio,T2,08:00,+400,shift\n,T2,09:00,09:30,out of order\n\f"
                   "racket,arrives,due,match,margin,weight,home,only,on_court,material,pieces,minutes,bench,since\n1,08:00,09:30,,,5,T1,,,hybrid,2,,,\n2,,,11:00,45,,,T1|Pio,yes,,,21,,\n"
                   "3,,,,,,,,,,,,Maren,07:50\n\fstringer,minutes,pattern\nMaren,24,16x19\nPio,-3,18x20\n\fdue,ready\n09:00,08:55\n"),
          bytes_of("[{\"stringer\": \"Ana\", \"from\": \"08:00\", \"until\": \"+300\"}]\f[{\"racket\": 7, \"due\": \"10:00\", \"on_court\": true}]\f"
                   "hour,rackets,stringer,minutes\n8,30,A,2\n\fplayer,draw,chances,matches,rackets,string\nIlse,s,1|0.5,2,5,Silk\nBo,s,1|0.5,,,\n")};
}

}  // namespace weavelog::fuzz
