// Cables that are cut, ways that carry one direction only, peers that vanish: the real server in one network
// namespace, the real command line in another.

#include <catch2/catch.hpp>
#include <future>
#include <memory>
#include <optional>
#include <random>
#include <stdexcept>
#include <thread>

#include "tests/bench/report.h"
#include "tests/bench/room.h"
#include "tests/faults/cli_tablet.h"
#include "tests/faults/namespaces.h"
#include "tests/faults/plan.h"
#include "tests/faults/raw_client.h"
#include "tests/support/server.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;
namespace json = boost::json;

namespace {

using bench::Stopwatch;
using std::chrono::milliseconds;
using std::chrono::seconds;

/// None, and a line that says why, where the machine has no namespaces for us.
std::unique_ptr<TwoRooms> two_rooms() {
  try {
    return std::make_unique<TwoRooms>();
  } catch (const std::runtime_error& error) {
    skip("links", error.what());
    return nullptr;
  }
}

/// A server with much to give, in its room.
struct Desk {
  TemporaryFolder folder;
  std::optional<Server> server;
  TwoRooms& rooms;

  Desk(TwoRooms& in, std::size_t players, std::size_t jobs) : rooms(in) {
    bench::write_large(folder / "server", "Event server", players, jobs);
    const auto here = rooms.at_server();
    server.emplace(folder / "server", std::vector<std::string>{"head", "stringer"}, kServerAddress);
  }
  [[nodiscard]] std::string health() const {
    const auto here = rooms.at_server();
    return health_of(kServerAddress, server->port());
  }
  [[nodiscard]] bool serves_nobody() const { return health().find("\"connected\":[]") != std::string::npos; }
};

/// A server lets go of who is silent for a minute.
constexpr double kPatience = 180;

bool agrees(const json::object& said) {
  return said.contains("agreed") && said.at("agreed").as_bool();
}
bool is_cut_off(const json::object& said) {
  return said.contains("connected") && !said.at("connected").as_bool();
}

}  // namespace

TEST_CASE("an exchange whose cable is cut in the middle goes on when it is whole again", "[links]") {
  const auto rooms = two_rooms();
  if (!rooms) return;
  const Plan plan = Plan::from_environment();
  std::mt19937_64 random(plan.seed);
  Desk desk(*rooms, plan.full ? 400 : 60, 20);
  CliTablet tablet(desk.folder / "tablet", "Bench 2");
  rooms->slow(800);

  int in_the_middle = 0;
  std::optional<json::object> done;
  {
    const auto there = rooms->at_tablet();
    Running pairing({WEAVELOG_CLI_PROGRAM, "--data", tablet.folder().string(), "--json", "pair",
                     desk.server->codes()[1], "--seconds", "300"});
    const Stopwatch watch;
    for (int cut = 0; cut < (plan.full ? 12 : 3) && !done; ++cut) {
      if (const auto line = pairing.line(milliseconds(300 + random() % 700))) {
        done = json::parse(*line).as_object();
        break;
      }
      rooms->cut();
      ++in_the_middle;
      std::this_thread::sleep_for(milliseconds(200 + random() % 800));
      rooms->mend();
    }
    if (!done)
      if (const auto line = pairing.line(seconds(240))) done = json::parse(*line).as_object();
    figure("links", "exchange with its cable cut again and again", watch.seconds(), "s");
  }
  REQUIRE(done);
  INFO(json::serialize(*done));
  CHECK(agrees(*done));
  CHECK(in_the_middle > 0);
  figure("links", "cuts in its middle", in_the_middle, "cuts");
  const auto there = rooms->at_tablet();
  CHECK(tablet.ask({"verify"}).at("well").as_bool());
  CHECK(tablet.ask({"find"}).as_array().size() > 0);
}

TEST_CASE("a way that carries one direction only delays what is live, and nothing is missing afterwards",
          "[links]") {
  const auto rooms = two_rooms();
  if (!rooms) return;
  const Plan plan = Plan::from_environment();
  std::mt19937_64 random(plan.seed);
  Desk desk(*rooms, 5, 2);
  CliTablet tablet(desk.folder / "tablet", "Bench 2"), near(desk.folder / "near", "Desk 1");
  {
    const auto here = rooms->at_server();
    (void)near.ask({"pair", desk.server->codes()[0]});
  }
  const auto there = rooms->at_tablet();
  (void)tablet.ask({"pair", desk.server->codes()[1]});
  Running staying({WEAVELOG_CLI_PROGRAM, "--data", tablet.folder().string(), "--json", "exchange", "--stay"});
  std::string words;
  const auto comes_to = [&](const std::string& wanted, seconds time) {
    const Stopwatch watch;
    while (watch.seconds() < static_cast<double>(time.count())) {
      const auto line = staying.line(milliseconds(500));
      if (!line) continue;
      const json::object said = json::parse(*line).as_object();
      words = agrees(said) ? std::string(said.at("words").as_string()) : "";
      if (!words.empty() && (wanted.empty() || words == wanted)) return true;
    }
    return false;
  };
  REQUIRE(comes_to("", seconds(60)));
  for (int turn = 0; turn < (plan.full ? 10 : 2); ++turn) {
    const bool server_deaf = turn % 2 == 0;
    server_deaf ? rooms->deafen_server(true) : rooms->deafen_tablet(true);
    std::string wanted;
    {
      const auto here = rooms->at_server();
      REQUIRE(near.drop_off(random).status == 0);
      wanted = near.ask({"exchange"}).at("words").as_string();
    }
    std::this_thread::sleep_for(milliseconds(500 + random() % 1000));
    server_deaf ? rooms->deafen_server(false) : rooms->deafen_tablet(false);
    const Stopwatch watch;
    INFO((server_deaf ? "the server" : "the tablet") << " was deaf");
    CHECK(comes_to(wanted, seconds(120)));
    figure("links",
           server_deaf ? "server deaf: after it hears, until both agree"
                       : "tablet deaf: after it hears, until both agree",
           watch.seconds(), "s");
  }
  CHECK(staying.stop() == 0);
  CHECK(near.lost(open_folder(tablet.folder())->ledger()).empty());
}

TEST_CASE("a peer that vanished is noticed by both sides, and taken back when it returns", "[.][links]") {
  // Not in the short plan: it takes minutes, since the patience with a silent peer is one.
  const auto rooms = two_rooms();
  if (!rooms) return;
  Desk desk(*rooms, 5, 2);
  CliTablet tablet(desk.folder / "tablet", "Bench 2");
  const auto there = rooms->at_tablet();
  (void)tablet.ask({"pair", desk.server->codes()[1]});
  /// Seconds until the server serves nobody any more.
  const auto let_go = [&desk] {
    const Stopwatch watch;
    while (!desk.serves_nobody() && watch.seconds() < kPatience)
      std::this_thread::sleep_for(milliseconds(500));
    return watch.seconds();
  };
  const auto count_descriptors = [&] {
    return std::distance(
        std::filesystem::directory_iterator("/proc/" + std::to_string(desk.server->pid()) + "/fd"), {});
  };
  std::ptrdiff_t before = 0;  // with nobody connected
  {
    Running staying(
        {WEAVELOG_CLI_PROGRAM, "--data", tablet.folder().string(), "--json", "exchange", "--stay"});
    const auto told = [&](bool (*wanted)(const json::object&)) {
      const Stopwatch watch;
      while (watch.seconds() < 240)
        if (const auto line = staying.line(milliseconds(500)); line && wanted(json::parse(*line).as_object()))
          return true;
      return false;
    };
    REQUIRE(told(agrees));
    rooms->cut();
    const Stopwatch watch;
    auto server_side = std::async(std::launch::async, let_go);
    CHECK(told(is_cut_off));
    figure("links", "cut for long: until the tablet says so", watch.seconds(), "s");
    const double server_took = server_side.get();
    CHECK(server_took < kPatience);
    std::this_thread::sleep_for(seconds(2));
    before = count_descriptors();
    figure("links", "cut for long: until the server lets go", server_took, "s");
    rooms->mend();
    const Stopwatch back;
    CHECK(told(agrees));
    figure("links", "whole again: until both agree", back.seconds(), "s");

    // Dead behind a cut cable: nobody says good-bye.
    rooms->cut();
    staying.kill();
  }
  const double took = let_go();
  CHECK(took < kPatience);
  figure("links", "vanished without a word: until the server lets go", took, "s");
  std::this_thread::sleep_for(seconds(2));  // the question for its health is still being closed
  CHECK(count_descriptors() <= before);
  rooms->mend();
  CHECK(tablet.ask({"exchange"}).at("agreed").as_bool());
}
