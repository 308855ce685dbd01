// What a ledger does with batches of a device that holds a valid key but lies: made-up entries in chains that are properly hashed and
// signed, so that only the rules of core/store stand between them and the ledger. Whatever came in, the ledger must be well
// afterwards, and a second ledger that takes it over must hold the same.

#include <map>

#include "core/log/entry.h"
#include "tests/fuzz/devices.h"
#include "tests/fuzz/target_list.h"
#include "tests/support/small_registry.h"

namespace weavelog::fuzz {
namespace {

using Chain = std::pair<std::size_t, std::size_t>;  // author, book

/// One way for a batch to be wrong or right, as the input says.
class Liar {
 public:
  explicit Liar(Input& in) : in_(in) {
    for (std::uint8_t i = 0; i < 2; ++i) {
      keys_.push_back(fixed_key(static_cast<std::uint8_t>(20 + i)));
      AuthorCard card;
      card.key = keys_.back().public_key();
      card.incarnation = 7;
      card.device = "liar";
      cards_.push_back(card);
    }
  }

  Batch batch() {
    Batch out;
    out.authors = cards_;
    for (std::uint8_t i = 0; i < 3; ++i) out.books.push_back({book_of(i), in_.pick(16) == 15 ? BookKind{9} : testing::kShelf});
    std::map<Chain, std::pair<std::uint64_t, Digest>> heads = heads_;
    const std::size_t count = 1 + in_.pick(6);
    std::vector<Chain> touched;
    for (std::size_t i = 0; i < count; ++i) {
      const Chain chain{in_.pick(cards_.size()), in_.pick(out.books.size())};
      auto& head = heads.try_emplace(chain, 0, chain_start(out.books[chain.second].id, out.books[chain.second].kind, cards_[chain.first].id())).first->second;
      const Bytes body = in_.pick(8) == 7 ? Bytes(in_.run(40).begin(), in_.run(0).end()) : entry(head.first + 1, chain.first);
      ++head.first;
      head.second = chain_next(head.second, digest_of(body));
      std::uint64_t seq = head.first;
      if (in_.pick(32) == 31) seq += in_.pick(3);
      out.entries.push_back({static_cast<std::uint32_t>(chain.second), static_cast<std::uint32_t>(chain.first), seq, body});
      if (std::find(touched.begin(), touched.end(), chain) == touched.end()) touched.push_back(chain);
    }
    // Another entry under a number that is there already, before or after the true one.
    if (in_.pick(6) == 5) {
      const std::size_t at = in_.pick(out.entries.size());
      BatchEntry other = out.entries[at];
      if (!other.body.empty()) other.body[in_.pick(other.body.size())] ^= 1;
      out.entries.insert(out.entries.begin() + static_cast<std::ptrdiff_t>(at + in_.pick(2)), std::move(other));
    }
    for (const Chain& chain : touched) {
      Seal seal;
      seal.author = static_cast<std::uint32_t>(chain.first);
      seal.book = static_cast<std::uint32_t>(chain.second);
      seal.seq = heads[chain].first;
      seal.signature = keys_[chain.first].sign(seal_message(seal.seq, heads[chain].second));
      const std::size_t wrong = in_.pick(24);
      if (wrong == 23) seal.signature[3] ^= 1;
      if (wrong == 22) seal.tail.emplace_back();
      if (wrong == 21) seal.book = 77;
      if (wrong != 20) out.seals.push_back(seal);
    }
    if (in_.pick(8) != 7) heads_ = heads;  // else the next batch tells another story about the same numbers: a fork
    return out;
  }

 private:
  Bytes entry(std::uint64_t seq, std::size_t author) {
    Entry entry;
    entry.seq = in_.pick(32) == 31 ? seq + 1 : seq;
    stamp_ += in_.pick(16) == 15 ? 0 : 1 + in_.pick(1000);
    entry.stamp = in_.pick(32) == 31 ? Stamp{UINT64_MAX - in_.pick(3)} : Stamp::of(1'800'000'000'000 + stamp_, 0);
    entry.schema = static_cast<std::uint32_t>(in_.pick(4));
    entry.action = static_cast<ActionKind>(in_.pick(4));
    const std::size_t writes = in_.pick(4);
    for (std::size_t i = 0; i < writes; ++i) {
      Write write;
      write.entity = box_of(static_cast<std::uint8_t>(in_.pick(3)));
      write.kind = in_.pick(16) == 15 ? EntityKind{5} : testing::kBox;
      write.tag = static_cast<FieldTag>(1 + in_.pick(5));
      switch (in_.pick(5)) {
        case 0: write.value = static_cast<std::int64_t>(in_.pick(3)); break;
        case 1: write.value = std::string(as_text(in_.run(6))); break;
        case 2: write.value = Quantity{{static_cast<std::int64_t>(in_.pick(500)), 1}, static_cast<Unit>(in_.pick(20))}; break;
        case 3: write.value = UnknownValue{static_cast<std::uint8_t>(in_.pick(60) * 4 + 2), Bytes{2, 1, 1}}; break;
        default: break;
      }
      const std::size_t replaced = in_.pick(3);
      for (std::size_t k = 0; k < replaced; ++k)
        write.replaces.push_back({cards_[in_.pick(2) == 1 ? author : in_.pick(cards_.size())].id(), 1 + in_.pick(6), static_cast<std::uint32_t>(in_.pick(4))});
      entry.writes.push_back(std::move(write));
    }
    try {
      return encode_entry(entry, cards_[author].id());
    } catch (const std::logic_error&) {
      return {};  // a value that can't be written
    }
  }

  Input& in_;
  std::vector<DeviceKey> keys_;
  std::vector<AuthorCard> cards_;
  std::map<Chain, std::pair<std::uint64_t, Digest>> heads_;
  std::uint64_t stamp_ = 0;
};

void must_be_alike(const Outcome<IngestReport>& one, const Outcome<IngestReport>& other) {
  constexpr const char* kDiffers = "a batch that was read ahead is taken in otherwise";
  must_hold(one.has_value() == other.has_value(), kDiffers);
  if (!one) return must_hold(one.error().message() == other.error().message(), kDiffers);
  must_hold(one->applied == other->applied && one->known == other->known && one->quarantined == other->quarantined &&
                one->gaps == other->gaps && one->forks == other->forks,
            kDiffers);
}

/// The heads of everybody but the device itself.
Heads heads_of_others(const FuzzDevice& device, const BookId& book) {
  Heads out = device.ledger->heads(book);
  std::erase_if(out, [own = device.ledger->self().id()](const Head& head) { return head.author == own; });
  return out;
}

}  // namespace

void run_batch(ByteView input) {
  Input in(input);
  FuzzDevice honest("honest", 1), second("second", 2), ahead("ahead", 3);
  for (FuzzDevice* device : {&honest, &ahead}) device->put(book_of(0), 0, testing::kGuarded, std::int64_t{1});
  Liar liar(in);
  for (int i = 0; i < 4 && !in.empty(); ++i) {
    Batch batch = liar.batch();
    const auto report = honest.ledger->ingest(batch, 1);
    read_ahead(batch);
    must_be_alike(report, ahead.ledger->ingest(batch, 1));
    if (report && in.pick(4) == 3)
      for (FuzzDevice* device : {&honest, &ahead}) device->put(book_of(9), 1, testing::kLabel, std::string("between"));
  }
  must_be_well(*honest.ledger);
  must_be_well(*ahead.ledger);
  for (const BookInfo& book : honest.ledger->books())
    must_hold(heads_of_others(honest, book.id) == heads_of_others(ahead, book.id), "a batch that was read ahead leads to other heads");
  for (const BookInfo& book : honest.ledger->books()) {
    const auto taken = second.ledger->ingest(honest.ledger->missing(book.id, {}, 1 << 24), 2);
    must_hold(taken.has_value(), "what a ledger holds is refused by another");
    must_hold(taken->quarantined == 0 && !taken->gaps, "what a ledger applied is put aside by another");
    const auto there = second.ledger->book(book.id);
    must_hold(there.has_value(), "a ledger lists a book of which it holds nothing");
    must_hold(there->heads == book.heads, "two ledgers with the same entries have different heads");
    must_hold(second.ledger->entities(book.id) == honest.ledger->entities(book.id), "two ledgers with the same entries differ in state");
  }
}

std::vector<Bytes> seeds_batch() {
  std::vector<Bytes> out(3);
  for (std::size_t i = 0; i < 240; ++i) {
    out[0].push_back(static_cast<std::uint8_t>(i * 37));
    out[1].push_back(static_cast<std::uint8_t>(i % 2 == 0 ? 0 : i * 11));
    out[2].push_back(static_cast<std::uint8_t>(i * i));
  }
  return out;
}

}  // namespace weavelog::fuzz
