#include "core/plan/day_tables.h"

#include <catch2/catch.hpp>

#include "core/base/local_time.h"
#include "tests/support/words.h"

using namespace weavelog;

namespace {

constexpr UnixMs kMidnight = 1'937'520'000'000;  // 2031-05-26T00:00:00Z is 1937520000 s

PlanClock clock_at(std::int64_t minutes) { return {kMidnight + minutes * kMinuteMs, "UTC", "2031-05-26"}; }

const char* kShifts =
    "Stringer;Machine;From;Until;Kind\nMaren Oldvik;Table 1;8:00;18:00;\nMaren Oldvik;;12:00;12:45;break\n"
    "Pio Castellane;Table 2;2031-05-26T08:00;16:00;shift\n;Table 2;09:00;09:40;out of order\n";

std::vector<DayBench> benches() {
  auto read = read_shifts(kShifts, clock_at(480), "shifts.csv");
  if (!read) FAIL(read.error().message());
  return std::move(*read);
}

void has(const std::string& text, const std::string& wanted) {
  INFO(text);
  CHECK(text.find(wanted) != std::string::npos);
}

}  // namespace

TEST_CASE("shifts become benches, without breaks and machines out of order") {
  const auto read = benches();
  REQUIRE(read.size() == 2);
  CHECK(read[0].name == "Maren Oldvik / Table 1");
  CHECK(read[0].open ==
        std::vector<TimeSpan>{{kMidnight + 480 * kMinuteMs, kMidnight + 720 * kMinuteMs}, {kMidnight + 765 * kMinuteMs, kMidnight + 1080 * kMinuteMs}});
  CHECK(read[1].open ==
        std::vector<TimeSpan>{{kMidnight + 480 * kMinuteMs, kMidnight + 540 * kMinuteMs}, {kMidnight + 580 * kMinuteMs, kMidnight + 960 * kMinuteMs}});
  const auto json = read_shifts(R"([{"stringer": "Ana", "from": "08:00", "until": "+300"}])", clock_at(480));
  REQUIRE(json);
  CHECK(json->at(0).name == "Ana");
  CHECK(json->at(0).open.front().until == kMidnight + 780 * kMinuteMs);
}

TEST_CASE("times are told in the zone and on the day of the event") {
  PlanClock lisbon{kMidnight + 600 * kMinuteMs, "Europe/Lisbon", "2031-05-26"};
  CHECK(plan_moment("14:00", lisbon).value() == kMidnight + 13 * 60 * kMinuteMs);
  CHECK(plan_moment("9:05", lisbon).value() == kMidnight + (8 * 60 + 5) * kMinuteMs);  // of that day, though it is over
  CHECK(plan_moment("2031-05-27 09:00", lisbon).value() == kMidnight + (24 + 8) * 60 * kMinuteMs);
  CHECK(plan_moment("+90", lisbon).value() == lisbon.now + 90 * kMinuteMs);
  has(fault_of(plan_moment("noon", lisbon)), "'noon' is no time");
}

TEST_CASE("rackets are read with all that a plan can know of them") {
  const WorkTimes times;
  const auto read = read_jobs(
      "racket,player,arrives,due,match,margin,weight,home,only,on_court,material,pieces,minutes,bench,since\n"
      "101,Ilse,08:00,09:30,,,5,Table 1,,,hybrid,2,,,\n102,,,,11:00,45,,,Table 1|Pio Castellane,yes,,,21,,\n103,,,12:00,11:00,,,,,no,,,,Maren "
      "Oldvik,07:50\n",
      benches(), times, clock_at(480), "jobs.csv");
  if (!read) FAIL(read.error().message());
  const auto& jobs = read->jobs;
  REQUIRE(jobs.size() == 3);
  CHECK(jobs[0].due == kMidnight + 570 * kMinuteMs);
  CHECK(jobs[0].weight == 5);
  CHECK(jobs[0].home == 0);
  CHECK(jobs[0].length == std::llround(times.of("", {"", "hybrid", 2}).mean() * 60'000));
  CHECK(jobs[1].due == kMidnight + (11 * 60 - 45) * kMinuteMs);
  CHECK(jobs[1].only == std::vector<std::size_t>{0, 1});
  CHECK(jobs[1].on_court);
  CHECK(jobs[1].length == 21 * kMinuteMs);
  CHECK(jobs[1].arrives == clock_at(480).now);
  CHECK(jobs[2].due == kMidnight + 600 * kMinuteMs);  // an hour before the match, which is before what was asked
  REQUIRE(jobs[2].in_work);
  CHECK(jobs[2].in_work->bench == 0);
  CHECK(jobs[2].in_work->since == kMidnight + 470 * kMinuteMs);
}

TEST_CASE("JSON is read as a table with the same names") {
  CHECK(table_text("a,b\n1,2\n", "x").value() == "a,b\n1,2\n");
  CHECK(table_text(R"( [{"a": 1, "b": "x \"y\""}, {"b": [0.5, "z"], "c": true, "a": null}])", "x").value() ==
        "\"a\",\"b\",\"c\"\n\"1\",\"x \"\"y\"\"\",\"\"\n\"\",\"5E-1|z\",\"yes\"\n");
  has(fault_of(table_text("[1]", "x.json")), "x.json: an element of the list is no object");
  has(fault_of(table_text("{\"a\": 1}", "x.json")), "no list");
  has(fault_of(table_text("[{", "x.json")), "no JSON");
  has(fault_of(table_text(R"([{"a": {}}])", "x.json")), "'a' is an object");
  has(fault_of(read_jobs("[]", benches(), WorkTimes(), clock_at(480), "x.json")), "racket");
}

TEST_CASE("what is wrong with a table is named with its place") {
  const auto shifts = [](const std::string& row) {
    return fault_of(read_shifts("stringer,machine,from,until,kind\n" + row, clock_at(480), "shifts.csv"));
  };
  has(shifts("Ana,,18:00,08:00,\n"), "shifts.csv, line 2, column 4 (until): it ends before it begins");
  has(shifts("Ana,,eight,08:00,\n"), "'eight' is no time");
  has(shifts(",,08:00,09:00,\n"), "a shift of nobody");
  has(shifts("Ana,,08:00,09:00,holiday\n"), "'holiday' is no kind of time");
  has(shifts("Ana,,08:00,18:00,\nBo,,09:00,10:00,break\n"), "shifts.csv, line 3: no shift is of Bo");
  has(shifts("Ana,,2031-05-26T08:00,2031-05-29T08:00,\n"), "nobody works that long");
  const auto jobs = [](const std::string& rows) { return fault_of(read_jobs(rows, benches(), WorkTimes(), clock_at(480), "jobs.csv")); };
  has(jobs("player\nIlse\n"), "the column racket is missing");
  has(jobs("racket\n1\n1\n"), "jobs.csv, line 3, column 1 (racket): racket '1' is there twice");
  has(jobs("racket,due\n1,soon\n"), "column 2 (due): 'soon' is no time");
  has(jobs("racket,home\n1,Table 9\n"), "'Table 9' has no shift");
  has(jobs("racket,weight\n1,0\n"), "'0' is no number that can be here; write one from 1 to 1000");
  has(jobs("racket,minutes\n1,nan\n"), "'nan'");
  has(jobs("racket,on_court\n1,maybe\n"), "neither yes nor no");
  has(jobs("racket,bench,since\n1,Table 1,08:30\n"), "a time to come");
  has(jobs("racket,pieces\n1,3\n"), "pieces");
  has(fault_of(read_work("stringer,minutes\nAna,long\n", "work.csv")), "work.csv, line 2, column 2 (minutes): 'long' is no number");
  CHECK(fault_of(read_work("stringer,minutes\nAna,-5\n")) == "no fault");  // learned from nothing, and said so by the count of ignored ones
  const auto players = [](const std::string& rows) { return fault_of(read_forecast_players(rows, WorkTimes(), "players.csv")); };
  has(players("player,chances\nIlse,1|2\n"), "'2' is no chance");
  has(players("player,chances,rackets\nIlse,1,4\n"), "rackets without a match");
  has(fault_of(read_hours("hour,rackets\n24,1\n", "hours.csv")), "'24' is no hour");
}

TEST_CASE("how promises ended is read in their order") {
  CHECK(read_settled("racket,due,ready\n1,09:00,08:55\n2,09:00,09:01\n3,+5,+5\n", clock_at(480)).value() == std::vector<bool>{true, false, true});
  has(fault_of(read_settled("due,ready\n09:00,\n", clock_at(480), "settled.csv")), "settled.csv, line 2, column 2 (ready)");
}

TEST_CASE("what is learned goes into paces and spreads") {
  std::string work = "stringer,minutes\n";
  for (int i = 0; i < 40; ++i) work += "Maren Oldvik," + std::to_string(30 + i % 3) + "\nPio Castellane," + std::to_string(20 + i % 3) + "\n";
  const WorkTimes times(read_work(work).value());
  auto room = benches();
  set_paces(room, times);
  CHECK(room[0].pace / room[1].pace == Approx(31.0 / 21).epsilon(0.03));
  const auto table = read_jobs("racket,pattern\n1,18x20\n2,\n", room, times, clock_at(480));
  REQUIRE(table);
  DayInput day{clock_at(480).now, room, table->jobs};
  const PromiseInput input = promise_input(std::move(day), *table, times);
  REQUIRE(input.own.size() == 2);
  REQUIRE(input.shared.size() == 2);
  CHECK(input.own[0] == times.of("", {"18x20", "", 1}).own);
  const double doubt = times.of("Maren Oldvik", {}).shared;
  CHECK(std::hypot(input.shared[0], input.common) == Approx(doubt).epsilon(0.2));
  CHECK(Promiser::make(input));
}
