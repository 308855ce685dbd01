#include "app-qml/view/exchange_model.h"

#include "core/store/database.h"
#include "sync/trust/proquint.h"
#include "tests/app/event_server.h"
#include "tests/app/room_jobs.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// A tablet whose clock is the machine's, as that of the server is.
struct ExchangeRoom : AppRoom {
  ExchangeRoom() { clock.set(WallClock::system().now()); }
};

QString text(const PairingCode& code) {
  return QString::fromStdString(code.text());
}

}  // namespace

TEST_CASE("a scanned code pairs the tablet; both sides say the same words; the event comes by itself") {
  EventServer server;
  ExchangeRoom room;
  ExchangeModel model(*room.device);
  CHECK(model.state() == ExchangeModel::Alone);
  REQUIRE(model.pair(server.codeFor(Role::head), "").isEmpty());
  REQUIRE(waitUntil([&] { return model.state() == ExchangeModel::Agreed; }));
  CHECK(model.host() == "Harbour server");
  CHECK(model.role() == ExchangeModel::Head);
  CHECK(model.trouble() == ExchangeModel::NoTrouble);
  CHECK(model.agreedWords().count('-') == 2);
  REQUIRE(waitUntil([&] { return room.device->eventName() == "Harbour"; }));
  REQUIRE(model.hosts().size() == 1);
  CHECK(model.hosts().first().toMap().value("chosen").toBool());
}

TEST_CASE(
    "five words and an address pair as well, and what is written then is sent and counted down to nothing") {
  EventServer server;
  ExchangeRoom room;
  ExchangeModel model(*room.device);
  const auto code = server.invite(Role::stringer);
  REQUIRE(
      model
          .pair(QString::fromStdString(spoken_code(code.secret)), QString::fromStdString(code.address.text()))
          .isEmpty());
  REQUIRE(waitUntil([&] { return model.state() == ExchangeModel::Agreed && room.device->work().event(); }));
  server.host.reset();
  REQUIRE(waitUntil([&] { return model.state() == ExchangeModel::Trying; }));
  const BookId book = room.ledger().create_book_id();
  Draft draft(book, kPlayerBook, kActNewPlayer);
  (void)put_new(draft, named("Okafor"), room.clock.now());
  REQUIRE(room.device->work().commit(draft, ""));
  REQUIRE(waitUntil([&] { return model.waiting() == 1; }));
  server.start(code.address.port);
  model.tryNow();
  REQUIRE(waitUntil([&] { return model.state() == ExchangeModel::Agreed && model.waiting() == 0; }));
  CHECK(server.station->ledger().book(book));
}

TEST_CASE("players that nobody ticked for the event server are counted, as long as they stay here alone") {
  EventServer server;
  ExchangeRoom room;
  const BookId one = room.addPlayer(named("Okafor")), other = room.addPlayer(named("Zeller"));
  ExchangeModel model(*room.device);
  CHECK(model.stayHere() == 0);  // there is no server that could miss them
  REQUIRE(model.pair(server.codeFor(Role::head), "").isEmpty());
  REQUIRE(waitUntil([&] { return model.state() == ExchangeModel::Agreed && model.stayHere() == 2; }));
  CHECK(model.waiting() == 0);
  REQUIRE(room.device->work().workplace().tick({one}));
  room.device->work().refresh();
  REQUIRE(waitUntil([&] { return model.stayHere() == 1; }));
  model.forgetHost(model.hosts().first().toMap().value("key").toString());
  CHECK(model.stayHere() == 0);
  CHECK_FALSE(room.device->work().workplace().is_ticked(other));
}

TEST_CASE("a code that is used, wrong or no code at all each says its own trouble, and nothing is paired") {
  EventServer server;
  ExchangeRoom room;
  ExchangeModel model(*room.device);
  CHECK_FALSE(model.pair("weavelog:pair?v=1", "").isEmpty());
  CHECK(model.pair("lusab-babad", "desk.local").startsWith("A code has five words"));
  CHECK(model.pair("lusab-babad-gutih-tuqad-gutuk", "desk.local").startsWith("Word 4 can"));
  CHECK_FALSE(model.pair("lusab-babad-gutih-tugad-gutuk", "").isEmpty());
  CHECK(model.state() == ExchangeModel::Alone);

  auto wrong = server.invite(Role::desk);
  wrong.secret[0] ^= 1;
  REQUIRE(model.pair(text(wrong), "").isEmpty());
  REQUIRE(waitUntil([&] { return model.trouble() != ExchangeModel::NoTrouble; }));
  CHECK(model.trouble() == ExchangeModel::WrongCode);
  CHECK_FALSE(model.troubleDetail().isEmpty());

  auto elsewhere = server.invite(Role::desk);
  elsewhere.fingerprint[0] ^= 1;
  REQUIRE(model.pair(text(elsewhere), "").isEmpty());
  REQUIRE(waitUntil([&] { return model.trouble() == ExchangeModel::WrongCertificate; }));

  auto nobody = server.invite(Role::desk);
  server.host.reset();
  REQUIRE(model.pair(text(nobody), "").isEmpty());
  REQUIRE(waitUntil([&] { return model.trouble() == ExchangeModel::Unreachable; }));
  CHECK(model.hosts().isEmpty());
}

TEST_CASE("a device that was taken off the list is told so, and a forgotten server is not tried again") {
  EventServer server;
  ExchangeRoom room;
  ExchangeModel model(*room.device);
  REQUIRE(model.pair(server.codeFor(Role::stringer), "").isEmpty());
  REQUIRE(waitUntil([&] { return model.state() == ExchangeModel::Agreed; }));
  const auto port = server.host->port();
  REQUIRE(server.station->devices().revoke(room.ledger().self().key));
  server.host.reset();
  server.start(port);
  model.tryNow();
  REQUIRE(waitUntil([&] { return model.trouble() == ExchangeModel::Refused; }));
  model.forgetHost(model.hosts().first().toMap().value("key").toString());
  CHECK(model.hosts().isEmpty());
  CHECK(model.state() == ExchangeModel::Alone);
  CHECK(room.device->guest() == nullptr);
}

TEST_CASE("a head gets a code for another tablet as a square and as words") {
  EventServer server;
  ExchangeRoom room;
  ExchangeModel model(*room.device);
  REQUIRE(model.pair(server.codeFor(Role::head), "").isEmpty());
  REQUIRE(waitUntil([&] { return model.state() == ExchangeModel::Agreed; }));
  model.invite(ExchangeModel::Desk);
  REQUIRE(waitUntil([&] { return !model.inviteWords().isEmpty(); }));
  CHECK(model.inviteRows().size() == model.inviteRows().first().toList().size());
  const auto code = must(PairingCode::parse(model.inviteCode().toStdString()));
  CHECK(code.fingerprint == server.host->fingerprint());
  const QString first = model.inviteCode();
  model.invite(ExchangeModel::Stringer);
  REQUIRE(waitUntil([&] { return !model.inviteCode().isEmpty() && model.inviteCode() != first; }));
}

TEST_CASE("a tablet goes back to its server by itself at the next start") {
  EventServer server;
  ExchangeRoom room;
  {
    ExchangeModel model(*room.device);
    REQUIRE(model.pair(server.codeFor(Role::stringer), "").isEmpty());
    REQUIRE(waitUntil([&] { return model.state() == ExchangeModel::Agreed; }));
  }
  room.stop();
  room.start();
  ExchangeModel model(*room.device);
  CHECK_FALSE(model.agreedWords().isEmpty());
  REQUIRE(waitUntil([&] { return model.state() == ExchangeModel::Agreed; }));
}

TEST_CASE("the server that was chosen last is gone back to, not the one that was paired last") {
  EventServer harbour, lakeside;
  ExchangeRoom room;
  const PublicKey first = harbour.station->ledger().self().key;
  {
    ExchangeModel model(*room.device);
    REQUIRE(model.pair(harbour.codeFor(Role::stringer), "").isEmpty());
    REQUIRE(waitUntil([&] { return model.state() == ExchangeModel::Agreed; }));
    REQUIRE(model.pair(lakeside.codeFor(Role::stringer), "").isEmpty());
    REQUIRE(waitUntil([&] { return room.device->work().workplace().host() == lakeside.station->ledger().self().key; }));
    model.chooseHost(QString::fromStdString(to_hex(first)));
    REQUIRE(room.device->work().workplace().host() == first);
  }
  room.stop();
  room.start();
  CHECK(room.device->work().workplace().host() == first);
}

TEST_CASE("a clock that is two hours off is told with its minutes") {
  EventServer server;
  ExchangeRoom room;
  room.clock.advance(-120 * kMinute);
  ExchangeModel model(*room.device);
  REQUIRE(model.pair(server.codeFor(Role::stringer), "").isEmpty());
  REQUIRE(waitUntil([&] { return model.clockAhead() != 0; }));
  CHECK(model.clockAhead() >= 119);
  CHECK(model.clockAhead() <= 121);
}

TEST_CASE("a device whose data was copied and one whose clock runs ahead are named") {
  ExchangeRoom room;
  ExchangeModel model(*room.device);
  CHECK(model.copies().isEmpty());
  CHECK(model.fastClocks().isEmpty());
  TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  const BookId book = room.ledger().create_book_id();
  const auto write = [&](const std::string& file, const std::string& name, UnixMs now) {
    ManualClock clock{now};
    LedgerOptions options;
    options.file = folder / file;
    options.registry = &model_registry();
    options.clock = &clock;
    options.key = key;
    options.device_name = "Bench 3";
    const auto ledger = must(Ledger::open(std::move(options)));
    Draft draft(book, kPlayerBook, kActNewPlayer);
    (void)put_new(draft, named(name), now);
    REQUIRE(ledger->append(draft));
    return ledger->missing(book, {}, 1 << 30);
  };
  const UnixMs now = room.clock.now();
  (void)write("one.db", "Okafor", now);
  std::filesystem::copy_file(folder / "one.db", folder / "two.db");
  // As an image of the whole disk would be: not to be told from the original.
  SQLite::Database((folder / "two.db").string(), SQLite::OPEN_READWRITE).exec("DELETE FROM meta WHERE key='place'");
  REQUIRE(room.ledger().ingest(write("one.db", "Okafor-Lind", now), 0));
  REQUIRE(room.ledger().ingest(write("two.db", "Okaforova", now + 86'400'000), 0));
  REQUIRE(waitUntil([&] { return model.copies().size() == 1; }));
  CHECK(model.copies().first().toMap().value("device").toString() == "Bench 3");
  CHECK(model.copies().first().toMap().value("books").toInt() == 1);
  CHECK(model.fastClocks().isEmpty());  // of the other branch nothing was taken
  const BookId later = room.ledger().create_book_id();
  ManualClock ahead{now + 3 * 86'400'000};
  LedgerOptions options;
  options.file = ":memory:";
  options.registry = &model_registry();
  options.clock = &ahead;
  options.device_name = "Desk 2";
  const auto fast = must(Ledger::open(std::move(options)));
  Draft draft(later, kPlayerBook, kActNewPlayer);
  (void)put_new(draft, named("Haugen"), ahead.now());
  REQUIRE(fast->append(draft));
  REQUIRE(room.ledger().ingest(fast->missing(later, {}, 1 << 30), 0));
  REQUIRE(waitUntil([&] { return model.fastClocks() == "Desk 2"; }));
}
