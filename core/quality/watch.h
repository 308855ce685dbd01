#pragma once
// The charts that watch a room while it strings: each racket by itself, and the moving average of each machine and each stringer.
//
// Design: every chart gives a false alarm once in 370 rackets of its own, the published rate of three-sigma limits (e-Handbook 6.3.2). The
// average has weight 0.2 and points beyond three sigmas count as three, so that one bad racket, which its own chart finds, does not
// accuse a machine. What is found by that, for independent normal readings: core/quality/run_length.h; measured: weavelog-bench --only quality.

#include <map>
#include <string>
#include <vector>

#include "core/quality/charts.h"

namespace weavelog {

struct WatchDesign {
  double scatter = 1.75;  ///< per cent, of one reading
  double width = 3;       ///< of a racket by itself, in scatters
  EwmaDesign average{0.2, 2.846, 3, false};
};

/// Who or what a chart is of.
enum class Watched { racket, machine, stringer };
/// "racket", "machine", "stringer".
[[nodiscard]] std::string_view name_of(Watched watched);

struct WatchAlarm {
  Watched watched = Watched::racket;
  std::string name;      ///< of the machine or stringer; "" of a racket
  double percent = 0;    ///< the racket's deviation; of a machine or stringer the estimate of how far it has moved
  Interval band;         ///< 95 % of that
  std::size_t rackets = 0;  ///< that the estimate is of
};

class RoomWatch {
 public:
  explicit RoomWatch(const WatchDesign& design) : design_(design) {}

  /// Takes a racket in (deviation in per cent, how many times as uncertain as one reading it is) and tells what signals. A chart that
  /// signalled begins anew. Names may be "": then nobody's average is moved.
  [[nodiscard]] std::vector<WatchAlarm> add(const std::string& stringer, const std::string& machine, double percent, double doubt = 1);
  /// After a machine was mended or corrected, or a stringer told: their average begins anew.
  void restart(Watched watched, const std::string& name);

  struct Average {
    double value = 0, limit = 0;  ///< per cent
    std::size_t points = 0;
  };
  /// Where an average stands; none if nothing came yet.
  [[nodiscard]] std::optional<Average> average(Watched watched, const std::string& name) const;
  [[nodiscard]] const WatchDesign& design() const { return design_; }

 private:
  struct Line {
    Ewma average;
    std::vector<double> points;  // in scatters, since it began
  };
  void take(Watched watched, const std::string& name, double z, std::vector<WatchAlarm>& alarms);
  [[nodiscard]] const std::map<std::string, Line>& lines(Watched watched) const { return watched == Watched::machine ? machines_ : stringers_; }

  WatchDesign design_;
  std::map<std::string, Line> machines_, stringers_;
};

}  // namespace weavelog
