#include "tests/sim/screen_tables.h"

#include <algorithm>
#include <functional>
#include <vector>

#include "core/store/database.h"

namespace weavelog::sim {
namespace {

/// What to ask for all of them; the first column is the book. Every ledger has the same tables.
std::vector<std::string> queries_of(Connection& db) {
  std::vector<std::string> queries{
      "SELECT b.id, 'question', q.entity, q.tag FROM question q JOIN book b ON b.n=q.book",
      "SELECT p.book, 'name', w.words FROM model_name w JOIN model_player p ON p.n=w.rowid",
  };
  auto& tables = db.statement(
      "SELECT name FROM sqlite_master WHERE type='table' AND name LIKE 'model_%' AND name NOT LIKE "
      "'model_name%' ORDER BY name");
  std::vector<std::string> names;
  while (tables.executeStep()) names.push_back(tables.getColumn(0).getString());
  for (const std::string& name : names) {
    std::string columns, book;
    SQLite::Statement info(db.raw(), "SELECT name, type FROM pragma_table_info('" + name + "')");
    while (info.executeStep()) {
      const std::string column = info.getColumn(0).getString();
      if (column == "n") continue;
      const bool player_row = column == "player" && info.getColumn(1).getString() == "INTEGER";
      const std::string asked = player_row ? "(SELECT p.book FROM model_player p WHERE p.n=t.player)" : column;
      columns += ", " + asked;
      // A row of an event names players too.
      if (player_row || column == "book" || (column == "event" && book.empty())) book = asked;
    }
    queries.push_back("SELECT " + book + ", '" + name + "'" + columns + " FROM " + name + " t");
  }
  return queries;
}

void each_row(const Ledger& ledger, const std::function<void(ByteView book, std::string row)>& heard) {
  ledger.read([&](Connection& db) {
    static const std::vector<std::string> queries = queries_of(db);
    for (const std::string& sql : queries) {
      SQLite::Statement query(db.raw(), sql);
      while (query.executeStep()) {
        std::string row;
        for (int i = 1; i < query.getColumnCount(); ++i) {
          const SQLite::Column column = query.getColumn(i);
          row += std::to_string(column.getType()) + ":" +
                 std::string(static_cast<const char*>(column.getBlob()), static_cast<std::size_t>(column.getBytes())) + "|";
        }
        heard(blob_of(query, 0), std::move(row));
      }
    }
  });
}

}  // namespace

TablesDigest tables_digest(const Ledger& ledger) {
  std::map<BookId, std::vector<std::string>> rows;
  each_row(ledger, [&](ByteView book, std::string row) { rows[BookId::from_bytes(book).value()].push_back(std::move(row)); });
  TablesDigest out;
  Digester all;
  for (auto& [book, held] : rows) {
    std::sort(held.begin(), held.end());
    Digester digester;
    for (const std::string& row : held) digester.add(as_bytes(row));
    const Digest digest = digester.finish();
    all.add(book.bytes);
    all.add(digest);
    out.books.emplace(book, digest);
  }
  out.all = all.finish();
  return out;
}

std::set<std::string> table_rows(const Ledger& ledger, const std::optional<BookId>& wanted) {
  std::set<std::string> out;
  each_row(ledger, [&](ByteView book, std::string row) {
    if (!wanted || BookId::from_bytes(book).value() == *wanted) out.insert(std::move(row));
  });
  return out;
}

namespace {

std::string printable(const std::string& row) {
  std::string out;
  for (const char letter : row.substr(0, 400)) out += letter >= ' ' && letter <= '~' ? letter : '.';
  return out;
}

}  // namespace

std::string difference(const std::set<std::string>& first, const std::set<std::string>& second) {
  for (const std::string& row : first)
    if (!second.contains(row)) return "; only the first: " + printable(row);
  for (const std::string& row : second)
    if (!first.contains(row)) return "; only the second: " + printable(row);
  return {};
}

}  // namespace weavelog::sim
