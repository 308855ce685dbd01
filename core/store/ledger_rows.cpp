// The ledger's own rows, inside somebody's transaction.

#include <algorithm>

#include "core/store/ledger_impl.h"

namespace weavelog {

std::optional<Bytes> meta(Connection& db, std::string_view key) {
  auto& query = db.statement("SELECT value FROM meta WHERE key=?");
  query.bind(1, std::string(key));
  if (!query.executeStep()) return std::nullopt;
  const ByteView value = blob_of(query, 0);
  return Bytes(value.begin(), value.end());
}

void set_meta(Connection& db, std::string_view key, ByteView value) {
  auto& put = db.statement("INSERT INTO meta(key, value) VALUES(?,?) ON CONFLICT(key) DO UPDATE SET value=excluded.value");
  put.bind(1, std::string(key));
  bind_blob(put, 2, value);
  put.exec();
}

Digest digest_in(SQLite::Statement& row, int column) {
  const ByteView held = blob_of(row, column);
  if (held.size() != sizeof(Digest)) damaged("a digest of the wrong length");
  Digest out;
  std::copy(held.begin(), held.end(), out.begin());
  return out;
}

/// Cheaper than by SQLite's sorter: most books have a few.
void sort_by_author(Heads& heads) {
  std::sort(heads.begin(), heads.end(), [](const Head& a, const Head& b) { return a.author < b.author; });
}

std::optional<std::int64_t> Ledger::Impl::find_author(Connection& db, const AuthorId& id) const {
  auto& query = db.statement("SELECT n FROM author WHERE id=?");
  bind_blob(query, 1, id.bytes);
  if (!query.executeStep()) return std::nullopt;
  return query.getColumn(0).getInt64();
}

std::int64_t Ledger::Impl::author_number(Connection& db, const AuthorCard& card) const {
  const AuthorId id = card.id();
  if (const auto known = find_author(db, id)) return *known;
  auto& add = db.statement("INSERT INTO author(id, key, incarnation, device) VALUES(?,?,?,?)");
  bind_blob(add, 1, id.bytes);
  bind_blob(add, 2, card.key);
  add.bind(3, static_cast<std::int64_t>(card.incarnation));
  add.bind(4, card.device);
  add.exec();
  return db.raw().getLastInsertRowid();
}

std::optional<std::int64_t> Ledger::Impl::find_book(Connection& db, const BookId& book) const {
  auto& query = db.statement("SELECT n FROM book WHERE id=? AND forgotten=0");
  bind_blob(query, 1, book.bytes);
  if (!query.executeStep()) return std::nullopt;
  return query.getColumn(0).getInt64();
}

std::int64_t Ledger::Impl::book_number(Connection& db, const BookId& book, BookKind kind) const {
  auto& query = db.statement("SELECT n, kind, forgotten FROM book WHERE id=?");
  bind_blob(query, 1, book.bytes);
  if (query.executeStep()) {
    if (query.getColumn(2).getInt() != 0)
      throw Abort{{FaultCode::refused, "this book was forgotten on request and does not come back", "book " + book.hex(), ""}};
    if (query.getColumn(1).getInt() != static_cast<int>(kind))
      throw Abort{{FaultCode::malformed, "a book of one kind is offered as another", "book " + book.hex(), ""}};
    return query.getColumn(0).getInt64();
  }
  auto& add = db.statement("INSERT INTO book(id, kind) VALUES(?,?)");
  bind_blob(add, 1, book.bytes);
  add.bind(2, static_cast<int>(kind));
  add.exec();
  return db.raw().getLastInsertRowid();
}

ChainRow Ledger::Impl::chain(Connection& db, std::int64_t book, std::int64_t author, const Digest& start) const {
  auto& query = db.statement("SELECT seq, hash FROM link WHERE book=? AND author=? ORDER BY seq DESC LIMIT 1");
  query.bind(1, book);
  query.bind(2, author);
  if (!query.executeStep()) return {0, start};
  return {static_cast<std::uint64_t>(query.getColumn(0).getInt64()), digest_in(query, 1)};
}

std::int64_t Ledger::Impl::take_position(Connection& db) {
  if (next_position == 0) {
    auto& query = db.statement("SELECT max(coalesce((SELECT max(position) FROM entry), 0), (SELECT position FROM gone))");
    query.executeStep();
    next_position = query.getColumn(0).getInt64() + 1;
  }
  return next_position++;
}

std::int64_t Ledger::Impl::insert_body(Connection& db, std::int64_t book, std::int64_t author, std::uint64_t seq, std::int64_t source,
                                       ByteView body) {
  const std::int64_t position = take_position(db);
  auto& add = db.statement("INSERT INTO entry(position, book, author, seq, source, body) VALUES(?,?,?,?,?,?)");
  add.bind(1, position);
  add.bind(2, book);
  add.bind(3, author);
  add.bind(4, static_cast<std::int64_t>(seq));
  add.bind(5, source);
  bind_blob(add, 6, body);
  add.exec();
  return position;
}

std::int64_t Ledger::Impl::insert_entry(Connection& db, std::int64_t book, std::int64_t author, const ChainRow& link,
                                        std::int64_t source, ByteView body) {
  rows_written = insert_body(db, book, author, link.seq, source, body);
  const Link stored{book, author, link.seq, rows_written, link.hash};
  store_link(db.statement(kStoreLink), stored);
  if (link.seq == 1) begin_chain(db.statement(kBeginChain), stored);
  return rows_written;
}

Ledger::Impl::OwnBook Ledger::Impl::own_book(Connection& db, const BookId& book, BookKind kind) const {
  if (const auto known = own_books.find(book); known != own_books.end() && known->second.kind == kind) return known->second;
  OwnBook out;
  out.number = book_number(db, book, kind);
  out.kind = kind;
  out.head = chain(db, out.number, self_number, chain_start(book, kind, self_id));
  return out;
}

void Ledger::Impl::store_waypoint(Connection& db, std::int64_t book, std::int64_t author, std::uint64_t seq,
                                  const Signature& signature) const {
  auto& put = db.statement("INSERT OR REPLACE INTO waypoint(book, author, seq, signature) VALUES(?,?,?,?)");
  put.bind(1, book);
  put.bind(2, author);
  put.bind(3, static_cast<std::int64_t>(seq));
  bind_blob(put, 4, signature);
  put.exec();
}

Heads Ledger::Impl::heads(Connection& db, std::int64_t book) const {
  auto& query = db.statement("SELECT a.id, h.seq, h.hash FROM head h JOIN author a ON a.n=h.author WHERE h.book=?");
  query.bind(1, book);
  Heads out;
  while (query.executeStep())
    out.push_back({id_in<AuthorId>(query, 0), static_cast<std::uint64_t>(query.getColumn(1).getInt64()), digest_in(query, 2)});
  sort_by_author(out);
  return out;
}

AuthorCard Ledger::Impl::card(Connection& db, std::int64_t author) const {
  auto& query = db.statement("SELECT key, incarnation, device FROM author WHERE n=?");
  query.bind(1, author);
  if (!query.executeStep()) damaged("an author that is not in the table");
  AuthorCard card;
  const ByteView key = blob_of(query, 0);
  if (key.size() != card.key.size()) damaged("a key of the wrong length");
  std::copy(key.begin(), key.end(), card.key.begin());
  card.incarnation = static_cast<std::uint64_t>(query.getColumn(1).getInt64());
  card.device = query.getColumn(2).getString();
  return card;
}

}  // namespace weavelog
