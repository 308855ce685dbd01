#include "core/desk/stages.h"

#include <algorithm>
#include <array>

#include "core/desk/inspection.h"

namespace weavelog {
namespace {

constexpr std::array kFromNone{Stage::received};
constexpr std::array kFromReceived{Stage::inspected, Stage::waiting, Stage::cut_out, Stage::on_machine};
constexpr std::array kFromInspected{Stage::cut_out, Stage::on_machine, Stage::waiting};
constexpr std::array kFromWaiting{Stage::inspected};
constexpr std::array kFromCutOut{Stage::on_machine, Stage::waiting};
constexpr std::array kFromOnMachine{Stage::strung};
constexpr std::array kFromStrung{Stage::checked, Stage::stencilled, Stage::ready};
constexpr std::array kFromChecked{Stage::stencilled, Stage::ready};
constexpr std::array kFromStencilled{Stage::ready};
constexpr std::array kFromReady{Stage::collected};
// A racket put aside goes back to its owner as it is, unless somebody takes it up again, with a reason.
constexpr std::array kFromAside{Stage::collected};

std::string stage_text(Stage stage) {
  return std::string(name_of_choice(stage));
}

}  // namespace

std::string job_place(const Loaded<Job>& job) {
  return job.now.tag_number ? "tag " + std::to_string(*job.now.tag_number) : "job " + job.id().hex();
}

std::span<const Stage> next_steps(Stage from) {
  switch (from) {
    case Stage::none:
      return kFromNone;
    case Stage::received:
      return kFromReceived;
    case Stage::inspected:
      return kFromInspected;
    case Stage::waiting:
      return kFromWaiting;
    case Stage::cut_out:
      return kFromCutOut;
    case Stage::on_machine:
      return kFromOnMachine;
    case Stage::strung:
      return kFromStrung;
    case Stage::checked:
      return kFromChecked;
    case Stage::stencilled:
      return kFromStencilled;
    case Stage::ready:
      return kFromReady;
    case Stage::aside:
      return kFromAside;
    case Stage::collected:
      break;
  }
  return {};
}

bool is_open(Stage stage) {
  return stage != Stage::collected && stage != Stage::aside;
}

Outcome<Draft> take_step(const PlayerRecord& record, std::span<const EntityId> jobs, const StageStep& step) {
  if (jobs.empty()) return fail(FaultCode::bad_input, "no racket was chosen", {}, "choose at least one");
  if (step.to == Stage::none || name_of_choice(step.to).empty())
    return fail(FaultCode::bad_input, "no such stage", {}, "choose one of the stages of the room");
  bool back = false;
  std::vector<StageMark> marks;
  for (const EntityId& id : jobs) {
    const Loaded<Job>* job = record.job(id);
    if (!job) return fail(FaultCode::not_found, "no such job", id.hex(), "look at the board again");
    const StageNow now = record.stage_of(id);
    const auto steps = next_steps(now.stage);
    const bool forward = std::find(steps.begin(), steps.end(), step.to) != steps.end();
    if (step.to == now.stage && !now.clash)
      return fail(FaultCode::bad_input, "the racket is " + stage_text(now.stage) + " already", job_place(*job),
                  "nothing needs to be done");
    if (now.clash && step.reason.empty())
      return fail(FaultCode::conflict, "two people moved this racket on while apart", job_place(*job),
                  "look where it is, then set its stage with a reason");
    // A reason is no answer: only the player's, or an override by name, lets a doubtful frame go on.
    if (step.to == Stage::cut_out || step.to == Stage::on_machine)
      if (const auto held = held_back(record, id)) return fail(*held);
    if (!forward && step.reason.empty())
      return fail(FaultCode::bad_input,
                  stage_text(step.to) + " does not follow " + stage_text(now.stage) + " without a reason",
                  job_place(*job), "take the next step, or say why");
    back = back || !forward || now.clash;
    marks.push_back(StageMark{id, step.to, step.at, step.by, step.reason, join_ids(now.newest),
                              machine_of_step(record, id, step)});
  }
  Draft draft(record.book, kPlayerBook, back ? kActStepBack : kActStage);
  for (const StageMark& mark : marks) (void)put_new(draft, mark, step.at);
  return draft;
}

Outcome<Draft> advance(const PlayerRecord& record, const EntityId& job, const std::string& by, UnixMs at) {
  const StageNow now = record.stage_of(job);
  const auto steps = next_steps(now.stage);
  if (steps.empty() || now.stage == Stage::aside)
    return fail(FaultCode::refused, "a racket that is " + stage_text(now.stage) + " has no next step",
                job.hex(), "step back with a reason if that is wrong");
  return take_step(record, std::span(&job, 1), StageStep{steps.front(), by, {}, at});
}

EntityId machine_of_step(const PlayerRecord& record, const EntityId& job, const StageStep& step) {
  if (step.to != Stage::on_machine) return {};
  const StageNow now = record.stage_of(job);
  if (step.machine || !now.clash) return step.machine;
  EntityId said;
  for (const PlacedMark& placed : marks_of(record, job))
    if (placed.mark.machine && std::find(now.newest.begin(), now.newest.end(), placed.id) != now.newest.end()) said = placed.mark.machine;
  return said;
}

std::vector<PlacedMark> marks_of(const PlayerRecord& record, const EntityId& job) {
  std::vector<PlacedMark> own;
  for (const PlacedMark& placed : record.marks)
    if (placed.mark.job == job) own.push_back(placed);
  std::sort(own.begin(), own.end(), [](const PlacedMark& a, const PlacedMark& b) {
    return a.stamp != b.stamp ? a.stamp < b.stamp : a.id < b.id;
  });
  return own;
}

std::vector<EntityId> clashing_jobs(const PlayerRecord& record) {
  std::vector<EntityId> jobs;
  for (const Loaded<Job>& job : record.jobs)
    if (record.stage_of(job.id()).clash) jobs.push_back(job.id());
  return jobs;
}

}  // namespace weavelog
