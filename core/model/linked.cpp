#include "core/model/linked.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/store/database.h"

namespace weavelog {
namespace {

BookId book_at(SQLite::Statement& row, int column) { return BookId::from_bytes(blob_of(row, column)).value_or(BookId{}); }

/// Of each book that something is said of together with another one: what.
using Said = std::map<BookId, LinkSaid>;

void take(Said& said, const BookId& other, LinkSaid one) {
  const auto [held, fresh] = said.emplace(other, one);
  if (!fresh && one == LinkSaid::other_person) held->second = one;
}

Said said_around(Connection& db, const BookId& book) {
  Said out;
  for (const char* sql : {"SELECT l.other, l.said FROM model_link l JOIN model_player p ON p.n=l.player WHERE p.book=?",
                          "SELECT p.book, l.said FROM model_link l JOIN model_player p ON p.n=l.player WHERE l.other=?"}) {
    SQLite::Statement& query = db.statement(sql);
    bind_blob(query, 1, book.bytes);
    while (query.executeStep())
      if (const BookId other = book_at(query, 0); other && other != book) take(out, other, static_cast<LinkSaid>(query.getColumn(1).getInt()));
  }
  return out;
}

bool is_here(Connection& db, const BookId& book) {
  SQLite::Statement& query = db.statement("SELECT 1 FROM model_player WHERE book=? AND person IS NOT NULL");
  bind_blob(query, 1, book.bytes);
  return query.executeStep();
}

LinkedBooks linked_from(Connection& db, const BookId& book) {
  std::set<BookId> seen{book};
  std::vector<BookId> open{book};
  while (!open.empty()) {
    const BookId next = open.back();
    open.pop_back();
    for (const auto& [other, said] : said_around(db, next))
      if (said == LinkSaid::same_person && seen.insert(other).second) open.push_back(other);
  }
  LinkedBooks out;
  for (const BookId& one : seen) (is_here(db, one) ? out.here : out.elsewhere).push_back(one);  // ids begin with the time of making
  return out;
}

}  // namespace

LinkedBooks linked_books(const Ledger& ledger, const BookId& book) {
  LinkedBooks out;
  ledger.read([&](Connection& db) { out = linked_from(db, book); });
  return out;
}

std::vector<BookId> with_linked(const Ledger& ledger, const std::vector<BookId>& books) {
  std::vector<BookId> out;
  std::set<BookId> taken;
  const auto take = [&](const BookId& book) {
    if (taken.insert(book).second) out.push_back(book);
  };
  for (const BookId& book : books) {
    take(book);
    for (const BookId& other : linked_books(ledger, book).here) take(other);
  }
  return out;
}

std::vector<OtherNameRow> other_names(const Ledger& ledger) {
  std::vector<OtherNameRow> out;
  ledger.read([&](Connection& db) {
    SQLite::Statement& query = db.statement("SELECT p.book, o.family, o.given, o.native FROM model_other_name o JOIN model_player p ON p.n=o.player");
    while (query.executeStep())
      out.push_back({book_at(query, 0), query.getColumn(1).getString(), query.getColumn(2).getString(), query.getColumn(3).getString()});
  });
  return out;
}

std::vector<SaidLink> said_links(const Ledger& ledger) {
  std::vector<SaidLink> out;
  ledger.read([&](Connection& db) {
    SQLite::Statement& query = db.statement("SELECT p.book, l.other, l.said FROM model_link l JOIN model_player p ON p.n=l.player ORDER BY l.player, l.other");
    while (query.executeStep()) out.push_back({book_at(query, 0), book_at(query, 1), static_cast<LinkSaid>(query.getColumn(2).getInt())});
  });
  return out;
}

LinkSaid said_of(const Ledger& ledger, const BookId& one, const BookId& other) {
  Said said;
  ledger.read([&](Connection& db) { said = said_around(db, one); });
  const auto found = said.find(other);
  return found == said.end() ? LinkSaid::unsaid : found->second;
}

std::vector<LinkedBooks> all_linked_books(const Ledger& ledger) {
  std::vector<LinkedBooks> out;
  ledger.read([&](Connection& db) {
    std::set<BookId> books;
    for (const char* sql : {"SELECT p.book FROM model_link l JOIN model_player p ON p.n=l.player WHERE l.said=1", "SELECT other FROM model_link WHERE said=1"}) {
      SQLite::Statement& query = db.statement(sql);
      while (query.executeStep()) books.insert(book_at(query, 0));
    }
    while (!books.empty()) {
      LinkedBooks group = linked_from(db, *books.begin());
      books.erase(books.begin());
      for (const auto* list : {&group.here, &group.elsewhere})
        for (const BookId& book : *list) books.erase(book);
      if (group.here.size() + group.elsewhere.size() > 1) out.push_back(std::move(group));
    }
  });
  return out;
}

}  // namespace weavelog
