#pragma once
// Cell: the current values of one field (a multi-value register, Shapiro et al. 2011, INRIA RR-7506, Spec. 10).
// EntityState: the cells of one entity.

#include <boost/container/small_vector.hpp>
#include <optional>
#include <vector>

#include "core/log/entry.h"

namespace weavelog {

struct CellValue {
  Dot dot;
  Stamp stamp;
  Value value;
  bool operator==(const CellValue&) const = default;
};

/// Nearly every field has one value: that one takes no memory of its own.
using CellValues = boost::container::small_vector<CellValue, 1>;

/// The writes of one field that no applied write replaces, ordered by dot. Never empty once written.
struct Cell {
  FieldTag tag{};
  CellValues values;

  /// The value with the greatest (stamp, dot): what an ordinary field shows.
  [[nodiscard]] const CellValue& latest() const;
  /// The value that this write gave; nullptr if it never did or was replaced.
  [[nodiscard]] const CellValue* find(const Dot& dot) const;
  /// True if there is more than one *different* value. Equal answers fold silently.
  [[nodiscard]] bool split() const;
  bool operator==(const Cell&) const = default;
};

/// All cells of one entity, ordered by tag. A snapshot: what a person has seen.
struct EntityState {
  BookId book;
  EntityId id;
  EntityKind kind{};
  std::vector<Cell> cells;

  [[nodiscard]] const Cell* find(FieldTag tag) const;
  /// The latest value of a field; nullptr if it was never written or is cleared.
  [[nodiscard]] const Value* get(FieldTag tag) const;
  /// The same, if it holds a T; otherwise nothing.
  template <class T>
  [[nodiscard]] std::optional<T> get_as(FieldTag tag) const {
    const Value* value = get(tag);
    const T* held = value ? std::get_if<T>(value) : nullptr;
    return held ? std::optional<T>(*held) : std::nullopt;
  }
  /// Applies one write of an entry with that dot and stamp: drops what it replaces, adds itself. Idempotent.
  void apply(const Write& write, const Dot& dot, Stamp stamp);

  bool operator==(const EntityState&) const = default;
};

/// Canonical bytes: equal states give equal bytes on every device.
[[nodiscard]] Bytes encode_state(const EntityState& state);
/// `book` and `id` come from the caller's key.
[[nodiscard]] Outcome<EntityState> decode_state(const BookId& book, const EntityId& id, ByteView bytes);

}  // namespace weavelog
