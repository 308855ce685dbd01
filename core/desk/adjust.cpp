#include "core/desk/adjust.h"

namespace weavelog {
namespace {

Outcome<> change_one(std::optional<Quantity>& tension, const Quantity& by, const char* field) {
  if (!tension)
    return fail(FaultCode::bad_input, "there is no tension yet that could be changed", field,
                "say the tension itself");
  if (tension->unit != by.unit)
    return fail(
        FaultCode::bad_input,
        "the tension is in " + std::string(symbol_of(tension->unit)) + ", the change in " +
            std::string(symbol_of(by.unit)),
        field,
        "say the change in " + std::string(symbol_of(tension->unit)) + ", or agree on the other unit first");
  const Decimal sum = tension->amount + by.amount;
  if (sum.mantissa <= 0)
    return fail(FaultCode::bad_input, text_of(*tension) + " changed by " + text_of(by) + " leaves nothing",
                field, "say a smaller change");
  tension->amount = sum;
  return {};
}

}  // namespace

Outcome<Agreed> adjusted(const Agreed& agreed, const TensionChange& change) {
  Agreed out = agreed;
  if (change.part != StringPart::crosses)
    if (auto done = change_one(out.mains_tension, change.by, "mains_tension"); !done)
      return fail(done.error());
  if (change.part != StringPart::mains)
    if (auto done = change_one(out.crosses_tension, change.by, "crosses_tension"); !done)
      return fail(done.error());
  return out;
}

Outcome<Agreed> in_unit(const Agreed& agreed, Unit unit, std::uint8_t scale) {
  Agreed out = agreed;
  for (auto member : {&Agreed::mains_tension, &Agreed::crosses_tension}) {
    auto& tension = out.*member;
    if (!tension || tension->unit == unit) continue;
    const auto converted = converted_force(*tension, unit, scale);
    if (!converted)
      return fail(FaultCode::bad_input,
                  text_of(*tension) + " cannot be said in \"" + std::string(symbol_of(unit)) + "\"",
                  "tension", "choose kg, lb or N");
    tension = *converted;
  }
  return out;
}

std::optional<Unit> tension_unit_of(const Agreed& agreed) {
  if (agreed.mains_tension && agreed.crosses_tension &&
      agreed.mains_tension->unit != agreed.crosses_tension->unit)
    return std::nullopt;
  if (agreed.mains_tension) return agreed.mains_tension->unit;
  if (agreed.crosses_tension) return agreed.crosses_tension->unit;
  return std::nullopt;
}

}  // namespace weavelog
