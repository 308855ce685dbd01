#include "core/quality/readings.h"

#include <algorithm>
#include <cmath>

#include "core/base/text.h"
#include "core/plan/day_tables.h"
#include "core/quality/charts.h"
#include "core/quality/measured.h"

namespace weavelog {
namespace {

double median_of(std::vector<double> values) {
  const std::size_t middle = values.size() / 2;
  std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(middle), values.end());
  const double upper = values[middle];
  if (values.size() % 2 == 1) return upper;
  return (upper + *std::max_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(middle))) / 2;
}

struct Kind {
  std::vector<double> ratios;
  double median = 0;
};

Deviation against_kind(double ratio, const Kind& kind) {
  // The median of n normal readings is about sqrt(pi / 2n) of their scatter uncertain.
  const double n = static_cast<double>(kind.ratios.size());
  return {Against::kind, 100 * (ratio / kind.median - 1), std::sqrt(1 + 1.5708 / n), kind.ratios.size()};
}

/// "90s", "20min", "2h", "3d".
std::optional<double> seconds_of(std::string_view text) {
  static constexpr std::pair<std::string_view, double> units[] = {{"s", 1}, {"min", 60}, {"h", 3600}, {"d", 86'400}};
  const std::size_t end = std::min(text.find_first_not_of("0123456789."), text.size());
  const auto number = Decimal::parse(text.substr(0, end));
  if (!number) return std::nullopt;
  const std::string_view unit = trimmed(text.substr(end));
  for (const auto& one : units)
    if (unit == one.first) return number->to_double() * one.second;
  return std::nullopt;
}

Outcome<> read_age(const PlanTable& table, const CsvRow& row, StrungReading& one) {
  if (const std::string after = table.cell(row, "after"); !after.empty()) {
    one.after = seconds_of(after);
    if (!one.after) return table.wrong(row, "after", "'" + shortened(after, 30) + "' is no time since stringing", "write 90s, 20min, 2h or 3d");
  }
  one.material = table.cell(row, "material");
  for (const auto& [column, into] : {std::pair{"pre_stretch", &one.pre_stretch}, std::pair{"temperature", &one.temperature}})
    if (const std::string text = table.cell(row, column); !text.empty()) {
      const auto number = Decimal::parse(text);
      if (!number) return table.wrong(row, column, "'" + shortened(text, 30) + "' is no number", "write 10 for ten per cent or degrees");
      *into = number->to_double();
    }
  return {};
}

}  // namespace

Outcome<> plausible_reading(double value, double expected) {
  const double ratio = value / expected;
  if (ratio < 1.5 && ratio > 1 / 1.5) return {};
  struct Mistaken {
    double factor;
    const char* words;
  };
  static constexpr Mistaken known[] = {{2.20462, "pounds for kilograms"}, {9.80665, "newtons for kilograms"}, {4.44822, "newtons for pounds"}};
  std::string what = "this is " + (ratio >= 0.01 && ratio <= 1000 ? Decimal::rounded(ratio, ratio < 1 ? 2 : 1).text() : std::string("far from a hundredth to a thousand")) +
                     " times what was to be expected";
  for (const Mistaken& one : known) {
    if (std::fabs(ratio / one.factor - 1) < 0.25) what += ", as if in " + std::string(one.words);
    if (std::fabs(ratio * one.factor - 1) < 0.25) what += ", as if the unit were mistaken the other way (" + std::string(one.words) + ")";
  }
  return fail(FaultCode::bad_input, std::move(what), {}, "check the unit and the racket, and read it again");
}

Outcome<ReadingTable> read_strung(std::string_view bytes, std::string_view source, const std::string& zone) {
  const auto text = table_text(bytes, source);
  if (!text) return fail(text.error());
  const auto table = PlanTable::read(*text, source, {"reading"});
  if (!table) return fail(table.error());
  ReadingTable out;
  bool wanted_seen = false;
  std::size_t timed = 0;
  for (const CsvRow& row : table->rows()) {
    StrungReading one;
    const auto value = measured(*table, row, "reading", "unit");
    if (!value) return fail(value.error());
    const auto brought = in_unit(*table, row, "reading", *value, out.unit, out.readings.empty());
    if (!brought) return fail(brought.error());
    one.value = *brought;
    if (!table->cell(row, "wanted").empty()) {
      const auto wanted = measured(*table, row, "wanted", "wanted_unit");
      if (!wanted) return fail(wanted.error());
      const auto made = in_unit(*table, row, "wanted", *wanted, out.wanted_unit, !wanted_seen);
      if (!made) return fail(made.error());
      one.wanted = *made;
      wanted_seen = true;
    }
    one.racket = table->cell(row, "racket"), one.setup = table->cell(row, "setup"), one.stringer = table->cell(row, "stringer");
    one.machine = table->cell(row, "machine"), one.frame = table->cell(row, "frame"), one.string = table->cell(row, "string");
    one.kind = table->cell(row, "kind");
    const auto at = moment_of(*table, row, zone);
    if (!at) return fail(at.error());
    one.at = *at;
    if (one.at) ++timed;
    if (timed != 0 && timed != out.readings.size() + 1)
      return table->wrong(row, "at", "some rows say when they were read and some do not", "say it in all rows, or in none that then stand in order");
    if (auto aged = read_age(*table, row, one); !aged) return fail(aged.error());
    one.place = table->place(row, "reading");
    out.readings.push_back(std::move(one));
  }
  if (out.readings.empty()) return fail(FaultCode::bad_input, "there are no readings", std::string(source), "give a row for each racket");
  std::stable_sort(out.readings.begin(), out.readings.end(), [](const StrungReading& a, const StrungReading& b) { return a.at < b.at; });
  return out;
}

Outcome<std::vector<Deviation>> deviations_of(const ReadingTable& table, const DeviationOptions& options) {
  const double scatter = options.scatter > 0 ? options.scatter : kUsualScatter;
  const auto may = [&](Against one) { return !options.only || *options.only == one; };
  const bool force_wanted = is_force(table.wanted_unit) && !(is_force(table.unit) && options.only == Against::wanted);
  const auto across = unit_factor(table.wanted_unit, table.unit);
  std::map<std::string, Kind> kinds;
  for (const StrungReading& one : table.readings)
    if (one.wanted && !one.kind.empty() && !one.age_unknown) kinds[one.kind].ratios.push_back(one.value / *one.wanted);
  for (auto& kind : kinds) kind.second.median = median_of(kind.second.ratios);
  struct Setup {
    double sum = 0;
    std::size_t count = 0;
  };
  std::map<std::string, Setup> setups;
  std::vector<Deviation> out;
  for (const StrungReading& one : table.readings) {
    Deviation deviation;
    if (one.age_unknown) {
      out.push_back(deviation);
      continue;
    }
    Setup* setup = one.setup.empty() ? nullptr : &setups[one.setup];
    if (one.wanted && across && !force_wanted && may(Against::wanted)) {
      deviation = {Against::wanted, 100 * (one.value / (*one.wanted * *across) - 1), 1, 0};
    } else if (one.wanted && !one.kind.empty() && may(Against::kind) && kinds[one.kind].ratios.size() >= kFewestOfKind) {
      deviation = against_kind(one.value / *one.wanted, kinds[one.kind]);
    } else if (setup != nullptr && may(Against::setup) && setup->count >= kFewestOfSetup) {
      const double n = static_cast<double>(setup->count);
      deviation = {Against::setup, 100 * (one.value / (setup->sum / n) - 1), std::sqrt(1 + 1 / n), setup->count};
    }
    if (deviation.against != Against::nothing && one.aged_sd > 0) deviation.doubt = std::hypot(deviation.doubt, one.aged_sd / scatter);
    const double expected = 1 / (1 + deviation.percent / 100);
    if (deviation.against != Against::nothing)
      if (auto plausible = plausible_reading(1, expected); !plausible) {
        Fault fault = plausible.error();
        fault.where = one.place.empty() ? one.racket : one.place;
        return fail(std::move(fault));
      }
    if (setup != nullptr && (deviation.against != Against::setup || std::fabs(deviation.percent) <= 3 * scatter * deviation.doubt))
      setup->sum += one.value, ++setup->count;
    out.push_back(deviation);
  }
  return out;
}

Scatter scatter_of(std::span<const StrungReading> readings, std::span<const Deviation> deviations) {
  std::map<std::pair<std::string, std::string>, double> last;
  std::vector<double> ranges;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    if (deviations[i].against == Against::nothing) continue;
    const double now = deviations[i].percent / deviations[i].doubt;
    const auto [found, added] = last.emplace(std::pair(readings[i].stringer, readings[i].machine), now);
    if (!added) {
      ranges.push_back(std::fabs(now - found->second));
      found->second = now;
    }
  }
  if (ranges.size() < kSettledLimits) return {kUsualScatter, 0};
  // The median of |difference of two normal readings| is 0.6745 sqrt(2) of their scatter.
  const double sigma = median_of(ranges) / 0.9538725524;
  return sigma > 0 ? Scatter{sigma, ranges.size() + last.size()} : Scatter{kUsualScatter, 0};
}

}  // namespace weavelog
