#pragma once

#include <QPointF>
#include <QRectF>

#include <optional>
#include <vector>

#include "core/model/choices.h"

// Where the places of a frame lie on its drawing. The drawing is 200 wide and 400 high, head at the top, in units of its own; a clock
// place is the direction in which it is seen from the middle of the head, so that 3 o'clock is straight to the right.
struct FramePlace {
  weavelog::FramePart part = weavelog::FramePart::unsaid;
  int minutes = -1;  // 0 to 719 on the head, otherwise -1

  bool operator==(const FramePlace&) const = default;
  [[nodiscard]] bool said() const { return part != weavelog::FramePart::unsaid; }
  [[nodiscard]] std::optional<std::int64_t> clock() const { return minutes < 0 ? std::nullopt : std::optional<std::int64_t>(minutes); }
};

namespace frame {

constexpr double width = 200, height = 400;
// The head's outline.
constexpr QRectF head{14, 8, 172, 208};
// Where throat, shaft and handle begin; the head ends where the throat begins.
constexpr double throatTop = 226, shaftTop = 284, handleTop = 328;

// Every place that can be told: 12 o'clock and on in half hours, then throat, shaft, handle.
[[nodiscard]] const std::vector<FramePlace>& places();
// The nearest place to a tap; none in the middle of the strings, where every direction is as near.
[[nodiscard]] FramePlace placeAt(double x, double y);
// The middle of a place. `inside` is how far towards the middle of the head, as a part of the way.
[[nodiscard]] QPointF pointOf(const FramePlace& place, double inside = 0);

}  // namespace frame
