#pragma once
// Finds heads by their author. A faulty device can give a book tens of thousands of chains, and where two lists are compared, looking each up in turn takes
// the square of that.

#include <optional>
#include <unordered_map>
#include <vector>

#include "core/base/salted_hash.h"
#include "core/log/batch.h"

namespace weavelog {

/// Of heads in any order, which must outlive it and may only grow meanwhile (`added`). Of an author that is listed twice the first counts.
class HeadIndex {
 public:
  explicit HeadIndex(const std::vector<Head>& heads);
  /// Null if there is none.
  [[nodiscard]] const Head* find(const AuthorId& author) const;
  [[nodiscard]] std::optional<std::size_t> place(const AuthorId& author) const;
  /// One more stands at the end.
  void added();

 private:
  const std::vector<Head>& heads_;
  std::unordered_map<AuthorId, std::size_t, SaltedIdHash> places_;  ///< empty while there are few: then looking at each is quicker
};

}  // namespace weavelog
