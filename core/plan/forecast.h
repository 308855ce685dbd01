#pragma once
// Rackets to come over the rest of an event, by day and hour; the benches and the string that they need; with bands, by playing the days to
// come many times over.
//
// Assumptions, our own: a player brings a number of rackets for a match that varies by chance around a mean of their own (Poisson); the means
// vary among players (gamma), and one with little history counts as the room. All rackets of a match come together, on its day, at an hour by
// the room's history. Of a draw, listed from top to bottom, as many play a day as the chances add up to, so that of two who meet one goes on;
// who is in no draw plays or not by themselves. Without any history: two rackets a match, half of them in the first three hours (common
// practice, no source).

#include <array>
#include <string>
#include <vector>

#include "core/base/outcome.h"

namespace weavelog {

struct ForecastPlayer {
  std::string name;
  std::string draw;             ///< those of one draw stand together, from top to bottom; "": in none
  std::vector<double> chances;  ///< by day: that the player plays then
  double matches = 0;           ///< own history: matches played
  double rackets = 0;           ///< and rackets brought for them
  std::string string{};         ///< "" if not known
  double metres = 12;           ///< of that string, a racket: common practice, no source
  double minutes = 25;          ///< expected at the bench, a racket
};

struct ForecastInput {
  std::vector<std::string> days;        ///< their names, from the next one on
  std::vector<ForecastPlayer> players;
  std::array<double, 24> taken_in{};    ///< history: rackets by hour of the day
  int opens = 8, closes = 20;           ///< hours
  int within = 3;                       ///< hours after which a racket should be ready
  double at_work = 0.85;                ///< part of an hour that a stringer is at the machine
  std::uint64_t luck = 1;
};

/// Mean; and what is exceeded nine times of ten, one time of two, one time of ten.
struct Band {
  double mean = 0, low = 0, middle = 0, high = 0;
};

struct StringNeed {
  std::string string;
  Band metres;
};

struct ForecastDay {
  std::string day;
  Band rackets, minutes;
  std::array<Band, 24> by_hour{};
  std::array<int, 24> benches_by_hour{};  ///< enough nine times of ten for what came in the last hours (`within`)
  int benches = 0;                        ///< enough nine times of ten for every racket to be ready within `within` hours
  std::vector<StringNeed> strings;
};

struct Forecast {
  std::vector<ForecastDay> days;
  Band rackets;
  std::vector<StringNeed> strings;  ///< of all days, most first
  double rackets_a_match = 0;       ///< what the room's history says
};

/// Faults: bad_input, naming the player or the value (no days; a chance that is none; numbers that can't be; a player of a draw twice; more
/// than 5,000 players, 60 days or 200 strings).
[[nodiscard]] Outcome<Forecast> forecast_of(const ForecastInput& input);

}  // namespace weavelog
