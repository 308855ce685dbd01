#pragma once
// The stiffness all over a bed, as a map with steps: ready to be drawn on a screen or on paper.

#include <vector>

#include "core/bed/setup.h"

namespace weavelog {

/// All places whose stiffness is at least `from` and below the next step's.
struct MapStep {
  double from = 0;                           ///< N/m, a round figure in N/mm
  std::vector<std::vector<BedPoint>> areas;  ///< convex polygons beside each other, mm
  std::vector<BedSegment> edges;             ///< where the step begins, mm; none of the lowest
};

/// A place with its figure.
struct MapSpot {
  BedPoint at;            ///< mm
  BedEstimate stiffness;  ///< N/m
};

struct StiffnessMap {
  std::vector<MapStep> steps;  ///< rising, 1 to 6; the lowest begins below the least, the highest has no end
  std::vector<MapSpot> spots;  ///< the middle, four near the frame (right, tip, left, throat) and four between, in that order
  double least = 0, most = 0;  ///< N/m
  double contact = 25;         ///< mm, radius of the disc that is pressed; a place is mapped where it lies whole within the head
  double between_sd = 0;       ///< relative, of one place against another
  [[nodiscard]] double step() const { return steps.size() > 1 ? steps[1].from - steps[0].from : 0; }
};

/// `middle` is what is estimated of the stiffness in the middle, N/m: the map is that times what the model says of each place against the middle.
/// Faults: those of BedReckoner; bad_input (the head has no place for the contact, or a place has no string under it).
[[nodiscard]] Outcome<StiffnessMap> stiffness_map(const BedSetup& setup, const BedReckoner& reckoner, const BedEstimate& middle);

}  // namespace weavelog
