#pragma once
// The plain rules of scheduling: list scheduling, earliest due date, longest first, fewest late. What the larger plans begin with and are
// measured by.

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "core/base/outcome.h"

namespace weavelog {

/// Something that takes a place (a bench, a court) for a time. Times in any unit.
struct ListTask {
  std::int64_t length = 0;
  std::int64_t earliest = 0;
  std::vector<std::size_t> after{};         ///< tasks that have to be finished first
  std::optional<std::size_t> place{};       ///< the only place that it can be at
};

struct ListTurn {
  std::size_t place = 0;
  std::int64_t begin = 0, end = 0;
};

/// List scheduling: whenever a place is free it takes the first task on the list that can begin there (Graham, Bounds on multiprocessing
/// timing anomalies, 1969). `order`: every task once. The turns by task. Faults: bad_input (no places, a task that is not there, tasks that
/// wait for each other), with the number of the task, from 1.
[[nodiscard]] Outcome<std::vector<ListTurn>> list_schedule(std::span<const ListTask> tasks, std::size_t places, std::span<const std::size_t> order);

/// Earliest due date first; equals in their own order.
[[nodiscard]] std::vector<std::size_t> by_due(std::span<const std::int64_t> dues);
/// Longest first (LPT); equals in their own order.
[[nodiscard]] std::vector<std::size_t> longest_first(std::span<const std::int64_t> lengths);
/// As many as can be on time at one place where all are there from the beginning (0), in order of due date: Moore, An n job, one machine
/// sequencing algorithm for minimizing the number of late jobs (1968), with Hodgson's form of it.
[[nodiscard]] std::vector<std::size_t> most_on_time(std::span<const std::int64_t> lengths, std::span<const std::int64_t> dues);

}  // namespace weavelog
