#pragma once
// What an arrival brings to either side. What every player's book held here is kept when it begins, so that it can be told at any time, after a
// restart too, what came, what went and by how much either side's last time is newer.

#include <cstdint>
#include <functional>
#include <optional>
#include <unordered_map>
#include <vector>

#include "core/store/ledger.h"

namespace weavelog {

/// Rackets of a player's book, in short.
struct BookSum {
  std::size_t jobs = 0;
  std::optional<UnixMs> last_at;  ///< when the newest was taken in
  bool operator==(const BookSum&) const = default;
};
using BookSums = std::unordered_map<BookId, BookSum, IdHash>;
/// Of every player's book held here.
[[nodiscard]] BookSums book_sums(const Ledger& ledger);

struct Arrival {
  UnixMs began = 0;
  std::optional<PublicKey> met;  ///< the event server at which one arrives, once it has proved itself
  BookSums before;  ///< every player's book that was held here then
  /// Books that were sent along, in that order, as they were when they were.
  std::vector<std::pair<BookId, BookSum>> sent;

  [[nodiscard]] bool was_here(const BookId& book) const { return before.contains(book); }
};

/// Keeps what is held now as the beginning of an arrival; one that was going on is over. Faults: those of Ledger::remember.
[[nodiscard]] Outcome<> begin_arrival(Ledger& ledger, UnixMs now);
/// The one that is going on. What is kept of it in a form that can't be read counts as none.
[[nodiscard]] std::optional<Arrival> arrival_going_on(const Ledger& ledger);
/// That event server has proved itself. Only the first one is kept. Faults: those of Ledger::remember.
[[nodiscard]] Outcome<> note_met(Ledger& ledger, const PublicKey& host);
/// These go to the other side in the arrival that is going on; those that went before are not counted twice. Without one nothing is kept.
/// Faults: those of Ledger::remember.
[[nodiscard]] Outcome<> note_sent(Ledger& ledger, const std::vector<BookId>& books);
/// Everything was looked at. Faults: those of Ledger::remember.
[[nodiscard]] Outcome<> end_arrival(Ledger& ledger);

/// What one side has more of a person than it had, or would have.
struct Gain {
  std::size_t books = 0;  ///< that it does not hold
  std::size_t jobs = 0;
  bool first = false;                      ///< nothing of this person was there
  std::optional<UnixMs> last_at;           ///< of the newest of these jobs
  std::optional<std::int64_t> newer_days;  ///< whole days by which that is newer than the newest that was there; none if it is not newer

  [[nodiscard]] bool nothing() const { return books == 0 && jobs == 0; }
  bool operator==(const Gain&) const = default;
};
/// The other side's, if all these books of one person go to it. `holds`: which of them it has already.
[[nodiscard]] Gain gain_there(const std::vector<BookId>& person, const BookSums& now, const std::function<bool(const BookId&)>& holds);
/// This side's since an arrival began.
[[nodiscard]] Gain gain_here(const std::vector<BookId>& person, const BookSums& now, const Arrival& arrival);

/// All that came, or went, in an arrival.
struct Moved {
  std::size_t players = 0;  ///< books of them that were not there
  std::size_t jobs = 0;
  bool operator==(const Moved&) const = default;
};
[[nodiscard]] Moved came_in(const BookSums& now, const Arrival& arrival);
[[nodiscard]] Moved went_out(const Arrival& arrival);

}  // namespace weavelog
