#include "core/store/ledger.h"

#include <sodium.h>
#include <sqlite3.h>

#include <algorithm>
#include <stdexcept>

#include "core/store/ledger_impl.h"
#include "core/store/schema.h"

namespace weavelog {
namespace {

constexpr const char* kSelfKey = "self";
constexpr const char* kPlaceKey = "place";
constexpr const char* kClockKey = "clock";
constexpr std::int64_t kClockEvery = 64;

std::optional<Bytes> meta(Connection& db, std::string_view key) {
  auto& query = db.statement("SELECT value FROM meta WHERE key=?");
  query.bind(1, std::string(key));
  if (!query.executeStep()) return std::nullopt;
  const ByteView value = blob_of(query, 0);
  return Bytes(value.begin(), value.end());
}

void set_meta(Connection& db, std::string_view key, ByteView value) {
  auto& put = db.statement("INSERT INTO meta(key, value) VALUES(?,?) ON CONFLICT(key) DO UPDATE SET value=excluded.value");
  put.bind(1, std::string(key));
  bind_blob(put, 2, value);
  put.exec();
}

Bytes big_endian(std::uint64_t value) {
  Bytes out(8);
  for (std::size_t i = 0; i < 8; ++i) out[i] = static_cast<std::uint8_t>(value >> (56 - 8 * i));
  return out;
}

std::uint64_t from_big_endian(ByteView bytes) {
  std::uint64_t value = 0;
  for (const auto byte : bytes) value = (value << 8) | byte;
  return value;
}

std::string key_of(const Projection& projection) { return "projection " + std::string(projection.name()); }
Bytes version_of(const Projection& projection) { return big_endian(static_cast<std::uint64_t>(projection.version())); }

template <class T>
T id_of(SQLite::Statement& row, int column) {
  const auto id = T::from_bytes(blob_of(row, column));
  if (!id) damaged("an identifier of the wrong length");
  return *id;
}

EntityState state_in(SQLite::Statement& row, const BookId& book, const EntityId& id, int column) {
  auto state = decode_state(book, id, blob_of(row, column));
  if (!state) damaged(state.error().message());
  return std::move(*state);
}

/// Books with their heads, one row a chain; ordered by book. One of which nothing was taken is not among them.
constexpr const char* kBooks =
    "SELECT b.id, b.kind, a.id, h.seq, h.hash FROM book b JOIN head h ON h.book=b.n JOIN author a ON a.n=h.author "
    "WHERE b.forgotten=0 ORDER BY b.id";
constexpr const char* kBooksOfKind =
    "SELECT b.id, b.kind, a.id, h.seq, h.hash FROM book b JOIN head h ON h.book=b.n JOIN author a ON a.n=h.author "
    "WHERE b.forgotten=0 AND b.kind=? ORDER BY b.id";
constexpr const char* kOneBook =
    "SELECT b.id, b.kind, a.id, h.seq, h.hash FROM book b JOIN head h ON h.book=b.n JOIN author a ON a.n=h.author "
    "WHERE b.forgotten=0 AND b.id=?";

/// Cheaper than by SQLite's sorter: most books have a few.
void sort_by_author(Heads& heads) {
  std::sort(heads.begin(), heads.end(), [](const Head& a, const Head& b) { return a.author < b.author; });
}

std::vector<BookInfo> book_infos(SQLite::Statement& rows) {
  std::vector<BookInfo> out;
  Heads heads;
  const auto end_book = [&] {
    sort_by_author(heads);
    if (!out.empty()) out.back().heads = digest_of_heads(heads);
    heads.clear();
  };
  while (rows.executeStep()) {
    const auto id = id_of<BookId>(rows, 0);
    if (out.empty() || out.back().id != id) {
      end_book();
      out.push_back({id, static_cast<BookKind>(rows.getColumn(1).getInt()), {}});
    }
    heads.push_back({id_of<AuthorId>(rows, 2), static_cast<std::uint64_t>(rows.getColumn(3).getInt64()), digest_in(rows, 4)});
  }
  end_book();
  return out;
}

}  // namespace

// ------------------------------------------------------------------------------------------------ rows

Digest digest_in(SQLite::Statement& row, int column) {
  const ByteView held = blob_of(row, column);
  if (held.size() != sizeof(Digest)) damaged("a digest of the wrong length");
  Digest out;
  std::copy(held.begin(), held.end(), out.begin());
  return out;
}

Outcome<> Ledger::Impl::commit(const std::function<void(Connection&)>& work, const std::function<void()>& keep, Durable durable) {
  const auto held = database->hold();
  // Until it is on disk nothing may be remembered of it, whatever throws.
  struct Forgetting {
    Impl& impl;
    bool done = false;
    ~Forgetting() {
      if (!done) impl.forget_what_was_read();
    }
  } forgetting{*this};
  try {
    auto written = database->write(
        [&](Connection& db) {
          rows_written = 0;
          work(db);
          if (rows_written != 0 && options.one_thread) mark_rows(db, rows_written);
        },
        durable);
    if (!written) return written;
    forgetting.done = true;
    keep();
    return {};
  } catch (Abort& abort) {
    return fail(std::move(abort.fault));
  }
}

Outcome<> Ledger::Impl::write_on(const std::function<void(Connection&)>& work, const std::function<void()>& keep) {
  const auto held = database->hold();
  if (auto settled = settle(); !settled) return settled;
  return commit(work, keep);
}

Outcome<> Ledger::Impl::write(const std::function<void(Connection&)>& work) {
  return write_on(
      [&](Connection& db) {
        forget_what_was_read();
        work(db);
      },
      [this] { forget_what_was_read(); });
}

void Ledger::Impl::forget_what_was_read() {
  entities.clear();
  own_books.clear();
  next_position = 0;
  known_newest.forget();
  late.reset();
}

Newest::Place Ledger::Impl::newest_place() const {
  const auto read = [this] {
    Newest::Place out;
    database->read([&](Connection& db) {
      auto& query = db.statement("SELECT coalesce((SELECT max(position) FROM entry), 0), deletions FROM gone");
      query.executeStep();
      out = {query.getColumn(0).getInt64(), query.getColumn(1).getInt64()};
    });
    return out;
  };
  return database->in_snapshot() ? read() : known_newest.get(read);
}

void Ledger::Impl::announce(std::int64_t position) const {
  std::vector<std::pair<int, std::function<void(std::int64_t)>>> now;
  {
    const std::lock_guard guard(listeners_mutex);
    now = listeners;
  }
  for (const auto& [handle, listener] : now) listener(position);
}

std::optional<std::int64_t> Ledger::Impl::find_author(Connection& db, const AuthorId& id) const {
  auto& query = db.statement("SELECT n FROM author WHERE id=?");
  bind_blob(query, 1, id.bytes);
  if (!query.executeStep()) return std::nullopt;
  return query.getColumn(0).getInt64();
}

std::int64_t Ledger::Impl::author_number(Connection& db, const AuthorCard& card) const {
  const AuthorId id = card.id();
  if (const auto known = find_author(db, id)) return *known;
  auto& add = db.statement("INSERT INTO author(id, key, incarnation, device) VALUES(?,?,?,?)");
  bind_blob(add, 1, id.bytes);
  bind_blob(add, 2, card.key);
  add.bind(3, static_cast<std::int64_t>(card.incarnation));
  add.bind(4, card.device);
  add.exec();
  return db.raw().getLastInsertRowid();
}

std::optional<std::int64_t> Ledger::Impl::find_book(Connection& db, const BookId& book) const {
  auto& query = db.statement("SELECT n FROM book WHERE id=? AND forgotten=0");
  bind_blob(query, 1, book.bytes);
  if (!query.executeStep()) return std::nullopt;
  return query.getColumn(0).getInt64();
}

std::int64_t Ledger::Impl::book_number(Connection& db, const BookId& book, BookKind kind) const {
  auto& query = db.statement("SELECT n, kind, forgotten FROM book WHERE id=?");
  bind_blob(query, 1, book.bytes);
  if (query.executeStep()) {
    if (query.getColumn(2).getInt() != 0)
      throw Abort{{FaultCode::refused, "this book was forgotten on request and does not come back", "book " + book.hex(), ""}};
    if (query.getColumn(1).getInt() != static_cast<int>(kind))
      throw Abort{{FaultCode::malformed, "a book of one kind is offered as another", "book " + book.hex(), ""}};
    return query.getColumn(0).getInt64();
  }
  auto& add = db.statement("INSERT INTO book(id, kind) VALUES(?,?)");
  bind_blob(add, 1, book.bytes);
  add.bind(2, static_cast<int>(kind));
  add.exec();
  return db.raw().getLastInsertRowid();
}

ChainRow Ledger::Impl::chain(Connection& db, std::int64_t book, std::int64_t author, const Digest& start) const {
  auto& query = db.statement("SELECT seq, hash FROM link WHERE book=? AND author=? ORDER BY seq DESC LIMIT 1");
  query.bind(1, book);
  query.bind(2, author);
  if (!query.executeStep()) return {0, start};
  return {static_cast<std::uint64_t>(query.getColumn(0).getInt64()), digest_in(query, 1)};
}

std::int64_t Ledger::Impl::take_position(Connection& db) {
  if (next_position == 0) {
    auto& query = db.statement("SELECT max(coalesce((SELECT max(position) FROM entry), 0), (SELECT position FROM gone))");
    query.executeStep();
    next_position = query.getColumn(0).getInt64() + 1;
  }
  return next_position++;
}

std::int64_t Ledger::Impl::insert_body(Connection& db, std::int64_t book, std::int64_t author, std::uint64_t seq, std::int64_t source,
                                       ByteView body) {
  const std::int64_t position = take_position(db);
  auto& add = db.statement("INSERT INTO entry(position, book, author, seq, source, body) VALUES(?,?,?,?,?,?)");
  add.bind(1, position);
  add.bind(2, book);
  add.bind(3, author);
  add.bind(4, static_cast<std::int64_t>(seq));
  add.bind(5, source);
  bind_blob(add, 6, body);
  add.exec();
  return position;
}

std::int64_t Ledger::Impl::insert_entry(Connection& db, std::int64_t book, std::int64_t author, const ChainRow& link,
                                        std::int64_t source, ByteView body) {
  rows_written = insert_body(db, book, author, link.seq, source, body);
  const Link stored{book, author, link.seq, rows_written, link.hash};
  store_link(db.statement(kStoreLink), stored);
  if (link.seq == 1) begin_chain(db.statement(kBeginChain), stored);
  return rows_written;
}

Ledger::Impl::OwnBook Ledger::Impl::own_book(Connection& db, const BookId& book, BookKind kind) const {
  if (const auto known = own_books.find(book); known != own_books.end() && known->second.kind == kind) return known->second;
  OwnBook out;
  out.number = book_number(db, book, kind);
  out.kind = kind;
  out.head = chain(db, out.number, self_number, chain_start(book, kind, self_id));
  return out;
}

void Ledger::Impl::store_waypoint(Connection& db, std::int64_t book, std::int64_t author, std::uint64_t seq,
                                  const Signature& signature) const {
  auto& put = db.statement("INSERT OR REPLACE INTO waypoint(book, author, seq, signature) VALUES(?,?,?,?)");
  put.bind(1, book);
  put.bind(2, author);
  put.bind(3, static_cast<std::int64_t>(seq));
  bind_blob(put, 4, signature);
  put.exec();
}

Heads Ledger::Impl::heads(Connection& db, std::int64_t book) const {
  auto& query = db.statement("SELECT a.id, h.seq, h.hash FROM head h JOIN author a ON a.n=h.author WHERE h.book=?");
  query.bind(1, book);
  Heads out;
  while (query.executeStep())
    out.push_back({id_of<AuthorId>(query, 0), static_cast<std::uint64_t>(query.getColumn(1).getInt64()), digest_in(query, 2)});
  sort_by_author(out);
  return out;
}

void Ledger::Impl::store_clock(Connection& db, std::int64_t position) {
  Bytes record = big_endian(clock.last().raw);
  const Bytes covered = big_endian(static_cast<std::uint64_t>(position));
  record.insert(record.end(), covered.begin(), covered.end());
  set_meta(db, kClockKey, record);
  clock_position = position;
}

void Ledger::Impl::read_clock(Connection& db) {
  const auto stored = meta(db, kClockKey);
  // Version 1 of the tables stored it with every entry, and no position beside it.
  if (stored && stored->size() >= 8) clock = HybridClock(*options.clock, Stamp{from_big_endian(ByteView(*stored).first(8))});
  if (stored && stored->size() == 16) clock_position = static_cast<std::int64_t>(from_big_endian(ByteView(*stored).subspan(8)));
  Stamp last = clock.last();
  auto& query = db.statement("SELECT body FROM entry WHERE position>? AND source=0");
  query.bind(1, clock_position);
  while (query.executeStep())
    if (const auto entry = decode_entry(blob_of(query, 0), self_id)) last = std::max(last, entry->stamp);
  clock = HybridClock(*options.clock, last);
}

AuthorCard Ledger::Impl::card(Connection& db, std::int64_t author) const {
  auto& query = db.statement("SELECT key, incarnation, device FROM author WHERE n=?");
  query.bind(1, author);
  if (!query.executeStep()) damaged("an author that is not in the table");
  AuthorCard card;
  const ByteView key = blob_of(query, 0);
  if (key.size() != card.key.size()) damaged("a key of the wrong length");
  std::copy(key.begin(), key.end(), card.key.begin());
  card.incarnation = static_cast<std::uint64_t>(query.getColumn(1).getInt64());
  card.device = query.getColumn(2).getString();
  return card;
}

// ------------------------------------------------------------------------------------------------ opening

void Ledger::Impl::become(Connection& db, std::uint64_t incarnation) {
  const AuthorCard card{options.key.public_key(), incarnation, options.device_name};
  self_number = author_number(db, card);
  auto& rename = db.statement("UPDATE author SET device=?1 WHERE n=?2 AND device<>?1");
  rename.bind(1, card.device);
  rename.bind(2, self_number);
  rename.exec();
  self_id = card.id();
  const std::lock_guard guard(self_mutex);
  self = card;
}

void Ledger::Impl::new_incarnation(Connection& db) {
  const PublicKey& key = options.key.public_key();
  // A machine whose chance repeats itself (the image of a running one, started twice) must not come back to a self that it left.
  std::uint64_t incarnation = 0;
  randombytes_buf(&incarnation, sizeof incarnation);
  while (find_author(db, AuthorCard{key, incarnation, options.device_name}.id())) ++incarnation;
  Bytes record(key.begin(), key.end());
  const Bytes number = big_endian(incarnation);
  record.insert(record.end(), number.begin(), number.end());
  set_meta(db, kSelfKey, record);
  become(db, incarnation);
}

bool Ledger::Impl::is_current(Connection& db, const Projection& projection) { return meta(db, key_of(projection)) == version_of(projection); }

Outcome<> Ledger::Impl::start() {
  if (options.registry == nullptr) throw std::logic_error("a ledger needs a field registry");
  auto started = start_once();
  if (started || options.one_thread || started.error().code != FaultCode::no_space) return started;
  // If it is that what is late can't be written: with one connection it is shown all the same.
  database.reset();
  options.one_thread = true;
  return start_once() ? Outcome<>() : started;
}

Outcome<> Ledger::Impl::start_once() {
  auto opened = Database::open(options.file, options.vfs, options.one_thread ? Connections::one : Connections::two);
  if (!opened) return fail(opened.error());
  database = std::move(*opened);
  bool behind = false;
  auto started = write([&](Connection& db) {
    const PublicKey& key = options.key.public_key();
    const auto stored = meta(db, kSelfKey);
    // A copy of the file goes on under an incarnation of its own, so that two tablets never write under one author. Where that
    // can't be seen (the image of a whole disk), the fork is mended when the two meet (fork.cpp).
    const std::string place = database->place();
    const auto known_place = meta(db, kPlaceKey);
    const bool moved = known_place && !place.empty() && as_text(*known_place) != place;
    if (!place.empty() && (moved || !known_place)) set_meta(db, kPlaceKey, as_bytes(place));
    if (stored && !moved && stored->size() == 40 && std::equal(key.begin(), key.end(), stored->begin())) {
      become(db, from_big_endian(ByteView(*stored).subspan(32)));
    } else {
      // A new file, or one that another device's key made: from here on a new author writes.
      new_incarnation(db);
    }
    if (meta(db, kRelinkKey)) {
      relink(db);
      db.raw().exec(std::string("DELETE FROM meta WHERE key='") + kRelinkKey + "'");
    }
    behind = catch_up(db);
    if (!behind) sweep_forgotten(db);
    read_clock(db);
    const bool anew = meta(db, kRebuildKey).has_value();
    if (anew) {
      rebuild(db);
      db.raw().exec(std::string("DELETE FROM meta WHERE key='") + kRebuildKey + "'");
    }
    for (const auto& projection : options.projections) {
      if (is_current(db, *projection)) continue;
      if (!anew) rebuild_projection(db, *projection);
      set_meta(db, key_of(*projection), version_of(*projection));
    }
  });
  if (!started) return started;
  database->settle_with([this] { return settle(); }, [this](Connection& db) { show_late(db); });
  database->set_unsettled(behind);
  if (behind)
    if (auto swept = sweep_late(); !swept) return swept;
  (void)scrub_if_due();  // if it can't be done now, the next start tries again
  return {};
}

Ledger::Ledger(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
Ledger::~Ledger() { (void)impl_->settle(); }  // else the next start does

Outcome<std::unique_ptr<Ledger>> Ledger::open(LedgerOptions options) {
  auto impl = std::make_unique<Impl>(std::move(options));
  if (auto started = impl->start(); !started) return fail(started.error());
  return std::unique_ptr<Ledger>(new Ledger(std::move(impl)));
}

// ------------------------------------------------------------------------------------------------ local actions

Committed Ledger::Impl::append(Connection& db, const NewEntry& wanted, OwnBook& own) {
  if (!late) late = std::make_unique<Late>(db, *options.registry, options.projections, entities);
  Entry entry;
  entry.seq = own.head.seq + 1;
  entry.stamp = clock.tick();
  // What is replaced may come from a device whose clock runs ahead: this entry follows it, our own clock does not.
  const bool ahead = entry.stamp <= wanted.after;
  if (ahead) entry.stamp.raw = wanted.after.raw + 1;
  entry.schema = options.registry->schema();
  entry.action = wanted.action;
  entry.writes = wanted.writes;
  // Writes of one entity share its id in the bytes only where they stand together.
  std::stable_sort(entry.writes.begin(), entry.writes.end(), [](const Write& a, const Write& b) { return a.entity < b.entity; });
  const Bytes body = encode_entry(entry, self_id);
  if (body.size() > kMaxEntryBytes)
    throw Abort{{FaultCode::bad_input, "too much at once (more than 256 KiB)", "", "shorten the notes or do it in several steps"}};
  own.head = {entry.seq, chain_next(own.head.hash, digest_of(body))};
  const std::int64_t position = insert_body(db, own.number, self_number, entry.seq, 0, body);
  late->links.push_back({own.number, self_number, entry.seq, position, own.head.hash});
  late->bytes += body.size();
  const Committed committed{position, Dot{self_id, entry.seq, 0}, entry.stamp};
  if (entry.seq % kSealEvery == 0)
    store_waypoint(db, own.number, self_number, entry.seq, options.key.sign(seal_message(entry.seq, own.head.hash)));
  // Now and then is enough, since our own entries tell the rest; not so one whose stamp is not the clock's.
  if (ahead || committed.position >= clock_position + kClockEvery) store_clock(db, committed.position);
  late->applier.apply(own.number, wanted.book, self_id, entry);
  return committed;
}

Outcome<Committed> Ledger::append(const Draft& draft) {
  if (draft.empty()) return fail(FaultCode::bad_input, "nothing was changed", "", "change something first");
  if (draft.writes().size() > kMaxWritesPerEntry)
    return fail(FaultCode::bad_input, "too much at once (" + std::to_string(draft.writes().size()) + " fields)", "",
                "do it in several steps of at most " + std::to_string(kMaxWritesPerEntry) + " fields");
  auto committed = impl_->append({draft.book(), draft.kind(), draft.action(), draft.writes(), draft.newest_replaced()});
  if (committed) impl_->announce(committed->position);
  return committed;
}

Outcome<Committed> Ledger::Impl::append(const NewEntry& wanted) {
  const auto held = database->hold();
  // What has to be made from the entries is made now: heads would be told from links that are not there. And nothing grows without end.
  if (late ? late->full(2) : database->unsettled())
    if (auto settled = settle(); !settled) return fail(settled.error());
  Committed committed;
  OwnBook own;
  auto written = commit(
      [&](Connection& db) {
        own = own_book(db, wanted.book, wanted.kind);
        committed = append(db, wanted, own);
        if (!options.one_thread) write_late(db);
      },
      [&] {
        own_books.insert_or_assign(wanted.book, own);
        known_newest.move_to(committed.position);
        if (options.one_thread) return database->set_unsettled(true);
        late->applier.keep();
        late.reset();
      });
  if (!written) return fail(written.error());
  if (late && late->full()) (void)settle();  // if that can't be done now, whoever reads tries again
  return committed;
}

BookId Ledger::create_book_id() const { return make_id<BookId>(impl_->options.clock->now()); }
AuthorCard Ledger::self() const {
  const std::lock_guard guard(impl_->self_mutex);
  return impl_->self;
}
const WallClock& Ledger::wall() const { return *impl_->options.clock; }
const FieldRegistry& Ledger::registry() const { return *impl_->options.registry; }
const DeviceKey& Ledger::key() const { return impl_->options.key; }

// ------------------------------------------------------------------------------------------------ reading

std::optional<EntityState> Ledger::entity(const BookId& book, const EntityId& id) const {
  // Within a snapshot of the caller's only that snapshot counts.
  std::optional<EntityState> out;
  if (!impl_->database->in_snapshot()) {
    out = impl_->late_state(book, id);
    if (!out) out = impl_->entities.find(book, id);
  }
  if (out) return out;
  const auto read = [&](Connection& db) {
    auto& query = db.statement("SELECT e.state FROM entity e JOIN book b ON b.n=e.book WHERE b.id=? AND e.id=?");
    bind_blob(query, 1, book.bytes);
    bind_blob(query, 2, id.bytes);
    if (query.executeStep()) out = state_in(query, book, id, 0);
  };
  if (impl_->knows_late()) {
    impl_->database->read_unsettled(read);  // it is none of what is late
  } else {
    impl_->database->read(read);
  }
  return out;
}

std::vector<EntityState> Ledger::entities(const BookId& book, std::optional<EntityKind> kind) const {
  std::vector<EntityState> out;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement("SELECT e.id, e.state, e.kind FROM entity e JOIN book b ON b.n=e.book WHERE b.id=? ORDER BY e.id");
    bind_blob(query, 1, book.bytes);
    while (query.executeStep())
      if (!kind || query.getColumn(2).getInt() == static_cast<int>(*kind))
        out.push_back(state_in(query, book, id_of<EntityId>(query, 0), 1));
  });
  return out;
}

std::vector<BookInfo> Ledger::books(std::optional<BookKind> kind) const {
  std::vector<BookInfo> out;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement(kind ? kBooksOfKind : kBooks);
    if (kind) query.bind(1, static_cast<int>(*kind));
    out = book_infos(query);
  });
  return out;
}

Ledger::BooksSince Ledger::books_since(std::int64_t position, std::int64_t deletions) const {
  BooksSince out;
  if (const auto now = impl_->newest_place(); position != 0 && now.position == position && now.deletions == deletions) {
    out.position = position;
    out.deletions = deletions;
    return out;
  }
  impl_->database->read([&](Connection& db) {
    const auto now = impl_->newest_place();
    out.position = now.position;
    out.deletions = now.deletions;
    out.all = position == 0 || out.deletions != deletions;
    if (out.all) {
      out.books = book_infos(db.statement(kBooks));
      return;
    }
    std::vector<BookId> changed;
    auto& query = db.statement("SELECT DISTINCT b.id FROM entry e JOIN book b ON b.n=e.book WHERE e.position>?");
    query.bind(1, position);
    while (query.executeStep()) changed.push_back(id_of<BookId>(query, 0));
    for (const BookId& id : changed) {
      auto& one = db.statement(kOneBook);
      bind_blob(one, 1, id.bytes);
      for (BookInfo& book : book_infos(one)) out.books.push_back(book);
    }
  });
  return out;
}

std::optional<BookInfo> Ledger::book(const BookId& id) const {
  std::vector<BookInfo> out;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement(kOneBook);
    bind_blob(query, 1, id.bytes);
    out = book_infos(query);
  });
  return out.empty() ? std::nullopt : std::optional(out.front());
}

Heads Ledger::heads(const BookId& book) const {
  Heads out;
  impl_->database->read([&](Connection& db) {
    if (const auto number = impl_->find_book(db, book)) out = impl_->heads(db, *number);
  });
  return out;
}

std::vector<OpenQuestion> Ledger::open_questions(std::optional<BookId> book) const {
  std::vector<OpenQuestion> out;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement(
        "SELECT b.id, q.entity, q.tag, e.state FROM question q JOIN book b ON b.n=q.book JOIN entity e ON "
        "e.book=q.book AND "
        "e.id=q.entity WHERE b.forgotten=0 AND (?1 IS NULL OR b.id=?1) ORDER BY b.id, q.entity, q.tag");
    if (book) bind_blob(query, 1, book->bytes);
    while (query.executeStep()) {
      const auto owner = id_of<BookId>(query, 0);
      const auto id = id_of<EntityId>(query, 1);
      const EntityState state = state_in(query, owner, id, 3);
      if (const Cell* cell = state.find(static_cast<FieldTag>(query.getColumn(2).getInt64())))
        out.push_back({owner, id, state.kind, *cell});
    }
  });
  return out;
}

std::optional<Entry> Ledger::entry(const BookId& book, const AuthorId& author, std::uint64_t seq) const {
  std::optional<Entry> out;
  impl_->database->read([&](Connection& db) {
    const auto number = impl_->find_book(db, book);
    const auto author_number = impl_->find_author(db, author);
    if (!number || !author_number) return;
    auto& query = db.statement(kBodyInChain);
    query.bind(1, *number);
    query.bind(2, *author_number);
    query.bind(3, static_cast<std::int64_t>(seq));
    if (!query.executeStep()) return;
    auto decoded = decode_entry(blob_of(query, 0), author);
    if (!decoded) damaged(decoded.error().message());
    out = std::move(*decoded);
  });
  return out;
}

std::optional<Origin> Ledger::origin(const BookId& book, const Dot& dot) const {
  const auto held = entry(book, dot.author, dot.seq);
  if (!held) return std::nullopt;
  std::optional<Origin> out;
  impl_->database->read([&](Connection& db) {
    if (const auto author = impl_->find_author(db, dot.author)) out = Origin{impl_->card(db, *author), held->stamp, held->action};
  });
  return out;
}

std::vector<Quarantined> Ledger::quarantine() const {
  std::vector<Quarantined> out;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement(
        "SELECT q.n, q.book, q.author, q.seq, q.reason, q.at, coalesce(a.device, '') FROM quarantine q LEFT JOIN author a ON "
        "a.id=q.author ORDER BY q.n");
    while (query.executeStep())
      out.push_back({query.getColumn(0).getInt64(), id_of<BookId>(query, 1), id_of<AuthorId>(query, 2),
                     static_cast<std::uint64_t>(query.getColumn(3).getInt64()), query.getColumn(4).getString(),
                     query.getColumn(5).getInt64(), query.getColumn(6).getString()});
  });
  return out;
}

std::optional<Entry> Ledger::quarantined_entry(std::int64_t number) const {
  std::optional<Entry> out;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement("SELECT body, author FROM quarantine WHERE n=?");
    query.bind(1, number);
    if (!query.executeStep()) return;
    if (auto entry = decode_entry(blob_of(query, 0), id_of<AuthorId>(query, 1))) out = std::move(*entry);
  });
  return out;
}

std::int64_t Ledger::position() const { return impl_->newest_place().position; }

void Ledger::read(const std::function<void(Connection&)>& query) const { impl_->database->read(query); }

// ------------------------------------------------------------------------------------------------ small state

std::optional<Bytes> Ledger::remembered(std::string_view key) const {
  std::optional<Bytes> out;
  impl_->database->read([&](Connection& db) { out = meta(db, "room " + std::string(key)); });
  return out;
}

Outcome<> Ledger::remember(std::string_view key, ByteView value) {
  return transact([&](Connection& db) { set_meta(db, "room " + std::string(key), value); });
}

Outcome<> Ledger::transact(const std::function<void(Connection&)>& work) {
  const auto held = impl_->database->hold();
  (void)impl_->settle();  // what the ledger has to write is no concern of other rooms' tables
  return impl_->commit(work, [] {});
}

int Ledger::subscribe(std::function<void(std::int64_t)> listener) {
  const std::lock_guard guard(impl_->listeners_mutex);
  impl_->listeners.emplace_back(impl_->next_listener, std::move(listener));
  return impl_->next_listener++;
}

void Ledger::unsubscribe(int handle) {
  const std::lock_guard guard(impl_->listeners_mutex);
  std::erase_if(impl_->listeners, [&](const auto& held) { return held.first == handle; });
}

}  // namespace weavelog
