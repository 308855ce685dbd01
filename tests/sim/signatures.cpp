// What stands for signatures here. Making and checking Ed25519's took a fifteenth of a run and is proved elsewhere (its own tests, libsodium's);
// what a run is about is who signs what, who checks it, and what is made of the answer. So the program has functions of libsodium's names before
// libsodium's own: a signature is a keyed hash (BLAKE2b) of the message under the secret key. Whoever checks one need not have the secret: the
// program remembers which secret every key that ever signed here has. Other bytes, another key or a bent signature are refused as ever, and a
// device that lies can make only those that its own key makes.

#include <dlfcn.h>
#include <sodium.h>

#include <array>
#include <cstdlib>
#include <cstring>
#include <map>
#include <mutex>
#include <optional>

namespace {

using Verify = int (*)(const unsigned char*, const unsigned char*, unsigned long long, const unsigned char*);
using Key = std::array<unsigned char, 32>;
using Signed = std::array<unsigned char, crypto_sign_BYTES>;
static_assert(sizeof(Key) == crypto_sign_PUBLICKEYBYTES && sizeof(Key) == crypto_sign_SEEDBYTES);

Signed signature_of(const Key& secret, const unsigned char* message, unsigned long long size) {
  Signed out{};
  crypto_generichash(out.data(), out.size(), message, size, secret.data(), secret.size());
  return out;
}

/// The secrets of the keys that have signed.
class Secrets {
 public:
  std::optional<Key> find(const unsigned char* public_key) {
    Key key;
    std::memcpy(key.data(), public_key, key.size());
    const std::lock_guard guard(mutex_);
    const auto found = held_.find(key);
    return found == held_.end() ? std::nullopt : std::optional(found->second);
  }
  /// libsodium's secret key is the seed that it was made from, and the public key.
  Key learn(const unsigned char* secret_key) {
    Key secret, key;
    std::memcpy(secret.data(), secret_key, secret.size());
    std::memcpy(key.data(), secret_key + secret.size(), key.size());
    const std::lock_guard guard(mutex_);
    held_.emplace(key, secret);
    return secret;
  }

 private:
  std::mutex mutex_;
  std::map<Key, Key> held_;
};

Secrets secrets;

}  // namespace

extern "C" int crypto_sign_detached(unsigned char* signature, unsigned long long* signature_size, const unsigned char* message,
                                    unsigned long long size, const unsigned char* secret_key) {
  const Signed made = signature_of(secrets.learn(secret_key), message, size);
  std::memcpy(signature, made.data(), made.size());
  if (signature_size != nullptr) *signature_size = made.size();
  return 0;
}

extern "C" int crypto_sign_verify_detached(const unsigned char* signature, const unsigned char* message, unsigned long long size,
                                           const unsigned char* key) {
  if (const auto secret = secrets.find(key))
    return sodium_memcmp(signature, signature_of(*secret, message, size).data(), crypto_sign_BYTES);
  // A key that nobody has: libsodium says what is wrong with that.
  static const auto verify = [] {
    void* found = dlsym(RTLD_NEXT, "crypto_sign_verify_detached");
    if (found == nullptr) std::abort();
    return reinterpret_cast<Verify>(found);
  }();
  return verify(signature, message, size, key);
}
