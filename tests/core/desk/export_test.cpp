#include "core/desk/export.h"

#include <boost/json.hpp>
#include <catch2/catch.hpp>

#include "core/base/csv.h"
#include "core/model/stock.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;
namespace json = boost::json;

TEST_CASE("a player's export holds everything, with every value as spoken") {
  Desk desk;
  const BookId book = desk.first_drop_off(2);
  const PlayerRecord record = desk.load(book);
  const json::value whole = json::parse(player_json(record));
  CHECK(whole.at("format") == "weavelog-player");
  CHECK(whole.at("book").as_string() == book.hex());
  CHECK(whole.at("person").at("family_name") == "Wendelmoor");
  REQUIRE(whole.at("jobs").as_array().size() == 2);
  const json::value& job = whole.at("jobs").at(0);
  CHECK(job.at("mains_tension").at("amount") == "25");
  CHECK(job.at("mains_tension").at("unit") == "kg");
  CHECK(job.at("mains_supply") == "reel");
  CHECK(job.at("at") == "2031-05-26T10:00:00Z");
  CHECK(job.at("ready_by") == "2031-05-26T13:00:00Z");
  CHECK(job.at("stage") == "received");
  CHECK(job.at("marks").at(0).at("by") == "Mara");
  CHECK(whole.at("drop_offs").at(0).at("confirmed_text").as_string() ==
        record.drop_offs[0].now.confirmed_text);
  CHECK(whole.at("open_questions").as_array().empty());

  // Nothing that is stored is left out.
  std::size_t stored = 0;
  for (const auto& state : desk.ledger->entities(book, kJob)) stored += state.cells.size();
  std::size_t exported = 0;
  for (const auto& one : whole.at("jobs").as_array())
    exported += one.as_object().size() - 4;  // id, stage, clash, marks
  CHECK(exported == stored);
}

TEST_CASE("fields and choices of a newer version are exported by their numbers") {
  Desk desk;
  const BookId book = desk.add_player("Aldermoor", "Ines");
  const auto state = desk.ledger->entities(book, kPerson).front();
  Draft draft(book, kPlayerBook, kActEdit);
  draft.put(state, FieldTag{199}, Value{std::string("from next year")});
  draft.put(state, tag_of<Person>(&Person::hand), Value{std::int64_t{7}});
  desk.append(draft);
  const json::value whole = json::parse(player_json(desk.load(book)));
  CHECK(whole.at("person").at("field_199") == "from next year");
  CHECK(whole.at("person").at("hand").as_int64() == 7);
}

TEST_CASE("a player's export holds what was written and stands no longer") {
  Desk desk;
  const BookId book = desk.add_player("Aldermoor", "Ines");
  const auto state = desk.ledger->entities(book, kPerson).front();
  Draft draft(book, kPlayerBook, kActEdit);
  draft.put(state, tag_of<Person>(&Person::given_name), Value{std::string("Inez")});
  draft.put(state, FieldTag{199}, Value{std::string("from next year")});
  desk.append(draft);
  const PlayerRecord record = desk.load(book);
  const json::value whole = json::parse(player_json(record, {}, written_entries(*desk.ledger, book)));
  CHECK(whole.at("person").at("given_name") == "Inez");
  const auto& entries = whole.at("entries").as_array();
  REQUIRE(entries.size() == 2);
  CHECK(entries[0].at("action") == "new_player");
  CHECK(entries[0].at("device") == "desk");
  const auto& first = entries[0].at("writes").as_array();
  CHECK(std::any_of(first.begin(), first.end(), [](const json::value& write) { return write.at("field") == "given_name" && write.at("value") == "Ines"; }));
  REQUIRE(entries[1].at("writes").as_array().size() == 2);
  CHECK(entries[1].at("number") == 2);
  CHECK(entries[1].at("writes").at(1).at("field") == 199);
}

TEST_CASE("a player's export holds what events hold about the player, and nothing about others") {
  Desk desk;
  const BookId book = desk.first_drop_off(1), other = desk.add_player("Quillon", "Bram");
  const BookId event = desk.ledger->create_book_id();
  EventInfo info;
  info.name = "Lakeside Trophy";
  desk.add(event, info, kEventBook);
  for (const auto& [who, name] : {std::pair(book, "Wendelmoor"), std::pair(other, "Quillon")}) {
    EntryListItem item;
    item.family_name = name;
    item.player = who;
    desk.add(event, item, kEventBook);
  }
  StockMove used;
  used.job = desk.load(book).jobs.front().id();
  used.note = "from the reel";
  desk.add(event, used, kEventBook);
  const PlayerRecord record = desk.load(book);
  const json::value whole = json::parse(player_json(record, held_in_events(*desk.ledger, record)));
  REQUIRE(whole.at("events").as_array().size() == 1);
  const json::value& lines = whole.at("events").at(0);
  CHECK(lines.at("name") == "Lakeside Trophy");
  REQUIRE(lines.at("entries").as_array().size() == 1);
  CHECK(lines.at("entries").at(0).at("family_name") == "Wendelmoor");
  CHECK(lines.at("stock_moves").at(0).at("note") == "from the reel");
  CHECK_FALSE(lines.as_object().contains("charges"));
  CHECK(json::serialize(whole).find("Quillon") == std::string::npos);
  CHECK(json::parse(player_json(record)).at("events").as_array().empty());
}

TEST_CASE("an event is exported with its entries and prices") {
  Desk desk;
  EventInfo info;
  info.name = "Harbour Open";
  info.currency = "EUR";
  desk.add(desk.event, info, kEventBook);
  EntryListItem item;
  item.family_name = "Ардентова";
  item.seed = 3;
  item.via = EntryVia::wild_card;
  desk.add(desk.event, item, kEventBook);
  Price price;
  price.service = "labour";
  price.amount_minor = 1850;
  price.currency = "EUR";
  desk.add(desk.event, price, kEventBook);
  const json::value whole = json::parse(event_json(desk.event, desk.ledger->entities(desk.event)));
  CHECK(whole.at("event").at("name") == "Harbour Open");
  CHECK(whole.at("entries").at(0).at("family_name") == "Ардентова");
  CHECK(whole.at("entries").at(0).at("via") == "wild_card");
  CHECK(whole.at("prices").at(0).at("amount_minor").as_int64() == 1850);
}

TEST_CASE("the job history reads back as a table") {
  Desk desk;
  const BookId book = desk.first_drop_off(2);
  const CsvTable table = must(read_csv(job_history_csv(desk.load(book))));
  CHECK(table.faults.empty());
  REQUIRE(table.rows.size() == 2);
  const auto column = [&](const char* name) {
    for (std::size_t i = 0; i < table.header.size(); ++i)
      if (table.header[i] == name) return i;
    FAIL(name);
    return std::size_t{0};
  };
  CHECK(table.rows[0].fields[column("at")] == "2031-05-26T10:00:00Z");
  CHECK(table.rows[0].fields[column("racket")] == "1");
  CHECK(table.rows[1].fields[column("racket")] == "2");
  CHECK(table.rows[0].fields[column("mains_tension")] == "25 kg");
  CHECK(table.rows[0].fields[column("crosses_supply")] == "set");
  CHECK(table.rows[0].fields[column("stage")] == "received");
}

TEST_CASE("a book without a player still exports") {
  const json::value whole = json::parse(player_json(record_of(BookId{{5}}, {}, {})));
  CHECK(whole.at("person").is_null());
}
