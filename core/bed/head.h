#pragma once
// The outline of a racket's string plane, seen along the strings' normal. Millimetres; x to the right, y towards the tip of the head, 0 in the
// middle of the plane.

#include <optional>
#include <vector>

#include "core/base/outcome.h"

namespace weavelog {

struct BedPoint {
  double x = 0, y = 0;
};

/// A closed outline that every line parallel to x or y through its inside crosses exactly twice.
class HeadOutline {
 public:
  /// |x/a|^p + |y/b|^p = 1 of that area and aspect (length by width). `power` 2 is the ellipse, more is squarer. Faults: bad_input (an area
  /// outside 300 to 1,000 cm2, an aspect outside 1 to 1.7, a power outside 1.6 to 4).
  [[nodiscard]] static Outcome<HeadOutline> of_area(double area_cm2, double aspect, double power = 2);
  /// The same of half axes, without limits but that they are positive: for shapes of textbooks. Faults: bad_input.
  [[nodiscard]] static Outcome<HeadOutline> of_axes(double half_width_mm, double half_length_mm, double power = 2);
  /// Through 3 to 2,000 corners in order around; moved so that the middle of its bounds is 0. Faults: bad_input, with the corner (a value that is
  /// none, a dent that a string would cross more than twice, no area).
  [[nodiscard]] static Outcome<HeadOutline> of_corners(std::vector<BedPoint> corners);

  [[nodiscard]] double half_width() const { return half_width_; }
  [[nodiscard]] double half_length() const { return half_length_; }
  [[nodiscard]] double area_cm2() const { return area_mm2_ / 100; }
  /// Where the line at this x crosses the outline, lower and upper y; nothing outside.
  [[nodiscard]] std::optional<std::pair<double, double>> along_y(double x) const;
  /// Where the line at this y crosses the outline, lower and upper x.
  [[nodiscard]] std::optional<std::pair<double, double>> along_x(double y) const;
  /// Corners of the outline for drawing: `count` of them for a curve, as given for a polygon.
  [[nodiscard]] std::vector<BedPoint> drawing(std::size_t count = 96) const;
  /// Whether length and width are within 39.4 and 29.2 cm: ITF Rules of Tennis, Appendix II (metric values take precedence).
  [[nodiscard]] bool within_rules() const;

 private:
  HeadOutline() = default;
  double half_width_ = 0, half_length_ = 0, power_ = 2, area_mm2_ = 0;
  std::vector<BedPoint> corners_;  ///< of a polygon
};

}  // namespace weavelog
