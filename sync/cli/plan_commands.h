#pragma once
// The subcommands of `plan`, one family a file: each adds its own to the group. They work on files alone.

#include <map>

#include "core/plan/draw.h"
#include "sync/cli/commands.h"

namespace weavelog::cli {

void add_odds_command(CLI::App& plan, FolderWork& chosen);     // plan odds
void add_draw_commands(CLI::App& plan, FolderWork& chosen);    // plan draw, plan group, plan order
void add_benches_command(CLI::App& plan, FolderWork& chosen);  // plan benches
void add_schedule_commands(CLI::App& plan, FolderWork& chosen);  // plan schedule, plan promise
void add_forecast_command(CLI::App& plan, FolderWork& chosen);  // plan forecast

/// A subcommand of `plan` with arguments of its own; `add` gives it its options. They live as long as the parser.
template <class Arguments, class Add>
void add_plan_command(CLI::App& plan, FolderWork& chosen, const char* name, const char* what,
                      Outcome<Ending> (*run)(const Settings&, const Arguments&), Add add) {
  CLI::App* command = plan.add_subcommand(name, what);
  const auto arguments = std::make_shared<Arguments>();
  add(*command, *arguments);
  command->callback([arguments, run, &chosen] {
    chosen = [arguments, run](const Settings& settings) { return run(settings, *arguments); };
  });
}

/// The bytes of a table that a plan is made from, of at most 16 MiB. Faults: not_found (no such file), those of read_text_file().
[[nodiscard]] Outcome<std::string> plan_file(const std::string& path);
/// The files of a draw; all but the first may be "".
struct DrawFiles {
  std::string draw, results, qualifying, qualifying_results;
  std::size_t qualifiers = 0;
};
/// A draw with its results, fed by qualifying if there is one. Faults: those of read_bracket(), read_results(), Qualifying::make(), fed_by()
/// and Bracket::make().
[[nodiscard]] Outcome<Bracket> plan_bracket(const DrawFiles& files);
/// Its qualifying, if there is one.
[[nodiscard]] Outcome<std::optional<Qualifying>> plan_qualifying(const DrawFiles& files);
/// What is known best of the draw: "rating", "seed" or "even".
[[nodiscard]] std::string best_basis(const Bracket& bracket);
/// By one of these. Faults: those of chances_by_rating() and chances_by_seed().
[[nodiscard]] Outcome<WinChance> plan_chances(const Bracket& bracket, const std::string& by);

/// The bench of each player in a plan of benches that `plan benches` wrote; none for "". Faults: those of plan_file(); bad_input (no such plan).
[[nodiscard]] Outcome<std::map<std::string, std::string>> benches_of_plan(const std::string& path);
}  // namespace weavelog::cli
