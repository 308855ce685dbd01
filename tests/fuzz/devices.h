#pragma once
// Devices for fuzzing: ledgers in memory with fixed keys, so that an input does the same every time.

#include <memory>

#include "core/store/ledger.h"
#include "sync/exchange/peer_store.h"
#include "sync/trust/device_list.h"
#include "tests/support/temporary_folder.h"

namespace weavelog::fuzz {

struct FuzzDevice {
  ManualClock clock;
  DeviceKey key;
  std::unique_ptr<Ledger> ledger;
  std::unique_ptr<DeviceList> devices;
  std::unique_ptr<PeerStore> peers;

  /// `number` makes the key. Throws std::runtime_error if it can't be made.
  FuzzDevice(const char* name, std::uint8_t number);

  /// Sets a field of one of the book's boxes.
  void put(const BookId& book, std::uint8_t box, FieldTag tag, Value value);
};

/// A folder that goes with it; in memory where there is a file system in memory, since the fuzzer writes files for every input.
struct FuzzFolder : testing::TemporaryFolder {
  FuzzFolder();
};

/// The host lets a guest in who knows the secret. Throws if it does not.
void admit(DeviceList& host, const PairingSecret& secret, const PublicKey& guest, const char* name);

[[nodiscard]] DeviceKey fixed_key(std::uint8_t number);
[[nodiscard]] BookId book_of(std::uint8_t number);
[[nodiscard]] EntityId box_of(std::uint8_t number);

/// All is well inside: chains, signatures, rebuilt layers equal the stored ones.
void must_be_well(const Ledger& ledger);

}  // namespace weavelog::fuzz
