#include <algorithm>
#include <thread>

#include "core/desk/board.h"
#include "core/desk/drop_off.h"
#include "core/desk/event_book.h"
#include "core/desk/last_time.h"
#include "core/desk/stages.h"
#include "core/desk/tag_code.h"
#include "core/model/queries.h"
#include "fixtures/demo/play.h"
#include "sync/server/board.h"
#include "tests/bench/benches.h"
#include "tests/bench/room.h"
#include "tests/bench/tablets.h"
#include "tests/support/server.h"

namespace weavelog::bench {
namespace {

const std::string kRoomDayBench = "a room's day";

/// So many open rackets, of players who were here before, as the desk takes them in. Returns their tags.
std::vector<std::int64_t> take_in(Ledger& ledger, const BookId& event, std::size_t rackets) {
  std::vector<std::int64_t> tags;
  const EventRecord room = must(load_event(ledger, event));
  for (const BookId& book : player_books(ledger)) {
    if (tags.size() >= rackets) break;
    const PlayerRecord record = must(load_player(ledger, book));
    if (record.rackets.empty() || record.jobs.empty()) continue;
    DropOffRequest request;
    request.drop_off.event = event;
    request.drop_off.event_name = room.event.now.name;
    request.drop_off.place = "desk";
    const UnixMs now = WallClock::system().now();
    request.drop_off.at = now;
    request.drop_off.ready_by = now + 7'200'000;
    request.time_zone = room.event.now.time_zone;
    request.device = ledger.self().id();
    const EntityId racket = record.rackets.front().id();
    for (const LastTime& last : same_for_each(record, std::span(&racket, 1))) {
      request.lines.push_back(line_from(last));
      request.lines.back().tag_number = highest_tag(ledger, event) + 1;
      tags.push_back(*request.lines.back().tag_number);
    }
    (void)must(ledger.append(must(drop_off(record, request, read_back_of(record, request), "desk"))));
  }
  return tags;
}

Stage stage_of_tag(const Ledger& ledger, const BookId& event, std::int64_t tag) {
  const auto rows = find_jobs_by_tag(ledger, tag, event);
  return rows.empty() ? Stage::none : rows.front().stage;
}

/// What the app does with a scan that takes the next step: the tag read, the job found, the step stored. Returns where it is now.
Stage scan_on(Ledger& ledger, const BookId& event, const std::string& code, const std::string& by) {
  const std::int64_t tag = must(tag_number_from(code, event));
  const JobRow row = find_jobs_by_tag(ledger, tag, event).at(0);
  const PlayerRecord record = must(load_player(ledger, row.book));
  (void)must(ledger.append(must(advance(record, row.job, by, WallClock::system().now()))));
  return stage_of_tag(ledger, event, tag);
}

void scans(Report& report, Tablets& tablets, const BookId& event, std::size_t probes) {
  const auto tags = take_in(tablets.ledger(0), event, std::max<std::size_t>(1, probes / 7));
  if (tags.empty()) throw std::runtime_error("nobody of the played event was here before");
  const auto all_know = [&](std::int64_t tag, Stage stage) {
    for (std::size_t i = 0; i < tablets.size(); ++i)
      if (stage_of_tag(tablets.ledger(i), event, tag) != stage) return false;
    return true;
  };
  const Stopwatch patience;
  for (const std::int64_t tag : tags)
    while (!all_know(tag, Stage::received)) {
      if (patience.seconds() > 60) throw std::runtime_error("the rackets that were taken in did not reach all tablets in a minute");
      std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
  Runs own, others;
  double lost = 0;
  for (std::size_t probe = 0; probe < probes; ++probe) {
    const std::int64_t tag = tags[probe % tags.size()];
    Ledger& here = tablets.ledger(probe % tablets.size());
    if (next_steps(stage_of_tag(here, event, tag)).empty() || stage_of_tag(here, event, tag) == Stage::ready) continue;
    const Stopwatch watch;
    const Stage stage = scan_on(here, event, must(tag_code(event, tag)), "tablet " + std::to_string(probe % tablets.size()));
    own.values.push_back(watch.milliseconds());
    while (!all_know(tag, stage) && watch.seconds() < 10) std::this_thread::sleep_for(std::chrono::milliseconds(1));
    if (!all_know(tag, stage)) ++lost;
    others.values.push_back(watch.milliseconds());
    std::this_thread::sleep_for(std::chrono::milliseconds(100));  // a quiet moment, so that the next one is measured by itself
  }
  report.say(kRoomDayBench, "stage by a scan, on its tablet, p50", "ms", own.quantile(0.5));
  report.say(kRoomDayBench, "stage by a scan, on its tablet, worst", "ms", own.quantile(1), "under 100 ms");
  report.say(kRoomDayBench, "the same on all other tablets, p50", "ms", others.quantile(0.5));
  report.say(kRoomDayBench, "the same on all other tablets, worst", "ms", others.quantile(1), "under 300 ms");
  report.say(kRoomDayBench, "scans that did not reach all in 10 s", "scans", lost, "none");
}

void lounge(Report& report, const Ledger& ledger, const BookId& event) {
  Runs made;
  std::size_t bytes = 0;
  for (int run = 0; run < 20; ++run) {
    const Stopwatch watch;
    const UnixMs now = WallClock::system().now();
    const BoardPages pages = board_pages(board_now(ledger, event, BoardShow::tag, now), Language{}, now);
    made.values.push_back(watch.milliseconds());
    bytes = pages.html.size();
  }
  report.say(kRoomDayBench, "the lounge's page made, p50", "ms", made.quantile(0.5));
  report.say(kRoomDayBench, "its size", "kB", static_cast<double>(bytes) / 1000);
}

}  // namespace

void room_day(Report& report, const Setting& setting) {
  const Scratch scratch(setting.folder);
  demo::PlayOptions options;
  if (!setting.full) {
    options.players = 40;
    options.jobs = 160;
    options.days = 2;
  }
  options.now = WallClock::system().now() - (options.days + 6) * UnixMs{86'400'000};
  options.folder = scratch / "event";
  const demo::PlayReport played = must(demo::play_event(options));
  report.say(kRoomDayBench, "jobs strung", "jobs", static_cast<double>(played.happened.strung));
  report.say(kRoomDayBench, "entries", "entries", static_cast<double>(played.entries));
  report.say(kRoomDayBench, "devices that tell otherwise than what happened", "lines", static_cast<double>(played.differences.size()), "none");
  for (const demo::ScreenTime& screen : played.screens) report.say(kRoomDayBench, screen.what, "ms", screen.ms, "under 30 ms");

  const testing::Server server(options.folder / "server", std::vector<std::string>(options.tablets, "stringer"));
  Tablets tablets(scratch / "tablets");
  const Stopwatch arriving;
  tablets.add(server.codes());
  tablets.await_all();
  report.say(kRoomDayBench, "12 empty tablets paired and up to date", "s", arriving.seconds());
  const BookId event = tablets.ledger(0).books(kEventBook).at(0).id;
  scans(report, tablets, event, setting.full ? 140 : 49);
  lounge(report, tablets.ledger(0), event);
  report.say(kRoomDayBench, "errors", "errors", static_cast<double>(tablets.errors()), "none");
}

}  // namespace weavelog::bench
