#include "core/desk/check_setup.h"

#include <algorithm>
#include <cmath>

namespace weavelog {
namespace {

constexpr std::string_view kMainsTension = "mains_tension";
constexpr std::string_view kCrossesTension = "crosses_tension";

std::optional<double> in_kg(const Quantity& quantity) {
  const auto newtons = in_newtons(quantity);
  const auto one = in_newtons(Quantity{{1, 0}, Unit::kilogram_force});
  return newtons ? std::optional(*newtons / *one) : std::nullopt;
}

class Check {
 public:
  Check(const Agreed& agreed, const Racket* racket, const SetupLimits& limits)
      : agreed_(agreed), racket_(racket), limits_(limits) {}

  std::vector<SetupFinding> run() {
    require(agreed_.mains_string.empty(), "mains_string");
    require(agreed_.crosses_string.empty(), "crosses_string");
    require(!agreed_.mains_tension, kMainsTension);
    require(!agreed_.crosses_tension, kCrossesTension);
    tension(agreed_.mains_tension, kMainsTension);
    tension(agreed_.crosses_tension, kCrossesTension);
    both_tensions();
    gauge(agreed_.mains_gauge, "mains_gauge");
    gauge(agreed_.crosses_gauge, "crosses_gauge");
    part_of_hundred(agreed_.mains_prestretch, "mains_prestretch", limits_.prestretch_high_percent, "prestretch_beyond");
    part_of_hundred(agreed_.crosses_prestretch, "crosses_prestretch", limits_.prestretch_high_percent, "prestretch_beyond");
    part_of_hundred(agreed_.knot_pretension, "knot_pretension", limits_.knot_pretension_high_percent, "knot_pretension_beyond");
    pieces_and_knots();
    std::stable_sort(found_.begin(), found_.end(),
                     [](const SetupFinding& a, const SetupFinding& b) { return a.refused > b.refused; });
    return std::move(found_);
  }

 private:
  void add(bool refused, std::string_view code, std::string_view field, PhraseArgs args = {}) {
    found_.push_back({refused, code, field, std::move(args)});
  }

  void require(bool is_missing, std::string_view field) {
    if (is_missing) add(true, "missing", field);
  }

  [[nodiscard]] bool usual(double kg) const {
    return kg >= limits_.usual_low_kg && kg <= limits_.usual_high_kg;
  }

  /// The same number in a unit in which it would be usual.
  [[nodiscard]] std::optional<Quantity> meant(const Quantity& said) const {
    for (const Unit unit : {Unit::kilogram_force, Unit::pound_force, Unit::newton}) {
      if (unit == said.unit) continue;
      const Quantity other{said.amount, unit};
      if (usual(in_kg(other).value_or(0))) return other;
    }
    return std::nullopt;
  }

  void tension(const std::optional<Quantity>& said, std::string_view field) {
    if (!said) return;
    const auto kg = in_kg(*said);
    if (!kg) return add(true, "unit_not_force", field, {{"value", *said}});
    const bool beyond = *kg < limits_.reach_low_kg || *kg > limits_.reach_high_kg;
    if (!usual(*kg)) {
      if (const auto other = meant(*said)) {
        add(beyond, beyond ? "unit_slip" : "unit_slip_likely", field, {{"value", *said}, {"other", *other}});
      } else {
        add(beyond, beyond ? "tension_beyond_reach" : "tension_unusual", field, {{"value", *said}});
      }
      if (beyond) return;
    }
    printed_range(*said, *kg, field);
  }

  void printed_range(const Quantity& said, double kg, std::string_view field) {
    if (!racket_ || !racket_->tension_low || !racket_->tension_high) return;
    const auto low = in_kg(*racket_->tension_low);
    const auto high = in_kg(*racket_->tension_high);
    // Frames print whole pounds beside rounded kilograms: a tenth of a kilogram is within that rounding.
    constexpr double kRounding = 0.1;
    if (!low || !high || (kg >= *low - kRounding && kg <= *high + kRounding)) return;
    add(false, "outside_printed_range", field,
        {{"value", said}, {"low", *racket_->tension_low}, {"high", *racket_->tension_high}});
  }

  void both_tensions() {
    const auto& mains = agreed_.mains_tension;
    const auto& crosses = agreed_.crosses_tension;
    if (!mains || !crosses) return;
    const auto mains_kg = in_kg(*mains);
    const auto crosses_kg = in_kg(*crosses);
    if (!mains_kg || !crosses_kg) return;
    if (mains->unit != crosses->unit) add(false, "units_differ", kCrossesTension);
    if (std::abs(*mains_kg - *crosses_kg) > limits_.difference_kg)
      add(false, "difference_unusual", kCrossesTension, {{"mains", *mains}, {"crosses", *crosses}});
  }

  void gauge(const std::optional<Quantity>& said, std::string_view field) {
    if (!said) return;
    const double mm = said->amount.to_double();
    if (said->unit != Unit::millimetre || mm < limits_.gauge_low_mm || mm > limits_.gauge_high_mm) {
      add(true, "gauge_beyond", field, {{"value", *said}});
    } else if (mm < limits_.usual_gauge_low_mm || mm > limits_.usual_gauge_high_mm) {
      add(false, "gauge_unusual", field, {{"value", *said}});
    }
  }

  void part_of_hundred(const std::optional<Quantity>& said, std::string_view field, double most, std::string_view code) {
    if (!said) return;
    const double percent = said->amount.to_double();
    if (said->unit != Unit::percent || percent < 0 || percent > most) add(true, code, field, {{"value", *said}});
  }

  void pieces_and_knots() {
    const auto& pieces = agreed_.pieces;
    const auto& knots = agreed_.knots;
    if (pieces && *pieces != 1 && *pieces != 2)
      return add(true, "pieces_odd", "pieces", {{"value", *pieces}});
    if (knots && *knots != 2 && *knots != 4) add(false, "knots_odd", "knots", {{"value", *knots}});
    if (pieces == 2 && knots == 2) add(false, "knots_do_not_fit", "knots");
    if (pieces == 1 && !agreed_.crosses_string.empty() && agreed_.mains_string != agreed_.crosses_string)
      add(false, "hybrid_one_piece", "pieces");
    if (pieces == 1 && racket_ && racket_->pieces_needed == 2) add(false, "two_pieces_needed", "pieces");
  }

  const Agreed& agreed_;
  const Racket* racket_;
  const SetupLimits& limits_;
  std::vector<SetupFinding> found_;
};

}  // namespace

Unit fixed_unit(std::string_view field) {
  if (field.ends_with("_gauge")) return Unit::millimetre;
  if (field.ends_with("_prestretch") || field == "knot_pretension") return Unit::percent;
  return Unit::none;
}

std::string SetupFinding::what(const Language& language) const {
  return desk_words().say(language, "check." + std::string(code), args);
}
std::string SetupFinding::where(const Language& language) const {
  return field_words(language, field);
}
std::string SetupFinding::what_to_do(const Language& language) const {
  return desk_words().say(language, "check." + std::string(code) + ".do", args);
}
Fault SetupFinding::fault() const {
  const Language english;
  return {FaultCode::bad_input, what(english), where(english), what_to_do(english)};
}

std::vector<SetupFinding> check_setup(const Agreed& agreed, const Racket* racket, const SetupLimits& limits) {
  return Check(agreed, racket, limits).run();
}

Outcome<> require_sound(const Agreed& agreed, const Racket* racket) {
  for (const SetupFinding& finding : check_setup(agreed, racket))
    if (finding.refused) return fail(finding.fault());
  return {};
}

}  // namespace weavelog
