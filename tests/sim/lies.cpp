#include "tests/sim/lies.h"

#include <algorithm>

#include "core/model/fields.h"

namespace weavelog::sim {
namespace {

constexpr std::size_t kHello = 0,
                      kWelcome = 3,  // places in Message: who lies about these is not let in at all
    kStubs = 15;

template <class T>
T* any_of(std::vector<T>& list, Random& random) {
  return list.empty() ? nullptr : &list[static_cast<std::size_t>(random.below(list.size()))];
}

std::uint64_t odd_number(std::uint64_t number, Random& random) {
  switch (random.below(4)) {
    case 0:
      return number + 1 + random.below(3);
    case 1:
      return number - std::min<std::uint64_t>(number, 1 + random.below(3));
    case 2:
      return ~std::uint64_t{0} - random.below(3);
    default:
      return random.next();
  }
}

void bend(std::vector<BookHeads>& books, Random& random) {
  BookHeads* book = any_of(books, random);
  if (book == nullptr) return;
  if (random.chance(200)) book->kind = BookKind{static_cast<std::uint8_t>(random.below(5))};
  if (random.chance(200)) book->book.bytes[15] ^= 1;
  if (Head* head = any_of(book->heads, random)) {
    if (random.chance(700)) head->seq = odd_number(head->seq, random);
    if (random.chance(200)) head->hash[0] ^= 1;
    if (random.chance(100)) head->author.bytes[3] ^= 1;
  }
  if (random.chance(100)) books.insert(books.end(), 500, *book);
}

}  // namespace

std::optional<Liar::Met> Liar::met_in(const Batch& batch) {
  if (batch.entries.empty()) return std::nullopt;
  const BatchEntry& entry = random_.pick(batch.entries);
  if (entry.author >= batch.authors.size() || entry.book >= batch.books.size()) return std::nullopt;
  const auto said = decode_entry(entry.body, batch.authors[entry.author].id());
  if (!said || said->writes.empty()) return std::nullopt;
  return Met{batch.books[entry.book], random_.pick(said->writes)};
}

Batch Liar::forged(const Batch& like) {
  Batch out;
  const auto met = random_.chance(500) ? met_in(like) : std::nullopt;
  const BookId book = like.books.empty() ? BookId{} : like.books.front().id;
  const BookKind kind = met                  ? met->book.kind
                        : random_.chance(200) ? BookKind{static_cast<std::uint8_t>(1 + random_.below(3))}
                                              : kPlayerBook;
  AuthorCard card{key_.public_key(), random_.below(3), "a stranger"};
  const AuthorId author = card.id();
  BookId target = met ? met->book.id : book;
  if (!target || (!met && random_.chance(500))) {
    target.bytes[0] = 1;
    target.bytes[15] = static_cast<std::uint8_t>(random_.below(4));
  }
  Digest hash = chain_start(target, kind, author);
  const std::uint64_t count = 1 + random_.below(3);
  for (std::uint64_t seq = 1; seq <= count; ++seq) {
    Entry entry;
    entry.seq = random_.chance(50) ? odd_number(seq, random_) : seq;
    entry.stamp = random_.chance(300) ? Stamp{random_.next() >> 1}
                                      : Stamp::of(1'900'000'000'000 + random_.below(1'000'000'000), 0);
    entry.schema = 1;
    entry.action = kActEdit;
    Write write;
    write.entity.bytes[15] = static_cast<std::uint8_t>(random_.below(3));
    write.kind = kRacket;
    write.tag = FieldTag{201};
    write.value = Value{std::string("lie ") + std::to_string(random_.below(9))};
    if (met) {
      write.entity = met->write.entity;
      write.kind = random_.chance(400) ? met->write.kind : EntityKind{static_cast<std::uint16_t>(1 + random_.below(40))};
      if (random_.chance(700)) write.tag = met->write.tag;
      if (random_.chance(500)) write.value = random_.chance(300) ? Value{} : met->write.value;
    }
    if (random_.chance(300)) write.replaces.push_back(Dot{author, seq + random_.below(2), 0});
    entry.writes.push_back(write);
    const Bytes body = encode_entry(entry, author);
    hash = chain_next(hash, digest_of(body));
    out.entries.push_back({0, 0, seq, body});
  }
  out.books.push_back({target, kind});
  out.authors.push_back(card);
  out.seals.push_back({0, 0, count, key_.sign(seal_message(count, hash)), {}});
  return out;
}

void Liar::bend(Entries& entries) {
  Batch& batch = entries.batch;
  switch (random_.below(8)) {
    case 0:
      if (auto* entry = any_of(batch.entries, random_)) entry->seq = odd_number(entry->seq, random_);
      break;
    case 1:
      if (auto* entry = any_of(batch.entries, random_); entry != nullptr && !entry->body.empty())
        entry->body[static_cast<std::size_t>(random_.below(entry->body.size()))] ^= 4;
      break;
    case 2:
      std::reverse(batch.entries.begin(), batch.entries.end());
      break;
    case 3:
      if (auto* entry = any_of(batch.entries, random_)) batch.entries.push_back(BatchEntry(*entry));
      break;
    case 4:
      if (auto* book = any_of(batch.books, random_))
        book->kind = BookKind{static_cast<std::uint8_t>(random_.below(5))};
      break;
    case 5:
      if (auto* seal = any_of(batch.seals, random_)) seal->signature[5] ^= 1;
      break;
    case 6:
      if (auto* author = any_of(batch.authors, random_)) author->incarnation ^= 1;
      break;
    default:
      batch = forged(batch);
  }
}

Message Liar::bent(Message message) {
  if (Entries* entries = entries_in(message)) {
    if (random_.chance(100)) entries->number = odd_number(entries->number, random_);
    bend(*entries);
  } else if (auto* ack = std::get_if<Ack>(&message)) {
    ack->number = odd_number(ack->number, random_);
  } else if (auto* agree = std::get_if<Agree>(&message)) {
    (random_.chance(500) ? agree->sent : agree->applied) = odd_number(agree->sent, random_);
    if (random_.chance(300)) agree->digest[0] ^= 1;
  } else if (auto* standing = std::get_if<Standing>(&message)) {
    standing->books = odd_number(standing->books, random_);
    if (random_.chance(500)) standing->token = {};
    if (random_.chance(500)) standing->digest[0] ^= 1;
  } else if (auto* offer = std::get_if<Offer>(&message)) {
    sim::bend(offer->books, random_);
    if (auto* wanted = any_of(offer->wanted, random_)) (*wanted)[0] ^= 1;
  } else if (auto* holding = std::get_if<Holding>(&message)) {
    sim::bend(holding->books, random_);
  } else if (auto* stubs = std::get_if<Stubs>(&message)) {
    if (Stub* stub = any_of(stubs->stubs, random_)) {
      if (random_.chance(300)) stub->book.bytes[15] ^= 1;
      if (random_.chance(300)) stub->kind = BookKind{static_cast<std::uint8_t>(random_.below(5))};
      if (random_.chance(300)) stub->signature[7] ^= 1;
    }
  } else if (auto* step = std::get_if<Reconcile>(&message); step != nullptr && !step->message.empty()) {
    step->message[static_cast<std::size_t>(random_.below(step->message.size()))] ^=
        static_cast<std::uint8_t>(1 + random_.below(255));
  }
  return message;
}

bool Liar::ignores(const Bytes& frame) const {
  return disobeys_ && message_of(frame) == kStubs;
}

Bytes Liar::altered(Bytes frame) {
  const std::size_t message = message_of(frame);
  if (message >= kHello && message <= kWelcome) return frame;
  sent_.push_back(frame);
  switch (random_.below(20)) {
    case 0:
      return random_.pick(sent_);  // replayed
    case 1:
      return {};  // kept back
    case 2: {
      // Counts that claim the world.
      for (std::size_t i = 2; i < std::min<std::size_t>(frame.size(), 14); ++i) frame[i] = 0xff;
      return frame;
    }
    case 3:
      frame[static_cast<std::size_t>(random_.below(frame.size()))] ^=
          static_cast<std::uint8_t>(1 + random_.below(255));
      return frame;
    case 4:
    case 5:
    case 6:
    case 7:
    case 8:
    case 9:
    case 10: {
      auto held = decode_frame(frame);
      return held ? encode_frame(bent(std::move(*held))) : frame;
    }
    default:
      return frame;
  }
}

}  // namespace weavelog::sim
