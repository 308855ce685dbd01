#pragma once
// The tensioned net: strings that cross, move together where they do, and are held by a stiff frame. SI units but for places, which are in mm
// as in the layout.
//
// Model: a string pulls with one tension all along it (it slides through the crossings), which grows by EA / length when it is stretched; it has no
// bending stiffness, and the frame does not move. A continuous membrane sinks without limit under a point, so every load has a contact disc.

#include <memory>
#include <span>

#include "core/bed/layout.h"

namespace weavelog {

/// What one string of the bed is like.
struct NetString {
  double tension = 0;         ///< N, as it lies in the bed
  double elasticity = 0;      ///< EA in N; 0: its tension does not change
  double linear_density = 0;  ///< kg/m; needed for modes alone
};

/// Where the bed is pressed.
struct NetContact {
  double x = 0, y = 0;  ///< mm
  double radius = 25;   ///< mm; a ball flattened by a firm shot, common practice, no source
  enum class Share {
    disc,      ///< an even pressure over the disc, carried by the pieces of string in it
    crossings  ///< equal parts on the crossings in the disc
  } share = Share::disc;
};

struct NetDeflection {
  double force = 0;        ///< N
  double mean = 0;         ///< m, of where the force acts, weighted by it: force times this is the force's work in a linear bed
  double deepest = 0;      ///< m, of the crossings
  double mains_share = 0;  ///< of the stiffness, 0 to 1; the rest is the crosses'
  int loaded = 0;          ///< crossings within the disc
  int steps = 0;           ///< of Newton's method; 0 in a linear bed
  [[nodiscard]] double stiffness() const { return force / mean; }  ///< N/m, secant
};

struct NetPoint {
  double x = 0, y = 0;   ///< mm, a crossing
  double stiffness = 0;  ///< N/m of the same contact put there
};

class StringNet {
 public:
  /// `mains` and `crosses` by string; `pieces` parts between two crossings (1 to 16). Faults: bad_input (a tension that is not above 0, counts that
  /// differ from the layout's, no crossing, more than 40,000 nodes).
  [[nodiscard]] static Outcome<StringNet> make(const BedLayout& layout, std::span<const NetString> mains, std::span<const NetString> crosses,
                                               int pieces = 1);
  ~StringNet();
  StringNet(StringNet&&) noexcept;
  StringNet& operator=(StringNet&&) noexcept;

  /// The small-load stiffness there: tensions stay as they are. Faults: bad_input (no string in the disc, a radius that is none).
  [[nodiscard]] Outcome<NetDeflection> press_lightly(const NetContact& contact) const;
  /// What strings do at crossings when the bed is pressed deep: real ones lie between.
  enum class Crossings {
    slide,  ///< one tension all along a string
    hold    ///< every piece between two crossings stretches by itself
  };
  /// With the strings' own stretch, by Newton's method. Faults: also bad_input (a force that is not above 0 or above 10,000 N).
  [[nodiscard]] Outcome<NetDeflection> press(const NetContact& contact, double force, Crossings crossings = Crossings::slide) const;
  /// How far the bed goes down at each crossing, m, in the order of crossings(). Faults: those of press_lightly().
  [[nodiscard]] Outcome<std::vector<double>> shape_under(const NetContact& contact, double force) const;
  /// The small-load stiffness at every crossing whose contact disc lies whole within the head.
  [[nodiscard]] std::vector<NetPoint> map(const NetContact& contact) const;
  /// All crossings.
  [[nodiscard]] std::vector<BedPoint> crossings() const;
  /// The lowest `count` frequencies, Hz, rising. Faults: bad_input (a string without mass, a count that is not 1 to 20 or not below the nodes).
  [[nodiscard]] Outcome<std::vector<double>> modes(int count) const;

 private:
  struct Parts;
  explicit StringNet(std::unique_ptr<Parts> parts);
  std::unique_ptr<Parts> parts_;
};

}  // namespace weavelog
