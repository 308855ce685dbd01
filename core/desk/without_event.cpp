#include "core/desk/without_event.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/base/local_time.h"
#include "core/desk/player_record.h"
#include "core/desk/tags.h"
#include "core/model/queries.h"
#include "core/store/database.h"

namespace weavelog {
namespace {

/// Who took a job in: the author of the field that every job has.
bool taken_in_by(const std::set<AuthorId>& authors, const Loaded<Job>& job) {
  const Cell* at = job.seen.find(tag_of<Job>(&Job::at));
  return at != nullptr && authors.contains(at->latest().dot.author);
}

/// Numbers that rackets of the list bring along and keep in the event, by their jobs.
std::map<EntityId, std::int64_t> kept_tags(const Ledger& ledger, const BookId& event, std::span<const WithoutEvent> rackets,
                                           const std::map<BookId, PlayerRecord>& records) {
  std::map<EntityId, std::int64_t> out;
  std::set<std::int64_t> taken;
  for (const WithoutEvent& one : rackets)
    for (const EntityId& id : one.jobs) {
      const auto* job = records.at(one.player).job(id);
      if (job == nullptr || job->now.event || !job->now.tag_number) continue;
      const std::int64_t number = *job->now.tag_number;
      if (!taken.contains(number) && check_new_tags(ledger, event, std::span(&number, 1))) taken.insert(number), out.emplace(id, number);
    }
  return out;
}

}  // namespace

std::vector<WithoutEvent> rackets_without_event(const Ledger& ledger) {
  std::vector<std::pair<BookId, EntityId>> found;
  ledger.read([&](Connection& db) {
    SQLite::Statement& query = db.statement(
        "SELECT p.book, j.id FROM model_job j JOIN model_player p ON p.n=j.player WHERE j.open=1 AND j.event IS NULL AND j.stage<>?1 AND j.at>=?2 "
        "ORDER BY j.at, j.ord, j.n");
    query.bind(1, static_cast<int>(Stage::none));  // what nobody ever took in
    query.bind(2, ledger.wall().now() - kWithoutEventDays * 24 * kHourMs);
    while (query.executeStep()) {
      const auto book = BookId::from_bytes(blob_of(query, 0));
      const auto job = EntityId::from_bytes(blob_of(query, 1));
      if (book && job) found.emplace_back(*book, *job);
    }
  });
  std::vector<WithoutEvent> out;
  if (found.empty()) return out;
  std::set<AuthorId> own{ledger.self().id()};
  for (const KnownAuthor& known : ledger.authors())
    if (known.card.key == ledger.self().key) own.insert(known.card.id());
  std::set<BookId> seen;
  for (const auto& [book, first] : found) {
    if (!seen.insert(book).second) continue;
    const auto record = load_player(ledger, book);
    if (!record) continue;  // forgotten a moment ago
    WithoutEvent one{book, listed_name(record->person.now), {}};
    for (const auto& [other, id] : found)
      if (const auto* job = other == book ? record->job(id) : nullptr; job && taken_in_by(own, *job)) one.jobs.push_back(id);
    if (!one.jobs.empty()) out.push_back(std::move(one));
  }
  return out;
}

Outcome<std::vector<Draft>> take_into_event(const Ledger& ledger, const BookId& event, std::span<const WithoutEvent> rackets) {
  const auto held = load_event(ledger, event);
  if (!held) return fail(held.error());
  const EventInfo& info = held->event.now;
  std::map<BookId, PlayerRecord> records;
  for (const WithoutEvent& one : rackets) {
    auto record = load_player(ledger, one.player);
    if (!record) return fail(record.error());
    records.insert_or_assign(one.player, std::move(*record));
  }
  // First of all: a racket that comes early in the list must not be given what one behind it carries already.
  const auto kept = kept_tags(ledger, event, rackets, records);
  std::set<std::int64_t> given;
  for (const auto& [id, number] : kept) given.insert(number);
  std::vector<Draft> out;
  for (const WithoutEvent& one : rackets) {
    const PlayerRecord& record = records.at(one.player);
    Draft draft(one.player, kPlayerBook, kActEdit);
    std::set<EntityId> hand_overs;
    for (const EntityId& id : one.jobs) {
      const auto* job = record.job(id);
      if (job == nullptr)
        return fail(FaultCode::not_found, "the player has no such racket in the room", "job " + id.hex(), "look at the player again");
      if (job->now.event) continue;  // an event has it by now
      Job wanted = job->now;
      wanted.event = event;
      if (!kept.contains(id)) {
        wanted.tag_number = next_tag(ledger, event, given);
        given.insert(*wanted.tag_number);
      }
      put_changes(draft, job->seen, wanted);
      const auto* hand_over = record.drop_off(job->now.drop_off);
      if (hand_over == nullptr || hand_over->now.event || !hand_overs.insert(hand_over->id()).second) continue;
      DropOff at = hand_over->now;
      at.event = event;
      at.event_name = info.name;
      if (at.place.empty()) at.place = info.place;
      put_changes(draft, hand_over->seen, at);
    }
    if (!draft.empty()) out.push_back(std::move(draft));
  }
  return out;
}

}  // namespace weavelog
