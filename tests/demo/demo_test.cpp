#include "fixtures/demo/demo.h"

#include <catch2/catch.hpp>
#include <set>

#include "core/desk/questions.h"
#include "core/desk/room_bed.h"
#include "core/model/queries.h"
#include "core/model/stock_tables.h"
#include "core/people/entry_list.h"
#include "core/people/price_list.h"
#include "fixtures/demo/goods.h"
#include "fixtures/demo/people.h"
#include "tests/support/rooms.h"

using namespace weavelog;
using namespace weavelog::demo;
using namespace weavelog::testing;

namespace {

struct TwoTablets {
  DemoScenario scenario;
  Tablet desk{"desk"};
  Tablet bench{"bench"};
  DemoRoom room;

  explicit TwoTablets(const DemoOptions& options = {}) : scenario(make_demo(options)) {
    desk.clock.set(scenario.past.front().opens);
    bench.clock.set(scenario.past.front().opens);
    DemoTablet second{*bench.ledger, bench.clock};
    room = must(fill_tablets(scenario, {*desk.ledger, desk.clock}, &second));
  }
};

/// Both hold what either had, of every book that both hold.
void meet_all(TwoTablets& tablets) {
  for (const BookInfo& book : tablets.desk.ledger->books()) meet(tablets.desk, tablets.bench, book.id);
  for (const BookInfo& book : tablets.bench.ledger->books()) meet(tablets.desk, tablets.bench, book.id);
}

}  // namespace

TEST_CASE("the same options give the same data, other ones other data") {
  const TwoTablets one;
  const TwoTablets two;
  CHECK(demo_digest(*one.desk.ledger) == demo_digest(*two.desk.ledger));
  CHECK(demo_digest(*one.bench.ledger) == demo_digest(*two.bench.ledger));
  CHECK(demo_digest(*one.desk.ledger) != demo_digest(*one.bench.ledger));
  DemoOptions other;
  other.seed += 1;
  const TwoTablets three(other);
  CHECK(demo_digest(*one.desk.ledger) != demo_digest(*three.desk.ledger));
}

TEST_CASE("every player of the demo is found by each of its names, and all ledgers are sound") {
  const TwoTablets tablets;
  for (const Tablet* tablet : {&tablets.desk, &tablets.bench}) {
    const auto report = tablet->ledger->verify();
    CHECK(report.faults.empty());
    CHECK(report.entries > 500);
    CHECK(tablet->ledger->quarantine().empty());
    const auto players = find_players(*tablet->ledger, "", 1000);
    REQUIRE(static_cast<std::int64_t>(players.size()) == count_players(*tablet->ledger));
    REQUIRE(players.size() > 30);
    for (const PlayerRow& player : players) {
      for (const std::string& typed :
           {player.family_name + " " + player.given_name, player.given_name, player.native_name}) {
        if (typed.empty()) continue;
        INFO(typed);
        const auto found = find_players(*tablet->ledger, typed);
        CHECK(std::any_of(found.begin(), found.end(),
                          [&](const PlayerRow& row) { return row.book == player.book; }));
      }
    }
  }
}

TEST_CASE("the desk of the demo has something to show on every screen") {
  const TwoTablets tablets;
  const Ledger& desk = *tablets.desk.ledger;
  const auto events = all_events(desk);
  REQUIRE(events.size() == 4);
  CHECK(events.front().book == tablets.room.event);
  CHECK(events.front().open_jobs > 20);
  const auto counts = count_by_stage(desk, tablets.room.event);
  for (const Stage stage :
       {Stage::received, Stage::inspected, Stage::waiting, Stage::cut_out, Stage::on_machine, Stage::strung,
        Stage::checked, Stage::stencilled, Stage::ready, Stage::collected, Stage::aside}) {
    INFO(name_of_choice(stage));
    CHECK(counts[static_cast<std::size_t>(stage)] > 0);
  }
  CHECK(clashing_jobs(desk, tablets.room.event).size() == 1);
  CHECK(desk.open_questions().size() == 1);
  CHECK(next_jobs(desk, tablets.room.event, 5).front().rush == Rush::on_court);
  CHECK(count_jobs(desk) > 150);
  CHECK(highest_tag(desk, tablets.room.event) > 30);
  const auto stock = stock_levels(desk, tablets.room.event, 0);
  CHECK(stock.size() == invented_strings().size());
  for (const auto& level : stock) {
    CHECK(level.item.now.material != StringMaterial::unsaid);
    CHECK(level.left > 0);
  }
  // So a bed of any racket of today knows what its strings are made of.
  const auto strings = bed_strings(desk, tablets.room.event);
  std::size_t beds = 0;
  for (const JobRow& row : next_jobs(desk, tablets.room.event, 8)) {
    const auto bed = room_bed(must(load_player(desk, row.book)), row.job, strings, tablets.desk.ledger->wall().now());
    if (!bed) continue;
    ++beds;
    CHECK(std::count(bed->assumed.begin(), bed->assumed.end(), BedGap::material) == 0);
  }
  CHECK(beds > 0);
  const auto entries = entry_list(desk, tablets.room.event);
  CHECK(entries.size() == 64);
  CHECK(std::count_if(entries.begin(), entries.end(), [](const EntryRow& row) { return row.held_here; }) >
        30);
}

TEST_CASE("the two tablets of the demo overlap in part and disagree once they meet") {
  TwoTablets tablets;
  CHECK(tablets.desk.ledger->open_questions(tablets.room.question).empty());
  CHECK(tablets.bench.ledger->open_questions(tablets.room.question).empty());
  meet_all(tablets);
  CHECK(demo_digest(*tablets.desk.ledger) == demo_digest(*tablets.bench.ledger));
  const auto questions = tablets.desk.ledger->open_questions(tablets.room.question);
  REQUIRE(questions.size() == 1);
  CHECK(questions[0].cell.tag == tag_of<Setup>(&Agreed::mains_tension));
  CHECK(questions[0].cell.values.size() == 2);
  const auto clashes = clashing_jobs(*tablets.desk.ledger, tablets.room.event);
  CHECK(clashes.size() == 2);
  CHECK(std::any_of(clashes.begin(), clashes.end(),
                    [&](const JobRow& row) { return row.book == tablets.room.clash; }));
}

TEST_CASE("the demo's lists are read without a fault or a doubt") {
  const DemoScenario scenario = make_demo();
  const EntryList list = must(read_entry_list(entries_csv(scenario)));
  CHECK(list.rows.size() == 64);
  CHECK(list.faults.empty());
  CHECK(list.doubts.empty());
  CHECK(list.ignored_columns.empty());
  const PriceList prices = must(read_price_list(prices_csv(scenario)));
  CHECK(prices.rows.size() == 8);
  CHECK(prices.faults.empty());
  CHECK(prices.doubts.empty());
}

TEST_CASE("ten thousand invented players have ten thousand names") {
  std::set<std::string> names;
  for (std::size_t i = 0; i < 10'000; ++i) {
    const Person person = invented_person(i);
    names.insert(person.family_name + "/" + person.given_name);
  }
  CHECK(names.size() == 10'000);
}

TEST_CASE("the large data has as many players and jobs as it was asked for") {
  DemoOptions options;
  options.players = 30;
  options.jobs_per_player = 11;
  const DemoScenario scenario = make_demo(options);
  Tablet tablet("large");
  tablet.clock.set(scenario.past.front().opens);
  const auto books = must(fill_large(scenario, {*tablet.ledger, tablet.clock}));
  CHECK(books.size() == 30);
  CHECK(count_players(*tablet.ledger) == 30);
  CHECK(count_jobs(*tablet.ledger) == 30 * 11);
  for (const JobRow& job : history_of(*tablet.ledger, books.front())) {
    CHECK(job.stage == Stage::collected);
    CHECK_FALSE(job.clash);
  }
  CHECK(tablet.ledger->verify().faults.empty());
}

TEST_CASE("a day's demo with too few players is refused with what to do") {
  DemoOptions options;
  options.players = 8;
  const DemoScenario scenario = make_demo(options);
  Tablet tablet("small");
  tablet.clock.set(scenario.past.front().opens);
  const auto refused = fill_tablets(scenario, {*tablet.ledger, tablet.clock}, nullptr);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == FaultCode::bad_input);
  CHECK_FALSE(refused.error().what_to_do.empty());
}
