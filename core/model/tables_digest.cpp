// ModelTables::digest: what the tables say, so that those that are stored can be held against those that a rebuild gives.

#include <cstring>

#include "core/model/tables.h"
#include "core/store/database.h"

namespace weavelog {
namespace {

/// How rows are numbered (`n`, and a player's `n` in `player`) follows from the order in which they came, so a player is told by the book.
std::vector<std::string> queries_of(Connection& db) {
  std::vector<std::string> out{"SELECT p.book, w.words FROM model_name w JOIN model_player p ON p.n=w.rowid"};
  SQLite::Statement tables(db.raw(),
                           "SELECT m.name, EXISTS(SELECT 1 FROM pragma_table_info(m.name) c WHERE c.name='player' AND c.type='INTEGER') FROM "
                           "sqlite_master m WHERE m.type='table' AND m.name LIKE 'model~_%' ESCAPE '~' AND m.name NOT LIKE 'model~_name%' ESCAPE '~'");
  while (tables.executeStep()) {
    const std::string name = tables.getColumn(0).getString();
    const bool of_player = tables.getColumn(1).getInt() != 0;
    std::string columns;
    SQLite::Statement info(db.raw(), "SELECT name FROM pragma_table_info('" + name + "') WHERE name<>'n'");
    while (info.executeStep()) {
      const std::string column = info.getColumn(0).getString();
      columns += ", " + (column == "player" && of_player ? "(SELECT p.book FROM model_player p WHERE p.n=t.player)" : "t." + column);
    }
    out.push_back("SELECT '" + name + "'" + columns + " FROM " + name + " t");
  }
  return out;
}

Digest digest_of_row(SQLite::Statement& row) {
  Digester digester;
  for (int i = 0; i < row.getColumnCount(); ++i) {
    const auto type = static_cast<std::uint64_t>(row.getColumn(i).getType());  // before it is turned into bytes
    const ByteView held = blob_of(row, i);
    const std::array<std::uint64_t, 2> head{type, held.size()};
    digester.add(as_bytes(std::string_view(reinterpret_cast<const char*>(head.data()), sizeof head)));
    digester.add(held);
  }
  return digester.finish();
}

}  // namespace

Digest ModelTables::digest(Connection& db) const {
  std::array<std::uint64_t, 4> sum{};  // a sum, so that the order of rows is nothing and none has to be kept
  static_assert(sizeof sum == sizeof(Digest));
  for (const std::string& sql : queries_of(db)) {
    SQLite::Statement query(db.raw(), sql);
    while (query.executeStep()) {
      std::array<std::uint64_t, 4> row;
      const Digest of_row = digest_of_row(query);
      std::memcpy(row.data(), of_row.data(), sizeof row);
      for (std::size_t i = 0; i < sum.size(); ++i) sum[i] += row[i];
    }
  }
  Digest out;
  std::memcpy(out.data(), sum.data(), sizeof sum);
  return out;
}

}  // namespace weavelog
