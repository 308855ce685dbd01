#pragma once
// Two stations in one process and the frames between them, without a network.

#include <catch2/catch.hpp>
#include <deque>
#include <memory>

#include "sync/exchange/session.h"
#include "sync/exchange/station.h"
#include "tests/support/ledgers.h"
#include "tests/support/temporary_folder.h"

namespace weavelog::testing {

/// A device with its ledger in memory and the stores of sync in the same database.
struct SyncDevice : Device {
  std::unique_ptr<DeviceList> devices;
  std::unique_ptr<PeerStore> peers;

  explicit SyncDevice(const std::string& name, const std::filesystem::path& file = ":memory:", DeviceKey key = DeviceKey::generate())
      : Device(name, file, key) {
    devices = taken(DeviceList::open(*ledger, key));
    peers = taken(PeerStore::open(*ledger));
  }

  template <class Store>
  static std::unique_ptr<Store> taken(Outcome<std::unique_ptr<Store>> opened) {
    if (!opened) FAIL(opened.error().message());
    return std::move(*opened);
  }
  [[nodiscard]] std::int64_t peer_number(const SyncDevice& other) { return *peers->number_of(other.ledger->self().key); }
  void share(const SyncDevice& other, const BookId& book) { REQUIRE(peers->widen(peer_number(other), {book})); }
};

/// One exchange between a guest and a host. `deliver` runs until both are quiet.
struct Loopback {
  Session guest, host;
  std::deque<Bytes> to_host, to_guest;
  std::size_t bytes = 0, frames = 0;

  Loopback(SyncDevice& guest_device, SyncDevice& host_device, SessionOptions guest_options = {}, SessionOptions host_options = {})
      : guest(fill(guest_device, std::move(guest_options), Side::guest)), host(fill(host_device, std::move(host_options), Side::host)) {
    push(to_host, guest.start());
  }

  static SessionOptions fill(SyncDevice& device, SessionOptions options, Side side) {
    options.ledger = device.ledger.get();
    options.devices = device.devices.get();
    options.peers = device.peers.get();
    options.side = side;
    return options;
  }

  void push(std::deque<Bytes>& queue, Session::Frames sent) {
    for (auto& frame : sent) {
      bytes += frame.size();
      ++frames;
      queue.push_back(std::move(frame));
    }
  }

  /// Hands over at most `most` frames, each with the one after it, as a connection does; false if there was nothing left before that.
  bool deliver(std::size_t most = 1'000'000) {
    for (std::size_t i = 0; i < most; ++i) {
      if (!to_host.empty()) {
        const Bytes frame = std::move(to_host.front());
        to_host.pop_front();
        push(to_guest, host.receive(frame, front(to_host)));
      } else if (!to_guest.empty()) {
        const Bytes frame = std::move(to_guest.front());
        to_guest.pop_front();
        push(to_host, guest.receive(frame, front(to_guest)));
      } else {
        return false;
      }
    }
    return true;
  }

  static ByteView front(const std::deque<Bytes>& queue) { return queue.empty() ? ByteView{} : ByteView{queue.front()}; }

  void changed() {
    push(to_host, guest.changed());
    push(to_guest, host.changed());
    deliver();
    push(to_host, guest.tick());
    push(to_guest, host.tick());
    deliver();
  }
};

/// Enrols the guest at the host without a pairing, for tests of what comes after.
inline void enrol(SyncDevice& host, SyncDevice& guest, Role role = Role::stringer) {
  const auto invitation = host.devices->invite(role);
  REQUIRE(invitation);
  const Digest handshake{};
  const auto key = pairing_key(invitation->secret);
  REQUIRE(host.devices->admit(number_of(invitation->secret), handshake, pairing_proof(key, PairingSide::guest, handshake),
                              guest.ledger->self().key, "guest"));
}

}  // namespace weavelog::testing
