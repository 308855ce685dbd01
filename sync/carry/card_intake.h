#pragma once
// Taking a player card in: compared with what this device holds, then as an action of the person who scanned it, with where it
// came from. It adds what is not here; it takes the place of nothing that is, unless that person says so, and never of something newer.

#include <optional>
#include <vector>

#include "core/log/draft.h"
#include "sync/carry/known_as.h"
#include "sync/carry/player_card.h"

namespace weavelog {

enum class CardVerdict : std::uint8_t {
  fresh,     ///< nothing of the kind is held here: comes in
  newer,     ///< differs, and was written after what is held here: comes in if the person says so
  older,     ///< differs, and what is held here was written after it: stays as it is here
  question,  ///< several answers stand here, or where the card was made: a person has to close that first
};
/// "fresh", "newer", ...
[[nodiscard]] std::string_view name_of(CardVerdict verdict);

/// One field of which card and device differ.
struct CardLine {
  EntityKind kind{};
  EntityId id;         ///< as it is here
  std::string of;      ///< the setup's name or racket's label; empty for the person
  FieldTag tag{};
  bool guarded = false;
  Value ours;          ///< monostate: none
  UnixMs ours_at = 0;  ///< by its writer's clock; 0: never written here
  Value cards;
  UnixMs cards_at = 0;
  CardVerdict verdict{};
};

struct CardFindings {
  KnownAs signer{};
  bool held = false;                  ///< the player's book is here
  std::optional<UnixMs> taken;        ///< this very card was taken in before; when it was made
  bool ahead = false;                 ///< signed with a clock that is ahead of ours by more than ten minutes: "newer" says little
  std::vector<CardLine> lines;        ///< the person, then setups and rackets as on the card
  [[nodiscard]] std::size_t count(CardVerdict verdict) const;
};

/// Faults: refused (the player was forgotten, or withdrew here or agreed to one room only; the signer was revoked; the book is not a
/// player's).
[[nodiscard]] Outcome<CardFindings> weigh_card(const Ledger& ledger, const DeviceList& devices, const PlayerCard& card);

/// What to write, as of the ledger now: what is fresh and, if `accept_newer`, what is newer; with a note of the card itself. Empty if
/// there is nothing to write, as of a card that was taken in before. Faults: those of weigh_card.
[[nodiscard]] Outcome<Draft> take_card(const Ledger& ledger, const DeviceList& devices, const PlayerCard& card, bool accept_newer);

}  // namespace weavelog
