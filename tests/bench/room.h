#pragma once
// Stations on disk with the demo's large data, and exchanges between them over TLS on loopback.

#include <filesystem>
#include <memory>
#include <optional>
#include <string>

#include "fixtures/demo/demo.h"
#include "sync/exchange/station.h"
#include "sync/net/exchange_guest.h"
#include "sync/net/exchange_host.h"
#include "tests/bench/relay.h"

namespace weavelog::bench {

template <class T>
T must(Outcome<T> outcome) {
  if (!outcome) throw std::runtime_error(outcome.error().message());
  if constexpr (!std::is_void_v<T>) return std::move(*outcome);
}

[[nodiscard]] std::unique_ptr<Station> open_station(const std::filesystem::path& folder,
                                                    const std::string& name);

/// Players with jobs in a new station's folder. Made in memory and copied to disk, which takes far less time
/// than one durable transaction an action; the file is the same.
void write_large(const std::filesystem::path& folder, const std::string& name, std::size_t players,
                 std::size_t jobs_per_player);

/// A host with a relay before it.
class Room {
 public:
  Room(const std::filesystem::path& folder, const std::string& name);

  [[nodiscard]] Station& desk() { return *desk_; }
  [[nodiscard]] Relay& relay() { return *relay_; }
  [[nodiscard]] PairingCode code();
  /// Whom a paired guest comes back to, by way of the relay.
  [[nodiscard]] ExchangeGuestOptions to_return(Station& guest);

 private:
  std::unique_ptr<Station> desk_;
  std::unique_ptr<ExchangeHost> host_;
  std::unique_ptr<Relay> relay_;
};

[[nodiscard]] bool has_agreed(const GuestStatus& status);
/// Connects, waits until both agree, ends; seconds from the connecting to the agreement. Throws if it takes
/// longer than five minutes or ends in a fault.
double exchange(Station& guest, ExchangeGuestOptions options);

/// Sets the mains tension of a player's setup to another value; one action. What was written, on disk when it returns.
Quantity change_tension(Ledger& ledger, const BookId& book, std::int64_t halves);
/// The mains tension of the player's setup, if the book is held and says one.
[[nodiscard]] std::optional<Quantity> tension_of(const Ledger& ledger, const BookId& book);
[[nodiscard]] std::vector<BookId> player_books(const Ledger& ledger);

/// A folder that goes with the bench.
class Scratch {
 public:
  explicit Scratch(const std::filesystem::path& below);
  ~Scratch();
  Scratch(const Scratch&) = delete;
  Scratch& operator=(const Scratch&) = delete;
  [[nodiscard]] std::filesystem::path operator/(const std::string& name) const { return path_ / name; }

 private:
  std::filesystem::path path_;
};

}  // namespace weavelog::bench
