// A whole tournament's tablets at one real server: most only look on, some work all the time.

#include <algorithm>
#include <catch2/catch.hpp>
#include <thread>

#include "tests/bench/report.h"
#include "tests/bench/room.h"
#include "tests/bench/tablets.h"
#include "tests/faults/cli_tablet.h"
#include "tests/faults/plan.h"
#include "tests/support/server.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// What the server may come to with 600 tablets connected.
constexpr double kMostMb = 300;
constexpr std::size_t kInvitations = 50;

}  // namespace

TEST_CASE("idle and busy tablets at one server: nothing is lost, all agree, its memory is bounded",
          "[crowd]") {
  const Plan plan = Plan::from_environment();
  const std::size_t busy = plan.full ? 100 : 10, idle = plan.full ? 500 : 40, changes = 3;
  allow_many_descriptors();
  TemporaryFolder folder;
  // What is measured is the server: the tablets' disks are in memory, or hundreds of them would only wait for
  // one disk.
  const bench::Scratch memory(std::filesystem::exists("/dev/shm") ? "/dev/shm" : folder.path());
  bench::write_large(folder / "server", "Event server", busy, 2);
  const auto books = bench::player_books(open_folder(folder / "server")->ledger());
  Server server(folder / "server", {});
  const bench::Stopwatch pairing;
  bench::Tablets tablets(memory / "tablets");
  // A server holds only so many invitations open; those who are paired find it again each time it is
  // restarted.
  while (tablets.size() < busy + idle) {
    CHECK(server.stop() == 0);
    server.start(std::vector<std::string>(std::min(kInvitations, busy + idle - tablets.size()), "stringer"));
    tablets.add(server.codes());
  }
  tablets.await_all();
  figure("crowd", "tablets connected", static_cast<double>(tablets.size()), "tablets");
  figure("crowd", "all paired and live", pairing.seconds(), "s");
  figure("crowd", "server's memory then", bench::memory_mb("VmRSS", server.pid()), "MB");

  const bench::Stopwatch storm;
  for (std::size_t turn = 0; turn < changes; ++turn)
    for (std::size_t i = 0; i < busy; ++i)
      bench::change_tension(tablets.ledger(i), books[i],
                            static_cast<std::int64_t>(60 + turn));  // more than any had before
  // Each has what it wrote itself, so when all hold the same nothing is missing anywhere.
  while (!tablets.hold_the_same() && storm.seconds() < 900)
    std::this_thread::sleep_for(std::chrono::milliseconds(200));
  figure("crowd", "every change on every tablet", storm.seconds(), "s");
  CHECK(tablets.hold_the_same());
  CHECK(tablets.errors() == 0);
  const double most = bench::memory_mb("VmHWM", server.pid());
  figure("crowd", "server's memory at most", most, "MB");
  CHECK(most < bound_mb(kMostMb));

  CHECK(server.stop() == 0);
  const auto station = open_folder(server.folder());
  CHECK(station->ledger().verify().faults.empty());
  const auto at_server = bench::holdings(station->ledger());
  const auto at_tablet = bench::holdings(tablets.ledger(0));
  std::size_t missing = 0;
  for (const BookInfo& book : at_tablet)
    if (std::none_of(at_server.begin(), at_server.end(),
                     [&](const BookInfo& one) { return one.id == book.id && one.heads == book.heads; }))
      ++missing;
  CHECK(missing == 0);
  CHECK(at_tablet.size() >= busy);
  figure("crowd", "books that differ in the end", static_cast<double>(missing), "books");
}
