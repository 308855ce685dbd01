#include "sync/exchange/content_files.h"

#include <sys/stat.h>

#include <catch2/catch.hpp>
#include <fstream>
#include <thread>

#include "sync/exchange/station.h"
#include "tests/support/rooms.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

namespace fs = std::filesystem;

const BookId kIlse{{1}}, kBo{{2}};

Bytes block(std::uint8_t seed, std::size_t size = 1000) {
  Bytes out(size, seed);
  out[0] = 0xff;
  return out;
}

struct Contents {
  TemporaryFolder home;
  ContentFiles files{home / "photos", {.one = 4000, .all = 10'000}};

  [[nodiscard]] std::vector<fs::path> stored() const {
    std::vector<fs::path> out;
    std::error_code ignored;
    for (const auto& one : fs::recursive_directory_iterator(home / "photos", ignored))
      if (one.is_regular_file()) out.push_back(one.path());
    return out;
  }
  void used_before(const Digest& hash, int hours) {
    for (const auto& one : stored())
      if (one.filename().string().starts_with(to_hex(hash))) fs::last_write_time(one, fs::file_time_type::clock::now() - std::chrono::hours(hours));
  }
};

}  // namespace

TEST_CASE("what was stored is read as it was, from files that only their owner may read") {
  Contents room;
  const Digest hash = must(room.files.add(kIlse, block(1)));
  CHECK(hash == digest_of(block(1)));
  CHECK(must(room.files.read(kIlse, hash)) == block(1));
  CHECK(room.files.holds(kIlse, hash));
  CHECK_FALSE(room.files.holds(kBo, hash));
  CHECK(room.files.read(kBo, hash).error().code == FaultCode::not_found);
  CHECK(must(room.files.add(kIlse, block(1))) == hash);
  REQUIRE(room.stored().size() == 1);
  struct stat info {};
  REQUIRE(::stat(room.stored()[0].c_str(), &info) == 0);
  CHECK((info.st_mode & 077) == 0);
  CHECK(room.files.total() == 1000);
}

TEST_CASE("bytes that were changed on the disk are not believed") {
  Contents room;
  const Digest made = must(room.files.add(kIlse, block(1)));
  const Digest fetched = must(room.files.add(kIlse, block(2), ContentOrigin::fetched));
  for (const auto& one : room.stored()) std::ofstream(one, std::ios::binary) << "something else";
  CHECK(room.files.read(kIlse, made).error().code == FaultCode::damaged);
  CHECK(room.files.holds(kIlse, made));  // a person may look at it
  CHECK(room.files.read(kIlse, fetched).error().code == FaultCode::damaged);
  CHECK_FALSE(room.files.holds(kIlse, fetched));  // to be fetched again
  // A link to elsewhere is no file of ours.
  fs::create_symlink("/etc/passwd", room.home / "photos" / kIlse.hex() / to_hex(digest_of(block(3))));
  CHECK(room.files.read(kIlse, digest_of(block(3))).error().code == FaultCode::not_found);
}

TEST_CASE("what is too large or nothing is refused, and leaves nothing") {
  Contents room;
  CHECK(room.files.add(kIlse, {}).error().code == FaultCode::bad_input);
  CHECK(room.files.add(kIlse, block(1, 4001)).error().code == FaultCode::bad_input);
  CHECK(room.stored().empty());
}

TEST_CASE("what was fetched makes room, the least recently used first; what was made here stays") {
  Contents room;
  const Digest made = must(room.files.add(kIlse, block(1, 3000)));
  const Digest older = must(room.files.add(kBo, block(2, 3000), ContentOrigin::fetched));
  const Digest newer = must(room.files.add(kBo, block(3, 3000), ContentOrigin::fetched));
  room.used_before(made, 3);
  room.used_before(older, 2);
  room.used_before(newer, 1);
  (void)must(room.files.read(kBo, older));  // used now
  const Digest third = must(room.files.add(kBo, block(4, 3000), ContentOrigin::fetched));
  CHECK(room.files.holds(kBo, older));
  CHECK_FALSE(room.files.holds(kBo, newer));
  CHECK(room.files.holds(kIlse, made));
  // Made here too, it stays as well.
  CHECK(must(room.files.add(kBo, block(4, 3000))) == third);
  CHECK(must(room.files.add(kBo, block(2, 3000))) == older);
  const auto full = room.files.add(kIlse, block(5, 3000));
  CHECK(full.error().code == FaultCode::no_space);
  CHECK(room.files.holds(kBo, third));
  CHECK(room.files.total() == 9000);
}

TEST_CASE("parts are put together from where they stopped, and other bytes than those meant are thrown away") {
  Contents room;
  const Bytes whole = block(1, 2500);
  const Digest hash = digest_of(whole);
  const auto part = [&](std::uint64_t offset, std::size_t size) {
    return room.files.add_part(kIlse, hash, 2500, offset, ByteView(whole).subspan(static_cast<std::size_t>(offset), size));
  };
  CHECK(must(part(0, 1000)) == false);
  CHECK(room.files.part_held(kIlse, hash) == 1000);
  CHECK_FALSE(room.files.holds(kIlse, hash));
  CHECK(part(0, 1000).error().code == FaultCode::bad_input);
  CHECK(part(2000, 500).error().code == FaultCode::bad_input);
  {
    ContentFiles after_a_restart(room.home / "photos", {.one = 4000, .all = 10'000});
    CHECK(after_a_restart.part_held(kIlse, hash) == 1000);
  }
  CHECK(must(part(1000, 1000)) == false);
  CHECK(must(part(2000, 500)) == true);
  CHECK(must(room.files.read(kIlse, hash)) == whole);
  CHECK(room.files.part_held(kIlse, hash) == 0);

  const Digest other = digest_of(block(9));
  CHECK(room.files.add_part(kIlse, other, 1000, 0, block(8)).error().code == FaultCode::malformed);
  CHECK(room.files.part_held(kIlse, other) == 0);
  CHECK_FALSE(room.files.holds(kIlse, other));
  CHECK(room.files.add_part(kIlse, other, 4001, 0, block(8)).error().code == FaultCode::bad_input);
  CHECK(room.files.add_part(kIlse, other, 500, 0, block(8)).error().code == FaultCode::bad_input);
  CHECK(room.files.add_part(kIlse, other, 0, 0, {}).error().code == FaultCode::bad_input);
  CHECK(room.files.add_part(kIlse, other, ~std::uint64_t{0}, ~std::uint64_t{0} - 1, block(8)).error().code == FaultCode::bad_input);
}

TEST_CASE("a forgotten player's pictures are erased with the book, also after a crash in between") {
  TemporaryFolder home;
  const auto open = [&] {
    StationOptions options;
    options.folder = home / "data";
    options.registry = &model_registry();
    options.device_name = "desk";
    return must(Station::open(std::move(options)));
  };
  auto station = open();
  const auto player = [&] {
    const BookId book = station->ledger().create_book_id();
    Draft draft(book, kPlayerBook, kActNewPlayer);
    Person person;
    person.family_name = "Wendelmoor";
    (void)put_new(draft, person, kMonday);
    (void)must(station->ledger().append(draft));
    return book;
  };
  const BookId ilse = player(), bo = player();
  const Digest hash = must(station->contents().add(ilse, block(1)));
  (void)must(station->contents().add(bo, block(1)));
  (void)must(station->ledger().forget(ilse));
  CHECK_FALSE(station->contents().holds(ilse, hash));
  CHECK(station->contents().holds(bo, hash));
  CHECK_FALSE(fs::exists(home / "data" / "photos" / ilse.hex()));
  // As a crash would have left it.
  (void)must(station->contents().add(ilse, block(1)));
  station.reset();
  station = open();
  CHECK_FALSE(station->contents().holds(ilse, hash));
  CHECK(station->contents().holds(bo, hash));
}
