#include "sync/trust/certificate.h"

#include <openssl/bio.h>
#include <openssl/evp.h>
#include <openssl/pem.h>
#include <openssl/rand.h>
#include <openssl/x509.h>
#include <sodium.h>

#include <memory>

#include "sync/trust/private_file.h"

namespace weavelog {
namespace {

template <auto Free>
struct Freeing {
  template <class T>
  void operator()(T* p) const {
    Free(p);
  }
};
using Key = std::unique_ptr<EVP_PKEY, Freeing<EVP_PKEY_free>>;
using X509Ptr = std::unique_ptr<X509, Freeing<X509_free>>;
using BioPtr = std::unique_ptr<BIO, Freeing<BIO_free_all>>;

std::string text_in(BIO* bio) {
  char* data = nullptr;
  const long size = BIO_get_mem_data(bio, &data);
  return {data, static_cast<std::size_t>(size)};
}

tl::unexpected<Fault> crypto_fault() {
  return fail(FaultCode::io, "the system's cryptography library can't make a certificate", "",
              "check its installation");
}

/// Valid from 1970 to the "no well-defined end" of RFC 5280, section 4.1.2.5.
bool fill(X509* cert, EVP_PKEY* key) {
  std::array<unsigned char, 16> serial{};
  if (RAND_bytes(serial.data(), static_cast<int>(serial.size())) != 1) return false;
  serial[0] &= 0x7f;  // RFC 5280 wants it positive
  BIGNUM* number = BN_bin2bn(serial.data(), static_cast<int>(serial.size()), nullptr);
  const bool has_serial =
      number != nullptr && BN_to_ASN1_INTEGER(number, X509_get_serialNumber(cert)) != nullptr;
  BN_free(number);
  if (!has_serial) return false;
  X509_NAME* name = X509_get_subject_name(cert);
  static constexpr std::array<unsigned char, 8> kName = {'w', 'e', 'a', 'v', 'e', 'l', 'o', 'g'};
  return X509_set_version(cert, X509_VERSION_3) == 1 &&
         ASN1_TIME_set_string(X509_getm_notBefore(cert), "700101000000Z") == 1 &&
         ASN1_TIME_set_string(X509_getm_notAfter(cert), "99991231235959Z") == 1 &&
         X509_NAME_add_entry_by_NID(name, NID_commonName, MBSTRING_ASC, kName.data(), kName.size(), -1, 0) ==
             1 &&
         X509_set_issuer_name(cert, name) == 1 && X509_set_pubkey(cert, key) == 1 &&
         X509_sign(cert, key, EVP_sha256()) > 0;
}

bool fingerprint_of(const X509* cert, Fingerprint& out) {
  unsigned size = 0;
  return X509_digest(cert, EVP_sha256(), out.data(), &size) == 1 && size == out.size();
}

Outcome<ServerCertificate> pack(EVP_PKEY* key, X509* cert) {
  ServerCertificate out;
  const BioPtr key_text(BIO_new(BIO_s_mem()));
  const BioPtr cert_text(BIO_new(BIO_s_mem()));
  if (!key_text || !cert_text ||
      PEM_write_bio_PrivateKey(key_text.get(), key, nullptr, nullptr, 0, nullptr, nullptr) != 1 ||
      PEM_write_bio_X509(cert_text.get(), cert) != 1 || !fingerprint_of(cert, out.fingerprint)) {
    return crypto_fault();
  }
  out.key_pem = text_in(key_text.get());
  out.certificate_pem = text_in(cert_text.get());
  return out;
}

Outcome<ServerCertificate> unpack(const std::string& text, const std::filesystem::path& file) {
  // No password prompt, ever: an encrypted key counts as damaged.
  const auto no_password = [](char*, int, int, void*) { return -1; };
  const BioPtr for_key(BIO_new_mem_buf(text.data(), static_cast<int>(text.size())));
  const BioPtr for_cert(BIO_new_mem_buf(text.data(), static_cast<int>(text.size())));
  const Key key(PEM_read_bio_PrivateKey(for_key.get(), nullptr, no_password, nullptr));
  const X509Ptr cert(PEM_read_bio_X509(for_cert.get(), nullptr, no_password, nullptr));
  if (!key || !cert || X509_check_private_key(cert.get(), key.get()) != 1) {
    return fail(
        FaultCode::damaged, "the server's certificate file is damaged", file.string(),
        "put the file back from a backup; only if there is none, move it away and pair every device anew");
  }
  return pack(key.get(), cert.get());
}

}  // namespace

Outcome<ServerCertificate> make_certificate() {
  const Key key(EVP_EC_gen("P-256"));
  const X509Ptr cert(X509_new());
  if (!key || !cert || !fill(cert.get(), key.get())) return crypto_fault();
  return pack(key.get(), cert.get());
}

Outcome<ServerCertificate> load_or_create_certificate(const std::filesystem::path& file) {
  // Twice at most: another process of ours may make the file between our look and our own making.
  for (int round = 0; round < 2; ++round) {
    auto text = read_private_file(file);
    if (!text) return fail(text.error());
    if (*text) {
      auto loaded = unpack(**text, file);
      sodium_memzero((*text)->data(), (*text)->size());
      return loaded;
    }
    auto fresh = make_certificate();
    if (!fresh) return fresh;
    std::string both = fresh->key_pem + fresh->certificate_pem;
    const auto created = create_private_file(file, both);
    sodium_memzero(both.data(), both.size());
    if (!created) return fail(created.error());
    if (*created) return fresh;
  }
  return fail(FaultCode::io, "the certificate file comes and goes", file.string(),
              "check what else uses the data folder");
}

}  // namespace weavelog
