#include "core/model/stage_now.h"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace weavelog;

namespace {

EntityId id_of(std::uint8_t n) {
  return EntityId{{n}};
}

PlacedMark mark(std::uint8_t id, std::uint64_t stamp, Stage stage, std::vector<EntityId> after,
                std::string by = "A") {
  return {id_of(id), Stamp{stamp},
          StageMark{id_of(200), stage, std::nullopt, std::move(by), {}, join_ids(after)}};
}

}  // namespace

TEST_CASE("a job without marks is nowhere") {
  CHECK(stage_now({}).stage == Stage::none);
  CHECK_FALSE(stage_now({}).clash);
}

TEST_CASE("the newest mark says where a racket is, in whatever order marks arrive") {
  std::vector<PlacedMark> marks{mark(1, 10, Stage::received, {}), mark(2, 20, Stage::inspected, {id_of(1)}),
                                mark(3, 30, Stage::on_machine, {id_of(2)})};
  std::sort(marks.begin(), marks.end(), [](auto& a, auto& b) { return a.id < b.id; });
  do {
    const StageNow now = stage_now(marks);
    CHECK(now.stage == Stage::on_machine);
    CHECK(now.newest == std::vector{id_of(3)});
    CHECK_FALSE(now.clash);
  } while (std::next_permutation(marks.begin(), marks.end(), [](auto& a, auto& b) { return a.id < b.id; }));
}

TEST_CASE("two people who took one racket while apart are seen, until one mark follows both") {
  std::vector<PlacedMark> marks{mark(1, 10, Stage::received, {}),
                                mark(2, 20, Stage::on_machine, {id_of(1)}, "A"),
                                mark(3, 30, Stage::on_machine, {id_of(1)}, "B")};
  CHECK(stage_now(marks).clash);
  CHECK(stage_now(marks).by == "B");
  CHECK(stage_now(marks).newest == std::vector{id_of(2), id_of(3)});
  marks.push_back(mark(4, 40, Stage::on_machine, {id_of(2), id_of(3)}, "A"));
  CHECK_FALSE(stage_now(marks).clash);
  CHECK(stage_now(marks).by == "A");
}

TEST_CASE("the same racket called ready twice is no clash, ready and aside is") {
  std::vector<PlacedMark> marks{mark(1, 10, Stage::strung, {}), mark(2, 20, Stage::ready, {id_of(1)}, "A"),
                                mark(3, 30, Stage::ready, {id_of(1)}, "B")};
  CHECK_FALSE(stage_now(marks).clash);
  marks.back().mark.stage = Stage::aside;
  CHECK(stage_now(marks).clash);
}

TEST_CASE("marks that name each other in a ring still give an answer") {
  const std::vector<PlacedMark> marks{mark(1, 10, Stage::received, {id_of(2)}),
                                      mark(2, 20, Stage::inspected, {id_of(1)})};
  CHECK(stage_now(marks).stage == Stage::inspected);
}
