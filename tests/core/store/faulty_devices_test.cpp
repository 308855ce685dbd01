// What a device says that is let in and faulty, or not honest: it costs nobody else a word that counts as confirmed.

#include <catch2/catch.hpp>
#include <limits>

#include "core/store/entry_rules.h"
#include "tests/support/ledgers.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// Writes entries as no honest program does, and signs them.
struct Forger {
  DeviceKey key = DeviceKey::generate();
  AuthorCard card{key.public_key(), 7, "faulty"};
  BookId book = make_id<BookId>(kNoon);
  Digest chain = chain_start(book, kShelf, card.id());
  std::uint64_t seq = 0;

  Batch says(std::vector<Write> writes, Stamp stamp) {
    Entry entry;
    entry.seq = ++seq;
    entry.stamp = stamp;
    entry.writes = std::move(writes);
    Batch batch;
    batch.authors = {card};
    batch.books = {{book, kShelf}};
    batch.entries = {{0, 0, seq, encode_entry(entry, card.id())}};
    chain = chain_next(chain, digest_of(batch.entries[0].body));
    batch.seals = {{0, 0, seq, key.sign(seal_message(seq, chain)), {}}};
    return batch;
  }
};

const Stamp kThen = Stamp::of(static_cast<std::uint64_t>(kNoon), 0);

std::size_t answers(const Device& device, const BookId& book) {
  const auto state = device.ledger->entity(book, kOne);
  const Cell* cell = state ? state->find(kGuarded) : nullptr;
  return cell == nullptr ? 0 : cell->values.size();
}

/// What everybody but its writer makes of the book.
void check_that_it_crosses(const Device& writer, const BookId& book) {
  Device other("other");
  const auto report = pour(writer, other, book);
  CHECK(report.quarantined == 0);
  CHECK(other.ledger->heads(book) == writer.ledger->heads(book));
  CHECK(writer.ledger->verify().faults.empty());
  CHECK(writer.ledger->rebuild());
}

}  // namespace

TEST_CASE("more answers than one entry can replace are replaced in steps, each of which everybody can read") {
  Forger forger;
  Device desk("desk");
  const std::size_t many = kMaxWritesPerEntry + 200;
  for (std::size_t i = 0; i < many; ++i)
    REQUIRE(desk.ledger->ingest(forger.says({Write{kOne, kBox, kGuarded, std::int64_t(i), {}}}, Stamp{kThen.raw + i}), 1)->applied == 1);
  REQUIRE(answers(desk, forger.book) == many);
  desk.put(forger.book, kOne, kGuarded, std::string("52"));
  CHECK(answers(desk, forger.book) == 201);
  CHECK(text_of(*desk.ledger->entity(forger.book, kOne)->get(kGuarded)) == "52");
  CHECK(desk.ledger->open_questions().size() == 1);  // nobody's answer was passed over unseen
  desk.put(forger.book, kOne, kGuarded, std::string("52"));
  CHECK(answers(desk, forger.book) == 1);
  check_that_it_crosses(desk, forger.book);
}

TEST_CASE("an entry that writes one field twice is put aside, in whatever order its writes stand") {
  const EntityId other = make_id<EntityId>(kNoon + 5);
  const Write one{kOne, kBox, kGuarded, std::int64_t{1}, {}}, two{kOne, kBox, kGuarded, std::int64_t{2}, {}},
      count{kOne, kBox, kCount, std::int64_t{3}, {}}, far{kOne, kBox, FieldTag{3 + 64}, std::int64_t{4}, {}},
      elsewhere{other, kBox, kGuarded, std::int64_t{5}, {}};
  for (const auto& writes : std::vector<std::vector<Write>>{{one, two}, {one, count, two}, {one, elsewhere, two}, {elsewhere, one, two}}) {
    Forger forger;
    Device desk("desk");
    const auto report = desk.ledger->ingest(forger.says(writes, kThen), 1);
    REQUIRE(report);
    CHECK(report->quarantined == 1);
    CHECK(desk.ledger->quarantine().at(0).reason.find("twice") != std::string::npos);
  }
  // Fields whose numbers look alike to the quick check, and entities in any order, are no reason.
  for (const auto& writes : std::vector<std::vector<Write>>{{one, far, count}, {one, elsewhere}, {elsewhere, one}}) {
    Forger forger;
    Device desk("desk");
    CHECK(desk.ledger->ingest(forger.says(writes, kThen), 1)->applied == 1);
  }
}

TEST_CASE("a time stamp that no clock gives is put aside; what has to follow the last that is taken is taken by everybody") {
  Forger forger;
  Device desk("desk");
  const std::uint64_t last = std::numeric_limits<std::uint64_t>::max();
  for (const std::uint64_t raw : {last, last - 1, kNewestStamp.raw + 1}) {
    Forger another;
    another.book = forger.book;
    another.chain = chain_start(another.book, kShelf, another.card.id());
    const auto report = desk.ledger->ingest(another.says({Write{kOne, kBox, kGuarded, std::string("40"), {}}}, Stamp{raw}), 1);
    REQUIRE(report);
    CHECK(report->quarantined == 1);
    CHECK(desk.ledger->quarantine().back().reason.find("clock") != std::string::npos);
  }
  REQUIRE(desk.ledger->ingest(forger.says({Write{kOne, kBox, kGuarded, std::string("40"), {}}}, kNewestStamp), 1)->applied == 1);
  for (const char* word : {"52", "53", "54"}) {
    const Committed said = desk.put(forger.book, kOne, kGuarded, std::string(word));
    CHECK(said.stamp > kNewestStamp);
    CHECK(text_of(*desk.ledger->entity(forger.book, kOne)->get(kGuarded)) == word);
  }
  // Other fields, and everything after, have the time of the clock.
  CHECK(desk.put(forger.book, kOne, kLabel, std::string("label")).stamp < kNewestStamp);
  check_that_it_crosses(desk, forger.book);
}

TEST_CASE("what is put aside is bounded by rows too, so that empty entries do not fill the disk") {
  Device desk("desk");
  Batch batch;
  batch.authors = {AuthorCard{DeviceKey::generate().public_key(), 1, "faulty"}};
  batch.books = {{make_id<BookId>(kNoon), kShelf}};
  batch.entries.assign(99'000, BatchEntry{0, 0, 1, {}});
  for (std::size_t i = 0; i < batch.entries.size(); ++i) batch.entries[i].seq = i + 1;
  const auto refused = desk.ledger->ingest(batch, 1);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().what.find("put aside") != std::string::npos);
  CHECK(desk.ledger->quarantine().empty());
  batch.entries.resize(20'000);
  REQUIRE(desk.ledger->ingest(batch, 1));
  CHECK(desk.ledger->quarantine().size() == 20'000);
  batch.entries.assign(200'000, BatchEntry{0, 0, 1, {}});
  CHECK(desk.ledger->ingest(batch, 1).error().code == FaultCode::malformed);
}

TEST_CASE("an entry that names thousands of writes of another, and a field with thousands of answers, are dealt with as quickly as they are read") {
  Forger forger;
  Device desk("desk");
  std::vector<Write> many;
  for (std::uint32_t i = 0; i < 4000; ++i) many.push_back(Write{kOne, kBox, FieldTag{1000 + i}, std::int64_t{i}, {}});
  REQUIRE(desk.ledger->ingest(forger.says(many, kThen), 1)->applied == 1);
  // Every field replaces all of them: sixteen million to look up, were it not for what is remembered.
  std::vector<Dot> all;
  for (std::uint32_t i = 0; i < 4000; ++i) all.push_back({forger.card.id(), 1, i});
  std::vector<Write> again;
  for (std::uint32_t i = 0; i < 8; ++i) again.push_back(Write{kOne, kBox, FieldTag{1000 + i}, std::int64_t{1}, all});
  REQUIRE(desk.ledger->ingest(forger.says(again, Stamp{kThen.raw + 1}), 1)->applied == 1);
  CHECK(desk.ledger->entity(forger.book, kOne)->find(FieldTag{1000})->values.size() == 1);
  check_that_it_crosses(desk, forger.book);
}
