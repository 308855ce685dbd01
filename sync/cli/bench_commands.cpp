// job, bench, reading, check, photo-add, photo-get: the work on one racket, what was measured, how it was found, how it looks.

#include "core/base/iso_time.h"
#include "core/base/local_time.h"
#include "core/base/localised.h"
#include "core/desk/bench.h"
#include "core/desk/cautions.h"
#include "core/desk/check.h"
#include "core/desk/choice_words.h"
#include "core/desk/inspection.h"
#include "core/desk/photo.h"
#include "core/desk/phrases.h"
#include "core/desk/tags.h"
#include "core/model/field_json.h"
#include "core/model/stock_tables.h"
#include "sync/carry/carried_file.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/field_input.h"
#include "sync/cli/host_talk.h"
#include "sync/cli/list_commands.h"
#include "sync/cli/render.h"

namespace weavelog::cli {
namespace {


json::array bench_json(const JobHere& here) {
  json::array out;
  for (const auto* held : benches_of(here.record, here.row.job)) {
    json::object one = fields_json(held->now);
    one.erase("job");
    json::array names;
    for (const std::string& name : split_names(held->now.steps_done)) names.push_back(json::string(name));
    one["steps_done"] = std::move(names);
    out.push_back(std::move(one));
  }
  return out;
}

json::array readings_json(const JobHere& here) {
  json::array out;
  for (const auto* held : readings_of(here.record, here.row.job)) {
    json::object one = fields_json(held->now);
    one.erase("job");
    out.push_back(std::move(one));
  }
  return out;
}

json::array checks_json(const Language& language, const JobHere& here) {
  json::array out;
  for (const auto* held : checks_of(here.record, here.row.job)) {
    json::object one = fields_json(held->now);
    one.erase("job");
    json::array items;
    for (const CheckedItem& item : checked_items(held->now))
      items.push_back(json::object{{"name", item.name}, {"words", step_words(language, item.name)}, {"ok", item.ok}});
    one["items"] = std::move(items);
    one["words"] = check_words(language, held->now);
    out.push_back(std::move(one));
  }
  return out;
}

json::array photos_json(Context& context, const JobHere& here) {
  json::array out;
  for (const auto* held : photos_of(here.record, here.row.racket)) {
    json::object one = fields_json(held->now);
    one["number"] = out.size() + 1;
    const auto content = content_of(held->now);
    one["here"] = content && context.station().contents().holds(here.row.book, *content);
    out.push_back(std::move(one));
  }
  return out;
}

std::string reading_text(const Language& language, const Reading& reading) {
  std::string out = choice_words(language, "reading.", reading.what) + ": ";
  if (reading.value) out += localised(language, *reading.value);
  if (reading.set_to) out += " (set to " + localised(language, *reading.set_to) + ")";
  if (!reading.machine_name.empty()) out += ", machine " + reading.machine_name;
  return out;
}

/// Everything that is known of one job.
void tell(Context& context, const JobHere& here) {
  const Language language = context.language();
  const Job& job = here.job().now;
  ToldTimes told(context);
  const auto doubled = doubled_tags(context.ledger(), here.row.event);
  json::object out = row_json(here.row, doubled);
  std::string text = row_text(here.row, told, doubled) + "\n" + agreed_text(language, job);
  out["agreed"] = fields_json(static_cast<const Agreed&>(job));
  json::array marks;
  for (const PlacedMark& placed : marks_of(here.record, here.row.job)) {
    json::object one = fields_json(placed.mark);
    one.erase("job");
    one.erase("after");
    marks.push_back(std::move(one));
    text += "  " + std::string(name_of_choice(placed.mark.stage)) + "  " + (placed.mark.at ? told(*placed.mark.at, here.row.event) : "") + "  " +
            placed.mark.by + (placed.mark.reason.empty() ? "" : ": " + placed.mark.reason) + "\n";
  }
  out["marks"] = std::move(marks);
  if (const auto time = time_on_machine(here.record, here.row.job)) {
    const std::int64_t minutes = (time->until.value_or(context.now()) - time->since) / kMinuteMs;
    json::object one{{"since", iso_utc(time->since)}, {"minutes", minutes}};
    if (time->until) one["until"] = iso_utc(*time->until);
    out["on_machine"] = std::move(one);
    text += "  " + std::to_string(minutes) + " min on the machine" + (time->until ? "\n" : " so far\n");
  }
  for (const auto* held : benches_of(here.record, here.row.job)) {
    text += "  bench: " + held->now.by;
    if (!held->now.machine_name.empty()) text += ", machine " + held->now.machine_name;
    if (!held->now.note.empty()) text += ": " + held->now.note;
    text += "\n";
    for (const std::string& name : split_names(held->now.steps_done)) text += "    done: " + step_words(language, name) + "\n";
  }
  for (const auto* held : readings_of(here.record, here.row.job)) text += "  " + reading_text(language, held->now) + "\n";
  for (const auto* held : checks_of(here.record, here.row.job))
    text += "  check by " + held->now.by + ": " + check_words(language, held->now) + "\n";
  out["bench"] = bench_json(here);
  out["readings"] = readings_json(here);
  out["checks"] = checks_json(language, here);
  out["photos"] = photos_json(context, here);
  out["redos"] = redos_of(here.record, here.row.job);
  std::size_t number = 0;
  for (const auto* held : photos_of(here.record, here.row.racket)) {
    const auto content = content_of(held->now);
    text += "  photo " + std::to_string(++number) + ": " + held->now.media_type + ", " + std::to_string(held->now.size.value_or(0)) + " bytes" +
            (content && context.station().contents().holds(here.row.book, *content) ? "" : ", not on this device") +
            (held->now.note.empty() ? "" : ": " + held->now.note) + "\n";
  }
  json::array stock;
  for (const auto& [item, amount] : stock_of_job(context.ledger(), here.row.event, here.row.job))
    stock.push_back(json::object{{"item", item.hex()}, {"amount", amount}});
  out["stock"] = std::move(stock);
  if (const auto redos = redos_of(here.record, here.row.job); redos > 0) text += "  done again: " + std::to_string(redos) + "\n";
  context.answer(out, text);
}

Outcome<> commit(Context& context, const Outcome<Draft>& draft) {
  if (!draft) return fail(draft.error());
  if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  return {};
}

Outcome<Ending> tell_again(Context& context, const JobHere& here) {
  const auto now = job_again(context, here);
  if (!now) return fail(now.error());
  tell(context, *now);
  return Ending::done;
}

struct JobArguments {
  std::string job, event, by, machine, what, value, set_to, reason, back_to;
  std::optional<std::string> note;
  std::vector<std::string> done, not_done, wrong;
  bool ok = false, replace = false;
  std::string file;
  std::optional<std::size_t> finding, photo;
  std::string host;
  int seconds = 60;
  bool offline = false;
};

std::string who(Context& context, const JobArguments& arguments) {
  return arguments.by.empty() ? context.ledger().self().device : arguments.by;
}

Outcome<Ending> show(Context& context, const JobArguments& arguments) {
  const auto here = job_here(context, arguments.event, arguments.job);
  if (!here) return fail(here.error());
  tell(context, *here);
  return Ending::done;
}

Outcome<Ending> bench(Context& context, const JobArguments& arguments) {
  auto here = job_here(context, arguments.event, arguments.job);
  if (!here) return fail(here.error());
  const auto list = work_list(list_steps(context.ledger(), here->row.event), WorkList::bench, true);
  const BenchHand hand{who(context, arguments), context.now()};
  // All of them are looked up before the first is stored.
  std::vector<std::pair<std::string, bool>> ticks;
  for (const bool done : {true, false})
    for (const std::string& typed : done ? arguments.done : arguments.not_done) {
      const auto step = choose_step(list, WorkList::bench, typed);
      if (!step) return fail(step.error());
      ticks.emplace_back(step->name, done);
    }
  if (!arguments.machine.empty()) {
    const auto machine = choose_machine(context, here->row.event, arguments.machine);
    if (!machine) return fail(machine.error());
    if (auto in_order = require_in_order(*machine); !in_order) return fail(in_order.error());
    const MachineSaid said{machine->machine.id(), machine->machine.now.name};
    // Before the ticks: what is refused leaves nothing.
    if (auto stored = commit(context, change_machine_of(here->record, here->row.job, said, hand)); !stored) return fail(stored.error());
    here = job_again(context, *here);
    if (!here) return fail(here.error());
  }
  for (const auto& [name, done] : ticks) {
    if (auto stored = commit(context, tick_step(here->record, here->row.job, name, done, hand)); !stored) return fail(stored.error());
    here = job_again(context, *here);
    if (!here) return fail(here.error());
  }
  if (arguments.note)
    if (auto stored = commit(context, note_bench(here->record, here->row.job, *arguments.note, hand)); !stored) return fail(stored.error());
  return tell_again(context, *here);
}

/// A bare number is hertz for a tone, the instrument's own scale for a stiffness.
Outcome<Quantity> measured(const std::string& text, ReadingKind what, const std::string& where) {
  if (what == ReadingKind::bed_stiffness)
    if (const auto bare = Decimal::parse(text)) return Quantity{*bare, Unit::none};
  auto quantity = quantity_from(text, what == ReadingKind::tone ? Unit::hertz : Unit::none, where);
  if (quantity) return quantity;
  Fault fault = quantity.error();
  std::string units;
  for (const Unit unit : units_of(what))
    if (unit != Unit::none) units += (units.empty() ? "" : ", ") + std::string(symbol_of(unit));
  fault.what_to_do = "write a figure and its unit: " + units + (what == ReadingKind::bed_stiffness ? "; or the figure alone, as the instrument shows it" : "");
  return fail(std::move(fault));
}

Outcome<Ending> reading(Context& context, const JobArguments& arguments) {
  const auto what = choice_from<ReadingKind>(arguments.what);
  if (!what || *what == ReadingKind::unsaid) return no_choice(arguments.what, "reading", {"tension_head", "bed_stiffness", "tone"});
  Reading read;
  read.what = *what;
  const auto value = measured(arguments.value, *what, "value");
  if (!value) return fail(value.error());
  read.value = *value;
  if (!arguments.set_to.empty()) {
    const auto set = measured(arguments.set_to, *what, "set to");
    if (!set) return fail(set.error());
    read.set_to = *set;
  }
  const auto here = job_here(context, arguments.event, arguments.job);
  if (!here) return fail(here.error());
  if (!arguments.machine.empty()) {
    const auto machine = choose_machine(context, here->row.event, arguments.machine);
    if (!machine) return fail(machine.error());
    read.machine = machine->machine.id();
    read.machine_name = machine->machine.now.name;
  }
  read.by = who(context, arguments);
  read.note = arguments.note.value_or("");
  read.at = context.now();
  if (auto stored = commit(context, put_reading(here->record, here->row.job, read)); !stored) return fail(stored.error());
  return tell_again(context, *here);
}

Outcome<Ending> check(Context& context, const JobArguments& arguments) {
  const auto here = job_here(context, arguments.event, arguments.job);
  if (!here) return fail(here.error());
  CheckFound found;
  const auto list = work_list(list_steps(context.ledger(), here->row.event), WorkList::check);
  for (const WorkStep& step : list) found.items.push_back({step.name, true});
  for (const std::string& typed : arguments.wrong) {
    const auto step = choose_step(list, WorkList::check, typed);
    if (!step) return fail(step.error());
    for (CheckedItem& item : found.items) item.ok = item.ok && item.name != step->name;
  }
  if (!arguments.back_to.empty()) {
    const auto stage = choice_from<Stage>(arguments.back_to);
    if (!stage) return no_choice(arguments.back_to, "stage", {"cut_out", "on_machine", "inspected", "strung"});
    found.back_to = *stage;
  }
  if (!arguments.ok && arguments.wrong.empty())
    return fail(FaultCode::bad_input, "it was not said how the racket was found", "check", "give --ok, or --not ITEM for each that is wrong");
  found.reason = arguments.reason;
  found.by = who(context, arguments);
  found.at = context.now();
  if (auto stored = commit(context, check_racket(here->record, here->row.job, found)); !stored) return fail(stored.error());
  return tell_again(context, *here);
}

Outcome<Ending> photo_add(Context& context, const JobArguments& arguments) {
  const auto here = job_here(context, arguments.event, arguments.job);
  if (!here) return fail(here.error());
  const auto bytes = read_small_file(arguments.file, ContentBounds{}.one);
  if (!bytes) return fail(bytes.error());
  const auto type = picture_type(*bytes);
  if (!type) return fail(FaultCode::bad_input, "is no picture", arguments.file, "choose a JPEG or PNG file");
  PhotoTaken taken;
  if (arguments.finding) {
    const auto list = findings_of(here->record, here->row.racket, true);
    if (*arguments.finding < 1 || *arguments.finding > list.size())
      return fail(FaultCode::not_found, "no finding of that number", std::to_string(*arguments.finding), "`frame` lists them");
    taken.finding = list[*arguments.finding - 1]->id();
  }
  taken.content = digest_of(*bytes);
  taken.media_type = *type;
  taken.size = bytes->size();
  taken.note = arguments.note.value_or("");
  taken.by = who(context, arguments);
  taken.at = context.now();
  const auto draft = put_photo(here->record, here->row.job, taken);
  if (!draft) return fail(draft.error());
  // The bytes first: what the book names is on the disk.
  if (const auto kept = context.station().contents().add(here->row.book, *bytes); !kept) return fail(kept.error());
  if (auto stored = commit(context, draft); !stored) return fail(stored.error());
  return tell_again(context, *here);
}

Outcome<Ending> photo_get(Context& context, const JobArguments& arguments) {
  const auto here = job_here(context, arguments.event, arguments.job);
  if (!here) return fail(here.error());
  const auto list = photos_of(here->record, here->row.racket);
  const std::size_t number = arguments.photo.value_or(1);
  if (number < 1 || number > list.size())
    return fail(FaultCode::not_found, "the racket has no picture of that number", std::to_string(number), "`job` lists them");
  const auto content = content_of(list[number - 1]->now);
  if (!content) return fail(FaultCode::damaged, "the picture is not named rightly", list[number - 1]->id().hex(), "add it again");
  // Asked before, so that nothing is fetched for a file that can't be written.
  if (std::error_code ignored; !arguments.replace && std::filesystem::exists(arguments.file, ignored))
    return fail(FaultCode::conflict, "there is a file of that name already", arguments.file, "choose another name, or add --replace");
  auto bytes = context.station().contents().read(here->row.book, *content);
  const bool fetched = !bytes && !arguments.offline && (bytes.error().code == FaultCode::not_found || bytes.error().code == FaultCode::damaged);
  if (fetched) {
    if (auto came = fetch_content(context, arguments.host, arguments.seconds, here->row.book, *content); !came) return fail(came.error());
    bytes = context.station().contents().read(here->row.book, *content);
  }
  if (!bytes) return fail(bytes.error());
  if (auto written = write_carried_file(arguments.file, arguments.replace, [&](const ByteSink& sink) { return sink(*bytes); }); !written)
    return fail(written.error());
  context.answer(json::object{{"file", arguments.file}, {"bytes", bytes->size()}, {"fetched", fetched}},
                 arguments.file + ": " + std::to_string(bytes->size()) + " bytes" + (fetched ? ", fetched from the event server" : "") + "\n");
  return Ending::done;
}

void add_job(CLI::App& command, JobArguments& arguments) {
  command.add_option("JOB-OR-TAG", arguments.job, "Tag number, or six or more characters of the job's number")->required();
  command.add_option("--event", arguments.event, "NAME or number of the event; default: the one in use");
  command.footer(
      "--json: the job as `board` has it, and agreed, marks, on_machine {since, until, minutes}, bench [{by, machine_name, started_at,\n"
      "finished_at, steps_done, note}], readings [{what, value, set_to, at, by}], checks [{items, passed, reason, back_to, words}],\n"
      "redos, photos [{number, media_type, size, here}], stock [{item, amount}].");
}
void add_by(CLI::App& command, JobArguments& arguments) {
  add_job(command, arguments);
  command.add_option("--by", arguments.by, "Who does it; default: the device's name");
}

}  // namespace

void add_bench_commands(CLI::App& app, Work& chosen) {
  add_command<JobArguments>(app, chosen, "job", "Everything that is known of one racket's job", show, add_job);
  add_command<JobArguments>(app, chosen, "bench", "Note steps done at the bench, the machine, a note", bench,
                            [](CLI::App& command, JobArguments& arguments) {
                              add_by(command, arguments);
                              command.add_option("--done", arguments.done, "Step by its place in `steps`, its key or its words; as often as needed");
                              command.add_option("--not-done", arguments.not_done, "Step that was not done after all");
                              command.add_option("--machine", arguments.machine, "That it is on after all: its name or number in `machines`");
                              command.add_option("--note", arguments.note, "What the next one should know");
                            });
  add_command<JobArguments>(app, chosen, "reading", "Store what was measured", reading, [](CLI::App& command, JobArguments& arguments) {
    add_by(command, arguments);
    command.add_option("WHAT", arguments.what, "tension_head, bed_stiffness or tone")->required();
    command.add_option("VALUE", arguments.value, "As the instrument shows it: \"24.2 kg\", \"34.5 kg/cm\", \"522 Hz\"")->required();
    command.add_option("--set-to", arguments.set_to, "What the tension head was set to");
    command.add_option("--machine", arguments.machine, "Its name or number in `machines`");
    command.add_option("--note", arguments.note, "Which instrument");
  });
  add_command<JobArguments>(app, chosen, "check", "Store how a strung racket was found", check, [](CLI::App& command, JobArguments& arguments) {
    add_by(command, arguments);
    auto* ok = command.add_flag("--ok", arguments.ok, "Everything on the list is in order");
    command.add_option("--not", arguments.wrong, "Item that is not in order: its place in `steps check`, its key or its words")->excludes(ok);
    command.add_option("--reason", arguments.reason, "Needed with --not: what whoever does it again should know");
    command.add_option("--back-to", arguments.back_to, "Needed with --not: cut_out, on_machine, inspected; of a racket checked before also strung");
  });
  add_command<JobArguments>(app, chosen, "photo-add", "Keep a picture of a racket, or of what was found on it", photo_add,
                            [](CLI::App& command, JobArguments& arguments) {
                              add_by(command, arguments);
                              command.add_option("FILE", arguments.file, "JPEG or PNG, 8 MiB at most")->required();
                              command.footer("The bytes are kept as they are, with the place and time that a camera may have written into them: take those\n"
                                             "out first if they are nobody's business. The app does that by itself.");
                              command.add_option("--finding", arguments.finding, "Number of the finding in `frame`");
                              command.add_option("--note", arguments.note, "What is to be seen");
                            });
  add_command<JobArguments>(app, chosen, "photo-get", "Write a picture of a racket into a file; one that is not here is fetched from the event server", photo_get,
                            [](CLI::App& command, JobArguments& arguments) {
                              add_job(command, arguments);
                              command.add_option("FILE", arguments.file, "Where to")->required();
                              command.add_option("--photo", arguments.photo, "Its number in `job`; default: the newest");
                              command.add_flag("--replace", arguments.replace, "Replace the file if there is one");
                              command.add_flag("--offline", arguments.offline, "Fetch nothing");
                              command.add_option("--host", arguments.host, "NAME or beginning of the key; default: the one in use");
                              command.add_option("--seconds", arguments.seconds, "How long to try")->check(CLI::Range(1, 3600))->capture_default_str();
                              command.footer("A picture that was fetched stays here until room is needed. One that was cut goes on from what has come.\n"
                                             "--json: file, bytes, fetched.");
                            });
}

}  // namespace weavelog::cli
