#include "core/log/head_index.h"

namespace weavelog {
namespace {

constexpr std::size_t kFew = 16;

}  // namespace

HeadIndex::HeadIndex(const std::vector<Head>& heads) : heads_(heads) {
  if (heads.size() <= kFew) return;
  places_.reserve(heads.size());
  for (std::size_t i = 0; i < heads.size(); ++i) places_.emplace(heads[i].author, i);
}

const Head* HeadIndex::find(const AuthorId& author) const {
  const auto at = place(author);
  return at ? &heads_[*at] : nullptr;
}

std::optional<std::size_t> HeadIndex::place(const AuthorId& author) const {
  if (!places_.empty()) {
    const auto found = places_.find(author);
    return found == places_.end() ? std::nullopt : std::optional(found->second);
  }
  for (std::size_t i = 0; i < heads_.size(); ++i)
    if (heads_[i].author == author) return i;
  return std::nullopt;
}

void HeadIndex::added() {
  if (!places_.empty()) {
    places_.emplace(heads_.back().author, heads_.size() - 1);
  } else if (heads_.size() > kFew) {
    for (std::size_t i = 0; i < heads_.size(); ++i) places_.emplace(heads_[i].author, i);
  }
}

}  // namespace weavelog
