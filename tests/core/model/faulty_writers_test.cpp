// What a device that is let in and writes nonsense does to the tables behind the screens: they say the same in whatever order its words come, and what a
// rebuild would.
#include <catch2/catch.hpp>

#include "core/log/entity_id.h"
#include "core/model/queries.h"
#include "core/model/stage_now.h"
#include "core/store/database.h"
#include "tests/support/rooms.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct Both {
  Tablet desk{"desk"}, faulty{"faulty"};
  BookId player = desk.add_player("Kova", "Mira");

  Both() { meet(desk, faulty, player); }

  /// The faulty device sets a field of whatever has that id as one of another kind has it.
  void write_as(EntityKind kind, const EntityId& id, FieldTag tag, Value value) {
    Draft draft(player, kPlayerBook, kActEdit);
    EntityState said;
    said.book = player;
    said.id = id;
    said.kind = kind;
    draft.put(said, tag, std::move(value));
    faulty.append(draft);
  }
  EntityId put_job(const EntityId& id, std::int64_t tag_number) {
    Draft draft(player, kPlayerBook, kActDropOff);
    EntityState fresh = new_entity(player, kJob, desk.clock.now());
    if (id) fresh.id = id;
    Job job;
    job.tag_number = tag_number;
    put_changes(draft, fresh, job);
    desk.append(draft);
    return fresh.id;
  }
};

std::int64_t number_in(const Tablet& tablet, const std::string& sql) {
  std::int64_t held = 0;
  tablet.ledger->read([&](Connection& db) { held = db.raw().execAndGet(sql).getInt64(); });
  return held;
}

/// The tables of both say the same, and what a rebuild would.
void same_tables(const Tablet& one, const Tablet& other) {
  CHECK(one.ledger->verify().faults.empty());
  CHECK(other.ledger->verify().faults.empty());
  one.ledger->read([&](Connection& a) { other.ledger->read([&](Connection& b) { CHECK(ModelTables().digest(a) == ModelTables().digest(b)); }); });
}

}  // namespace

TEST_CASE("a job to which somebody writes as to a setup stays on the work list") {
  Both both;
  const EntityId job = both.put_job({}, 14);
  both.write_as(kSetup, job, tag_of<Setup>(&Setup::name), std::string("mine"));
  meet(both.desk, both.faulty, both.player);
  CHECK(number_in(both.desk, "SELECT count(*) FROM model_job WHERE tag_number=14") == 1);
  CHECK(both.desk.ledger->entity(both.player, job)->kind == kJob);
  same_tables(both.desk, both.faulty);
}

TEST_CASE("where an id is bound to no kind, tables follow the kind that counts, whoever's word came first") {
  Both both;
  const EntityId job = both.put_job(make_id<EntityId>(kMonday), 14);
  const EntityId other = both.put_job({}, 15);
  const EntityId mark = both.desk.add(both.player, StageMark{other, Stage::received, kMonday, "A", {}, {}});
  both.write_as(kSetup, job, tag_of<Setup>(&Setup::name), std::string("mine"));
  meet(both.desk, both.faulty, both.player);
  CHECK(both.desk.ledger->entity(both.player, job)->kind == kSetup);
  CHECK(number_in(both.desk, "SELECT count(*) FROM model_job WHERE tag_number=14") == 0);
  CHECK(number_in(both.desk, "SELECT count(*) FROM model_job WHERE tag_number=15 AND stage=" + std::to_string(static_cast<int>(Stage::received))) == 1);
  CHECK(find_players(*both.desk.ledger, "kova").size() == 1);
  same_tables(both.desk, both.faulty);
  // And what comes after it is told like any other change.
  both.desk.change<Job>(both.player, other, [](Job& now) { now.tag_number = 16; });
  CHECK(number_in(both.desk, "SELECT count(*) FROM model_job WHERE tag_number=16") == 1);
  meet(both.desk, both.faulty, both.player);
  same_tables(both.desk, both.faulty);
  CHECK(mark);
}

TEST_CASE("of two persons that devices made of one player while apart the other stands when the first made is undone") {
  Both both;
  const EntityId first = both.desk.ledger->entities(both.player, kPerson).front().id;
  Person second;
  second.family_name = "Harrowdene";
  both.faulty.clock.advance(kMinute);
  both.faulty.add(both.player, second);
  meet(both.desk, both.faulty, both.player);
  CHECK(find_players(*both.desk.ledger, "harrow").empty());
  both.desk.change<Person>(both.player, first, [](Person& now) { now = {}; });
  CHECK(find_players(*both.desk.ledger, "harrow").size() == 1);
  CHECK(find_players(*both.desk.ledger, "kova").empty());
  meet(both.desk, both.faulty, both.player);
  same_tables(both.desk, both.faulty);
}

TEST_CASE("of two events that devices put into one book while apart the other stands when the first made is undone") {
  Tablet desk("desk");
  const BookId book = desk.ledger->create_book_id();
  EventInfo info;
  info.name = "Harbour Open";
  const EntityId first = desk.add(book, info, kEventBook);
  desk.clock.advance(kMinute);
  info.name = "Saltwick Cup";
  desk.add(book, info, kEventBook);
  CHECK(number_in(desk, "SELECT count(*) FROM model_event WHERE name='Harbour Open'") == 1);
  Draft draft(book, kEventBook, kActEdit);
  put_changes(draft, *desk.ledger->entity(book, first), EventInfo{});
  desk.append(draft);
  CHECK(number_in(desk, "SELECT count(*) FROM model_event WHERE name='Saltwick Cup'") == 1);
  CHECK(desk.ledger->verify().faults.empty());
}

TEST_CASE("marks that name each other in a ring give one stage, in whatever order they come") {
  Both both;
  const EntityId job = both.put_job({}, 14);
  const EntityId one = make_entity_id(kStageMark, kMonday), two = make_entity_id(kStageMark, kMonday), three = make_entity_id(kStageMark, kMonday);
  const auto put_mark = [&](const EntityId& id, Stage stage, const EntityId& after) {
    Draft draft(both.player, kPlayerBook, kActStage);
    EntityState fresh;
    fresh.book = both.player;
    fresh.id = id;
    fresh.kind = kStageMark;
    put_changes(draft, fresh, StageMark{job, stage, kMonday, "A", {}, join_ids({{after}})});
    both.desk.append(draft);
    CHECK(both.desk.ledger->verify().faults.empty());
  };
  put_mark(one, Stage::received, three);  // which is not there yet
  put_mark(two, Stage::inspected, one);
  put_mark(three, Stage::cut_out, two);   // follows what is newest, and closes the ring
  meet(both.desk, both.faulty, both.player);
  same_tables(both.desk, both.faulty);
}
