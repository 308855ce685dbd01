#include "core/desk/without_event.h"

#include "core/desk/stages.h"
#include "core/model/queries.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// A desk where rackets were taken in before there was an event.
struct NoEventDesk : Desk {
  BookId take_in(int rackets) {
    const BookId book = ledger->create_book_id();
    const PlayerRecord nobody = record_of(book, {}, {});
    auto request = first_request(rackets);
    request.drop_off.event = {};
    request.drop_off.event_name.clear();
    for (auto& line : request.lines) line.tag_number.reset();
    append(drop_off(nobody, request, read_back_of(nobody, request), "Mara"));
    return book;
  }
  void make_event() {
    EventInfo info;
    info.name = "Lakeside Days";
    info.place = "Lakeside";
    append(new_event(event, info, clock.now()));
  }
  void collect(const BookId& book, std::size_t job) {
    const auto record = load(book);
    const EntityId id = record.jobs.at(job).id();
    append(take_step(record, std::span(&id, 1), StageStep{Stage::collected, "Mara", "handed over", clock.now()}));
  }
  void take_all() {
    for (const Draft& draft : must(take_into_event(*ledger, event, rackets_without_event(*ledger)))) append(draft);
  }
};

}  // namespace

TEST_CASE("rackets taken in without an event come into one that is made later, with numbers, as they were confirmed") {
  NoEventDesk desk;
  const BookId first = desk.take_in(2), second = desk.take_in(1);
  CHECK(next_jobs(*desk.ledger, desk.event, 5).empty());
  const auto waiting = rackets_without_event(*desk.ledger);
  REQUIRE(waiting.size() == 2);
  CHECK(waiting[0].player == first);
  CHECK(waiting[0].name == "Wendelmoor Ilse");
  CHECK(waiting[0].jobs.size() == 2);
  CHECK(waiting[1].jobs.size() == 1);

  desk.make_event();
  desk.take_all();
  CHECK(next_jobs(*desk.ledger, desk.event, 5).size() == 3);
  CHECK(highest_tag(*desk.ledger, desk.event) == 3);
  CHECK(jobs_at_stage(*desk.ledger, desk.event, Stage::received).size() == 3);
  const auto record = desk.load(first);
  CHECK(record.jobs[0].now.tag_number == 1);
  CHECK(record.jobs[1].now.tag_number == 2);
  CHECK(desk.load(second).jobs[0].now.tag_number == 3);
  CHECK(record.drop_offs[0].now.event_name == "Lakeside Days");
  CHECK(record.drop_offs[0].now.place == "Lakeside");
  CHECK(still_confirmed(record, record.jobs[0].id()));
  CHECK(is_confirmed(record.drop_offs[0].now));
  // Once is enough.
  CHECK(rackets_without_event(*desk.ledger).empty());
  CHECK(must(take_into_event(*desk.ledger, desk.event, waiting)).empty());
}

TEST_CASE("what is collected, long ago, of an event or taken in by somebody else does not come along") {
  NoEventDesk desk;
  const BookId old = desk.take_in(1);
  desk.clock.advance((kWithoutEventDays + 1) * kDay);
  const BookId done = desk.take_in(2);
  desk.collect(done, 0);
  (void)desk.first_drop_off(1);  // at an event
  Tablet other("Bo's tablet");
  const BookId his = other.add_player("Okafor", "Sade");
  Job job;
  job.at = desk.clock.now();
  StageMark mark;
  mark.job = other.add(his, job);
  mark.stage = Stage::received;
  mark.at = job.at;
  (void)other.add(his, mark);
  (void)must(desk.ledger->ingest(other.ledger->missing(his, {}, 1 << 20), 0));

  const auto waiting = rackets_without_event(*desk.ledger);
  REQUIRE(waiting.size() == 1);
  CHECK(waiting[0].player == done);
  CHECK(waiting[0].jobs == std::vector<EntityId>{desk.load(done).jobs.at(1).id()});
  CHECK_FALSE(desk.load(old).jobs.at(0).now.event);
}

TEST_CASE("an event that is not here takes nothing in") {
  NoEventDesk desk;
  (void)desk.take_in(1);
  const auto refused = take_into_event(*desk.ledger, desk.event, rackets_without_event(*desk.ledger));
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == FaultCode::not_found);
}
