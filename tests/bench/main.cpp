// weavelog-bench: what the house can do, in figures, each beside plain SQLite where that can do the same.

#include <CLI/CLI.hpp>
#include <csignal>
#include <filesystem>
#include <iostream>

#include "tests/bench/benches.h"

using namespace weavelog::bench;

int main(int argc, char** argv) {
  std::signal(SIGPIPE, SIG_IGN);
  Setting setting;
  setting.program = std::filesystem::read_symlink("/proc/self/exe").string();
  setting.folder = std::filesystem::temp_directory_path();
  bool json = false;
  std::vector<std::string> only;
  std::string code, into;
  CLI::App app{"Measures local writes, imports, exchanges, screens and a crowd of tablets.",
               "weavelog-bench"};
  app.option_defaults()->always_capture_default();
  app.add_flag("--json", json,
               "JSON lines: bench, metric, value, unit, reference, ratio, runs, spread, target");
  app.add_flag("--full", setting.full, "The sizes of the targets; takes several minutes");
  app.add_option("--only", only, "write, import, exchange, crowd; all if none is named")
      ->check(CLI::IsMember({"write", "import", "exchange", "crowd"}));
  app.add_option("--folder", setting.folder,
                 "Where the data is put meanwhile: on the disk that is to be measured")
      ->check(CLI::ExistingDirectory);
  auto* import =
      app.add_subcommand("import", "One import in a process of its own; the bench starts it by itself");
  import->add_option("--code", code, "Pairing code")->required();
  import->add_option("--into", into, "Folder of the new tablet")->required();
  CLI11_PARSE(app, argc, argv);
  try {
    if (import->parsed()) return import_here(code, into);
    Report report(json);
    const auto wanted = [&](const char* name) {
      return only.empty() || std::find(only.begin(), only.end(), name) != only.end();
    };
    if (wanted("write")) local_write(report, setting);
    if (wanted("import")) cold_import(report, setting);
    if (wanted("exchange")) exchanges(report, setting);
    if (wanted("crowd")) crowd(report, setting);
  } catch (const std::exception& failure) {
    std::cerr << "weavelog-bench: " << failure.what() << '\n';
    return 1;
  }
  return 0;
}
