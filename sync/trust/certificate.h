#pragma once
// The event server's own TLS certificate. Trust is the pin (the fingerprint learnt at pairing), so it is
// self-signed, names nobody, and its dates never matter: a device whose clock stands at 1970 can still
// connect.

#include <array>
#include <filesystem>
#include <string>

#include "core/base/bytes.h"
#include "core/base/outcome.h"

namespace weavelog {

/// SHA-256 (FIPS 180-4) of the certificate's DER bytes.
using Fingerprint = std::array<std::uint8_t, 32>;

/// EC P-256 key and self-signed X.509 certificate, both in PEM.
struct ServerCertificate {
  std::string key_pem;
  std::string certificate_pem;
  Fingerprint fingerprint{};
};

/// A fresh one, in memory only.
[[nodiscard]] Outcome<ServerCertificate> make_certificate();

/// Loads key and certificate from one PEM file, or makes them if there is none (mode 0600). A file that is
/// there is never replaced, so that the fingerprint stays. Faults: refused (others may read it), damaged,
/// no_space, io.
[[nodiscard]] Outcome<ServerCertificate> load_or_create_certificate(const std::filesystem::path& file);

}  // namespace weavelog
