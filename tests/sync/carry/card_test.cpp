// Player cards: what is on them, what they fit on, who made them, and what they may change where they are taken in.

#include <qrcodegen/qrcodegen.hpp>

#include "core/desk/player_record.h"
#include "core/log/archive.h"
#include "sync/carry/base45.h"
#include "sync/carry/card_intake.h"
#include "sync/carry/player_card.h"
#include "tests/support/published.h"
#include "tests/support/rooms.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

struct CardTablet : Tablet {
  std::unique_ptr<DeviceList> devices;
  explicit CardTablet(const std::string& name) : Tablet(name), devices(must(DeviceList::open(*ledger, ledger->key()))) {}

  BookId add_known_player() {
    const BookId book = ledger->create_book_id();
    Draft draft(book, kPlayerBook, kActNewPlayer);
    Person person;
    person.family_name = "Wendelmoor";
    person.given_name = "Ilse";
    person.native_name = "王小明";
    person.country = "NED";
    person.language = "fr";
    person.tension_unit = Unit::kilogram_force;
    person.birth_year = 2002;
    person.contact = "secret@example.org";
    person.note = "private";
    person.tour_number = "12345";
    (void)put_new(draft, person, clock.now());
    append(draft);
    return book;
  }
  EntityId add_setup(const BookId& book, const std::string& name, const char* tension = "25") {
    Setup setup;
    static_cast<Agreed&>(setup) = day_wish();
    setup.name = name;
    setup.mains_tension = kg(tension);
    return add(book, setup);
  }
  MadeCard card_of(const BookId& book) { return must(make_card(*ledger, book)); }
  CardFindings weigh(const std::string& text) { return must(weigh_card(*ledger, *devices, must(read_card(text)))); }
  Draft taking(const std::string& text, bool accept_newer = false) { return must(take_card(*ledger, *devices, must(read_card(text)), accept_newer)); }
};

FaultCode code_of(std::string_view text) {
  const auto card = read_card(text);
  REQUIRE_FALSE(card);
  CHECK_FALSE(card.error().what_to_do.empty());
  return card.error().code;
}

}  // namespace

TEST_CASE("a card says who the player is and what holds now, as it was said, and nothing private") {
  CardTablet desk("Desk 1");
  const BookId book = desk.add_known_player();
  desk.add_setup(book, "day");
  Setup night;
  night.name = "night";
  night.mains_tension = lb("54.50");
  desk.add(book, night);
  Racket racket;
  racket.label = "2";
  racket.maker = "Orrin";
  racket.model = "Seven";
  racket.serial = "S-1234";
  desk.add(book, racket);
  const MadeCard made = desk.card_of(book);
  CHECK(made.text.starts_with("WEAVELOG:CARD:"));
  const PlayerCard card = must(read_card(made.text + "\n"));
  CHECK(card.key == desk.ledger->self().key);
  CHECK(card.device == "Desk 1");
  CHECK(card.book == book);
  CHECK(card.person().family_name == "Wendelmoor");
  CHECK(card.person().native_name == "王小明");
  CHECK(card.person().country == "NED");
  CHECK(card.person().language == "fr");
  CHECK(card.person().tension_unit == Unit::kilogram_force);
  CHECK_FALSE(card.person().birth_year);
  CHECK(card.person().contact.empty());
  CHECK(card.person().note.empty());
  REQUIRE(card.setups().size() == 2);
  CHECK(card.setups()[0].name == "night");
  CHECK(text_of(*card.setups()[0].mains_tension) == "54.50 lb");
  CHECK(static_cast<const Agreed&>(card.setups()[1]) == day_wish());
  REQUIRE(card.rackets().size() == 1);
  CHECK(card.rackets()[0].model == "Seven");
  CHECK(card.rackets()[0].serial.empty());
  CHECK(card.setups_left_out == 0);
  const auto payload = from_base45(std::string_view(made.text).substr(14));
  CHECK(as_text(*payload).find("secret@") == std::string_view::npos);
}

TEST_CASE("cards fit a QR code of version 25 at level M however much the player has, newest setups first") {
  // ISO/IEC 18004, table 7 (as in fixtures/published/qr_capacity.csv): version 25, level M, alphanumeric mode.
  for (const auto& row : test::published_rows("qr_capacity.csv"))
    if (row.at("version") == "25" && row.at("ecc") == "M") CHECK(row.at("alphanumeric") == std::to_string(kMaxCardText));
  CardTablet desk("A desk with quite a long name that goes on");
  const BookId book = desk.add_known_player();
  for (int i = 1; i <= 20; ++i) {
    desk.add_setup(book, "setup " + std::to_string(i));
    Racket racket;
    racket.label = std::to_string(i);
    racket.maker = "Orrin";
    desk.add(book, racket);
    const MadeCard made = desk.card_of(book);
    CHECK(made.text.size() <= kMaxCardText);
    CHECK(made.card.setups().size() + made.card.setups_left_out == static_cast<std::size_t>(i));
    CHECK(made.card.rackets().size() + made.card.rackets_left_out == static_cast<std::size_t>(i));
    REQUIRE_FALSE(made.card.setups().empty());
    CHECK(made.card.setups()[0].name == "setup " + std::to_string(i));
    const auto code = qrcodegen::QrCode::encodeSegments(qrcodegen::QrSegment::makeSegments(made.text.c_str()), qrcodegen::QrCode::Ecc::MEDIUM, 1,
                                                        25, -1, false);
    CHECK(code.getVersion() <= 25);
  }
  const MadeCard full = desk.card_of(book);
  CHECK(full.card.setups_left_out > 0);
  CHECK(full.card.setups().size() >= 2);
  CHECK(full.card.rackets().size() >= 4);
  // The limit is where it is said to be.
  const std::string most(kMaxCardText, 'A'), more(kMaxCardText + 1, 'A');
  const auto version = [](const std::string& text) {
    const auto segments = qrcodegen::QrSegment::makeSegments(text.c_str());
    return qrcodegen::QrCode::encodeSegments(segments, qrcodegen::QrCode::Ecc::MEDIUM, 1, 40, -1, false).getVersion();
  };
  CHECK(version(most) == 25);
  CHECK(version(more) == 26);
}

TEST_CASE("of a player without setups the card holds what was strung last") {
  CardTablet desk("Desk 1"), other("Bench");
  const BookId book = desk.add_known_player();
  Job job;
  static_cast<Agreed&>(job) = day_wish();
  job.at = desk.clock.now();
  const EntityId id = desk.add(book, job);
  const MadeCard made = desk.card_of(book);
  REQUIRE(made.card.setups().size() == 1);
  CHECK(static_cast<const Agreed&>(made.card.setups()[0]) == day_wish());
  other.append(other.taking(made.text));
  meet(desk, other, book);
  CHECK(desk.ledger->entity(book, id)->kind == kJob);
  CHECK(must(load_player(*other.ledger, book)).jobs.size() == 1);
  CHECK(must(load_player(*other.ledger, book)).setups.size() == 1);
  CHECK(other.ledger->verify().faults.empty());
}

TEST_CASE("every kind of wrong card has a fault of its own") {
  CardTablet desk("Desk 1");
  const BookId book = desk.add_known_player();
  desk.add_setup(book, "day");
  const std::string text = desk.card_of(book).text;
  CHECK(code_of("") == FaultCode::bad_input);
  CHECK(code_of("weavelog:pair?v=1") == FaultCode::bad_input);
  CHECK(code_of("WEAVELOG:CARD:") == FaultCode::malformed);
  CHECK(code_of(text.substr(0, text.size() - 1)) == FaultCode::malformed);
  CHECK(code_of(text + std::string(5000, 'A')) == FaultCode::malformed);
  for (std::size_t cut = 14; cut < text.size(); cut += 7) CHECK(code_of(text.substr(0, cut)) == FaultCode::malformed);
  for (std::size_t at = 14; at < text.size(); ++at) {
    std::string changed = text;
    changed[at] = changed[at] == 'A' ? 'B' : 'A';
    INFO(at);
    CHECK(code_of(changed) == FaultCode::malformed);
  }
  // Whole, but signed by another key than it names.
  const DeviceKey thief = DeviceKey::generate();
  const auto payload = *from_base45(std::string_view(text).substr(14));
  Bytes body(payload.begin(), payload.end() - 68);
  CHECK(code_of(sign_card(body, thief)) == FaultCode::untrusted);
  body[1] = 2;
  CHECK(code_of(sign_card(body, desk.ledger->key())) == FaultCode::newer);
  // A newer one that this program may read, with more at its end.
  body[0] = 2;
  body[1] = 1;
  body.push_back(7);
  CHECK(read_card(sign_card(body, desk.ledger->key())));
  body[0] = 1;
  CHECK(code_of(sign_card(body, desk.ledger->key())) == FaultCode::malformed);
}

TEST_CASE("a stranger's player comes in from a card, with who signed it and when") {
  CardTablet desk("Desk 1"), bench("Bench 2");
  const BookId book = desk.add_known_player();
  const EntityId setup = desk.add_setup(book, "day");
  const std::string text = desk.card_of(book).text;
  const CardFindings findings = bench.weigh(text);
  CHECK(findings.signer == KnownAs::stranger);
  CHECK_FALSE(findings.held);
  CHECK_FALSE(findings.taken);
  CHECK(findings.count(CardVerdict::fresh) == findings.lines.size());
  bench.append(bench.taking(text));
  const PlayerRecord record = must(load_player(*bench.ledger, book));
  CHECK(record.person.now.family_name == "Wendelmoor");
  REQUIRE(record.setup(setup) != nullptr);
  CHECK(static_cast<const Agreed&>(record.setup(setup)->now) == day_wish());
  REQUIRE(record.cards.size() == 1);
  CHECK(record.cards[0].now.device == "Desk 1");
  CHECK(ByteView(record.cards[0].now.key).size() == 32);
  CHECK(std::equal(record.cards[0].now.key.begin(), record.cards[0].now.key.end(), desk.ledger->self().key.begin()));
  CHECK(record.cards[0].now.made_at == desk.card_of(book).card.made);

  // The same card again does nothing.
  CHECK(bench.weigh(text).taken);
  CHECK(bench.taking(text, true).empty());
  // Two devices that took it in, and the book itself, come to one and the same without a question.
  CardTablet third("Bench 3");
  third.append(third.taking(text));
  meet(bench, third, book);
  meet(bench, desk, book);
  CHECK(bench.ledger->open_questions(book).empty());
  CHECK(desk.ledger->open_questions(book).empty());
  CHECK(must(load_player(*bench.ledger, book)).setups.size() == 1);
  CHECK(must(load_player(*bench.ledger, book)).cards.size() == 1);
  CHECK(bench.ledger->verify().faults.empty());
}

TEST_CASE("what is newer here stays, what is newer on the card waits for a person") {
  CardTablet desk("Desk 1"), bench("Bench 2");
  const BookId book = desk.add_known_player();
  const EntityId setup = desk.add_setup(book, "day");
  meet(desk, bench, book);
  const std::string old_card = desk.card_of(book).text;
  bench.clock.advance(kHour);
  bench.change<Setup>(book, setup, [](Setup& now) { now.mains_tension = kg("23"); });
  const CardFindings older = bench.weigh(old_card);
  REQUIRE(older.lines.size() == 1);
  CHECK(older.lines[0].verdict == CardVerdict::older);
  CHECK(older.lines[0].guarded);
  CHECK(text_of(older.lines[0].ours) == "23 kg");
  CHECK(text_of(older.lines[0].cards) == "25 kg");
  CHECK(older.lines[0].of == "day");
  bench.append(bench.taking(old_card, true));  // the note of the card only
  CHECK(text_of(*must(load_player(*bench.ledger, book)).setup(setup)->now.mains_tension) == "23 kg");

  desk.clock.advance(2 * kHour);
  desk.change<Setup>(book, setup, [](Setup& now) {
    now.mains_tension = kg("24.5");
    now.crosses_string.clear();
  });
  const std::string fresh_card = desk.card_of(book).text;
  CHECK(bench.weigh(fresh_card).count(CardVerdict::newer) == 2);
  bench.append(bench.taking(fresh_card));
  CHECK(text_of(*must(load_player(*bench.ledger, book)).setup(setup)->now.mains_tension) == "23 kg");
  bench.append(bench.taking(fresh_card, true));
  const PlayerRecord after = must(load_player(*bench.ledger, book));
  CHECK(text_of(*after.setup(setup)->now.mains_tension) == "24.5 kg");
  CHECK(after.setup(setup)->now.crosses_string.empty());
  CHECK(bench.weigh(fresh_card).lines.empty());
}

TEST_CASE("values from a card are as old as the card, not as its taking in") {
  CardTablet desk("Desk 1"), bench("Bench 2");
  const BookId book = desk.add_known_player();
  const EntityId setup = desk.add_setup(book, "day");
  const std::string first = desk.card_of(book).text;
  desk.clock.advance(kHour);
  desk.change<Setup>(book, setup, [](Setup& now) { now.mains_tension = kg("24"); });
  bench.clock.advance(2 * kHour);
  bench.append(bench.taking(first));
  CHECK(bench.weigh(desk.card_of(book).text).count(CardVerdict::newer) == 1);
  // And on a card that the bench makes of them.
  CHECK(bench.card_of(book).card.items[1].changed <= must(read_card(first)).made);
  CHECK(desk.weigh(bench.card_of(book).text).count(CardVerdict::older) == 1);
}

TEST_CASE("an open question is not decided by a card, wherever it is open") {
  CardTablet desk("Desk 1"), bench("Bench 2"), third("Bench 3");
  const BookId book = desk.add_known_player();
  const EntityId setup = desk.add_setup(book, "day");
  meet(desk, bench, book);
  desk.change<Setup>(book, setup, [](Setup& now) { now.mains_tension = kg("24"); });
  bench.change<Setup>(book, setup, [](Setup& now) { now.mains_tension = kg("26"); });
  meet(desk, bench, book);
  REQUIRE(desk.ledger->open_questions(book).size() == 1);
  const MadeCard made = desk.card_of(book);
  CHECK_FALSE(made.card.setups()[0].mains_tension);
  third.append(third.taking(made.text));
  CHECK_FALSE(must(load_player(*third.ledger, book)).setup(setup)->now.mains_tension);
  CHECK(bench.weigh(made.text).count(CardVerdict::question) == 1);
  bench.append(bench.taking(made.text, true));
  CHECK(bench.ledger->open_questions(book).size() == 1);
}

TEST_CASE("cards of players who withdrew, were forgotten or agreed to one room only are neither made nor taken") {
  CardTablet desk("Desk 1"), bench("Bench 2");
  const BookId book = desk.add_known_player();
  const std::string text = desk.card_of(book).text;
  bench.append(bench.taking(text));
  for (const ConsentChoice choice : {ConsentChoice::withdrawn, ConsentChoice::this_room}) {
    const EntityId person = must(load_player(*bench.ledger, book)).person.id();
    bench.change<Person>(book, person, [&](Person& now) { now.consent = choice; });
    CHECK(make_card(*bench.ledger, book).error().code == FaultCode::refused);
    CHECK(weigh_card(*bench.ledger, *bench.devices, must(read_card(text))).error().code == FaultCode::refused);
    CHECK(take_card(*bench.ledger, *bench.devices, must(read_card(text)), true).error().code == FaultCode::refused);
  }
  CardTablet third("Bench 3");
  REQUIRE(third.ledger->forget(book, kPlayerBook));
  const auto forgotten = take_card(*third.ledger, *third.devices, must(read_card(text)), false);
  REQUIRE_FALSE(forgotten);
  CHECK(forgotten.error().code == FaultCode::refused);
  CHECK(forgotten.error().what.find("forgotten") != std::string::npos);
  CHECK(make_card(*third.ledger, book).error().code == FaultCode::refused);
  CHECK(make_card(*third.ledger, make_id<BookId>(kMonday)).error().code == FaultCode::not_found);
}

TEST_CASE("a revoked device's card is told apart from a forged one and from a stranger's") {
  CardTablet desk("Desk 1"), host("Host");
  const BookId book = desk.add_known_player();
  const std::string text = desk.card_of(book).text;
  CHECK(host.weigh(text).signer == KnownAs::stranger);
  const auto invitation = must(host.devices->invite(Role::stringer));
  REQUIRE(host.devices->admit(number_of(invitation.secret), {}, pairing_proof(pairing_key(invitation.secret), PairingSide::guest, {}),
                              desk.ledger->self().key, "Desk 1"));
  CHECK(host.weigh(text).signer == KnownAs::member);
  REQUIRE(host.devices->revoke(desk.ledger->self().key));
  const auto revoked = weigh_card(*host.ledger, *host.devices, must(read_card(text)));
  REQUIRE_FALSE(revoked);
  CHECK(revoked.error().code == FaultCode::refused);
  CHECK(revoked.error().what.find("revoked") != std::string::npos);
  CHECK(desk.weigh(text).signer == KnownAs::self);
}

TEST_CASE("a card that says more than cards do is believed only in what they may say") {
  CardTablet bench("Bench 2");
  const DeviceKey liar = DeviceKey::generate();
  PlayerCard card;
  card.device = "liar";
  card.made = kMonday;
  card.book = make_id<BookId>(kMonday);
  CardItem person{kPerson, make_id<EntityId>(kMonday), kMonday, {}, {}};
  person.values = {{tag_of<Person>(&Person::family_name), std::string("Okonjo")},
                   {tag_of<Person>(&Person::country), std::int64_t{7}},  // of another type
                   {tag_of<Person>(&Person::consent), std::int64_t{3}}};
  card.items = {person, {kJob, make_id<EntityId>(kMonday), kMonday, {{FieldTag{501}, std::string("x")}}, {}}};
  const PlayerCard read = must(read_card(write_card(card, liar)));
  REQUIRE(read.items.size() == 1);
  CHECK(read.items[0].values.size() == 1);
  bench.append(bench.taking(write_card(card, liar)));
  CHECK(must(load_player(*bench.ledger, card.book)).person.now.consent == ConsentChoice::unsaid);
  // An id of something else here.
  card.items[0].id = bench.ledger->entities(card.book, kCardTaken)[0].id;
  card.items[0].values = {{tag_of<Person>(&Person::given_name), std::string("Ada")}};
  bench.append(bench.taking(write_card(card, liar)));
  CHECK(bench.ledger->verify().faults.empty());
  // A clock far ahead is told.
  card.made = card.items[0].changed = kMonday + 30 * kDay;
  CHECK(bench.weigh(write_card(card, liar)).ahead);
  card.items[0].values = {{tag_of<Person>(&Person::given_name), std::string("\xff\xfe")}};
  CHECK(read_card(write_card(card, liar)).error().code == FaultCode::malformed);
}
