#include "core/held/held_words.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "core/base/digest.h"
#include "core/desk/adjust.h"
#include "core/desk/consent.h"
#include "core/desk/stages.h"
#include "core/model/bench.h"
#include "core/model/draw.h"
#include "core/model/event.h"
#include "core/model/money.h"
#include "core/model/stock.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

const Language kEnglish = Language::from("en").value();

const HeldSection* section(const std::vector<HeldSection>& all, const std::string& title) {
  const auto found = std::find_if(all.begin(), all.end(), [&](const HeldSection& one) { return one.title == title; });
  return found == all.end() ? nullptr : &*found;
}
std::string said(const HeldPart& part, const std::string& what) {
  const auto found = std::find_if(part.rows.begin(), part.rows.end(), [&](const HeldRow& row) { return row.what == what; });
  return found == part.rows.end() ? "(no row)" : found->said;
}
/// Every value of a section, for looking something up anywhere in it.
bool holds_value(const std::vector<HeldSection>& all, const std::string& value) {
  for (const auto& one : all)
    for (const auto& part : one.parts)
      for (const auto& row : part.rows)
        if (row.said.find(value) != std::string::npos) return true;
  return false;
}

/// Something that can be told from everything else; what must be found again goes into `texts`.
void fill_in(std::string& member, std::string_view field, int count, std::vector<std::string>& texts) {
  if (field == "steps_done") return;  // names of steps
  member = "word" + std::to_string(count);
  texts.push_back(member);
}
void fill_in(std::optional<std::int64_t>& member, std::string_view field, int count, std::vector<std::string>& texts) {
  member = 700'000 + count;
  if (!field.ends_with("at") && field != "ready_by" && field != "size" && field != "clock_minutes") texts.push_back(std::to_string(*member));
}
void fill_in(std::optional<Quantity>& member, std::string_view, int count, std::vector<std::string>& texts) {
  member = Quantity{Decimal{7'000 + count, 0}, Unit::millimetre};
  texts.push_back(localised(kEnglish, *member));
}
template <class Other>
void fill_in(Other&, std::string_view, int, std::vector<std::string>&) {}

}  // namespace

TEST_CASE("what is held on a player is told in words, with what identifiers stand for") {
  Desk desk;
  const BookId book = desk.first_drop_off(2);
  const auto all = held_words(*desk.ledger, desk.load(book), kEnglish, "Europe/Lisbon");
  const auto* person = section(all, "The player");
  REQUIRE(person != nullptr);
  CHECK(person->parts.at(0).title == "Wendelmoor Ilse");
  const auto* jobs = section(all, "Rackets strung");
  REQUIRE(jobs != nullptr);
  REQUIRE(jobs->parts.size() == 2);
  const HeldPart& job = jobs->parts.front();
  CHECK(job.title == "tag 101, racket 1, 2031-05-26");
  CHECK(said(job, "mains tension") == "25\u00a0kg");
  CHECK(said(job, "racket") == "racket 1");
  CHECK(said(job, "drop-off") == "2031-05-26, Harbour Open");
  CHECK(said(job, "setup") == "day");
  CHECK(said(job, "received").find("2031-05-26 ") == 0);
  const auto* drop_offs = section(all, "Drop-offs");
  REQUIRE(drop_offs != nullptr);
  CHECK(said(drop_offs->parts.at(0), "confirmed on") == "desk");
  CHECK(said(drop_offs->parts.at(0), "what was confirmed") == desk.load(book).drop_offs[0].now.confirmed_text);
  CHECK(section(all, "Earlier answers") == nullptr);
  CHECK(section(all, "Open questions") == nullptr);
}

TEST_CASE("what stood in the book before is told as well, and who wrote it") {
  Desk desk;
  const BookId book = desk.first_drop_off(1);
  const auto record = desk.load(book);
  Racket other = record.rackets[0].now;
  other.serial = "K-2201";
  Draft first(book, kPlayerBook, kActEdit);
  put_changes(first, record.rackets[0].seen, other);
  desk.append(first);
  const auto changed = desk.load(book);
  other.serial = "K-2202";
  Draft second(book, kPlayerBook, kActEdit);
  put_changes(second, changed.rackets[0].seen, other);
  desk.append(second);
  const auto all = held_words(*desk.ledger, desk.load(book), kEnglish, "UTC");
  CHECK(said(section(all, "Rackets")->parts.at(0), "serial number") == "K-2202");
  const auto* earlier = section(all, "Earlier answers");
  REQUIRE(earlier != nullptr);
  REQUIRE(earlier->parts.size() == 1);
  CHECK(earlier->parts[0].title.find("desk, Rackets: racket 1") != std::string::npos);
  REQUIRE(earlier->parts[0].rows.size() == 1);
  CHECK(earlier->parts[0].rows[0] == HeldRow{"serial number", "K-2201"});
}

TEST_CASE("answers that differ are told as an open question, each with who gave it") {
  Desk one, other("bench");
  const BookId book = one.first_drop_off(1);
  meet(one, other, book);
  const auto change = [&](Desk& desk, std::int64_t tenths) {
    const auto record = desk.load(book);
    Job job = record.jobs[0].now;
    job.mains_tension = Quantity{Decimal{tenths, 1}, Unit::kilogram_force};
    Draft draft(book, kPlayerBook, kActEdit);
    put_changes(draft, record.jobs[0].seen, job);
    desk.append(draft);
  };
  change(one, 241);
  change(other, 235);
  meet(one, other, book);
  const auto all = held_words(*one.ledger, one.load(book), kEnglish, "UTC");
  const auto* questions = section(all, "Open questions");
  REQUIRE(questions != nullptr);
  REQUIRE(questions->parts.at(0).rows.size() == 2);
  CHECK(holds_value({*questions}, "24.1\u00a0kg (2031-05-26 "));
  CHECK(holds_value({*questions}, "bench)"));
}

TEST_CASE("what events hold about the player is told, amounts in their currency, and nothing about others") {
  Desk desk;
  const BookId book = desk.first_drop_off(1), other = desk.add_player("Quillon", "Bram");
  const BookId event = desk.ledger->create_book_id();
  Draft draft(event, kEventBook, kActNewEvent);
  EventInfo info;
  info.name = "Harbour Open";
  put_new(draft, info, desk.clock.now());
  for (const BookId& whose : {book, other}) {
    Charge charge;
    charge.player = whose;
    charge.service = "labour";
    charge.amount_minor = whose == book ? 1850 : 9999;
    charge.currency = "EUR";
    put_new(draft, charge, desk.clock.now());
  }
  desk.append(draft);
  const auto all = held_words(*desk.ledger, desk.load(book), kEnglish, "UTC");
  const auto* at = section(all, "At Harbour Open");
  REQUIRE(at != nullptr);
  REQUIRE(at->parts.size() == 1);
  CHECK(at->parts[0].title == "Charges");
  CHECK(said(at->parts[0], "price") == "18.50\u00a0EUR");
  CHECK_FALSE(holds_value(all, "99.99"));
  CHECK_FALSE(holds_value(all, "Quillon"));
}

TEST_CASE("nothing that is stored in a player's book is left out of the words") {
  // Whatever a field of the player's book or of an event's lines about players is called, it has words in every language, and every text put
  // into such a field is found again.
  Desk desk;
  const BookId book = desk.add_player("Aldermoor", "Ines");
  Draft draft(book, kPlayerBook, kActEdit);
  int count = 0;
  std::vector<std::string> texts;
  const auto fill = [&]<class S>(S held) {
    for_each_field<S>([&](FieldTag, std::string_view field, bool, auto member) { fill_in(held.*member, field, ++count, texts); });
    put_new(draft, held, desk.clock.now());
  };
  fill(Racket{});
  fill(Setup{});
  fill(DropOff{});
  fill(Job{});
  fill(ConsentGiven{});
  fill(FrameFinding{});
  fill(BenchRecord{});
  fill(CheckResult{});
  fill(Reading{});
  fill(Photo{});
  fill(OtherName{});
  fill(CardTaken{});
  desk.append(draft);
  const auto all = held_words(*desk.ledger, desk.load(book), kEnglish, "UTC");
  CHECK(texts.size() > 60);
  for (const std::string& text : texts) {
    INFO(text);
    CHECK(holds_value(all, text));
  }
}

TEST_CASE("every field that may be told has words, in every language") {
  CHECK(held_phrasebook().gaps().empty());
  const auto named = []<class S>(const S&) {
    for_each_field<S>([&](FieldTag, std::string_view field, bool, auto) {
      INFO(field);
      CHECK((field == "after" || held_phrasebook().has("field." + std::string(field)) || desk_words().has("field." + std::string(field))));
    });
  };
  named(Person{}), named(Racket{}), named(Setup{}), named(DropOff{}), named(Job{}), named(StageMark{}), named(ConsentGiven{}), named(FrameFinding{});
  named(BenchRecord{}), named(CheckResult{}), named(Reading{}), named(Photo{}), named(BookLink{}), named(OtherName{}), named(CardTaken{});
  named(EntryListItem{}), named(Charge{}), named(Payment{}), named(DrawPlace{}), named(BenchPlace{}), named(BenchAsk{}), named(DayPlace{});
  named(StockItem{}), named(StockMove{});
  const auto chosen = []<class Enum>(Enum, const std::string& prefix) {
    for (const auto& choice : choices(Enum{})) {
      INFO(choice.name);
      CHECK((choice.value == Enum{} || held_phrasebook().has(prefix + std::string(choice.name))));
    }
  };
  chosen(Hand{}, "hand."), chosen(Rush{}, "rush."), chosen(EntryVia{}, "via."), chosen(FramePart{}, "part."), chosen(PaidBy{}, "paid.");
  chosen(StockWhy{}, "stock."), chosen(StringMaterial{}, "material."), chosen(LinkSaid{}, "link."), chosen(NameWhy{}, "why.");
}
