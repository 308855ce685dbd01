#pragma once
// What this device remembers of each device that it exchanges with: which books cross, and up to where both agreed.
// Tables of their own (exchange_*) in the ledger's file.

#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "core/base/salted_hash.h"
#include "core/store/ledger.h"
#include "sync/exchange/common_books.h"
#include "sync/wire/messages.h"

namespace weavelog {

/// The last moment at which both proved to hold the same.
struct Agreement {
  AgreementToken token{};
  std::int64_t position = 0;  ///< of our ledger: what came later is not agreed yet
  Digest digest{};            ///< over the common books; as words on both screens
  std::uint64_t books = 0;
  UnixMs at = 0;
};

/// Entries of one book that crossed.
struct ExchangedCount {
  std::uint64_t sent = 0, received = 0;
};

/// That a device was given entries of a book about a person, or gave them.
struct Exchanged {
  BookId book;
  PublicKey peer{};
  ExchangedCount entries;
  UnixMs first = 0, last = 0;
};

/// In what a book about a person left this device without an exchange.
enum class HandedAs : std::uint8_t { bundle = 1, backup = 2, card = 3 };
/// "bundle", "backup", "card"; "" for another number.
[[nodiscard]] std::string_view name_of(HandedAs as);

/// That something was made which holds a book, or a part of it, for others. Who has it now nobody can tell.
struct HandedOn {
  BookId book;
  HandedAs as{};
  std::string receiver;  ///< for people: for whom it was made; "" for a card
  std::uint64_t times = 0;
  UnixMs first = 0, last = 0;
};

/// Chains that are noted for the first time as having come to a book that is kept apart, with the number up to which they were held before.
using ApartBegun = std::map<std::pair<BookId, AuthorId>, std::uint64_t>;

/// Thread-safe as the ledger is.
class PeerStore {
 public:
  /// `ledger` must outlive the store. Faults: those of Ledger::transact.
  [[nodiscard]] static Outcome<std::unique_ptr<PeerStore>> open(Ledger& ledger);

  /// The peer's number here, from 1; made at the first call. It marks where entries came from.
  [[nodiscard]] Outcome<std::int64_t> number_of(const PublicKey& peer);
  [[nodiscard]] std::optional<Agreement> agreement(std::int64_t peer) const;
  /// With what crossed since it was last noted, in one transaction.
  [[nodiscard]] Outcome<> agree(std::int64_t peer, const Agreement& agreement, const std::map<BookId, ExchangedCount>& exchanged = {});

  /// Books that a person ticked, or that came from the peer.
  [[nodiscard]] std::set<BookId> scope(std::int64_t peer) const;
  /// Also true for a book that was forgotten while it was in the scope.
  [[nodiscard]] bool in_scope(std::int64_t peer, const BookId& book) const;
  /// Books that were forgotten here are left out.
  [[nodiscard]] Outcome<> widen(std::int64_t peer, const std::vector<BookId>& books);
  /// A scope only grows: the books that came into it after the first `known`.
  [[nodiscard]] std::vector<BookId> scope_after(std::int64_t peer, std::size_t known) const;

  /// Books outside the scope of which the peer said something although they were here already, with what it said (session_scope.cpp).
  [[nodiscard]] std::map<BookId, Heads> apart(std::int64_t peer) const;
  /// Notes who speaks in these books of a batch, by their place in it, before it is taken in: whoever is cut off between the two must not take it for something
  /// that was here when it comes again. `keep_apart` comes after it.
  [[nodiscard]] Outcome<ApartBegun> begin_apart(std::int64_t peer, const Batch& batch, const std::vector<std::uint32_t>& books);
  /// Adds what the batch says of these of its books, by their place in it, as far as it was taken in; `begun` is what begin_apart gave for it.
  [[nodiscard]] Outcome<> keep_apart(std::int64_t peer, const Batch& batch, const std::vector<std::uint32_t>& books, const ApartBegun& begun);
  /// What it said by these authors is no longer what it holds.
  [[nodiscard]] Outcome<> forget_apart(std::int64_t peer, const BookId& book, const std::vector<AuthorId>& authors);
  /// Authors of what any peer so said of a book, also of one that was ticked since.
  [[nodiscard]] std::set<AuthorId> apart_authors(const BookId& book) const;

  /// The books in common with a peer, kept from one session to the next: what may leave depends on the books themselves and on
  /// `room` only. One for each peer with a scope of its own; all guests of an event server share one, under the number 0.
  [[nodiscard]] std::shared_ptr<CommonBooks> common_books(std::int64_t peer, const BookId& room);

  /// Adds to what crossed. Of books that are not held here (any more) nothing is kept.
  [[nodiscard]] Outcome<> note_exchanged(std::int64_t peer, const std::map<BookId, ExchangedCount>& entries, UnixMs at);
  /// Of one book or of all, newest first; erased with the book.
  [[nodiscard]] std::vector<Exchanged> exchanged(const std::optional<BookId>& book = {}) const;

  /// Adds one time for each of the books that are about a person and held here.
  [[nodiscard]] Outcome<> note_handed(HandedAs as, const std::string& receiver, std::span<const BookId> books, UnixMs at);
  /// Of one book or of all, newest first; erased with the book.
  [[nodiscard]] std::vector<HandedOn> handed(const std::optional<BookId>& book = {}) const;

  /// Up to which number (Forgotten::number) the peer was told of forgotten books.
  [[nodiscard]] std::int64_t told(std::int64_t peer) const;
  [[nodiscard]] Outcome<> tell(std::int64_t peer, std::int64_t number);
  /// Of how many books that were never here the peer said that they are forgotten.
  [[nodiscard]] std::uint64_t unheld_stubs(std::int64_t peer) const;
  [[nodiscard]] Outcome<> note_unheld_stubs(std::int64_t peer, std::uint64_t stubs);
  /// Books that the peer has forgotten and does not take, though this device still holds them: it was not in a position to order
  /// that they be forgotten here too.
  [[nodiscard]] std::set<BookId> declined(std::int64_t peer) const;
  [[nodiscard]] Outcome<> decline(std::int64_t peer, const std::vector<BookId>& books);

 private:
  explicit PeerStore(Ledger& ledger) : ledger_(ledger) {}

  /// As on disk, which nobody else writes; but books that were forgotten since stay in it, so that those who remember how much of
  /// it they saw need not count anew. They are in no ledger, so that nothing of them can cross.
  struct Scope {
    std::vector<BookId> order;
    std::unordered_set<BookId, SaltedIdHash> books;
  };
  /// Calls look(scope) under the lock, which is never held while the ledger is read or written.
  template <class Look>
  void with_scope(std::int64_t peer, Look look) const;

  Ledger& ledger_;
  mutable std::mutex mutex_;
  mutable std::unordered_map<std::int64_t, Scope> scopes_;
  std::uint64_t widened_ = 0;  ///< counts, so that a scope read from disk meanwhile is read again
  std::map<std::pair<std::int64_t, BookId>, std::shared_ptr<CommonBooks>> common_;
};

}  // namespace weavelog
