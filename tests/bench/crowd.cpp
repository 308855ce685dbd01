#include <fcntl.h>
#include <signal.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <condition_variable>
#include <cstdio>
#include <mutex>
#include <thread>

#include "tests/bench/benches.h"
#include "tests/bench/room.h"

namespace weavelog::bench {
namespace {

/// A running weavelog-server, ended as a person would end it.
class Server {
 public:
  /// With so many invitations for stringers, read from what it says.
  Server(const std::filesystem::path& folder, std::size_t invitations) {
    std::vector<std::string> words{WEAVELOG_SERVER_PROGRAM, "--data", folder.string(), "--listen",
                                   "127.0.0.1:0",           "--json", "--quiet"};
    for (std::size_t i = 0; i < invitations; ++i) words.insert(words.end(), {"--invite", "stringer"});
    std::vector<char*> arguments;
    for (std::string& word : words) arguments.push_back(word.data());
    arguments.push_back(nullptr);
    std::array<int, 2> ends{};
    if (::pipe2(ends.data(), O_CLOEXEC) != 0) throw std::runtime_error("no pipe can be made");
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_adddup2(&actions, ends[1], STDOUT_FILENO);
    const int failed =
        posix_spawn(&pid_, WEAVELOG_SERVER_PROGRAM, &actions, nullptr, arguments.data(), environ);
    posix_spawn_file_actions_destroy(&actions);
    ::close(ends[1]);
    said_.reset(::fdopen(ends[0], "r"));
    if (failed != 0 || !said_) throw std::runtime_error("weavelog-server can't be started");
    std::array<char, 1024> line{};
    while (codes_.size() < invitations && std::fgets(line.data(), line.size(), said_.get()) != nullptr) {
      constexpr std::string_view kCode = "\"code\":\"";
      const std::string text = line.data();
      const auto begin = text.find(kCode);
      if (begin == std::string::npos) continue;
      const auto from = begin + kCode.size();
      codes_.push_back(must(PairingCode::parse(text.substr(from, text.find('"', from) - from))));
    }
    if (codes_.size() < invitations) throw std::runtime_error("weavelog-server gave too few invitations");
  }
  ~Server() {
    ::kill(pid_, SIGTERM);
    ::waitpid(pid_, nullptr, 0);
  }
  Server(const Server&) = delete;
  Server& operator=(const Server&) = delete;

  [[nodiscard]] const std::vector<PairingCode>& codes() const { return codes_; }
  [[nodiscard]] double memory() const { return memory_mb("VmRSS", pid_); }

 private:
  struct Close {
    void operator()(FILE* file) const { std::fclose(file); }
  };
  pid_t pid_ = 0;
  std::unique_ptr<FILE, Close> said_;
  std::vector<PairingCode> codes_;
};

double at_rest(const std::filesystem::path& folder) {
  const Server server(folder, 1);
  std::this_thread::sleep_for(std::chrono::seconds(2));
  return server.memory();
}

struct Tablet {
  std::unique_ptr<Station> station;
  std::unique_ptr<ExchangeGuest> guest;
};

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
  const Server server(scratch / "host", kTablets);
  std::vector<Tablet> tablets(kTablets);
  const Stopwatch pairing;
  for (std::size_t i = 0; i < kTablets; ++i) {
    Tablet& tablet = tablets[i];
    tablet.station = open_station(scratch / ("t" + std::to_string(i)), "tablet " + std::to_string(i));
    tablet.guest =
        std::make_unique<ExchangeGuest>(*tablet.station, ExchangeGuest::to_pair(server.codes()[i]), nullptr);
  }
  double errors = 0;
  for (Tablet& tablet : tablets)
    if (!tablet.guest->wait(std::chrono::minutes(2), has_agreed)) ++errors;
  report.say(bench, "all paired and up to date", "s", pairing.seconds());

  // Everybody at once, each in a book of its own.
  const Stopwatch storm;
  for (std::size_t i = 0; i < kTablets; ++i)
    change_tension(tablets[i].station->ledger(), books[i], static_cast<std::int64_t>(i));
  const auto all_agree = [&] {
    for (const BookId& book : books) {
      const Heads heads = tablets.front().station->ledger().heads(book);
      if (heads.size() < 2) return false;  // its maker's and the one who changed it
      for (const Tablet& tablet : tablets)
        if (tablet.station->ledger().heads(book) != heads) return false;
    }
    return true;
  };
  while (!all_agree() && storm.seconds() < 60) std::this_thread::sleep_for(std::chrono::milliseconds(20));
  report.say(bench, "each changed one thing, all hold all", "s", storm.seconds());
  if (!all_agree()) ++errors;

  Runs latency;
  const int probes = setting.full ? 200 : 60;
  for (int i = 0; i < probes; ++i) {
    Station& from = *tablets[static_cast<std::size_t>(i) % kTablets].station;
    Station& to = *tablets[static_cast<std::size_t>(i * 7 + 1) % kTablets].station;
    if (&from == &to) continue;
    Arrival arrival(to.ledger());
    const Stopwatch watch;
    change_tension(from.ledger(), books[static_cast<std::size_t>(i) % kTablets], 60 + i);
    if (!arrival.wait()) ++errors;
    latency.values.push_back(watch.milliseconds());
    // A quiet moment, so that the next one is measured by itself.
    std::this_thread::sleep_for(std::chrono::milliseconds(150));
  }
  report.say(bench, "change on one to sight on another, p50", "ms", latency.quantile(0.5));
  report.say(bench, "change on one to sight on another, p95", "ms", latency.quantile(0.95), "under 200 ms");
  for (const Tablet& tablet : tablets)
    if (tablet.guest->status().fault || tablet.guest->status().session.quarantined != 0) ++errors;
  report.say(bench, "errors", "errors", errors, "none");
  report.say(bench, "memory of the server meanwhile", "MB", server.memory());
}

}  // namespace weavelog::bench
