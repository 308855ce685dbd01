#include "core/base/csv.h"
#include "core/base/iso_time.h"
#include "core/desk/export.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/render.h"

namespace weavelog::cli {
namespace {

// --------------------------------------------------------------------------------------------------------
// export

struct ExportArguments {
  std::string player;
  std::string event;
  std::string file;
  bool csv = false;
};

Outcome<Ending> delivered(Context& context, const std::string& content, const std::string& file) {
  if (auto done = context.deliver(content, file); !done) return fail(done.error());
  return Ending::done;
}

Outcome<Ending> export_player(Context& context, const ExportArguments& arguments) {
  const auto record = load_chosen(context, arguments.player);
  if (!record) return fail(record.error());
  return delivered(context, arguments.csv ? job_history_csv(*record) : player_json(*record, held_in_events(context.ledger(), *record), written_entries(context.ledger(), record->book)), arguments.file);
}

std::string entries_csv(const EventRecord& record) {
  CsvWriter csv;
  csv.row({"family_name", "given_name", "native_name", "country", "birth_year", "seed", "entry", "draw",
           "hand", "tour_number"});
  const auto number = [](const std::optional<std::int64_t>& held) {
    return held ? std::to_string(*held) : std::string();
  };
  const auto choice = [](auto held) {
    return held == decltype(held){} ? std::string() : std::string(name_of_choice(held));
  };
  for (const auto& entry : record.entries) {
    const EntryListItem& item = entry.now;
    csv.row({item.family_name, item.given_name, item.native_name, item.country, number(item.birth_year),
             number(item.seed), choice(item.via), item.draw, choice(item.hand), item.tour_number});
  }
  return csv.text();
}

Outcome<Ending> export_event(Context& context, const ExportArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  if (!arguments.csv)
    return delivered(context, event_json(*event, context.ledger().entities(*event)), arguments.file);
  const auto record = load_event(context.ledger(), *event);
  if (!record) return fail(record.error());
  return delivered(context, entries_csv(*record), arguments.file);
}

std::string jobs_csv(const std::vector<JobRow>& rows) {
  CsvWriter csv;
  csv.row({"at", "event", "tag_number", "family_name", "given_name", "native_name", "racket", "mains_string",
           "mains_tension", "crosses_string", "crosses_tension", "ready_by", "rush", "stage", "stage_at",
           "stage_by"});
  const auto time = [](const std::optional<std::int64_t>& at) { return at ? iso_utc(*at) : std::string(); };
  const auto tension = [](const std::optional<Quantity>& held) {
    return held ? text_of(*held) : std::string();
  };
  for (const JobRow& row : rows)
    csv.row({time(row.at), row.event_name, row.tag_number ? std::to_string(*row.tag_number) : "",
             row.family_name, row.given_name, row.native_name, row.racket_label, row.mains_string,
             tension(row.mains_tension), row.crosses_string, tension(row.crosses_tension), time(row.ready_by),
             std::string(name_of_choice(row.rush)), std::string(name_of_choice(row.stage)),
             time(row.stage_at), row.stage_by});
  return csv.text();
}

Outcome<Ending> export_jobs(Context& context, const ExportArguments& arguments) {
  std::optional<BookId> event;
  if (!arguments.event.empty()) {
    const auto chosen = context.event(arguments.event);
    if (!chosen) return fail(chosen.error());
    event = *chosen;
  }
  constexpr std::size_t kPage = 10'000;
  std::vector<JobRow> rows;
  std::optional<JobKey> after;
  for (;;) {
    auto page = page_of_jobs(context.ledger(), event, after, kPage);
    const bool last = page.size() < kPage;
    if (!page.empty()) after = page.back().key;
    rows.insert(rows.end(), std::make_move_iterator(page.begin()), std::make_move_iterator(page.end()));
    if (last) break;
  }
  if (arguments.csv) return delivered(context, jobs_csv(rows), arguments.file);
  json::array list;
  for (const JobRow& row : rows) list.push_back(row_json(row));
  return delivered(context, json::serialize(list), arguments.file);
}

// ------------------------------------------------------------------------------------------ verify, rebuild,
// quarantine

struct CareArguments {};

Outcome<Ending> verify(Context& context, const CareArguments&) {
  const VerifyReport report = context.ledger().verify();
  json::array faults;
  std::string text = std::to_string(report.entries) + " entries, " + std::to_string(report.entities) +
                     " things, " + std::to_string(report.stubs) + " forgotten books: " + (report.faults.empty() ? "all is well" : "not as it should be") + "\n";
  json::array forks;
  for (const Fork& fork : context.ledger().forks()) {
    forks.push_back(json::object{{"book", fork.book.hex()}, {"device", fork.author.device}, {"author", fork.author.id().hex()},
                                 {"seq", fork.seq}, {"seen", iso_utc(fork.seen)}});
    text += "\"" + fork.author.device + "\" was copied and both copies wrote (book " + fork.book.hex() + ", from entry " +
            std::to_string(fork.seq) + " on): both are kept, the other branch is in `quarantine`\n";
  }
  for (const std::string& fault : report.faults) {
    faults.push_back(json::string(fault));
    text += fault + "\n";
  }
  text += not_compared_line(report);
  context.answer(json::object{{"entries", report.entries},
                              {"entities", report.entities},
                              {"stubs", report.stubs},
                              {"forks", std::move(forks)},
                              {"well", report.faults.empty()},
                              {"faults", std::move(faults)},
                              {"not_compared", report.not_compared}},
                 text);
  return report.faults.empty() ? Ending::done : Ending::fault;
}

Outcome<Ending> rebuild(Context& context, const CareArguments&) {
  if (auto done = context.ledger().rebuild(); !done) return fail(done.error());
  context.answer(json::object{{"rebuilt", true}}, "rebuilt from the entries");
  return Ending::done;
}

/// What it would have written, as far as it can be read.
json::array writes_of(Context& context, std::int64_t number) {
  json::array out;
  if (const auto entry = context.ledger().quarantined_entry(number))
    for (const Write& write : entry->writes) {
      const FieldInfo* field = context.ledger().registry().find(write.tag);
      out.push_back(json::object{{"entity", write.entity.hex()},
                                 {"field", field ? std::string(field->name) : std::to_string(static_cast<std::uint32_t>(write.tag))},
                                 {"value", text_of(write.value)}});
    }
  return out;
}

Outcome<Ending> quarantine(Context& context, const CareArguments&) {
  json::array list;
  std::string text;
  ToldTimes told(context);
  for (const Quarantined& held : context.ledger().quarantine()) {
    list.push_back(json::object{{"number", held.number},
                                {"book", held.book.hex()},
                                {"author", held.author.hex()},
                                {"device", held.device},
                                {"writes", writes_of(context, held.number)},
                                {"seq", held.seq},
                                {"reason", held.reason},
                                {"at", iso_utc(held.at)}});
    text += told(held.at) + "  " + held.reason + "  book " + held.book.hex() + ", entry " +
            std::to_string(held.seq) + " of " + (held.device.empty() ? held.author.hex() : held.device) + "\n";
  }
  context.answer(list, text.empty() ? "nothing was put aside" : text);
  return Ending::done;
}

}  // namespace

void add_care_commands(CLI::App& app, Work& chosen) {
  CLI::App* all = app.add_subcommand("export", "Write out what is held, as JSON or CSV");
  all->require_subcommand(1);
  const auto add_options = [](CLI::App& command, ExportArguments& arguments, const char* csv) {
    command.add_flag("--csv", arguments.csv, csv);
    command.add_option("--out", arguments.file, "FILE to write; default: standard output");
  };
  add_command<ExportArguments>(
      *all, chosen, "player", "Everything on one player", export_player,
      [&](CLI::App& command, ExportArguments& arguments) {
        command.add_option("PLAYER", arguments.player, "A name that finds exactly one, or the book's number")
            ->required();
        add_options(command, arguments, "The job history as CSV");
        command.footer("One JSON object, weavelog-player version 1, whether or not --json is given.");
      });
  add_command<ExportArguments>(
      *all, chosen, "event", "Everything on an event", export_event,
      [&](CLI::App& command, ExportArguments& arguments) {
        command.add_option("--event", arguments.event,
                           "NAME or number of the event; default: the one in use");
        add_options(command, arguments, "The entry list as CSV, as `import entries` reads it");
        command.footer("One JSON object, weavelog-event version 1, whether or not --json is given.");
      });
  add_command<ExportArguments>(
      *all, chosen, "jobs", "All jobs, newest first", export_jobs,
      [&](CLI::App& command, ExportArguments& arguments) {
        command.add_option("--event", arguments.event, "Those of one event only: its NAME or number");
        add_options(command, arguments, "As CSV");
        command.footer("A JSON array of jobs as `board` has them, whether or not --json is given.");
      });
  add_command<CareArguments>(
      app, chosen, "verify", "Check the database against its entries", verify,
      [](CLI::App& command, CareArguments&) {
        command.footer(
            "--json: one object: entries, entities, stubs, forks: [{book, device, author, seq, seen}],\n"
            "well, faults, not_compared: why what the screens show could not be compared with the entries, or empty.\n"
            "Exit code 1 if not all is well.");
      });
  add_command<CareArguments>(app, chosen, "rebuild", "Make the tables anew from the entries", rebuild,
                       [](CLI::App& command, CareArguments&) { command.footer("--json: one object: rebuilt."); });
  add_command<CareArguments>(app, chosen, "quarantine", "Entries that were put aside, with the reason", quarantine,
                       [](CLI::App& command, CareArguments&) {
                         command.footer("--json: an array of {number, book, author, device, seq, reason, at,\n"
                                        "writes: [{entity, field, value}]}.");
                       });
}

}  // namespace weavelog::cli
