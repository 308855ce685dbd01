// World, continued: everybody meets, until nothing changes any more.

#include <algorithm>
#include <array>

#include "tests/sim/forgetting.h"
#include "tests/sim/invariants.h"
#include "tests/sim/world.h"

namespace weavelog::sim {


/// True if one of them may not hand on a book that the other still would, or keep it: their sums then differ for good.
bool World::withholds(Device& guest, Device& server) const {
  for (const BookInfo& book : server.ledger().books(kPlayerBook)) {
    if (let_go_since_parted(room_, guest, book.id)) return true;
    if (guest.ledger().book(book.id) && guest.may_leave(book.id, book.kind, server.event) != server.may_leave(book.id, book.kind, server.event))
      return true;
  }
  return false;
}

/// The hostile device may have told them different things; the protocol before has no word for forks.
static bool may_disagree(const Room& room, Device& guest, Device& server) {
  if (!room.hostile_authors(guest).empty() || !room.hostile_authors(server).empty()) return true;
  if (guest.making.program != Program::older && server.making.program != Program::older) return false;
  const auto books = guest.ledger().books();
  return std::any_of(books.begin(), books.end(), [&](const BookInfo& book) { return room.promises.forked(book.id) && server.ledger().book(book.id); });
}

/// For the message: how each side sees a session that did not end in agreement.
static std::string seen_by_both(const Link& link) {
  std::string out;
  for (const End& end : link.ends) {
    if (!end.session) continue;
    const SessionStatus& status = end.session->status();
    out += "; " + status.peer.device + " was sent " + std::to_string(status.entries_sent) + ", gave " + std::to_string(status.entries_received) +
           (status.at_odds ? ", at odds" : "") + (status.quarantined > 0 ? ", " + std::to_string(status.quarantined) + " put aside" : "") +
           (status.fault ? ", closed: " + status.fault->message() : "");
  }
  return out;
}

bool World::exchange(const Visit& visit) {
  Device& guest = room_.device(visit.guest);
  Device& server = room_.device(visit.server);
  const auto standing = [&] {
    return std::array{guest.ledger().position(), server.ledger().position(),
                      static_cast<std::int64_t>(guest.forgot.size() + server.forgot.size())};
  };
  const auto before = standing();
  Link* link = network_.connect(visit, {});
  if (link == nullptr) throw Violation("agree", guest.name + " cannot call " + server.name);
  const std::size_t number = link->number;
  network_.settle();
  const auto found = network_.links().find(number);
  const bool agreed = found != network_.links().end() &&
                      std::all_of(found->second.ends.begin(), found->second.ends.end(), [](const End& end) {
                        return end.session && end.session->status().state == SessionState::agreed;
                      });
  const std::string seen = agreed || found == network_.links().end() ? std::string() : seen_by_both(found->second);
  network_.drop_all();
  if (agreed) ++room_.counts.agreements;
  const bool learned = standing() != before;
  // Where branches meet, the words that are said again may cross with the next exchange.
  const bool settled = room_.promises.forks() == 0 || !learned;
  if (!agreed && settled && room_.paired.contains(visit) && !may_disagree(room_, guest, server) && !withholds(guest, server) &&
      !may_miss_forgetting(guest, server))
    throw Violation("agree", guest.name + " and " + server.name + " do not come to agree" + books_apart(guest, server) + seen);
  return learned;
}

void World::come_together() {
  seed_libraries(plan_.seed);
  room_.trace.line("everybody meets");
  room_.parted.clear();
  network_.drop_all();
  for (std::size_t i = 0; i < room_.devices.size(); ++i) {
    Device& device = room_.device(i);
    device.disk.make_well();
    start(i);
  }
  bool grew = true;
  for (int round = 0; grew; ++round) {
    if (round == 12)
      throw Violation("livelock", "everybody met twelve times, and still there is something new");
    grew = false;
    // A copy: an exchange may find out that a server has forgotten a guest.
    for (const Visit& visit : std::set<Visit>(room_.paired)) {
      if (room_.revoked.contains(visit) || room_.device(visit.guest).making.duty == Duty::hostile) continue;
      grew = exchange(visit) || grew;
      if (!room_.paired.contains(visit)) grew = exchange(visit) || grew;  // pairs again
    }
  }
  // What could not be overwritten when a book was forgotten is overwritten at the next start.
  for (std::size_t i = 0; i < room_.devices.size(); ++i)
    if (!room_.device(i).up() || !are_bytes_gone(room_.device(i))) {
      room_.device(i).end();
      start(i);
    }
}

}  // namespace weavelog::sim
