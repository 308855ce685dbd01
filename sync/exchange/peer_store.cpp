#include "sync/exchange/peer_store.h"

#include <algorithm>
#include <optional>

#include "core/store/database.h"

namespace weavelog {
namespace {

constexpr const char* kTables = R"sql(
CREATE TABLE IF NOT EXISTS exchange_peer(n INTEGER PRIMARY KEY, key BLOB NOT NULL UNIQUE, token BLOB, position INTEGER NOT NULL
  DEFAULT 0, digest BLOB, books INTEGER NOT NULL DEFAULT 0, at INTEGER NOT NULL DEFAULT 0);
CREATE TABLE IF NOT EXISTS exchange_told(peer INTEGER PRIMARY KEY, stubs INTEGER NOT NULL);
CREATE TABLE IF NOT EXISTS exchange_declined(peer INTEGER NOT NULL, book BLOB NOT NULL, PRIMARY KEY(peer, book)) WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS exchange_noted(book BLOB NOT NULL, peer INTEGER NOT NULL, sent INTEGER NOT NULL, received INTEGER NOT NULL,
  first INTEGER NOT NULL, last INTEGER NOT NULL, PRIMARY KEY(book, peer)) WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS exchange_handed(book BLOB NOT NULL, way INTEGER NOT NULL, receiver TEXT NOT NULL, times INTEGER NOT NULL,
  first INTEGER NOT NULL, last INTEGER NOT NULL, PRIMARY KEY(book, way, receiver)) WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS exchange_unheld(peer INTEGER PRIMARY KEY, stubs INTEGER NOT NULL);
CREATE TABLE IF NOT EXISTS exchange_apart(book BLOB NOT NULL, peer INTEGER NOT NULL, author BLOB NOT NULL, seq INTEGER NOT NULL, hash BLOB NOT NULL,
  PRIMARY KEY(book, peer, author)) WITHOUT ROWID;
CREATE TABLE IF NOT EXISTS exchange_scope(peer INTEGER NOT NULL, book BLOB NOT NULL, PRIMARY KEY(peer, book)) WITHOUT ROWID;
)sql";

template <std::size_t N>
bool copy_to(std::array<std::uint8_t, N>& out, ByteView bytes) {
  if (bytes.size() != N) return false;
  std::copy(bytes.begin(), bytes.end(), out.begin());
  return true;
}

std::set<BookId> books_of(const Ledger& ledger, const char* sql, std::int64_t peer) {
  std::set<BookId> out;
  ledger.read([&](Connection& db) {
    auto& query = db.statement(sql);
    query.bind(1, peer);
    while (query.executeStep())
      if (const auto book = BookId::from_bytes(blob_of(query, 0))) out.insert(*book);
  });
  return out;
}

Outcome<> add_books(Ledger& ledger, const char* sql, std::int64_t peer, const std::vector<BookId>& books) {
  if (books.empty()) return {};
  return ledger.transact([&](Connection& db) {
    for (const BookId& book : books) {
      auto& add = db.statement(sql);
      add.bind(1, peer);
      bind_blob(add, 2, book.bytes);
      add.exec();
    }
  });
}

void add_exchanged(Connection& db, std::int64_t peer, const std::map<BookId, ExchangedCount>& entries, UnixMs at) {
  for (const auto& [book, count] : entries) {
    auto& add = db.statement(
        "INSERT INTO exchange_noted(book, peer, sent, received, first, last) SELECT ?1, ?2, ?3, ?4, ?5, ?5 WHERE EXISTS(SELECT 1 FROM book WHERE "
        "id=?1 AND forgotten=0) ON CONFLICT(book, peer) DO UPDATE SET sent=sent+?3, received=received+?4, last=max(last, ?5)");
    bind_blob(add, 1, book.bytes);
    add.bind(2, peer);
    add.bind(3, static_cast<std::int64_t>(count.sent));
    add.bind(4, static_cast<std::int64_t>(count.received));
    add.bind(5, at);
    add.exec();
  }
}

/// Of a book that was forgotten before this was there to hear of it, as when a backup from before is restored.
void drop_forgotten(Connection& db) {
  auto& any = db.statement("SELECT EXISTS(SELECT 1 FROM stub)");
  if (!any.executeStep() || any.getColumn(0).getInt() == 0) return;
  int dropped = 0;
  for (const char* sql : {"DELETE FROM exchange_scope WHERE book IN (SELECT book FROM stub)",
                          "DELETE FROM exchange_declined WHERE book IN (SELECT book FROM stub)",
                          "DELETE FROM exchange_noted WHERE book IN (SELECT book FROM stub)", "DELETE FROM exchange_handed WHERE book IN (SELECT book FROM stub)",
                          "DELETE FROM exchange_apart WHERE book IN (SELECT book FROM stub)"})
    dropped += db.raw().exec(sql);
  if (dropped > 0) db.raw().exec("UPDATE exchange_peer SET token=NULL, digest=NULL");
}

/// Up to which number the chains of these books are held.
std::map<std::pair<BookId, AuthorId>, std::uint64_t> held_of(const Ledger& ledger, const Batch& batch, const std::vector<std::uint32_t>& books) {
  std::map<std::pair<BookId, AuthorId>, std::uint64_t> out;
  for (const std::uint32_t place : books)
    for (const Head& head : ledger.heads(batch.books[place].id)) out[{batch.books[place].id, head.author}] = head.seq;
  return out;
}

}  // namespace

Outcome<std::unique_ptr<PeerStore>> PeerStore::open(Ledger& ledger) {
  auto made = ledger.transact([](Connection& db) {
    db.raw().exec(kTables);
    drop_forgotten(db);
  });
  if (!made) return fail(made.error());
  ledger.erase_with([](Connection& db, const BookId& book) {
    // Digests over common books were made of it too.
    db.raw().exec("UPDATE exchange_peer SET token=NULL, digest=NULL");
    for (const char* sql : {"DELETE FROM exchange_scope WHERE book=?", "DELETE FROM exchange_declined WHERE book=?",
                            "DELETE FROM exchange_noted WHERE book=?", "DELETE FROM exchange_handed WHERE book=?", "DELETE FROM exchange_apart WHERE book=?"}) {
      auto& remove = db.statement(sql);
      bind_blob(remove, 1, book.bytes);
      remove.exec();
    }
  });
  return std::unique_ptr<PeerStore>(new PeerStore(ledger));
}

Outcome<std::int64_t> PeerStore::number_of(const PublicKey& peer) {
  std::int64_t number = 0;
  const auto find = [&](Connection& db) {
    auto& query = db.statement("SELECT n FROM exchange_peer WHERE key=?");
    bind_blob(query, 1, peer);
    if (query.executeStep()) number = query.getColumn(0).getInt64();
  };
  ledger_.read(find);
  if (number != 0) return number;
  auto made = ledger_.transact([&](Connection& db) {
    auto& add = db.statement("INSERT OR IGNORE INTO exchange_peer(key) VALUES(?)");
    bind_blob(add, 1, peer);
    add.exec();
    find(db);
  });
  if (!made) return fail(made.error());
  return number;
}

std::optional<Agreement> PeerStore::agreement(std::int64_t peer) const {
  std::optional<Agreement> out;
  ledger_.read([&](Connection& db) {
    auto& query = db.statement("SELECT token, digest, position, books, at FROM exchange_peer WHERE n=? AND token IS NOT NULL");
    query.bind(1, peer);
    if (!query.executeStep()) return;
    Agreement held;
    if (!copy_to(held.token, blob_of(query, 0)) || !copy_to(held.digest, blob_of(query, 1))) return;
    held.position = query.getColumn(2).getInt64();
    held.books = static_cast<std::uint64_t>(query.getColumn(3).getInt64());
    held.at = query.getColumn(4).getInt64();
    out = held;
  });
  return out;
}

Outcome<> PeerStore::agree(std::int64_t peer, const Agreement& agreement, const std::map<BookId, ExchangedCount>& exchanged) {
  return ledger_.transact([&](Connection& db) {
    auto& put = db.statement("UPDATE exchange_peer SET token=?, position=?, digest=?, books=?, at=? WHERE n=?");
    bind_blob(put, 1, agreement.token);
    put.bind(2, agreement.position);
    bind_blob(put, 3, agreement.digest);
    put.bind(4, static_cast<std::int64_t>(agreement.books));
    put.bind(5, agreement.at);
    put.bind(6, peer);
    put.exec();
    add_exchanged(db, peer, exchanged, agreement.at);
  });
}

template <class Look>
void PeerStore::with_scope(std::int64_t peer, Look look) const {
  for (;;) {
    std::uint64_t before = 0;
    {
      const std::lock_guard guard(mutex_);
      if (const auto held = scopes_.find(peer); held != scopes_.end()) return look(held->second);
      before = widened_;
    }
    Scope scope;
    ledger_.read([&](Connection& db) {
      auto& query = db.statement("SELECT book FROM exchange_scope WHERE peer=?");
      query.bind(1, peer);
      while (query.executeStep())
        if (const auto book = BookId::from_bytes(blob_of(query, 0)); book && scope.books.insert(*book).second) scope.order.push_back(*book);
    });
    const std::lock_guard guard(mutex_);
    if (widened_ == before) scopes_.try_emplace(peer, std::move(scope));
  }
}

std::set<BookId> PeerStore::scope(std::int64_t peer) const {
  return books_of(ledger_, "SELECT book FROM exchange_scope WHERE peer=?", peer);
}

std::set<BookId> PeerStore::declined(std::int64_t peer) const {
  return books_of(ledger_, "SELECT book FROM exchange_declined WHERE peer=?", peer);
}

Outcome<> PeerStore::decline(std::int64_t peer, const std::vector<BookId>& books) {
  return add_books(ledger_, "INSERT OR IGNORE INTO exchange_declined(peer, book) VALUES(?,?)", peer, books);
}

std::map<BookId, Heads> PeerStore::apart(std::int64_t peer) const {
  std::map<BookId, Heads> out;
  ledger_.read([&](Connection& db) {
    auto& query = db.statement(
        "SELECT a.book, a.author, a.seq, a.hash FROM exchange_apart a WHERE a.peer=?1 AND NOT EXISTS(SELECT 1 FROM exchange_scope s WHERE s.peer=?1 "
        "AND s.book=a.book) ORDER BY a.book, a.author");
    query.bind(1, peer);
    while (query.executeStep()) {
      const auto book = BookId::from_bytes(blob_of(query, 0));
      const auto author = AuthorId::from_bytes(blob_of(query, 1));
      Head head{author.value_or(AuthorId{}), static_cast<std::uint64_t>(query.getColumn(2).getInt64()), {}};
      if (book && author && copy_to(head.hash, blob_of(query, 3))) out[*book].push_back(head);
    }
  });
  return out;
}

Outcome<ApartBegun> PeerStore::begin_apart(std::int64_t peer, const Batch& batch, const std::vector<std::uint32_t>& books) {
  std::set<std::pair<std::uint32_t, std::uint32_t>> chains;
  for (const BatchEntry& entry : batch.entries)
    if (entry.author < batch.authors.size() && std::find(books.begin(), books.end(), entry.book) != books.end()) chains.emplace(entry.book, entry.author);
  const auto held = held_of(ledger_, batch, books);
  ApartBegun begun;
  auto noted = ledger_.transact([&](Connection& db) {
    for (const auto& [book, author] : chains) {
      auto& put = db.statement(
          "INSERT OR IGNORE INTO exchange_apart(book, peer, author, seq, hash) SELECT ?1, ?2, ?3, 0, x'' WHERE EXISTS(SELECT 1 FROM book WHERE id=?1 AND "
          "forgotten=0)");
      bind_blob(put, 1, batch.books[book].id.bytes);
      put.bind(2, peer);
      const std::pair chain{batch.books[book].id, batch.authors[author].id()};
      bind_blob(put, 3, chain.second.bytes);
      if (put.exec() == 0) continue;
      const auto before = held.find(chain);
      begun[chain] = before == held.end() ? 0 : before->second;
    }
  });
  if (!noted) return fail(noted.error());
  return begun;
}

Outcome<> PeerStore::keep_apart(std::int64_t peer, const Batch& batch, const std::vector<std::uint32_t>& books, const ApartBegun& begun) {
  std::map<BookId, Heads> said = apart(peer);
  // A device that holds nothing else would have taken this branch, so it counts as taken here too, where another one stands under the number.
  std::optional<std::vector<Fork>> forks;
  const auto parted = [&](const BookId& book, const AuthorId& author, std::uint64_t seq) {
    if (!forks) forks = ledger_.forks();
    return std::any_of(forks->begin(), forks->end(), [&](const Fork& fork) { return fork.book == book && fork.author.id() == author && fork.seq <= seq; });
  };
  for (const std::uint32_t place : books) {
    const BatchBook& book = batch.books[place];
    Heads& heads = said[book.id];
    for (const BatchEntry& entry : batch.entries) {
      if (entry.book != place || entry.author >= batch.authors.size()) continue;
      const AuthorId author = batch.authors[entry.author].id();
      auto head = std::lower_bound(heads.begin(), heads.end(), author, [](const Head& one, const AuthorId& id) { return one.author < id; });
      if (head == heads.end() || head->author != author) head = heads.insert(head, {author, 0, chain_start(book.id, book.kind, author)});
      // A chain that is said anew may be another branch than the peer held before.
      if (entry.seq == 1) *head = {author, 0, chain_start(book.id, book.kind, author)};
      if (entry.seq != head->seq + 1) continue;
      if (!ledger_.holds(book.id, author, entry.seq, entry.body) && !parted(book.id, author, entry.seq)) continue;  // put aside, it is not compared
      head->hash = chain_next(head->hash, digest_of(entry.body));
      ++head->seq;
    }
  }
  const auto held = held_of(ledger_, batch, books);
  const auto some_was_taken = [&](const BookId& book, const AuthorId& author) {
    const auto now = held.find({book, author});
    if (now == held.end()) return false;
    const auto before = begun.find({book, author});
    return before == begun.end() || before->second != now->second;
  };
  return ledger_.transact([&](Connection& db) {
    for (const std::uint32_t place : books)
      for (const Head& head : said[batch.books[place].id]) {
        if (head.seq == 0) {
          if (some_was_taken(batch.books[place].id, head.author)) continue;
          // There is nothing that could be taken for something else later; and what others put here by this author goes on showing that who has it has it.
          auto& drop = db.statement("DELETE FROM exchange_apart WHERE book=? AND peer=? AND author=? AND seq=0");
          bind_blob(drop, 1, batch.books[place].id.bytes);
          drop.bind(2, peer);
          bind_blob(drop, 3, head.author.bytes);
          drop.exec();
          continue;
        }
        auto& put = db.statement(
            "INSERT OR REPLACE INTO exchange_apart(book, peer, author, seq, hash) SELECT ?1, ?2, ?3, ?4, ?5 WHERE EXISTS(SELECT 1 FROM book WHERE id=?1 AND "
            "forgotten=0)");
        bind_blob(put, 1, batch.books[place].id.bytes);
        put.bind(2, peer);
        bind_blob(put, 3, head.author.bytes);
        put.bind(4, static_cast<std::int64_t>(head.seq));
        bind_blob(put, 5, head.hash);
        put.exec();
      }
  });
}

Outcome<> PeerStore::forget_apart(std::int64_t peer, const BookId& book, const std::vector<AuthorId>& authors) {
  return ledger_.transact([&](Connection& db) {
    for (const AuthorId& author : authors) {
      // The line stays, without a head: that the chain came this way goes on showing nothing (apart_authors).
      auto& forget = db.statement("UPDATE exchange_apart SET seq=0, hash=x'' WHERE book=? AND peer=? AND author=?");
      bind_blob(forget, 1, book.bytes);
      forget.bind(2, peer);
      bind_blob(forget, 3, author.bytes);
      forget.exec();
    }
  });
}

std::set<AuthorId> PeerStore::apart_authors(const BookId& book) const {
  std::set<AuthorId> out;
  ledger_.read([&](Connection& db) {
    auto& query = db.statement("SELECT DISTINCT author FROM exchange_apart WHERE book=?");
    bind_blob(query, 1, book.bytes);
    while (query.executeStep())
      if (const auto author = AuthorId::from_bytes(blob_of(query, 0))) out.insert(*author);
  });
  return out;
}

std::uint64_t PeerStore::unheld_stubs(std::int64_t peer) const {
  std::uint64_t out = 0;
  ledger_.read([&](Connection& db) {
    auto& query = db.statement("SELECT stubs FROM exchange_unheld WHERE peer=?");
    query.bind(1, peer);
    if (query.executeStep()) out = static_cast<std::uint64_t>(query.getColumn(0).getInt64());
  });
  return out;
}

Outcome<> PeerStore::note_unheld_stubs(std::int64_t peer, std::uint64_t stubs) {
  return ledger_.transact([&](Connection& db) {
    auto& put = db.statement("INSERT OR REPLACE INTO exchange_unheld(peer, stubs) VALUES(?,?)");
    put.bind(1, peer);
    put.bind(2, static_cast<std::int64_t>(stubs));
    put.exec();
  });
}

std::int64_t PeerStore::told(std::int64_t peer) const {
  std::int64_t out = 0;
  ledger_.read([&](Connection& db) {
    auto& query = db.statement("SELECT stubs FROM exchange_told WHERE peer=?");
    query.bind(1, peer);
    if (query.executeStep()) out = query.getColumn(0).getInt64();
  });
  return out;
}

Outcome<> PeerStore::tell(std::int64_t peer, std::int64_t number) {
  return ledger_.transact([&](Connection& db) {
    auto& put = db.statement("INSERT OR REPLACE INTO exchange_told(peer, stubs) VALUES(?,?)");
    put.bind(1, peer);
    put.bind(2, number);
    put.exec();
  });
}

bool PeerStore::in_scope(std::int64_t peer, const BookId& book) const {
  bool out = false;
  with_scope(peer, [&](const Scope& held) { out = held.books.contains(book); });
  return out;
}

std::vector<BookId> PeerStore::scope_after(std::int64_t peer, std::size_t known) const {
  std::vector<BookId> out;
  with_scope(peer, [&](const Scope& held) {
    const std::size_t from = std::min(known, held.order.size());
    out.assign(held.order.begin() + static_cast<std::ptrdiff_t>(from), held.order.end());
  });
  return out;
}

Outcome<> PeerStore::widen(std::int64_t peer, const std::vector<BookId>& books) {
  auto written = add_books(ledger_,
                           "INSERT OR IGNORE INTO exchange_scope(peer, book) SELECT ?1, ?2 WHERE NOT EXISTS(SELECT 1 FROM stub WHERE book=?2)",
                           peer, books);
  if (!written || books.empty()) return written;
  const std::lock_guard guard(mutex_);
  ++widened_;
  if (const auto held = scopes_.find(peer); held != scopes_.end())
    for (const BookId& book : books)
      if (held->second.books.insert(book).second) held->second.order.push_back(book);
  return {};
}

Outcome<> PeerStore::note_exchanged(std::int64_t peer, const std::map<BookId, ExchangedCount>& entries, UnixMs at) {
  if (entries.empty()) return {};
  return ledger_.transact([&](Connection& db) { add_exchanged(db, peer, entries, at); });
}

std::vector<Exchanged> PeerStore::exchanged(const std::optional<BookId>& book) const {
  std::vector<Exchanged> out;
  ledger_.read([&](Connection& db) {
    auto& query = db.statement(
        "SELECT n.book, p.key, n.sent, n.received, n.first, n.last FROM exchange_noted n JOIN exchange_peer p ON p.n=n.peer "
        "WHERE ?1 IS NULL OR n.book=?1 ORDER BY n.last DESC, n.book, p.key");
    if (book)
      bind_blob(query, 1, book->bytes);
    else
      query.bind(1);
    while (query.executeStep()) {
      Exchanged& one = out.emplace_back();
      one.book = BookId::from_bytes(blob_of(query, 0)).value_or(BookId{});
      if (const ByteView key = blob_of(query, 1); key.size() == one.peer.size()) std::copy(key.begin(), key.end(), one.peer.begin());
      one.entries = {static_cast<std::uint64_t>(query.getColumn(2).getInt64()), static_cast<std::uint64_t>(query.getColumn(3).getInt64())};
      one.first = query.getColumn(4).getInt64();
      one.last = query.getColumn(5).getInt64();
    }
  });
  return out;
}

std::string_view name_of(HandedAs as) {
  switch (as) {
    case HandedAs::bundle:
      return "bundle";
    case HandedAs::backup:
      return "backup";
    case HandedAs::card:
      return "card";
  }
  return {};
}

Outcome<> PeerStore::note_handed(HandedAs as, const std::string& receiver, std::span<const BookId> books, UnixMs at) {
  if (books.empty()) return {};
  return ledger_.transact([&](Connection& db) {
    for (const BookId& book : books) {
      auto& add = db.statement(
          "INSERT INTO exchange_handed(book, way, receiver, times, first, last) SELECT ?1, ?2, ?3, 1, ?4, ?4 WHERE EXISTS(SELECT 1 FROM book "
          "WHERE id=?1 AND kind=?5 AND forgotten=0) ON CONFLICT(book, way, receiver) DO UPDATE SET times=times+1, last=max(last, ?4)");
      bind_blob(add, 1, book.bytes);
      add.bind(2, static_cast<int>(as));
      add.bind(3, receiver);
      add.bind(4, at);
      add.bind(5, static_cast<std::int64_t>(ledger_.registry().personal()));
      add.exec();
    }
  });
}

std::vector<HandedOn> PeerStore::handed(const std::optional<BookId>& book) const {
  std::vector<HandedOn> out;
  ledger_.read([&](Connection& db) {
    auto& query = db.statement(
        "SELECT book, way, receiver, times, first, last FROM exchange_handed WHERE ?1 IS NULL OR book=?1 ORDER BY last DESC, book, way, receiver");
    if (book)
      bind_blob(query, 1, book->bytes);
    else
      query.bind(1);
    while (query.executeStep())
      out.push_back({BookId::from_bytes(blob_of(query, 0)).value_or(BookId{}), static_cast<HandedAs>(query.getColumn(1).getInt()),
                     query.getColumn(2).getString(), static_cast<std::uint64_t>(query.getColumn(3).getInt64()), query.getColumn(4).getInt64(),
                     query.getColumn(5).getInt64()});
  });
  return out;
}

std::shared_ptr<CommonBooks> PeerStore::common_books(std::int64_t peer, const BookId& room) {
  const std::lock_guard guard(mutex_);
  auto& held = common_[{peer, room}];
  if (!held) held = std::make_shared<CommonBooks>();
  return held;
}

}  // namespace weavelog
