#include "core/desk/new_time.h"

#include "core/base/text.h"
#include "core/desk/stages.h"

namespace weavelog {
namespace {

bool can_be_promised(const PlayerRecord& record, const EntityId& job) {
  const Stage stage = record.stage_of(job).stage;
  return is_open(stage) && stage != Stage::ready;
}

}  // namespace

Outcome<> check_promise(UnixMs ready_by, UnixMs now, const std::string& where) {
  if (ready_by <= now) return fail(FaultCode::bad_input, "this time has passed", where, "give one that is still to come");
  if (ready_by - now > kFarthestPromise) return fail(FaultCode::bad_input, "this time lies more than 30 days ahead", where, "look at the date");
  return {};
}

Outcome<Draft> agree_time(const PlayerRecord& record, std::span<const EntityId> jobs, const NewTime& agreed) {
  if (jobs.empty()) return fail(FaultCode::bad_input, "no racket was said", "new time", "choose at least one");
  if (is_blank(agreed.agreed_by))
    return fail(FaultCode::bad_input, "it was not said who agreed to the time", "new time", "name the player or who speaks for them");
  if (auto sound = check_promise(agreed.ready_by, agreed.at, "new time"); !sound) return fail(sound.error());
  Draft draft(record.book, kPlayerBook, kActNewTime);
  for (const EntityId& id : jobs) {
    const Loaded<Job>* job = record.job(id);
    if (!job) return fail(FaultCode::not_found, "this racket is not in the player's book", id.hex(), "look the player up again");
    if (!can_be_promised(record, id))
      return fail(FaultCode::refused, "a racket that is ready, collected or put aside is promised for no other time", id.hex(),
                  "choose those that are still in work");
    Job wanted = job->now;
    wanted.ready_by = agreed.ready_by;
    wanted.time_agreed_by = agreed.agreed_by;
    put_changes(draft, job->seen, wanted);
  }
  return draft;
}

std::vector<EntityId> promised_with(const PlayerRecord& record, const EntityId& id) {
  std::vector<EntityId> out;
  const Loaded<Job>* first = record.job(id);
  if (!first) return out;
  for (const auto& job : record.jobs)
    if (job.now.drop_off == first->now.drop_off && job.now.ready_by == first->now.ready_by && can_be_promised(record, job.id()))
      out.push_back(job.id());
  return out;
}

}  // namespace weavelog
