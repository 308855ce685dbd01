#include "core/log/cell.h"

#include <algorithm>
#include <limits>
#include <stdexcept>

#include "core/log/dot_set.h"
#include "core/log/entity_id.h"
#include "core/log/value_codec.h"

namespace weavelog {
namespace {

template <class Cells>
auto lower(Cells& cells, FieldTag tag) {
  return std::lower_bound(cells.begin(), cells.end(), tag, [](const Cell& cell, FieldTag t) { return cell.tag < t; });
}

/// An entry, as far as cells tell of it: its author's place among those listed, its number and its stamp. Most of an entity's values
/// come from few entries, so each is spelt once.
struct Source {
  Stamp stamp;
  std::uint64_t author = 0;
  std::uint64_t seq = 0;
  auto operator<=>(const Source&) const = default;
};

template <class T>
std::uint64_t place_in(const std::vector<T>& sorted, const T& wanted) {
  return static_cast<std::uint64_t>(std::lower_bound(sorted.begin(), sorted.end(), wanted) - sorted.begin());
}

template <class T>
void sort_and_fold(std::vector<T>& values) {
  std::sort(values.begin(), values.end());
  values.erase(std::unique(values.begin(), values.end()), values.end());
}

template <class T>
const T& at_place(const std::vector<T>& values, std::uint64_t place) {
  if (place >= values.size()) throw ArchiveError("a place beyond the end of its list");
  return values[static_cast<std::size_t>(place)];
}

std::vector<Source> load_sources(InArchive& ar, const std::vector<AuthorId>& authors) {
  std::vector<Source> sources(ar.count(3, ar.left()));
  std::uint64_t stamp = 0;
  for (Source& source : sources) {
    const std::uint64_t later = ar.varint();
    if (later > std::numeric_limits<std::uint64_t>::max() - stamp) throw ArchiveError("a time stamp out of its range");
    source.stamp.raw = stamp += later;
    source.author = ar.varint();
    (void)at_place(authors, source.author);
    source.seq = ar.varint();
  }
  return sources;
}

EntityState load_state(InArchive& ar) {
  EntityState state;
  state.kind = static_cast<EntityKind>(ar.varint_as<std::uint16_t>());
  std::vector<AuthorId> authors(ar.count(16, ar.left()));
  for (AuthorId& author : authors) author = *AuthorId::from_bytes(ar.take(16));
  const std::vector<Source> sources = load_sources(ar, authors);
  std::uint64_t tag = 0;
  const std::size_t cells = ar.count(4, ar.left());
  state.cells.reserve(cells);
  while (state.cells.size() < cells) {
    const std::uint64_t head = ar.varint();
    if (head / 2 == 0 && !state.cells.empty()) throw ArchiveError("a field that is listed twice");
    tag += head / 2;
    if (tag > std::numeric_limits<std::uint32_t>::max()) throw ArchiveError("an integer out of its range");
    Cell& cell = state.cells.emplace_back();
    cell.tag = static_cast<FieldTag>(tag);
    const std::size_t values = head % 2 == 0 ? 1 : ar.count(3, ar.left());
    if (values == 0) throw ArchiveError("a field without values");
    cell.values.reserve(values);
    while (cell.values.size() < values) {
      CellValue& value = cell.values.emplace_back();
      const Source& source = at_place(sources, ar.varint());
      value.dot = {authors[static_cast<std::size_t>(source.author)], source.seq, ar.varint_as<std::uint32_t>()};
      value.stamp = source.stamp;
      value.value = load_value(ar);
    }
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

const CellValue* Cell::find(const Dot& dot) const {
  const auto at = std::lower_bound(values.begin(), values.end(), dot, [](const CellValue& value, const Dot& wanted) { return value.dot < wanted; });
  return at != values.end() && at->dot == dot ? &*at : nullptr;
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
  // Two kinds for one entity come from a faulty device only. Its id says which holds; of one that is not bound to any the smaller, on every replica alike.
  kind = kind_bound_to(id).value_or(cells.empty() ? write.kind : std::min(kind, write.kind));
  auto at = lower(cells, write.tag);
  if (at == cells.end() || at->tag != write.tag) at = cells.insert(at, Cell{write.tag, {}});
  auto& values = at->values;
  const DotSet replaces(write.replaces);
  const auto replaced = [&](const CellValue& value) { return replaces.contains(value.dot); };
  values.erase(std::remove_if(values.begin(), values.end(), replaced), values.end());
  const auto place = std::lower_bound(values.begin(), values.end(), dot,
                                      [](const CellValue& value, const Dot& d) { return value.dot < d; });
  if (place != values.end() && place->dot == dot) return;
  values.insert(place, CellValue{dot, stamp, write.value});
}

Bytes encode_state(const EntityState& state) {
  std::vector<AuthorId> authors;
  std::size_t count = 0;
  for (const auto& cell : state.cells)
    for (const auto& value : cell.values) {
      if (authors.empty() || authors.back() != value.dot.author) authors.push_back(value.dot.author);
      ++count;
    }
  sort_and_fold(authors);
  std::vector<Source> of_value, sources;
  of_value.reserve(count);
  for (const auto& cell : state.cells)
    for (const auto& value : cell.values) {
      const Source source{value.stamp, place_in(authors, value.dot.author), value.dot.seq};
      of_value.push_back(source);
      if (sources.empty() || sources.back() != source) sources.push_back(source);
    }
  sort_and_fold(sources);

  Bytes out;
  out.reserve(32 + 16 * (authors.size() + count));
  OutArchive ar(out);
  ar.varint(static_cast<std::uint16_t>(state.kind));
  ar.varint(authors.size());
  for (const auto& author : authors) ar.raw(author.bytes);
  ar.varint(sources.size());
  std::uint64_t stamp = 0;
  for (const Source& source : sources) {
    ar.varint(source.stamp.raw - stamp);
    stamp = source.stamp.raw;
    ar.varint(source.author);
    ar.varint(source.seq);
  }
  ar.varint(state.cells.size());
  std::uint64_t tag = 0;
  auto source = of_value.begin();
  for (const auto& cell : state.cells) {
    const std::uint64_t step = static_cast<std::uint32_t>(cell.tag) - tag;
    tag += step;
    const bool several = cell.values.size() != 1;
    ar.varint(step * 2 + (several ? 1 : 0));
    if (several) ar.varint(cell.values.size());
    for (const auto& value : cell.values) {
      ar.varint(place_in(sources, *source++));
      ar.varint(value.dot.index);
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
