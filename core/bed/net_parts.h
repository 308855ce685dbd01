#pragma once
// Inside of the net: shared by its two sources, for nobody else (Eigen).

#include <Eigen/SparseCholesky>
#include <Eigen/SparseCore>

#include "core/bed/net.h"

namespace weavelog {

using NetMatrix = Eigen::SparseMatrix<double>;
using NetVector = Eigen::VectorXd;

/// A piece of string between two nodes; -1 is the frame.
struct NetPiece {
  int a = -1, b = -1;
  double from = 0, to = 0;  ///< mm along the string
  [[nodiscard]] double length() const { return (to - from) / 1000; }
};

struct NetLine {
  NetString string;
  bool main = false;
  double at = 0;      ///< mm
  double width = 0;   ///< mm, half way to the neighbours on both sides
  double length = 0;  ///< m
  std::vector<NetPiece> pieces;
};

/// A load spread over nodes, and what it bends pieces by between their nodes.
struct NetLoad {
  NetVector nodes;  ///< per newton
  /// Integral of shear squared over tension per squared newton, by line, for that line's tension 1.
  std::vector<double> local;
  int loaded = 0;
};

struct StringNet::Parts {
  explicit Parts(BedLayout of) : layout(std::move(of)) {}

  BedLayout layout;
  std::vector<NetLine> lines;
  std::vector<BedPoint> crossing;  ///< nodes 0 .. crossing.size() - 1; the others lie between
  int nodes = 0;
  Eigen::SimplicialLDLT<NetMatrix> factor;  ///< of the unloaded bed

  /// Sum over lines of tension / length; `tensions` by line.
  [[nodiscard]] NetMatrix stiffness(const std::vector<double>& tensions, bool mains, bool crosses) const;
  [[nodiscard]] Outcome<NetLoad> load(const NetContact& contact) const;
};

}  // namespace weavelog
