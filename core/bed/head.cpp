#include "core/bed/head.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace weavelog {
namespace {

/// Area of a superellipse with half axes 1.
double unit_area(double power) {
  const double one = std::tgamma(1 + 1 / power);
  return 4 * one * one / std::tgamma(1 + 2 / power);
}

/// The crossings of a line across a polygon; `along` picks the coordinate that is fixed.
std::optional<std::pair<double, double>> across(const std::vector<BedPoint>& corners, double BedPoint::*fixed, double BedPoint::*free, double at) {
  double low = HUGE_VAL, high = -HUGE_VAL;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const BedPoint& a = corners[i];
    const BedPoint& b = corners[(i + 1) % corners.size()];
    if ((a.*fixed < at) == (b.*fixed < at)) continue;
    const double t = (at - a.*fixed) / (b.*fixed - a.*fixed);
    const double value = a.*free + t * (b.*free - a.*free);
    low = std::min(low, value);
    high = std::max(high, value);
  }
  if (!(low < high)) return std::nullopt;
  return std::pair{low, high};
}

/// Around a polygon each coordinate has to go up once and down once.
bool turns_once(const std::vector<BedPoint>& corners, double BedPoint::*part) {
  int changes = 0;
  double last = 0;
  const std::size_t n = corners.size();
  for (std::size_t i = 0; i < 2 * n; ++i) {
    const double step = corners[(i + 1) % n].*part - corners[i % n].*part;
    if (step == 0) continue;
    if (last != 0 && (step > 0) != (last > 0) && i >= n) ++changes;
    last = step;
  }
  return changes <= 2;
}

}  // namespace

Outcome<HeadOutline> HeadOutline::of_axes(double half_width_mm, double half_length_mm, double power) {
  if (!(half_width_mm > 0 && half_length_mm > 0) || !std::isfinite(half_width_mm + half_length_mm))
    return fail(FaultCode::bad_input, "a head needs a width and a length above 0", "head", "give both in millimetres");
  if (!(power >= 1.6 && power <= 4))
    return fail(FaultCode::bad_input, "this is no head's shape", "shape", "give 2 for an ellipse, up to 4 for squarer heads");
  HeadOutline out;
  out.half_width_ = half_width_mm;
  out.half_length_ = half_length_mm;
  out.power_ = power;
  out.area_mm2_ = unit_area(power) * half_width_mm * half_length_mm;
  return out;
}

Outcome<HeadOutline> HeadOutline::of_area(double area_cm2, double aspect, double power) {
  if (!(area_cm2 >= 300 && area_cm2 <= 1000))
    return fail(FaultCode::bad_input, "no racket has a head of this area", "head", "give 300 to 1,000 cm2, or 47 to 155 in2, with the unit");
  if (!(aspect >= 1 && aspect <= 1.7)) return fail(FaultCode::bad_input, "no head is so long or so wide", "aspect", "give length by width, 1 to 1.7");
  if (!(power >= 1.6 && power <= 4))
    return fail(FaultCode::bad_input, "this is no head's shape", "shape", "give 2 for an ellipse, up to 4 for squarer heads");
  const double half_width = std::sqrt(area_cm2 * 100 / (unit_area(power) * aspect));
  return of_axes(half_width, half_width * aspect, power);
}

Outcome<HeadOutline> HeadOutline::of_corners(std::vector<BedPoint> corners) {
  if (corners.size() < 3 || corners.size() > 2000)
    return fail(FaultCode::bad_input, "an outline has 3 to 2,000 corners, this has " + std::to_string(corners.size()), "outline",
                "give fewer or more");
  double left = HUGE_VAL, right = -HUGE_VAL, low = HUGE_VAL, high = -HUGE_VAL, twice = 0;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const BedPoint& a = corners[i];
    if (!(std::abs(a.x) < 1e5 && std::abs(a.y) < 1e5))
      return fail(FaultCode::bad_input, "a corner lies nowhere", "outline, corner " + std::to_string(i + 1), "give x and y in millimetres");
    const BedPoint& b = corners[(i + 1) % corners.size()];
    twice += a.x * b.y - b.x * a.y;
    left = std::min(left, a.x);
    right = std::max(right, a.x);
    low = std::min(low, a.y);
    high = std::max(high, a.y);
  }
  if (!(std::abs(twice) > 1e-9)) return fail(FaultCode::bad_input, "the corners enclose no area", "outline", "give them in order around the head");
  if (!turns_once(corners, &BedPoint::x) || !turns_once(corners, &BedPoint::y))
    return fail(FaultCode::bad_input, "the outline has a dent that a string would cross twice", "outline",
                "give the corners in order around the head");
  for (BedPoint& corner : corners) {
    corner.x -= (left + right) / 2;
    corner.y -= (low + high) / 2;
  }
  HeadOutline out;
  out.half_width_ = (right - left) / 2;
  out.half_length_ = (high - low) / 2;
  out.area_mm2_ = std::abs(twice) / 2;
  out.corners_ = std::move(corners);
  return out;
}

std::optional<std::pair<double, double>> HeadOutline::along_y(double x) const {
  if (!corners_.empty()) return across(corners_, &BedPoint::x, &BedPoint::y, x);
  if (!(std::abs(x) < half_width_)) return std::nullopt;
  const double y = half_length_ * std::pow(1 - std::pow(std::abs(x) / half_width_, power_), 1 / power_);
  return std::pair{-y, y};
}

std::optional<std::pair<double, double>> HeadOutline::along_x(double y) const {
  if (!corners_.empty()) return across(corners_, &BedPoint::y, &BedPoint::x, y);
  if (!(std::abs(y) < half_length_)) return std::nullopt;
  const double x = half_width_ * std::pow(1 - std::pow(std::abs(y) / half_length_, power_), 1 / power_);
  return std::pair{-x, x};
}

std::vector<BedPoint> HeadOutline::drawing(std::size_t count) const {
  if (!corners_.empty()) return corners_;
  std::vector<BedPoint> out;
  out.reserve(count);
  for (std::size_t i = 0; i < count; ++i) {
    const double angle = 2 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(count);
    const double c = std::cos(angle), s = std::sin(angle);
    out.push_back(
        {half_width_ * std::copysign(std::pow(std::abs(c), 2 / power_), c), half_length_ * std::copysign(std::pow(std::abs(s), 2 / power_), s)});
  }
  return out;
}

bool HeadOutline::within_rules() const {
  return 2 * half_length_ <= 394 + 1e-9 && 2 * half_width_ <= 292 + 1e-9;
}

}  // namespace weavelog
