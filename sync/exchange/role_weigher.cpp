#include "sync/exchange/role_weigher.h"

#include <algorithm>
#include <map>
#include <vector>

namespace weavelog {
namespace {

/// True if one of the author's entries up to `head` is such that `may` says no.
template <class May>
bool holds_such(const Ledger& ledger, const BookId& book, const AuthorId& author, std::uint64_t head, const May& may) {
  for (std::uint64_t at = head; at > 0; --at)
    if (const auto entry = ledger.entry(book, author, at); entry && !may(entry->action)) return true;
  return false;
}

}  // namespace

std::optional<AuthorCard> RoleWeigher::beyond(const PublicKey& bringer, Role role, const RoomRights& rights, OwnWords own, const Batch& batch) {
  if (role == Role::head) return std::nullopt;
  std::vector<std::optional<bool>> strangers(batch.authors.size());
  std::map<std::uint32_t, Heads> heads;
  for (const BatchEntry& entry : batch.entries) {
    if (entry.author >= batch.authors.size() || entry.book >= batch.books.size()) continue;
    const AuthorCard& card = batch.authors[entry.author];
    const BatchBook& book = batch.books[entry.book];
    const bool of_bringer = card.key == bringer;
    auto& stranger = strangers[entry.author];
    if (!of_bringer && !stranger) stranger = nobody_knows(card.key);
    if (!of_bringer && !*stranger) continue;
    const auto may = [&](ActionKind action) { return rights.may_write(role, book, action); };
    const auto action = action_in(entry.body);
    if (!action || may(*action)) continue;
    if (of_bringer && own == OwnWords::all) return card;
    const AuthorId author = card.id();
    if (said_such_.contains({role, book.id, author})) continue;
    const auto [held, fresh] = heads.try_emplace(entry.book);
    if (fresh) held->second = ledger_.heads(book.id);
    const auto head = std::find_if(held->second.begin(), held->second.end(), [&](const Head& one) { return one.author == author; });
    if (head == held->second.end()) return card;
    if (head->seq >= entry.seq) continue;
    if (!holds_such(ledger_, book.id, author, head->seq, may)) return card;
    said_such_.emplace(role, book.id, author);
  }
  return std::nullopt;
}

bool RoleWeigher::nobody_knows(const PublicKey& key) {
  if (known_.contains(key)) return false;
  const auto device = devices_.member(key);
  // A device that was revoked is known: what it wrote and others bring is taken, counted and told.
  const bool known = device || device.error().code == FaultCode::refused || key == ledger_.self().key || devices_.host(key);
  if (known) known_.insert(key);
  return !known;
}

}  // namespace weavelog
