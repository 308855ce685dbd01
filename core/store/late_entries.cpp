// Where one connection reads and writes, an action's entry goes to disk by itself. What follows from it (its link, entity rows,
// questions, projections) is written for thousands of actions at once, or before anybody reads: a page that many of them touch is written
// once then. It can always be made from the entries, and is, after a crash.

#include "core/store/late_entries.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "core/store/ledger_impl.h"
#include "core/store/schema.h"

namespace weavelog {

void each_late_entry(SQLite::Database& db, const std::function<void(const Link&, const BookId&, const AuthorId&, ByteView)>& visit) {
  SQLite::Statement query(db,
                          "SELECT e.position, e.book, e.author, e.seq, e.body, b.id, b.kind, a.id FROM entry e JOIN book b ON b.n=e.book "
                          "JOIN author a ON a.n=e.author WHERE e.position>(SELECT value FROM meta WHERE key=?) ORDER BY e.position");
  query.bind(1, kRowsKey);
  std::optional<SQLite::Statement> before;
  std::map<std::pair<std::int64_t, std::int64_t>, Link> newest;  // of each chain
  while (query.executeStep()) {
    Link link;
    link.position = query.getColumn(0).getInt64();
    link.book = query.getColumn(1).getInt64();
    link.author = query.getColumn(2).getInt64();
    link.seq = static_cast<std::uint64_t>(query.getColumn(3).getInt64());
    const auto book = id_in<BookId>(query, 5);
    const auto author = id_in<AuthorId>(query, 7);
    Link& last = newest[{link.book, link.author}];
    if (last.seq == 0) {
      last.seq = link.seq - 1;
      if (last.seq == 0) {
        last.hash = chain_start(book, static_cast<BookKind>(query.getColumn(6).getInt()), author);
      } else {
        before.emplace(db, "SELECT hash FROM link WHERE book=? AND author=? AND seq=?");
        before->bind(1, link.book);
        before->bind(2, link.author);
        before->bind(3, static_cast<std::int64_t>(last.seq));
        if (!before->executeStep()) damaged("a chain with a gap");
        last.hash = digest_in(*before, 0);
      }
    }
    if (link.seq != last.seq + 1) damaged("a chain with a gap");
    const ByteView body = blob_of(query, 4);
    link.hash = chain_next(last.hash, digest_of(body));
    last = link;
    visit(link, book, author, body);
  }
}

void store_link(SQLite::Statement& into, const Link& link) {
  into.tryReset();
  into.bind(1, link.book);
  into.bind(2, link.author);
  into.bind(3, static_cast<std::int64_t>(link.seq));
  into.bind(4, link.position);
  bind_blob(into, 5, link.hash);
  into.exec();
}

void begin_chain(SQLite::Statement& into, const Link& link) {
  into.tryReset();
  into.bind(1, link.book);
  into.bind(2, link.author);
  into.exec();
}

void Ledger::Impl::read_late(Connection& db, std::span<const std::shared_ptr<Projection>> projections) {
  late = std::make_unique<Late>(db, *options.registry, projections, entities);
  each_late_entry(db.raw(), [&](const Link& link, const BookId& book, const AuthorId& author, ByteView body) {
    const auto entry = decode_entry(body, author);
    if (!entry) damaged(entry.error().message());
    late->links.push_back(link);
    late->applier.apply(link.book, book, author, *entry);
  });
}

void Ledger::Impl::write_late(Connection& db) {
  if (late->links.empty()) return;
  const std::int64_t newest = late->links.back().position;
  std::sort(late->links.begin(), late->links.end(), [](const Link& a, const Link& b) {
    return std::tie(a.book, a.author, a.seq) < std::tie(b.book, b.author, b.seq);
  });
  auto& into = db.statement(kStoreLateLink);
  for (const Link& link : late->links) {
    store_link(into, link);
    if (link.seq == 1) begin_chain(db.statement(kBeginChain), link);
  }
  late->applier.finish();
  rows_written = newest;
}

void Ledger::Impl::mark_rows(Connection& db, std::int64_t position) {
  auto& put = db.statement("INSERT INTO meta(key, value) VALUES(?,?) ON CONFLICT(key) DO UPDATE SET value=excluded.value");
  put.bind(1, kRowsKey);
  put.bind(2, position);
  put.exec();
}

bool Ledger::Impl::catch_up(Connection& db) {
  auto& query = db.statement("SELECT (SELECT value FROM meta WHERE key=?), coalesce((SELECT max(position) FROM entry), 0)");
  query.bind(1, kRowsKey);
  query.executeStep();
  const bool marked = !query.getColumn(0).isNull();
  const std::int64_t written = query.getColumn(0).getInt64(), newest = query.getColumn(1).getInt64();
  query.reset();
  const bool behind = marked && written < newest;
  // Not marked here where it is not yet: on a full disk, whoever only looks need not write.
  rows_marked = marked;
  if (options.one_thread) return behind;
  if (behind) {
    // Projections that are made anew anyway may have other tables than this program knows.
    std::vector<std::shared_ptr<Projection>> current;
    for (const auto& projection : options.projections)
      if (is_current(db, *projection)) current.push_back(projection);
    read_late(db, current);
    write_late(db);
    late.reset();
  }
  // Nothing will be late here.
  if (marked) {
    auto& none = db.statement("DELETE FROM meta WHERE key=?");
    none.bind(1, kRowsKey);
    none.exec();
  }
  return false;
}

Outcome<> Ledger::Impl::settle() {
  const auto held = database->hold();
  if (!database->unsettled()) return {};
  return commit(
      [this](Connection& db) {
        if (!late) read_late(db, options.projections);
        write_late(db);
      },
      [this] {
        late->applier.keep();
        late.reset();
        database->set_unsettled(false);
      },
      Durable::later);
}

void Ledger::Impl::show_late(Connection& db) {
  // Its rows will be undone, so it knows nothing that holds afterwards; also where it can't be made.
  struct Forgetting {
    Impl& impl;
    ~Forgetting() { impl.late.reset(); }
  } const forgetting{*this};
  read_late(db, options.projections);
  write_late(db);
}

bool Ledger::Impl::knows_late() const {
  if (!database->unsettled()) return true;
  const auto held = database->hold();
  return late || !database->unsettled();
}

std::optional<EntityState> Ledger::Impl::late_state(const BookId& book, const EntityId& id) const {
  if (!database->unsettled()) return std::nullopt;
  const auto held = database->hold();
  const auto number = own_books.find(book);
  if (!late || number == own_books.end()) return std::nullopt;
  const EntityState* state = late->applier.find(number->second.number, id);
  return state == nullptr ? std::nullopt : std::optional(*state);
}

}  // namespace weavelog
