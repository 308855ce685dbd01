#include "tests/sim/network.h"

#include <algorithm>

#include "core/people/consent.h"
#include "tests/sim/forgetting.h"

namespace weavelog::sim {
namespace {

constexpr std::size_t kGuest = 0, kHost = 1;
constexpr std::size_t kMostFrames = 20'000;
// Places in Message.
constexpr std::size_t kEntriesMessage = 10, kAckMessage = 11, kStubsMessage = 15, kPackedEntriesMessage = 20,
                      kHeldBackMessage = 22;

/// A book that a racket's stage makes one of another room, say, while it is on its way: confirmed batch by batch, and let go in the end.
bool stays(Device& device, const BookId& book, BookKind kind, const BookId& room, bool settled) {
  const bool may = may_stay(device.ledger(), book, kind, room, settled);
  if (!may) device.not_to_stay.insert(book);
  return may;
}

}  // namespace

Link* Network::connect(const Visit& visit, const LinkTemper& temper) {
  Device& guest = room_.device(visit.guest);
  Device& host = room_.device(visit.server);
  if (!guest.up() || !host.up() || visit.guest == visit.server ||
      room_.parted.contains({visit.guest, visit.server}))
    return nullptr;
  SessionOptions guest_side, host_side;
  guest_side.ledger = &guest.ledger();
  guest_side.devices = &guest.station().devices();
  guest_side.peers = &guest.station().peers();
  guest_side.side = Side::guest;
  guest_side.expected = host.key();
  host_side.ledger = &host.ledger();
  host_side.devices = &host.station().devices();
  host_side.peers = &host.station().peers();
  host_side.side = Side::host;
  host_side.event = host.event;
  guest_side.batch_bytes = host_side.batch_bytes = temper.batch_bytes;
  guest_side.may_leave = [&guest, event = host.event](const BookId& book, BookKind kind) {
    return guest.may_leave(book, kind, event);
  };
  host_side.may_leave = [&host](const BookId& book, BookKind kind) {
    return host.may_leave(book, kind, host.event);
  };
  guest_side.may_stay = [&guest](const BookId& book, BookKind kind, const BookId& room, bool settled) {
    return stays(guest, book, kind, room, settled);
  };
  host_side.may_stay = [&host](const BookId& book, BookKind kind, const BookId& room, bool settled) {
    return stays(host, book, kind, room, settled);
  };
  guest_side.leaves_by = [&guest, event = host.event] { return LeaveRule{event, crossing_mark(guest.ledger(), event)}; };
  host_side.leaves_by = [&host] { return LeaveRule{host.event, crossing_mark(host.ledger(), host.event)}; };
  guest_side.sends = [this, link = next_link_](std::uint64_t number, const Batch& batch) { note_sent(link, kGuest, number, batch); };
  host_side.sends = [this, link = next_link_](std::uint64_t number, const Batch& batch) { note_sent(link, kHost, number, batch); };
  // Some see what comes next before its turn, as a program does on a busy connection.
  if (temper.salt % 8 == 0) guest_side.worth_opening_ahead = host_side.worth_opening_ahead = 1;
  // The older program is one of the protocol before.
  for (const auto& [device, side] : {std::pair(&guest, &guest_side), std::pair(&host, &host_side)})
    if (device->making.program == Program::older) side->newest_protocol = kNewestProtocol - 1;
  const bool pairing = !room_.paired.contains(visit) && !room_.revoked.contains(visit);
  if (pairing) {
    const auto invitation = host.station().devices().invite(Role::stringer);
    if (host.gone() || !invitation) return nullptr;
    guest_side.secret = invitation->secret;
  }
  Link& link = links_[next_link_];
  link.number = next_link_++;
  link.ends[kGuest].device = visit.guest;
  link.ends[kHost].device = visit.server;
  link.ends[kGuest].session = std::make_unique<Session>(std::move(guest_side));
  link.ends[kHost].session = std::make_unique<Session>(std::move(host_side));
  for (End& end : link.ends) end.restores = room_.device(end.device).restores;
  link.fastest = temper.fastest;
  link.slowest = temper.slowest;
  link.random = Random(temper.salt);
  link.tainted = temper.lies;
  if (temper.lies) link.liar = std::make_unique<Liar>(key_of(guest.key_number), temper.salt);
  link.revoked = room_.revoked.contains(visit);
  link.pairing = pairing;
  link.unsure = room_.unsure.contains(visit);
  ++room_.counts.sessions;
  room_.trace.line("link " + std::to_string(link.number) + ": " + guest.name +
                   (pairing ? " pairs with " : " calls ") + host.name);
  send(link, kGuest, link.ends[kGuest].session->start());
  return &link;
}

void Network::push(Link& link, std::size_t side, What what, Bytes frame, UnixMs at) {
  if (what == What::frame) link.ends[side].coming.push_back(frame);
  queue_.push({at, order_++, link.number, side, what, std::move(frame)});
}

void Network::send(Link& link, std::size_t side, Session::Frames frames) {
  End& from = link.ends[side];
  const End& to = link.ends[1 - side];
  for (Bytes& frame : frames) {
    note_answer(link, side, frame);
    if (link.liar && side == kGuest) frame = link.liar->altered(std::move(frame));
    if (room_.parted.contains({from.device, to.device})) from.stalled = true;
    if (from.stalled || frame.empty()) continue;
    from.last_arrival =
        std::max(from.last_arrival, room_.time.now + link.random.between(link.fastest, link.slowest));
    push(link, 1 - side, What::frame, std::move(frame), from.last_arrival);
  }
}

void Network::note_sent(std::size_t number, std::size_t side, std::uint64_t batch_number, const Batch& sent) {
  const auto link = links_.find(number);
  if (link == links_.end() || link->second.tainted) return;
  std::vector<AuthorId> authors;
  for (const AuthorCard& card : sent.authors) authors.push_back(card.id());
  auto& batch = link->second.ends[side].sent[batch_number];
  for (const BatchEntry& entry : sent.entries)
    batch.emplace_back(EntryKey{sent.books.at(entry.book).id, authors.at(entry.author), entry.seq}, digest_of(entry.body));
}

/// The protocol before has no word for a batch of which a part was left out because entries before it are lacking: in its chain (not
/// stored), or what it replaces (put aside). There an answer vouches for the rest only.
void Network::note_answer(Link& link, std::size_t side, const Bytes& frame) {
  if (link.tainted || message_of(frame) != kAckMessage || !speaks_older(link)) return;
  const auto message = decode_frame(frame);
  if (!message) throw Violation("own frame", "a session sent a frame that can't be read: " + message.error().message());
  auto& sent = link.ends[1 - side].sent;
  const auto batch = sent.find(std::get<Ack>(*message).number);
  if (batch == sent.end()) return;
  const Ledger& ledger = room_.device(link.ends[side].device).ledger();
  const auto aside = ledger.quarantine();
  std::erase_if(batch->second, [&](const auto& entry) {
    const EntryKey& key = entry.first;
    if (ledger.entry(key.book, key.author, key.seq)) return false;
    const bool gap = key.seq > 1 && !ledger.entry(key.book, key.author, key.seq - 1);
    return gap || std::any_of(aside.begin(), aside.end(), [&](const Quarantined& one) {
             return key == EntryKey{one.book, one.author, one.seq};
           });
  });
}

bool Network::speaks_older(const Link& link) const {
  return std::any_of(link.ends.begin(), link.ends.end(),
                     [&](const End& end) { return room_.devices.at(end.device)->making.program == Program::older; });
}

void Network::note_arrived(Link& link, std::size_t side, const Bytes& frame) {
  End& end = link.ends[side];
  const std::size_t kind = message_of(frame);
  if (link.tainted || (kind != kAckMessage && kind != kHeldBackMessage) || !end.session ||
      end.session->status().state == SessionState::closed)
    return;
  const auto message = decode_frame(frame);
  if (kind == kHeldBackMessage) {
    end.sent.erase(std::get<HeldBack>(*message).number);
    return;
  }
  const auto& ack = std::get<Ack>(*message);
  const End& other = link.ends[1 - side];
  const bool confirms = room_.device(other.device).restores == other.restores;
  // The protocol before has no word for a batch of which a part was held back beside a fork.
  const bool older = speaks_older(link);
  while (!end.sent.empty() && end.sent.begin()->first <= ack.number) {
    for (const auto& [key, body] : end.sent.begin()->second)
      if (confirms && !room_.device(other.device).forgot.contains(key.book) &&
          !(older && room_.promises.forked(key.book)))
        room_.promises.confirm(key, body, link.ends[1 - side].device);
    end.sent.erase(end.sent.begin());
  }
}

void Network::run_until(UnixMs time) {
  while (!queue_.empty() && queue_.top().at <= time) {
    Arrival arrival = queue_.top();
    queue_.pop();
    room_.time.now = std::max(room_.time.now, arrival.at);
    const auto link = arrival.link;
    try {
      arrive(std::move(arrival));
    } catch (const SQLite::Exception& error) {  // in a look of ours, not of the session's
      room_.blame_disk(error);
      hang_up(link);
    }
  }
  room_.time.now = std::max(room_.time.now, time);
}

void Network::settle() {
  for (int quiet = 0; quiet < 2; ++quiet) {
    while (!queue_.empty()) run_until(queue_.top().at);
    for (auto& [number, link] : links_)
      for (std::size_t side : {kGuest, kHost})
        if (link.ends[side].session) push(link, side, What::tick, {}, room_.time.now);
  }
  while (!queue_.empty()) run_until(queue_.top().at);
}

void Network::arrive(Arrival arrival) {
  const auto found = links_.find(arrival.link);
  if (found == links_.end()) return;
  Link& link = found->second;
  End& end = link.ends[arrival.side];
  Device& device = room_.device(end.device);
  if (!end.session || device.gone()) return;
  Session::Frames answer;
  if (arrival.what == What::frame) {
    ++room_.counts.frames;
    end.coming.pop_front();
    if (++link.frames > kMostFrames)
      throw Violation("livelock", "link " + std::to_string(link.number) + " never comes to rest");
    if (link.flip_next && !arrival.frame.empty()) {
      link.flip_next = false;
      link.tainted = true;
      arrival.frame[static_cast<std::size_t>(link.random.below(arrival.frame.size()))] ^=
          static_cast<std::uint8_t>(1 + link.random.below(255));
    }
    if (link.repeat_next && !arrival.frame.empty()) {
      link.repeat_next = false;
      link.tainted = true;
      push(link, arrival.side, What::frame, arrival.frame, room_.time.now);
    }
    room_.trace.bytes(arrival.frame);
    if (link.liar && arrival.side == kGuest && link.liar->ignores(arrival.frame)) return;
    note_arrived(link, arrival.side, arrival.frame);
    heed_letting_go(room_, end.device);
    answer = end.session->receive(arrival.frame, end.coming.empty() ? ByteView{} : ByteView{end.coming.front()});
    if (!device.gone()) mind_forgotten(end.device, message_of(arrival.frame));
  } else if (arrival.what == What::wake) {
    end.woken = false;
    answer = end.session->changed();
    push(link, arrival.side, What::tick, {}, room_.time.now + 500);
  } else {
    answer = end.session->tick();
  }
  if (device.gone()) return;  // it died in the middle: nobody hears the answer
  send(link, arrival.side, std::move(answer));
  after(link, arrival.side);
  if (device.take_grown()) wake(end.device);
}

/// A device may have heard of forgotten books, or been offered some.
void Network::mind_forgotten(std::size_t place, std::size_t message) {
  Device& device = room_.device(place);
  if (message == kStubsMessage) {
    heed_forgetting(room_, place);
    if (!device.disk.in_trouble()) check_bytes_gone(device);
  }
  if (message == kStubsMessage || message == kEntriesMessage || message == kPackedEntriesMessage)
    check_stays_forgotten(device);
}

void Network::after(Link& link, std::size_t side) {
  End& end = link.ends[side];
  const SessionStatus& status = end.session->status();
  const bool through = status.state != SessionState::closed && status.state != SessionState::greeting &&
                       status.state != SessionState::proving;
  if (through && link.revoked && side == kHost)
    throw Violation("revoked", room_.device(end.device).name + " goes on with a device that it revoked");
  if (through && side == kGuest && link.pairing) {
    room_.paired.insert({link.ends[kHost].device, end.device});
    const Visit visit{link.ends[kHost].device, end.device};
    // The host's word may have been under way while it was put back.
    if (room_.device(visit.server).restores == link.ends[kHost].restores) {
      room_.unsure.erase(visit);
    } else {
      room_.unsure.insert(visit);
    }
  }
  if (status.state != SessionState::closed) return;
  if (status.fault) {
    room_.trace.line("link " + std::to_string(link.number) + " ends at " + room_.device(end.device).name +
                     ": " + status.fault->message());
    check_fault(link, side, *status.fault);
  }
  end.session.reset();
}

void Network::check_fault(Link& link, std::size_t side, const Fault& fault) {
  const Visit visit{link.ends[kHost].device, link.ends[kGuest].device};
  Device& guest = room_.device(visit.guest);
  Device& host = room_.device(visit.server);
  if (link.tainted) return;
  if (fault.code == FaultCode::untrusted && !link.pairing &&
      (link.unsure || room_.unsure.contains(visit) || host.restores != link.ends[kHost].restores)) {
    room_.paired.erase(visit);  // the server was set back to before the pairing
    return;
  }
  // The other side hears of it a while later; the disk may be well by then, or another one.
  link.disk_fault = link.disk_fault || guest.disk.in_trouble() || host.disk.in_trouble();
  if (link.disk_fault) return;
  // The server may have been put back to before the revocation while its word was under way.
  if (fault.code == FaultCode::refused &&
      (room_.revoked.contains(visit) || link.revoked || host.restores != link.ends[kHost].restores))
    return;
  if (fault.code == FaultCode::expired && link.pairing) return;  // so slow, or a clock jumped
  throw Violation("broken exchange",
                  (side == kGuest ? guest.name + " with " + host.name : host.name + " with " + guest.name) +
                      ": " + fault.message());
}

bool Network::hang_up(std::size_t number) {
  return links_.erase(number) > 0;
}

bool Network::cut(std::size_t number) {
  const auto found = links_.find(number);
  if (found == links_.end()) return false;
  Link& link = found->second;
  // Something that was under way arrives as a piece.
  std::priority_queue<Arrival> rest = queue_;
  while (!rest.empty() && (rest.top().link != number || rest.top().what != What::frame)) rest.pop();
  if (!rest.empty() && link.ends[rest.top().side].session) {
    link.tainted = true;
    Bytes piece = rest.top().frame;
    piece.resize(static_cast<std::size_t>(link.random.below(piece.size())));
    if (const auto answer = link.ends[rest.top().side].session->receive(piece); !answer.empty())
      room_.trace.bytes(answer.front());
  }
  links_.erase(number);
  return true;
}

void Network::drop_all_of(std::size_t device) {
  for (auto& [number, link] : links_)
    for (End& end : link.ends)
      if (end.device == device) end.session.reset();
  std::erase_if(links_, [](const auto& held) {
    return !held.second.ends[kGuest].session && !held.second.ends[kHost].session;
  });
}

void Network::drop_all() {
  links_.clear();
  queue_ = {};
}

void Network::note_revoked(std::size_t server, const PublicKey& guest) {
  for (auto& [number, link] : links_)
    if (link.ends[kHost].device == server && room_.device(link.ends[kGuest].device).key() == guest) link.revoked = true;
}

void Network::wake(std::size_t device) {
  for (auto& [number, link] : links_)
    for (std::size_t side : {kGuest, kHost}) {
      End& end = link.ends[side];
      if (end.device != device || !end.session || end.woken) continue;
      end.woken = true;
      push(link, side, What::wake, {}, room_.time.now + 20);
    }
}

}  // namespace weavelog::sim
