// Frames as a hostile peer may send them, and the messages in them. `frame` takes the bytes as they cross; `message` puts its
// input behind a sound header, so that the fuzzer need not guess one, compressed or not.

#include <zstd.h>

#include "sync/wire/messages.h"
#include "tests/fuzz/devices.h"
#include "tests/fuzz/target_list.h"
#include "tests/support/small_registry.h"

namespace weavelog::fuzz {
namespace {

constexpr std::uint8_t kFrameVersion = 1;
constexpr std::uint8_t kCompressed = 0x80;

void take(ByteView frame) {
  const auto message = decode_frame(frame);
  if (!message) return;
  Bytes again;
  try {
    again = encode_frame(*message);
  } catch (const std::length_error&) {
    return;  // what was inflated to more than a frame holds can be read, but is not sent on
  }
  const auto twice = decode_frame(again);
  must_hold(twice && *twice == *message, "a message does not survive being sent on");
}

std::vector<Message> messages() {
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
          PackedEntries{{1, one.ledger->missing(packed, 1 << 20)}},
          StubsKnown{2, {1}},
          HeldBack{1},
          ContentWish{book_of(0), {7}, 65'536},
          ContentPart{book_of(0), {7}, 70'000, 69'990, Bytes(10, 3)},
          ContentAbsent{book_of(0), {7}, 1},
          ContentOffer{{{book_of(0), {7}, 70'000}, {book_of(1), {8}, 300}}},
          ContentSettled{2}};
}

}  // namespace

void run_frame(ByteView input) { take(input); }

std::vector<Bytes> seeds_frame() {
  std::vector<Bytes> out;
  for (const Message& message : messages()) out.push_back(encode_frame(message));
  return out;
}

void run_message(ByteView input) {
  Input in(input);
  const std::uint8_t number = in.byte();
  const ByteView body = in.rest();
  Bytes frame{kFrameVersion, static_cast<std::uint8_t>(number & 0x7f)};
  if ((number & kCompressed) == 0) {
    frame.insert(frame.end(), body.begin(), body.end());
  } else {
    frame[1] |= kCompressed;
    for (std::size_t size = body.size();; size >>= 7) {
      frame.push_back(static_cast<std::uint8_t>((size & 0x7f) | (size >= 0x80 ? 0x80 : 0)));
      if (size < 0x80) break;
    }
    const std::size_t at = frame.size();
    frame.resize(at + ZSTD_compressBound(body.size()));
    const std::size_t packed = ZSTD_compress(frame.data() + at, frame.size() - at, body.data(), body.size(), 1);
    must_hold(ZSTD_isError(packed) == 0, "zstd");
    frame.resize(at + packed);
  }
  take(frame);
}

std::vector<Bytes> seeds_message() {
  std::vector<Bytes> out;
  for (const Message& message : messages()) {
    Bytes frame = encode_frame(message);
    if ((frame[1] & kCompressed) != 0) continue;
    frame.erase(frame.begin());
    out.push_back(frame);
    frame[0] |= kCompressed;
    out.push_back(std::move(frame));
  }
  return out;
}

}  // namespace weavelog::fuzz
