// kill -9 of the server, of the command line and of the app at random points; afterwards nothing that was
// confirmed is missing.

#include <algorithm>
#include <catch2/catch.hpp>
#include <csignal>
#include <fstream>
#include <iostream>
#include <random>
#include <thread>

#include "tests/faults/cli_tablet.h"
#include "tests/faults/plan.h"
#include "tests/faults/raw_client.h"
#include "tests/support/server.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

using Clock = std::chrono::steady_clock;
using std::chrono::milliseconds;

constexpr int kKilled = 128 + SIGKILL;

/// How long a kind of command takes here when nobody kills it, so that kills fall all over it.
struct Usual {
  double ms = 50;
  void took(double now) { ms = 0.8 * ms + 0.2 * now; }
};

class Torture {
 public:
  explicit Torture(const Plan& plan)
      : random_(plan.seed), server_(folder_ / "server", {"head", "desk", "stringer", "stringer"}) {
    for (const char* name : {"Desk 1", "Desk 2", "Bench 3"})
      hands_.emplace_back(folder_ / ("tablet" + std::to_string(hands_.size())), name);
    hands_.emplace_back(folder_ / "live", "Bench 4");
    for (std::size_t i = 0; i < hands_.size(); ++i) (void)hands_[i].ask({"pair", server_.codes()[i]});
    for (CliTablet& hand : hands_) (void)hand.drop_off(random_);
  }

  void round() {
    ++rounds;
    const auto kind = random_() % 100;
    CliTablet& hand = hands_[random_() % 3];
    if (kind < 50) {
      write(hand);
    } else if (kind < 65) {
      exchange(hand);
    } else if (kind < 80) {
      exchange_while_server_dies(hand);
    } else if (kind < 90) {
      server_dies_after(hand);
    } else {
      live(hand);
    }
    if (rounds % 25 == 0) check(hand);
  }

  /// All ledgers well, nothing lost, and everybody comes to the same words.
  void finish() {
    (void)server_.stop();
    look_into(folder_ / "server");
    for (const CliTablet& hand : hands_) check(hand);
    server_.start();
    for (int turn = 0; turn < 2; ++turn)
      for (const CliTablet& hand : hands_) (void)hand.ask({"exchange"});
    std::string words;
    for (const CliTablet& hand : hands_) {
      const std::string mine(hand.ask({"exchange"}).at("words").as_string());
      if (words.empty()) words = mine;
      INFO(hand.name());
      CHECK(mine == words);
    }
    // By now each holds all that was ever confirmed anywhere.
    CHECK(server_.stop() == 0);
    std::vector<std::filesystem::path> folders{folder_ / "server"};
    for (const CliTablet& hand : hands_) folders.push_back(hand.folder());
    for (const auto& folder : folders) {
      const auto station = look_into(folder);
      for (const CliTablet& hand : hands_) {
        const auto lost = hand.lost(station->ledger());
        INFO(folder.filename() << (lost.empty() ? "" : ": " + lost.front()));
        CHECK(lost.empty());
        lost_ += lost.size();
      }
      CHECK(station->ledger().quarantine().empty());
    }
  }

  [[nodiscard]] std::size_t confirmed() const {
    std::size_t sum = 0;
    for (const CliTablet& hand : hands_) sum += hand.confirmed();
    return sum;
  }
  [[nodiscard]] std::size_t lost() const { return lost_; }

  int rounds = 0;
  int kills_of_tablets = 0;
  int kills_of_server = 0;
  int kills_of_app = 0;
  int apps_in_exchange = 0;  ///< when they were killed
  std::size_t acts_in_app = 0;  ///< that the app said are stored

 private:
  /// From nothing to a little beyond its usual end; one in five is left alone.
  KillAfter point(const Usual& usual) {
    const auto part = static_cast<double>(random_() % 1000) / 1000;
    if (random_() % 5 == 0) return std::nullopt;
    return milliseconds(static_cast<int>(part * 1.2 * usual.ms));
  }

  template <class Work>
  Finished timed(Usual& usual, const KillAfter& kill, Work work) {
    const auto begin = Clock::now();
    Finished finished = work();
    if (!kill && finished.status == 0)
      usual.took(std::chrono::duration<double, std::milli>(Clock::now() - begin).count());
    if (finished.status == kKilled) ++kills_of_tablets;
    INFO(finished.out << finished.err);
    // Killed, or done: a kill before leaves nothing behind that stops the next.
    CHECK((finished.status == 0 || finished.status == kKilled));
    return finished;
  }

  void write(CliTablet& hand) {
    const auto kill = point(write_);
    (void)timed(write_, kill, [&] { return hand.write(random_, kill); });
  }

  void exchange(CliTablet& hand) {
    (void)hand.write(random_, {});
    const auto kill = point(exchange_);
    (void)timed(exchange_, kill, [&] { return hand.run({"exchange"}, kill); });
  }

  void exchange_while_server_dies(CliTablet& hand) {
    (void)hand.write(random_, {});
    const auto when = point(exchange_).value_or(milliseconds(0));
    Finished finished;
    std::thread tablet([&] { finished = hand.run({"exchange", "--seconds", "20"}); });
    std::this_thread::sleep_for(when);
    if (server_.kill()) ++kills_of_server;
    tablet.join();
    // It ended before the kill, or says in one line what became of the connection.
    INFO(finished.out << finished.err);
    CHECK((finished.status == 0 || finished.status == 1));
    if (finished.status == 0) server_holds_all_of(hand);
    server_.start();
  }

  void server_dies_after(CliTablet& hand) {
    (void)hand.write(random_, {});
    (void)hand.ask({"exchange"});
    if (server_.kill()) ++kills_of_server;
    server_holds_all_of(hand);
    server_.start();
  }

  /// Somebody who stays connected, live, is killed while others send; by turns the command line and the app, which acts meanwhile.
  void live(CliTablet& other) {
    CliTablet& stays = hands_.back();
    (void)other.write(random_, {});
#ifdef WEAVELOG_APP_PROGRAM
    if (live_turns_++ % 2 == 1) return app_acts(stays, other);
#endif
    Running staying({WEAVELOG_CLI_PROGRAM, "--data", stays.folder().string(), "exchange", "--stay"});
    (void)other.run({"exchange"});
    std::this_thread::sleep_for(milliseconds(random_() % 200));
    staying.kill();
    ++kills_of_tablets;
    (void)timed(write_, std::nullopt, [&] { return stays.write(random_, {}); });
  }

#ifdef WEAVELOG_APP_PROGRAM
  /// The app, with a hand at it (app_hand.cpp), is killed: at times while it starts, mostly after so many of its acts were confirmed.
  void app_acts(CliTablet& stays, CliTablet& other) {
    const auto acts = stays.acts(random_, 60);
    const auto script = folder_ / "acts";
    std::ofstream out(script, std::ios::trunc);
    for (const std::string& act : acts) out << act << '\n';
    out.close();
    Running app({"/usr/bin/env", "QT_PLUGIN_PATH=" WEAVELOG_APP_HAND, "QT_QPA_GENERIC_PLUGINS=weavelog_hand:" + script.string(),
                 WEAVELOG_APP_PROGRAM, "--data", stays.folder().string()});
    std::thread exchange([&] { (void)other.run({"exchange"}); });
    std::vector<std::string> answers;
    const std::size_t wanted = random_() % 4 == 0 ? 0 : 1 + random_() % acts.size();
    while (answers.size() < wanted) {
      const auto line = app.line(std::chrono::seconds(60));
      if (!line) break;
      answers.push_back(*line);
    }
    INFO("the app confirmed " << answers.size() << " of " << wanted);
    CHECK(answers.size() == wanted);
    std::this_thread::sleep_for(milliseconds(random_() % (wanted == 0 ? 1500 : 30)));
    exchange.join();
    // Everybody else has ended the exchange by now.
    if (health_of("127.0.0.1", server_.port()).find("\"connected\":[\"") != std::string::npos) ++apps_in_exchange;
    app.kill();
    ++kills_of_app;
    while (const auto line = app.line(std::chrono::seconds(1))) answers.push_back(*line);
    for (std::size_t i = 0; i < answers.size() && i < acts.size(); ++i) {
      CHECK(answers[i] == "did " + acts[i]);
      if (answers[i].starts_with("did ")) stays.did(acts[i]);
    }
    if (answers.size() < acts.size()) stays.doubt(acts[answers.size()]);
    acts_in_app += answers.size();
    check(stays);
  }
#endif

  /// What a tablet had when the server agreed with it is on the server's disk, though the server was killed.
  void server_holds_all_of(const CliTablet& hand) {
    const auto tablet = open_folder(hand.folder());
    const auto server = open_folder(server_.folder());
    for (const BookInfo& book : tablet->ledger().books()) {
      const Heads held = server->ledger().heads(book.id);
      for (const Head& head : tablet->ledger().heads(book.id)) {
        const auto same = std::find_if(held.begin(), held.end(), [&](const Head& one) {
          return one.author == head.author && one.seq >= head.seq;
        });
        INFO(hand.name() << ", book " << book.id.hex());
        CHECK(same != held.end());
        if (same == held.end()) ++lost_;
      }
    }
  }

  void check(const CliTablet& hand) {
    const auto station = look_into(hand.folder());
    const auto lost = hand.lost(station->ledger());
    INFO(hand.name() << (lost.empty() ? "" : ": " + lost.front()));
    CHECK(lost.empty());
    lost_ += lost.size();
  }

  /// A ledger that nobody else has open, verified.
  std::unique_ptr<Station> look_into(const std::filesystem::path& folder) {
    auto station = open_folder(folder);
    const VerifyReport report = station->ledger().verify();
    INFO(folder.filename() << (report.faults.empty() ? "" : ": " + report.faults.front()));
    CHECK(report.faults.empty());
    return station;
  }

  TemporaryFolder folder_;
  std::mt19937_64 random_;
  Server server_;
  std::vector<CliTablet> hands_;
  Usual write_, exchange_;
  std::size_t lost_ = 0;
  int live_turns_ = 0;
};

}  // namespace

TEST_CASE("killed at random points, no device and no server loses what was confirmed, and all agree",
          "[kills]") {
  const Plan plan = Plan::from_environment();
  std::cout << "kills: seed " << plan.seed << std::endl;
  INFO("WEAVELOG_FAULTS_SEED=" << plan.seed);
  Torture torture(plan);
  const auto begin = Clock::now();
  const auto elapsed = [&] { return std::chrono::duration<double>(Clock::now() - begin).count(); };
  while (plan.most.count() != 0 ? Clock::now() - begin < plan.most : torture.rounds < plan.rounds)
    torture.round();
  torture.finish();
  figure("kills", "rounds", torture.rounds, "rounds");
  figure("kills", "tablets killed", torture.kills_of_tablets, "kills");
  figure("kills", "servers killed", torture.kills_of_server, "kills");
  figure("kills", "apps killed", torture.kills_of_app, "kills");
  figure("kills", "of these connected to the server", torture.apps_in_exchange, "apps");
  figure("kills", "of the writes below confirmed by the app", static_cast<double>(torture.acts_in_app), "writes");
  figure("kills", "writes confirmed", static_cast<double>(torture.confirmed()), "writes");
  figure("kills", "confirmed and lost", static_cast<double>(torture.lost()), "writes");
  figure("kills", "took", elapsed(), "s");
}
