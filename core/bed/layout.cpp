#include "core/bed/layout.h"

#include <algorithm>
#include <cmath>

namespace weavelog {
namespace {

constexpr int kMostStrings = 60;
constexpr double kLeastGap = 1.5;  // mm: strings that lie in each other are no bed

/// Positions from -outer to outer, the gaps growing evenly from the middle outwards.
std::vector<double> spread(int count, double outer, double widening) {
  if (count == 1) return {0};
  const int gaps = count - 1;
  std::vector<double> gap(static_cast<std::size_t>(gaps));
  double sum = 0;
  const double middle = (gaps - 1) / 2.0;
  for (int i = 0; i < gaps; ++i) {
    const double away = middle <= 0 ? 0 : std::abs(i - middle) / middle;
    sum += gap[static_cast<std::size_t>(i)] = 1 + (widening - 1) * away;
  }
  std::vector<double> out{-outer};
  for (const double one : gap) out.push_back(out.back() + one * 2 * outer / sum);
  return out;
}

Outcome<std::vector<BedString>> strings_at(const std::vector<double>& positions, const HeadOutline& head, bool mains) {
  const std::string where = mains ? "main " : "cross ";
  std::vector<BedString> out;
  for (std::size_t i = 0; i < positions.size(); ++i) {
    const std::string which = where + std::to_string(i + 1);
    if (i > 0 && !(positions[i] - positions[i - 1] >= kLeastGap))
      return fail(FaultCode::bad_input, "two strings are closer than 1.5 mm, or their order is wrong", which,
                  "give fewer strings, or positions that rise");
    const auto ends = mains ? head.along_y(positions[i]) : head.along_x(positions[i]);
    if (!ends)
      return fail(FaultCode::bad_input, "this string lies outside the head", which, "give a position in mm from the middle, within the head");
    out.push_back({positions[i], ends->first, ends->second});
  }
  return out;
}

double summed(const std::vector<BedString>& strings) {
  double sum = 0;
  for (const BedString& one : strings) sum += one.length();
  return sum / 1000;
}

/// From hole to hole round the frame: neighbours are joined at their upper and lower ends in turns.
double turns(const std::vector<BedString>& strings, double wall) {
  double sum = 0;
  for (std::size_t i = 1; i < strings.size(); ++i) {
    const bool upper = i % 2 == 1;
    const double step = strings[i].at - strings[i - 1].at;
    const double along = upper ? strings[i].high - strings[i - 1].high : strings[i].low - strings[i - 1].low;
    sum += std::hypot(step, along) + 2 * wall;
  }
  return sum / 1000;
}

}  // namespace

double BedLayout::mains_in_face() const {
  return summed(mains);
}
double BedLayout::crosses_in_face() const {
  return summed(crosses);
}

Outcome<BedLayout> lay_out(const HeadOutline& head, const BedPattern& pattern) {
  const auto positions = [&](const std::vector<double>& given, int count, double outer, double half) -> Outcome<std::vector<double>> {
    if (!given.empty()) {
      if (given.size() > kMostStrings) return fail(FaultCode::bad_input, "more than 60 strings one way", "pattern", "give 1 to 60");
      for (const double at : given)
        if (!std::isfinite(at)) return fail(FaultCode::bad_input, "a position is no number", "pattern", "give positions in mm from the middle");
      return given;
    }
    if (count < 1 || count > kMostStrings)
      return fail(FaultCode::bad_input, "a bed has 1 to 60 strings each way", "pattern", "give mains x crosses, as 16x19");
    if (!(outer > 0 && outer < 1))
      return fail(FaultCode::bad_input, "the outermost string lies outside the head", "pattern", "give a part of the half width, below 1");
    return spread(count, outer * half, pattern.widening);
  };
  if (!(pattern.widening >= 1 && pattern.widening <= 3))
    return fail(FaultCode::bad_input, "gaps can't widen so", "widening", "give 1 (even) to 3, the outermost gap by the middle one");
  const auto x = positions(pattern.main_positions, pattern.mains, pattern.outer_main, head.half_width());
  if (!x) return fail(x.error());
  const auto y = positions(pattern.cross_positions, pattern.crosses, pattern.outer_cross, head.half_length());
  if (!y) return fail(y.error());
  auto mains = strings_at(*x, head, true);
  if (!mains) return fail(mains.error());
  auto crosses = strings_at(*y, head, false);
  if (!crosses) return fail(crosses.error());
  return BedLayout{head, std::move(*mains), std::move(*crosses)};
}

Outcome<LengthNeed> string_needed(const BedLayout& layout, int pieces, const StringAllowance& allowance) {
  if (pieces != 1 && pieces != 2) return fail(FaultCode::bad_input, "a racket is strung in one piece or two", "pieces", "give 1 or 2");
  for (const double one : {allowance.wall, allowance.reach, allowance.tie_off, allowance.spare, allowance.weave})
    if (!(one >= 0 && one <= 5000)) return fail(FaultCode::bad_input, "an allowance is below 0 or above 5 m", "allowance", "give millimetres");
  const double through = 2 * allowance.wall / 1000, reach = allowance.reach / 1000, weave = 1 + allowance.weave / 100;
  LengthNeed out;
  out.pieces = pieces;
  out.mains.in_face = layout.mains_in_face();
  out.mains.around = turns(layout.mains, allowance.wall) + through;
  out.crosses.in_face = layout.crosses_in_face() * weave;
  out.crosses.around = turns(layout.crosses, allowance.wall) + through;
  // Both halves of the mains are pulled to the end; a knot is tied with what was pulled.
  if (pieces == 2) {
    out.mains.ends = 2 * reach + allowance.spare / 2000;
    out.crosses.ends = reach + allowance.tie_off / 1000 + allowance.spare / 2000;
  } else {
    out.mains.ends = reach;  // of the short side; the long side goes on into the crosses
    out.crosses.ends = reach + allowance.spare / 1000;
    if (!layout.mains.empty() && !layout.crosses.empty()) {  // from the last main to the first cross
      const BedString& last = layout.mains.back();
      const BedString& first = layout.crosses.back();
      out.crosses.around += std::hypot(last.at - first.high, last.high - first.at) / 1000;
    }
    const std::size_t half = layout.mains.size() / 2;
    const std::vector<BedString> side(layout.mains.begin(), layout.mains.begin() + static_cast<std::ptrdiff_t>(half));
    out.short_side = summed(side) + turns(side, allowance.wall) + through + reach;
  }
  return out;
}

std::vector<BedSegment> drawn_strings(const BedLayout& layout, double gap_mm) {
  std::vector<BedSegment> out;
  const auto cut = [&](const BedString& string, const std::vector<BedString>& others, std::size_t index, bool main) {
    const auto point = [&](double along) { return main ? BedPoint{string.at, along} : BedPoint{along, string.at}; };
    double from = string.low;
    for (std::size_t j = 0; j < others.size(); ++j) {
      const BedString& other = others[j];
      if (!(other.low < string.at && string.at < other.high) || !(other.at > string.low && other.at < string.high)) continue;
      if ((index + j) % 2 == (main ? 0U : 1U)) continue;  // above the other
      if (other.at - gap_mm / 2 > from) out.push_back({point(from), point(other.at - gap_mm / 2), main});
      from = std::max(from, other.at + gap_mm / 2);
    }
    if (string.high > from) out.push_back({point(from), point(string.high), main});
  };
  for (std::size_t i = 0; i < layout.mains.size(); ++i) cut(layout.mains[i], layout.crosses, i, true);
  for (std::size_t j = 0; j < layout.crosses.size(); ++j) cut(layout.crosses[j], layout.mains, j, false);
  return out;
}

}  // namespace weavelog
