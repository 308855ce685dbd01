#include <filesystem>

#include "core/base/csv.h"
#include "core/base/iso_time.h"
#include "core/desk/keep_rule.h"
#include "core/model/queries.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/render.h"

namespace weavelog::cli {
namespace {

// --------------------------------------------------------------------------------------------------------
// events

struct EventsArguments {
  std::string use;
};

Outcome<Ending> events(Context& context, const EventsArguments& arguments) {
  if (!arguments.use.empty()) {
    const auto event = context.event(arguments.use);
    if (!event) return fail(event.error());
    if (auto used = context.use_event(*event); !used) return fail(used.error());
  }
  const auto in_use = context.event();
  json::array list;
  std::string text;
  for (const EventRow& row : all_events(context.ledger())) {
    const bool used = in_use && *in_use == row.book;
    json::object one = row_json(row);
    one["in_use"] = used;
    list.push_back(std::move(one));
    text += std::string(used ? "* " : "  ") + row.name + (row.place.empty() ? "" : ", " + row.place) + "  " +
            row.first_day + (row.last_day.empty() ? "" : " to " + row.last_day) + "  " +
            std::to_string(row.open_jobs) + " open jobs  " + row.book.hex() + "\n";
  }
  context.answer(list, text.empty() ? "no event yet; use `pair` or `new-event`" : text);
  return Ending::done;
}

struct NewEventArguments {
  EventInfo event;
};

Outcome<Ending> make_event(Context& context, const NewEventArguments& arguments) {
  const BookId book = context.ledger().create_book_id();
  const auto draft = new_event(book, arguments.event, context.now());
  if (!draft) return fail(draft.error());
  if (auto made = context.workplace().commit(*draft); !made) return fail(made.error());
  if (auto used = context.use_event(book); !used) return fail(used.error());
  context.answer(json::object{{"book", book.hex()}, {"name", arguments.event.name}},
                 arguments.event.name + "  " + book.hex());
  return Ending::done;
}

struct KeepArguments {
  std::string event;
  std::optional<std::int64_t> days;
  bool keep = false;
};

Outcome<Ending> keep_rule(Context& context, const KeepArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  if (arguments.days || arguments.keep) {
    if (arguments.days && arguments.keep) return fail(FaultCode::bad_input, "days and --always are said at once", "keep-days", "say one of them");
    const auto record = load_event(context.ledger(), *event);
    if (!record) return fail(record.error());
    const auto draft = set_keep_days(*record, arguments.days);
    if (!draft) return fail(draft.error());
    if (auto set = context.workplace().commit(*draft); !set) return fail(set.error());
  }
  const auto record = load_event(context.ledger(), *event);
  if (!record) return fail(record.error());
  const auto days = record->event.now.keep_days;
  const auto at = books_go_at(record->event.now);
  context.answer(json::object{{"event", event->hex()}, {"days", days ? json::value(*days) : json::value()}, {"until", at ? json::value(iso_utc(*at)) : json::value()}},
                 at ? "its server lets players' books go " + std::to_string(*days) + " days after the last day, " + ToldTimes(context)(*at, *event)
                    : "its server keeps players' books");
  return Ending::done;
}

// --------------------------------------------------------------------------------------------------------
// import

struct ImportArguments {
  std::string file;
  std::string encoding;
  std::string event;
  bool good_rows = false;
};

Outcome<std::string> bytes_of(const ImportArguments& arguments, const CsvOptions& options) {
  std::error_code ignored;
  if (!std::filesystem::exists(arguments.file, ignored))
    return fail(FaultCode::not_found, "there is no such file", arguments.file, "check its name and folder");
  return read_text_file(arguments.file, options.limits.file_bytes);
}

Outcome<CsvOptions> options_of(const ImportArguments& arguments) {
  CsvOptions options;
  if (arguments.encoding.empty()) return options;
  const auto encoding = encoding_from(arguments.encoding);
  if (!encoding)
    return fail(FaultCode::bad_input, "\"" + arguments.encoding + "\" is no encoding known here",
                "--encoding", "use utf-8, utf-16, windows-1252 or latin-1");
  options.encoding = *encoding;
  return options;
}

json::array faults_json(const std::vector<Fault>& faults) {
  json::array out;
  for (const Fault& fault : faults) out.push_back(fault_json(fault));
  return out;
}

/// Stores what was read, or says why not. `List` is an EntryList or a PriceList.
template <class List>
Outcome<Ending> import_list(
    Context& context, const ImportArguments& arguments, const List& list,
    ImportDrafts (*drafts_of)(const EventRecord&, std::span<const typename decltype(List::rows)::value_type>,
                              UnixMs)) {
  const auto record = event_here(context, arguments.event);
  if (!record) return fail(record.error());

  ImportDrafts drafts;
  const bool take = list.faults.empty() || arguments.good_rows;
  if (take) {
    drafts = drafts_of(*record, list.rows, context.now());
    for (const Draft& draft : drafts.drafts)
      if (auto stored = context.workplace().commit(draft); !stored) return fail(stored.error());
  }
  std::string text;
  for (const Fault& fault : list.faults) text += "broken: " + fault.message() + "\n";
  for (const Fault& fault : list.doubts) text += "look: " + fault.message() + "\n";
  for (const std::string& column : list.ignored_columns) text += "column not used: " + column + "\n";
  text += take ? std::to_string(drafts.added) + " added, " + std::to_string(drafts.updated) + " updated, " +
                     std::to_string(drafts.unchanged) + " unchanged"
               : "nothing was imported; mend the file, or take the " + std::to_string(list.rows.size()) +
                     " good rows with --good-rows";
  json::array ignored;
  for (const std::string& column : list.ignored_columns) ignored.push_back(json::string(column));
  context.answer(json::object{{"imported", take},
                              {"event", record->book.hex()},
                              {"good_rows", list.rows.size()},
                              {"added", drafts.added},
                              {"updated", drafts.updated},
                              {"unchanged", drafts.unchanged},
                              {"faults", faults_json(list.faults)},
                              {"doubts", faults_json(list.doubts)},
                              {"ignored_columns", std::move(ignored)}},
                 text);
  return take ? Ending::done : Ending::fault;
}

/// Reads the file with `read` and imports it.
template <class Read, class DraftsOf>
Outcome<Ending> import_file(Context& context, const ImportArguments& arguments, Read read,
                            DraftsOf drafts_of) {
  const auto options = options_of(arguments);
  if (!options) return fail(options.error());
  const auto bytes = bytes_of(arguments, *options);
  if (!bytes) return fail(bytes.error());
  const auto list = read(*bytes, *options, arguments.file);
  if (!list) return fail(list.error());
  return import_list(context, arguments, *list, drafts_of);
}

Outcome<Ending> import_entry_file(Context& context, const ImportArguments& arguments) {
  return import_file(context, arguments, read_entry_list, import_entries);
}

Outcome<Ending> import_price_file(Context& context, const ImportArguments& arguments) {
  return import_file(context, arguments, read_price_list, import_prices);
}

void add_import_options(CLI::App& command, ImportArguments& arguments) {
  command.add_option("FILE", arguments.file, "The CSV file")->required();
  command.add_option("--event", arguments.event, "NAME or number of the event; default: the one in use");
  command.add_option("--encoding", arguments.encoding,
                     "utf-8, utf-16, windows-1252 or latin-1; default: UTF-8, or UTF-16 with its mark");
  command.add_flag("--good-rows", arguments.good_rows, "Import the good rows although others are broken");
}

constexpr const char* kImportFooter =
    "Nothing is imported while a row is broken, unless --good-rows is given (exit code 1 then).\n"
    "--json: one object: imported, event, good_rows, added, updated, unchanged, faults and doubts (code, "
    "what, where,\n"
    "what_to_do each), ignored_columns.";

}  // namespace

void add_event_commands(CLI::App& app, Work& chosen) {
  add_command<EventsArguments>(
      app, chosen, "events", "List the events held here", events,
      [](CLI::App& command, EventsArguments& arguments) {
        command.add_option("--use", arguments.use,
                           "Work at this one from now on: NAME or the beginning of its number");
        command.footer("--json: an array of {book, name, place, first_day, last_day, open_jobs, in_use}.");
      });
  add_command<NewEventArguments>(
      app, chosen, "new-event", "Make an event without a server, for working alone", make_event,
      [](CLI::App& command, NewEventArguments& arguments) {
        command.add_option("NAME", arguments.event.name, "Its name")->required();
        command.add_option("--place", arguments.event.place, "Where it is");
        command.add_option("--first-day", arguments.event.first_day, "YYYY-MM-DD");
        command.add_option("--last-day", arguments.event.last_day, "YYYY-MM-DD");
        command.add_option("--time-zone", arguments.event.time_zone, "IANA name, such as Europe/Lisbon");
        command.add_option("--currency", arguments.event.currency, "Three letters, such as EUR");
        command.add_option("--keep-days", arguments.event.keep_days, "A server of this event lets players' books go so many days after the last day");
        command.footer("--json: one object: book, name.");
      });
  add_command<KeepArguments>(app, chosen, "keep-days", "How long the event's server keeps players' books: show the rule, or set it", keep_rule,
                             [](CLI::App& command, KeepArguments& arguments) {
                               command.add_option("DAYS", arguments.days, "So many days after the event's last one, 0 to 3650");
                               command.add_flag("--always", arguments.keep, "It keeps them");
                               command.add_option("--event", arguments.event, "NAME or number of the event; default: the one in use");
                               command.footer("--json: one object: event, days, until (null where they are kept).");
                             });
  CLI::App* import = app.add_subcommand("import", "Bring a list into the event's book");
  import->require_subcommand(1);
  add_command<ImportArguments>(
      *import, chosen, "entries", "An entry list", import_entry_file,
      [](CLI::App& command, ImportArguments& arguments) {
        add_import_options(command, arguments);
        command.footer(std::string("Columns, in any order: family_name (required), given_name, native_name, "
                                   "country, birth_year, seed,\n"
                                   "entry, draw, hand, tour_number. A second import updates by name, country "
                                   "and birth year.\n") +
                       kImportFooter);
      });
  add_command<ImportArguments>(
      *import, chosen, "prices", "What the room charges", import_price_file,
      [](CLI::App& command, ImportArguments& arguments) {
        add_import_options(command, arguments);
        command.footer(std::string("Columns, in any order: service, amount, currency.\n") + kImportFooter);
      });
}

}  // namespace weavelog::cli
