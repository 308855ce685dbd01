#pragma once
// What a screen in the lounge says to everybody: which rackets are ready, which are in work and until when, which wait for a word of
// their player. A racket goes by its tag number or its player's initials; nothing else of a player's book ever gets here.

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/store/ledger.h"

namespace weavelog {

/// By what people find their rackets.
enum class BoardShow : std::uint8_t { tag, initials };

/// One racket, or with initials all of one player that are to be ready at one time.
struct BoardRow {
  std::string who;           ///< "14", or "I. W."
  std::int64_t rackets = 1;
  std::optional<UnixMs> ready_by;  ///< in work only
  bool late = false;               ///< ready_by has passed
  bool operator==(const BoardRow&) const = default;
};

struct BoardPart {
  std::vector<BoardRow> rows;
  std::int64_t rackets = 0;  ///< all that belong here and have a tag number or initials
  std::int64_t more = 0;     ///< those of them for which there was no room
  bool operator==(const BoardPart&) const = default;
};

struct BoardNow {
  std::string event;  ///< its name
  std::string zone;   ///< IANA name in which times are told
  BoardShow show = BoardShow::tag;
  BoardPart ready;  ///< by tag number or initials; where there is no room for all, those that were ready last
  BoardPart desk;   ///< waiting for an answer
  BoardPart work;   ///< by ready-by, those without one last
  std::int64_t unlisted = 0;  ///< rackets without a tag number or initials
  bool operator==(const BoardNow&) const = default;
};

/// Rows that a part has at most.
inline constexpr std::size_t kBoardRows = 240;

/// The board of one event at this moment. Collected rackets and those put aside are not on it; one whose stage clashes counts as in
/// work, so that nobody is called for a racket that may not be there.
[[nodiscard]] BoardNow board_now(const Ledger& ledger, const BookId& event, BoardShow show, UnixMs now);

/// "I. W." for Ilse Wendelmoor: the first Latin letter of the given and of the family name, however many names there are. A name whose
/// script has no Latin form gives no letter, because its first character may be all of it.
[[nodiscard]] std::string initials_of(std::string_view family_name, std::string_view given_name);

}  // namespace weavelog
