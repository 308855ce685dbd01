#include "sync/cli/plan_commands.h"

#include <filesystem>

namespace weavelog::cli {

Outcome<std::string> plan_file(const std::string& path) {
  std::error_code error;
  if (!std::filesystem::exists(path, error)) return fail(FaultCode::not_found, "there is no such file", path, "check the name");
  if (std::filesystem::is_directory(path, error)) return fail(FaultCode::bad_input, "this is a folder", path, "name a file in it");
  return read_text_file(path, CsvLimits{}.file_bytes);
}

void add_plan_commands(CLI::App& app, FolderWork& chosen) {
  CLI::App* plan = app.add_subcommand("plan", "Who meets whom, who strings for whom, and when: out of files, without --data");
  plan->require_subcommand(1);
  for (const auto add : {add_odds_command}) add(*plan, chosen);
}

}  // namespace weavelog::cli
