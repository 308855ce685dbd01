#include "core/people/arrival.h"

#include <algorithm>

#include "core/desk/consent.h"
#include "core/desk/event_book.h"
#include "core/desk/other_names.h"
#include "core/desk/person_books.h"
#include "tests/core/desk/desk_room.h"
#include "tests/support/processor_time.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

void import(Desk& desk, const std::string& csv) {
  if (!desk.ledger->book(desk.event)) {
    EventInfo event;
    event.name = "Lakeside Cup";
    desk.append(new_event(desk.event, event, desk.clock.now()));
  }
  const auto list = must(read_entry_list(csv));
  const auto drafts = import_entries(must(load_event(*desk.ledger, desk.event)), list.rows, desk.clock.now());
  for (const Draft& draft : drafts.drafts) desk.append(draft);
}

}  // namespace

TEST_CASE("each entry is known, likely or new, with what the player had last and how long ago") {
  Desk desk;
  const BookId player = desk.first_drop_off(2);
  desk.change<Person>(player, desk.load(player).person.id(), [](Person& person) {
    person.country = "NED";
    person.birth_year = 2002;
  });
  desk.clock.advance(20 * kDay);
  desk.event = desk.ledger->create_book_id();
  import(desk,
         "family_name,given_name,country,birth_year\nWENDELMOOR,Ilse,NED,2002\nWendelmor,Ilse,NED,"
         "2002\nOkonjo,Ada,NGR,2001\n");

  const auto lines = arrival(*desk.ledger, desk.event, desk.clock.now());
  REQUIRE(lines.size() == 3);
  CHECK(lines[0].item.family_name == "Okonjo");
  CHECK(lines[0].band == MatchBand::new_person);
  CHECK(lines[0].candidates.empty());
  CHECK(lines[1].band == MatchBand::known);
  REQUIRE(lines[1].candidates.size() == 1);
  const auto& known = lines[1].candidates.front();
  CHECK(known.match.book == player);
  CHECK(known.match.agreement(EvidenceField::country) == Likeness::same);
  CHECK(known.may_cross);
  REQUIRE(known.last);
  CHECK(known.last->tensions() == "25 / 24 kg");
  CHECK(known.last->mains_string == "Tarnbrook Silk");
  CHECK(known.last->event_name == "Harbour Open");
  CHECK(known.last->days == 20);
  CHECK(lines[2].band == MatchBand::likely);
}

TEST_CASE("two books of one person are asked about until they are linked, and are one candidate from then on") {
  Desk desk;
  std::vector<BookId> books;
  for (int i = 0; i < 2; ++i) {
    books.push_back(desk.first_drop_off(1));
    desk.change<Person>(books.back(), desk.load(books.back()).person.id(), [](Person& person) { person.country = "NED", person.birth_year = 2002; });
    desk.clock.advance(kDay);
  }
  desk.event = desk.ledger->create_book_id();
  import(desk, "family_name,given_name,country,birth_year\nWENDELMOOR,Ilse,NED,2002\n");
  CHECK(arrival(*desk.ledger, desk.event, desk.clock.now()).at(0).band == MatchBand::likely);
  for (const Draft& draft : must(say_of_books(*desk.ledger, books[0], books[1], LinkSaid::same_person, "Mara", desk.clock.now()))) desk.append(draft);
  const auto lines = arrival(*desk.ledger, desk.event, desk.clock.now());
  CHECK(lines.at(0).band == MatchBand::known);
  REQUIRE(lines.at(0).candidates.size() == 1);
  CHECK(lines.at(0).candidates[0].match.book == books[1]);  // where the newest job stands
  CHECK(index_of_players(*desk.ledger).size() == 1);
}

TEST_CASE("somebody is known at arrival by another name, and by the names of every linked book") {
  Desk desk;
  const BookId book = desk.first_drop_off(1);
  desk.change<Person>(book, desk.load(book).person.id(), [](Person& person) { person.country = "NED", person.birth_year = 2002; });
  desk.event = desk.ledger->create_book_id();
  import(desk, "family_name,given_name,country,birth_year\nOSTREL,Ilse,NED,2002\nQUILLBACK,Ilse,NED,2002\n");
  const auto lines = [&] { return arrival(*desk.ledger, desk.event, desk.clock.now()); };
  CHECK(lines().at(0).band != MatchBand::known);
  OtherName before;
  before.family_name = "Ostrel";
  before.given_name = "Ilse";
  before.why = NameWhy::former;
  desk.append(add_other_name(desk.load(book), before, "Mara", desk.clock.now()));
  const auto found = lines();
  REQUIRE_FALSE(found.at(0).candidates.empty());
  CHECK(found.at(0).candidates[0].match.book == book);
  CHECK(found.at(0).band == MatchBand::known);
  CHECK(found.at(1).band != MatchBand::known);
  // A second book under a third name, linked: one person, known by all three.
  desk.clock.advance(kDay);
  const BookId other = desk.first_drop_off(1);
  desk.change<Person>(other, desk.load(other).person.id(), [](Person& person) { person.family_name = "Quillback", person.country = "NED", person.birth_year = 2002; });
  for (const Draft& draft : must(say_of_books(*desk.ledger, book, other, LinkSaid::same_person, "Mara", desk.clock.now()))) desk.append(draft);
  for (std::size_t line : {0U, 1U}) {
    CHECK(lines().at(line).band == MatchBand::known);
    CHECK(lines().at(line).candidates.at(0).match.book == other);
  }
}

TEST_CASE("an entry that a person linked is known, whatever its name") {
  Desk desk;
  const BookId player = desk.add_player("Okonjo", "Ada");
  import(desk, "family_name,given_name\nLindgrove,Ida\n");
  const auto record = must(load_event(*desk.ledger, desk.event));
  desk.append(link_entries(record, std::vector{std::pair(record.entries[0].id(), player)}));
  const auto lines = arrival(*desk.ledger, desk.event, desk.clock.now());
  REQUIRE(lines.size() == 1);
  CHECK(lines[0].linked);
  CHECK(lines[0].band == MatchBand::known);
  CHECK(lines[0].candidates.front().match.book == player);
  CHECK_FALSE(lines[0].candidates.front().last);
}

TEST_CASE("who has withdrawn is recognised but marked as not crossing") {
  Desk desk;
  const BookId player = desk.first_drop_off(1);
  const auto choice = ConsentChoice::withdrawn;
  desk.append(give_consent(desk.load(player), choice,
                           {consent_text({}, choice), {}, desk.clock.now(), desk.ledger->self().id()}));
  import(desk, "family_name,given_name\nWendelmoor,Ilse\n");
  const auto lines = arrival(*desk.ledger, desk.event, desk.clock.now());
  REQUIRE(lines.front().candidates.size() == 1);
  CHECK_FALSE(lines.front().candidates.front().may_cross);
}

TEST_CASE("tensions are told in short as they were said") {
  LastSetup last;
  CHECK(last.tensions().empty());
  last.mains_tension = kg("24.50");
  CHECK(last.tensions() == "24.50 kg / ?");
  last.crosses_tension = lb("53");
  CHECK(last.tensions() == "24.50 kg / 53 lb");
  last.crosses_tension = kg("23");
  CHECK(last.tensions() == "24.50 / 23 kg");
}

TEST_CASE("a setup without a job is what the player had last") {
  Desk desk;
  const BookId player = desk.add_player("Okonjo", "Ada");
  CHECK_FALSE(last_setup(*desk.ledger, player, desk.clock.now()));
  Setup setup;
  static_cast<Agreed&>(setup) = day_wish();
  desk.add(player, setup);
  const auto last = last_setup(*desk.ledger, player, desk.clock.now());
  REQUIRE(last);
  CHECK(last->tensions() == "25 / 24 kg");
  CHECK_FALSE(last->at);
}

TEST_CASE("an entry list of 300 is matched against 5,000 players of a ledger in under a second") {
  Desk desk;
  static constexpr const char* kBegin[] = {"Bar", "Dov", "Fen", "Gil", "Hal",
                                           "Jor", "Kel", "Lun", "Mor", "Nev"};
  static constexpr const char* kEnd[] = {"ska", "sen",  "ard",   "ini",  "ova",
                                         "ez",  "berg", "quist", "oglu", "ian"};
  static constexpr const char* kGiven[] = {"Ada", "Bea",  "Cleo",  "Dora", "Enid",
                                           "Fay", "Gwen", "Hedda", "Ines", "Jutta"};
  std::string csv = "family_name,given_name,country,birth_year\n";
  for (int i = 0; i < 5'000; ++i) {
    Person person;
    person.family_name = std::string(kBegin[i % 10]) + kEnd[i / 10 % 10];
    person.given_name = kGiven[i / 100 % 10];
    person.country = i % 2 == 0 ? "SWE" : "POL";
    person.birth_year = 1985 + i % 23;
    Draft draft(desk.ledger->create_book_id(), kPlayerBook, kActNewPlayer);
    (void)put_new(draft, person, desk.clock.now());
    Job job;
    static_cast<Agreed&>(job) = day_wish();
    job.at = desk.clock.now();
    (void)put_new(draft, job, desk.clock.now());
    desk.append(draft);
    if (i % 17 == 0)
      csv += person.family_name + "," + person.given_name + "," + person.country + "," +
             std::to_string(*person.birth_year) + "\n";
  }
  import(desk, csv);
  // What it costs, not what else the machine was doing.
  const double begin = processor_ms();
  const std::vector<ArrivalLine> lines = arrival(*desk.ledger, desk.event, desk.clock.now());
  const double took = (processor_ms() - begin) / 1000;
  INFO(lines.size() << " entries against 5,000 players: " << took * 1000 << " ms");
  CHECK(lines.size() >= 290);
  for (const auto& line : lines) CHECK(line.band != MatchBand::new_person);
#ifdef NDEBUG
  CHECK(took < 1.0);
#else
  CHECK(took < 20.0);
#endif
}
