#include "core/store/applier.h"


namespace weavelog {

Applier::Applier(Connection& connection, const FieldRegistry& registry,
                 std::span<const std::shared_ptr<Projection>> projections)
    : connection_(connection), registry_(registry), projections_(projections) {}

Applier::Row& Applier::row(std::int64_t book_number, const BookId& book, const EntityId& id) {
  const Key key{book_number, id};
  const auto [found, fresh] = rows_.try_emplace(key);
  Row& row = found->second;
  if (!fresh) return row;
  order_.push_back(key);
  row.book_number = book_number;
  row.state.book = book;
  row.state.id = id;
  auto& query = connection_.statement("SELECT state, questions FROM entity WHERE book=? AND id=?");
  query.bind(1, book_number);
  bind_blob(query, 2, id.bytes);
  if (query.executeStep()) {
    auto decoded = decode_state(book, id, blob_of(query, 0));
    if (!decoded) damaged(decoded.error().message());
    row.state = std::move(*decoded);
    row.questions = query.getColumn(1).getInt64();
  }
  return row;
}

const EntityState& Applier::state(std::int64_t book_number, const BookId& book, const EntityId& id) {
  return row(book_number, book, id).state;
}

void Applier::apply(std::int64_t book_number, const BookId& book, const AuthorId& author, const Entry& entry) {
  for (std::uint32_t i = 0; i < entry.writes.size(); ++i) {
    const Write& write = entry.writes[i];
    Row& touched = row(book_number, book, write.entity);
    touched.state.apply(write, Dot{author, entry.seq, i}, entry.stamp);
    touched.changed = true;
  }
}

void Applier::write_row(Row& row) {
  std::int64_t questions = 0;
  if (row.questions > 0) {
    auto& forget = connection_.statement("DELETE FROM question WHERE book=? AND entity=?");
    forget.bind(1, row.book_number);
    bind_blob(forget, 2, row.state.id.bytes);
    forget.exec();
  }
  for (const Cell& cell : row.state.cells) {
    if (cell.values.size() < 2 || !registry_.guarded(cell.tag) || !cell.split()) continue;
    ++questions;
    auto& ask = connection_.statement("INSERT INTO question(book, entity, tag) VALUES(?,?,?)");
    ask.bind(1, row.book_number);
    bind_blob(ask, 2, row.state.id.bytes);
    ask.bind(3, static_cast<std::int64_t>(cell.tag));
    ask.exec();
  }
  const Bytes packed = encode_state(row.state);
  auto& store = connection_.statement(
      "INSERT INTO entity(book, id, kind, questions, state) VALUES(?,?,?,?,?) ON CONFLICT(book, id) DO UPDATE SET "
      "kind=excluded.kind, questions=excluded.questions, state=excluded.state");
  store.bind(1, row.book_number);
  bind_blob(store, 2, row.state.id.bytes);
  store.bind(3, static_cast<int>(row.state.kind));
  store.bind(4, questions);
  bind_blob(store, 5, packed);
  store.exec();
}

void Applier::finish() {
  for (const Key& key : order_) {
    Row& row = rows_.at(key);
    if (!row.changed) continue;
    write_row(row);
    for (const auto& projection : projections_) projection->apply(connection_, row.state);
  }
}

}  // namespace weavelog
