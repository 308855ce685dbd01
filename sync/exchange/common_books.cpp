#include "sync/exchange/common_books.h"

#include <algorithm>

namespace weavelog {
namespace {

constexpr std::size_t kMostReplaced = 10'000;

std::uint64_t stamp_of(const BookId& book) {
  std::uint64_t stamp = 0;
  for (std::size_t i = 0; i < 8; ++i) stamp = (stamp << 8) | book.bytes[i];
  return stamp;
}

}  // namespace

std::shared_ptr<CommonBooks> CommonBooks::copy_comparing(Compared compared) const {
  auto out = std::make_shared<CommonBooks>();
  out->compared_ = std::move(compared);
  const std::lock_guard guard(mutex_);
  out->scope_visited_ = scope_visited_;
  out->position_ = position_;
  out->deletions_ = deletions_;
  out->mark_ = mark_;
  out->books_ = books_;
  out->items_ = items_;
  out->replaced_ = replaced_;
  out->replaced_order_ = replaced_order_;
  return out;
}

void CommonBooks::refresh(const Ledger& ledger, const MayCross& may_cross, std::optional<std::uint64_t> mark) {
  std::int64_t position = 0, deletions = 0;
  {
    const std::lock_guard guard(mutex_);
    position = !mark || mark != mark_ ? 0 : position_;
    deletions = deletions_;
  }
  auto since = ledger.books_since(position, deletions);
  std::vector<bool> cross;
  for (BookInfo& book : since.books) {
    cross.push_back(may_cross(book.id, book.kind));
    if (compared_ && cross.back()) book.heads = compared_(book);
  }
  const std::lock_guard guard(mutex_);
  if (since.position < position_ && since.deletions == deletions_) return;  // somebody else was quicker and saw more
  position_ = since.position;
  deletions_ = since.deletions;
  mark_ = mark;
  if (since.all) return take_all(since.books, cross);
  for (std::size_t i = 0; i < since.books.size(); ++i) take(since.books[i], cross[i]);
}

/// Sorted and summed once, which for many books is much faster than one after the other.
void CommonBooks::take_all(const std::vector<BookInfo>& books, const std::vector<bool>& cross) {
  const auto before = std::move(books_);
  books_.clear();
  std::vector<ReconcileItem> items;
  for (std::size_t i = 0; i < books.size(); ++i) {
    if (!cross[i]) continue;
    const Digest item = digest_of({books[i].id.bytes, books[i].heads});
    books_.emplace(books[i].id, Held{books[i].kind, books[i].heads, item});
    items.push_back({stamp_of(books[i].id), item});
  }
  items_ = ReconcileSet(std::move(items));
  for (const auto& [id, held] : before)
    if (const auto now = books_.find(id); now != books_.end() && now->second.item != held.item) note_replaced(id, held.item);
}

void CommonBooks::note_replaced(const BookId& book, const Digest& item) {
  if (replaced_.emplace(as_text(item), book).second) replaced_order_.emplace_back(as_text(item));
  if (replaced_order_.size() <= kMostReplaced) return;
  replaced_.erase(replaced_order_.front());
  replaced_order_.pop_front();
}

void CommonBooks::revisit(const Ledger& ledger, const MayCross& may_cross, const std::vector<BookId>& books) {
  for (const BookId& id : books) {
    if (holds(id) && !compared_) continue;  // where not all of a book is compared, that may be more of it now
    auto book = ledger.book(id);
    if (!book) continue;
    const bool crosses = may_cross(book->id, book->kind);
    if (compared_ && crosses) book->heads = compared_(*book);
    const std::lock_guard guard(mutex_);
    take(*book, crosses);
  }
}

std::size_t CommonBooks::scope_visited() const {
  const std::lock_guard guard(mutex_);
  return scope_visited_;
}

void CommonBooks::set_scope_visited(std::size_t books) {
  const std::lock_guard guard(mutex_);
  scope_visited_ = books;
}

void CommonBooks::take(const BookInfo& book, bool crosses) {
  if (const auto before = books_.find(book.id); before != books_.end()) {
    const Digest& item = before->second.item;
    items_.erase({stamp_of(book.id), item});
    note_replaced(book.id, item);
    books_.erase(before);
  }
  if (!crosses) return;
  const Digest item = digest_of({book.id.bytes, book.heads});
  books_.emplace(book.id, Held{book.kind, book.heads, item});
  items_.insert({stamp_of(book.id), item});
}

bool CommonBooks::holds(const BookId& book) const {
  const std::lock_guard guard(mutex_);
  return books_.contains(book);
}

std::size_t CommonBooks::size() const {
  const std::lock_guard guard(mutex_);
  return books_.size();
}

Digest CommonBooks::digest() const {
  const std::lock_guard guard(mutex_);
  return digest_of({as_bytes("weavelog common books 1"), items_.fingerprint(0, items_.size())});
}

ReconcileSet CommonBooks::items() const {
  const std::lock_guard guard(mutex_);
  return items_;
}

std::vector<BookInfo> CommonBooks::books_of(const std::vector<Digest>& items) const {
  std::vector<BookInfo> out;
  if (items.empty()) return out;
  std::unordered_set<std::string_view> wanted;
  for (const Digest& item : items) wanted.insert(as_text(item));
  const std::lock_guard guard(mutex_);
  std::unordered_set<BookId, SaltedIdHash> earlier;
  for (const std::string_view item : wanted)
    if (const auto found = replaced_.find(std::string(item)); found != replaced_.end()) earlier.insert(found->second);
  for (const auto& [id, held] : books_)
    if (wanted.contains(as_text(held.item)) || earlier.contains(id)) out.push_back({id, held.kind, held.heads});
  std::sort(out.begin(), out.end(), [](const BookInfo& a, const BookInfo& b) { return a.id < b.id; });
  return out;
}

}  // namespace weavelog
