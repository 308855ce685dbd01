#include "core/plan/list_rules.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <numeric>

#include "tests/support/published.h"

using namespace weavelog;

namespace {

using Numbers = std::vector<std::int64_t>;

Numbers numbers(const boost::json::value& list) {
  Numbers out;
  for (const auto& one : list.as_array()) out.push_back(one.to_number<std::int64_t>());
  return out;
}
std::vector<std::size_t> from_one(const boost::json::value& list) {
  std::vector<std::size_t> out;
  for (const auto& one : list.as_array()) out.push_back(one.to_number<std::size_t>() - 1);
  return out;
}
std::vector<std::size_t> as_listed(std::size_t size) {
  std::vector<std::size_t> out(size);
  std::iota(out.begin(), out.end(), std::size_t{0});
  return out;
}
std::int64_t makespan(std::span<const ListTask> tasks, std::size_t places, std::span<const std::size_t> order) {
  const auto turns = list_schedule(tasks, places, order);
  if (!turns) FAIL(turns.error().message());
  std::int64_t end = 0;
  for (const ListTurn& turn : *turns) end = std::max(end, turn.end);
  return end;
}
std::vector<ListTask> tasks_of(const Numbers& lengths) {
  std::vector<ListTask> out;
  for (const std::int64_t length : lengths) out.push_back({length});
  return out;
}

}  // namespace

TEST_CASE("longest first and list scheduling end as in Graham's examples", "[published]") {
  const auto document = test::published_json("scheduling.json");
  for (const auto& one : document.at("lpt_graham").as_array()) {
    const Numbers jobs = numbers(one.at("jobs"));
    const auto machines = one.at("m").to_number<std::size_t>();
    const std::int64_t end = makespan(tasks_of(jobs), machines, longest_first(jobs));
    CHECK(end == one.at("lpt_makespan").to_number<std::int64_t>());
    // 4/3 - 1/(3m), reached by these.
    CHECK(3 * static_cast<std::int64_t>(machines) * end ==
          (4 * static_cast<std::int64_t>(machines) - 1) * one.at("optimum").to_number<std::int64_t>());
  }
  for (const auto& one : document.at("list_graham").as_array()) {
    const Numbers jobs = numbers(one.at("jobs_in_list_order"));
    CHECK(makespan(tasks_of(jobs), one.at("m").to_number<std::size_t>(), as_listed(jobs.size())) ==
          one.at("list_makespan").to_number<std::int64_t>());
  }
}

TEST_CASE("more machines, shorter tasks and fewer conditions can take longer", "[published]") {
  // Graham (1969): 12, then 15, 13, 16 and, with another list, 14.
  const auto document = test::published_json("scheduling.json");
  const auto& graham = document.at("anomalies_graham_1969");
  auto tasks = tasks_of(numbers(graham.at("processing_times")));
  for (const auto& pair : graham.at("precedence_1_based").as_array())
    tasks[pair.at(1).to_number<std::size_t>() - 1].after.push_back(pair.at(0).to_number<std::size_t>() - 1);
  const auto list = as_listed(tasks.size());
  const auto machines = graham.at("machines").to_number<std::size_t>();
  const auto value = [&](const char* name) { return graham.at(name).to_number<std::int64_t>(); };
  CHECK(makespan(tasks, machines, list) == value("makespan"));
  CHECK(makespan(tasks, 4, list) == value("four_machines"));
  const std::vector<std::size_t> other{0, 1, 3, 4, 5, 2, 8, 6, 7};
  CHECK(makespan(tasks, machines, other) == value("list_T1_T2_T4_T5_T6_T3_T9_T7_T8"));
  auto shorter = tasks;
  for (ListTask& task : shorter) --task.length;
  CHECK(makespan(shorter, machines, list) == value("all_times_reduced_by_1"));
  auto freer = tasks;
  freer[4].after.clear(), freer[5].after.clear();
  CHECK(makespan(freer, machines, list) == value("drop_T4_before_T5_and_T6"));
}

TEST_CASE("due dates and late jobs on one bench are those enumerated", "[published]") {
  const auto document = test::published_json("scheduling.json");
  for (const auto& one : document.at("single_machine").as_array()) {
    const Numbers lengths = numbers(one.at("p")), dues = numbers(one.at("d"));
    const auto order = by_due(dues);
    CHECK(order == from_one(one.at("edd_order_1_based")));
    std::int64_t end = 0, latest = INT64_MIN, tardiness = 0;
    for (const std::size_t job : order) {
      end += lengths[job];
      latest = std::max(latest, end - dues[job]);
      tardiness += std::max<std::int64_t>(0, end - dues[job]);
    }
    CHECK(latest == one.at("lmax_edd").to_number<std::int64_t>());
    CHECK(latest == one.at("lmax_optimum_by_enumeration").to_number<std::int64_t>());
    CHECK(tardiness == one.at("total_tardiness_of_edd").to_number<std::int64_t>());
    auto on_time = most_on_time(lengths, dues);
    CHECK(lengths.size() - on_time.size() == one.at("min_late_jobs").to_number<std::size_t>());
    std::sort(on_time.begin(), on_time.end());
    CHECK(on_time == from_one(one.at("moore_hodgson_on_time_1_based")));
  }
}

TEST_CASE("a list that can't be followed is refused, with the task") {
  const auto said = [](std::vector<ListTask> tasks, std::size_t places, std::vector<std::size_t> order) {
    const auto turns = list_schedule(tasks, places, order);
    return turns ? std::string("no fault") : turns.error().message();
  };
  CHECK(said({{1, 0, {1}}, {1, 0, {0}}}, 1, {0, 1}).find("task 1: it waits for itself") != std::string::npos);
  CHECK(said({{1}, {1}}, 1, {0, 0}).find("every task once") != std::string::npos);
  CHECK(said({{1}, {1}}, 1, {0}).find("lacks") != std::string::npos);
  CHECK(said({{-1}}, 1, {0}).find("nothing") != std::string::npos);
  CHECK(said({{1, 0, {4}}}, 1, {0}).find("not there") != std::string::npos);
  CHECK(said({{1, 0, {}, 3}}, 1, {0}).find("place") != std::string::npos);
  CHECK(said({{1}}, 0, {0}).find("no place") != std::string::npos);
  CHECK(said({}, 1, {}) == "no fault");
}

TEST_CASE("a task waits for its moment and its place") {
  const auto turns = list_schedule(std::vector<ListTask>{{10, 5}, {10, 0, {}, 1}, {10, 0, {}, 1}}, 2, as_listed(3));
  REQUIRE(turns);
  CHECK(turns->at(0).begin == 5);
  CHECK(turns->at(0).place == 0);
  CHECK(turns->at(2).begin == 10);
}
