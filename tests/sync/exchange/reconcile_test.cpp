#include "sync/exchange/reconcile.h"

#include <algorithm>
#include <boost/json.hpp>
#include <catch2/catch.hpp>
#include <random>
#include <set>
#include <stdexcept>

#include "tests/support/published.h"

namespace weavelog {
namespace {

using Items = std::vector<ReconcileItem>;
using Ids = std::set<Digest>;

constexpr std::uint64_t kDay = 1'790'000'000'000;  // any time in milliseconds

Digest random_id(std::mt19937_64& random) {
  Digest id{};
  for (auto& byte : id) byte = static_cast<std::uint8_t>(random());
  return id;
}

/// `count` items on `stamps` different stamps.
Items random_items(std::mt19937_64& random, std::size_t count, std::uint64_t stamps) {
  Items items;
  for (std::size_t i = 0; i < count; ++i) items.push_back({kDay + random() % stamps, random_id(random)});
  return items;
}

Items joined(Items first, const Items& second) {
  first.insert(first.end(), second.begin(), second.end());
  return first;
}

Ids ids_of(const Items& items) {
  Ids ids;
  for (const auto& item : items) ids.insert(item.id);
  return ids;
}

struct Run {
  Ids have;
  Ids need;
  std::size_t reported = 0;
  std::size_t round_trips = 0;
  std::size_t bytes = 0;
  std::size_t longest = 0;
};

/// Two sides until the initiator is finished; fails the test if they don't come to an end.
Run run(Reconciler& ours, Reconciler& theirs) {
  Run result;
  const auto count = [&](const Bytes& message) {
    result.bytes += message.size();
    result.longest = std::max(result.longest, message.size());
  };
  Bytes message = ours.initiate();
  while (!message.empty()) {
    REQUIRE(++result.round_trips < 20'000);
    count(message);
    auto answer = theirs.receive(message);
    REQUIRE(answer);
    REQUIRE(answer->have.empty());
    REQUIRE(answer->need.empty());
    REQUIRE(!answer->reply.empty());
    count(answer->reply);
    auto step = ours.receive(answer->reply);
    REQUIRE(step);
    result.have.insert(step->have.begin(), step->have.end());
    result.need.insert(step->need.begin(), step->need.end());
    result.reported += step->have.size() + step->need.size();
    message = std::move(step->reply);
  }
  return result;
}

Run run(const Items& ours, const Items& theirs, std::size_t frame_limit = 0) {
  Reconciler here(ours, frame_limit);
  Reconciler there(theirs, frame_limit);
  return run(here, there);
}

Bytes bytes_of(const std::string& hex) {
  Bytes bytes(hex.size() / 2);
  REQUIRE(from_hex(hex, bytes));
  return bytes;
}

Bytes message(std::initializer_list<int> after_version) {
  Bytes bytes{kReconcileVersion};
  for (const int byte : after_version) bytes.push_back(static_cast<std::uint8_t>(byte));
  return bytes;
}

bool is_malformed(const Outcome<Reconciler::Step>& step) {
  return !step && step.error().code == FaultCode::malformed && !step.error().what.empty() &&
         !step.error().where.empty() && !step.error().what_to_do.empty();
}

// Values of the protocol's public conformance tests; see fixtures/published/README.md.
struct Published {
  boost::json::value json = test::published_json("reconciliation.json");
  Items items;

  Published() {
    for (const auto& each : json.at("items").as_array()) {
      ReconcileItem item{each.at("stamp").to_number<std::uint64_t>(), {}};
      REQUIRE(from_hex(test::text_in(each, "id"), item.id));
      items.push_back(item);
    }
  }
};

}  // namespace

TEST_CASE("Fingerprints are those of the protocol's conformance tests", "[published]") {
  const Published published;
  IdSum sum;
  std::uint64_t count = 0;
  for (const auto& expected : published.json.at("fingerprints_of_first").as_array()) {
    sum.add(published.items[count].id);
    ++count;
    CHECK(to_hex(sum.fingerprint(count)) == expected.as_string().c_str());
  }
  REQUIRE(count == 3);
}

TEST_CASE("Messages are those of the protocol's conformance tests", "[published]") {
  const Published published;
  const Bytes first = bytes_of(test::text_in(published.json, "first_message"));
  SECTION("the first message of a small set") {
    CHECK(to_hex(Reconciler(published.items).initiate()) == to_hex(first));
  }
  SECTION("an initiator that gets its own message back is finished") {
    Reconciler side(published.items);
    const auto step = side.receive(side.initiate());
    REQUIRE(step);
    CHECK(step->reply.empty());
    CHECK(step->have.empty());
    CHECK(step->need.empty());
  }
  SECTION("a responder answers another version with its own") {
    const auto& newer = published.json.at("newer_version");
    const auto step = Reconciler(published.items).receive(bytes_of(test::text_in(newer, "message")));
    REQUIRE(step);
    CHECK(to_hex(step->reply) == test::text_in(newer, "answer"));
  }
  SECTION("two sides with one id of their own each") {
    Reconciler side({published.items[0], published.items[2]});
    Reconciler other({published.items[1], published.items[2]});
    (void)side.initiate();
    const auto step = side.receive(other.initiate());
    REQUIRE(step);
    CHECK(step->reply.empty());
    CHECK(step->have == std::vector<Digest>{published.items[0].id});
    CHECK(step->need == std::vector<Digest>{published.items[1].id});
  }
}

TEST_CASE("Sums of ids carry and borrow through all 256 bits") {
  Digest all_ones;
  all_ones.fill(0xff);
  Digest one{};
  one[0] = 1;
  const IdSum zero;
  IdSum sum;
  sum.add(all_ones);
  const auto before = sum.fingerprint(1);
  sum.add(one);
  CHECK(sum.fingerprint(0) == zero.fingerprint(0));
  IdSum part;
  part.add(one);
  sum.subtract(part);
  CHECK(sum.fingerprint(1) == before);

  std::mt19937_64 random(5);
  for (int i = 0; i < 200; ++i) {
    IdSum front;
    IdSum whole;
    IdSum back;
    for (int k = 0; k < 8; ++k) {
      Digest id = random_id(random);
      if (k % 2 == 0) id.fill(0xff);
      whole.add(id);
      (k < 4 ? front : back).add(id);
    }
    whole.subtract(front);
    REQUIRE(whole.fingerprint(4) == back.fingerprint(4));
  }
}

TEST_CASE("Numbers are written most significant digit first with as few digits as possible") {
  // The specification's rule ("Varint"); the values are worked out by hand.
  const std::vector<std::pair<std::uint64_t, std::string>> cases = {
      {0, "00"},     {1, "01"},       {127, "7f"},       {128, "8100"},
      {300, "822c"}, {16383, "ff7f"}, {16384, "818000"}, {0xffffffffffffffff, "81ffffffffffffffff7f"}};
  for (const auto& [value, hex] : cases) {
    Bytes out;
    append_range_varint(out, value);
    CHECK(to_hex(out) == hex);
  }
}

TEST_CASE("Exactly the differences are found") {
  struct Case {
    std::size_t common, ours, theirs;
  };
  const auto sizes =
      GENERATE(Case{0, 0, 0}, Case{0, 1, 0}, Case{0, 0, 1}, Case{0, 1, 1}, Case{1, 0, 0}, Case{1, 1, 0},
               Case{2, 0, 1}, Case{0, 2, 2}, Case{31, 0, 1}, Case{32, 1, 0}, Case{33, 1, 1}, Case{1000, 3, 4},
               Case{1000, 0, 50}, Case{1000, 700, 0}, Case{0, 1000, 0}, Case{0, 0, 1000}, Case{0, 1000, 1000},
               Case{100'000, 7, 9}, Case{100'000, 0, 1}, Case{0, 0, 100'000}, Case{50'000, 20'000, 30'000});
  const std::uint64_t stamps = GENERATE(as<std::uint64_t>{}, 1, 3, 1'000'000'000);
  CAPTURE(sizes.common, sizes.ours, sizes.theirs, stamps);
  std::mt19937_64 random(sizes.common + 31 * sizes.ours + 1009 * sizes.theirs + stamps);
  const Items common = random_items(random, sizes.common, stamps);
  const Items ours = random_items(random, sizes.ours, stamps);
  const Items theirs = random_items(random, sizes.theirs, stamps);
  const Run found = run(joined(common, ours), joined(common, theirs));
  CHECK(found.have == ids_of(ours));
  CHECK(found.need == ids_of(theirs));
  CHECK(found.reported == sizes.ours + sizes.theirs);
  CHECK(found.round_trips <= 4);
}

TEST_CASE("Equal sets are finished after one round trip of a few bytes") {
  const std::size_t count = GENERATE(as<std::size_t>{}, 0, 1, 31, 32, 10'000, 100'000);
  std::mt19937_64 random(count);
  const Items items = random_items(random, count, 1'000'000'000);
  Items shuffled = items;
  std::shuffle(shuffled.begin(), shuffled.end(), random);
  const Run found = run(items, shuffled);
  CHECK(found.reported == 0);
  CHECK(found.round_trips == 1);
  CHECK(found.bytes < 1100);
}

TEST_CASE("Five changed items of 10,000 cost a few thousand bytes") {
  std::mt19937_64 random(10'000);
  const Items common = random_items(random, 9'995, 1'000'000'000);
  const Items ours = random_items(random, 5, 1'000'000'000);
  const Items theirs = random_items(random, 5, 1'000'000'000);
  const Run found = run(joined(common, ours), joined(common, theirs));
  CHECK(found.have == ids_of(ours));
  CHECK(found.need == ids_of(theirs));
  CHECK(found.round_trips <= 3);
  CHECK(found.bytes < 16'384);
}

TEST_CASE("Doubled items count once") {
  std::mt19937_64 random(8);
  const Items items = random_items(random, 500, 20);
  const Items more = random_items(random, 3, 20);
  const Run found = run(joined(joined(items, items), more), joined(items, joined(more, joined(more, items))));
  CHECK(found.reported == 0);
  CHECK(found.round_trips == 1);
}

TEST_CASE("Stamps at both ends of their range, and ids that share long beginnings") {
  Items items;
  for (int i = 0; i < 200; ++i) {
    ReconcileItem item{i % 2 == 0 ? 0 : kInfiniteStamp - 1, {}};
    item.id[31] = static_cast<std::uint8_t>(i);
    items.push_back(item);
  }
  Items fewer = items;
  const Items missing{items[0], items[150], items[199]};
  for (const auto& gone : missing) std::erase(fewer, gone);
  const Run found = run(fewer, items);
  CHECK(found.have.empty());
  CHECK(found.need == ids_of(missing));
}

TEST_CASE("No message is longer than the frame limit, and the run still ends") {
  struct Case {
    std::size_t common, ours, theirs, limit;
  };
  const auto sizes = GENERATE(Case{0, 0, 0, 4096}, Case{0, 0, 10'000, 4096}, Case{0, 10'000, 0, 4096},
                              Case{0, 3000, 3000, 4096}, Case{10'000, 200, 300, 4096},
                              Case{20'000, 10, 10, 4096}, Case{20'000, 3000, 4000, 65'536});
  const std::uint64_t stamps = GENERATE(as<std::uint64_t>{}, 1, 1'000'000'000);
  CAPTURE(sizes.common, sizes.ours, sizes.theirs, sizes.limit, stamps);
  std::mt19937_64 random(sizes.common + sizes.limit + stamps);
  const Items common = random_items(random, sizes.common, stamps);
  const Items ours = random_items(random, sizes.ours, stamps);
  const Items theirs = random_items(random, sizes.theirs, stamps);
  const Run found = run(joined(common, ours), joined(common, theirs), sizes.limit);
  CHECK(found.have == ids_of(ours));
  CHECK(found.need == ids_of(theirs));
  CHECK(found.reported == sizes.ours + sizes.theirs);
  CHECK(found.longest <= sizes.limit);
  // Asking twice for what did not fit into a frame may cost no more than naming every id once.
  const std::size_t named = (sizes.common + sizes.ours + sizes.theirs) * 32;
  CHECK(found.bytes < 2 * named + 8192);
}

TEST_CASE("A limit on one side only is kept by that side") {
  std::mt19937_64 random(77);
  const Items ours = random_items(random, 2000, 1'000'000'000);
  const Items theirs = random_items(random, 2500, 1'000'000'000);
  const bool limit_is_ours = GENERATE(true, false);
  Reconciler here(ours, limit_is_ours ? 4096 : 0);
  Reconciler there(theirs, limit_is_ours ? 0 : 4096);
  const Run found = run(here, there);
  CHECK(found.have == ids_of(ours));
  CHECK(found.need == ids_of(theirs));
  CHECK(found.reported == ours.size() + theirs.size());
}

TEST_CASE("A frame limit or stamp that can't be is a broken invariant") {
  CHECK_THROWS_AS(Reconciler(Items{}, 4095), std::invalid_argument);
  CHECK_THROWS_AS(Reconciler(Items{}, 1), std::invalid_argument);
  CHECK_THROWS_AS(Reconciler(Items{{kInfiniteStamp, {}}}), std::invalid_argument);
  CHECK_NOTHROW(Reconciler(Items{{kInfiniteStamp - 1, {}}}, 4096));
}

TEST_CASE("An initiator takes no other version") {
  Reconciler side(Items{});
  (void)side.initiate();
  const auto newer = side.receive(Bytes{0x62});
  REQUIRE(!newer);
  CHECK(newer.error().code == FaultCode::newer);
  CHECK(is_malformed(side.receive(Bytes{0x60})));
  CHECK(is_malformed(side.receive(Bytes{0x00})));
}

TEST_CASE("Messages that break the format are malformed") {
  std::mt19937_64 random(3);
  const Items items = random_items(random, 100, 10);
  const bool initiator = GENERATE(true, false);
  Reconciler side(items);
  if (initiator) (void)side.initiate();
  CHECK(is_malformed(side.receive({})));
  CHECK(is_malformed(side.receive(Bytes{0x00})));
  CHECK(is_malformed(side.receive(Bytes{0xff, 0x00})));
  const std::vector<std::pair<std::string, Bytes>> cases = {
      {"ends after the stamp", message({0})},
      {"ends after the bound", message({0, 0})},
      {"ends within a number", message({0x81})},
      {"a leading zero digit", message({0x80, 0x01, 0, 0})},
      {"a number over 64 bits", message({0x82, 0x80, 0x80, 0x80, 0x80, 0x80, 0x80, 0x80, 0x80, 0x00, 0, 0})},
      {"a number without end", Bytes(1000, 0xff)},
      {"33 bytes of id", message({1, 33})},
      {"an id prefix cut short", message({1, 5, 1, 2})},
      {"an id at infinity", message({0, 1, 7, 0})},
      {"unknown mode", message({0, 0, 3})},
      {"fingerprint cut short", message({0, 0, 1, 1, 2, 3})},
      {"id list cut short", message({0, 0, 2, 1, 1, 2, 3})},
      {"a count far over the message",
       message({0, 0, 2, 0x81, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0x7f})},
      {"a range after infinity", message({0, 0, 0, 0, 0, 0})},
      {"a range that goes back", message({9, 1, 5, 0, 1, 1, 4, 0})},
      {"the reserved stamp",
       message({0x81, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff, 0x7f, 0, 0, 1, 0, 0, 2, 0, 0})},
  };
  for (auto [name, bytes] : cases) {
    CAPTURE(name);
    if (name == "a number without end") bytes[0] = kReconcileVersion;
    CHECK(is_malformed(side.receive(bytes)));
  }
}

TEST_CASE("Every message cut short is malformed or a shorter whole message") {
  std::mt19937_64 random(4);
  const Items items = random_items(random, 300, 5);
  const Bytes whole = Reconciler(items).initiate();
  std::size_t malformed = 0;
  for (std::size_t length = 0; length < whole.size(); ++length) {
    const auto step = Reconciler(random_items(random, 10, 5)).receive(ByteView(whole).first(length));
    if (!step) {
      REQUIRE(is_malformed(step));
      ++malformed;
    }
  }
  // Only the version byte alone and the ends of the 11 inner ranges are whole messages.
  CHECK(malformed == whole.size() - 12);
}

TEST_CASE("Nothing of a message that is bad at its end is acted on") {
  Reconciler side(Items{{5, Digest{1}}});
  (void)side.initiate();
  Bytes bad = message({1, 0, 0, 9, 0, 2, 1});
  bad.insert(bad.end(), 32, 0x44);
  bad.push_back(0x80);
  CHECK(is_malformed(side.receive(bad)));
  bad.pop_back();
  const auto step = side.receive(bad);
  REQUIRE(step);
  CHECK(step->need.size() == 1);
  CHECK(step->have.size() == 1);
}

TEST_CASE("Changed and random bytes give a fault or an answer of bounded size") {
  std::mt19937_64 random(20'260'101);
  const Items common = random_items(random, 900, 40);
  const Items ours = joined(common, random_items(random, 30, 40));
  const Items theirs = joined(common, random_items(random, 30, 40));
  // Real messages of every kind to start from.
  std::vector<Bytes> seeds;
  Reconciler here(ours);
  Reconciler there(theirs);
  for (Bytes next = here.initiate(); !next.empty();) {
    seeds.push_back(next);
    seeds.push_back(there.receive(next)->reply);
    next = here.receive(seeds.back())->reply;
  }
  REQUIRE(seeds.size() >= 4);

  Reconciler initiator(ours, 4096);
  (void)initiator.initiate();
  Reconciler responder(theirs);
  std::size_t faults = 0;
  std::size_t answers = 0;
  for (int i = 0; i < 10'000; ++i) {
    Bytes bytes = seeds[random() % seeds.size()];
    for (std::uint64_t changes = 1 + random() % 4; changes > 0 && !bytes.empty(); --changes) {
      const std::size_t at = random() % bytes.size();
      const auto place = bytes.begin() + static_cast<std::ptrdiff_t>(at);
      switch (random() % 5) {
        case 0:
          bytes[at] = static_cast<std::uint8_t>(random());
          break;
        case 1:
          bytes[at] ^= static_cast<std::uint8_t>(1U << random() % 8);
          break;
        case 2:
          bytes.erase(place, place + static_cast<std::ptrdiff_t>(random() % (bytes.size() - at)));
          break;
        case 3: {
          const std::size_t more = random() % 40;
          bytes.insert(place, more, static_cast<std::uint8_t>(random()));
          break;
        }
        default:
          bytes.resize(1 + random() % 200);
          for (auto& byte : bytes) byte = static_cast<std::uint8_t>(random());
          bytes[0] = kReconcileVersion;
      }
    }
    for (Reconciler* side : {&initiator, &responder}) {
      const auto step = side->receive(bytes);
      if (!step) {
        REQUIRE((step.error().code == FaultCode::malformed || step.error().code == FaultCode::newer));
        ++faults;
        continue;
      }
      ++answers;
      // No more than every id of ours, a fingerprint for each bucket and each range, and what was in the
      // message.
      REQUIRE(step->reply.size() <= (side == &initiator ? 4096 : 960 * 32 + 60 * 960 + 60 * bytes.size()));
      REQUIRE(step->need.size() <= bytes.size() / 32);
      REQUIRE(step->have.size() <= ours.size());
    }
  }
  CHECK(faults > 1000);
  CHECK(answers > 1000);
}

TEST_CASE("A responder that always disagrees is told off in the end") {
  // Every answer is one wrong fingerprint over everything.
  std::mt19937_64 random(6);
  Reconciler side(random_items(random, 40, 10));
  (void)side.initiate();
  Bytes wrong = message({0, 0, 1});
  wrong.insert(wrong.end(), 16, 0xaa);
  std::size_t steps = 0;
  while (steps < 200'000) {
    const auto step = side.receive(wrong);
    if (!step) {
      CHECK(is_malformed(step));
      break;
    }
    ++steps;
  }
  CHECK(steps == 100'000);
}

}  // namespace weavelog
