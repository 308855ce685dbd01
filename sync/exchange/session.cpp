#include "sync/exchange/session.h"

#include <sodium.h>

#include <algorithm>
#include <atomic>
#include <future>
#include <stdexcept>
#include <system_error>
#include <utility>

#include "core/log/device_name.h"
#include "core/store/database.h"
#include "sync/exchange/reconcile.h"

namespace weavelog {
namespace {

Bytes proof_message(Side side, const Digest& handshake) {
  Bytes out;
  const ByteView words = as_bytes(side == Side::guest ? "weavelog guest proof 1" : "weavelog host proof 1");
  out.insert(out.end(), words.begin(), words.end());
  out.insert(out.end(), handshake.begin(), handshake.end());
  return out;
}

}  // namespace

/// A frame that is being opened, or was. So many at a time, of all sessions together: opened ones take many times the room, and where more
/// guests than that are busy, others' frames come first anyway.
struct Session::Ahead {
  static constexpr int kMost = 4;
  static inline std::atomic<int> count{0};

  Bytes frame;
  std::future<Outcome<Message>> message;

  Ahead() { ++count; }
  ~Ahead() { --count; }
  Ahead(const Ahead&) = delete;
  Ahead& operator=(const Ahead&) = delete;
};

Session::Session(SessionOptions options)
    : options_(std::move(options)), contents_(options_.contents, {[this](const Message& message) { send(message); },
                                                                  [this](const BookId& book) {
                                                                    const auto held = options_.ledger->book(book);
                                                                    return held && may_send(held->id, held->kind);
                                                                  }}) {
  batch_bytes_ = options_.batch_bytes;
  if (options_.ledger == nullptr || options_.devices == nullptr || options_.peers == nullptr)
    throw std::logic_error("a session needs a ledger, a device list and a peer store");
  weigher_.emplace(*options_.ledger, *options_.devices);
}

Session::~Session() {
  if (status_.state != SessionState::closed) leave();
}

// ------------------------------------------------------------------------------------------------ plumbing

void Session::send(const Message& message) {
  try {
    out_.push_back(encode_frame(message));
  } catch (const std::length_error& error) {
    close({FaultCode::bad_input, error.what(), "exchange with " + status_.peer.device, "report this; nothing was lost"});
  }
}

/// Runs one step; what the database throws ends the session with a fault instead of the program.
Session::Frames Session::guarded(const std::function<void()>& step) {
  try {
    check_membership();
    if (status_.state != SessionState::closed) step();
  } catch (const SQLite::Exception& error) {
    close(fault_of(error, "the ledger"));
  }
  status_.fetches = contents_.fetches();
  status_.contents_sent = contents_.sent();
  status_.contents_received = contents_.received();
  status_.contents_unsettled = contents_.unsettled();
  if (status_.state == SessionState::closed) ahead_.reset();  // nothing comes after it
  status_.next_opened = ahead_ != nullptr;
  Frames out;
  out.swap(out_);
  return out;
}

void Session::close(Fault fault) {
  if (status_.state == SessionState::closed) return;
  send(Refusal{static_cast<std::uint8_t>(fault.code), fault.what, fault.what_to_do});
  status_.state = SessionState::closed;
  status_.fault = std::move(fault);
  contents_.stop();
  note_exchanged();
  leave();
}

bool Session::expect(bool in_turn, const char* message) {
  if (!in_turn)
    close({FaultCode::malformed, std::string("a message out of turn (") + message + ")", "exchange", "end the exchange and try again"});
  return in_turn;
}

bool Session::open() const { return status_.state == SessionState::exchanging || status_.state == SessionState::agreed; }

Session::Frames Session::start() {
  return guarded([&] {
    if (options_.side != Side::guest) return;
    guest_hello_ = own_hello();
    out_.push_back(guest_hello_);
  });
}

/// Takes the frame apart on another thread, if that is worth it and the peer is known: for strangers nothing is done beforehand.
void Session::open_ahead(ByteView frame) {
  if (frame.size() < std::max<std::size_t>(1, options_.worth_opening_ahead) || !open()) return;
  auto ahead = std::make_unique<Ahead>();
  if (Ahead::count > Ahead::kMost) return;
  ahead->frame.assign(frame.begin(), frame.end());
  try {
    ahead->message = std::async(std::launch::async, [&held = ahead->frame] {
      auto message = decode_frame(held);
      if (message)
        if (Entries* entries = entries_in(*message)) read_ahead(entries->batch);
      return message;
    });
  } catch (const std::system_error&) {
    return;  // no thread to be had: it is opened when its turn comes
  }
  ahead_ = std::move(ahead);
}

Outcome<Message> Session::opened(ByteView frame) {
  if (const auto ahead = std::move(ahead_); ahead && std::equal(frame.begin(), frame.end(), ahead->frame.begin(), ahead->frame.end()))
    return ahead->message.get();
  return decode_frame(frame);
}

Session::Frames Session::receive(ByteView frame, ByteView next) {
  return guarded([&] {
    // Whoever has not proved who it is gets nothing done here beyond that.
    const auto message = status_.state < SessionState::comparing ? decode_greeting(frame) : opened(frame);
    if (!message) return close(message.error());
    open_ahead(next);
    std::visit([&](const auto& held) { handle(held, frame); }, *message);
  });
}

// ------------------------------------------------------------------------------------------------ greeting and proof

Bytes Session::own_hello() const {
  Hello hello;
  hello.newest = options_.newest_protocol;
  hello.card = options_.ledger->self();
  randombytes_buf(hello.nonce.data(), hello.nonce.size());
  hello.wall_ms = options_.ledger->wall().now();
  return encode_frame(hello);
}

void Session::handle(const Hello& hello, ByteView frame) {
  if (!expect(status_.state == SessionState::greeting, "hello")) return;
  if (hello.oldest > options_.newest_protocol) {
    close({FaultCode::newer, "\"" + hello.card.device + "\" speaks a newer protocol (from version " + std::to_string(hello.oldest) +
                                 "; this device knows up to " + std::to_string(options_.newest_protocol) + ")",
           "exchange", "update Weavelog on this device"});
    return;
  }
  if (hello.newest < kOldestProtocol) {
    close({FaultCode::newer, "\"" + hello.card.device + "\" speaks an older protocol (up to version " + std::to_string(hello.newest) + ")",
           "exchange", "update Weavelog on that device"});
    return;
  }
  protocol_ = std::min(options_.newest_protocol, hello.newest);
  status_.peer = hello.card;
  // Within what clocks can show: a forger's may say anything.
  status_.clock_ahead_ms = std::clamp(hello.wall_ms, -HybridClock::kLatestWall, HybridClock::kLatestWall) - options_.ledger->wall().now();
  if (options_.side == Side::host) {
    if (options_.over)
      if (auto why = options_.over()) return close(std::move(*why));
    guest_hello_.assign(frame.begin(), frame.end());
    host_hello_ = own_hello();
    out_.push_back(host_hello_);
    handshake_ = handshake_digest(guest_hello_, host_hello_, options_.certificate);
    status_.state = SessionState::proving;
    return;
  }
  host_hello_.assign(frame.begin(), frame.end());
  handshake_ = handshake_digest(guest_hello_, host_hello_, options_.certificate);
  if (options_.expected && *options_.expected != hello.card.key) {
    close({FaultCode::untrusted, "this is not the device that this tablet was paired with", "exchange",
           "ask the desk for a new code and pair again"});
    return;
  }
  const Signature signature = options_.ledger->key().sign(proof_message(Side::guest, handshake_));
  if (options_.secret) {
    send(PairingProof{signature, number_of(*options_.secret),
                      weavelog::pairing_proof(pairing_key(*options_.secret), PairingSide::guest, handshake_)});
  } else {
    send(MemberProof{signature});
  }
  status_.state = SessionState::proving;
}

bool Session::guest_holds_key(const Signature& signature) {
  if (!expect(options_.side == Side::host && status_.state == SessionState::proving, "proof")) return false;
  if (verify(status_.peer.key, proof_message(Side::guest, handshake_), signature)) return true;
  close({FaultCode::untrusted, "the device does not hold the key that it names", "exchange", "pair it again"});
  return false;
}

void Session::handle(const MemberProof& proof, ByteView) {
  if (!guest_holds_key(proof.signature)) return;
  const auto device = options_.devices->member(status_.peer.key);
  if (!device) return close(device.error());
  welcome(device->role, {});
}

void Session::handle(const PairingProof& proof, ByteView) {
  if (!guest_holds_key(proof.signature)) return;
  const auto admission = options_.devices->admit(proof.invitation, handshake_, proof.proof, status_.peer.key, status_.peer.device, options_.remote);
  if (!admission) return close(admission.error());
  welcome(admission->role, admission->host_proof);
}

void Session::welcome(Role role, const Digest& host_proof) {
  status_.role = role;
  status_.event = options_.event;
  send(Welcome{options_.ledger->key().sign(proof_message(Side::host, handshake_)), static_cast<std::uint64_t>(role), host_proof,
               options_.event});
  begin_comparing();
}

void Session::handle(const Welcome& welcome, ByteView) {
  if (!expect(options_.side == Side::guest && status_.state == SessionState::proving, "welcome")) return;
  if (!verify(status_.peer.key, proof_message(Side::host, handshake_), welcome.signature)) {
    close({FaultCode::untrusted, "the server does not hold the key that it names", "exchange", "ask the desk for a new code and pair again"});
    return;
  }
  if (options_.secret) {
    const auto proved = check_pairing_proof(pairing_key(*options_.secret), PairingSide::host, handshake_, welcome.pairing_proof);
    if (!proved) return close(proved.error());
  }
  const auto role = role_from(welcome.role);
  if (!role) return close(role.error());
  status_.role = *role;
  status_.event = welcome.event;
  begin_comparing();
}

void Session::handle(const Refusal& refusal, ByteView) {
  const FaultCode code = refusal.code <= static_cast<std::uint8_t>(FaultCode::clock) ? static_cast<FaultCode>(refusal.code) : FaultCode::refused;
  status_.state = SessionState::closed;
  status_.fault = Fault{code, shown_words(refusal.what), "the other device", shown_words(refusal.what_to_do)};
  contents_.stop();
  leave();
}

}  // namespace weavelog
