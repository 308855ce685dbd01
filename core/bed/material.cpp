#include "core/bed/material.h"

#include <numbers>
#include <string>

namespace weavelog {

std::string_view name_of(BedMaterial material) {
  switch (material) {
    case BedMaterial::natural_gut:
      return "natural gut";
    case BedMaterial::multifilament:
      return "multifilament";
    case BedMaterial::synthetic_gut:
      return "synthetic gut";
    case BedMaterial::polyester:
      return "polyester";
    case BedMaterial::aramid:
      return "aramid";
  }
  return {};
}

Outcome<BedMaterial> material_from(std::string_view text) {
  std::string wanted;
  for (const char c : text) wanted += c == '_' || c == '-' ? ' ' : (c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c);
  for (const BedMaterial material : kBedMaterials)
    if (name_of(material) == wanted) return material;
  constexpr std::pair<std::string_view, BedMaterial> kOthers[] = {
      {"gut", BedMaterial::natural_gut}, {"multi", BedMaterial::multifilament},    {"nylon", BedMaterial::synthetic_gut},
      {"poly", BedMaterial::polyester},  {"monofilament", BedMaterial::polyester}, {"polyester (monofilament)", BedMaterial::polyester}};
  for (const auto& [name, material] : kOthers)
    if (name == wanted) return material;
  return fail(FaultCode::bad_input, "\"" + std::string(text.substr(0, 60)) + "\" is no material that is known here", "string",
              "give natural gut, multifilament, synthetic gut, polyester or aramid");
}

const MaterialPrior& prior_of(BedMaterial material) {
  static constexpr MaterialPrior kGut{1300, 0.03, 4.2e9, 0.35, 0.020, 0.5};
  static constexpr MaterialPrior kMulti{1140, 0.04, 2.5e9, 0.4, 0.025, 0.5};
  static constexpr MaterialPrior kSynthetic{1140, 0.015, 2.8e9, 0.35, 0.028, 0.5};
  static constexpr MaterialPrior kPolyester{1390, 0.015, 5.7e9, 0.35, 0.034, 0.5};
  static constexpr MaterialPrior kAramid{1440, 0.05, 15e9, 0.7, 0.034, 0.6};
  switch (material) {
    case BedMaterial::natural_gut:
      return kGut;
    case BedMaterial::multifilament:
      return kMulti;
    case BedMaterial::synthetic_gut:
      return kSynthetic;
    case BedMaterial::polyester:
      return kPolyester;
    case BedMaterial::aramid:
      return kAramid;
  }
  return kSynthetic;
}

namespace {
double section(const BedStringKind& kind) {
  return std::numbers::pi / 4 * kind.gauge * kind.gauge * 1e-6;
}
}  // namespace

double linear_density_of(const BedStringKind& kind) {
  return kind.linear_density.value_or(prior_of(kind.material).density * section(kind));
}
double elasticity_of(const BedStringKind& kind) {
  return kind.elasticity.value_or(prior_of(kind.material).modulus * section(kind));
}

}  // namespace weavelog
