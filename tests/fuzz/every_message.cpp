#include "tests/fuzz/every_message.h"

#include "tests/fuzz/devices.h"
#include "tests/support/small_registry.h"

namespace weavelog::fuzz {

std::vector<Message> every_message() {
  FuzzDevice one("one", 1), two("two", 2);
  for (std::uint8_t book = 0; book < 3; ++book)
    for (std::uint8_t box = 0; box < 3; ++box) one.put(book_of(book), box, testing::kLabel, std::string("drawer of oak"));
  two.put(book_of(0), 0, testing::kGuarded, std::int64_t{3});
  Hello hello;
  hello.card = one.ledger->self();
  hello.wall_ms = 1'800'000'000'000;
  hello.extra = {1, 2};
  Standing standing;
  standing.books = 3;
  standing.token.fill(5);
  Refusal refusal{2, "the code is wrong", "ask for another"};
  Offer offer;
  for (std::uint8_t book = 0; book < 3; ++book) offer.books.push_back({book_of(book), testing::kShelf, one.ledger->heads(book_of(book))});
  offer.wanted.resize(2);
  Stubs stubs;
  stubs.stubs.push_back(sign_stub(two.key, "two", book_of(1), testing::kShelf, 1'800'000'000'000));
  std::deque<BookHeads> lacking;
  for (std::uint8_t book = 0; book < 3; ++book) lacking.push_back({book_of(book), testing::kShelf, {}});
  std::deque<BookHeads> packed = lacking;
  return {hello,
          MemberProof{},
          PairingProof{},
          Welcome{},
          refusal,
          standing,
          Reconcile{{0x61, 0, 0, 0}},
          Doubt{},
          offer,
          Holding{offer.books},
          Entries{1, one.ledger->missing(lacking, 1 << 20)},
          Ack{1},
          Agree{3, 4, {}},
          InvitationWish{1, 60'000},
          InvitationGrant{1, {}, 1'800'000'000'000},
          stubs,
          Forks{{{offer.books[0], {one.ledger->self().id()}}}},
          DevicesWish{},
          RevocationWish{two.key.public_key()},
          Devices{{{two.key.public_key(), "two", 3, 1'800'000'000'000, 0, 7}}},
          PackedEntries{{1, one.ledger->missing(packed, 1 << 20)}},
          StubsKnown{2, {1}},
          HeldBack{1},
          ContentWish{book_of(0), {7}, 65'536},
          ContentPart{book_of(0), {7}, 70'000, 69'990, Bytes(10, 3)},
          ContentAbsent{book_of(0), {7}, 1},
          ContentOffer{{{book_of(0), {7}, 70'000}, {book_of(1), {8}, 300}}},
          ContentSettled{2},
          DeviceChange{two.key.public_key(), "Bench 2", 3}};
}

const std::vector<Bytes>& every_frame() {
  static const std::vector<Bytes> frames = [] {
    std::vector<Bytes> out;
    for (const Message& message : every_message()) out.push_back(encode_frame(message));
    return out;
  }();
  return frames;
}

}  // namespace weavelog::fuzz
