#include "tests/bench/workload/workload.h"

#include <boost/json.hpp>
#include <cstdio>
#include <fstream>
#include <iostream>
#include <memory>
#include <stdexcept>

#include "tests/bench/room.h"
#include "tests/bench/workload/generate.h"
#include "tests/bench/workload/table.h"

namespace weavelog::bench {
namespace {

namespace fs = std::filesystem;

/// Seconds of durable actions that are enough for a rate.
constexpr const char* kSyncLimit = "4000";

class Runner {
 public:
  Runner(const Setting& setting, const WorkloadOptions& options)
      : setting_(setting),
        options_(options),
        disk_(setting.folder),
        memory_(fs::is_directory("/dev/shm") ? "/dev/shm" : setting.folder) {
    ops_ = options.ops.empty() ? disk_ / "ops" : options.ops;
    for (const auto& folder : {disk_ / "tmp", memory_ / "tmp", memory_ / "state", fs::path(ops_)})
      fs::create_directories(folder);
  }

  int go() {
    for (const std::string& size : options_.sizes) {
      if (options_.ops.empty() && options_.repeats > 0) generate_workload(ops_, size);
      for (std::size_t turn = 0; turn < options_.repeats; ++turn)
        for (const char* who : {"weavelog", "floor"}) measure(who, size, turn);
      fs::remove_all(memory_ / "state");
      fs::create_directories(memory_ / "state");
    }
    if (std::find(options_.sizes.begin(), options_.sizes.end(), "W4") != options_.sizes.end())
      for (std::size_t turn = 0; turn < options_.repeats; ++turn) run("weavelog", "W4r", "", turn, "");
    for (const auto& file : options_.results) read_lines(file);
    if (!options_.json) std::cout << table_of(lines_);
    return wrong_ ? 1 : 0;
  }

 private:
  void measure(const char* who, const std::string& size, std::size_t turn) {
    const bool ours = std::string_view(who) == "weavelog";
    const char* keep = turn == 0 ? "--keep" : "";
    if (size == "W4") {
      if (turn == 0) {
        run(who, "W1", size, turn, "--keep", false);
        if (ours) run(who, "W2", size, turn, "--keep", false);
      }
      return run(who, "W4", size, turn, "");
    }
    run(who, "W1", size, turn, keep);
    if (ours) run(who, "W1", size, turn, "--mode two");
    // Where a flush costs what the disk asks for it.
    if (size != "M" || turn == 0)
      run(who, "W1", size, turn, std::string("--mode sync --limit ") + kSyncLimit);
    run(who, "W2", size, turn, keep);
    run(who, "W3", size, turn, "");
    for (std::size_t i = 0; ours && i < 5; ++i) run(who, "W5", size, turn * 5 + i, "");
  }

  void run(const char* who, const char* scenario, const std::string& size, std::size_t turn,
           const std::string& more, bool say = true) {
    const bool on_disk = more.find("sync") != std::string::npos;
    std::string command = "'" + setting_.program + "' scenario " + scenario + " --who " + who + " --turn " +
                          std::to_string(turn) + " --ops '" + ops_.string() + "' --state '" +
                          (memory_ / "state").string() + "' --tmp '" +
                          (on_disk ? disk_ / "tmp" : memory_ / "tmp").string() + "' " + more;
    if (!size.empty()) command += " --size " + size;
    const auto close = [](FILE* pipe) { return pclose(pipe); };
    const std::unique_ptr<FILE, decltype(close)> pipe(popen(command.c_str(), "r"), close);
    std::string line;
    char part[4096];
    while (pipe && std::fgets(part, sizeof part, pipe.get()) != nullptr) line += part;
    boost::system::error_code error;
    auto parsed = boost::json::parse(line, error);
    if (error || !parsed.is_object())
      parsed = {
          {"peer", who}, {"layout", ""}, {"scenario", scenario}, {"size", size}, {"failed", "no result"}};
    auto& held = parsed.as_object();
    held["rep"] = turn + 1;
    if (held.contains("failed") || !held["ok"].as_bool()) {
      wrong_ = true;
      std::cerr << "weavelog-bench: wrong result: " << boost::json::serialize(held) << '\n';
    }
    if (!say) return;
    lines_.push_back(held);
    if (options_.json) std::cout << boost::json::serialize(held) << std::endl;
  }

  void read_lines(const fs::path& file) {
    std::ifstream in(file);
    if (!in) throw std::runtime_error(file.string() + ": cannot be read");
    std::string line;
    while (std::getline(in, line)) lines_.push_back(boost::json::parse(line).as_object());
  }

  const Setting& setting_;
  const WorkloadOptions& options_;
  Scratch disk_, memory_;
  fs::path ops_;
  std::vector<boost::json::object> lines_;
  bool wrong_ = false;
};

}  // namespace

int workload(const Setting& setting, const WorkloadOptions& options) {
  return Runner(setting, options).go();
}

}  // namespace weavelog::bench
