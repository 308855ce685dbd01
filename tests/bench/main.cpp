// weavelog-bench: what the house can do, in figures, each beside plain SQLite where that can do the same.

#include <CLI/CLI.hpp>
#include <csignal>
#include <filesystem>
#include <iostream>

#include "core/base/freed_memory.h"
#include "tests/bench/benches.h"
#include "tests/bench/workload/generate.h"
#include "tests/bench/workload/scenario.h"
#include "tests/bench/workload/workload.h"

using namespace weavelog::bench;

int main(int argc, char** argv) {
  weavelog::keep_freed_memory();  // as the programs do
  std::signal(SIGPIPE, SIG_IGN);
  Setting setting;
  setting.program = std::filesystem::read_symlink("/proc/self/exe").string();
  setting.folder = std::filesystem::temp_directory_path();
  bool json = false;
  std::vector<std::string> only;
  std::string code, into;
  CLI::App app{"Measures local writes, imports, exchanges, screens, a crowd of tablets, a room's day, plans, string beds, charts, matching and an arrival.",
               "weavelog-bench"};
  app.option_defaults()->always_capture_default();
  app.add_flag("--json", json,
               "JSON lines: bench, metric, value, unit, reference, ratio, runs, spread, target");
  app.add_flag("--full", setting.full, "The sizes of the targets; takes several minutes");
  app.add_option("--only", only, "workload, write, import, exchange, crowd, day, plan, plan-day, bed, quality, match, arrival; all if none is named")
      ->check(CLI::IsMember({"workload", "write", "import", "exchange", "crowd", "day", "plan", "plan-day", "bed", "quality", "match", "arrival"}));
  app.add_option("--folder", setting.folder,
                 "Where the data is put meanwhile: on the disk that is to be measured")
      ->check(CLI::ExistingDirectory);
  WorkloadOptions work;
  work.sizes = {"S", "W4"};
  app.add_option("--sizes", work.sizes, "Of the workload: T, S, M, W4")
      ->delimiter(',')
      ->check(CLI::IsMember(workload_sizes()));
  app.add_option("--repeats", work.repeats, "Runs of every scenario of the workload; medians are shown")
      ->check(CLI::Range(0, 100));
  app.add_option("--ops", work.ops, "Replays the operation files in this folder instead of generating them")
      ->check(CLI::ExistingDirectory);
  app.add_option("--results", work.results,
                 "JSON lines that another program printed for the same workload, for the table")
      ->check(CLI::ExistingFile);
  ScenarioOptions one;
  auto* scenario =
      app.add_subcommand("scenario", "One scenario in a process of its own; the bench starts it by itself");
  scenario->add_option("scenario", one.scenario, "W1, W2, W3, W4, W4r or W5")->required();
  scenario->add_option("--who", one.who, "weavelog or floor")
      ->check(CLI::IsMember({"weavelog", "floor"}))
      ->default_val("weavelog");
  scenario->add_option("--size", one.size, "T, S, M or W4");
  scenario->add_option("--ops", one.ops, "Where the operation files are");
  scenario->add_option("--state", one.state, "Where kept replicas are");
  scenario->add_option("--tmp", one.tmp, "Where others are");
  scenario->add_option("--mode", one.mode, "What is said of W1: nosync, two (connections, as the app has) or sync")->default_val("nosync");
  scenario->add_flag("--keep", one.keep, "Leave the replica for other scenarios");
  scenario->add_option("--limit", one.limit, "Milliseconds after which W1 stops");
  scenario->add_option("--turn", one.turn, "Number of the run");
  auto* import =
      app.add_subcommand("import", "One import in a process of its own; the bench starts it by itself");
  import->add_option("--code", code, "Pairing code")->required();
  import->add_option("--into", into, "Folder of the new tablet")->required();
  CLI11_PARSE(app, argc, argv);
  try {
    if (import->parsed()) return import_here(code, into);
    if (scenario->parsed()) return run_scenario(one);
    Report report(json);
    work.json = json;
    const auto wanted = [&](const char* name) {
      return only.empty() || std::find(only.begin(), only.end(), name) != only.end();
    };
    int status = 0;
    if (wanted("workload")) status = workload(setting, work);
    if (wanted("write")) local_write(report, setting);
    if (wanted("import")) cold_import(report, setting);
    if (wanted("exchange")) exchanges(report, setting);
    if (wanted("crowd")) crowd(report, setting);
    if (wanted("day")) room_day(report, setting);
    if (wanted("plan")) plan(report, setting);
    if (wanted("plan-day")) plan_of_day(report, setting);
    if (wanted("bed")) string_bed(report, setting);
    if (wanted("quality")) quality(report, setting);
    if (wanted("match")) match(report, setting);
    if (wanted("arrival")) arrival(report, setting);
    return status;
  } catch (const std::exception& failure) {
    std::cerr << "weavelog-bench: " << failure.what() << '\n';
    return 1;
  }
}
