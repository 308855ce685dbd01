#pragma once
// What both sides of entry_columns.cpp remember while they go over a batch. For that file only.

#include <algorithm>
#include <array>
#include <cstdint>
#include <optional>
#include <unordered_map>
#include <vector>

#include "core/base/salted_hash.h"
#include "core/log/archive.h"
#include "core/log/entry.h"

namespace weavelog {

inline constexpr std::size_t kRecent = 256;
using IdBytes = std::array<std::uint8_t, 16>;

/// Ids with their numbers, and those used last in front.
class IdTable {
 public:
  [[nodiscard]] std::size_t size() const { return ids_.size(); }
  [[nodiscard]] const IdBytes& at(std::uint64_t number) const {
    if (number >= ids_.size()) throw ArchiveError("an id that was not said");
    return ids_[static_cast<std::size_t>(number)];
  }
  [[nodiscard]] std::optional<std::uint32_t> find(const IdBytes& id) const {
    const auto found = numbers_.find(id);
    return found == numbers_.end() ? std::nullopt : std::optional(found->second);
  }
  std::uint32_t add(const IdBytes& id) {
    const auto number = static_cast<std::uint32_t>(ids_.size());
    ids_.push_back(id);
    numbers_.emplace(id, number);
    recent_.insert(recent_.begin(), number);
    if (recent_.size() > kRecent) recent_.pop_back();
    return number;
  }
  /// Its place among those used last, kRecent if it is not there.
  [[nodiscard]] std::size_t place(std::uint32_t number) const {
    const auto found = std::find(recent_.begin(), recent_.end(), number);
    return found == recent_.end() ? kRecent : static_cast<std::size_t>(found - recent_.begin());
  }
  [[nodiscard]] std::uint32_t at_place(std::uint64_t place) const {
    if (place >= recent_.size()) throw ArchiveError("an id that was not used");
    return recent_[static_cast<std::size_t>(place)];
  }
  void use(std::uint32_t number) {
    const auto found = std::find(recent_.begin(), recent_.end(), number);
    if (found == recent_.end()) {
      recent_.insert(recent_.begin(), number);
      if (recent_.size() > kRecent) recent_.pop_back();
    } else {
      std::rotate(recent_.begin(), found, found + 1);
    }
  }

 private:
  std::vector<IdBytes> ids_;
  std::unordered_map<IdBytes, std::uint32_t, SaltedIdHash> numbers_;
  std::vector<std::uint32_t> recent_;
};

/// Which column belongs to a key. Most questions are about few keys.
class OpenedColumns {
 public:
  /// The key's column; `fresh` becomes true, and `next` its column, if it has none yet.
  std::size_t find(std::uint64_t key, std::size_t next, bool& fresh) {
    Near& near = near_[static_cast<std::size_t>(key % near_.size())];
    if (near.key == key + 1) return near.column;
    const auto [found, added] = columns_.try_emplace(key, next);
    fresh = added;
    near = {key + 1, found->second};
    return found->second;
  }

 private:
  struct Near {
    std::uint64_t key = 0;  ///< and one
    std::size_t column = 0;
  };
  std::array<Near, 509> near_{};
  std::unordered_map<std::uint64_t, std::size_t> columns_;
};

/// The write that last set each field in this batch: a table of slots, since it is asked once for every
/// write.
class LastWrites {
 public:
  struct Said {
    std::uint32_t entry = 0;  ///< how many entries had been gone over with it; 0: nobody has set the field
    std::uint32_t index = 0;  ///< of the write in it
    [[nodiscard]] bool given() const { return entry != 0; }
  };
  /// To be read and set at once: the next call may move it.
  [[nodiscard]] Said& of(std::uint32_t entity, FieldTag tag) {
    if (used_ * 2 > slots_.size()) grow();
    const std::uint64_t key = (std::uint64_t{entity} + 1) << 32 | static_cast<std::uint32_t>(tag);
    Slot& slot = slots_[place(key)];
    if (slot.key == 0) {
      slot.key = key;
      ++used_;
    }
    return slot.said;
  }

 private:
  struct Slot {
    std::uint64_t key = 0;  ///< 0: free
    Said said;
  };
  /// Where the key is, or the free slot where it belongs.
  [[nodiscard]] std::size_t place(std::uint64_t key) const {
    const std::size_t mask = slots_.size() - 1;
    std::size_t at = static_cast<std::size_t>(mixed(key + salt_)) & mask;
    while (slots_[at].key != 0 && slots_[at].key != key) at = (at + 1) & mask;
    return at;
  }
  void grow() {
    std::vector<Slot> before(slots_.size() * 2);
    before.swap(slots_);
    for (const Slot& slot : before)
      if (slot.key != 0) slots_[place(slot.key)] = slot;
  }

  std::uint64_t salt_ = process_salt();
  std::vector<Slot> slots_ = std::vector<Slot>(64);  ///< a power of two
  std::size_t used_ = 0;
};

}  // namespace weavelog
