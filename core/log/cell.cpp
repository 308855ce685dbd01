#include "core/log/cell.h"

#include <algorithm>
#include <stdexcept>

#include "core/log/value_codec.h"

namespace weavelog {
namespace {

template <class Cells>
auto lower(Cells& cells, FieldTag tag) {
  return std::lower_bound(cells.begin(), cells.end(), tag, [](const Cell& cell, FieldTag t) { return cell.tag < t; });
}

EntityState load_state(InArchive& ar) {
  EntityState state;
  state.kind = static_cast<EntityKind>(ar.varint_as<std::uint16_t>());
  AuthorTable authors;
  for (std::size_t n = ar.count(16, ar.left()); n > 0; --n) authors.add(*AuthorId::from_bytes(ar.take(16)));
  for (std::size_t n = ar.count(7, ar.left()); n > 0; --n) {
    Cell& cell = state.cells.emplace_back();
    cell.tag = static_cast<FieldTag>(ar.varint_as<std::uint32_t>());
    for (std::size_t values = ar.count(5, ar.left()); values > 0; --values) {
      CellValue& value = cell.values.emplace_back();
      value.dot.author = authors.at(ar.varint());
      value.dot.seq = ar.varint();
      value.dot.index = ar.varint_as<std::uint32_t>();
      value.stamp.raw = ar.varint();
      value.value = load_value(ar);
    }
    if (cell.values.empty()) throw ArchiveError("a field without values");
  }
  ar.expect_end();
  return state;
}

}  // namespace

const CellValue& Cell::latest() const {
  if (values.empty()) throw std::logic_error("a cell without values");
  return *std::max_element(values.begin(), values.end(), [](const CellValue& a, const CellValue& b) {
    return a.stamp != b.stamp ? a.stamp < b.stamp : a.dot < b.dot;
  });
}

bool Cell::split() const {
  return std::any_of(values.begin(), values.end(), [&](const CellValue& v) { return v.value != values.front().value; });
}

const Cell* EntityState::find(FieldTag tag) const {
  const auto at = lower(cells, tag);
  return at != cells.end() && at->tag == tag ? &*at : nullptr;
}

const Value* EntityState::get(FieldTag tag) const {
  const Cell* cell = find(tag);
  if (cell == nullptr) return nullptr;
  const Value& value = cell->latest().value;
  return is_cleared(value) ? nullptr : &value;
}

void EntityState::apply(const Write& write, const Dot& dot, Stamp stamp) {
  // Two kinds for one entity come from a faulty device only; the smaller wins on every replica alike.
  kind = cells.empty() ? write.kind : std::min(kind, write.kind);
  auto at = lower(cells, write.tag);
  if (at == cells.end() || at->tag != write.tag) at = cells.insert(at, Cell{write.tag, {}});
  auto& values = at->values;
  std::erase_if(values, [&](const CellValue& value) {
    return std::find(write.replaces.begin(), write.replaces.end(), value.dot) != write.replaces.end();
  });
  const auto place = std::lower_bound(values.begin(), values.end(), dot,
                                      [](const CellValue& value, const Dot& d) { return value.dot < d; });
  if (place != values.end() && place->dot == dot) return;
  values.insert(place, CellValue{dot, stamp, write.value});
}

Bytes encode_state(const EntityState& state) {
  AuthorTable authors;
  std::vector<AuthorId> sorted;
  for (const auto& cell : state.cells)
    for (const auto& value : cell.values) sorted.push_back(value.dot.author);
  std::sort(sorted.begin(), sorted.end());
  sorted.erase(std::unique(sorted.begin(), sorted.end()), sorted.end());
  Bytes out;
  OutArchive ar(out);
  ar.varint(static_cast<std::uint16_t>(state.kind));
  ar.varint(sorted.size());
  for (const auto& author : sorted) {
    ar.raw(author.bytes);
    authors.add(author);
  }
  ar.varint(state.cells.size());
  for (const auto& cell : state.cells) {
    ar.varint(static_cast<std::uint32_t>(cell.tag));
    ar.varint(cell.values.size());
    for (const auto& value : cell.values) {
      ar.varint(authors.place(value.dot.author));
      ar.varint(value.dot.seq);
      ar.varint(value.dot.index);
      ar.varint(value.stamp.raw);
      save_value(ar, value.value);
    }
  }
  return out;
}

Outcome<EntityState> decode_state(const BookId& book, const EntityId& id, ByteView bytes) {
  try {
    InArchive ar(bytes);
    EntityState state = load_state(ar);
    state.book = book;
    state.id = id;
    return state;
  } catch (const ArchiveError& error) {
    return fail(FaultCode::damaged, error.what(), "entity row " + id.hex());
  }
}

}  // namespace weavelog
