// plan schedule, plan promise: the day on benches, and the time that a racket can be promised.

#include <cmath>
#include <cstdio>

#include "core/base/iso_time.h"
#include "core/base/localised.h"
#include "sync/cli/day_files.h"

namespace weavelog::cli {
namespace {

struct ScheduleArguments {
  DayArguments day;
  std::string last, out;
  std::int64_t away = 10;
  bool event = false;
};

double minutes(std::int64_t ms) { return std::round(static_cast<double>(ms) / 6'000) / 10; }

std::string tenths(double value) {
  char text[48];
  std::snprintf(text, sizeof text, "%.1f", value);
  return text;
}

std::string percent(double part) {
  char text[32];
  std::snprintf(text, sizeof text, "%.1f %%", 100 * part);
  return text;
}

/// What an earlier plan told.
Outcome<std::vector<ToldJob>> told_in(const std::string& path, const PlanClock& clock) {
  std::vector<ToldJob> out;
  if (path.empty()) return out;
  const auto bytes = plan_file(path);
  if (!bytes) return fail(bytes.error());
  boost::system::error_code error;
  const json::value document = json::parse(*bytes, error);
  const auto wrong = [&](const char* what) {
    return fail(FaultCode::bad_input, what, path, "give a plan that `plan schedule --json` or --out wrote");
  };
  if (error) return wrong("this is no JSON");
  const json::value* jobs = document.is_object() ? document.get_object().if_contains("jobs") : nullptr;
  if (jobs == nullptr || !jobs->is_array()) return wrong("this is no plan: the list of jobs is missing");
  for (const json::value& one : jobs->get_array()) {
    const auto text = [&](const char* name) {
      const json::value* field = one.is_object() ? one.get_object().if_contains(name) : nullptr;
      return field != nullptr && field->is_string() ? std::string(field->get_string()) : std::string();
    };
    const auto begin = moment_from(text("begin"), clock.zone, clock.now), ready = moment_from(text("ready"), clock.zone, clock.now);
    if (text("racket").empty() || text("bench").empty() || !begin || !ready)
      return wrong("this is no plan: a job lacks its racket, bench, begin or ready");
    out.push_back({text("racket"), text("bench"), *begin, *ready + 999});  // it was written in whole seconds, rounded down
  }
  return out;
}

json::object job_json(const DayFiles& files, const PlannedJob& one) {
  const DayJob& job = files.day.jobs[one.job];
  json::object out{{"racket", job.id}, {"bench", files.day.benches[one.bench].name}, {"begin", iso_utc(one.begin)}, {"ready", iso_utc(one.end)}};
  if (!files.table.players[one.job].empty()) out["player"] = files.table.players[one.job];
  if (job.due) out["due"] = iso_utc(*job.due);
  out["late_minutes"] = minutes(one.late);
  if (one.fixed) out["fixed"] = job.in_work ? "in_work" : "on_court";
  if (job.home && *job.home != one.bench) out["away_from"] = files.day.benches[*job.home].name;
  return out;
}

Outcome<Ending> schedule(const Settings& settings, const ScheduleArguments& arguments) {
  auto files = read_day(arguments.day);
  if (!files) return fail(files.error());
  auto told = told_in(arguments.last, files->clock);
  if (!told) return fail(told.error());
  files->day.told = std::move(*told);
  files->day.away_minutes = arguments.away;
  const auto plan = plan_day(files->day, arguments.event ? PlanEffort::event : PlanEffort::day);
  if (!plan) {
    Fault fault = plan.error();
    fault.where = arguments.day.jobs + " with " + arguments.day.shifts + (fault.where.empty() ? "" : ", " + fault.where);
    return fail(std::move(fault));
  }
  const DayInput& day = files->day;
  const Context context(settings);
  const MomentWriter clock(context.language(), files->clock.zone, Moment::Form::time_of_day);
  json::array benches, jobs, unfitting, changes;
  std::string text;
  for (std::size_t bench = 0; bench < day.benches.size(); ++bench) {
    const DayBench& one = day.benches[bench];
    std::int64_t open = 0, busy = 0;
    for (const TimeSpan& span : one.open) open += std::max<std::int64_t>(0, span.until - std::max(span.from, day.now));
    text += one.name + "\n";
    for (const PlannedJob& job : plan->jobs) {
      if (job.bench != bench) continue;
      busy += job.end - std::max(job.begin, day.now);
      text += "  " + clock(job.begin) + " to " + clock(job.end) + "  " + day.jobs[job.job].id;
      if (!files->table.players[job.job].empty()) text += "  " + files->table.players[job.job];
      if (day.jobs[job.job].due) text += "  wanted by " + clock(*day.jobs[job.job].due);
      if (job.late > 0) text += "  LATE by " + std::to_string((job.late + 59'999) / 60'000) + " min";
      text += "\n";
    }
    benches.push_back(json::object{{"bench", one.name},
                                   {"stringer", one.stringer},
                                   {"machine", one.machine},
                                   {"pace", std::round(one.pace * 1000) / 1000},
                                   {"open_minutes", minutes(open)},
                                   {"busy_minutes", minutes(busy)}});
  }
  for (const PlannedJob& one : plan->jobs) jobs.push_back(job_json(*files, one));
  for (const std::size_t job : plan->unfitting) unfitting.push_back(json::string(day.jobs[job].id));
  for (const PlanChange& change : changes_of(day, *plan)) {
    const std::string& id = day.jobs[change.job].id;
    json::object one{{"racket", id},
                     {"bench_told", change.bench_told},
                     {"ready_told", iso_utc(change.ready_told)},
                     {"late_told", change.late_told},
                     {"late", change.late_now}};
    if (change.ready_now) one["bench"] = change.bench_now, one["ready"] = iso_utc(*change.ready_now);
    changes.push_back(std::move(one));
    text += "changed: " + id + ", told " + clock(change.ready_told) + " at " + change.bench_told + ", now ";
    text += change.ready_now ? clock(*change.ready_now) + " at " + change.bench_now : std::string("without a time");
    text += change.late_now ? ", late\n" : "\n";
  }
  json::object document{{"at", iso_utc(day.now)}, {"benches", std::move(benches)}, {"jobs", std::move(jobs)}, {"unfitting", std::move(unfitting)},
                        {"changes", std::move(changes)}, {"late_minutes", minutes(plan->cost.late)}, {"least_late_minutes", minutes(plan->bound)},
                        {"surely_late", plan->surely_late}, {"changed", plan->cost.changed},
                        {"durations", json::object{{"readings", files->times.used()}, {"ignored", files->times.ignored().size()}}}};
  text += "late, weighted, home benches left included: " + tenths(minutes(plan->cost.late)) + " minutes; no plan has less than " +
          tenths(minutes(plan->bound)) + "\n";
  if (plan->surely_late > 0) text += "at least " + std::to_string(plan->surely_late) + " are late, whoever strings what\n";
  const auto overload = overload_of(day, *plan);
  if (overload) {
    document["overload"] = fault_json(*overload);
    text += overload->message() + "\n";
  }
  if (!arguments.out.empty())
    if (auto written = context.deliver(json::serialize(document) + "\n", arguments.out); !written) return fail(written.error());
  context.answer(document, text);
  return overload ? Ending::needs_answer : Ending::done;
}

struct PromiseArguments {
  DayArguments day;
  std::string racket = "new", arrives, wish, pattern, material, settled;
  std::vector<std::string> only;
  double minutes = 0, rushes_per_hour = 0.5, rushes_seen = 0, rush_minutes = 20, confidence = 0.95;
  int pieces = 1;
};

Outcome<Ending> promise(const Settings& settings, const PromiseArguments& arguments) {
  auto files = read_day(arguments.day);
  if (!files) return fail(files.error());
  const WorkKind kind{arguments.pattern, arguments.material, arguments.pieces};
  DayJob job{arguments.racket, files->clock.now, 0};
  job.length = std::llround((arguments.minutes > 0 ? arguments.minutes : files->times.of("", kind).mean()) * 60'000);
  if (!arguments.arrives.empty()) {
    const auto at = plan_moment(arguments.arrives, files->clock);
    if (!at) return fail(FaultCode::bad_input, at.error().what, "--arrives", at.error().what_to_do);
    job.arrives = *at;
  }
  for (const std::string& name : arguments.only) {
    const auto bench = bench_named(files->day.benches, name);
    if (!bench) return fail(bench.error().code, bench.error().what, "--only", bench.error().what_to_do);
    job.only.push_back(*bench);
  }
  const double own = own_spread(files->times, kind);
  PromiseInput input = promise_input(files->day, files->table, files->times);
  input.rushes_per_hour = arguments.rushes_per_hour;
  input.rushes_seen = arguments.rushes_seen;
  input.rush_length = std::llround(arguments.rush_minutes * 60'000);
  input.confidence = arguments.confidence;
  if (!arguments.settled.empty()) {
    const auto bytes = plan_file(arguments.settled);
    if (!bytes) return fail(bytes.error());
    const auto kept = read_settled(*bytes, files->clock, arguments.settled);
    if (!kept) return fail(kept.error());
    input.confidence = confidence_after(*kept, arguments.confidence);
  }
  const double asked = input.confidence;
  const auto room = Promiser::make(std::move(input));
  if (!room) return fail(room.error());
  const Context context(settings);
  const MomentWriter clock(context.language(), files->clock.zone, Moment::Form::day_and_time);
  json::object document{{"at", iso_utc(files->clock.now)}, {"confidence", asked}};
  std::string text;
  const auto put = [&](const Promise& found) {
    document["ready_by"] = iso_utc(found.ready_by);
    document["chance"] = found.chance;
    document["expected"] = iso_utc(found.expected);
    text += "ready by " + clock(found.ready_by) + " (" + percent(found.chance) + "); as likely before as after " + clock(found.expected) + "\n";
  };
  bool kept = true;
  if (arguments.wish.empty()) {
    const auto found = room->earliest(job, own);
    if (!found) return fail(found.error());
    put(*found);
  } else {
    const auto wish = plan_moment(arguments.wish, files->clock);
    if (!wish) return fail(FaultCode::bad_input, wish.error().what, "--wish", wish.error().what_to_do);
    const auto answer = room->check(job, own, *wish);
    if (!answer) return fail(answer.error());
    kept = answer->can_be_kept;
    json::array must_move;
    text += clock(*wish) + (kept ? " can be kept (" : " can't be kept (") + percent(answer->chance) + " in its turn)\n";
    if (!kept && !answer->even_first) text += "not even before all that waits\n";
    for (const EndangeredPromise& one : answer->must_move) {
      const DayJob& other = files->day.jobs[one.job];
      must_move.push_back(json::object{{"racket", other.id}, {"player", files->table.players[one.job]}, {"due", iso_utc(other.due.value_or(0))},
                                       {"before", one.before}, {"after", one.after}});
      if (answer->even_first)
        text += "would have to move: " + other.id + " " + files->table.players[one.job] + ", promised for " + clock(other.due.value_or(0)) + " (" +
                percent(one.before) + " now, " + percent(one.after) + " then)\n";
    }
    document["wish"] = json::object{{"ready_by", iso_utc(*wish)},
                                    {"can_be_kept", kept},
                                    {"chance", answer->chance},
                                    {"even_first", answer->even_first},
                                    {"must_move", std::move(must_move)}};
    if (answer->earliest) put(*answer->earliest);
    if (!answer->earliest) text += "no time can be promised: the shifts end before it would surely be ready\n";
  }
  json::array endangered;
  for (std::size_t i = 0; i < room->chances().size(); ++i)
    if (room->chances()[i] < asked) {
      const DayJob& other = files->day.jobs[i];
      endangered.push_back(json::object{{"racket", other.id}, {"due", iso_utc(other.due.value_or(0))}, {"chance", room->chances()[i]}});
      text += "in danger already: " + other.id + ", " + clock(other.due.value_or(0)) + " (" + percent(room->chances()[i]) + ")\n";
    }
  document["endangered"] = std::move(endangered);
  context.answer(document, text);
  return kept ? Ending::done : Ending::needs_answer;
}

}  // namespace

void add_schedule_commands(CLI::App& plan, FolderWork& chosen) {
  add_plan_command<ScheduleArguments>(
      plan, chosen, "schedule", "Rackets to benches over the day", schedule, [](CLI::App& command, ScheduleArguments& arguments) {
        add_day_options(command, arguments.day);
        command.add_option("--last", arguments.last, "The plan so far, as --json or --out gave it: what was told changes as little as can be");
        command.add_flag("--event", arguments.event, "After one event, quickly on from --last: nothing moves for a few minutes");
        command.add_option("--away-minutes", arguments.away, "Leaving the home bench counts as so many minutes late")
            ->check(CLI::Range(0, 10'000))
            ->capture_default_str();
        command.add_option("--out", arguments.out, "Writes the plan there too, if there is one; what is there stays otherwise");
        command.footer(
            "Ends with 3 if the shifts can't carry the load; the plan is of the rest.\n"
            "--json: one object: at, benches [{bench, stringer, machine, pace, open_minutes, busy_minutes}], jobs [{racket, player, bench, begin, "
            "ready, due,\n"
            "late_minutes, fixed (in_work, on_court), away_from}] in order of begin, unfitting [racket], overload {code, what, where, what_to_do},\n"
            "changes [{racket, bench_told, ready_told, late_told, bench, ready, late}] of --last, late_minutes (weighted), least_late_minutes (no "
            "plan has less),\n"
            "surely_late, changed, durations {readings, ignored}.");
      });
  add_plan_command<PromiseArguments>(plan, chosen, "promise", "The earliest time that can be kept, or whether a wish can", promise,
                                     [](CLI::App& command, PromiseArguments& arguments) {
    add_day_options(command, arguments.day);
    command.add_option("--wish", arguments.wish, "Ready by then");
    command.add_option("--arrives", arguments.arrives, "When the racket comes; default: now");
    command.add_option("--racket", arguments.racket, "Its number")->capture_default_str();
    command.add_option("--pattern", arguments.pattern, "As 16x19");
    command.add_option("--material", arguments.material, "natural gut, multifilament, synthetic gut, polyester, hybrid");
    command.add_option("--pieces", arguments.pieces, "1 or 2")->check(CLI::Range(1, 2))->capture_default_str();
    command.add_option("--minutes", arguments.minutes, "Expected, in place of what --work says")->check(CLI::Range(1.0, 720.0));
    command.add_option("--only", arguments.only, "The benches that may string it")->delimiter('|');
    command.add_option("--rushes-per-hour", arguments.rushes_per_hour, "On-court rushes to expect")
        ->check(CLI::Range(0.0, 60.0))
        ->capture_default_str();
    command.add_option("--rushes-seen", arguments.rushes_seen, "How many that was learned from")->check(CLI::Range(0.0, 1e5))->capture_default_str();
    command.add_option("--rush-minutes", arguments.rush_minutes, "What one takes")->check(CLI::Range(1.0, 720.0))->capture_default_str();
    command.add_option("--settled", arguments.settled,
                       "CSV or JSON with due, ready, of earlier promises in their order: what is asked for follows how they ended");
    command.add_option("--confidence", arguments.confidence, "Part of promises to be kept")->check(CLI::Range(0.5, 0.99))->capture_default_str();
    command.footer(
        "due in --jobs is what was promised. Ends with 3 if a wish can't be kept.\n"
        "--json: one object: at, confidence, ready_by, chance, expected (as likely before as after), wish {ready_by, can_be_kept, chance, "
        "even_first,\n"
        "must_move [{racket, player, due, before, after}]}, endangered [{racket, due, chance}] that are below confidence already.");
  });
}

}  // namespace weavelog::cli
