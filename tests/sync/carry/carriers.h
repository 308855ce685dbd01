#pragma once
// Bundles in memory, for tests.

#include "sync/carry/bundle.h"
#include "sync/carry/bundle_chunk.h"
#include "sync/carry/receipt.h"
#include "tests/support/loopback.h"

namespace weavelog::testing {

/// Cheap: what it costs is not what these tests are about.
inline const PassphraseCost kQuick{1, 8};

inline std::vector<BookId> books_of(const SyncDevice& device) {
  std::vector<BookId> out;
  for (const BookInfo& book : device.ledger->books()) out.push_back(book.id);
  return out;
}

inline BundleWish wish_for(const SyncDevice& from, SealFor receiver) {
  BundleWish wish;
  wish.books = books_of(from);
  wish.receiver = std::move(receiver);
  return wish;
}

struct Carried {
  Bytes file;
  MadeBundle made;
};

inline Carried make(const SyncDevice& from, const BundleWish& wish) {
  Carried out;
  auto made = make_bundle(*from.ledger, *from.devices, wish, sink_of(out.file));
  if (!made) FAIL(made.error().message());
  out.made = std::move(*made);
  return out;
}
inline Carried make_for(const SyncDevice& from, const SyncDevice& to) { return make(from, wish_for(from, to.ledger->self().key)); }
inline Carried make_with(const SyncDevice& from, const std::string& words) { return make(from, wish_for(from, ForPassphrase{words, kQuick})); }

inline TakeOptions taking(SyncDevice& to) {
  TakeOptions options;
  options.ledger = to.ledger.get();
  options.devices = to.devices.get();
  options.peers = to.peers.get();
  options.from_stranger = true;
  return options;
}
inline Outcome<TakenBundle> try_take(SyncDevice& to, ByteView file, std::optional<std::string> words = {}, std::optional<TakeOptions> options = {}) {
  const DeviceKey& key = to.ledger->key();
  return take_bundle(source_of(file), {&key, std::move(words)}, options ? *options : taking(to));
}
inline TakenBundle take(SyncDevice& to, ByteView file, std::optional<std::string> words = {}) {
  auto taken = try_take(to, file, std::move(words));
  if (!taken) FAIL(taken.error().message());
  return std::move(*taken);
}

/// Some books of several entries each, by one author.
inline void fill_shelves(SyncDevice& device, std::size_t books, std::size_t entries) {
  for (std::size_t i = 0; i < books; ++i) {
    const BookId book = device.ledger->create_book_id();
    const EntityId box = make_id<EntityId>(kNoon);
    for (std::size_t k = 0; k < entries; ++k)
      device.put(book, box, k % 2 == 0 ? kLabel : kGuarded, "word " + std::to_string(i) + " " + std::to_string(k));
  }
}

/// Both hold the same of every book of the first.
inline bool same_books(const SyncDevice& one, const SyncDevice& other) {
  for (const BookInfo& book : one.ledger->books()) {
    const auto there = other.ledger->book(book.id);
    if (!there || there->heads != book.heads || one.ledger->entities(book.id) != other.ledger->entities(book.id)) return false;
  }
  return true;
}

}  // namespace weavelog::testing
