// inspect, frame, frame-answer, frame-override, frame-mended: what is wrong with a frame, and what the player says to it.

#include "core/base/iso_time.h"
#include "core/base/text.h"
#include "core/desk/cautions.h"
#include "core/desk/inspection.h"
#include "core/model/field_json.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/field_input.h"
#include "sync/cli/render.h"

namespace weavelog::cli {
namespace {

template <class Enum>
std::vector<std::string_view> names_of() {
  std::vector<std::string_view> names;
  for (const auto& choice : choices(Enum{}))
    if (choice.value != Enum::unsaid) names.push_back(choice.name);
  return names;
}
template <class Enum>
std::string listed() {
  std::string out;
  for (const std::string_view name : names_of<Enum>()) out.append(out.empty() ? "" : ", ").append(name);
  return out;
}
template <class Enum>
Outcome<Enum> chosen_from(std::string_view text, const std::string& where) {
  const auto found = choice_from<Enum>(text);
  if (!found || *found == Enum::unsaid) return no_choice(text, where, names_of<Enum>());
  return *found;
}

/// "2", "2:30": on the head as on a clock; a part of the frame by its name.
Outcome<> place_from(std::string_view text, FoundOnFrame& found) {
  if (const auto part = choice_from<FramePart>(text); part && *part != FramePart::unsaid) {
    found.part = *part;
    return {};
  }
  const auto colon = text.find(':');
  const auto hour = whole_from(text.substr(0, colon), "place");
  const auto minute = colon == std::string_view::npos ? Outcome<std::int64_t>(0) : whole_from(text.substr(colon + 1), "place");
  if (!hour || !minute || *hour < 0 || *hour > 12 || *minute < 0 || *minute > 59)
    return fail(FaultCode::bad_input, "\"" + std::string(text) + "\" is no place on a frame", "place",
                "tell it as on a clock, 2 or 2:30, head at 12; or one of: " + listed<FramePart>());
  found.clock_minutes = *hour % 12 * 60 + *minute;
  return {};
}

/// "crack@2:30=tube: along the edge".
Outcome<FoundOnFrame> found_from(const std::string& typed) {
  FoundOnFrame found;
  std::string_view rest = typed;
  // A note begins with a colon and a space: a place may hold a colon too.
  if (const auto note = rest.find(": "); note != std::string_view::npos) {
    const auto held = cleaned(rest.substr(note + 2), "note");
    if (!held) return fail(held.error());
    found.note = *held;
    rest = rest.substr(0, note);
  }
  if (const auto equals = rest.find('='); equals != std::string_view::npos) {
    const auto remedy = chosen_from<FrameRemedy>(rest.substr(equals + 1), "proposal");
    if (!remedy) return fail(remedy.error());
    found.proposal = *remedy;
    rest = rest.substr(0, equals);
  }
  if (const auto at = rest.find('@'); at != std::string_view::npos) {
    if (auto placed = place_from(rest.substr(at + 1), found); !placed) return fail(placed.error());
    rest = rest.substr(0, at);
  } else {
    return fail(FaultCode::bad_input, "it was not said where", "\"" + typed + "\"", "write FAULT@PLACE, such as crack@2:30");
  }
  const auto fault = chosen_from<FrameFault>(rest, "finding");
  if (!fault) return fail(fault.error());
  found.fault = *fault;
  return found;
}

std::string_view name_of(FrameHold holding) {
  switch (holding) {
    case FrameHold::none:
      return "none";
    case FrameHold::unanswered:
      return "unanswered";
    case FrameHold::two_answers:
      return "two_answers";
    case FrameHold::refused:
      return "refused";
  }
  return {};
}

/// What is on the frame of a job's racket, newest first, with the numbers by which it is named.
void tell(Context& context, const BookId& book, const EntityId& job) {
  const auto record = load_player(context.ledger(), book);
  if (!record || !record->job(job)) return;
  // The bench reads this in the room's language; only the question is for the player.
  const Language language = context.language(), players = context.language_for(record->person.now);
  json::array list;
  std::string text = std::string(name_of_choice(record->stage_of(job).stage)) + "\n";
  std::size_t number = 0;
  for (const auto* finding : findings_of(*record, record->job(job)->now.racket, true)) {
    json::object one = fields_json(finding->now);
    const FrameHold holding = holding_of(*record, *finding);
    one["number"] = ++number;
    one["holds"] = name_of(holding);
    one["words"] = finding_words(language, finding->now);
    if (finding->now.proposal != FrameRemedy::unsaid) one["question"] = finding_question(players, finding->now);
    text += std::to_string(number) + "  " + finding_words(language, finding->now);
    if (finding->now.proposal != FrameRemedy::unsaid) text += "; proposed: " + remedy_words(language, finding->now.proposal);
    if (finding->now.answer != FrameRemedy::unsaid)
      text += "; " + finding->now.answered_by + ": " + remedy_words(language, finding->now.answer);
    if (holding != FrameHold::none) text += "  (" + std::string(name_of(holding)) + ")";
    if (finding->now.override_at) text += "; let go on by " + finding->now.override_by + ": " + finding->now.override_reason;
    if (finding->now.mended_at) text += "; put right by " + finding->now.mended_by;
    text += "\n";
    list.push_back(std::move(one));
  }
  json::object out{{"job", job.hex()}, {"stage", name_of_choice(record->stage_of(job).stage)}};
  out["may_go_on"] = !held_back(*record, job);
  out["findings"] = std::move(list);
  if (doubt_about(*record, record->job(job)->now.racket)) {
    out["caution"] = caution_text(language, Caution::cracked_frame);
    text += caution_text(language, Caution::cracked_frame) + "\n";
  }
  context.answer(out, text);
}

Outcome<Ending> store(Context& context, const JobHere& here, const Outcome<Draft>& draft) {
  if (!draft) return fail(draft.error());
  if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  tell(context, here.row.book, here.row.job);
  return Ending::done;
}

/// The finding of that number; without one the only one that holds the racket.
Outcome<EntityId> finding_of(const JobHere& here, std::optional<std::size_t> number, bool holding_only) {
  const auto list = findings_of(here.record, here.row.racket, true);
  if (number) {
    if (*number < 1 || *number > list.size())
      return fail(FaultCode::not_found, "no finding of that number", std::to_string(*number), "`frame` lists them");
    return list[*number - 1]->id();
  }
  std::vector<EntityId> fit;
  for (const auto* finding : list)
    if (holding_only ? holding_of(here.record, *finding) != FrameHold::none : !finding->now.mended_at) fit.push_back(finding->id());
  if (fit.size() == 1) return fit.front();
  return fail(fit.empty() ? FaultCode::not_found : FaultCode::bad_input,
              fit.empty() ? "nothing was found on this frame that is still open" : "several findings are meant", "finding",
              "`frame` lists them; give --finding NUMBER");
}

struct InspectArguments {
  std::string job, by, event;
  std::vector<std::string> found;
};
Outcome<Ending> inspect_frame(Context& context, const InspectArguments& arguments) {
  std::vector<FoundOnFrame> found;
  for (const std::string& typed : arguments.found) {
    auto one = found_from(typed);
    if (!one) return fail(one.error());
    found.push_back(std::move(*one));
  }
  const auto here = job_here(context, arguments.event, arguments.job);
  if (!here) return fail(here.error());
  const auto by = arguments.by.empty() ? context.ledger().self().device : arguments.by;
  return store(context, *here, inspect(here->record, here->row.job, found, by, context.now()));
}

struct FrameArguments {
  std::string job, event, remedy, said_by, by, reason;
  std::optional<std::size_t> finding;
};
Outcome<Ending> show_frame(Context& context, const FrameArguments& arguments) {
  const auto here = job_here(context, arguments.event, arguments.job);
  if (!here) return fail(here.error());
  tell(context, here->row.book, here->row.job);
  return Ending::done;
}
Outcome<Ending> answer_frame(Context& context, const FrameArguments& arguments) {
  const auto remedy = chosen_from<FrameRemedy>(arguments.remedy, "answer");
  if (!remedy) return fail(remedy.error());
  const auto here = job_here(context, arguments.event, arguments.job);
  if (!here) return fail(here.error());
  const auto finding = finding_of(*here, arguments.finding, true);
  if (!finding) return fail(finding.error());
  const auto by = arguments.by.empty() ? context.ledger().self().device : arguments.by;
  return store(context, *here, answer_finding(here->record, *finding, {*remedy, arguments.said_by, by, context.now()}));
}
Outcome<Ending> override_frame(Context& context, const FrameArguments& arguments) {
  const auto here = job_here(context, arguments.event, arguments.job);
  if (!here) return fail(here.error());
  const auto finding = finding_of(*here, arguments.finding, true);
  if (!finding) return fail(finding.error());
  return store(context, *here, override_finding(here->record, *finding, arguments.by, arguments.reason, context.now()));
}
Outcome<Ending> mended_frame(Context& context, const FrameArguments& arguments) {
  const auto here = job_here(context, arguments.event, arguments.job);
  if (!here) return fail(here.error());
  const auto finding = finding_of(*here, arguments.finding, false);
  if (!finding) return fail(finding.error());
  const auto by = arguments.by.empty() ? context.ledger().self().device : arguments.by;
  return store(context, *here, mend_finding(here->record, *finding, by, context.now()));
}

void add_job(CLI::App& command, std::string& job, std::string& event) {
  command.add_option("JOB-OR-TAG", job, "Tag number, or six or more characters of the job's number")->required();
  command.add_option("--event", event, "NAME or number of the event; default: the one in use");
}
constexpr const char* kAnswerForm =
    "--json: job, stage, may_go_on, findings: [{number, fault, part, clock_minutes, note, proposal, answer, ..., holds, words, question}],\n"
    "caution if the frame is in doubt.";

}  // namespace

void add_inspection_commands(CLI::App& app, Work& chosen) {
  add_command<InspectArguments>(app, chosen, "inspect", "Store what the inspection of a racket found", inspect_frame,
                                [](CLI::App& command, InspectArguments& arguments) {
                                  add_job(command, arguments.job, arguments.event);
                                  command.add_option("--found", arguments.found,
                                                     "FAULT@PLACE[=PROPOSAL][: NOTE], as often as needed; nothing: the frame is sound.\nFAULT: " +
                                                         listed<FrameFault>() + ".\nPLACE: 2 or 2:30 as on a clock (head at 12), or " +
                                                         listed<FramePart>() + ".\nPROPOSAL, asked of the player: " + listed<FrameRemedy>());
                                  command.add_option("--by", arguments.by, "Who inspects; default: the device's name");
                                  command.footer(kAnswerForm);
                                });
  add_command<FrameArguments>(app, chosen, "frame", "What was ever found on a racket's frame", show_frame,
                              [](CLI::App& command, FrameArguments& arguments) {
                                add_job(command, arguments.job, arguments.event);
                                command.footer(kAnswerForm);
                              });
  const auto add_finding = [](CLI::App& command, FrameArguments& arguments) {
    add_job(command, arguments.job, arguments.event);
    command.add_option("--finding", arguments.finding, "Its number in `frame`; default: the only one that is open");
    command.footer(kAnswerForm);
  };
  add_command<FrameArguments>(app, chosen, "frame-answer", "Store the player's answer about a frame", answer_frame,
                              [&](CLI::App& command, FrameArguments& arguments) {
                                add_finding(command, arguments);
                                command.add_option("ANSWER", arguments.remedy, listed<FrameRemedy>())->required();
                                command.add_option("--said-by", arguments.said_by, "Who answered")->required();
                                command.add_option("--by", arguments.by, "Who took the answer; default: the device's name");
                              });
  add_command<FrameArguments>(app, chosen, "frame-override", "Let a racket go on without the player's answer, by name", override_frame,
                              [&](CLI::App& command, FrameArguments& arguments) {
                                add_finding(command, arguments);
                                command.add_option("--by", arguments.by, "Who answers for it")->required();
                                command.add_option("--reason", arguments.reason, "Why")->required();
                              });
  add_command<FrameArguments>(app, chosen, "frame-mended", "What was found has been put right", mended_frame,
                              [&](CLI::App& command, FrameArguments& arguments) {
                                add_finding(command, arguments);
                                command.add_option("--by", arguments.by, "Who put it right; default: the device's name");
                              });
}

}  // namespace weavelog::cli
