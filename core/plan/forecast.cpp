#include "core/plan/forecast.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "core/plan/chance.h"

namespace weavelog {
namespace {

/// How often the days are played: less often where there are very many players and days, so that an answer never takes long.
std::size_t runs_of(const ForecastInput& input) {
  return std::clamp<std::size_t>(20'000'000 / std::max<std::size_t>(1, input.players.size() * input.days.size()), 200, 1000);
}

constexpr double kGuess = 2, kGuessMatches = 5;  // rackets a match, worth the history of so many matches

Outcome<> check(const ForecastInput& input) {
  if (input.days.empty()) return fail(FaultCode::bad_input, "there is no day to forecast", "days", "give at least one");
  if (input.days.size() > 60 || input.players.size() > 5000)
    return fail(FaultCode::bad_input, "there are more than 60 days or 5,000 players", "players", "forecast less at a time");
  if (input.opens < 0 || input.closes > 24 || input.opens >= input.closes)
    return fail(FaultCode::bad_input, "the room closes before it opens", "hours", "give hours from 0 to 24");
  if (input.within < 1 || input.within > 24 || !(input.at_work > 0.1 && input.at_work <= 1))
    return fail(FaultCode::bad_input, "what a bench can do can't be so", "benches", "give 1 to 24 hours, and a part of an hour up to 1");
  for (const double count : input.taken_in)
    if (!(count >= 0 && count < 1e9)) return fail(FaultCode::bad_input, "so many rackets can't have come", "hours", "correct the counts by hour");
  std::set<std::pair<std::string, std::string>> names;
  std::set<std::string> strings, draws;
  std::string draw;
  for (const ForecastPlayer& player : input.players) {
    const std::string place = "player " + player.name;
    if (player.name.empty()) return fail(FaultCode::bad_input, "a player has no name", "players", "give it");
    if (!names.emplace(player.draw, player.name).second)
      return fail(FaultCode::bad_input, "this player is there twice" + (player.draw.empty() ? std::string() : " in draw " + player.draw), place,
                  "leave one of the two out");
    if (!player.draw.empty() && player.draw != draw && !draws.insert(player.draw).second)
      return fail(FaultCode::bad_input, "draw " + player.draw + " is not together", place, "list each draw from top to bottom, one after the other");
    draw = player.draw;
    if (player.chances.size() != input.days.size())
      return fail(FaultCode::bad_input,
                  "there are " + std::to_string(player.chances.size()) + " chances for " + std::to_string(input.days.size()) + " days", place,
                  "give one a day");
    for (std::size_t day = 0; day < player.chances.size(); ++day)
      if (!(player.chances[day] >= 0 && player.chances[day] <= 1))
        return fail(FaultCode::bad_input, "a chance is from 0 to 1", place + ", day " + input.days[day], "correct it");
    if (!(player.matches >= 0 && player.matches < 10'000) || !(player.rackets >= 0 && player.rackets < 100'000))
      return fail(FaultCode::bad_input, "this history can't be", place, "check matches and rackets");
    if (player.rackets > 50 * player.matches && player.matches > 0)
      return fail(FaultCode::bad_input, "nobody brings more than 50 rackets a match", place, "check matches and rackets");
    if (!(player.metres >= 0 && player.metres <= 100) || !(player.minutes > 0 && player.minutes <= 720))
      return fail(FaultCode::bad_input, "a racket can't need so much string or time", place, "check metres and minutes");
    strings.insert(player.string);
  }
  if (strings.size() > 200) return fail(FaultCode::bad_input, "there are more than 200 strings", "players", "join their spellings");
  return {};
}

/// How unlike players are: the shape of the gamma of their means, by the likelihood of their histories; a little held to 4 (common practice,
/// no source: means of two players differ by half).
double shape_of(const std::vector<ForecastPlayer>& players, double mean) {
  double best = 4, best_likelihood = -1e300;
  for (const double shape : {0.5, 1.0, 2.0, 4.0, 8.0, 16.0, 32.0, 64.0}) {
    double sum = -0.5 * std::pow(std::log(shape / 4), 2);
    for (const ForecastPlayer& player : players) {
      if (player.matches <= 0) continue;
      const double rate = shape / mean;
      sum += std::lgamma(shape + player.rackets) - std::lgamma(shape) + shape * std::log(rate / (rate + player.matches)) +
             player.rackets * std::log(player.matches / (rate + player.matches));
    }
    if (sum > best_likelihood) best_likelihood = sum, best = shape;
  }
  return best;
}

/// The band of values, which are put into order.
Band band_of(std::vector<float>& values) {
  std::sort(values.begin(), values.end());
  const auto at = [&](double p) {
    const double place = p * static_cast<double>(values.size()) - 0.5;
    return static_cast<double>(values[static_cast<std::size_t>(std::clamp(std::lround(place), 0L, static_cast<long>(values.size()) - 1))]);
  };
  double sum = 0;
  for (const float value : values) sum += static_cast<double>(value);
  return {sum / static_cast<double>(values.size()), at(0.1), at(0.5), at(0.9)};
}

/// Picks along a list so that each is taken with its chance and as many are taken as the chances add up to (systematic sampling).
class Picker {
 public:
  explicit Picker(double start) : sum_(start) {}
  bool take(double chance) {
    const double before = std::floor(sum_);
    sum_ += chance;
    return std::floor(sum_ + 1e-12) > before + 1e-9;
  }

 private:
  double sum_;
};

class DaysToCome {
 public:
  explicit DaysToCome(const ForecastInput& input) : in_(input), runs_(runs_of(input)), days_(input.days.size()) {
    for (const ForecastPlayer& player : input.players) string_number_.emplace(player.string, 0);
    for (auto& [name, number] : string_number_) number = strings_++;
    rackets_.resize(runs_ * days_ * 24);
    minutes_.resize(runs_ * days_ * 24);
    metres_.resize(runs_ * days_ * strings_);
    double matches = 0, rackets = 0;
    for (const ForecastPlayer& player : input.players) if (player.matches > 0) ++known_, matches += player.matches, rackets += player.rackets;
    room_rackets_ = kGuess * kGuessMatches + rackets;
    room_matches_ = kGuessMatches + matches;
    shape_ = shape_of(input.players, room_rackets_ / room_matches_);
    // Chances to be still in: a player who may play later is in now.
    for (const ForecastPlayer& player : input.players) {
      std::vector<double> in = player.chances;
      for (std::size_t day = days_ - 1; day-- > 0;) in[day] = std::max(in[day], in[day + 1]);
      still_in_.push_back(std::move(in));
    }
  }

  void run(std::size_t number) {
    Chance chance(in_.luck, number);
    // What is not known well is drawn too: the room's mean, the hours.
    const double mean = room_rackets_ / room_matches_ * gamma_about_one(chance, 1 / (1 / room_rackets_ + 1 / (shape_ * (known_ + 1))));
    std::array<double, 24> hours{};
    double sum = 0;
    for (int hour = 0; hour < 24; ++hour) {
      const bool open = hour >= in_.opens && hour < in_.closes;
      const int early = std::min(3, in_.closes - in_.opens), late = in_.closes - in_.opens - early;
      const double guess = !open ? 0 : hour < in_.opens + early ? (late > 0 ? 5.0 : 10.0) / early : 5.0 / late;
      const auto h = static_cast<std::size_t>(hour);
      const double weight = guess + in_.taken_in[h];
      hours[h] = weight > 0 ? chance.gamma(weight) : 0;
      sum += hours[h];
    }
    for (double& hour : hours) hour /= sum;
    std::vector<double> means(in_.players.size());
    for (std::size_t i = 0; i < means.size(); ++i) {
      const ForecastPlayer& player = in_.players[i];
      const bool known = player.matches > 0;
      means[i] = chance.gamma(shape_ + (known ? player.rackets : 0)) / (shape_ / mean + player.matches);
    }
    std::vector<bool> in(in_.players.size(), true);
    for (std::size_t day = 0; day < days_; ++day) {
      std::string draw;
      Picker stays(chance.uniform()), plays(chance.uniform());
      for (std::size_t i = 0; i < in_.players.size(); ++i) {
        const ForecastPlayer& player = in_.players[i];
        if (player.draw.empty() || player.draw != draw) {
          stays = Picker(chance.uniform());
          plays = Picker(chance.uniform());
          draw = player.draw;
        }
        if (!in[i]) continue;
        const double before = day == 0 ? 1 : still_in_[i][day - 1];
        in[i] = before > 0 && stays.take(std::min(1.0, still_in_[i][day] / before));
        if (!in[i] || !plays.take(player.chances[day] / still_in_[i][day])) continue;
        const auto count = static_cast<float>(chance.poisson(means[i]));
        if (count == 0) continue;
        double left = chance.uniform();
        std::size_t hour = 0;
        while (hour < 23 && (left -= hours[hour]) > 0) ++hour;
        const std::size_t place = (number * days_ + day) * 24 + hour;
        rackets_[place] += count;
        minutes_[place] += count * static_cast<float>(player.minutes);
        metres_[(number * days_ + day) * strings_ + string_number_.at(player.string)] += count * static_cast<float>(player.metres);
      }
    }
  }

  [[nodiscard]] Forecast result() const {
    Forecast out;
    out.rackets_a_match = room_rackets_ / room_matches_;
    out.rackets = over_runs([&](std::size_t run) { return sum_of(rackets_, run * days_ * 24, days_ * 24); });
    for (std::size_t day = 0; day < days_; ++day) out.days.push_back(day_of(day));
    for (const auto& [name, number] : string_number_)
      if (!name.empty()) {
        const std::size_t string = number;  // a capture of a binding is refused by older compilers
        out.strings.push_back({name, over_runs([&](std::size_t run) {
          float sum = 0;
          for (std::size_t day = 0; day < days_; ++day) sum += metres_[(run * days_ + day) * strings_ + string];
          return sum;
        })});
      }
    std::stable_sort(out.strings.begin(), out.strings.end(), [](const StringNeed& a, const StringNeed& b) { return a.metres.mean > b.metres.mean; });
    return out;
  }

 private:
  static double gamma_about_one(Chance& chance, double shape) { return chance.gamma(shape) / shape; }
  static float sum_of(const std::vector<float>& values, std::size_t from, std::size_t count) {
    float sum = 0;
    for (std::size_t i = from; i < from + count; ++i) sum += values[i];
    return sum;
  }
  template <class Value>
  [[nodiscard]] Band over_runs(const Value& value) const {
    std::vector<float> values;
    for (std::size_t run = 0; run < runs_; ++run) values.push_back(value(run));
    return band_of(values);
  }

  [[nodiscard]] ForecastDay day_of(std::size_t day) const {
    ForecastDay out;
    out.day = in_.days[day];
    const auto at = [&](std::size_t run) { return (run * days_ + day) * 24; };
    out.rackets = over_runs([&](std::size_t run) { return sum_of(rackets_, at(run), 24); });
    out.minutes = over_runs([&](std::size_t run) { return sum_of(minutes_, at(run), 24); });
    const auto within = static_cast<std::size_t>(in_.within);
    const auto bench_hour = static_cast<float>(60 * in_.at_work);
    for (std::size_t hour = 0; hour < 24; ++hour) {
      out.by_hour[hour] = over_runs([&](std::size_t run) { return rackets_[at(run) + hour]; });
      const std::size_t first = hour + 1 >= within ? hour + 1 - within : 0;
      const Band load =
          over_runs([&](std::size_t run) { return sum_of(minutes_, at(run) + first, hour + 1 - first) / static_cast<float>(within) / bench_hour; });
      out.benches_by_hour[hour] = static_cast<int>(std::ceil(load.high - 1e-6));
    }
    // Whatever comes between two hours has to be done until so many hours after the later, and until the room closes.
    const Band benches = over_runs([&](std::size_t run) {
      float most = 0;
      for (std::size_t from = 0; from < 24; ++from) {
        float work = 0;
        for (std::size_t until = from; until < 24; ++until) {
          work += minutes_[at(run) + until];
          const std::size_t end = std::max(std::min(until + 1 + within, static_cast<std::size_t>(in_.closes)), from + 1);
          most = std::max(most, work / (bench_hour * static_cast<float>(end - from)));
        }
      }
      return most;
    });
    out.benches = static_cast<int>(std::ceil(benches.high - 1e-6));
    for (const auto& [name, number] : string_number_) {
      if (name.empty()) continue;
      const std::size_t string = number;
      const Band need = over_runs([&](std::size_t run) { return metres_[(run * days_ + day) * strings_ + string]; });
      if (need.mean > 0) out.strings.push_back({name, need});
    }
    return out;
  }

  const ForecastInput& in_;
  std::size_t runs_, days_, strings_ = 0;
  std::map<std::string, std::size_t> string_number_;
  double room_rackets_ = 0, room_matches_ = 0, shape_ = 4;
  double known_ = 0;  // players with a history
  std::vector<std::vector<double>> still_in_;  // by player and day
  std::vector<float> rackets_, minutes_;       // by run, day, hour
  std::vector<float> metres_;                  // by run, day, string
};

}  // namespace

Outcome<Forecast> forecast_of(const ForecastInput& input) {
  if (auto checked = check(input); !checked) return fail(checked.error());
  DaysToCome days(input);
  for (std::size_t run = 0; run < runs_of(input); ++run) days.run(run);
  return days.result();
}

}  // namespace weavelog
