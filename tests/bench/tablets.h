#pragma once
// Many tablets in one process, each a station of its own, live at one real server. Used by the bench and by
// the faults.

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "sync/exchange/station.h"
#include "sync/net/exchange_guest.h"

namespace weavelog::bench {

class Tablets {
 public:
  /// `below`: where their folders are made.
  explicit Tablets(std::filesystem::path below) : below_(std::move(below)) {}

  /// One more for each invitation; they stay connected. A few pair at a time: pairing is dear. Throws
  /// std::runtime_error if one does not come to agree within two minutes.
  void add(const std::vector<std::string>& codes);
  /// Waits until all are connected and agree with the server. Throws as add().
  void await_all() const;

  [[nodiscard]] std::size_t size() const { return tablets_.size(); }
  [[nodiscard]] Ledger& ledger(std::size_t index) { return tablets_[index].station->ledger(); }
  /// All hold the same of every book.
  [[nodiscard]] bool hold_the_same() const;
  /// Those with a fault now, or with something in quarantine.
  [[nodiscard]] std::size_t errors() const;

 private:
  struct Tablet {
    std::unique_ptr<Station> station;
    std::unique_ptr<ExchangeGuest> guest;
  };
  std::filesystem::path below_;
  std::vector<Tablet> tablets_;
};

/// Books and a digest of what is held of each, by book: equal for those who hold the same.
[[nodiscard]] std::vector<BookInfo> holdings(const Ledger& ledger);

}  // namespace weavelog::bench
