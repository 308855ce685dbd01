#pragma once
// Where the strings of a bed lie, how long they are, and how much string goes into it.

#include <cstdint>
#include <vector>

#include "core/bed/head.h"

namespace weavelog {

/// How strings are spread. The defaults are common practice, no source.
struct BedPattern {
  int mains = 16, crosses = 19;
  /// The outermost gap between two strings as a multiple of the middle one, mains and crosses alike; gaps grow evenly between. 1 is even.
  double widening = 1.35;
  double outer_main = 0.85;   ///< where the outermost main lies, as a part of the half width
  double outer_cross = 0.86;  ///< where the outermost cross lies, as a part of the half length
  /// In place of these, positions in mm from the middle, rising: of the mains (x), of the crosses (y).
  std::vector<double> main_positions, cross_positions;
};

/// A main (at x, from low to high y) or a cross (at y, from low to high x); mm.
struct BedString {
  double at = 0, low = 0, high = 0;
  [[nodiscard]] double length() const { return high - low; }
};

struct BedLayout {
  HeadOutline head;
  std::vector<BedString> mains, crosses;
  [[nodiscard]] double mains_in_face() const;    ///< m, sum of lengths
  [[nodiscard]] double crosses_in_face() const;  ///< m
};

/// Faults: bad_input (fewer than 1 or more than 60 strings a way, a widening outside 1 to 3, positions outside the head or not rising, strings
/// that lie in each other).
[[nodiscard]] Outcome<BedLayout> lay_out(const HeadOutline& head, const BedPattern& pattern);

/// What goes beyond the face. Common practice, no source; every one can be told otherwise.
struct StringAllowance {
  double wall = 12;     ///< mm from the face through the frame, for each hole
  double reach = 320;   ///< mm from the frame to the tension head, for an end that is pulled
  double tie_off = 90;  ///< mm for a knot's end that is not pulled (the starting knot of two-piece crosses)
  double weave = 0.5;   ///< percent that a string over and under others is longer than straight
  double spare = 150;   ///< mm in all, for a second try
};

/// One piece of string.
struct StringLength {
  double in_face = 0;  ///< m
  double around = 0;   ///< m round the frame from hole to hole, through its wall
  double ends = 0;     ///< m of pulls, knots and spare
  [[nodiscard]] double metres() const { return in_face + around + ends; }
};

struct LengthNeed {
  StringLength mains, crosses;  ///< in one piece `crosses` holds what is added by them
  int pieces = 2;
  double short_side = 0;  ///< m that hang out on the side that does not go on, in one piece: its half of the mains with its pull
  [[nodiscard]] double metres() const { return mains.metres() + crosses.metres(); }
};

/// Faults: bad_input (pieces not 1 or 2, an allowance below 0 or above 5 m).
[[nodiscard]] Outcome<LengthNeed> string_needed(const BedLayout& layout, int pieces, const StringAllowance& allowance = {});

/// A line to draw, mm. Where `over` is false the string goes below the other one: a gap is left.
struct BedSegment {
  BedPoint from, to;
  bool main = false;
};
/// All strings as they show: cut where they pass below another, mains and crosses in turns.
[[nodiscard]] std::vector<BedSegment> drawn_strings(const BedLayout& layout, double gap_mm = 2.5);

}  // namespace weavelog
