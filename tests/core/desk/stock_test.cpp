#include "core/desk/stock.h"

#include <catch2/catch.hpp>
#include <random>

#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct Store : Desk {
  BookId book = first_drop_off(2);
  std::vector<EntityId> jobs;
  Store() {
    append(new_event(event, {"Harbour Open", "", "2031-05-26", "2031-06-08", "Europe/Lisbon", "EUR", {}}, clock.now()));
    for (const auto& job : load(book).jobs) jobs.push_back(job.id());
  }
  EntityId item(StockItem wanted) {
    append(add_stock_item(event, wanted, clock.now()));
    return stock_levels(*ledger, event, 0).back().item.id();
  }
  EntityId reel(const std::string& name, std::int64_t mm, std::optional<std::int64_t> low = {}) {
    StockItem wanted;
    wanted.name = name;
    wanted.supply = Supply::reel;
    wanted.owner = StringOwner::room;
    wanted.low_mark = low;
    const EntityId id = item(wanted);
    move(id, StockWhy::received, mm);
    return id;
  }
  void move(const EntityId& id, StockWhy why, std::int64_t amount) {
    append(move_stock(event, {id, why, amount, "", "Mara", clock.now()}));
  }
  [[nodiscard]] StockLevel level(const EntityId& id, std::int64_t since = 0) const {
    for (auto& one : stock_levels(*ledger, event, since))
      if (one.item.id() == id) return one;
    FAIL("no such item");
    return {};
  }
};

}  // namespace

TEST_CASE("what is left is the newest count and everything after it") {
  Store store;
  const EntityId reel = store.reel("Velmora Round", 200'000, 20'000);
  store.move(reel, StockWhy::spoilt, 5'000);
  CHECK(store.level(reel).left == 195'000);
  store.move(reel, StockWhy::counted, 21'000);
  CHECK_FALSE(store.level(reel).low());
  store.move(reel, StockWhy::taken_away, 1'000);
  CHECK(store.level(reel).left == 20'000);
  CHECK(store.level(reel).low());
  store.move(reel, StockWhy::returned, 500);
  CHECK(store.level(reel).left == 20'500);
  store.move(reel, StockWhy::counted, 0);
  CHECK(store.level(reel).left == 0);
  CHECK(store.ledger->verify().faults.empty());
}

TEST_CASE("any run of moves leaves what another way of counting gives, in whatever order they arrive") {
  std::mt19937 random(12);
  Store store;
  const EntityId reel = store.reel("Velmora Round", 0 + 1);
  std::vector<Draft> drafts;
  std::int64_t expected = 1;
  UnixMs at = store.clock.now() + kDay;
  for (int i = 0; i < 60; ++i) {
    const auto amount = static_cast<std::int64_t>(random() % 10'000) + 1;
    const StockWhy why = std::array{StockWhy::received, StockWhy::spoilt, StockWhy::counted, StockWhy::returned}[random() % 4];
    drafts.push_back(must(move_stock(store.event, {reel, why, amount, "", "Mara", at += 1000})));
    expected = why == StockWhy::counted ? amount : expected + (why == StockWhy::spoilt ? -amount : amount);
  }
  std::shuffle(drafts.begin(), drafts.end(), random);
  for (const Draft& draft : drafts) store.append(draft);
  CHECK(store.level(reel).left == expected);
}

TEST_CASE("a job takes its string once, also noted by two tablets that were apart") {
  Store store;
  const EntityId reel = store.reel("Velmora Round", 200'000);
  const StockUse use{reel, "mains", 6'200};
  const auto once = use_for_job(store.event, store.jobs[0], std::span(&use, 1), "Mara", store.clock.now());
  store.append(once);
  store.append(once);
  CHECK(store.level(reel).left == 193'800);
  CHECK(stock_of_job(*store.ledger, store.event, store.jobs[0]) == std::vector{std::pair(reel, std::int64_t{6'200})});
  CHECK(stock_of_job(*store.ledger, store.event, store.jobs[1]).empty());
  const std::vector<StockUse> twice{use, use};
  CHECK(use_for_job(store.event, store.jobs[0], twice, "Mara", 1).error().code == FaultCode::bad_input);
  CHECK(use_for_job(store.event, store.jobs[0], {}, "Mara", 1).error().code == FaultCode::bad_input);
}

TEST_CASE("at today's pace it is told when a reel runs out") {
  Store store;
  const EntityId reel = store.reel("Velmora Round", 100'000);
  const UnixMs morning = store.clock.now();
  CHECK_FALSE(store.level(reel, morning).runs_out_at(morning + kHour));
  for (std::size_t n = 0; n < 2; ++n) {
    const StockUse use{reel, "bed", 10'000};
    store.append(use_for_job(store.event, store.jobs[n], std::span(&use, 1), "Mara", morning + static_cast<std::int64_t>(n) * kHour));
  }
  // 20 m in the two hours since the first: 80 m last eight hours.
  CHECK(store.level(reel, morning).runs_out_at(morning + 2 * kHour) == morning + 10 * kHour);
  CHECK(store.level(reel, morning + 3 * kHour).used == 0);  // none of it since then
  // Minutes after the first use an hour counts.
  CHECK(store.level(reel, morning + kHour).runs_out_at(morning + kHour + kMinute) == morning + kHour + kMinute + 8 * kHour);
  store.move(reel, StockWhy::counted, 0);
  CHECK_FALSE(store.level(reel).runs_out_at(morning + kDay));
}

TEST_CASE("a job's string is proposed from the fullest reel of its kind, a player's own from the player's") {
  Store store;
  (void)store.reel("Velmora Round", 4'000);  // too little for any part
  const EntityId full = store.reel("velmora  ROUND", 150'000);
  (void)store.reel("Velmora Round", 90'000);
  StockItem own;
  own.name = "Tarnbrook Silk";
  own.supply = Supply::set;
  own.owner = StringOwner::player;
  own.player = store.book;
  const EntityId sets = store.item(own);
  store.move(sets, StockWhy::received, 2);
  store.change<Job>(store.book, store.jobs[0], [](Job& job) {
    job.mains_string = "Tarnbrook Silk";
    job.mains_owner = StringOwner::player;
    job.crosses_string = "Velmora Round";
    job.crosses_owner = StringOwner::room;
    job.mains_gauge.reset();
    job.crosses_gauge.reset();
  });
  const auto uses = suggest_uses(store.load(store.book), store.jobs[0], stock_levels(*store.ledger, store.event, 0));
  REQUIRE(uses.size() == 2);
  CHECK(uses[0].item == sets);
  CHECK(uses[0].amount == 1);
  CHECK(uses[1].item == full);
  CHECK(uses[1].amount > 4'000);
  store.move(sets, StockWhy::counted, 0);
  CHECK(suggest_uses(store.load(store.book), store.jobs[0], stock_levels(*store.ledger, store.event, 0)).size() == 1);
}

TEST_CASE("a set of 12 m strings every usual frame, with little left over") {
  // Sets are sold as 12 m (40 ft), 12.2 m for the largest beds: common practice, no source.
  for (const int square_inches : {90, 95, 98, 100, 105, 110})
    for (const auto& [mains, crosses] : {std::pair(16, 18), std::pair(16, 19), std::pair(16, 20), std::pair(18, 20)}) {
      Racket racket;
      racket.head_size = Quantity{Decimal{square_inches, 0}, Unit::square_inch};
      racket.mains_count = mains;
      racket.crosses_count = crosses;
      const BedLength length = estimated_length(&racket);
      INFO(square_inches << " in², " << mains << " x " << crosses << ": " << length.mains << " + " << length.crosses);
      CHECK(length.bed() > 9'000);
      CHECK(length.bed() < 12'000);
      // A larger head and one string more take more.
      Racket larger = racket, denser = racket;
      larger.head_size->amount.mantissa += 5;
      denser.mains_count = mains + 1;
      CHECK(estimated_length(&larger).mains > length.mains);
      CHECK(estimated_length(&larger).crosses > length.crosses);
      CHECK(estimated_length(&denser).mains > length.mains);
    }
  Racket usual;
  usual.head_size = Quantity{Decimal{98, 0}, Unit::square_inch};
  CHECK(std::abs(estimated_length(&usual).bed() - estimated_length(nullptr).bed()) < 20);  // 98 in² are 632 cm²
  Racket odd;
  odd.head_size = Quantity{Decimal{5, 0}, Unit::square_centimetre};
  odd.mains_count = 900;
  CHECK(estimated_length(&odd).bed() == estimated_length(nullptr).bed());
}

TEST_CASE("what can't be in stock is refused") {
  Store store;
  const auto code = [&](const StockItem& wanted) { return add_stock_item(store.event, wanted, 1).error().code; };
  CHECK(code({}) == FaultCode::bad_input);
  StockItem half;
  half.name = "Velmora Round";
  CHECK(code(half) == FaultCode::bad_input);
  half.supply = Supply::reel;
  half.owner = StringOwner::player;
  CHECK(code(half) == FaultCode::bad_input);
  const EntityId reel = store.reel("Velmora Round", 1000);
  const auto moved = [&](StockWhy why, std::int64_t amount) { return move_stock(store.event, {reel, why, amount, "", "M", 1}).error().code; };
  CHECK(moved(StockWhy::unsaid, 5) == FaultCode::bad_input);
  CHECK(moved(StockWhy::used, 5) == FaultCode::bad_input);
  CHECK(moved(StockWhy::received, 0) == FaultCode::bad_input);
  CHECK(moved(StockWhy::received, -1) == FaultCode::bad_input);
  CHECK(moved(StockWhy::counted, kMostStock + 1) == FaultCode::bad_input);
}
