#pragma once

#include <optional>
#include <vector>

#include "app-qml/view/bed_model.h"
#include "core/bed/stiffness_map.h"

// One working out, made beside the screen.
struct BedModel::Made {
  weavelog::BookId book;
  weavelog::EntityId job;
  std::optional<weavelog::Fault> fault;
  QString title;
  weavelog::RoomBed bed;
  weavelog::MeasuredBeds measured;
  weavelog::BedFigures figures;
  weavelog::StiffnessMap map;
  std::vector<weavelog::BedLeftAt> curve;
  std::vector<weavelog::BedSegment> strings;
  std::vector<weavelog::BedPoint> outline;
  std::vector<weavelog::BedStringChoice> choices;
  std::optional<double> mostTension;  // N, printed on the frame
  bool crack = false, pain = false;
  bool inches = false;  // the racket's head size was said in square inches
};
