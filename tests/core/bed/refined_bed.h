#pragma once
// A second, finer model of a bed, apart from core/bed: no matrices, no factor, no Woodbury. Strings are chains of short pieces of true length; where
// they cross they go down together; a string has one tension all along. What is at rest has the least energy (the tensions' and the stretch's, less
// the load's work): found by conjugate gradients. The pressure is summed over points of the disc. The lowest tone is the least quotient of Rayleigh.
// Slow and plain, for tests alone.
//
// From textbooks: a string under a load across it, an elastic string's stretch (checked against fixtures/published/bed_physics.json, see
// setup_test.cpp).

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include "core/bed/layout.h"
#include "core/bed/net.h"

namespace weavelog::refined {

class Bed {
 public:
  /// `pieces` between two crossings, and out to the frame.
  Bed(const BedLayout& layout, const NetString& main, const NetString& cross, int pieces) : layout_(layout) {
    std::vector<std::vector<int>> at(layout.mains.size(), std::vector<int>(layout.crosses.size(), -1));
    for (std::size_t i = 0; i < layout.mains.size(); ++i)
      for (std::size_t j = 0; j < layout.crosses.size(); ++j) {
        const BedString &m = layout.mains[i], &c = layout.crosses[j];
        if (m.low < c.at && c.at < m.high && c.low < m.at && m.at < c.high) at[i][j] = nodes_++;
      }
    for (std::size_t i = 0; i < layout.mains.size(); ++i) {
      std::vector<std::pair<double, int>> knots;
      for (std::size_t j = 0; j < layout.crosses.size(); ++j)
        if (at[i][j] >= 0) knots.emplace_back(layout.crosses[j].at, at[i][j]);
      add(layout.mains[i], main, true, knots, pieces, width(layout.mains, i, layout.head.half_width()));
    }
    for (std::size_t j = 0; j < layout.crosses.size(); ++j) {
      std::vector<std::pair<double, int>> knots;
      for (std::size_t i = 0; i < layout.mains.size(); ++i)
        if (at[i][j] >= 0) knots.emplace_back(layout.mains[i].at, at[i][j]);
      add(layout.crosses[j], cross, false, knots, pieces, width(layout.crosses, j, layout.head.half_length()));
    }
  }

  /// Force by the mean way down of the disc in the middle, N/m; half of the pressure is on the mains, half on the crosses.
  [[nodiscard]] double stiffness(double radius_mm, double force) const {
    const std::vector<double> load = pressure(radius_mm);
    std::vector<double> w(load.size(), 0.0);
    least_energy(w, load, force);
    double mean = 0;
    for (std::size_t i = 0; i < w.size(); ++i) mean += load[i] * w[i];
    return force / mean;
  }

  /// Hz, lowest.
  [[nodiscard]] double tone() const {
    const auto n = static_cast<std::size_t>(nodes_);
    std::vector<double> mass(n, 0.0), w(n, 1.0), force(n);
    for (const Line& line : lines_)
      for (const Piece& piece : line.pieces)
        for (const int node : {piece.a, piece.b})
          if (node >= 0) mass[static_cast<std::size_t>(node)] += line.string.linear_density * piece.length / 2;
    double before = 0;
    for (int turn = 0; turn < 30; ++turn) {  // inverse steps towards the lowest mode
      for (std::size_t i = 0; i < n; ++i) force[i] = mass[i] * w[i];
      std::vector<double> next(n, 0.0);
      linear(next, force);
      double work = 0, inertia = 0;
      for (std::size_t i = 0; i < n; ++i) {
        work += next[i] * force[i];
        inertia += next[i] * mass[i] * next[i];
      }
      const double square = work / inertia, scale = 1 / std::sqrt(inertia);
      for (std::size_t i = 0; i < n; ++i) w[i] = next[i] * scale;
      if (std::abs(square / before - 1) < 1e-9) break;
      before = square;
    }
    return std::sqrt(before) / (2 * std::numbers::pi);
  }

 private:
  struct Piece {
    int a = -1, b = -1;               // nodes; -1 is the frame
    double from = 0, to = 0, length;  // mm along the string; m
  };
  struct Line {
    NetString string;
    bool main;
    double at, width, length;  // mm, mm, m
    std::vector<Piece> pieces;
  };

  static double width(const std::vector<BedString>& strings, std::size_t i, double half) {
    const double before = i > 0 ? strings[i].at - strings[i - 1].at : -1, after = i + 1 < strings.size() ? strings[i + 1].at - strings[i].at : -1;
    if (before < 0 && after < 0) return 2 * half;
    return ((before < 0 ? after : before) + (after < 0 ? before : after)) / 2;
  }

  void add(const BedString& string, const NetString& kind, bool main, const std::vector<std::pair<double, int>>& knots, int pieces, double wide) {
    Line line{kind, main, string.at, wide, (string.high - string.low) / 1000, {}};
    double from = string.low;
    int node = -1;
    for (std::size_t k = 0; k <= knots.size(); ++k) {
      const double to = k < knots.size() ? knots[k].first : string.high, step = (to - from) / pieces;
      for (int i = 0; i < pieces; ++i) {
        const int next = i + 1 < pieces ? nodes_++ : k < knots.size() ? knots[k].second : -1;
        line.pieces.push_back({node, next, from + i * step, from + (i + 1) * step, step / 1000});
        node = next;
      }
      from = to;
    }
    lines_.push_back(line);
  }

  /// Parts of one newton by node: points over the disc, each carried by the main and the cross in whose strip it lies.
  [[nodiscard]] std::vector<double> pressure(double radius) const {
    std::vector<double> out(static_cast<std::size_t>(nodes_), 0.0);
    constexpr int points = 240;
    double all = 0;
    for (int i = 0; i < points; ++i)
      for (int j = 0; j < points; ++j) {
        const double x = radius * ((2.0 * i + 1) / points - 1), y = radius * ((2.0 * j + 1) / points - 1);
        if (x * x + y * y > radius * radius) continue;
        for (const bool main : {true, false}) {
          const double across = main ? x : y, along = main ? y : x;
          const Line* nearest = nullptr;
          for (const Line& line : lines_)
            if (line.main == main && (nearest == nullptr || std::abs(line.at - across) < std::abs(nearest->at - across))) nearest = &line;
          for (const Piece& piece : nearest->pieces) {
            if (along < piece.from || along > piece.to) continue;
            const double t = (along - piece.from) / (piece.to - piece.from);
            if (piece.a >= 0) out[static_cast<std::size_t>(piece.a)] += 1 - t;
            if (piece.b >= 0) out[static_cast<std::size_t>(piece.b)] += t;
            all += 1;
            break;
          }
        }
      }
    for (double& one : out) one /= all;
    return out;
  }

  /// Of all strings at w, their pull on the nodes (the energy's gradient).
  void pull(const std::vector<double>& w, std::vector<double>& out, bool stretch) const {
    std::fill(out.begin(), out.end(), 0.0);
    const double* x = w.data();
    double* g = out.data();
    for (const Line& line : lines_) {
      double longer = 0;
      if (stretch)
        for (const Piece& piece : line.pieces) {
          const double step = (piece.b >= 0 ? x[piece.b] : 0) - (piece.a >= 0 ? x[piece.a] : 0);
          longer += std::sqrt(piece.length * piece.length + step * step) - piece.length;
        }
      const double tension = line.string.tension + line.string.elasticity * longer / line.length;
      for (const Piece& piece : line.pieces) {
        const double step = (piece.b >= 0 ? x[piece.b] : 0) - (piece.a >= 0 ? x[piece.a] : 0);
        const double force = tension * step / (stretch ? std::sqrt(piece.length * piece.length + step * step) : piece.length);
        if (piece.b >= 0) g[piece.b] += force;
        if (piece.a >= 0) g[piece.a] -= force;
      }
    }
  }

  [[nodiscard]] std::vector<double> diagonal() const {
    std::vector<double> out(static_cast<std::size_t>(nodes_), 0.0);
    for (const Line& line : lines_)
      for (const Piece& piece : line.pieces)
        for (const int node : {piece.a, piece.b})
          if (node >= 0) out[static_cast<std::size_t>(node)] += line.string.tension / piece.length;
    return out;
  }

  /// Small ways down.
  void linear(std::vector<double>& w, const std::vector<double>& load) const { descend(w, load, 1, false); }
  void least_energy(std::vector<double>& w, const std::vector<double>& load, double force) const {
    descend(w, load, force, false);
    descend(w, load, force, true);
  }

  /// Conjugate gradients (Polak and Ribiere), each step's length by a secant: exact where nothing stretches.
  void descend(std::vector<double>& w, const std::vector<double>& load, double force, bool stretch) const {
    const std::size_t n = w.size();
    const std::vector<double> diag = diagonal();
    std::vector<double> g(n), old(n, 0.0), d(n, 0.0), probe(n), at(n);
    double whole = 0, before = 0;
    for (std::size_t i = 0; i < n; ++i) whole += force * load[i] * force * load[i] / diag[i];
    for (int turn = 0; turn < 3000; ++turn) {
      pull(w, g, stretch);
      double size = 0, mixed = 0;
      for (std::size_t i = 0; i < n; ++i) {
        g[i] -= force * load[i];
        size += g[i] * g[i] / diag[i];
        mixed += g[i] * (g[i] - old[i]) / diag[i];
      }
      if (size < 1e-14 * whole) return;
      const double beta = before > 0 ? std::max(0.0, mixed / before) : 0;
      double slope = 0, norm = 0;
      for (std::size_t i = 0; i < n; ++i) {
        d[i] = beta * d[i] - g[i] / diag[i];
        slope += d[i] * g[i];
        norm = std::max(norm, std::abs(d[i]));
      }
      const double small = stretch ? 1e-6 / norm : 1;
      for (std::size_t i = 0; i < n; ++i) at[i] = w[i] + small * d[i];
      pull(at, probe, stretch);
      double curve = 0;
      for (std::size_t i = 0; i < n; ++i) curve += d[i] * (probe[i] - force * load[i] - g[i]);
      curve /= small;
      const double step = -slope / curve;
      for (std::size_t i = 0; i < n; ++i) w[i] += step * d[i];
      old = g;
      before = size;
    }
  }

  BedLayout layout_;
  std::vector<Line> lines_;
  int nodes_ = 0;
};

}  // namespace weavelog::refined
