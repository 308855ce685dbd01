#include "core/people/arrival.h"

#include <algorithm>

#include "core/model/linked.h"

namespace weavelog {
namespace {

class Arrivals {
 public:
  Arrivals(const Ledger& ledger, const BookId& event, UnixMs now, const Arrival* going_on, const std::vector<PersonFacts>& entries)
      : ledger_(ledger), event_(event), going_on_(going_on), people_(ledger, now, false) {
    people_.learn_from(entries);
    if (going_on_ != nullptr) before_.emplace(people_.index_of([going_on](const BookId& book) { return going_on->was_here(book); }));
  }

  [[nodiscard]] ArrivalLine line(const EntityId& entry, EntryListItem item) const {
    ArrivalLine out;
    out.entry = entry;
    out.item = std::move(item);
    if (const PlayerRow* linked = out.item.player ? people_.row(out.item.player) : nullptr) {
      Candidate said;
      said.book = out.item.player;
      said.probability = 1;
      said.evidence = compare_persons(facts_of(*linked), facts_of(out.item));
      out.linked = true;
      out.band = MatchBand::known;
      out.candidates.push_back(people_.candidate(std::move(said), event_));
      if (before_ && !going_on_->was_here(out.item.player)) add_other_books(out);
      return out;
    }
    PersonFound found = people_.like(facts_of(out.item), event_);
    out.band = found.band;
    out.candidates = std::move(found.candidates);
    return out;
  }

 private:
  /// Of an entry that is linked to a book from elsewhere: books of our own that may be the same person's, and of which nobody has said yet
  /// whether they are.
  void add_other_books(ArrivalLine& line) const {
    const std::vector<BookId> linked = line.candidates.front().books;
    for (Candidate& match : before_->match(facts_of(line.item)).candidates) {
      if (std::find(linked.begin(), linked.end(), match.book) != linked.end()) continue;
      if (said_of(ledger_, match.book, line.item.player) != LinkSaid::unsaid) continue;
      line.candidates.push_back(people_.candidate(std::move(match), event_));
      line.band = MatchBand::likely;
    }
  }

  const Ledger& ledger_;
  BookId event_;
  const Arrival* going_on_;
  PeopleHere people_;
  std::optional<PersonIndex> before_;  // of those who were here when the arrival began
};

}  // namespace

std::vector<ArrivalLine> arrival(const Ledger& ledger, const BookId& event, UnixMs now, const Arrival* going_on) {
  std::vector<std::pair<EntityId, EntryListItem>> entries;
  std::vector<PersonFacts> facts;
  for (const EntryRow& row : entry_list(ledger, event)) {
    const auto state = ledger.entity(event, row.id);
    if (!state) continue;
    entries.emplace_back(row.id, from_state<EntryListItem>(*state));
    facts.push_back(facts_of(entries.back().second));
  }
  const Arrivals arrivals(ledger, event, now, going_on, facts);
  std::vector<ArrivalLine> lines;
  for (auto& [id, item] : entries) lines.push_back(arrivals.line(id, std::move(item)));
  return lines;
}

}  // namespace weavelog
