#include "core/store/ledger.h"

#include <atomic>
#include <catch2/catch.hpp>
#include <deque>
#include <fstream>
#include <future>
#include <thread>

#include "core/store/database.h"
#include "tests/support/ledgers.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

std::string text(const Device& device, const BookId& book, FieldTag tag) {
  const auto state = device.ledger->entity(book, kOne);
  return state && state->get(tag) ? text_of(*state->get(tag)) : "";
}

/// Of a batch with all of one chain.
Heads honest_heads(const Batch& batch) {
  const AuthorId author = batch.authors[0].id();
  Digest hash = chain_start(batch.books[0].id, batch.books[0].kind, author);
  for (const BatchEntry& entry : batch.entries) hash = chain_next(hash, digest_of(entry.body));
  return {{author, batch.entries.size(), hash}};
}
}  // namespace

TEST_CASE("an appended value is there after reopening") {
  TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  const BookId book = make_id<BookId>(kNoon);
  AuthorId author;
  {
    Device device("one", folder / "a.db", key);
    device.put(book, kOne, kLabel, std::string("kept"));
    author = device.ledger->self().id();
  }
  Device again("one", folder / "a.db", key);
  CHECK(text(again, book, kLabel) == "kept");
  CHECK(again.ledger->self().id() == author);
  CHECK(again.ledger->verify().faults.empty());
}

TEST_CASE("another key on the same file writes as another author") {
  TemporaryFolder folder;
  AuthorId first;
  {
    Device device("one", folder / "a.db");
    first = device.ledger->self().id();
  }
  Device device("one", folder / "a.db");
  CHECK(device.ledger->self().id() != first);
}

TEST_CASE("a stamp is never given twice, whatever the wall clock does and over a restart") {
  TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  const BookId book = make_id<BookId>(kNoon);
  Stamp last;
  for (const UnixMs wall : {kNoon, UnixMs{0}, kNoon - 5000, kNoon + 5000}) {
    Device device("one", folder / "a.db", key);
    device.clock.set(wall);
    const Committed committed = device.put(book, kOne, kCount, std::int64_t{wall});
    CHECK(committed.stamp > last);
    last = committed.stamp;
  }
}

TEST_CASE("two devices that changed a guarded field apart have an open question, and closing it closes it everywhere") {
  Device a("a"), b("b");
  const BookId book = make_id<BookId>(kNoon);
  a.put(book, kOne, kGuarded, std::string("52"));
  pour(a, b, book);
  a.put(book, kOne, kGuarded, std::string("51"));
  b.put(book, kOne, kGuarded, std::string("50"));
  pour(a, b, book);
  pour(b, a, book);
  CHECK(a.ledger->book(book)->heads == b.ledger->book(book)->heads);
  REQUIRE(a.ledger->open_questions().size() == 1);
  REQUIRE(b.ledger->open_questions(book).size() == 1);
  const OpenQuestion question = a.ledger->open_questions()[0];
  CHECK(question.cell.values.size() == 2);
  CHECK(a.ledger->origin(book, question.cell.values[0].dot)->author.device !=
        a.ledger->origin(book, question.cell.values[1].dot)->author.device);

  a.put(book, kOne, kGuarded, std::string("50"));
  pour(a, b, book);
  CHECK(a.ledger->open_questions().empty());
  CHECK(b.ledger->open_questions().empty());
  CHECK(text(b, book, kGuarded) == "50");
  CHECK(b.ledger->verify().faults.empty());
}

TEST_CASE("an answer that the closing person had not seen opens the question again") {
  Device a("a"), b("b"), c("c");
  const BookId book = make_id<BookId>(kNoon);
  a.put(book, kOne, kGuarded, std::string("52"));
  pour(a, b, book);
  pour(a, c, book);
  a.put(book, kOne, kGuarded, std::string("51"));
  b.put(book, kOne, kGuarded, std::string("50"));
  c.put(book, kOne, kGuarded, std::string("49"));
  pour(b, a, book);
  a.put(book, kOne, kGuarded, std::string("51"));  // closes 51 against 50
  CHECK(a.ledger->open_questions().empty());
  pour(c, a, book);
  REQUIRE(a.ledger->open_questions().size() == 1);
  CHECK(a.ledger->open_questions()[0].cell.values.size() == 2);
}

TEST_CASE("an ordinary field shows the latest by clock, and equal guarded answers fold") {
  Device a("a"), b("b");
  const BookId book = make_id<BookId>(kNoon);
  a.put(book, kOne, kLabel, std::string("first"));
  pour(a, b, book);
  a.put(book, kOne, kLabel, std::string("from a"));
  b.clock.advance(60'000);
  b.put(book, kOne, kLabel, std::string("from b"));
  a.put(book, kOne, kGuarded, std::string("same"));
  b.put(book, kOne, kGuarded, std::string("same"));
  pour(a, b, book);
  pour(b, a, book);
  CHECK(text(a, book, kLabel) == "from b");
  CHECK(text(b, book, kLabel) == "from b");
  CHECK(a.ledger->open_questions().empty());
}

TEST_CASE("a batch taken in twice changes nothing the second time") {
  Device a("a"), b("b");
  const BookId book = make_id<BookId>(kNoon);
  a.put(book, kOne, kLabel, std::string("x"));
  const Batch batch = a.ledger->missing(book, {}, 1 << 20);
  CHECK(b.ledger->ingest(batch, 1)->applied == 1);
  const auto again = b.ledger->ingest(batch, 1);
  CHECK(again->applied == 0);
  CHECK(again->known == 1);
  CHECK(b.ledger->position() == 1);
}

TEST_CASE("a relay hands over what it has of a chain that it holds only in part") {
  Device author("author"), relay("relay"), reader("reader");
  const BookId book = make_id<BookId>(kNoon);
  for (int i = 0; i < 20; ++i) author.put(book, kOne, kCount, std::int64_t{i});
  // A batch cut small: the seal lies beyond its last entry.
  const Batch cut = author.ledger->missing(book, {}, 200);
  REQUIRE(cut.entries.size() < 20);
  REQUIRE(cut.seals.size() == 1);
  CHECK(cut.seals[0].tail.size() == 20 - cut.entries.size());
  CHECK(relay.ledger->ingest(cut, 1)->applied == cut.entries.size());
  CHECK(pour(relay, reader, book).applied == cut.entries.size());
  CHECK(pour(author, relay, book).applied == 20 - cut.entries.size());
  CHECK(pour(relay, reader, book).applied == 20 - cut.entries.size());
  CHECK(reader.ledger->book(book)->heads == author.ledger->book(book)->heads);
  CHECK(text(reader, book, kCount) == "19");
}

TEST_CASE("a batch that was read ahead is taken in as any other, with what is wrong with it") {
  Device a("a"), plain("plain"), ahead("ahead");
  const BookId book = make_id<BookId>(kNoon), other = make_id<BookId>(kNoon + 1);
  for (int i = 0; i < 30; ++i) a.put(book, kOne, kCount, std::int64_t{i});
  a.put(other, kOne, kLabel, std::string("x"));
  std::deque<BookHeads> all{{book, kShelf, {}}, {other, kShelf, {}}};
  Batch batch = a.ledger->missing(all, 1 << 20);
  REQUIRE(batch.entries.size() == 31);
  Bytes& damaged = batch.entries[20].body;
  damaged.resize(damaged.size() / 2);

  Batch read = batch;
  read_ahead(read);
  REQUIRE(read.ahead.bodies.size() == 31);
  CHECK(read == batch);
  CHECK(read.ahead.bodies[0].digest == digest_of(batch.entries[0].body));
  REQUIRE(read.ahead.bodies[0].entry);
  CHECK(encode_entry(*read.ahead.bodies[0].entry, batch.authors[0].id()) == batch.entries[0].body);
  CHECK_FALSE(read.ahead.bodies[20].entry);
  REQUIRE(read.ahead.signs.size() == 2);
  CHECK_FALSE(read.ahead.signs[0]);  // of the chain with the damaged one
  CHECK(read.ahead.signs[1] == a.ledger->heads(other)[0].hash);

  const auto one = plain.ledger->ingest(batch, 1), two = ahead.ledger->ingest(read, 1);
  REQUIRE(one);
  REQUIRE(two);
  CHECK(one->applied == 1);
  CHECK(two->applied == one->applied);
  CHECK(two->quarantined == one->quarantined);
  CHECK(ahead.ledger->heads(book) == plain.ledger->heads(book));
  CHECK(ahead.ledger->heads(other) == plain.ledger->heads(other));
  const auto here = ahead.ledger->quarantine(), there = plain.ledger->quarantine();
  REQUIRE(here.size() == there.size());
  for (std::size_t i = 0; i < here.size(); ++i) CHECK(here[i].reason == there[i].reason);
}

TEST_CASE("what is sealed but can't be decoded is told in the same words, read ahead or not") {
  const DeviceKey key = DeviceKey::generate();
  const AuthorCard card{key.public_key(), 1, "faulty"};
  const BookId book = make_id<BookId>(kNoon);
  Batch batch;
  batch.authors = {card};
  batch.books = {{book, kShelf}};
  batch.entries = {{0, 0, 1, Bytes{9, 9, 9}}};
  batch.seals = {{0, 0, 1, key.sign(seal_message(1, chain_next(chain_start(book, kShelf, card.id()), digest_of(batch.entries[0].body)))), {}}};
  std::vector<std::string> reasons;
  for (const bool ahead : {false, true}) {
    Device device("device");
    if (ahead) read_ahead(batch);
    REQUIRE(device.ledger->ingest(batch, 1));
    REQUIRE(device.ledger->quarantine().size() == 1);
    reasons.push_back(device.ledger->quarantine()[0].reason);
  }
  CHECK(reasons[0] == reasons[1]);
  CHECK(reasons[0].find("signature") == std::string::npos);
}

TEST_CASE("two entries under one number: what was read ahead of the true one proves nothing for the other") {
  const DeviceKey key = DeviceKey::generate();
  TemporaryFolder folder;
  Device writer("writer", folder / "w.db", key), reader("reader");
  const BookId book = make_id<BookId>(kNoon);
  for (int i = 0; i < 3; ++i) writer.put(book, kOne, kCount, std::int64_t{i});
  const Batch honest = writer.ledger->missing(book, {}, 1 << 20);
  REQUIRE(honest.entries.size() == 3);
  auto forged_entry = decode_entry(honest.entries[0].body, honest.authors[0].id());
  REQUIRE(forged_entry);
  forged_entry->writes[0].value = std::int64_t{77};
  const BatchEntry forged{0, 0, 1, encode_entry(*forged_entry, honest.authors[0].id())};
  for (const bool forged_first : {false, true}) {
    Batch doubled = honest;
    doubled.entries.insert(doubled.entries.begin() + (forged_first ? 0 : 1), forged);
    read_ahead(doubled);
    REQUIRE(doubled.ahead.bodies.size() == 4);
    // To one that holds nothing, to one that holds the true ones, and to the writer itself.
    Device fresh("fresh");
    const auto taken = fresh.ledger->ingest(doubled, 1);
    REQUIRE(taken);
    CHECK(taken->applied == (forged_first ? 0U : 3U));
    pour(writer, reader, book);
    const auto again = reader.ledger->ingest(doubled, 1), own = writer.ledger->ingest(doubled, 1);
    REQUIRE(again);
    REQUIRE(own);
    for (const Device* device : {&reader, &writer}) {
      CHECK(device->ledger->heads(book) == honest_heads(honest));
      CHECK(device->ledger->forks().empty());
      CHECK(text(*device, book, kCount) == "2");
      CHECK(device->ledger->verify().faults.empty());
    }
  }
}

TEST_CASE("batches that are too large, or name nobody, are not read ahead") {
  Batch batch;
  batch.authors = {{DeviceKey::generate().public_key(), 1, "large"}};
  batch.books = {{make_id<BookId>(kNoon), kShelf}};
  for (std::uint64_t seq = 1; seq <= 3; ++seq) batch.entries.push_back({0, 0, seq, Bytes(kMostReadAhead / 2)});
  read_ahead(batch);
  CHECK(batch.ahead.bodies.empty());
  batch.entries.resize(1);
  batch.entries[0].author = 7;
  read_ahead(batch);
  CHECK(batch.ahead.bodies.empty());
  batch.entries[0].author = 0;
  read_ahead(batch);
  CHECK(batch.ahead.bodies.size() == 1);
}

TEST_CASE("a changed byte in an entry is put aside with the reason and not applied") {
  Device a("a"), b("b");
  const BookId book = make_id<BookId>(kNoon);
  a.put(book, kOne, kLabel, std::string("x"));
  Batch batch = a.ledger->missing(book, {}, 1 << 20);
  batch.entries[0].body.back() ^= 1;
  const auto report = b.ledger->ingest(batch, 1);
  REQUIRE(report);
  CHECK(report->applied == 0);
  CHECK(report->quarantined == 1);
  REQUIRE(b.ledger->quarantine().size() == 1);
  CHECK(b.ledger->quarantine()[0].reason.find("signature") != std::string::npos);
  CHECK_FALSE(b.ledger->entity(book, kOne));
}

TEST_CASE("a book of which nothing was taken is not listed, so that others can still agree with us") {
  Device a("A"), b("B");
  const BookId book = a.ledger->create_book_id();
  a.put(book, kOne, kLabel, std::string("drawer"));
  Batch batch = a.ledger->missing(book, {}, 1 << 20);
  REQUIRE(batch.entries.size() == 1);
  batch.entries.front().body.back() ^= 1;
  const auto report = b.ledger->ingest(batch, 1);
  REQUIRE(report);
  CHECK(report->quarantined == 1);
  CHECK(b.ledger->quarantine().size() == 1);
  CHECK(b.ledger->books().empty());
  CHECK_FALSE(b.ledger->book(book));
  CHECK(pour(a, b, book).applied == 1);  // and the true one is taken when it comes
  CHECK(b.ledger->book(book)->heads == a.ledger->book(book)->heads);
}

TEST_CASE("forged entries leave no book behind, and a book offered as another kind holds nothing else up") {
  Device writer("writer"), reader("reader");
  const BookId book = make_id<BookId>(kNoon);
  writer.put(book, kOne, kLabel, std::string("true"));
  const Batch honest = writer.ledger->missing(book, {}, 1 << 20);
  Batch forged = honest;
  forged.books[0].id.bytes[15] ^= 1;  // the chain's hash binds the book, so no signature covers this
  auto report = reader.ledger->ingest(forged, 1);
  REQUIRE(report);
  CHECK(report->quarantined == 1);
  CHECK(reader.ledger->books().empty());
  forged = honest;
  forged.books[0].kind = BookKind{7};
  REQUIRE(reader.ledger->ingest(forged, 1));
  CHECK(reader.ledger->books().empty());

  pour(writer, reader, book);
  CHECK(text(reader, book, kLabel) == "true");
  report = reader.ledger->ingest(forged, 1);
  REQUIRE(report);
  CHECK(report->quarantined == 1);
  CHECK(report->other_kind);
  CHECK_FALSE(reader.ledger->ingest(honest, 1)->other_kind);
  CHECK(text(reader, book, kLabel) == "true");
}

TEST_CASE("entries with a gap before them are left out and the sender is told to reconcile") {
  Device a("a"), b("b");
  const BookId book = make_id<BookId>(kNoon);
  for (int i = 0; i < 3; ++i) a.put(book, kOne, kCount, std::int64_t{i});
  Batch batch = a.ledger->missing(book, {}, 1 << 20);
  batch.entries.erase(batch.entries.begin());
  const auto report = b.ledger->ingest(batch, 1);
  REQUIRE(report);
  CHECK(report->gaps);
  CHECK(report->applied == 0);
  CHECK(b.ledger->position() == 0);
}

TEST_CASE("what comes before the value that it replaces is put aside, held against the sender as a gap, and applied when it comes again") {
  Device a("a"), b("b"), c("c");
  const BookId book = make_id<BookId>(kNoon);
  a.put(book, kOne, kGuarded, std::string("52"));
  pour(a, b, book);
  pour(a, c, book);
  b.put(book, kOne, kGuarded, std::string("51"));
  b.put(book, kOne, kLabel, std::string("after it"));
  pour(b, c, book);
  c.put(book, kOne, kGuarded, std::string("50"));
  const Heads of_b = b.ledger->heads(book), nothing_of_b = a.ledger->heads(book);
  const auto early = a.ledger->ingest(c.ledger->missing(book, of_b, 1 << 20), 1);
  REQUIRE(early);
  CHECK(early->applied == 0);
  CHECK(early->gaps);
  CHECK(early->quarantined == 1);
  REQUIRE(a.ledger->quarantine().size() == 1);
  CHECK(a.ledger->quarantine()[0].reason.find("before") != std::string::npos);
  CHECK(text(a, book, kGuarded) == "52");
  // So it is where nothing of the book is held at all.
  Device d("d");
  const auto first = d.ledger->ingest(c.ledger->missing(book, of_b, 1 << 20), 1);
  REQUIRE(first);
  CHECK(first->gaps);
  CHECK_FALSE(d.ledger->book(book));

  const auto whole = a.ledger->ingest(c.ledger->missing(book, nothing_of_b, 1 << 20), 1);
  REQUIRE(whole);
  CHECK(whole->applied == 3);
  CHECK_FALSE(whole->gaps);
  CHECK(a.ledger->quarantine().empty());
  CHECK(a.ledger->open_questions().empty());
  CHECK(text(a, book, kGuarded) == "50");
  CHECK(a.ledger->book(book)->heads == c.ledger->book(book)->heads);
  CHECK(a.ledger->verify().faults.empty());
}

TEST_CASE("an entry stamped before what it replaces is refused, and what follows it in its chain too") {
  Device a("a"), liar("liar");
  const BookId book = make_id<BookId>(kNoon);
  a.put(book, kOne, kGuarded, std::string("52"));
  pour(a, liar, book);
  const auto seen = liar.ledger->entity(book, kOne);
  Entry entry;
  entry.seq = 1;
  entry.stamp = Stamp::of(5, 0);
  entry.writes = {Write{kOne, kBox, kGuarded, std::string("40"), {seen->cells[0].values[0].dot}}};
  const DeviceKey key = DeviceKey::generate();
  AuthorCard card{key.public_key(), 7, "liar"};
  Batch batch;
  batch.authors = {card};
  batch.books = {{book, kShelf}};
  Bytes first = encode_entry(entry, card.id());
  entry.seq = 2;
  entry.stamp = Stamp::of(static_cast<std::uint64_t>(kNoon) + 10'000, 0);
  Bytes second = encode_entry(entry, card.id());
  batch.entries = {{0, 0, 1, first}, {0, 0, 2, second}};
  Digest hash = chain_next(chain_next(chain_start(book, kShelf, card.id()), digest_of(first)), digest_of(second));
  batch.seals = {{0, 0, 2, key.sign(seal_message(2, hash)), {}}};
  const auto report = a.ledger->ingest(batch, 1);
  REQUIRE(report);
  CHECK(report->applied == 0);
  CHECK(report->quarantined == 2);
  CHECK(text(a, book, kGuarded) == "52");
  CHECK(a.ledger->quarantine()[0].reason.find("stamp") != std::string::npos);
}

TEST_CASE("a clock two days ahead is flagged, kept, and does not drag ours along") {
  Device a("a"), ahead("ahead");
  const BookId book = make_id<BookId>(kNoon);
  ahead.clock.advance(2 * 24 * 3600 * 1000LL);
  ahead.put(book, kOne, kGuarded, std::string("52"));
  const auto report = pour(ahead, a, book);
  CHECK(report.applied == 1);
  REQUIRE(report.wrong_clocks.size() == 1);
  // A change of that very value comes after it; everything else keeps our own time.
  CHECK(a.put(book, kOne, kGuarded, std::string("51")).stamp.wall_ms() > kNoon + 24 * 3600 * 1000LL);
  CHECK(a.put(book, kOne, kLabel, std::string("now")).stamp.wall_ms() < kNoon + 60'000);
  CHECK(a.ledger->open_questions().empty());
}

TEST_CASE("a restored device takes its own later entries back and goes on as a new incarnation") {
  TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  const BookId book = make_id<BookId>(kNoon);
  Device peer("peer");
  {
    Device device("one", folder / "a.db", key);
    device.put(book, kOne, kLabel, std::string("early"));
  }
  std::filesystem::copy_file(folder / "a.db", folder / "copy.db");
  // As where the whole disk is put back: the file does not show that it is a copy.
  SQLite::Database((folder / "copy.db").string(), SQLite::OPEN_READWRITE).exec("DELETE FROM meta WHERE key='place'");
  {
    Device device("one", folder / "a.db", key);
    device.put(book, kOne, kLabel, std::string("later"));
    pour(device, peer, book);
  }
  Device restored("one", folder / "copy.db", key);
  const AuthorId before = restored.ledger->self().id();
  CHECK(pour(peer, restored, book).applied == 1);
  CHECK(restored.ledger->self().id() != before);
  CHECK(text(restored, book, kLabel) == "later");
  restored.put(book, kOne, kLabel, std::string("after"));
  CHECK(pour(restored, peer, book).applied == 1);
  CHECK(text(peer, book, kLabel) == "after");
}

TEST_CASE("a second program is told that the database is in use") {
  TemporaryFolder folder;
  Device device("one", folder / "a.db");
  LedgerOptions options;
  options.file = folder / "a.db";
  options.registry = &small_registry();
  const auto second = Ledger::open(options);
  REQUIRE_FALSE(second);
  CHECK(second.error().code == FaultCode::locked);
  CHECK(second.error().where.find("a.db") != std::string::npos);
}

TEST_CASE("a file that is no database, one of another program and one of a newer version are refused untouched") {
  TemporaryFolder folder;
  LedgerOptions options;
  options.registry = &small_registry();
  options.file = folder / "text.db";
  std::ofstream(options.file) << std::string(5000, 'x');
  CHECK(Ledger::open(options).error().code == FaultCode::damaged);

  options.file = folder / "other.db";
  SQLite::Database(options.file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE).exec("CREATE TABLE theirs(x)");
  CHECK(Ledger::open(options).error().code == FaultCode::bad_input);

  options.file = folder / "newer.db";
  { Device device("one", options.file); }
  SQLite::Database(options.file.string(), SQLite::OPEN_READWRITE).exec("PRAGMA user_version=99");
  const auto newer = Ledger::open(options);
  CHECK(newer.error().code == FaultCode::newer);
  CHECK(newer.error().what.find("99") != std::string::npos);
}

TEST_CASE("verify finds a row that its entries do not give, and rebuild mends it") {
  TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  const BookId book = make_id<BookId>(kNoon);
  {
    Device device("one", folder / "a.db", key);
    device.put(book, kOne, kLabel, std::string("true"));
  }
  {
    SQLite::Database raw((folder / "a.db").string(), SQLite::OPEN_READWRITE);
    raw.exec("UPDATE entity SET state = CAST(replace(state, CAST('true' AS BLOB), CAST('fake' AS BLOB)) AS BLOB)");
  }
  Device device("one", folder / "a.db", key);
  CHECK(device.ledger->verify().faults.size() == 1);
  REQUIRE(device.ledger->rebuild());
  CHECK(device.ledger->verify().faults.empty());
  CHECK(text(device, book, kLabel) == "true");
}

TEST_CASE("since leaves out what came from that peer and books that are not wanted") {
  Device a("a"), b("b");
  const BookId one = make_id<BookId>(kNoon), two = make_id<BookId>(kNoon);
  a.put(one, kOne, kLabel, std::string("x"));
  a.put(two, kOne, kLabel, std::string("y"));
  b.put(one, kOne, kCount, std::int64_t{3});
  REQUIRE(a.ledger->ingest(b.ledger->missing(one, {}, 1 << 20), 7));
  const auto all = [](const BookId&) { return true; };
  CHECK(a.ledger->since(0, all, 0, 1 << 20).batch.entries.size() == 3);
  const auto to_b = a.ledger->since(0, all, 7, 1 << 20);
  CHECK(to_b.batch.entries.size() == 2);
  CHECK(to_b.next == a.ledger->position());
  CHECK(a.ledger->since(0, [&](const BookId& book) { return book == two; }, 0, 1 << 20).batch.entries.size() == 1);
  CHECK(a.ledger->since(to_b.next, all, 0, 1 << 20).batch.empty());
}

TEST_CASE("a full disk refuses the last change with what to do, and keeps everything before it") {
  TemporaryFolder folder;
  const DeviceKey key = DeviceKey::generate();
  const BookId book = make_id<BookId>(kNoon);
  std::int64_t kept = 0;
  {
    Device device("one", folder / "a.db", key);
    // The database may grow by a few pages only: SQLite then says the same as on a full disk.
    REQUIRE(device.ledger->transact([](Connection& db) {
      auto& pages = db.statement("PRAGMA page_count");
      pages.executeStep();
      const int limit = pages.getColumn(0).getInt() + 12;
      pages.reset();
      db.raw().exec("PRAGMA max_page_count=" + std::to_string(limit));
    }));
    std::optional<Fault> full;
    for (std::int64_t i = 1; i <= 1000 && !full; ++i) {
      device.clock.advance(1000);
      EntityState seen = device.ledger->entity(book, kOne).value_or(EntityState{book, kOne, kBox, {}});
      Draft draft(book, kShelf, kEdit);
      draft.put(seen, kCount, i);
      draft.put(seen, kLabel, std::string(600, 'x'));
      const auto committed = device.ledger->append(draft);
      if (committed) {
        kept = i;
      } else {
        full = committed.error();
      }
    }
    REQUIRE(full);
    CHECK(full->code == FaultCode::no_space);
    CHECK(full->what_to_do.find("space") != std::string::npos);
    CHECK(kept > 0);
    CHECK(text(device, book, kCount) == std::to_string(kept));
  }
  Device again("one", folder / "a.db", key);
  CHECK(text(again, book, kCount) == std::to_string(kept));
  CHECK(again.ledger->verify().faults.empty());
  again.put(book, kOne, kCount, std::int64_t{-1});
  CHECK(text(again, book, kCount) == "-1");
}

TEST_CASE("readers see whole actions while another thread writes") {
  TemporaryFolder folder;
  Device device("one", folder / "a.db");
  const BookId book = make_id<BookId>(kNoon);
  EntityState box{book, kOne, kBox, {}};
  std::atomic<bool> done{false};
  std::atomic<int> torn{0}, looks{0};
  std::thread reader([&] {
    while (!done) {
      const auto state = device.ledger->entity(book, kOne);
      if (!state) continue;
      ++looks;
      if (state->get_as<std::int64_t>(kCount) != state->get_as<std::int64_t>(kGuarded)) ++torn;
    }
  });
  for (std::int64_t i = 0; i < 300; ++i) {
    Draft draft(book, kShelf, kEdit);
    const EntityState seen = device.ledger->entity(book, kOne).value_or(box);
    draft.put(seen, kCount, i);
    draft.put(seen, kGuarded, i);
    REQUIRE(device.ledger->append(draft));
  }
  done = true;
  reader.join();
  CHECK(torn == 0);
  CHECK(looks > 0);
}

TEST_CASE("what proves a part of a long chain stays short, also at a relay that holds no key") {
  Device author("author"), relay("relay"), reader("reader");
  const BookId book = author.ledger->create_book_id();
  const EntityId entity = make_id<EntityId>(kNoon);
  constexpr std::uint64_t kEntries = 2500;
  for (std::uint64_t i = 0; i < kEntries; ++i) author.put(book, entity, kLabel, std::to_string(i));
  // Handed on in batches that end anywhere.
  const auto hand_on = [&](Device& from, Device& to) {
    std::size_t longest = 0;
    for (;;) {
      const Batch batch = from.ledger->missing(book, to.ledger->heads(book), 30'000);
      if (batch.empty()) break;
      for (const Seal& seal : batch.seals) longest = std::max(longest, seal.tail.size());
      const auto report = to.ledger->ingest(batch, 0);
      REQUIRE(report);
      REQUIRE(report->quarantined == 0);
    }
    CHECK(to.ledger->heads(book) == from.ledger->heads(book));
    return longest;
  };
  CHECK(hand_on(author, relay) <= 1024);
  CHECK(hand_on(relay, reader) <= 1024);
  CHECK(reader.ledger->verify().faults.empty());
}

TEST_CASE("a listener that is taken away is not called any more, nor is it in the middle of a call") {
  Device device("one");
  std::promise<void> inside, go_on;
  std::atomic<int> late{0};
  bool first_call = true;
  const int slow = device.ledger->subscribe([&](std::int64_t) {
    if (!std::exchange(first_call, false)) return;
    inside.set_value();
    go_on.get_future().wait();
  });
  auto gone = std::make_unique<std::atomic<bool>>(false);
  const int other = device.ledger->subscribe([&, flag = gone.get()](std::int64_t) { late += flag->load() ? 1 : 0; });
  std::thread writer([&] { device.put(make_id<BookId>(kNoon), kOne, kLabel, std::string("x")); });
  inside.get_future().wait();
  std::thread away([&] {
    device.ledger->unsubscribe(other);
    gone->store(true);
  });
  std::this_thread::sleep_for(std::chrono::milliseconds(20));
  CHECK_FALSE(gone->load());  // the writer may still come to it
  go_on.set_value();
  away.join();
  writer.join();
  CHECK(late == 0);
  device.ledger->unsubscribe(slow);
}
