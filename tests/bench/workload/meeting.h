#pragma once
// Two stations that exchange in one process: the real sessions and their frames, no socket between.

#include <cstddef>

#include "sync/exchange/station.h"

namespace weavelog::bench {

struct Meeting {
  double ms = 0;                     ///< from the first hello until both have agreed and have it on disk
  double guest_ms = 0, host_ms = 0;  ///< of which each
  std::size_t to_host = 0, to_guest = 0;
  std::size_t greeting_bytes =
      0;  ///< of which hello, proof of key and welcome, which no peer of the harness has
  std::size_t messages = 0;
  std::size_t round_trips = 0;  ///< times the guest had to wait for the host
  bool agreed = false;
  [[nodiscard]] std::size_t bytes() const { return to_host + to_guest; }
};

/// The guest becomes a member of the host without a code.
void enrol(Station& host, Station& guest);
[[nodiscard]] Meeting meet(Station& guest, Station& host);

}  // namespace weavelog::bench
