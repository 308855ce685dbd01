#pragma once
// What the bench says: one row a figure, as a table for people or as JSON lines for programs.

#include <chrono>
#include <optional>
#include <string>
#include <vector>

namespace weavelog::bench {

/// The values of several runs of one figure.
struct Runs {
  std::vector<double> values;

  [[nodiscard]] double median() const;
  /// p between 0 and 1, by nearest rank.
  [[nodiscard]] double quantile(double p) const;
  /// Highest less lowest, as a part of the median: how far runs lie apart.
  [[nodiscard]] double spread() const;
};

struct Figure {
  std::string bench;
  std::string metric;
  std::string unit;
  Runs runs;
  Runs reference;      ///< of what it is measured beside, in the same run; empty if there is none
  std::string target;  ///< what is to be reached, as text; empty if nothing is
  std::string beside = "plain SQLite";  ///< what the reference is
};

class Report {
 public:
  explicit Report(bool json) : json_(json) {}
  /// Says it at once, so that a long run can be watched.
  void say(const Figure& figure);
  void say(std::string bench, std::string metric, std::string unit, double value, std::string target = {});

 private:
  bool json_;
  std::string last_bench_;
};

/// Wall time of what runs between making it and asking.
class Stopwatch {
 public:
  [[nodiscard]] double seconds() const {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin_).count();
  }
  [[nodiscard]] double milliseconds() const { return seconds() * 1000; }

 private:
  std::chrono::steady_clock::time_point begin_ = std::chrono::steady_clock::now();
};

/// A line of /proc/PID/status in megabytes ("VmRSS", "VmHWM"); 0 if there is none. `pid` 0: this process.
[[nodiscard]] double memory_mb(const char* line, int pid = 0);

}  // namespace weavelog::bench
