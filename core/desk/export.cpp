#include "core/desk/export.h"

#include <algorithm>
#include <boost/json.hpp>
#include <set>

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

/// A list of an event's export, and what one of its lines says.
struct EventList {
  EntityKind kind;
  const char* name;
  json::object (*in_json)(const EntityState&);
};
template <class S>
constexpr EventList event_list(const char* name) {
  return {Described<S>::kind, name, &entity_json<S>};
}
constexpr EventList kEventLists[] = {
    event_list<TeamMember>("team"),       event_list<EntryListItem>("entries"),    event_list<Price>("prices"),          event_list<ListStep>("lists"),
    event_list<Machine>("machines"),      event_list<MachineCare>("machine_care"), event_list<Shift>("shifts"),          event_list<StockItem>("stock_items"),
    event_list<StockMove>("stock_moves"), event_list<Charge>("charges"),           event_list<Payment>("payments"),      event_list<DayClose>("day_closes"),
    event_list<DrawSheet>("draws"),       event_list<DrawPlace>("draw_lines"),     event_list<MatchRecord>("matches"),   event_list<BenchPlace>("home_benches"),
    event_list<BenchAsk>("bench_wishes"), event_list<PlanRules>("plan_rules"),     event_list<DayPlace>("told_day"),     event_list<QualityRules>("quality_rules")};

const EventList* list_of(EntityKind kind) {
  const auto found = std::find_if(std::begin(kEventLists), std::end(kEventLists), [&](const EventList& list) { return list.kind == kind; });
  return found == std::end(kEventLists) ? nullptr : found;
}

/// What events hold about the player, event by event: {"book", "name", "entries": [...], "charges": [...], ...}.
json::array events_json(std::span<const EventHolding> events) {
  json::array out;
  for (const EventHolding& event : events) {
    json::object one{{"book", event.event.hex()}, {"name", event.name}};
    for (const EntityState& state : event.entities) {
      const EventList* list = list_of(state.kind);
      if (list == nullptr) continue;
      if (!one.contains(list->name)) one[list->name] = json::array();
      one[list->name].as_array().push_back(list->in_json(state));
    }
    out.push_back(std::move(one));
  }
  return out;
}

json::array entries_json(std::span<const WrittenEntry> entries) {
  json::array out;
  for (const WrittenEntry& written : entries) {
    json::array writes;
    for (const Write& write : written.entry.writes) {
      const FieldInfo* info = model_registry().find(write.tag);
      json::object one{{"entity", write.entity.hex()}, {"kind", static_cast<std::uint32_t>(write.kind)}};
      one["field"] = info != nullptr ? json::value(json::string(info->name)) : json::value(static_cast<std::uint32_t>(write.tag));
      if (!is_cleared(write.value)) one["value"] = text_of(write.value);
      writes.push_back(std::move(one));
    }
    out.push_back(json::object{{"at", iso_utc(written.entry.stamp.wall_ms())},
                               {"device", written.device},
                               {"author", written.author.hex()},
                               {"number", written.entry.seq},
                               {"action", json::string(name_of(written.entry.action))},
                               {"writes", std::move(writes)}});
  }
  return out;
}

}  // namespace

std::vector<EventHolding> held_in_events(const Ledger& ledger, const PlayerRecord& record) {
  std::set<EntityId> jobs;
  for (const auto& job : record.jobs) jobs.insert(job.id());
  const auto names_player = [&](const EntityState& state) {
    return std::any_of(state.cells.begin(), state.cells.end(), [&](const Cell& cell) {
      return std::any_of(cell.values.begin(), cell.values.end(), [&](const CellValue& held) {
        if (const auto* book = std::get_if<BookId>(&held.value)) return *book == record.book;
        if (const auto* entity = std::get_if<EntityId>(&held.value)) return jobs.contains(*entity);
        return false;
      });
    });
  };
  std::vector<EventHolding> out;
  for (const BookInfo& book : ledger.books(kEventBook)) {
    EventHolding holding{book.id, {}, {}};
    for (EntityState& state : ledger.entities(book.id)) {
      if (state.kind == kEvent && exists(state)) holding.name = from_state<EventInfo>(state).name;
      if (list_of(state.kind) != nullptr && exists(state) && names_player(state)) holding.entities.push_back(std::move(state));
    }
    if (!holding.entities.empty()) out.push_back(std::move(holding));
  }
  return out;
}

std::vector<WrittenEntry> written_entries(const Ledger& ledger, const BookId& book) {
  const auto authors = ledger.authors();
  std::vector<WrittenEntry> out;
  for (const Head& head : ledger.heads(book)) {
    const auto author = std::find_if(authors.begin(), authors.end(), [&](const KnownAuthor& known) { return known.card.id() == head.author; });
    for (std::uint64_t seq = 1; seq <= head.seq; ++seq)
      if (auto entry = ledger.entry(book, head.author, seq))
        out.push_back({head.author, author == authors.end() ? std::string() : author->card.device, std::move(*entry)});
  }
  std::stable_sort(out.begin(), out.end(), [](const WrittenEntry& a, const WrittenEntry& b) { return a.entry.stamp < b.entry.stamp; });
  return out;
}

std::string player_json(const PlayerRecord& record, std::span<const EventHolding> events, std::span<const WrittenEntry> entries) {
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
  out["events"] = events_json(events);
  out["entries"] = entries_json(entries);
  return json::serialize(out);
}

std::string event_json(const BookId& book, std::span<const EntityState> entities) {
  json::object out{{"format", "weavelog-event"}, {"version", 1}, {"book", book.hex()}};
  const json::array events = list_json<EventInfo>(entities);
  out["event"] = events.empty() ? json::value(nullptr) : events.front();
  for (const EventList& list : kEventLists) out[list.name] = json::array();
  for (const EntityState& state : entities)
    if (const EventList* list = list_of(state.kind); list != nullptr && exists(state)) out[list->name].as_array().push_back(list->in_json(state));
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
      visit_member(field, [&](auto member) { row.push_back(cell_text(field.name, agreed.*member)); });
    row.emplace_back(name_of_choice(record.stage_of(job->id()).stage));
    csv.row(row);
  }
  return csv.text();
}

}  // namespace weavelog
