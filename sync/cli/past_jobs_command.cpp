// past-jobs: what a room has today in a table, looked at first, then brought in, and taken back as one.

#include <filesystem>

#include "core/base/text.h"
#include "core/desk/bring_past_jobs.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"

namespace weavelog::cli {
namespace {

struct PastArguments {
  std::string file, encoding, unit, day_order, likely, by;
  std::vector<std::string> columns;
  bool confirm = false, good_rows = false, take_back = false;
};

/// So many actions are stored before they are noted for taking back.
constexpr std::size_t kNotedTogether = 100;

Outcome<PastJobsOptions> options_of(const PastArguments& arguments, UnixMs now) {
  PastJobsOptions out;
  out.last_day = last_past_day(now);
  if (!arguments.encoding.empty()) {
    const auto encoding = encoding_from(arguments.encoding);
    if (!encoding)
      return fail(FaultCode::bad_input, "\"" + arguments.encoding + "\" is no encoding known here", "--encoding", "use utf-8, utf-16, windows-1252 or latin-1");
    out.csv.encoding = *encoding;
  }
  if (!arguments.unit.empty()) out.unit = unit_from(arguments.unit);
  if (!arguments.day_order.empty()) out.day_order = arguments.day_order == "days" ? DayOrder::days_first : DayOrder::months_first;
  for (const std::string& said : arguments.columns) {
    const auto equals = said.find('=');
    if (equals == std::string::npos || equals == 0)
      return fail(FaultCode::bad_input, "\"" + shortened(said, 60) + "\" does not say which column is which", "--column", "write OURS=HEADER, such as mains_tension=\"Main kg\"");
    out.columns.emplace_back(said.substr(0, equals), said.substr(equals + 1));
  }
  return out;
}

std::string_view name_of(DayOrder order) { return order == DayOrder::unsaid ? "" : order == DayOrder::days_first ? "days_first" : "months_first"; }

std::string band_words(MatchBand band) { return band == MatchBand::known ? "known" : band == MatchBand::likely ? "likely" : "new"; }

Outcome<Ending> take_back(Context& context) {
  const auto taken = take_back_import(context.ledger(), [&](const Draft& draft) { return context.workplace().commit(draft); });
  if (!taken) return fail(taken.error());
  json::array kept;
  std::string text = std::to_string(taken->undone) + " actions taken back\n";
  for (const Fault& fault : taken->kept) {
    kept.push_back(fault_json(fault));
    text += "stays: " + fault.message() + "\n";
  }
  const bool all = kept.empty();
  context.answer(json::object{{"undone", taken->undone}, {"kept", std::move(kept)}}, text);
  return all ? Ending::done : Ending::needs_answer;
}

Outcome<std::size_t> store(Context& context, const std::vector<Draft>& drafts, PastImport import) {
  for (const Draft& draft : drafts) {
    const auto stored = context.workplace().commit(draft);
    if (!stored) {
      (void)note_past_import(context.ledger(), import);  // what is in can be taken back
      return fail(stored.error());
    }
    import.actions.emplace_back(draft.book(), stored->dot.seq);
    if (import.actions.size() % kNotedTogether == 0)
      if (auto noted = note_past_import(context.ledger(), import); !noted) return fail(noted.error());
  }
  if (!import.actions.empty())
    if (auto noted = note_past_import(context.ledger(), import); !noted) return fail(noted.error());
  return import.actions.size();
}

Outcome<Ending> past_jobs(Context& context, const PastArguments& arguments) {
  if (arguments.take_back) return take_back(context);
  const auto options = options_of(arguments, context.now());
  if (!options) return fail(options.error());
  std::error_code ignored;
  if (arguments.file.empty() || !std::filesystem::exists(arguments.file, ignored))
    return fail(FaultCode::not_found, "there is no such file", arguments.file.empty() ? "FILE" : arguments.file, "check its name and folder");
  const auto bytes = read_text_file(arguments.file, options->csv.limits.file_bytes);
  if (!bytes) return fail(bytes.error());
  const auto jobs = read_past_jobs(*bytes, *options, arguments.file);
  if (!jobs) return fail(jobs.error());
  const PastPlan plan = plan_past_jobs(context.ledger(), *jobs);

  json::array columns, players, faults;
  std::string text;
  for (const ColumnUse& use : jobs->columns) {
    columns.push_back(json::object{{"header", use.header}, {"ours", use.ours}, {"unit", symbol_of(use.unit)}});
    text += "column " + use.header + ": " + (use.ours.empty() ? "not used" : use.ours) + (use.unit == Unit::none ? "" : " in " + std::string(symbol_of(use.unit))) + "\n";
  }
  if (jobs->unit != Unit::none)
    text += "tensions without a unit: " + std::string(symbol_of(jobs->unit)) + (jobs->unit_found ? ", by their size: look whether that is right\n" : "\n");
  if (jobs->day_order != DayOrder::unsaid)
    text += "dates such as 03/04/2030: " + std::string(jobs->day_order == DayOrder::days_first ? "the day first" : "the month first") +
            (jobs->day_order_by == DayOrderBy::taken ? ", since nothing tells: look whether that is right, otherwise --day-order months\n" : "\n");
  for (const Fault& fault : jobs->faults) {
    faults.push_back(fault_json(fault));
    text += "broken: " + fault.message() + "\n";
  }
  for (const PastPlayer& player : plan.players) {
    const std::string name = player.person.family_name + (player.person.given_name.empty() ? "" : " ") + player.person.given_name;
    players.push_back(json::object{{"name", name}, {"band", band_words(player.band)}, {"book", player.book ? json::value(player.book.hex()) : json::value(nullptr)},
                                   {"looks_like", player.looks_like}, {"rackets", player.rows.size()}, {"new", player.fresh}});
    if (player.band == MatchBand::likely) text += "likely known: " + name + " may be " + player.looks_like + "\n";
  }
  const LikelyPlayers likely = arguments.likely == "known" ? LikelyPlayers::take_as_known
                               : arguments.likely == "new" ? LikelyPlayers::take_as_new
                                                           : LikelyPlayers::leave_out;
  const bool blocked = !jobs->faults.empty() && !arguments.good_rows, asked = plan.in_band(MatchBand::likely) > 0 && arguments.likely.empty();
  const bool stores = arguments.confirm && !blocked;
  std::size_t actions = 0;
  text += std::to_string(plan.fresh()) + " rackets of " + std::to_string(plan.players.size()) + " players would be new: " +
          std::to_string(plan.in_band(MatchBand::known)) + " known, " + std::to_string(plan.in_band(MatchBand::likely)) + " likely known, " +
          std::to_string(plan.in_band(MatchBand::new_person)) + " new";
  if (stores) {
    const std::string by = arguments.by.empty() ? context.ledger().self().device : arguments.by;
    const auto stored = store(context, past_job_drafts(context.ledger(), *jobs, plan, likely, by, context.now()),
                              {std::filesystem::path(arguments.file).filename().string(), context.now(), {}});
    if (!stored) return fail(stored.error());
    actions = *stored;
    text += actions > 0 ? "\nbrought in; `past-jobs --take-back` takes it back"
            : plan.players.empty() ? "\nnothing was brought in: the table has no good row"
            : plan.fresh() == 0    ? "\nnothing was brought in: all of it is here already"
                                   : "\nnothing was brought in";
    if (asked) text += "\nthose who are likely known were left out: --likely known or --likely new";
  } else if (arguments.confirm) {
    text += "\nnothing was brought in; mend the file, or take the " + std::to_string(jobs->rows.size()) + " good rows with --good-rows";
  } else {
    text += "\nnothing was stored; with --confirm it is";
  }
  context.answer(json::object{{"stored", actions > 0}, {"actions", actions}, {"good_rows", jobs->rows.size()}, {"new", plan.fresh()},
                              {"unit", symbol_of(jobs->unit)}, {"unit_found", jobs->unit_found}, {"day_order", name_of(jobs->day_order)}, {"day_order_taken", jobs->day_order_by == DayOrderBy::taken}, {"columns", std::move(columns)}, {"players", std::move(players)},
                              {"faults", std::move(faults)}},
                 text);
  if (arguments.confirm && blocked) return Ending::fault;
  return !stores || asked ? Ending::needs_answer : Ending::done;
}

}  // namespace

void add_past_jobs_command(CLI::App& app, Work& chosen) {
  add_command<PastArguments>(
      app, chosen, "past-jobs", "Bring in what was strung before, from a table kept by hand", past_jobs,
      [](CLI::App& command, PastArguments& arguments) {
        std::string names;
        for (const std::string_view name : past_job_columns()) names += (names.empty() ? "" : ", ") + std::string(name);
        command.add_option("FILE", arguments.file, "A CSV file");
        command.add_option("--column", arguments.columns, "OURS=HEADER; may be given several times. What is not said is found by common words");
        command.add_option("--unit", arguments.unit, "Of tensions that have none")->check(CLI::IsMember({"kg", "lb", "N"}));
        command.add_option("--day-order", arguments.day_order, "Of dates with slashes, 03/04/2030: which stands first; default: found")->check(CLI::IsMember({"days", "months"}));
        command.add_option("--encoding", arguments.encoding, "utf-8, utf-16, windows-1252 or latin-1; default: found");
        command.add_option("--likely", arguments.likely, "What becomes of players who are likely known; default: they are left out")->check(CLI::IsMember({"known", "new"}));
        command.add_flag("--good-rows", arguments.good_rows, "Leave broken rows out and take the others");
        command.add_flag("--confirm", arguments.confirm, "Somebody has looked at it: store it");
        command.add_flag("--take-back", arguments.take_back, "Take the newest import of this device back, as one");
        command.add_option("--by", arguments.by, "Who strung where no column says it; default: the device's name");
        command.footer("Without --confirm nothing is stored and it ends with 3; a file may come twice, what is in already is not doubled.\nColumns of ours: " + names +
                       ".\n--json: one object: stored, actions, good_rows, new, unit, unit_found, day_order (days_first, months_first or \"\"), day_order_taken,\ncolumns [{header, ours, unit}], players [{name, band, book, looks_like,\n"
                       "rackets, new}], faults; with --take-back: undone, kept.");
      });
}

}  // namespace weavelog::cli
