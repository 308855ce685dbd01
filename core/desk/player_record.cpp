#include "core/desk/player_record.h"

#include <algorithm>

namespace weavelog {
namespace {

template <class S>
const Loaded<S>* by_id(const std::vector<Loaded<S>>& list, const EntityId& id) {
  const auto found =
      std::find_if(list.begin(), list.end(), [&](const Loaded<S>& held) { return held.id() == id; });
  return found == list.end() ? nullptr : &*found;
}

}  // namespace

const Loaded<Racket>* PlayerRecord::racket(const EntityId& id) const {
  return by_id(rackets, id);
}
const Loaded<Setup>* PlayerRecord::setup(const EntityId& id) const {
  return by_id(setups, id);
}
const Loaded<DropOff>* PlayerRecord::drop_off(const EntityId& id) const {
  return by_id(drop_offs, id);
}
const Loaded<Job>* PlayerRecord::job(const EntityId& id) const {
  return by_id(jobs, id);
}

const Loaded<FrameFinding>* PlayerRecord::finding(const EntityId& id) const {
  return by_id(findings, id);
}

StageNow PlayerRecord::stage_of(const EntityId& job) const {
  std::vector<PlacedMark> own;
  for (const PlacedMark& placed : marks)
    if (placed.mark.job == job) own.push_back(placed);
  return stage_now(own);
}

PlayerRecord record_of(const BookId& book, std::vector<EntityState> entities,
                       std::vector<OpenQuestion> questions) {
  PlayerRecord record;
  record.book = book;
  record.questions = std::move(questions);
  std::sort(entities.begin(), entities.end(),
            [](const EntityState& a, const EntityState& b) { return a.id < b.id; });
  for (EntityState& state : entities) {
    if (!exists(state)) continue;
    if (state.kind == kPerson) {
      // A book has one person; if two devices made one each, the first made stands, here as in the tables.
      if (!record.person.id()) record.person = Loaded<Person>(std::move(state));
    } else if (state.kind == kRacket) {
      record.rackets.emplace_back(std::move(state));
    } else if (state.kind == kSetup) {
      record.setups.emplace_back(std::move(state));
    } else if (state.kind == kDropOff) {
      record.drop_offs.emplace_back(std::move(state));
    } else if (state.kind == kJob) {
      record.jobs.emplace_back(std::move(state));
    } else if (state.kind == kStageMark) {
      if (auto placed = placed_mark(state)) record.marks.push_back(std::move(*placed));
    } else if (state.kind == kConsentGiven) {
      record.consents.emplace_back(std::move(state));
    } else if (state.kind == kFrameFinding) {
      record.findings.emplace_back(std::move(state));
    } else if (state.kind == kBenchRecord) {
      record.benches.emplace_back(std::move(state));
    } else if (state.kind == kCheckResult) {
      record.checks.emplace_back(std::move(state));
    } else if (state.kind == kReading) {
      record.readings.emplace_back(std::move(state));
    } else if (state.kind == kPhoto) {
      record.photos.emplace_back(std::move(state));
    } else if (state.kind == kBookLink) {
      record.links.emplace_back(std::move(state));
    } else if (state.kind == kOtherName) {
      record.other_names.emplace_back(std::move(state));
    } else if (state.kind == kCardTaken) {
      record.cards.emplace_back(std::move(state));
    }
  }
  return record;
}

Outcome<PlayerRecord> load_player(const Ledger& ledger, const BookId& book) {
  const auto info = ledger.book(book);
  if (!info || info->kind != kPlayerBook)
    return fail(FaultCode::not_found, "no such player on this device", book.hex(),
                "search again, or exchange with the event first");
  return record_of(book, ledger.entities(book), ledger.open_questions(book));
}

std::string listed_name(const Person& person) {
  std::string name = person.family_name;
  if (!person.given_name.empty()) name += (name.empty() ? "" : " ") + person.given_name;
  return name.empty() ? person.native_name : name;
}

}  // namespace weavelog
