#pragma once
// The players whose books are on this device, as somebody is looked for among them: at an arrival, and at the desk where a name is written down anew.

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/model/queries.h"
#include "core/people/match.h"

namespace weavelog {

/// What a player had last, in short: of the first racket of the newest hand-over, or the newest setup if
/// nothing was strung yet.
struct LastSetup {
  std::string mains_string;
  std::string crosses_string;
  std::optional<Quantity> mains_tension;
  std::optional<Quantity> crosses_tension;
  std::string event_name;            ///< of the job; may be empty
  std::optional<UnixMs> at;          ///< of the job
  std::optional<std::int64_t> days;  ///< whole days since then

  /// "25 / 24 kg", "25 kg / 53 lb", "25 kg / ?"; "" if neither is said. Digits as spoken.
  [[nodiscard]] std::string tensions() const;
};

struct ArrivalCandidate {
  Candidate match;
  PlayerRow player;
  std::vector<BookId> books;  ///< that of the candidate, then those held here that are linked to it: they go together
  std::optional<LastSetup> last;
  bool may_cross = true;  ///< to this event, by what the player agreed to
};

[[nodiscard]] PersonFacts facts_of(const PlayerRow& row);

/// Who somebody may be.
struct PersonFound {
  MatchBand band = MatchBand::new_person;
  std::vector<ArrivalCandidate> candidates;  ///< best first; none for a new one
};

/// A sight of all players, of their other names and of what is linked. Asked from any thread; the ledger has to outlive it.
class PeopleHere {
 public:
  /// `with_gear`: known by their rackets and strings too, which costs a look at all jobs.
  PeopleHere(const Ledger& ledger, UnixMs now, bool with_gear);
  ~PeopleHere();
  PeopleHere(const PeopleHere&) = delete;
  PeopleHere& operator=(const PeopleHere&) = delete;

  /// How the entries of a list differ from the persons known here is learnt from them all, without labels, if both are many (kEnoughToLearn);
  /// until then, and otherwise, it is what is usual. Takes as long as asking for each of them does. Not while others ask.
  void learn_from(const std::vector<PersonFacts>& entries);
  /// Of the books of one person only the one with the newest job is a candidate. `room`: where the books may have to go.
  [[nodiscard]] PersonFound like(const PersonFacts& facts, const BookId& room) const;
  /// The same among some of them only, prepared once.
  [[nodiscard]] PersonIndex index_of(const std::function<bool(const BookId&)>& which) const;
  /// Who was found as `match`, with all that is shown of them. Their book has to be here.
  [[nodiscard]] ArrivalCandidate candidate(Candidate match, const BookId& room) const;
  /// Null if the book is not here.
  [[nodiscard]] const PlayerRow* row(const BookId& book) const;

 private:
  struct Tables;
  std::unique_ptr<Tables> tables_;
};

/// The persons known here, ready to be asked.
[[nodiscard]] PersonIndex index_of_players(const Ledger& ledger);
/// Nothing if the player has neither a job nor a setup.
[[nodiscard]] std::optional<LastSetup> last_setup(const Ledger& ledger, const BookId& player, UnixMs now);

}  // namespace weavelog
