#include "sync/cli/hand_over.h"

#include <algorithm>
#include <set>

#include "core/desk/check_setup.h"
#include "core/desk/first_time.h"
#include "core/desk/phrases.h"
#include "core/desk/tags.h"
#include "sync/cli/entered.h"
#include "sync/cli/render.h"

namespace weavelog::cli {
namespace {

const Person& person_of(const PlayerRecord& record, const DropOffRequest& request) {
  return request.new_person ? *request.new_person : record.person.now;
}

const Racket* racket_of(const PlayerRecord& record, const DropOffLine& line) {
  if (line.made) return &*line.made;
  const auto* known = record.racket(line.racket);
  return known ? &known->now : nullptr;
}

/// Fields without which stringing can't begin and that nobody has answered, each once.
std::vector<std::string> needed_answers(const PlayerRecord& record, const DropOffRequest& request) {
  std::vector<std::string> needed;
  for (const DropOffLine& line : request.lines) {
    const Racket* racket = racket_of(record, line);
    const FirstTimeAnswers answers{person_of(record, request), racket ? *racket : Racket{}, line.agreed,
                                   request.drop_off};
    for (const FirstTimeQuestion& question : still_needed(answers))
      if (std::find(needed.begin(), needed.end(), question.field) == needed.end())
        needed.emplace_back(question.field);
  }
  return needed;
}

/// Of all lines, each kind once a field.
std::vector<SetupFinding> findings_of(const PlayerRecord& record, const DropOffRequest& request) {
  std::vector<SetupFinding> all;
  for (const DropOffLine& line : request.lines)
    for (SetupFinding& finding : check_setup(line.agreed, racket_of(record, line)))
      if (std::none_of(all.begin(), all.end(), [&](const SetupFinding& other) {
            return other.code == finding.code && other.field == finding.field;
          }))
        all.push_back(std::move(finding));
  return all;
}

json::array lines_json(const PlayerRecord& record, const DropOffRequest& request) {
  json::array out;
  for (const DropOffLine& line : request.lines) {
    const Racket* racket = racket_of(record, line);
    json::object one{{"racket_label", racket ? racket->label : std::string()},
                     {"new_racket", line.made.has_value()}};
    if (line.tag_number) one["tag_number"] = *line.tag_number;
    one["changes"] = line.last_time ? changes_json(request.language, compare(*line.last_time, line.agreed))
                                    : json::array();
    out.push_back(std::move(one));
  }
  return out;
}

/// Gives every racket without a number one and returns those of all: from `first` on, or, where that is 0, the next free ones.
std::vector<std::int64_t> number_tags(const Ledger& ledger, DropOffRequest& request, std::int64_t first) {
  std::set<std::int64_t> given;  // what was said of one racket is no other's
  for (const DropOffLine& line : request.lines)
    if (line.tag_number) given.insert(*line.tag_number);
  std::vector<std::int64_t> numbers;
  for (DropOffLine& line : request.lines) {
    if (!line.tag_number) {
      line.tag_number = first > 0 ? first++ : next_tag(ledger, request.drop_off.event, given);
      given.insert(*line.tag_number);
    }
    numbers.push_back(*line.tag_number);
  }
  return numbers;
}

/// The jobs that a stored draft made, in its order.
json::array jobs_made(Context& context, const Draft& draft) {
  std::vector<EntityId> ids;
  for (const Write& write : draft.writes())
    if (write.kind == kJob && (ids.empty() || ids.back() != write.entity)) ids.push_back(write.entity);
  json::array out;
  for (const EntityId& id : ids)
    if (const auto row = find_job(context.ledger(), draft.book(), id)) out.push_back(row_json(*row));
  return out;
}

}  // namespace

void add_desk_options(CLI::App& command, DeskArguments& arguments) {
  command.add_option("--ready-by", arguments.ready_by,
                     "14:30, 2031-05-26T14:30 (times of the event's zone), or +90 minutes from now");
  command.add_option("--rush", arguments.rush, "none, rush or on_court");
  command.add_option("--brought-by", arguments.brought_by, "Who brought the rackets, if not the player");
  command.add_option("--collected-by", arguments.collected_by, "Who may collect them");
  command.add_option("--place", arguments.place, "Where they were handed over");
  command.add_option("--note", arguments.note, "About this hand-over");
  command.add_option("--by", arguments.by, "Who takes them in; default: the device's name");
  command.add_option("--tag", arguments.tag, "Tag number of the first racket; default: the next free one")
      ->check(CLI::Range(std::int64_t{1}, kHighestTyped));
  command.add_option("--event", arguments.event, "NAME or number of the event; default: the one in use");
  command.add_flag("--confirm", arguments.confirm,
                   "The player has read and confirmed the read-back: store it");
}

std::string hand_over_footer() {
  return "Without --confirm it only shows what would be stored.\n"
         "--json: one object: book, stored, language, read_back, rackets: [{racket_label, new_racket, "
         "tag_number, changes:\n"
         "[{field, before, after}]}], findings, needed (fields still to be answered; exit code 3), and once "
         "stored jobs, and entries,\n"
         "those of the event's entry list that were said to be this player.";
}

Outcome<DeskSetting> set_desk(Context& context, const Person& person, const DeskArguments& arguments) {
  DeskSetting desk;
  desk.typing.now = context.now();
  desk.typing.tension_unit = person.tension_unit;
  desk.by = arguments.by.empty() ? context.ledger().self().device : arguments.by;
  DropOffRequest& request = desk.request;
  request.language = context.language_for(person);
  request.device = context.ledger().self().id();
  request.drop_off.at = context.now();
  const auto event = context.event(arguments.event);
  if (!event && !arguments.event.empty()) return fail(event.error());
  if (event) {
    const auto record = load_event(context.ledger(), *event);
    if (!record) return fail(record.error());
    request.drop_off.event = *event;
    request.drop_off.event_name = record->event.now.name;
    request.time_zone = context.zone_of(*event);
    desk.typing.zone = request.time_zone;
  }
  for (const auto& [field, typed] :
       {std::pair("ready_by", &arguments.ready_by), std::pair("rush", &arguments.rush),
        std::pair("brought_by", &arguments.brought_by), std::pair("collected_by", &arguments.collected_by),
        std::pair("place", &arguments.place), std::pair("note", &arguments.note)})
    if (!typed->empty())
      if (auto set = set_field(request.drop_off, field, *typed, desk.typing); !set) return fail(set.error());
  return desk;
}

Outcome<Ending> answer_hand_over(Context& context, const PlayerRecord& record, DeskSetting desk,
                                 const DeskArguments& arguments) {
  DropOffRequest& request = desk.request;
  const BookId& event = request.drop_off.event;
  const auto numbers = number_tags(context.ledger(), request, arguments.tag);
  if (auto free = check_new_tags(context.ledger(), event, numbers); !free) return fail(free.error());

  const auto needed = needed_answers(record, request);
  const auto findings = findings_of(record, request);
  const std::string text = read_back_of(record, request);
  json::object out{{"book", record.book.hex()},
                   {"stored", false},
                   {"language", request.language.tag()},
                   {"read_back", text},
                   {"rackets", lines_json(record, request)},
                   {"findings", findings_json(request.language, findings)}};
  json::array missing;
  std::string shown = text + "\n";
  for (const std::string& field : needed) {
    missing.push_back(json::string(field));
    shown += "still to be answered: " + field_words(context.language(), field) + " (" + field + ")\n";
  }
  out["needed"] = std::move(missing);
  if (!needed.empty()) {
    context.answer(out, shown);
    return Ending::needs_answer;
  }
  shown += findings_text(context.language(), findings);
  const auto draft = drop_off(record, request, text, desk.by);
  if (!draft) return fail(draft.error());
  if (!arguments.confirm) {
    context.answer(out, shown + "not stored; add --confirm when the player has confirmed this");
    return Ending::done;
  }
  if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  out["stored"] = true;
  out["jobs"] = jobs_made(context, *draft);
  const EntriesLinked linked = event ? link_entered(context, event, record.book) : EntriesLinked{};
  json::array entries;
  for (const EntityId& entry : linked.entries) entries.push_back(json::string(entry.hex()));
  out["entries"] = std::move(entries);
  context.answer(out, shown + linked.text + "stored: " + std::to_string(request.lines.size()) + " jobs, tags from " +
                          std::to_string(*request.lines.front().tag_number));
  return Ending::done;
}

}  // namespace weavelog::cli
