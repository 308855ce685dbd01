#include "sync/cli/plan_commands.h"

#include <algorithm>
#include <filesystem>

#include "core/base/csv.h"

namespace weavelog::cli {

Outcome<std::string> plan_file(const std::string& path) {
  std::error_code error;
  if (!std::filesystem::exists(path, error)) return fail(FaultCode::not_found, "there is no such file", path, "check the name");
  if (std::filesystem::is_directory(path, error)) return fail(FaultCode::bad_input, "this is a folder", path, "name a file in it");
  return read_text_file(path, CsvLimits{}.file_bytes);
}

Outcome<Bracket> plan_bracket(const std::string& draw, const std::string& results) {
  const auto bytes = plan_file(draw);
  if (!bytes) return fail(bytes.error());
  auto lines = read_bracket(*bytes, draw);
  if (!lines) return fail(lines.error());
  std::vector<BracketResult> known;
  if (!results.empty()) {
    const auto text = plan_file(results);
    if (!text) return fail(text.error());
    auto read = read_results(*text, *lines, results);
    if (!read) return fail(read.error());
    known = std::move(*read);
  }
  auto bracket = Bracket::make(std::move(*lines), known);
  // What is wrong with the draw as a whole names a line; the file is named here.
  if (!bracket && bracket.error().where.find(results.empty() ? draw : results) == std::string::npos) {
    Fault fault = bracket.error();
    fault.where = draw + (fault.where.empty() ? "" : ", " + fault.where);
    return fail(std::move(fault));
  }
  return bracket;
}

std::string best_basis(const Bracket& bracket) {
  const auto lines = bracket.lines();
  if (std::any_of(lines.begin(), lines.end(), [](const BracketLine& line) { return line.rating.has_value(); })) return "rating";
  if (std::any_of(lines.begin(), lines.end(), [](const BracketLine& line) { return line.seed.has_value(); })) return "seed";
  return "even";
}

Outcome<WinChance> plan_chances(const Bracket& bracket, const std::string& by) {
  if (by == "rating") return chances_by_rating(bracket);
  if (by == "seed") return chances_by_seed(bracket);
  return even_chances();
}

void add_plan_commands(CLI::App& app, FolderWork& chosen) {
  CLI::App* plan = app.add_subcommand("plan", "Who meets whom, who strings for whom, and when: out of files, without --data");
  plan->require_subcommand(1);
  for (const auto add : {add_odds_command, add_benches_command}) add(*plan, chosen);
}

}  // namespace weavelog::cli
