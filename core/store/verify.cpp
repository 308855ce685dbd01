// Ledger::verify and Ledger::rebuild: links, and layers two and three, can always be made again from the entries.

#include <map>

#include "core/store/ledger_impl.h"
#include "core/store/replaced_before.h"

namespace weavelog {
namespace {

struct BookAuthor {
  std::int64_t book;
  std::int64_t author;
  auto operator<=>(const BookAuthor&) const = default;
};

/// Walks all entries book by book in ledger order. `visit` gets book number and id, author id, body, and the hash of its link.
void walk(Connection& db,
          const std::function<void(std::int64_t, const BookId&, BookKind, std::int64_t, const AuthorId&, ByteView, ByteView)>& visit) {
  auto& query = db.statement(
      "SELECT l.book, b.id, b.kind, l.author, a.id, e.body, l.hash FROM link l JOIN entry e ON e.position=l.position "
      "JOIN book b ON b.n=l.book JOIN author a ON a.n=l.author ORDER BY l.book, l.position");
  while (query.executeStep()) {
    const auto book = BookId::from_bytes(blob_of(query, 1));
    const auto author = AuthorId::from_bytes(blob_of(query, 4));
    if (!book || !author) continue;
    visit(query.getColumn(0).getInt64(), *book, static_cast<BookKind>(query.getColumn(2).getInt()), query.getColumn(3).getInt64(),
          *author, blob_of(query, 5), blob_of(query, 6));
  }
}

void apply_to(std::map<EntityId, EntityState>& states, const BookId& book, const AuthorId& author, const Entry& entry,
              const std::vector<std::uint32_t>& replaced) {
  for (std::uint32_t i = 0; i < entry.writes.size(); ++i) {
    const Write& write = entry.writes[i];
    EntityState& state = states[write.entity];
    state.book = book;
    state.id = write.entity;
    state.apply(write, Dot{author, entry.seq, i}, entry.stamp);
  }
  for (const std::uint32_t i : replaced) drop_value(states[entry.writes[i].entity], entry.writes[i].tag, Dot{author, entry.seq, i});
}

class Verification {
 public:
  explicit Verification(Connection& db) : db_(db) {}

  VerifyReport run() {
    ask_sqlite();
    std::int64_t current = -1;
    walk(db_, [&](std::int64_t book, const BookId& book_id, BookKind kind, std::int64_t author, const AuthorId& author_id,
                  ByteView body, ByteView link) {
      if (book != current) {
        compare(current);
        replaced_ = {};
      }
      current = book;
      ++report_.entries;
      auto& chain = chains_.try_emplace({book, author}, ChainRow{0, chain_start(book_id, kind, author_id)}).first->second;
      const auto entry = decode_entry(body, author_id);
      if (!entry) {
        complain("entry " + std::to_string(chain.seq + 1) + " of " + author_id.hex() + " in book " + book_id.hex() + ": " +
                 entry.error().message());
        return;
      }
      if (entry->seq != chain.seq + 1) complain("a gap before entry " + std::to_string(entry->seq) + " of " + author_id.hex());
      chain = {entry->seq, chain_next(chain.hash, digest_of(body))};
      if (!std::equal(link.begin(), link.end(), chain.hash.begin(), chain.hash.end()))
        complain("the link of entry " + std::to_string(entry->seq) + " of " + author_id.hex() + " is not what its chain gives");
      apply_to(states_, book_id, author_id, *entry, replaced_.of(author_id, *entry));
    });
    compare(current);
    compare_chains();
    compare_questions();
    compare_waypoints();
    return report_;
  }

 private:
  void complain(std::string what) {
    if (report_.faults.size() < 100) report_.faults.push_back(std::move(what));
  }

  void ask_sqlite() {
    auto& query = db_.statement("PRAGMA integrity_check");
    while (query.executeStep())
      if (const std::string line = query.getColumn(0).getString(); line != "ok") complain("SQLite: " + line);
  }

  void compare(std::int64_t book) {
    if (book < 0) return;
    std::size_t stored = 0;
    auto& query = db_.statement("SELECT id, state FROM entity WHERE book=?");
    query.bind(1, book);
    while (query.executeStep()) {
      ++stored;
      const auto id = EntityId::from_bytes(blob_of(query, 0));
      const auto found = id ? states_.find(*id) : states_.end();
      const ByteView held = blob_of(query, 1);
      if (found == states_.end() || encode_state(found->second) != Bytes(held.begin(), held.end()))
        complain("the row of entity " + (id ? id->hex() : "?") + " is not what its entries give");
    }
    if (stored != states_.size()) complain("book number " + std::to_string(book) + " has rows missing");
    report_.entities += stored;
    states_.clear();
  }

  void compare_chains() {
    auto& query = db_.statement(
        "SELECT c.book, c.author, c.sealed, c.signature, c.tail, a.key, a.device FROM chain c JOIN author a ON a.n=c.author");
    std::size_t count = 0;
    while (query.executeStep()) {
      ++count;
      const auto found = chains_.find({query.getColumn(0).getInt64(), query.getColumn(1).getInt64()});
      if (found == chains_.end())
        complain("a chain of which there is no entry");
      else if (!query.getColumn(3).isNull() && !seal_holds(query, found->second))
        complain("the signature of \"" + query.getColumn(6).getString() + "\" does not cover a chain that is held under its name");
    }
    if (count != chains_.size()) complain("chains are missing");
    auto& links = db_.statement("SELECT (SELECT count(*) FROM entry)<>?1 OR (SELECT count(*) FROM link)<>?1");
    links.bind(1, static_cast<std::int64_t>(report_.entries));
    if (links.executeStep() && links.getColumn(0).getInt() != 0) complain("entries without a link, or links without an entry");
  }

  /// Of a row of compare_chains: the seal, and the digests between the head and what it signs.
  static bool seal_holds(SQLite::Statement& row, const ChainRow& head) {
    const ByteView tail = blob_of(row, 4);
    const ByteView signature = blob_of(row, 3);
    const ByteView key = blob_of(row, 5);
    Signature signed_by_author;
    PublicKey author;
    const auto sealed = static_cast<std::uint64_t>(row.getColumn(2).getInt64());
    if (tail.size() % sizeof(Digest) != 0 || sealed != head.seq + tail.size() / sizeof(Digest) ||
        signature.size() != signed_by_author.size() || key.size() != author.size())
      return false;
    std::copy(signature.begin(), signature.end(), signed_by_author.begin());
    std::copy(key.begin(), key.end(), author.begin());
    Digest hash = head.hash;
    for (std::size_t at = 0; at < tail.size(); at += sizeof(Digest)) {
      Digest body;
      std::copy_n(tail.begin() + static_cast<std::ptrdiff_t>(at), body.size(), body.begin());
      hash = chain_next(hash, body);
    }
    return weavelog::verify(author, seal_message(sealed, hash), signed_by_author);
  }

  void compare_questions() {
    auto& query = db_.statement(
        "SELECT count(*) FROM entity e WHERE e.questions<>(SELECT count(*) FROM question q WHERE q.book=e.book AND q.entity=e.id)");
    if (query.executeStep() && query.getColumn(0).getInt() > 0) complain("open questions are not listed as their entities count them");
  }

  /// Seals in the middle of chains, which prove a part of one to others.
  void compare_waypoints() {
    auto& query = db_.statement(
        "SELECT w.seq, w.signature, l.hash, a.key, a.device FROM waypoint w JOIN author a ON a.n=w.author LEFT JOIN link l ON "
        "l.book=w.book AND l.author=w.author AND l.seq=w.seq");
    while (query.executeStep()) {
      const ByteView signature = blob_of(query, 1), hash = blob_of(query, 2), key = blob_of(query, 3);
      Signature signed_by_author;
      Digest chain;
      PublicKey author;
      bool holds = signature.size() == signed_by_author.size() && hash.size() == chain.size() && key.size() == author.size();
      if (holds) {
        std::copy(signature.begin(), signature.end(), signed_by_author.begin());
        std::copy(hash.begin(), hash.end(), chain.begin());
        std::copy(key.begin(), key.end(), author.begin());
        holds = weavelog::verify(author, seal_message(static_cast<std::uint64_t>(query.getColumn(0).getInt64()), chain), signed_by_author);
      }
      if (!holds) complain("a signature of \"" + query.getColumn(4).getString() + "\" in the middle of a chain does not hold");
    }
  }

  Connection& db_;
  VerifyReport report_;
  std::map<EntityId, EntityState> states_;
  ReplacedBefore replaced_;
  std::map<BookAuthor, ChainRow> chains_;
};

/// Which questions are open.
Digest digest_of_questions(Connection& db) {
  Digester digester;
  SQLite::Statement query(db.raw(), "SELECT book, entity, tag FROM question ORDER BY book, entity, tag");
  while (query.executeStep())
    for (int i = 0; i < 3; ++i) digester.add(blob_of(query, i));
  return digester.finish();
}

}  // namespace

/// Makes all that follows from the entries anew in a transaction that is undone, and compares.
void Ledger::Impl::compare_with_rebuild(VerifyReport& report) const {
  struct Undo {};
  const auto held = database->hold();
  if (database->unsettled()) {
    report.not_compared = "something is still to be written, for which there is no room on the disk";
    return;
  }
  const auto digests = [&](Connection& db) {
    std::vector<Digest> out{digest_of_questions(db)};
    for (const auto& projection : options.projections) out.push_back(projection->digest(db));
    return out;
  };
  try {
    const auto undone = database->write([&](Connection& db) {
      const auto stored = digests(db);
      rebuild(db);
      const auto made = digests(db);
      if (stored.front() != made.front()) report.faults.push_back("the open questions are not those that the entries give; `weavelog-cli rebuild` makes them anew");
      for (std::size_t i = 0; i < options.projections.size(); ++i)
        if (stored[i + 1] != made[i + 1])
          report.faults.push_back("the tables of \"" + std::string(options.projections[i]->name()) + "\" are not what the entries give; `weavelog-cli rebuild` makes them anew");
      throw Undo{};
    });
    if (!undone) report.not_compared = undone.error().message();
  } catch (const Undo&) {
  } catch (const Abort& abort) {
    report.faults.push_back(abort.fault.message());
  }
}

VerifyReport Ledger::verify() const {
  VerifyReport report;
  try {
    impl_->database->read([&](Connection& db) { report = Verification(db).run(); });
    // Out of damaged entries nothing could be made.
    if (report.faults.empty()) impl_->compare_with_rebuild(report);
    for (const Forgotten& one : forgotten()) {
      ++report.stubs;
      if (!proves_itself(one.stub)) report.faults.push_back("the stub of forgotten book " + one.stub.book.hex() + " is not signed by who it names");
      if (book(one.stub.book)) report.faults.push_back("book " + one.stub.book.hex() + " was forgotten and is held all the same");
    }
    report.forks = forks().size();
  } catch (const SQLite::Exception& error) {
    report.faults.push_back(fault_of(error, impl_->database->file()).message());
  }
  return report;
}

void Ledger::Impl::relink(Connection& db) const {
  std::vector<Link> links;  // of one book: what is read is not changed meanwhile
  const auto store = [&] {
    auto& put = db.statement("UPDATE link SET hash=? WHERE book=? AND author=? AND seq=?");
    for (const Link& link : links) {
      bind_blob(put, 1, link.hash);
      put.bind(2, link.book);
      put.bind(3, link.author);
      put.bind(4, static_cast<std::int64_t>(link.seq));
      put.exec();
      put.reset();
    }
    links.clear();
  };
  std::map<BookAuthor, ChainRow> heads;
  walk(db, [&](std::int64_t book, const BookId& book_id, BookKind kind, std::int64_t author, const AuthorId& author_id, ByteView body,
               ByteView) {
    if (!links.empty() && links.front().book != book) store();
    auto& head = heads.try_emplace({book, author}, ChainRow{0, chain_start(book_id, kind, author_id)}).first->second;
    head = {head.seq + 1, chain_next(head.hash, digest_of(body))};
    links.push_back({book, author, head.seq, 0, head.hash});
  });
  store();
}

void Ledger::Impl::rebuild(Connection& db) const {
  db.reset_statements();
  db.raw().exec("DELETE FROM entity; DELETE FROM question;");
  for (const auto& projection : options.projections) projection->create(db);
  db.drop_statements();
  // Book by book, so that memory holds one book's entities at a time.
  std::int64_t current = -1;
  EntityCache none;
  auto applier = std::make_unique<Applier>(db, *options.registry, options.projections, none);
  ReplacedBefore replaced;
  walk(db, [&](std::int64_t book, const BookId& book_id, BookKind, std::int64_t, const AuthorId& author, ByteView body, ByteView) {
    if (book != current) {
      applier->finish();
      applier = std::make_unique<Applier>(db, *options.registry, options.projections, none);
      replaced = {};
      current = book;
    }
    const auto entry = decode_entry(body, author);
    if (!entry) throw Abort{{FaultCode::damaged, entry.error().what, "entry in book " + book_id.hex(), "restore a backup"}};
    applier->apply(book, book_id, author, *entry, replaced.of(author, *entry));
  });
  applier->finish();
}

void Ledger::Impl::rebuild_book(Connection& db, std::int64_t book, const BookId& book_id) const {
  for (const char* sql : {"DELETE FROM entity WHERE book=?", "DELETE FROM question WHERE book=?"}) {
    auto& remove = db.statement(sql);
    remove.bind(1, book);
    remove.exec();
  }
  for (const auto& projection : options.projections) projection->forget(db, book_id);
  EntityCache none;
  Applier applier(db, *options.registry, options.projections, none);
  ReplacedBefore replaced;
  auto& query = db.statement(
      "SELECT a.id, e.body FROM link l JOIN entry e ON e.position=l.position JOIN author a ON a.n=l.author WHERE l.book=? "
      "ORDER BY l.position");
  query.bind(1, book);
  while (query.executeStep()) {
    const auto author = AuthorId::from_bytes(blob_of(query, 0));
    const auto entry = author ? decode_entry(blob_of(query, 1), *author) : Outcome<Entry>(fail(FaultCode::damaged, "an author's id", ""));
    if (!entry) throw Abort{{FaultCode::damaged, entry.error().what, "entry in book " + book_id.hex(), "restore a backup"}};
    applier.apply(book, book_id, *author, *entry, replaced.of(*author, *entry));
  }
  applier.finish();
}

void Ledger::Impl::rebuild_projection(Connection& db, Projection& projection) const {
  db.reset_statements();  // one that still reads would keep its tables from being dropped
  projection.create(db);
  db.drop_statements();
  // Book by book, so that memory holds one book's entities at a time.
  std::vector<std::pair<std::int64_t, BookId>> books;
  auto& query = db.statement("SELECT n, id FROM book ORDER BY n");
  while (query.executeStep()) books.emplace_back(query.getColumn(0).getInt64(), id_in<BookId>(query, 1));
  for (const auto& [number, book] : books) project_book(db, projection, number, book);
}

Outcome<> Ledger::rebuild() {
  return impl_->write([&](Connection& db) { impl_->rebuild(db); });
}

}  // namespace weavelog
