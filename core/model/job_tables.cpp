#include "core/model/job_tables.h"

#include <algorithm>
#include <unordered_map>

#include "core/base/salted_hash.h"
#include "core/model/job_times.h"
#include "core/model/player.h"
#include "core/model/stage_now.h"
#include "core/model/stored_entities.h"
#include "core/model/tables.h"
#include "core/store/database.h"

namespace weavelog {
namespace {

using MarksByJob = std::unordered_map<EntityId, std::vector<PlacedMark>, SaltedIdHash>;

/// Fields of a job that its row shows.
bool shown(FieldTag tag) {
  static const std::vector<FieldTag> tags = [] {
    std::vector<FieldTag> out = {tag_of<Job>(&Job::drop_off),
                                 tag_of<Job>(&Job::racket),
                                 tag_of<Job>(&Job::event),
                                 tag_of<Job>(&Job::at),
                                 tag_of<Job>(&Job::ready_by),
                                 tag_of<Job>(&Job::rush),
                                 tag_of<Job>(&Job::order),
                                 tag_of<Job>(&Job::tag_number),
                                 tag_of<Job>(&Agreed::pieces),
                                 tag_of<Job>(&Agreed::mains_string),
                                 tag_of<Job>(&Agreed::mains_tension),
                                 tag_of<Job>(&Agreed::crosses_string),
                                 tag_of<Job>(&Agreed::crosses_tension)};
    std::sort(out.begin(), out.end());
    return out;
  }();
  return std::binary_search(tags.begin(), tags.end(), tag);
}

/// False if the row is there and shows nothing of what changed.
bool concerns_row(const EntityChange& change) {
  if (change.fresh || std::any_of(change.tags.begin(), change.tags.end(), shown)) return true;
  // One field that is shown, stands and did not change: so the row was there before and stays.
  return std::none_of(change.state.cells.begin(), change.state.cells.end(),
                      [](const Cell& cell) { return shown(cell.tag) && !is_cleared(cell.latest().value); });
}

/// All marks of the player's book, from the entity rows.
MarksByJob stored_marks(Connection& db, const BookId& book) {
  MarksByJob marks;
  for (const EntityState& state : stored_entities(db, book, kStageMark))
    if (auto placed = placed_mark(state)) marks[placed->mark.job].push_back(std::move(*placed));
  return marks;
}

/// What model_job.newest says, out of all marks of the job. Where one was made after a mark that is not here, no step can go on from what the row shows,
/// since the mark that it takes may be the one that was named before: a last byte, which no list of ids has, keeps every step from matching.
Bytes newest_of(const StageNow& now, std::span<const PlacedMark> marks) {
  std::vector<EntityId> here;
  for (const PlacedMark& placed : marks) here.push_back(placed.id);
  std::sort(here.begin(), here.end());
  const auto names_one_not_here = [&](const PlacedMark& placed) {
    const auto named = split_ids(placed.mark.after);
    return std::any_of(named.begin(), named.end(), [&](const EntityId& id) { return !std::binary_search(here.begin(), here.end(), id); });
  };
  Bytes out = join_ids(now.newest);
  if (std::any_of(marks.begin(), marks.end(), names_one_not_here)) out.push_back(0);
  return out;
}

/// What model_job.open says: the racket is still to be seen to in the room.
bool is_open(Stage stage) {
  // Stages of jobs in the room are numbered below those of jobs that have left the run.
  static_assert(Stage::ready < Stage::collected && Stage::collected < Stage::aside);
  return stage < Stage::collected;
}

/// Binds stage, stage_at, stage_by, stage_stamp, newest, clash from `index` on; `newest` must live until the
/// statement ran.
void bind_stage(SQLite::Statement& statement, int index, const StageNow& now, const Bytes& newest) {
  statement.bind(index, static_cast<int>(now.stage));
  bind_maybe(statement, index + 1, now.at);
  statement.bindNoCopy(index + 2, now.by);
  statement.bind(index + 3, static_cast<std::int64_t>(now.stamp.raw));
  bind_blob(statement, index + 4, newest);
  statement.bind(index + 5, now.clash ? 1 : 0);
}

/// Binds machine to times_stamp from `index` on.
void bind_times(SQLite::Statement& statement, int index, const JobTimes& times) {
  bind_maybe(statement, index, times.machine);
  bind_maybe(statement, index + 1, times.mounted_at);
  bind_maybe(statement, index + 2, times.strung_at);
  statement.bindNoCopy(index + 3, times.strung_by);
  statement.bind(index + 4, times.strung_count);
  bind_maybe(statement, index + 5, times.ready_at);
  bind_maybe(statement, index + 6, times.collected_at);
  bind_maybe(statement, index + 7, times.waiting_since);
  statement.bind(index + 8, times.waited);
  statement.bind(index + 9, static_cast<std::int64_t>(times.stamp.raw));
}

/// Binds drop_off to pieces from 1 on.
void bind_job(SQLite::Statement& statement, const Job& job, const std::string& mains,
              const std::string& crosses) {
  const auto unit = [](const std::optional<Quantity>& tension) {
    return tension ? static_cast<int>(tension->unit) : 0;
  };
  bind_maybe(statement, 1, job.drop_off);
  bind_maybe(statement, 2, job.racket);
  bind_maybe(statement, 3, job.event);
  statement.bind(4, job.at.value_or(0));
  statement.bind(5, job.ready_by.value_or(kNoTime));
  statement.bind(6, static_cast<int>(job.rush));
  statement.bind(7, job.order.value_or(0));
  bind_maybe(statement, 8, job.tag_number);
  statement.bindNoCopy(9, job.mains_string);
  statement.bindNoCopy(10, mains);
  statement.bind(11, unit(job.mains_tension));
  statement.bindNoCopy(12, job.crosses_string);
  statement.bindNoCopy(13, crosses);
  statement.bind(14, unit(job.crosses_tension));
  statement.bind(15, job.pieces.value_or(0));
}

/// What the row of one job is brought up to date from.
class JobRows {
 public:
  JobRows(Connection& db, std::int64_t player, const BookId& book) : db_(db), player_(player), book_(book) {}

  bool remove(const EntityId& job) {
    SQLite::Statement& remove = db_.statement("DELETE FROM model_job WHERE player=? AND id=?");
    remove.bind(1, player_);
    bind_blob(remove, 2, job.bytes);
    if (remove.exec() == 0) return false;
    if (all_marks().contains(job)) note_waiting(job);
    return true;
  }

  /// `marks`: all that there are of the job.
  void put(const EntityState& state, bool fresh, const std::vector<PlacedMark>* marks) {
    const auto job = from_state<Job>(state);
    const auto amount = [](const std::optional<Quantity>& tension) {
      return tension ? tension->amount.text() : std::string();
    };
    const std::string mains = amount(job.mains_tension), crosses = amount(job.crosses_tension);
    if (!fresh) {
      SQLite::Statement& set = db_.statement(
          "UPDATE model_job SET drop_off=?, racket=?, event=?, at=?, ready_by=?, rush=?, ord=?, "
          "tag_number=?, mains_string=?, "
          "mains_amount=?, mains_unit=?, crosses_string=?, crosses_amount=?, crosses_unit=?, pieces=? WHERE player=? "
          "AND id=?");
      bind_job(set, job, mains, crosses);
      set.bind(16, player_);
      bind_blob(set, 17, state.id.bytes);
      if (set.exec() > 0) return;
    }
    const bool all_here = !marks_wait_for(state.id) && fresh;
    const std::vector<PlacedMark> held = all_here ? (marks != nullptr ? *marks : std::vector<PlacedMark>{}) : all_marks()[state.id];
    const StageNow now = stage_now(held);
    const JobTimes times = job_times(held);
    const Bytes newest = newest_of(now, held);
    SQLite::Statement& add = db_.statement(
        "INSERT INTO model_job(drop_off, racket, event, at, ready_by, rush, ord, tag_number, mains_string, "
        "mains_amount, mains_unit, "
        "crosses_string, crosses_amount, crosses_unit, pieces, stage, stage_at, stage_by, stage_stamp, newest, "
        "clash, machine, mounted_at, strung_at, strung_by, strung_count, ready_at, collected_at, waiting_since, waited, times_stamp, player, id, open) "
        "VALUES(?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?)");
    bind_job(add, job, mains, crosses);
    bind_stage(add, 16, now, newest);
    bind_times(add, 22, times);
    add.bind(32, player_);
    bind_blob(add, 33, state.id.bytes);
    add.bind(34, is_open(now.stage) ? 1 : 0);
    add.exec();
  }

  /// Fresh marks of a job whose row is not new: the usual step goes on from exactly what the row shows.
  void step(const EntityId& job, const std::vector<PlacedMark>& marks) {
    SQLite::Statement& query =
        db_.statement("SELECT n, newest, stage_stamp, machine, mounted_at, strung_at, strung_by, strung_count, ready_at, collected_at, waiting_since, waited, "
                      "times_stamp, open FROM model_job WHERE player=? AND id=?");
    query.bind(1, player_);
    bind_blob(query, 2, job.bytes);
    if (!query.executeStep()) return note_waiting(job);
    const std::int64_t row = query.getColumn(0).getInt64();
    const ByteView held = blob_of(query, 1);
    Bytes newest(held.begin(), held.end());
    auto stamp = static_cast<std::uint64_t>(query.getColumn(2).getInt64());
    JobTimes times = times_at(query, 3);
    const bool open = query.getColumn(13).getInt() != 0;
    for (const PlacedMark& placed : marks) {
      if (placed.mark.after != newest || placed.stamp.raw <= stamp || placed.stamp <= times.stamp) return set_stage(row, all_marks()[job]);
      newest.assign(placed.id.bytes.begin(), placed.id.bytes.end());
      stamp = placed.stamp.raw;
      times.take(placed);
    }
    set_stage(row, stage_now({&marks.back(), 1}), newest, times, open);
  }

  /// Every job of the player from all its marks: a mark that is not fresh may have named another job before.
  void step_all() {
    std::vector<std::pair<std::int64_t, EntityId>> rows;
    SQLite::Statement& query = db_.statement("SELECT n, id FROM model_job WHERE player=?");
    query.bind(1, player_);
    while (query.executeStep())
      rows.emplace_back(query.getColumn(0).getInt64(),
                        EntityId::from_bytes(blob_of(query, 1)).value_or(EntityId{}));
    MarksByJob waiting = all_marks();
    for (const auto& [row, job] : rows) {
      set_stage(row, all_marks()[job]);
      waiting.erase(job);
    }
    SQLite::Statement& none = db_.statement("DELETE FROM model_waiting WHERE player=?");
    none.bind(1, player_);
    none.exec();
    for (const auto& [job, marks] : waiting) note_waiting(job);
  }

 private:
  void set_stage(std::int64_t row, const std::vector<PlacedMark>& all) {
    const StageNow now = stage_now(all);
    set_stage(row, now, newest_of(now, all), job_times(all), std::nullopt);
  }
  /// `open`: what the row says of that, if it is known. A step that leaves it as it is leaves the indexes as they are.
  void set_stage(std::int64_t row, const StageNow& now, const Bytes& newest, const JobTimes& times, std::optional<bool> open) {
    SQLite::Statement& set = db_.statement(
        "UPDATE model_job SET stage=?, stage_at=?, stage_by=?, stage_stamp=?, newest=?, clash=?, machine=?, mounted_at=?, strung_at=?, strung_by=?, "
        "strung_count=?, ready_at=?, collected_at=?, waiting_since=?, waited=?, times_stamp=? WHERE n=?");
    bind_stage(set, 1, now, newest);
    bind_times(set, 7, times);
    set.bind(17, row);
    set.exec();
    if (open == is_open(now.stage)) return;
    SQLite::Statement& move = db_.statement("UPDATE model_job SET open=? WHERE n=?");
    move.bind(1, is_open(now.stage) ? 1 : 0);
    move.bind(2, row);
    move.exec();
  }

  /// True if there were marks before there is a row; there will be one now.
  bool marks_wait_for(const EntityId& job) {
    if (!anything_waits()) return false;
    SQLite::Statement& take = db_.statement("DELETE FROM model_waiting WHERE player=? AND job=?");
    take.bind(1, player_);
    bind_blob(take, 2, job.bytes);
    return take.exec() > 0;
  }
  /// Asked once, since hardly ever something does.
  bool anything_waits() {
    if (!waits_) {
      SQLite::Statement& query = db_.statement("SELECT EXISTS(SELECT 1 FROM model_waiting WHERE player=?)");
      query.bind(1, player_);
      waits_ = query.executeStep() && query.getColumn(0).getInt() != 0;
    }
    return *waits_;
  }
  void note_waiting(const EntityId& job) {
    waits_ = true;
    SQLite::Statement& note = db_.statement("INSERT OR IGNORE INTO model_waiting(player, job) VALUES(?,?)");
    note.bind(1, player_);
    bind_blob(note, 2, job.bytes);
    note.exec();
  }

  MarksByJob& all_marks() {
    if (!all_) all_ = stored_marks(db_, book_);
    return *all_;
  }

  Connection& db_;
  std::int64_t player_;
  BookId book_;
  std::optional<MarksByJob> all_;
  std::optional<bool> waits_;  ///< whether marks of this player wait for their job's row
};

}  // namespace

JobTimes times_at(SQLite::Statement& row, int column) {
  const auto number = [&](int at) {
    const SQLite::Column held = row.getColumn(column + at);
    return held.isNull() ? std::nullopt : std::optional<std::int64_t>(held.getInt64());
  };
  JobTimes times;
  times.machine = EntityId::from_bytes(blob_of(row, column)).value_or(EntityId{});
  times.mounted_at = number(1);
  times.strung_at = number(2);
  times.strung_by = row.getColumn(column + 3).getString();
  times.strung_count = row.getColumn(column + 4).getInt64();
  times.ready_at = number(5);
  times.collected_at = number(6);
  times.waiting_since = number(7);
  times.waited = row.getColumn(column + 8).getInt64();
  times.stamp.raw = static_cast<std::uint64_t>(row.getColumn(column + 9).getInt64());
  return times;
}

bool apply_jobs(Connection& db, std::int64_t player, const BookId& book, const JobChanges& changes) {
  JobRows rows(db, player, book);
  MarksByJob fresh_marks;
  std::vector<EntityId> in_order;
  bool again = false, touched = false;
  for (const EntityChange* change : changes.marks) {
    auto placed = change->fresh ? placed_mark(change->state) : std::nullopt;
    if (!change->fresh) again = true;
    if (!placed) continue;
    auto& marks = fresh_marks[placed->mark.job];
    if (marks.empty()) in_order.push_back(placed->mark.job);
    marks.push_back(std::move(*placed));
  }
  for (const EntityChange* change : changes.jobs) {
    const EntityId& id = change->state.id;
    if (!exists(change->state)) {
      touched = rows.remove(id) || touched;
      continue;
    }
    if (!concerns_row(*change)) continue;
    const auto marks = fresh_marks.find(id);
    rows.put(change->state, change->fresh, marks == fresh_marks.end() ? nullptr : &marks->second);
    if (change->fresh && marks != fresh_marks.end()) fresh_marks.erase(marks);
    touched = true;
  }
  for (const EntityId& job : in_order)
    if (const auto marks = fresh_marks.find(job); marks != fresh_marks.end()) rows.step(job, marks->second);
  if (again) rows.step_all();
  return touched;
}

}  // namespace weavelog
