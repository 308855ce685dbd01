#include "core/model/queries.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/model/tables.h"
#include "core/store/database.h"

namespace weavelog {
namespace {

template <class IdType>
IdType id_at(SQLite::Statement& row, int column) {
  return IdType::from_bytes(blob_of(row, column)).value_or(IdType{});
}
std::optional<std::int64_t> number_at(SQLite::Statement& row, int column) {
  const SQLite::Column held = row.getColumn(column);
  return held.isNull() ? std::nullopt : std::optional<std::int64_t>(held.getInt64());
}
template <class Enum>
Enum choice_at(SQLite::Statement& row, int column) {
  return static_cast<Enum>(row.getColumn(column).getInt());
}
std::string text_at(SQLite::Statement& row, int column) {
  return row.getColumn(column).getString();
}

std::optional<std::int64_t> time_at(SQLite::Statement& row, int column, std::int64_t none) {
  const std::int64_t held = row.getColumn(column).getInt64();
  return held == none ? std::nullopt : std::optional(held);
}
std::optional<Quantity> tension_at(SQLite::Statement& row, int column) {
  const std::string amount = text_at(row, column);
  if (amount.empty()) return std::nullopt;
  const auto parsed = Decimal::parse(amount);
  if (!parsed) return std::nullopt;
  return Quantity{*parsed, choice_at<Unit>(row, column + 1)};
}

constexpr std::size_t kMaxTyped = 200;  // bytes

constexpr std::string_view kPlayerColumns =
    "p.book, p.person, p.family, p.given, p.native, p.country, p.birth_year, p.hand, p.tour_number, "
    "p.consent, p.last_event, "
    "p.last_at";

PlayerRow player_row(SQLite::Statement& row) {
  PlayerRow out;
  out.book = id_at<BookId>(row, 0);
  out.person = id_at<EntityId>(row, 1);
  out.family_name = text_at(row, 2);
  out.given_name = text_at(row, 3);
  out.native_name = text_at(row, 4);
  out.country = text_at(row, 5);
  out.birth_year = number_at(row, 6);
  out.hand = choice_at<Hand>(row, 7);
  out.tour_number = text_at(row, 8);
  out.consent = choice_at<ConsentChoice>(row, 9);
  out.last_event = text_at(row, 10);
  out.last_at = time_at(row, 11, 0);
  return out;
}

constexpr std::string_view kJobs =
    "SELECT j.at, j.n, p.book, j.id, j.racket, j.drop_off, j.event, coalesce(e.name, d.event_name, ''), "
    "p.family, p.given, p.native, "
    "coalesce(r.label, ''), trim(coalesce(r.maker, '') || ' ' || coalesce(r.model, '')), j.mains_string, "
    "j.mains_amount, "
    "j.mains_unit, j.crosses_string, j.crosses_amount, j.crosses_unit, j.stage, j.stage_at, j.stage_by, "
    "j.clash, j.ready_by, "
    "j.rush, j.ord, j.tag_number FROM model_job j JOIN model_player p ON p.n=j.player "
    "LEFT JOIN model_drop_off d ON d.player=j.player AND d.id=j.drop_off "
    "LEFT JOIN model_racket r ON r.player=j.player AND r.id=j.racket LEFT JOIN model_event e ON "
    "e.book=j.event ";

JobRow job_row(SQLite::Statement& row) {
  JobRow out;
  out.key = {row.getColumn(0).getInt64(), row.getColumn(1).getInt64()};
  out.at = time_at(row, 0, 0);
  out.book = id_at<BookId>(row, 2);
  out.job = id_at<EntityId>(row, 3);
  out.racket = id_at<EntityId>(row, 4);
  out.drop_off = id_at<EntityId>(row, 5);
  out.event = id_at<BookId>(row, 6);
  out.event_name = text_at(row, 7);
  out.family_name = text_at(row, 8);
  out.given_name = text_at(row, 9);
  out.native_name = text_at(row, 10);
  out.racket_label = text_at(row, 11);
  out.racket_model = text_at(row, 12);
  out.mains_string = text_at(row, 13);
  out.mains_tension = tension_at(row, 14);
  out.crosses_string = text_at(row, 16);
  out.crosses_tension = tension_at(row, 17);
  out.stage = choice_at<Stage>(row, 19);
  out.stage_at = number_at(row, 20);
  out.stage_by = text_at(row, 21);
  out.clash = row.getColumn(22).getInt() != 0;
  out.ready_by = time_at(row, 23, kNoTime);
  out.rush = choice_at<Rush>(row, 24);
  out.order = row.getColumn(25).getInt64();
  out.tag_number = number_at(row, 26);
  return out;
}

std::int64_t bounded(std::size_t limit) {
  return static_cast<std::int64_t>(std::min<std::size_t>(limit, 100'000));
}

/// Runs `kJobs` + tail; `bind` fills the parameters.
std::vector<JobRow> jobs(const Ledger& ledger, std::string_view tail,
                         const std::function<void(SQLite::Statement&)>& bind) {
  std::vector<JobRow> rows;
  ledger.read([&](Connection& db) {
    SQLite::Statement& query = db.statement((std::string(kJobs) + std::string(tail)).c_str());
    bind(query);
    while (query.executeStep()) rows.push_back(job_row(query));
  });
  return rows;
}

std::int64_t number_of_query(const Ledger& ledger, const char* sql, const std::optional<BookId>& book) {
  std::int64_t number = 0;
  ledger.read([&](Connection& db) {
    SQLite::Statement& query = db.statement(sql);
    if (book) bind_blob(query, 1, book->bytes);
    if (query.executeStep()) number = query.getColumn(0).getInt64();
  });
  return number;
}

/// FTS5's own string syntax: in double quotes, a quote doubled.
std::string prefix_term(std::string_view word) {
  std::string out = "\"";
  for (const char c : word) {
    if (c == '"') out += '"';
    out += c;
  }
  return out + "\"*";
}

/// Every word of a search key begins a word of the name. Empty if nothing was typed that a name could hold.
std::string match_expression(std::string_view key) {
  std::string all;
  for (const std::string_view word : words_of(key)) all += (all.empty() ? "" : " AND ") + prefix_term(word);
  return all;
}

}  // namespace

std::vector<PlayerRow> find_players(const Ledger& ledger, std::string_view typed, std::size_t limit) {
  std::vector<PlayerRow> rows;
  // A name has a handful of words; more would only cost time.
  const std::string key = search_key(typed.substr(0, kMaxTyped));
  const std::string match = match_expression(key);
  const bool blank = match.empty();
  if (blank && !is_blank(typed)) return rows;
  const std::string columns(kPlayerColumns);
  ledger.read([&](Connection& db) {
    if (blank) {
      SQLite::Statement& query = db.statement(("SELECT " + columns +
                                               " FROM model_player p WHERE p.person IS NOT NULL "
                                               "ORDER BY p.last_at DESC, p.folded, p.n LIMIT ?")
                                                  .c_str());
      query.bind(1, bounded(limit));
      while (query.executeStep()) rows.push_back(player_row(query));
      return;
    }
    const std::string first(words_of(key).front());
    // Only the ordering columns are sorted; the rest of a row is fetched for those that are shown.
    SQLite::Statement& query = db.statement(
        ("SELECT " + columns +
         " FROM (SELECT f.rowid AS n FROM model_name f JOIN model_player q ON q.n=f.rowid WHERE model_name "
         "MATCH ?1 "
         "ORDER BY substr(q.folded, 1, length(?2))=?2 DESC, q.last_at DESC, q.folded, q.n LIMIT ?3) hit "
         "JOIN model_player p ON p.n=hit.n "
         "ORDER BY substr(p.folded, 1, length(?2))=?2 DESC, p.last_at DESC, p.folded, p.n")
            .c_str());
    query.bind(1, match);
    query.bind(2, first);
    query.bind(3, bounded(limit));
    while (query.executeStep()) rows.push_back(player_row(query));
  });
  return rows;
}

std::optional<PlayerRow> find_player(const Ledger& ledger, const BookId& book) {
  std::optional<PlayerRow> found;
  ledger.read([&](Connection& db) {
    static const std::string sql = "SELECT " + std::string(kPlayerColumns) + " FROM model_player p WHERE p.book=?";
    SQLite::Statement& query = db.statement(sql.c_str());
    bind_blob(query, 1, book.bytes);
    if (query.executeStep()) found = player_row(query);
  });
  return found;
}

std::int64_t count_players(const Ledger& ledger) {
  return number_of_query(ledger, "SELECT count(*) FROM model_player WHERE person IS NOT NULL", {});
}

std::vector<JobRow> find_jobs_by_tag(const Ledger& ledger, std::int64_t tag_number,
                                     std::optional<BookId> event, std::size_t limit) {
  return jobs(ledger,
              event ? "WHERE j.tag_number=?1 AND j.event=?3 ORDER BY j.at DESC LIMIT ?2"
                    : "WHERE j.tag_number=?1 ORDER BY j.at DESC LIMIT ?2",
              [&](SQLite::Statement& query) {
                query.bind(1, tag_number);
                query.bind(2, bounded(limit));
                if (event) bind_blob(query, 3, event->bytes);
              });
}

std::vector<JobRow> history_of(const Ledger& ledger, const BookId& player, std::size_t limit) {
  return jobs(
      ledger,
      "WHERE j.player=(SELECT n FROM model_player WHERE book=?1) ORDER BY j.at DESC, j.n DESC LIMIT ?2",
      [&](SQLite::Statement& query) {
        bind_blob(query, 1, player.bytes);
        query.bind(2, bounded(limit));
      });
}

std::optional<JobRow> find_job(const Ledger& ledger, const BookId& player, const EntityId& job) {
  auto rows = jobs(ledger, "WHERE j.player=(SELECT n FROM model_player WHERE book=?1) AND j.id=?2",
                   [&](SQLite::Statement& query) {
                     bind_blob(query, 1, player.bytes);
                     bind_blob(query, 2, job.bytes);
                   });
  return rows.empty() ? std::nullopt : std::optional(std::move(rows.front()));
}

std::vector<JobRow> jobs_at_stage(const Ledger& ledger, const BookId& event, Stage stage, std::size_t limit) {
  // An index has what is in the room, another one what has left it.
  return jobs(ledger,
              stage < Stage::collected ? "WHERE j.open=1 AND j.event=?1 AND j.stage=?2 ORDER BY j.ready_by, j.n LIMIT ?3"
                                       : "WHERE j.open=0 AND j.event=?1 AND j.stage=?2 ORDER BY j.ready_by, j.n LIMIT ?3",
              [&](SQLite::Statement& query) {
                bind_blob(query, 1, event.bytes);
                query.bind(2, static_cast<int>(stage));
                query.bind(3, bounded(limit));
              });
}

std::vector<JobRow> clashing_jobs(const Ledger& ledger, const BookId& event, std::size_t limit) {
  return jobs(ledger, "WHERE j.clash=1 AND j.event=?1 ORDER BY j.ready_by, j.n LIMIT ?2",
              [&](SQLite::Statement& query) {
                bind_blob(query, 1, event.bytes);
                query.bind(2, bounded(limit));
              });
}

std::vector<JobRow> next_jobs(const Ledger& ledger, const BookId& event, std::size_t limit) {
  return jobs(
      ledger,
      "WHERE j.open=1 AND j.event=?1 AND j.stage IN (?2, ?3) ORDER BY j.rush DESC, j.ready_by, j.at, j.ord, j.n LIMIT ?4",
      [&](SQLite::Statement& query) {
        bind_blob(query, 1, event.bytes);
        query.bind(2, static_cast<int>(Stage::received));
        query.bind(3, static_cast<int>(Stage::inspected));
        query.bind(4, bounded(limit));
      });
}

std::array<std::int64_t, kStageCount> count_by_stage(const Ledger& ledger, const BookId& event) {
  std::array<std::int64_t, kStageCount> counts{};
  ledger.read([&](Connection& db) {
    SQLite::Statement& query =
        db.statement("SELECT stage, count(*) FROM model_job WHERE open=1 AND event=?1 GROUP BY stage "
                     "UNION ALL SELECT stage, count(*) FROM model_job WHERE open=0 AND event=?1 GROUP BY stage");
    bind_blob(query, 1, event.bytes);
    while (query.executeStep()) {
      const auto stage = static_cast<std::size_t>(query.getColumn(0).getInt());
      if (stage < counts.size()) counts[stage] = query.getColumn(1).getInt64();
    }
  });
  return counts;
}

std::vector<BoardJob> board_jobs(const Ledger& ledger, const BookId& event, bool with_names) {
  std::vector<BoardJob> rows;
  ledger.read([&](Connection& db) {
    SQLite::Statement& query =
        with_names ? db.statement("SELECT j.player, j.tag_number, j.stage, j.stage_at, j.clash, j.ready_by, p.family, p.given "
                                  "FROM model_job j JOIN model_player p ON p.n=j.player WHERE j.open=1 AND j.event=?1 AND j.stage BETWEEN ?2 AND ?3")
                   : db.statement("SELECT player, tag_number, stage, stage_at, clash, ready_by FROM model_job "
                                  "WHERE open=1 AND event=?1 AND stage BETWEEN ?2 AND ?3");
    bind_blob(query, 1, event.bytes);
    query.bind(2, static_cast<int>(Stage::received));
    query.bind(3, static_cast<int>(Stage::ready));
    while (query.executeStep()) {
      BoardJob& row = rows.emplace_back();
      row.player = query.getColumn(0).getInt64();
      row.tag_number = number_at(query, 1);
      row.stage = choice_at<Stage>(query, 2);
      row.stage_at = number_at(query, 3);
      row.clash = query.getColumn(4).getInt() != 0;
      row.ready_by = time_at(query, 5, kNoTime);
      if (!with_names) continue;
      row.family_name = text_at(query, 6);
      row.given_name = text_at(query, 7);
    }
  });
  return rows;
}

std::vector<JobRow> page_of_jobs(const Ledger& ledger, std::optional<BookId> event,
                                 std::optional<JobKey> after, std::size_t limit) {
  // n only tells apart jobs of the same millisecond, so a condition on (at, n) is served by the index.
  return jobs(ledger,
              event ? "WHERE j.event=?4 AND (j.at, j.n) < (?1, ?2) ORDER BY j.at DESC, j.n DESC LIMIT ?3"
                    : "WHERE (j.at, j.n) < (?1, ?2) ORDER BY j.at DESC, j.n DESC LIMIT ?3",
              [&](SQLite::Statement& query) {
                query.bind(1, after ? after->at : kNoTime);
                query.bind(2, after ? after->n : kNoTime);
                query.bind(3, bounded(limit));
                if (event) bind_blob(query, 4, event->bytes);
              });
}

std::int64_t count_jobs(const Ledger& ledger, std::optional<BookId> event) {
  return number_of_query(
      ledger, event ? "SELECT count(*) FROM model_job WHERE event=?" : "SELECT count(*) FROM model_job",
      event);
}

std::optional<JobKey> job_key_at(const Ledger& ledger, std::optional<BookId> event, std::int64_t index) {
  std::optional<JobKey> key;
  if (index < 0) return key;
  ledger.read([&](Connection& db) {
    SQLite::Statement& query = db.statement(
        event ? "SELECT at, n FROM model_job WHERE event=?2 ORDER BY at DESC, n DESC LIMIT 1 OFFSET ?1"
              : "SELECT at, n FROM model_job ORDER BY at DESC, n DESC LIMIT 1 OFFSET ?1");
    query.bind(1, index);
    if (event) bind_blob(query, 2, event->bytes);
    if (query.executeStep()) key = JobKey{query.getColumn(0).getInt64(), query.getColumn(1).getInt64()};
  });
  return key;
}

std::int64_t highest_tag(const Ledger& ledger, const BookId& event) {
  return number_of_query(
      ledger, "SELECT coalesce(max(tag_number), 0) FROM model_job WHERE event=? AND tag_number IS NOT NULL",
      event);
}

std::vector<EventRow> all_events(const Ledger& ledger) {
  std::vector<EventRow> rows;
  ledger.read([&](Connection& db) {
    SQLite::Statement& query = db.statement(
        "SELECT e.book, e.id, e.name, e.place, e.first_day, e.last_day, (SELECT count(*) FROM model_job j "
        "WHERE j.event=e.book "
        "AND j.open=1) FROM model_event e ORDER BY e.first_day DESC, e.name, e.book");
    while (query.executeStep()) {
      EventRow row;
      row.book = id_at<BookId>(query, 0);
      row.id = id_at<EntityId>(query, 1);
      row.name = text_at(query, 2);
      row.place = text_at(query, 3);
      row.first_day = text_at(query, 4);
      row.last_day = text_at(query, 5);
      row.open_jobs = query.getColumn(6).getInt64();
      rows.push_back(std::move(row));
    }
  });
  return rows;
}

std::vector<EntryRow> entry_list(const Ledger& ledger, const BookId& event) {
  std::vector<EntryRow> rows;
  ledger.read([&](Connection& db) {
    SQLite::Statement& query = db.statement(
        "SELECT n.id, n.family, n.given, n.native, n.country, n.birth_year, n.seed, n.via, n.draw, n.player, "
        "p.n IS NOT NULL "
        "FROM model_entry n LEFT JOIN model_player p ON p.book=n.player AND p.person IS NOT NULL WHERE "
        "n.book=? "
        "ORDER BY n.folded, n.id");
    bind_blob(query, 1, event.bytes);
    while (query.executeStep()) {
      EntryRow row;
      row.id = id_at<EntityId>(query, 0);
      row.family_name = text_at(query, 1);
      row.given_name = text_at(query, 2);
      row.native_name = text_at(query, 3);
      row.country = text_at(query, 4);
      row.birth_year = number_at(query, 5);
      row.seed = number_at(query, 6);
      row.via = choice_at<EntryVia>(query, 7);
      row.draw = text_at(query, 8);
      row.player = id_at<BookId>(query, 9);
      row.held_here = query.getColumn(10).getInt() != 0;
      rows.push_back(std::move(row));
    }
  });
  return rows;
}

namespace {

constexpr const char* kEntered = "SELECT 1 FROM model_entry WHERE book=?1 AND player=?2";

bool holds(Connection& db, const char* sql, const BookId& event, const BookId& player) {
  SQLite::Statement& query = db.statement(sql);
  bind_blob(query, 1, event.bytes);
  bind_blob(query, 2, player.bytes);
  return query.executeStep();
}

}  // namespace

bool is_entered(const Ledger& ledger, const BookId& player, const BookId& event) {
  bool out = false;
  ledger.read([&](Connection& db) { out = holds(db, kEntered, event, player); });
  return out;
}

bool at_event(const Ledger& ledger, const BookId& player, const BookId& event) {
  bool out = false;
  ledger.read([&](Connection& db) {
    out = holds(db, kEntered, event, player) ||
          holds(db, "SELECT 1 FROM model_job WHERE player=(SELECT n FROM model_player WHERE book=?2) AND event=?1 LIMIT 1", event, player);
  });
  return out;
}

bool had_rackets_strung(const Ledger& ledger, const BookId& player) {
  bool out = false;
  ledger.read([&](Connection& db) {
    SQLite::Statement& query = db.statement("SELECT 1 FROM model_job WHERE player=(SELECT n FROM model_player WHERE book=?) LIMIT 1");
    bind_blob(query, 1, player.bytes);
    out = query.executeStep();
  });
  return out;
}

std::vector<BookId> entered_players(const Ledger& ledger, const BookId& event) {
  std::vector<BookId> out;
  ledger.read([&](Connection& db) {
    SQLite::Statement& query = db.statement("SELECT player FROM model_entry WHERE book=? AND player IS NOT NULL ORDER BY player");
    bind_blob(query, 1, event.bytes);
    while (query.executeStep()) out.push_back(id_at<BookId>(query, 0));
  });
  return out;
}

std::vector<BookId> players_at(const Ledger& ledger, const BookId& event) {
  std::vector<BookId> out;
  ledger.read([&](Connection& db) {
    SQLite::Statement& query = db.statement(
        "SELECT book FROM model_player WHERE book IN (SELECT player FROM model_entry WHERE book=?1) OR n IN (SELECT player FROM model_job "
        "WHERE event=?1) ORDER BY n");
    bind_blob(query, 1, event.bytes);
    while (query.executeStep()) out.push_back(id_at<BookId>(query, 0));
  });
  return out;
}

}  // namespace weavelog
