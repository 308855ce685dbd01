#include "sync/trust/pairing.h"

#include <catch2/catch.hpp>

#include "sync/trust/role.h"

using namespace weavelog;

namespace {
PairingCode example() {
  PairingCode code;
  code.address = {"192.0.2.7", 26110};  // RFC 5737: addresses for documentation
  for (std::size_t i = 0; i < code.fingerprint.size(); ++i)
    code.fingerprint[i] = static_cast<std::uint8_t>(i * 7);
  code.secret = {127, 0, 0, 1, 63, 84, 220, 193, 63, 118};
  return code;
}
}  // namespace

TEST_CASE("addresses: read as people write them", "[trust]") {
  CHECK(*Address::parse("desk.local") == Address{"desk.local", kDefaultPort});
  CHECK(*Address::parse(" 192.0.2.7:80 ") == Address{"192.0.2.7", 80});
  CHECK(*Address::parse("[2001:db8::1]:443") == Address{"2001:db8::1", 443});
  CHECK(*Address::parse("2001:db8::1") == Address{"2001:db8::1", kDefaultPort});
  CHECK(Address::parse("[2001:db8::1]:443")->text() == "[2001:db8::1]:443");
  for (const char* wrong : {"", "  ", ":80", "a:", "a:0", "a:65536", "a:-1", "a:8o", "[::1", "[::1]80", "a b",
                            "a/b", "[]:1", "a\n"}) {
    INFO(wrong);
    const auto read = Address::parse(wrong);
    REQUIRE_FALSE(read);
    CHECK(read.error().code == FaultCode::bad_input);
    CHECK_FALSE(read.error().what_to_do.empty());
  }
}

TEST_CASE("pairing code: round trip, parts in any order, unknown parts skipped", "[trust]") {
  const PairingCode code = example();
  CHECK(code.text().starts_with("weavelog:pair?v=1&at=192.0.2.7:26110&cert=00070e"));
  CHECK(*PairingCode::parse(code.text()) == code);
  CHECK(*PairingCode::parse(code.text() + "&later=thing&&\r\n") == code);
  PairingCode six = code;
  six.address = {"2001:db8::1", 9};
  CHECK(*PairingCode::parse(six.text()) == six);
  CHECK(*PairingCode::parse("weavelog:pair?code=" + spoken_code(code.secret) +
                            "&cert=" + to_hex(code.fingerprint) + "&at=192.0.2.7&v=1") == code);
}

TEST_CASE("pairing code: each fault names its part", "[trust]") {
  const std::string good = example().text();
  const auto where = [](const std::string& text) {
    const auto read = PairingCode::parse(text);
    REQUIRE_FALSE(read);
    CHECK_FALSE(read.error().what_to_do.empty());
    return read.error().where;
  };
  const auto changed = [&](const std::string& from, const std::string& to) {
    std::string text = good;
    text.replace(text.find(from), from.size(), to);
    return text;
  };
  CHECK(where("https://example.org/") == "code");
  CHECK(where("") == "code");
  CHECK(where("weavelog:pair?") == "v");
  CHECK(where(changed("v=1", "v=2")) == "v");
  CHECK(PairingCode::parse(changed("v=1", "v=2")).error().code == FaultCode::newer);
  CHECK(where(changed(":26110", ":0")) == "at");
  CHECK(where(changed("at=", "ta=")) == "at");
  CHECK(where(changed("cert=00", "cert=0")) == "cert");
  CHECK(where(changed("cert=00", "cert=zz")) == "cert");
  CHECK(where(changed("code=lusab", "code=lusax")) == "code");
  CHECK(where(changed("code=lusab-", "code=")) == "code");
  CHECK(where(good + "&v=1") == "v");
  CHECK(where(good + std::string(5000, 'x')) == "code");
  for (std::size_t cut = 0; cut < good.size(); ++cut) CHECK_FALSE(PairingCode::parse(good.substr(0, cut)));
}

TEST_CASE("spoken code: five words, no more and no less", "[trust]") {
  const PairingSecret secret = make_pairing_secret();
  CHECK(secret != make_pairing_secret());
  CHECK(spoken_code(secret).size() == 29);
  CHECK(*parse_spoken_code(spoken_code(secret)) == secret);
  CHECK(parse_spoken_code("lusab babad gutih tugad").error().what.find("not 4") != std::string::npos);
  CHECK_FALSE(parse_spoken_code("lusab babad gutih tugad gutuk bisog"));
  CHECK_FALSE(parse_spoken_code(""));
}

TEST_CASE("pairing proofs: hold for one secret, side and handshake only", "[trust]") {
  const PairingKey key = pairing_key(example().secret);
  const Bytes guest = {1, 2, 3};
  const Bytes host = {4, 5};
  const Fingerprint seen = example().fingerprint;
  const Digest handshake = handshake_digest(guest, host, seen);
  const Digest proof = pairing_proof(key, PairingSide::guest, handshake);
  CHECK(check_pairing_proof(key, PairingSide::guest, handshake, proof));

  // Another secret, the other side's proof sent back, a middleman's certificate, a byte moved between the
  // hellos.
  auto other = example().secret;
  other[9] ^= 1;
  CHECK_FALSE(check_pairing_proof(pairing_key(other), PairingSide::guest, handshake, proof));
  const auto mirrored = check_pairing_proof(key, PairingSide::host, handshake, proof);
  REQUIRE_FALSE(mirrored);
  CHECK(mirrored.error().code == FaultCode::untrusted);
  Fingerprint middleman = seen;
  middleman[0] ^= 1;
  CHECK_FALSE(
      check_pairing_proof(key, PairingSide::guest, handshake_digest(guest, host, middleman), proof));
  CHECK(handshake_digest(Bytes{1, 2}, Bytes{3, 4, 5}, seen) != handshake);
  for (std::size_t bit = 0; bit < 256; ++bit) {
    Digest flipped = proof;
    flipped[bit / 8] = static_cast<std::uint8_t>(flipped[bit / 8] ^ (1u << bit % 8));
    CHECK_FALSE(check_pairing_proof(key, PairingSide::guest, handshake, flipped));
  }
  CHECK(number_of(other) != number_of(example().secret));
}

TEST_CASE("roles: names and numbers both ways", "[trust]") {
  for (const Role role : {Role::head, Role::desk, Role::stringer, Role::reader}) {
    CHECK(*parse_role(name_of(role)) == role);
    CHECK(*role_from(static_cast<std::uint64_t>(role)) == role);
  }
  CHECK(parse_role("boss").error().code == FaultCode::bad_input);
  CHECK(role_from(0).error().code == FaultCode::malformed);
  CHECK(role_from(5).error().code == FaultCode::malformed);
}
