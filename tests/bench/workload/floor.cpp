#include "tests/bench/workload/floor.h"

#include <cstdio>
#include <cstdlib>
#include <deque>
#include <stdexcept>

#include "core/log/archive.h"

namespace weavelog::bench {
namespace {

/// Words of a packing, each spelt once.
class WordsOut {
 public:
  void put(OutArchive& ar, const std::string& word) {
    const auto [found, fresh] = places_.try_emplace(word, places_.size() + 1);
    ar.varint(fresh ? 0 : found->second);
    if (fresh) ar.sized(as_bytes(word));
  }

 private:
  std::unordered_map<std::string, std::uint64_t> places_;
};

class WordsIn {
 public:
  const std::string& take(InArchive& ar) {
    const auto place = ar.varint();
    if (place == 0) return words_.emplace_back(as_text(ar.sized(1 << 20)));
    return words_.at(place - 1);
  }

 private:
  std::deque<std::string> words_;
};

std::string text_at(sqlite3_stmt* row, int column) {
  return {reinterpret_cast<const char*>(sqlite3_column_text(row, column)),
          static_cast<std::size_t>(sqlite3_column_bytes(row, column))};
}

}  // namespace

/// A query that ends with its scope.
class Floor::Query {
 public:
  Query(const Floor& floor, const char* sql) : floor_(floor) {
    floor.check(sqlite3_prepare_v2(floor.db_, sql, -1, &held_, nullptr));
  }
  ~Query() { sqlite3_finalize(held_); }
  Query(const Query&) = delete;
  Query& operator=(const Query&) = delete;
  sqlite3_stmt* get() const { return held_; }
  bool next() const {
    const int result = sqlite3_step(held_);
    floor_.check(result);
    return result == SQLITE_ROW;
  }

 private:
  const Floor& floor_;
  sqlite3_stmt* held_ = nullptr;
};

Floor::Floor(const std::filesystem::path& file) {
  check(sqlite3_open(file.c_str(), &db_));
  run("PRAGMA journal_mode=WAL");
  run("PRAGMA synchronous=FULL");
  run("PRAGMA cache_size=-64000");
  run("CREATE TABLE IF NOT EXISTS log(seq INTEGER PRIMARY KEY, time INTEGER, device INTEGER, record TEXT, "
      "field INTEGER, value)");
  run("CREATE TABLE IF NOT EXISTS now(record TEXT, field INTEGER, value, time INTEGER, device INTEGER, "
      "PRIMARY KEY(record, field)) "
      "WITHOUT ROWID");
  run("CREATE TABLE IF NOT EXISTS name(n INTEGER PRIMARY KEY, name TEXT)");
  begin_ = prepared("BEGIN IMMEDIATE");
  commit_ = prepared("COMMIT");
  log_ = prepared("INSERT INTO log(time, device, record, field, value) VALUES(?,?,?,?,?)");
  now_ = prepared(
      "INSERT INTO now(time, device, record, field, value) VALUES(?,?,?,?,?) ON CONFLICT DO UPDATE SET "
      "value=excluded.value, "
      "time=excluded.time, device=excluded.device WHERE (excluded.time, excluded.device)>(time, device)");
  name_ = prepared("INSERT INTO name VALUES(?,?)");
  const Query names(*this, "SELECT name FROM name ORDER BY n");
  while (names.next()) {
    names_.push_back(text_at(names.get(), 0));
    numbers_.emplace(names_.back(), static_cast<std::int64_t>(numbers_.size()));
  }
}

Floor::~Floor() {
  for (sqlite3_stmt* statement : {begin_, commit_, log_, now_, name_}) sqlite3_finalize(statement);
  sqlite3_close(db_);
}

void Floor::check(int result) const {
  if (result != SQLITE_OK && result != SQLITE_DONE && result != SQLITE_ROW)
    throw std::runtime_error(sqlite3_errmsg(db_));
}

void Floor::run(const char* sql) const {
  check(sqlite3_exec(db_, sql, nullptr, nullptr, nullptr));
}

sqlite3_stmt* Floor::prepared(const char* sql) {
  sqlite3_stmt* out = nullptr;
  check(sqlite3_prepare_v3(db_, sql, -1, SQLITE_PREPARE_PERSISTENT, &out, nullptr));
  return out;
}

void Floor::step(sqlite3_stmt* statement) const {
  check(sqlite3_step(statement));
  check(sqlite3_reset(statement));
}

std::int64_t Floor::field(const std::string& typed_name) {
  const auto [found, fresh] = numbers_.try_emplace(typed_name, static_cast<std::int64_t>(numbers_.size()));
  if (fresh) {
    names_.push_back(typed_name);
    check(sqlite3_bind_int64(name_, 1, found->second));
    check(sqlite3_bind_text(name_, 2, found->first.data(), static_cast<int>(found->first.size()),
                            SQLITE_STATIC));
    step(name_);
  }
  return found->second;
}

void Floor::put(std::int64_t time, int device, std::string_view record, std::int64_t field,
                std::string_view value) {
  const char type = names_[static_cast<std::size_t>(field)].front();
  for (sqlite3_stmt* statement : {log_, now_}) {
    check(sqlite3_bind_int64(statement, 1, time));
    check(sqlite3_bind_int(statement, 2, device));
    check(sqlite3_bind_text(statement, 3, record.data(), static_cast<int>(record.size()), SQLITE_STATIC));
    check(sqlite3_bind_int64(statement, 4, field));
    const std::string text(value);
    if (type == 's') {
      check(sqlite3_bind_text(statement, 5, value.data(), static_cast<int>(value.size()), SQLITE_STATIC));
    } else if (value.find('.') != std::string_view::npos) {
      check(sqlite3_bind_double(statement, 5, std::strtod(text.c_str(), nullptr)));
    } else {
      check(sqlite3_bind_int64(statement, 5, std::strtoll(text.c_str(), nullptr, 10)));
    }
    step(statement);
  }
}

void Floor::apply(const Action& action) {
  step(begin_);
  std::string name, value;
  for (const Operation& write : action.writes) {
    if (write.event) {
      name.assign("sE\t").append(write.name);
      value.assign(std::to_string(write.time))
          .append("\t")
          .append(write.staff)
          .append("\t")
          .append(write.value);
      put(action.time, action.device, write.record, field(name), value);
    } else {
      name.assign(1, write.value.front()).append(write.name);
      put(action.time, action.device, write.record, field(name), write.value.substr(2));
    }
  }
  step(commit_);
}

std::int64_t Floor::place() const {
  const Query newest(*this, "SELECT coalesce(max(seq), 0) FROM log");
  (void)newest.next();
  return sqlite3_column_int64(newest.get(), 0);
}

Bytes Floor::changes_since(std::int64_t place) const {
  Bytes out;
  OutArchive ar(out);
  WordsOut words;
  std::int64_t last = 0;
  const Query rows(*this, "SELECT time, device, record, field, value FROM log WHERE seq>? ORDER BY seq");
  check(sqlite3_bind_int64(rows.get(), 1, place));
  while (rows.next()) {
    const std::int64_t time = sqlite3_column_int64(rows.get(), 0);
    ar.zigzag(time - last);
    last = time;
    ar.varint(static_cast<std::uint64_t>(sqlite3_column_int64(rows.get(), 1)));
    words.put(ar, text_at(rows.get(), 2));
    words.put(ar, names_[static_cast<std::size_t>(sqlite3_column_int64(rows.get(), 3))]);
    if (sqlite3_column_type(rows.get(), 4) == SQLITE_INTEGER) {
      const std::int64_t number = sqlite3_column_int64(rows.get(), 4);
      const bool near = number > 1'000'000'000;
      ar.byte(near ? 1 : 0);
      ar.zigzag(near ? number - time : number);
    } else {
      ar.byte(2);
      words.put(ar, text_at(rows.get(), 4));
    }
  }
  return out;
}

void Floor::take(ByteView packed) {
  InArchive ar(packed);
  WordsIn words;
  std::int64_t time = 0;
  step(begin_);
  while (ar.left() > 0) {
    time += ar.zigzag();
    const auto device = static_cast<int>(ar.varint());
    const std::string& record = words.take(ar);
    const std::int64_t number = field(words.take(ar));
    const auto how = ar.byte();
    if (how == 2) {
      put(time, device, record, number, words.take(ar));
    } else {
      put(time, device, record, number, std::to_string(ar.zigzag() + (how == 1 ? time : 0)));
    }
  }
  step(commit_);
}

std::string Floor::typed(sqlite3_stmt* row, int column, std::int64_t field) const {
  const char type = names_[static_cast<std::size_t>(field)].front();
  return std::string(1, type) + ":" + text_at(row, column);
}

std::string Floor::digest(const std::set<std::string>& left_out) const {
  StateDigest digest;
  const Query rows(*this, "SELECT record, field, value FROM now");
  while (rows.next()) {
    const std::string record = text_at(rows.get(), 0);
    const std::int64_t number = sqlite3_column_int64(rows.get(), 1);
    const std::string name = names_[static_cast<std::size_t>(number)].substr(1);
    if (left_out.contains(record + "\t" + name)) continue;
    digest.field(record, name,
                 name.starts_with("E\t") ? text_at(rows.get(), 2) : typed(rows.get(), 2, number));
  }
  return digest.text();
}

bool Floor::holds_both(const Contended& contended, std::int64_t after) const {
  const Query rows(*this, "SELECT value FROM log WHERE seq>? AND record=? AND field=?");
  const auto known = numbers_.find(contended.of_a.substr(0, 1) + contended.field);
  if (known == numbers_.end()) return false;
  check(sqlite3_bind_int64(rows.get(), 1, after));
  check(sqlite3_bind_text(rows.get(), 2, contended.record.c_str(), -1, SQLITE_STATIC));
  check(sqlite3_bind_int64(rows.get(), 3, known->second));
  bool a = false, b = false;
  while (rows.next()) {
    const std::string held = typed(rows.get(), 0, known->second);
    a = a || held == contended.of_a;
    b = b || held == contended.of_b;
  }
  return a && b;
}

}  // namespace weavelog::bench
