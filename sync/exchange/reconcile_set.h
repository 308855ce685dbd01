#pragma once
// The items of one side of a reconciliation, sorted, with the sums of their ids: kept up to date change by change, so that
// nothing is sorted or summed anew when two devices meet.

#include <memory>
#include <vector>

#include "sync/exchange/fingerprint.h"
#include "sync/exchange/reconcile_wire.h"

namespace weavelog {

/// Copies share what they have in common, so a copy is cheap and stays as it is. Not thread-safe.
class ReconcileSet {
 public:
  ReconcileSet() = default;
  /// Items in any order; doubles count once. Throws std::invalid_argument for a stamp of 2^64 - 1, as insert() does.
  explicit ReconcileSet(std::vector<ReconcileItem> items);

  void insert(const ReconcileItem& item);
  void erase(const ReconcileItem& item);

  [[nodiscard]] std::size_t size() const { return starts_.back(); }
  [[nodiscard]] const ReconcileItem& at(std::size_t index) const;
  /// The first item that is not before the bound.
  [[nodiscard]] std::size_t lower_bound(const RangeBound& bound) const;
  /// Over the items from `begin` until before `end`.
  [[nodiscard]] RangeFingerprint fingerprint(std::size_t begin, std::size_t end) const;

 private:
  struct Block {
    std::vector<ReconcileItem> items;
    IdSum sum;
  };

  [[nodiscard]] std::size_t block_of(std::size_t index) const;
  [[nodiscard]] std::size_t block_for(const ReconcileItem& item) const;
  [[nodiscard]] IdSum sum_before(std::size_t index) const;
  /// A block that no copy shares.
  [[nodiscard]] Block& own(std::size_t block);
  void count_from(std::size_t block);

  std::vector<std::shared_ptr<Block>> blocks_;
  std::vector<std::size_t> starts_{0};  ///< index of the first item of each block, and of the end
  std::vector<IdSum> sums_{1};          ///< of all items before each block, and of all
};

}  // namespace weavelog
