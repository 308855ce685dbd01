#include "core/log/registry.h"

#include <stdexcept>

namespace weavelog {

FieldRegistry::FieldRegistry(std::uint32_t schema, std::span<const KindInfo> kinds, std::span<const FieldInfo> fields,
                             BookKind personal)
    : schema_(schema), personal_(personal), kinds_(kinds.begin(), kinds.end()), fields_(fields.begin(), fields.end()) {
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    const FieldInfo& field = fields_[i];
    if (find(field.entity, field.name) != &field) throw std::logic_error("field name used twice: " + std::string(field.name));
    if (!by_tag_.emplace(static_cast<std::uint32_t>(field.tag), i).second)
      throw std::logic_error("field tag used twice: " + std::string(field.name));
  }
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
