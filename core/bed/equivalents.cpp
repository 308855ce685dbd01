#include "core/bed/equivalents.h"

#include <cmath>

namespace weavelog {
namespace {

constexpr double kLeast = 40, kMost = 500;  // N, what machines pull

/// A material that nobody named is that of the strings.
BedWhose measured_as(BedWhose whose, const BedSetup& setup) {
  if (whose.material.empty()) whose.material = material_of(setup);
  return whose;
}

double newtons_of(Unit unit) {
  return in_newtons({Decimal{1, 0}, unit}).value_or(0);
}

}  // namespace

Outcome<Quantity> set_to_step(double newtons, Unit unit, double step) {
  const double one = newtons_of(unit);
  if (!(one > 0)) return fail(FaultCode::bad_input, "a tension is told in kg, lb or N", "unit", "give one of these");
  if (step == 0) step = unit == Unit::newton ? 5 : unit == Unit::pound_force ? 1 : 0.5;
  const Decimal exact = Decimal::rounded(std::abs(step) < 1e3 && std::isfinite(step) ? step : 0, 3).trimmed();
  if (!(exact.mantissa > 0) || step > 20)
    return fail(FaultCode::bad_input, "a machine is not set in such steps", "step", "give 0.1 to 5, in the unit of the tension");
  const double count = std::round(newtons / one / exact.to_double());
  return Quantity{Decimal{static_cast<std::int64_t>(count) * exact.mantissa, exact.scale}, unit};
}

Outcome<Equivalent> equivalent(const EquivalentAsk& ask, const BedReckoner& reckoner, const BedCorrections& corrections) {
  const bool same_frame = ask.of_from.frame == ask.of_to.frame && ask.of_from.model == ask.of_to.model && ask.from.area == ask.to.area &&
                          ask.from.aspect == ask.to.aspect && ask.from.pattern.mains == ask.to.pattern.mains &&
                          ask.from.pattern.crosses == ask.to.pattern.crosses;
  // A racket without a name is still one racket.
  BedWhose from = ask.of_from, to = ask.of_to;
  if (same_frame) {
    if (from.model.empty()) from.model = to.model = "\x02";
    if (from.frame.empty()) from.frame = to.frame = "\x02";
  }
  if (from.string.empty() && to.string.empty() && ask.from.mains.kind == ask.to.mains.kind && ask.from.crosses.kind == ask.to.crosses.kind)
    from.string = to.string = "\x02";
  from = measured_as(from, ask.from);
  to = measured_as(to, ask.to);
  const BedCorrection between = corrections.between(to, from), here = corrections.of(measured_as(ask.of_from, ask.from));
  // Corrections are of stiffness, which goes with the square of a tone.
  const double share = ask.goal.kind == BedGoal::Kind::tone ? 0.5 : 1;
  const auto wanted = reckoner.value(ask.from, ask.goal);
  if (!wanted) return fail(wanted.error());
  const double aim = *wanted / std::exp(share * between.log);
  const auto with = [&](double grows) {
    BedSetup out = ask.to;
    if (ask.adjust != EquivalentAsk::Adjust::crosses) out.mains.pulled *= grows;
    if (ask.adjust != EquivalentAsk::Adjust::mains) out.crosses.pulled *= grows;
    return out;
  };
  // Higher tensions are stiffer and sound higher: the logarithm is all but straight, so false position with halving where it stalls.
  const bool main_moves = ask.adjust != EquivalentAsk::Adjust::crosses, cross_moves = ask.adjust != EquivalentAsk::Adjust::mains;
  double low = 0, high = HUGE_VAL;
  for (const auto& [moves, pulled] : {std::pair{main_moves, ask.to.mains.pulled}, std::pair{cross_moves, ask.to.crosses.pulled}}) {
    if (!moves) continue;
    if (!(pulled >= kLeast && pulled <= kMost))
      return fail(FaultCode::bad_input, "no machine pulls this tension", "to, tension", "give 40 to 500 N, 4 to 51 kg, 9 to 112 lb");
    low = std::max(low, kLeast / pulled);
    high = std::min(high, kMost / pulled);
  }
  const auto off = [&](double grows) -> Outcome<double> {
    const auto value = reckoner.value(with(grows), ask.goal);
    if (!value) return fail(value.error());
    return std::log(*value / aim);
  };
  low *= 1 + 1e-12;
  high *= 1 - 1e-12;
  const auto at_low = off(low), at_high = off(high);
  if (!at_low) return fail(at_low.error());
  if (!at_high) return fail(at_high.error());
  if (*at_low > 0 || *at_high < 0)
    return fail(FaultCode::bad_input, "no tension that a machine pulls keeps this feel", "to",
                *at_low > 0 ? "the change is too stiff: change less, or both mains and crosses"
                            : "the change is too soft: change less, or both mains and crosses");
  double a = std::log(low), b = std::log(high), fa = *at_low, fb = *at_high, x = 0, slope = 1;
  for (int step = 0; step < 60; ++step) {
    x = step % 3 == 2 ? (a + b) / 2 : (a * fb - b * fa) / (fb - fa);
    const auto value = off(std::exp(x));
    if (!value) return fail(value.error());
    if (std::abs(*value) < 1e-7) break;
    (*value < 0 ? a : b) = x;
    (*value < 0 ? fa : fb) = *value;
  }
  const auto more = off(std::exp(std::min(x + 0.01, std::log(high)))), less = off(std::exp(std::max(x - 0.01, std::log(low))));
  if (!more) return fail(more.error());
  if (!less) return fail(less.error());
  slope = std::max(0.05, (*more - *less) / (std::min(x + 0.01, std::log(high)) - std::max(x - 0.01, std::log(low))));

  const auto ratio = reckoner.ratio(with(std::exp(x)), ask.from, ask.goal, same_frame);
  if (!ratio) return fail(ratio.error());
  Equivalent out;
  // What is reckoned of the doubt is what is known without readings; with them the smaller one is, as each alone holds the truth.
  const bool measured = between.from_data > 0 && between.sd > 0;
  out.relative_sd = measured ? std::min(ratio->estimate.relative_sd, share * between.sd) : ratio->estimate.relative_sd;
  out.doubts = ratio->doubts;
  if (measured) out.doubts.push_back({"readings", share * between.sd, share * between.sd});
  out.from_data = between.from_data;
  out.correction = std::exp(share * between.log);
  out.readings = corrections.of(measured_as(ask.of_to, ask.to));
  const BedSetup exact = with(std::exp(x));
  BedSetup rounded = exact;
  const double band = std::exp(1.6448536269514722 * out.relative_sd / slope);
  const auto tell = [&](double now, double was, bool moves, double& into) -> Outcome<EquivalentTension> {
    auto set = set_to_step(now, ask.unit, moves ? ask.step : 0.1);
    if (!set) return fail(set.error());
    into = moves ? in_newtons(*set).value_or(now) : now;
    return EquivalentTension{*set, now, moves ? now / band : now, moves ? now * band : now, was};
  };
  auto mains = tell(exact.mains.pulled, ask.from.mains.pulled, main_moves, rounded.mains.pulled);
  if (!mains) return fail(mains.error());
  auto crosses = tell(exact.crosses.pulled, ask.from.crosses.pulled, cross_moves, rounded.crosses.pulled);
  if (!crosses) return fail(crosses.error());
  out.mains = *mains;
  out.crosses = *crosses;
  const auto reached = reckoner.value(rounded, ask.goal);
  if (!reached) return fail(reached.error());
  out.wanted = *wanted * std::exp(share * here.log);
  out.reached = *reached * std::exp(share * (here.log + between.log));
  return out;
}

}  // namespace weavelog
