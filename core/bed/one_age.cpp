#include "core/bed/one_age.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace weavelog {
namespace {

Outcome<RelaxationCase> case_of(const StrungReading& reading) {
  RelaxationCase out{BedMaterial::synthetic_gut, reading.pre_stretch, reading.temperature};
  if (reading.material.empty()) return out;
  const auto material = material_from(reading.material);
  if (!material) {
    Fault fault = material.error();
    fault.where = reading.place;
    return fail(std::move(fault));
  }
  out.material = *material;
  return out;
}

double rising_of(const ReadingTable& table) { return table.unit == Unit::hertz ? 2 : 1; }

}  // namespace

std::optional<double> one_age_of(const ReadingTable& table) {
  std::vector<double> told;
  for (const StrungReading& one : table.readings)
    if (one.after) told.push_back(*one.after);
  if (told.empty()) return std::nullopt;
  std::nth_element(told.begin(), told.begin() + static_cast<std::ptrdiff_t>(told.size() / 2), told.end());
  return told[told.size() / 2];
}

RelaxationModel relaxation_of(std::span<const StrungReading> readings, double rising) {
  constexpr std::size_t kMostRackets = 300;
  std::map<std::string, std::vector<std::size_t>> of;
  for (std::size_t i = 0; i < readings.size(); ++i)
    if (readings[i].after && !readings[i].racket.empty()) of[readings[i].racket + "\x1f" + readings[i].setup].push_back(i);
  std::vector<RelaxationReading> over_time;
  std::size_t rackets = 0;
  for (const auto& [name, places] : of) {
    bool apart = false;
    for (const std::size_t place : places) apart = apart || *readings[place].after != *readings[places.front()].after;
    if (!apart || ++rackets > kMostRackets) continue;
    for (const std::size_t place : places)
      if (const auto what = case_of(readings[place]))
        over_time.push_back({name, *what, *readings[place].after, std::pow(readings[place].value, rising)});
  }
  auto fitted = RelaxationModel::fitted(over_time);
  return fitted ? std::move(*fitted) : RelaxationModel();
}

Outcome<ReadingAges> bring_to_one_age(ReadingTable& table, const RelaxationModel& relaxation) {
  ReadingAges out;
  const auto one_age = one_age_of(table);
  if (!one_age) {
    out.assumed = table.readings.size();
    return out;
  }
  const double rising = rising_of(table);
  for (StrungReading& one : table.readings) {
    if (!one.after) {
      one.age_unknown = true;
      ++out.unknown;
      continue;
    }
    const auto what = case_of(one);
    if (!what) return fail(what.error());
    const auto then = relaxation.left_at(*what, *one.after), at_one = relaxation.left_at(*what, *one_age);
    for (const auto* left : {&then, &at_one})
      if (!*left) {
        Fault fault = left->error();
        fault.where = one.place.empty() ? one.racket : one.place;
        return fail(std::move(fault));
      }
    // The loss a decade is what both share, so their doubts go together.
    const double factor = std::pow(at_one->left.value / then->left.value, 1 / rising);
    one.value *= factor;
    one.aged_percent = 100 * (factor - 1);
    one.aged_sd = 100 * std::abs(then->left.relative_sd - at_one->left.relative_sd) / rising;
    out.add(then->left.value);
  }
  return out;
}

Outcome<ReadingAges> bring_to_one_age(ReadingTable& table) {
  return bring_to_one_age(table, relaxation_of(table.readings, rising_of(table)));
}

}  // namespace weavelog
