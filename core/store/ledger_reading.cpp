// What the ledger tells.

#include <utility>

#include "core/store/ledger_impl.h"

namespace weavelog {
namespace {

EntityState state_in(SQLite::Statement& row, const BookId& book, const EntityId& id, int column) {
  auto state = decode_state(book, id, blob_of(row, column));
  if (!state) damaged(state.error().message());
  return std::move(*state);
}

/// Books with their heads, one row a chain; ordered by book. One of which nothing was taken is not among them.
constexpr const char* kBooks =
    "SELECT b.id, b.kind, a.id, h.seq, h.hash FROM book b JOIN head h ON h.book=b.n JOIN author a ON a.n=h.author "
    "WHERE b.forgotten=0 ORDER BY b.id";
constexpr const char* kBooksOfKind =
    "SELECT b.id, b.kind, a.id, h.seq, h.hash FROM book b JOIN head h ON h.book=b.n JOIN author a ON a.n=h.author "
    "WHERE b.forgotten=0 AND b.kind=? ORDER BY b.id";
constexpr const char* kOneBook =
    "SELECT b.id, b.kind, a.id, h.seq, h.hash FROM book b JOIN head h ON h.book=b.n JOIN author a ON a.n=h.author "
    "WHERE b.forgotten=0 AND b.id=?";

std::vector<BookInfo> book_infos(SQLite::Statement& rows) {
  std::vector<BookInfo> out;
  Heads heads;
  const auto end_book = [&] {
    sort_by_author(heads);
    if (!out.empty()) out.back().heads = digest_of_heads(heads);
    heads.clear();
  };
  while (rows.executeStep()) {
    const auto id = id_in<BookId>(rows, 0);
    if (out.empty() || out.back().id != id) {
      end_book();
      out.push_back({id, static_cast<BookKind>(rows.getColumn(1).getInt()), {}});
    }
    heads.push_back({id_in<AuthorId>(rows, 2), static_cast<std::uint64_t>(rows.getColumn(3).getInt64()), digest_in(rows, 4)});
  }
  end_book();
  return out;
}

}  // namespace

std::optional<EntityState> Ledger::entity(const BookId& book, const EntityId& id) const {
  // Within a snapshot of the caller's only that snapshot counts.
  std::optional<EntityState> out;
  if (!impl_->database->in_snapshot()) {
    out = impl_->late_state(book, id);
    if (!out) out = impl_->entities.find(book, id);
  }
  if (out) return out;
  const auto read = [&](Connection& db) {
    auto& query = db.statement("SELECT e.state FROM entity e JOIN book b ON b.n=e.book WHERE b.id=? AND e.id=?");
    bind_blob(query, 1, book.bytes);
    bind_blob(query, 2, id.bytes);
    if (query.executeStep()) out = state_in(query, book, id, 0);
  };
  if (impl_->knows_late()) {
    impl_->database->read_unsettled(read);  // it is none of what is late
  } else {
    impl_->database->read(read);
  }
  return out;
}

std::vector<EntityState> Ledger::entities(const BookId& book, std::optional<EntityKind> kind) const {
  std::vector<EntityState> out;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement("SELECT e.id, e.state, e.kind FROM entity e JOIN book b ON b.n=e.book WHERE b.id=? ORDER BY e.id");
    bind_blob(query, 1, book.bytes);
    while (query.executeStep())
      if (!kind || query.getColumn(2).getInt() == static_cast<int>(*kind))
        out.push_back(state_in(query, book, id_in<EntityId>(query, 0), 1));
  });
  return out;
}

std::vector<BookInfo> Ledger::books(std::optional<BookKind> kind) const {
  std::vector<BookInfo> out;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement(kind ? kBooksOfKind : kBooks);
    if (kind) query.bind(1, static_cast<int>(*kind));
    out = book_infos(query);
  });
  return out;
}

Ledger::BooksSince Ledger::books_since(std::int64_t position, std::int64_t deletions) const {
  BooksSince out;
  if (const auto now = impl_->newest_place(); position != 0 && now.position == position && now.deletions == deletions) {
    out.position = position;
    out.deletions = deletions;
    return out;
  }
  impl_->database->read([&](Connection& db) {
    const auto now = impl_->newest_place();
    out.position = now.position;
    out.deletions = now.deletions;
    out.all = position == 0 || out.deletions != deletions;
    if (out.all) {
      out.books = book_infos(db.statement(kBooks));
      return;
    }
    std::vector<BookId> changed;
    auto& query = db.statement("SELECT DISTINCT b.id FROM entry e JOIN book b ON b.n=e.book WHERE e.position>?");
    query.bind(1, position);
    while (query.executeStep()) changed.push_back(id_in<BookId>(query, 0));
    for (const BookId& id : changed) {
      auto& one = db.statement(kOneBook);
      bind_blob(one, 1, id.bytes);
      for (BookInfo& book : book_infos(one)) out.books.push_back(book);
    }
  });
  return out;
}

std::optional<BookInfo> Ledger::book(const BookId& id) const {
  std::vector<BookInfo> out;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement(kOneBook);
    bind_blob(query, 1, id.bytes);
    out = book_infos(query);
  });
  return out.empty() ? std::nullopt : std::optional(out.front());
}

Heads Ledger::heads(const BookId& book) const {
  Heads out;
  impl_->database->read([&](Connection& db) {
    if (const auto number = impl_->find_book(db, book)) out = impl_->heads(db, *number);
  });
  return out;
}

std::vector<OpenQuestion> Ledger::open_questions(std::optional<BookId> book) const {
  std::vector<OpenQuestion> out;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement(
        "SELECT b.id, q.entity, q.tag, e.state FROM question q JOIN book b ON b.n=q.book JOIN entity e ON "
        "e.book=q.book AND "
        "e.id=q.entity WHERE b.forgotten=0 AND (?1 IS NULL OR b.id=?1) ORDER BY b.id, q.entity, q.tag");
    if (book) bind_blob(query, 1, book->bytes);
    while (query.executeStep()) {
      const auto owner = id_in<BookId>(query, 0);
      const auto id = id_in<EntityId>(query, 1);
      const EntityState state = state_in(query, owner, id, 3);
      if (const Cell* cell = state.find(static_cast<FieldTag>(query.getColumn(2).getInt64())))
        out.push_back({owner, id, state.kind, *cell});
    }
  });
  return out;
}

void Ledger::Impl::read_body(const BookId& book, const AuthorId& author, std::uint64_t seq, const std::function<void(ByteView)>& found) const {
  database->read([&](Connection& db) {
    const auto number = find_book(db, book);
    const auto author_number = find_author(db, author);
    if (!number || !author_number) return;
    auto& query = db.statement(kBodyInChain);
    query.bind(1, *number);
    query.bind(2, *author_number);
    query.bind(3, static_cast<std::int64_t>(seq));
    if (query.executeStep()) found(blob_of(query, 0));
  });
}

std::optional<Entry> Ledger::entry(const BookId& book, const AuthorId& author, std::uint64_t seq) const {
  std::optional<Entry> out;
  impl_->read_body(book, author, seq, [&](ByteView body) {
    auto decoded = decode_entry(body, author);
    if (!decoded) damaged(decoded.error().message());
    out = std::move(*decoded);
  });
  return out;
}

bool Ledger::holds(const BookId& book, const AuthorId& author, std::uint64_t seq, ByteView body) const {
  bool out = false;
  impl_->read_body(book, author, seq, [&](ByteView held) { out = std::equal(held.begin(), held.end(), body.begin(), body.end()); });
  return out;
}

std::optional<Origin> Ledger::origin(const BookId& book, const Dot& dot) const {
  const auto held = entry(book, dot.author, dot.seq);
  if (!held) return std::nullopt;
  std::optional<Origin> out;
  impl_->database->read([&](Connection& db) {
    if (const auto author = impl_->find_author(db, dot.author)) out = Origin{impl_->card(db, *author), held->stamp, held->action};
  });
  return out;
}

std::vector<Quarantined> Ledger::quarantine() const {
  std::vector<Quarantined> out;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement(
        "SELECT q.n, q.book, q.author, q.seq, q.reason, q.at, coalesce(a.device, '') FROM quarantine q LEFT JOIN author a ON "
        "a.id=q.author ORDER BY q.n");
    while (query.executeStep())
      out.push_back({query.getColumn(0).getInt64(), id_in<BookId>(query, 1), id_in<AuthorId>(query, 2),
                     static_cast<std::uint64_t>(query.getColumn(3).getInt64()), query.getColumn(4).getString(),
                     query.getColumn(5).getInt64(), query.getColumn(6).getString()});
  });
  return out;
}

std::optional<Entry> Ledger::quarantined_entry(std::int64_t number) const {
  std::optional<Entry> out;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement("SELECT body, author FROM quarantine WHERE n=?");
    query.bind(1, number);
    if (!query.executeStep()) return;
    if (auto entry = decode_entry(blob_of(query, 0), id_in<AuthorId>(query, 1))) out = std::move(*entry);
  });
  return out;
}

std::int64_t Ledger::position() const { return impl_->newest_place().position; }

void Ledger::read(const std::function<void(Connection&)>& query) const { impl_->database->read(query); }

}  // namespace weavelog
