#pragma once
// Ledgers in memory, with a clock set by hand.

#include <catch2/catch.hpp>
#include <memory>

#include "core/store/ledger.h"
#include "tests/support/small_registry.h"

namespace weavelog::testing {

inline constexpr UnixMs kNoon = 1'800'000'000'000;
/// The one entity of tests that need no other.
inline const EntityId kOne = make_id<EntityId>(kNoon);

/// One device: its clock and its ledger.
struct Device {
  ManualClock clock{kNoon};
  std::unique_ptr<Ledger> ledger;

  explicit Device(const std::string& name, const std::filesystem::path& file = ":memory:",
                  DeviceKey key = DeviceKey::generate(), const FieldRegistry& registry = small_registry()) {
    LedgerOptions options;
    options.file = file;
    options.registry = &registry;
    options.clock = &clock;
    options.key = std::move(key);
    options.device_name = name;
    auto opened = Ledger::open(std::move(options));
    if (!opened) FAIL(opened.error().message());
    ledger = std::move(*opened);
  }

  /// Sets one field of one entity as seen here now.
  Committed put(const BookId& book, const EntityId& entity, FieldTag tag, Value value) {
    clock.advance(1000);
    EntityState seen;
    seen.book = book;
    seen.id = entity;
    seen.kind = kBox;
    if (auto held = ledger->entity(book, entity)) seen = *held;
    Draft draft(book, kShelf, kEdit);
    draft.put(seen, tag, std::move(value));
    auto committed = ledger->append(draft);
    if (!committed) FAIL(committed.error().message());
    return *committed;
  }
};

/// Everything that `from` has and `to` lacks of one book, in one batch.
inline IngestReport pour(const Device& from, Device& to, const BookId& book) {
  auto report = to.ledger->ingest(from.ledger->missing(book, to.ledger->heads(book), 1 << 30), 0);
  if (!report) FAIL(report.error().message());
  return *report;
}

}  // namespace weavelog::testing
