#pragma once
// Up to where the ledger goes, remembered so that whoever only asks whether there is news need not ask SQLite.

#include <cstdint>
#include <mutex>
#include <optional>

namespace weavelog {

/// Thread-safe.
class Newest {
 public:
  struct Place {
    std::int64_t position = 0;   ///< of the newest entry, 0 if there is none
    std::int64_t deletions = 0;  ///< entries that were ever deleted
  };

  /// What is remembered, or what `read()` finds on disk.
  template <class Read>
  Place get(Read&& read) {
    std::uint64_t before = 0;
    {
      const std::lock_guard guard(mutex_);
      if (place_) return *place_;
      before = changes_;
    }
    const Place found = read();
    const std::lock_guard guard(mutex_);
    if (changes_ == before) place_ = found;
    return found;
  }
  /// Entries were added, and none deleted. Called once they are on disk.
  void move_to(std::int64_t position) {
    const std::lock_guard guard(mutex_);
    ++changes_;
    if (place_) place_->position = position;
  }
  /// Anything may have happened.
  void forget() {
    const std::lock_guard guard(mutex_);
    ++changes_;
    place_.reset();
  }

 private:
  std::mutex mutex_;
  std::optional<Place> place_;
  std::uint64_t changes_ = 0;  ///< so that what was read before one is not remembered after it
};

}  // namespace weavelog
