#include "core/model/queries.h"

#include <catch2/catch.hpp>

#include "core/model/stage_now.h"
#include "core/store/database.h"
#include "tests/support/rooms.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct Room : Tablet {
  BookId event;

  Room() : Tablet("desk") {
    event = ledger->create_book_id();
    EventInfo info;
    info.name = "Harbour Open";
    info.place = "Saltwick";
    info.first_day = "2031-05-26";
    add(event, info, kEventBook);
  }

  EntityId take_in(const BookId& book, std::int64_t tag, std::optional<std::int64_t> ready_by,
                   Rush rush = Rush::none) {
    Job job;
    static_cast<Agreed&>(job) = day_wish();
    job.event = event;
    job.at = clock.now();
    job.ready_by = ready_by;
    job.rush = rush;
    job.tag_number = tag;
    const EntityId id = add(book, job);
    (void)step(book, id, Stage::received, {});
    return id;
  }
  EntityId step(const BookId& book, const EntityId& job, Stage stage, std::vector<EntityId> after,
                std::string by = "A") {
    return add(book, StageMark{job, stage, clock.now(), std::move(by), {}, join_ids(after)});
  }
  std::vector<EntityId> newest(const BookId& book, const EntityId& job) {
    std::vector<PlacedMark> marks;
    for (const auto& state : ledger->entities(book, kStageMark))
      if (auto placed = placed_mark(state); placed && placed->mark.job == job) marks.push_back(*placed);
    return stage_now(marks).newest;
  }
};

std::vector<std::string> families(const std::vector<PlayerRow>& rows) {
  std::vector<std::string> names;
  for (const auto& row : rows) names.push_back(row.family_name);
  return names;
}
std::vector<std::int64_t> tags(const std::vector<JobRow>& rows) {
  std::vector<std::int64_t> out;
  for (const auto& row : rows) out.push_back(row.tag_number.value_or(-1));
  return out;
}

using Names = std::vector<std::string>;
using Tags = std::vector<std::int64_t>;

}  // namespace

TEST_CASE("players are found by the beginning of any word of the name, in any script") {
  Room room;
  room.add_player("Łukomska", "Żaneta");
  room.add_player("Okonjo-Brandvold", "Ife");
  room.add_player("Wachiri", "Luka");
  room.add_player("Ардентова", "Юлия");
  room.add_player("Xiong", "Baozhai", "熊寶釵");
  CHECK(families(find_players(*room.ledger, "luk")) == Names{"Łukomska", "Wachiri"});  // family name first
  CHECK(families(find_players(*room.ledger, "ŁUK")) == Names{"Łukomska", "Wachiri"});
  CHECK(families(find_players(*room.ledger, "zan luk")) == Names{"Łukomska"});
  CHECK(families(find_players(*room.ledger, "brand")) == Names{"Okonjo-Brandvold"});
  CHECK(families(find_players(*room.ledger, "ардент")) == Names{"Ардентова"});
  CHECK(families(find_players(*room.ledger, "ardent")) == Names{"Ардентова"});
  CHECK(families(find_players(*room.ledger, "熊")) == Names{"Xiong"});
  CHECK(families(find_players(*room.ledger, "xiong b")) == Names{"Xiong"});
  CHECK(find_players(*room.ledger, "luk ife").empty());
  CHECK(find_players(*room.ledger, "").size() == 5);
  CHECK(find_players(*room.ledger, "", 2).size() == 2);
  CHECK(count_players(*room.ledger) == 5);
}

TEST_CASE("what is typed is never taken for a search expression") {
  Room room;
  room.add_player("O’Dunmorrow", "Nia");
  for (const char* typed :
       {"\"", "\"*", "NEAR(", "a AND", "-", "*", "words:x", "' OR 1=1 --", "\xff\xfe", "(", "^o", "+"})
    CHECK_NOTHROW(find_players(*room.ledger, typed));
  CHECK(find_players(*room.ledger, std::string(100'000, 'o')).empty());
  CHECK(find_players(*room.ledger, "o'dun").size() == 1);
}

TEST_CASE("a changed name is found under the new one only, an undone player not at all") {
  Room room;
  const BookId book = room.add_player("Quistgren", "Tove");
  const EntityId person = room.ledger->entities(book, kPerson).front().id;
  room.change<Person>(book, person, [](Person& now) { now.family_name = "Harrowdene"; });
  CHECK(find_players(*room.ledger, "quist").empty());
  CHECK(find_players(*room.ledger, "harrow").size() == 1);
  room.change<Person>(book, person, [](Person& now) { now = {}; });
  CHECK(find_players(*room.ledger, "harrow").empty());
  CHECK(find_players(*room.ledger, "").empty());
}

TEST_CASE("the board shows jobs by stage in the order in which they are due") {
  Room room;
  const BookId one = room.add_player("Aldermoor", "Ines");
  const BookId two = room.add_player("Bexcombe", "Rui");
  const auto late = room.take_in(one, 1, kMonday + 5 * kHour);
  (void)room.take_in(two, 2, kMonday + 2 * kHour);
  (void)room.take_in(two, 3, std::nullopt);
  const auto court = room.take_in(one, 4, kMonday + 3 * kHour, Rush::on_court);

  CHECK(tags(jobs_at_stage(*room.ledger, room.event, Stage::received)) == Tags{2, 4, 1, 3});
  CHECK(tags(next_jobs(*room.ledger, room.event, 10)) == Tags{4, 2, 1, 3});  // on court goes first

  (void)room.step(one, court, Stage::on_machine, room.newest(one, court), "Mara");
  CHECK(tags(next_jobs(*room.ledger, room.event)) == Tags{2});
  const auto on_machine = jobs_at_stage(*room.ledger, room.event, Stage::on_machine);
  REQUIRE(tags(on_machine) == Tags{4});
  CHECK(on_machine[0].stage_by == "Mara");
  CHECK(on_machine[0].event_name == "Harbour Open");
  CHECK(on_machine[0].family_name == "Aldermoor");
  CHECK(on_machine[0].mains_tension == kg("25"));
  CHECK(on_machine[0].crosses_string == "Velmora Round");
  CHECK_FALSE(on_machine[0].clash);

  auto counts = count_by_stage(*room.ledger, room.event);
  CHECK(counts[static_cast<std::size_t>(Stage::received)] == 3);
  CHECK(counts[static_cast<std::size_t>(Stage::on_machine)] == 1);
  CHECK(all_events(*room.ledger).at(0).open_jobs == 4);
  CHECK(highest_tag(*room.ledger, room.event) == 4);
  CHECK(tags(find_jobs_by_tag(*room.ledger, 3)) == Tags{3});
  CHECK(tags(find_jobs_by_tag(*room.ledger, 3, room.event)) == Tags{3});
  CHECK(find_jobs_by_tag(*room.ledger, 3, one).empty());

  // Somebody else moved the first one on without having seen the others' marks.
  const auto before = room.newest(one, late);
  (void)room.step(one, late, Stage::cut_out, before, "Mara");
  (void)room.step(one, late, Stage::cut_out, before, "Jonas");
  CHECK(tags(clashing_jobs(*room.ledger, room.event)) == Tags{1});
  (void)room.step(one, late, Stage::cut_out, room.newest(one, late), "Mara");
  CHECK(clashing_jobs(*room.ledger, room.event).empty());
}

TEST_CASE("pages of jobs join without a gap or a repeat, newest first") {
  Room room;
  const BookId book = room.add_player("Aldermoor", "Ines");
  room.clock.set(kMonday);
  for (int i = 0; i < 23; ++i) {
    Job job;
    job.event = room.event;
    job.tag_number = i;
    job.at = kMonday + (i / 3) * kMinute;  // several share a moment
    room.add(book, job);
  }
  for (const std::optional<BookId> event : {std::optional<BookId>{}, std::optional<BookId>{room.event}}) {
    Tags all;
    std::optional<JobKey> after;
    for (;;) {
      const auto page = page_of_jobs(*room.ledger, event, after, 5);
      if (page.empty()) break;
      after = page.back().key;
      for (const auto tag : tags(page)) all.push_back(tag);
    }
    Tags expected;
    for (int i = 22; i >= 0; --i) expected.push_back(i);
    CHECK(all == expected);
    CHECK(count_jobs(*room.ledger, event) == 23);
    CHECK(tags(page_of_jobs(*room.ledger, event, job_key_at(*room.ledger, event, 9), 2)) == Tags{12, 11});
    CHECK_FALSE(job_key_at(*room.ledger, event, 23));
  }
  CHECK(tags(history_of(*room.ledger, book, 3)) == Tags{22, 21, 20});
  CHECK(find_player(*room.ledger, book)->last_at == kMonday + 7 * kMinute);
}

TEST_CASE("entries know whether their player is linked and held here") {
  Room room;
  const BookId known = room.add_player("Aldermoor", "Ines");
  const BookId elsewhere = room.ledger->create_book_id();
  const auto enter = [&](const char* family, BookId player) {
    EntryListItem item;
    item.family_name = family;
    item.player = player;
    room.add(room.event, item, kEventBook);
  };
  enter("Zinnemoor", {});
  enter("Åldermoor", known);
  enter("Bexcombe", elsewhere);
  const auto list = entry_list(*room.ledger, room.event);
  REQUIRE(list.size() == 3);
  CHECK(list[0].family_name == "Åldermoor");
  CHECK(list[0].held_here);
  CHECK(list[1].player == elsewhere);
  CHECK_FALSE(list[1].held_here);
  CHECK_FALSE(list[2].player);
}

namespace {

/// Every row of the model's tables with surrogate numbers replaced by what they stand for.
std::vector<std::string> dump(const Ledger& ledger) {
  std::vector<std::string> lines;
  ledger.read([&](Connection& db) {
    for (const char* sql : {"SELECT hex(p.book), hex(p.person), p.family, p.given, p.folded, p.last_at, "
                            "p.last_event, (SELECT words FROM model_name f "
                            "WHERE f.rowid=p.n) FROM model_player p ORDER BY 1",
                            "SELECT hex(p.book), hex(j.id), j.at, j.ready_by, j.tag_number, j.stage, "
                            "j.stage_at, j.stage_by, j.stage_stamp, "
                            "hex(j.newest), j.clash, j.mains_amount FROM model_job j JOIN model_player p ON "
                            "p.n=j.player ORDER BY 1, 2",
                            "SELECT hex(job) FROM model_waiting ORDER BY 1",
                            "SELECT hex(id), event_name FROM model_drop_off ORDER BY 1",
                            "SELECT hex(id), label FROM model_racket ORDER BY 1",
                            "SELECT hex(book), name FROM model_event ORDER BY 1",
                            "SELECT hex(id), family FROM model_entry ORDER BY 1"}) {
      SQLite::Statement query(db.raw(), sql);
      while (query.executeStep()) {
        std::string line;
        for (int i = 0; i < query.getColumnCount(); ++i) line += query.getColumn(i).getString() + "|";
        lines.push_back(std::move(line));
      }
    }
  });
  return lines;
}

}  // namespace

TEST_CASE(
    "tables made anew from the entries are the same tables, and nothing is left of a forgotten player") {
  Room room;
  const BookId one = room.add_player("Aldermoor", "Ines");
  const BookId two = room.add_player("Bexcombe", "Rui");
  Racket racket;
  racket.label = "1";
  room.add(one, racket);
  const auto a = room.take_in(one, 1, kMonday);
  const auto b = room.take_in(two, 2, std::nullopt);
  (void)room.step(one, a, Stage::inspected, room.newest(one, a));
  (void)room.step(one, a, Stage::cut_out, room.newest(one, a));
  const auto before = room.newest(two, b);
  (void)room.step(two, b, Stage::on_machine, before, "Mara");
  const auto taken_back = room.step(two, b, Stage::aside, before, "Jonas");
  CHECK(clashing_jobs(*room.ledger, room.event).size() == 1);
  room.change<StageMark>(two, taken_back, [](StageMark& mark) { mark = {}; });
  CHECK(clashing_jobs(*room.ledger, room.event).empty());
  CHECK(find_job(*room.ledger, two, b)->stage == Stage::on_machine);

  const auto lines = dump(*room.ledger);
  REQUIRE(lines.size() > 5);
  CHECK(must(room.ledger->rebuild().map([] { return 0; })) == 0);
  CHECK(dump(*room.ledger) == lines);
  CHECK(room.ledger->verify().faults.empty());

  ModelTables tables;
  const auto forgotten = room.ledger->transact([&](Connection& db) { tables.forget(db, one); });
  REQUIRE(forgotten);
  CHECK(find_players(*room.ledger, "alder").empty());
  CHECK(history_of(*room.ledger, one).empty());
  CHECK_FALSE(find_player(*room.ledger, one));
  CHECK(find_players(*room.ledger, "bex").size() == 1);
  // Not even the words of the name are left in the index's own pages.
  room.ledger->read([&](Connection& db) {
    SQLite::Statement query(
        db.raw(), "SELECT count(*) FROM model_name_data WHERE instr(block, CAST('aldermoor' AS BLOB)) > 0");
    REQUIRE(query.executeStep());
    CHECK(query.getColumn(0).getInt() == 0);
  });
}

TEST_CASE("a job whose pieces are changed and nothing else shows it at once, as a rebuild would") {
  Tablet tablet("desk");
  const BookId player = tablet.add_player("Kova", "Mira");
  Job job;
  job.pieces = 1;
  const EntityId id = tablet.add(player, job);
  const auto pieces = [&] {
    std::int64_t held = 0;
    tablet.ledger->read([&](Connection& db) { held = db.raw().execAndGet("SELECT pieces FROM model_job").getInt64(); });
    return held;
  };
  CHECK(pieces() == 1);
  Draft draft(player, kPlayerBook, kActEdit);
  draft.put(tablet.ledger->entity(player, id).value(), tag_of<Job>(&Agreed::pieces), std::int64_t{2});
  tablet.append(draft);
  CHECK(pieces() == 2);
  CHECK(tablet.ledger->verify().faults.empty());
}
