// numbers: how much, how fast, how punctual.

#include "core/base/local_time.h"
#include "core/desk/numbers.h"
#include "sync/cli/commands.h"

namespace weavelog::cli {
namespace {

struct NumbersArguments {
  std::string event, day, out;
  bool csv = false;
};

json::array rows_json(const std::vector<NumbersRow>& rows) {
  json::array out;
  for (const NumbersRow& row : rows) {
    json::object one{{"key", row.key},     {"taken_in", row.taken_in}, {"strung", row.strung},
                     {"ready", row.ready}, {"on_time", row.on_time},   {"late", row.late}};
    if (row.turnaround) one["turnaround_minutes"] = *row.turnaround / 60'000;
    out.push_back(std::move(one));
  }
  return out;
}

std::string minutes_text(const std::optional<std::int64_t>& ms) {
  return ms ? std::to_string(*ms / 60'000) + " min" : std::string("not known yet");
}

std::string tenths(std::int64_t per_mille) {
  return std::to_string(per_mille / 10) + "." + std::to_string(std::abs(per_mille % 10)) + " %";
}

std::string rows_text(const char* by, const std::vector<NumbersRow>& rows) {
  std::string text = std::string("by ") + by + "  (taken in, strung, ready, late)\n";
  for (const NumbersRow& row : rows)
    text += "  " + row.key + "  " + std::to_string(row.taken_in) + "  " + std::to_string(row.strung) + "  " + std::to_string(row.ready) + "  " +
            std::to_string(row.late) + "\n";
  return text;
}

json::object growth_json(const Growth& growth) {
  json::object out{{"event", growth.name}, {"this_year", growth.this_sum}, {"last_year", growth.last_sum}, {"last_year_whole", growth.last_whole}};
  if (const auto more = growth.per_mille()) out["per_mille"] = *more;
  return out;
}

Outcome<Ending> numbers(Context& context, const NumbersArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const std::string zone = context.zone_of(*event);
  std::int64_t from = INT64_MIN, until = INT64_MAX;
  if (!arguments.day.empty()) {
    const auto day = day_from(arguments.day);
    if (!day) return fail(FaultCode::bad_input, "\"" + arguments.day + "\" is not a day", "--day", "write it as 2031-05-26");
    const LocalTime local(zone);
    from = local.begin_of(*day);
    until = local.begin_of(*day + 1);
  }
  const RoomNumbers all = numbers_of(job_facts(context.ledger(), *event), zone, context.now(), from, until);
  if (arguments.csv) {
    if (auto written = context.deliver(numbers_csv(all), arguments.out); !written) return fail(written.error());
    return Ending::done;
  }
  json::object out{{"jobs", all.jobs},           {"strung", all.strung},   {"ready", all.ready},     {"collected", all.collected},
                   {"aside", all.aside},         {"in_room", all.in_room}, {"rush", all.rush},       {"on_court", all.on_court},
                   {"redone", all.redone},       {"on_time", all.on_time}, {"late", all.late},       {"overdue", all.overdue},
                   {"waiting", all.waiting},     {"waited", all.waited}};
  if (all.turnaround) out["turnaround_minutes"] = *all.turnaround / 60'000;
  if (all.slow_turnaround) out["slow_turnaround_minutes"] = *all.slow_turnaround / 60'000;
  if (all.wait) out["wait_minutes"] = *all.wait / 60'000;
  if (const auto share = all.on_time_per_mille()) out["on_time_per_mille"] = *share;
  out["by_day"] = rows_json(all.by_day);
  out["by_hour"] = rows_json(all.by_hour);
  out["by_stringer"] = rows_json(all.by_stringer);
  out["by_string"] = rows_json(all.by_string);
  out["by_tension_kg"] = rows_json(all.by_tension);
  std::string text = std::to_string(all.jobs) + " taken in, " + std::to_string(all.strung) + " strung, " + std::to_string(all.ready) +
                     " made ready, " + std::to_string(all.collected) + " collected, " + std::to_string(all.in_room) + " in the room now\n" +
                     std::to_string(all.rush) + " rush (" + std::to_string(all.on_court) + " from the court), " + std::to_string(all.redone) +
                     " strung again, " + std::to_string(all.aside) + " put aside\nturnaround: " + minutes_text(all.turnaround) +
                     (all.slow_turnaround ? " (nine of ten under " + minutes_text(all.slow_turnaround) + ")\n" : "\n");
  if (const auto share = all.on_time_per_mille())
    text += tenths(*share) + " on time; " + std::to_string(all.late) + " were late, " + std::to_string(all.overdue) + " are overdue\n";
  text += std::to_string(all.waiting) + " wait for an answer now, " + std::to_string(all.waited) + " did at any time\n";
  if (const auto growth = growth_of(context.ledger(), *event, zone, context.now()); growth && arguments.day.empty()) {
    out["growth"] = growth_json(*growth);
    text += std::to_string(growth->this_sum) + " against " + std::to_string(growth->last_sum) + " by this day of " + growth->name;
    if (const auto more = growth->per_mille()) text += " (" + std::string(*more >= 0 ? "+" : "-") + tenths(std::abs(*more)) + ")";
    text += "\n";
  }
  text += rows_text("day", all.by_day) + rows_text("hour", all.by_hour) + rows_text("stringer", all.by_stringer) +
          rows_text("string", all.by_string) + rows_text("tension in kg", all.by_tension);
  context.answer(out, text);
  return Ending::done;
}

}  // namespace

void add_numbers_command(CLI::App& app, Work& chosen) {
  add_command<NumbersArguments>(
      app, chosen, "numbers", "The numbers of the room: how much, how fast, how punctual", numbers,
      [](CLI::App& command, NumbersArguments& arguments) {
        command.add_option("--event", arguments.event, "NAME or number of the event; default: the one in use");
        command.add_option("--day", arguments.day, "Only what happened on that day, YYYY-MM-DD");
        auto* csv = command.add_flag("--csv", arguments.csv, "As a table (RFC 4180): by, key, taken_in, strung, ready, on_time, late, turnaround_minutes");
        command.add_option("--out", arguments.out, "The file for --csv; default: standard output")->needs(csv);
        command.footer(
            "--json: one object: jobs, strung, ready, collected, aside, in_room, rush, on_court, redone, on_time, late, overdue, waiting, waited,\n"
            "turnaround_minutes, slow_turnaround_minutes, wait_minutes, on_time_per_mille, growth, and by_day, by_hour, by_stringer, by_string,\n"
            "by_tension_kg as arrays of {key, taken_in, strung, ready, on_time, late, turnaround_minutes}.");
      });
}

}  // namespace weavelog::cli
