#include "core/store/database.h"
#include "tests/bench/benches.h"
#include "tests/bench/plain.h"
#include "tests/bench/room.h"

namespace weavelog::bench {
namespace {

/// Forgets up to where this device and its host agreed, as a restored tablet would have: the next exchange
/// reconciles.
void forget_agreement(Station& station) {
  must(station.ledger().transact(
      [](Connection& db) { db.raw().exec("UPDATE exchange_peer SET token=NULL"); }));
}

struct Case {
  const char* bench;
  std::size_t players;
  std::size_t jobs;
  int changed;
  const char* time_target;
  const char* bytes_target;
};

void measure(Report& report, const Setting& setting, const Case& wanted) {
  const Scratch scratch(setting.folder);
  write_large(scratch / "host", "Event server", wanted.players, wanted.jobs);
  Room room(scratch / "host", "Event server");
  const auto tablet = open_station(scratch / "tablet", "tablet");
  const double first = exchange(*tablet, ExchangeGuest::to_pair(room.code()));
  report.say(wanted.bench, "first exchange, all books", "s", first);
  PlainStore plain(scratch / "plain.db");
  const auto books = player_books(room.desk().ledger());
  std::int64_t turn = 0;
  for (const bool met : {true, false}) {
    const std::string how = met ? "met before" : "reconciling";
    Figure time{wanted.bench, how + ": time until both agree", "ms", {}, {}, wanted.time_target};
    Figure bytes{wanted.bench,       how + ": bytes moved, TLS handshake included", "KB", {}, {},
                 wanted.bytes_target};
    for (int run = 0; run < 5; ++run) {
      std::vector<Write> writes;
      for (int i = 0; i < wanted.changed; ++i) {
        const BookId& book = books[static_cast<std::size_t>(++turn * 37) % books.size()];
        // By turns here and there, so that both have something to give.
        Ledger& where = i % 2 == 0 ? room.desk().ledger() : tablet->ledger();
        change_tension(where, book, turn);
        const EntityState setup = where.entities(book, kSetup).at(0);
        const FieldTag tag = tag_of<Setup>(&Agreed::mains_tension);
        writes.push_back({setup.id, setup.kind, tag, *setup.get(tag), {}});
      }
      if (!met) forget_agreement(*tablet);
      (void)room.relay().take_bytes();
      time.runs.values.push_back(exchange(*tablet, room.to_return(*tablet)) * 1000);
      bytes.runs.values.push_back(static_cast<double>(room.relay().take_bytes()) / 1024);
      const Stopwatch watch;
      plain.store(books.front(), writes, Stamp{static_cast<std::uint64_t>(turn)});
      time.reference.values.push_back(watch.milliseconds());
    }
    report.say(time);
    report.say(bytes);
  }
}

}  // namespace

void exchanges(Report& report, const Setting& setting) {
  measure(report, setting, {"small exchange: 64 books, one tension changed", 64, 10, 1, "", ""});
  measure(report, setting,
          {"10,000 books, 5 changed", 10'000, setting.full ? std::size_t{2} : std::size_t{0}, 5, "under 1 s",
           "under 64 KB"});
}

}  // namespace weavelog::bench
