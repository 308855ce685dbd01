#include "tests/sim/carriers.h"

#include <algorithm>

#include "core/log/entry.h"
#include "core/model/fields.h"
#include "sync/carry/bundle_chunk.h"
#include "tests/sim/forgetting.h"
#include "tests/sim/lies.h"

namespace weavelog::sim {
namespace {

constexpr std::size_t kPocket = 6;
const PassphraseCost kQuick{1, 8};  // what it costs is not what a run is about

std::string short_of(const BundleId& id) { return id.hex().substr(0, 8); }

Digest digest_of_text(const std::string& text) { return digest_of(as_bytes(text)); }

}  // namespace

BookId Carriers::room_of(const Device& device) const {
  if (device.event) return device.event;
  return device.host ? room_.devices.at(*device.host)->event : BookId{};
}

// ------------------------------------------------------------------------------------------------ bundles

void Carriers::make_bundle(std::size_t place, std::size_t other, Random& random) {
  Device& device = room_.device(place);
  Device& to = room_.device(other % room_.devices.size());
  Stick stick;
  stick.maker = device.key();
  if (random.chance(600)) {
    stick.for_device = to.key();
  } else {
    stick.words = "ferry to the island " + std::to_string(random.below(10));
  }
  if (random.chance(500)) stick.room = room_of(to);
  auto made = honest(device, stick, random);
  if (!made) return;
  if (room_.hostile_key() && random.chance(200)) make_hostile(*made, random);
  sticks_.push_back(std::move(*made));
  if (sticks_.size() > kPocket) sticks_.pop_front();
}

std::optional<Carriers::Stick> Carriers::honest(Device& device, const Stick& wanted, Random& random) {
  Stick stick = wanted;
  BundleWish wish;
  const auto books = device.ledger().books();
  if (books.empty()) return std::nullopt;
  wish.leave_out = random.chance(700);
  if (random.chance(500)) {
    for (const BookInfo& book : books) wish.books.push_back(book.id);
  } else {
    for (std::uint64_t i = 1 + random.below(3); i > 0; --i) wish.books.push_back(random.pick(books).id);
  }
  wish.room = stick.room;
  wish.may_leave = [&](const BookId& book, BookKind kind) { return device.may_leave(book, kind, stick.room); };
  wish.chunk_bytes = 4096;
  if (stick.for_device) {
    wish.receiver = *stick.for_device;
  } else {
    wish.receiver = ForPassphrase{stick.words, kQuick};
  }
  const auto made = weavelog::make_bundle(device.ledger(), device.station().devices(), wish, sink_of(stick.file));
  if (device.gone()) return std::nullopt;
  if (!made) {
    room_.trace.line("   no bundle: " + made.error().message());
    const bool said_why = made.error().code == FaultCode::refused || made.error().code == FaultCode::not_found;
    if (!said_why && !device.disk.in_trouble())
      throw Violation("carried", device.name + " makes no bundle: " + made.error().message());
    return std::nullopt;
  }
  (void)remember_bundle(device.ledger(), *made, stick.for_device ? "a device" : "anybody");
  stick.id = made->id;
  ++room_.counts.bundles;
  for (const Forgotten& one : device.ledger().forgotten()) stick.stubs.insert(one.stub.book);
  // Read by whoever it is for; the simulator knows all keys.
  std::optional<DeviceKey> key;
  for (const auto& one : room_.devices)
    if (stick.for_device == one->key()) key = key_of(one->key_number);
  OpenWith with;
  if (key) with.device = &*key;
  if (!stick.for_device) with.passphrase = stick.words;
  note_content(stick, with);
  room_.trace.line("   bundle " + short_of(stick.id) + ": " + std::to_string(made->books) + " books, " + std::to_string(made->entries) +
                   " entries, " + std::to_string(stick.file.size()) + " bytes");
  room_.trace.bytes(stick.file);
  return stick;
}

void Carriers::note_content(Stick& stick, const OpenWith& with) const {
  auto reader = BundleReader::open(source_of(stick.file), with);
  if (!reader) throw Violation("carried", "a bundle does not open: " + reader.error().message());
  std::map<std::pair<BookId, AuthorId>, Head> heads;
  std::map<BookId, BookKind> kinds;
  for (;;) {
    const auto message = reader->next();
    if (!message) throw Violation("carried", "a bundle can't be read: " + message.error().message());
    if (!*message) break;
    const Entries* entries = entries_in(**message);
    if (entries == nullptr) continue;
    std::vector<AuthorId> authors;
    for (const AuthorCard& card : entries->batch.authors) authors.push_back(card.id());
    for (const BatchEntry& entry : entries->batch.entries) {
      const BatchBook& book = entries->batch.books.at(entry.book);
      const AuthorId& author = authors.at(entry.author);
      const Digest body = digest_of(entry.body);
      const auto [head, fresh] = heads.try_emplace({book.id, author}, Head{author, 0, chain_start(book.id, book.kind, author)});
      if (entry.seq != head->second.seq + 1) throw Violation("carried", "a bundle holds a chain with a gap");
      head->second = {author, entry.seq, chain_next(head->second.hash, body)};
      stick.entries.push_back({{book.id, author, entry.seq}, body, head->second.hash});
      kinds[book.id] = book.kind;
    }
  }
  if (reader->end() != ChunkEnd::whole) throw Violation("carried", "a bundle that was just made is not whole");
  for (const auto& [book, kind] : kinds) {
    BookHeads& held = stick.heads.emplace_back(BookHeads{book, kind, {}});
    for (const auto& [key, head] : heads)
      if (key.first == book) held.heads.push_back(head);
  }
}

/// The hostile device makes another bundle out of one that it can open, as it bends the frames of a session.
void Carriers::make_hostile(Stick& stick, Random& random) {
  const Device* liar = nullptr;
  for (const auto& device : room_.devices)
    if (device->making.duty == Duty::hostile) liar = device.get();
  if (liar == nullptr || stick.for_device) return;
  const DeviceKey& key = key_of(liar->key_number);
  OpenWith with;
  with.passphrase = stick.words;
  auto reader = BundleReader::open(source_of(stick.file), with);
  auto sealer = ChunkSealer::create(ForPassphrase{stick.words, kQuick}, make_bundle_id());
  if (!reader || !sealer) throw Violation("carried", "a bundle does not open again");
  BundleManifest manifest = reader->manifest();
  if (random.chance(800)) manifest.maker.key = key.public_key();
  stick.maker = manifest.maker.key;
  ChunkWriter writer(std::move(*sealer), key);
  Bytes file = writer.head();
  const auto add = [&](ChunkKind kind, const Bytes& payload, bool last) {
    const Bytes chunk = writer.add(static_cast<std::uint8_t>(kind), payload, last);
    file.insert(file.end(), chunk.begin(), chunk.end());
  };
  add(ChunkKind::manifest, encode_manifest(manifest), false);
  Liar lies(key, random.next());
  for (auto message = reader->next(); message && *message; message = reader->next())
    if (const Bytes frame = lies.altered(encode_frame(**message)); !frame.empty()) add(ChunkKind::frame, frame, false);
  if (random.chance(800)) add(ChunkKind::end, {0, 0}, true);
  stick.file = std::move(file);
  stick.hostile = true;
  stick.entries.clear();
  room_.trace.line("   and the hostile device makes its own of it");
}

void Carriers::take_bundle(std::size_t place, Random& random) {
  if (sticks_.empty()) return;
  const std::size_t which = random.below(sticks_.size());
  const Stick stick = sticks_[which];
  Bytes file = stick.file;
  bool tampered = false;
  if (random.chance(150)) {
    file.resize(static_cast<std::size_t>(random.below(file.size())));
    tampered = true;
  } else if (random.chance(150)) {
    file[static_cast<std::size_t>(random.below(file.size()))] ^= static_cast<std::uint8_t>(1 + random.below(255));
    tampered = true;
  }
  Device& device = room_.device(place);
  // Pulled out or out of power in the middle; the stick is still there.
  if (random.chance(150)) device.disk.stop_after(1 + random.below(60), random.chance(500) ? Stop::power : Stop::kill);
  take(place, stick, file, tampered);
  if (device.up() && !device.gone() && random.chance(200)) take(place, stick, stick.file, false);
  if (random.chance(300)) sticks_.erase(sticks_.begin() + static_cast<std::ptrdiff_t>(which));
}

void Carriers::take(std::size_t place, const Stick& stick, ByteView file, bool tampered) {
  Device& device = room_.device(place);
  TakeOptions options;
  options.ledger = &device.ledger();
  options.devices = &device.station().devices();
  options.peers = &device.station().peers();
  options.from_stranger = true;
  options.room = room_of(device);
  options.may_take = [&](const BookId& book, BookKind kind, const BookId& room) { return device.may_leave(book, kind, room); };
  OpenWith with;
  const DeviceKey& key = key_of(device.key_number);
  with.device = &key;
  if (!stick.for_device) with.passphrase = stick.words;
  const auto taken = weavelog::take_bundle(source_of(file), with, options);
  room_.trace.line("   bundle " + short_of(stick.id) + (tampered ? ", damaged" : "") + ": " +
                   (!taken ? taken.error().message()
                           : std::to_string(taken->applied) + " new of " + std::to_string(taken->entries) + " entries" +
                                 (taken->fault ? "; " + taken->fault->message() : std::string())));
  if (device.gone()) return;
  check_stays_forgotten(device);
  heed_forgetting(room_, place);
  if (taken && taken->erased > 0 && !device.disk.in_trouble()) check_bytes_gone(device);
  const bool excused = tampered || stick.hostile || device.disk.in_trouble();
  if (!taken) {
    const bool wrong_device = stick.for_device && *stick.for_device != device.key();
    const bool wrong_room = stick.room && stick.room != options.room;
    const bool revoked = known_as(device.ledger(), device.station().devices(), stick.maker) == KnownAs::revoked;
    if (!excused && !wrong_device && !wrong_room && !revoked)
      throw Violation("carried", device.name + " takes no bundle: " + taken.error().message());
    return;
  }
  if (stick.for_device && *stick.for_device != device.key())
    throw Violation("carried", device.name + " opened a bundle for another device");
  if (known_as(device.ledger(), device.station().devices(), stick.maker) == KnownAs::revoked)
    throw Violation("revoked", device.name + " took in a bundle of a revoked device");
  if (taken->fault && !excused && taken->fault->code != FaultCode::refused)  // refused: its quarantine is full
    throw Violation("carried", device.name + " can't take a bundle in: " + taken->fault->message());
  if (tampered && taken->complete() && file.size() < stick.file.size())
    throw Violation("carried", device.name + " took a file that was cut short for a whole one");
  if (!excused && !taken->fault && taken->entries != stick.entries.size())
    throw Violation("carried", device.name + " read " + std::to_string(taken->entries) + " entries of " + std::to_string(stick.entries.size()));
  const Receipt receipt = receipt_of(device.ledger(), *taken);
  if (stick.hostile) return;
  check_receipt(place, stick, *taken, receipt);
  auto slip = seal_receipt(receipt, key, stick.maker);
  if (!slip) throw Violation("receipt", slip.error().message());
  slips_.push_back({std::move(*slip), stick.maker, receipt});
}

/// What the receipt says is there, is there: now, and from now on.
void Carriers::check_receipt(std::size_t place, const Stick& stick, const TakenBundle& taken, const Receipt& receipt) {
  Device& device = room_.device(place);
  for (const BookHeads& book : receipt.books) {
    if (device.forgot.contains(book.book)) throw Violation("receipt", device.name + " confirms a book that it knows to be forgotten");
    const auto carried =
        std::find_if(stick.heads.begin(), stick.heads.end(), [&](const BookHeads& held) { return held.book == book.book; });
    if (carried == stick.heads.end()) throw Violation("receipt", device.name + " confirms a book that was not in the bundle");
    // Chains of which the device holds another branch: told where the bundle's ends, or where its own does.
    auto parted = device.ledger().forked(book.book, carried->heads);
    for (const Held& held : stick.entries)
      for (const Head& head : book.heads)
        if (held.key.book == book.book && held.key.author == head.author && held.key.seq == head.seq && held.hash != head.hash)
          parted.push_back(head.author);
    std::size_t lacking = 0;
    for (const Held& held : stick.entries) {
      if (held.key.book != book.book || std::find(parted.begin(), parted.end(), held.key.author) != parted.end()) continue;
      const auto head =
          std::find_if(book.heads.begin(), book.heads.end(), [&](const Head& one) { return one.author == held.key.author; });
      if (head == book.heads.end() || head->seq < held.key.seq) {
        ++lacking;
        continue;
      }
      const auto entry = device.ledger().entry(held.key.book, held.key.author, held.key.seq);
      if (!entry || digest_of(encode_entry(*entry, held.key.author)) != held.body)
        throw Violation("receipt", device.name + " confirms entry " + std::to_string(held.key.seq) + " of " + held.key.author.hex() +
                                       ", which it does not hold");
      room_.promises.confirm(held.key, held.body, place);
    }
    if (lacking > 0 && receipt.complete && taken.end == ChunkEnd::whole)
      throw Violation("receipt", device.name + " calls a bundle complete of which it lacks " + std::to_string(lacking) + " entries");
  }
}

void Carriers::read_receipts(std::size_t place) {
  Device& device = room_.device(place);
  for (auto at = slips_.begin(); at != slips_.end();) {
    const Slip& slip = *at;
    if (slip.maker != device.key()) {
      ++at;
      continue;
    }
    const auto receipt = open_receipt(slip.file, key_of(device.key_number));
    if (!receipt || *receipt != slip.receipt) throw Violation("receipt", device.name + " can't read a receipt for it");
    const auto kept = remember_receipt(device.ledger(), device.station().devices(), *receipt);
    if (device.gone()) return;  // it is read again another time, as are those after it
    // A device that was put back, or copied, need not remember having made the bundle; a newer receipt may have been read, or who signed it been revoked.
    const bool told = !kept && (kept.error().code == FaultCode::not_found || kept.error().code == FaultCode::conflict ||
                                (kept.error().code == FaultCode::refused && known_as(device.ledger(), device.station().devices(), receipt->by.key) == KnownAs::revoked));
    if (!kept && !told && !device.disk.in_trouble())
      throw Violation("receipt", device.name + ": " + kept.error().message());
    std::uint64_t lacking = 0;
    for (const ReceiptLine& line : compare_receipt(device.ledger(), *receipt)) lacking += line.lacking;
    room_.trace.line("   receipt of " + short_of(receipt->bundle) + ": " + std::to_string(receipt->books.size()) + " books, " +
                     std::to_string(lacking) + " entries newer here");
    ++room_.counts.receipts;
    at = slips_.erase(at);
  }
}

// ------------------------------------------------------------------------------------------------ cards

void Carriers::make_card(std::size_t place, Random& random) {
  Device& device = room_.device(place);
  const auto books = device.ledger().books(kPlayerBook);
  if (books.empty()) return;
  const BookId book = random.pick(books).id;
  const auto made = weavelog::make_card(device.ledger(), book);
  if (device.gone()) return;
  if (!made) {
    room_.trace.line("   no card: " + made.error().message());
    const bool said_why = made.error().code == FaultCode::refused || made.error().code == FaultCode::not_found;
    if (!said_why && !device.disk.in_trouble())
      throw Violation("carried", device.name + " makes no card: " + made.error().message());
    return;
  }
  if (made->text.size() > kMaxCardText) throw Violation("carried", "a card that fits no code");
  if (!device.may_leave(book, kPlayerBook, {})) throw Violation("consent", device.name + " makes a card of a player who did not agree");
  ++room_.counts.cards;
  room_.trace.line("   a card with " + std::to_string(made->card.items.size()) + " items");
  room_.trace.bytes(digest_of_text(made->text));
  cards_.push_back({made->text, book});
  if (cards_.size() > kPocket) cards_.pop_front();
}

std::optional<Act> Carriers::scan_card(std::size_t place, Random& random) {
  if (cards_.empty()) return std::nullopt;
  Device& device = room_.device(place);
  const Card& card = cards_[static_cast<std::size_t>(random.below(cards_.size()))];
  if (random.chance(150)) {
    std::string torn = card.text;
    torn[static_cast<std::size_t>(random.below(torn.size()))] = static_cast<char>('A' + random.below(26));
    if (torn != card.text && read_card(torn)) throw Violation("carried", "a card with a wrong letter was read");
  }
  const auto read = read_card(card.text);
  if (!read) throw Violation("carried", "a card can't be read: " + read.error().message());
  if (read->book != card.book) throw Violation("carried", "a card of another player");
  const bool accept = random.chance(500);
  auto draft = weavelog::take_card(device.ledger(), device.station().devices(), *read, accept);
  if (device.gone()) return std::nullopt;
  if (!draft) {
    room_.trace.line("   " + draft.error().message());
    if (draft.error().code != FaultCode::refused && !device.disk.in_trouble())
      throw Violation("carried", device.name + " takes no card: " + draft.error().message());
    return std::nullopt;
  }
  if (device.forgot.contains(card.book))
    throw Violation("forgotten came back", device.name + " takes a card of forgotten book " + card.book.hex());
  if (device.ledger().book(card.book) && !device.may_leave(card.book, kPlayerBook, {}))
    throw Violation("consent", device.name + " takes a card of a player who withdrew");
  // Nothing that stands open here is decided by it, and nothing is replaced that nobody agreed to.
  for (const Write& write : draft->writes()) {
    if (write.kind == kCardTaken) continue;
    const auto held = device.ledger().entity(card.book, write.entity);
    const Cell* cell = held ? held->find(write.tag) : nullptr;
    if (cell != nullptr && cell->split() && device.ledger().registry().guarded(write.tag))
      throw Violation("carried", "a card decides an open question");
    if (!write.replaces.empty() && !accept) throw Violation("carried", "a card replaces what stands, and nobody said that it may");
  }
  if (draft->empty()) return std::nullopt;
  return Act{std::move(*draft), accept ? "takes a card in, what is newer on it too" : "takes a card in", {}};
}

}  // namespace weavelog::sim
