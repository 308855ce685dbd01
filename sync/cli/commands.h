#pragma once
// The commands, one family a file. Each adds its commands to the program's parser; the one that is chosen
// leaves its work.

#include <CLI/CLI.hpp>
#include <functional>
#include <memory>

#include "sync/cli/context.h"

namespace weavelog::cli {

/// What a command does once its folder is open.
using Work = std::function<Outcome<Ending>(Context&)>;

void add_exchange_commands(CLI::App& app, Work& chosen);  // pair, hosts, exchange, invite
void add_device_commands(CLI::App& app, Work& chosen);    // devices, revoke, device-set, codes, holders
void add_near_command(CLI::App& app, Work& chosen);       // near
void add_host_command(CLI::App& app, Work& chosen);       // host
void add_event_commands(CLI::App& app, Work& chosen);     // events, new-event, keep-days, import
void add_arrival_commands(CLI::App& app, Work& chosen);   // arrival, tick
void add_player_commands(CLI::App& app, Work& chosen);    // find, show, history, setup, consent, undo
void add_drop_off_commands(CLI::App& app, Work& chosen);  // drop-off
void add_same_commands(CLI::App& app, Work& chosen);      // same
void add_room_commands(CLI::App& app, Work& chosen);      // stage, board, next
void add_inspection_commands(CLI::App& app, Work& chosen);  // inspect, frame, frame-answer, frame-override, frame-mended
void add_money_commands(CLI::App& app, Work& chosen);  // charge, discount, sell, price, pay, statement, reverse
void add_money_day_commands(CLI::App& app, Work& chosen);  // takings, close-day
void add_stock_commands(CLI::App& app, Work& chosen);  // stock, stock-add, stock-move, stock-use
void add_machine_commands(CLI::App& app, Work& chosen);  // machines, machine-add, machine-set, machine-care
void add_team_commands(CLI::App& app, Work& chosen);  // team, team-set, shifts, shift-add, shift-remove
void add_numbers_command(CLI::App& app, Work& chosen);  // numbers
void add_bench_commands(CLI::App& app, Work& chosen);  // job, bench, reading, check, photo-add, photo-get
void add_list_commands(CLI::App& app, Work& chosen);   // steps, step-set, step-add
void add_event_draw_commands(CLI::App& app, Work& chosen);  // draws, draw-add, draw-remove, draw-line, draw-match
void add_home_benches_command(CLI::App& app, Work& chosen);   // home-benches
void add_room_day_commands(CLI::App& app, Work& chosen);  // room-day, room-promise, room-forecast, plan-rules, bench-wish
void add_new_time_command(CLI::App& app, Work& chosen);     // new-time
void add_new_tag_command(CLI::App& app, Work& chosen);      // new-tag
void add_link_commands(CLI::App& app, Work& chosen);        // link, unlink, linked, also-known
void add_past_jobs_command(CLI::App& app, Work& chosen);    // past-jobs
void add_question_commands(CLI::App& app, Work& chosen);  // questions, answer
void add_forget_commands(CLI::App& app, Work& chosen);    // forget, forgotten
void add_bundle_commands(CLI::App& app, Work& chosen);    // bundle make, read, show, receipt, list, key
void add_card_commands(CLI::App& app, Work& chosen);      // card make, read, show
void add_care_commands(CLI::App& app, Work& chosen);      // export, verify, rebuild, quarantine

/// backup, restore. They work on the files of the folder and run before it is opened, so they have a work of their own.
using FolderWork = std::function<Outcome<Ending>(const Settings&)>;
void add_backup_commands(CLI::App& app, FolderWork& chosen);
/// demo play. It makes folders of its own, and opens none that is there.
void add_demo_command(CLI::App& app, FolderWork& chosen);
/// plan: files in, a plan out. Needs no folder, and opens none that is given.
void add_plan_commands(CLI::App& app, FolderWork& chosen);
/// quality, calibrate: the same with readings.
void add_quality_commands(CLI::App& app, FolderWork& chosen);
void add_calibrate_command(CLI::App& app, FolderWork& chosen);

/// match, name: persons of two files, two names. Need no folder.
void add_match_commands(CLI::App& app, FolderWork& chosen);

/// bed, tone: values and files in, figures out. Need no folder.
void add_bed_commands(CLI::App& app, FolderWork& chosen);
void add_tone_commands(CLI::App& app, FolderWork& chosen);

/// A command with arguments of its own; `add` gives it its options. They live as long as the parser.
template <class Arguments, class Add>
void add_command(CLI::App& app, Work& chosen, const char* name, const char* what,
                 Outcome<Ending> (*run)(Context&, const Arguments&), Add add) {
  CLI::App* command = app.add_subcommand(name, what);
  const auto arguments = std::make_shared<Arguments>();
  add(*command, *arguments);
  command->callback([arguments, run, &chosen] {
    chosen = [arguments, run](Context& context) { return run(context, *arguments); };
  });
}

}  // namespace weavelog::cli
