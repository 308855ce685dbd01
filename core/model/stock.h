#pragma once
// String in stock: items (a kind of string on reels or in sets) and their moves, each put once. Part of the event's book, the
// players' own reels included, so that every bench sees what is left.

#include <array>

#include "core/model/field.h"
#include "core/model/fields.h"

namespace weavelog {

/// Reels are counted in millimetres, sets in pieces.
struct StockItem {
  std::string name;  ///< of the string, as jobs call it
  std::optional<Quantity> gauge;
  Supply supply = Supply::unsaid;
  StringOwner owner = StringOwner::unsaid;
  BookId player;          ///< whose own string it is
  std::string whose;      ///< the stringer's name, where it is from a private bag; "": the event's
  std::optional<std::int64_t> low_mark;  ///< millimetres or pieces at which somebody should know
  std::string note;
  StringMaterial material = StringMaterial::unsaid;
  bool operator==(const StockItem&) const = default;
};

/// Something came, went or was counted. What is there is the newest count and all changes after it.
struct StockMove {
  EntityId item;
  StockWhy why = StockWhy::unsaid;
  std::optional<std::int64_t> change;  ///< millimetres or pieces, negative when it goes; not of a count
  std::optional<std::int64_t> count;   ///< what was there, when counted
  EntityId job;                        ///< for which it was used
  std::optional<std::int64_t> at;
  std::string by;
  std::string note;
  bool operator==(const StockMove&) const = default;
};

inline constexpr auto kStockItemFields = std::to_array<Field<StockItem>>({
    {1, "name", &StockItem::name},
    {2, "gauge", &StockItem::gauge},
    {3, "supply", &StockItem::supply},
    {4, "owner", &StockItem::owner},
    {5, "player", &StockItem::player},
    {6, "whose", &StockItem::whose},
    {7, "low_mark", &StockItem::low_mark},
    {8, "note", &StockItem::note},
    {9, "material", &StockItem::material},
});
template <>
struct Described<StockItem> {
  static constexpr EntityKind kind = kStockItem;
  static constexpr std::uint32_t base = 2600;
  static constexpr std::span<const Field<StockItem>> table = kStockItemFields;
};

inline constexpr auto kStockMoveFields = std::to_array<Field<StockMove>>({
    {1, "item", &StockMove::item},
    {2, "why", &StockMove::why},
    {3, "change", &StockMove::change},
    {4, "count", &StockMove::count},
    {5, "job", &StockMove::job},
    {6, "at", &StockMove::at},
    {7, "by", &StockMove::by},
    {8, "note", &StockMove::note},
});
template <>
struct Described<StockMove> {
  static constexpr EntityKind kind = kStockMove;
  static constexpr std::uint32_t base = 2700;
  static constexpr std::span<const Field<StockMove>> table = kStockMoveFields;
};

}  // namespace weavelog
