// weavelog-sim: runs seeds, replays one, shrinks what fails. See README.md beside this.

#include <unistd.h>

#include <CLI/CLI.hpp>
#include <array>
#include <chrono>
#include <csignal>
#include <cstdio>
#include <iostream>

#include "tests/sim/shrink.h"
#include "tests/sim/world.h"

namespace {

using namespace weavelog::sim;
using Clock = std::chrono::steady_clock;

std::uint64_t seed_running = 0, seeds_begun = 0;

/// A run took the whole program down: a failed assertion, something thrown where nothing may be, a wild pointer. That breaks a promise
/// too (nothing dies), and whoever reads this has to know the seed.
extern "C" void say_died(int signal) {
  std::array<char, 300> text{};
  const int size = std::snprintf(text.data(), text.size(),
                                 "seed %llu: VIOLATION died: the program was ended by signal %d\n"
                                 "  replay: tests/sim/run --seed %llu --trace\n%llu seeds, and no more\n",
                                 static_cast<unsigned long long>(seed_running), signal,
                                 static_cast<unsigned long long>(seed_running), static_cast<unsigned long long>(seeds_begun));
  if (size > 0 && ::write(STDOUT_FILENO, text.data(), static_cast<std::size_t>(size)) < 0) ::_exit(2);
  ::_exit(1);
}

double seconds_since(Clock::time_point begin) {
  return std::chrono::duration<double>(Clock::now() - begin).count();
}

std::string numbers_text(const std::vector<std::size_t>& numbers) {
  std::string out;
  for (const std::size_t number : numbers) out += (out.empty() ? "" : ",") + std::to_string(number);
  return out.empty() ? "none" : out;
}

void tell(const Plan& plan, const Result& result, bool shrinks, double shrink_seconds) {
  std::cout << "seed " << plan.seed << ": VIOLATION " << result.violation->invariant << ": "
            << result.violation->what() << "\n"
            << "  replay: tests/sim/run --seed " << plan.seed << " --trace" << std::endl;
  if (!shrinks) return;
  const std::vector<std::size_t> kept = shrink(plan, result.violation->invariant, shrink_seconds);
  std::cout << "  shrunk to " << kept.size() << " of " << plan.events.size()
            << " events: tests/sim/run --seed " << plan.seed << " --keep " << numbers_text(kept)
            << " --trace\n";
  for (const std::string& line : run(only(plan, kept), true).trace) std::cout << "    " << line << "\n";
}

}  // namespace

int main(int argc, char** argv) {
  CLI::App app{"Simulates rooms of devices with bad networks, disks and clocks; one seed is one run.",
               "weavelog-sim"};
  std::uint64_t first = 1, seeds = 1000;
  double seconds = 0, shrink_seconds = 20;
  bool json = false, soak = false, trace = false, no_shrink = false, stop_at_first = false;
  std::optional<std::uint64_t> one;
  std::vector<std::size_t> keep;
  app.add_option("--seeds", seeds, "How many seeds");
  app.add_option("--first", first, "The first of them");
  app.add_option("--seconds", seconds, "Stop after so long; 0: when the seeds are done");
  app.add_option("--seed", one, "Only this one");
  app.add_option("--keep", keep, "Of that seed's plan, only the events of these numbers")->delimiter(',');
  app.add_flag("--trace", trace, "Print what happens in that seed");
  app.add_flag("--json", json, "Sum up in one line of JSON");
  app.add_flag("--soak", soak, "Go on until stopped");
  app.add_flag("--no-shrink", no_shrink, "Do not shrink what fails");
  app.add_flag("--stop", stop_at_first, "Stop at the first violation");
  app.add_option("--shrink-seconds", shrink_seconds, "How long to shrink");
  CLI11_PARSE(app, argc, argv);
  if (one) {
    first = *one;
    seeds = 1;
  }

  for (const int signal : {SIGABRT, SIGSEGV, SIGBUS, SIGFPE, SIGILL}) std::signal(signal, say_died);
  const auto begin = Clock::now();
  Counts counts;
  std::uint64_t done = 0, violations = 0;
  auto last_word = begin;
  for (std::uint64_t seed = first; soak || seed < first + seeds; ++seed) {
    if (seconds > 0 && seconds_since(begin) > seconds) break;
    seed_running = seed;
    ++seeds_begun;
    Plan plan = plan_of(seed);
    if (!keep.empty()) plan = only(plan, keep);
    const Result result = run(plan, trace);
    for (const std::string& line : result.trace) std::cout << line << "\n";
    if (one) std::cout << "digest " << weavelog::to_hex(result.digest) << "\n";
    counts.add(result.counts);
    ++done;
    if (result.violation) {
      ++violations;
      tell(plan, result, !no_shrink && keep.empty(), shrink_seconds);
      if (stop_at_first) break;
    }
    if (soak && seconds_since(last_word) > 60) {
      last_word = Clock::now();
      std::cout << done << " seeds, " << counts.acts / 20 << " device-days, " << violations << " violations"
                << std::endl;
    }
  }
  const double took = seconds_since(begin);
  const double days = static_cast<double>(counts.acts) / 20;
  if (json) {
    std::cout << "{\"seeds\":" << done << ",\"first\":" << first << ",\"seconds\":" << took
              << ",\"device_days\":" << days << ",\"device_days_per_second\":" << days / took
              << ",\"actions\":" << counts.acts << ",\"sessions\":" << counts.sessions
              << ",\"frames\":" << counts.frames << ",\"stops\":" << counts.stops
              << ",\"bytes_lost_at_power_cuts\":" << counts.lost_bytes
              << ",\"files_put_back\":" << counts.restores << ",\"forks\":" << counts.forks
              << ",\"bundles\":" << counts.bundles << ",\"receipts\":" << counts.receipts
              << ",\"cards\":" << counts.cards << ",\"forgotten\":" << counts.forgotten << ",\"quarantined\":" << counts.quarantined
              << ",\"lies\":" << counts.lies << ",\"revocations\":" << counts.revocations << ",\"kinds_of_actions\":" << counts.actions.size()
              << ",\"violations\":" << violations << "}\n";
  } else {
    std::cout << done << " seeds, " << days << " device-days in " << took << " s (" << days / took
              << " a second): " << counts.stops << " stops, " << counts.sessions << " sessions, "
              << counts.restores << " files put back, " << counts.forks << " forks, " << counts.forgotten
              << " players forgotten; " << violations << " violations\n";
  }
  return violations == 0 ? 0 : 1;
}
