#include "sync/exchange/reconcile_set.h"

#include <algorithm>
#include <stdexcept>

namespace weavelog {
namespace {

constexpr std::size_t kFill = 128;  // items of a new block; one of twice as many is split

void check(const ReconcileItem& item) {
  if (item.stamp == kInfiniteStamp) throw std::invalid_argument("ReconcileSet: the stamp 2^64 - 1 is reserved");
}

IdSum sum_of(const std::vector<ReconcileItem>& items) {
  IdSum sum;
  for (const ReconcileItem& item : items) sum.add(item.id);
  return sum;
}

}  // namespace

ReconcileSet::ReconcileSet(std::vector<ReconcileItem> items) {
  std::sort(items.begin(), items.end());
  items.erase(std::unique(items.begin(), items.end()), items.end());
  if (!items.empty()) check(items.back());
  for (std::size_t begin = 0; begin < items.size(); begin += kFill) {
    const auto first = items.begin() + static_cast<std::ptrdiff_t>(begin);
    const auto last = items.begin() + static_cast<std::ptrdiff_t>(std::min(begin + kFill, items.size()));
    auto block = std::make_shared<Block>();
    block->items.assign(first, last);
    block->sum = sum_of(block->items);
    blocks_.push_back(std::move(block));
  }
  count_from(0);
}

void ReconcileSet::count_from(std::size_t block) {
  starts_.resize(blocks_.size() + 1);
  sums_.resize(blocks_.size() + 1);
  for (std::size_t i = block; i < blocks_.size(); ++i) {
    starts_[i + 1] = starts_[i] + blocks_[i]->items.size();
    sums_[i + 1] = sums_[i];
    sums_[i + 1].add(blocks_[i]->sum);
  }
}

ReconcileSet::Block& ReconcileSet::own(std::size_t block) {
  auto& held = blocks_[block];
  if (held.use_count() > 1) held = std::make_shared<Block>(*held);
  return *held;
}

std::size_t ReconcileSet::block_of(std::size_t index) const {
  return static_cast<std::size_t>(std::upper_bound(starts_.begin(), starts_.end(), index) - starts_.begin()) - 1;
}

/// The block in which the item is or belongs: the last that does not begin after it.
std::size_t ReconcileSet::block_for(const ReconcileItem& item) const {
  const auto after = std::upper_bound(blocks_.begin(), blocks_.end(), item,
                                      [](const ReconcileItem& one, const auto& block) { return one < block->items.front(); });
  return after == blocks_.begin() ? 0 : static_cast<std::size_t>(after - blocks_.begin()) - 1;
}

void ReconcileSet::insert(const ReconcileItem& item) {
  check(item);
  if (blocks_.empty()) blocks_.push_back(std::make_shared<Block>());
  const std::size_t at = size() == 0 ? 0 : block_for(item);
  {
    const auto& items = blocks_[at]->items;
    if (std::binary_search(items.begin(), items.end(), item)) return;
  }
  Block& block = own(at);
  block.items.insert(std::lower_bound(block.items.begin(), block.items.end(), item), item);
  block.sum.add(item.id);
  if (block.items.size() >= 2 * kFill) {
    auto upper = std::make_shared<Block>();
    upper->items.assign(block.items.begin() + kFill, block.items.end());
    upper->sum = sum_of(upper->items);
    block.items.resize(kFill);
    block.sum.subtract(upper->sum);
    blocks_.insert(blocks_.begin() + static_cast<std::ptrdiff_t>(at) + 1, std::move(upper));
  }
  count_from(at);
}

void ReconcileSet::erase(const ReconcileItem& item) {
  if (size() == 0) return;
  const std::size_t at = block_for(item);
  {
    const auto& items = blocks_[at]->items;
    if (!std::binary_search(items.begin(), items.end(), item)) return;
  }
  Block& block = own(at);
  block.items.erase(std::lower_bound(block.items.begin(), block.items.end(), item));
  block.sum = sum_of(block.items);
  if (block.items.empty()) blocks_.erase(blocks_.begin() + static_cast<std::ptrdiff_t>(at));
  count_from(std::min(at, blocks_.size()));
}

const ReconcileItem& ReconcileSet::at(std::size_t index) const {
  const std::size_t block = block_of(index);
  return blocks_[block]->items[index - starts_[block]];
}

std::size_t ReconcileSet::lower_bound(const RangeBound& bound) const {
  if (size() == 0) return 0;
  const std::size_t block = block_for(bound);
  const auto& items = blocks_[block]->items;
  return starts_[block] + static_cast<std::size_t>(std::lower_bound(items.begin(), items.end(), bound) - items.begin());
}

IdSum ReconcileSet::sum_before(std::size_t index) const {
  const std::size_t block = block_of(index);
  IdSum sum = sums_[block];
  for (std::size_t i = starts_[block]; i < index; ++i) sum.add(blocks_[block]->items[i - starts_[block]].id);
  return sum;
}

RangeFingerprint ReconcileSet::fingerprint(std::size_t begin, std::size_t end) const {
  IdSum sum = sum_before(end);
  sum.subtract(sum_before(begin));
  return sum.fingerprint(end - begin);
}

}  // namespace weavelog
