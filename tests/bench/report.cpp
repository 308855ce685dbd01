#include "tests/bench/report.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <fstream>

namespace weavelog::bench {
namespace {

std::string shown_digits(double value) {
  char text[64];
  std::snprintf(text, sizeof text, value >= 100 ? "%.0f" : value >= 10 ? "%.1f" : "%.2f", value);
  return text;
}

}  // namespace

double Runs::median() const {
  return quantile(0.5);
}

double Runs::quantile(double p) const {
  if (values.empty()) return 0;
  std::vector<double> sorted = values;
  std::sort(sorted.begin(), sorted.end());
  const auto rank = static_cast<std::size_t>(std::ceil(p * static_cast<double>(sorted.size())));
  return sorted[std::min(std::max<std::size_t>(rank, 1), sorted.size()) - 1];
}

double Runs::spread() const {
  if (values.size() < 2 || median() == 0) return 0;
  const auto [low, high] = std::minmax_element(values.begin(), values.end());
  return (*high - *low) / median();
}

void Report::say(const Figure& figure) {
  const double value = figure.runs.median();
  const double reference = figure.reference.median();
  if (json_) {
    std::printf(R"({"bench":"%s","metric":"%s","value":%.6g,"unit":"%s")", figure.bench.c_str(),
                figure.metric.c_str(), value, figure.unit.c_str());
    if (reference > 0) std::printf(R"(,"reference":%.6g,"ratio":%.4g)", reference, value / reference);
    std::printf(R"(,"runs":%zu,"spread":%.3g)", figure.runs.values.size(), figure.runs.spread());
    if (!figure.target.empty()) std::printf(R"(,"target":"%s")", figure.target.c_str());
    std::printf("}\n");
  } else {
    if (figure.bench != last_bench_)
      std::printf("%s%s\n", last_bench_.empty() ? "" : "\n", figure.bench.c_str());
    std::printf("  %-46s %10s %-10s", figure.metric.c_str(), shown_digits(value).c_str(), figure.unit.c_str());
    if (reference > 0)
      std::printf(" %s %9s, ratio %5.2f", figure.beside.c_str(), shown_digits(reference).c_str(), value / reference);
    if (figure.runs.values.size() > 1)
      std::printf("  (%zu runs, spread %.0f %%)", figure.runs.values.size(), figure.runs.spread() * 100);
    if (!figure.target.empty()) std::printf("  [to reach: %s]", figure.target.c_str());
    std::printf("\n");
  }
  std::fflush(stdout);
  last_bench_ = figure.bench;
}

void Report::say(std::string bench, std::string metric, std::string unit, double value, std::string target) {
  say({std::move(bench), std::move(metric), std::move(unit), {{value}}, {}, std::move(target)});
}

double memory_mb(const char* line, int pid) {
  std::ifstream status("/proc/" + (pid == 0 ? std::string("self") : std::to_string(pid)) + "/status");
  std::string text;
  const std::string wanted = std::string(line) + ":";
  while (std::getline(status, text))
    if (text.starts_with(wanted)) return std::stod(text.substr(wanted.size())) / 1024;
  return 0;
}

}  // namespace weavelog::bench
