#include "tests/bench/workload/table.h"

#include <algorithm>
#include <cstdio>
#include <functional>
#include <optional>

#include "tests/bench/report.h"

namespace weavelog::bench {
namespace {

using JsonLine = boost::json::object;

std::string text_at(const JsonLine& line, const char* key) {
  const auto* held = line.if_contains(key);
  return held != nullptr && held->is_string() ? std::string(held->as_string()) : std::string();
}

std::string who(const JsonLine& line) {
  return text_at(line, "peer") + ":" + text_at(line, "layout");
}

std::string rounded(double value) {
  char text[32];
  std::snprintf(text, sizeof text, value >= 100 ? "%.0f" : value >= 10 ? "%.1f" : "%.2f", value);
  return text;
}
std::string rate(double value) {
  if (value >= 1e6) return rounded(value / 1e6) + " M";
  return value >= 10'000 ? rounded(value / 1e3) + " k" : rounded(value);
}
std::string bytes(double value) {
  if (value >= 1e6) return rounded(value / 1e6) + " MB";
  return value >= 10'000 ? rounded(value / 1e3) + " kB" : rounded(value) + " B";
}
std::string plain(double value) {
  return rounded(value);
}

struct Column {
  const char* title;
  const char* scenario;
  const char* key;
  std::string (*show)(double);
  const char* mode = nullptr;
};

/// What a size is measured in.
std::vector<Column> columns_of(const std::string& size) {
  if (size == "W4")
    return {{"W4 met before, ms", "W4", "ms", plain},
            {"bytes", "W4", "bytes", bytes},
            {"of which greeting", "W4", "greetingBytes", bytes},
            {"never met, ms", "W4", "msAnew", plain},
            {"bytes", "W4", "bytesAnew", bytes},
            {"peak RSS", "W4", "rss", bytes}};
  if (size.empty())
    return {{"reconcile 1,000,000 books, 10 changed, ms", "W4r", "ms", plain},
            {"bytes", "W4r", "bytes", bytes},
            {"round trips", "W4r", "roundTrips", plain},
            {"RSS of one side", "W4r", "rssOneSide", bytes},
            {"peak, both sides, making them", "W4r", "rss", bytes}};
  return {{"W1 actions/s", "W1", "actionsPerS", rate, "nosync"},
          {"with two connections", "W1", "actionsPerS", rate, "two"},
          {"with fdatasync", "W1", "actionsPerS", rate, "sync"},
          {"on disk", "W1", "disk", bytes, "nosync"},
          {"W2 field writes/s", "W2", "writesPerS", rate},
          {"sender, ms", "W2", "exportMs", plain},
          {"bytes", "W2", "bytes", bytes},
          {"W3 ms", "W3", "ms", plain},
          {"bytes", "W3", "bytes", bytes},
          {"second, ms", "W3", "ms2", plain},
          {"both answers", "W3", "both", plain},
          {"W5 ms", "W5", "ms", plain},
          {"peak RSS", "", "rss", bytes}};
}

std::optional<double> number_at(const JsonLine& line, const std::string& key) {
  const auto* held = line.if_contains(key);
  if (key == "both") {
    const auto* conflicts = line.if_contains("conflicts");
    held =
        conflicts != nullptr && conflicts->is_object() ? conflicts->as_object().if_contains("both") : nullptr;
  }
  if (held == nullptr || !held->is_number()) return std::nullopt;
  return held->to_number<double>();
}

std::string cell(const std::vector<JsonLine>& lines, const std::string& whose, const std::string& size,
                 const Column& column) {
  Runs runs;
  std::string trouble;
  for (const JsonLine& line : lines) {
    if (who(line) != whose || text_at(line, "size") != size) continue;
    if (*column.scenario != 0 && text_at(line, "scenario") != column.scenario) continue;
    // The harness names the mode of every scenario; only W1 differs by it.
    if (column.mode != nullptr && text_at(line, "mode") != column.mode) continue;
    if (line.contains("failed")) trouble = "failed";
    const auto* ok = line.if_contains("ok");
    if (ok != nullptr && ok->is_bool() && !ok->as_bool()) trouble = "wrong";
    if (const auto value = number_at(line, column.key)) runs.values.push_back(*value);
  }
  if (!trouble.empty()) return trouble;
  if (runs.values.empty()) return "";
  return column.show(std::string_view(column.key) == "rss" ? runs.quantile(1) : runs.median());
}

}  // namespace

std::string table_of(const std::vector<JsonLine>& lines) {
  std::string out;
  std::vector<std::string> sizes, names;
  const auto note = [](std::vector<std::string>& list, const std::string& one) {
    if (std::find(list.begin(), list.end(), one) == list.end()) list.push_back(one);
  };
  for (const JsonLine& line : lines) {
    if (text_at(line, "scenario") == "tcp") continue;
    note(sizes, text_at(line, "size"));
    note(names, who(line));
  }
  for (const std::string& size : sizes) {
    const auto columns = columns_of(size);
    out += "\n| " + (size.empty() ? std::string("reconciliation") : "size " + size) + " |";
    for (const Column& column : columns) out += std::string(" ") + column.title + " |";
    out += "\n| --- |";
    for (std::size_t i = 0; i < columns.size(); ++i) out += " ---: |";
    out += "\n";
    for (const std::string& name : names) {
      std::string row;
      bool any = false;
      for (const Column& column : columns) {
        const std::string text = cell(lines, name, size, column);
        any = any || !text.empty();
        row += " " + text + " |";
      }
      if (any) out += "| " + name + " |" + row + "\n";
    }
  }
  return out;
}

}  // namespace weavelog::bench
