// A disk that is full, and one that may not be written to. On a small tmpfs in a mount namespace of the
// test's own, which goes with it however it ends.

#include <catch2/catch.hpp>
#include <cerrno>
#include <csignal>
#include <cstring>
#include <fstream>
#include <random>

#include "tests/faults/cli_tablet.h"
#include "tests/faults/plan.h"
#include "tests/support/server.h"
#include "tests/support/small_disk.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;
namespace json = boost::json;

namespace {

bool mounted(SmallDisk& disk, const std::string& size) {
  const int error = disk.mount(size);
  if (error != 0)
    skip("disk", std::string("no small disk can be mounted here (") + std::strerror(error) + ")");
  return error == 0;
}

/// The one clear fault: code, place, and what to do.
void check_fault(const Finished& finished, const std::string& code) {
  INFO(finished.out << finished.err);
  CHECK(finished.status == 1);
  const json::value told = json::parse(finished.out);
  const json::object& error = told.at("error").as_object();
  CHECK(error.at("code").as_string() == code);
  CHECK_FALSE(error.at("what_to_do").as_string().empty());
}

void check_well(const CliTablet& hand) {
  CHECK(hand.ask({"verify"}).at("well").as_bool());
  const auto lost = hand.lost(open_folder(hand.folder())->ledger());
  INFO((lost.empty() ? "" : lost.front()));
  CHECK(lost.empty());
}

}  // namespace

TEST_CASE("a tablet whose disk fills says so, keeps what it confirmed, and goes on when there is room",
          "[disk]") {
  SmallDisk disk;
  if (!mounted(disk, "2m")) return;
  const Plan plan = Plan::from_environment();
  std::mt19937_64 random(plan.seed);
  CliTablet hand(disk.path() / "tablet", "Desk 1");
  (void)hand.ask({"new-event", "Harbour Open"});
  Finished full;
  while (full.status == 0 && hand.confirmed() < 2000) full = hand.drop_off(random);
  check_fault(full, "no_space");
  const std::size_t before = hand.confirmed();
  CHECK(before > 5);
  figure("disk", "drop-offs on 2 MB until the disk was full", static_cast<double>(before), "drop-offs");

  // It stays so however often it is tried, and killed while trying.
  int kills = 0;
  for (int i = 0; i < (plan.full ? 100 : 8); ++i) {
    const Finished again = hand.drop_off(random, std::chrono::milliseconds(random() % 15));
    INFO(again.out << again.err);
    CHECK((again.status == 1 || again.status == 128 + SIGKILL || again.status == 0));
    if (again.status == 128 + SIGKILL) ++kills;
  }
  figure("disk", "tablets killed on a full disk", kills, "kills");

  disk.resize("16m");
  check_well(hand);
  CHECK(hand.drop_off(random).status == 0);
  CHECK(hand.write(random, {}).status == 0);
  check_well(hand);
}

TEST_CASE("a server whose disk is full confirms nothing, loses nothing, and goes on when there is room",
          "[disk]") {
  SmallDisk disk;
  if (!mounted(disk, "8m")) return;
  const Plan plan = Plan::from_environment();
  std::mt19937_64 random(plan.seed);
  TemporaryFolder folder;
  Server server(disk.path() / "server", {"head", "desk"});
  CliTablet hand(folder / "tablet", "Desk 1"), other(folder / "other", "Desk 2");
  (void)hand.ask({"pair", server.codes()[0]});
  (void)other.ask({"pair", server.codes()[1]});
  (void)hand.drop_off(random);
  (void)hand.ask({"exchange"});

  disk.fill();
  for (int i = 0; i < (plan.full ? 60 : 12); ++i) REQUIRE(hand.write(random, {}).status == 0);
  // A few pages may still fit into what SQLite holds already: then the exchange may be done, and honestly so.
  Finished finished;
  for (int i = 0; i < 40 && finished.status == 0; ++i) {
    REQUIRE(hand.drop_off(random).status == 0);
    finished = hand.run({"exchange", "--seconds", "10"});
  }
  INFO(finished.out << finished.err);
  CHECK(finished.status == 1);
  CHECK(finished.err.find("the disk is full") != std::string::npos);
  check_well(hand);

  SECTION("room comes back while it runs") {}
  SECTION("it is killed before") {
    CHECK(server.kill());
  }
  disk.clear();
  server.start();
  const json::value agreed = hand.ask({"exchange"});
  CHECK(other.ask({"exchange"}).at("words").as_string() == agreed.at("words").as_string());
  check_well(hand);
  CHECK(server.stop() == 0);
  for (const auto& holder : {server.folder(), other.folder()}) {
    const auto station = open_folder(holder);
    CHECK(station->ledger().verify().faults.empty());
    CHECK(hand.lost(station->ledger()).empty());
  }
}

TEST_CASE("a folder that became read-only is named and left as it is", "[disk]") {
  SmallDisk disk;
  if (!mounted(disk, "64m")) return;
  std::mt19937_64 random(Plan::from_environment().seed);
  CliTablet hand(disk.path() / "tablet", "Desk 1");
  (void)hand.ask({"new-event", "Harbour Open"});
  REQUIRE(hand.drop_off(random).status == 0);
  disk.read_only(true);
  const Finished refused = hand.drop_off(random);
  INFO(refused.out << refused.err);
  CHECK(refused.status == 1);
  CHECK(refused.err.find((disk.path() / "tablet").string()) != std::string::npos);
  CHECK_FALSE(json::parse(refused.out).at("error").at("what_to_do").as_string().empty());
  disk.read_only(false);
  check_well(hand);
  CHECK(hand.drop_off(random).status == 0);
}
