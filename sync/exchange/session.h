#pragma once
// Session: one exchange between two devices, without I/O. Frames in, frames out; a ledger, a list of devices and what is
// remembered of the peer beside it. A socket, a file or a simulator carries the frames.
//
//   guest                          host
//   Hello             ->
//                     <-           Hello
//   proof of key      ->                         (of an invitation's secret too, when pairing)
//                     <-           Welcome       (its own proof, and the guest's role)
//   Standing          <->          Standing      both: what I hold of the books in scope
//   ... since we last met, if both remember the same agreement; else Reconcile, Offer, Holding
//   Entries, Ack      <->          both ways, a few batches in flight, until nothing is lacking
//   Agree             <->          both: a digest of the common books; equal ones are remembered
//   Entries ...       <->          live, as things change

#include <cstdint>
#include <deque>
#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/store/ledger.h"
#include "sync/exchange/peer_store.h"
#include "sync/trust/device_list.h"
#include "sync/trust/role.h"
#include "sync/wire/messages.h"

namespace weavelog {

class Reconciler;

enum class Side : std::uint8_t { guest, host };

struct SessionOptions {
  Ledger* ledger = nullptr;
  DeviceList* devices = nullptr;
  PeerStore* peers = nullptr;
  Side side = Side::guest;
  Fingerprint certificate{};            ///< the host's, as this side sees it
  std::optional<PairingSecret> secret;  ///< guest: pair with it instead of being a member
  std::optional<PublicKey> expected;    ///< guest: the host must hold this key
  BookId event;                         ///< host: its event book
  /// Which books may go to the peer at all (consent, private kit). A host offers every book that may leave; a guest only
  /// those of them that are in the peer's scope.
  std::function<bool(const BookId&, BookKind)> may_leave = [](const BookId&, BookKind) { return true; };
  std::size_t batch_bytes = 192 * 1024;
};

enum class SessionState : std::uint8_t { greeting, proving, comparing, exchanging, agreed, closed };

/// For people: what stands where. Read it after every call.
struct SessionStatus {
  SessionState state = SessionState::greeting;
  std::optional<Fault> fault;     ///< why it closed
  AuthorCard peer;
  std::int64_t peer_number = 0;
  Role role = Role::reader;       ///< the guest's
  BookId event;                   ///< the host's event book
  std::int64_t clock_ahead_ms = 0;  ///< how far the peer's wall clock is ahead of ours
  std::uint64_t entries_sent = 0;
  std::uint64_t entries_received = 0;
  std::uint64_t books_expected = 0;  ///< books of which something is to come, once known
  std::uint64_t books_received = 0;
  std::uint64_t quarantined = 0;
  /// Some books can't be made equal: a device was copied and both copies wrote (fork), or one side may not hand a book on that
  /// the other still would. Everything else crosses; nothing is remembered as agreed.
  bool at_odds = false;
  bool all_sent = false;             ///< everything of ours is on the peer's disk
  std::optional<Agreement> agreed;   ///< the newest agreement of this session
  std::optional<Invitation> invitation;  ///< granted to a head that asked
};

/// Not thread-safe: one thread at a time. Must not outlive what the options point to.
class Session {
 public:
  explicit Session(SessionOptions options);
  ~Session();
  Session(const Session&) = delete;
  Session& operator=(const Session&) = delete;

  using Frames = std::vector<Bytes>;

  /// What to send at once; nothing for a host.
  [[nodiscard]] Frames start();
  /// Takes one frame in and gives those to send, a Refusal among them when it closes. After closing it gives nothing.
  [[nodiscard]] Frames receive(ByteView frame);
  /// The ledger has new entries, or the scope grew: sends what is to be sent.
  [[nodiscard]] Frames changed();
  /// Now and then (twice a second is good): says where we stand when things have been quiet.
  [[nodiscard]] Frames tick();
  /// A head asks for an invitation; the answer stands in the status.
  [[nodiscard]] Frames wish_invitation(Role role, UnixMs life);
  [[nodiscard]] const SessionStatus& status() const { return status_; }

 private:
  // One handler a message; `frame` is the bytes that it came in.
  void handle(const Hello& hello, ByteView frame);
  void handle(const MemberProof& proof, ByteView frame);
  void handle(const PairingProof& proof, ByteView frame);
  void handle(const Welcome& welcome, ByteView frame);
  void handle(const Refusal& refusal, ByteView frame);
  void handle(const Standing& standing, ByteView frame);
  void handle(const Reconcile& step, ByteView frame);
  void handle(const Doubt& doubt, ByteView frame);
  void handle(const Offer& offer, ByteView frame);
  void handle(const Holding& holding, ByteView frame);
  void handle(const Entries& entries, ByteView frame);
  void handle(const Ack& ack, ByteView frame);
  void handle(const Agree& agree, ByteView frame);
  void handle(const InvitationWish& wish, ByteView frame);
  void handle(const InvitationGrant& grant, ByteView frame);

  void send(const Message& message);
  void close(Fault fault);
  /// Closes as malformed if a message came out of turn.
  bool expect(bool in_turn, const char* message);
  [[nodiscard]] bool open() const;
  [[nodiscard]] Bytes own_hello() const;
  [[nodiscard]] bool guest_holds_key(const Signature& signature);
  void welcome(Role role, const Digest& host_proof);
  void begin_comparing();
  [[nodiscard]] std::vector<BookInfo> common_books() const;
  [[nodiscard]] bool may_send(const BookId& book, BookKind kind) const;
  void start_reconciling();
  void doubt();
  void queue(const BookHeads& theirs);
  void pump();
  void pump_new_scope();
  [[nodiscard]] bool idle() const;
  void settle();
  void offer_agreement();
  void weigh_agreement();
  template <class Step>
  [[nodiscard]] Frames guarded(Step step);

  SessionOptions options_;
  SessionStatus status_;
  Frames out_;
  Bytes guest_hello_, host_hello_;
  Digest handshake_{};
  Standing ours_;

  std::unique_ptr<Reconciler> reconciler_;
  std::unordered_map<std::string, BookInfo> reconciled_;  ///< by the item's digest
  std::vector<Digest> have_, need_;
  std::set<BookId> offered_;  ///< host: books of which the guest said what it holds since reconciling began
  int doubts_ = 0;

  std::deque<BookHeads> lacking_;  ///< books of which the peer lacks something, with what it holds
  std::int64_t cursor_ = 0;        ///< ledger position up to which everything is sent or queued
  bool flowing_ = false;
  std::set<BookId> scope_;         ///< guest: as known to this session
  std::uint64_t sent_ = 0, acked_ = 0, applied_ = 0;
  std::set<BookId> received_;
  std::optional<Agree> said_, heard_;
};

}  // namespace weavelog
