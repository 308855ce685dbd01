#include "sync/wire/messages.h"

#include <zstd.h>

#include <memory>
#include <new>
#include <stdexcept>

#include "core/log/archive.h"
#include "core/log/device_name.h"
#include "sync/wire/entry_columns.h"

namespace weavelog {

// What each message says, in order. The order is the format.
void CEREAL_SAVE_FUNCTION_NAME(OutArchive& ar, const AuthorCard& m) { ar(m.key, m.incarnation, m.device); }
/// The name is no part of what is signed, so it may be cut: it goes into logs, onto screens, and with every batch on to others.
void CEREAL_LOAD_FUNCTION_NAME(InArchive& ar, AuthorCard& m) {
  ar(m.key, m.incarnation);
  m.device = shown_name(as_text(ar.sized(kMaxDeviceNameThatComes)));
}
template <class A> void serialize(A& ar, Head& m) { ar(m.author, m.seq, m.hash); }
template <class A> void serialize(A& ar, BookHeads& m) { ar(m.book, m.kind, m.heads); }
void CEREAL_SAVE_FUNCTION_NAME(OutArchive& ar, const Seal& m) { ar(m.book, m.author, m.seq, m.signature, m.tail); }
/// Whoever takes a chain in hands its tail on: a longer one would fit no frame beside what it proves.
void CEREAL_LOAD_FUNCTION_NAME(InArchive& ar, Seal& m) {
  ar(m.book, m.author, m.seq, m.signature);
  m.tail.resize(ar.count(sizeof(Digest), kMaxTail));
  for (Digest& digest : m.tail) ar(digest);
}
template <class A> void serialize(A& ar, BatchBook& m) { ar(m.id, m.kind); }
template <class A> void serialize(A& ar, BatchEntry& m) { ar(m.book, m.author, m.seq, m.body); }
template <class A> void serialize(A& ar, Batch& m) { ar(m.authors, m.books, m.entries, m.seals); }
template <class A> void serialize(A& ar, Hello& m) { ar(m.oldest, m.newest, m.card, m.nonce, m.wall_ms, m.extra); }
template <class A> void serialize(A& ar, MemberProof& m) { ar(m.signature); }
template <class A> void serialize(A& ar, PairingProof& m) { ar(m.signature, m.invitation, m.proof); }
template <class A> void serialize(A& ar, Welcome& m) { ar(m.signature, m.role, m.pairing_proof, m.event); }
template <class A> void serialize(A& ar, Refusal& m) { ar(m.code, m.what, m.what_to_do); }
template <class A> void serialize(A& ar, Standing& m) { ar(m.token, m.books, m.digest); }
template <class A> void serialize(A& ar, Reconcile& m) { ar(m.message); }
template <class A> void serialize(A&, Doubt&) {}
template <class A> void serialize(A& ar, Offer& m) { ar(m.books, m.wanted); }
template <class A> void serialize(A& ar, Holding& m) { ar(m.books); }
template <class A> void serialize(A& ar, Entries& m) { ar(m.number, m.batch); }
void CEREAL_SAVE_FUNCTION_NAME(OutArchive& ar, const PackedEntries& m) {
  const Batch& batch = m.entries.batch;
  ar(m.entries.number, batch.authors, batch.books);
  save_entries(ar, batch);
  ar(batch.seals);
}
void CEREAL_LOAD_FUNCTION_NAME(InArchive& ar, PackedEntries& m) {
  Batch& batch = m.entries.batch;
  ar(m.entries.number, batch.authors, batch.books);
  load_entries(ar, batch);
  ar(batch.seals);
}
template <class A> void serialize(A& ar, Ack& m) { ar(m.number); }
template <class A> void serialize(A& ar, Agree& m) { ar(m.sent, m.applied, m.digest); }
template <class A> void serialize(A& ar, InvitationWish& m) { ar(m.role, m.life_ms); }
template <class A> void serialize(A& ar, InvitationGrant& m) { ar(m.role, m.secret, m.expires_ms); }
template <class A> void serialize(A& ar, Stub& m) { ar(m.book, m.kind, m.at, m.key, m.device, m.signature); }
template <class A> void serialize(A& ar, Stubs& m) { ar(m.stubs); }
template <class A> void serialize(A& ar, ForkNotice& m) { ar(m.heads, m.authors); }
template <class A> void serialize(A& ar, Forks& m) { ar(m.forks); }
template <class A> void serialize(A&, DevicesWish&) {}
template <class A> void serialize(A& ar, RevocationWish& m) { ar(m.key); }
template <class A> void serialize(A& ar, DeviceLine& m) { ar(m.key, m.name, m.role, m.since_ms, m.revoked_ms, m.late_entries); }
template <class A> void serialize(A& ar, Devices& m) { ar(m.devices); }
template <class A> void serialize(A& ar, StubsKnown& m) { ar(m.count, m.sum); }
template <class A> void serialize(A& ar, HeldBack& m) { ar(m.number); }
template <class A> void serialize(A& ar, ContentWish& m) { ar(m.book, m.hash, m.offset); }
template <class A> void serialize(A& ar, ContentPart& m) { ar(m.book, m.hash, m.size, m.offset, m.bytes); }
template <class A> void serialize(A& ar, ContentAbsent& m) { ar(m.book, m.hash, m.why); }
template <class A> void serialize(A& ar, OfferedContent& m) { ar(m.book, m.hash, m.size); }
template <class A> void serialize(A& ar, ContentOffer& m) { ar(m.contents); }
template <class A> void serialize(A& ar, ContentSettled& m) { ar(m.count); }
template <class A> void serialize(A& ar, DeviceChange& m) { ar(m.key, m.name, m.role); }

namespace {

constexpr std::uint8_t kFrameVersion = 1;
constexpr std::uint8_t kCompressed = 0x80;
// Below this zstd seldom wins, and small messages stay readable in a capture.
constexpr std::size_t kWorthCompressing = 256;
// Time that the sender spends for fewer bytes: on large ones it pays.
constexpr int level_for(std::size_t bytes) { return bytes < 16 * 1024 ? 3 : 9; }

/// Small messages are the most, and making what zstd works in takes longer than compressing one; for large ones it would also hold on
/// to megabytes.
constexpr std::size_t kKeptUpTo = 64 * 1024;

std::size_t deflate(Bytes& packed, const Bytes& body) {
  const int level = level_for(body.size());
  if (body.size() > kKeptUpTo) return ZSTD_compress(packed.data(), packed.size(), body.data(), body.size(), level);
  static thread_local const std::unique_ptr<ZSTD_CCtx, decltype(&ZSTD_freeCCtx)> kept(ZSTD_createCCtx(), &ZSTD_freeCCtx);
  if (!kept) throw std::bad_alloc();
  return ZSTD_compressCCtx(kept.get(), packed.data(), packed.size(), body.data(), body.size(), level);
}

template <std::size_t Number = 0>
Message load_message(InArchive& ar, std::size_t number) {
  if constexpr (Number < std::variant_size_v<Message>) {
    if (number != Number) return load_message<Number + 1>(ar, number);
    std::variant_alternative_t<Number, Message> message;
    ar(message);
    ar.expect_end();
    return message;
  } else {
    throw ArchiveError("no such message");
  }
}

Outcome<Bytes> inflate(ByteView packed, std::size_t most) {
  try {
    InArchive ar(packed);
    const std::uint64_t size = ar.varint();
    if (size > most) throw ArchiveError("inflates beyond the limit");
    const ByteView data = ar.take(ar.left());
    // The frame's own idea of its size is asked first, so that a short frame can't make us allocate megabytes for nothing.
    if (ZSTD_getFrameContentSize(data.data(), data.size()) != size) throw ArchiveError("a compressed size that is not true");
    Bytes out(static_cast<std::size_t>(size));
    const std::size_t got = ZSTD_decompress(out.data(), out.size(), data.data(), data.size());
    if (ZSTD_isError(got) != 0 || got != size) throw ArchiveError("compressed data is damaged");
    return out;
  } catch (const ArchiveError& error) {
    return fail(FaultCode::malformed, error.what(), "frame");
  }
}

}  // namespace

const Entries* entries_in(const Message& message) {
  if (const auto* packed = std::get_if<PackedEntries>(&message)) return &packed->entries;
  return std::get_if<Entries>(&message);
}

Entries* entries_in(Message& message) { return const_cast<Entries*>(entries_in(std::as_const(message))); }

Bytes encode_frame(const Message& message) {
  Bytes body;
  OutArchive ar(body);
  std::visit([&](const auto& held) { ar(held); }, message);
  if (body.size() > kMaxInflatedBytes) throw std::length_error("a message that fits no frame");
  Bytes frame{kFrameVersion, static_cast<std::uint8_t>(message.index())};
  OutArchive out(frame);
  // Pictures are compressed already.
  if (body.size() >= kWorthCompressing && !std::holds_alternative<ContentPart>(message)) {
    Bytes packed(ZSTD_compressBound(body.size()));
    const std::size_t size = deflate(packed, body);
    if (ZSTD_isError(size) == 0 && size + 4 < body.size()) {
      frame[1] |= kCompressed;
      out.varint(body.size());
      out.raw({packed.data(), size});
      if (frame.size() > kMaxFrameBytes) throw std::length_error("a message that fits no frame");
      return frame;
    }
  }
  out.raw(body);
  if (frame.size() > kMaxFrameBytes) throw std::length_error("a message that fits no frame");
  return frame;
}

namespace {

/// What it takes to prove who one is, or to say that there will be no exchange.
bool greets(std::size_t number) {
  return number == Message(Hello{}).index() || number == Message(MemberProof{}).index() || number == Message(PairingProof{}).index() ||
         number == Message(Welcome{}).index() || number == Message(Refusal{}).index();
}

Outcome<Message> decode_frame(ByteView frame, bool stranger) {
  const std::size_t most_inflated = stranger ? kMaxGreetingBytes : kMaxInflatedBytes;
  if (frame.size() < 2) return fail(FaultCode::malformed, "ends too early", "frame");
  if (frame.size() > (stranger ? kMaxGreetingBytes : kMaxFrameBytes)) return fail(FaultCode::malformed, "larger than the limit", "frame");
  const std::string update = "update Weavelog on the older of the two devices";
  if (frame[0] != kFrameVersion) return fail(FaultCode::newer, "a frame of version " + std::to_string(frame[0]), "frame", update);
  const std::size_t number = frame[1] & 0x7f;
  if (number >= std::variant_size_v<Message>)
    return fail(FaultCode::newer, "a message that this version does not know (" + std::to_string(number) + ")", "frame", update);
  if (stranger && !greets(number))
    return fail(FaultCode::malformed, "a message out of turn: the device has not proved who it is", "message " + std::to_string(number),
                "end the exchange and try again");
  ByteView body = frame.subspan(2);
  Bytes inflated;
  if ((frame[1] & kCompressed) != 0) {
    auto plain = inflate(body, most_inflated);
    if (!plain) return fail(plain.error());
    inflated = std::move(*plain);
    body = inflated;
  }
  try {
    InArchive ar(body);
    return load_message(ar, number);
  } catch (const ArchiveError& error) {
    return fail(FaultCode::malformed, error.what(), "message " + std::to_string(number));
  }
}

}  // namespace

Outcome<Message> decode_frame(ByteView frame) { return decode_frame(frame, false); }
Outcome<Message> decode_greeting(ByteView frame) { return decode_frame(frame, true); }

}  // namespace weavelog
