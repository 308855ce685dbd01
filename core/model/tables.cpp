#include "core/model/tables.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

#include "core/base/salted_hash.h"
#include "core/base/text.h"
#include "core/model/event.h"
#include "core/model/job_tables.h"
#include "core/model/link.h"
#include "core/model/money_tables.h"
#include "core/model/player.h"
#include "core/model/stage_now.h"
#include "core/model/stock_tables.h"
#include "core/model/stored_entities.h"
#include "core/store/database.h"

namespace weavelog {
namespace {

constexpr const char* kTables[] = {
    "model_name", "model_player",  "model_racket", "model_drop_off",
    "model_job",  "model_waiting", "model_link", "model_other_name", "model_event",  "model_entry", kMoneyTable,
    kStockItemTable, kStockMoveTable,
};

constexpr const char* kCreate = R"sql(
CREATE TABLE model_player(
  n INTEGER PRIMARY KEY, book BLOB NOT NULL UNIQUE, person BLOB, family TEXT NOT NULL DEFAULT '',
  given TEXT NOT NULL DEFAULT '', native TEXT NOT NULL DEFAULT '', folded TEXT NOT NULL DEFAULT '',
  country TEXT NOT NULL DEFAULT '', birth_year INTEGER, hand INTEGER NOT NULL DEFAULT 0,
  tour_number TEXT NOT NULL DEFAULT '', consent INTEGER NOT NULL DEFAULT 0,
  last_at INTEGER NOT NULL DEFAULT 0, last_event TEXT NOT NULL DEFAULT '');
CREATE INDEX model_player_name ON model_player(folded, n);
CREATE VIRTUAL TABLE model_name USING fts5(words, detail=none, prefix='1 2 3', tokenize='unicode61 remove_diacritics 2');
CREATE TABLE model_racket(player INTEGER NOT NULL, id BLOB NOT NULL, label TEXT NOT NULL, maker TEXT NOT NULL,
  model TEXT NOT NULL, mains INTEGER, crosses INTEGER, PRIMARY KEY(player, id)) WITHOUT ROWID;
CREATE TABLE model_drop_off(player INTEGER NOT NULL, id BLOB NOT NULL, event BLOB, event_name TEXT NOT NULL,
  at INTEGER NOT NULL, confirmed INTEGER NOT NULL, PRIMARY KEY(player, id)) WITHOUT ROWID;
CREATE TABLE model_job(
  n INTEGER PRIMARY KEY, player INTEGER NOT NULL, id BLOB NOT NULL, drop_off BLOB, racket BLOB, event BLOB,
  at INTEGER NOT NULL, ready_by INTEGER NOT NULL, rush INTEGER NOT NULL, ord INTEGER NOT NULL, tag_number INTEGER,
  mains_string TEXT NOT NULL, mains_amount TEXT NOT NULL, mains_unit INTEGER NOT NULL,
  crosses_string TEXT NOT NULL, crosses_amount TEXT NOT NULL, crosses_unit INTEGER NOT NULL,
  pieces INTEGER NOT NULL DEFAULT 0, stage INTEGER NOT NULL DEFAULT 0, open INTEGER NOT NULL DEFAULT 1, stage_at INTEGER, stage_by TEXT NOT NULL DEFAULT '',
  stage_stamp INTEGER NOT NULL DEFAULT 0, newest BLOB NOT NULL DEFAULT x'', clash INTEGER NOT NULL DEFAULT 0,
  machine BLOB, mounted_at INTEGER, strung_at INTEGER, strung_by TEXT NOT NULL DEFAULT '', strung_count INTEGER NOT NULL DEFAULT 0, ready_at INTEGER, collected_at INTEGER,
  waiting_since INTEGER, waited INTEGER NOT NULL DEFAULT 0, times_stamp INTEGER NOT NULL DEFAULT 0);
CREATE UNIQUE INDEX model_job_id ON model_job(player, id);
CREATE INDEX model_job_time ON model_job(at DESC, n DESC);
CREATE INDEX model_job_player ON model_job(player, at DESC, n DESC);
CREATE INDEX model_job_event ON model_job(event, at DESC, n DESC);
-- What is in the room, without its stage: so that a step in the room leaves this index alone. And what has left it.
CREATE INDEX model_job_board ON model_job(event, ready_by, n) WHERE open=1;
CREATE INDEX model_job_done ON model_job(event, stage) WHERE open=0;
CREATE INDEX model_job_event_tag ON model_job(event, tag_number) WHERE tag_number IS NOT NULL;
CREATE INDEX model_job_tag ON model_job(tag_number, at DESC) WHERE tag_number IS NOT NULL;
CREATE INDEX model_job_clash ON model_job(event) WHERE clash=1;
-- Jobs without a row (not here yet, or undone) of which there are marks.
CREATE TABLE model_waiting(player INTEGER NOT NULL, job BLOB NOT NULL, PRIMARY KEY(player, job)) WITHOUT ROWID;
-- What was said of a book and another one; both hold it.
CREATE TABLE model_link(player INTEGER NOT NULL, id BLOB NOT NULL, other BLOB NOT NULL, said INTEGER NOT NULL, PRIMARY KEY(player, id)) WITHOUT ROWID;
CREATE INDEX model_link_other ON model_link(other);
CREATE TABLE model_other_name(player INTEGER NOT NULL, id BLOB NOT NULL, family TEXT NOT NULL, given TEXT NOT NULL, native TEXT NOT NULL,
  PRIMARY KEY(player, id)) WITHOUT ROWID;
CREATE TABLE model_event(book BLOB PRIMARY KEY, id BLOB NOT NULL, name TEXT NOT NULL, place TEXT NOT NULL, first_day TEXT NOT NULL,
  last_day TEXT NOT NULL) WITHOUT ROWID;
CREATE TABLE model_entry(book BLOB NOT NULL, id BLOB NOT NULL, family TEXT NOT NULL, given TEXT NOT NULL, native TEXT NOT NULL,
  folded TEXT NOT NULL, country TEXT NOT NULL, birth_year INTEGER, seed INTEGER, via INTEGER NOT NULL, draw TEXT NOT NULL,
  player BLOB, PRIMARY KEY(book, id)) WITHOUT ROWID;
CREATE INDEX model_entry_name ON model_entry(book, folded);
CREATE INDEX model_entry_player ON model_entry(book, player) WHERE player IS NOT NULL;
)sql";

void bind_id(SQLite::Statement& statement, int index, ByteView id) {
  bind_blob(statement, index, id);
}
template <class Enum>
int number_of(Enum value) {
  return static_cast<int>(value);
}

/// The surrogate number of a player's book; makes the row if this is the first that is heard of it.
std::int64_t player_number(Connection& db, const BookId& book) {
  SQLite::Statement& find = db.statement("SELECT n FROM model_player WHERE book=?");
  bind_id(find, 1, book.bytes);
  if (find.executeStep()) return find.getColumn(0).getInt64();
  SQLite::Statement& add = db.statement("INSERT INTO model_player(book) VALUES(?)");
  bind_id(add, 1, book.bytes);
  add.exec();
  return db.raw().getLastInsertRowid();
}

void set_words(Connection& db, std::int64_t player, bool had_words, const std::string& words) {
  if (had_words) {
    SQLite::Statement& remove = db.statement("DELETE FROM model_name WHERE rowid=?");
    remove.bind(1, player);
    remove.exec();
  }
  if (words.empty()) return;
  SQLite::Statement& add = db.statement("INSERT INTO model_name(rowid, words) VALUES(?, ?)");
  add.bind(1, player);
  add.bindNoCopy(2, words);
  add.exec();
}

/// All by which a player is found: the name, and other names.
std::string words_of(Connection& db, std::int64_t player) {
  std::string out;
  for (const char* sql : {"SELECT family, given, native FROM model_player WHERE n=?",
                          "SELECT family, given, native FROM model_other_name WHERE player=? ORDER BY id"}) {
    SQLite::Statement& query = db.statement(sql);
    query.bind(1, player);
    while (query.executeStep()) {
      const std::string words = search_words(query.getColumn(0).getString(), query.getColumn(1).getString(), query.getColumn(2).getString());
      if (!out.empty() && !words.empty()) out += " ";
      out += words;
    }
  }
  return out;
}

void set_person(Connection& db, std::int64_t player, const EntityState& state) {
  const std::string old_words = words_of(db, player);
  const auto person = from_state<Person>(state);
  SQLite::Statement& set = db.statement(
      "UPDATE model_player SET person=?, family=?, given=?, native=?, folded=?, country=?, birth_year=?, "
      "hand=?, tour_number=?, "
      "consent=? WHERE n=?");
  if (exists(state)) bind_id(set, 1, state.id.bytes);
  set.bind(2, person.family_name);
  set.bind(3, person.given_name);
  set.bind(4, person.native_name);
  set.bind(5, search_key(person.family_name + " " + person.given_name));
  set.bind(6, person.country);
  bind_maybe(set, 7, person.birth_year);
  set.bind(8, number_of(person.hand));
  set.bind(9, person.tour_number);
  set.bind(10, number_of(person.consent));
  set.bind(11, player);
  set.exec();
  if (const std::string words = words_of(db, player); words != old_words) set_words(db, player, !old_words.empty(), words);
}

/// The first made of those that stand, where a book is to have one and two devices made one each.
std::optional<EntityState> first_that_stands(Connection& db, const BookId& book, EntityKind kind) {
  for (EntityState& state : stored_entities(db, book, kind))
    if (exists(state)) return std::move(state);
  return std::nullopt;
}

void apply_person(Connection& db, const EntityState& state) {
  const std::int64_t player = player_number(db, state.book);
  const bool here = exists(state);
  {
    // A book has one person; if two devices made one each, the first made stands on the screens.
    SQLite::Statement& held = db.statement("SELECT person FROM model_player WHERE n=?");
    held.bind(1, player);
    if (held.executeStep() && !held.getColumn(0).isNull()) {
      const auto id = EntityId::from_bytes(blob_of(held, 0));
      if (id && (*id < state.id || (!here && *id != state.id))) return;
      if (!here)
        if (const auto next = first_that_stands(db, state.book, kPerson)) return set_person(db, player, *next);
    } else if (!here) {
      return;
    }
  }
  set_person(db, player, state);
}

void apply_link(Connection& db, const EntityState& state) {
  const auto link = from_state<BookLink>(state);
  const std::int64_t player = player_number(db, state.book);
  if (link.other && link.said != LinkSaid::unsaid && exists(state)) {
    SQLite::Statement& put = db.statement("INSERT OR REPLACE INTO model_link(player, id, other, said) VALUES(?,?,?,?)");
    put.bind(1, player);
    bind_id(put, 2, state.id.bytes);
    bind_id(put, 3, link.other.bytes);
    put.bind(4, number_of(link.said));
    put.exec();
    return;
  }
  // Undone, it does not say any more which other book it was about.
  SQLite::Statement& remove = db.statement("DELETE FROM model_link WHERE player=? AND id=?");
  remove.bind(1, player);
  bind_id(remove, 2, state.id.bytes);
  remove.exec();
}

void apply_other_name(Connection& db, const EntityState& state) {
  const std::int64_t player = player_number(db, state.book);
  const auto name = from_state<OtherName>(state);
  const bool here = exists(state) && !search_words(name.family_name, name.given_name, name.native_name).empty();
  const std::string before = words_of(db, player);
  SQLite::Statement& change =
      db.statement(here ? "INSERT OR REPLACE INTO model_other_name(player, id, family, given, native) VALUES(?,?,?,?,?)"
                        : "DELETE FROM model_other_name WHERE player=? AND id=?");
  change.bind(1, player);
  bind_id(change, 2, state.id.bytes);
  if (here) {
    change.bind(3, name.family_name);
    change.bind(4, name.given_name);
    change.bind(5, name.native_name);
  }
  change.exec();
  if (const std::string words = words_of(db, player); words != before) set_words(db, player, !before.empty(), words);
}

void apply_racket(Connection& db, const EntityState& state) {
  const std::int64_t player = player_number(db, state.book);
  if (!exists(state)) {
    SQLite::Statement& remove = db.statement("DELETE FROM model_racket WHERE player=? AND id=?");
    remove.bind(1, player);
    bind_id(remove, 2, state.id.bytes);
    remove.exec();
    return;
  }
  const auto racket = from_state<Racket>(state);
  SQLite::Statement& set =
      db.statement("INSERT OR REPLACE INTO model_racket(player, id, label, maker, model, mains, crosses) VALUES(?,?,?,?,?,?,?)");
  set.bind(1, player);
  bind_id(set, 2, state.id.bytes);
  set.bind(3, racket.label);
  set.bind(4, racket.maker);
  set.bind(5, racket.model);
  bind_maybe(set, 6, racket.mains_count);
  bind_maybe(set, 7, racket.crosses_count);
  set.exec();
}

/// What the list of players shows of the newest job.
void refresh_last(Connection& db, std::int64_t player) {
  SQLite::Statement& last = db.statement(
      "SELECT j.at, coalesce(d.event_name, '') FROM model_job j LEFT JOIN model_drop_off d ON "
      "d.player=j.player AND "
      "d.id=j.drop_off WHERE j.player=? ORDER BY j.at DESC, j.id DESC LIMIT 1");
  last.bind(1, player);
  const bool any = last.executeStep();
  SQLite::Statement& set = db.statement(
      "UPDATE model_player SET last_at=?1, last_event=?2 WHERE n=?3 AND (last_at<>?1 OR last_event<>?2)");
  set.bind(1, any ? last.getColumn(0).getInt64() : std::int64_t{0});
  set.bind(2, any ? last.getColumn(1).getString() : std::string());
  set.bind(3, player);
  set.exec();
}

void apply_drop_off(Connection& db, const EntityState& state) {
  const std::int64_t player = player_number(db, state.book);
  if (!exists(state)) {
    SQLite::Statement& remove = db.statement("DELETE FROM model_drop_off WHERE player=? AND id=?");
    remove.bind(1, player);
    bind_id(remove, 2, state.id.bytes);
    remove.exec();
  } else {
    const auto drop_off = from_state<DropOff>(state);
    SQLite::Statement& set = db.statement(
        "INSERT OR REPLACE INTO model_drop_off(player, id, event, event_name, at, confirmed) "
        "VALUES(?,?,?,?,?,?)");
    set.bind(1, player);
    bind_id(set, 2, state.id.bytes);
    bind_maybe(set, 3, drop_off.event);
    set.bind(4, drop_off.event_name);
    set.bind(5, drop_off.at.value_or(0));
    set.bind(6, drop_off.confirmed_text.empty() ? 0 : 1);
    set.exec();
  }
}

void apply_event(Connection& db, const EntityState& state) {
  if (!exists(state)) {
    SQLite::Statement& remove = db.statement("DELETE FROM model_event WHERE book=? AND id=?");
    bind_id(remove, 1, state.book.bytes);
    bind_id(remove, 2, state.id.bytes);
    if (remove.exec() == 0) return;
    if (const auto next = first_that_stands(db, state.book, kEvent)) apply_event(db, *next);
    return;
  }
  const auto event = from_state<EventInfo>(state);
  // One event a book; the first made stands.
  SQLite::Statement& set = db.statement(
      "INSERT INTO model_event(book, id, name, place, first_day, last_day) VALUES(?1,?2,?3,?4,?5,?6) ON "
      "CONFLICT(book) DO UPDATE "
      "SET id=?2, name=?3, place=?4, first_day=?5, last_day=?6 WHERE id>=?2");
  bind_id(set, 1, state.book.bytes);
  bind_id(set, 2, state.id.bytes);
  set.bind(3, event.name);
  set.bind(4, event.place);
  set.bind(5, event.first_day);
  set.bind(6, event.last_day);
  set.exec();
}

void apply_entry(Connection& db, const EntityState& state) {
  if (!exists(state)) {
    SQLite::Statement& remove = db.statement("DELETE FROM model_entry WHERE book=? AND id=?");
    bind_id(remove, 1, state.book.bytes);
    bind_id(remove, 2, state.id.bytes);
    remove.exec();
    return;
  }
  const auto item = from_state<EntryListItem>(state);
  SQLite::Statement& set = db.statement(
      "INSERT OR REPLACE INTO model_entry(book, id, family, given, native, folded, country, birth_year, "
      "seed, via, draw, player) "
      "VALUES(?,?,?,?,?,?,?,?,?,?,?,?)");
  bind_id(set, 1, state.book.bytes);
  bind_id(set, 2, state.id.bytes);
  set.bind(3, item.family_name);
  set.bind(4, item.given_name);
  set.bind(5, item.native_name);
  set.bind(6, search_key(item.family_name + " " + item.given_name));
  set.bind(7, item.country);
  bind_maybe(set, 8, item.birth_year);
  bind_maybe(set, 9, item.seed);
  set.bind(10, number_of(item.via));
  set.bind(11, item.draw);
  bind_maybe(set, 12, item.player);
  set.exec();
}

}  // namespace

void ModelTables::create(Connection& db) {
  for (const char* table : kTables) db.raw().exec(std::string("DROP TABLE IF EXISTS ") + table);
  db.raw().exec(kCreate);
  db.raw().exec(kCreateMoney);
  db.raw().exec(kCreateStock);
}

void ModelTables::apply(Connection& db, std::span<const EntityChange> changes) {
  std::vector<BookId> books;  // of players, in the order in which they occur
  std::unordered_map<BookId, JobChanges, SaltedIdHash> jobs;
  std::unordered_set<BookId, SaltedIdHash> newest_job_may_differ;
  const auto jobs_of = [&](const BookId& book) -> JobChanges& {
    const auto [found, fresh] = jobs.try_emplace(book);
    if (fresh) books.push_back(book);
    return found->second;
  };
  for (const EntityChange& change : changes) {
    const EntityState& state = change.state;
    if (state.kind == kStageMark) {
      jobs_of(state.book).marks.push_back(&change);
    } else if (state.kind == kJob) {
      jobs_of(state.book).jobs.push_back(&change);
    } else if (state.kind == kPerson) {
      apply_person(db, state);
    } else if (state.kind == kRacket) {
      apply_racket(db, state);
    } else if (state.kind == kBookLink) {
      apply_link(db, state);
    } else if (state.kind == kOtherName) {
      apply_other_name(db, state);
    } else if (state.kind == kDropOff) {
      apply_drop_off(db, state);
      (void)jobs_of(state.book);
      newest_job_may_differ.insert(state.book);
    } else if (state.kind == kEntryListItem) {
      apply_entry(db, state);
    } else if (state.kind == kCharge || state.kind == kPayment) {
      apply_money(db, state);
    } else if (state.kind == kStockItem || state.kind == kStockMove) {
      apply_stock(db, state);
    } else if (state.kind == kEvent) {
      apply_event(db, state);
    }
  }
  for (const BookId& book : books) {
    const std::int64_t player = player_number(db, book);
    if (apply_jobs(db, player, book, jobs.at(book)) || newest_job_may_differ.contains(book))
      refresh_last(db, player);
  }
}

void ModelTables::forget(Connection& db, const BookId& book) {
  for (const char* sql : {"DELETE FROM model_event WHERE book=?", "DELETE FROM model_entry WHERE book=?"}) {
    SQLite::Statement& remove = db.statement(sql);
    bind_id(remove, 1, book.bytes);
    remove.exec();
  }
  forget_money(db, book);
  forget_stock(db, book);
  SQLite::Statement& find = db.statement("SELECT n FROM model_player WHERE book=?");
  bind_id(find, 1, book.bytes);
  if (!find.executeStep()) return;
  const std::int64_t player = find.getColumn(0).getInt64();
  find.reset();
  set_words(db, player, true, {});
  for (const char* sql : {"DELETE FROM model_racket WHERE player=?", "DELETE FROM model_link WHERE player=?",
                          "DELETE FROM model_other_name WHERE player=?",
                          "DELETE FROM model_drop_off WHERE player=?", "DELETE FROM model_job WHERE player=?",
                          "DELETE FROM model_waiting WHERE player=?", "DELETE FROM model_player WHERE n=?"}) {
    SQLite::Statement& remove = db.statement(sql);
    remove.bind(1, player);
    remove.exec();
  }
  // A deleted row of a full-text index leaves its terms behind until its segments are merged.
  db.raw().exec("INSERT INTO model_name(model_name) VALUES('optimize')");
}

std::string search_words(std::string_view family, std::string_view given, std::string_view native) {
  std::string name;
  for (const std::string_view part : {family, given, native}) name.append(part).append(" ");
  return search_key(name);
}

}  // namespace weavelog
