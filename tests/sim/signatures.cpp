// Signatures are checked once. A seal is looked at by every device that it reaches, and again when all is verified at the end, which
// took a tenth of a run; but whether these bytes under this key are signed is the same each time. So the program has functions of
// libsodium's names before libsodium's own. They ask it about whatever they have not asked about yet, and remember its answer under a
// digest of all that was asked; what it has just signed, it would not refuse.

#include <dlfcn.h>
#include <sodium.h>

#include <array>
#include <cstdlib>
#include <cstring>
#include <mutex>
#include <optional>
#include <unordered_map>

namespace {

using Verify = int (*)(const unsigned char*, const unsigned char*, unsigned long long, const unsigned char*);
using Sign = int (*)(unsigned char*, unsigned long long*, const unsigned char*, unsigned long long, const unsigned char*);
using Asked = std::array<unsigned char, 32>;

constexpr std::size_t kMostKept = 100'000;

template <class Function>
Function libsodiums(const char* name) {
  void* found = dlsym(RTLD_NEXT, name);
  if (found == nullptr) std::abort();
  return reinterpret_cast<Function>(found);
}

Asked asked_of(const unsigned char* signature, const unsigned char* message, unsigned long long size, const unsigned char* key) {
  Asked asked{};
  crypto_generichash_state state;
  crypto_generichash_init(&state, nullptr, 0, asked.size());
  crypto_generichash_update(&state, signature, crypto_sign_BYTES);
  crypto_generichash_update(&state, key, crypto_sign_PUBLICKEYBYTES);
  crypto_generichash_update(&state, message, size);
  crypto_generichash_final(&state, asked.data(), asked.size());
  return asked;
}

class Answers {
 public:
  std::optional<int> find(const Asked& asked) {
    const std::lock_guard guard(mutex_);
    const auto found = held_.find(asked);
    return found == held_.end() ? std::nullopt : std::optional(found->second);
  }
  void keep(const Asked& asked, int answer) {
    const std::lock_guard guard(mutex_);
    if (held_.size() >= kMostKept) held_.clear();
    held_.emplace(asked, answer);
  }

 private:
  /// Some of a digest is as good a hash as any.
  struct Hash {
    std::size_t operator()(const Asked& asked) const {
      std::size_t out = 0;
      std::memcpy(&out, asked.data(), sizeof out);
      return out;
    }
  };
  std::mutex mutex_;
  std::unordered_map<Asked, int, Hash> held_;
};

Answers answers;

}  // namespace

extern "C" int crypto_sign_verify_detached(const unsigned char* signature, const unsigned char* message, unsigned long long size,
                                           const unsigned char* key) {
  static const auto verify = libsodiums<Verify>("crypto_sign_verify_detached");
  const Asked asked = asked_of(signature, message, size, key);
  if (const auto known = answers.find(asked)) return *known;
  const int answer = verify(signature, message, size, key);
  answers.keep(asked, answer);
  return answer;
}

extern "C" int crypto_sign_detached(unsigned char* signature, unsigned long long* signature_size, const unsigned char* message,
                                    unsigned long long size, const unsigned char* secret_key) {
  static const auto sign = libsodiums<Sign>("crypto_sign_detached");
  const int result = sign(signature, signature_size, message, size, secret_key);
  // The second half of libsodium's secret key is the public one.
  if (result == 0) answers.keep(asked_of(signature, message, size, secret_key + crypto_sign_SEEDBYTES), 0);
  return result;
}
