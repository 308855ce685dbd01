// What a device says that is let in and faulty, or not honest: it costs nobody else a word that counts as confirmed.

#include <catch2/catch.hpp>
#include <limits>
#include <set>

#include "core/store/backup.h"
#include "core/store/entry_rules.h"
#include "tests/support/ledgers.h"
#include "tests/support/temporary_folder.h"

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

TEST_CASE("what is left out of a too long list of replaced answers does not count for the time stamp") {
  Forger forger;
  Device desk("desk");
  const std::size_t many = kMaxWritesPerEntry + 200;
  for (std::size_t i = 0; i < many; ++i)
    REQUIRE(desk.ledger->ingest(forger.says({Write{kOne, kBox, kGuarded, std::int64_t(i), {}}}, Stamp{kNewestStamp.raw - many + 1 + i}), 1)->applied == 1);
  const Committed said = desk.put(forger.book, kOne, kGuarded, std::string("52"));
  CHECK(said.stamp <= kNewestStamp);
  check_that_it_crosses(desk, forger.book);
}

TEST_CASE("a chain that was sealed too seldom stays where it is and holds nothing else up") {
  Forger forger;
  Device desk("desk"), other("other");
  const std::size_t many = kMaxTail + 100;
  Batch batch = forger.says({Write{kOne, kBox, kCount, std::int64_t{0}, {}}}, kThen);
  for (std::size_t i = 1; i < many; ++i) {
    Batch next = forger.says({Write{kOne, kBox, kCount, std::int64_t(i), {Dot{forger.card.id(), forger.seq, 0}}}}, Stamp{kThen.raw + i});
    batch.entries.push_back(std::move(next.entries[0]));
    batch.seals = std::move(next.seals);
  }
  REQUIRE(desk.ledger->ingest(batch, 1)->applied == many);
  desk.put(forger.book, kOne, kGuarded, std::string("52"));
  std::deque<BookHeads> lacking{{forger.book, kShelf, {}}};
  std::size_t batches = 0;
  for (; !lacking.empty() && batches < 100; ++batches) {
    const Batch part = desk.ledger->missing(lacking, 64 * 1024);
    for (const Seal& seal : part.seals) CHECK(seal.tail.size() <= kMaxTail);
    REQUIRE(other.ledger->ingest(part, 1));
  }
  CHECK(lacking.empty());
  CHECK(answers(other, forger.book) == 1);
  const auto since = desk.ledger->since(0, [](const BookId&) { return true; }, 0, 64 * 1024);
  for (const Seal& seal : since.batch.seals) CHECK(seal.tail.size() <= kMaxTail);
  // Near its end it can be proved: whoever has the beginning gets the rest.
  const Batch end = desk.ledger->missing(forger.book, {{forger.card.id(), many - 50, {}}}, 64 * 1024);
  CHECK(end.entries.size() >= 50);
}

TEST_CASE("what replaces a word that nobody here has is taken when it comes again, and the word goes in before it") {
  Forger lost;  // its first word reached "near" alone
  Device near("near"), far("far");
  const Batch word = lost.says({Write{kOne, kBox, kGuarded, std::string("50"), {}}}, kThen);
  REQUIRE(near.ledger->ingest(word, 1)->applied == 1);
  near.put(lost.book, kOne, kGuarded, std::string("51"));
  near.put(lost.book, kOne, kLabel, std::string("after it"));
  Batch later = near.ledger->missing(lost.book, {{lost.card.id(), 1, {}}}, 1 << 20);
  REQUIRE(later.entries.size() == 2);

  const auto first = far.ledger->ingest(later, 1);
  REQUIRE(first);
  CHECK(first->gaps);  // the sender hears that something is lacking
  CHECK(first->applied == 0);
  CHECK(first->quarantined == 2);
  // It has nothing more: this is all that there will be.
  const auto second = far.ledger->ingest(later, 1);
  REQUIRE(second);
  CHECK_FALSE(second->gaps);
  CHECK(second->applied == 2);
  CHECK(far.ledger->quarantine().empty());
  CHECK(text_of(*far.ledger->entity(lost.book, kOne)->get(kGuarded)) == "51");
  CHECK(far.ledger->verify().faults.empty());

  // The word comes by another way after all.
  REQUIRE(far.ledger->ingest(word, 2)->applied == 1);
  for (const Device* device : {&near, &far}) {
    CHECK(answers(*device, lost.book) == 1);
    CHECK(text_of(*device->ledger->entity(lost.book, kOne)->get(kGuarded)) == "51");
  }
  CHECK(far.ledger->heads(lost.book) == near.ledger->heads(lost.book));
  CHECK(far.ledger->verify().faults.empty());
  // In its order it can be handed on.
  Device third("third");
  CHECK(pour(far, third, lost.book).quarantined == 0);
  CHECK(answers(third, lost.book) == 1);
}

TEST_CASE("a word of a branch that was never met may stand under another time than the one that is here") {
  Forger one;
  Forger copy = one;  // the same key, the same numbers
  Device near("near"), far("far");
  REQUIRE(near.ledger->ingest(copy.says({Write{kOne, kBox, kGuarded, std::string("50"), {}}}, kThen), 1)->applied == 1);
  REQUIRE(far.ledger->ingest(one.says({Write{kOne, kBox, kLabel, std::string("far"), {}}}, Stamp{kThen.raw + (std::uint64_t{1} << 40)}), 1)->applied == 1);
  near.put(one.book, kOne, kGuarded, std::string("51"));
  const Batch later = near.ledger->missing(one.book, {{one.card.id(), 1, {}}}, 1 << 20);
  CHECK(far.ledger->ingest(later, 1)->gaps);
  CHECK(far.ledger->ingest(later, 1)->applied == 1);
  CHECK(answers(far, one.book) == 1);
  CHECK(far.ledger->entity(one.book, kOne)->find(kLabel) != nullptr);
  CHECK(far.ledger->verify().faults.empty());
  CHECK(far.ledger->forks().empty());  // nobody has shown two entries of one number
}

TEST_CASE("a device that was put back to an old copy unseen does not give a number again of which others speak") {
  Device tablet("tablet"), desk("desk");
  const BookId book = make_id<BookId>(kNoon);
  const DeviceKey key = tablet.ledger->key();
  Device back("tablet", ":memory:", key);
  const AuthorId before = back.ledger->self().id();
  // The desk saw a word of this very device that this copy of it never said.
  Entry entry;
  entry.seq = 1;
  entry.stamp = kThen;
  entry.writes = {Write{kOne, kBox, kGuarded, std::string("50"), {}}};
  Batch batch;
  batch.authors = {back.ledger->self()};
  batch.books = {{book, kShelf}};
  batch.entries = {{0, 0, 1, encode_entry(entry, before)}};
  const Digest chain = chain_next(chain_start(book, kShelf, before), digest_of(batch.entries[0].body));
  batch.seals = {{0, 0, 1, key.sign(seal_message(1, chain)), {}}};
  REQUIRE(desk.ledger->ingest(batch, 1)->applied == 1);
  desk.put(book, kOne, kGuarded, std::string("51"));
  const Batch later = desk.ledger->missing(book, {{before, 1, {}}}, 1 << 20);
  REQUIRE(later.entries.size() == 1);
  CHECK(back.ledger->ingest(later, 1)->gaps);
  // Already while that is put aside: what is said now must not get the number.
  const AuthorId after = back.ledger->self().id();
  CHECK(after != before);
  if (GENERATE(false, true)) CHECK(back.put(book, kOne, kLabel, std::string("meanwhile")).dot.author == after);
  CHECK(back.ledger->ingest(later, 1)->applied == 1);
  CHECK(back.ledger->self().id() != before);
  CHECK(back.put(book, kOne, kLabel, std::string("new")).dot.author != before);
  CHECK(pour(back, desk, book).quarantined == 0);
  CHECK(back.ledger->verify().faults.empty());
}

TEST_CASE("a number of this device of which others speak is not given again, whatever else they wait for who speak of it") {
  Forger forger;
  Device back("tablet");
  const AuthorId before = back.ledger->self().id(), lacking = AuthorCard{DeviceKey::generate().public_key(), 1, "x"}.id();
  const Write waits{kOne, kBox, kLabel, std::string("a"), {Dot{lacking, 1, 0}}}, names_ours{kOne, kBox, kGuarded, std::string("51"), {Dot{before, 1, 0}}};
  const Stamp after{kThen.raw + 1};
  Batch batch;
  SECTION("in the same entry") { batch = forger.says({waits, names_ours}, after); }
  SECTION("in one that follows it") {
    batch = forger.says({waits}, kThen);
    const Batch next = forger.says({names_ours}, after);
    batch.entries.push_back(next.entries.front());
    batch.seals = next.seals;
  }
  SECTION("but not where nobody signed it") {
    batch = forger.says({waits, names_ours}, after);
    batch.seals.front().signature[0] ^= 1;
    CHECK(back.ledger->ingest(batch, 1)->quarantined == 1);
    CHECK(back.ledger->self().id() == before);
    return;
  }
  CHECK(back.ledger->ingest(batch, 1)->applied == 0);
  CHECK(back.put(forger.book, kOne, kGuarded, std::string("52")).dot.author != before);
  // Once is enough.
  const AuthorId now = back.ledger->self().id();
  CHECK(back.ledger->ingest(batch, 1));
  CHECK(back.ledger->self().id() == now);
}

TEST_CASE("who says an entry before its author does takes from its sender nothing of what lacks") {
  Forger forger;
  Device desk("desk");
  const AuthorId lacking = AuthorCard{DeviceKey::generate().public_key(), 1, "x"}.id();
  const Batch real = forger.says({Write{kOne, kBox, kLabel, std::string("a"), {Dot{lacking, 1, 0}}}}, kThen);
  Batch noise = real;
  noise.seals.front().signature[0] ^= 1;
  const auto first = desk.ledger->ingest(noise, 1);
  REQUIRE(first);
  CHECK(first->quarantined == 1);
  CHECK_FALSE(first->gaps);
  // Its sender hears that something lacks, and only when it comes again has nothing more.
  const auto second = desk.ledger->ingest(real, 2);
  REQUIRE(second);
  CHECK(second->gaps);
  CHECK(second->applied == 0);
  REQUIRE(desk.ledger->quarantine().size() == 1);
  CHECK(desk.ledger->quarantine().front().reason.find("sent before") != std::string::npos);
  if (GENERATE(false, true)) CHECK(desk.ledger->ingest(noise, 1)->applied == 0);
  CHECK(desk.ledger->ingest(real, 2)->applied == 1);
  CHECK(desk.ledger->quarantine().empty());
}

TEST_CASE("what the copy of a device goes on to say before its branch comes takes nothing back that this device said") {
  Forger twin, later;
  later.key = twin.key;
  Device tablet("tablet", ":memory:", twin.key);
  twin.card = tablet.ledger->self();
  later.book = twin.book;
  later.card = {twin.key.public_key(), twin.card.incarnation + 5, "tablet"};
  twin.chain = chain_start(twin.book, kShelf, twin.card.id());
  later.chain = chain_start(twin.book, kShelf, later.card.id());

  REQUIRE(tablet.put(twin.book, kOne, kGuarded, std::string("50")).dot == Dot{twin.card.id(), 1, 0});
  const Stamp after{kThen.raw + (std::uint64_t{1} << 40)};
  // The copy said "60" under that very number, and then "61" in its place.
  const Batch branch = twin.says({Write{kOne, kBox, kGuarded, std::string("60"), {}}}, kThen);
  REQUIRE(tablet.ledger->ingest(later.says({Write{kOne, kBox, kGuarded, std::string("61"), {Dot{twin.card.id(), 1, 0}}}}, after), 1)->applied == 1);
  REQUIRE(tablet.ledger->ingest(branch, 1)->applied == 1);
  CHECK(answers(tablet, twin.book) == 2);
  std::set<std::string> words;
  const auto state = tablet.ledger->entity(twin.book, kOne);
  for (const CellValue& held : state->find(kGuarded)->values) words.insert(text_of(held.value));
  CHECK(words == std::set<std::string>{"50", "61"});
  CHECK(tablet.ledger->open_questions().size() == 1);
  CHECK(tablet.ledger->verify().faults.empty());
}

TEST_CASE("an answer in the other branch of a copied device is not overruled by what replaced this branch's answer under the same number") {
  TemporaryFolder folder;
  Forger twin;
  const BookId book = twin.book;
  std::set<std::string> expected;
  {
    Device tablet("tablet", folder / "a.db", twin.key);
    twin.card = tablet.ledger->self();
    twin.chain = chain_start(book, kShelf, twin.card.id());
    tablet.put(book, kOne, kGuarded, std::string("50"));
  }
  const Batch branch = twin.says({Write{kOne, kBox, kGuarded, std::string("60"), {}}}, kThen);
  Device desk("desk");
  const auto words = [&](const Device& device) {
    std::set<std::string> out;
    const auto state = device.ledger->entity(book, kOne);
    for (const CellValue& held : state->find(kGuarded)->values) out.insert(text_of(held.value));
    return out;
  };
  const bool copied = GENERATE(true, false);
  std::filesystem::path file = folder / "a.db";
  if (copied) {
    // Opened at another place, it goes on as another author.
    std::filesystem::copy_file(file, folder / "b.db");
    file = folder / "b.db";
  }
  Device tablet("tablet", file, twin.key);
  if (copied) {
    REQUIRE(tablet.ledger->self().id() != twin.card.id());
    tablet.put(book, kOne, kGuarded, std::string("49"));
    expected = {"49", "60"};  // "50" was taken back by whoever said it
  } else {
    REQUIRE(pour(tablet, desk, book).applied == 1);
    desk.put(book, kOne, kGuarded, std::string("51"));
    REQUIRE(pour(desk, tablet, book).applied == 1);
    expected = {"50", "51", "60"};  // the desk saw "50", but that can't be told here
  }
  REQUIRE(tablet.ledger->ingest(branch, 1)->applied == 1);
  CHECK(words(tablet) == expected);
  CHECK(tablet.ledger->open_questions().size() == 1);
  CHECK(tablet.ledger->verify().faults.empty());
  // Another that holds that branch gets all of it.
  Device other("other");
  REQUIRE(other.ledger->ingest(branch, 1)->applied == 1);
  pour(tablet, other, book);
  CHECK(words(other) == expected);
  CHECK(other.ledger->open_questions().size() == 1);
  REQUIRE(tablet.ledger->ingest(branch, 1));
  CHECK(words(tablet) == expected);
}

TEST_CASE("words that are said again with more to replace than one entry holds are said in two") {
  Forger twin;
  Device tablet("tablet", ":memory:", twin.key);
  twin.card = tablet.ledger->self();
  twin.chain = chain_start(twin.book, kShelf, twin.card.id());
  for (int i = 0; i < 10; ++i) {
    Forger other;
    other.book = twin.book;
    other.chain = chain_start(other.book, kShelf, other.card.id());
    REQUIRE(tablet.ledger->ingest(other.says({Write{kOne, kBox, kGuarded, std::int64_t{i}, {}}}, kThen), 1)->applied == 1);
  }
  // Its first word replaces all ten, so that what is said in its place later replaces no more than that one.
  tablet.put(twin.book, kOne, kGuarded, std::string("50"));
  const EntityState seen = *tablet.ledger->entity(twin.book, kOne);
  const std::string agreed(131'000, 'a'), label(131'000, 'b');
  Draft draft(twin.book, kShelf, kEdit);
  draft.put(seen, kGuarded, agreed);
  draft.put(seen, kLabel, label);
  REQUIRE(tablet.ledger->append(draft));
  const auto report = tablet.ledger->ingest(twin.says({Write{kOne, kBox, kGuarded, std::string("60"), {}}}, kThen), 1);
  REQUIRE(report);
  CHECK(report->applied == 1);
  const auto state = tablet.ledger->entity(twin.book, kOne);
  CHECK(text_of(*state->get(kLabel)) == label);
  std::set<std::string> words;
  for (const CellValue& held : state->find(kGuarded)->values) words.insert(text_of(held.value));
  CHECK(words == std::set<std::string>{agreed, "60"});
  CHECK(tablet.ledger->open_questions().size() == 1);
  check_that_it_crosses(tablet, twin.book);
}

TEST_CASE("what a copied device's other branch says is said again in the book in which it was said") {
  TemporaryFolder folder;
  Forger one, two;
  two.key = one.key;
  const EntityId second = make_id<EntityId>(kNoon + 2);
  two.book = make_id<BookId>(kNoon + 3);
  {
    Device tablet("tablet", folder / "a.db", one.key);
    one.card = two.card = tablet.ledger->self();
    tablet.put(one.book, kOne, kGuarded, std::string("50"));
    tablet.put(two.book, second, kGuarded, std::string("50"));
  }
  for (Forger* twin : {&one, &two}) twin->chain = chain_start(twin->book, kShelf, twin->card.id());
  std::filesystem::copy_file(folder / "a.db", folder / "b.db");
  Device tablet("tablet", folder / "b.db", one.key);
  tablet.put(one.book, kOne, kGuarded, std::string("49"));
  tablet.put(two.book, second, kGuarded, std::string("49"));
  Batch batch = one.says({Write{kOne, kBox, kGuarded, std::string("60"), {}}}, kThen);
  Batch other = two.says({Write{second, kBox, kGuarded, std::string("60"), {}}}, kThen);
  batch.books.push_back(other.books[0]);
  other.entries[0].book = other.seals[0].book = 1;
  batch.entries.push_back(other.entries[0]);
  batch.seals.push_back(other.seals[0]);
  REQUIRE(tablet.ledger->ingest(batch, 1)->applied == 2);
  CHECK(tablet.ledger->open_questions().size() == 2);
  CHECK(tablet.ledger->entities(one.book, kBox).size() == 1);
  CHECK(tablet.ledger->entities(two.book, kBox).size() == 1);
  CHECK(tablet.ledger->entity(two.book, second)->find(kGuarded)->values.size() == 2);
  check_that_it_crosses(tablet, one.book);
  check_that_it_crosses(tablet, two.book);
}

TEST_CASE("who follows a forger's last time stamp is believed too where what they replace has two entries or is not here") {
  Forger forger;
  Forger twin = forger;  // the same key, the same numbers
  Device near("near"), far("far");
  REQUIRE(near.ledger->ingest(forger.says({Write{kOne, kBox, kGuarded, std::string("40"), {}}}, kNewestStamp), 1)->applied == 1);
  REQUIRE(near.put(forger.book, kOne, kGuarded, std::string("52")).stamp > kNewestStamp);
  near.put(forger.book, kOne, kLabel, std::string("and on"));
  const FieldTag other = GENERATE(kCount, kGuarded, kLabel);
  const bool here = other != kLabel;
  if (here) REQUIRE(far.ledger->ingest(twin.says({Write{kOne, kBox, other, std::string("41"), {}}}, kThen), 1)->applied == 1);
  const Batch words = near.ledger->missing(forger.book, {{forger.card.id(), 1, {}}}, 1 << 20);
  REQUIRE(words.entries.size() == 2);
  if (here && GENERATE(true, false)) CHECK(far.ledger->ingest(near.ledger->missing(forger.book, {}, 1 << 20), 1)->forks.size() == 1);
  for (int times = 0; times < 2; ++times) REQUIRE(far.ledger->ingest(words, 1));
  CHECK(far.ledger->entity(forger.book, kOne)->find(kLabel) != nullptr);
  const auto state = far.ledger->entity(forger.book, kOne);
  REQUIRE(state->find(kGuarded) != nullptr);
  CHECK(text_of(state->find(kGuarded)->latest().value) == "52");
  CHECK(far.ledger->verify().faults.empty());
}

TEST_CASE("thousands of words that each replace the next, which comes later, are put in order") {
  const BookId book = make_id<BookId>(kNoon);
  Batch batch;
  batch.books = {{book, kShelf}};
  constexpr std::size_t kChains = 6'000;
  std::vector<Forger> forgers(kChains);
  for (Forger& forger : forgers) {
    forger.book = book;
    forger.chain = chain_start(book, kShelf, forger.card.id());
  }
  for (std::size_t i = 0; i < kChains; ++i) {
    Write write{kOne, kBox, kGuarded, std::int64_t(i), {}};
    if (i + 1 < kChains) write.replaces = {Dot{forgers[i + 1].card.id(), 1, 0}};
    Batch one = forgers[i].says({write}, Stamp{kThen.raw + kChains - i});
    const auto author = static_cast<std::uint32_t>(i);
    batch.authors.push_back(one.authors[0]);
    one.entries[0].author = one.seals[0].author = author;
    batch.entries.push_back(std::move(one.entries[0]));
    batch.seals.push_back(one.seals[0]);
  }
  Device desk("desk");
  REQUIRE(desk.ledger->ingest(batch, 1));
  REQUIRE(desk.ledger->ingest(batch, 1));
  CHECK(desk.ledger->heads(book).size() == kChains);
  CHECK(answers(desk, book) == 1);
  CHECK(desk.ledger->verify().faults.empty());
}

TEST_CASE("a chain whose own branch was taken back and whose other branch lacks something stays known as parted, at the next start too") {
  TemporaryFolder folder;
  Forger twin, lost;
  lost.book = twin.book;
  lost.chain = chain_start(lost.book, kShelf, lost.card.id());
  const Batch word = lost.says({Write{kOne, kBox, kGuarded, std::string("55"), {}}}, kThen);
  Batch branch;
  {
    Device tablet("tablet", folder / "a.db", twin.key);
    twin.card = tablet.ledger->self();
    twin.chain = chain_start(twin.book, kShelf, twin.card.id());
    tablet.put(twin.book, kOne, kGuarded, std::string("50"));
    branch = twin.says({Write{kOne, kBox, kGuarded, std::string("60"), {Dot{lost.card.id(), 1, 0}}}}, Stamp{kThen.raw + 1});
    const auto report = tablet.ledger->ingest(branch, 1);
    REQUIRE(report);
    CHECK(report->gaps);
    CHECK(tablet.ledger->forks().size() == 1);
  }
  Device tablet("tablet", folder / "a.db", twin.key);
  CHECK(tablet.ledger->forks().size() == 1);
  REQUIRE(tablet.ledger->ingest(word, 1)->applied == 1);
  REQUIRE(tablet.ledger->ingest(branch, 1)->applied == 1);
  CHECK(answers(tablet, twin.book) == 2);
  CHECK(tablet.ledger->open_questions().size() == 1);
  CHECK(tablet.ledger->forks().size() == 1);
  CHECK(tablet.ledger->verify().faults.empty());
}

TEST_CASE("of a chain that a backup sealed and of which a branch was taken back, no seal is left that does not hold") {
  TemporaryFolder folder;
  Forger twin, lost;
  lost.book = twin.book;
  {
    Device tablet("tablet", folder / "a.db", twin.key);
    twin.card = tablet.ledger->self();
    tablet.put(twin.book, kOne, kLabel, std::string("both have it"));
    const Batch first = tablet.ledger->missing(twin.book, {}, 1 << 20);
    twin.chain = chain_next(chain_start(twin.book, kShelf, twin.card.id()), digest_of(first.entries.at(0).body));
    twin.seq = 1;
    tablet.put(twin.book, kOne, kGuarded, std::string("50"));
    REQUIRE(back_up(folder / "a.db", folder / "backup.db", &twin.key));
  }
  REQUIRE(restore(folder / "backup.db", folder / "a.db", true));
  Device tablet("tablet", folder / "a.db", twin.key);
  const Batch branch = twin.says({Write{kOne, kBox, kGuarded, std::string("60"), {Dot{lost.card.id(), 1, 0}}}}, Stamp{kThen.raw + (std::uint64_t{1} << 40)});
  const auto report = tablet.ledger->ingest(branch, 1);
  REQUIRE(report);
  CHECK(report->gaps);
  CHECK(tablet.ledger->heads(twin.book).size() == 2);  // what was said again too
  CHECK(tablet.ledger->verify().faults.empty());
  REQUIRE(tablet.ledger->ingest(branch, 1)->applied == 1);
  CHECK(answers(tablet, twin.book) == 2);
  CHECK(tablet.ledger->verify().faults.empty());
}

TEST_CASE("what nobody proved takes no room from what honest devices have to put aside") {
  Forger forger, twin, noise;
  twin = forger;
  Device desk("desk");
  REQUIRE(desk.ledger->ingest(forger.says({Write{kOne, kBox, kLabel, std::string("of one copy"), {}}}, kThen), 1)->applied == 1);
  for (int i = 0; i < 80; ++i) {
    Batch batch = noise.says({Write{kOne, kBox, kCount, std::int64_t{i}, {}}}, kThen);
    batch.entries[0].seq = batch.seals[0].seq = 1;
    batch.entries[0].body = Bytes(kMaxEntryBytes - static_cast<std::size_t>(i));
    const auto report = desk.ledger->ingest(batch, 2);
    REQUIRE(report);
    CHECK(report->quarantined == 1);
  }
  const auto report = desk.ledger->ingest(twin.says({Write{kOne, kBox, kLabel, std::string("of the other"), {}}}, kThen), 3);
  REQUIRE(report);
  CHECK(report->forks.size() == 1);
  const auto aside = desk.ledger->quarantine();
  CHECK(aside.size() < 12);  // 2 MB of entries of 256 KiB, and the one
  CHECK(aside.back().author == forger.card.id());
}

TEST_CASE("what is put aside is bounded by rows too, so that empty entries do not fill the disk") {
  Device desk("desk");
  Batch batch;
  batch.authors = {AuthorCard{DeviceKey::generate().public_key(), 1, "faulty"}};
  batch.books = {{make_id<BookId>(kNoon), kShelf}};
  batch.entries.assign(99'000, BatchEntry{0, 0, 1, {}});
  for (std::size_t i = 0; i < batch.entries.size(); ++i) batch.entries[i].seq = i + 1;
  const auto noise = desk.ledger->ingest(batch, 1);
  REQUIRE(noise);
  CHECK(noise->quarantined == 99'000);
  CHECK(desk.ledger->quarantine().size() < 10'000);
  // What is proved to come from somebody is never passed over; there is an end to it too.
  Forger forger;
  Batch large = forger.says({Write{kOne, kBox, kGuarded, std::int64_t{1}, {}}, Write{kOne, kBox, kGuarded, std::int64_t{2}, {}}}, kThen);
  for (std::uint64_t i = 1; i < 100; ++i) {
    Batch next = forger.says({Write{kOne, kBox, kLabel, std::string(200'000, 'x'), {}}}, Stamp{kThen.raw + i});
    large.entries.push_back(std::move(next.entries[0]));
    large.seals = std::move(next.seals);
  }
  const std::size_t before = desk.ledger->quarantine().size();
  const auto refused = desk.ledger->ingest(large, 1);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().what.find("put aside") != std::string::npos);
  CHECK(desk.ledger->quarantine().size() == before);
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
