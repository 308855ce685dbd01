#pragma once
// Entities of no trade at all, for tests of log, store and sync: a box with a label, a count and a guarded seal.

#include "core/log/draft.h"
#include "core/log/registry.h"

namespace weavelog::testing {

inline constexpr BookKind kShelf{1};
inline constexpr EntityKind kBox{1};
inline constexpr FieldTag kLabel{1};
inline constexpr FieldTag kCount{2};
inline constexpr FieldTag kGuarded{3};
inline constexpr ActionKind kEdit{1};

inline const FieldRegistry& small_registry() {
  static constexpr KindInfo kinds[] = {{kBox, "box"}};
  static constexpr FieldInfo fields[] = {
      {kLabel, kBox, "label", false}, {kCount, kBox, "count", false}, {kGuarded, kBox, "guarded", true}};
  static const FieldRegistry registry(1, kinds, fields);
  return registry;
}

}  // namespace weavelog::testing
