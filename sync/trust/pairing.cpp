#include "sync/trust/pairing.h"

#include <sodium.h>

#include <algorithm>
#include <optional>

#include "sync/trust/proquint.h"

namespace weavelog {
namespace {

constexpr std::string_view kScheme = "weavelog:pair?";
constexpr std::size_t kMaxCode = 1024;

std::array<std::uint8_t, 8> length_of(ByteView bytes) {
  std::array<std::uint8_t, 8> out{};
  for (std::size_t i = 0; i < 8; ++i)
    out[i] = static_cast<std::uint8_t>(std::uint64_t{bytes.size()} >> (8 * i));
  return out;
}

tl::unexpected<Fault> wrong_code(std::string what, std::string where) {
  return fail(FaultCode::bad_input, std::move(what), std::move(where),
              "scan the code on the server's screen again");
}

}  // namespace

PairingSecret make_pairing_secret() {
  PairingSecret out{};
  randombytes_buf(out.data(), out.size());
  return out;
}

InvitationNumber number_of(const PairingSecret& secret) {
  const Digest digest = digest_of({as_bytes("weavelog invitation number 1"), secret});
  InvitationNumber out{};
  std::copy_n(digest.begin(), out.size(), out.begin());
  return out;
}

std::string spoken_code(const PairingSecret& secret) {
  return to_proquints(secret);
}

Outcome<PairingSecret> parse_spoken_code(std::string_view text) {
  const auto bytes = from_proquints(text);
  if (!bytes) return fail(bytes.error());
  PairingSecret out{};
  if (bytes->size() != out.size()) {
    return fail(FaultCode::bad_input, "the code has five words, not " + std::to_string(bytes->size() / 2),
                "code", "ask for the words again");
  }
  std::copy(bytes->begin(), bytes->end(), out.begin());
  return out;
}

std::string PairingCode::text() const {
  std::string out(kScheme);
  out.append("v=1&at=").append(address.text());
  out.append("&cert=").append(to_hex(fingerprint));
  out.append("&code=").append(spoken_code(secret));
  return out;
}

Outcome<PairingCode> PairingCode::parse(std::string_view text) {
  while (!text.empty() && (text.back() == '\n' || text.back() == '\r' || text.back() == ' '))
    text.remove_suffix(1);
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  if (text.size() > kMaxCode || !text.starts_with(kScheme)) {
    return wrong_code("this is not a pairing code of an event server", "code");
  }
  text.remove_prefix(kScheme.size());
  std::optional<std::string_view> version, at, cert, code;
  while (!text.empty()) {
    const std::string_view part = text.substr(0, text.find('&'));
    text.remove_prefix(std::min(part.size() + 1, text.size()));
    const auto equals = part.find('=');
    const std::string_view name = part.substr(0, equals);
    auto* const place = name == "v"      ? &version
                        : name == "at"   ? &at
                        : name == "cert" ? &cert
                        : name == "code" ? &code
                                         : nullptr;
    if (place == nullptr) continue;
    if (*place) return wrong_code("the part is there twice", std::string(name));
    *place = equals == std::string_view::npos ? std::string_view{} : part.substr(equals + 1);
  }
  if (!version) return wrong_code("the part is missing", "v");
  if (*version != "1") {
    return fail(FaultCode::newer, "the pairing code is of a newer version", "v",
                "update Weavelog on this device");
  }
  if (!at) return wrong_code("the part is missing", "at");
  if (!cert) return wrong_code("the part is missing", "cert");
  if (!code) return wrong_code("the part is missing", "code");
  PairingCode out;
  const auto address = Address::parse(*at);
  if (!address) return wrong_code(address.error().what, "at");
  out.address = *address;
  if (!from_hex(*cert, out.fingerprint)) return wrong_code("a fingerprint has 64 hexadecimal digits", "cert");
  const auto secret = parse_spoken_code(*code);
  if (!secret) return wrong_code(secret.error().message(), "code");
  out.secret = *secret;
  return out;
}

PairingKey pairing_key(const PairingSecret& secret) {
  return digest_of({as_bytes("weavelog pairing key 1"), secret});
}

Digest handshake_digest(ByteView guest_hello, ByteView host_hello, const Fingerprint& seen) {
  // Lengths go in first, so that no byte can move from one hello into the other.
  return digest_of({as_bytes("weavelog pairing handshake 1"), length_of(guest_hello), guest_hello,
                    length_of(host_hello), host_hello, seen});
}

Digest pairing_proof(const PairingKey& key, PairingSide side, const Digest& handshake) {
  std::array<std::uint8_t, 1 + sizeof(Digest)> message{};
  message[0] = static_cast<std::uint8_t>(side);
  std::copy(handshake.begin(), handshake.end(), message.begin() + 1);
  Digest out{};
  crypto_generichash(out.data(), out.size(), message.data(), message.size(), key.data(), key.size());
  return out;
}

Outcome<> check_pairing_proof(const PairingKey& key, PairingSide side, const Digest& handshake,
                              const Digest& proof) {
  const Digest expected = pairing_proof(key, side, handshake);
  if (sodium_memcmp(expected.data(), proof.data(), expected.size()) == 0) return {};
  return fail(
      FaultCode::untrusted,
      side == PairingSide::guest ? "the device does not know the code" : "the server does not know the code",
      "pairing", "check that the code is the one on this server's screen, then pair again");
}

}  // namespace weavelog
