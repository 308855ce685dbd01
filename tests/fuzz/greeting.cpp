// What anybody may say before anybody knows who it is: a hello, a proof, a welcome, from either side, in any order and changed as the
// input says. Where a signature or a proof of the code would stop the fuzzer, the liar makes it right, for the bytes that really crossed.
// Beside the session stands what it ought to make of them: who has no right is kept out and leaves no trace, and who has gets in.

#include <optional>

#include "sync/exchange/session.h"
#include "tests/fuzz/devices.h"
#include "tests/fuzz/every_message.h"
#include "tests/fuzz/target_list.h"
#include "tests/support/small_registry.h"

namespace weavelog::fuzz {
namespace {

constexpr std::uint8_t kHonestHost = 1, kHonestGuest = 2, kLiar = 9;
constexpr Fingerprint kCertificate{7};

/// DEVELOPERS.md has no word on it, the sessions' own tests do: what a proof of key is over.
Bytes proof_over(Side side, const Digest& handshake) {
  Bytes out;
  for (const ByteView part : {as_bytes(side == Side::guest ? "weavelog guest proof 1" : "weavelog host proof 1"), ByteView(handshake)})
    out.insert(out.end(), part.begin(), part.end());
  return out;
}

SessionOptions options_of(FuzzDevice& device, Side side) {
  SessionOptions out;
  out.ledger = device.ledger.get();
  out.devices = device.devices.get();
  out.peers = device.peers.get();
  out.side = side;
  out.certificate = kCertificate;
  return out;
}

bool let_in(const Session& session) {
  const SessionState state = session.status().state;
  return state == SessionState::comparing || state == SessionState::exchanging || state == SessionState::agreed;
}

/// One of eight times.
bool rarely(Input& in) { return in.pick(8) == 7; }

template <class Bits>
void spoil(Bits& bits, Input& in) {
  bits[in.pick(bits.size())] ^= static_cast<std::uint8_t>(1 + in.byte() % 255);
}

/// Some bytes of the frame changed, behind its version.
Bytes changed(Bytes frame, Input& in) {
  const std::size_t changes = in.pick(4);
  for (std::size_t i = 0; i < changes && frame.size() > 1; ++i) frame[1 + in.pick(frame.size() - 1)] = in.byte();
  return frame;
}

template <class M>
std::optional<M> read(ByteView frame) {
  const auto message = decode_frame(frame);
  const M* held = message ? std::get_if<M>(&*message) : nullptr;
  return held == nullptr ? std::nullopt : std::optional(*held);
}

Hello liars_hello(const AuthorCard& card, Input& in) {
  Hello hello;
  hello.card = card;
  hello.nonce.fill(in.byte());
  hello.wall_ms = 1'800'000'000'000;
  if (rarely(in)) hello.newest = static_cast<std::uint32_t>(in.pick(9));
  if (rarely(in)) hello.oldest = static_cast<std::uint32_t>(in.pick(9));
  if (rarely(in)) hello.wall_ms = INT64_MIN + static_cast<std::int64_t>(in.pick(3));
  if (rarely(in)) hello.extra = Bytes(in.pick(300), 5);
  return hello;
}

Bytes any_frame(Input& in) {
  const auto& sound = every_frame();
  if (in.pick(3) != 2) return changed(sound[in.pick(sound.size())], in);
  Bytes frame{1, static_cast<std::uint8_t>(in.pick(std::variant_size_v<Message> + 1))};
  const ByteView body = in.run(in.pick(60));
  frame.insert(frame.end(), body.begin(), body.end());
  return frame;
}

/// Whoever got in may still say anything.
void go_on(Session& session, Input& in) {
  std::size_t answers = 0;
  for (int i = 0; i < 12 && !in.empty(); ++i) {
    answers += session.receive(any_frame(in)).size();
    if (rarely(in)) answers += session.tick().size() + session.changed().size();
  }
  must_hold(answers < 4096, "a session answers with more and more frames");
}

/// What a device knows of others, to see that nothing of it changed.
struct Traces {
  std::int64_t position;
  std::size_t stubs, invitations;
  std::vector<std::pair<PublicKey, Role>> devices;
  explicit Traces(const FuzzDevice& device)
      : position(device.ledger->position()), stubs(device.ledger->forgotten().size()), invitations(device.devices->open_invitations().size()) {
    for (const EnrolledDevice& one : device.devices->devices()) devices.emplace_back(one.key, one.revoked ? Role::reader : one.role);
  }
  bool operator==(const Traces&) const = default;
};

void invite_and_admit(FuzzDevice& host, const PublicKey& guest, Role role) {
  const auto invitation = host.devices->invite(role);
  must_hold(invitation.has_value(), "an invitation");
  admit(*host.devices, invitation->secret, guest, "somebody");
}

/// An honest tablet is let in whatever others tried before, and both come to agree.
void honest_guest_gets_in(FuzzDevice& host) {
  FuzzDevice guest("guest", kHonestGuest);
  guest.put(book_of(7), 0, testing::kLabel, std::string("honest"));
  const auto peer = guest.peers->number_of(host.key.public_key());
  must_hold(peer && guest.peers->widen(*peer, {book_of(7)}).has_value(), "a scope");
  const auto invitation = host.devices->invite(Role::stringer);
  must_hold(invitation.has_value(), "strangers use up what an honest guest is invited by");
  SessionOptions options = options_of(guest, Side::guest);
  options.secret = invitation->secret;
  Session there(options_of(host, Side::host)), here(std::move(options));
  std::deque<Bytes> up, down;
  for (Bytes& frame : here.start()) up.push_back(std::move(frame));
  for (int i = 0; i < 400 && (!up.empty() || !down.empty()); ++i) {
    auto& queue = up.empty() ? down : up;
    const Bytes frame = std::move(queue.front());
    queue.pop_front();
    for (Bytes& answer : &queue == &up ? there.receive(frame) : here.receive(frame)) (&queue == &up ? down : up).push_back(std::move(answer));
  }
  must_hold(here.status().agreed && there.status().agreed, "after what strangers did an honest guest does not come to agree");
  must_hold(host.ledger->book(book_of(7)).has_value(), "what an honest guest brought is not there");
}

// ------------------------------------------------------------------------------------------------ a liar at an honest host

class LyingGuest {
 public:
  LyingGuest(FuzzDevice& host, Input& in) : host_(host), in_(in), key_(fixed_key(kLiar)) {
    static constexpr Role kRoles[] = {Role::stringer, Role::head, Role::desk, Role::reader};
    switch (in_.pick(4)) {
      case 0: break;  // a stranger
      case 3:
        invite_and_admit(host_, key_.public_key(), Role::stringer);
        must_hold(host_.devices->revoke(key_.public_key()).has_value(), "a revocation");
        break;
      default: invite_and_admit(host_, key_.public_key(), kRoles[in_.pick(4)]); break;
    }
    const auto invitation = host_.devices->invite(kRoles[in_.pick(4)], 60'000);
    must_hold(invitation.has_value(), "an invitation");
    secret_ = invitation->secret;
    open_ = true;
    switch (in_.pick(6)) {
      case 2:  // the liar itself used it, has another role since, and the server was started anew
        use_up(key_.public_key());
        (void)host_.devices->set_role(key_.public_key(), Role::reader);  // refused where there would be no head left
        host_.devices.reset();
        if (auto devices = DeviceList::open(*host_.ledger, host_.key)) host_.devices = std::move(*devices);
        must_hold(host_.devices != nullptr, "a list of devices");
        break;
      case 3:  // somebody else was quicker
        use_up(fixed_key(40).public_key());
        open_ = false;
        break;
      case 4:
        host_.clock.advance(60'001);
        open_ = false;
        break;
      case 5:
        must_hold(host_.devices->withdraw(number_of(secret_)).has_value(), "a withdrawal");
        open_ = false;
        break;
      default: break;
    }
  }

  void connect() {
    Session session(options_of(host_, Side::host));
    AuthorCard card;
    card.key = key_.public_key();
    card.incarnation = 3;
    card.device = "liar";
    const Bytes hello = changed(encode_frame(liars_hello(card, in_)), in_);
    const Traces before(host_);
    const Session::Frames answer = session.receive(hello);
    must_hold(!let_in(session), "a hello alone lets a device in");
    must_hold(Traces(host_) == before, "a hello alone leaves a trace");
    const auto heard = read<Hello>(hello);
    const auto theirs = answer.empty() ? std::nullopt : read<Hello>(answer.front());
    must_hold(heard || !theirs, "what is no hello is answered with one");
    const Digest handshake = theirs ? handshake_digest(hello, answer.front(), kCertificate) : Digest{};

    const Bytes proof = said(handshake);
    const bool right = theirs && deserves(proof, handshake, heard->card.key);
    const Session::Frames welcome = session.receive(proof);
    must_hold(let_in(session) == right, right ? "who has a right to it is not let in" : "who has no right to it is let in");
    if (!right) {
      note_reached("greeting: a guest is kept out");
      must_hold(Traces(host_) == before, "who is kept out leaves a trace");
      must_hold(session.receive(any_frame(in_)).size() <= 1, "who is kept out is talked to");
      must_hold(Traces(host_) == before && !let_in(session), "who is kept out leaves a trace afterwards");
      return;
    }
    const auto member = host_.devices->member(heard->card.key);
    must_hold(member && member->role == session.status().role, "a guest has another role in the session than on the list");
    const auto came = welcome.empty() ? std::nullopt : read<Welcome>(welcome.front());
    must_hold(came && verify(host_.key.public_key(), proof_over(Side::host, handshake), came->signature), "the host does not prove its key");
    if (read<PairingProof>(proof)) {
      must_hold(check_pairing_proof(pairing_key(secret_), PairingSide::host, handshake, came->pairing_proof).has_value(),
                "the host does not prove that it knows the code");
      note_reached("greeting: a guest is paired");
    } else {
      note_reached("greeting: a member is let in");
    }
    go_on(session, in_);
  }

 private:
  void use_up(const PublicKey& guest) { admit(*host_.devices, secret_, guest, "somebody"); }
  /// A proof for that handshake, sound unless the input says otherwise; or anything else.
  Bytes said(const Digest& handshake) {
    Digest over = handshake;
    if (rarely(in_)) spoil(over, in_);  // as one has it who sees another certificate
    Signature signature = key_.sign(proof_over(rarely(in_) ? Side::host : Side::guest, over));
    if (rarely(in_)) spoil(signature, in_);
    switch (in_.pick(8)) {
      case 0: case 1: case 2: return changed(encode_frame(MemberProof{signature}), in_);
      case 7: return any_frame(in_);
      default: {
        const PairingSide side = rarely(in_) ? PairingSide::host : PairingSide::guest;
        PairingProof proof{signature, number_of(secret_), pairing_proof(pairing_key(secret_), side, over)};
        if (rarely(in_)) spoil(proof.proof, in_);
        if (rarely(in_)) spoil(proof.invitation, in_);
        return changed(encode_frame(proof), in_);
      }
    }
  }

  /// By the rules, out of the bytes that crossed. An invitation that was used up by this very guest still counts.
  bool deserves(ByteView frame, const Digest& handshake, const PublicKey& named) {
    const Bytes over = proof_over(Side::guest, handshake);
    if (const auto proof = read<MemberProof>(frame)) return verify(named, over, proof->signature) && host_.devices->member(named).has_value();
    const auto proof = read<PairingProof>(frame);
    return proof && verify(named, over, proof->signature) && open_ && proof->invitation == number_of(secret_) &&
           proof->proof == pairing_proof(pairing_key(secret_), PairingSide::guest, handshake);
  }

  FuzzDevice& host_;
  Input& in_;
  DeviceKey key_;
  PairingSecret secret_{};
  bool open_ = false;
};

void lie_to_host(Input& in) {
  FuzzDevice host("host", kHonestHost);
  host.put(book_of(0), 0, testing::kGuarded, std::int64_t{1});
  LyingGuest liar(host, in);
  for (int i = 0; i < 3; ++i) {
    liar.connect();
    if (in.empty()) break;
  }
  must_be_well(*host.ledger);
  honest_guest_gets_in(host);
}

// ------------------------------------------------------------------------------------------------ a liar in the place of a host

void lie_to_guest(Input& in) {
  FuzzDevice guest("guest", kHonestGuest);
  guest.put(book_of(0), 0, testing::kGuarded, std::int64_t{1});
  const DeviceKey key = fixed_key(in.pick(2) == 0 ? kHonestHost : kLiar);
  PairingSecret secret{};
  secret.fill(0x5a);
  SessionOptions options = options_of(guest, Side::guest);
  const bool pairs = in.pick(2) == 1;
  if (pairs) {
    options.secret = secret;
  } else {
    options.expected = fixed_key(kHonestHost).public_key();
  }
  Session session(std::move(options));
  const Session::Frames begun = session.start();
  must_hold(begun.size() == 1, "a guest begins with one frame");
  AuthorCard card;
  card.key = key.public_key();
  card.device = "desk";
  const Bytes hello = changed(encode_frame(liars_hello(card, in)), in);
  const Traces before(guest);
  const Session::Frames answer = session.receive(hello);
  const auto heard = read<Hello>(hello);
  const Digest handshake = handshake_digest(begun.front(), hello, kCertificate);
  bool proved = false;
  if (!answer.empty()) {
    const auto member = read<MemberProof>(answer.front());
    const auto pairing = read<PairingProof>(answer.front());
    proved = member || pairing;
    must_hold(!proved || (heard && (pairs || heard->card.key == fixed_key(kHonestHost).public_key())),
              "a guest proves itself to who is not its host");
    must_hold(!proved || verify(guest.key.public_key(), proof_over(Side::guest, handshake), member ? member->signature : pairing->signature),
              "a guest's proof is over something else than what crossed");
    must_hold(!pairing || !std::equal(secret.begin(), secret.end(), pairing->proof.begin()), "a guest tells the code");
  }

  Welcome welcome;
  welcome.signature = key.sign(proof_over(rarely(in) ? Side::guest : Side::host, handshake));
  if (rarely(in)) spoil(welcome.signature, in);
  welcome.role = rarely(in) ? in.pick(400) : static_cast<std::uint64_t>(Role::stringer);
  // One who does not know the code can only send back what the guest said.
  const bool knows = in.pick(4) != 3;
  if (pairs) welcome.pairing_proof = pairing_proof(pairing_key(secret), knows ? PairingSide::host : PairingSide::guest, handshake);
  if (rarely(in)) spoil(welcome.pairing_proof, in);
  welcome.event = rarely(in) ? BookId{} : book_of(3);
  Bytes frame = changed(encode_frame(welcome), in);
  if (rarely(in)) frame = any_frame(in);
  const auto crossed = read<Welcome>(frame);
  const bool right = proved && crossed && verify(heard->card.key, proof_over(Side::host, handshake), crossed->signature) &&
                     role_from(crossed->role).has_value() &&
                     (!pairs || crossed->pairing_proof == pairing_proof(pairing_key(secret), PairingSide::host, handshake));
  const Session::Frames next = session.receive(frame);
  must_hold(let_in(session) == right, right ? "a guest does not take its own host" : "a guest takes who is not its host");
  if (!right) {
    note_reached("greeting: a host is turned down");
    must_hold(next.size() <= 1, "a host that is turned down is talked to");
    must_hold(session.receive(any_frame(in)).size() <= 1 && !let_in(session), "a host that is turned down is talked to afterwards");
    must_hold(Traces(guest) == before, "a host that is turned down leaves a trace");
    must_hold(!session.status().invitation && !session.status().devices, "a host that is turned down is believed");
    return;
  }
  note_reached(pairs ? "greeting: a host is paired with" : "greeting: a host is come back to");
  go_on(session, in);
  must_be_well(*guest.ledger);
}

}  // namespace

void run_greeting(ByteView input) {
  Input in(input);
  if ((in.byte() & 1) == 0) {
    lie_to_host(in);
  } else {
    lie_to_guest(in);
  }
}

std::vector<Bytes> seeds_greeting() {
  // Numbers as Input::pick() and byte() take them: most of a sound greeting is zeros.
  const auto seed = [](std::initializer_list<int> bytes) {
    Bytes out;
    for (const int one : bytes) out.push_back(static_cast<std::uint8_t>(one));
    return out;
  };
  std::vector<Bytes> out;
  for (const int known : {0, 1, 2, 3})       // stranger, member, member, revoked
    for (const int invited : {0, 2, 3, 4, 5}) {  // open, used by itself, used up, over, withdrawn
      for (const int proof : {0, 4}) {        // of a member, of somebody who pairs
        Bytes one = seed({0, 0, known});
        if (known == 1 || known == 2) one.insert(one.end(), {0, 0});
        one.insert(one.end(), {0, 0, 0, static_cast<std::uint8_t>(invited)});
        one.insert(one.end(), 1 + 8, 0);  // the hello: nonce, and four things that are rarely otherwise
        one.insert(one.end(), 2, 0);      // and no byte of it changed
        one.insert(one.end(), 6, 0);      // a sound signature
        one.insert(one.end(), {0, static_cast<std::uint8_t>(proof)});
        out.push_back(one);
        if (known > 1 || invited > 0) continue;
        // The same, and then whatever there is to say.
        one.insert(one.end(), proof == 0 ? 2 : 8, 0);
        for (std::uint8_t i = 0; i < 120; ++i) one.push_back(static_cast<std::uint8_t>(i * 37));
        out.push_back(std::move(one));
      }
    }
  for (const int whose : {0, 1})
    for (const int pairs : {0, 1}) {
      Bytes one = seed({1, 0, whose, 0, pairs});
      one.insert(one.end(), 40, 0);
      out.push_back(one);
      for (std::uint8_t i = 0; i < 120; ++i) one.push_back(static_cast<std::uint8_t>(i * 29));
      out.push_back(std::move(one));
    }
  // Each message in place of the welcome.
  for (std::size_t message = 0; message < std::variant_size_v<Message>; ++message) {
    Bytes one = seed({1, 0, 0, 0, 0});
    one.insert(one.end(), 1 + 8 + 2 + 12 + 2, 0);
    one.insert(one.end(), {0, 7, 0, 0, 0, static_cast<std::uint8_t>(message), 0, 0});
    out.push_back(std::move(one));
  }
  return out;
}

}  // namespace weavelog::fuzz
