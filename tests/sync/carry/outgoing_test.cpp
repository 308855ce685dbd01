// A bundle that is brought to a stick which is full, pulled out, put in again.

#include "sync/carry/outgoing.h"

#include <cstdio>
#include <fstream>

#include "core/model/stock.h"
#include "sync/carry/bundle_sight.h"
#include "sync/carry/carried_file.h"
#include "sync/carry/receipt.h"
#include "tests/support/rooms.h"
#include "tests/support/small_disk.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

namespace fs = std::filesystem;
const PassphraseCost kCheap{1, 8};

std::unique_ptr<Station> open_station(const fs::path& folder, const std::string& name) {
  StationOptions options;
  options.folder = folder;
  options.device_name = name;
  options.registry = &model_registry();
  options.projections = {std::make_shared<ModelTables>()};
  return must(Station::open(std::move(options)));
}

BookId add_player(Station& station, const std::string& family, std::size_t note_bytes = 0) {
  const BookId book = station.ledger().create_book_id();
  Draft draft(book, kPlayerBook, kActNewPlayer);
  Person person;
  person.family_name = family;
  for (std::size_t i = 0; person.note.size() < note_bytes; ++i) person.note += to_hex(digest_of({as_bytes(family + std::to_string(i))})) + " ";
  (void)put_new(draft, person, station.ledger().wall().now());
  (void)must(station.ledger().append(draft));
  return book;
}

struct Tablet2 {
  TemporaryFolder home;
  std::unique_ptr<Station> station = open_station(home / "tablet", "Ilse's tablet");
  std::optional<OutgoingBundle> out{std::in_place, *station};

  Tablet2() {
    // Some megabytes that can't be packed much.
    for (int i = 0; i < 24; ++i) (void)add_player(*station, "Player" + std::to_string(i), 190'000);
  }
  [[nodiscard]] BundleWish wish() const {
    BundleWish out_wish;
    for (const BookInfo& book : station->ledger().books()) out_wish.books.push_back(book.id);
    out_wish.receiver = ForPassphrase{"ferry to the island", kCheap};
    return out_wish;
  }
  void restart() {
    out.reset();
    station.reset();
    station = open_station(home / "tablet", "Ilse's tablet");
    out.emplace(*station);
  }
};

TakeOptions taking(Station& station) {
  TakeOptions options;
  options.ledger = &station.ledger();
  options.devices = &station.devices();
  options.peers = &station.peers();
  options.pictures = &station.contents();
  return options;
}

TakenBundle take_file(Station& station, const fs::path& file) {
  return must(take_bundle(must(read_carried_file(file)), {nullptr, "ferry to the island"}, taking(station)));
}

std::size_t files_in(const fs::path& folder) {
  std::size_t count = 0;
  for ([[maybe_unused]] const auto& one : fs::directory_iterator(folder)) ++count;
  return count;
}

}  // namespace

TEST_CASE("a bundle arrives whole at its place, is remembered, and leaves nothing behind here") {
  Tablet2 tablet;
  const fs::path stick = tablet.home / "stick";
  fs::create_directory(stick);
  const fs::path target = free_name(stick, "everything");
  CHECK(target.filename() == "everything.weavelog");
  const Outgoing made = must(tablet.out->make(tablet.wish(), "whoever knows the words", target));
  CHECK(made.books == 24);
  CHECK_FALSE(fs::exists(target));
  CHECK_FALSE(tablet.out->make(tablet.wish(), "another", stick / "another"));
  std::uint64_t told = 0;
  const Outgoing arrived = must(tablet.out->bring([&](std::uint64_t bytes) {
    CHECK(bytes >= told);
    told = bytes;
    return true;
  }));
  CHECK(arrived.id == made.id);
  CHECK(told == made.bytes);
  CHECK(fs::file_size(target) == made.bytes);
  CHECK(files_in(stick) == 1);
  CHECK(files_in(tablet.station->folder() / "outgoing") == 0);
  CHECK_FALSE(tablet.out->waiting());
  REQUIRE(bundles_made(tablet.station->ledger(), tablet.station->devices()).size() == 1);
  CHECK(free_name(stick, "everything").filename() == "everything-2.weavelog");

  const auto colleague = open_station(tablet.home / "colleague", "Colleague");
  CHECK(take_file(*colleague, target).complete());
  CHECK(colleague->ledger().books().size() == 24);
}

TEST_CASE("a stick that is pulled out in the middle loses nothing: the copy goes on when it is back, also after a restart") {
  Tablet2 tablet;
  const fs::path stick = tablet.home / "stick";
  fs::create_directory(stick);
  const Outgoing made = must(tablet.out->make(tablet.wish(), "words", stick / "all.weavelog"));
  // Pulled out while it is copied: the folder is another one from there on.
  std::uint64_t reached = 0;
  const auto cut = tablet.out->bring([&](std::uint64_t bytes) {
    reached = bytes;
    if (bytes > made.bytes / 2) fs::rename(stick, tablet.home / "drawer");
    return bytes <= made.bytes / 2;
  });
  REQUIRE_FALSE(cut);
  const auto gone = tablet.out->bring();
  REQUIRE_FALSE(gone);
  CHECK(gone.error().code == FaultCode::not_found);
  CHECK_FALSE(gone.error().what_to_do.empty());
  REQUIRE(tablet.out->waiting());
  CHECK(files_in(tablet.home / "drawer") == 1);

  tablet.restart();
  REQUIRE(tablet.out->waiting());
  fs::rename(tablet.home / "drawer", stick);
  std::uint64_t begins = 0;
  bool first = true;
  (void)must(tablet.out->bring([&](std::uint64_t bytes) {
    if (std::exchange(first, false)) begins = bytes;
    return true;
  }));
  CHECK(begins == reached);
  const auto colleague = open_station(tablet.home / "colleague", "Colleague");
  CHECK(take_file(*colleague, stick / "all.weavelog").complete());
}

TEST_CASE("what a stick kept badly is written again: garbage, zeros, and a file that is longer than it should be") {
  Tablet2 tablet;
  const fs::path target = tablet.home / "all.weavelog";
  const Outgoing made = must(tablet.out->make(tablet.wish(), "words", target));
  (void)tablet.out->bring([&](std::uint64_t bytes) { return bytes < made.bytes / 2; });
  const fs::path part = part_of_carried_file(target);
  REQUIRE(fs::exists(part));
  SECTION("zeros at its end") { fs::resize_file(part, fs::file_size(part) + 700'000); }
  SECTION("longer than all of it") { fs::resize_file(part, made.bytes + 700'000); }
  SECTION("garbage in its middle") {
    std::fstream file(part, std::ios::in | std::ios::out | std::ios::binary);
    file.seekp(300'000);
    file << "garbage";
  }
  (void)must(tablet.out->bring());
  const auto colleague = open_station(tablet.home / "colleague", "Colleague");
  CHECK(take_file(*colleague, target).complete());
}

TEST_CASE("a full stick is said so, keeps what it has, and the copy goes on when there is room") {
  SmallDisk stick;
  if (stick.mount("2m") != 0) {
    std::puts("skipped: no small disk can be mounted here");
    return;
  }
  Tablet2 tablet;
  const Outgoing made = must(tablet.out->make(tablet.wish(), "words", stick.path() / "all.weavelog"));
  REQUIRE(made.bytes > 2U << 20);
  const auto full = tablet.out->bring();
  REQUIRE_FALSE(full);
  CHECK(full.error().code == FaultCode::no_space);
  CHECK(fs::file_size(part_of_carried_file(stick.path() / "all.weavelog")) > 1U << 20);
  stick.resize("64m");
  std::optional<std::uint64_t> begins;
  (void)must(tablet.out->bring([&](std::uint64_t bytes) {
    if (!begins) begins = bytes;
    return true;
  }));
  CHECK(begins > 1U << 20);
  CHECK(fs::file_size(stick.path() / "all.weavelog") == made.bytes);
}

TEST_CASE("what got its name before a cut is noted as arrived the next time, and once") {
  Tablet2 tablet;
  const fs::path stick = tablet.home / "stick";
  fs::create_directory(stick);
  const Outgoing made = must(tablet.out->make(tablet.wish(), "words", stick / "all.weavelog"));
  fs::copy_file(tablet.station->folder() / "outgoing" / (made.id.hex() + ".bundle"), stick / "all.weavelog");
  MadeBundle noted;
  noted.id = made.id;
  if (GENERATE(false, true)) REQUIRE(remember_bundle(tablet.station->ledger(), noted, "words"));
  tablet.restart();
  CHECK(must(tablet.out->bring()).id == made.id);
  CHECK_FALSE(tablet.out->waiting());
  CHECK(files_in(stick) == 1);
  CHECK(bundles_made(tablet.station->ledger(), tablet.station->devices()).size() == 1);
}

TEST_CASE("who is forgotten while a bundle is being copied does not go out with it") {
  Tablet2 tablet;
  const fs::path stick = tablet.home / "stick";
  fs::create_directory(stick);
  (void)must(tablet.out->make(tablet.wish(), "words", stick / "all.weavelog"));
  const BookId player = tablet.station->ledger().books().front().id;
  const std::uint64_t at = GENERATE(std::uint64_t{0}, std::uint64_t{1'000'000});
  bool forgotten = false;
  const auto gone = tablet.out->bring([&](std::uint64_t bytes) {
    if (bytes >= at && !std::exchange(forgotten, true)) REQUIRE(tablet.station->ledger().forget(player));
    return true;
  });
  REQUIRE_FALSE(gone);
  CHECK(gone.error().code == FaultCode::not_found);
  CHECK(files_in(stick) == 0);
  CHECK(bundles_made(tablet.station->ledger(), tablet.station->devices()).empty());
}

TEST_CASE("another place can be chosen for what waits, it can be given up, and forgetting a player erases it") {
  Tablet2 tablet;
  const fs::path stick = tablet.home / "stick", other = tablet.home / "other";
  fs::create_directory(stick);
  fs::create_directory(other);
  (void)must(tablet.out->make(tablet.wish(), "words", stick / "all.weavelog"));
  (void)tablet.out->bring([](std::uint64_t bytes) { return bytes < 1'000'000; });
  CHECK(files_in(stick) == 1);
  std::ofstream(other / "taken.weavelog") << "mine";
  const auto taken = tablet.out->bring_to(other / "taken.weavelog");
  REQUIRE_FALSE(taken);
  CHECK(taken.error().code == FaultCode::conflict);
  REQUIRE(tablet.out->bring_to(other / "all.weavelog"));
  CHECK(files_in(stick) == 0);
  (void)must(tablet.out->bring());
  CHECK(fs::exists(other / "all.weavelog"));

  (void)must(tablet.out->make(tablet.wish(), "words", stick / "all.weavelog"));
  (void)tablet.out->bring([](std::uint64_t bytes) { return bytes < 1'000'000; });
  REQUIRE(tablet.out->give_up());
  CHECK(files_in(stick) == 0);
  CHECK_FALSE(tablet.out->waiting());

  (void)must(tablet.out->make(tablet.wish(), "words", stick / "all.weavelog"));
  REQUIRE(tablet.station->ledger().forget(tablet.station->ledger().books().front().id));
  CHECK_FALSE(fs::exists(tablet.station->folder() / "outgoing"));
  CHECK_FALSE(tablet.out->waiting());
  const auto gone = tablet.out->bring();
  REQUIRE_FALSE(gone);
  CHECK(gone.error().code == FaultCode::not_found);
  CHECK(must(tablet.out->make(tablet.wish(), "words", stick / "all.weavelog")).books == 23);
}

TEST_CASE("a backup put back on a fresh tablet brings everything: private kit, who agreed to nothing, pictures, who was forgotten") {
  TemporaryFolder home;
  const auto old = open_station(home / "old", "Ilse's tablet");
  const BookId player = add_player(*old, "Okafor"), gone = add_player(*old, "Gone");
  Draft consent(player, kPlayerBook, kActEdit);
  const EntityState person = old->ledger().entities(player, kPerson).front();
  consent.put(person, tag_of<Person>(&Person::consent), to_value(ConsentChoice::withdrawn));
  (void)must(old->ledger().append(consent));
  Draft kit(old->ledger().create_book_id(), kKitBook, kActEdit);
  StockItem reel;
  reel.name = "Tarnbrook Silk";
  (void)put_new(kit, reel, old->ledger().wall().now());
  (void)must(old->ledger().append(kit));
  Bytes picture(150'000);
  for (std::size_t i = 0; i < picture.size(); ++i) picture[i] = static_cast<std::uint8_t>(i * i % 251);
  const Digest hash = must(old->contents().add(player, picture));
  const Digest fetched = must(old->contents().add(player, ByteView(picture).first(70'000), ContentOrigin::fetched));
  REQUIRE(old->ledger().forget(gone));

  BundleWish wish;
  for (const BookInfo& book : old->ledger().books()) wish.books.push_back(book.id);
  wish.receiver = ForPassphrase{"ferry to the island", kCheap};
  wish.backup = true;
  wish.pictures = &old->contents();
  wish.may_leave = [](const BookId&, BookKind) { return false; };
  const BundleSize size = must(bundle_size(old->ledger(), wish));
  CHECK(size.pictures == 2);
  CHECK(size.bytes > 220'000);
  Bytes file;
  const MadeBundle made = must(make_bundle(old->ledger(), old->devices(), wish, sink_of(file)));
  CHECK(made.left_out.empty());
  CHECK(static_cast<double>(made.bytes) == Approx(static_cast<double>(size.bytes)).epsilon(0.1));

  const auto fresh = open_station(home / "fresh", "New tablet");
  const OpenWith with{nullptr, "ferry to the island"};
  const BundleSight sight = must(look_into(source_of(file), with, taking(*fresh)));
  CHECK(sight.manifest.backup);
  CHECK_FALSE(sight.refused);
  CHECK(sight.pictures == 2);
  CHECK(sight.new_books == 2);
  CHECK(fresh->ledger().books().empty());

  // Interrupted at once, and gone on with: by then the tablet holds a player, and stands in for the old one.
  TakeOptions interrupted = taking(*fresh);
  interrupted.go_on = [](std::uint64_t) { return false; };
  (void)must(take_bundle(source_of(file), with, interrupted));
  const TakenBundle taken = must(take_bundle(source_of(file), with, taking(*fresh)));
  CHECK(taken.complete());
  CHECK(taken.pictures == 2);
  for (const BookInfo& book : old->ledger().books()) {
    CHECK(fresh->ledger().book(book.id)->heads == book.heads);
    CHECK(fresh->ledger().entities(book.id) == old->ledger().entities(book.id));
  }
  CHECK(must(fresh->contents().read(player, hash)) == picture);
  CHECK(fresh->contents().holds(player, fetched));
  CHECK(fresh->contents().made().size() == 2);
  CHECK(fresh->ledger().is_forgotten(gone));
  CHECK(fresh->ledger().verify().faults.empty());
  // Once more does no harm, and the old tablet takes its own.
  CHECK(must(take_bundle(source_of(file), with, taking(*fresh))).applied == 0);
  CHECK(must(take_bundle(source_of(file), with, taking(*old))).applied == 0);

  // A colleague who was told the passphrase gets nothing, and an older program would not take it for a bundle.
  const auto colleague = open_station(home / "colleague", "Colleague");
  (void)add_player(*colleague, "Mine");
  const auto refused = take_bundle(source_of(file), with, taking(*colleague));
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == FaultCode::refused);
  CHECK(must(look_into(source_of(file), with, taking(*colleague))).refused);
  CHECK(colleague->ledger().books().size() == 1);
  CHECK(file[16] == 2);
  CHECK(file[17] == 2);
}

TEST_CASE("a backup says of pictures that were gone or damaged when it was made, and so does who takes it in") {
  TemporaryFolder home;
  const auto old = open_station(home / "old", "Ilse's tablet");
  const BookId player = add_player(*old, "Okafor");
  std::vector<Digest> pictures;
  for (std::uint8_t i = 1; i <= 4; ++i) pictures.push_back(must(old->contents().add(player, Bytes(90'000, i))));
  const auto file_of = [&](const Digest& hash) { return home / "old" / "photos" / player.hex() / to_hex(hash); };
  std::ofstream(file_of(pictures[1]), std::ios::binary | std::ios::in | std::ios::out) << "scratched";
  BundleWish wish;
  wish.books = {player};
  wish.receiver = ForPassphrase{"ferry to the island", kCheap};
  wish.backup = true;
  wish.pictures = &old->contents();
  wish.go_on = [&](std::uint64_t) {
    fs::remove(file_of(pictures[2]));
    return true;
  };
  Bytes file;
  const MadeBundle made = must(make_bundle(old->ledger(), old->devices(), wish, sink_of(file)));
  CHECK(made.manifest.pictures == 4);
  CHECK(made.pictures == 2);
  CHECK(made.pictures_gone == 2);
  // And one that there is no place for.
  const auto fresh = open_station(home / "fresh", "New tablet");
  ContentFiles narrow(home / "narrow", {90'000, 100'000});
  TakeOptions options = taking(*fresh);
  options.pictures = &narrow;
  const TakenBundle taken = must(take_bundle(source_of(file), {nullptr, "ferry to the island"}, options));
  CHECK(taken.pictures == 1);
  CHECK(taken.pictures_failed == 1);
  CHECK(taken.pictures_gone == 2);
  CHECK_FALSE(taken.complete());
  ContentFiles small(home / "small", {80'000, 1'000'000});
  options.pictures = &small;
  CHECK(must(take_bundle(source_of(file), {nullptr, "ferry to the island"}, options)).pictures_failed == 2);
  const TakenBundle all = must(take_bundle(source_of(file), {nullptr, "ferry to the island"}, taking(*fresh)));
  CHECK(all.complete());
  CHECK(all.pictures == 2);
  CHECK(all.pictures_gone == 2);
}

TEST_CASE("looking into a bundle tells what would come, and takes nothing") {
  TemporaryFolder home;
  const auto desk = open_station(home / "desk", "Desk"), tablet = open_station(home / "tablet", "Tablet");
  const BookId one = add_player(*desk, "Okafor");
  (void)add_player(*desk, "Kova");
  BundleWish wish;
  for (const BookInfo& book : desk->ledger().books()) wish.books.push_back(book.id);
  wish.receiver = ForPassphrase{"ferry to the island", kCheap};
  const auto made = [&] {
    Bytes file;
    (void)must(make_bundle(desk->ledger(), desk->devices(), wish, sink_of(file)));
    return file;
  };
  const OpenWith with{nullptr, "ferry to the island"};
  (void)must(take_bundle(source_of(made()), with, taking(*tablet)));
  wish.books.push_back(add_player(*desk, "Wendel"));
  Draft more(one, kPlayerBook, kActEdit);
  Racket racket;
  racket.label = "1";
  (void)put_new(more, racket, desk->ledger().wall().now());
  (void)must(desk->ledger().append(more));

  std::size_t batches = 0;
  const Bytes file = made();
  const BundleSight sight = must(look_into(source_of(file), with, taking(*tablet), [&](const Batch&) { ++batches; }));
  CHECK(sight.whole());
  CHECK(sight.maker == KnownAs::author);
  CHECK(sight.kinds.at(kPlayerBook) == 3);
  CHECK(sight.books == 3);
  CHECK(sight.new_books == 1);
  CHECK(sight.entries == 4);
  CHECK(sight.new_entries == 2);
  CHECK(batches > 0);
  CHECK(tablet->ledger().books().size() == 2);
  const BundleSight half = must(look_into(source_of(ByteView(file).first(file.size() - 30)), with, taking(*tablet)));
  CHECK_FALSE(half.whole());
  CHECK(half.end == ChunkEnd::cut_short);
}
