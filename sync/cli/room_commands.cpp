#include "core/desk/bench.h"
#include "core/desk/cautions.h"
#include "core/desk/tags.h"
#include "core/model/field_json.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/field_input.h"
#include "sync/cli/render.h"

namespace weavelog::cli {
namespace {

// ---------------------------------------------------------------------------------------------------------
// stage

struct StageArguments {
  std::string job;
  std::string stage;
  std::string reason;
  std::string by;
  std::string event;
  std::string machine;
};

/// Without an event in use jobs can still be named by their numbers.
Outcome<BookId> event_or_none(Context& context, const std::string& wanted) {
  const auto event = context.event(wanted);
  if (!event && !wanted.empty()) return fail(event.error());
  return event.value_or(BookId{});
}

Outcome<Ending> move_on(Context& context, const StageArguments& arguments) {
  std::vector<std::string_view> names;
  for (const auto& choice : choices(Stage{}))
    if (choice.value != Stage::none) names.push_back(choice.name);
  const auto stage = choice_from<Stage>(arguments.stage);
  if (!stage || *stage == Stage::none) return no_choice(arguments.stage, "stage", names);
  const auto event = event_or_none(context, arguments.event);
  if (!event) return fail(event.error());
  const auto row = choose_job(context, *event, arguments.job);
  if (!row) return fail(row.error());
  const auto record = load_player(context.ledger(), row->book);
  if (!record) return fail(record.error());
  const auto by = arguments.by.empty() ? context.ledger().self().device : arguments.by;
  const StageNow before = record->stage_of(row->job);
  StageStep step{*stage, by, arguments.reason, context.now()};
  std::vector<std::string> doubts;
  if (!arguments.machine.empty()) {
    const auto machine = choose_machine(context, row->event, arguments.machine);
    if (!machine) return fail(machine.error());
    if (auto in_order = require_in_order(*machine); !in_order) return fail(in_order.error());
    step.machine = machine->machine.id();
    step.machine_name = machine->machine.now.name;
    doubts = machine_doubts(context.language(), machine->machine.now, record->job(row->job)->now);
  }
  const auto draft = step_at_bench(*record, row->job, step);
  if (!draft && before.clash && draft.error().code == FaultCode::conflict) {
    // A clash is a question to a person, not a failure.
    complain(draft.error(), context.settings().json);
    return Ending::needs_answer;
  }
  if (!draft) return fail(draft.error());
  if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  const auto now = find_job(context.ledger(), row->book, row->job);
  std::string text = std::string(name_of_choice(before.stage)) + " → " + arguments.stage + "\n";
  json::array cautions;
  for (const Caution caution :
       cautions_for(*stage, record->job(row->job)->now,
                    record->racket(row->racket) ? &record->racket(row->racket)->now : nullptr,
                    doubt_about(*record, row->racket).has_value())) {
    cautions.push_back(json::string(caution_text(context.language(), caution)));
    text += caution_text(context.language(), caution) + "\n";
  }
  json::array against;
  for (const std::string& doubt : doubts) {
    against.push_back(json::string(doubt));
    text += doubt + "\n";
  }
  json::object out = now ? row_json(*now, doubled_tags(context.ledger(), now->event)) : json::object();
  out["from"] = to_json("stage", before.stage);
  out["machine_doubts"] = std::move(against);
  out["cautions"] = std::move(cautions);
  context.answer(out, text);
  return Ending::done;
}

// ---------------------------------------------------------------------------------------------------------
// board

struct BoardArguments {
  std::string event;
  bool all = false;
};

Outcome<Ending> board(Context& context, const BoardArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const auto counts = count_by_stage(context.ledger(), *event);
  const auto doubled = doubled_tags(context.ledger(), *event);
  json::array stages;
  std::string text;
  ToldTimes told(context);
  for (const auto& choice : choices(Stage{})) {
    const std::int64_t count = counts[static_cast<std::size_t>(choice.value)];
    const bool gone = choice.value == Stage::collected;
    if (count == 0 && !arguments.all) continue;
    json::array jobs;
    text += std::string(choice.name) + ": " + std::to_string(count) + "\n";
    if (!gone || arguments.all) {
      for (const JobRow& row : jobs_at_stage(context.ledger(), *event, choice.value)) {
        jobs.push_back(row_json(row, doubled));
        text += "  " + row_text(row, told, doubled) + "\n";
      }
    }
    stages.push_back(json::object{{"stage", choice.name}, {"count", count}, {"jobs", std::move(jobs)}});
  }
  json::array clashes;
  for (const JobRow& row : clashing_jobs(context.ledger(), *event))
    clashes.push_back(json::string(row.job.hex()));
  context.answer(
      json::object{{"event", event->hex()}, {"stages", std::move(stages)}, {"clashes", std::move(clashes)}},
      text.empty() ? "no rackets yet" : text);
  return Ending::done;
}

// ----------------------------------------------------------------------------------------------------------
// next

struct NextArguments {
  std::string event;
  std::size_t count = 1;
};

Outcome<Ending> next(Context& context, const NextArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  json::array list;
  std::string text;
  ToldTimes told(context);
  const auto doubled = doubled_tags(context.ledger(), *event);
  for (const JobRow& row : next_jobs(context.ledger(), *event, arguments.count)) {
    const auto record = load_player(context.ledger(), row.book);
    if (!record) return fail(record.error());
    const auto* job = record->job(row.job);
    if (!job) continue;
    json::object one = row_json(row, doubled);
    one["agreed"] = fields_json(static_cast<const Agreed&>(job->now));
    json::array steps;
    for (const Stage step : next_steps(row.stage)) steps.push_back(json::string(name_of_choice(step)));
    one["next_steps"] = std::move(steps);
    list.push_back(std::move(one));
    text += row_text(row, told, doubled) + "\n" + agreed_text(context.language(), job->now);
  }
  const bool none = list.empty();
  context.answer(list, none ? "nothing waits for a bench" : text);
  return none ? Ending::not_found : Ending::done;
}

void add_event_option(CLI::App& command, std::string& event) {
  command.add_option("--event", event, "NAME or number of the event; default: the one in use");
}

}  // namespace

void add_room_commands(CLI::App& app, Work& chosen) {
  add_command<StageArguments>(
      app, chosen, "stage", "Move a racket on, put it aside or step back", move_on,
      [](CLI::App& command, StageArguments& arguments) {
        std::string names;
        for (const auto& choice : choices(Stage{}))
          if (choice.value != Stage::none) names += (names.empty() ? "" : ", ") + std::string(choice.name);
        command
            .add_option("JOB-OR-TAG", arguments.job,
                        "Tag number, or six or more characters of the job's number")
            ->required();
        command.add_option("STAGE", arguments.stage, names)->required();
        command.add_option("--reason", arguments.reason,
                           "Needed to put aside, to step back, and to settle a clash");
        command.add_option("--by", arguments.by, "Who does it; default: the device's name");
        command.add_option("--machine", arguments.machine, "On which machine it is put: its name or number in `machines`");
        add_event_option(command, arguments.event);
        command.footer(
            "--json: the job as `board` has it, and from (stage before), cautions, machine_doubts (what speaks against the machine: a tension\n"
            "above what its maker allows, a pre-stretch that it has no preset for).\n"
            "Exit code 3 if two people moved it on while apart and no reason is given.");
      });
  add_command<BoardArguments>(app, chosen, "board", "The event's jobs by stage", board,
                              [](CLI::App& command, BoardArguments& arguments) {
                                command.add_flag("--all", arguments.all,
                                                 "Empty stages and collected rackets too");
                                add_event_option(command, arguments.event);
                                command.footer(
                                    "--json: one object: event, stages: [{stage, count, jobs: [{job, book, "
                                    "player, racket_label, tag_number,\ntag_doubled (another racket in the room has that tag too), stage,\n"
                                    "clash, ready_by, rush, mains_string, mains_tension, crosses_string, "
                                    "crosses_tension, ...}]}], clashes (jobs).");
                              });
  add_command<NextArguments>(
      app, chosen, "next", "The next racket for a bench, with its setup", next,
      [](CLI::App& command, NextArguments& arguments) {
        command.add_option("--count", arguments.count, "So many")
            ->check(CLI::Range(1, 500))
            ->capture_default_str();
        add_event_option(command, arguments.event);
        command.footer(
            "--json: an array of jobs as `board` has them, each with agreed (all values) and next_steps.\n"
            "Exit code 4 if nothing waits.");
      });
}

}  // namespace weavelog::cli
