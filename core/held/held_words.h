#pragma once
// All that is held on a player, in the words of the player's language: what a person reads who asks what a room knows of them. For programs
// the same stands in export.h.

#include <string>
#include <vector>

#include "core/base/language.h"
#include "core/base/phrases.h"
#include "core/desk/player_record.h"

namespace weavelog {

/// "Mains tension", "24,5 kg". A value may have several lines, parted by '\n'.
struct HeldRow {
  std::string what;
  std::string said;
  bool operator==(const HeldRow&) const = default;
};
/// One racket, one job, one line of an account.
struct HeldPart {
  std::string title;
  std::vector<HeldRow> rows;
  Bytes picture;  ///< of a photo: BLAKE2b-256 of its bytes, which lie outside the ledger
};
struct HeldSection {
  std::string title;
  std::vector<HeldPart> parts;
};

/// Made by the build from core/held/phrases.
[[nodiscard]] std::span<const PhraseText> held_phrases();
[[nodiscard]] const Phrases& held_phrasebook();

/// Everything in the player's book, what events held here say of the player, open questions, and at the end earlier answers: whatever was
/// written into the book and stands there no longer. Sections that hold nothing are left out. Left to programs: which stage marks a mark knew
/// of (StageMark::after). Times are local to `zone` (IANA), dates ISO 8601. Reads every entry of the book and walks over all events.
[[nodiscard]] std::vector<HeldSection> held_words(const Ledger& ledger, const PlayerRecord& record, const Language& language,
                                                  const std::string& zone);

}  // namespace weavelog
