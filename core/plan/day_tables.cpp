#include "core/plan/day_tables.h"

#include <algorithm>
#include <boost/json.hpp>
#include <cmath>
#include <set>

#include "core/base/iso_time.h"
#include "core/base/text.h"
#include "core/plan/plan_table.h"

namespace weavelog {
namespace {

namespace json = boost::json;

Outcome<PlanTable> table_of(std::string_view bytes, std::string_view source, std::initializer_list<const char*> needed) {
  const auto text = table_text(bytes, source);
  if (!text) return fail(text.error());
  return PlanTable::read(*text, source, needed);
}

std::string in_quotes(std::string_view text) { return "'" + shortened(text, 60) + "'"; }

/// A cell as a number from `least` to `most`; `otherwise` where it is empty.
Outcome<double> number_in(const PlanTable& table, const CsvRow& row, const char* column, double otherwise, double least, double most) {
  const std::string text = table.cell(row, column);
  if (text.empty()) return otherwise;
  const auto value = PlanTable::number<double>(text);
  if (!value || *value < least || *value > most)
    return table.wrong(row, column, in_quotes(text) + " is no number that can be here",
                       "write one from " + std::to_string(std::lround(least)) + " to " + std::to_string(std::lround(most)));
  return *value;
}

Outcome<UnixMs> moment_in(const PlanTable& table, const CsvRow& row, const char* column, const PlanClock& clock) {
  auto at = plan_moment(table.cell(row, column), clock);
  if (!at) return table.wrong(row, column, at.error().what, at.error().what_to_do);
  return at;
}

Outcome<WorkKind> kind_in(const PlanTable& table, const CsvRow& row) {
  const auto pieces = number_in(table, row, "pieces", 1, 1, 2);
  if (!pieces) return fail(pieces.error());
  return WorkKind{table.cell(row, "pattern"), table.cell(row, "material"), *pieces > 1.5 ? 2 : 1};
}

/// Expected ms: as said in the column minutes, or as learned of anybody.
Outcome<double> minutes_in(const PlanTable& table, const CsvRow& row, const WorkTimes& times, const WorkKind& kind) {
  return number_in(table, row, "minutes", times.of("", kind).mean(), 1, 720);
}

struct ShiftRow {
  std::string stringer, machine, place;
  TimeSpan span;
};

}  // namespace

Outcome<UnixMs> plan_moment(std::string_view text, const PlanClock& clock) {
  const std::string trimmed_text(trimmed(text));
  // Without a day: "9:05" or "14:05" on the day that is planned.
  if (trimmed_text.size() >= 4 && trimmed_text.size() <= 5 && trimmed_text.find(':') != std::string::npos && !clock.day.empty())
    if (auto at = moment_from(clock.day + "T" + trimmed_text, clock.zone, clock.now)) return at;
  auto at = moment_from(trimmed_text, clock.zone, clock.now);
  if (!at)
    return fail(FaultCode::bad_input, in_quotes(trimmed_text) + " is no time", {}, "write 14:05, 2031-05-26T14:05, or +90 for minutes from now");
  return at;
}

Outcome<std::string> table_text(std::string_view bytes, std::string_view source) {
  const auto first = bytes.find_first_not_of(" \t\r\n");
  if (first == std::string_view::npos || (bytes[first] != '[' && bytes[first] != '{')) return std::string(bytes);
  boost::system::error_code error;
  const json::value document = json::parse(json::string_view(bytes.data(), bytes.size()), error);
  if (error || !document.is_array())
    return fail(FaultCode::bad_input, error ? "this is no JSON" : "this is no list", std::string(source), "give a list of objects, or CSV");
  std::vector<std::string> names;
  for (const json::value& one : document.get_array()) {
    if (!one.is_object())
      return fail(FaultCode::bad_input, "an element of the list is no object", std::string(source), "give objects with the columns' names");
    for (const auto& field : one.get_object())
      if (std::find(names.begin(), names.end(), std::string(field.key())) == names.end()) names.emplace_back(field.key());
    if (names.size() > 200)
      return fail(FaultCode::bad_input, "the objects have more than 200 names", std::string(source), "give only what a plan needs");
  }
  std::string out;
  const auto put = [&](std::string_view text, bool last) {
    out += '"';
    for (const char c : text) out += c == '"' ? std::string("\"\"") : std::string(1, c);
    out += last ? "\"\n" : "\",";
  };
  if (names.empty()) names.emplace_back("nothing");
  for (std::size_t i = 0; i < names.size(); ++i) put(names[i], i + 1 == names.size());
  for (const json::value& one : document.get_array())
    for (std::size_t i = 0; i < names.size(); ++i) {
      const json::value* field = one.get_object().if_contains(names[i]);
      std::string text;
      if (field != nullptr && field->is_string()) {
        text = std::string(field->get_string());
      } else if (field != nullptr && field->is_bool()) {
        text = field->get_bool() ? "yes" : "no";
      } else if (field != nullptr && field->is_array()) {
        for (const json::value& part : field->get_array()) {
          if (!text.empty()) text += '|';
          text += part.is_string() ? std::string(part.get_string()) : json::serialize(part);
        }
      } else if (field != nullptr && field->is_object()) {
        return fail(FaultCode::bad_input, in_quotes(names[i]) + " is an object", std::string(source), "give texts, numbers, or lists of these");
      } else if (field != nullptr && field->is_double()) {
        text = std::to_string(field->get_double());
      } else if (field != nullptr && !field->is_null()) {
        text = json::serialize(*field);
      }
      put(text, i + 1 == names.size());
    }
  return out;
}

Outcome<std::vector<DayBench>> read_shifts(std::string_view bytes, const PlanClock& clock, std::string_view source) {
  const auto table = table_of(bytes, source, {"from", "until"});
  if (!table) return fail(table.error());
  std::vector<ShiftRow> shifts, breaks, out_of_order;
  for (const CsvRow& row : table->rows()) {
    ShiftRow one{table->cell(row, "stringer"), table->cell(row, "machine"), table->place(row), {}};
    const auto from = moment_in(*table, row, "from", clock), until = moment_in(*table, row, "until", clock);
    if (!from) return fail(from.error());
    if (!until) return fail(until.error());
    one.span = {*from, *until};
    if (*until <= *from) return table->wrong(row, "until", "it ends before it begins", "check both times; past midnight write the day too");
    if (*until - *from > 36LL * 3'600'000) return table->wrong(row, "until", "nobody works that long", "check the day; a shift has at most 36 hours");
    const std::string kind = search_key(table->cell(row, "kind"));
    if (kind.empty() || kind == "shift") {
      if (one.stringer.empty()) return table->wrong(row, "stringer", "a shift of nobody", "name the stringer");
      shifts.push_back(std::move(one));
    } else if (kind == "break") {
      if (one.stringer.empty()) return table->wrong(row, "stringer", "a break of nobody", "name the stringer");
      breaks.push_back(std::move(one));
    } else if (kind == "out of order") {
      if (one.machine.empty()) return table->wrong(row, "machine", "nothing is named that is out of order", "name the machine");
      out_of_order.push_back(std::move(one));
    } else {
      return table->wrong(row, "kind", in_quotes(table->cell(row, "kind")) + " is no kind of time", "write shift, break or out of order");
    }
  }
  std::vector<DayBench> out;
  std::map<std::pair<std::string, std::string>, std::size_t> known;
  for (const ShiftRow& shift : shifts) {
    const auto [found, fresh] = known.emplace(std::pair(shift.stringer, shift.machine), out.size());
    if (fresh) out.push_back({shift.machine.empty() ? shift.stringer : shift.stringer + " / " + shift.machine, shift.stringer, shift.machine});
    out[found->second].open.push_back(shift.span);
  }
  for (DayBench& bench : out) bench.open = joined(std::move(bench.open));
  const auto take = [&](const std::vector<ShiftRow>& rows, std::string DayBench::*who, std::string ShiftRow::*named, const char* what) -> Outcome<> {
    for (const ShiftRow& row : rows) {
      bool any = false;
      for (DayBench& bench : out)
        if (bench.*who == row.*named) {
          bench.open = cut_out(std::move(bench.open), row.span);
          any = true;
        }
      if (!any)
        return fail(FaultCode::bad_input, "no shift is " + std::string(what) + " " + row.*named, row.place, "write the name as in the shifts");
    }
    return {};
  };
  if (auto taken = take(breaks, &DayBench::stringer, &ShiftRow::stringer, "of"); !taken) return fail(taken.error());
  if (auto taken = take(out_of_order, &DayBench::machine, &ShiftRow::machine, "at"); !taken) return fail(taken.error());
  return out;
}

Outcome<std::vector<WorkReading>> read_work(std::string_view bytes, std::string_view source) {
  const auto table = table_of(bytes, source, {"stringer", "minutes"});
  if (!table) return fail(table.error());
  std::vector<WorkReading> out;
  for (const CsvRow& row : table->rows()) {
    const auto kind = kind_in(*table, row);
    if (!kind) return fail(kind.error());
    const std::string text = table->cell(row, "minutes");
    const auto minutes = PlanTable::number<double>(text);
    if (!minutes) return table->wrong(row, "minutes", in_quotes(text) + " is no number", "write minutes such as 24 or 24.5");
    out.push_back({table->cell(row, "stringer"), *kind, *minutes});
  }
  return out;
}

Outcome<std::size_t> bench_named(const std::vector<DayBench>& benches, std::string_view name) {
  std::vector<std::size_t> exact, parts;
  const std::string key = search_key(name);
  for (std::size_t i = 0; i < benches.size(); ++i) {
    if (search_key(benches[i].name) == key) exact.push_back(i);
    if (search_key(benches[i].stringer) == key || (!benches[i].machine.empty() && search_key(benches[i].machine) == key)) parts.push_back(i);
  }
  const auto& meant = exact.empty() ? parts : exact;
  if (meant.empty())
    return fail(FaultCode::not_found, in_quotes(name) + " has no shift", {}, "write the bench, stringer or machine as in the shifts");
  if (meant.size() > 1)
    return fail(FaultCode::bad_input, in_quotes(name) + " is at several benches", {}, "write the bench as \"stringer / machine\"");
  return meant.front();
}

Outcome<JobTable> read_jobs(std::string_view bytes, const std::vector<DayBench>& benches, const WorkTimes& times, const PlanClock& clock,
                            std::string_view source) {
  const auto table = table_of(bytes, source, {"racket"});
  if (!table) return fail(table.error());
  JobTable out;
  std::set<std::string> seen;
  for (const CsvRow& row : table->rows()) {
    DayJob job;
    job.id = table->cell(row, "racket");
    if (job.id.empty()) return table->wrong(row, "racket", "the racket has no number", "give it one");
    if (!seen.insert(job.id).second)
      return table->wrong(row, "racket", "racket " + in_quotes(job.id) + " is there twice", "leave one of the two out");
    const auto kind = kind_in(*table, row);
    if (!kind) return fail(kind.error());
    const auto minutes = minutes_in(*table, row, times, *kind);
    const auto weight = number_in(*table, row, "weight", 1, 1, 1000);
    const auto margin = number_in(*table, row, "margin", 60, 0, 1440);
    for (const auto* number : {&minutes, &weight, &margin})
      if (!*number) return fail(number->error());
    job.length = std::llround(*minutes * 60'000);
    job.weight = std::llround(*weight);
    job.arrives = clock.now;
    if (!table->cell(row, "arrives").empty()) {
      const auto at = moment_in(*table, row, "arrives", clock);
      if (!at) return fail(at.error());
      job.arrives = *at;
    }
    if (!table->cell(row, "match").empty()) {
      const auto at = moment_in(*table, row, "match", clock);
      if (!at) return fail(at.error());
      job.due = *at - std::llround(*margin * 60'000);
    }
    if (!table->cell(row, "due").empty()) {
      const auto at = moment_in(*table, row, "due", clock);
      if (!at) return fail(at.error());
      job.due = std::min(*at, job.due.value_or(*at));  // as asked, and before the match
    }
    const auto bench_in = [&](const char* column, const std::string& name) -> Outcome<std::size_t> {
      const auto found = bench_named(benches, name);
      if (!found) return table->wrong(row, column, found.error().what, found.error().what_to_do);
      return *found;
    };
    if (const std::string home = table->cell(row, "home"); !home.empty()) {
      const auto found = bench_in("home", home);
      if (!found) return fail(found.error());
      job.home = *found;
    }
    for (const std::string& name : table->list(row, "only")) {
      const auto found = bench_in("only", name);
      if (!found) return fail(found.error());
      job.only.push_back(*found);
    }
    const std::string rush = search_key(table->cell(row, "on_court"));
    if (!rush.empty() && rush != "yes" && rush != "no")
      return table->wrong(row, "on_court", in_quotes(rush) + " is neither yes nor no", "write yes or no");
    job.on_court = rush == "yes";
    const std::string since = table->cell(row, "since");
    if (const std::string bench = table->cell(row, "bench"); !bench.empty() || !since.empty()) {
      const auto found = bench_in("bench", bench);
      if (!found) return fail(found.error());
      const auto at = moment_in(*table, row, "since", clock);
      if (!at) return fail(at.error());
      if (*at > clock.now) return table->wrong(row, "since", "it is in work since a time to come", "check the time");
      job.in_work = InWork{*found, *at};
    }
    out.jobs.push_back(std::move(job));
    out.kinds.push_back(*kind);
    out.players.push_back(table->cell(row, "player"));
  }
  return out;
}

Outcome<std::vector<ForecastPlayer>> read_forecast_players(std::string_view bytes, const WorkTimes& times, std::string_view source) {
  const auto table = table_of(bytes, source, {"player", "chances"});
  if (!table) return fail(table.error());
  std::vector<ForecastPlayer> out;
  for (const CsvRow& row : table->rows()) {
    ForecastPlayer player;
    player.name = table->cell(row, "player");
    player.draw = table->cell(row, "draw");
    player.string = table->cell(row, "string");
    for (const std::string& text : table->list(row, "chances")) {
      const auto chance = PlanTable::number<double>(text);
      if (!chance || *chance < 0 || *chance > 1)
        return table->wrong(row, "chances", in_quotes(text) + " is no chance", "write one from 0 to 1 for every day, as 1|0.5|0.25");
      player.chances.push_back(*chance);
    }
    const auto kind = kind_in(*table, row);
    if (!kind) return fail(kind.error());
    const auto minutes = minutes_in(*table, row, times, *kind);
    const auto matches = number_in(*table, row, "matches", 0, 0, 9999), rackets = number_in(*table, row, "rackets", 0, 0, 99'999);
    const auto metres = number_in(*table, row, "metres", 12, 0, 100);
    for (const auto* number : {&minutes, &matches, &rackets, &metres})
      if (!*number) return fail(number->error());
    if (*rackets > 0 && *matches == 0) return table->wrong(row, "matches", "there are rackets without a match", "say for how many matches they were");
    player.minutes = *minutes, player.matches = *matches, player.rackets = *rackets, player.metres = *metres;
    out.push_back(std::move(player));
  }
  return out;
}

Outcome<std::array<double, 24>> read_hours(std::string_view bytes, std::string_view source) {
  const auto table = table_of(bytes, source, {"hour", "rackets"});
  if (!table) return fail(table.error());
  std::array<double, 24> out{};
  for (const CsvRow& row : table->rows()) {
    const auto hour = PlanTable::number<std::size_t>(table->cell(row, "hour"));
    if (!hour || *hour > 23) return table->wrong(row, "hour", in_quotes(table->cell(row, "hour")) + " is no hour", "write 0 to 23");
    const auto rackets = number_in(*table, row, "rackets", 0, 0, 1e6);
    if (!rackets) return fail(rackets.error());
    out[*hour] += *rackets;
  }
  return out;
}

Outcome<std::vector<bool>> read_settled(std::string_view bytes, const PlanClock& clock, std::string_view source) {
  const auto table = table_of(bytes, source, {"due", "ready"});
  if (!table) return fail(table.error());
  std::vector<bool> out;
  for (const CsvRow& row : table->rows()) {
    const auto due = moment_in(*table, row, "due", clock), ready = moment_in(*table, row, "ready", clock);
    if (!due) return fail(due.error());
    if (!ready) return fail(ready.error());
    out.push_back(*ready <= *due);
  }
  return out;
}

void set_paces(std::vector<DayBench>& benches, const WorkTimes& times) {
  const double room = times.of("", {}).mean();
  for (DayBench& bench : benches) bench.pace = std::clamp(times.of(bench.stringer, {}).mean() / room, 0.1, 10.0);
}

double own_spread(const WorkTimes& times, const WorkKind& kind) { return times.of("", kind).own; }

PromiseInput promise_input(DayInput day, const JobTable& table, const WorkTimes& times) {
  PromiseInput out;
  for (const WorkKind& kind : table.kinds) out.own.push_back(own_spread(times, kind));
  double alike = 0, pairs = 0;
  for (std::size_t a = 0; a < day.benches.size(); ++a) {
    out.shared.push_back(times.of(day.benches[a].stringer, {}).shared);
    for (std::size_t b = 0; b < a; ++b) alike += std::pow(times.in_common(day.benches[a].stringer, day.benches[b].stringer, {}), 2), ++pairs;
  }
  // What two benches doubt alike, on the mean, is in common; the rest is each one's own.
  if (pairs > 0) alike /= pairs;
  out.common = std::sqrt(alike);
  for (double& one : out.shared) one = std::sqrt(std::max(0.0, one * one - alike));
  out.day = std::move(day);
  return out;
}

}  // namespace weavelog
