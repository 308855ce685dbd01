#pragma once
// The lists by which a room works, as it has changed them. Part of the event's book.

#include <array>

#include "core/model/field.h"
#include "core/model/fields.h"

namespace weavelog {

/// One line of one list. A room that never changed a list has none: then common practice holds (core/desk/work_list.h).
struct ListStep {
  WorkList list = WorkList::unsaid;
  std::string key;  ///< of the common practice that it says in the reader's language, unless the room gave it words of its own
  std::optional<std::int64_t> order;
  std::string text;  ///< the room's own words, for every language that has none below
  std::string text_en;
  std::string text_de;
  std::string text_fr;
  std::string text_es;
  std::optional<bool> off;  ///< not shown
  bool operator==(const ListStep&) const = default;
};

inline constexpr auto kListStepFields = std::to_array<Field<ListStep>>({
    {1, "list", &ListStep::list},
    {2, "key", &ListStep::key},
    {3, "order", &ListStep::order},
    {4, "text", &ListStep::text},
    {5, "text_en", &ListStep::text_en},
    {6, "text_de", &ListStep::text_de},
    {7, "text_fr", &ListStep::text_fr},
    {8, "text_es", &ListStep::text_es},
    {9, "off", &ListStep::off},
});
template <>
struct Described<ListStep> {
  static constexpr EntityKind kind = kListStep;
  static constexpr std::uint32_t base = 3200;
  static constexpr std::span<const Field<ListStep>> table = kListStepFields;
};

}  // namespace weavelog
