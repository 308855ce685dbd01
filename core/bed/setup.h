#pragma once
// A strung racket as told at the bench, and what is reckoned of its bed: stiffness, tone, the tension that is in it.
//
// What comes off the machine holds typically 30 % less than was pulled (Cross and Bower 2001), give or take; so figures from the pulled tension
// alone are good to some 20 %, and say so. Ratios of two such figures are far better: most doubts are common to both.

#include <string>
#include <vector>

#include "core/bed/material.h"
#include "core/bed/net.h"
#include "core/bed/relaxation.h"

namespace weavelog {

/// Mains or crosses.
struct BedStrings {
  BedStringKind kind;
  double pulled = 240;     ///< N, reference tension of the machine
  double pre_stretch = 0;  ///< percent
};

/// What is assumed where nobody measured, with its doubt (standard deviations).
struct BedAssumptions {
  double off_machine = 0.30,
         off_machine_sd = 0.06;              ///< part of the pulled tension that is gone a minute after the racket came off (published, typical)
  double between_materials_sd = 0.03;        ///< by which that differs between materials; no source
  double weaving = 0.05, weaving_sd = 0.04;  ///< part that crosses lose by friction on the mains while they are pulled; no source
  double contact = 25, contact_sd = 2.5;     ///< mm, radius of the disc that is pressed
  double gauge_sd = 0.015;                   ///< relative, of a string's diameter
  double model_sd = 0.05;                    ///< relative: stiff frame, no bending, contact not a disc
};

struct BedSetup {
  double area = 645;              ///< cm2
  double aspect = 1.35;           ///< length by width of the string plane
  double shape = 2;               ///< power of the superellipse
  std::vector<BedPoint> corners;  ///< mm; in place of area, aspect and shape
  BedPattern pattern;
  BedStrings mains, crosses;
  int pieces = 2;
  double temperature = 20;  ///< C
  double after = 0;         ///< s since it came off the machine
  BedAssumptions assumed;
};

/// Of the strings, as corrections know it: "polyester", of a hybrid "polyester / natural_gut".
[[nodiscard]] std::string material_of(const BedSetup& setup);

/// Faults, with the field: bad_input (geometry as of HeadOutline and lay_out(); a gauge outside 0.8 to 1.8 mm, a pull outside 40 to 500 N, a
/// pre-stretch above 30 %, a temperature or time that can't be, an assumption that leaves no tension).
[[nodiscard]] Outcome<BedLayout> layout_of(const BedSetup& setup);

/// What is compared between beds.
struct BedGoal {
  enum class Kind { stiffness, tone } kind = Kind::stiffness;
  /// N on the contact disc in the middle; 0 is the small-load stiffness, in which a string's own stretch has no part.
  double force = 500;
};

/// A doubt and what it does to a figure.
struct BedDoubt {
  std::string of;          ///< "off_machine", "weaving", "contact", "model", "gauge", or a material with "modulus", "density", "loss", "off_machine"
  double relative_sd = 0;  ///< that it brings to the figure
  double slope = 0;        ///< change of the figure's logarithm by one standard deviation of the doubt
};

/// A figure with where its doubt comes from, the largest first.
struct BedFigure {
  BedEstimate estimate;
  std::vector<BedDoubt> doubts;
};

/// Reckons setups; keeps what own readings said of relaxation. A bed takes some milliseconds.
class BedReckoner {
 public:
  explicit BedReckoner(RelaxationModel relaxation = {}) : relaxation_(std::move(relaxation)) {}

  /// Tension in the bed now, N, by part of the pulled one. Faults: those of layout_of().
  struct Tensions {
    double mains = 0, crosses = 0;  ///< N
    double left = 0;                ///< of what was there at one minute, mains and crosses apart below
    double left_mains = 0, left_crosses = 0;
  };
  [[nodiscard]] Outcome<Tensions> tensions(const BedSetup& setup) const;

  /// N/m or Hz, no doubts. `pieces` as of StringNet. Faults: those of layout_of().
  [[nodiscard]] Outcome<double> value(const BedSetup& setup, const BedGoal& goal, int pieces = 2) const;
  /// The same with its doubts. Faults: those of layout_of().
  [[nodiscard]] Outcome<BedFigure> figure(const BedSetup& setup, const BedGoal& goal) const;
  /// One by the other, of one goal: doubts that are common to both fall out. `same_frame`: one racket, so the model's errors do too.
  [[nodiscard]] Outcome<BedFigure> ratio(const BedSetup& one, const BedSetup& other, const BedGoal& goal, bool same_frame) const;

  /// Everything about a bed at once, for screens and commands.
  struct Whole {
    BedFigure stiffness;        ///< small load, N/m
    BedFigure loaded;           ///< at goal.force, N/m
    BedFigure tone;             ///< lowest mode, Hz
    std::vector<double> modes;  ///< Hz
    Tensions tensions;
    double mains_share = 0;  ///< of the small-load stiffness
    double held = 0;         ///< loaded stiffness if strings could not slide at crossings, N/m: real ones lie between
    double sinks = 0;        ///< m under goal.force
  };
  [[nodiscard]] Outcome<Whole> whole(const BedSetup& setup, double force) const;

  /// What a tone says: the mean tension in the bed and its stiffness now. Faults: bad_input (a tone that is no bed's, 200 to 1,500 Hz; one that would
  /// mean less than a quarter or more than 1.2 of the pulled tension: wrong racket, wrong string or wrong unit).
  struct FromTone {
    BedEstimate tension;  ///< N, mean of all strings by their number
    BedEstimate mains, crosses;
    BedEstimate stiffness;  ///< N/m, small load
    BedEstimate of_pulled;  ///< part of the mean pulled tension
  };
  [[nodiscard]] Outcome<FromTone> from_tone(const BedSetup& setup, double hz, double relative_sd = 0.003) const;

  [[nodiscard]] const RelaxationModel& relaxation() const { return relaxation_; }

 private:
  RelaxationModel relaxation_;
};

/// The net of a bed with these tensions (N), a string of each kind. Faults: those of layout_of().
[[nodiscard]] Outcome<StringNet> net_of(const BedSetup& setup, double mains_tension, double crosses_tension, int pieces = 1);

}  // namespace weavelog
