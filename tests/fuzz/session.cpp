// The session's state machine, fed by real exchanges that the input meddles with. The meddler sits behind the handshake, so
// it is a device with a valid key and a role that says what it likes: frames lost, doubled, held back, changed inside, or made up.
// Neither side may be damaged by it, and afterwards an honest exchange must bring both to agree.

#include "core/store/database.h"
#include "sync/exchange/session.h"
#include "tests/fuzz/devices.h"
#include "tests/fuzz/target_list.h"
#include "tests/support/small_registry.h"

namespace weavelog::fuzz {
namespace {

SessionOptions options(FuzzDevice& device, Side side) {
  SessionOptions out;
  out.ledger = device.ledger.get();
  out.devices = device.devices.get();
  out.peers = device.peers.get();
  out.side = side;
  out.batch_bytes = 300;  // several batches even of little
  return out;
}

void enrol(FuzzDevice& host, FuzzDevice& guest, Role role) {
  const auto invitation = host.devices->invite(role);
  must_hold(invitation.has_value(), "an invitation");
  const Digest handshake{};
  const auto proof = pairing_proof(pairing_key(invitation->secret), PairingSide::guest, handshake);
  must_hold(host.devices->admit(number_of(invitation->secret), handshake, proof, guest.key.public_key(), "guest").has_value(), "an admission");
}

/// The frame with its message changed inside, where the header and the compression allow it.
Bytes meddled(const Bytes& frame, Input& in) {
  auto message = decode_frame(frame);
  if (!message) return frame;
  Bytes plain = frame;
  // Small ones are not compressed; of a compressed one the few fields that matter are changed by hand.
  if ((frame[1] & 0x80) == 0) {
    const std::size_t changes = 1 + in.pick(3);
    for (std::size_t i = 0; i < changes && plain.size() > 2; ++i) plain[2 + in.pick(plain.size() - 2)] = in.byte();
    return plain;
  }
  if (Entries* entries = entries_in(*message)) {
    Batch& batch = entries->batch;
    switch (in.pick(6)) {
      case 0: entries->number += in.pick(4); break;
      case 1:
        if (!batch.entries.empty()) batch.entries.erase(batch.entries.begin() + static_cast<std::ptrdiff_t>(in.pick(batch.entries.size())));
        break;
      case 2:
        if (!batch.entries.empty()) {
          auto& body = batch.entries[in.pick(batch.entries.size())].body;
          if (!body.empty()) body[in.pick(body.size())] = in.byte();
        }
        break;
      case 3: batch.seals.clear(); break;
      case 4: std::reverse(batch.entries.begin(), batch.entries.end()); break;
      default: batch.books.clear(); break;
    }
  }
  return encode_frame(*message);
}

class Meddler {
 public:
  Meddler(FuzzDevice& guest_device, FuzzDevice& host_device, Input* in)
      : guest(options(guest_device, Side::guest)), host(options(host_device, Side::host)), in_(in) {
    push(to_host_, guest.start());
  }

  void run() {
    for (int i = 0; i < 400 && (!to_host_.empty() || !to_guest_.empty()); ++i) {
      const bool up = !to_host_.empty();
      auto& queue = up ? to_host_ : to_guest_;
      Bytes frame = std::move(queue.front());
      queue.pop_front();
      const bool greeted = guest.status().state >= SessionState::exchanging || host.status().state >= SessionState::comparing;
      if (in_ != nullptr && greeted && !in_->empty()) {
        switch (in_->pick(10)) {
          case 0: continue;
          case 1: queue.push_back(frame); break;
          case 2: queue.push_back(std::move(frame)); continue;
          case 3: frame = meddled(frame, *in_); break;
          case 4: frame = made_up(); break;
          case 5:
            push(to_host_, guest.changed());
            push(to_guest_, host.tick());
            break;
          default: break;
        }
      }
      if (up) {
        push(to_guest_, host.receive(frame));
      } else {
        push(to_host_, guest.receive(frame));
      }
      const std::size_t waiting = to_host_.size() + to_guest_.size();
      must_hold(waiting < 4096, "a session answers with more and more frames");
    }
  }

  Session guest, host;

 private:
  Bytes made_up() {
    Bytes frame{1, static_cast<std::uint8_t>(in_->pick(std::variant_size_v<Message>))};
    const ByteView body = in_->run(in_->pick(60));
    frame.insert(frame.end(), body.begin(), body.end());
    return frame;
  }
  static void push(std::deque<Bytes>& queue, Session::Frames frames) {
    for (auto& frame : frames) queue.push_back(std::move(frame));
  }

  Input* in_;
  std::deque<Bytes> to_host_, to_guest_;
};

}  // namespace

void run_session(ByteView input) {
  Input in(input);
  FuzzDevice host("host", 1), guest("guest", 2);
  enrol(host, guest, in.pick(4) == 3 ? Role::head : Role::stringer);
  const std::size_t books = 1 + in.pick(4);
  std::vector<BookId> shared;
  for (std::size_t i = 0; i < books; ++i) {
    const auto number = static_cast<std::uint8_t>(i);
    const std::size_t whose = in.pick(3);
    if (whose != 0) host.put(book_of(number), 0, testing::kGuarded, std::int64_t{1});
    if (whose != 1) guest.put(book_of(number), 1, testing::kLabel, std::string("guest's drawer"));
    if (whose == 2) guest.put(book_of(number), 0, testing::kGuarded, std::int64_t{2});
    shared.push_back(book_of(number));
  }
  const auto peer = guest.peers->number_of(host.key.public_key());
  must_hold(peer && guest.peers->widen(*peer, shared).has_value(), "a scope");
  if (in.pick(2) == 1) {  // they met before
    Meddler(guest, host, nullptr).run();
    host.put(book_of(0), 2, testing::kLabel, std::string("since then"));
  }
  for (int i = 0; i < 2 && !in.empty(); ++i) Meddler(guest, host, &in).run();
  must_be_well(*guest.ledger);
  must_be_well(*host.ledger);
  for (int i = 0; i < 3; ++i) {
    Meddler honest(guest, host, nullptr);
    honest.run();
    if (honest.guest.status().agreed && honest.host.status().agreed) break;
    must_hold(i < 2, "after a meddled exchange two honest devices do not come to agree");
  }
  for (const BookInfo& book : guest.ledger->books())
    if (const auto there = host.ledger->book(book.id)) must_hold(there->heads == book.heads, "two devices agreed and hold different entries");
}

std::vector<Bytes> seeds_session() {
  std::vector<Bytes> out(4);
  for (std::size_t i = 0; i < 200; ++i) {
    out[0].push_back(static_cast<std::uint8_t>(i * 37));
    out[1].push_back(static_cast<std::uint8_t>(i % 2 == 0 ? 0 : i * 11));
    out[2].push_back(static_cast<std::uint8_t>(i * i));
    out[3].push_back(static_cast<std::uint8_t>(3 + (i % 5)));
  }
  return out;
}

}  // namespace weavelog::fuzz
