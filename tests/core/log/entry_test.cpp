#include "core/log/entry.h"

#include <catch2/catch.hpp>
#include <random>

#include "core/log/author.h"
#include "core/log/draft.h"
#include "tests/support/small_registry.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

const AuthorId kAuthor{{1, 2, 3}};
const AuthorId kOther{{9}};

Entry sample() {
  Entry entry;
  entry.seq = 300;
  entry.stamp = Stamp::of(1'800'000'000'000, 7);
  entry.schema = 4;
  entry.action = kEdit;
  const EntityId one{{1}}, two{{2}};
  entry.writes = {{one, kBox, kLabel, std::string("Ōnuma 大沼"), {}},
                  {one, kBox, kCount, std::int64_t{-1}, {{kAuthor, 299, 2}, {kOther, 12, 0}}},
                  {one, kBox, kGuarded, Quantity{{2450, 2}, Unit::kilogram_force}, {}},
                  {two, kBox, FieldTag{4000}, Value{}, {{kAuthor, 1, 0}}},
                  {two, kBox, FieldTag{4001}, true, {}},
                  {two, kBox, FieldTag{4002}, Bytes{0, 255}, {}},
                  {two, kBox, FieldTag{4003}, EntityId{{5}}, {}},
                  {two, kBox, FieldTag{4004}, BookId{{6}}, {}}};
  return entry;
}

}  // namespace

TEST_CASE("an entry comes back as it went, with values as they were spoken") {
  const Bytes bytes = encode_entry(sample(), kAuthor);
  const auto back = decode_entry(bytes, kAuthor);
  REQUIRE(back);
  CHECK(*back == sample());
  CHECK(text_of(back->writes[2].value) == "24.50 kg");
}

TEST_CASE("a value of a kind that is not known yet is kept and sent on byte for byte") {
  for (const UnknownValue& later : {UnknownValue{40 * 4 + 0, {}}, UnknownValue{40 * 4 + 1, {0x96, 0x01}},
                                    UnknownValue{40 * 4 + 2, {1, 2, 3}}, UnknownValue{40 * 4 + 3, Bytes(16, 7)}}) {
    Entry entry = sample();
    entry.writes[0].value = later;
    const Bytes bytes = encode_entry(entry, kAuthor);
    const auto back = decode_entry(bytes, kAuthor);
    REQUIRE(back);
    CHECK(std::get<UnknownValue>(back->writes[0].value) == later);
    CHECK(encode_entry(*back, kAuthor) == bytes);
  }
}

TEST_CASE("one value has one encoding: padded integers are malformed") {
  Bytes bytes = encode_entry(sample(), kAuthor);
  bytes[0] = 0x81;  // the format number 1 in two bytes
  bytes.insert(bytes.begin() + 1, 0x00);
  const auto back = decode_entry(bytes, kAuthor);
  REQUIRE_FALSE(back);
  CHECK(back.error().code == FaultCode::malformed);
}

TEST_CASE("truncated, lengthened and changed entries are malformed or another entry, never a crash") {
  const Bytes whole = encode_entry(sample(), kAuthor);
  for (std::size_t cut = 0; cut < whole.size(); ++cut) CHECK_FALSE(decode_entry(ByteView(whole).first(cut), kAuthor));
  Bytes longer = whole;
  longer.push_back(0);
  CHECK_FALSE(decode_entry(longer, kAuthor));
  std::mt19937 random(5);
  for (int i = 0; i < 20'000; ++i) {
    Bytes changed = whole;
    for (int n = 0; n <= i % 3; ++n) changed[random() % changed.size()] = static_cast<std::uint8_t>(random());
    if (const auto back = decode_entry(changed, kAuthor)) CHECK_FALSE(back->writes.empty());
  }
}

TEST_CASE("an entry can't replace what its author had not written") {
  Entry entry = sample();
  entry.writes[1].replaces = {{kAuthor, 300, 0}};
  CHECK_FALSE(decode_entry(encode_entry(entry, kAuthor), kAuthor));
}

TEST_CASE("the chain binds book, kind and author, and every body") {
  const BookId book{{1}};
  const Digest start = chain_start(book, kShelf, kAuthor);
  CHECK(start != chain_start(BookId{{2}}, kShelf, kAuthor));
  CHECK(start != chain_start(book, BookKind{2}, kAuthor));
  CHECK(start != chain_start(book, kShelf, kOther));
  const Digest one = digest_of(as_bytes("one")), two = digest_of(as_bytes("two"));
  CHECK(chain_next(chain_next(start, one), two) != chain_next(chain_next(start, two), one));
}

TEST_CASE("a second thought about a field within one action takes the place of the first") {
  EntityState box;
  box.id = EntityId{{1}};
  box.kind = kBox;
  Draft draft({}, kShelf, kEdit);
  draft.put(box, kLabel, std::string("first"));
  draft.put(box, kCount, std::int64_t{1});
  draft.put(box, kLabel, std::string("second"));
  REQUIRE(draft.writes().size() == 2);
  for (const Write& write : draft.writes())
    if (write.tag == kLabel) CHECK(text_of(write.value) == "second");
}
