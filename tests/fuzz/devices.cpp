#include "tests/fuzz/devices.h"

#include "tests/fuzz/target.h"
#include "tests/support/small_registry.h"

namespace weavelog::fuzz {
namespace {

constexpr UnixMs kNoon = 1'800'000'000'000;

template <class T>
T must(Outcome<T> made) {
  if (!made) throw std::runtime_error(made.error().message());
  return std::move(*made);
}

template <class T>
T numbered(std::uint8_t number) {
  T id;
  id.bytes.fill(number);
  return id;
}

}  // namespace

FuzzFolder::FuzzFolder() : TemporaryFolder(std::filesystem::is_directory("/dev/shm") ? "/dev/shm" : std::filesystem::temp_directory_path()) {}

void admit(DeviceList& host, const PairingSecret& secret, const PublicKey& guest, const char* name) {
  const Digest handshake{};
  const auto proof = pairing_proof(pairing_key(secret), PairingSide::guest, handshake);
  must_hold(host.admit(number_of(secret), handshake, proof, guest, name).has_value(), "an admission");
}

DeviceKey fixed_key(std::uint8_t number) {
  std::array<std::uint8_t, 32> seed{};
  seed[0] = number;
  return DeviceKey::from_seed(seed);
}
BookId book_of(std::uint8_t number) { return numbered<BookId>(static_cast<std::uint8_t>(number + 1)); }
EntityId box_of(std::uint8_t number) { return numbered<EntityId>(static_cast<std::uint8_t>(number + 1)); }

FuzzDevice::FuzzDevice(const char* name, std::uint8_t number) : clock(kNoon), key(fixed_key(number)) {
  LedgerOptions options;
  options.file = ":memory:";
  options.registry = &testing::small_registry();
  options.clock = &clock;
  options.key = key;
  options.device_name = name;
  ledger = must(Ledger::open(std::move(options)));
  devices = must(DeviceList::open(*ledger, key));
  peers = must(PeerStore::open(*ledger));
}

void FuzzDevice::put(const BookId& book, std::uint8_t box, FieldTag tag, Value value) {
  clock.advance(1000);
  EntityState seen;
  seen.book = book;
  seen.id = box_of(box);
  seen.kind = testing::kBox;
  if (auto held = ledger->entity(book, seen.id)) seen = *held;
  Draft draft(book, testing::kShelf, testing::kEdit);
  draft.put(seen, tag, std::move(value));
  (void)must(ledger->append(draft));
}

void must_be_well(const Ledger& ledger) {
  const VerifyReport report = ledger.verify();
  if (!report.faults.empty()) throw Broken("verify: " + report.faults.front());
}

}  // namespace weavelog::fuzz
