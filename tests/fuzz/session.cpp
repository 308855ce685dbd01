// The session's state machine, fed by real exchanges that the input meddles with. The meddler sits behind the handshake, so
// it is a device with a valid key and a role that says what it likes: frames lost, doubled, held back, changed inside, or made up, orders to
// forget that are properly signed among them; at times it sits in the handshake too. Neither side may be damaged by it, nothing goes but
// what somebody ordered to be forgotten, and afterwards an honest exchange must bring both to agree.

#include <optional>
#include <set>

#include "core/store/database.h"
#include "sync/exchange/session.h"
#include "tests/fuzz/devices.h"
#include "tests/fuzz/every_message.h"
#include "tests/fuzz/target_list.h"
#include "tests/support/small_registry.h"

namespace weavelog::fuzz {
namespace {

constexpr std::uint8_t kBooks = 5;
constexpr std::uint8_t kPictures = 3;

Bytes picture_of(std::uint8_t number) { return Bytes(number == 0 ? 70'000 : 40 + number, static_cast<std::uint8_t>(number + 7)); }
Digest hash_of(std::uint8_t number) { return digest_of(picture_of(number)); }

/// A device with pictures; a box whose label is a hash names it.
struct Camera : FuzzDevice {
  FuzzFolder home;
  ContentFiles files;
  Camera(const char* name, std::uint8_t number) : FuzzDevice(name, number), files(home / "photos", {80'000, 160'000}) {
    ledger->erase_with([this](Connection&, const BookId& book) { files.forget(book); });
  }
  [[nodiscard]] bool names(const BookId& book, const Digest& hash) const {
    for (const EntityState& state : ledger->entities(book))
      if (state.get(testing::kLabel) && *state.get(testing::kLabel) == Value(to_hex(hash))) return true;
    return false;
  }
  /// Where there is no room for it, an entry names what is not here.
  void take(const BookId& book, std::uint8_t number) {
    (void)files.add(book, picture_of(number));
    put(book, static_cast<std::uint8_t>(10 + number), testing::kLabel, to_hex(hash_of(number)));
  }
};

SessionOptions options(Camera& device, Side side) {
  SessionOptions out;
  out.ledger = device.ledger.get();
  out.devices = device.devices.get();
  out.peers = device.peers.get();
  out.side = side;
  out.batch_bytes = 300;  // several batches even of little
  out.contents = {&device.files, [&device](const BookId& book, const Digest& hash) { return device.names(book, hash); }, {}};
  return out;
}

PairingSecret invite(Camera& host, Role role) {
  const auto invitation = host.devices->invite(role);
  must_hold(invitation.has_value(), "an invitation");
  return invitation->secret;
}

void enrol(Camera& host, Camera& guest, Role role) {
  admit(*host.devices, invite(host, role), guest.key.public_key(), "guest");
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
  } else if (ContentPart* part = std::get_if<ContentPart>(&*message)) {
    switch (in.pick(4)) {
      case 0: part->offset += in.pick(4); break;
      case 1: part->size -= in.pick(4); break;
      case 2: part->bytes.resize(in.pick(part->bytes.size() + 2)); break;
      default:
        if (!part->bytes.empty()) part->bytes[in.pick(part->bytes.size())] ^= 1;
        break;
    }
  }
  return encode_frame(*message);
}

class Meddler {
 public:
  /// Without an input it is honest. `secret`: the two pair. `from_start`: the handshake is meddled with too.
  Meddler(Camera& guest_device, Camera& host_device, Input* in, std::optional<PairingSecret> secret = {}, bool from_start = false)
      : guest(guest_options(guest_device, secret)), host(options(host_device, Side::host)), in_(in), from_start_(from_start) {
    push(to_host_, guest.start());
  }

  void run() {
    for (int i = 0; i < 400 && (!to_host_.empty() || !to_guest_.empty()); ++i) {
      const bool up = !to_host_.empty();
      auto& queue = up ? to_host_ : to_guest_;
      Bytes frame = std::move(queue.front());
      queue.pop_front();
      const bool greeted = from_start_ || guest.status().state >= SessionState::exchanging || host.status().state >= SessionState::comparing;
      if (in_ != nullptr && greeted && !in_->empty()) {
        switch (in_->pick(14)) {
          case 0: continue;
          case 1: queue.push_back(frame); break;
          case 2: queue.push_back(std::move(frame)); continue;
          case 3: frame = meddled(frame, *in_); break;
          case 4: frame = made_up(); break;
          case 5:
            push(to_host_, guest.changed());
            push(to_guest_, host.tick());
            break;
          case 6: queue.push_front(std::exchange(frame, order_to_forget())); break;
          case 7: {
            const auto book = static_cast<std::uint8_t>(in_->pick(kBooks)), picture = static_cast<std::uint8_t>(in_->pick(kPictures));
            push(to_host_, guest.fetch(book_of(book), hash_of(picture)));
            break;
          }
          case 8: push(to_host_, wish()); break;
          case 9: queue.push_front(std::exchange(frame, out_of_place())); break;
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

  /// What comes with time: what was put off is done.
  void ticks() {
    for (int i = 0; i < 4; ++i) {
      push(to_host_, guest.tick());
      push(to_guest_, host.tick());
      run();
    }
  }

  /// That came to either.
  [[nodiscard]] std::uint64_t pictures() const { return guest.status().contents_received + host.status().contents_received; }

  Session guest, host;

 private:
  static SessionOptions guest_options(Camera& device, const std::optional<PairingSecret>& secret) {
    SessionOptions out = options(device, Side::guest);
    out.secret = secret;
    return out;
  }
  Bytes made_up() {
    Bytes frame{1, static_cast<std::uint8_t>(in_->pick(std::variant_size_v<Message>))};
    const ByteView body = in_->run(in_->pick(60));
    frame.insert(frame.end(), body.begin(), body.end());
    return frame;
  }
  Bytes order_to_forget() {
    const DeviceKey key = fixed_key(static_cast<std::uint8_t>(1 + in_->pick(4)));  // of the two devices, or of others whom they pass on
    const auto book = book_of(static_cast<std::uint8_t>(in_->pick(kBooks)));
    Stub stub = sign_stub(key, "who orders it", book, in_->pick(16) == 15 ? BookKind{9} : testing::kShelf, 1'800'000'000'000);
    if (in_->pick(8) == 7) stub.signature[in_->pick(stub.signature.size())] ^= 1;
    if (in_->pick(8) == 7) stub.book = book_of(static_cast<std::uint8_t>(in_->pick(kBooks)));
    return encode_frame(Stubs{{stub}});
  }
  Bytes out_of_place() {
    const auto& sound = every_frame();
    return sound[in_->pick(sound.size())];
  }
  /// What a person at the guest may ask of the host, as its head or not.
  Session::Frames wish() {
    switch (in_->pick(4)) {
      case 0: return guest.wish_invitation(Role::stringer, 60'000);
      case 1: return guest.wish_revocation(fixed_key(50).public_key());
      case 2: return guest.wish_change(guest.status().peer.key, "desk", Role::reader);
      default: return guest.wish_devices();
    }
  }
  static void push(std::deque<Bytes>& queue, Session::Frames frames) {
    for (auto& frame : frames) queue.push_back(std::move(frame));
  }

  Input* in_;
  bool from_start_;
  std::deque<Bytes> to_host_, to_guest_;
};

/// What a device holds that must not go from it but with a book that somebody ordered to be forgotten: its books, its own entries in them.
class Held {
 public:
  explicit Held(const Camera& device) : device_(device) {
    for (const BookInfo& book : device.ledger->books()) books_[book.id] = own(book.id);
  }
  void must_be_there() const {
    for (const auto& [book, entries] : books_) {
      if (device_.ledger->is_forgotten(book)) continue;
      must_hold(device_.ledger->book(book).has_value(), "a book is gone that nobody ordered to be forgotten");
      must_hold(own(book) >= entries, "own entries are gone");
    }
  }

 private:
  std::uint64_t own(const BookId& book) const {
    std::set<AuthorId> authors;
    for (const KnownAuthor& known : device_.ledger->authors())
      if (known.card.key == device_.key.public_key()) authors.insert(known.card.id());
    std::uint64_t sum = 0;
    for (const Head& head : device_.ledger->heads(book))
      if (authors.contains(head.author)) sum += head.seq;
    return sum;
  }
  const Camera& device_;
  std::map<BookId, std::uint64_t> books_;
};

/// Orders were signed and are about persons; what was forgotten is nowhere, and every picture is what its name says.
void must_be_clean(Camera& device) {
  for (const Forgotten& one : device.ledger->forgotten()) {
    must_hold(proves_itself(one.stub) && one.stub.kind == testing::kShelf, "an order to forget that nobody signed was obeyed");
    must_hold(!device.ledger->book(one.stub.book), "a forgotten book is still there");
    note_reached("session: a book is forgotten");
  }
  for (const HeldContent& one : device.files.all()) {
    must_hold(!device.ledger->is_forgotten(one.book), "a picture of a forgotten book is still there");
    const auto bytes = device.files.read(one.book, one.hash);
    must_hold(bytes && digest_of(*bytes) == one.hash, "a picture is not what its name says");
    must_hold(device.names(one.book, one.hash), "a picture that no entry names is kept");
  }
  must_be_well(*device.ledger);
}

}  // namespace

void run_session(ByteView input) {
  Input in(input);
  Camera host("host", 1), guest("guest", 2);
  const std::size_t role = in.pick(4);
  const bool pairs = in.pick(4) == 3, from_start = in.pick(4) == 3;
  if (!pairs) enrol(host, guest, role == 3 ? Role::head : Role::stringer);
  const std::size_t books = 1 + in.pick(4);
  std::vector<BookId> shared;
  for (std::size_t i = 0; i < books; ++i) {
    const auto number = static_cast<std::uint8_t>(i);
    const std::size_t whose = in.pick(3);
    if (whose != 0) host.put(book_of(number), 0, testing::kGuarded, std::int64_t{1});
    if (whose != 1) guest.put(book_of(number), 1, testing::kLabel, std::string("guest's drawer"));
    if (whose == 2) guest.put(book_of(number), 0, testing::kGuarded, std::int64_t{2});
    const std::size_t picture = in.pick(5);
    if (picture < kPictures) (picture == 1 ? guest : host).take(book_of(number), static_cast<std::uint8_t>(picture));
    shared.push_back(book_of(number));
  }
  const auto peer = guest.peers->number_of(host.key.public_key());
  must_hold(peer && guest.peers->widen(*peer, shared).has_value(), "a scope");
  std::optional<PairingSecret> secret;
  if (pairs) secret = invite(host, role == 3 ? Role::head : Role::stringer);
  if (in.pick(2) == 1) {  // they met before
    Meddler(guest, host, nullptr, secret).run();
    must_hold(host.devices->member(guest.key.public_key()).has_value(), "two honest devices do not pair");
    if (!host.ledger->is_forgotten(book_of(0))) host.put(book_of(0), 2, testing::kLabel, std::string("since then"));
  }
  const Held hosts(host), guests(guest);
  for (int i = 0; i < 2 && !in.empty(); ++i) {
    Meddler meddler(guest, host, &in, secret, from_start);
    meddler.run();
    meddler.ticks();
    if (meddler.pictures() > 0) note_reached("session: a picture comes while somebody meddles");
    if (from_start && host.devices->member(guest.key.public_key())) note_reached("session: let in though the handshake is meddled with");
  }
  for (Camera* device : {&host, &guest}) must_be_clean(*device);
  hosts.must_be_there();
  guests.must_be_there();
  // An answer that was lost, or a code that was tried out: the two are given another.
  secret.reset();
  if (!host.devices->member(guest.key.public_key())) secret = invite(host, Role::stringer);
  for (int i = 0; i < 3; ++i) {
    Meddler honest(guest, host, nullptr, secret);
    honest.run();
    secret.reset();
    honest.ticks();
    if (honest.pictures() > 0) note_reached("session: a picture comes");
    if (honest.guest.status().agreed && honest.host.status().agreed) break;
    must_hold(i < 2, "after a meddled exchange two honest devices do not come to agree");
  }
  for (Camera* device : {&host, &guest}) must_be_clean(*device);
  hosts.must_be_there();
  guests.must_be_there();
  for (const BookInfo& book : guest.ledger->books()) {
    must_hold(!host.ledger->is_forgotten(book.id), "two devices agreed, and one has forgotten a book that the other holds");
    if (const auto there = host.ledger->book(book.id)) must_hold(there->heads == book.heads, "two devices agreed and hold different entries");
  }
  for (const Forgotten& one : guest.ledger->forgotten())
    must_hold(!host.ledger->book(one.stub.book), "two devices agreed, and one has forgotten a book that the other holds");
}

std::vector<Bytes> seeds_session() {
  std::vector<Bytes> out(4);
  for (std::size_t i = 0; i < 200; ++i) {
    out[0].push_back(static_cast<std::uint8_t>(i * 37));
    out[1].push_back(static_cast<std::uint8_t>(i % 2 == 0 ? 0 : i * 11));
    out[2].push_back(static_cast<std::uint8_t>(i * i));
    out[3].push_back(static_cast<std::uint8_t>(3 + (i % 5)));
  }
  const auto add = [&out](std::initializer_list<int> picks, std::initializer_list<int> then) {
    Bytes one;
    for (const int pick : picks) one.insert(one.end(), {static_cast<std::uint8_t>(pick >> 8), static_cast<std::uint8_t>(pick)});
    for (int i = 0; i < 12; ++i)
      for (const int pick : then) one.insert(one.end(), {static_cast<std::uint8_t>(pick >> 8), static_cast<std::uint8_t>(pick)});
    out.push_back(std::move(one));
  };
  // Role, pairing, from the start, one book, both wrote, a picture, not met before; and then the same over and over.
  const int kGoOn = 13;
  for (const int picture : {0, 1, 2}) {
    add({0, 0, 0, 0, 2, picture, 0}, {kGoOn, 7, 0, picture});          // it is fetched
    add({3, 3, 0, 0, 2, picture, 0}, {kGoOn, kGoOn, 7, 0, picture, 3, 3});  // and its parts changed
  }
  for (const int whose : {0, 1, 2}) {
    // An order to forget by either of them, or by somebody else, behind the welcome.
    add({0, 0, 0, 0, 2, 0, 1}, {kGoOn, kGoOn, kGoOn, 6, whose, 0, 0, 0, 0});
    add({0, 3, 3, 0, 2, 1, 0}, {kGoOn, kGoOn, kGoOn, kGoOn, kGoOn, kGoOn, 6, whose, 0, 0, 0, 0});
  }
  for (const int wish : {0, 1, 2, 3}) add({3, 0, 0, 0, 2, 4, 1}, {kGoOn, kGoOn, kGoOn, 8, wish});
  add({0, 3, 3, 1, 1, 4, 0, 4, 0}, {kGoOn, kGoOn, 3, 1, 1, 9});  // the handshake changed
  constexpr int kMessages = static_cast<int>(std::variant_size_v<Message>);
  for (int message = 0; message < kMessages; ++message) add({3, 0, 0, 0, 2, 0, 1}, {kGoOn, kGoOn, kGoOn, 9, message});
  return out;
}

}  // namespace weavelog::fuzz
