#include "core/desk/export.h"

#include <algorithm>
#include <boost/json.hpp>

#include "core/base/csv.h"
#include "core/base/iso_time.h"
#include "core/model/draw.h"
#include "core/model/field_json.h"
#include "core/model/list_step.h"
#include "core/model/machine.h"
#include "core/model/money.h"
#include "core/model/quality_rules.h"
#include "core/model/shift.h"
#include "core/model/stock.h"

namespace weavelog {
namespace {

namespace json = boost::json;

/// An entity with its fields, those of a newer version by their numbers.
template <class S>
json::object entity_json(const EntityState& state) {
  json::object out{{"id", state.id.hex()}};
  for (auto& [name, value] : fields_json(from_state<S>(state))) out[name] = value;
  for (const Cell& cell : state.cells)
    if (!model_registry().find(cell.tag) && !is_cleared(cell.latest().value))
      out["field_" + std::to_string(static_cast<std::uint32_t>(cell.tag))] = text_of(cell.latest().value);
  return out;
}

template <class S>
json::array list_json(const std::vector<Loaded<S>>& list) {
  json::array out;
  for (const auto& held : list) out.push_back(entity_json<S>(held.seen));
  return out;
}

template <class S>
json::array list_json(std::span<const EntityState> entities) {
  json::array out;
  for (const EntityState& state : entities)
    if (state.kind == Described<S>::kind && exists(state)) out.push_back(entity_json<S>(state));
  return out;
}

json::array jobs_json(const PlayerRecord& record) {
  json::array out;
  for (const auto& job : record.jobs) {
    json::object one = entity_json<Job>(job.seen);
    const StageNow now = record.stage_of(job.id());
    one["stage"] = to_json("stage", now.stage);
    one["clash"] = now.clash;
    json::array marks;
    for (const PlacedMark& placed : record.marks) {
      if (placed.mark.job != job.id()) continue;
      json::object mark = fields_json(placed.mark);
      mark["id"] = placed.id.hex();
      mark.erase("job");
      marks.push_back(std::move(mark));
    }
    one["marks"] = std::move(marks);
    out.push_back(std::move(one));
  }
  return out;
}

json::array questions_json(const PlayerRecord& record) {
  json::array out;
  for (const OpenQuestion& question : record.questions) {
    const FieldInfo* info = model_registry().find(question.cell.tag);
    json::array answers;
    for (const CellValue& held : question.cell.values)
      answers.push_back(json::object{{"value", text_of(held.value)}, {"at", iso_utc(held.stamp.wall_ms())}});
    out.push_back(json::object{{"entity", question.entity.hex()},
                               {"field", info ? json::string(info->name) : json::string("unknown")},
                               {"answers", std::move(answers)}});
  }
  return out;
}

template <class T>
std::string cell_text(std::string_view field, const T& member) {
  if (is_cleared(to_value(member))) return {};
  const json::value value = to_json(field, member);
  if (const auto* text = value.if_string()) return std::string(text->subview());
  return json::serialize(value);
}
std::string cell_text(std::string_view, const std::optional<Quantity>& member) {
  return member ? text_of(*member) : std::string();
}

}  // namespace

std::string player_json(const PlayerRecord& record) {
  json::object out{{"format", "weavelog-player"}, {"version", 1}, {"book", record.book.hex()}};
  out["person"] =
      record.person.id() ? json::value(entity_json<Person>(record.person.seen)) : json::value(nullptr);
  out["rackets"] = list_json(record.rackets);
  out["setups"] = list_json(record.setups);
  out["drop_offs"] = list_json(record.drop_offs);
  out["jobs"] = jobs_json(record);
  out["consents"] = list_json(record.consents);
  out["findings"] = list_json(record.findings);
  out["benches"] = list_json(record.benches);
  out["checks"] = list_json(record.checks);
  out["readings"] = list_json(record.readings);
  out["photos"] = list_json(record.photos);
  out["links"] = list_json(record.links);
  out["other_names"] = list_json(record.other_names);
  out["cards"] = list_json(record.cards);
  out["open_questions"] = questions_json(record);
  return json::serialize(out);
}

std::string event_json(const BookId& book, std::span<const EntityState> entities) {
  json::object out{{"format", "weavelog-event"}, {"version", 1}, {"book", book.hex()}};
  const json::array events = list_json<EventInfo>(entities);
  out["event"] = events.empty() ? json::value(nullptr) : events.front();
  out["team"] = list_json<TeamMember>(entities);
  out["entries"] = list_json<EntryListItem>(entities);
  out["prices"] = list_json<Price>(entities);
  out["lists"] = list_json<ListStep>(entities);
  out["machines"] = list_json<Machine>(entities);
  out["machine_care"] = list_json<MachineCare>(entities);
  out["shifts"] = list_json<Shift>(entities);
  out["stock_items"] = list_json<StockItem>(entities);
  out["stock_moves"] = list_json<StockMove>(entities);
  out["charges"] = list_json<Charge>(entities);
  out["payments"] = list_json<Payment>(entities);
  out["day_closes"] = list_json<DayClose>(entities);
  out["draws"] = list_json<DrawSheet>(entities);
  out["draw_lines"] = list_json<DrawPlace>(entities);
  out["matches"] = list_json<MatchRecord>(entities);
  out["home_benches"] = list_json<BenchPlace>(entities);
  out["bench_wishes"] = list_json<BenchAsk>(entities);
  out["plan_rules"] = list_json<PlanRules>(entities);
  out["told_day"] = list_json<DayPlace>(entities);
  out["quality_rules"] = list_json<QualityRules>(entities);
  return json::serialize(out);
}

std::string job_history_csv(const PlayerRecord& record) {
  CsvWriter csv;
  std::vector<std::string> header{"at", "event", "tag_number", "racket"};
  for (const Field<Agreed>& field : Described<Agreed>::table) header.emplace_back(field.name);
  header.emplace_back("stage");
  csv.row(header);

  std::vector<const Loaded<Job>*> jobs;
  for (const auto& job : record.jobs) jobs.push_back(&job);
  std::stable_sort(jobs.begin(), jobs.end(), [](const Loaded<Job>* a, const Loaded<Job>* b) {
    return std::pair(a->now.at.value_or(0), a->now.order.value_or(0)) <
           std::pair(b->now.at.value_or(0), b->now.order.value_or(0));
  });
  for (const Loaded<Job>* job : jobs) {
    const auto* drop_off = record.drop_off(job->now.drop_off);
    const auto* racket = record.racket(job->now.racket);
    std::vector<std::string> row{
        cell_text("at", job->now.at), drop_off ? drop_off->now.event_name : std::string(),
        cell_text("tag_number", job->now.tag_number), racket ? racket->now.label : std::string()};
    const Agreed& agreed = job->now;
    for (const Field<Agreed>& field : Described<Agreed>::table)
      std::visit([&](auto member) { row.push_back(cell_text(field.name, agreed.*member)); }, field.member);
    row.emplace_back(name_of_choice(record.stage_of(job->id()).stage));
    csv.row(row);
  }
  return csv.text();
}

}  // namespace weavelog
