#include "core/log/registry.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace weavelog {

FieldRegistry::FieldRegistry(std::uint32_t schema, std::span<const KindInfo> kinds, std::span<const FieldInfo> fields,
                             BookKind personal)
    : schema_(schema), personal_(personal), kinds_(kinds.begin(), kinds.end()), fields_(fields.begin(), fields.end()) {
  by_tag_.reserve(fields_.size());
  std::vector<std::pair<EntityKind, std::string_view>> names;
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    const FieldInfo& field = fields_[i];
    names.emplace_back(field.entity, field.name);
    if (!by_tag_.emplace(static_cast<std::uint32_t>(field.tag), i).second)
      throw std::logic_error("field tag used twice: " + std::string(field.name));
  }
  // Every program does this at its start: sorted, not each name compared with each.
  std::sort(names.begin(), names.end());
  if (const auto twice = std::adjacent_find(names.begin(), names.end()); twice != names.end())
    throw std::logic_error("field name used twice: " + std::string(twice->second));
}

const FieldInfo* FieldRegistry::find(FieldTag tag) const {
  const auto found = by_tag_.find(static_cast<std::uint32_t>(tag));
  return found == by_tag_.end() ? nullptr : &fields_[found->second];
}

const FieldInfo* FieldRegistry::find(EntityKind kind, std::string_view name) const {
  for (const auto& field : fields_)
    if (field.entity == kind && field.name == name) return &field;
  return nullptr;
}

std::string_view FieldRegistry::name_of(EntityKind kind) const {
  for (const auto& info : kinds_)
    if (info.kind == kind) return info.name;
  return {};
}

bool FieldRegistry::guarded(FieldTag tag) const {
  const FieldInfo* info = find(tag);
  return info != nullptr && info->guarded;
}

}  // namespace weavelog
