// A database file that something damaged: opening it gives a ledger or a fault, and what is read from it afterwards is a value or
// SQLite's exception, never a crash.

#include <SQLiteCpp/SQLiteCpp.h>

#include <filesystem>
#include <fstream>
#include <iterator>

#include "tests/fuzz/devices.h"
#include "tests/fuzz/target_list.h"
#include "tests/support/small_registry.h"

namespace weavelog::fuzz {
namespace {

namespace fs = std::filesystem;

LedgerOptions options(const fs::path& file, const WallClock& clock) {
  LedgerOptions out;
  out.file = file;
  out.registry = &testing::small_registry();
  out.clock = &clock;
  out.key = fixed_key(1);
  out.device_name = "one";
  return out;
}

Bytes sound() {
  const FuzzFolder home;
  const ManualClock clock(1'800'000'000'000);
  {
    auto ledger = Ledger::open(options(home / "seed.db", clock));
    must_hold(ledger.has_value(), "a new database");
    for (std::uint8_t book = 0; book < 2; ++book) {
      EntityState seen;
      seen.book = book_of(book);
      seen.id = box_of(0);
      seen.kind = testing::kBox;
      Draft draft(seen.book, testing::kShelf, testing::kEdit);
      draft.put(seen, testing::kLabel, std::string("drawer"));
      draft.put(seen, testing::kGuarded, Quantity{{245, 1}, Unit::kilogram_force});
      must_hold((*ledger)->append(draft).has_value(), "a first entry");
    }
  }
  std::ifstream in(home / "seed.db", std::ios::binary);
  return Bytes(std::istreambuf_iterator<char>(in), {});
}

}  // namespace

/// The input is changes to a sound file: places and bytes. So the fuzzer reaches pages that a header's checks would keep it from.
void run_database(ByteView input) {
  static const Bytes whole = sound();
  static const FuzzFolder home;
  Input in(input);
  Bytes bytes = whole;
  if (in.pick(16) == 15) bytes.resize(in.pick(bytes.size()));
  while (!in.empty() && !bytes.empty()) {
    const std::size_t at = ((static_cast<std::size_t>(in.byte()) << 16) | (static_cast<std::size_t>(in.byte()) << 8) | in.byte()) % bytes.size();
    bytes[at] = in.byte();
  }
  const fs::path file = home / "ledger.db";
  for (const char* end : {"", "-wal", "-shm", "-journal"}) fs::remove(file.string() + end);
  std::ofstream(file, std::ios::binary).write(reinterpret_cast<const char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
  const ManualClock clock(1'800'000'100'000);
  auto ledger = Ledger::open(options(file, clock));
  if (!ledger) {
    must_hold(!ledger.error().what.empty(), "a fault without words");
    return;
  }
  try {
    (void)(*ledger)->verify();
    for (const BookInfo& book : (*ledger)->books()) {
      (void)(*ledger)->entities(book.id);
      (void)(*ledger)->heads(book.id);
      (void)(*ledger)->missing(book.id, {}, 1 << 20);
    }
    (void)(*ledger)->open_questions();
    (void)(*ledger)->quarantine();
  } catch (const SQLite::Exception&) {
    // what reads of a damaged file are to throw
  }
  (void)(*ledger)->rebuild();
}

std::vector<Bytes> seeds_database() {
  // Some places of every kind of page, changed.
  std::vector<Bytes> out;
  for (std::size_t page = 0; page < 24; ++page) {
    Bytes one{0, 0};
    for (const std::size_t offset : {std::size_t{0}, std::size_t{3}, std::size_t{8}, std::size_t{101}, std::size_t{4000}}) {
      const std::size_t at = page * 4096 + offset;
      one.insert(one.end(), {static_cast<std::uint8_t>(at >> 16), static_cast<std::uint8_t>(at >> 8), static_cast<std::uint8_t>(at), 0x41});
      out.push_back(one);
    }
  }
  return out;
}

}  // namespace weavelog::fuzz
