#include "core/desk/last_time.h"

#include <algorithm>

namespace weavelog {
namespace {

bool newer(const Loaded<Job>& a, const Loaded<Job>& b) {
  return a.now.at.value_or(0) != b.now.at.value_or(0) ? a.now.at.value_or(0) > b.now.at.value_or(0)
                                                      : a.id() > b.id();
}

/// The newest job that was not put aside; of one racket if given.
const Loaded<Job>* newest_job(const PlayerRecord& record, const EntityId& racket) {
  const Loaded<Job>* best = nullptr;
  for (const Loaded<Job>& job : record.jobs) {
    if (racket && job.now.racket != racket) continue;
    if (best && !newer(job, *best)) continue;
    if (record.stage_of(job.id()).stage == Stage::aside) continue;
    best = &job;
  }
  return best;
}

/// When a field got its present value: the newest answer's stamp.
Stamp stamp_of(const EntityState& state, FieldTag tag) {
  const Cell* cell = state.find(tag);
  return cell ? cell->latest().stamp : Stamp{};
}

}  // namespace

std::optional<LastTime> same_as_last_time(const PlayerRecord& record, const EntityId& racket) {
  LastTime last;
  last.racket = racket;
  const Loaded<Job>* job = newest_job(record, racket);
  last.own_racket = job != nullptr && static_cast<bool>(racket);
  if (!job) job = newest_job(record, {});

  const Loaded<Setup>* setup = job ? record.setup(job->now.setup) : nullptr;
  if (!setup && !job && !record.setups.empty()) setup = &record.setups.back();
  if (!job && !setup) return std::nullopt;

  if (job) {
    last.job = job->id();
    last.at = job->now.at;
    if (const auto* drop_off = record.drop_off(job->now.drop_off)) last.event_name = drop_off->now.event_name;
    last.as_strung = static_cast<const Agreed&>(job->now);
    last.proposal = *last.as_strung;
  }
  if (setup) {
    last.setup = setup->id();
    for (const Field<Agreed>& field : Described<Agreed>::table) {
      const FieldTag in_setup{Described<Setup>::part_base + field.number};
      const FieldTag in_job{Described<Job>::part_base + field.number};
      // The job was filled in from the setup, in one entry; only what was changed in the setup later is a
      // newer word. A field that the job leaves empty was empty when it was agreed, so the job itself dates
      // it.
      const Stamp strung =
          job ? std::max(stamp_of(job->seen, in_job), stamp_of(job->seen, tag_of<Job>(&Job::racket)))
              : Stamp{};
      const Stamp agreed = stamp_of(setup->seen, in_setup);
      if (agreed > strung)
        visit_member(field, [&](auto member) { last.proposal.*member = static_cast<const Agreed&>(setup->now).*member; });
    }
  }
  if (last.as_strung) last.since = compare(*last.as_strung, last.proposal);
  for (const OpenQuestion& question : record.questions)
    if ((last.setup && question.entity == last.setup) || (last.job && question.entity == last.job))
      last.questions.push_back(question);
  return last;
}

std::vector<LastTime> same_for_each(const PlayerRecord& record, std::span<const EntityId> rackets) {
  std::vector<LastTime> all;
  for (const EntityId& racket : rackets)
    if (auto last = same_as_last_time(record, racket)) all.push_back(std::move(*last));
  return all;
}

std::vector<EntityId> rackets_of_last_drop_off(const PlayerRecord& record) {
  const Loaded<Job>* newest = newest_job(record, {});
  if (!newest) return {};
  std::vector<const Loaded<Job>*> jobs;
  for (const Loaded<Job>& job : record.jobs)
    if (job.now.drop_off == newest->now.drop_off && job.now.racket) jobs.push_back(&job);
  std::stable_sort(jobs.begin(), jobs.end(), [](const Loaded<Job>* a, const Loaded<Job>* b) {
    return a->now.order.value_or(0) < b->now.order.value_or(0);
  });
  std::vector<EntityId> rackets;
  for (const Loaded<Job>* job : jobs)
    if (std::find(rackets.begin(), rackets.end(), job->now.racket) == rackets.end())
      rackets.push_back(job->now.racket);
  return rackets;
}

}  // namespace weavelog
