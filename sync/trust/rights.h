#pragma once
// What a device may write, by its role in the room. The server holds to it, and so do tablets before they write.

#include <functional>

#include "core/base/id.h"
#include "core/log/batch.h"
#include "core/log/registry.h"
#include "sync/trust/role.h"

namespace weavelog {

/// May a device in this role do such an action in a book of this kind?
///
///                       head  desk  stringer  reader
///   players' books      yes   yes   yes       no      taking in, stringing, checking, what players agree to
///   event: the event itself, its team, prices and work lists
///                       yes   no    no        no
///   event: entry lists, draws, plans, shifts, machines, stock, money
///                       yes   yes   no        no
///   event: who an entry is, results, what was used or cared for, answers to questions, taking back
///                       yes   yes   yes       no
///   books and actions of a later version
///                       yes   yes   yes       no      whoever made them knew them
///
/// All four read what may cross to the room at all (core/people/consent.h).
[[nodiscard]] bool may_write(Role role, BookKind kind, ActionKind action);

/// Is the book one that a room may be given by whoever works there: not the book of another event? A book is of the kind that the first entry says,
/// for good, so whoever may begin an event's book under any number can keep a player's from ever being here.
[[nodiscard]] bool belongs_to_room(const BookId& event, const BookId& book, BookKind kind);

/// may_write for a device that works at this event: books of other events are its own affair. Fault: refused, naming the role.
[[nodiscard]] Outcome<> check_right(Role role, const BookId& event, const BookId& book, BookKind kind, ActionKind action);

/// What a session and a bundle hold those to who bring something (sync/exchange/role_weigher.h).
struct RoomRights {
  /// May a device in this role do such an action in this book? A reader may nothing, whatever this says.
  std::function<bool(Role, const BatchBook&, ActionKind)> may_write = [](Role, const BatchBook&, ActionKind) { return true; };
  /// May it bring such a book that is not held here? Whose words are in it does not matter. If not, nothing of it is taken, everything else is.
  std::function<bool(Role, const BatchBook&)> may_begin = [](Role, const BatchBook&) { return true; };
};
/// Those of this event's room: check_right, and books that do not belong to it only from a head.
[[nodiscard]] RoomRights rights_in(const BookId& event);

}  // namespace weavelog
