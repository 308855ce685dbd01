#include "app-qml/view/frame_places.h"

#include <cmath>
#include <numbers>

namespace frame {
namespace {

using weavelog::FramePart;

constexpr int halfHour = 30, wholeClock = 720;
// Nearer to the middle than this part of the way to the frame, a tap means no place.
constexpr double middle = 0.3;

double reach(double across, double down) {
  return std::hypot(across / (head.width() / 2), down / (head.height() / 2));
}

}  // namespace

const std::vector<FramePlace>& places() {
  static const std::vector<FramePlace> all = [] {
    std::vector<FramePlace> out;
    for (int minutes = 0; minutes < wholeClock; minutes += halfHour) out.push_back({FramePart::head, minutes});
    for (const auto part : {FramePart::throat, FramePart::shaft, FramePart::handle}) out.push_back({part, -1});
    return out;
  }();
  return all;
}

FramePlace placeAt(double x, double y) {
  if (!std::isfinite(x) || !std::isfinite(y)) return {};
  if (y >= handleTop) return {FramePart::handle, -1};
  if (y >= shaftTop) return {FramePart::shaft, -1};
  const double across = x - head.center().x(), down = y - head.center().y();
  if (y >= throatTop) return {FramePart::throat, -1};
  if (reach(across, down) < middle) return {};
  // Clockwise from 12.
  double angle = std::atan2(across, -down);
  if (angle < 0) angle += 2 * std::numbers::pi;
  const int steps = wholeClock / halfHour;
  const int nearest = static_cast<int>(std::lround(angle / (2 * std::numbers::pi) * steps)) % steps;
  return {FramePart::head, nearest * halfHour};
}

QPointF pointOf(const FramePlace& place, double inside) {
  const double x = head.center().x();
  switch (place.part) {
    case FramePart::throat:
      return {x, (throatTop + shaftTop) / 2};
    case FramePart::shaft:
      return {x, (shaftTop + handleTop) / 2};
    case FramePart::handle:
      return {x, (handleTop + height) / 2};
    default:
      break;
  }
  if (place.minutes < 0) return head.center();
  const double angle = 2 * std::numbers::pi * place.minutes / wholeClock;
  const double across = std::sin(angle), down = -std::cos(angle);
  const double out = (1 - inside) / reach(across, down);
  return {x + across * out, head.center().y() + down * out};
}

}  // namespace frame
