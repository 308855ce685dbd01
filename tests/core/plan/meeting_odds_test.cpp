#include "core/plan/meeting_odds.h"

#include <boost/json.hpp>
#include <catch2/catch.hpp>
#include <chrono>
#include <fstream>
#include <random>
#include <sstream>

#include "tests/support/words.h"

using namespace weavelog;

namespace {

std::vector<BracketLine> lines_of(std::size_t size) {
  std::vector<BracketLine> out(size);
  for (std::size_t i = 0; i < size; ++i) out[i].player = "P" + std::to_string(i + 1);
  return out;
}

Bracket bracket_of(std::vector<BracketLine> lines, std::vector<BracketResult> results = {}) {
  auto made = Bracket::make(std::move(lines), results);
  if (!made) FAIL(made.error().message());
  return std::move(*made);
}

/// Bradley and Terry: the chances are as the strengths.
WinChance by_strength(std::vector<double> strength) {
  return [strength = std::move(strength)](std::size_t one, std::size_t other) { return strength[one] / (strength[one] + strength[other]); };
}

double fraction(const boost::json::value& text) {
  const std::string whole(text.as_string());
  const auto bar = whole.find('/');
  return bar == std::string::npos ? std::stod(whole) : std::stod(whole.substr(0, bar)) / std::stod(whole.substr(bar + 1));
}

boost::json::value published() {
  std::ifstream file(std::string(WEAVELOG_FIXTURES) + "/published/meeting_odds.json");
  std::stringstream text;
  text << file.rdbuf();
  return boost::json::parse(text.str());
}

}  // namespace

TEST_CASE("meeting odds are the exact ones of enumerated draws", "[published]") {
  const auto document = published();
  for (const auto& draw : document.at("draws").as_array()) {
    std::vector<BracketLine> lines;
    std::vector<double> strengths;
    for (const auto& strength : draw.at("strengths").as_array()) {
      strengths.push_back(strength.to_number<double>());
      lines.push_back({"P" + std::to_string(lines.size() + 1), strengths.back() == 0});
      if (lines.back().bye) lines.back().player.clear();
    }
    const Bracket bracket = bracket_of(lines);
    const MeetingOdds odds(bracket, by_strength(strengths));
    int round = 0;
    for (const auto& wins : draw.at("wins").as_array()) {
      ++round;
      for (std::size_t line = 0; line < lines.size(); ++line)
        CHECK(odds.reaches(line, round) == Approx(fraction(wins.at(line))).epsilon(1e-13).margin(1e-15));
    }
    CHECK(round == bracket.rounds() + 1);
    for (const auto& pair : draw.at("meet").as_array()) {
      const auto one = pair.at(0).to_number<std::size_t>() - 1, other = pair.at(1).to_number<std::size_t>() - 1;
      CHECK(Bracket::meeting_round(one, other) == pair.at(2).to_number<int>());
      CHECK(odds.meet(one, other) == Approx(fraction(pair.at(3))).epsilon(1e-13));
    }
  }
}

TEST_CASE("ratings make chances by Elo's formula", "[published]") {
  const auto document = published();
  for (const auto& pair : document.at("rating_difference").as_array()) {
    auto lines = lines_of(2);
    lines[0].rating = 1500 + pair.at(0).to_number<double>();
    lines[1].rating = 1500;
    const auto chance = chances_by_rating(bracket_of(lines));
    REQUIRE(chance);
    CHECK((*chance)(0, 1) == Approx(fraction(pair.at(1))).epsilon(1e-14));
  }
}

TEST_CASE("a large draw agrees with a simulation of it") {
  auto lines = lines_of(128);
  std::mt19937_64 random(26);
  for (auto& line : lines) line.rating = std::normal_distribution<double>(1500, 200)(random);
  for (const std::size_t bye : {1U, 126U, 65U}) lines[bye] = {"", true};
  const Bracket bracket = bracket_of(lines, {{1, 2}, {1, 5}, {1, 6}, {2, 5}});
  const auto chance = chances_by_rating(bracket);
  REQUIRE(chance);
  const MeetingOdds odds(bracket, *chance);

  constexpr int kRuns = 20'000;
  std::vector<std::vector<int>> reached(9, std::vector<int>(128));
  std::vector<int> played(128);
  std::uniform_real_distribution<double> uniform(0, 1);
  for (int run = 0; run < kRuns; ++run) {
    std::vector<std::size_t> in(128);
    for (std::size_t i = 0; i < 128; ++i) in[i] = i;
    for (int round = 1; round <= 7; ++round) {
      std::vector<std::size_t> on;
      for (std::size_t match = 0; match * 2 < in.size(); ++match) {
        const std::size_t one = in[2 * match], other = in[2 * match + 1];
        std::size_t winner = 0;
        if (const auto known = bracket.winner(round, match)) {
          winner = *known;
        } else {
          ++played[one], ++played[other];
          winner = uniform(random) < (*chance)(one, other) ? one : other;
        }
        on.push_back(winner);
        ++reached[static_cast<std::size_t>(round) + 1][winner];
      }
      in = on;
    }
  }
  int outside = 0;
  for (int round = 2; round <= 8; ++round)
    for (std::size_t line = 0; line < 128; ++line) {
      const double p = odds.reaches(line, round);
      const double error = std::sqrt(p * (1 - p) / kRuns);
      outside += std::abs(reached[static_cast<std::size_t>(round)][line] / double{kRuns} - p) > 4 * error + 1e-12;
    }
  CHECK(outside <= 2);  // of 896, four standard errors away
  for (std::size_t line = 0; line < 128; ++line) CHECK(odds.matches_left(line) == Approx(played[line] / double{kRuns}).margin(0.05));
  CHECK(odds.reaches(5, 3) == 1);
  CHECK(odds.reaches(4, 2) == 0);
}

TEST_CASE("every round has as many players as it has places") {
  auto lines = lines_of(64);
  for (std::size_t i = 0; i < 64; ++i) lines[i].seed = i % 4 == 0 ? std::optional<std::int64_t>(1 + static_cast<std::int64_t>(i) / 4) : std::nullopt;
  const Bracket bracket = bracket_of(lines, {{1, 0}, {1, 3}});
  const auto chance = chances_by_seed(bracket);
  REQUIRE(chance);
  for (const WinChance& one : {*chance, even_chances()}) {
    const MeetingOdds odds(bracket, one);
    for (int round = 1; round <= 7; ++round) {
      double sum = 0;
      for (std::size_t line = 0; line < 64; ++line) sum += odds.reaches(line, round);
      CHECK(sum == Approx(64 >> (round - 1)));
    }
    double matches = 0;
    for (std::size_t line = 0; line < 64; ++line) matches += odds.matches_left(line);
    CHECK(matches == Approx(2 * (63 - 2)));
  }
  CHECK((*chance)(0, 8) == Approx(0.75));  // seeds 1 and 3
}

TEST_CASE("what a draw can't be is named") {
  CHECK(fault_of(Bracket::make(lines_of(6))).find("2, 4, 8") != std::string::npos);
  CHECK(fault_of(Bracket::make(lines_of(512))).find("512") != std::string::npos);
  auto twice = lines_of(4);
  twice[3].player = "P1";
  CHECK(fault_of(Bracket::make(twice)).find("line 4 (P1)") != std::string::npos);
  auto seeds = lines_of(4);
  seeds[0].seed = seeds[2].seed = 1;
  CHECK(fault_of(Bracket::make(seeds)).find("seed 1") != std::string::npos);
  auto byes = lines_of(4);
  byes[2] = byes[3] = {"", true};
  CHECK(fault_of(Bracket::make(byes)).find("two byes") != std::string::npos);
  const auto with = [](std::vector<BracketResult> results) { return fault_of(Bracket::make(lines_of(8), results)); };
  CHECK(with({{4, 0}}).find("no round 4") != std::string::npos);
  CHECK(with({{1, 9}}).find("no line 10") != std::string::npos);
  CHECK(with({{2, 0}}).find("round 1, match 1") != std::string::npos);
  CHECK(with({{1, 0}, {1, 1}}).find("another winner") != std::string::npos);
  CHECK(with({{1, 0}, {1, 2}, {2, 1}}).find("lost in an earlier round") != std::string::npos);
  CHECK(with({{2, 0}, {1, 0}, {1, 2}}) == "no fault");  // however they were written down
  CHECK_FALSE(chances_by_rating(bracket_of(lines_of(4))));
  CHECK_FALSE(chances_by_seed(bracket_of(lines_of(4))));
}

TEST_CASE("draws and results are read from tables") {
  const auto lines = read_bracket("Line;Player;Seed;Rating\n2;bye;;\n1;Iria Lourençote;1;1810.5\n3;Nerea Ibañarte;;1700\n4;;;\n", "draw.csv");
  REQUIRE(lines);
  CHECK(lines->at(0).player == "Iria Lourençote");
  CHECK(lines->at(0).rating == 1810.5);
  CHECK(lines->at(1).bye);
  CHECK(lines->at(3).player.empty());
  const auto results = read_results("round,winner\n1,Nerea Ibañarte\n2,1\n", *lines, "results.csv");
  REQUIRE(results);
  CHECK(results->at(0).winner == 2);
  CHECK(results->at(1).winner == 0);
  const auto fault = [](const char* text) { return read_bracket(text, "draw.csv").error().message(); };
  CHECK(fault("player\nX\n").find("line") != std::string::npos);
  CHECK(fault("line,player\n1,A\n1,B\n").find("draw.csv, line 3") != std::string::npos);
  CHECK(fault("line,player\n1,A\n3,B\n").find("'3'") != std::string::npos);
  CHECK(fault("line,player,seed\n1,A,first\n2,B,\n").find("'first' is no seed") != std::string::npos);
  CHECK(fault("line,player,rating\n1,A,nan\n2,B,\n").find("no rating") != std::string::npos);
  CHECK(read_results("round,winner\n1,Nobody\n", *lines, "results.csv").error().message().find("Nobody") != std::string::npos);
}
