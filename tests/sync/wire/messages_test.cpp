#include "sync/wire/messages.h"

#include <catch2/catch.hpp>
#include <random>
#include <set>

using namespace weavelog;

namespace {

Entries sample(std::size_t entries) {
  std::mt19937 random(3);
  Entries out;
  out.number = 7;
  AuthorCard card{{1, 2, 3}, 9, "Tablet of the desk"};
  out.batch.authors = {card};
  out.batch.books = {{make_id<BookId>(1), BookKind{1}}};
  for (std::size_t i = 0; i < entries; ++i) out.batch.entries.push_back({0, 0, i + 1, Bytes(100, static_cast<std::uint8_t>(random()))});
  out.batch.seals = {{0, 0, entries + 1, Signature{4}, {Digest{5}}}};
  return out;
}

}  // namespace

TEST_CASE("every message comes back as it went") {
  const std::vector<Message> all{Hello{1, 2, {{1}, 2, "x"}, {3}, -5, {9, 9}},
                                 MemberProof{{1}},
                                 PairingProof{{1}, {2}, {3}},
                                 Welcome{{1}, 2, {3}, make_id<BookId>(4)},
                                 Refusal{3, "what", "do"},
                                 Standing{{1}, 2, {3}},
                                 Reconcile{{1, 2, 3}},
                                 Doubt{},
                                 Offer{{{make_id<BookId>(1), BookKind{2}, {{AuthorId{}, 4, {5}}}}}, {{6}}},
                                 Holding{{{make_id<BookId>(1), BookKind{2}, {}}}},
                                 sample(3),
                                 sample(900),
                                 Ack{1},
                                 Agree{1, 2, {3}},
                                 InvitationWish{1, -2},
                                 InvitationGrant{1, {2}, 3},
                                 Stubs{{{make_id<BookId>(1), BookKind{1}, -5, {1}, "desk", {2}}}},
                                 Forks{{{{make_id<BookId>(1), BookKind{1}, {{AuthorId{}, 4, {5}}}}, {AuthorId{{1}}}}}},
                                 DevicesWish{},
                                 RevocationWish{{1}},
                                 Devices{{{{1}, "lost", 3, 5, 0, 7}}},
                                 PackedEntries{},
                                 StubsKnown{3, {4}},
                                 HeldBack{5},
                                 ContentWish{make_id<BookId>(1), {2}, 65'536},
                                 ContentPart{make_id<BookId>(1), {2}, 70'000, 4, Bytes(kContentPartBytes, 7)},
                                 ContentAbsent{make_id<BookId>(1), {2}, 1},
                                 ContentOffer{{{make_id<BookId>(1), {2}, 3}, {make_id<BookId>(4), {5}, 6}}},
                                 ContentSettled{7},
                                 DeviceChange{{1}, "bench", 3}};
  std::set<std::size_t> kinds;
  for (const Message& message : all) kinds.insert(message.index());
  CHECK(kinds.size() == std::variant_size_v<Message>);
  for (const Message& message : all) {
    const auto back = decode_frame(encode_frame(message));
    REQUIRE(back);
    CHECK(*back == message);
  }
}

TEST_CASE("a large message is compressed and a frame that inflates beyond the limit is refused unread") {
  const Bytes frame = encode_frame(sample(900));
  CHECK(frame.size() < 60'000);
  CHECK((frame[1] & 0x80) != 0);
  Bytes bomb{1, 0x80 | 10, 0xff, 0xff, 0xff, 0xff, 0x0f, 1, 2, 3};
  CHECK(decode_frame(bomb).error().code == FaultCode::malformed);
}

TEST_CASE("a frame of a newer version and an unknown message ask for an update") {
  Bytes frame = encode_frame(Ack{1});
  frame[0] = 2;
  CHECK(decode_frame(frame).error().code == FaultCode::newer);
  frame[0] = 1;
  frame[1] = 77;
  CHECK(decode_frame(frame).error().code == FaultCode::newer);
}

TEST_CASE("truncated and changed frames are malformed or another message, never a crash, and cost no memory") {
  std::mt19937 random(11);
  for (const Bytes& whole : {encode_frame(sample(2)), encode_frame(sample(900)), encode_frame(Hello{})}) {
    for (std::size_t cut = 0; cut < std::min<std::size_t>(whole.size(), 300); ++cut) {
      const auto result = decode_frame(ByteView(whole).first(cut));
      CHECK_FALSE(result);
    }
    for (int i = 0; i < 3000; ++i) {
      Bytes changed = whole;
      changed[random() % changed.size()] ^= static_cast<std::uint8_t>(1 << (random() % 8));
      static_cast<void>(decode_frame(changed));
    }
  }
}

TEST_CASE("a count larger than what follows is refused before anything is allocated") {
  // Entries: number 1, then a list of authors that claims 2^40 members.
  const Bytes lie{1, 10, 1, 0x80, 0x80, 0x80, 0x80, 0x80, 0x20};
  CHECK(decode_frame(lie).error().code == FaultCode::malformed);
}

TEST_CASE("of somebody who has not proved who it is only what that takes is taken apart") {
  Hello hello;
  hello.card.device = std::string(60, 'n');
  hello.extra = Bytes(2000, 7);  // of a later version; compressed
  for (const Message& message : {Message(hello), Message(MemberProof{}), Message(PairingProof{}), Message(Welcome{}), Message(Refusal{1, std::string(700, 'w'), ""})}) {
    const auto back = decode_greeting(encode_frame(message));
    REQUIRE(back);
    CHECK(*back == message);
  }
  for (const Message& message : {Message(sample(3)), Message(PackedEntries{}), Message(Ack{}), Message(Standing{}), Message(Stubs{}), Message(DeviceChange{})}) {
    const auto back = decode_greeting(encode_frame(message));
    REQUIRE_FALSE(back);
    CHECK(back.error().code == FaultCode::malformed);
  }
  // Unread: neither what it holds nor what it would inflate to is looked at.
  CHECK(decode_greeting(Bytes{1, 0x80 | 20, 0xff}).error().what.find("out of turn") != std::string::npos);
  hello.extra = Bytes(kMaxGreetingBytes, 7);
  CHECK(encode_frame(hello).size() < 1000);
  CHECK(decode_frame(encode_frame(hello)));
  CHECK_FALSE(decode_greeting(encode_frame(hello)));
}

TEST_CASE("a device's name comes cut to what is shown, one without end is malformed, and so is a tail without end") {
  Entries named = sample(1);
  named.batch.authors[0].device = "one\ntwo " + std::string(300, 'x');
  const auto back = decode_frame(encode_frame(named));
  REQUIRE(back);
  CHECK(entries_in(*back)->batch.authors[0].device == "one two " + std::string(56, 'x'));
  named.batch.authors[0].device = std::string(2000, 'x');
  CHECK(decode_frame(encode_frame(named)).error().code == FaultCode::malformed);
  CHECK(decode_frame(encode_frame(PackedEntries{named})).error().code == FaultCode::malformed);
  named = sample(1);
  named.batch.seals[0].tail.resize(kMaxTail);
  CHECK(decode_frame(encode_frame(named)));
  named.batch.seals[0].tail.resize(kMaxTail + 1);
  CHECK(decode_frame(encode_frame(named)).error().code == FaultCode::malformed);
}
