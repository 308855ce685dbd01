#include "sync/net/nearby_datagram.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/base/utf8.h"
#include "core/log/archive.h"

namespace weavelog {
namespace {

/// Its last byte is the version.
constexpr std::array<std::uint8_t, 5> kMagic{'W', 'L', 'N', 'R', 1};
constexpr std::uint8_t kQuery = 0;
constexpr std::uint8_t kAnswer = 1;

void head(OutArchive& out, std::uint8_t kind, const NearbyNonce& nonce) {
  out.raw(kMagic);
  out.byte(kind);
  out.raw(nonce);
}

/// The nonce of a datagram of that kind.
std::optional<NearbyNonce> read_head(InArchive& in, std::uint8_t kind) {
  const ByteView magic = in.take(kMagic.size());
  if (!std::equal(magic.begin(), magic.end(), kMagic.begin()) || in.byte() != kind) return {};
  NearbyNonce nonce{};
  const ByteView taken = in.take(nonce.size());
  std::copy(taken.begin(), taken.end(), nonce.begin());
  return nonce;
}

std::string cut(const std::string& text) {
  if (first_invalid_utf8(text)) return {};
  if (text.size() <= kNearbyName) return text;
  // A character may have any number of bytes.
  for (std::size_t most = kNearbyName; most > 0; --most) {
    std::string out = shortened(text, most);
    if (out.size() <= kNearbyName) return out;
  }
  return {};
}

/// C0 and C1 of ISO 6429, and DEL, in a text that is valid UTF-8.
bool has_control(std::string_view text) {
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto byte = static_cast<std::uint8_t>(text[i]);
    if (byte < 0x20 || byte == 0x7f) return true;
    if (byte == 0xc2 && i + 1 < text.size() && static_cast<std::uint8_t>(text[i + 1]) < 0xa0) return true;
  }
  return false;
}

bool fit_to_show(std::string_view text) {
  return !first_invalid_utf8(text) && !has_control(text);
}

}  // namespace

Bytes nearby_query(const NearbyNonce& nonce) {
  Bytes bytes;
  OutArchive out(bytes);
  head(out, kQuery, nonce);
  bytes.resize(kNearbyBytes);
  return bytes;
}

Bytes nearby_answer(const NearbyNonce& nonce, const NearbyOffer& offer) {
  Bytes bytes;
  OutArchive out(bytes);
  head(out, kAnswer, nonce);
  out.raw(offer.key);
  out.raw(offer.fingerprint);
  out.varint(offer.port);
  out.sized(as_bytes(cut(offer.name)));
  out.sized(as_bytes(cut(offer.event)));
  return bytes;
}

std::optional<NearbyNonce> read_nearby_query(ByteView datagram) {
  if (datagram.size() != kNearbyBytes) return {};
  InArchive in(datagram);
  const auto nonce = read_head(in, kQuery);
  const ByteView padding = in.take(in.left());
  if (std::any_of(padding.begin(), padding.end(), [](std::uint8_t byte) { return byte != 0; })) return {};
  return nonce;
}

std::optional<NearbyAnswer> read_nearby_answer(ByteView datagram) {
  if (datagram.size() > kNearbyBytes) return {};
  try {
    InArchive in(datagram);
    const auto nonce = read_head(in, kAnswer);
    if (!nonce) return {};
    NearbyAnswer out;
    out.nonce = *nonce;
    in(out.offer.key, out.offer.fingerprint);
    out.offer.port = in.varint_as<std::uint16_t>();
    out.offer.name = as_text(in.sized(kNearbyName));
    out.offer.event = as_text(in.sized(kNearbyName));
    in.expect_end();
    if (out.offer.port == 0 || is_blank(out.offer.name)) return {};
    if (!fit_to_show(out.offer.name) || !fit_to_show(out.offer.event)) return {};
    return out;
  } catch (const ArchiveError&) {
    return {};
  }
}

}  // namespace weavelog
