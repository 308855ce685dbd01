#include "core/people/arrival.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

#include "core/model/linked.h"
#include "core/people/consent.h"

namespace weavelog {
namespace {

constexpr UnixMs kDay = 24 * 60 * 60 * 1000;
/// More rackets than anybody hands over at once.
constexpr std::size_t kOneHandOver = 20;
/// More players than any device holds.
constexpr std::size_t kAllPlayers = 1'000'000;

PersonFacts facts_of_row(const PlayerRow& row) {
  return {row.family_name, row.given_name, row.native_name, row.country,
          row.birth_year,  row.hand,       row.tour_number};
}

/// Players with all by which they are known. Of the books of one person only the one with the newest job is a candidate, by the names of all of
/// them: two of them would be asked about for ever.
class Known {
 public:
  Known(const Ledger& ledger, const std::vector<PlayerRow>& rows) {
    for (const PlayerRow& row : rows) by_book_.emplace(row.book, &row);
    for (const OtherNameRow& name : other_names(ledger)) aliases_[name.book].push_back(listed(name.family_name, name.given_name, name.native_name));
    for (const LinkedBooks& group : all_linked_books(ledger)) take(group);
    for (const PlayerRow& row : rows) {
      if (others_.contains(row.book)) continue;
      PersonFacts facts = facts_of_row(row);
      if (const auto found = aliases_.find(row.book); found != aliases_.end()) facts.also_known_as = found->second;
      persons_.emplace_back(row.book, std::move(facts));
    }
  }
  [[nodiscard]] const std::vector<std::pair<BookId, PersonFacts>>& persons() const { return persons_; }

 private:
  /// As PersonFacts::also_known_as has it.
  static std::string listed(const std::string& family, const std::string& given, const std::string& native) {
    if (family.empty() && given.empty()) return native;
    return given.empty() ? family : family + ", " + given;
  }

  void take(const LinkedBooks& group) {
    const PlayerRow* newest = nullptr;
    for (const BookId& book : group.here) {
      const auto found = by_book_.find(book);
      if (found == by_book_.end()) continue;
      others_.insert(book);
      if (newest == nullptr || found->second->last_at.value_or(0) > newest->last_at.value_or(0)) newest = found->second;
    }
    if (newest == nullptr) return;
    others_.erase(newest->book);
    std::vector<std::string> names;
    for (const BookId& book : group.here) {
      const auto found = by_book_.find(book);
      if (found == by_book_.end() || book == newest->book) continue;
      names.push_back(listed(found->second->family_name, found->second->given_name, found->second->native_name));
      if (const auto more = aliases_.find(book); more != aliases_.end()) names.insert(names.end(), more->second.begin(), more->second.end());
    }
    auto& own = aliases_[newest->book];
    own.insert(own.end(), names.begin(), names.end());
  }

  std::unordered_map<BookId, const PlayerRow*, IdHash> by_book_;
  std::unordered_map<BookId, std::vector<std::string>, IdHash> aliases_;
  std::unordered_set<BookId, IdHash> others_;  // that are not candidates
  std::vector<std::pair<BookId, PersonFacts>> persons_;
};

class Arrivals {
 public:
  Arrivals(const Ledger& ledger, const BookId& event, UnixMs now)
      : ledger_(ledger),
        event_(event),
        now_(now),
        rows_(find_players(ledger, {}, kAllPlayers)),
        index_(Known(ledger, rows_).persons()) {
    for (const PlayerRow& row : rows_) by_book_.emplace(row.book, &row);
  }

  [[nodiscard]] ArrivalLine line(const EntityId& entry, EntryListItem item) const {
    ArrivalLine out;
    out.entry = entry;
    out.item = std::move(item);
    if (out.item.player && by_book_.contains(out.item.player)) {
      Candidate linked;
      linked.book = out.item.player;
      linked.probability = 1;
      linked.evidence = compare_persons(facts_of_row(*by_book_.at(linked.book)), facts_of(out.item));
      out.linked = true;
      out.band = MatchBand::known;
      out.candidates.push_back(candidate(std::move(linked)));
      return out;
    }
    MatchResult found = index_.match(facts_of(out.item));
    out.band = found.band;
    for (Candidate& match : found.candidates) out.candidates.push_back(candidate(std::move(match)));
    return out;
  }

 private:
  [[nodiscard]] ArrivalCandidate candidate(Candidate match) const {
    ArrivalCandidate out;
    out.player = *by_book_.at(match.book);
    out.last = last_setup(ledger_, match.book, now_);
    out.may_cross = may_cross(ledger_, match.book, kPlayerBook, event_);
    out.match = std::move(match);
    return out;
  }

  const Ledger& ledger_;
  BookId event_;
  UnixMs now_;
  std::vector<PlayerRow> rows_;
  PersonIndex index_;
  std::unordered_map<BookId, const PlayerRow*, IdHash> by_book_;
};

LastSetup summary_of(const Agreed& agreed) {
  LastSetup out;
  out.mains_string = agreed.mains_string;
  out.crosses_string = agreed.crosses_string;
  out.mains_tension = agreed.mains_tension;
  out.crosses_tension = agreed.crosses_tension;
  return out;
}

}  // namespace

std::string LastSetup::tensions() const {
  if (!mains_tension && !crosses_tension) return {};
  if (mains_tension && crosses_tension && mains_tension->unit == crosses_tension->unit)
    return mains_tension->amount.text() + " / " + text_of(*crosses_tension);
  const auto said = [](const std::optional<Quantity>& tension) {
    return tension ? text_of(*tension) : std::string("?");
  };
  return said(mains_tension) + " / " + said(crosses_tension);
}

std::optional<LastSetup> last_setup(const Ledger& ledger, const BookId& player, UnixMs now) {
  const auto jobs = history_of(ledger, player, kOneHandOver);
  if (jobs.empty()) {
    const auto setups = ledger.entities(player, kSetup);
    if (setups.empty()) return std::nullopt;
    return summary_of(from_state<Setup>(setups.back()));
  }
  // Rackets handed over together may differ: the first of them speaks for all, on every device.
  const JobRow& job = *std::min_element(jobs.begin(), jobs.end(), [&](const JobRow& a, const JobRow& b) {
    return std::pair(a.drop_off != jobs.front().drop_off, a.order) <
           std::pair(b.drop_off != jobs.front().drop_off, b.order);
  });
  LastSetup out;
  out.mains_string = job.mains_string;
  out.crosses_string = job.crosses_string;
  out.mains_tension = job.mains_tension;
  out.crosses_tension = job.crosses_tension;
  out.event_name = job.event_name;
  out.at = job.at;
  if (job.at && now >= *job.at) out.days = (now - *job.at) / kDay;
  return out;
}

PersonIndex index_of_players(const Ledger& ledger) {
  const auto rows = find_players(ledger, {}, kAllPlayers);
  return PersonIndex(Known(ledger, rows).persons());
}

std::vector<ArrivalLine> arrival(const Ledger& ledger, const BookId& event, UnixMs now) {
  const Arrivals arrivals(ledger, event, now);
  std::vector<ArrivalLine> lines;
  for (const EntryRow& row : entry_list(ledger, event))
    if (const auto state = ledger.entity(event, row.id))
      lines.push_back(arrivals.line(row.id, from_state<EntryListItem>(*state)));
  return lines;
}

}  // namespace weavelog
