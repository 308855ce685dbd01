#pragma once
// Two devices meet: whether they agree, and what stands of a book afterwards.

#include <catch2/catch.hpp>
#include <set>

#include "tests/support/loopback.h"

namespace weavelog::testing {

/// On the same, and neither gave up settling something. What went wrong is told with the check that fails.
inline bool agreed(const Loopback& loopback) {
  const SessionStatus &guest = loopback.guest.status(), &host = loopback.host.status();
  if (guest.fault) UNSCOPED_INFO("guest: " << guest.fault->message());
  if (host.fault) UNSCOPED_INFO("host: " << host.fault->message());
  return guest.state == SessionState::agreed && host.state == SessionState::agreed && guest.agreed->token == host.agreed->token &&
         guest.agreed->digest == host.agreed->digest && !guest.at_odds && !host.at_odds;
}

/// One whole exchange, with a tick so that both say where they stand.
inline bool meet(SyncDevice& guest, SyncDevice& host) {
  Loopback loopback(guest, host);
  loopback.deliver();
  loopback.changed();
  return agreed(loopback);
}

/// All answers of one field of the box, as text.
inline std::set<std::string> answers(const Device& device, const BookId& book, FieldTag tag) {
  std::set<std::string> out;
  if (const auto state = device.ledger->entity(book, kOne))
    if (const Cell* cell = state->find(tag))
      for (const CellValue& value : cell->values) out.insert(text_of(value.value));
  return out;
}

}  // namespace weavelog::testing
