// Memory for a program that takes and gives back millions of small pieces a second: stacks of free blocks, one for each size, a set
// for each thread, without a word of bookkeeping in or in front of the blocks (whoever takes one writes to it; to read it first would be
// to wait for it). Debian's SQLite is built without its own store of small
// blocks, and was the greatest user of malloc here; both together cost a seventh of a run. Only the program is linked with this,
// not the tests of the simulator; and with a sanitizer, which has to see every block, it does nothing.

#include "tests/sim/memory.h"

#include <sqlite3.h>
#include <sys/mman.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <bit>
#include <cstdint>
#include <cstdlib>
#include <cstring>
#include <new>

#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)

void weavelog::sim::give_sqlite_memory() {}

#else

namespace {

// Addresses for all blocks together, of which only what is used is backed by memory. A piece of them holds blocks of one size.
constexpr std::size_t kReserved = std::size_t{8} << 30, kPiece = 64 * 1024, kPieces = kReserved / kPiece;
constexpr std::size_t kLargest = 16 * 1024;
// Multiples of 16 up to 256, then eight sizes between a power of two and the next.
constexpr std::size_t kSmall = 256, kClasses = kSmall / 16 + 8 * 6 + 1;

constexpr std::size_t class_of(std::size_t size) {
  if (size <= kSmall) return size == 0 ? 1 : (size + 15) / 16;
  const auto power = static_cast<std::size_t>(std::bit_width(size - 1));  // of the next power of two
  const std::size_t step = std::size_t{1} << (power - 4);
  return kSmall / 16 + (power - 9) * 8 + (size - (step << 3) + step - 1) / step;
}

constexpr std::size_t size_of(std::size_t size_class) {
  if (size_class <= kSmall / 16) return size_class * 16;
  const std::size_t doublings = (size_class - kSmall / 16 - 1) / 8, steps = (size_class - kSmall / 16 - 1) % 8 + 1;
  return (kSmall << doublings) + steps * (kSmall << doublings) / 8;
}
static_assert(class_of(kLargest) == kClasses - 1 && size_of(kClasses - 1) == kLargest);
static_assert(size_of(class_of(257)) == 288 && size_of(class_of(512)) == 512 && size_of(class_of(4360)) == 4608);

/// Where the free blocks of one size are.
struct Stack {
  void** begin = nullptr;
  std::size_t size = 0, room = 0;
  bool make_room(std::size_t more) {
    if (size + more <= room) return true;
    const std::size_t wanted = std::max(2 * room, size + more);
    auto* grown = static_cast<void**>(std::realloc(begin, wanted * sizeof(void*)));
    if (grown == nullptr) return false;
    begin = grown;
    room = wanted;
    return true;
  }
};

std::atomic<std::size_t> pieces_used{0};
std::array<std::uint8_t, kPieces> classes;  // of the pieces
thread_local std::array<Stack, kClasses> free_blocks;

char* reserved() {
  static char* const begin = [] {
    void* found = ::mmap(nullptr, kReserved, PROT_READ | PROT_WRITE, MAP_PRIVATE | MAP_ANONYMOUS | MAP_NORESERVE, -1, 0);
    if (found == MAP_FAILED) std::abort();
    return static_cast<char*>(found);
  }();
  return begin;
}

// For the quick question whether a block is one of these.
std::atomic<std::uintptr_t> first_address{~std::uintptr_t{0}};

/// Cuts a new piece into blocks. False if there is no more.
bool cut_piece(Stack& stack, std::size_t size_class) {
  const std::size_t size = size_of(size_class), count = kPiece / size;
  if (!stack.make_room(count)) return false;
  const std::size_t piece = pieces_used.fetch_add(1);
  if (piece >= kPieces) return false;
  char* begin = reserved();
  first_address.store(reinterpret_cast<std::uintptr_t>(begin), std::memory_order_relaxed);
  classes[piece] = static_cast<std::uint8_t>(size_class);
  for (std::size_t at = count; at-- > 0;) stack.begin[stack.size++] = begin + piece * kPiece + at * size;
  return true;
}

void* take(std::size_t size) {
  if (size > kLargest) return std::malloc(size);
  const std::size_t size_class = class_of(size);
  Stack& stack = free_blocks[size_class];
  if (stack.size == 0 && !cut_piece(stack, size_class)) return nullptr;
  return stack.begin[--stack.size];
}

/// 0: it is malloc's.
std::size_t class_at(const void* block) {
  const std::uintptr_t offset = reinterpret_cast<std::uintptr_t>(block) - first_address.load(std::memory_order_relaxed);
  return offset < kReserved ? classes[offset / kPiece] : 0;
}

void give(void* block) {
  if (block == nullptr) return;
  const std::size_t size_class = class_at(block);
  if (size_class == 0) return std::free(block);
  Stack& stack = free_blocks[size_class];
  if (stack.make_room(1)) stack.begin[stack.size++] = block;  // else it is lost, with a little of the memory that is short
}

// As sqlite3_mem_methods wants it. SQLite's sizes are positive; what malloc holds for it has its size in front.
constexpr std::size_t kFront = 16;

void* sqlite_take(int wanted) {
  const auto size = static_cast<std::size_t>(wanted);
  if (size <= kLargest) return take(size);
  auto* front = static_cast<char*>(std::malloc(size + kFront));
  if (front == nullptr) return nullptr;
  std::memcpy(front, &size, sizeof size);
  return front + kFront;
}

int sqlite_size(void* block) {
  if (block == nullptr) return 0;
  if (const std::size_t size_class = class_at(block); size_class != 0) return static_cast<int>(size_of(size_class));
  std::size_t size = 0;
  std::memcpy(&size, static_cast<char*>(block) - kFront, sizeof size);
  return static_cast<int>(size);
}

void sqlite_give(void* block) {
  if (block == nullptr) return;
  if (class_at(block) != 0) return give(block);
  std::free(static_cast<char*>(block) - kFront);
}

void* sqlite_resize(void* block, int wanted) {
  const int held = sqlite_size(block);
  if (wanted <= held && (wanted > held / 2 || held < 64)) return block;
  void* fresh = sqlite_take(wanted);
  if (fresh == nullptr) return nullptr;
  std::memcpy(fresh, block, static_cast<std::size_t>(std::min(held, wanted)));
  sqlite_give(block);
  return fresh;
}

int sqlite_round(int wanted) {
  const auto size = static_cast<std::size_t>(wanted);
  return static_cast<int>(size <= kLargest ? size_of(class_of(size)) : (size + 7) / 8 * 8);
}

int sqlite_begin(void*) { return SQLITE_OK; }
void sqlite_end(void*) {}

void* take_or_throw(std::size_t size) {
  void* block = take(size);
  if (block == nullptr) throw std::bad_alloc();
  return block;
}

}  // namespace

void weavelog::sim::give_sqlite_memory() {
  static const sqlite3_mem_methods methods{sqlite_take,  sqlite_give,  sqlite_resize, sqlite_size,
                                           sqlite_round, sqlite_begin, sqlite_end,    nullptr};
  if (sqlite3_config(SQLITE_CONFIG_MALLOC, &methods) != SQLITE_OK) std::abort();
}

void* operator new(std::size_t size) { return take_or_throw(size); }
void* operator new[](std::size_t size) { return take_or_throw(size); }
void* operator new(std::size_t size, const std::nothrow_t&) noexcept { return take(size); }
void* operator new[](std::size_t size, const std::nothrow_t&) noexcept { return take(size); }
void operator delete(void* block) noexcept { give(block); }
void operator delete[](void* block) noexcept { give(block); }
void operator delete(void* block, std::size_t) noexcept { give(block); }
void operator delete[](void* block, std::size_t) noexcept { give(block); }
void operator delete(void* block, const std::nothrow_t&) noexcept { give(block); }
void operator delete[](void* block, const std::nothrow_t&) noexcept { give(block); }

#endif
