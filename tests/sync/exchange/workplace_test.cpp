#include "sync/exchange/workplace.h"

#include "tests/support/rooms.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// A tablet that works for a server as a stringer.
struct PairedTablet {
  TemporaryFolder folder;
  std::unique_ptr<Station> station;
  std::unique_ptr<Workplace> work;
  PublicKey server = DeviceKey::generate().public_key();
  BookId event;

  PairedTablet() {
    StationOptions options;
    options.folder = folder / "tablet";
    options.device_name = "Bench 3";
    options.registry = &model_registry();
    options.projections = {std::make_shared<ModelTables>()};
    station = must(Station::open(std::move(options)));
    event = station->ledger().create_book_id();
    REQUIRE(station->devices().remember_host({server, "Harbour server", {"192.0.2.10", 26110}, {}, Role::stringer, kMonday}));
    REQUIRE(remember_event_of_host(station->ledger(), server, event));
    work = std::make_unique<Workplace>(*station, [](const BookId&, BookKind) { return true; });
    work->set_host(server);
  }
  [[nodiscard]] Outcome<Committed> make_event(const BookId& book) const {
    Draft draft(book, kEventBook, kActNewEvent);
    EventInfo info;
    info.name = "Lakeside Days";
    (void)put_new(draft, info, kMonday);
    return work->commit(draft);
  }
};

}  // namespace

TEST_CASE("the book of an event that a paired tablet makes itself is not put among those that go to the server") {
  PairedTablet tablet;
  const BookId own = tablet.station->ledger().create_book_id();
  REQUIRE(tablet.make_event(own));
  CHECK_FALSE(tablet.work->is_ticked(own));
  // A player's book is, as before; so is the server's own event.
  Draft player(tablet.station->ledger().create_book_id(), kPlayerBook, kActNewPlayer);
  Person person;
  person.family_name = "Wendelmoor";
  (void)put_new(player, person, kMonday);
  REQUIRE(tablet.work->commit(player));
  CHECK(tablet.work->is_ticked(player.book()));
  Draft entry(tablet.event, kEventBook, kActLinkEntry);
  EntryListItem item;
  item.family_name = "Okafor";
  (void)put_new(entry, item, kMonday);
  REQUIRE(tablet.work->commit(entry));
  CHECK(tablet.work->is_ticked(tablet.event));
}

TEST_CASE("a stringer at a server may make an event of their own, but not change the server's") {
  PairedTablet tablet;
  const auto refused = tablet.make_event(tablet.event);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == FaultCode::refused);
  CHECK(tablet.make_event(tablet.station->ledger().create_book_id()));
}
