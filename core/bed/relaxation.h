#pragma once
// Tension over the time since stringing: laws in the logarithm of time, what is believed of them, and what own readings say.

#include <span>
#include <string>
#include <vector>

#include "core/bed/material.h"

namespace weavelog {

/// T = T0 (1 - A log10(1 + t / t0)). Times in seconds since stringing.
struct LogTimeLaw {
  double per_decade = 0;  ///< A
  double from = 60;       ///< t0; T0 is the tension just then, and a law in minutes can't tell what happened before
  /// What is left of T0; never below 0.
  [[nodiscard]] double left(double seconds) const;
};

/// Two straight lines in log10 t that meet at `bend`: T0 up to `from`, then A1 a decade, then A2. Polyester yarns bend after some 100 s (Milasius
/// and Laureckiene 2014, abstract), so from a few minutes on the second line alone is what matters.
struct BentLogTimeLaw {
  double first = 0, second = 0, from = 1, bend = 100;
  [[nodiscard]] double left(double seconds) const;
};

/// What relaxation depends on.
struct RelaxationCase {
  BedMaterial material = BedMaterial::synthetic_gut;
  double pre_stretch = 0;   ///< percent
  double temperature = 20;  ///< C, of where the racket lies
};

/// One reading of something that is proportional to tension: a tension, a stiffness, or the square of a tone.
struct RelaxationReading {
  std::string racket;  ///< readings of one stringing of one racket have one name
  RelaxationCase of;
  double seconds = 0;  ///< since stringing
  double value = 0;    ///< in any unit, one for each racket
  double relative_sd = 0.015;
};

/// What is left, and how much of that knowledge is own data: 0 prior alone, 1 data alone (part of the prior's variance of the loss that is gone).
struct TensionLeft {
  BedEstimate left;        ///< part of the tension at one minute
  BedEstimate per_decade;  ///< part lost for each tenfold time
  double from_data = 0;
};

/// What is believed of relaxation: the priors of core/bed/material.h and two of our own without source, a third more loss a decade for 30 C more
/// (1 % a degree, give or take 1 %) and a third less for 10 % pre-stretch (3 % for each percent, give or take 3 %); drawn towards own readings by a
/// Bayesian regression of logarithms, rackets differing among each other by a fifth.
class RelaxationModel {
 public:
  /// The priors alone.
  RelaxationModel();
  /// Faults, with the reading's number (from 1): bad_input (a value that is not above 0, a time below 0 or above two years, a reading so far off the
  /// racket's others that it must be of another unit, more than 300 rackets or 20,000 readings).
  [[nodiscard]] static Outcome<RelaxationModel> fitted(std::span<const RelaxationReading> readings);

  /// Of a racket that was not among the readings. Faults: bad_input (a time, pre-stretch or temperature that can't be).
  [[nodiscard]] Outcome<TensionLeft> left_at(const RelaxationCase& of, double seconds) const;
  /// Of a racket among them: what is left at a moment, as a part of what was left at another. Faults: also not_found.
  [[nodiscard]] Outcome<TensionLeft> left_of(const std::string& racket, double since_seconds, double seconds) const;

  [[nodiscard]] std::size_t readings() const { return readings_; }
  [[nodiscard]] std::size_t rackets() const { return rackets_.size(); }

 private:
  struct Racket {
    std::string name;
    RelaxationCase of;
    double log_loss = 0, log_loss_sd = 0;
  };
  [[nodiscard]] std::vector<double> row(const RelaxationCase& of) const;
  std::vector<double> mean_;        ///< materials' logarithms of the loss, then by degree, then by percent pre-stretch
  std::vector<double> covariance_;  ///< of these, row by row
  std::vector<Racket> rackets_;
  std::size_t readings_ = 0;
};

}  // namespace weavelog
