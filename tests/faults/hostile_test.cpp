// Whoever can reach the server's port and means no good: silent ones, slow ones, floods. Meanwhile an honest
// tablet exchanges.

#include <algorithm>
#include <atomic>
#include <catch2/catch.hpp>
#include <csignal>
#include <filesystem>
#include <functional>
#include <map>
#include <random>
#include <stdexcept>
#include <thread>

#include "sync/wire/messages.h"
#include "tests/bench/report.h"
#include "tests/bench/room.h"
#include "tests/faults/cli_tablet.h"
#include "tests/faults/plan.h"
#include "tests/faults/raw_client.h"
#include "tests/faults/slow_reader.h"
#include "tests/support/server.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

using bench::Stopwatch;
using std::chrono::milliseconds;
using std::chrono::seconds;

/// What the server may come to, whatever is done to it.
constexpr double kMostMb = 200;
constexpr const char* kHere = "127.0.0.1";

/// A server, an honest tablet, and a look at both after everything that is done to them.
class Besieged {
 public:
  explicit Besieged(std::size_t players = 20) : random_(Plan::from_environment().seed) {
    allow_many_descriptors();
    bench::write_large(folder_ / "server", "Event server", players, 5);
    server.emplace(folder_ / "server",
                   std::vector<std::string>{"head", "desk", "stringer", "stringer", "stringer", "stringer",
                                            "stringer", "stringer", "stringer", "stringer"});
    honest.emplace(folder_ / "honest", "Desk 1");
    (void)honest->ask({"pair", server->codes()[0]});
  }

  /// Writes and exchanges; fails if that takes more than tens of seconds.
  void honest_exchange(const std::string& meanwhile) {
    REQUIRE(honest->drop_off(random_).status == 0);
    const Stopwatch watch;
    const Finished finished = honest->run({"exchange", "--seconds", "40"});
    INFO(meanwhile << ": " << finished.out << finished.err);
    CHECK(finished.status == 0);
    figure("hostile", meanwhile + ": an honest exchange took", watch.seconds(), "s");
  }

  /// After everything: still there, its memory in bounds, nothing lost.
  void look(const std::string& after) {
    CHECK_FALSE(health_of(kHere, server->port()).empty());
    const double most = bench::memory_mb("VmHWM", server->pid());
    figure("hostile", after + ": server's memory at most", most, "MB");
    CHECK(most < bound_mb(kMostMb));
    CHECK(server->stop() == 0);
    const auto station = open_folder(server->folder());
    CHECK(station->ledger().verify().faults.empty());
    CHECK(honest->lost(station->ledger()).empty());
  }

  [[nodiscard]] std::filesystem::path at(const std::string& name) const { return folder_ / name; }
  [[nodiscard]] std::mt19937_64& random() { return random_; }
  [[nodiscard]] std::string noise(std::size_t bytes) {
    std::string out(bytes, '\0');
    std::generate(out.begin(), out.end(), [this] { return static_cast<char>(random_()); });
    return out;
  }

  std::optional<Server> server;
  std::optional<CliTablet> honest;

 private:
  TemporaryFolder folder_;
  std::mt19937_64 random_;
};

/// As many as the server takes; one that it does not take is no fault of it.
std::vector<RawClient> many(std::uint16_t port, int count,
                            const std::function<bool(RawClient&)>& prepare = {}) {
  std::vector<RawClient> out;
  for (int i = 0; i < count; ++i) {
    try {
      RawClient client(kHere, port);
      if (!prepare || prepare(client)) out.push_back(std::move(client));
    } catch (const std::runtime_error&) {
    }
  }
  return out;
}

std::size_t open_after(std::vector<RawClient>& clients, seconds time) {
  const Stopwatch watch;
  std::size_t open = 0;
  for (RawClient& client : clients) {
    const auto left = milliseconds(time) - milliseconds(static_cast<int>(watch.milliseconds()));
    if (!client.closes_within(std::max(milliseconds(0), left))) ++open;
  }
  return open;
}

}  // namespace

TEST_CASE("a thousand who connect and keep silent shut nobody out and are let go", "[hostile]") {
  const Plan plan = Plan::from_environment();
  Besieged room;
  const int count = plan.full ? 1000 : 600;
  auto silent = many(room.server->port(), count);
  room.honest_exchange(std::to_string(silent.size()) + " silent connections");
  auto half_greeted =
      many(room.server->port(), plan.full ? 400 : 30, [](RawClient& client) { return client.secure(); });
  room.honest_exchange(std::to_string(half_greeted.size()) + " more that speak TLS and then keep silent");
  const Stopwatch watch;
  CHECK(open_after(silent, seconds(60)) == 0);
  CHECK(open_after(half_greeted, seconds(60)) == 0);
  figure("hostile", "until all silent ones were let go", watch.seconds(), "s");
  room.look("silent ones");
}

TEST_CASE("floods of garbage, of headers without end, of too large messages are ended at once", "[hostile]") {
  const Plan plan = Plan::from_environment();
  Besieged room;
  const std::uint16_t port = room.server->port();
  const int turns = plan.full ? 100 : 10;
  const std::string noise = room.noise(1 << 20);
  // Counted, since only this thread may check.
  std::atomic<int> unending{0}, unending_headers{0};
  const auto flood = [&](const char* what, const std::function<void(RawClient&)>& send) {
    const Stopwatch watch;
    std::vector<std::thread> attackers;
    for (int i = 0; i < turns; ++i)
      attackers.emplace_back([&] {
        for (RawClient& client : many(port, 1)) {
          send(client);
          if (!client.closes_within(seconds(30))) ++unending;
        }
      });
    room.honest_exchange(what);
    for (std::thread& attacker : attackers) attacker.join();
    figure("hostile", std::string(what) + ", " + std::to_string(turns) + " at once: until all were ended",
           watch.seconds(), "s");
  };
  flood("garbage instead of TLS", [&](RawClient& client) { (void)client.send(noise); });
  flood("garbage in TLS", [&](RawClient& client) {
    if (client.secure()) (void)client.send(noise);
  });
  flood("a header without end", [&](RawClient& client) {
    if (!client.secure() || !client.send("GET /exchange HTTP/1.1\r\n")) return;
    const std::string line = "X-More: " + std::string(1000, 'x') + "\r\n";
    int sent = 0;
    while (sent < 50'000 && client.send(line)) ++sent;
    if (sent == 50'000) ++unending_headers;
  });
  flood("a message of 16 MB from a stranger", [&](RawClient& client) {
    if (client.secure() && client.upgrade()) (void)client.send_message(std::string(16 << 20, 'x'));
  });
  flood("noise as messages", [&](RawClient& client) {
    if (!client.secure() || !client.upgrade()) return;
    for (int i = 0; i < 100 && client.send_message(noise.substr(static_cast<std::size_t>(i) * 100, 100));
         ++i) {
    }
  });
  CHECK(unending == 0);
  CHECK(unending_headers == 0);
  room.look("floods");
}

TEST_CASE(
    "floods of greetings that look right and of questions for the server's health do not keep the honest out",
    "[hostile]") {
  const Plan plan = Plan::from_environment();
  Besieged room;
  const std::uint16_t port = room.server->port();
  std::atomic<bool> enough{false};
  std::atomic<int> greetings{0}, answers{0};
  std::vector<std::thread> attackers;
  for (int i = 0; i < 4; ++i)
    attackers.emplace_back([&] {
      Hello hello;
      const DeviceKey key = DeviceKey::generate();
      hello.card.key = key.public_key();
      hello.card.device = "Bench 9";
      const Bytes frame = encode_frame(hello);
      const std::string message(frame.begin(), frame.end());
      while (!enough)
        for (RawClient& client : many(port, 1, [](RawClient& one) { return one.secure() && one.upgrade(); }))
          for (int turn = 0; turn < 50 && client.send_message(message); ++turn) ++greetings;
    });
  for (int i = 0; i < 4; ++i)
    attackers.emplace_back([&] {
      while (!enough)
        if (!health_of(kHere, port).empty()) ++answers;
    });
  for (int i = 0; i < (plan.full ? 20 : 2); ++i) {
    room.honest_exchange("floods of greetings and of /health");
    std::this_thread::sleep_for(milliseconds(500));
  }
  enough = true;
  for (std::thread& attacker : attackers) attacker.join();
  figure("hostile", "greetings sent", greetings, "messages");
  figure("hostile", "answers of /health meanwhile", answers, "answers");
  CHECK(greetings > 0);
  CHECK(answers > 0);
  room.look("greetings and /health");
}

TEST_CASE("tablets that stop reading do not fill the server's memory and are let go", "[hostile]") {
  const Plan plan = Plan::from_environment();
  Besieged room;
  // Real tablets, paired and live, that the system stops.
  std::vector<std::unique_ptr<Running>> stopped;
  for (std::size_t i = 1; i < (plan.full ? 9U : 4U); ++i) {
    const CliTablet slow(room.at("slow" + std::to_string(i)), "Bench " + std::to_string(i));
    (void)slow.ask({"pair", room.server->codes()[i]});
    stopped.push_back(std::make_unique<Running>(std::vector<std::string>{
        WEAVELOG_CLI_PROGRAM, "--data", slow.folder().string(), "--json", "exchange", "--stay"}));
    while (const auto line = stopped.back()->line(seconds(30)))
      if (line->find("\"agreed\":true") != std::string::npos) break;
    REQUIRE(::kill(stopped.back()->pid(), SIGSTOP) == 0);
  }
  // Megabytes of changes, which all of them would have to get.
  const Stopwatch watch;
  {
    const CliTablet& honest = *room.honest;
    std::size_t left = plan.full ? 4000 : 150;
    const auto station = open_folder(honest.folder());
    const auto books = bench::player_books(station->ledger());
    REQUIRE_FALSE(books.empty());
    for (; left > 0; --left)
      bench::change_tension(station->ledger(), books[left % books.size()], static_cast<std::int64_t>(left));
  }
  room.honest_exchange(std::to_string(stopped.size()) + " tablets stopped in the middle");
  if (plan.full) {
    while (health_of(kHere, room.server->port()).find("\"connected\":[]") == std::string::npos &&
           watch.seconds() < 180)
      std::this_thread::sleep_for(seconds(1));
    CHECK(watch.seconds() < 180);
    figure("hostile", "until the stopped tablets were let go", watch.seconds(), "s");
  }
  // Woken up, they find their way back.
  for (const auto& one : stopped) CHECK(::kill(one->pid(), SIGCONT) == 0);
  for (const auto& one : stopped) {
    const Stopwatch back;
    bool agreed = false;
    while (!agreed && back.seconds() < 120)
      if (const auto line = one->line(seconds(5)))
        agreed = line->find("\"agreed\":true") != std::string::npos;
    CHECK(agreed);
    CHECK(one->stop() == 0);
  }
  room.look("stopped tablets");
}

TEST_CASE("tablets that read a few bytes at a time hold nobody up, and those that hurry again lack nothing", "[hostile]") {
  const Plan plan = Plan::from_environment();
  Besieged room(400);
  std::vector<std::unique_ptr<SlowReader>> readers;
  for (std::size_t i = 1; i < (plan.full ? 9U : 4U); ++i) {
    readers.push_back(std::make_unique<SlowReader>(room.at("slow" + std::to_string(i)), "Bench " + std::to_string(i), room.server->codes()[i]));
    readers.back()->read_slowly(64, milliseconds(50));
  }
  std::map<BookId, Quantity> last;
  {
    const auto station = open_folder(room.honest->folder());
    const auto books = bench::player_books(station->ledger());
    REQUIRE_FALSE(books.empty());
    // More than any had before, and each time another.
    for (std::size_t i = 0; i < (plan.full ? 4000U : 150U); ++i)
      last[books[i % books.size()]] = bench::change_tension(station->ledger(), books[i % books.size()], static_cast<std::int64_t>(60 + i / books.size() % 37));
  }
  room.honest_exchange(std::to_string(readers.size()) + " tablets read a few bytes at a time");
  for (const auto& one : readers) {
    CHECK(one->read() > 0);
    CHECK_FALSE(one->let_go());
  }
  // Who hurries again within the server's patience comes to agree; the others are let go.
  const std::size_t stay_slow = plan.full ? readers.size() / 2 : 0;
  for (std::size_t i = stay_slow; i < readers.size(); ++i) {
    CHECK(readers[i]->hurries(seconds(60)));
    CHECK(room.honest->lost(readers[i]->ledger()).empty());
    for (const auto& [book, tension] : last) CHECK(bench::tension_of(readers[i]->ledger(), book) == tension);
  }
  const Stopwatch watch;
  const auto last_slow = readers.begin() + static_cast<std::ptrdiff_t>(stay_slow);
  const auto all_gone = [&] { return std::all_of(readers.begin(), last_slow, [](const auto& one) { return one->let_go(); }); };
  while (!all_gone() && watch.seconds() < 180) std::this_thread::sleep_for(milliseconds(200));
  CHECK(all_gone());
  if (stay_slow > 0) figure("hostile", "until tablets that read a few bytes at a time were let go", watch.seconds(), "s");
  readers.clear();
  room.look("slow readers");
}
