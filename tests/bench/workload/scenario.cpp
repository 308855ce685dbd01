#include "tests/bench/workload/scenario.h"

#include <boost/json.hpp>
#include <iostream>
#include <random>

#include "core/log/archive.h"
#include "core/store/database.h"
#include "sync/exchange/reconcile.h"
#include "tests/bench/report.h"
#include "tests/bench/room.h"
#include "tests/bench/workload/floor.h"
#include "tests/bench/workload/meeting.h"
#include "tests/bench/workload/replica.h"
#include "tests/support/processor_time.h"

namespace weavelog::bench {
namespace {

namespace fs = std::filesystem;
using testing::processor_ms;

std::uintmax_t bytes_of(const fs::path& file) {
  std::error_code none;
  const auto size = fs::file_size(file, none);
  return none ? 0 : size;
}

/// A fresh copy of what another scenario left.
void copy_over(const fs::path& from, const fs::path& to) {
  fs::remove_all(to);
  fs::copy(from, to, fs::copy_options::recursive);
}

void remove_database(const fs::path& file) {
  for (const char* part : {"", "-wal", "-shm"}) fs::remove(file.string() + part);
}

class Run {
 public:
  explicit Run(const ScenarioOptions& options)
      : options_(options),
        facts_(options.size.empty() ? WorkloadFacts{} : read_facts(options.ops, options.size)) {
    line_ = {{"peer", options.who == "floor" ? "plain" : options.who},
             {"layout", options.who == "floor" ? "eav" : "player"},
             {"scenario", options.scenario},
             {"size", options.size}};
    if (options.scenario == "W1") line_["mode"] = options.mode;
  }

  int go() {
    const bool floor = options_.who == "floor";
    if (options_.scenario == "W1")
      floor ? floor_write() : local_write();
    else if (options_.scenario == "W2")
      floor ? floor_import() : cold_import();
    else if (options_.scenario == "W3" || options_.scenario == "W4")
      floor ? floor_delta() : options_.scenario == "W3" ? delta() : few_of_many();
    else if (options_.scenario == "W4r")
      reconcile_alone();
    else if (options_.scenario == "W5")
      open_and_read();
    else
      throw std::runtime_error("no such scenario: " + options_.scenario);
    std::cout << boost::json::serialize(line_) << '\n';
    return line_["ok"].as_bool() ? 0 : 1;
  }

 private:
  [[nodiscard]] fs::path ops(const std::string& delta = {}) const {
    return options_.ops / (options_.size + (delta.empty() ? "" : "." + delta) + ".ops");
  }
  [[nodiscard]] fs::path state(const char* which) const {
    return options_.state / (options_.who + "-" + options_.size + "-" + which);
  }
  void memory() { line_["rss"] = static_cast<std::int64_t>(memory_mb("VmHWM") * 1024 * 1024); }

  struct Replayed {
    double ms = 0, cpu_ms = 0;
    std::size_t actions = 0, writes = 0;
    bool whole = true;
  };
  /// Reading the file is not timed.
  template <class Store>
  Replayed replay(Store& store, const fs::path& file, double limit = 1e9) {
    Replayed out;
    OperationFile actions(file);
    for (auto some = actions.next(); !some.empty() && out.whole; some = actions.next()) {
      const Stopwatch watch;
      const double cpu = processor_ms();
      for (const Action& action : some) {
        store.apply(action);
        ++out.actions;
        out.writes += action.writes.size();
        if (out.actions % 16 == 0 && out.ms + watch.milliseconds() > limit) {
          out.whole = false;
          break;
        }
      }
      out.ms += watch.milliseconds();
      out.cpu_ms += processor_ms() - cpu;
    }
    const Stopwatch watch;
    const double cpu = processor_ms();
    store.finish();
    out.ms += watch.milliseconds();
    out.cpu_ms += processor_ms() - cpu;
    return out;
  }
  void say_writing(const Replayed& done) {
    line_["ms"] = done.ms;
    line_["cpuMs"] = done.cpu_ms;
    line_["actions"] = done.actions;
    line_["writes"] = done.writes;
    line_["actionsPerS"] = static_cast<double>(done.actions) / done.ms * 1000;
    line_["writesPerS"] = static_cast<double>(done.writes) / done.ms * 1000;
    line_["partial"] = !done.whole;
  }

  void local_write() {
    const fs::path folder = options_.keep ? state("A") : options_.tmp / "w1";
    fs::remove_all(folder);
    bool right = true;
    {
      Replica replica(folder, "A", options_.mode == "two" ? Replica::Connections::two : Replica::Connections::one);
      const Replayed done = replay(replica, ops(), options_.limit);
      say_writing(done);
      memory();
      if (done.whole) right = replica.digest() == facts_.digest;
    }
    line_["disk"] = bytes_of(folder / "ledger.db") + bytes_of(folder / "ledger.db-wal");
    line_["ok"] = right;
  }

  void floor_write() {
    const fs::path file = (options_.keep ? state("A") : options_.tmp / "w1").string() + ".db";
    remove_database(file);
    bool right = true;
    {
      Floor floor(file);
      const Replayed done = replay(floor, ops(), options_.limit);
      say_writing(done);
      memory();
      if (done.whole) right = floor.digest() == facts_.digest;
    }
    line_["disk"] = bytes_of(file);
    line_["ok"] = right;
  }

  void say_import(double import_ms, double cpu_ms, double export_ms, std::size_t bytes) {
    line_["ms"] = import_ms;
    line_["cpuMs"] = cpu_ms;
    line_["exportMs"] = export_ms;
    line_["bytes"] = bytes;
    line_["writesPerS"] = static_cast<double>(facts_.writes) / import_ms * 1000;
    memory();
  }

  void cold_import() {
    const fs::path a = options_.tmp / "a", b = options_.tmp / "b";
    copy_over(state("A"), a);
    fs::remove_all(b);
    {
      Replica host(a, "A"), guest(b, "B");
      set_clocks(host, guest);
      enrol(host.station(), guest.station());
      const double cpu = processor_ms();
      const Meeting met = meet(guest.station(), host.station());
      say_import(met.guest_ms, (processor_ms() - cpu) * met.guest_ms / (met.guest_ms + met.host_ms),
                 met.host_ms, met.bytes());
      line_["msgs"] = met.messages;
      line_["ok"] = met.agreed && guest.digest() == facts_.digest;
    }
    line_["disk"] = bytes_of(b / "ledger.db") + bytes_of(b / "ledger.db-wal");
    if (!options_.keep) return;
    for (const char* which : {"A", "B"}) fs::remove_all(state(which));
    fs::rename(a, state("A"));
    fs::rename(b, state("B"));
  }

  void floor_import() {
    const fs::path file = options_.tmp / "b.db";
    remove_database(file);
    Floor from(state("A").string() + ".db");
    const Stopwatch sending;
    const Bytes packed = from.changes_since(0);
    const double export_ms = sending.milliseconds();
    Floor to(file);
    const double cpu = processor_ms();
    const Stopwatch taking;
    to.take(packed);
    say_import(taking.milliseconds(), processor_ms() - cpu, export_ms, packed.size());
    line_["ok"] = to.digest() == facts_.digest;
    line_["disk"] = bytes_of(file) + bytes_of(file.string() + "-wal");
  }

  /// The clocks of two tablets at one table: they agree.
  void set_clocks(Replica& one, Replica& other) {
    OperationFile first(ops("deltaA"));
    const UnixMs now = first.next(1).front().time;
    one.clock().set(now);
    other.clock().set(now);
  }
  void say_meeting(const Meeting& met, const char* suffix = "") {
    const auto key = [&](const char* name) { return std::string(name) + suffix; };
    line_[key("ms")] = met.ms;
    line_[key("bytes")] = met.bytes();
    line_[key("greetingBytes")] = met.greeting_bytes;
    line_[key("msgs")] = met.messages;
    line_[key("roundTrips")] = met.round_trips;
  }

  void delta() {
    const fs::path a = options_.tmp / "a", b = options_.tmp / "b";
    copy_over(state("A"), a);
    copy_over(state("B"), b);
    Replica host(a, "A"), guest(b, "B");
    set_clocks(host, guest);
    host.find_records();
    guest.find_records();
    replay(host, ops("deltaA"));
    replay(guest, ops("deltaB"));
    const Meeting first = meet(guest.station(), host.station());
    say_meeting(first);
    memory();
    const auto left_out = facts_.left_out();
    line_["equal"] = host.digest() == guest.digest();
    line_["merged"] =
        host.digest(left_out) == facts_.after_delta && guest.digest(left_out) == facts_.after_delta;
    int both = 0;
    for (const Contended& one : facts_.contended)
      both += host.holds_both(one) && guest.holds_both(one) ? 1 : 0;
    line_["conflicts"] = {{"both", both}};
    replay(host, ops("delta2A"));
    replay(guest, ops("delta2B"));
    const Meeting second = meet(guest.station(), host.station());
    say_meeting(second, "2");
    const bool again = host.digest() == guest.digest() && host.digest(left_out) == facts_.after_second;
    line_["ok"] = first.agreed && second.agreed && again && line_["equal"].as_bool() &&
                  line_["merged"].as_bool() && both == 10;
  }

  void few_of_many() {
    const fs::path a = options_.tmp / "a", b = options_.tmp / "b";
    copy_over(state("A"), a);
    copy_over(state("B"), b);
    Replica host(a, "A"), guest(b, "B");
    set_clocks(host, guest);
    host.find_records();
    const Meeting quiet = meet(guest.station(), host.station());  // as two that met before and come again
    replay(host, ops("deltaA"));
    const Meeting met = meet(guest.station(), host.station());
    say_meeting(met);
    replay(host, ops("deltaA"));
    must(guest.station().ledger().transact(
        [](Connection& db) { db.raw().exec("UPDATE exchange_peer SET token=NULL"); }));
    const Meeting anew = meet(guest.station(), host.station());
    say_meeting(anew, "Anew");
    memory();
    line_["equal"] = host.digest() == guest.digest();
    line_["ok"] = quiet.agreed && met.agreed && anew.agreed && line_["equal"].as_bool() &&
                  guest.digest() == facts_.after_delta;
  }

  void floor_delta() {
    const bool both_sides = options_.scenario == "W3";
    const fs::path a = options_.tmp / "fa.db", b = options_.tmp / "fb.db";
    for (const auto& file : {a, b}) remove_database(file);
    for (const auto& file : {a, b})
      fs::copy_file(state("A").string() + ".db", file, fs::copy_options::overwrite_existing);
    Floor one(a), other(b);
    const auto left_out = both_sides ? facts_.left_out() : std::set<std::string>{};
    const std::int64_t before = one.place();
    const auto exchange = [&](const std::string& forth, const std::string& back, const char* suffix) {
      const std::int64_t of_one = one.place(), of_other = other.place();
      replay(one, ops(forth));
      if (both_sides) replay(other, ops(back));
      const Stopwatch watch;
      const Bytes to_other = one.changes_since(of_one), to_one = other.changes_since(of_other);
      other.take(to_other);
      if (!to_one.empty()) one.take(to_one);
      line_[std::string("ms") + suffix] = watch.milliseconds();
      line_[std::string("bytes") + suffix] = to_other.size() + to_one.size();
    };
    exchange("deltaA", "deltaB", "");
    memory();
    line_["equal"] = one.digest() == other.digest();
    line_["merged"] = one.digest(left_out) == facts_.after_delta;
    bool right = line_["equal"].as_bool() && line_["merged"].as_bool();
    if (both_sides) {
      int both = 0;
      for (const Contended& contended : facts_.contended) both += one.holds_both(contended, before) ? 1 : 0;
      line_["conflicts"] = {{"both", both}};
      exchange("delta2A", "delta2B", "2");
      right = right && one.digest(left_out) == facts_.after_second;
    }
    line_["ok"] = right;
  }

  void reconcile_alone() {
    constexpr std::size_t kBooks = 1'000'000, kChanged = 10;
    // Drawn anew for each side, so that neither is a copy which shares the other's memory.
    const auto items = [](std::uint8_t difference) {
      std::mt19937_64 draw(7);
      std::vector<ReconcileItem> out(kBooks);
      for (ReconcileItem& item : out) {
        item.stamp = draw() >> 1;
        for (auto& byte : item.id) byte = static_cast<std::uint8_t>(draw());
      }
      for (std::size_t i = 0; i < kChanged; ++i) out[i * (kBooks / kChanged) + 7].id[0] ^= difference;
      return out;
    };
    // Both keep their sets from one meeting to the next.
    const ReconcileSet mine(items(0));
    line_["rssOneSide"] = static_cast<std::int64_t>(memory_mb("VmRSS") * 1024 * 1024);
    const ReconcileSet other(items(0x55));
    const Stopwatch watch;
    Reconciler asks(mine, 128 * 1024), answers(other, 128 * 1024);
    Bytes message = asks.initiate();
    std::size_t bytes = 0, trips = 0, have = 0, need = 0;
    while (!message.empty()) {
      bytes += message.size();
      ++trips;
      const auto answer = must(answers.receive(message));
      bytes += answer.reply.size();
      auto step = must(asks.receive(answer.reply));
      have += step.have.size();
      need += step.need.size();
      message = std::move(step.reply);
    }
    line_["ms"] = watch.milliseconds();
    line_["bytes"] = bytes;
    line_["roundTrips"] = trips;
    memory();
    line_["ok"] = have == kChanged && need == kChanged;
  }

  void open_and_read() {
    const std::string player =
        "p" + std::string(5 - std::to_string(1 + options_.turn * 37 % facts_.players).size(), '0') +
        std::to_string(1 + options_.turn * 37 % facts_.players);
    const BookId book = known_book(player);
    const Stopwatch watch;
    Replica replica(state("A"), "A");
    const Reading read = read_player(replica.station().ledger(), book);
    line_["ms"] = watch.milliseconds();
    memory();
    const std::size_t jobs = std::min<std::size_t>(10, facts_.jobs / facts_.players);
    line_["ok"] = read.jobs == jobs && read.events == 8 * jobs;
  }

  /// Which book is whose: a line a player, noted once beside the kept replica, since a screen would know it.
  BookId known_book(const std::string& player) {
    const fs::path file = state("A") / "players.txt";
    if (!fs::exists(file)) {
      Replica replica(state("A"), "A");
      replica.find_records();
      std::ofstream out(file);
      for (std::size_t i = 1; i <= facts_.players; ++i) {
        const std::string number = std::to_string(i);
        const std::string name = "p" + std::string(5 - number.size(), '0') + number;
        out << name << ' ' << replica.book_of(name).hex() << '\n';
      }
    }
    std::ifstream in(file);
    std::string name, hex;
    while (in >> name >> hex)
      if (name == player) return BookId::from_hex(hex).value();
    throw std::runtime_error("no player " + player);
  }

  const ScenarioOptions& options_;
  WorkloadFacts facts_;
  boost::json::object line_;
};

}  // namespace

int run_scenario(const ScenarioOptions& options) {
  return Run(options).go();
}

}  // namespace weavelog::bench
