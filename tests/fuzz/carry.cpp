// What comes on a stick or on paper. Bundles twice: raw bytes, and chunks as the input says that the target signs and seals itself,
// so that only the rules of the format and of the ledger stand behind them. Receipts and cards likewise. A passphrase costs next to
// nothing here: what is tried is what the bytes do, not how long Argon2id takes.

#include "core/model/tables.h"
#include "sync/carry/bundle_chunk.h"
#include "sync/carry/bundle_sight.h"
#include "sync/carry/card_intake.h"
#include "sync/carry/receipt.h"
#include "tests/fuzz/devices.h"
#include "tests/fuzz/target_list.h"
#include "tests/support/small_registry.h"

namespace weavelog::fuzz {
namespace {

constexpr std::uint8_t kHolder = 1, kMaker = 2;
const char* const kWords = "ferry to the island";

Outcome<TakenBundle> take_in(FuzzDevice& device, ByteView file) {
  TakeOptions options;
  options.ledger = device.ledger.get();
  options.devices = device.devices.get();
  options.peers = device.peers.get();
  options.from_stranger = true;
  OpenWith with;
  with.device = &device.key;
  with.passphrase = kWords;
  return take_bundle(source_of(file), with, options);
}

/// A file that asks for real work of Argon2id is left alone: the tests hold that there is a limit to it.
bool cheap(ByteView file) {
  const auto head = BundleHead::read(source_of(file));
  return !head || head->for_device || (head->cost.passes <= 2 && head->cost.memory_kib <= 64);
}

/// Looking takes nothing, whatever is in it.
void look(FuzzDevice& device, ByteView file) {
  TakeOptions options;
  options.ledger = device.ledger.get();
  options.devices = device.devices.get();
  options.peers = device.peers.get();
  OpenWith with;
  with.device = &device.key;
  with.passphrase = kWords;
  const std::int64_t before = device.ledger->position();
  const auto sight = look_into(source_of(file), with, options);
  must_hold(device.ledger->position() == before, "looking into a bundle took something");
  must_hold(!sight || (sight->new_books <= sight->books && sight->new_entries <= sight->entries), "more is new than there is");
}

/// Whatever was in it: the ledger is well, a second time brings nothing, and the receipt can be read by who made the bundle.
void take_twice(FuzzDevice& device, ByteView file) {
  look(device, file);
  const auto first = take_in(device, file);
  must_be_well(*device.ledger);
  if (!first) return;
  must_hold(first->complete() || first->fault || first->quarantined > 0 || first->gaps || first->forks > 0, "neither complete nor why not");
  const Receipt receipt = receipt_of(*device.ledger, *first);
  const DeviceKey maker = fixed_key(kMaker);
  if (const auto sealed = seal_receipt(receipt, device.key, maker.public_key())) {
    const auto opened = open_receipt(*sealed, maker);
    must_hold(opened && *opened == receipt, "a receipt does not survive being carried");
  }
  const auto again = take_in(device, file);
  must_hold(again.has_value(), "what was read once is refused the second time");
  must_hold(again->entries == first->entries, "a second reading finds other entries");
  must_hold(again->applied == 0 || first->fault || first->quarantined > 0 || first->gaps, "a second time brings something new");
  must_be_well(*device.ledger);
}

Bytes honest_bundle(const SealFor& receiver, bool backup = false) {
  FuzzDevice maker("maker", backup ? kHolder : kMaker);
  for (std::uint8_t i = 0; i < 3; ++i) {
    maker.put(book_of(i), 0, testing::kGuarded, std::int64_t{i});
    maker.put(book_of(i), 0, testing::kLabel, std::string("label"));
  }
  (void)maker.ledger->forget(book_of(2));
  BundleWish wish;
  for (const BookInfo& book : maker.ledger->books()) wish.books.push_back(book.id);
  wish.receiver = receiver;
  wish.backup = backup;
  Bytes out;
  if (const auto made = make_bundle(*maker.ledger, *maker.devices, wish, sink_of(out)); !made) throw std::runtime_error(made.error().message());
  return out;
}

/// The chunks of a bundle, in the form that this target reads: kind, length (2), payload.
Bytes chunks_of(ByteView file) {
  FuzzDevice device("holder", kHolder);
  OpenWith with;
  with.device = &device.key;
  const auto head = BundleHead::read(source_of(file));
  auto opener = ChunkOpener::create(*head, with);
  if (!opener) throw std::runtime_error(opener.error().message());
  const ByteSource source = source_of(file.subspan(head->bytes.size()));
  Bytes out{0};
  for (auto next = opener->next(source); next && next->plain; next = opener->next(source)) {
    const Bytes& plain = *next->plain;
    const std::size_t length = plain.size() - 65;
    out.push_back(plain[0]);
    out.push_back(static_cast<std::uint8_t>(length));
    out.push_back(static_cast<std::uint8_t>(length >> 8));
    out.insert(out.end(), plain.begin() + 65, plain.end());
  }
  return out;
}

}  // namespace

void run_bundle(ByteView input) {
  Input in(input);
  const std::uint8_t how = in.byte();
  FuzzDevice device("holder", kHolder);
  device.put(book_of(0), 0, testing::kGuarded, std::int64_t{1});
  if ((how & 1) != 0) {
    const ByteView file = in.rest();
    if (cheap(file)) take_twice(device, file);
    const DeviceKey key = fixed_key(kMaker);
    (void)open_receipt(file, key);
    return;
  }
  const DeviceKey maker = fixed_key((how & 2) != 0 ? kHolder : kMaker);
  auto sealer = ChunkSealer::create(device.key.public_key(), make_bundle_id());
  must_hold(sealer.has_value(), "a bundle can't be sealed");
  ChunkWriter writer(std::move(*sealer), maker);
  Bytes file = writer.head();
  for (int i = 0; i < 40 && !in.empty(); ++i) {
    const std::uint8_t kind = in.byte();
    const std::size_t low = in.byte(), length = low | static_cast<std::size_t>(in.byte()) << 8;
    const ByteView payload = in.run(length);
    const Bytes chunk = writer.add(kind, payload, kind == 3 || in.empty());
    file.insert(file.end(), chunk.begin(), chunk.end());
    if (kind == 3) break;
  }
  take_twice(device, file);
}

std::vector<Bytes> seeds_bundle() {
  const Bytes whole = honest_bundle(fixed_key(kHolder).public_key());
  const Bytes words = honest_bundle(ForPassphrase{kWords, {1, 8}});
  std::vector<Bytes> out{chunks_of(whole)};
  for (const Bytes& file : {whole, words}) {
    Bytes raw{1};
    raw.insert(raw.end(), file.begin(), file.end());
    out.push_back(std::move(raw));
  }
  // The holder's own backup, without and with a picture.
  Bytes backup = chunks_of(honest_bundle(fixed_key(kHolder).public_key(), true));
  backup[0] = 2;
  const Bytes picture = encode_frame(ContentPart{book_of(0), digest_of(as_bytes("picture")), 7, 0, {'p', 'i', 'c', 't', 'u', 'r', 'e'}});
  const std::size_t manifest = 1 + 3 + (backup[2] | static_cast<std::size_t>(backup[3]) << 8);
  Bytes chunk{2, static_cast<std::uint8_t>(picture.size()), static_cast<std::uint8_t>(picture.size() >> 8)};
  chunk.insert(chunk.end(), picture.begin(), picture.end());
  out.push_back(backup);
  backup.insert(backup.begin() + static_cast<std::ptrdiff_t>(manifest), chunk.begin(), chunk.end());
  out.push_back(std::move(backup));
  Receipt receipt;
  receipt.by.device = "holder";
  receipt.books.push_back({book_of(0), testing::kShelf, {{AuthorId{}, 3, Digest{}}}});
  Bytes slip{1};
  if (const auto sealed = seal_receipt(receipt, fixed_key(kHolder), fixed_key(kMaker).public_key()))
    slip.insert(slip.end(), sealed->begin(), sealed->end());
  out.push_back(std::move(slip));
  return out;
}

// ------------------------------------------------------------------------------------------------ cards

namespace {

PlayerCard small_card() {
  PlayerCard card;
  card.device = "Desk";
  card.made = 1'800'000'000'000;
  card.book = book_of(0);
  CardItem person{kPerson, box_of(0), card.made - 1000, {}, {}};
  person.values = {{tag_of<Person>(&Person::family_name), std::string("Okonjo")}, {tag_of<Person>(&Person::country), std::string("NGR")}};
  CardItem setup{kSetup, box_of(1), card.made - 2000, {}, {tag_of<Setup>(&Agreed::knots)}};
  setup.values = {{tag_of<Setup>(&Setup::name), std::string("day")},
                  {tag_of<Setup>(&Agreed::mains_tension), Quantity{{245, 1}, Unit::kilogram_force}}};
  card.items = {person, setup, {kRacket, box_of(2), card.made, {{tag_of<Racket>(&Racket::label), std::string("2")}}, {}}};
  return card;
}

void use_card(std::string_view text) {
  const auto card = read_card(text);
  if (!card) {
    must_hold(!card.error().what.empty() && !card.error().what_to_do.empty(), "a wrong card without what to do");
    return;
  }
  ManualClock clock(1'800'000'100'000);
  LedgerOptions options;
  options.file = ":memory:";
  options.registry = &model_registry();
  options.clock = &clock;
  options.key = fixed_key(kHolder);
  options.projections.push_back(std::make_shared<ModelTables>());
  auto ledger = Ledger::open(std::move(options));
  must_hold(ledger.has_value(), "no ledger");
  auto devices = DeviceList::open(**ledger, fixed_key(kHolder));
  must_hold(devices.has_value(), "no list of devices");
  for (int round = 0; round < 3; ++round) {
    const auto findings = weigh_card(**ledger, **devices, *card);
    if (!findings) break;
    const auto draft = take_card(**ledger, **devices, *card, round == 1);
    must_hold(draft.has_value(), "what can be weighed can't be taken");
    must_hold(round == 0 || draft->empty(), "a card that was taken in says something new");
    if (draft->empty()) continue;
    clock.advance(1000);
    const auto written = (*ledger)->append(*draft);
    must_hold(written.has_value(), "a card makes an action that can't be written");
    for (const Write& write : draft->writes())
      must_hold(write.kind == kCardTaken || on_cards(write.kind, write.tag), "a card writes what it may not");
  }
  if (const auto made = make_card(**ledger, card->book))
    must_hold(made->text.size() <= kMaxCardText && read_card(made->text), "a card that can't be read");
  must_be_well(**ledger);
}

}  // namespace

void run_card(ByteView input) {
  if (input.empty()) return;
  if ((input[0] & 1) != 0) return use_card(as_text(input.subspan(1)));
  // Properly signed: the key stands where the format has it.
  Bytes body(input.begin() + 1, input.end());
  const DeviceKey key = fixed_key(kMaker);
  if (body.size() >= 34) std::copy(key.public_key().begin(), key.public_key().end(), body.begin() + 2);
  use_card(sign_card(body, key));
}

std::vector<Bytes> seeds_card() {
  const DeviceKey key = fixed_key(kMaker);
  const std::string text = write_card(small_card(), key);
  Bytes raw{1};
  raw.insert(raw.end(), text.begin(), text.end());
  Bytes body{0};
  const Bytes said = card_body(small_card());
  body.insert(body.end(), said.begin(), said.end());
  return {raw, body};
}

}  // namespace weavelog::fuzz
