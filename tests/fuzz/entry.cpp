// Entries as other devices wrote them, and the packed rows made of them: decoding is total, and what decodes can be written again. (An
// entry may have several encodings: the bytes that came are what is hashed, stored and sent on.)

#include "core/log/cell.h"
#include "core/log/entry.h"
#include "tests/fuzz/devices.h"
#include "tests/fuzz/target_list.h"
#include "tests/support/small_registry.h"

namespace weavelog::fuzz {
namespace {

AuthorId author() {
  AuthorId id;
  id.bytes.fill(7);
  return id;
}

}  // namespace

void run_entry(ByteView input) {
  const auto entry = decode_entry(input, author());
  if (!entry) return;
  must_hold(entry->writes.size() <= kMaxWritesPerEntry, "an entry of more writes than it may have");
  const auto again = decode_entry(encode_entry(*entry, author()), author());
  must_hold(again && *again == *entry, "an entry does not survive being written again");
}

std::vector<Bytes> seeds_entry() {
  Entry entry;
  entry.seq = 3;
  entry.stamp = Stamp::of(1'800'000'000'123, 4);
  entry.schema = 1;
  entry.action = testing::kEdit;
  const Dot own{author(), 2, 0};
  Dot other{author(), 9, 3};
  other.author.bytes.fill(9);
  const Value values[] = {std::monostate{}, std::int64_t{-7}, std::string("Grüße"), true,
                          Quantity{{245, 1}, Unit::kilogram_force}, Bytes{1, 2, 3}, box_of(8), book_of(9)};
  std::uint8_t box = 0;
  for (const Value& value : values) {
    entry.writes.push_back({box_of(box), testing::kBox, testing::kLabel, value, {own}});
    entry.writes.push_back({box_of(box++), testing::kBox, testing::kGuarded, value, {own, other}});
  }
  std::vector<Bytes> out{encode_entry(entry, author())};
  entry.writes.resize(1);
  out.push_back(encode_entry(entry, author()));
  return out;
}

void run_state(ByteView input) {
  const auto state = decode_state(book_of(0), box_of(0), input);
  if (!state) return;
  const Bytes again = encode_state(*state);
  const auto twice = decode_state(book_of(0), box_of(0), again);
  must_hold(twice && *twice == *state, "a packed entity row does not survive being packed again");
}

std::vector<Bytes> seeds_state() {
  FuzzDevice one("one", 1), two("two", 2);
  one.put(book_of(0), 0, testing::kLabel, std::string("drawer"));
  one.put(book_of(0), 0, testing::kGuarded, std::int64_t{3});
  two.put(book_of(0), 0, testing::kGuarded, Quantity{{245, 1}, Unit::kilogram_force});
  (void)one.ledger->ingest(two.ledger->missing(book_of(0), {}, 1 << 20), 1);
  std::vector<Bytes> out;
  for (const auto& state : one.ledger->entities(book_of(0))) out.push_back(encode_state(state));
  return out;
}

}  // namespace weavelog::fuzz
