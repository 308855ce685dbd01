// Forks: a database was copied with its key and both copies wrote on under one author. The copy that meets
// the other branch takes it in the place of its own, keeps its own in quarantine, and says again under a new
// incarnation what its own branch held, replacing only what was there before the two parted: so both words
// stand beside each other, and where they differ in a guarded field a person decides. Nor is what the other
// branch says replaced by what meant this one (ingest.cpp). Third devices keep the branch that they had and put
// the other aside.

#include <sqlite3.h>

#include <algorithm>
#include <map>
#include <queue>
#include <set>

#include "core/log/head_index.h"
#include "core/store/ledger_impl.h"

namespace weavelog {
namespace {

constexpr const char* kSteppedBack =
    "own entry of a copied device (fork): what it says was said again under a new incarnation";

struct OwnEntry {
  AuthorId author;
  bool written_here;
  Entry entry;
};

std::vector<OwnEntry> entries_of_key(Connection& db, std::int64_t book, const PublicKey& key) {
  std::vector<OwnEntry> out;
  auto& query = db.statement(
      "SELECT a.id, e.source, e.body FROM link l JOIN entry e ON e.position=l.position JOIN author a ON a.n=l.author "
      "WHERE l.book=? AND a.key=? ORDER BY l.position");
  query.bind(1, book);
  bind_blob(query, 2, key);
  while (query.executeStep()) {
    const auto author = AuthorId::from_bytes(blob_of(query, 0));
    auto entry = author ? decode_entry(blob_of(query, 2), *author)
                        : Outcome<Entry>(fail(FaultCode::damaged, "an author's id", ""));
    if (!entry) throw SQLite::Exception(entry.error().message(), SQLITE_CORRUPT);
    out.push_back({*author, query.getColumn(1).getInt64() == 0, std::move(*entry)});
  }
  return out;
}

}  // namespace

Digest digest_of_heads(const Heads& heads) {
  Digester digester;
  for (const Head& head : heads) {
    std::array<std::uint8_t, 8> seq;
    for (std::size_t i = 0; i < seq.size(); ++i) seq[i] = static_cast<std::uint8_t>(head.seq >> (56 - 8 * i));
    digester.add(head.author.bytes);
    digester.add(seq);
    digester.add(head.hash);
  }
  return digester.finish();
}

Digest Ledger::Impl::chain_hash(Connection& db, std::int64_t book, std::int64_t author, Digest start,
                                std::uint64_t seq) const {
  if (seq == 0) return start;
  auto& query = db.statement("SELECT hash FROM link WHERE book=? AND author=? AND seq=?");
  query.bind(1, book);
  query.bind(2, author);
  query.bind(3, static_cast<std::int64_t>(seq));
  if (!query.executeStep()) damaged("a chain with a gap");
  return digest_in(query, 0);
}

int Ledger::Impl::note_fork(Connection& db, std::int64_t book, std::int64_t author, std::uint64_t seq) const {
  auto& add = db.statement(
      "INSERT INTO fork(book, author, seq, at) VALUES(?,?,?,?) ON CONFLICT(book, author) DO UPDATE SET "
      "seq=min(seq, excluded.seq)");
  add.bind(1, book);
  add.bind(2, author);
  add.bind(3, static_cast<std::int64_t>(seq));
  add.bind(4, options.clock->now());
  add.exec();
  auto& query = db.statement("SELECT own FROM fork WHERE book=? AND author=?");
  query.bind(1, book);
  query.bind(2, author);
  return query.executeStep() ? query.getColumn(0).getInt() : 0;
}

bool Ledger::Impl::in_fork(Connection& db, std::int64_t book, std::int64_t author, std::uint64_t seq) const {
  auto& query = db.statement("SELECT 1 FROM fork WHERE book=? AND author=? AND seq<=?");
  query.bind(1, book);
  query.bind(2, author);
  query.bind(3, static_cast<std::int64_t>(seq));
  return query.executeStep();
}

std::vector<NewEntry> Ledger::Impl::standing_words(Connection& db, std::int64_t book, const BookId& book_id,
                                                   BookKind kind, const AuthorId& author,
                                                   std::uint64_t from) const {
  const auto own = entries_of_key(db, book, options.key.public_key());
  // What we ourselves took back later is not said again. What others replaced is: whether they had seen our
  // word or the other branch's of the same number cannot be told. Our twin, who has our key, is one of the others,
  // but for what goes on in this very chain.
  std::set<Dot> taken_back;
  for (const OwnEntry& held : own)
    if (held.written_here || held.author == author)
      for (const Write& write : held.entry.writes) taken_back.insert(write.replaces.begin(), write.replaces.end());
  std::map<Dot, std::vector<Dot>>
      before;  // what a write of the branch replaced of the time before the branch
  std::vector<NewEntry> out;
  for (const OwnEntry& held : own) {
    if (held.author != author || held.entry.seq < from) continue;
    NewEntry again{book_id, kind, held.entry.action, {}, held.entry.stamp};
    for (std::uint32_t i = 0; i < held.entry.writes.size(); ++i) {
      Write write = held.entry.writes[i];
      std::vector<Dot> replaces;
      for (const Dot& dot : write.replaces) {
        const auto inner = before.find(dot);
        if (inner == before.end()) {
          replaces.push_back(dot);
        } else {
          replaces.insert(replaces.end(), inner->second.begin(), inner->second.end());
        }
      }
      std::sort(replaces.begin(), replaces.end());
      replaces.erase(std::unique(replaces.begin(), replaces.end()), replaces.end());
      const Dot dot{author, held.entry.seq, i};
      before[dot] = replaces;
      if (taken_back.contains(dot)) continue;
      write.replaces = std::move(replaces);
      again.writes.push_back(std::move(write));
    }
    if (!again.writes.empty()) out.push_back(std::move(again));
  }
  return out;
}

void Ledger::Impl::step_back(Connection& db, std::int64_t book, const BookId& book_id, std::int64_t author,
                             const ChainRow& to) const {
  auto& keep = db.statement(
      "INSERT OR IGNORE INTO quarantine(book, author, seq, body, reason, at) SELECT b.id, a.id, e.seq, "
      "e.body, ?, ? FROM link l JOIN entry e ON e.position=l.position JOIN "
      "book b ON b.n=l.book JOIN author a ON a.n=l.author WHERE l.book=? AND l.author=? AND l.seq>?");
  keep.bind(1, kSteppedBack);
  keep.bind(2, options.clock->now());
  keep.bind(3, book);
  keep.bind(4, author);
  keep.bind(5, static_cast<std::int64_t>(to.seq));
  keep.exec();
  auto& remove = db.statement("DELETE FROM entry WHERE position IN (SELECT position FROM link WHERE book=? AND author=? AND seq>?)");
  remove.bind(1, book);
  remove.bind(2, author);
  remove.bind(3, static_cast<std::int64_t>(to.seq));
  remove.exec();
  auto& waypoints = db.statement("DELETE FROM waypoint WHERE book=? AND author=? AND seq>?");
  waypoints.bind(1, book);
  waypoints.bind(2, author);
  waypoints.bind(3, static_cast<std::int64_t>(to.seq));
  waypoints.exec();
  // A seal further on is one of the branch that was taken back.
  auto& seal = db.statement("UPDATE chain SET sealed=0, signature=NULL, tail=NULL WHERE book=? AND author=? AND sealed>?");
  seal.bind(1, book);
  seal.bind(2, author);
  seal.bind(3, static_cast<std::int64_t>(to.seq));
  seal.exec();
  if (to.seq == 0) {
    auto& none = db.statement("DELETE FROM chain WHERE book=? AND author=?");
    none.bind(1, book);
    none.bind(2, author);
    none.exec();
  }
  rebuild_book(db, book, book_id);
}

std::optional<std::int64_t> Ledger::Impl::put_in_causal_order(Connection& db, std::int64_t book, const BookId& book_id) {
  struct Row {
    std::int64_t position, author_number, source;
    Digest hash;
    Bytes body;
    AuthorId author;
    Entry entry;
  };
  std::vector<Row> rows;
  std::map<std::pair<AuthorId, std::uint64_t>, std::size_t> numbered;
  {
    auto& query = db.statement(
        "SELECT e.position, e.author, e.source, e.body, a.id, l.hash FROM link l JOIN entry e ON e.position=l.position "
        "JOIN author a ON a.n=l.author WHERE l.book=? ORDER BY l.position");
    query.bind(1, book);
    while (query.executeStep()) {
      const ByteView body = blob_of(query, 3);
      const auto author = AuthorId::from_bytes(blob_of(query, 4));
      auto entry = author ? decode_entry(body, *author) : Outcome<Entry>(fail(FaultCode::damaged, "an author's id", ""));
      if (!entry) damaged(entry.error().message());
      numbered[{*author, entry->seq}] = rows.size();
      rows.push_back({query.getColumn(0).getInt64(), query.getColumn(1).getInt64(), query.getColumn(2).getInt64(),
                      digest_in(query, 5), Bytes(body.begin(), body.end()), *author, std::move(*entry)});
    }
  }
  // What stands before each: the author's entry before it, and what it replaces. Of those that can go next, the first as they came.
  std::vector<std::vector<std::size_t>> followers(rows.size());
  std::vector<std::size_t> waits(rows.size());
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const Row& row = rows[i];
    const auto after = [&](const AuthorId& author, std::uint64_t seq) {
      const auto found = numbered.find({author, seq});
      if (found == numbered.end() || found->second == i) return;
      followers[found->second].push_back(i);
      ++waits[i];
    };
    after(row.author, row.entry.seq - 1);
    for (const Write& write : row.entry.writes)
      for (const Dot& dot : write.replaces) after(dot.author, dot.seq);
  }
  std::vector<bool> placed(rows.size());
  std::vector<std::size_t> order;
  std::priority_queue<std::size_t, std::vector<std::size_t>, std::greater<>> ready;
  for (std::size_t i = 0; i < rows.size(); ++i)
    if (waits[i] == 0) ready.push(i);
  for (; !ready.empty();) {
    const std::size_t next = ready.top();
    ready.pop();
    order.push_back(next);
    placed[next] = true;
    for (const std::size_t follower : followers[next])
      if (--waits[follower] == 0) ready.push(follower);
  }
  // Two branches under one number can wait for each other: those stay as they came (replaced_before.h).
  const bool wait_for_each_other = order.size() < rows.size();
  for (std::size_t i = 0; i < rows.size(); ++i)
    if (!placed[i]) order.push_back(i);
  std::size_t same = 0;
  while (same < order.size() && order[same] == same) ++same;
  if (same == order.size()) {
    if (wait_for_each_other) rebuild_book(db, book, book_id);
    return std::nullopt;
  }
  for (std::size_t i = same; i < rows.size(); ++i) {
    auto& remove = db.statement("DELETE FROM entry WHERE position=?");
    remove.bind(1, rows[i].position);
    remove.exec();
  }
  std::int64_t newest = 0;
  for (std::size_t i = same; i < order.size(); ++i) {
    const Row& row = rows[order[i]];
    newest = insert_entry(db, book, row.author_number, {row.entry.seq, row.hash}, row.source, row.body);
  }
  rebuild_book(db, book, book_id);
  return newest;
}

void Ledger::Impl::count_words_said_again(Connection& db, std::int64_t book, std::int64_t author) const {
  auto& count = db.statement("UPDATE fork SET own=own+1 WHERE book=? AND author=?");
  count.bind(1, book);
  count.bind(2, author);
  count.exec();
}

std::vector<AuthorId> Ledger::forked(const BookId& book, const Heads& theirs) const {
  std::vector<AuthorId> out;
  impl_->database->read([&](Connection& db) {
    const auto number = impl_->find_book(db, book);
    if (!number) return;
    auto& query = db.statement("SELECT kind FROM book WHERE n=?");
    query.bind(1, *number);
    if (!query.executeStep()) return;
    const auto kind = static_cast<BookKind>(query.getColumn(0).getInt());
    const HeadIndex index(theirs);
    for (const Head& ours : impl_->heads(db, *number)) {
      const Head* other = index.find(ours.author);
      if (other == nullptr || other->seq == 0 || other->seq > ours.seq || other->hash == ours.hash)
        continue;
      const auto author = impl_->find_author(db, ours.author);
      if (!author) continue;
      const Digest there =
          other->seq == ours.seq
              ? ours.hash
              : impl_->chain_hash(db, *number, *author, chain_start(book, kind, ours.author), other->seq);
      if (there != other->hash) out.push_back(ours.author);
    }
  });
  return out;
}

std::vector<Fork> Ledger::forks() const {
  std::vector<Fork> out;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement(
        "SELECT b.id, f.author, f.seq, f.at FROM fork f JOIN book b ON b.n=f.book ORDER BY f.at, b.id");
    while (query.executeStep()) {
      out.push_back({id_in<BookId>(query, 0), impl_->card(db, query.getColumn(1).getInt64()),
                     static_cast<std::uint64_t>(query.getColumn(2).getInt64()),
                     query.getColumn(3).getInt64()});
    }
  });
  return out;
}

std::vector<KnownAuthor> Ledger::authors() const {
  std::vector<KnownAuthor> out;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement("SELECT n, wrong_clock FROM author ORDER BY n");
    while (query.executeStep())
      out.push_back({impl_->card(db, query.getColumn(0).getInt64()), query.getColumn(1).getInt() != 0});
  });
  return out;
}

}  // namespace weavelog
