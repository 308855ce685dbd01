#include "core/store/applier.h"

#include <algorithm>

#include "core/base/parallel.h"
#include "core/store/replaced_before.h"

namespace weavelog {
namespace {

/// Packing so many takes about as long as a piece of work for another thread should.
constexpr std::size_t kRowsAPiece = 16;

}  // namespace

Applier::Applier(Connection& connection, const FieldRegistry& registry, std::span<const std::shared_ptr<Projection>> projections,
                 EntityCache& cache)
    : connection_(connection), registry_(registry), projections_(projections), cache_(cache) {}

Applier::Row& Applier::row(std::int64_t book_number, const BookId& book, const EntityId& id) {
  const auto [found, fresh] = rows_.try_emplace(Key{book_number, id});
  Row& row = found->second;
  if (!fresh) return row;
  order_.push_back(&row);
  const bool begun = begun_.contains(book_number);
  if (auto held = begun ? std::nullopt : cache_.take(book, id)) {
    row.held = std::move(*held);
    return row;
  }
  row.held.book_number = book_number;
  row.held.state.book = book;
  row.held.state.id = id;
  row.fresh = begun;
  if (!begun) read_row(row);
  return row;
}

void Applier::read_row(Row& row) {
  auto& query = connection_.statement("SELECT state, questions FROM entity WHERE book=? AND id=?");
  query.bind(1, row.held.book_number);
  bind_blob(query, 2, row.held.state.id.bytes);
  row.fresh = !query.executeStep();
  if (row.fresh) return;
  auto decoded = decode_state(row.held.state.book, row.held.state.id, blob_of(query, 0));
  if (!decoded) damaged(decoded.error().message());
  row.held.state = std::move(*decoded);
  row.held.questions = query.getColumn(1).getInt64();
}

const EntityState& Applier::state(std::int64_t book_number, const BookId& book, const EntityId& id) {
  return row(book_number, book, id).held.state;
}

const EntityState* Applier::find(std::int64_t book_number, const EntityId& id) const {
  const auto found = rows_.find(Key{book_number, id});
  return found == rows_.end() || !worth_keeping(found->second) ? nullptr : &found->second.held.state;
}

/// For all of its first fields at once.
void Applier::make_room(Row& row, std::span<const Write> writes) {
  if (!row.held.state.cells.empty()) return;
  const EntityId& id = row.held.state.id;
  const auto end = std::find_if(writes.begin(), writes.end(), [&](const Write& write) { return write.entity != id; });
  const auto count = static_cast<std::size_t>(end - writes.begin());
  row.held.state.cells.reserve(count);
  row.tags.reserve(count);
}

void Applier::apply(std::int64_t book_number, const BookId& book, const AuthorId& author, const Entry& entry, std::span<const std::uint32_t> replaced) {
  Row* touched = nullptr;
  for (std::uint32_t i = 0; i < entry.writes.size(); ++i) {
    const Write& write = entry.writes[i];
    // Writes of one entity stand together.
    if (touched == nullptr || touched->held.state.id != write.entity) {
      touched = &row(book_number, book, write.entity);
      make_room(*touched, std::span(entry.writes).subspan(i));
    }
    const EntityKind kind = touched->held.state.kind;
    touched->held.state.apply(write, Dot{author, entry.seq, i}, entry.stamp);
    if (touched->held.state.kind != kind && !touched->fresh) other_kind_.emplace(book_number, book);
    touched->tags.push_back(write.tag);
  }
  for (const std::uint32_t i : replaced) drop_value(row(book_number, book, entry.writes[i].entity).held.state, entry.writes[i].tag, Dot{author, entry.seq, i});
}

void Applier::write_row(Row& row, ByteView packed) {
  const EntityState& state = row.held.state;
  std::int64_t questions = 0;
  if (row.held.questions > 0) {
    auto& forget = connection_.statement("DELETE FROM question WHERE book=? AND entity=?");
    forget.bind(1, row.held.book_number);
    bind_blob(forget, 2, state.id.bytes);
    forget.exec();
  }
  for (const Cell& cell : state.cells) {
    if (cell.values.size() < 2 || !registry_.guarded(cell.tag) || !cell.split()) continue;
    ++questions;
    auto& ask = connection_.statement("INSERT INTO question(book, entity, tag) VALUES(?,?,?)");
    ask.bind(1, row.held.book_number);
    bind_blob(ask, 2, state.id.bytes);
    ask.bind(3, static_cast<std::int64_t>(cell.tag));
    ask.exec();
  }
  row.held.questions = questions;
  auto& store = connection_.statement(row.fresh ? "INSERT INTO entity(state, kind, questions, book, id) VALUES(?,?,?,?,?)"
                                                : "UPDATE entity SET state=?, kind=?, questions=? WHERE book=? AND id=?");
  bind_blob(store, 1, packed);
  store.bind(2, static_cast<int>(state.kind));
  store.bind(3, questions);
  store.bind(4, row.held.book_number);
  bind_blob(store, 5, state.id.bytes);
  store.exec();
}

void Applier::finish() {
  std::vector<Row*> written;
  std::vector<EntityChange> changes;
  for (Row* row : order_) {
    if (row->tags.empty()) continue;
    written.push_back(row);
    std::sort(row->tags.begin(), row->tags.end());
    // A projection hears what an entity is, not what it was: where that is another kind now, a faulty device's doing, its book is told anew.
    if (!other_kind_.contains(row->held.book_number)) changes.push_back({row->held.state, row->fresh, row->tags});
  }
  // In the order of the tree, so that each of its pages is found once.
  std::sort(written.begin(), written.end(), [](const Row* a, const Row* b) {
    return a->held.book_number != b->held.book_number ? a->held.book_number < b->held.book_number
                                                      : a->held.state.id < b->held.state.id;
  });
  // Packed a little ahead of the writing, which is the longer part.
  std::vector<Bytes> packed(written.size());
  WorkAhead packing((written.size() + kRowsAPiece - 1) / kRowsAPiece, [&](std::size_t piece) {
    const std::size_t end = std::min(written.size(), (piece + 1) * kRowsAPiece);
    for (std::size_t i = piece * kRowsAPiece; i < end; ++i) packed[i] = encode_state(written[i]->held.state);
  });
  for (std::size_t i = 0; i < written.size(); ++i) {
    packing.wait_for(i / kRowsAPiece);
    write_row(*written[i], packed[i]);
  }
  for (const auto& projection : projections_) {
    if (!changes.empty()) projection->apply(connection_, changes);
    for (const auto& [number, book] : other_kind_) {
      projection->forget(connection_, book);
      project_book(connection_, *projection, number, book);
    }
  }
}

void project_book(Connection& connection, Projection& projection, std::int64_t book_number, const BookId& book) {
  std::vector<EntityState> states;
  auto& query = connection.statement("SELECT id, state FROM entity WHERE book=? ORDER BY id");
  query.bind(1, book_number);
  while (query.executeStep()) {
    const auto id = EntityId::from_bytes(blob_of(query, 0));
    if (!id) damaged("an identifier of the wrong length");
    auto state = decode_state(book, *id, blob_of(query, 1));
    if (!state) damaged(state.error().message());
    states.push_back(std::move(*state));
  }
  std::vector<EntityChange> changes;
  for (const EntityState& state : states) changes.push_back({state, true, {}});
  if (!changes.empty()) projection.apply(connection, changes);
}

void Applier::keep() {
  // What later ones would push out again is not given at all.
  std::size_t begin = order_.size();
  for (std::size_t given = 0; begin > 0 && given < EntityCache::kMost; --begin) given += worth_keeping(*order_[begin - 1]) ? 1 : 0;
  for (std::size_t i = begin; i < order_.size(); ++i)
    if (worth_keeping(*order_[i])) cache_.give(std::move(order_[i]->held));
}

}  // namespace weavelog
