#include "core/desk/board.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "core/base/text.h"
#include "core/model/event.h"
#include "core/model/queries.h"

namespace weavelog {
namespace {

/// What an event's name may take of the screen.
constexpr std::size_t kEventCharacters = 80;

EventInfo info_of(const Ledger& ledger, const BookId& event) {
  for (const EventRow& row : all_events(ledger)) {
    if (row.book != event) continue;
    if (const auto state = ledger.entity(event, row.id)) return from_state<EventInfo>(*state);
  }
  return {};
}

/// The first letter as a capital, nothing if the name has none in Latin.
std::string initial_of(std::string_view name) {
  const std::string latin = to_latin(name);
  for (std::size_t i = 0; i < latin.size(); ++i) {
    const char c = latin[i];
    if (c >= 'a' && c <= 'z') return {static_cast<char>(c - 'a' + 'A'), '.'};
    if (c >= 'A' && c <= 'Z') return {c, '.'};
    const auto byte = static_cast<unsigned char>(c);
    if (byte == 0xCA || byte == 0xCB) {
      ++i;  // a sign between letters, as in transliterated Arabic (U+0280 to U+02FF)
    } else if (byte >= 0x80) {
      return {};
    }
  }
  return {};
}

/// A row with what it is put in order by.
struct Placed {
  BoardRow row;
  std::int64_t tag = 0;
  std::int64_t ready_at = 0;  ///< when the last of its rackets became ready
};

bool by_who(const Placed& a, const Placed& b) { return std::tie(a.tag, a.row.who) < std::tie(b.tag, b.row.who); }
bool by_time(const Placed& a, const Placed& b) {
  const auto when = [](const Placed& placed) { return std::make_pair(!placed.row.ready_by, placed.row.ready_by.value_or(0)); };
  return when(a) != when(b) ? when(a) < when(b) : by_who(a, b);
}
bool by_newest(const Placed& a, const Placed& b) { return a.ready_at > b.ready_at; }

using Order = bool (*)(const Placed&, const Placed&);

/// Those that come first by `first` stay, and stand in the order `shown`.
BoardPart part_of(std::vector<Placed> placed, Order first, Order shown) {
  BoardPart part;
  for (const Placed& one : placed) part.rackets += one.row.rackets;
  std::stable_sort(placed.begin(), placed.end(), first);
  if (placed.size() > kBoardRows) placed.resize(kBoardRows);
  std::stable_sort(placed.begin(), placed.end(), shown);
  part.more = part.rackets;
  for (Placed& one : placed) {
    part.more -= one.row.rackets;
    part.rows.push_back(std::move(one.row));
  }
  return part;
}

/// Gathers the rackets of one part: with initials those of one player and time in one row.
class Gathering {
 public:
  explicit Gathering(BoardShow show) : show_(show) {}

  void add(const BoardJob& job, const std::string& who, std::optional<UnixMs> ready_by, bool late) {
    const std::int64_t tag = show_ == BoardShow::tag ? job.tag_number.value_or(0) : 0;
    const std::int64_t ready_at = job.stage_at.value_or(0);
    if (show_ == BoardShow::initials) {
      const auto [found, fresh] = places_.try_emplace({job.player, ready_by}, placed_.size());
      if (!fresh) {
        Placed& there = placed_[found->second];
        ++there.row.rackets;
        there.ready_at = std::max(there.ready_at, ready_at);
        return;
      }
    }
    placed_.push_back({BoardRow{who, 1, ready_by, late}, tag, ready_at});
  }

  BoardPart part(Order first, Order shown) { return part_of(std::move(placed_), first, shown); }

 private:
  BoardShow show_;
  std::vector<Placed> placed_;
  std::map<std::pair<std::int64_t, std::optional<UnixMs>>, std::size_t> places_;
};

}  // namespace

std::string initials_of(std::string_view family_name, std::string_view given_name) {
  const std::string given = initial_of(given_name), family = initial_of(family_name);
  return given.empty() || family.empty() ? given + family : given + " " + family;
}

BoardNow board_now(const Ledger& ledger, const BookId& event, BoardShow show, UnixMs now) {
  BoardNow board;
  board.show = show;
  const EventInfo info = info_of(ledger, event);
  board.event = shortened(info.name, kEventCharacters);
  board.zone = info.time_zone.empty() ? "UTC" : info.time_zone;
  std::map<std::int64_t, std::string> initials;  // by player
  Gathering ready(show), desk(show), work(show);
  for (const BoardJob& job : board_jobs(ledger, event, show == BoardShow::initials)) {
    std::string who;
    if (show == BoardShow::initials) {
      const auto [found, fresh] = initials.try_emplace(job.player);
      if (fresh) found->second = initials_of(job.family_name, job.given_name);
      who = found->second;
    } else if (job.tag_number) {
      who = std::to_string(*job.tag_number);
    }
    if (who.empty()) {
      ++board.unlisted;
    } else if (job.stage == Stage::ready && !job.clash) {
      ready.add(job, who, {}, false);
    } else if (job.stage == Stage::waiting && !job.clash) {
      desk.add(job, who, {}, false);
    } else {
      work.add(job, who, job.ready_by, job.ready_by && *job.ready_by < now);
    }
  }
  board.ready = ready.part(by_newest, by_who);
  board.desk = desk.part(by_who, by_who);
  board.work = work.part(by_time, by_time);
  return board;
}

}  // namespace weavelog
