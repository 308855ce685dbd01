#pragma once
// Which books may cross to a peer, with a digest over them: brought up to date by what the ledger has got since, so that
// neither consent nor heads of all books are asked for anew at every comparison.

#include <deque>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "core/base/salted_hash.h"
#include "core/store/ledger.h"
#include "sync/exchange/reconcile_set.h"

namespace weavelog {

/// What `may_leave` goes by beside the books themselves.
struct LeaveRule {
  BookId room;             ///< the event at which the exchange is
  std::uint64_t mark = 0;  ///< changes with whatever else the answers depend on
  bool operator==(const LeaveRule&) const = default;
};

/// Thread-safe.
class CommonBooks {
 public:
  using MayCross = std::function<bool(const BookId&, BookKind)>;
  using Compared = std::function<Digest(const BookInfo&)>;

  /// For one session that compares something else of some books than their heads. It understands the items of this one too.
  [[nodiscard]] std::shared_ptr<CommonBooks> copy_comparing(Compared compared) const;

  /// Brings it up to the ledger's newest entry. Books with new entries are asked for anew, since a consent is an entry of
  /// its book; every book is, if `mark` is another one than before, and without one: for a `may_cross` that depends on more than the books.
  void refresh(const Ledger& ledger, const MayCross& may_cross, std::optional<std::uint64_t> mark);
  /// Asks for those of them that it does not hold: they came into the scope.
  void revisit(const Ledger& ledger, const MayCross& may_cross, const std::vector<BookId>& books);
  /// How much of a scope was visited.
  [[nodiscard]] std::size_t scope_visited() const;
  void set_scope_visited(std::size_t books);

  [[nodiscard]] bool holds(const BookId& book) const;
  [[nodiscard]] std::size_t size() const;
  /// Equal on both sides exactly if both hold the same entries of the same books.
  [[nodiscard]] Digest digest() const;
  /// As they are now.
  [[nodiscard]] ReconcileSet items() const;
  /// The books that these items stand for; what is not held any more is left out.
  [[nodiscard]] std::vector<BookInfo> books_of(const std::vector<Digest>& items) const;

 private:
  struct Held {
    BookKind kind{};
    Digest heads{};
    Digest item{};
  };
  void take(const BookInfo& book, bool crosses);
  void take_all(const std::vector<BookInfo>& books, const std::vector<bool>& cross);
  void note_replaced(const BookId& book, const Digest& item);

  Compared compared_;         ///< empty: the heads
  mutable std::mutex mutex_;  ///< never held while the ledger is read
  std::size_t scope_visited_ = 0;
  std::int64_t position_ = 0;
  std::int64_t deletions_ = -1;
  std::optional<std::uint64_t> mark_;
  std::unordered_map<BookId, Held, SaltedIdHash> books_;
  ReconcileSet items_;
  /// Items that stood for a book a while ago: a peer may speak of them until it has heard of what replaced them.
  std::unordered_map<std::string, BookId> replaced_;
  std::deque<std::string> replaced_order_;
};

}  // namespace weavelog
