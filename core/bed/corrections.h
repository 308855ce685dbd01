#pragma once
// What own readings say about the model: how far measured beds lie from reckoned ones, for all rackets, by model of racket, by single frame, and by
// string and its material; each drawn towards nothing (the model) as far as few readings speak for it (hierarchical shrinkage).

#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/outcome.h"

namespace weavelog {

/// One reading beside what was reckoned for that very racket at that moment.
struct BedReading {
  std::string frame;          ///< one racket; "" if it is not known which
  std::string model;          ///< of racket
  std::string string;         ///< as strung, e.g. name and gauge
  double log_ratio = 0;       ///< logarithm of measured by reckoned stiffness; of tones twice that
  double relative_sd = 0.03;  ///< of the reading
  std::string material = {};  ///< of the strings, e.g. "polyester"; "" if it is not known or they are of several
};

/// Standard deviations of what differs, before anything was measured here: absolute figures are good to some 20 %; the others have no source.
struct BedSpread {
  double all = 0.15, model = 0.06, frame = 0.03, string = 0.04, material = 0.03;
};

/// For whom a correction is asked.
struct BedWhose {
  std::string frame, model, string, material = {};
};

/// What readings say of one of the levels that somebody stands on.
struct BedLevel {
  enum class Of { all, model, frame, string, material } of = Of::all;
  std::size_t readings = 0;
  double log = 0;  ///< its part of the correction; all parts together are the whole
  double sd = 0;   ///< of it
};
/// "all", "model", ...
[[nodiscard]] std::string_view name_of(BedLevel::Of level);

struct BedCorrection {
  double log = 0;                                                     ///< to add to the logarithm of what was reckoned
  double sd = 0;                                                      ///< of it, for a bed that was strung anew
  double from_data = 0;                                               ///< part of the doubt before any reading that is gone, 0 to 1
  std::size_t of_frame = 0, of_model = 0, of_string = 0, of_material = 0, of_all = 0;  ///< readings
  std::vector<BedLevel> levels;  ///< those of which there are readings, in the order of BedLevel::Of
};

/// How old readings were, and what was done about it, so that they compare: each is held against what is reckoned for its own time since stringing.
struct ReadingAges {
  std::size_t known = 0;    ///< readings that were so corrected
  std::size_t unknown = 0;  ///< kept apart: nobody knows how long after stringing they were made
  std::size_t assumed = 0;  ///< of no reading is it known: all are taken as made just off the machine
  double mean_percent = 0;  ///< tension that was lost by then, of what was there at one minute
  double most_percent = 0;

  /// One more whose strings had that part left, 0 to 1.
  void add(double left);
};

/// Normal levels "all", "model", "frame" within its model, and "material" and "string" across them, solved at once; their spreads are found from the readings
/// themselves, drawn to BedSpread as by four readings more.
class BedCorrections {
 public:
  BedCorrections();
  /// Faults, with the reading's number (from 1): bad_input (a value that is none; one that is more than twice or less than half of what was reckoned:
  /// a wrong unit; more than 5,000 readings or 600 different names).
  [[nodiscard]] static Outcome<BedCorrections> fitted(std::span<const BedReading> readings, const BedSpread& spread = {});
  /// The same with spreads and the readings' doubts as given, nothing found from the readings: best linear unbiased prediction.
  [[nodiscard]] static Outcome<BedCorrections> predicted(std::span<const BedReading> readings, const BedSpread& spread);

  [[nodiscard]] BedCorrection of(const BedWhose& whose) const;
  /// Of one less the other: what is common to both falls out.
  [[nodiscard]] BedCorrection between(const BedWhose& one, const BedWhose& other) const;
  [[nodiscard]] const BedSpread& spread() const { return spread_; }
  /// By how much readings are doubted in truth, as a multiple of what they said.
  [[nodiscard]] double noise() const { return noise_; }

 private:
  using Levels = std::map<std::string, std::size_t>;
  [[nodiscard]] static Outcome<BedCorrections> solved(std::span<const BedReading> readings, const BedSpread& spread, bool known);
  [[nodiscard]] BedCorrection told(const BedWhose& one, const BedWhose* other) const;

  BedSpread spread_, prior_;
  double noise_ = 1;
  Levels levels_;                  ///< "all", "model X", "frame X / Y", "string Z", "material M": places in the vectors below
  std::vector<std::size_t> seen_;  ///< readings by level
  std::vector<double> mean_, covariance_;
};

}  // namespace weavelog
