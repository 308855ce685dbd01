#include "core/desk/inspection.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/desk/choice_words.h"
#include "core/desk/phrases.h"
#include "core/desk/stages.h"

namespace weavelog {
namespace {

constexpr std::int64_t kClockMinutes = 12 * 60;

Outcome<> check_found(const FoundOnFrame& found) {
  if (found.fault == FrameFault::unsaid || name_of_choice(found.fault).empty())
    return fail(FaultCode::bad_input, "it was not said what was found", "finding", "choose one, or \"other\" with a note");
  if (name_of_choice(found.proposal).empty() || name_of_choice(found.part).empty())
    return fail(FaultCode::bad_input, "no such proposal or part of the frame", "finding", "choose one of those shown");
  if (found.fault == FrameFault::other && is_blank(found.note))
    return fail(FaultCode::bad_input, "\"other\" says nothing alone", "note", "write what was found");
  if (found.clock_minutes && (*found.clock_minutes < 0 || *found.clock_minutes >= kClockMinutes))
    return fail(FaultCode::bad_input, "there is no such place on the head", "place", "tell it as on a clock, head at 12");
  if (found.part == FramePart::unsaid && !found.clock_minutes)
    return fail(FaultCode::bad_input, "it was not said where", "place", "tap the place on the frame");
  return {};
}

Fault no_such_finding(const EntityId& finding) {
  return {FaultCode::not_found, "no such finding", finding.hex(), "look at the racket again"};
}

bool against(FrameRemedy answer) { return answer == FrameRemedy::do_not_string; }

void put_mark(Draft& draft, const EntityId& job, Stage stage, const StageNow& now, const std::string& by, const std::string& reason,
              UnixMs at) {
  (void)put_new(draft, StageMark{job, stage, at, by, reason, join_ids(now.newest)}, at);
}

struct ClockPlace {
  std::string name, half;
  std::int64_t hour;
};

/// To the nearest half hour: finer than that nobody tells it.
ClockPlace told(FramePart part, std::optional<std::int64_t> clock_minutes) {
  const std::int64_t halves = (clock_minutes.value_or(0) + 15) / 30 % 24;
  return {clock_minutes ? "clock" : std::string(name_of_choice(part)), halves % 2 == 1 ? "yes" : "no", halves / 2 == 0 ? 12 : halves / 2};
}

}  // namespace

Outcome<Draft> inspect(const PlayerRecord& record, const EntityId& job_id, std::span<const FoundOnFrame> found, const std::string& by,
                       UnixMs at) {
  const Loaded<Job>* job = record.job(job_id);
  if (!job) return fail(FaultCode::not_found, "no such job", job_id.hex(), "look at the board again");
  const StageNow now = record.stage_of(job_id);
  if (now.clash)
    return fail(FaultCode::conflict, "two people moved this racket on while apart", job_place(*job),
                "look where it is, then set its stage with a reason");
  if (now.stage != Stage::received && now.stage != Stage::inspected && now.stage != Stage::waiting)
    return fail(FaultCode::refused, "a racket that is " + std::string(name_of_choice(now.stage)) + " is past its inspection",
                job_place(*job), "step it back with a reason first");
  for (const FoundOnFrame& one : found)
    if (auto checked = check_found(one); !checked) return fail(checked.error());
  Draft draft(record.book, kPlayerBook, kActInspect);
  bool asks = held_back(record, job_id).has_value();
  for (const FoundOnFrame& one : found) {
    FrameFinding finding;
    finding.racket = job->now.racket;
    finding.job = job_id;
    finding.fault = one.fault;
    finding.part = one.part;
    finding.clock_minutes = one.clock_minutes;
    finding.note = one.note;
    finding.at = at;
    finding.by = by;
    finding.proposal = one.proposal;
    asks = asks || one.proposal != FrameRemedy::unsaid;
    (void)put_new(draft, finding, at);
  }
  const Stage to = asks ? Stage::waiting : Stage::inspected;
  if (to != now.stage) put_mark(draft, job_id, to, now, by, {}, at);
  if (draft.empty())
    return fail(FaultCode::bad_input, "the racket is inspected already, and nothing new was found", job_place(*job),
                "nothing needs to be done");
  return draft;
}

Outcome<Draft> answer_finding(const PlayerRecord& record, const EntityId& id, const FrameAnswer& answer) {
  const Loaded<FrameFinding>* finding = record.finding(id);
  if (!finding) return fail(no_such_finding(id));
  if (answer.remedy == FrameRemedy::unsaid || name_of_choice(answer.remedy).empty())
    return fail(FaultCode::bad_input, "there is no answer", "answer", "choose what the player said");
  if (is_blank(answer.said_by) || is_blank(answer.taken_by))
    return fail(FaultCode::bad_input, "it was not said who answered and who took the answer", "answer", "give both names");
  if (finding->now.proposal == FrameRemedy::unsaid)
    return fail(FaultCode::refused, "nothing was asked of the player here", id.hex(), "inspect the racket again and propose something");
  Draft draft(record.book, kPlayerBook, kActFrameAnswer);
  FrameFinding wanted = finding->now;
  wanted.answer = answer.remedy;
  wanted.answered_by = answer.said_by;
  wanted.answer_taken_by = answer.taken_by;
  wanted.answered_at = answer.at;
  // Two answers taken apart fold into this one, also where it equals the one that is shown.
  const bool split = holding_of(record, *finding) == FrameHold::two_answers;
  if (split) draft.put(finding->seen, tag_of<FrameFinding>(&FrameFinding::answer), to_value(wanted.answer));
  FrameFinding rest = wanted;
  if (split) rest.answer = finding->now.answer;
  put_changes(draft, finding->seen, rest);

  const StageNow now = record.stage_of(finding->now.job);
  if (now.stage != Stage::waiting || now.clash || !record.job(finding->now.job)) return draft;
  bool waits = false, sets_aside = against(answer.remedy);
  for (const auto& other : record.findings) {
    if (other.id() == id || other.now.job != finding->now.job) continue;
    const FrameHold holding = holding_of(record, other);
    waits = waits || holding == FrameHold::unanswered || holding == FrameHold::two_answers;
    sets_aside = sets_aside || holding == FrameHold::refused;
  }
  if (waits) return draft;
  put_mark(draft, finding->now.job, sets_aside ? Stage::aside : Stage::inspected, now, answer.taken_by,
           sets_aside ? "the player said not to string it" : "", answer.at);
  return draft;
}

Outcome<Draft> override_finding(const PlayerRecord& record, const EntityId& id, const std::string& by, const std::string& reason,
                                UnixMs at) {
  const Loaded<FrameFinding>* finding = record.finding(id);
  if (!finding) return fail(no_such_finding(id));
  if (is_blank(by) || is_blank(reason))
    return fail(FaultCode::bad_input, "going on without the player's answer needs a name and a reason", "override", "give both");
  if (holding_of(record, *finding) == FrameHold::none)
    return fail(FaultCode::refused, "nothing holds this racket back", id.hex(), "nothing needs to be done");
  Draft draft(record.book, kPlayerBook, kActFrameOverride);
  FrameFinding wanted = finding->now;
  wanted.override_by = by;
  wanted.override_reason = reason;
  wanted.override_at = at;
  put_changes(draft, finding->seen, wanted);
  return draft;
}

Outcome<Draft> mend_finding(const PlayerRecord& record, const EntityId& id, const std::string& by, UnixMs at) {
  const Loaded<FrameFinding>* finding = record.finding(id);
  if (!finding) return fail(no_such_finding(id));
  if (is_blank(by)) return fail(FaultCode::bad_input, "it was not said who put it right", "name", "give a name");
  if (finding->now.mended_at) return fail(FaultCode::refused, "this was put right before", id.hex(), "nothing needs to be done");
  Draft draft(record.book, kPlayerBook, kActFrameMended);
  FrameFinding wanted = finding->now;
  wanted.mended_by = by;
  wanted.mended_at = at;
  put_changes(draft, finding->seen, wanted);
  return draft;
}

std::vector<const Loaded<FrameFinding>*> findings_of(const PlayerRecord& record, const EntityId& racket, bool mended_too) {
  std::vector<const Loaded<FrameFinding>*> out;
  for (const auto& finding : record.findings)
    if (finding.now.racket == racket && (mended_too || !finding.now.mended_at)) out.push_back(&finding);
  std::stable_sort(out.begin(), out.end(), [](const auto* a, const auto* b) { return a->now.at.value_or(0) > b->now.at.value_or(0); });
  return out;
}

FrameHold holding_of(const PlayerRecord& record, const Loaded<FrameFinding>& finding) {
  const FrameFinding& now = finding.now;
  if (now.proposal == FrameRemedy::unsaid || now.mended_at) return FrameHold::none;
  const FieldTag tag = tag_of<FrameFinding>(&FrameFinding::answer);
  const bool split = std::any_of(record.questions.begin(), record.questions.end(), [&](const OpenQuestion& question) {
    return question.entity == finding.id() && question.cell.tag == tag;
  });
  const bool against_it = !split && against(now.answer);
  if (!split && now.answer != FrameRemedy::unsaid && !against_it) return FrameHold::none;
  // An override covers what was known when it was given, not an answer that came after.
  if (now.override_at && !(now.answered_at && *now.answered_at > *now.override_at)) return FrameHold::none;
  if (split) return FrameHold::two_answers;
  return against_it ? FrameHold::refused : FrameHold::unanswered;
}

std::optional<Fault> held_back(const PlayerRecord& record, const EntityId& job) {
  for (const auto& finding : record.findings) {
    if (finding.now.job != job) continue;
    const Loaded<Job>* held = record.job(job);
    const std::string where = held ? job_place(*held) : "job " + job.hex();
    switch (holding_of(record, finding)) {
      case FrameHold::none:
        break;
      case FrameHold::unanswered:
        return Fault{FaultCode::refused, "the player has not answered what was asked about the frame", where,
                     "take the answer, or let somebody answer for it by name"};
      case FrameHold::two_answers:
        return Fault{FaultCode::refused, "there are two different answers about the frame", where, "ask again and take one"};
      case FrameHold::refused:
        return Fault{FaultCode::refused, "the player said not to string this racket", where,
                     "put it aside, or let somebody answer for it by name"};
    }
  }
  return std::nullopt;
}

std::string finding_words(const Language& language, const FrameFinding& finding) {
  const ClockPlace place = told(finding.part, finding.clock_minutes);
  return desk_words().say(language, "inspection.finding",
                          {{"fault", choice_words(language, "frame_fault.", finding.fault)},
                           {"place", place.name},
                           {"hour", place.hour},
                           {"half", place.half},
                           {"noted", finding.note.empty() ? "no" : "yes"},
                           {"note", finding.note}});
}

std::string place_words(const Language& language, FramePart part, std::optional<std::int64_t> clock_minutes) {
  const ClockPlace place = told(part, clock_minutes);
  return desk_words().say(language, "inspection.place", {{"place", place.name}, {"hour", place.hour}, {"half", place.half}});
}

std::string remedy_words(const Language& language, FrameRemedy remedy) {
  return choice_words(language, "remedy.", remedy);
}

std::string finding_question(const Language& language, const FrameFinding& finding) {
  return desk_words().say(language, "inspection.question",
                          {{"finding", finding_words(language, finding)}, {"remedy", remedy_words(language, finding.proposal)}});
}

}  // namespace weavelog
