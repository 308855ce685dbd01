#pragma once
// How the workload's records stand in Weavelog's own model: a player is a book with a person and a setup, a
// job and each of its stage events are entities in it. Most fields are the model's; those that it lacks have
// tags of their own beside them.

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "core/log/registry.h"
#include "core/log/value.h"
#include "core/model/choices.h"

namespace weavelog::bench {

/// How a typed value of the operation files is said as a Value.
enum class Said : std::uint8_t { text, integer, kilograms, percent, flag, hand, event };

struct WorkloadField {
  std::string_view name;
  EntityKind kind{};
  FieldTag tag{};
  Said said = Said::text;
};

/// In the order of their tags within a kind.
[[nodiscard]] std::span<const WorkloadField> player_fields();
[[nodiscard]] std::span<const WorkloadField> job_fields();
/// nullptr if there is none of that name.
[[nodiscard]] const WorkloadField* find_field(std::span<const WorkloadField> fields, std::string_view name);

/// The record's own name, a field of the person and of the job.
[[nodiscard]] FieldTag record_tag(EntityKind kind);
/// Of a stage event: the word of a stage that the model has not, and the value if it is not empty.
inline constexpr FieldTag kEventWord{670};
inline constexpr FieldTag kEventValue{671};

/// The model's stage for a word of the workload and back; Stage::none for a word that the model has not.
[[nodiscard]] Stage stage_of(std::string_view word);
[[nodiscard]] std::string_view word_of(Stage stage);

/// Throws std::runtime_error on a value that does not fit.
[[nodiscard]] Value value_of(Said said, std::string_view typed);
/// `value` nullptr: cleared, which is the empty text.
[[nodiscard]] std::string typed_of(Said said, const Value* value);

/// The model's registry with the fields above, and with the contended fields (main tension, note) guarded.
[[nodiscard]] const FieldRegistry& workload_registry();

}  // namespace weavelog::bench
