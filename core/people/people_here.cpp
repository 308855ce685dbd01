#include "core/people/people_here.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

#include "core/model/linked.h"
#include "core/people/consent.h"
#include "core/people/learn_weights.h"
#include "core/store/database.h"

namespace weavelog {
namespace {

constexpr UnixMs kDay = 24 * 60 * 60 * 1000;
/// More rackets than anybody hands over at once.
constexpr std::size_t kOneHandOver = 20;
/// More players than any device holds.
constexpr std::size_t kAllPlayers = 1'000'000;

struct Things {
  std::vector<std::string> rackets, strings;
};
using Gear = std::unordered_map<BookId, Things, IdHash>;

/// What everybody plays with: makers and models of rackets, names of strings.
Gear all_gear(const Ledger& ledger) {
  Gear out;
  ledger.read([&](Connection& db) {
    const auto take = [&](const char* sql, std::vector<std::string> Things::*list) {
      SQLite::Statement& query = db.statement(sql);
      while (query.executeStep())
        if (const auto book = BookId::from_bytes(blob_of(query, 0))) (out[*book].*list).push_back(query.getColumn(1).getString());
    };
    take("SELECT p.book, trim(r.maker || ' ' || r.model) FROM model_racket r JOIN model_player p ON p.n=r.player WHERE r.maker<>'' OR r.model<>''",
         &Things::rackets);
    take("SELECT p.book, j.mains_string FROM model_job j JOIN model_player p ON p.n=j.player WHERE j.mains_string<>'' GROUP BY j.player, j.mains_string",
         &Things::strings);
    take("SELECT p.book, j.crosses_string FROM model_job j JOIN model_player p ON p.n=j.player WHERE j.crosses_string<>'' "
         "GROUP BY j.player, j.crosses_string",
         &Things::strings);
  });
  return out;
}

/// Players with all by which they are known. Of the books of one person only the one with the newest job is a candidate, by the names of all of
/// them: two of them would be asked about for ever.
class Known {
 public:
  Known(const Ledger& ledger, const std::vector<PlayerRow>& rows, const std::vector<LinkedBooks>& groups, const Gear& gear) {
    for (const PlayerRow& row : rows) by_book_.emplace(row.book, &row);
    for (const OtherNameRow& name : other_names(ledger)) aliases_[name.book].push_back(listed(name.family_name, name.given_name, name.native_name));
    for (const LinkedBooks& group : groups) take(group);
    for (const PlayerRow& row : rows) {
      if (others_.contains(row.book)) continue;
      PersonFacts facts = facts_of(row);
      if (const auto found = aliases_.find(row.book); found != aliases_.end()) facts.also_known_as = found->second;
      if (const auto found = gear.find(row.book); found != gear.end()) facts.rackets = found->second.rackets, facts.strings = found->second.strings;
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

LastSetup summary_of(const Agreed& agreed) {
  LastSetup out;
  out.mains_string = agreed.mains_string;
  out.crosses_string = agreed.crosses_string;
  out.mains_tension = agreed.mains_tension;
  out.crosses_tension = agreed.crosses_tension;
  return out;
}

}  // namespace

PersonFacts facts_of(const PlayerRow& row) {
  return {row.family_name, row.given_name, row.native_name, row.country,
          row.birth_year,  row.hand,       row.tour_number};
}

struct PeopleHere::Tables {
  Tables(const Ledger& from, UnixMs at, bool with_gear)
      : ledger(from),
        now(at),
        rows(find_players(from, {}, kAllPlayers)),
        groups(all_linked_books(from)),
        persons(Known(from, rows, groups, with_gear ? all_gear(from) : Gear()).persons()),
        index(persons, weights) {
    for (const PlayerRow& one : rows) by_book.emplace(one.book, &one);
    for (const LinkedBooks& group : groups)
      for (const BookId& book : group.here) group_of.emplace(book, &group);
  }

  const Ledger& ledger;
  UnixMs now;
  std::vector<PlayerRow> rows;
  std::vector<LinkedBooks> groups;
  std::vector<std::pair<BookId, PersonFacts>> persons;
  MatchWeights weights = MatchWeights::usual();
  PersonIndex index;
  std::unordered_map<BookId, const PlayerRow*, IdHash> by_book;
  std::unordered_map<BookId, const LinkedBooks*, IdHash> group_of;
};

PeopleHere::PeopleHere(const Ledger& ledger, UnixMs now, bool with_gear) : tables_(std::make_unique<Tables>(ledger, now, with_gear)) {}
PeopleHere::~PeopleHere() = default;

const PlayerRow* PeopleHere::row(const BookId& book) const {
  const auto found = tables_->by_book.find(book);
  return found == tables_->by_book.end() ? nullptr : found->second;
}

void PeopleHere::learn_from(const std::vector<PersonFacts>& entries) {
  if (entries.size() < kEnoughToLearn || tables_->persons.size() < kEnoughToLearn) return;
  tables_->weights = learn_weights(tables_->index, entries, LearnOptions::at_arrival()).weights;
  tables_->index = PersonIndex(tables_->persons, tables_->weights);
}

PersonFound PeopleHere::like(const PersonFacts& facts, const BookId& room) const {
  MatchResult found = tables_->index.match(facts);
  PersonFound out{found.band, {}};
  for (Candidate& match : found.candidates) out.candidates.push_back(candidate(std::move(match), room));
  return out;
}

PersonIndex PeopleHere::index_of(const std::function<bool(const BookId&)>& which) const {
  auto some = tables_->persons;
  std::erase_if(some, [&](const auto& person) { return !which(person.first); });
  return PersonIndex(some, tables_->weights);
}

ArrivalCandidate PeopleHere::candidate(Candidate match, const BookId& room) const {
  ArrivalCandidate out;
  out.player = *tables_->by_book.at(match.book);
  out.books.push_back(match.book);
  if (const auto group = tables_->group_of.find(match.book); group != tables_->group_of.end())
    for (const BookId& book : group->second->here)
      if (book != match.book && tables_->by_book.contains(book)) out.books.push_back(book);
  out.last = last_setup(tables_->ledger, match.book, tables_->now);
  out.may_cross = may_cross(tables_->ledger, match.book, kPlayerBook, room, true);
  out.match = std::move(match);
  return out;
}

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
  return PersonIndex(Known(ledger, rows, all_linked_books(ledger), {}).persons());
}

}  // namespace weavelog
