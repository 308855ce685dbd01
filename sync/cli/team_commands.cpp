// team, team-set, shifts, shift-add, shift-remove: who is here, and when.

#include "core/base/iso_time.h"
#include "core/base/local_time.h"
#include "core/base/text.h"
#include "core/desk/shifts.h"
#include "core/model/field_json.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/field_input.h"
#include "sync/cli/told_times.h"

namespace weavelog::cli {
namespace {

struct TeamArguments {
  std::string event, name, role, languages, skills, from, until, note;
  std::size_t number = 0;
};

const Loaded<TeamMember>* member_of(const EventRecord& record, const EntityId& id) {
  for (const auto& member : record.team)
    if (member.id() == id) return &member;
  return nullptr;
}
std::string name_of_member(const EventRecord& record, const EntityId& id) {
  const auto* member = member_of(record, id);
  return member != nullptr ? member->now.name : "somebody who is not on the team any more";
}
Outcome<EntityId> member_named(const EventRecord& record, const std::string& name) {
  for (const auto& member : record.team)
    if (search_key(member.now.name) == search_key(name)) return member.id();
  return fail(FaultCode::not_found, "nobody of the team is called \"" + name + "\"", "member", "`team` lists them, `team-set` adds one");
}

std::string hours_text(std::int64_t ms) {
  const std::int64_t minutes = ms / 60'000;
  return std::to_string(minutes / 60) + " h " + std::to_string(minutes % 60) + " min";
}

Outcome<Ending> tell_team(Context& context, const EventRecord& record) {
  const auto here = present_at(load_shifts(context.ledger(), record.book), context.now());
  json::array list;
  std::string text;
  for (const auto& member : record.team) {
    const bool present = std::find(here.begin(), here.end(), member.id()) != here.end();
    json::object one = fields_json(member.now);
    one["member"] = member.id().hex();
    one["here_now"] = present;
    list.push_back(std::move(one));
    text += member.now.name + "  " + std::string(name_of_choice(member.now.role));
    if (!member.now.languages.empty()) text += "  speaks " + member.now.languages;
    if (!member.now.skills.empty()) text += "  (" + member.now.skills + ")";
    text += present ? "  here now\n" : "\n";
  }
  context.answer(list, text.empty() ? "nobody on the team yet\n" : text);
  return Ending::done;
}

Outcome<Ending> tell_shifts(Context& context, const EventRecord& record) {
  const auto shifts = load_shifts(context.ledger(), record.book);
  const std::string zone = record.event.now.time_zone;
  ToldTimes told(context);
  json::array list;
  std::string text;
  for (const auto& shift : shifts) {
    list.push_back(json::object{{"number", list.size() + 1},
                                {"member", name_of_member(record, shift.now.member)},
                                {"from", iso_utc(*shift.now.from)},
                                {"until", iso_utc(*shift.now.until)},
                                {"note", shift.now.note}});
    text += std::to_string(list.size()) + "  " + name_of_member(record, shift.now.member) + "  " +
            told(*shift.now.from, record.book) + " to " + told(*shift.now.until, record.book) +
            (shift.now.note.empty() ? "" : "  " + shift.now.note) + "\n";
  }
  json::array warnings;
  for (const ShiftWarning& warning : shift_warnings(shifts, zone)) {
    const bool long_day = warning.kind == ShiftWarning::Kind::long_day;
    warnings.push_back(json::object{{"kind", long_day ? "long_day" : "short_rest"},
                                    {"member", name_of_member(record, warning.member)},
                                    {"day", date_text(warning.day)},
                                    {"minutes", warning.length / 60'000}});
    text += "look: " + name_of_member(record, warning.member) +
            (long_day ? " works " + hours_text(warning.length) + " on " : " rests only " + hours_text(warning.length) + " before ") +
            date_text(warning.day) + "\n";
  }
  context.answer(json::object{{"shifts", std::move(list)}, {"warnings", std::move(warnings)}}, text.empty() ? "no shifts planned\n" : text);
  return Ending::done;
}

Outcome<Ending> team(Context& context, const TeamArguments& arguments) {
  const auto record = event_here(context, arguments.event);
  if (!record) return fail(record.error());
  return tell_team(context, *record);
}

Outcome<Ending> set(Context& context, const TeamArguments& arguments) {
  const auto record = event_here(context, arguments.event);
  if (!record) return fail(record.error());
  TeamMember member;
  for (const auto& [said, to] : {std::pair(&arguments.name, &member.name), std::pair(&arguments.languages, &member.languages),
                                 std::pair(&arguments.skills, &member.skills)}) {
    auto text = cleaned(*said, "team");
    if (!text) return fail(text.error());
    *to = std::move(*text);
  }
  if (!arguments.role.empty()) {
    const auto role = choice_from<TeamRole>(arguments.role);
    if (!role || *role == TeamRole::unsaid) return no_choice(arguments.role, "role", {"head", "desk", "stringer", "reader"});
    member.role = *role;
  }
  const auto draft = put_team_member(*record, member, context.now());
  if (!draft) return fail(draft.error());
  if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  const auto now = load_event(context.ledger(), record->book);
  if (!now) return fail(now.error());
  return tell_team(context, *now);
}

Outcome<Ending> shifts(Context& context, const TeamArguments& arguments) {
  const auto record = event_here(context, arguments.event);
  if (!record) return fail(record.error());
  return tell_shifts(context, *record);
}

Outcome<Ending> add(Context& context, const TeamArguments& arguments) {
  const auto record = event_here(context, arguments.event);
  if (!record) return fail(record.error());
  const auto member = member_named(*record, arguments.name);
  if (!member) return fail(member.error());
  const std::string& zone = record->event.now.time_zone;
  const auto from = moment_from(arguments.from, zone, context.now());
  if (!from) return fail(from.error());
  // "22:00" is the next time that a clock shows that once the shift has begun.
  const auto until = moment_from(arguments.until, zone, *from);
  if (!until) return fail(until.error());
  const auto draft = add_shift(*record, Shift{*member, *from, *until, arguments.note}, context.now());
  if (!draft) return fail(draft.error());
  if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  return tell_shifts(context, *record);
}

Outcome<Ending> remove(Context& context, const TeamArguments& arguments) {
  const auto record = event_here(context, arguments.event);
  if (!record) return fail(record.error());
  const auto all = load_shifts(context.ledger(), record->book);
  if (arguments.number < 1 || arguments.number > all.size())
    return fail(FaultCode::not_found, "no shift of that number", std::to_string(arguments.number), "`shifts` lists them");
  if (auto stored = context.workplace().commit(remove_shift(record->book, all[arguments.number - 1])); !stored) return fail(stored.error());
  return tell_shifts(context, *record);
}

void add_event(CLI::App& command, TeamArguments& arguments) {
  command.add_option("--event", arguments.event, "NAME or number of the event; default: the one in use");
}
void add_shift_footer(CLI::App& command, TeamArguments& arguments) {
  add_event(command, arguments);
  command.footer(
      "--json: one object: shifts [{number, member, from, until, note}], warnings [{kind (long_day, short_rest), member, day, minutes}].\n"
      "Days over 12 hours and rests under 11 (Directive 2003/88/EC, article 3) are warned of; what holds is for local law and contracts to say.");
}
void add_team_footer(CLI::App& command, TeamArguments& arguments) {
  add_event(command, arguments);
  command.footer("--json: an array: [{member, name, role, languages, skills, device, here_now}].");
}

}  // namespace

void add_team_commands(CLI::App& app, Work& chosen) {
  add_command<TeamArguments>(app, chosen, "team", "Who is on the team, and who is here now", team, add_team_footer);
  add_command<TeamArguments>(app, chosen, "team-set", "Add somebody to the team, or bring what is said of them up to date", set,
                             [](CLI::App& command, TeamArguments& arguments) {
                               command.add_option("NAME", arguments.name, "Who")->required();
                               command.add_option("--role", arguments.role, "head, desk, stringer, reader");
                               command.add_option("--languages", arguments.languages, "BCP 47, separated by spaces: \"en pt\"");
                               command.add_option("--skills", arguments.skills, "In words: \"natural gut, left-handed\"");
                               add_team_footer(command, arguments);
                             });
  add_command<TeamArguments>(app, chosen, "shifts", "Who is here when, and whose days are too long", shifts, add_shift_footer);
  add_command<TeamArguments>(app, chosen, "shift-add", "Plan a shift", add, [](CLI::App& command, TeamArguments& arguments) {
    command.add_option("MEMBER", arguments.name, "Name of the member")->required();
    command.add_option("FROM", arguments.from, "2031-05-26T08:00, 08:00 (the next one) or +MINUTES")->required();
    command.add_option("UNTIL", arguments.until, "The same; a bare time is the next one after FROM")->required();
    command.add_option("--note", arguments.note, "A remark");
    add_shift_footer(command, arguments);
  });
  add_command<TeamArguments>(app, chosen, "shift-remove", "Take a shift off the plan", remove, [](CLI::App& command, TeamArguments& arguments) {
    command.add_option("NUMBER", arguments.number, "Its number in `shifts`")->required();
    add_shift_footer(command, arguments);
  });
}

}  // namespace weavelog::cli
