// Ledger::since and Ledger::missing: entries on their way to another device, with the seals that prove them.

#include <algorithm>
#include <map>

#include "core/base/parallel.h"
#include "core/log/device_name.h"
#include "core/log/head_index.h"
#include "core/store/ledger_impl.h"

namespace weavelog {
namespace {

/// What stands in a batch beside the bodies: a book, an author without its name, a seal without its tail.
constexpr std::size_t kBookBytes = 20, kCardBytes = 44, kSealBytes = 72, kEntryBytes = 8;

/// Collects entries and, at the end, one seal for every chain that occurs.
class Packer {
 public:
  Packer(const Ledger::Impl& ledger, Connection& db) : ledger_(ledger), db_(db) {}

  void add(std::int64_t book, std::int64_t author, std::uint64_t seq, ByteView body) {
    if (!provable(book, author, seq)) return;
    BatchEntry& entry = batch_.entries.emplace_back();
    entry.book = books_.place(book);
    if (entry.book == batch_.books.size()) {
      batch_.books.push_back(book_info(book));
      proofs_ += kBookBytes;
    }
    entry.author = authors_.place(author);
    if (entry.author == batch_.authors.size()) {
      AuthorCard& card = batch_.authors.emplace_back(ledger_.card(db_, author));
      card.device = shown_name(card.device);  // one that came before names were bounded
      proofs_ += kCardBytes + card.device.size();
    }
    entry.seq = seq;
    entry.body.assign(body.begin(), body.end());
    count_proof(entry.book, entry.author, runs_.try_emplace({entry.book, entry.author}, Run{seq, seq, 0}).first->second, seq);
    bodies_ += body.size() + kEntryBytes;
  }

  /// Whether it holds what is wanted, or what proves that has become too much: where many long chains take turns, each has a tail of up to
  /// kSealEvery digests, which no compression makes smaller, and a batch has to fit a frame.
  [[nodiscard]] bool full(std::size_t most) const { return bodies_ >= most || bodies_ + proofs_ >= most + most / 2 * 3; }

  Batch finish() {
    for (const auto& [key, run] : runs_) seal(key.first, key.second, run);
    const DeviceKey& key = ledger_.options.key;
    in_parallel(to_sign_.size(), [&](std::size_t i) {
      const ToSign& one = to_sign_[i];
      Seal& seal = batch_.seals[one.seal];
      seal.signature = key.sign(seal_message(seal.seq, one.hash));
    });
    return std::move(batch_);
  }

 private:
  /// The entries of one chain in the batch.
  struct Run {
    std::uint64_t first, last;
    std::uint64_t proved;  ///< where the seal is that proves its end, as far as it is counted; 0: it is not
  };

  /// A seal of ours that lacks its signature.
  struct ToSign {
    std::size_t seal;  ///< place in the batch
    Digest hash;       ///< of the chain up to there
  };

  /// Row numbers in the order in which they first occurred, which is their place in the batch.
  class Places {
   public:
    std::uint32_t place(std::int64_t number) {
      const auto [found, fresh] = places_.try_emplace(number, static_cast<std::uint32_t>(numbers_.size()));
      if (fresh) numbers_.push_back(number);
      return found->second;
    }
    [[nodiscard]] std::int64_t number(std::uint32_t place) const { return numbers_.at(place); }

   private:
    std::map<std::int64_t, std::uint32_t> places_;
    std::vector<std::int64_t> numbers_;
  };

  /// False for a chain that a faulty device sealed so seldom that nobody could take its proof (kMaxTail), from that entry on: it stays here, and
  /// holds nothing else up.
  bool provable(std::int64_t book, std::int64_t author, std::uint64_t seq) {
    const auto [known, fresh] = next_seals_.try_emplace({book, author}, 0);
    std::uint64_t& next = known->second;
    if (next == kNowhere) return false;
    if (next < seq) next = next_seal(book, author, seq);
    if (next - seq <= kMaxTail) return true;
    next = kNowhere;
    return false;
  }

  /// Counts what proves the run once it goes up to `seq`.
  void count_proof(std::uint32_t book_place, std::uint32_t author_place, Run& run, std::uint64_t seq) {
    if (run.proved >= seq) {
      proofs_ -= (seq - run.last) * sizeof(Digest);
    } else {
      // Beyond the seal up to now, which was a waypoint and stays.
      run.proved = next_seals_.at({books_.number(book_place), authors_.number(author_place)});
      proofs_ += kSealBytes + (run.proved - seq) * sizeof(Digest);
    }
    run.last = seq;
  }

  /// The number of the first seal at or beyond an entry, or of where we seal a chain of ours.
  std::uint64_t next_seal(std::int64_t book, std::int64_t author, std::uint64_t seq) {
    std::uint64_t last = 0;
    if (ours(author)) {
      last = ledger_.chain(db_, book, author, {}).seq;
      if (last - std::min(last, seq) > kMaxTail) return seq;
    } else {
      auto& sealed = db_.statement("SELECT sealed FROM chain WHERE book=? AND author=?");
      sealed.bind(1, book);
      sealed.bind(2, author);
      if (sealed.executeStep()) last = static_cast<std::uint64_t>(sealed.getColumn(0).getInt64());
    }
    last = std::max(last, seq);
    constexpr std::uint64_t kShort = 16;  // not worth asking whether there is a waypoint before it
    if (last <= seq + kShort) return last;
    auto& waypoint = db_.statement("SELECT min(seq) FROM waypoint WHERE book=? AND author=? AND seq>=?");
    waypoint.bind(1, book);
    waypoint.bind(2, author);
    waypoint.bind(3, static_cast<std::int64_t>(seq));
    if (waypoint.executeStep() && !waypoint.isColumnNull(0)) last = std::min(last, static_cast<std::uint64_t>(waypoint.getColumn(0).getInt64()));
    return last;
  }

  /// Also of an earlier incarnation: such a chain is signed as it is handed over.
  [[nodiscard]] bool ours(std::int64_t author) {
    if (author == ledger_.self_number) return true;
    const auto [known, fresh] = ours_.try_emplace(author, false);
    if (fresh) known->second = ledger_.card(db_, author).key == ledger_.options.key.public_key();
    return known->second;
  }

  BatchBook book_info(std::int64_t book) {
    auto& query = db_.statement("SELECT id, kind FROM book WHERE n=?");
    query.bind(1, book);
    if (!query.executeStep()) damaged("a book that is not in the table");
    return {id_in<BookId>(query, 0), static_cast<BookKind>(query.getColumn(1).getInt())};
  }

  static Signature signature_in(SQLite::Statement& row, int column) {
    Signature out;
    const ByteView held = blob_of(row, column);
    if (held.size() != out.size()) damaged("a chain without its seal");
    std::copy(held.begin(), held.end(), out.begin());
    return out;
  }

  /// The seals at waypoints within the run, which a relay keeps, and the first that proves its end.
  void seal(std::uint32_t book_place, std::uint32_t author_place, const Run& run) {
    auto& waypoints = db_.statement("SELECT seq, signature FROM waypoint WHERE book=? AND author=? AND seq>=? ORDER BY seq");
    waypoints.bind(1, books_.number(book_place));
    waypoints.bind(2, authors_.number(author_place));
    waypoints.bind(3, static_cast<std::int64_t>(run.first));
    while (waypoints.executeStep()) {
      Seal seal{book_place, author_place, static_cast<std::uint64_t>(waypoints.getColumn(0).getInt64()), signature_in(waypoints, 1), {}};
      const bool proves_end = seal.seq >= run.last;
      if (proves_end) add_bodies(seal, run.last, seal.seq);
      batch_.seals.push_back(std::move(seal));
      if (proves_end) return;
    }
    seal_by_head(book_place, author_place, run.last);
  }

  /// The digests of the bodies after `last` up to `end` as the seal's tail.
  void add_bodies(Seal& seal, std::uint64_t last, std::uint64_t end) {
    auto& bodies = db_.statement(
        "SELECT e.body FROM link l JOIN entry e ON e.position=l.position WHERE l.book=? AND l.author=? AND l.seq>? AND l.seq<=? "
        "ORDER BY l.seq");
    bodies.bind(1, books_.number(seal.book));
    bodies.bind(2, authors_.number(seal.author));
    bodies.bind(3, static_cast<std::int64_t>(last));
    bodies.bind(4, static_cast<std::int64_t>(end));
    while (bodies.executeStep()) seal.tail.push_back(digest_of(blob_of(bodies, 0)));
  }

  void seal_by_head(std::uint32_t book_place, std::uint32_t author_place, std::uint64_t last) {
    const std::int64_t book = books_.number(book_place);
    const std::int64_t author = authors_.number(author_place);
    ChainRow head = ledger_.chain(db_, book, author, {});
    // Before there were waypoints we sealed no long chain of ours in between; now we do where it is needed.
    if (ours(author) && head.seq - last > kMaxTail) head = {last, ledger_.chain_hash(db_, book, author, {}, last)};
    Seal seal{book_place, author_place, head.seq, {}, {}};
    Bytes beyond;
    if (ours(author)) {
      to_sign_.push_back({batch_.seals.size(), head.hash});
    } else {
      auto& query = db_.statement("SELECT sealed, signature, tail FROM chain WHERE book=? AND author=?");
      query.bind(1, book);
      query.bind(2, author);
      if (!query.executeStep()) damaged("entries without a chain");
      seal.seq = static_cast<std::uint64_t>(query.getColumn(0).getInt64());
      if (seal.seq < head.seq) damaged("a chain without its seal");
      seal.signature = signature_in(query, 1);
      const ByteView tail = blob_of(query, 2);
      beyond.assign(tail.begin(), tail.end());
    }
    add_bodies(seal, last, head.seq);
    for (std::size_t at = 0; at + sizeof(Digest) <= beyond.size(); at += sizeof(Digest))
      std::copy_n(beyond.begin() + static_cast<std::ptrdiff_t>(at), sizeof(Digest), seal.tail.emplace_back().begin());
    batch_.seals.push_back(std::move(seal));
  }

  const Ledger::Impl& ledger_;
  Connection& db_;
  Batch batch_;
  Places books_;
  Places authors_;
  std::map<std::pair<std::uint32_t, std::uint32_t>, Run> runs_;
  static constexpr std::uint64_t kNowhere = ~std::uint64_t{0};
  std::map<std::pair<std::int64_t, std::int64_t>, std::uint64_t> next_seals_;  ///< of each chain met: where its next seal is, as far as it was asked
  std::map<std::int64_t, bool> ours_;  ///< by author
  std::vector<ToSign> to_sign_;
  std::size_t bodies_ = 0, proofs_ = 0;
};

}  // namespace

Ledger::Since Ledger::since(std::int64_t position, const std::function<bool(const BookId&)>& wanted, std::int64_t not_from,
                            std::size_t max_bytes) const {
  Since out;
  out.next = position;
  impl_->database->read([&](Connection& db) {
    Packer packer(*impl_, db);
    std::map<std::int64_t, bool> cross;  // asked once a book
    auto& query = db.statement(
        "SELECT e.position, e.book, e.author, e.seq, e.source, e.body, b.id, b.forgotten FROM entry e JOIN book b ON b.n=e.book WHERE "
        "e.position>? ORDER BY e.position");
    query.bind(1, position);
    while (!packer.full(max_bytes) && query.executeStep()) {
      out.next = query.getColumn(0).getInt64();
      if (not_from != 0 && query.getColumn(4).getInt64() == not_from) continue;
      const std::int64_t book = query.getColumn(1).getInt64();
      const auto [found, fresh] = cross.try_emplace(book, false);
      if (fresh) {
        const auto id = BookId::from_bytes(blob_of(query, 6));
        found->second = id && query.getColumn(7).getInt() == 0 && wanted(*id);
      }
      if (!found->second) continue;
      packer.add(book, query.getColumn(2).getInt64(), static_cast<std::uint64_t>(query.getColumn(3).getInt64()), blob_of(query, 5));
    }
    out.batch = packer.finish();
  });
  return out;
}

namespace {

struct Place {
  std::int64_t position, author;
  AuthorId author_id;
  std::uint64_t seq;
};

/// What of the book lies beyond those heads, in the order in which it was applied here: that respects causality, whoever
/// wrote it.
std::vector<Place> lacking(const Ledger::Impl& ledger, Connection& db, std::int64_t book, const HeadIndex& theirs) {
  std::vector<Place> out;
  for (const Head& ours : ledger.heads(db, book)) {
    const Head* known = theirs.find(ours.author);
    const std::uint64_t after = known == nullptr ? 0 : known->seq;
    if (after >= ours.seq) continue;
    const auto author = ledger.find_author(db, ours.author);
    auto& query = db.statement("SELECT position, seq FROM link WHERE book=? AND author=? AND seq>?");
    query.bind(1, book);
    query.bind(2, *author);
    query.bind(3, static_cast<std::int64_t>(after));
    while (query.executeStep())
      out.push_back({query.getColumn(0).getInt64(), *author, ours.author, static_cast<std::uint64_t>(query.getColumn(1).getInt64())});
  }
  std::sort(out.begin(), out.end(), [](const Place& a, const Place& b) { return a.position < b.position; });
  return out;
}

void advance(Heads& heads, HeadIndex& index, const AuthorId& author, std::uint64_t seq) {
  if (const auto place = index.place(author)) {
    heads[*place].seq = seq;
  } else {
    heads.push_back({author, seq, {}});
    index.added();
  }
}

}  // namespace

Batch Ledger::missing(std::deque<BookHeads>& theirs, std::size_t max_bytes) const {
  Batch out;
  impl_->database->read([&](Connection& db) {
    Packer packer(*impl_, db);
    while (!theirs.empty() && !packer.full(max_bytes)) {
      BookHeads& front = theirs.front();
      const auto number = impl_->find_book(db, front.book);
      HeadIndex index(front.heads);
      bool all = true;
      for (const Place& place : number ? lacking(*impl_, db, *number, index) : std::vector<Place>{}) {
        if (packer.full(max_bytes)) {
          all = false;
          break;
        }
        auto& body = db.statement("SELECT body FROM entry WHERE position=?");
        body.bind(1, place.position);
        if (!body.executeStep()) damaged("an entry that vanished within a snapshot");
        packer.add(*number, place.author, place.seq, blob_of(body, 0));
        advance(front.heads, index, place.author_id, place.seq);
      }
      if (all) theirs.pop_front();
    }
    out = packer.finish();
  });
  return out;
}

Batch Ledger::missing(const BookId& book, const Heads& theirs, std::size_t max_bytes) const {
  std::deque<BookHeads> one{{book, BookKind{}, theirs}};
  return missing(one, max_bytes);
}

}  // namespace weavelog
