#include "core/plan/draw_places.h"

#include <catch2/catch.hpp>
#include <set>

#include "tests/support/published.h"
#include "tests/support/words.h"

using namespace weavelog;

namespace {

std::vector<BracketLine> entries(std::size_t count, std::size_t seeds) {
  std::vector<BracketLine> out(count);
  for (std::size_t i = 0; i < count; ++i) {
    out[i].player = "P" + std::to_string(i + 1);
    if (i < seeds) out[i].seed = static_cast<std::int64_t>(i) + 1;
  }
  return out;
}

}  // namespace

TEST_CASE("seeds have the published lines", "[plan][published]") {
  // ITF Pro Circuit Rulebook 2015 p. 63, Slovak Tennis Association annex 2, published draws of 128 lines: see the file.
  const auto document = test::published_json("draw_places.json");
  for (const auto& [name, table] : document.at("seed_lines").as_object()) {
    const std::size_t lines = std::stoul(std::string(name).substr(6));
    const auto groups = seed_groups(lines);
    const auto& published = table.at("seeds").as_object();
    REQUIRE(groups.size() == published.size());
    std::size_t at = 0;
    for (const auto& [seeds, where] : published) {
      const SeedGroup& group = groups[at++];
      CHECK(std::string(seeds) ==
            (group.first == group.last ? std::to_string(group.first) : std::to_string(group.first) + "-" + std::to_string(group.last)));
      std::vector<std::size_t> expected;
      for (const auto& line : where.as_array()) expected.push_back(line.to_number<std::size_t>() - 1);
      CHECK(group.lines == expected);
    }
  }
}

TEST_CASE("the best seeds can't meet before as few are left", "[plan]") {
  for (std::size_t lines = 4; lines <= 256; lines *= 2)
    for (const SeedGroup& upto : seed_groups(lines)) {
      if ((upto.last & (upto.last - 1)) != 0) continue;  // 1, 2, 4, ... seeds
      std::set<std::size_t> sections;
      std::size_t seeds = 0;
      for (const SeedGroup& group : seed_groups(lines))
        if (group.last <= upto.last)
          for (const std::size_t line : group.lines) sections.insert(line / (lines / upto.last)), ++seeds;
      CHECK(sections.size() == seeds);
      CHECK(seeds == upto.last);
    }
}

TEST_CASE("numbers of seeds follow the published rule", "[plan][published]") {
  const auto document = test::published_json("draw_places.json");
  for (const auto& pair : document.at("most_seeds").at("players").as_array())
    CHECK(most_seeds(pair.at(0).to_number<std::size_t>()) == pair.at(1).to_number<std::size_t>());
}

TEST_CASE("byes go to the seeds first, as in the published examples", "[plan][published]") {
  const auto document = test::published_json("draw_places.json");
  for (const auto& example : document.at("bye_examples").as_array()) {
    const auto players = example.at("players").to_number<std::size_t>(), size = example.at("draw").to_number<std::size_t>();
    const auto& pairs = example.at("seed_line_bye_line").as_array();
    for (std::uint64_t lot = 1; lot <= 5; ++lot) {
      const auto draw = make_draw(entries(players, seed_groups(size).back().last), lot);
      REQUIRE(draw);
      REQUIRE(draw->size() == size);
      std::size_t byes = 0;
      for (const BracketLine& line : *draw) byes += line.bye;
      CHECK(byes == pairs.size());
      for (const auto& one : pairs) {  // the seed's line by lot within its group, its bye beside it
        const auto seed = one.at(0).to_number<std::int64_t>();
        const auto at = static_cast<std::size_t>(
            std::find_if(draw->begin(), draw->end(), [&](const BracketLine& line) { return line.seed == seed; }) - draw->begin());
        REQUIRE(at < size);
        CHECK((*draw)[at ^ 1].bye);
        if (at == one.at(1).to_number<std::size_t>() - 1) CHECK((*draw)[one.at(2).to_number<std::size_t>() - 1].bye);
      }
    }
  }
}

TEST_CASE("any number of entries makes a draw, byes spread evenly", "[plan]") {
  for (std::size_t count = 4; count <= 256; ++count) {
    const auto draw = make_draw(entries(count, std::min<std::size_t>(most_seeds(count), count / 4)), count);
    INFO(count << " entries: " << fault_of(draw));
    REQUIRE(draw);
    REQUIRE(Bracket::make(*draw));
    std::set<std::string> names;
    for (const BracketLine& line : *draw)
      if (!line.bye) names.insert(line.player);
    CHECK(names.size() == count);
    CHECK(draw->size() - count ==
          static_cast<std::size_t>(std::count_if(draw->begin(), draw->end(), [](const BracketLine& line) { return line.bye; })));
  }
  // Without seeds, sections of every size differ by one bye at most.
  const auto draw = make_draw(entries(49, 0), 3);
  REQUIRE(draw);
  for (std::size_t size = 32; size >= 4; size /= 2) {
    std::size_t least = 64, most = 0;
    for (std::size_t from = 0; from < 64; from += size) {
      std::size_t byes = 0;
      for (std::size_t line = from; line < from + size; ++line) byes += (*draw)[line].bye;
      least = std::min(least, byes), most = std::max(most, byes);
    }
    CHECK(most - least <= 1);
  }
  CHECK(make_draw(entries(20, 4), 1)->at(0).player == "P1");
  CHECK(make_draw(entries(20, 4), 1)->at(31).player == "P2");
  const auto names = [](std::uint64_t lot) {
    std::string out;
    const auto made = make_draw(entries(20, 4), lot);
    for (const BracketLine& line : made.value()) out += line.player + ",";
    return out;
  };
  CHECK(names(1) == names(1));
  CHECK(names(1) != names(2));
}

TEST_CASE("entries that make no draw are named", "[plan]") {
  CHECK(fault_of(make_draw(entries(3, 0), 1)).find("4 to 256 entries") != std::string::npos);
  CHECK(fault_of(make_draw(entries(257, 0), 1)).find("here are 257") != std::string::npos);
  auto twice = entries(8, 0);
  twice[5].player = "p1";
  CHECK(fault_of(make_draw(twice, 1)).find("entry 6: p1 is entered twice") != std::string::npos);
  auto gap = entries(8, 2);
  gap[1].seed = 3;
  CHECK(fault_of(make_draw(gap, 1)).find("seed 3: seeds have to be 1, 2, 3") != std::string::npos);
  CHECK(fault_of(make_draw(entries(16, 8), 1)).find("places for 4 seeds") != std::string::npos);
  auto bye = entries(8, 0);
  bye[2] = {"", true};
  CHECK(fault_of(make_draw(bye, 1)).find("a bye is no entry") != std::string::npos);
}

TEST_CASE("an event's entry list is read as the entries of the draw that is meant") {
  const std::string list =
      "tour_number,family_name,given_name,seed,entry,draw\nT1,Kova,Mira,1,direct,Singles\nT2,Okafor,Ada,,wild card,singles\nT3,Velt,,,Q,Doubles\n";
  CHECK(read_entries(list, "list.csv").error().what.find("2 draws: Singles, Doubles") != std::string::npos);
  const auto singles = read_entries(list, "list.csv", "Singles");
  REQUIRE(singles);
  REQUIRE(singles->size() == 2);
  CHECK(singles->at(0).player == "Kova Mira");
  CHECK(singles->at(0).seed == 1);
  CHECK(singles->at(1).entry == DrawEntry::wild_card);
  const auto doubles = read_entries(list, "list.csv", "DOUBLES");
  REQUIRE(doubles);
  CHECK(doubles->at(0).player == "Velt");
  CHECK(read_entries(list, "list.csv", "Mixed").error().code == FaultCode::not_found);
  CHECK(read_entries("player\nA\nB\n", "p.csv", "Singles").error().code == FaultCode::not_found);
  CHECK(read_entries("family_name,seed\nA,1\n,2\n", "l.csv").error().where == "l.csv, line 3, column 1 (family_name)");
  CHECK(read_entries("name\nA\n", "n.csv").error().what == "the column player is missing");
  // A column player counts where there is one.
  CHECK(read_entries("player,family_name\nA,B\n", "p.csv")->at(0).player == "A");
}
