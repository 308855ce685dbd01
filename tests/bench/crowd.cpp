#include <algorithm>
#include <condition_variable>
#include <mutex>
#include <thread>

#include "tests/bench/benches.h"
#include "tests/bench/room.h"
#include "tests/bench/tablets.h"
#include "tests/support/server.h"

namespace weavelog::bench {
namespace {

testing::Server server_with(const std::filesystem::path& folder, std::size_t invitations) {
  return testing::Server(folder, std::vector<std::string>(invitations, "stringer"));
}

double at_rest(const std::filesystem::path& folder) {
  const testing::Server server = server_with(folder, 1);
  std::this_thread::sleep_for(std::chrono::seconds(2));
  return memory_mb("VmRSS", server.pid());
}

/// Waits until the ledger holds something at or after a position, by its own word and not by asking again and
/// again.
class Arrival {
 public:
  explicit Arrival(Ledger& ledger)
      : ledger_(ledger), handle_(ledger.subscribe([this](std::int64_t) {
          const std::lock_guard guard(mutex_);
          ++commits_;
          changed_.notify_all();
        })) {}
  ~Arrival() { ledger_.unsubscribe(handle_); }
  Arrival(const Arrival&) = delete;
  Arrival& operator=(const Arrival&) = delete;

  bool wait() {
    std::unique_lock lock(mutex_);
    return changed_.wait_for(lock, std::chrono::seconds(10), [this] { return commits_ > 0; });
  }

 private:
  Ledger& ledger_;
  std::mutex mutex_;
  std::condition_variable changed_;
  int commits_ = 0;
  int handle_;
};

}  // namespace

void crowd(Report& report, const Setting& setting) {
  const Scratch scratch(setting.folder);
  const std::string rest = "server at rest";
  report.say(rest, "memory, empty", "MB", at_rest(scratch / "empty"), "under 40 MB");
  write_large(scratch / "filled", "Event server", 200, 10);
  report.say(rest, "memory, 200 books x 10 jobs", "MB", at_rest(scratch / "filled"), "under 40 MB");

  constexpr std::size_t kTablets = 50;
  const std::string bench = "50 tablets pushing live at one server";
  write_large(scratch / "host", "Event server", kTablets, 2);
  std::vector<BookId> books;
  {
    const auto looked_at = open_station(scratch / "host", "Event server");
    books = player_books(looked_at->ledger());
  }
  const testing::Server server = server_with(scratch / "host", kTablets);
  const Stopwatch pairing;
  Tablets tablets(scratch / "tablets");
  tablets.add(server.codes());
  tablets.await_all();
  double errors = 0;
  report.say(bench, "all paired and up to date", "s", pairing.seconds());

  // Everybody at once, each in a book of its own.
  const Stopwatch storm;
  for (std::size_t i = 0; i < kTablets; ++i)
    change_tension(tablets.ledger(i), books[i], static_cast<std::int64_t>(i));
  const auto all_agree = [&] {
    return std::all_of(books.begin(), books.end(),  // its maker's and the one who changed it
                       [&](const BookId& book) { return tablets.ledger(0).heads(book).size() >= 2; }) &&
           tablets.hold_the_same();
  };
  while (!all_agree() && storm.seconds() < 60) std::this_thread::sleep_for(std::chrono::milliseconds(20));
  report.say(bench, "each changed one thing, all hold all", "s", storm.seconds());
  if (!all_agree()) ++errors;

  Runs latency;
  const int probes = setting.full ? 200 : 60;
  for (int i = 0; i < probes; ++i) {
    Ledger& from = tablets.ledger(static_cast<std::size_t>(i) % kTablets);
    Ledger& to = tablets.ledger(static_cast<std::size_t>(i * 7 + 1) % kTablets);
    if (&from == &to) continue;
    Arrival arrival(to);
    const Stopwatch watch;
    change_tension(from, books[static_cast<std::size_t>(i) % kTablets], 60 + i);
    if (!arrival.wait()) ++errors;
    latency.values.push_back(watch.milliseconds());
    // A quiet moment, so that the next one is measured by itself.
    std::this_thread::sleep_for(std::chrono::milliseconds(150));
  }
  report.say(bench, "change on one to sight on another, p50", "ms", latency.quantile(0.5));
  report.say(bench, "change on one to sight on another, p95", "ms", latency.quantile(0.95), "under 200 ms");
  errors += static_cast<double>(tablets.errors());
  report.say(bench, "errors", "errors", errors, "none");
  report.say(bench, "memory of the server meanwhile", "MB", memory_mb("VmRSS", server.pid()));
}

}  // namespace weavelog::bench
