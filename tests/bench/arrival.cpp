// Arriving at an event with a full tablet: the code, the entry list, the matching, what is ticked, until both agree.

#include "core/people/arrival.h"

#include <algorithm>
#include <thread>

#include "core/desk/event_book.h"
#include "core/model/linked.h"
#include "core/people/consent.h"
#include "fixtures/demo/people.h"
#include "sync/exchange/workplace.h"
#include "tests/bench/benches.h"
#include "tests/bench/room.h"

namespace weavelog::bench {
namespace {

constexpr std::size_t kEntries = 300, kKnownEntries = 200, kTheirBooks = 60;

/// A room whose list names many of the tablet's players, and some of whom only the room has a book.
BookId write_server(const std::filesystem::path& folder, const std::vector<PlayerRow>& known, std::size_t run, std::size_t jobs) {
  const auto server = open_station(folder, "Event server");
  Ledger& ledger = server->ledger();
  const UnixMs now = ledger.wall().now();
  const BookId event = ledger.create_book_id();
  EventInfo info;
  info.name = "Lakeside Cup " + std::to_string(run);
  (void)must(ledger.append(must(new_event(event, info, now))));
  Draft list(event, kEventBook, kActImportEntryList);
  const std::size_t step = known.size() / kKnownEntries;
  for (std::size_t i = 0; i < kEntries; ++i) {
    EntryListItem item;
    if (i < kKnownEntries) {
      const PlayerRow& row = known[i * step + run % step];
      item.family_name = row.family_name, item.given_name = row.given_name, item.native_name = row.native_name;
      item.country = row.country, item.birth_year = row.birth_year, item.hand = row.hand, item.tour_number = row.tour_number;
    } else {
      const Person person = demo::invented_person(50'000 + run * kEntries + i);
      item.family_name = person.family_name, item.given_name = person.given_name, item.country = person.country, item.birth_year = person.birth_year;
      if (i < kKnownEntries + kTheirBooks) {
        item.player = ledger.create_book_id();
        Draft first(item.player, kPlayerBook, kActNewPlayer);
        (void)put_new(first, person, now);
        (void)must(ledger.append(first));
        for (std::size_t turn = 0; turn < jobs; ++turn) {
          Draft more(item.player, kPlayerBook, kActDropOff);
          Job job;
          job.at = now;
          job.mains_string = "Tarnbrook Silk";
          (void)put_new(more, job, now);
          (void)must(ledger.append(more));
        }
      }
    }
    (void)put_new(list, item, now);
  }
  (void)must(ledger.append(list));
  return event;
}

}  // namespace

void arrival(Report& report, const Setting& setting) {
  const std::size_t players = 5'000, jobs = setting.full ? 20 : 4;
  const std::string bench = "arrival: 300 entries, a tablet of 5,000 players x " + std::to_string(jobs) + " jobs";
  const Scratch scratch(setting.folder);
  const Stopwatch making;
  write_large(scratch / "tablet", "Tablet", players, jobs);
  report.say(bench, "making the data (not part of it)", "s", making.seconds());
  const auto tablet = open_station(scratch / "tablet", "Tablet");
  Ledger& ledger = tablet->ledger();
  const auto known = find_players(ledger, {}, players);
  Figure list{bench, "paired, and the entry list is here", "s", {}, {}, ""};
  Figure matching{bench, "matched, with what each side gains", "ms", {}, {}, "1,000"};
  Figure across{bench, "ticked players are across, and both agree", "s", {}, {}, ""};
  Figure whole{bench, "whole arrival", "s", {}, {}, "60"};
  Figure moved{bench, "bytes moved", "MB", {}, {}, ""};
  Figure going{bench, "histories that go", "books", {}, {}, ""};
  for (std::size_t run = 0; run < 3; ++run) {
    const auto folder = scratch / ("server" + std::to_string(run));
    const BookId event = write_server(folder, known, run, jobs);
    Room room(folder, "Event server");
    const PublicKey host = room.desk().ledger().self().key;
    Workplace workplace(*tablet, [&](const BookId& book, BookKind kind) { return may_cross(ledger, book, kind); });
    ExchangeGuestOptions options = ExchangeGuest::to_pair(room.code());
    options.may_leave = workplace.may_leave();
    options.leaves_by = [] { return LeaveRule{}; };

    const Stopwatch all;
    must(begin_arrival(ledger, ledger.wall().now()));
    ExchangeGuest guest(*tablet, std::move(options), {});
    const auto agrees = [&](std::optional<AgreementToken> after) {
      const bool came = guest.wait(std::chrono::minutes(5), [&](const GuestStatus& status) {
        return status.fault || (has_agreed(status) && status.session.all_sent && status.session.agreed->token != after);
      });
      const GuestStatus status = guest.status();
      if (!came || !has_agreed(status)) throw std::runtime_error(status.fault ? status.fault->message() : "the two never agreed");
      return status;
    };
    const GuestStatus first = agrees({});
    list.runs.values.push_back(all.seconds());
    workplace.set_host(host);
    if (entry_list(ledger, event).size() != kEntries) throw std::runtime_error("the entry list did not come");

    const Stopwatch match;
    const auto going_on = arrival_going_on(ledger);
    const BookSums sums = book_sums(ledger);
    const auto lines = weavelog::arrival(ledger, event, ledger.wall().now(), &*going_on);
    std::vector<BookId> ticked;
    std::vector<std::pair<EntityId, BookId>> links;
    std::size_t gained = 0;
    for (const ArrivalLine& line : lines) {
      if (line.candidates.empty()) continue;
      const ArrivalCandidate& one = line.candidates.front();
      gained += gain_there(one.books, sums, [&](const BookId& book) { return workplace.is_ticked(book); }).jobs;
      gained += gain_here(one.books, sums, *going_on).jobs;
      if (line.band != MatchBand::known || !one.may_cross || workplace.is_ticked(one.match.book)) continue;
      ticked.push_back(one.match.book);
      if (!line.linked) links.emplace_back(line.entry, one.match.book);
    }
    matching.runs.values.push_back(match.milliseconds());
    if (gained == 0 || ticked.size() < kKnownEntries / 2) throw std::runtime_error("too few of the list were known");

    const Stopwatch crossing;
    (void)must(workplace.commit(must(link_entries(must(load_event(ledger, event)), links))));
    must(workplace.tick(with_linked(ledger, ticked)));
    must(note_sent(ledger, ticked));
    guest.scope_changed();
    // The links alone are another agreement: what was ticked has to be there too.
    const auto lacking = [&](const BookId& book) { return room.desk().ledger().heads(book) != ledger.heads(book); };
    while (std::any_of(ticked.begin(), ticked.end(), lacking)) {
      if (crossing.seconds() > 300) throw std::runtime_error("the ticked players never came across");
      std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
    (void)agrees(first.session.agreed->token);
    across.runs.values.push_back(crossing.seconds());
    whole.runs.values.push_back(all.seconds());
    moved.runs.values.push_back(static_cast<double>(room.relay().take_bytes()) / 1e6);
    going.runs.values.push_back(static_cast<double>(ticked.size()));
  }
  for (const Figure* figure : {&list, &matching, &across, &whole, &moved, &going}) report.say(*figure);
}

}  // namespace weavelog::bench
