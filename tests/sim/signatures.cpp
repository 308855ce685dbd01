// Signatures are checked once. A seal is looked at by every device that it reaches, and again when all is verified at the end, which
// took a tenth of a run; but whether these bytes under this key are signed is the same each time. So the program has a function of
// libsodium's name before libsodium's own, asks that one about whatever it has not asked about yet, and remembers the answer of it
// under a digest of all that was asked.

#include <dlfcn.h>
#include <sodium.h>

#include <array>
#include <cstdlib>
#include <cstring>
#include <mutex>
#include <unordered_map>

namespace {

using Verify = int (*)(const unsigned char*, const unsigned char*, unsigned long long, const unsigned char*);
using Asked = std::array<unsigned char, 32>;

/// Some of a digest is as good a hash as any.
struct AskedHash {
  std::size_t operator()(const Asked& asked) const {
    std::size_t out = 0;
    std::memcpy(&out, asked.data(), sizeof out);
    return out;
  }
};

constexpr std::size_t kMostKept = 100'000;

Verify libsodiums() {
  void* found = dlsym(RTLD_NEXT, "crypto_sign_verify_detached");
  if (found == nullptr) std::abort();
  return reinterpret_cast<Verify>(found);
}

}  // namespace

extern "C" int crypto_sign_verify_detached(const unsigned char* signature, const unsigned char* message, unsigned long long size,
                                           const unsigned char* key) {
  static const Verify verify = libsodiums();
  static std::mutex mutex;
  static std::unordered_map<Asked, int, AskedHash> answers;
  Asked asked{};
  crypto_generichash_state state;
  crypto_generichash_init(&state, nullptr, 0, asked.size());
  crypto_generichash_update(&state, signature, crypto_sign_BYTES);
  crypto_generichash_update(&state, key, crypto_sign_PUBLICKEYBYTES);
  crypto_generichash_update(&state, message, size);
  crypto_generichash_final(&state, asked.data(), asked.size());
  {
    const std::lock_guard guard(mutex);
    if (const auto found = answers.find(asked); found != answers.end()) return found->second;
  }
  const int answer = verify(signature, message, size, key);
  const std::lock_guard guard(mutex);
  if (answers.size() >= kMostKept) answers.clear();
  answers.emplace(asked, answer);
  return answer;
}
