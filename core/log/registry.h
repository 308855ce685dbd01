#pragma once
// The field registry: stable numbers for the kinds of books, entities and fields. Core's log and store work from it alone,
// so a program with entities of its own brings its own registry.

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace weavelog {

/// Open enumerations: each program names its own values; numbers are stored and sent, never renumber or reuse.
enum class BookKind : std::uint8_t {};
enum class EntityKind : std::uint16_t {};
enum class FieldTag : std::uint32_t {};
/// What the person did (drop-off, stage, edit, ...); for the history and undo.
enum class ActionKind : std::uint16_t {};

struct FieldInfo {
  FieldTag tag;
  EntityKind entity;
  std::string_view name;  ///< snake_case, as in exports; unique within its entity
  bool guarded = false;   ///< concurrent answers become an open question
};

struct KindInfo {
  EntityKind kind;
  std::string_view name;
};

/// Immutable after construction; throws std::logic_error on a doubled tag or name. The views must outlive it (use literals).
class FieldRegistry {
 public:
  FieldRegistry(std::uint32_t schema, std::span<const KindInfo> kinds, std::span<const FieldInfo> fields,
                BookKind personal = BookKind{1});

  /// The schema version that entries written with this registry carry.
  [[nodiscard]] std::uint32_t schema() const { return schema_; }
  /// Books of this kind are about one person, who may withdraw: they, and no others, can be forgotten.
  [[nodiscard]] BookKind personal() const { return personal_; }
  [[nodiscard]] const FieldInfo* find(FieldTag tag) const;
  [[nodiscard]] const FieldInfo* find(EntityKind kind, std::string_view name) const;
  [[nodiscard]] std::string_view name_of(EntityKind kind) const;  ///< "" if unknown
  [[nodiscard]] bool guarded(FieldTag tag) const;
  [[nodiscard]] std::span<const FieldInfo> fields() const { return fields_; }

 private:
  std::uint32_t schema_;
  BookKind personal_;
  std::vector<KindInfo> kinds_;
  std::vector<FieldInfo> fields_;
  std::unordered_map<std::uint32_t, std::size_t> by_tag_;
};

}  // namespace weavelog
