#pragma once
// Which books may cross to another device, by what the player agreed to.

#include "core/log/registry.h"
#include "core/store/ledger.h"

namespace weavelog {

/// Whether a book may go, and if not why.
enum class Crossing : std::uint8_t {
  may,
  private_kit,  ///< a stringer's own things: they never go to others
  withdrew,     ///< the player withdrew
  other_room,   ///< the player agreed to one room only, and this is another
  not_entered,  ///< the player agreed to the rooms of events that they enter, and is not known to be at this one
};

/// May this book go to the room whose event book is `room` (none: to anybody else, who carries it on)? Kit books never do; event books and
/// books of kinds of a newer version do. Of a player book the player decides:
///   withdrawn        nowhere
///   this room        the room of the event at which this was said (where none is noted, nowhere)
///   events entered   rooms of events that the player is at: named in the entry list, or seen there (with a racket, or asked for consent); to
///                    nobody's room, yes: whoever carries it on is asked the same at the next event
///   any room         everywhere
/// Who was not asked yet counts as one who said "events entered"; of whom no racket was strung anywhere yet is new
/// here. Several answers at once: the most careful one counts, until a person closes the question. `entered`: a person says that the player is in that event's entry list, where it does not yet. Costs a few
/// indexed look-ups.
[[nodiscard]] Crossing crossing(const Ledger& ledger, const BookId& book, BookKind kind, const BookId& room = {}, bool entered = false);
[[nodiscard]] bool may_cross(const Ledger& ledger, const BookId& book, BookKind kind, const BookId& room = {}, bool entered = false);

/// What a device says that is given a book at the event of that room and did not hold it before: may it stay? A giver may be in error, or not
/// honest. `settled`: all that the giver has to say has come; before that an entry list that names the player may still be on its way, and only
/// what the player said counts.
[[nodiscard]] bool may_stay(const Ledger& ledger, const BookId& book, BookKind kind, const BookId& room, bool settled);

/// What may_cross() says of a player for this room changes only with entries of the player's book and with this number, which follows the
/// entry list of the room and which books people linked. Means nothing on another device. Costs a walk over both.
[[nodiscard]] std::uint64_t crossing_mark(const Ledger& ledger, const BookId& room);

}  // namespace weavelog
