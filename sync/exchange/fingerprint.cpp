#include "sync/exchange/fingerprint.h"

#include <sodium/crypto_hash_sha256.h>

#include <algorithm>

#include "sync/exchange/reconcile_wire.h"

namespace weavelog {
namespace {

constexpr std::size_t kWordBytes = 8;

std::uint64_t word_at(const Digest& id, std::size_t index) {
  std::uint64_t word = 0;
  for (std::size_t k = kWordBytes; k-- > 0;) word = word << 8 | id[index * kWordBytes + k];
  return word;
}

}  // namespace

void IdSum::add(const Digest& id) {
  IdSum one;
  for (std::size_t i = 0; i < one.words_.size(); ++i) one.words_[i] = word_at(id, i);
  add(one);
}

void IdSum::add(const IdSum& part) {
  std::uint64_t carry = 0;
  for (std::size_t i = 0; i < words_.size(); ++i) {
    const std::uint64_t with_carry = words_[i] + carry;
    const std::uint64_t sum = with_carry + part.words_[i];
    // At most one of the two additions can wrap: after the first does, with_carry is 0.
    carry = (with_carry < carry || sum < with_carry) ? 1 : 0;
    words_[i] = sum;
  }
}

void IdSum::subtract(const IdSum& part) {
  std::uint64_t borrow = 0;
  for (std::size_t i = 0; i < words_.size(); ++i) {
    const std::uint64_t before = words_[i];
    const std::uint64_t less = before - part.words_[i];
    words_[i] = less - borrow;
    borrow = (before < part.words_[i] || less < borrow) ? 1 : 0;
  }
}

RangeFingerprint IdSum::fingerprint(std::uint64_t count) const {
  Bytes hashed;
  for (const std::uint64_t word : words_) {
    for (std::size_t k = 0; k < kWordBytes; ++k) hashed.push_back(static_cast<std::uint8_t>(word >> 8 * k));
  }
  append_range_varint(hashed, count);
  std::array<std::uint8_t, crypto_hash_sha256_BYTES> hash{};
  crypto_hash_sha256(hash.data(), hashed.data(), hashed.size());
  RangeFingerprint out{};
  std::copy_n(hash.begin(), out.size(), out.begin());
  return out;
}

}  // namespace weavelog
