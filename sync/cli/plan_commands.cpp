#include "sync/cli/plan_commands.h"

#include <algorithm>
#include <filesystem>

#include "core/base/csv.h"
#include "core/plan/draw.h"

namespace weavelog::cli {

Outcome<std::string> plan_file(const std::string& path) {
  std::error_code error;
  if (!std::filesystem::exists(path, error)) return fail(FaultCode::not_found, "there is no such file", path, "check the name");
  if (std::filesystem::is_directory(path, error)) return fail(FaultCode::bad_input, "this is a folder", path, "name a file in it");
  return read_text_file(path, CsvLimits{}.file_bytes);
}

namespace {

Outcome<std::vector<BracketResult>> results_in(const std::string& path, std::span<const BracketLine> lines) {
  if (path.empty()) return std::vector<BracketResult>();
  const auto text = plan_file(path);
  if (!text) return fail(text.error());
  return read_results(*text, lines, path);
}

Outcome<std::vector<BracketLine>> lines_in(const std::string& path) {
  const auto bytes = plan_file(path);
  if (!bytes) return fail(bytes.error());
  return read_bracket(*bytes, path);
}

/// What is wrong with a draw as a whole names a line; the file is named here.
Fault in_file(Fault fault, const std::string& file, const std::string& other) {
  if (fault.where.find(file) == std::string::npos && (other.empty() || fault.where.find(other) == std::string::npos))
    fault.where = file + (fault.where.empty() ? "" : ", " + fault.where);
  return fault;
}

}  // namespace

Outcome<std::optional<Qualifying>> plan_qualifying(const DrawFiles& files) {
  if (files.qualifying.empty()) return std::optional<Qualifying>();
  const auto lines = lines_in(files.qualifying);
  if (!lines) return fail(lines.error());
  const auto results = results_in(files.qualifying_results, *lines);
  if (!results) return fail(results.error());
  auto qualifying = Qualifying::make(*lines, files.qualifiers, *results);
  if (!qualifying) return fail(in_file(qualifying.error(), files.qualifying, files.qualifying_results));
  return std::optional<Qualifying>(std::move(*qualifying));
}

Outcome<Bracket> plan_bracket(const DrawFiles& files) {
  auto lines = lines_in(files.draw);
  if (!lines) return fail(lines.error());
  const auto qualifying = plan_qualifying(files);
  if (!qualifying) return fail(qualifying.error());
  if (*qualifying) {
    lines = fed_by(std::move(*lines), **qualifying);
    if (!lines) return fail(in_file(lines.error(), files.draw, {}));
  }
  const auto results = results_in(files.results, *lines);
  if (!results) return fail(results.error());
  auto bracket = Bracket::make(std::move(*lines), *results);
  if (!bracket) return fail(in_file(bracket.error(), files.draw, files.results));
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

Outcome<std::map<std::string, std::string>> benches_of_plan(const std::string& path) {
  std::map<std::string, std::string> out;
  if (path.empty()) return out;
  const auto bytes = plan_file(path);
  if (!bytes) return fail(bytes.error());
  boost::system::error_code error;
  const json::value document = json::parse(*bytes, error);
  const auto wrong = [&](const char* what) { return fail(FaultCode::bad_input, what, path, "give a plan that `plan benches --json` or --out wrote"); };
  if (error) return wrong("this is no JSON");
  const json::value* players = document.is_object() ? document.get_object().if_contains("players") : nullptr;
  if (players == nullptr || !players->is_array()) return wrong("this is no plan: the list of players is missing");
  for (const json::value& one : players->get_array()) {
    const json::object* player = one.if_object();
    const json::value* name = player == nullptr ? nullptr : player->if_contains("player");
    const json::value* bench = player == nullptr ? nullptr : player->if_contains("bench");
    if (name == nullptr || bench == nullptr || !name->is_string() || !bench->is_string()) return wrong("this is no plan: a player has no name or no bench");
    out[std::string(name->get_string())] = std::string(bench->get_string());
  }
  return out;
}

void add_plan_commands(CLI::App& app, FolderWork& chosen) {
  CLI::App* plan = app.add_subcommand("plan", "Who meets whom, who strings for whom, and when: out of files, without --data");
  plan->require_subcommand(1);
  for (const auto add : {add_odds_command, add_draw_commands, add_benches_command, add_schedule_commands, add_forecast_command}) add(*plan, chosen);
}

}  // namespace weavelog::cli
