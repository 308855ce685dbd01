#include "tests/bench/workload/meeting.h"

#include <algorithm>
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

/// Frames on their way to one side.
struct Way {
  struct Sent {
    Bytes frame;
    int leg;  ///< how many messages, one side's upon the other's, led to it; itself counted
  };
  std::deque<Sent> frames;
  std::size_t bytes = 0;

  /// What comes after the first, as a connection knows it that has it already.
  [[nodiscard]] ByteView next() const { return frames.size() < 2 ? ByteView{} : ByteView{frames[1].frame}; }
};

Meeting meet(Station& guest_station, Station& host_station) {
  Meeting out;
  Session guest = make_session(guest_station, Side::guest), host = make_session(host_station, Side::host);
  Way to_host, to_guest;
  int legs = 0;
  const auto post = [&](Session::Frames frames, Way& way, int leg) {
    for (Bytes& frame : frames) {
      way.bytes += frame.size();
      if (greets(frame)) out.greeting_bytes += frame.size();
      ++out.messages;
      legs = std::max(legs, leg);
      way.frames.push_back({std::move(frame), leg});
    }
  };
  const auto deliver = [&](Way& way, Session& to, Way& back, double& ms) {
    const Stopwatch watch;
    Session::Frames answers = to.receive(way.frames.front().frame, way.next());
    ms += watch.milliseconds();
    const int leg = way.frames.front().leg;
    way.frames.pop_front();
    post(std::move(answers), back, leg + 1);
  };
  const Stopwatch all;
  {
    const Stopwatch watch;
    auto first = guest.start();
    out.guest_ms += watch.milliseconds();
    post(std::move(first), to_host, 1);
  }
  // The host answers as soon as it hears something, so the guest has what comes next while it works.
  while (!to_host.frames.empty() || !to_guest.frames.empty()) {
    if (!to_host.frames.empty())
      deliver(to_host, host, to_guest, out.host_ms);
    else
      deliver(to_guest, guest, to_host, out.guest_ms);
  }
  out.to_host = to_host.bytes;
  out.to_guest = to_guest.bytes;
  out.round_trips = static_cast<std::size_t>(legs + 1) / 2;
  out.ms = all.milliseconds();
  for (const Session* session : {&guest, &host})
    if (session->status().fault) throw std::runtime_error(session->status().fault->message());
  out.agreed = guest.status().state == SessionState::agreed && host.status().state == SessionState::agreed;
  return out;
}

}  // namespace weavelog::bench
