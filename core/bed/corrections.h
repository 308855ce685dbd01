#pragma once
// What own readings say about the model: how far measured beds lie from reckoned ones, for all rackets, by model of racket, by single frame, and by
// string; each drawn towards nothing (the model) as far as few readings speak for it (hierarchical shrinkage).

#include <map>
#include <span>
#include <string>
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
};

/// Standard deviations of what differs, before anything was measured here: absolute figures are good to some 20 %; the others have no source.
struct BedSpread {
  double all = 0.15, model = 0.06, frame = 0.03, string = 0.05;
};

/// For whom a correction is asked.
struct BedWhose {
  std::string frame, model, string;
};

struct BedCorrection {
  double log = 0;                                                     ///< to add to the logarithm of what was reckoned
  double sd = 0;                                                      ///< of it, for a bed that was strung anew
  double from_data = 0;                                               ///< part of the doubt before any reading that is gone, 0 to 1
  std::size_t of_frame = 0, of_model = 0, of_string = 0, of_all = 0;  ///< readings
};

/// Normal levels "all", "model", "frame" within its model, and "string" across them, solved at once; their spreads are found from the readings
/// themselves, drawn to BedSpread as by four readings more.
class BedCorrections {
 public:
  BedCorrections();
  /// Faults, with the reading's number (from 1): bad_input (a value that is none; one that is more than twice or less than half of what was reckoned:
  /// a wrong unit; more than 5,000 readings or 600 different names).
  [[nodiscard]] static Outcome<BedCorrections> fitted(std::span<const BedReading> readings, const BedSpread& spread = {});

  [[nodiscard]] BedCorrection of(const BedWhose& whose) const;
  /// Of one less the other: what is common to both falls out.
  [[nodiscard]] BedCorrection between(const BedWhose& one, const BedWhose& other) const;
  [[nodiscard]] const BedSpread& spread() const { return spread_; }
  /// By how much readings are doubted in truth, as a multiple of what they said.
  [[nodiscard]] double noise() const { return noise_; }

 private:
  using Levels = std::map<std::string, std::size_t>;
  [[nodiscard]] BedCorrection told(const BedWhose& one, const BedWhose* other) const;

  BedSpread spread_, prior_;
  double noise_ = 1;
  Levels levels_;                  ///< "all", "model X", "frame X / Y", "string Z": places in the vectors below
  std::vector<std::size_t> seen_;  ///< readings by level
  std::vector<double> mean_, covariance_;
};

}  // namespace weavelog
