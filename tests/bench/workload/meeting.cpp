#include "tests/bench/workload/meeting.h"

#include <deque>

#include "core/people/consent.h"
#include "sync/exchange/session.h"
#include "tests/bench/report.h"
#include "tests/bench/room.h"

namespace weavelog::bench {
namespace {

/// Hello, the proofs and Welcome are the first four messages.
bool greets(const Bytes& frame) {
  return frame.size() > 1 && (frame[1] & 0x7f) < 4;
}

Session make_session(Station& station, Side side) {
  SessionOptions options;
  options.ledger = &station.ledger();
  options.devices = &station.devices();
  options.peers = &station.peers();
  options.side = side;
  // As the server and the app say it.
  options.may_leave = [&ledger = station.ledger()](const BookId& book, BookKind kind) { return may_cross(ledger, book, kind); };
  options.leaves_by = [] { return LeaveRule{}; };
  return Session(std::move(options));
}

}  // namespace

void enrol(Station& host, Station& guest) {
  const auto invitation = must(host.devices().invite(Role::stringer));
  const Digest handshake{};
  const auto key = pairing_key(invitation.secret);
  (void)must(host.devices().admit(number_of(invitation.secret), handshake,
                                  pairing_proof(key, PairingSide::guest, handshake),
                                  guest.ledger().self().key, "guest"));
}

Meeting meet(Station& guest_station, Station& host_station) {
  Meeting out;
  Session guest = make_session(guest_station, Side::guest), host = make_session(host_station, Side::host);
  std::deque<Bytes> to_host, to_guest;
  const auto post = [&](Session::Frames frames, std::deque<Bytes>& queue, std::size_t& bytes) {
    for (Bytes& frame : frames) {
      bytes += frame.size();
      if (greets(frame)) out.greeting_bytes += frame.size();
      ++out.messages;
      queue.push_back(std::move(frame));
    }
  };
  const Stopwatch all;
  {
    const Stopwatch watch;
    post(guest.start(), to_host, out.to_host);
    out.guest_ms += watch.milliseconds();
  }
  while (!to_host.empty() || !to_guest.empty()) {
    if (!to_host.empty()) ++out.round_trips;
    while (!to_host.empty()) {
      const Bytes frame = std::move(to_host.front());
      to_host.pop_front();
      const Stopwatch watch;
      post(host.receive(frame), to_guest, out.to_guest);
      out.host_ms += watch.milliseconds();
    }
    while (!to_guest.empty()) {
      const Bytes frame = std::move(to_guest.front());
      to_guest.pop_front();
      const Stopwatch watch;
      post(guest.receive(frame), to_host, out.to_host);
      out.guest_ms += watch.milliseconds();
    }
  }
  out.ms = all.milliseconds();
  for (const Session* session : {&guest, &host})
    if (session->status().fault) throw std::runtime_error(session->status().fault->message());
  out.agreed = guest.status().state == SessionState::agreed && host.status().state == SessionState::agreed;
  return out;
}

}  // namespace weavelog::bench
