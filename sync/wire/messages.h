#pragma once
// Everything that two devices say to each other. The same messages travel over a socket, in a file and in tests.

#include <array>
#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "core/base/outcome.h"
#include "core/log/batch.h"
#include "core/store/ledger.h"
#include "sync/trust/pairing.h"

namespace weavelog {

/// Protocol versions that this program speaks. A pair of devices uses the newest that both speak.
inline constexpr std::uint32_t kOldestProtocol = 1;
inline constexpr std::uint32_t kNewestProtocol = 5;
/// From here on devices tell each other of forgotten books and of forks, and heads manage devices over the wire.
inline constexpr std::uint32_t kProtocolWithStubs = 2;
/// From here on entries travel as PackedEntries, and devices compare which books they know to be forgotten, and say what they held back.
inline constexpr std::uint32_t kProtocolWithPackedEntries = 3;
/// From here on devices hand each other what lies beside the log: pictures.
inline constexpr std::uint32_t kProtocolWithContents = 4;
/// From here on heads rename devices and change their roles over the wire.
inline constexpr std::uint32_t kProtocolWithDeviceChanges = 5;
/// Bytes of a content that travel in one message; the last ones may be fewer.
inline constexpr std::size_t kContentPartBytes = 64 * 1024;

using Nonce = std::array<std::uint8_t, 32>;
/// Names one agreement between two devices; all zero: they never agreed, or do not remember.
using AgreementToken = std::array<std::uint8_t, 16>;

/// First word of both sides. Its form never changes: newer versions put what they add into `extra`.
struct Hello {
  std::uint32_t oldest = kOldestProtocol;
  std::uint32_t newest = kNewestProtocol;
  AuthorCard card;
  Nonce nonce{};
  std::int64_t wall_ms = 0;  ///< the sender's wall clock, so that a wrong one is noticed
  Bytes extra;
  bool operator==(const Hello&) const = default;
};

/// The guest holds the key of its card; enrolled before.
struct MemberProof {
  Signature signature{};
  bool operator==(const MemberProof&) const = default;
};

/// The guest holds the key and knows the secret of an invitation.
struct PairingProof {
  Signature signature{};
  InvitationNumber invitation{};
  Digest proof{};
  bool operator==(const PairingProof&) const = default;
};

/// The host's proof and what it makes of the guest.
struct Welcome {
  Signature signature{};
  std::uint64_t role = 0;
  Digest pairing_proof{};  ///< zero unless pairing
  BookId event;            ///< the host's event book; none if it has none
  bool operator==(const Welcome&) const = default;
};

/// Why the sender ends the exchange.
struct Refusal {
  std::uint8_t code = 0;  ///< FaultCode
  std::string what;
  std::string what_to_do;
  bool operator==(const Refusal&) const = default;
};

/// What the sender holds of the books in scope, before anything is sent.
struct Standing {
  AgreementToken token{};
  std::uint64_t books = 0;
  Digest digest{};
  bool operator==(const Standing&) const = default;
};

/// One step of set reconciliation; the guest speaks first.
struct Reconcile {
  Bytes message;
  bool operator==(const Reconcile&) const = default;
};

/// The sender can't trust what was remembered: the guest is to reconcile anew.
struct Doubt {
  bool operator==(const Doubt&) const = default;
};

/// Books of which the sender has something that the receiver may lack, and items of the receiver's that it wants.
struct Offer {
  std::vector<BookHeads> books;
  std::vector<Digest> wanted;
  bool operator==(const Offer&) const = default;
};

/// The answer: what the sender holds of those books.
struct Holding {
  std::vector<BookHeads> books;
  bool operator==(const Holding&) const = default;
};

struct Entries {
  std::uint64_t number = 0;  ///< counts from 1 in each direction of a session
  Batch batch;
  bool operator==(const Entries&) const = default;
};

/// The same in fewer bytes (sync/wire/entry_columns.h).
struct PackedEntries {
  Entries entries;
  bool operator==(const PackedEntries&) const = default;
};

/// The batch of that number is on the sender's disk.
struct Ack {
  std::uint64_t number = 0;
  bool operator==(const Ack&) const = default;
};

/// The sender has nothing more to send. `sent` and `applied` say of which state of both sides `digest` speaks.
struct Agree {
  std::uint64_t sent = 0;
  std::uint64_t applied = 0;
  Digest digest{};
  bool operator==(const Agree&) const = default;
};

/// A head asks the host for an invitation; the host answers with its secret.
struct InvitationWish {
  std::uint64_t role = 0;
  std::int64_t life_ms = 0;
  bool operator==(const InvitationWish&) const = default;
};
struct InvitationGrant {
  std::uint64_t role = 0;
  PairingSecret secret{};
  std::int64_t expires_ms = 0;
  bool operator==(const InvitationGrant&) const = default;
};

/// Books that were forgotten, which the receiver may hold.
struct Stubs {
  std::vector<Stub> stubs;
  bool operator==(const Stubs&) const = default;
};

/// The sender holds another branch of these authors' chains: the receiver is to send it what lies beyond `heads`, which leave
/// those authors out, so that both branches are in both places.
struct ForkNotice {
  BookHeads heads;
  std::vector<AuthorId> authors;
  bool operator==(const ForkNotice&) const = default;
};
struct Forks {
  std::vector<ForkNotice> forks;
  bool operator==(const Forks&) const = default;
};

/// A head asks the host who is enrolled, or has one of them revoked; the host answers with the list.
struct DevicesWish {
  bool operator==(const DevicesWish&) const = default;
};
struct RevocationWish {
  PublicKey key{};
  bool operator==(const RevocationWish&) const = default;
};
struct DeviceLine {
  PublicKey key{};
  std::string name;
  std::uint64_t role = 0;
  std::int64_t since_ms = 0;
  std::int64_t revoked_ms = 0;  ///< 0: it is not
  std::uint64_t late_entries = 0;
  bool operator==(const DeviceLine&) const = default;
};
struct Devices {
  std::vector<DeviceLine> devices;
  bool operator==(const Devices&) const = default;
};

/// The place in this list is the message's number on the wire: add at the end, never reorder.
/// How many books the sender knows to be forgotten, and a sum over them, once it has told what it has to tell. If the receiver's
/// differ, each sends all of its stubs: one of them went on from an old copy of its files, or is a second device with the same key.
struct StubsKnown {
  std::uint64_t count = 0;
  std::array<std::uint8_t, 16> sum{};
  bool operator==(const StubsKnown&) const = default;
};

/// Instead of an Ack: of the batch of that number a part is not on the sender's disk, and has to come again.
struct HeldBack {
  std::uint64_t number = 0;
  bool operator==(const HeldBack&) const = default;
};

/// Asks for a part of a content (a picture of the book) from `offset` on. One is asked for at a time.
struct ContentWish {
  BookId book;
  Digest hash{};
  std::uint64_t offset = 0;
  bool operator==(const ContentWish&) const = default;
};
/// The answer: kContentPartBytes from there, or what is left. No bytes: `offset` lies at the end or beyond.
struct ContentPart {
  BookId book;
  Digest hash{};
  std::uint64_t size = 0;  ///< of the whole
  std::uint64_t offset = 0;
  Bytes bytes;
  bool operator==(const ContentPart&) const = default;
};
/// The other answer. Whoever does not know a reason takes it for `refused`.
enum class WhyAbsent : std::uint8_t { not_here = 0, sought = 1, refused = 2 };
struct ContentAbsent {
  BookId book;
  Digest hash{};
  std::uint64_t why = 0;  ///< WhyAbsent; sought: the host asks others who are connected, ask again in a while
  bool operator==(const ContentAbsent&) const = default;
};
/// A guest made these, and all entries that name them are on the host's disk.
struct OfferedContent {
  BookId book;
  Digest hash{};
  std::uint64_t size = 0;
  bool operator==(const OfferedContent&) const = default;
};
struct ContentOffer {
  std::vector<OfferedContent> contents;
  bool operator==(const ContentOffer&) const = default;
};
/// Of all that the guest offered in this session so many are with the host, or will not be asked for.
struct ContentSettled {
  std::uint64_t count = 0;
  bool operator==(const ContentSettled&) const = default;
};

/// A head gives a device another name or role; the answer is Devices.
struct DeviceChange {
  PublicKey key{};
  std::string name;        ///< empty: it keeps its own
  std::uint64_t role = 0;  ///< 0: it keeps its own
  bool operator==(const DeviceChange&) const = default;
};

using Message = std::variant<Hello, MemberProof, PairingProof, Welcome, Refusal, Standing, Reconcile, Doubt, Offer, Holding, Entries,
                             Ack, Agree, InvitationWish, InvitationGrant, Stubs, Forks, DevicesWish, RevocationWish, Devices, PackedEntries, StubsKnown, HeldBack,
                             ContentWish, ContentPart, ContentAbsent, ContentOffer, ContentSettled, DeviceChange>;

/// What a message of either form carries; null if it is another.
[[nodiscard]] const Entries* entries_in(const Message& message);
[[nodiscard]] Entries* entries_in(Message& message);

/// Bounds of a frame: as it crosses, and inflated.
inline constexpr std::size_t kMaxFrameBytes = 1024 * 1024;
inline constexpr std::size_t kMaxInflatedBytes = 4 * 1024 * 1024;
/// A hello's `extra` is for later versions, and a long name in it is compressed.
inline constexpr std::size_t kMaxGreetingBytes = 16 * 1024;

/// One frame: version (1 byte), number of the message (1 byte, highest bit: compressed), then the message, or its inflated
/// length (varint) and zstd data. Throws std::length_error on a message that fits no frame.
[[nodiscard]] Bytes encode_frame(const Message& message);
/// Fault: malformed (what is wrong with it), newer (a frame version or a message that this program does not know).
[[nodiscard]] Outcome<Message> decode_frame(ByteView frame);
/// The same for a frame of somebody who has not proved who it is: Hello, proofs, Welcome and Refusal only, of at most kMaxGreetingBytes, inflated
/// too, so that strangers cost nothing. Everything else is malformed, unread.
[[nodiscard]] Outcome<Message> decode_greeting(ByteView frame);

}  // namespace weavelog
