#include "core/desk/board.h"

#include <catch2/catch.hpp>
#include <random>

#include "core/desk/board_page.h"
#include "core/desk/phrases.h"
#include "core/model/queries.h"
#include "core/model/stage_now.h"
#include "tests/support/rooms.h"
#include "tests/support/words.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct Lounge : Tablet {
  BookId event;

  explicit Lounge(const std::string& name = "Harbour Open", const std::string& zone = "Europe/Lisbon") : Tablet("desk") {
    event = ledger->create_book_id();
    EventInfo info;
    info.name = name;
    info.time_zone = zone;
    add(event, info, kEventBook);
  }

  /// A job with its marks up to the stage, each after the one before.
  EntityId job(const BookId& book, std::optional<std::int64_t> tag, Stage stage, std::optional<UnixMs> ready_by = {},
               std::optional<BookId> at_event = {}, Agreed wish = day_wish()) {
    Draft draft(book, kPlayerBook, kActDropOff);
    Job job;
    static_cast<Agreed&>(job) = std::move(wish);
    job.event = at_event.value_or(event);
    job.at = clock.now();
    job.ready_by = ready_by;
    job.tag_number = tag;
    const EntityState made = put_new(draft, job, clock.now());
    if (stage != Stage::none) (void)put_new(draft, StageMark{made.id, stage, clock.now(), "A", {}, {}}, clock.now());
    append(draft);
    return made.id;
  }
  [[nodiscard]] BoardNow now(BoardShow show = BoardShow::tag) const { return board_now(*ledger, event, show, clock.now()); }
};

std::vector<std::string> who(const BoardPart& part) {
  std::vector<std::string> out;
  for (const BoardRow& row : part.rows) out.push_back(row.who);
  return out;
}
using Who = std::vector<std::string>;


}  // namespace

TEST_CASE("board: a racket stands where its stage says, and leaves when it is collected or put aside") {
  Lounge lounge;
  const BookId ilse = lounge.add_player("Wendelmoor", "Ilse");
  lounge.job(ilse, 1, Stage::received);
  lounge.job(ilse, 2, Stage::inspected);
  lounge.job(ilse, 3, Stage::waiting);
  lounge.job(ilse, 4, Stage::cut_out);
  lounge.job(ilse, 5, Stage::on_machine);
  lounge.job(ilse, 6, Stage::strung);
  lounge.job(ilse, 7, Stage::checked);
  lounge.job(ilse, 8, Stage::stencilled);
  lounge.job(ilse, 10, Stage::ready);
  lounge.job(ilse, 9, Stage::ready);
  lounge.job(ilse, 11, Stage::collected);
  lounge.job(ilse, 12, Stage::aside);
  lounge.job(ilse, 13, Stage::none);
  const BoardNow board = lounge.now();
  CHECK(board.event == "Harbour Open");
  CHECK(board.zone == "Europe/Lisbon");
  CHECK(who(board.ready) == Who{"9", "10"});  // by number, not as text
  CHECK(who(board.desk) == Who{"3"});
  CHECK(who(board.work) == Who{"1", "2", "4", "5", "6", "7", "8"});
  CHECK(board.unlisted == 0);
}

TEST_CASE("board: only rackets of its own event are on it") {
  Lounge lounge;
  const BookId ilse = lounge.add_player("Wendelmoor", "Ilse");
  lounge.job(ilse, 1, Stage::ready, {}, lounge.ledger->create_book_id());
  lounge.job(ilse, 2, Stage::ready, {}, BookId{});
  CHECK(lounge.now().ready.rows.empty());
}

TEST_CASE("board: work stands in the order in which it is expected, and says what is late") {
  Lounge lounge;
  const BookId ilse = lounge.add_player("Wendelmoor", "Ilse");
  lounge.job(ilse, 1, Stage::received);
  lounge.job(ilse, 2, Stage::received, kMonday + 3 * kHour);
  lounge.job(ilse, 3, Stage::strung, kMonday + kHour);
  lounge.job(ilse, 4, Stage::strung, kMonday - kHour);
  const BoardNow board = lounge.now();
  CHECK(who(board.work) == Who{"4", "3", "2", "1"});
  CHECK(board.work.rows[0].late);
  CHECK_FALSE(board.work.rows[1].late);
  CHECK_FALSE(board.work.rows[3].ready_by);
}

TEST_CASE("board: with initials the rackets of one player stand in one row, those of a namesake in another") {
  Lounge lounge;
  const BookId ilse = lounge.add_player("Wendelmoor", "Ilse"), other = lounge.add_player("Wachiri", "Ines");
  lounge.job(ilse, 1, Stage::ready);
  lounge.job(ilse, 2, Stage::ready);
  lounge.job(other, 3, Stage::ready);
  lounge.job(ilse, 4, Stage::received, kMonday + kHour);
  lounge.job(ilse, 5, Stage::received, kMonday + kHour);
  lounge.job(ilse, 6, Stage::received, kMonday + 2 * kHour);
  const BoardNow board = lounge.now(BoardShow::initials);
  REQUIRE(who(board.ready) == Who{"I. W.", "I. W."});
  CHECK(board.ready.rows[0].rackets + board.ready.rows[1].rackets == 3);
  CHECK(board.ready.rackets == 3);
  REQUIRE(board.work.rows.size() == 2);
  CHECK(board.work.rows[0].rackets == 2);
  CHECK(board.work.rows[1].rackets == 1);
}

TEST_CASE("board: initials are letters, of whatever script the name is, and never the whole of a name") {
  CHECK(initials_of("Wendelmoor", "Ilse") == "I. W.");
  CHECK(initials_of("Łuć-Đin", "Żaneta Ewa Maria") == "Z. L.");
  CHECK(initials_of("o’Brandvold", "ife") == "I. O.");
  CHECK(initials_of("Ардентова", "Юлия") == "I. A.");  // ICAO Doc 9303-3, section 6: Iuliia Ardentova
  CHECK(initials_of("王", "小明") == "X. W.");
  CHECK(initials_of("سعيد", "").size() <= 2);
  CHECK(initials_of("Wendelmoor", "") == "W.");
  CHECK(initials_of("", "").empty());
  CHECK(initials_of("77", "!").empty());
  CHECK(initials_of("\xF0\x9F\x8E\xBE", "\xFF\xFE").empty());
}

TEST_CASE("board: what has no tag number or no initials is counted, so that nobody waits for it in vain") {
  Lounge lounge;
  const BookId ilse = lounge.add_player("Wendelmoor", "Ilse"), nobody = lounge.ledger->create_book_id();
  Person without_name;
  without_name.country = "NED";
  lounge.add(nobody, without_name);
  lounge.job(ilse, {}, Stage::ready);
  lounge.job(ilse, 1, Stage::ready);
  lounge.job(nobody, 2, Stage::ready);
  CHECK(lounge.now().unlisted == 1);
  CHECK(lounge.now(BoardShow::initials).unlisted == 1);
  const BoardNow board = lounge.now();
  CHECK(holds(board_json(board, Language(), kMonday), "1 racket has no tag number: please ask at the desk."));
  CHECK(holds(board_html(board, *Language::from("de"), kMonday, "\"x\""), "1 Schläger hat keine Nummer"));
}

TEST_CASE("board: a racket that two took apart is in work until somebody has looked") {
  Lounge lounge;
  const BookId ilse = lounge.add_player("Wendelmoor", "Ilse");
  const EntityId job = lounge.job(ilse, 1, Stage::on_machine);
  lounge.add(ilse, StageMark{job, Stage::ready, lounge.clock.now(), "B", {}, {}});
  REQUIRE(find_job(*lounge.ledger, ilse, job)->clash);
  CHECK(lounge.now().ready.rows.empty());
  CHECK(who(lounge.now().work) == Who{"1"});
}

TEST_CASE("board: a part that is too long shows what became ready last, and counts the rest") {
  Lounge lounge;
  const BookId ilse = lounge.add_player("Wendelmoor", "Ilse");
  const auto many = static_cast<std::int64_t>(kBoardRows) + 10;
  for (std::int64_t tag = 1; tag <= many; ++tag) lounge.job(ilse, tag, Stage::ready);
  const BoardNow board = lounge.now();
  REQUIRE(board.ready.rows.size() == kBoardRows);
  CHECK(board.ready.rows.front().who == "11");
  CHECK(board.ready.rackets == many);
  CHECK(board.ready.more == 10);
  CHECK(holds(board_json(board, *Language::from("fr"), kMonday), "et encore 10 raquettes"));
}

// The promise of the board: whatever the books hold, nothing of a player but tag number or initials gets out.
TEST_CASE("board: no name, string, tension, contact, identifier or note of any player is on the page or in its JSON") {
  std::mt19937 chance(20310526);
  const auto pick = [&](int least, int most) { return std::uniform_int_distribution<int>(least, most)(chance); };
  const auto word = [&] {  // not a word of the page by chance: these letters do not stand together in any of its languages
    std::string out;
    for (int i = 0, n = pick(3, 6); i < n; ++i) out += std::string("qzxvkj")[static_cast<std::size_t>(pick(0, 5))] + std::string("ou").substr(static_cast<std::size_t>(pick(0, 1)), 1);
    out[0] = static_cast<char>(out[0] - 'a' + 'A');
    return out + "qx";
  };
  for (int round = 0; round < 6; ++round) {
    Lounge lounge;
    std::vector<std::string> secret;
    const auto keep = [&](std::string text) {
      secret.push_back(text);
      return text;
    };
    const auto amount = [&](Unit unit) {
      const std::string text = std::to_string(pick(10, 35)) + "." + std::to_string(pick(101, 989));
      secret.push_back(text);
      std::string comma = text;
      comma[comma.find('.')] = ',';
      secret.push_back(comma);
      return said(text.c_str(), unit);
    };
    for (int i = 0; i < 12; ++i) {
      const BookId book = lounge.add_player(keep(word()), keep(word()), keep("王" + word() + "小明"));
      secret.push_back(to_hex(book.bytes));
      Person person;
      person.contact = keep(word() + "@example.org");
      person.country = keep("QZX");
      person.tour_number = keep("7" + std::to_string(pick(100000, 999999)));
      person.note = keep(word() + " <b>");
      person.birth_year = pick(1985, 1999);
      secret.push_back(std::to_string(*person.birth_year));
      lounge.change<Person>(book, find_player(*lounge.ledger, book)->person, [&](Person& held) {
        person.family_name = held.family_name;
        person.given_name = held.given_name;
        person.native_name = held.native_name;
        held = person;
      });
      for (int j = 0; j < 3; ++j) {
        Agreed wish = day_wish();
        wish.mains_string = keep(word());
        wish.crosses_string = keep(word());
        wish.mains_tension = amount(Unit::kilogram_force);
        wish.crosses_tension = amount(Unit::pound_force);
        wish.mains_gauge = amount(Unit::millimetre);
        wish.racket_stencil = keep(word());
        wish.note = keep(word());
        Racket racket;
        racket.label = keep(word());
        racket.serial = keep(word());
        lounge.add(book, racket);
        const auto stage = static_cast<Stage>(pick(1, 11));
        const EntityId job = lounge.job(book, pick(0, 4) == 0 ? std::nullopt : std::optional<std::int64_t>(pick(1, 999)), stage,
                                        pick(0, 3) == 0 ? std::nullopt : std::optional(kMonday + pick(-600, 600) * kMinute), {}, wish);
        secret.push_back(to_hex(job.bytes));
        secret.push_back(job.hex());
      }
    }
    for (const BoardShow show : {BoardShow::tag, BoardShow::initials}) {
      const BoardNow board = lounge.now(show);
      REQUIRE(board.ready.rows.size() + board.work.rows.size() + board.desk.rows.size() > 5);
      for (const Language& language : desk_words().languages()) {
        const std::string out = board_json(board, language, kMonday) + board_html(board, language, kMonday, "\"tag\"");
        for (const std::string& one : secret) {
          CAPTURE(round, language.tag(), one);
          CHECK_FALSE(holds(out, one));
          CHECK_FALSE(holds(out, html_escaped(one)));
        }
      }
    }
  }
}
