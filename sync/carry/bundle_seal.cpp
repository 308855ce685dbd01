#include "sync/carry/bundle_seal.h"

#include <sodium.h>

#include <algorithm>
#include <cstring>
#include <stdexcept>

#include "core/base/text.h"
#include "core/log/archive.h"
#include "sync/carry/sealed_box.h"
#include "sync/trust/proquint.h"

namespace weavelog {
namespace {

constexpr std::string_view kDatabaseMagic = "SQLite format 3";  // of the file format's published description
constexpr std::size_t kPlainHead = 20;      ///< magic, format, oldest reader, length of the rest: the same in every version
constexpr std::size_t kHeadCheck = 8;       ///< tells a damaged head from one of another version, and is no proof
constexpr std::size_t kMaxHead = 4096;  ///< of the rest
constexpr std::uint8_t kForDevice = 1, kForPassphrase = 2;

using ContentKey = std::array<std::uint8_t, crypto_secretstream_xchacha20poly1305_KEYBYTES>;
static_assert(crypto_secretstream_xchacha20poly1305_HEADERBYTES == 24 && crypto_secretbox_NONCEBYTES == 24);

/// Wipes what it holds.
struct Secret {
  ContentKey bytes{};
  Secret() = default;
  Secret(const Secret&) = delete;
  Secret& operator=(const Secret&) = delete;
  ~Secret() { sodium_memzero(bytes.data(), bytes.size()); }
};

tl::unexpected<Fault> damaged_head(std::string what) {
  return fail(FaultCode::malformed, std::move(what), "bundle", "copy the file again from where it was made; nothing was taken");
}

std::array<std::uint8_t, kHeadCheck> head_check(ByteView head) {
  const Digest digest = digest_of({as_bytes("weavelog bundle head 1"), head});
  std::array<std::uint8_t, kHeadCheck> out;
  std::copy_n(digest.begin(), out.size(), out.begin());
  return out;
}

std::array<std::uint8_t, 8> hint_of(const PublicKey& device, const BundleId& id) {
  const Digest digest = digest_of({as_bytes("weavelog bundle for 1"), id.bytes, device});
  std::array<std::uint8_t, 8> out;
  std::copy_n(digest.begin(), out.size(), out.begin());
  return out;
}

/// The same words typed on another keyboard give the same bytes.
Outcome<std::string> plain_words(const std::string& words) {
  auto clean = clean_text(words, "passphrase");
  if (!clean) return fail(clean.error());
  const auto characters = std::count_if(clean->begin(), clean->end(), [](char c) { return (static_cast<unsigned char>(c) & 0xc0) != 0x80; });
  if (static_cast<std::size_t>(characters) < kShortestPassphrase)
    return fail(FaultCode::bad_input, "a passphrase has at least " + std::to_string(kShortestPassphrase) + " characters", "passphrase",
                "take several words, or have one made");
  return std::move(*clean);
}

Outcome<> stretch(Secret& out, const std::string& words, const std::array<std::uint8_t, 16>& salt, const PassphraseCost& cost) {
  static_assert(crypto_pwhash_SALTBYTES == 16);
  if (crypto_pwhash(out.bytes.data(), out.bytes.size(), words.data(), words.size(), salt.data(), cost.passes,
                    std::size_t{cost.memory_kib} * 1024, crypto_pwhash_ALG_ARGON2ID13) != 0)
    return fail(FaultCode::no_space, "the passphrase needs " + std::to_string(cost.memory_kib / 1024) + " MB of memory for a moment", "bundle",
                "close other programs and try again");
  return {};
}

/// Fills the span, or says how much there was.
Outcome<std::size_t> fill(const ByteSource& source, std::span<std::uint8_t> out) {
  std::size_t have = 0;
  while (have < out.size()) {
    const auto got = source(out.subspan(have));
    if (!got) return fail(got.error());
    if (*got == 0) break;
    have += *got;
  }
  return have;
}

std::array<std::uint8_t, 4> length_bytes(std::size_t length) {
  std::array<std::uint8_t, 4> out;
  for (std::size_t i = 0; i < out.size(); ++i) out[i] = static_cast<std::uint8_t>(length >> (8 * i));
  return out;
}

template <std::size_t N>
void take_into(InArchive& ar, std::array<std::uint8_t, N>& out) {
  const ByteView taken = ar.take(N);
  std::copy(taken.begin(), taken.end(), out.begin());
}

}  // namespace

ByteSource source_of(ByteView bytes) {
  return [bytes](std::span<std::uint8_t> out) mutable -> Outcome<std::size_t> {
    const std::size_t size = std::min(out.size(), bytes.size());
    std::copy_n(bytes.begin(), size, out.begin());
    bytes = bytes.subspan(size);
    return size;
  };
}

ByteSink sink_of(Bytes& out) {
  return [&out](ByteView bytes) -> Outcome<> {
    out.insert(out.end(), bytes.begin(), bytes.end());
    return {};
  };
}

BundleId make_bundle_id() {
  BundleId id;
  randombytes_buf(id.bytes.data(), id.bytes.size());
  return id;
}

std::string make_passphrase() {
  std::array<std::uint8_t, 10> chance;
  randombytes_buf(chance.data(), chance.size());
  return to_proquints(chance);
}

// ------------------------------------------------------------------------------------------------ the head

bool BundleHead::is_for(const PublicKey& device) const { return for_device && hint_ == hint_of(device, id); }

Outcome<BundleHead> BundleHead::parse(ByteView bytes) {
  BundleHead head;
  head.format = bytes[kBundleMagic.size()];
  const std::uint8_t oldest = bytes[kBundleMagic.size() + 1];
  if (oldest > kBundleFormat)
    return fail(FaultCode::newer, "a bundle of format " + std::to_string(head.format) + ", which programs from format " + std::to_string(oldest) +
                                      " on can read; this one knows " + std::to_string(kBundleFormat),
                "bundle", "update Weavelog on this device");
  try {
    InArchive ar(bytes.subspan(kPlainHead, bytes.size() - kPlainHead - kHeadCheck));
    take_into(ar, head.id.bytes);
    const std::uint8_t sealing = ar.byte();
    if (sealing == kForDevice) {
      head.for_device = true;
      take_into(ar, head.hint_);
      const ByteView key = ar.take(sizeof(ContentKey) + kSealedBoxExtra);
      head.key_.assign(key.begin(), key.end());
    } else if (sealing == kForPassphrase) {
      take_into(ar, head.salt_);
      head.cost.passes = ar.varint_as<std::uint32_t>();
      head.cost.memory_kib = ar.varint_as<std::uint32_t>();
      take_into(ar, head.nonce_);
      const ByteView key = ar.take(sizeof(ContentKey) + crypto_secretbox_MACBYTES);
      head.key_.assign(key.begin(), key.end());
    } else {
      return fail(FaultCode::newer, "a way of sealing that this version does not know (" + std::to_string(sealing) + ")", "bundle",
                  "update Weavelog on this device");
    }
    take_into(ar, head.stream_);
    if (head.format <= kBundleFormat) ar.expect_end();  // a newer one that we may read can say more
  } catch (const ArchiveError& error) {
    return damaged_head(std::string("its head ") + error.what());
  }
  head.bytes.assign(bytes.begin(), bytes.end());
  head.digest = digest_of(head.bytes);
  return head;
}

Outcome<BundleHead> BundleHead::read(const ByteSource& source) {
  Bytes bytes(kPlainHead);
  const auto plain = fill(source, bytes);
  if (!plain) return fail(plain.error());
  const std::size_t compared = std::min(*plain, kBundleMagic.size());
  if (*plain == 0 || as_text(ByteView(bytes).first(compared)) != kBundleMagic.substr(0, compared))
    return as_text(bytes).starts_with(kDatabaseMagic)
               ? fail(FaultCode::malformed, "this is not a bundle but a database", "bundle", "if `backup` wrote it, put it back with `restore`")
               : fail(FaultCode::malformed, "this is not a bundle", "bundle", "choose a file that `bundle make` wrote");
  if (*plain < kPlainHead) return damaged_head("it ends in its head");
  const std::size_t length = bytes[kPlainHead - 2] | static_cast<std::size_t>(bytes[kPlainHead - 1]) << 8;
  if (length > kMaxHead) return damaged_head("its head is damaged");
  bytes.resize(kPlainHead + length + kHeadCheck);
  const auto rest = fill(source, std::span(bytes).subspan(kPlainHead));
  if (!rest) return fail(rest.error());
  if (*rest < length + kHeadCheck) return damaged_head("it ends in its head");
  const auto check = head_check(ByteView(bytes).first(kPlainHead + length));
  if (!std::equal(check.begin(), check.end(), bytes.end() - kHeadCheck)) return damaged_head("its head is damaged");
  return parse(bytes);
}

// ------------------------------------------------------------------------------------------------ sealing

struct ChunkSealer::State {
  BundleHead head;
  crypto_secretstream_xchacha20poly1305_state stream{};
  ~State() { sodium_memzero(&stream, sizeof stream); }
};

ChunkSealer::ChunkSealer(std::unique_ptr<State> state) : state_(std::move(state)) {}
ChunkSealer::~ChunkSealer() = default;
ChunkSealer::ChunkSealer(ChunkSealer&&) noexcept = default;
const BundleHead& ChunkSealer::head() const { return state_->head; }

Outcome<ChunkSealer> ChunkSealer::create(const SealFor& receiver, const BundleId& id, std::uint8_t format) {
  auto state = std::make_unique<State>();
  BundleHead& head = state->head;
  Secret content;
  crypto_secretstream_xchacha20poly1305_keygen(content.bytes.data());
  crypto_secretstream_xchacha20poly1305_init_push(&state->stream, head.stream_.data(), content.bytes.data());
  Bytes rest;
  OutArchive ar(rest);
  ar.raw(id.bytes);
  if (const auto* device = std::get_if<PublicKey>(&receiver)) {
    auto box = seal_for(*device, content.bytes);
    if (!box) return fail(FaultCode::bad_input, "this is no device's key", "receiver", "have the receiving device show its key again");
    head.hint_ = hint_of(*device, id);
    ar.byte(kForDevice);
    ar.raw(head.hint_);
    ar.raw(*box);
  } else {
    const auto& passphrase = std::get<ForPassphrase>(receiver);
    const auto words = plain_words(passphrase.words);
    if (!words) return fail(words.error());
    randombytes_buf(head.salt_.data(), head.salt_.size());
    randombytes_buf(head.nonce_.data(), head.nonce_.size());
    Secret stretched;
    if (auto done = stretch(stretched, *words, head.salt_, passphrase.cost); !done) return fail(done.error());
    Bytes box(content.bytes.size() + crypto_secretbox_MACBYTES);
    crypto_secretbox_easy(box.data(), content.bytes.data(), content.bytes.size(), head.nonce_.data(), stretched.bytes.data());
    ar.byte(kForPassphrase);
    ar.raw(head.salt_);
    ar.varint(passphrase.cost.passes);
    ar.varint(passphrase.cost.memory_kib);
    ar.raw(head.nonce_);
    ar.raw(box);
  }
  ar.raw(head.stream_);
  Bytes bytes(kBundleMagic.begin(), kBundleMagic.end());
  OutArchive whole(bytes);
  whole.byte(format);
  whole.byte(format);
  whole.byte(static_cast<std::uint8_t>(rest.size()));
  whole.byte(static_cast<std::uint8_t>(rest.size() >> 8));
  whole.raw(rest);
  const auto check = head_check(bytes);
  whole.raw(check);
  auto parsed = BundleHead::parse(bytes);
  if (!parsed) return fail(parsed.error());
  head = std::move(*parsed);
  return ChunkSealer(std::move(state));
}

Bytes ChunkSealer::seal(ByteView plain, bool last) {
  if (plain.size() > kMaxChunkBytes) throw std::length_error("a chunk that fits no bundle");
  const std::size_t length = plain.size() + crypto_secretstream_xchacha20poly1305_ABYTES;
  const auto said = length_bytes(length);
  Bytes out(said.size() + length);
  std::copy(said.begin(), said.end(), out.begin());
  const Digest& bound = state_->head.digest;
  crypto_secretstream_xchacha20poly1305_push(&state_->stream, out.data() + said.size(), nullptr, plain.data(), plain.size(), bound.data(),
                                             bound.size(),
                                             last ? crypto_secretstream_xchacha20poly1305_TAG_FINAL
                                                  : crypto_secretstream_xchacha20poly1305_TAG_MESSAGE);
  return out;
}

// ------------------------------------------------------------------------------------------------ opening

struct ChunkOpener::State {
  Digest bound{};
  crypto_secretstream_xchacha20poly1305_state stream{};
  bool ended = false;
  ~State() { sodium_memzero(&stream, sizeof stream); }
};

ChunkOpener::ChunkOpener(std::unique_ptr<State> state) : state_(std::move(state)) {}
ChunkOpener::~ChunkOpener() = default;
ChunkOpener::ChunkOpener(ChunkOpener&&) noexcept = default;

Outcome<ChunkOpener> ChunkOpener::create(const BundleHead& head, const OpenWith& with) {
  Secret content;
  if (head.for_device) {
    const std::string ask = "have it made again for this device, or with a passphrase";
    if (with.device == nullptr || !head.is_for(with.device->public_key()))
      return fail(FaultCode::untrusted, "this bundle is for another device", "bundle", ask);
    const auto opened = open_sealed(*with.device, head.key_);
    if (!opened) return fail(FaultCode::untrusted, "this bundle names this device but was not sealed to its key", "bundle", ask);
    std::copy(opened->begin(), opened->end(), content.bytes.begin());
  } else {
    if (!with.passphrase)
      return fail(FaultCode::bad_input, "this bundle is opened with a passphrase", "passphrase", "ask whoever made it");
    if (head.cost.passes > kLargestPassphraseCost.passes || head.cost.memory_kib > kLargestPassphraseCost.memory_kib ||
        head.cost.passes < crypto_pwhash_OPSLIMIT_MIN || head.cost.memory_kib < crypto_pwhash_MEMLIMIT_MIN / 1024)
      return fail(FaultCode::refused, "its passphrase asks for " + std::to_string(head.cost.passes) + " passes over " +
                                          std::to_string(head.cost.memory_kib / 1024) + " MB; at most " +
                                          std::to_string(kLargestPassphraseCost.passes) + " over " +
                                          std::to_string(kLargestPassphraseCost.memory_kib / 1024) + " MB are given",
                  "bundle", "have it made again by Weavelog");
    const auto words = plain_words(*with.passphrase);
    const auto wrong = [] {
      return fail(FaultCode::untrusted, "this is not the passphrase with which the bundle was sealed", "passphrase",
                  "ask whoever made it, word by word");
    };
    if (!words) return wrong();
    Secret stretched;
    if (auto done = stretch(stretched, *words, head.salt_, head.cost); !done) return fail(done.error());
    if (crypto_secretbox_open_easy(content.bytes.data(), head.key_.data(), head.key_.size(), head.nonce_.data(), stretched.bytes.data()) != 0)
      return wrong();
  }
  auto state = std::make_unique<State>();
  state->bound = head.digest;
  crypto_secretstream_xchacha20poly1305_init_pull(&state->stream, head.stream_.data(), content.bytes.data());
  return ChunkOpener(std::move(state));
}

Outcome<ChunkOpener::Next> ChunkOpener::next(const ByteSource& source) {
  const auto ends = [](ChunkEnd how) { return Next{std::nullopt, false, how}; };
  std::array<std::uint8_t, 4> said{};
  if (state_->ended) {
    const auto more = fill(source, std::span(said).first(1));
    if (!more) return fail(more.error());
    return ends(*more == 0 ? ChunkEnd::whole : ChunkEnd::altered);
  }
  const auto got = fill(source, said);
  if (!got) return fail(got.error());
  if (*got < said.size()) return ends(ChunkEnd::cut_short);
  std::size_t length = 0;
  for (std::size_t i = 0; i < said.size(); ++i) length |= static_cast<std::size_t>(said[i]) << (8 * i);
  if (length < crypto_secretstream_xchacha20poly1305_ABYTES || length > kMaxChunkBytes + crypto_secretstream_xchacha20poly1305_ABYTES)
    return ends(ChunkEnd::altered);
  Bytes sealed(length);
  const auto held = fill(source, sealed);
  if (!held) return fail(held.error());
  if (*held < length) return ends(ChunkEnd::cut_short);
  Next next;
  next.plain.emplace(length - crypto_secretstream_xchacha20poly1305_ABYTES);
  std::uint8_t tag = 0;
  if (crypto_secretstream_xchacha20poly1305_pull(&state_->stream, next.plain->data(), nullptr, &tag, sealed.data(), sealed.size(),
                                                 state_->bound.data(), state_->bound.size()) != 0)
    return ends(ChunkEnd::altered);
  next.last = state_->ended = tag == crypto_secretstream_xchacha20poly1305_TAG_FINAL;
  return next;
}

}  // namespace weavelog
