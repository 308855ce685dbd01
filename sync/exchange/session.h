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
//   Entries, Ack      <->          both ways, a few batches in flight, until nothing is lacking (HeldBack: not all of it was taken)
//   Agree             <->          both: a digest of the common books; equal ones are remembered
//   Entries ...       <->          live, as things change
//
// Pictures beside them, from protocol 4 on: content_exchange.h.
// Between them, from protocol 2 on (session_care.cpp): Stubs of forgotten books, before Standing and whenever there are new
// ones; Forks, where chains turn out to have parted; a head's wishes about devices and their answer.

#include <cstdint>
#include <deque>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <unordered_set>
#include <vector>

#include "core/base/salted_hash.h"
#include "core/store/ledger.h"
#include "sync/exchange/common_books.h"
#include "sync/exchange/content_exchange.h"
#include "sync/exchange/peer_store.h"
#include "sync/exchange/role_weigher.h"
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
  /// Which books may go to the peer at all (consent, private kit). An event server offers every book that may leave; a guest, and a
  /// tablet that plays the host, only those of them that are in the peer's scope.
  std::function<bool(const BookId&, BookKind)> may_leave = [](const BookId&, BookKind) { return true; };
  /// Set: what `may_leave` says of a book changes only with the book's entries and with what this gives, so that answers are kept from one
  /// session to the next until either changes. Not set: it is asked about every book at every comparison.
  std::function<LeaveRule()> leaves_by;
  /// Whether a book that was not held before this session may stay here, at an event of that room: a giver may be in error, or not honest.
  /// `settled`: everything that the peer has to say of it has come; before that only what no later word could change may say no. What may not
  /// stay is let go again, as far as this device did not write into it itself. Not set: whatever comes stays.
  std::function<bool(const BookId& book, BookKind kind, const BookId& room, bool settled)> may_stay;
  /// Host: says why it exchanges with nobody any more, if it does not.
  std::function<std::optional<Fault>()> over;
  /// Host: what guests may write and begin here.
  RoomRights rights;
  /// Host: where the guest comes from, without the port. Wrong codes are counted by it.
  std::string remote;
  /// Host: a tablet that plays the host, not an event server. Then it is scoped as a guest is: it offers only the books that this gives
  /// for the guest, asked when the guest has proved who it is and whenever the ledger changes, and those that the guest brings or shows
  /// that it holds. Whom else it knows the guest does not learn. Empty: every book that may leave.
  std::function<std::vector<BookId>(const PublicKey& guest)> shares;
  ContentRules contents;  ///< pictures; none are exchanged unless it says where they lie
  /// Of bodies; what proves them takes one and a half times as much at most. A batch that fits no frame all the same is halved.
  std::size_t batch_bytes = 192 * 1024;
  /// Told of every batch of entries before it goes, with the number that its answer will have: for who checks what peers confirm.
  std::function<void(std::uint64_t number, const Batch& batch)> sends;
  /// Frames of so many bytes are worth a thread that opens them before their turn (Session::receive); smaller ones are opened sooner than it begins.
  std::size_t worth_opening_ahead = 4 * 1024;
  std::uint32_t newest_protocol = kNewestProtocol;  ///< lower ones: to speak as an earlier program does
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
  std::uint64_t entries_to_send = 0;    ///< sent, and known to be lacking there; grows while that is being found out
  std::uint64_t entries_confirmed = 0;  ///< of them, answered: on the peer's disk, but for what it held back
  std::uint64_t entries_received = 0;
  std::uint64_t books_expected = 0;  ///< books of which something is to come, once known
  std::uint64_t books_received = 0;
  std::uint64_t quarantined = 0;
  /// Some books can't be made equal, such as one that only one side may hand on (forks are left out of what is compared, where both
  /// speak of them). Everything else crosses; nothing is remembered as agreed.
  bool at_odds = false;
  std::uint64_t forgotten = 0;      ///< players erased here because the peer passed on that they withdrew
  std::uint64_t not_kept = 0;       ///< books that the peer gave and that may not be here: let go again
  /// Host: books that the guest brought and may not begin here (RoomRights::may_begin), left out. Guest: books of which the host holds nothing
  /// after all of them was sent to it: it did not begin them, or let them go again.
  std::uint64_t not_begun = 0;
  std::uint64_t forks = 0;          ///< chains of which each side holds another branch
  std::vector<std::string> wrong_clocks;  ///< devices whose entries came with stamps far ahead of our clock
  std::optional<std::vector<EnrolledDevice>> devices;  ///< the host's, told to a head that asked
  bool all_sent = false;             ///< everything of ours is on the peer's disk
  std::optional<Agreement> agreed;   ///< the newest agreement of this session
  std::optional<Invitation> invitation;  ///< granted to a head that asked
  std::vector<ContentFetch> fetches;     ///< contents that are wanted here
  std::uint64_t contents_sent = 0, contents_received = 0;  ///< whole ones
  /// Guest: of what was made here so many are not known to be with the host; nothing until all entries are.
  std::optional<std::uint64_t> contents_unsettled;
  bool next_opened = false;  ///< the frame that comes next is being taken apart, or was, before its turn
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
  /// Takes one frame in and gives those to send, a Refusal among them when it closes. After closing it gives nothing. `next` is the frame
  /// that comes after it, if it has come already: that one is taken apart on another thread meanwhile. If another one is received then
  /// after all, nothing is lost but the work.
  [[nodiscard]] Frames receive(ByteView frame, ByteView next = {});
  /// The ledger has new entries, or the scope grew: sends what is to be sent.
  [[nodiscard]] Frames changed();
  /// Now and then (twice a second is good): says where we stand when things have been quiet.
  [[nodiscard]] Frames tick();
  /// A head asks for an invitation; the answer stands in the status.
  [[nodiscard]] Frames wish_invitation(Role role, UnixMs life);
  /// A head asks who is enrolled, or has a device revoked; the host's list stands in the status afterwards.
  [[nodiscard]] Frames wish_devices();
  [[nodiscard]] Frames wish_revocation(const PublicKey& device);
  /// A head gives a device another name (empty: its own) or role (none: its own).
  [[nodiscard]] Frames wish_change(const PublicKey& device, const std::string& name, std::optional<Role> role);
  /// Somebody here wants a content; how it goes stands in the status. A host's is asked of this peer and given up as soon as it does not have it.
  [[nodiscard]] Frames fetch(const BookId& book, const Digest& hash);
  [[nodiscard]] const SessionStatus& status() const { return status_; }

 private:
  /// Of stubs, from one tick to the next.
  static constexpr std::size_t kStubBytesAtOnce = 2 * 1024 * 1024;
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
  void handle(const PackedEntries& packed, ByteView frame);
  void handle(const Ack& ack, ByteView frame);
  void handle(const Agree& agree, ByteView frame);
  void handle(const InvitationWish& wish, ByteView frame);
  void handle(const InvitationGrant& grant, ByteView frame);
  void handle(const Stubs& stubs, ByteView frame);
  void handle(const Forks& forks, ByteView frame);
  void handle(const DevicesWish& wish, ByteView frame);
  void handle(const RevocationWish& wish, ByteView frame);
  void handle(const Devices& devices, ByteView frame);
  void handle(const StubsKnown& known, ByteView frame);
  void handle(const HeldBack& held_back, ByteView frame);
  void handle(const ContentWish& wish, ByteView frame);
  void handle(const ContentPart& part, ByteView frame);
  void handle(const ContentAbsent& absent, ByteView frame);
  void handle(const ContentOffer& offer, ByteView frame);
  void handle(const ContentSettled& settled, ByteView frame);
  void handle(const DeviceChange& change, ByteView frame);

  void send(const Message& message);
  /// False, and the batch as it was, if it fits no frame.
  bool send_entries(Batch& batch);
  /// Undoes that the batch was taken out of what the peer lacks.
  void put_back(const Batch& batch);
  void close(Fault fault);
  void open_ahead(ByteView frame);
  [[nodiscard]] Outcome<Message> opened(ByteView frame);
  /// Closes as malformed if a message came out of turn.
  bool expect(bool in_turn, const char* message);
  [[nodiscard]] bool open() const;
  [[nodiscard]] Bytes own_hello() const;
  [[nodiscard]] bool guest_holds_key(const Signature& signature);
  void welcome(Role role, const Digest& host_proof);
  void begin_comparing();
  /// Nothing of this peer's own decides what is compared: neither books that it declined nor chains that have parted.
  [[nodiscard]] bool keeps_common() const;
  /// Up to date.
  [[nodiscard]] CommonBooks& common_books();
  [[nodiscard]] CommonBooks::MayCross may_cross() const;
  /// By the rules of the place, and unless the peer declined it.
  [[nodiscard]] bool may_leave(const BookId& book, BookKind kind) const;
  [[nodiscard]] bool may_send(const BookId& book, BookKind kind) const;
  void start_reconciling();
  void doubt();
  void doubt_once_more();
  void compare_anew();
  void send_offers();
  void take_changes();
  void queue(const BookHeads& theirs);
  void pump();
  /// A guest, or a tablet that plays the host: only books of the peer's scope cross.
  [[nodiscard]] bool scoped() const { return options_.side == Side::guest || options_.shares; }
  bool widen_shared();
  bool widen_offered(const std::vector<BookHeads>& theirs);
  /// Whether the guest of a tablet shows that it has of a book what others wrote, and not only its number.
  [[nodiscard]] bool shows_heads(const BookHeads& theirs) const;
  /// Held here, not ticked, and the peer has it from somewhere: neither side learns more of it than the peer said (session_scope.cpp).
  [[nodiscard]] bool kept_apart(const BookId& book) const;
  /// What the peer is told that we hold of a book.
  [[nodiscard]] Heads told_heads(const BookId& book) const;
  /// As many as one message bears. Those that are left out stand for chains of which nothing is known: they come once too often.
  [[nodiscard]] static Heads as_told(Heads heads);
  void pump_new_scope();
  [[nodiscard]] bool idle() const;
  void settle();
  void offer_agreement();
  void tell_stubs();
  void compare_stubs();
  /// Not all stubs went to the peer that have to: a part goes with every tick.
  [[nodiscard]] bool telling_stubs() const { return more_stubs_ || all_stubs_after_; }
  [[nodiscard]] std::vector<Stub> bounded(std::vector<Stub> stubs);
  [[nodiscard]] StubsKnown stubs_known();
  void answered(std::uint64_t number, bool whole);
  [[nodiscard]] bool entitled(const Stub& stub) const;
  void check_membership();
  /// What the guest, or a key that nobody here knows, says and may not, if anything.
  [[nodiscard]] std::optional<Fault> beyond_role(const Batch& batch);
  void count_exchanged(const Batch& batch, bool sent);
  void note_exchanged();
  void answer_devices();
  /// What is compared of a book: its heads without chains that have parted.
  [[nodiscard]] Digest compared(const BookInfo& book) const;
  void weigh_apart(const BookHeads& theirs);
  /// The peer holds nothing of it any more, so it is not compared until it brings something again. False if the session closed.
  bool forget_apart(const BookId& book);
  /// True if the books' chains have parted and all that has to be sent because of it is queued.
  bool meet_forks(const BookHeads& theirs);
  void note_forks(const BookId& book, const std::vector<AuthorId>& authors);
  [[nodiscard]] Batch without_held_back(const Batch& batch);
  void note_not_begun(const BookId& book);
  void note_brought(const Batch& batch);
  bool let_go_of_brought(bool settled);
  void leave() noexcept;
  void after_ingest(const Batch& batch, const IngestReport& report);
  void weigh_agreement();
  void open_contents();
  void offer_contents();
  template <class M> void pass_contents(const M& message);
  [[nodiscard]] Frames guarded(const std::function<void()>& step);

  SessionOptions options_;
  SessionStatus status_;
  Frames out_;
  struct Ahead;
  std::unique_ptr<Ahead> ahead_;  ///< the frame that was opened before its turn
  Bytes guest_hello_, host_hello_;
  Digest handshake_{};
  Standing ours_;

  std::unique_ptr<Reconciler> reconciler_;
  std::vector<Digest> have_, need_;
  std::set<BookId> offered_;  ///< host: books of which the guest said what it holds since reconciling began
  int doubts_ = 0;           ///< since something that was lacking here came, or both agreed
  bool doubt_said_ = false;  ///< host: and the guest has not begun to reconcile yet
  std::deque<BatchBook> to_offer_;  ///< guest: books of which the host is still to be told what is held here
  std::size_t asked_ = 0;           ///< of need_
  std::size_t holdings_due_ = 0;    ///< guest: books offered of which the host did not say yet what it holds
  std::int64_t compared_at_ = 0;    ///< at odds: the ledger's position when both last found out what is lacking
  int ticks_at_odds_ = 0;           ///< since then
  bool changed_unseen_ = false;     ///< something changed while both compared
  std::int64_t agreed_position_ = 0;  ///< that goes with the token in ours_

  std::deque<BookHeads> lacking_;  ///< books of which the peer lacks something, with what it holds
  std::int64_t cursor_ = 0;        ///< ledger position up to which everything is sent or queued
  bool flowing_ = false;
  std::size_t batch_bytes_ = 0;
  std::uint32_t protocol_ = kOldestProtocol;  ///< the newest that both speak
  std::int64_t told_ = 0;                     ///< stubs up to this number went to the peer
  StubsKnown stubs_;                          ///< over our stubs up to this number
  std::int64_t stubs_up_to_ = 0;
  std::optional<StubsKnown> stubs_said_, all_stubs_told_;
  bool more_stubs_ = false;                     ///< behind told_
  std::optional<std::int64_t> all_stubs_after_;  ///< all are told once more; those up to this number went
  bool stubs_asked_ = false;                    ///< the peer said what it knows while it was still being told
  std::size_t stub_bytes_ = kStubBytesAtOnce;                      ///< that may go before the next tick
  std::set<BookId> declined_;                 ///< the peer has forgotten these, we have not
  std::map<BookId, std::set<AuthorId>> forks_;  ///< chains of which the peer holds another branch
  std::set<BookId> held_back_;  ///< our own chain has parted there: nothing is taken until the other branch has come
  std::set<BookId> brought_;    ///< not held before this session, and not weighed yet
  std::map<BookId, Heads> apart_;  ///< see kept_apart: what the peer said of each
  std::map<BookId, std::set<AuthorId>> apart_forks_;  ///< chains of these that have parted by what the peer says: neither compares them now
  std::optional<RoleWeigher> weigher_;
  std::set<BookId> not_kept_;   ///< weighed: nothing of them is taken in this session any more
  std::set<BookId> not_begun_;  ///< see SessionStatus::not_begun
  std::uint64_t revocations_seen_ = 0;
  std::shared_ptr<CommonBooks> common_;
  std::optional<BookId> common_room_;  ///< of the one that is kept from one session to the next; none: it is this session's own
  std::size_t scope_known_ = 0;    ///< scoped: how much of the scope the peer has been told or has told
  std::unordered_set<BookId, SaltedIdHash> given_;  ///< scoped: books that came into the scope by the peer
  std::uint64_t sent_ = 0, acked_ = 0, applied_ = 0;
  struct Sent {
    std::uint64_t entries;
    std::vector<BookId> books;
  };
  std::deque<Sent> in_flight_;  ///< each batch that has no answer yet
  std::set<BookId> came_short_;  ///< books of batches of which the peer held something back
  std::uint64_t lacking_entries_ = 0;    ///< about so many stand behind lacking_
  std::uint64_t short_up_to_ = 0;  ///< of batches up to this number the peer held something back
  std::set<BookId> received_;
  std::map<BookId, ExchangedCount> exchanged_;  ///< since it was last noted, of books about a person
  int uncounted_ = 0;                           ///< batches since then
  std::optional<Agree> said_, heard_;
  ContentExchange contents_;
};

}  // namespace weavelog
