#pragma once
// Rackets strung before go into their players' books: whose they are is found first, nothing is stored that a person has not seen, and a whole
// import can be taken back as one.

#include <functional>
#include <string>
#include <vector>

#include "core/desk/past_jobs.h"
#include "core/people/match.h"
#include "core/store/ledger.h"

namespace weavelog {

/// One player of the table.
struct PastPlayer {
  Person person;                   ///< what the rows say, the first that says something counts
  std::vector<std::size_t> rows;   ///< places in PastJobs::rows, in their order
  MatchBand band = MatchBand::new_person;
  BookId book;                     ///< known: whose; likely: the best; new: none
  std::string looks_like;          ///< "Family Given" of that book
  std::size_t fresh = 0;           ///< of the rows those that are not in the book yet
};

struct PastPlan {
  std::vector<PastPlayer> players;  ///< in order of their first row
  [[nodiscard]] std::size_t fresh() const;
  [[nodiscard]] std::size_t in_band(MatchBand band) const;
};

/// Who the rows' players are here, and what would be new. Rows of one name, country and birth year (where both say one) are one player's. A row that
/// was brought in before is known by what it says, so a file may come twice.
[[nodiscard]] PastPlan plan_past_jobs(const Ledger& ledger, const PastJobs& jobs);

/// What becomes of players who are likely known.
enum class LikelyPlayers : std::uint8_t { leave_out, take_as_known, take_as_new };

/// One draft a player: the person if new, rackets, hand-overs, and jobs that are collected. At most so many rackets a draft as an entry holds.
[[nodiscard]] std::vector<Draft> past_job_drafts(const Ledger& ledger, const PastJobs& jobs, const PastPlan& plan, LikelyPlayers likely, const std::string& by,
                                                 UnixMs now);

/// An import as it was stored here: by which actions, so that it can be taken back as one.
struct PastImport {
  std::string name;  ///< of the file
  UnixMs at = 0;
  std::vector<std::pair<BookId, std::uint64_t>> actions;
};
/// Kept on this device, newest first; at most twenty.
[[nodiscard]] std::vector<PastImport> past_imports(const Ledger& ledger);
/// In the place of the newest one, if that is the same import further on.
[[nodiscard]] Outcome<> note_past_import(Ledger& ledger, const PastImport& import);

/// What taking back came to.
struct TakenBack {
  std::size_t undone = 0;
  std::vector<Fault> kept;  ///< players on whom work went on since, with the reason: they stay as they are
};
/// Takes an import back: that of this place in past_imports(), the newest otherwise. `append`: stores a draft. Faults: not_found (there is none); those of storing.
[[nodiscard]] Outcome<TakenBack> take_back_import(Ledger& ledger, const std::function<Outcome<Committed>(const Draft&)>& append, std::size_t place = 0);

}  // namespace weavelog
