#include "sync/trust/rights.h"

#include "core/model/fields.h"

namespace weavelog {

bool may_write(Role role, BookKind kind, ActionKind action) {
  if (role == Role::head) return true;
  if (role == Role::reader) return false;
  if (kind != kEventBook) return true;
  switch (action) {
    case kActNewEvent:
    case kActTeam:
    case kActImportPrices:
    case kActList:
      return false;
    case kActEdit:
    case kActImportEntryList:
    case kActCharge:
    case kActDiscount:
    case kActPayment:
    case kActReverse:
    case kActCloseDay:
    case kActStock:
    case kActMachine:
    case kActShift:
    case kActDraw:
    case kActBenches:
    case kActDayPlan:
      return role == Role::desk;
    default:
      return true;
  }
}

bool belongs_to_room(const BookId& event, const BookId& book, BookKind kind) { return kind != kEventBook || book == event; }

Outcome<> check_right(Role role, const BookId& event, const BookId& book, BookKind kind, ActionKind action) {
  if (!belongs_to_room(event, book, kind) || may_write(role, kind, action)) return {};
  return fail(FaultCode::refused, std::string("this device is a ") + name_of(role) + "'s in this room, and only others may change this", "role",
              "ask the head of the room to do it, or to give this device another role");
}

RoomRights rights_in(const BookId& event) {
  return {[event](Role role, const BatchBook& book, ActionKind action) { return check_right(role, event, book.id, book.kind, action).has_value(); },
          [event](Role role, const BatchBook& book) { return role == Role::head || belongs_to_room(event, book.id, book.kind); }};
}

}  // namespace weavelog
