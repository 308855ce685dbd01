#pragma once
// A machine's pull against a gauge: what it pulls for what is set, what to set for what is wanted, whether it drifts, and when to look again.
//
// Straight-line and quadratic calibration with intervals as in the NIST/SEMATECH e-Handbook, 2.3.6 (load cell and line width; their data are in
// fixtures/published/calibration_regression.json).

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/clock.h"
#include "core/base/units.h"
#include "core/quality/line_fit.h"

namespace weavelog {

/// One pull of the machine against the gauge.
struct GaugeReading {
  double set = 0, pulled = 0;  ///< in the table's unit
  std::optional<UnixMs> at;
  std::string machine, place;
};
struct GaugeTable {
  std::vector<GaugeReading> readings;  ///< in order of time
  Unit unit = Unit::none;
};
/// Columns `set` and `pulled`, and `unit`, `machine`, `at`; CSV, or JSON as a list of objects. Forces may have their unit behind them; the table's is
/// that of the first. Faults: bad_input with the place (no number, not above 0, a unit that is no force, pulls that are far from what was set as
/// another unit would be).
[[nodiscard]] Outcome<GaugeTable> read_gauge(std::string_view bytes, std::string_view source, const std::string& zone = "UTC");

struct CalibrationOptions {
  double level = 0.95;
  double tolerance = 2;       ///< per cent that a pull may be off (the common "two pounds at 50 are felt" is 4; half of it is for the machine)
  double longest_days = 30;   ///< between checks, however steady (common practice, no source)
  double bend_chance = 0.01;  ///< a bend that would come by chance less often than this is one
};

class Calibration {
 public:
  /// Of one machine. Readings on different days (UTC) are sessions of their own; the newest with at least five readings at three settings
  /// makes the line. Faults: bad_input (too few readings or settings; a pull that does not grow with what is set; options out of range).
  [[nodiscard]] static Outcome<Calibration> of(std::span<const GaugeReading> readings, const CalibrationOptions& options = {});

  [[nodiscard]] const LineFit& straight() const { return straight_; }
  /// Bent, if there were enough settings to see a bend.
  [[nodiscard]] const std::optional<LineFit>& bent() const { return bent_; }
  /// The chance of a bend at least as clear in readings of a straight machine; and that of so bad a fit of the straight line beside the scatter
  /// of repeated settings (none without repeats).
  [[nodiscard]] std::optional<double> bend_chance() const { return bend_chance_; }
  [[nodiscard]] std::optional<double> misfit_chance() const { return misfit_chance_; }
  [[nodiscard]] bool is_bent() const { return is_bent_; }
  /// The one that is used.
  [[nodiscard]] const LineFit& line() const { return is_bent_ ? *bent_ : straight_; }

  /// How far a pull is from what was set, per cent of it, at a setting within the readings.
  struct Error {
    double percent = 0;
    Interval band;
  };
  [[nodiscard]] Outcome<Error> error_at(double set) const;
  /// What to set for a wanted pull. Faults: bad_input (outside what was read: a tenth beyond at most; the line is too much in doubt).
  struct Setting {
    double set = 0;
    Interval band;        ///< for the true line
    Interval next;        ///< where one further pull will be with it
    bool needed = false;  ///< the correction is more than the readings' doubt
  };
  [[nodiscard]] Outcome<Setting> setting_for(double wanted) const;

  /// A day's readings: how far pulls were off at the middle of the range.
  struct Session {
    UnixMs at = 0;
    std::size_t readings = 0;
    double percent = 0, error = 0;  ///< estimate and standard error, per cent
  };
  /// In order of time; none where readings do not say when they were taken.
  [[nodiscard]] const std::vector<Session>& sessions() const { return sessions_; }
  [[nodiscard]] double reference() const { return reference_; }  ///< the setting in the middle, at which sessions are compared
  struct Drift {
    double percent = 0;  ///< from the session before to the newest
    Interval band;
    bool clear = false;  ///< the band does not hold 0
    std::optional<double> per_day, per_day_error;  ///< per cent, over all sessions; from three sessions on with its error
  };
  [[nodiscard]] const std::optional<Drift>& drift() const { return drift_; }
  /// The newest session's pull is off by more than the tolerance, or its band reaches beyond it.
  enum class State { good, in_doubt, beyond };
  [[nodiscard]] State state() const { return state_; }

  struct Due {
    UnixMs at = 0;
    bool by_drift = false;  ///< not by age alone
  };
  /// When to check again: when the error and twice its uncertainty, moved on by the drift seen, reach the tolerance, and at the latest after
  /// the longest time; none where no reading says when it was taken.
  [[nodiscard]] const std::optional<Due>& due() const { return due_; }
  [[nodiscard]] const CalibrationOptions& options() const { return options_; }
  [[nodiscard]] std::size_t used() const { return straight_.count(); }

 private:
  Calibration(LineFit straight, CalibrationOptions options) : straight_(std::move(straight)), options_(options) {}
  void look_for_bend(std::span<const double> set, std::span<const double> pulled);
  void look_for_drift();

  LineFit straight_;
  std::optional<LineFit> bent_;
  std::optional<double> bend_chance_, misfit_chance_;
  bool is_bent_ = false;
  std::vector<Session> sessions_;
  double reference_ = 0;
  std::optional<Drift> drift_;
  State state_ = State::good;
  std::optional<Due> due_;
  CalibrationOptions options_;
};

/// "good", "in_doubt", "beyond".
[[nodiscard]] std::string_view name_of(Calibration::State state);

}  // namespace weavelog
