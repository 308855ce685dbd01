#include "core/plan/forecast.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <map>

#include "core/plan/chance.h"
#include "core/plan/meeting_odds.h"

using namespace weavelog;

namespace {

Forecast forecast(const ForecastInput& input) {
  auto made = forecast_of(input);
  if (!made) FAIL(made.error().message());
  return std::move(*made);
}

/// A draw of which the first round is tomorrow, one round a day, and the room's days before it.
struct Event {
  std::vector<double> means, ratings;
  ForecastInput input;
  std::array<double, 24> hours{};  // as they are
};

constexpr std::size_t kPlayers = 64, kRounds = 6;

Event event_of(std::uint64_t number) {
  Chance chance(number);
  Event out;
  out.input.luck = number;
  std::vector<BracketLine> lines(kPlayers);
  const double room = 1.5 + 1.5 * chance.uniform();
  for (std::size_t i = 0; i < kPlayers; ++i) {
    lines[i].player = "player " + std::to_string(i + 1);
    lines[i].rating = 1500 + 200 * chance.normal();
    out.ratings.push_back(*lines[i].rating);
    out.means.push_back(room * chance.gamma(5) / 5);
  }
  const auto bracket = Bracket::make(lines);
  REQUIRE(bracket);
  const auto win = chances_by_rating(*bracket);
  REQUIRE(win);
  const MeetingOdds odds(*bracket, *win);
  for (std::size_t round = 1; round <= kRounds; ++round) out.input.days.push_back("day " + std::to_string(round));
  for (std::size_t i = 0; i < kPlayers; ++i) {
    ForecastPlayer player{lines[i].player, "singles", {}};
    for (std::size_t round = 1; round <= kRounds; ++round) player.chances.push_back(std::min(1.0, odds.reaches(i, static_cast<int>(round))));
    player.matches = static_cast<double>(chance.below(6));
    for (double match = 0; match < player.matches; ++match) player.rackets += static_cast<double>(chance.poisson(out.means[i]));
    player.string = i % 3 == 0 ? "Tarnbrook Silk" : "Velmora Round";
    out.input.players.push_back(player);
  }
  double sum = 0;
  for (int hour = 8; hour < 20; ++hour) sum += out.hours[static_cast<std::size_t>(hour)] = chance.gamma(hour < 12 ? 4 : 1.5);
  for (double& hour : out.hours) hour /= sum;
  for (std::size_t hour = 0; hour < 24; ++hour) out.input.taken_in[hour] = static_cast<double>(chance.poisson(120 * out.hours[hour]));
  return out;
}

/// What then came: rackets by day and hour, and metres of the first string.
struct Came {
  std::array<std::array<double, 24>, kRounds> rackets{};
  double metres = 0;
};

Came played(const Event& event, std::uint64_t number) {
  Chance chance(number, 7);
  Came out;
  std::vector<std::size_t> in(kPlayers);
  for (std::size_t i = 0; i < kPlayers; ++i) in[i] = i;
  for (std::size_t day = 0; day < kRounds; ++day) {
    for (const std::size_t i : in) {
      const auto count = static_cast<double>(chance.poisson(event.means[i]));
      double left = chance.uniform();
      std::size_t hour = 0;
      while (hour < 23 && (left -= event.hours[hour]) > 0) ++hour;
      out.rackets[day][hour] += count;
      if (i % 3 == 0) out.metres += 12 * count;
    }
    std::vector<std::size_t> on;
    for (std::size_t match = 0; match < in.size(); match += 2) {
      const double win = 1 / (1 + std::pow(10.0, (event.ratings[in[match + 1]] - event.ratings[in[match]]) / 400));
      on.push_back(chance.uniform() < win ? in[match] : in[match + 1]);
    }
    in = on;
  }
  return out;
}

/// How often values leave their bands. Counts are whole, so that a bound itself belongs to neither side for sure: fewer than one of ten may be
/// beyond it, and not fewer than one of ten on it or beyond.
struct Coverage {
  double below = 0, above = 0, reaching = 0, all = 0;
  void add(const Band& band, double value) {
    below += value < band.low;
    above += value > band.high;
    reaching += value >= band.high;
    all += 1;
  }
  void holds(const char* what, double margin) const {
    INFO(what << ": below " << below / all << ", above " << above / all << ", on it or above " << reaching / all);
    CHECK(below / all <= 0.1 + margin);
    CHECK(above / all <= 0.1 + margin);
    CHECK(reaching / all >= 0.1 - margin);
  }
};

}  // namespace

TEST_CASE("bands hold what they say of events that are played") {
  Coverage total, by_day, by_hour, metres;
  double error = 0, sum = 0;
  constexpr std::uint64_t kEvents = 60;
  for (std::uint64_t number = 1; number <= kEvents; ++number) {
    const Event event = event_of(number);
    const Forecast said = forecast(event.input);
    const Came came = played(event, number);
    double all = 0;
    for (std::size_t day = 0; day < kRounds; ++day) {
      double of_day = 0;
      for (std::size_t hour = 8; hour < 20; ++hour) {
        of_day += came.rackets[day][hour];
        if (day < 3) by_hour.add(said.days[day].by_hour[hour], came.rackets[day][hour]);
      }
      by_day.add(said.days[day].rackets, of_day);
      all += of_day;
    }
    total.add(said.rackets, all);
    error += all - said.rackets.mean, sum += all;
    for (const StringNeed& need : said.strings)
      if (need.string == "Tarnbrook Silk") metres.add(need.metres, came.metres);
  }
  // Of 60 events one standard error is 4 per cent; days and hours are more, though not by themselves.
  total.holds("total", 0.08);
  metres.holds("metres", 0.08);
  by_day.holds("day", 0.03);
  by_hour.holds("hour", 0.02);
  CHECK(std::abs(error / sum) < 0.03);
}

TEST_CASE("of a draw as many play as there are places, and the winner comes every day") {
  ForecastInput input;
  input.days = {"semi-finals", "final"};
  for (int i = 0; i < 4; ++i) input.players.push_back({"p" + std::to_string(i), "singles", {1, i == 0 ? 1.0 : i == 1 ? 0.0 : 0.5}, 1e3, 3e3, "Silk"});
  const Forecast said = forecast(input);
  CHECK(said.days[0].rackets.mean == Approx(12).margin(0.4));
  CHECK(said.days[1].rackets.mean == Approx(6).margin(0.3));
  CHECK(said.rackets.mean == Approx(18).margin(0.5));
  // Two finalists exactly: nothing varies but the number of rackets that each brings (Poisson of 6: deviation 2.4).
  CHECK(said.days[1].rackets.high - said.days[1].rackets.low <= 7);
  REQUIRE(said.strings.size() == 1);
  CHECK(said.strings[0].metres.mean == Approx(12 * said.rackets.mean));
  CHECK(said.rackets_a_match == Approx(3).margin(0.01));
}

TEST_CASE("without history two rackets a match are taken, mostly in the morning") {
  ForecastInput input;
  input.days = {"Monday"};
  for (int i = 0; i < 40; ++i) input.players.push_back({"p" + std::to_string(i), "", {1}});
  const Forecast said = forecast(input);
  CHECK(said.rackets_a_match == 2);
  CHECK(said.rackets.mean == Approx(80).margin(8));
  CHECK(said.rackets.low < 70);
  CHECK(said.rackets.high > 90);
  double morning = 0;
  for (std::size_t hour = 0; hour < 24; ++hour) {
    if (hour >= 8 && hour < 11) morning += said.days[0].by_hour[hour].mean;
    if (hour < 8 || hour >= 20) CHECK(said.days[0].by_hour[hour].mean == 0);
  }
  CHECK(morning == Approx(said.rackets.mean / 2).epsilon(0.1));
  CHECK(said.strings.empty());
}

TEST_CASE("benches are enough for the work, and one less is not") {
  // Sixty rackets of 30 minutes that all come at nine, three hours each, 50 minutes of an hour at the machine: 60 x 30 / (4 x 51) = 8.8.
  ForecastInput input;
  input.days = {"Monday"};
  input.at_work = 0.85;
  for (int i = 0; i < 60; ++i) input.players.push_back({"p" + std::to_string(i), "", {1}, 9e3, 9e3, "", 12, 30});
  input.taken_in[9] = 1e6;
  const Forecast said = forecast(input);
  // Ten per cent above the mean of 60 rackets comes nine times of ten: Poisson, deviation 7.7, so 70 rackets and 10.3 benches.
  CHECK(said.days[0].benches == Approx(11).margin(1));
  CHECK(said.days[0].minutes.mean == Approx(1800).epsilon(0.05));
  CHECK(said.days[0].benches_by_hour[9] >= said.days[0].benches);
  CHECK(said.days[0].benches_by_hour[14] == 0);
}

TEST_CASE("a forecast that can't be is refused, with the place") {
  ForecastInput good;
  good.days = {"Monday", "Tuesday"};
  good.players = {{"Ilse", "singles", {1, 0.5}}, {"Ana", "singles", {1, 0.5}}, {"Bo", "doubles", {1, 1}}};
  const auto said = [&](const std::function<void(ForecastInput&)>& change) {
    ForecastInput input = good;
    change(input);
    const auto made = forecast_of(input);
    return made ? std::string("no fault") : made.error().message();
  };
  CHECK(said([](ForecastInput&) {}) == "no fault");
  CHECK(said([](ForecastInput& in) { in.days.clear(); }).find("no day") != std::string::npos);
  CHECK(said([](ForecastInput& in) { in.players[1].chances[1] = 1.2; }).find("player Ana, day Tuesday: a chance is from 0 to 1") !=
        std::string::npos);
  CHECK(said([](ForecastInput& in) { in.players[1].chances[1] = std::nan(""); }).find("player Ana") != std::string::npos);
  CHECK(said([](ForecastInput& in) { in.players[1].chances.pop_back(); }).find("1 chances for 2 days") != std::string::npos);
  CHECK(said([](ForecastInput& in) { in.players[1].name = "Ilse"; }).find("twice in draw singles") != std::string::npos);
  CHECK(said([](ForecastInput& in) { in.players.push_back({"Cy", "singles", {1, 1}}); }).find("not together") != std::string::npos);
  CHECK(said([](ForecastInput& in) { in.players[0].rackets = -1; }).find("history") != std::string::npos);
  CHECK(said([](ForecastInput& in) { in.players[0].matches = 1e-6, in.players[0].rackets = 9e4; }).find("50 rackets a match") != std::string::npos);
  CHECK(said([](ForecastInput& in) { in.players[0].minutes = 0; }).find("player Ilse") != std::string::npos);
  CHECK(said([](ForecastInput& in) { in.opens = 22; }).find("closes before it opens") != std::string::npos);
  CHECK(said([](ForecastInput& in) { in.taken_in[3] = -1; }).find("hour") != std::string::npos);
  CHECK(said([](ForecastInput& in) { in.players.clear(); }) == "no fault");
}

TEST_CASE("the same forecast is made again") {
  const Event event = event_of(3);
  CHECK(forecast(event.input).rackets.mean == forecast(event.input).rackets.mean);
}
