#include "core/bed/stiffness_map.h"

#include <array>
#include <cmath>
#include <numbers>

namespace weavelog {
namespace {

constexpr int kRays = 56, kRings = 16;
constexpr double kSpacingMore = 0.15;                                // of the widening, as core/bed/setup.cpp doubts it
constexpr double kModelBetween = 0.5;                                // part of the model's own doubt that differs from place to place; no source
constexpr std::array kRounds{0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0};  // N/mm
constexpr int kMostMapSteps = 6;
constexpr double kFarthest = 1.6;  // of the least: beyond, close to the frame, a map would be all edges

/// Distance from a point to an outline's corners and sides, mm; negative outside.
double inside_by(const std::vector<BedPoint>& outline, const BedPoint& point) {
  double nearest = HUGE_VAL;
  bool within = false;
  for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
    const BedPoint &a = outline[j], &b = outline[i];
    const double dx = b.x - a.x, dy = b.y - a.y, length = dx * dx + dy * dy;
    const double t = length > 0 ? std::clamp(((point.x - a.x) * dx + (point.y - a.y) * dy) / length, 0.0, 1.0) : 0;
    nearest = std::min(nearest, std::hypot(point.x - a.x - t * dx, point.y - a.y - t * dy));
    if ((a.y > point.y) != (b.y > point.y) && point.x < a.x + (point.y - a.y) / dy * dx) within = !within;
  }
  return within ? nearest : -nearest;
}

/// Places to press: rays from the middle to where the contact touches the frame.
struct Web {
  std::vector<double> reach;  ///< mm, by ray
  [[nodiscard]] BedPoint at(int ray, double part) const {
    const double angle = 2 * std::numbers::pi * ray / kRays, far = part * reach[static_cast<std::size_t>(ray % kRays)];
    return {far * std::cos(angle), far * std::sin(angle)};
  }
};

Outcome<Web> web_in(const HeadOutline& head, double contact) {
  const std::vector<BedPoint> outline = head.drawing(240);
  Web out;
  for (int ray = 0; ray < kRays; ++ray) {
    const double angle = 2 * std::numbers::pi * ray / kRays;
    const auto room = [&](double far) { return inside_by(outline, {far * std::cos(angle), far * std::sin(angle)}) - contact; };
    double low = 0, high = 0;
    if (!(room(0) > 0))
      return fail(FaultCode::bad_input, "the contact finds no place in this head", "contact", "give a smaller contact or a larger head");
    const double stride = contact / 4;
    while (room(high) > 0) high += stride;
    for (low = high - stride; high - low > 0.01;) (room((low + high) / 2) > 0 ? low : high) = (low + high) / 2;
    out.reach.push_back(low);
  }
  return out;
}

std::vector<BedPoint> spots_of(const Web& web) {
  std::vector<BedPoint> out{{0, 0}};
  for (int i = 0; i < 4; ++i) out.push_back(web.at(i * kRays / 4, 0.85));
  for (int i = 0; i < 4; ++i) out.push_back(web.at(kRays / 8 + i * kRays / 4, 0.55));
  return out;
}

Outcome<std::vector<double>> pressed_at(const BedSetup& setup, const BedReckoner& reckoner, const std::vector<BedPoint>& places) {
  const auto tensions = reckoner.tensions(setup);
  if (!tensions) return fail(tensions.error());
  const auto net = net_of(setup, tensions->mains, tensions->crosses);
  if (!net) return fail(net.error());
  std::vector<double> out;
  for (const BedPoint& place : places) {
    const auto pressed = net->press_lightly({place.x, place.y, setup.assumed.contact, NetContact::Share::disc});
    if (!pressed) return fail(pressed.error());
    out.push_back(pressed->stiffness());
  }
  return out;
}

/// By how much one place against the middle is doubted: the most of all spots, each doubt alone.
Outcome<double> doubt_between(const BedSetup& setup, const BedReckoner& reckoner, const std::vector<BedPoint>& spots) {
  const auto plain = pressed_at(setup, reckoner, spots);
  if (!plain) return fail(plain.error());
  const double own = kModelBetween * setup.assumed.model_sd;
  double squares = own * own;
  for (int which = 0; which < 3; ++which) {
    BedSetup moved = setup;
    if (which == 0) moved.assumed.contact -= setup.assumed.contact_sd;  // smaller, so that it stays within the head
    if (which == 1) moved.assumed.weaving = std::max(0.0, moved.assumed.weaving - setup.assumed.weaving_sd);
    if (which == 2) moved.pattern.widening = std::min(3.0, moved.pattern.widening + (moved.pattern.main_positions.empty() ? kSpacingMore : 0));
    const auto other = pressed_at(moved, reckoner, spots);
    if (!other) return fail(other.error());
    double most = 0;
    for (std::size_t i = 1; i < spots.size(); ++i)
      most = std::max(most, std::abs(std::log((*other)[i] / (*other)[0]) - std::log((*plain)[i] / (*plain)[0])));
    squares += most * most;
  }
  return std::sqrt(squares);
}

/// Between two places the give, one by the stiffness, is closer to a straight line than the stiffness: it goes to nothing at the frame.
double level_of(double stiffness) {
  return -1 / stiffness;
}

struct Corner {
  BedPoint at;
  double level = 0;
};

BedPoint between(const Corner& a, const Corner& b, double level) {
  const double t = (level - a.level) / (b.level - a.level);
  return {a.at.x + t * (b.at.x - a.at.x), a.at.y + t * (b.at.y - a.at.y)};
}

/// What of a convex polygon lies at or above a level (`above`) or below it, as a plane over it.
std::vector<Corner> cut(const std::vector<Corner>& polygon, double level, bool above) {
  std::vector<Corner> out;
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    const Corner &a = polygon[i], &b = polygon[(i + 1) % polygon.size()];
    const bool a_in = above == (a.level >= level), b_in = above == (b.level >= level);
    if (a_in) out.push_back(a);
    if (a_in != b_in) out.push_back({between(a, b, level), level});
  }
  return out;
}

void put_into(StiffnessMap& map, const std::array<Corner, 3>& triangle) {
  const std::vector<Corner> whole(triangle.begin(), triangle.end());
  for (std::size_t i = 0; i < map.steps.size(); ++i) {
    std::vector<Corner> part = i > 0 ? cut(whole, level_of(map.steps[i].from), true) : whole;
    if (i + 1 < map.steps.size()) part = cut(part, level_of(map.steps[i + 1].from), false);
    if (part.size() >= 3) {
      std::vector<BedPoint> area;
      for (const Corner& one : part) area.push_back(one.at);
      map.steps[i].areas.push_back(std::move(area));
    }
    if (i == 0) continue;
    const double level = level_of(map.steps[i].from);
    std::vector<BedPoint> ends;
    for (std::size_t k = 0; k < 3; ++k) {
      const Corner &a = triangle[k], &b = triangle[(k + 1) % 3];
      if ((a.level >= level) != (b.level >= level)) ends.push_back(between(a, b, level));
    }
    if (ends.size() == 2) map.steps[i].edges.push_back({ends[0], ends[1], false});
  }
}

/// Round figures: the finest that make no more steps than a legend can hold.
std::vector<double> steps_between(double least, double most) {
  most = std::min(most, kFarthest * least);
  for (const double round : kRounds) {
    const double step = 1000 * round;
    const double first = std::floor(least / step + 1e-9);
    const double count = std::floor(most / step - 1e-9) - first + 1;
    if (count > kMostMapSteps && round != kRounds.back()) continue;
    std::vector<double> out;
    for (int i = 0; i < std::clamp(static_cast<int>(count), 1, kMostMapSteps); ++i) out.push_back((first + i) * step);
    return out;
  }
  return {least};
}

}  // namespace

Outcome<StiffnessMap> stiffness_map(const BedSetup& setup, const BedReckoner& reckoner, const BedEstimate& middle) {
  const auto layout = layout_of(setup);
  if (!layout) return fail(layout.error());
  const auto web = web_in(layout->head, setup.assumed.contact);
  if (!web) return fail(web.error());
  std::vector<BedPoint> places{{0, 0}};
  for (int ring = 1; ring <= kRings; ++ring)
    for (int ray = 0; ray < kRays; ++ray) places.push_back(web->at(ray, static_cast<double>(ring) / kRings));
  const auto place = [](int ring, int ray) { return ring == 0 ? std::size_t{0} : static_cast<std::size_t>(1 + (ring - 1) * kRays + ray % kRays); };
  const std::size_t grid = places.size();
  const std::vector<BedPoint> spots = spots_of(*web);
  places.insert(places.end(), spots.begin(), spots.end());
  auto pressed = pressed_at(setup, reckoner, places);
  if (!pressed) return fail(pressed.error());
  const auto doubt = doubt_between(setup, reckoner, spots);
  if (!doubt) return fail(doubt.error());
  const double factor = middle.value / pressed->front();
  for (double& one : *pressed) one *= factor;

  StiffnessMap out;
  out.contact = setup.assumed.contact;
  out.between_sd = *doubt;
  const auto [least, most] = std::minmax_element(pressed->begin(), pressed->begin() + static_cast<std::ptrdiff_t>(grid));
  out.least = *least;
  out.most = *most;
  for (const double from : steps_between(out.least, out.most)) out.steps.push_back({from, {}, {}});
  for (std::size_t i = 0; i < spots.size(); ++i)
    out.spots.push_back({spots[i], BedEstimate::of((*pressed)[grid + i], i == 0 ? middle.relative_sd : std::hypot(middle.relative_sd, *doubt))});
  const auto corner = [&](int ring, int ray) { return Corner{places[place(ring, ray)], level_of((*pressed)[place(ring, ray)])}; };
  for (int ring = 0; ring < kRings; ++ring)
    for (int ray = 0; ray < kRays; ++ray) {
      put_into(out, {corner(ring, ray), corner(ring + 1, ray), corner(ring + 1, ray + 1)});
      if (ring > 0) put_into(out, {corner(ring, ray), corner(ring + 1, ray + 1), corner(ring, ray + 1)});
    }
  return out;
}

}  // namespace weavelog
