#include "fixtures/demo/play.h"

#include <catch2/catch.hpp>

#include "tests/support/ledgers.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE("an event played on a server and tablets that are cut off and return: every device tells what happened") {
  const TemporaryFolder folder;
  demo::PlayOptions options;
  options.players = 30;
  options.jobs = 120;
  options.tablets = 8;
  options.days = 2;
  options.folder = folder / "event";
  const auto played = demo::play_event(options);
  REQUIRE(played);
  for (const std::string& line : played->differences) UNSCOPED_INFO(line);
  CHECK(played->differences.empty());
  CHECK(played->happened.taken_in >= 120);
  CHECK(played->happened.collected + played->happened.aside == played->happened.taken_in);
  CHECK(played->happened.strung == played->happened.collected);
  CHECK(played->happened.charged() == played->happened.paid());
  CHECK(played->happened.waited > 0);
  CHECK(played->cut_off_hours > 0);
  CHECK(played->boards_compared >= 3);
  // Most of what is promised is kept already on the first two days, of which nobody knew anything; two weeks are measured by the benches.
  CHECK(played->promises.given > 40);
  CHECK(played->promises.kept * 100 >= played->promises.given * 85);
  CHECK(played->promises.apart_given > 0);
  CHECK(played->promises.slack > 0);

  SECTION("a device that lacks something is told") {
    demo::PlayTally other = played->happened;
    --other.strung_by.begin()->second;
    other.accounts.begin()->second.second += 5;
    CHECK(demo::differences(played->happened, other).size() == 2);
  }
  CHECK(demo::play_event(options).error().code == FaultCode::conflict);
  options.players = 2;
  CHECK(demo::play_event(options).error().code == FaultCode::bad_input);
}
