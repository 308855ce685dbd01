// Hybrid logical clock: Kulkarni et al. (2014), Figure 5; worked traces in
// fixtures/published/sync_clocks_crdt.json.
#include "core/base/clock.h"

#include <catch2/catch.hpp>
#include <map>

#include "tests/support/published.h"

using namespace weavelog;

namespace {
constexpr UnixMs kNoon = 1'700'000'000'000;
constexpr UnixMs kTwoDays = 2 * 24 * 60 * 60 * 1000;

struct Node {
  ManualClock wall{0};
  HybridClock clock{wall};
};

/// Runs a trace of send, local and recv events and checks (l, c) after each.
int run_trace(const boost::json::array& events) {
  std::map<std::string, Node> nodes;
  std::map<std::string, Stamp> messages;
  for (const auto& event : events) {
    Node& node = nodes[test::text_in(event, "node")];
    node.wall.set(event.at("pt").to_number<UnixMs>());
    if (test::text_in(event, "op") == "recv") {
      const auto* input = event.as_object().if_contains("input");
      const Stamp remote =
          input ? Stamp::of(input->at(0).to_number<std::uint64_t>(), input->at(1).to_number<std::uint16_t>())
                : messages.at(test::text_in(event, "msg"));
      CHECK(node.clock.witness(remote));
    } else {
      const Stamp stamp = node.clock.tick();
      CHECK(stamp == node.clock.last());
      if (const auto* message = event.as_object().if_contains("msg"))
        messages[std::string(message->as_string())] = stamp;
    }
    CAPTURE(boost::json::serialize(event));
    CHECK(node.clock.last().wall_ms() == event.at("l").to_number<UnixMs>());
    CHECK(node.clock.last().counter() == event.at("c").to_number<std::uint16_t>());
  }
  return static_cast<int>(events.size());
}
}  // namespace

TEST_CASE("the clock follows the worked traces", "[published]") {
  const auto traces = test::published_json("sync_clocks_crdt.json").at("hlc");
  CHECK(run_trace(traces.at("fast_clock_trace").as_array()) == 11);
  CHECK(run_trace(traces.at("backward_clock_trace").at("events").as_array()) == 8);
}

TEST_CASE("a wall clock at or before 1970 still gives rising stamps") {
  ManualClock wall(0);
  HybridClock clock(wall);
  Stamp last = clock.tick();
  CHECK(last > Stamp{});
  for (const UnixMs now : {UnixMs{0}, UnixMs{-86'400'000}, UnixMs{1}}) {
    wall.set(now);
    const Stamp next = clock.tick();
    CHECK(next > last);
    last = next;
  }
}

TEST_CASE(
    "a device whose wall fell back to 1970 goes on from its last stamp and refuses the present as too far "
    "ahead") {
  ManualClock wall(0);
  HybridClock clock(wall, Stamp::of(kNoon, 3));
  CHECK(clock.tick() == Stamp::of(kNoon, 4));
  CHECK_FALSE(clock.witness(Stamp::of(kNoon + 1, 0)));
  CHECK(clock.last() == Stamp::of(kNoon, 4));
}

TEST_CASE("a wall two days ahead that is set right again does not turn the stamps back") {
  ManualClock wall(kNoon + kTwoDays);
  HybridClock clock(wall);
  const Stamp ahead = clock.tick();
  wall.set(kNoon);
  CHECK(clock.tick() == Stamp::of(static_cast<std::uint64_t>(kNoon + kTwoDays), 1));
  CHECK(clock.last() > ahead);
}

TEST_CASE("a remote stamp too far ahead is not adopted, one just within is") {
  ManualClock wall(kNoon);
  HybridClock clock(wall);
  const Stamp before = clock.tick();
  CHECK_FALSE(clock.witness(Stamp::of(kNoon + kTwoDays, 0)));
  CHECK_FALSE(clock.witness(Stamp::of(kNoon + HybridClock::kTooFarAhead + 1, 0)));
  CHECK_FALSE(clock.witness(Stamp{~0ULL}));
  CHECK(clock.last() == before);
  const Stamp limit = Stamp::of(kNoon + HybridClock::kTooFarAhead, 7);
  CHECK(clock.witness(limit));
  CHECK(clock.tick() > limit);
}

TEST_CASE("a full counter carries into the wall part") {
  ManualClock wall(kNoon);
  HybridClock clock(wall, Stamp::of(kNoon, 0xffff));
  CHECK(clock.tick() == Stamp::of(kNoon + 1, 0));
  CHECK(clock.witness(Stamp::of(kNoon + 1, 0xffff)));
  CHECK(clock.last() == Stamp::of(kNoon + 2, 0));
}

TEST_CASE("the wall clock of the machine is past 2020 and within 48 bits") {
  CHECK(WallClock::system().now() > 1'577'836'800'000);
  CHECK(WallClock::system().now() < (UnixMs{1} << 48));
}
