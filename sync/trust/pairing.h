#pragma once
// Pairing: a guest (tablet) and a host (event server) come to know each other's keys by a one-time secret
// that a person carries from one screen to the other.
//
// Both send a hello (device card, nonce, the host's also its role). Each then proves that it knows the
// secret: BLAKE2b keyed with it over (side, handshake), where the handshake binds both hellos and the TLS
// certificate's fingerprint as that side sees it. The guest proves first. Who stands in between with another
// certificate makes the two handshakes differ, and 80 random bits can't be searched, so neither a proof nor
// the invitation's number helps him.

#include <array>
#include <string>
#include <string_view>

#include "core/base/digest.h"
#include "core/base/outcome.h"
#include "sync/trust/address.h"
#include "sync/trust/certificate.h"

namespace weavelog {

/// 80 random bits, good for one pairing.
using PairingSecret = std::array<std::uint8_t, 10>;
/// Says which invitation is meant without telling its secret: the guest sends it with its proof.
using InvitationNumber = std::array<std::uint8_t, 8>;

[[nodiscard]] PairingSecret make_pairing_secret();
[[nodiscard]] InvitationNumber number_of(const PairingSecret& secret);

/// For speech: five words, "lusab-babad-gutih-tugad-gutuk".
[[nodiscard]] std::string spoken_code(const PairingSecret& secret);
/// Fault: bad_input, naming the word that is wrong or how many there are.
[[nodiscard]] Outcome<PairingSecret> parse_spoken_code(std::string_view text);

/// Everything that a guest needs, for a QR code.
struct PairingCode {
  Address address;
  Fingerprint fingerprint{};
  PairingSecret secret{};

  bool operator==(const PairingCode&) const = default;
  /// "weavelog:pair?v=1&at=ADDRESS:PORT&cert=64 HEX&code=FIVE WORDS"; letters that need no escaping only.
  [[nodiscard]] std::string text() const;
  /// Parts may come in any order and unknown ones are skipped. Faults: bad_input (naming the part), newer.
  [[nodiscard]] static Outcome<PairingCode> parse(std::string_view text);
};

/// What proofs are keyed with; derived from the secret one way.
using PairingKey = std::array<std::uint8_t, 32>;
[[nodiscard]] PairingKey pairing_key(const PairingSecret& secret);

enum class PairingSide : std::uint8_t { guest = 1, host = 2 };

/// Each hello as the very bytes that crossed; `seen` is the host's certificate as this side knows it.
[[nodiscard]] Digest handshake_digest(ByteView guest_hello, ByteView host_hello, const Fingerprint& seen);
[[nodiscard]] Digest pairing_proof(const PairingKey& key, PairingSide side, const Digest& handshake);
/// In constant time. Fault: untrusted.
[[nodiscard]] Outcome<> check_pairing_proof(const PairingKey& key, PairingSide side, const Digest& handshake,
                                            const Digest& proof);

}  // namespace weavelog
