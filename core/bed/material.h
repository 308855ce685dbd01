#pragma once
// What strings are made of, and what is believed of it before anything was measured here.
//
// Every value below is a prior with a wide band, not a property of anybody's string: densities and moduli are handbook values from memory
// (expect a factor of two in the modulus); no trustworthy first-day loss by material is published, only that gut keeps tension best and
// polyester and aramid worst (a stringers' association), and 8.95 % of stiffness in the first 24 h as the mean of one stringer's 90 jobs.

#include <array>
#include <optional>
#include <string_view>

#include "core/base/outcome.h"
#include "core/bed/estimate.h"

namespace weavelog {

enum class BedMaterial { natural_gut, multifilament, synthetic_gut, polyester, aramid };
inline constexpr std::array kBedMaterials{BedMaterial::natural_gut, BedMaterial::multifilament, BedMaterial::synthetic_gut,
                                             BedMaterial::polyester, BedMaterial::aramid};

/// "natural gut", "multifilament", "synthetic gut", "polyester", "aramid".
[[nodiscard]] std::string_view name_of(BedMaterial material);
/// By these names and usual others ("gut", "nylon", "poly", "multi"), case-insensitive. Faults: bad_input.
[[nodiscard]] Outcome<BedMaterial> material_from(std::string_view text);

struct MaterialPrior {
  double density;          ///< kg/m3
  double density_sd;       ///< relative
  double modulus;          ///< Pa
  double modulus_sd;       ///< of the logarithm
  double loss_per_decade;  ///< part of tension lost for each tenfold time since stringing, from one minute on, at 20 C without pre-stretch
  double loss_sd;          ///< of the logarithm
};
[[nodiscard]] const MaterialPrior& prior_of(BedMaterial material);

/// One string as bought.
struct BedStringKind {
  BedMaterial material = BedMaterial::synthetic_gut;
  double gauge = 1.30;                     ///< mm
  std::optional<double> linear_density{};  ///< kg/m, if weighed
  std::optional<double> elasticity{};      ///< EA in N, if measured
  bool operator==(const BedStringKind&) const = default;
};
/// kg/m: as weighed, or density times section.
[[nodiscard]] double linear_density_of(const BedStringKind& kind);
/// EA in N: as measured, or modulus times section.
[[nodiscard]] double elasticity_of(const BedStringKind& kind);

}  // namespace weavelog
