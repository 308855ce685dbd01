#include "core/desk/without_event.h"

#include "core/desk/stages.h"
#include "core/desk/tags.h"
#include "core/model/queries.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// A desk where rackets were taken in before there was an event.
struct NoEventDesk : Desk {
  /// As in the app, without numbers; or with these, as on the command line.
  BookId take_in(int rackets, const std::vector<std::int64_t>& tags = {}) {
    const BookId book = ledger->create_book_id();
    const PlayerRecord nobody = record_of(book, {}, {});
    auto request = first_request(rackets);
    request.drop_off.event = {};
    request.drop_off.event_name.clear();
    for (std::size_t i = 0; i < request.lines.size(); ++i) {
      request.lines[i].tag_number.reset();
      if (i < tags.size()) request.lines[i].tag_number = tags[i];
    }
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

TEST_CASE("a number that a racket brings along is no other's, whether that stands before or behind it") {
  NoEventDesk desk;
  const BookId without = desk.take_in(2), with = desk.take_in(3, {2, 1, 5}), again = desk.take_in(2, {1, 2});
  desk.make_event();
  desk.take_all();
  std::set<std::int64_t> numbers;
  std::size_t rackets = 0;
  for (const BookId& book : {without, with, again})
    for (const auto& job : desk.load(book).jobs) {
      REQUIRE(job.now.tag_number);
      CHECK(job.now.event == desk.event);
      numbers.insert(*job.now.tag_number);
      ++rackets;
    }
  CHECK(rackets == 7);
  CHECK(numbers == std::set<std::int64_t>{1, 2, 3, 4, 5, 6, 7});
  CHECK(doubled_tags(*desk.ledger, desk.event).empty());
  // Whose numbers could stay has them still: they are on paper already.
  const auto kept = desk.load(with);
  CHECK(kept.jobs[0].now.tag_number == 2);
  CHECK(kept.jobs[1].now.tag_number == 1);
  CHECK(kept.jobs[2].now.tag_number == 5);
}

TEST_CASE("a number that a racket of the event has already gets another for the one that is taken in, unless that was collected") {
  NoEventDesk desk;
  desk.make_event();
  const BookId there = desk.first_drop_off(2);  // 101 and 102
  desk.collect(there, 1);
  const BookId left = desk.take_in(3, {101, 102, 0});
  desk.take_all();
  const auto record = desk.load(left);
  CHECK(record.jobs[0].now.tag_number == 103);
  CHECK(record.jobs[1].now.tag_number == 102);
  CHECK(record.jobs[2].now.tag_number == 104);  // 0 is no number of a tag
  CHECK(doubled_tags(*desk.ledger, desk.event).empty());
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
