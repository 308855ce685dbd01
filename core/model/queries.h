#pragma once
// What the screens and commands ask of the tables. Each runs on a reader connection and takes a snapshot;
// none changes anything.

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/choices.h"
#include "core/store/ledger.h"

namespace weavelog {

struct PlayerRow {
  BookId book;
  EntityId person;
  std::string family_name;
  std::string given_name;
  std::string native_name;
  std::string country;
  std::optional<std::int64_t> birth_year;
  Hand hand = Hand::unsaid;
  std::string tour_number;
  ConsentChoice consent = ConsentChoice::unsaid;
  std::string last_event;               ///< name of the event of the newest job, if its drop-off says one
  std::optional<std::int64_t> last_at;  ///< when the newest job was taken in
};

/// Players of whose name every typed word begins a word, in any script or order; case and accents do not
/// count. Those whose family name begins with the first word come first, then by newest job. Nothing typed:
/// the newest jobs' players first.
[[nodiscard]] std::vector<PlayerRow> find_players(const Ledger& ledger, std::string_view typed,
                                                  std::size_t limit = 50);
[[nodiscard]] std::optional<PlayerRow> find_player(const Ledger& ledger, const BookId& book);
[[nodiscard]] std::int64_t count_players(const Ledger& ledger);

/// A place in a list of jobs, newest first: the row after it is the next one.
struct JobKey {
  std::int64_t at = 0;
  std::int64_t n = 0;
  auto operator<=>(const JobKey&) const = default;
};

struct JobRow {
  JobKey key;
  BookId book;
  EntityId job;
  EntityId racket;
  EntityId drop_off;
  BookId event;
  std::string event_name;
  std::string family_name;
  std::string given_name;
  std::string native_name;
  std::string racket_label;
  std::string racket_model;  ///< maker and model
  std::string mains_string;
  std::optional<Quantity> mains_tension;
  std::string crosses_string;
  std::optional<Quantity> crosses_tension;
  Stage stage = Stage::none;
  std::optional<std::int64_t> stage_at;
  std::string stage_by;
  bool clash = false;  ///< two people moved it on while apart: to be looked at
  std::optional<std::int64_t> at;
  std::optional<std::int64_t> ready_by;
  Rush rush = Rush::none;
  std::int64_t order = 0;  ///< in its drop-off
  std::optional<std::int64_t> tag_number;
};

/// Jobs that carry a tag number, newest first; of one event if given.
[[nodiscard]] std::vector<JobRow> find_jobs_by_tag(const Ledger& ledger, std::int64_t tag_number,
                                                   std::optional<BookId> event = {}, std::size_t limit = 20);
/// All jobs of a player, newest first.
[[nodiscard]] std::vector<JobRow> history_of(const Ledger& ledger, const BookId& player,
                                             std::size_t limit = 500);
[[nodiscard]] std::optional<JobRow> find_job(const Ledger& ledger, const BookId& player, const EntityId& job);

/// The jobs of an event at one stage, by ready-by, those without one last.
[[nodiscard]] std::vector<JobRow> jobs_at_stage(const Ledger& ledger, const BookId& event, Stage stage,
                                                std::size_t limit = 500);
/// The jobs of an event that two people moved on while apart.
[[nodiscard]] std::vector<JobRow> clashing_jobs(const Ledger& ledger, const BookId& event,
                                                std::size_t limit = 100);
/// What a bench may take up next: not yet cut out, nothing to be answered; on-court rush, then rush, then by
/// ready-by.
[[nodiscard]] std::vector<JobRow> next_jobs(const Ledger& ledger, const BookId& event, std::size_t limit = 1);
/// Jobs of an event by stage, index = number of the stage.
[[nodiscard]] std::array<std::int64_t, kStageCount> count_by_stage(const Ledger& ledger, const BookId& event);

/// Of a job no more than what strangers may see.
struct BoardJob {
  std::int64_t player = 0;  ///< equal for jobs of one player; means nothing outside this answer
  std::string family_name;  ///< both empty unless asked for
  std::string given_name;
  std::optional<std::int64_t> tag_number;
  Stage stage = Stage::none;
  std::optional<std::int64_t> stage_at;
  bool clash = false;
  std::optional<std::int64_t> ready_by;
};
/// The jobs of an event from received to ready, in no particular order, from one snapshot.
[[nodiscard]] std::vector<BoardJob> board_jobs(const Ledger& ledger, const BookId& event, bool with_names);

/// Every job, or those of one event, newest first; a page begins after `after`.
[[nodiscard]] std::vector<JobRow> page_of_jobs(const Ledger& ledger, std::optional<BookId> event,
                                               std::optional<JobKey> after, std::size_t limit);
[[nodiscard]] std::int64_t count_jobs(const Ledger& ledger, std::optional<BookId> event = {});
/// Where row `index` (from 0) lies: page_of_jobs after it begins with row index + 1.
[[nodiscard]] std::optional<JobKey> job_key_at(const Ledger& ledger, std::optional<BookId> event,
                                               std::int64_t index);
/// The highest tag number given out at an event, 0 if none.
[[nodiscard]] std::int64_t highest_tag(const Ledger& ledger, const BookId& event);

struct EventRow {
  BookId book;
  EntityId id;
  std::string name;
  std::string place;
  std::string first_day;
  std::string last_day;
  std::int64_t open_jobs = 0;  ///< neither collected nor aside
};
/// Newest first day first.
[[nodiscard]] std::vector<EventRow> all_events(const Ledger& ledger);

struct EntryRow {
  EntityId id;
  std::string family_name;
  std::string given_name;
  std::string native_name;
  std::string country;
  std::optional<std::int64_t> birth_year;
  std::optional<std::int64_t> seed;
  EntryVia via = EntryVia::unsaid;
  std::string draw;
  BookId player;           ///< the linked player's book, if any
  bool held_here = false;  ///< that book is on this device
};
/// By folded family and given name.
[[nodiscard]] std::vector<EntryRow> entry_list(const Ledger& ledger, const BookId& event);
/// Is the player linked in the event's entry list?
[[nodiscard]] bool is_entered(const Ledger& ledger, const BookId& player, const BookId& event);
/// The same, or the player had a racket strung there.
[[nodiscard]] bool at_event(const Ledger& ledger, const BookId& player, const BookId& event);
/// At any event.
[[nodiscard]] bool had_rackets_strung(const Ledger& ledger, const BookId& player);
/// All books that are linked in the event's entry list, held here or not; ascending.
[[nodiscard]] std::vector<BookId> entered_players(const Ledger& ledger, const BookId& event);
/// The books of players held here who are linked in the event's entry list or had a racket strung there.
[[nodiscard]] std::vector<BookId> players_at(const Ledger& ledger, const BookId& event);

}  // namespace weavelog
