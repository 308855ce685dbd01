#include "app-qml/view/app_device.h"

#include <fstream>
#include <thread>

#include "sync/net/exchange_guest.h"
#include "tests/app/device_room.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE("a device keeps its ledger and its event from one start to the next") {
  AppRoom room;
  REQUIRE(room.device->isOpen());
  CHECK(room.device->event().isEmpty());
  const BookId harbour = room.addEvent("Harbour Open", "2031-05-19");
  const BookId lakeside = room.addEvent("Lakeside Cup", "2031-06-02");
  REQUIRE(waitUntil([&] { return room.device->eventName() == "Lakeside Cup"; }));
  CHECK(room.device->work().event() == lakeside);

  room.device->chooseEvent(harbour);
  CHECK(room.device->eventName() == "Harbour Open");
  CHECK(room.device->work().zone() == "Europe/Lisbon");
  room.stop();
  room.start();
  REQUIRE(room.device->isOpen());
  CHECK(room.device->eventName() == "Harbour Open");
  CHECK(room.device->work().who() == "Ines");
  CHECK(room.ledger().self().device == "Desk tablet");
}

TEST_CASE("many commits, also on another thread, are told once and on the thread of the screens") {
  AppRoom room;
  int told = 0;
  bool here = true;
  const auto screens = std::this_thread::get_id();
  QObject::connect(room.device.get(), &AppDevice::changed, [&] {
    ++told;
    here = here && std::this_thread::get_id() == screens;
  });
  std::thread other([&] {
    for (int i = 0; i < 20; ++i) room.addPlayer(named("Wendelmoor"));
  });
  other.join();
  REQUIRE(waitUntil([&] { return told > 0; }));
  CHECK(told == 1);
  CHECK(here);
  room.addPlayer(named("Okonjo"));
  CHECK(waitUntil([&] { return told == 2; }));
}

TEST_CASE("a second app on one folder is told so, and the first goes on") {
  AppRoom room;
  const AppDevice second(room.folder / "device", *room.settings, room.clock);
  CHECK_FALSE(second.isOpen());
  CHECK(second.fault().code == FaultCode::locked);
  CHECK_FALSE(second.faultWhat().isEmpty());
  CHECK_FALSE(second.faultToDo().isEmpty());
  room.addPlayer(named("Okonjo"));
}

TEST_CASE("a folder that cannot be used is a fault that names it, never a crash") {
  AppRoom room;
  room.stop();
  const auto file = room.folder / "device" / "ledger.db";
  SECTION("no database at all") {
    std::ofstream(file, std::ios::trunc | std::ios::binary) << std::string(8192, 'x');
    room.start();
    CHECK_FALSE(room.device->isOpen());
    CHECK(room.device->fault().code == FaultCode::damaged);
  }
  SECTION("damage in the middle, which shows only when the tables are read") {
    const auto size = std::filesystem::file_size(file);
    std::fstream out(file, std::ios::in | std::ios::out | std::ios::binary);
    out.seekp(static_cast<std::streamoff>(size / 4));
    out << std::string(size / 2, 'Z');
    out.close();
    room.start();
    CHECK_FALSE(room.device->isOpen());
    CHECK(room.device->fault().code == FaultCode::damaged);
    CHECK_FALSE(room.device->faultToDo().isEmpty());
  }
  SECTION("the folder is a file") {
    const AppDevice device(file, *room.settings, room.clock);
    CHECK_FALSE(device.isOpen());
    CHECK(device.faultWhere().contains("ledger.db"));
    CHECK_FALSE(device.faultWhat().isEmpty());
  }
}

TEST_CASE("a connection to nobody tells its fault and can be ended") {
  AppRoom room;
  ExchangeGuestOptions options;
  options.address = Address{"127.0.0.1", 9};  // the discard port, where nobody listens
  int told = 0;
  QObject::connect(room.device.get(), &AppDevice::connectionChanged, [&] { ++told; });
  room.device->connectWith(options);
  CHECK(told == 1);
  CHECK(waitUntil([&] { return room.device->connection().fault.has_value(); }));
  CHECK_FALSE(room.device->connection().connected);
  room.device->hangUp();
  CHECK(room.device->guest() == nullptr);
}

TEST_CASE("a book goes to the event server only as its player allows") {
  AppRoom room;
  const BookId harbour = room.addEvent("Harbour Open", "2031-05-19");
  REQUIRE(waitUntil([&] { return room.device->work().event() == harbour; }));
  const auto& may_leave = room.device->work().workplace().may_leave();
  const BookId quiet = room.addPlayer(named("Okonjo"));
  Person person = named("Wendelmoor");
  person.consent = ConsentChoice::withdrawn;
  const BookId withdrawn = room.addPlayer(person);
  CHECK(may_leave(harbour, kEventBook));
  CHECK(may_leave(quiet, kPlayerBook));
  CHECK_FALSE(may_leave(withdrawn, kPlayerBook));
  CHECK_FALSE(may_leave(room.ledger().create_book_id(), kKitBook));
}
