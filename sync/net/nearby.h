#pragma once
// "Who is near": hosts answer on UDP at the number of their TCP port, guests ask by broadcast on every
// interface and on this machine; and both by DNS-SD where the system has it. Answers are hints and nothing is trusted for them (nearby_datagram.h).

#include <chrono>
#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "core/base/outcome.h"
#include "sync/net/nearby_list.h"

namespace weavelog {

struct NearbyHostOptions {
  std::string address = "0.0.0.0";  ///< as WebHostOptions::address
  NearbyOffer offer;                ///< answers come from UDP port `offer.port`
  bool dns_sd = true;               ///< published by DNS-SD too, where the system has it (dns_sd.h); not on a loopback address
  int answers_per_second = 100;
  int answers_per_asker = 8;        ///< the same for one address
  int datagrams_per_second = 1000;  ///< beyond that nothing is read until the second is over
};

/// Answers queries, on one thread of its own, so that no flood of them disturbs the exchange.
class NearbyHost {
 public:
  /// Answers when this returns. Faults: locked (the port is taken), bad_input (address), io.
  [[nodiscard]] static Outcome<std::unique_ptr<NearbyHost>> start(NearbyHostOptions options);
  /// Stops and waits.
  ~NearbyHost();
  NearbyHost(const NearbyHost&) = delete;
  NearbyHost& operator=(const NearbyHost&) = delete;

  /// The event's name from now on. Any thread.
  void set_event(std::string event);
  /// How many queries were answered so far. Any thread.
  [[nodiscard]] std::uint64_t answered() const;

 private:
  class Impl;
  explicit NearbyHost(std::shared_ptr<Impl> impl);
  std::shared_ptr<Impl> impl_;
};

struct NearbySearchOptions {
  std::vector<std::uint16_t> ports;       ///< to ask at beside kDefaultPort; at most 16 of them are
  std::chrono::milliseconds pace{2'000};  ///< between queries; the second one follows soon after the first
  std::chrono::milliseconds life = NearbyList::kLife;
  bool dns_sd = true;                     ///< looks by DNS-SD too, where the system has it
  /// The servers are others than before; on the search's thread.
  std::function<void()> on_change;
};

/// Asks and listens, on one thread of its own, as long as it exists.
class NearbySearch {
 public:
  /// Begins at once. Without a network it finds nobody, and goes on trying.
  explicit NearbySearch(NearbySearchOptions options);
  /// Stops and waits. Not on its own thread.
  ~NearbySearch();
  NearbySearch(const NearbySearch&) = delete;
  NearbySearch& operator=(const NearbySearch&) = delete;

  /// Who answered lately, by name. Any thread.
  [[nodiscard]] std::vector<NearbyServer> servers() const;

 private:
  class Impl;
  std::shared_ptr<Impl> impl_;
};

}  // namespace weavelog
