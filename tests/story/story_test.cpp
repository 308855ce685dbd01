#include "tests/story/story.h"

#include <catch2/catch.hpp>

#include "tests/support/temporary_folder.h"

using namespace weavelog::testing;

namespace {

StoryEnd play(std::optional<unsigned> seed) {
  TemporaryFolder folder;
  StoryOptions options;
  options.programs = WEAVELOG_PROGRAMS;
  options.folder = folder.path();
  options.kill_with_seed = seed;
  return Story(std::move(options)).play();
}

const StoryEnd& undisturbed() {
  static const StoryEnd end = play(std::nullopt);
  return end;
}

}  // namespace

TEST_CASE("a player's setup goes from one event to the next") {
  const StoryEnd& end = undisturbed();
  REQUIRE(end.tensions.size() == 7);
  for (std::size_t i = 0; i < 3; ++i) {
    CHECK(end.tensions[i] == "24 kg / 24 kg");
    CHECK(end.stages[i] == "received");
  }
  for (std::size_t i = 3; i < 7; ++i) {
    CHECK(end.tensions[i] == "25 kg / 24 kg");
    CHECK(end.stages[i] == "ready");
  }
  CHECK(end.open_questions == 0);
  // Ines, whom nobody met; the twins, each with a book of her own; Зарина by her card, which leaves her birth year out.
  CHECK(end.at_the_ridge == std::vector<std::string>{"new", "known", "known", "likely"});
  // In her language, with the old and the new value as they were spoken.
  CHECK(end.read_back.find("25\u00a0kg → 24\u00a0kg") != std::string::npos);
  CHECK(end.read_back.find("Tarnbrook Silk") != std::string::npos);
}

TEST_CASE("the story ends the same when every process is killed at random moments") {
  int killed = 0;
  for (const unsigned seed : {11U, 12U, 13U}) {
    INFO("seed " << seed);
    const StoryEnd end = play(seed);
    CHECK(end == undisturbed());
    killed += end.killed;
  }
  CHECK(killed > 30);
}
