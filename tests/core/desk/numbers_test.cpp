#include "core/desk/numbers.h"

#include <catch2/catch.hpp>
#include <map>
#include <random>

#include "core/base/csv.h"
#include "core/base/iso_time.h"
#include "core/base/local_time.h"
#include "core/desk/event_book.h"
#include "core/desk/stages.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

std::int64_t at(const char* local, const char* zone = "Europe/Lisbon") { return must(moment_from(local, zone, 0)); }

JobFacts job(std::int64_t taken, std::int64_t ready_by, std::int64_t ready, const std::string& by, const char* tension = "24.5") {
  JobFacts facts;
  facts.at = taken;
  facts.ready_by = ready_by;
  facts.mains_string = "Velmora Round";
  facts.mains_tension = Quantity{Decimal::parse(tension).value(), Unit::kilogram_force};
  facts.stage = Stage::ready;
  facts.times.strung_at = ready - 10 * kMinute;
  facts.times.strung_by = by;
  facts.times.strung_count = 1;
  facts.times.ready_at = ready;
  return facts;
}

const NumbersRow& row(const std::vector<NumbersRow>& rows, const std::string& key) {
  for (const NumbersRow& one : rows)
    if (one.key == key) return one;
  FAIL("no row " << key);
  throw 0;
}

}  // namespace

TEST_CASE("what happened is counted on the day and in the hour in which it happened there") {
  const std::vector<JobFacts> jobs{
      job(at("2031-05-26T23:30"), at("2031-05-27T01:00"), at("2031-05-27T00:40"), "Mara"),
      job(at("2031-05-27T09:00"), at("2031-05-27T10:00"), at("2031-05-27T10:01"), "Joren", "25"),
  };
  const RoomNumbers numbers = numbers_of(jobs, "Europe/Lisbon", at("2031-05-28T12:00"));
  CHECK(numbers.jobs == 2);
  REQUIRE(numbers.by_day.size() == 2);
  CHECK(row(numbers.by_day, "2031-05-26").taken_in == 1);
  CHECK(row(numbers.by_day, "2031-05-26").strung == 0);
  CHECK(row(numbers.by_day, "2031-05-27").taken_in == 1);
  CHECK(row(numbers.by_day, "2031-05-27").ready == 2);
  CHECK(row(numbers.by_day, "2031-05-27").late == 1);
  CHECK(row(numbers.by_hour, "00").ready == 1);
  CHECK(row(numbers.by_hour, "23").taken_in == 1);
  CHECK(numbers.by_hour.size() == 24);
  CHECK(numbers.on_time == 1);
  CHECK(numbers.late == 1);
  CHECK(numbers.on_time_per_mille() == 500);
  CHECK(numbers.turnaround == 61 * kMinute);
  CHECK(numbers.slow_turnaround == 70 * kMinute);
  CHECK(row(numbers.by_stringer, "Joren").late == 1);
  CHECK(row(numbers.by_tension, "24").strung == 1);
  CHECK(row(numbers.by_tension, "25").strung == 1);

  const RoomNumbers first = numbers_of(jobs, "Europe/Lisbon", at("2031-05-28T12:00"), at("2031-05-26T00:00"), at("2031-05-27T00:00"));
  CHECK(first.jobs == 1);
  CHECK(first.ready == 0);
}

TEST_CASE("pounds and kilograms of one tension are counted together") {
  // 52.9 lb is 23.995 kg: NIST SP 811 (2008), App. B.8, 1 lbf = 4.448 222 N, 1 kgf = 9.806 65 N.
  std::vector<JobFacts> jobs{job(1, 2, 2, "Mara", "24"), job(1, 2, 2, "Mara", "24")};
  jobs[1].mains_tension = Quantity{Decimal::parse("52.9").value(), Unit::pound_force};
  CHECK(row(numbers_of(jobs, "UTC", 10).by_tension, "24").strung == 2);
}

TEST_CASE("overdue, waiting and strung again are told as of now") {
  std::vector<JobFacts> jobs{job(kDay, kDay + kHour, kDay + kHour, "Mara"), job(kDay, kDay + kHour, kDay, "Mara"), job(kDay, kDay + kHour, kDay, "Mara")};
  jobs[1].stage = Stage::waiting;
  jobs[1].times = {};
  jobs[1].times.waiting_since = kDay + kMinute;
  jobs[2].times.strung_count = 2;
  jobs[2].times.waited = 5 * kMinute;
  jobs[2].stage = Stage::collected;
  const RoomNumbers numbers = numbers_of(jobs, "UTC", kDay + 2 * kHour);
  CHECK(numbers.overdue == 1);
  CHECK(numbers.waiting == 1);
  CHECK(numbers.waited == 2);
  CHECK(numbers.wait == 5 * kMinute);
  CHECK(numbers.redone == 1);
  CHECK(numbers.in_room == 2);
}

TEST_CASE("every table adds up to the whole, for any jobs") {
  std::mt19937 random(9);
  const auto any = [&](std::int64_t below) { return static_cast<std::int64_t>(random()) % below; };
  for (int round = 0; round < 30; ++round) {
    std::vector<JobFacts> jobs;
    std::map<std::int64_t, std::int64_t> ready_by_day;  // counted another way: by whole days of UTC
    for (int i = 0; i < 200; ++i) {
      const std::int64_t taken = kDay * 20'000 + any(14 * kDay), ready = taken + any(9 * kHour);
      jobs.push_back(job(taken, taken + any(8 * kHour), ready, "S" + std::to_string(any(5)), any(2) != 0 ? "22.4" : "27"));
      ++ready_by_day[ready / kDay];
    }
    const RoomNumbers numbers = numbers_of(jobs, "UTC", kDay * 20'100);
    for (const auto* rows : {&numbers.by_day, &numbers.by_hour, &numbers.by_stringer, &numbers.by_string, &numbers.by_tension}) {
      NumbersRow sum;
      for (const NumbersRow& one : *rows) {
        sum.taken_in += one.taken_in;
        sum.strung += one.strung;
        sum.ready += one.ready;
        sum.on_time += one.on_time;
        sum.late += one.late;
      }
      CHECK(sum.taken_in == 200);
      CHECK(sum.strung == 200);
      CHECK(sum.ready == 200);
      CHECK(sum.on_time == numbers.on_time);
      CHECK(sum.late == numbers.late);
    }
    CHECK(numbers.on_time + numbers.late == 200);
    for (const auto& [day, count] : ready_by_day) CHECK(row(numbers.by_day, date_text(day)).ready == count);
  }
}

TEST_CASE("an event is set beside the one of its name a year before, by the same day") {
  Desk desk;
  const auto make = [&](const char* name, const char* first, const char* last, std::vector<int> by_day) {
    const BookId book = desk.ledger->create_book_id();
    desk.append(new_event(book, {name, "", first, last, "UTC", "EUR", {}}, desk.clock.now()));
    const std::int64_t begin = *day_from(first) * kDay;
    for (std::size_t day = 0; day < by_day.size(); ++day)
      for (int i = 0; i < by_day[day]; ++i) {
        auto request = desk.first_request(1);
        request.drop_off.event = book;
        request.drop_off.at = begin + static_cast<std::int64_t>(day) * kDay + 9 * kHour;
        request.drop_off.ready_by = *request.drop_off.at + kDay;
        const PlayerRecord nobody = record_of(desk.ledger->create_book_id(), {}, {});
        desk.append(drop_off(nobody, request, read_back_of(nobody, request), "Mara"));
      }
    return book;
  };
  (void)make("Harbour Open 2030", "2030-05-27", "2030-06-09", {2, 3, 9});
  (void)make("Orchard Classic 2030", "2030-05-27", "2030-06-09", {50});
  (void)make("Harbour Open 2029", "2029-05-28", "2029-06-10", {70});
  const BookId now = make("Harbour Open 2031", "2031-05-26", "2031-06-08", {4, 2});
  const auto growth = growth_of(*desk.ledger, now, "UTC", *day_from("2031-05-27") * kDay + 20 * kHour);
  REQUIRE(growth);
  CHECK(growth->name == "Harbour Open 2030");
  CHECK(growth->this_sum == 6);
  CHECK(growth->last_sum == 5);
  CHECK(growth->last_whole == 14);
  CHECK(growth->per_mille() == 200);
  CHECK_FALSE(growth_of(*desk.ledger, desk.event, "UTC", desk.clock.now()));
}

TEST_CASE("the table for other programs has one row a count") {
  const std::vector<JobFacts> jobs{job(at("2031-05-26T10:00"), at("2031-05-26T12:00"), at("2031-05-26T11:30"), "=Mara")};
  const auto csv = read_csv(numbers_csv(numbers_of(jobs, "Europe/Lisbon", 0)));
  REQUIRE(csv);
  CHECK(csv->rows.size() == 1 + 1 + 2 + 1 + 1 + 1);
  CHECK(csv->rows.front().fields.back() == "90");
}
