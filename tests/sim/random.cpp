#include "tests/sim/random.h"

#include <malloc.h>
#include <sodium.h>
#include <sqlite3.h>

#include <stdexcept>

#include "core/base/id.h"

namespace weavelog::sim {
namespace {

Random& library_random() {
  static Random random;
  return random;
}

const char* name() {
  return "weavelog-sim";
}
std::uint32_t number() {
  return static_cast<std::uint32_t>(library_random().next());
}
void fill(void* out, std::size_t size) {
  auto* bytes = static_cast<std::uint8_t*>(out);
  for (std::size_t i = 0; i < size; i += 8) {
    const std::uint64_t word = library_random().next();
    for (std::size_t k = 0; k < 8 && i + k < size; ++k)
      bytes[i + k] = static_cast<std::uint8_t>(word >> (8 * k));
  }
}

void install() {
  static randombytes_implementation ours{name, number, nullptr, nullptr, fill, nullptr};
  static const bool installed = [] {
    // One thread only: without its locks and statistics SQLite is faster.
    sqlite3_config(SQLITE_CONFIG_SINGLETHREAD);
    sqlite3_config(SQLITE_CONFIG_MEMSTATUS, 0);
    sqlite3_config(SQLITE_CONFIG_LOOKASIDE, 1200, 300);
    // Devices come and go: memory that was given back is not returned to the kernel in between.
    mallopt(M_MMAP_THRESHOLD, 1 << 30);
    mallopt(M_TRIM_THRESHOLD, 1 << 30);
    mallopt(M_TOP_PAD, 64 << 20);
    if (randombytes_set_implementation(&ours) != 0 || sodium_init() < 0)
      throw std::logic_error("libsodium does not start");
    return true;
  }();
  static_cast<void>(installed);
}

}  // namespace

void seed_libraries(std::uint64_t seed) {
  install();
  library_random() = Random(seed);
  sqlite3_test_control(SQLITE_TESTCTRL_PRNG_SEED, static_cast<int>(seed % 0x7fffffff) + 1, nullptr);
  // Identifiers count up from the one before for a minute, also across runs: leave that minute.
  (void)make_id<EntityId>(1);
  (void)make_id<EntityId>(1'000'000);
}

}  // namespace weavelog::sim
