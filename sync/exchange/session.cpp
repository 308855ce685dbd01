#include "sync/exchange/session.h"

#include <sodium.h>

#include <algorithm>
#include <stdexcept>

#include "core/store/database.h"
#include "sync/exchange/reconcile.h"

namespace weavelog {
namespace {

constexpr std::uint64_t kBatchesInFlight = 4;
constexpr int kMostDoubts = 3;
constexpr std::size_t kBooksPerMessage = 1000;
constexpr std::size_t kReconcileFrame = 128 * 1024;
constexpr std::size_t kMostLackingBooks = 2'000'000;

Bytes proof_message(Side side, const Digest& handshake) {
  Bytes out;
  const ByteView words = as_bytes(side == Side::guest ? "weavelog guest proof 1" : "weavelog host proof 1");
  out.insert(out.end(), words.begin(), words.end());
  out.insert(out.end(), handshake.begin(), handshake.end());
  return out;
}

}  // namespace

Session::Session(SessionOptions options) : options_(std::move(options)) {
  if (options_.ledger == nullptr || options_.devices == nullptr || options_.peers == nullptr)
    throw std::logic_error("a session needs a ledger, a device list and a peer store");
}

Session::~Session() = default;

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
  Frames out;
  out.swap(out_);
  return out;
}

void Session::close(Fault fault) {
  if (status_.state == SessionState::closed) return;
  send(Refusal{static_cast<std::uint8_t>(fault.code), fault.what, fault.what_to_do});
  status_.state = SessionState::closed;
  status_.fault = std::move(fault);
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

Session::Frames Session::receive(ByteView frame) {
  return guarded([&] {
    const auto message = decode_frame(frame);
    if (!message) return close(message.error());
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
  status_.clock_ahead_ms = hello.wall_ms - options_.ledger->wall().now();
  if (options_.side == Side::host) {
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
  const auto admission = options_.devices->admit(proof.invitation, handshake_, proof.proof, status_.peer.key, status_.peer.device);
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
  status_.fault = Fault{code, refusal.what, "the other device", refusal.what_to_do};
}

// ------------------------------------------------------------------------------------------------ comparing

bool Session::may_send(const BookId& book, BookKind kind) const {
  return options_.may_leave(book, kind) && !declined_.contains(book) &&
         (options_.side == Side::host || options_.peers->in_scope(status_.peer_number, book));
}

CommonBooks::MayCross Session::may_cross() const {
  return [this](const BookId& book, BookKind kind) { return may_send(book, kind); };
}

bool Session::keeps_common() const { return options_.leaves_by_room && declined_.empty() && forks_.empty(); }

CommonBooks& Session::common_books() {
  const auto room = keeps_common() ? std::optional(options_.leaves_by_room()) : std::nullopt;
  if (!common_ || common_room_ != room) {
    const std::int64_t shared = options_.side == Side::host ? 0 : status_.peer_number;
    if (room) {
      common_ = options_.peers->common_books(shared, *room);
    } else {
      const auto before = common_ ? common_ : std::make_shared<CommonBooks>();
      common_ = before->copy_comparing([this](const BookInfo& book) { return compared(book); });
    }
    common_room_ = room;
  }
  common_->refresh(*options_.ledger, may_cross(), !room);
  return *common_;
}

void Session::begin_comparing() {
  const auto number = options_.peers->number_of(status_.peer.key);
  if (!number) return close(number.error());
  status_.peer_number = *number;
  declined_ = options_.peers->declined(*number);
  told_ = options_.peers->told(*number);
  // Ticked since the last session: their entries may be older than what both agreed on then.
  if (options_.side == Side::guest) {
    auto& common = common_books();
    const std::size_t visited = common.scope_visited();
    const auto ticked = options_.peers->scope_after(*number, visited);
    common.revisit(*options_.ledger, may_cross(), ticked);
    scope_known_ = visited + ticked.size();
    common.set_scope_visited(scope_known_);
  }
  status_.state = SessionState::comparing;
  tell_stubs();
  // The position first: what is written in between is then sent once too often rather than never.
  cursor_ = options_.ledger->position();
  const auto& books = common_books();
  ours_.books = books.size();
  ours_.digest = books.digest();
  ours_.token = {};
  if (const auto agreement = options_.peers->agreement(*number)) ours_.token = agreement->token;
  send(ours_);
}

void Session::handle(const Standing& standing, ByteView) {
  if (!expect(status_.state == SessionState::comparing, "standing")) return;
  status_.state = SessionState::exchanging;
  if (standing.books == ours_.books && standing.digest == ours_.digest) {
    flowing_ = true;
  } else if (standing.token == ours_.token && ours_.token != AgreementToken{}) {
    cursor_ = options_.peers->agreement(status_.peer_number)->position;
    flowing_ = true;
  } else if (options_.side == Side::guest) {
    start_reconciling();
  }
  pump();
}

void Session::start_reconciling() {
  flowing_ = false;
  status_.state = SessionState::exchanging;
  have_.clear();
  need_.clear();
  offered_.clear();
  cursor_ = options_.ledger->position();
  reconciler_ = std::make_unique<Reconciler>(common_books().items(), kReconcileFrame);
  if (options_.side == Side::guest) send(Reconcile{reconciler_->initiate()});
}

void Session::doubt() {
  if (reconciler_) return;  // the same doubt; it is being settled
  // Reconciling anew mends what can be mended; what then still differs must not hold up the rest.
  if (doubts_ == kMostDoubts) {
    status_.at_odds = true;
    return;
  }
  ++doubts_;
  said_.reset();
  heard_.reset();
  if (options_.side == Side::guest) {
    start_reconciling();
  } else {
    send(Doubt{});
  }
}

void Session::handle(const Doubt&, ByteView) {
  if (expect(options_.side == Side::guest && open(), "doubt")) doubt();
}

void Session::handle(const Reconcile& step, ByteView) {
  if (!expect(open(), "reconcile")) return;
  if (!reconciler_ && options_.side == Side::host) start_reconciling();
  if (!expect(reconciler_ != nullptr, "reconcile")) return;
  auto answer = reconciler_->receive(step.message);
  if (!answer) return close(answer.error());
  if (options_.side == Side::host) {
    send(Reconcile{std::move(answer->reply)});
    return;
  }
  have_.insert(have_.end(), answer->have.begin(), answer->have.end());
  need_.insert(need_.end(), answer->need.begin(), answer->need.end());
  if (!answer->reply.empty()) {
    send(Reconcile{std::move(answer->reply)});
    return;
  }
  // Found: offer what we have with what we hold of it, and ask for the rest by its items. At least one, which also tells
  // the host that this is over.
  std::size_t offered = 0, asked = 0;
  const std::vector<BookInfo> have = common_->books_of(have_);
  do {
    Offer offer;
    for (; offered < have.size() && offer.books.size() < kBooksPerMessage; ++offered)
      offer.books.push_back({have[offered].id, have[offered].kind, options_.ledger->heads(have[offered].id)});
    // Wishes only after all offers: of a book that both changed, the host then knows what we hold before it sends any.
    for (; offered == have.size() && asked < need_.size() && offer.wanted.size() < kBooksPerMessage; ++asked) offer.wanted.push_back(need_[asked]);
    send(offer);
  } while (offered < have.size() || asked < need_.size());
  status_.books_expected = need_.size();
  reconciler_.reset();
  flowing_ = true;
  pump();
}

void Session::queue(const BookHeads& theirs) {
  const auto held = options_.ledger->book(theirs.book);
  if (!held || !may_send(held->id, held->kind) || lacking_.size() >= kMostLackingBooks) return;
  if (meet_forks(theirs)) return;
  lacking_.push_back(theirs);
}

void Session::handle(const Offer& offer, ByteView) {
  if (!expect(options_.side == Side::host && open(), "offer")) return;
  Holding holding;
  for (const BookHeads& theirs : offer.books) {
    holding.books.push_back({theirs.book, theirs.kind, options_.ledger->heads(theirs.book)});
    offered_.insert(theirs.book);
    queue(theirs);
  }
  if (!offer.wanted.empty())
    for (const BookInfo& book : common_books().books_of(offer.wanted))
      if (!offered_.contains(book.id)) queue({book.id, book.kind, {}});
  if (!holding.books.empty()) send(holding);
  reconciler_.reset();
  flowing_ = true;
  pump();
}

void Session::handle(const Holding& holding, ByteView) {
  if (!expect(open(), "holding")) return;
  for (const BookHeads& theirs : holding.books) queue(theirs);
  pump();
}

// ------------------------------------------------------------------------------------------------ entries both ways

void Session::pump() {
  if (!flowing_ || status_.state == SessionState::closed) return;
  // What is not held in common may not leave, or was made this moment.
  const CommonBooks* common = keeps_common() ? &common_books() : nullptr;
  const auto wanted = [&](const BookId& id) {
    if (common != nullptr && common->holds(id)) return true;
    const auto book = options_.ledger->book(id);
    return book && may_send(book->id, book->kind);
  };
  while (sent_ - acked_ < kBatchesInFlight) {
    Batch batch;
    if (!lacking_.empty()) {
      batch = options_.ledger->missing(lacking_, options_.batch_bytes);
    } else {
      if (cursor_ >= options_.ledger->position()) break;
      auto since = options_.ledger->since(cursor_, wanted, status_.peer_number, options_.batch_bytes);
      cursor_ = since.next;
      batch = std::move(since.batch);
    }
    if (batch.empty()) continue;  // only what may not go to this peer: both agree as before
    status_.state = SessionState::exchanging;
    status_.entries_sent += batch.entries.size();
    Entries entries{++sent_, std::move(batch)};
    if (protocol_ >= kProtocolWithPackedEntries) {
      send(PackedEntries{std::move(entries)});
    } else {
      send(std::move(entries));
    }
  }
  status_.all_sent = idle() && short_up_to_ == 0;
  // The first agreement of a session is what people wait for; later ones can wait for a quiet moment (tick), because the
  // digest over all common books costs more than one change.
  if (status_.all_sent && !status_.agreed) settle();
}

void Session::settle() {
  if (!idle()) return;
  offer_agreement();
  weigh_agreement();
}

bool Session::idle() const {
  return flowing_ && lacking_.empty() && sent_ == acked_ && cursor_ >= options_.ledger->position();
}

void Session::handle(const Entries& entries, ByteView) {
  if (!expect(open(), "entries")) return;
  if (options_.side == Side::host && status_.role == Role::reader)
    return close({FaultCode::refused, "a device in the role of reader sends changes", "exchange with " + status_.peer.device,
                  "ask the head of the room for another role"});
  if (entries.number != applied_ + 1)
    return close({FaultCode::malformed, "a batch out of order", "exchange", "end the exchange and try again"});
  std::vector<BookId> fresh;
  for (const auto& book : entries.batch.books) {
    received_.insert(book.id);
    if (options_.side == Side::guest && !options_.peers->in_scope(status_.peer_number, book.id)) fresh.push_back(book.id);
  }
  // What comes from a peer is shared with it from then on, by both sides alike.
  if (auto widened = options_.peers->widen(status_.peer_number, fresh); !widened) return close(widened.error());
  given_.insert(fresh.begin(), fresh.end());
  std::optional<Batch> rest;
  if (!held_back_.empty()) rest = without_held_back(entries.batch);
  const auto report = options_.ledger->ingest(rest ? *rest : entries.batch, status_.peer_number);
  if (!report) return close(report.error());
  ++applied_;
  status_.state = SessionState::exchanging;
  status_.entries_received += report->applied;
  status_.quarantined += report->quarantined;
  status_.books_received = received_.size();
  // The doubt first: whoever hears the answer knows then that the batch is not all there.
  if (report->gaps) doubt();
  const bool whole = !report->gaps && (!rest || rest->entries.size() == entries.batch.entries.size());
  if (whole || protocol_ < kProtocolWithPackedEntries) {
    send(Ack{applied_});
  } else {
    send(HeldBack{applied_});
  }
  after_ingest(entries.batch, *report);
  // Those that came into the scope but brought nothing new would not be looked at otherwise.
  if (!fresh.empty() && keeps_common()) common_books().revisit(*options_.ledger, may_cross(), fresh);
  pump();
}

void Session::handle(const PackedEntries& packed, ByteView frame) { handle(packed.entries, frame); }

void Session::handle(const Ack& ack, ByteView) { answered(ack.number, true); }

void Session::handle(const HeldBack& held_back, ByteView) { answered(held_back.number, false); }

void Session::answered(std::uint64_t number, bool whole) {
  if (number <= acked_ || number > sent_)
    return close({FaultCode::malformed, "an answer to a batch that was never sent", "exchange", "end the exchange and try again"});
  acked_ = number;
  // What was held back comes again later: only a later batch that is all there can make it good.
  if (!whole) {
    short_up_to_ = sent_;
  } else if (number > short_up_to_) {
    short_up_to_ = 0;
  }
  pump();
}

void Session::pump_new_scope() {
  if (options_.side != Side::guest || !flowing_) return;
  std::vector<BookId> ticked = options_.peers->scope_after(status_.peer_number, scope_known_);
  scope_known_ += ticked.size();
  std::erase_if(ticked, [&](const BookId& book) { return given_.contains(book); });
  if (ticked.empty()) return;
  common_books().revisit(*options_.ledger, may_cross(), ticked);
  Offer offer;
  for (const BookId& book : ticked) {
    if (const auto held = options_.ledger->book(book); held && common_->holds(book))
      offer.books.push_back({held->id, held->kind, options_.ledger->heads(book)});
    if (offer.books.size() == kBooksPerMessage) {
      send(offer);
      offer.books.clear();
    }
  }
  if (!offer.books.empty()) send(offer);
}

Session::Frames Session::changed() {
  return guarded([&] {
    if (!flowing_) return;
    tell_stubs();
    pump_new_scope();
    pump();
  });
}

Session::Frames Session::tick() {
  return guarded([&] { settle(); });
}

// ------------------------------------------------------------------------------------------------ agreement

void Session::offer_agreement() {
  Agree agree{sent_, applied_, {}};
  if (said_ && said_->sent == agree.sent && said_->applied == agree.applied) return;
  compare_stubs();
  agree.digest = common_books().digest();
  said_ = agree;
  send(agree);
}

void Session::handle(const Agree& agree, ByteView) {
  if (!expect(open(), "agree")) return;
  heard_ = agree;
  if (idle()) weigh_agreement();
}

void Session::weigh_agreement() {
  // Comparable only if both speak of the same moment: all that either sent is applied by the other.
  if (!heard_ || !said_ || heard_->sent != applied_ || heard_->applied != sent_ || said_->sent != sent_ || said_->applied != applied_) return;
  const Agree theirs = *heard_;
  heard_.reset();
  const auto& books = common_books();
  const Digest digest = books.digest();
  if (digest != theirs.digest) {
    // Ours may have changed since they spoke (a local action that was already sent on); then they will speak again.
    if (said_->digest == digest) doubt();
    return;
  }
  Agreement agreement;
  agreement.digest = digest;
  agreement.books = books.size();
  agreement.position = cursor_;
  agreement.at = options_.ledger->wall().now();
  const Digest named = digest_of({as_bytes("weavelog agreement 1"), handshake_, digest});
  std::copy_n(named.begin(), agreement.token.size(), agreement.token.begin());
  if (auto kept = options_.peers->agree(status_.peer_number, agreement); !kept) return close(kept.error());
  if (told_ > options_.peers->told(status_.peer_number))
    if (auto kept = options_.peers->tell(status_.peer_number, told_); !kept) return close(kept.error());
  status_.agreed = agreement;
  status_.at_odds = false;
  doubts_ = 0;
  status_.state = SessionState::agreed;
}

// ------------------------------------------------------------------------------------------------ invitations

Session::Frames Session::wish_invitation(Role role, UnixMs life) {
  return guarded([&] {
    if (open()) send(InvitationWish{static_cast<std::uint64_t>(role), life});
  });
}

void Session::handle(const InvitationWish& wish, ByteView) {
  if (!expect(options_.side == Side::host && open(), "invitation")) return;
  if (status_.role != Role::head)
    return close({FaultCode::refused, "only the head of the room invites devices", "exchange with " + status_.peer.device, ""});
  const auto role = role_from(wish.role);
  if (!role) return close(role.error());
  const auto invitation = options_.devices->invite(*role, wish.life_ms);
  if (!invitation) return close(invitation.error());
  send(InvitationGrant{wish.role, invitation->secret, invitation->expires});
}

void Session::handle(const InvitationGrant& grant, ByteView) {
  const auto role = role_from(grant.role);
  if (!expect(options_.side == Side::guest && role, "invitation")) return;
  status_.invitation = Invitation{grant.secret, *role, grant.expires_ms};
}

}  // namespace weavelog
