#pragma once
// Workplace: a station at work at one host's event. What is written here goes to that host, unless it may not.

#include <functional>
#include <mutex>
#include <optional>

#include "sync/exchange/station.h"

namespace weavelog {

/// The event of a host, as it said when it was last talked to; none before.
[[nodiscard]] BookId event_of_host(const Ledger& ledger, const PublicKey& host);
[[nodiscard]] Outcome<> remember_event_of_host(Ledger& ledger, const PublicKey& host, const BookId& event);

/// Thread-safe.
class Workplace {
 public:
  /// `station` must outlive it. `may_leave` decides by consent and kind of book.
  Workplace(Station& station, std::function<bool(const BookId&, BookKind)> may_leave);

  /// The host whose event this is; none while travelling.
  void set_host(std::optional<PublicKey> host);
  [[nodiscard]] std::optional<PublicKey> host() const;

  /// Writes the action and puts its book into the host's scope, from which it goes there as far as it may leave; the book of another event
  /// than the host's stays out of it. Faults: refused (its role there allows no such thing), those of Ledger::append and PeerStore.
  [[nodiscard]] Outcome<Committed> commit(const Draft& draft);
  /// Ticks books for the host. Those that may not leave are refused, by name of their number.
  [[nodiscard]] Outcome<> tick(const std::vector<BookId>& books);
  [[nodiscard]] bool is_ticked(const BookId& book) const;

  [[nodiscard]] Station& station() { return station_; }
  [[nodiscard]] const std::function<bool(const BookId&, BookKind)>& may_leave() const { return may_leave_; }

 private:
  Station& station_;
  std::function<bool(const BookId&, BookKind)> may_leave_;
  mutable std::mutex mutex_;
  std::optional<PublicKey> host_;
};

}  // namespace weavelog
