#include "core/desk/bring_past_jobs.h"

#include <algorithm>
#include <map>
#include <set>
#include <sstream>

#include "core/base/local_time.h"
#include "core/base/text.h"
#include "core/desk/player_record.h"
#include "core/desk/undo.h"
#include "core/log/derived_id.h"
#include "core/people/arrival.h"
#include "core/people/country.h"

namespace weavelog {
namespace {

constexpr UnixMs kDay = 24LL * 3'600'000, kNoon = 12LL * 3'600'000;
/// An entry holds 4,096 writes; a racket with its job, hand-over and mark has at most some fifty.
constexpr std::size_t kRacketsADraft = 60;
constexpr std::size_t kMostImports = 20;
constexpr std::string_view kImports = "past imports";

/// What one row says, whatever its place in the file: the same row brought in twice is one job.
std::string row_key(const PastJob& job, std::size_t repeated) {
  std::string out = job.date + "|" + search_key(job.event_name) + "|" + search_key(job.racket.label) + "|" + search_key(job.racket.model);
  for (const std::string* string : {&job.agreed.mains_string, &job.agreed.crosses_string}) out += "|" + search_key(*string);
  for (const auto* tension : {&job.agreed.mains_tension, &job.agreed.crosses_tension}) out += "|" + (*tension ? text_of(**tension) : std::string());
  return out + "|" + std::to_string(repeated);
}

std::string name_key(const Person& person) {
  return search_key(person.family_name) + "|" + search_key(person.given_name) + "|" + (person.family_name.empty() ? search_key(person.native_name) : "");
}

/// Two rows of one name are one player's unless they say different things of country or birth year.
bool one_person(const Person& a, const Person& b) {
  return (a.country.empty() || b.country.empty() || country_key(a.country) == country_key(b.country)) &&
         (!a.birth_year || !b.birth_year || *a.birth_year == *b.birth_year);
}

void add_what_is_new(Person& to, const Person& from) {
  if (to.native_name.empty()) to.native_name = from.native_name;
  if (to.country.empty()) to.country = from.country;
  if (!to.birth_year) to.birth_year = from.birth_year;
  if (to.hand == Hand::unsaid) to.hand = from.hand;
  if (to.tour_number.empty()) to.tour_number = from.tour_number;
}

/// The keys of a player's rows, equal ones numbered.
std::vector<std::string> keys_of(const PastJobs& jobs, const PastPlayer& player) {
  std::vector<std::string> out;
  std::map<std::string, std::size_t> seen;
  for (const std::size_t row : player.rows) {
    const std::string plain = row_key(jobs.rows[row], 0);
    out.push_back(row_key(jobs.rows[row], seen[plain]++));
  }
  return out;
}

EntityId job_id(const BookId& book, const std::string& key) { return derived_id(book, "past job " + key); }

std::set<EntityId> jobs_in(const Ledger& ledger, const BookId& book) {
  std::set<EntityId> out;
  for (const EntityState& state : ledger.entities(book, kJob))
    if (exists(state)) out.insert(state.id);
  return out;
}

std::size_t count_fresh(const Ledger& ledger, const PastJobs& jobs, const PastPlayer& player) {
  if (!player.book) return player.rows.size();
  const auto held = jobs_in(ledger, player.book);
  std::size_t out = 0;
  for (const std::string& key : keys_of(jobs, player)) out += held.contains(job_id(player.book, key)) ? 0 : 1;
  return out;
}

template <class S>
EntityId put_as(Draft& draft, const EntityId& id, const S& wanted) {
  EntityState seen;
  seen.book = draft.book();
  seen.kind = Described<S>::kind;
  seen.id = id;
  put_changes(draft, seen, wanted);
  return id;
}

/// Writes one player's rows, as many drafts as they take.
class Writing {
 public:
  Writing(const Ledger& ledger, const PastJobs& jobs, const std::string& by, UnixMs now) : ledger_(ledger), jobs_(jobs), by_(by), now_(now) {}

  void write(std::vector<Draft>& out, const PastPlayer& player, const BookId& book, bool fresh_book) {
    Draft draft(book, kPlayerBook, kActImportJobs);
    if (fresh_book) {
      Person person = player.person;
      for (const std::size_t row : player.rows)
        if (const auto& tension = jobs_.rows[row].agreed.mains_tension) person.tension_unit = tension->unit;
      (void)put_new(draft, person, now_);
    }
    const auto held = fresh_book ? std::set<EntityId>{} : jobs_in(ledger_, book);
    std::map<std::string, EntityId> rackets;
    if (!fresh_book)
      for (EntityState& state : ledger_.entities(book, kRacket))
        if (exists(state)) {
          const auto racket = from_state<Racket>(state);
          rackets.emplace(racket_key(racket), state.id);
        }
    const auto keys = keys_of(jobs_, player);
    std::size_t in_draft = 0;
    for (std::size_t i = 0; i < player.rows.size(); ++i) {
      if (held.contains(job_id(book, keys[i]))) continue;
      if (in_draft++ == kRacketsADraft) {
        out.push_back(std::move(draft));
        draft = Draft(book, kPlayerBook, kActImportJobs);
        in_draft = 1;
      }
      write_row(draft, jobs_.rows[player.rows[i]], keys[i], rackets);
    }
    if (!draft.empty()) out.push_back(std::move(draft));
  }

 private:
  static std::string racket_key(const Racket& racket) { return search_key(racket.label) + "|" + search_key(racket.maker) + "|" + search_key(racket.model); }

  void write_row(Draft& draft, const PastJob& row, const std::string& key, std::map<std::string, EntityId>& rackets) {
    const BookId& book = draft.book();
    // A day without an hour is noon there; without a day it is told as long ago, and never as the last time.
    const auto day = day_from(row.date);
    const std::optional<UnixMs> at = day ? std::optional(*day * kDay + kNoon) : std::nullopt;
    Racket racket = row.racket;
    if (racket.label.empty()) racket.label = "1";
    auto found = rackets.find(racket_key(racket));
    if (found == rackets.end()) found = rackets.emplace(racket_key(racket), put_as(draft, derived_id(book, "past racket " + racket_key(racket)), racket)).first;
    DropOff hand_over;
    hand_over.event_name = row.event_name;
    hand_over.at = at;
    hand_over.note = "brought in from a table";
    Job job;
    static_cast<Agreed&>(job) = row.agreed;
    job.drop_off = put_as(draft, derived_id(book, "past hand-over " + key), hand_over);
    job.racket = found->second;
    job.at = at;
    job.order = 1;
    const EntityId id = put_as(draft, job_id(book, key), job);
    (void)put_as(draft, derived_id(book, "past mark " + key), StageMark{id, Stage::collected, at, row.stringer.empty() ? by_ : row.stringer, {}, {}});
  }

  const Ledger& ledger_;
  const PastJobs& jobs_;
  std::string by_;
  UnixMs now_;
};

std::string text_of_imports(const std::vector<PastImport>& imports) {
  std::string out;
  for (const PastImport& import : imports) {
    out += std::to_string(import.at) + " " + std::to_string(import.actions.size()) + " " + import.name + "\n";
    for (const auto& [book, seq] : import.actions) out += book.hex() + " " + std::to_string(seq) + "\n";
  }
  return out;
}

Outcome<> store(Ledger& ledger, std::vector<PastImport> imports) {
  if (imports.size() > kMostImports) imports.resize(kMostImports);
  const std::string text = text_of_imports(imports);
  return ledger.remember(kImports, as_bytes(text));
}

}  // namespace

std::size_t PastPlan::fresh() const {
  std::size_t out = 0;
  for (const PastPlayer& player : players) out += player.fresh;
  return out;
}

std::size_t PastPlan::in_band(MatchBand band) const {
  return static_cast<std::size_t>(std::count_if(players.begin(), players.end(), [&](const PastPlayer& one) { return one.band == band; }));
}

PastPlan plan_past_jobs(const Ledger& ledger, const PastJobs& jobs) {
  PastPlan out;
  std::map<std::string, std::vector<std::size_t>> named;  // places in out.players
  for (std::size_t row = 0; row < jobs.rows.size(); ++row) {
    const Person& person = jobs.rows[row].person;
    auto& alike = named[name_key(person)];
    const auto same = std::find_if(alike.begin(), alike.end(), [&](std::size_t place) { return one_person(out.players[place].person, person); });
    if (same == alike.end()) {
      alike.push_back(out.players.size());
      out.players.push_back({person, {row}, {}, {}, {}, 0});
    } else {
      add_what_is_new(out.players[*same].person, person);
      out.players[*same].rows.push_back(row);
    }
  }
  const PersonIndex index = index_of_players(ledger);
  for (PastPlayer& player : out.players) {
    const MatchResult found = index.match(facts_of(player.person));
    player.band = found.band;
    for (const Candidate& candidate : found.candidates) {
      if (!player.book) player.book = candidate.book;
      // Whose book holds one of these rows already is that player, however little the table says.
      const auto held = jobs_in(ledger, candidate.book);
      const auto keys = keys_of(jobs, player);
      if (std::any_of(keys.begin(), keys.end(), [&](const std::string& key) { return held.contains(job_id(candidate.book, key)); })) {
        player.book = candidate.book;
        player.band = MatchBand::known;
        break;
      }
    }
    if (player.book)
      if (const auto row = find_player(ledger, player.book)) player.looks_like = row->family_name + (row->given_name.empty() ? "" : " ") + row->given_name;
    player.fresh = count_fresh(ledger, jobs, player);
  }
  return out;
}

std::vector<Draft> past_job_drafts(const Ledger& ledger, const PastJobs& jobs, const PastPlan& plan, LikelyPlayers likely, const std::string& by, UnixMs now) {
  std::vector<Draft> out;
  Writing writing(ledger, jobs, by, now);
  for (const PastPlayer& player : plan.players) {
    if (player.band == MatchBand::likely && likely == LikelyPlayers::leave_out) continue;
    const bool fresh_book = player.band == MatchBand::new_person || (player.band == MatchBand::likely && likely == LikelyPlayers::take_as_new);
    writing.write(out, player, fresh_book ? ledger.create_book_id() : player.book, fresh_book);
  }
  return out;
}

std::vector<PastImport> past_imports(const Ledger& ledger) {
  std::vector<PastImport> out;
  const auto held = ledger.remembered(kImports);
  if (!held) return out;
  std::istringstream lines(std::string(held->begin(), held->end()));
  std::size_t count = 0;
  for (PastImport import; lines >> import.at >> count; import = {}) {
    lines.ignore(1);
    std::getline(lines, import.name);
    std::string hex;
    std::uint64_t seq = 0;
    for (; count > 0 && lines >> hex >> seq; --count)
      if (const auto book = BookId::from_hex(hex)) import.actions.emplace_back(*book, seq);
    out.push_back(std::move(import));
  }
  return out;
}

Outcome<> note_past_import(Ledger& ledger, const PastImport& import) {
  auto all = past_imports(ledger);
  if (!all.empty() && all.front().at == import.at && all.front().name == import.name) all.front() = import;
  else all.insert(all.begin(), import);
  return store(ledger, std::move(all));
}

Outcome<TakenBack> take_back_import(Ledger& ledger, const std::function<Outcome<Committed>(const Draft&)>& append, std::size_t place) {
  auto all = past_imports(ledger);
  if (place >= all.size()) return fail(FaultCode::not_found, "nothing was brought in on this device", "import", "only what was brought in here can be taken back here");
  TakenBack out;
  auto& actions = all[place].actions;
  for (auto action = actions.rbegin(); action != actions.rend(); ++action) {
    const auto draft = undo(ledger, action->first, action->second);
    if (!draft) {
      const auto row = find_player(ledger, action->first);
      Fault fault = draft.error();
      fault.where = (row ? row->family_name + " " + row->given_name : action->first.hex()) + ": " + fault.where;
      out.kept.push_back(std::move(fault));
      continue;
    }
    if (auto stored = append(*draft); !stored) return fail(stored.error());
    ++out.undone;
  }
  all.erase(all.begin() + static_cast<std::ptrdiff_t>(place));
  if (auto stored = store(ledger, std::move(all)); !stored) return fail(stored.error());
  return out;
}

}  // namespace weavelog
