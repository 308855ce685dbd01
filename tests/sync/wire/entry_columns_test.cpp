#include "sync/wire/entry_columns.h"

#include <catch2/catch.hpp>
#include <map>
#include <random>

#include "core/base/id.h"

using namespace weavelog;

namespace {

/// Draws entries of all shapes: every kind of value, new and known ids, expected and unexpected dots.
class Maker {
 public:
  explicit Maker(std::uint32_t seed) : draw_(seed) {
    for (auto& author : batch_.authors = std::vector<AuthorCard>(3)) {
      author.key[0] = static_cast<std::uint8_t>(draw_());
      author.incarnation = draw_();
    }
    batch_.books.resize(2);
  }

  Batch batch(std::size_t entries) {
    for (std::size_t i = 0; i < entries; ++i) add();
    return batch_;
  }

 private:
  std::uint64_t below(std::uint64_t end) { return draw_() % end; }

  EntityId entity() {
    if (ids_.empty() || below(3) == 0) ids_.push_back(make_id<EntityId>(1'780'000'000'000 + static_cast<std::int64_t>(below(5000))));
    return ids_[below(ids_.size())];
  }

  Value value() {
    switch (below(9)) {
      case 0: return std::monostate{};
      case 1: return below(2) == 1;
      case 2: return static_cast<std::int64_t>(below(3) == 0 ? draw_() : 1'780'000'000'000 + below(1'000'000));
      case 3: return Quantity{Decimal{static_cast<std::int64_t>(draw_()), static_cast<std::uint8_t>(below(10))}, static_cast<Unit>(below(250))};
      case 4: return std::string(below(40), 'x');
      case 5: return Bytes(below(2) == 0 ? 16 : below(50), static_cast<std::uint8_t>(draw_()));
      case 6: return entity();
      case 7: return BookId{entity().bytes};
      default: return UnknownValue{static_cast<std::uint8_t>(40 * 4 + 2), Bytes(below(30), 7)};
    }
  }

  void add() {
    BatchEntry held;
    held.book = static_cast<std::uint32_t>(below(2));
    held.author = static_cast<std::uint32_t>(below(3));
    held.seq = below(5) == 0 ? 1 + below(1'000'000) : ++seqs_[held.book * 3 + held.author];
    Entry entry;
    entry.seq = held.seq;
    entry.stamp.raw = (1'780'000'000'000 + below(1000)) << 16 | below(3);
    entry.schema = static_cast<std::uint32_t>(below(3));
    entry.action = static_cast<ActionKind>(below(70'000) % 65'536);
    const AuthorId author = batch_.authors[held.author].id();
    for (auto n = 1 + below(6); n > 0; --n) {
      Write write{entity(), static_cast<EntityKind>(below(4)), static_cast<FieldTag>(below(3) == 0 ? below(0xffffffff) : below(9)), value(), {}};
      for (auto dots = below(3); dots > 0; --dots)
        write.replaces.push_back({below(2) == 0 && held.seq > 1 ? author : AuthorId{entity().bytes}, 1 + below(held.seq), static_cast<std::uint32_t>(below(9))});
      for (Dot& dot : write.replaces)
        if (dot.author == author) dot.seq = std::min(dot.seq, held.seq - 1);
      entry.writes.push_back(std::move(write));
    }
    held.body = encode_entry(entry, author);
    if (below(7) == 0) held.body[below(held.body.size())] ^= 0x15;  // what can't be read travels whole
    batch_.entries.push_back(std::move(held));
  }

  std::mt19937_64 draw_;
  Batch batch_;
  std::vector<EntityId> ids_;
  std::map<std::uint64_t, std::uint64_t> seqs_;
};

Bytes packed(const Batch& batch) {
  Bytes out;
  OutArchive ar(out);
  save_entries(ar, batch);
  return out;
}

void unpack(ByteView bytes, Batch& batch) {
  InArchive ar(bytes);
  load_entries(ar, batch);
  ar.expect_end();
}

}  // namespace

TEST_CASE("every entry comes out of its columns byte for byte, also one that can't be read") {
  for (std::uint32_t seed = 0; seed < 200; ++seed) {
    const Batch batch = Maker(seed).batch(1 + seed);
    Batch back;
    back.authors = batch.authors;
    back.books = batch.books;
    unpack(packed(batch), back);
    REQUIRE(back.entries == batch.entries);
  }
}

TEST_CASE("columns cut short or changed are malformed or other entries, never more") {
  std::mt19937 draw(5);
  const Batch batch = Maker(3).batch(60);
  const Bytes whole = packed(batch);
  Batch back;
  back.authors = batch.authors;
  back.books = batch.books;
  int faults = 0;
  for (int i = 0; i < 3000; ++i) {
    Bytes changed = whole;
    if (i % 3 == 0) {
      changed.resize(draw() % changed.size());
    } else {
      for (int n = 1 + static_cast<int>(draw() % 4); n > 0; --n) changed[draw() % changed.size()] = static_cast<std::uint8_t>(draw());
    }
    try {
      unpack(changed, back);
      REQUIRE(back.entries.size() <= whole.size());
    } catch (const ArchiveError&) {
      ++faults;
    }
  }
  CHECK(faults > 1000);
}

TEST_CASE("what follows from earlier entries is hardly said") {
  Batch batch;
  batch.authors.resize(1);
  batch.books.resize(1);
  const AuthorId author = batch.authors[0].id();
  const EntityId entity = make_id<EntityId>(1'780'000'000'000);
  std::size_t bodies = 0;
  for (std::uint64_t seq = 1; seq <= 200; ++seq) {
    Entry entry;
    entry.seq = seq;
    entry.stamp = Stamp::of(1'780'000'000'000 + seq * 7, 0);
    entry.writes.push_back({entity, EntityKind{1}, FieldTag{5}, static_cast<std::int64_t>(seq % 50), {}});
    if (seq > 1) entry.writes.back().replaces = {{author, seq - 1, 0}};
    batch.entries.push_back({0, 0, seq, encode_entry(entry, author)});
    bodies += batch.entries.back().body.size();
  }
  CHECK(packed(batch).size() * 2 < bodies);
}

namespace {

/// One entry with one write of author 0 in book 0, which replaces what `dots` says for each of its writes; as its bytes stand in the columns.
Bytes entry_that_replaces(const std::vector<std::size_t>& dots) {
  std::array<Bytes, 11> fixed;
  Bytes kinds;
  const auto put = [&](std::size_t column, std::uint64_t number) { OutArchive(fixed[column]).varint(number); };
  const auto new_id = [&] {
    put(5, 0);
    put(6, 0);
    put(6, 0);
    put(6, 2);  // each ends in one more than the one before
  };
  put(0, 0), put(0, 0);            // place
  put(1, 0);                       // number
  put(2, 0), put(2, 0);            // stamp
  put(3, 0), put(3, 0);            // schema, action
  put(4, 1), put(4, dots.size());  // groups, writes
  new_id();
  put(7, 0);
  for (const std::size_t count : dots) {
    put(8, 2);  // each write of another tag, cleared
    OutArchive(kinds).varint(0);
    put(9, 1 + count);
    for (std::size_t i = 0; i < count; ++i) {
      new_id();
      put(9, 0), put(9, 0);
    }
  }
  Bytes out;
  OutArchive ar(out);
  ar.varint(1);
  ar.varint(dots.size());
  for (const Bytes& column : fixed) ar.sized(column);
  for (std::size_t i = 0; i < dots.size(); ++i) ar.sized(ByteView(kinds).subspan(i, 1));
  return out;
}

Batch of_one_author() {
  Batch batch;
  batch.authors.resize(1);
  batch.books.resize(1);
  return batch;
}

}  // namespace

TEST_CASE("an entry replaces no more writes than one that can be read, and is no larger") {
  for (const std::vector<std::size_t>& dots : {std::vector<std::size_t>{3}, std::vector<std::size_t>{4096}, std::vector<std::size_t>(3, 4000)}) {
    Batch batch = of_one_author();
    unpack(entry_that_replaces(dots), batch);
    REQUIRE(batch.entries.size() == 1);
    CHECK(batch.entries[0].body.size() > dots[0] * 3);
  }
  for (const std::vector<std::size_t>& dots : {std::vector<std::size_t>{4097}, std::vector<std::size_t>{20'000}, std::vector<std::size_t>(22, 4000), std::vector<std::size_t>(15, 4000)}) {
    Batch batch = of_one_author();
    CHECK_THROWS_AS(unpack(entry_that_replaces(dots), batch), ArchiveError);
  }
  // Whole ones neither.
  Batch batch = of_one_author();
  batch.entries.push_back({0, 0, 1, Bytes(kMaxEntryBytes + 1, 0xff)});
  const Bytes large = packed(batch);
  CHECK_THROWS_AS(unpack(large, batch), ArchiveError);
}
