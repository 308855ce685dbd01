// weavelog-cli: the work of the room without a screen.

#include <fcntl.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <sstream>
#include <string_view>

#include "core/base/freed_memory.h"
#include "core/base/text.h"
#include "sync/cli/commands.h"

using namespace weavelog;
using namespace weavelog::cli;

namespace {

std::string host_name() {
  char name[256] = {};
  return gethostname(name, sizeof name - 1) == 0 && name[0] != '\0' ? std::string(name)
                                                                    : std::string("device");
}

/// As the parser would find it, for faults of the parser itself.
bool wants_json(int argc, char** argv) {
  return std::any_of(argv + 1, argv + argc,
                     [](const char* one) { return std::string_view(one) == "--json"; });
}

int wrong_use(std::string what, bool as_json) {
  std::replace(what.begin(), what.end(), '\n', ' ');
  const Fault fault{FaultCode::bad_input, what, "command line", "see weavelog-cli --help, or COMMAND --help"};
  complain(fault, as_json);
  return static_cast<int>(Ending::wrong_use);
}

int finish(const Settings& settings, const Outcome<Ending>& ending) {
  if (ending) return static_cast<int>(*ending);
  complain(ending.error(), settings.json);
  return static_cast<int>(ending_of(ending.error()));
}

/// Where one of them is closed, the next file that is opened would take its number, and what is said would go into it.
void hold_standard_streams() {
  for (int fd = 0; fd <= 2; ++fd)
    if (::fcntl(fd, F_GETFD) < 0) (void)::open("/dev/null", fd == 0 ? O_WRONLY : O_RDONLY);
}

/// An answer that nobody got is none: a disk that is full behind standard output.
int told(int status) {
  const auto lost = output_fault();
  if (!lost) return status;
  complain(*lost, false);
  const bool complained = status != static_cast<int>(Ending::done) && status != static_cast<int>(Ending::needs_answer);
  return complained ? status : static_cast<int>(Ending::fault);
}

int run(const Settings& settings, const Work& work) {
  Context context(settings);
  auto opened = context.open();
  if (!opened) {
    complain(opened.error(), settings.json);
    return static_cast<int>(ending_of(opened.error()));
  }
  return finish(settings, work(context));
}

}  // namespace

int main(int argc, char** argv) {
  hold_standard_streams();
  keep_freed_memory();
  std::signal(SIGPIPE, SIG_IGN);
  Settings settings;
  settings.usual_name = host_name();
  CLI::App app{
      "The work of a stringing room from the command line: pair, exchange, take in, string, look up.",
      "weavelog-cli"};
  app.fallthrough();
  app.require_subcommand(1);
  app.add_option("--data", settings.folder, "Folder of this device's database and key, made if it is missing; needed by all but `plan`, `bed`, `tone`, `quality`, `calibrate`, `match` and `name`")
      ->envname("WEAVELOG_DATA");
  app.add_option("--device", settings.device, "Name that others see for this device from now on; the folder keeps it (at first: " + settings.usual_name + ")")
      ->check([](const std::string& name) { return is_blank(name) ? std::string("a name is needed") : std::string(); });
  app.add_flag("--json", settings.json,
               "Answer as JSON, each command's --help says how; faults as {\"error\": {...}} too");
  app.add_option("--language", settings.language,
                 "Language to speak: en, fr, es or de; default: the player's, else en")
      ->check(CLI::IsMember({"en", "fr", "es", "de"}));
  app.footer(
      "Exit codes: 0 done, 1 fault, 2 wrong use, 3 a question is open or an answer is needed, 4 not found.\n"
      "PLAYER is a name that finds exactly one, or six or more characters of the book's number.\n"
      "Example: weavelog-cli --data tablet --device \"Desk 1\" pair lusab-babad-gutih-tugad-gutuk --at "
      "192.0.2.7");
  Work chosen;
  for (const auto add : {add_exchange_commands, add_device_commands, add_near_command, add_host_command, add_event_commands, add_arrival_commands,
                         add_player_commands, add_drop_off_commands, add_same_commands, add_room_commands,
                         add_inspection_commands, add_money_commands, add_money_day_commands, add_stock_commands, add_machine_commands, add_team_commands,
                         add_numbers_command, add_bench_commands, add_list_commands, add_event_draw_commands, add_home_benches_command, add_room_day_commands, add_new_time_command, add_new_tag_command, add_link_commands, add_past_jobs_command, add_question_commands, add_forget_commands,
                         add_bundle_commands, add_card_commands, add_care_commands})
    add(app, chosen);
  FolderWork on_folder;
  add_backup_commands(app, on_folder);
  add_demo_command(app, on_folder);
  FolderWork on_files;
  add_plan_commands(app, on_files);
  add_bed_commands(app, on_files);
  add_tone_commands(app, on_files);
  add_quality_commands(app, on_files);
  add_calibrate_command(app, on_files);
  add_match_commands(app, on_files);
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    if (error.get_exit_code() == 0) {
      std::ostringstream help;
      const int status = app.exit(error, help, help);
      put_out(help.str());
      return told(status);
    }
    return wrong_use(error.what(), wants_json(argc, argv));
  }
  if (!on_files && settings.folder.empty()) return wrong_use("--data is required", settings.json);
  try {
    if (on_files) return told(finish(settings, on_files(settings)));
    return told(on_folder ? finish(settings, on_folder(settings)) : run(settings, chosen));
  } catch (const std::exception& error) {
    complain({FaultCode::io, error.what(), "", "report this; what was confirmed before is kept"},
             settings.json);
    return static_cast<int>(Ending::fault);
  }
}
