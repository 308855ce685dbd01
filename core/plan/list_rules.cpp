#include "core/plan/list_rules.h"

#include <algorithm>
#include <numeric>
#include <queue>

namespace weavelog {

Outcome<std::vector<ListTurn>> list_schedule(std::span<const ListTask> tasks, std::size_t places, std::span<const std::size_t> order) {
  const auto task_name = [](std::size_t task) { return "task " + std::to_string(task + 1); };
  if (places == 0) return fail(FaultCode::bad_input, "there is no place to work at", {}, "give at least one");
  std::vector<bool> listed(tasks.size());
  for (const std::size_t task : order) {
    if (task >= tasks.size() || listed[task]) return fail(FaultCode::bad_input, "the list has every task once", task_name(task), "correct the list");
    listed[task] = true;
  }
  if (order.size() != tasks.size()) return fail(FaultCode::bad_input, "the list lacks tasks", {}, "the list has every task once");
  for (std::size_t task = 0; task < tasks.size(); ++task) {
    if (tasks[task].length < 0) return fail(FaultCode::bad_input, "a task takes no less than nothing", task_name(task), "correct its length");
    if (tasks[task].place.value_or(0) >= places) return fail(FaultCode::bad_input, "its place is not there", task_name(task), "correct it");
    for (const std::size_t before : tasks[task].after)
      if (before >= tasks.size()) return fail(FaultCode::bad_input, "it comes after a task that is not there", task_name(task), "correct it");
  }
  std::vector<ListTurn> out(tasks.size());
  std::vector<bool> done(tasks.size()), begun(tasks.size());
  std::vector<std::int64_t> free_from(places, INT64_MIN);
  std::vector<bool> busy(places);
  std::vector<std::size_t> on_list(order.begin(), order.end());
  // By the ends of what runs and the moments at which something may begin.
  std::priority_queue<std::int64_t, std::vector<std::int64_t>, std::greater<>> moments;
  for (const ListTask& task : tasks) moments.push(task.earliest);
  while (!on_list.empty()) {
    if (moments.empty())
      return fail(FaultCode::bad_input, "it waits for itself, by way of what it comes after", task_name(on_list.front()),
                  "take one of these conditions off");
    const std::int64_t now = moments.top();
    while (!moments.empty() && moments.top() == now) moments.pop();
    for (std::size_t task = 0; task < tasks.size(); ++task)
      if (begun[task] && !done[task] && out[task].end <= now) done[task] = true, busy[out[task].place] = false;
    for (auto next = on_list.begin(); next != on_list.end();) {
      const ListTask& task = tasks[*next];
      std::size_t place = task.place.value_or(0);
      if (!task.place)
        while (place < places && busy[place]) ++place;
      const bool ready = place < places && !busy[place] && task.earliest <= now &&
                         std::all_of(task.after.begin(), task.after.end(), [&](std::size_t before) { return done[before]; });
      if (!ready) {
        ++next;
        continue;
      }
      out[*next] = {place, now, now + task.length};
      begun[*next] = true;
      busy[place] = true;
      moments.push(now + task.length);
      next = on_list.erase(next);
    }
  }
  return out;
}

namespace {

std::vector<std::size_t> counted(std::size_t size) {
  std::vector<std::size_t> out(size);
  std::iota(out.begin(), out.end(), std::size_t{0});
  return out;
}

}  // namespace

std::vector<std::size_t> by_due(std::span<const std::int64_t> dues) {
  auto out = counted(dues.size());
  std::stable_sort(out.begin(), out.end(), [&](std::size_t a, std::size_t b) { return dues[a] < dues[b]; });
  return out;
}

std::vector<std::size_t> longest_first(std::span<const std::int64_t> lengths) {
  auto out = counted(lengths.size());
  std::stable_sort(out.begin(), out.end(), [&](std::size_t a, std::size_t b) { return lengths[a] > lengths[b]; });
  return out;
}

std::vector<std::size_t> most_on_time(std::span<const std::int64_t> lengths, std::span<const std::int64_t> dues) {
  std::priority_queue<std::pair<std::int64_t, std::size_t>> kept;
  std::int64_t end = 0;
  for (const std::size_t job : by_due(dues)) {
    kept.emplace(lengths[job], job);
    end += lengths[job];
    if (end > dues[job]) {
      end -= kept.top().first;
      kept.pop();
    }
  }
  std::vector<bool> on_time(lengths.size());
  for (; !kept.empty(); kept.pop()) on_time[kept.top().second] = true;
  std::vector<std::size_t> out;
  for (const std::size_t job : by_due(dues))
    if (on_time[job]) out.push_back(job);
  return out;
}

}  // namespace weavelog
