#pragma once
// Arrival at an event: whom of its entry list does this device know already, and what did they have last?

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
  std::optional<LastSetup> last;
  bool may_cross = true;  ///< to this event, by what the player agreed to
};

struct ArrivalLine {
  EntityId entry;
  EntryListItem item;
  MatchBand band = MatchBand::new_person;
  bool linked = false;                       ///< a person has said who it is: one candidate, known
  std::vector<ArrivalCandidate> candidates;  ///< best first; none for a new one
};

/// By folded family and given name, as the entry list shows it. Looks at the persons of every player book
/// held here; 300 entries against 5,000 players take well under a second.
[[nodiscard]] std::vector<ArrivalLine> arrival(const Ledger& ledger, const BookId& event, UnixMs now);

/// The persons known here, ready to be asked.
[[nodiscard]] PersonIndex index_of_players(const Ledger& ledger);
/// Nothing if the player has neither a job nor a setup.
[[nodiscard]] std::optional<LastSetup> last_setup(const Ledger& ledger, const BookId& player, UnixMs now);

}  // namespace weavelog
