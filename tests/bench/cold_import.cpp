#include <algorithm>
#include <array>
#include <atomic>
#include <cstdio>
#include <memory>
#include <thread>

#include "core/model/queries.h"
#include "fixtures/demo/people.h"
#include "tests/bench/benches.h"
#include "tests/bench/plain.h"
#include "tests/bench/room.h"

namespace weavelog::bench {
namespace {

/// What the importing process says of itself.
struct Imported {
  double seconds = 0;
  double peak_mb = 0;
  double entries = 0;
  double worst_find_ms = 0;
  double worst_append_ms = 0;
};

/// Runs the importing process; throws if it fails.
Imported run_import(const Setting& setting, const PairingCode& code, const std::filesystem::path& folder) {
  const std::string command =
      "'" + setting.program + "' import --code '" + code.text() + "' --into '" + folder.string() + "'";
  const auto close = [](FILE* pipe) { return pclose(pipe); };
  const std::unique_ptr<FILE, decltype(close)> pipe(popen(command.c_str(), "r"), close);
  if (!pipe) throw std::runtime_error("the importing process can't be started");
  Imported out;
  if (std::fscanf(pipe.get(), "%lf %lf %lf %lf %lf", &out.seconds, &out.peak_mb, &out.entries,
                  &out.worst_find_ms, &out.worst_append_ms) != 5)
    throw std::runtime_error("the importing process failed");
  return out;
}

/// The same fields, as they stand at the end, into plain SQLite: one durable transaction a book. Reading them
/// out is not counted.
double plain_import(const Ledger& from, const std::filesystem::path& file) {
  PlainStore plain(file);
  double seconds = 0;
  for (const BookInfo& book : from.books()) {
    std::vector<Write> writes;
    for (const EntityState& entity : from.entities(book.id))
      for (const Cell& cell : entity.cells)
        writes.push_back({entity.id, entity.kind, cell.tag, cell.latest().value, {}});
    const Stopwatch watch;
    plain.store(book.id, writes, Stamp{1});
    seconds += watch.seconds();
  }
  return seconds;
}

void screens(Report& report, const std::filesystem::path& folder, std::size_t players) {
  Figure opening{"screens", "opening the ledger", "ms", {}, {}, "first frame of the app in 1.5 s"};
  std::unique_ptr<Station> station;
  for (int run = 0; run < 5; ++run) {
    station.reset();
    const Stopwatch watch;
    station = open_station(folder, "tablet");
    opening.runs.values.push_back(watch.milliseconds());
  }
  report.say(opening);
  const Ledger& ledger = station->ledger();
  Runs typing;
  for (std::size_t i = 0; i < 60; ++i) {
    const Person person = demo::invented_person(i * 7 % players);
    // As it is typed: letter by letter of the family name, in characters and not in bytes.
    std::string typed;
    for (const char c : person.family_name) {
      typed += c;
      if ((static_cast<unsigned char>(c) & 0x80) != 0) continue;
      const Stopwatch watch;
      const auto found = find_players(ledger, typed);
      typing.values.push_back(watch.milliseconds());
      if (found.empty()) throw std::runtime_error("nobody is found by " + typed);
    }
  }
  report.say("screens", "find as you type, p50", "ms", typing.quantile(0.5));
  report.say("screens", "find as you type, p95", "ms", typing.quantile(0.95), "under 50 ms");
  report.say("screens", "find as you type, worst", "ms", typing.quantile(1));
  Figure first{"screens", "first page of all jobs (50 rows)", "ms", {}, {}, ""};
  Figure middle{"screens", "page in the middle by its number (50 rows)", "ms", {}, {}, ""};
  Figure next{"screens", "next page by its key (50 rows)", "ms", {}, {}, ""};
  const std::int64_t jobs = count_jobs(ledger);
  report.say("screens", "jobs", "rows", static_cast<double>(jobs));
  for (int run = 0; run < 9; ++run) {
    const Stopwatch one;
    (void)page_of_jobs(ledger, {}, {}, 50);
    first.runs.values.push_back(one.milliseconds());
    const Stopwatch two;
    const auto key = job_key_at(ledger, {}, jobs / 2);
    const auto page = page_of_jobs(ledger, {}, key, 50);
    middle.runs.values.push_back(two.milliseconds());
    if (page.size() != 50) throw std::runtime_error("a page in the middle is not full");
    const Stopwatch three;
    (void)page_of_jobs(ledger, {}, page.back().key, 50);
    next.runs.values.push_back(three.milliseconds());
  }
  report.say(first);
  report.say(middle);
  report.say(next);
}

}  // namespace

int import_here(const std::string& code_text, const std::filesystem::path& folder) {
  const PairingCode code = must(PairingCode::parse(code_text));
  const auto station = open_station(folder, "tablet");
  std::atomic<bool> done{false};
  double worst_find = 0, worst_append = 0;
  // Somebody uses the tablet meanwhile.
  std::thread person([&] {
    const BookId own = station->ledger().create_book_id();
    std::int64_t turn = 0;
    while (!done) {
      const Stopwatch find;
      (void)find_players(station->ledger(), "br");
      worst_find = std::max(worst_find, find.milliseconds());
      Draft draft(own, kPlayerBook, kActNewPlayer);
      Person player = demo::invented_person(static_cast<std::size_t>(++turn));
      (void)put_new(draft, player, WallClock::system().now());
      const Stopwatch append;
      (void)must(station->ledger().append(draft));
      worst_append = std::max(worst_append, append.milliseconds());
      std::this_thread::sleep_for(std::chrono::milliseconds(100));
    }
  });
  const Stopwatch watch;
  ExchangeGuest guest(*station, ExchangeGuest::to_pair(code), {});
  guest.wait(std::chrono::minutes(10),
             [](const GuestStatus& status) { return has_agreed(status) || status.fault.has_value(); });
  const double seconds = watch.seconds();
  done = true;
  person.join();
  const GuestStatus status = guest.status();
  if (!has_agreed(status)) {
    std::fprintf(stderr, "weavelog-bench: %s\n",
                 status.fault ? status.fault->message().c_str() : "the two never agreed");
    return 1;
  }
  std::printf("%f %f %f %f %f\n", seconds, memory_mb("VmHWM"),
              static_cast<double>(status.session.entries_received), worst_find, worst_append);
  return 0;
}

void cold_import(Report& report, const Setting& setting) {
  const std::size_t players = setting.full ? 1000 : 200;
  const std::size_t jobs = 50;
  const std::string bench =
      "cold import of " + std::to_string(players) + " books x " + std::to_string(jobs) + " jobs";
  const Scratch scratch(setting.folder);
  const Stopwatch making;
  write_large(scratch / "host", "Event server", players, jobs);
  report.say(bench, "making the data (not part of it)", "s", making.seconds());
  Room room(scratch / "host", "Event server");
  Figure time{bench, "time until both agree", "s", {}, {}, setting.full ? "under 20 s" : ""};
  Figure memory{bench, "peak memory of the importing process", "MB", {}, {}, "under 300 MB"};
  Figure rate{bench, "entries taken in", "entries/s", {}, {}, ""};
  Figure moved{bench, "bytes moved", "MB", {}, {}, ""};
  Figure find{bench, "longest wait for find as you type meanwhile", "ms", {}, {}, ""};
  Figure append{bench, "longest wait for a local action meanwhile", "ms", {}, {}, ""};
  const int runs = setting.full ? 3 : 2;
  for (int run = 0; run < runs; ++run) {
    const auto folder = scratch / ("tablet" + std::to_string(run));
    (void)room.relay().take_bytes();
    const Imported imported = run_import(setting, room.code(), folder);
    time.runs.values.push_back(imported.seconds);
    memory.runs.values.push_back(imported.peak_mb);
    rate.runs.values.push_back(imported.entries / imported.seconds);
    moved.runs.values.push_back(static_cast<double>(room.relay().take_bytes()) / 1e6);
    find.runs.values.push_back(imported.worst_find_ms);
    append.runs.values.push_back(imported.worst_append_ms);
    time.reference.values.push_back(
        plain_import(room.desk().ledger(), scratch / ("plain" + std::to_string(run) + ".db")));
  }
  for (const Figure* figure : {&time, &memory, &rate, &moved, &find, &append}) report.say(*figure);
  screens(report, scratch / "tablet0", players);
}

}  // namespace weavelog::bench
