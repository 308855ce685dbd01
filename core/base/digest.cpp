#include "core/base/digest.h"

#include <sodium.h>

#include <new>

namespace weavelog {
namespace {
crypto_generichash_state* state_in(std::array<std::uint8_t, 384>& raw) {
  static_assert(sizeof(crypto_generichash_state) <= sizeof(raw));
  return std::launder(reinterpret_cast<crypto_generichash_state*>(raw.data()));
}
}  // namespace

Digester::Digester() : state_{} {
  new (state_.data()) crypto_generichash_state;
  crypto_generichash_init(state_in(state_), nullptr, 0, sizeof(Digest));
}

void Digester::add(ByteView bytes) { crypto_generichash_update(state_in(state_), bytes.data(), bytes.size()); }

Digest Digester::finish() {
  Digest out;
  crypto_generichash_final(state_in(state_), out.data(), out.size());
  return out;
}

Digest digest_of(std::initializer_list<ByteView> parts) {
  Digester digester;
  for (const auto part : parts) digester.add(part);
  return digester.finish();
}

}  // namespace weavelog
