#include <functional>

#include "core/model/tables.h"
#include "fixtures/demo/goods.h"
#include "fixtures/demo/people.h"
#include "tests/bench/benches.h"
#include "tests/bench/plain.h"
#include "tests/bench/room.h"

namespace weavelog::bench {
namespace {

/// Actions as a day brings them: of ten, one makes a player (about 20 writes), two a job (about 26), four
/// move a stage (5), three edit a setup (2).
class Actions {
 public:
  explicit Actions(Ledger& ledger) : ledger_(ledger) {}

  Draft next() {
    const UnixMs now = WallClock::system().now();
    const std::size_t turn = count_++ % 10;
    if (turn == 0 || book_ == BookId{}) return player(now);
    if (turn == 1 || turn == 5) return job(now);
    if (turn % 3 == 0) return edit();
    return stage(now);
  }

 private:
  Draft player(UnixMs now) {
    book_ = ledger_.create_book_id();
    Draft draft(book_, kPlayerBook, kActNewPlayer);
    (void)put_new(draft, demo::invented_person(100 + count_), now);
    Setup setup;
    setup.name = "day";
    setup.mains_tension = Quantity{Decimal{24, 0}, Unit::kilogram_force};
    setup.crosses_tension = Quantity{Decimal{23, 0}, Unit::kilogram_force};
    setup_ = put_new(draft, setup, now).id;
    Racket racket = demo::invented_racket(chance_);
    racket.label = "1";
    racket_ = put_new(draft, racket, now).id;
    job_ = {};
    return draft;
  }

  Draft job(UnixMs now) {
    Draft draft(book_, kPlayerBook, kActDropOff);
    Job job;
    static_cast<Agreed&>(job) = demo::invented_wish(chance_, Unit::kilogram_force);
    job.racket = racket_;
    job.setup = setup_;
    job.at = now;
    job.ready_by = now + 3'600'000;
    job.order = 1;
    job.tag_number = static_cast<std::int64_t>(count_);
    job_ = put_new(draft, job, now).id;
    return draft;
  }

  Draft stage(UnixMs now) {
    Draft draft(book_, kPlayerBook, kActStage);
    (void)put_new(draft,
                  StageMark{job_, static_cast<Stage>(1 + count_ % 9), now, "Tamsin", "as the room asks", {}},
                  now);
    return draft;
  }

  Draft edit() {
    const auto seen = ledger_.entity(book_, setup_).value();
    Setup wanted = from_state<Setup>(seen);
    const auto tenths = static_cast<std::int64_t>(200 + count_ % 60);
    wanted.mains_tension = Quantity{Decimal{tenths, 1}, Unit::kilogram_force};
    wanted.crosses_tension = Quantity{Decimal{tenths - 10, 1}, Unit::kilogram_force};
    wanted.note = "change " + std::to_string(count_);
    Draft draft(book_, kPlayerBook, kActEdit);
    put_changes(draft, seen, wanted);
    return draft;
  }

  Ledger& ledger_;
  demo::Chance chance_{7};
  std::size_t count_ = 0;
  BookId book_;
  EntityId setup_, racket_, job_;
};

void measure(Report& report, const std::filesystem::path& where, const std::string& metric,
             std::size_t actions, int runs, const std::string& target) {
  const Scratch scratch(where);
  const auto station = open_station(scratch / "tablet", "tablet");
  PlainStore plain(scratch / "plain.db");
  Actions source(station->ledger());
  Figure figure{"local write", metric, "actions/s", {}, {}, target};
  std::size_t writes = 0, total = 0;
  for (int run = 0; run < runs; ++run) {
    double ours = 0, reference = 0;
    for (std::size_t i = 0; i < actions; ++i) {
      const Draft draft = source.next();
      writes += draft.writes().size();
      ++total;
      // In turns, so that both meet the same load of the machine.
      const Stopwatch first;
      const Committed committed = must(station->ledger().append(draft));
      ours += first.seconds();
      const Stopwatch second;
      plain.store(draft.book(), draft.writes(), committed.stamp);
      reference += second.seconds();
    }
    figure.runs.values.push_back(static_cast<double>(actions) / ours);
    figure.reference.values.push_back(static_cast<double>(actions) / reference);
  }
  report.say(figure);
  report.say("local write", metric + ": field writes an action", "writes",
             static_cast<double>(writes) / static_cast<double>(total));
}

}  // namespace

void local_write(Report& report, const Setting& setting) {
  const int runs = setting.full ? 7 : 5;
  measure(report, setting.folder, "durable, one transaction an action", setting.full ? 1000 : 200, runs,
          "half of plain SQLite");
  if (std::filesystem::is_directory("/dev/shm"))
    measure(report, "/dev/shm", "the same in memory (no disk to wait for)", setting.full ? 3000 : 1000, runs,
            "");
}

}  // namespace weavelog::bench
