#pragma once
// Everything one player book holds, loaded once: what the desk's functions work on. They have no I/O of their
// own.

#include <vector>

#include "core/model/bench.h"
#include "core/model/frame.h"
#include "core/model/link.h"
#include "core/model/photo.h"
#include "core/model/player.h"
#include "core/model/stage_now.h"
#include "core/store/ledger.h"

namespace weavelog {

/// Entities whose making was undone are left out. All lists are in order of making.
struct PlayerRecord {
  BookId book;
  Loaded<Person> person;  ///< without an id if the book has none (yet)
  std::vector<Loaded<Racket>> rackets;
  std::vector<Loaded<Setup>> setups;
  std::vector<Loaded<DropOff>> drop_offs;
  std::vector<Loaded<Job>> jobs;
  std::vector<PlacedMark> marks;
  std::vector<Loaded<ConsentGiven>> consents;
  std::vector<Loaded<FrameFinding>> findings;
  std::vector<Loaded<BenchRecord>> benches;
  std::vector<Loaded<CheckResult>> checks;
  std::vector<Loaded<Reading>> readings;
  std::vector<Loaded<Photo>> photos;
  std::vector<Loaded<BookLink>> links;
  std::vector<Loaded<OtherName>> other_names;
  std::vector<Loaded<CardTaken>> cards;
  std::vector<OpenQuestion> questions;

  [[nodiscard]] const Loaded<Racket>* racket(const EntityId& id) const;
  [[nodiscard]] const Loaded<Setup>* setup(const EntityId& id) const;
  [[nodiscard]] const Loaded<DropOff>* drop_off(const EntityId& id) const;
  [[nodiscard]] const Loaded<Job>* job(const EntityId& id) const;
  [[nodiscard]] const Loaded<FrameFinding>* finding(const EntityId& id) const;
  /// The stage of a job, from its marks.
  [[nodiscard]] StageNow stage_of(const EntityId& job) const;
};

[[nodiscard]] PlayerRecord record_of(const BookId& book, std::vector<EntityState> entities,
                                     std::vector<OpenQuestion> questions);
/// Faults: not_found.
[[nodiscard]] Outcome<PlayerRecord> load_player(const Ledger& ledger, const BookId& book);

/// "Nowak Ewa", family name first, as lists show it; the native name if there is no other.
[[nodiscard]] std::string listed_name(const Person& person);

}  // namespace weavelog
