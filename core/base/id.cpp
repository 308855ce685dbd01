#include "core/base/id.h"

#include <sodium.h>

namespace weavelog {

std::array<std::uint8_t, 16> uuid_v7(std::uint64_t unix_ms, std::uint16_t random_a, std::uint64_t random_b) {
  std::array<std::uint8_t, 16> out{};
  for (std::size_t i = 0; i < 6; ++i) out[i] = static_cast<std::uint8_t>(unix_ms >> (40 - 8 * i));
  out[6] = static_cast<std::uint8_t>(0x70 | ((random_a >> 8) & 0x0f));
  out[7] = static_cast<std::uint8_t>(random_a);
  for (std::size_t i = 0; i < 8; ++i) out[8 + i] = static_cast<std::uint8_t>(random_b >> (56 - 8 * i));
  out[8] = static_cast<std::uint8_t>(0x80 | (out[8] & 0x3f));
  return out;
}

namespace {

struct Next {
  std::uint64_t time_and_counter;  ///< 48 and 12 bits
  std::uint64_t tail;              ///< 62 bits of it are used
};

/// Within one millisecond the counter goes up from zero (RFC 9562 section 6.2, method 1), so that what one action makes sorts in
/// the order of making; a counter that is used up borrows from the next millisecond. The tail is drawn anew every minute or so and
/// counts up in between: as unlikely to be met twice as if drawn for every identifier, and devices spell it shorter.
Next next_of(std::uint64_t unix_ms) {
  constexpr std::uint64_t kDrawEvery = 1 << 16;
  struct Last {
    std::uint64_t asked_ms = ~std::uint64_t{0};
    std::uint64_t given = 0;
    std::uint64_t tail = 0;
  };
  thread_local Last last;
  if (unix_ms / kDrawEvery != last.asked_ms / kDrawEvery) randombytes_buf(&last.tail, sizeof last.tail);
  if (unix_ms == last.asked_ms) {
    ++last.given;
  } else {
    last.asked_ms = unix_ms;
    last.given = unix_ms << 12;
  }
  return {last.given, ++last.tail};
}

}  // namespace

template <class IdType>
IdType make_id(std::int64_t unix_ms) {
  const Next next = next_of(unix_ms < 0 ? 0 : static_cast<std::uint64_t>(unix_ms));
  IdType id;
  id.bytes = uuid_v7(next.time_and_counter >> 12, static_cast<std::uint16_t>(next.time_and_counter & 0xfff), next.tail);
  return id;
}
template BookId make_id<BookId>(std::int64_t);
template EntityId make_id<EntityId>(std::int64_t);
template AuthorId make_id<AuthorId>(std::int64_t);

std::string uuid_text(const std::array<std::uint8_t, 16>& bytes) {
  std::string out = to_hex(bytes);
  for (const std::size_t at : {20u, 16u, 12u, 8u}) out.insert(at, 1, '-');
  return out;
}

}  // namespace weavelog
