// The bytes of "who is near", and the list of who answered.

#include "sync/net/nearby_datagram.h"

#include <catch2/catch.hpp>

#include "core/base/utf8.h"
#include "sync/net/nearby_list.h"

using namespace weavelog;
using namespace std::chrono_literals;

namespace {

NearbyOffer offer(std::uint8_t number, const std::string& name = "Harbour desk") {
  NearbyOffer out;
  out.key.fill(number);
  out.fingerprint.fill(0xc0);
  out.port = 26110;
  out.name = name;
  out.event = "Harbour Open";
  return out;
}

NearbyNonce nonce() {
  NearbyNonce out;
  for (std::size_t i = 0; i < out.size(); ++i) out[i] = static_cast<std::uint8_t>(i);
  return out;
}

const auto kStart = NearbyList::Time{} + 1h;

}  // namespace

TEST_CASE("near: query and answer come back as they were, and an answer is never larger than its query",
          "[near]") {
  const Bytes query = nearby_query(nonce());
  CHECK(query.size() == kNearbyBytes);
  CHECK(read_nearby_query(query) == nonce());
  CHECK_FALSE(read_nearby_answer(query));

  const auto read = read_nearby_answer(nearby_answer(nonce(), offer(1)));
  REQUIRE(read);
  CHECK(read->nonce == nonce());
  CHECK(read->offer == offer(1));
  CHECK_FALSE(read_nearby_query(nearby_answer(nonce(), offer(1))));

  NearbyOffer longest = offer(2, std::string(5000, 'n'));
  longest.port = 65535;
  longest.event = std::string(4999, 'e');
  const Bytes answer = nearby_answer(nonce(), longest);
  CHECK(answer.size() <= query.size());
  REQUIRE(read_nearby_answer(answer));
  CHECK(read_nearby_answer(answer)->offer.name.ends_with("n…"));
}

TEST_CASE("near: a long name is cut between characters, whatever they are made of", "[near]") {
  for (const std::string one : {"é", "王", "👩‍🔧", "e\xCC\x81"}) {
    std::string name;
    while (name.size() < 400) name += one;
    const auto read = read_nearby_answer(nearby_answer(nonce(), offer(1, name)));
    REQUIRE(read);
    CHECK(read->offer.name.size() <= kNearbyName);
    CHECK(read->offer.name.size() > kNearbyName / 2);
    CHECK_FALSE(first_invalid_utf8(read->offer.name));
    CHECK(name.starts_with(read->offer.name.substr(0, read->offer.name.size() - 3)));
  }
}

TEST_CASE("near: every byte that is missing, more or another is noticed or harmless", "[near]") {
  const Bytes query = nearby_query(nonce());
  const Bytes answer = nearby_answer(nonce(), offer(1));
  for (std::size_t size = 0; size < answer.size(); ++size)
    CHECK_FALSE(read_nearby_answer(ByteView(answer).first(size)));
  for (std::size_t size = 0; size < query.size(); ++size)
    CHECK_FALSE(read_nearby_query(ByteView(query).first(size)));
  for (Bytes more : {query, answer}) {
    more.push_back(0);
    CHECK_FALSE(read_nearby_query(more));
    CHECK_FALSE(read_nearby_answer(more));
  }
  for (std::size_t i = 0; i < query.size(); ++i) {
    Bytes other = query;
    other[i] ^= 0x41;
    const auto read = read_nearby_query(other);
    CHECK(read.has_value() == (i >= 6 && i < 22));  // only another nonce is another query
  }
  for (std::size_t i = 0; i < answer.size(); ++i) {
    for (int value = 0; value < 256; ++value) {
      Bytes other = answer;
      other[i] = static_cast<std::uint8_t>(value);
      if (const auto read = read_nearby_answer(other)) {
        CHECK_FALSE(first_invalid_utf8(read->offer.name));
        CHECK(nearby_answer(read->nonce, read->offer) == other);
      }
    }
  }
}

TEST_CASE("near: names that a terminal would obey, blank ones and port 0 are no answer", "[near]") {
  for (const std::string name : {"", "   ", "a\x1b[2Jb", "a\nb", "a\x7f",
                                 "a\xc2\x9b"
                                 "31m"})
    CHECK_FALSE(read_nearby_answer(nearby_answer(nonce(), offer(1, name))));
  CHECK(read_nearby_answer(nearby_answer(nonce(), offer(1, "Café du Lac"))));
  NearbyOffer without = offer(1);
  without.port = 0;
  CHECK_FALSE(read_nearby_answer(nearby_answer(nonce(), without)));
  without.port = 1;
  without.event = "bad \xff";  // what is not UTF-8 is not sent
  CHECK(read_nearby_answer(nearby_answer(nonce(), without))->offer.event.empty());
}

TEST_CASE("near: a server heard at several addresses is one row, at the address that serves best", "[near]") {
  NearbyList list;
  list.hear(offer(1), "127.0.0.1", kStart);
  list.hear(offer(1), "192.0.2.7", kStart + 1s);
  list.hear(offer(1), "198.51.100.7", kStart + 2s);
  REQUIRE(list.servers().size() == 1);
  CHECK(list.servers()[0].address.text() == "192.0.2.7:26110");
  // The best one falls silent.
  list.hear(offer(1), "127.0.0.1", kStart + 14s);
  list.expire(kStart + 16s);
  CHECK(list.servers()[0].address.text() == "198.51.100.7:26110");
  list.expire(kStart + 17s);
  CHECK(list.servers()[0].address.text() == "127.0.0.1:26110");
  list.expire(kStart + 28s);
  CHECK(list.servers().size() == 1);
  list.expire(kStart + 29s);
  CHECK(list.servers().empty());
}

TEST_CASE("near: the newest name counts; another certificate is another server", "[near]") {
  NearbyList list;
  list.hear(offer(1, "Old name"), "192.0.2.7", kStart);
  list.hear(offer(1, "New name"), "192.0.2.7", kStart);
  NearbyOffer other = offer(1, "Another");
  other.fingerprint.fill(0xc1);
  list.hear(other, "192.0.2.8", kStart);
  REQUIRE(list.servers().size() == 2);
  CHECK(list.servers()[0].offer.name == "Another");
  CHECK(list.servers()[1].offer.name == "New name");

  KnownHost host;
  host.key.fill(1);
  host.fingerprint.fill(0xc0);
  CHECK(claimed_host({host}, offer(1)));
  CHECK_FALSE(claimed_host({host}, other));
  CHECK_FALSE(claimed_host({host}, offer(2)));
}

TEST_CASE("near: a flood of names fills the list and no more", "[near]") {
  NearbyList list;
  list.hear(offer(0), "192.0.2.7", kStart);
  for (int i = 1; i < 1000; ++i) {
    NearbyOffer one = offer(1);
    one.key[0] = static_cast<std::uint8_t>(i);
    one.key[1] = static_cast<std::uint8_t>(i / 256);
    list.hear(one, "192.0.2.8", kStart);
    list.hear(offer(0), "192.0.2." + std::to_string(i), kStart);
  }
  CHECK(list.servers().size() == NearbyList::kServers);
  // Those that were heard go on being heard.
  list.hear(offer(0), "192.0.2.7", kStart + 10s);
  list.expire(kStart + 15s);
  REQUIRE(list.servers().size() == 1);
  CHECK(list.servers()[0].address.host == "192.0.2.7");
}
