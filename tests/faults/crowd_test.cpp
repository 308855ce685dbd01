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
constexpr double kMostMbOfCrowd = 300;
constexpr std::size_t kInvitations = 50;

/// What a tablet was told is stored.
struct Word {
  BookId book;
  Quantity tension;
};

/// The words that this ledger does not say, each in a line.
std::vector<std::string> unsaid(const Ledger& ledger, const std::vector<Word>& words) {
  std::vector<std::string> out;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const auto held = bench::tension_of(ledger, words[i].book);
    if (held != words[i].tension)
      out.push_back("tablet " + std::to_string(i) + ", book " + words[i].book.hex() + ": " + text_of(words[i].tension) + " was stored, and " +
                    (held ? text_of(*held) + " is said" : "nothing is said"));
  }
  return out;
}

}  // namespace

TEST_CASE("a word that a tablet stored and the server's copy does not hold is found missing", "[crowd]") {
  TemporaryFolder folder;
  bench::write_large(folder / "before", "Event server", 3, 2);
  std::filesystem::copy(folder / "before", folder / "after", std::filesystem::copy_options::recursive);
  std::vector<Word> words;
  {
    const auto after = open_folder(folder / "after");
    for (const BookId& book : bench::player_books(after->ledger())) words.push_back({book, bench::change_tension(after->ledger(), book, 61)});
    REQUIRE(words.size() == 3);
    CHECK(unsaid(after->ledger(), words).empty());
  }
  // The copy of before is a server that never got what was said since.
  CHECK(unsaid(open_folder(folder / "before")->ledger(), words).size() == 3);
  const auto after = open_folder(folder / "after");
  (void)bench::change_tension(after->ledger(), words[1].book, 60);
  const auto lost = unsaid(after->ledger(), words);
  REQUIRE(lost.size() == 1);
  CHECK(lost[0].find(words[1].book.hex()) != std::string::npos);
}

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
  std::vector<Word> last(busy);
  for (std::size_t turn = 0; turn < changes; ++turn)
    for (std::size_t i = 0; i < busy; ++i)
      last[i] = {books[i], bench::change_tension(tablets.ledger(i), books[i],
                                                 static_cast<std::int64_t>(60 + turn))};  // more than any had before
  while (!tablets.hold_the_same() && storm.seconds() < 900)
    std::this_thread::sleep_for(std::chrono::milliseconds(200));
  figure("crowd", "every change on every tablet", storm.seconds(), "s");
  CHECK(tablets.hold_the_same());
  CHECK(tablets.errors() == 0);
  const double most = bench::memory_mb("VmHWM", server.pid());
  figure("crowd", "server's memory at most", most, "MB");
  CHECK(most < bound_mb(kMostMbOfCrowd));

  CHECK(server.stop() == 0);
  const auto station = open_folder(server.folder());
  CHECK(station->ledger().verify().faults.empty());
  // That all hold the same says nothing of a word that was lost before it left its tablet.
  const auto lost = unsaid(station->ledger(), last);
  for (const std::string& one : lost) UNSCOPED_INFO(one);
  CHECK(lost.empty());
  figure("crowd", "last words of busy tablets that the server does not say", static_cast<double>(lost.size()), "words");
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
