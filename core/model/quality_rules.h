#pragma once
// By what a room judges its own work: one of an event, with an id that follows from its book.

#include <array>

#include "core/model/field.h"
#include "core/model/fields.h"

namespace weavelog {

struct QualityRules {
  std::optional<std::int64_t> tolerance_per_mille;     ///< of a string bed's stiffness, either way; unsaid: 40 (two pounds of fifty, common practice)
  std::optional<std::int64_t> calibrate_every_days;    ///< unsaid: every day (common practice, no source)
  bool operator==(const QualityRules&) const = default;
};

inline constexpr auto kQualityRulesFields = std::to_array<Field<QualityRules>>({
    {1, "tolerance_per_mille", &QualityRules::tolerance_per_mille},
    {2, "calibrate_every_days", &QualityRules::calibrate_every_days},
});
template <>
struct Described<QualityRules> {
  static constexpr EntityKind kind = kQualityRules;
  static constexpr std::uint32_t base = 6000;
  static constexpr std::span<const Field<QualityRules>> table = kQualityRulesFields;
};

}  // namespace weavelog
