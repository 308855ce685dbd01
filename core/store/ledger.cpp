#include "core/store/ledger.h"

#include <sodium.h>
#include <sqlite3.h>

#include <algorithm>
#include <stdexcept>

#include "core/store/ledger_impl.h"

namespace weavelog {
namespace {

constexpr const char* kSelfKey = "self";
constexpr const char* kPlaceKey = "place";
constexpr const char* kClockKey = "clock";

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

template <class T>
T id_of(SQLite::Statement& row, int column) {
  const auto id = T::from_bytes(blob_of(row, column));
  if (!id) damaged("an identifier of the wrong length");
  return *id;
}

Digest digest_in(SQLite::Statement& row, int column) {
  const ByteView held = blob_of(row, column);
  if (held.size() != sizeof(Digest)) damaged("a digest of the wrong length");
  Digest out;
  std::copy(held.begin(), held.end(), out.begin());
  return out;
}

EntityState state_in(SQLite::Statement& row, const BookId& book, const EntityId& id, int column) {
  auto state = decode_state(book, id, blob_of(row, column));
  if (!state) damaged(state.error().message());
  return std::move(*state);
}

BookInfo book_info(SQLite::Statement& row) {
  return {id_of<BookId>(row, 0), static_cast<BookKind>(row.getColumn(1).getInt()), digest_in(row, 2)};
}

}  // namespace

// ------------------------------------------------------------------------------------------------ rows

Outcome<> Ledger::Impl::write(const std::function<void(Connection&)>& work) {
  try {
    return database->write(work);
  } catch (Abort& abort) {
    return fail(std::move(abort.fault));
  }
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
  auto& add = db.statement("INSERT INTO book(id, kind, heads) VALUES(?,?,?)");
  bind_blob(add, 1, book.bytes);
  add.bind(2, static_cast<int>(kind));
  const Digest no_heads{};  // bound without copying, so it has to live until exec()
  bind_blob(add, 3, no_heads);
  add.exec();
  return db.raw().getLastInsertRowid();
}

ChainRow Ledger::Impl::chain(Connection& db, std::int64_t book, std::int64_t author, const Digest& start) const {
  auto& query = db.statement("SELECT seq, hash FROM chain WHERE book=? AND author=?");
  query.bind(1, book);
  query.bind(2, author);
  if (!query.executeStep()) return {0, start};
  return {static_cast<std::uint64_t>(query.getColumn(0).getInt64()), digest_in(query, 1)};
}

std::int64_t Ledger::Impl::insert_entry(Connection& db, std::int64_t book, std::int64_t author, std::uint64_t seq,
                                        std::int64_t source, ByteView body) const {
  auto& add = db.statement("INSERT INTO entry(book, author, seq, source, body) VALUES(?,?,?,?,?)");
  add.bind(1, book);
  add.bind(2, author);
  add.bind(3, static_cast<std::int64_t>(seq));
  add.bind(4, source);
  bind_blob(add, 5, body);
  add.exec();
  return db.raw().getLastInsertRowid();
}

void Ledger::Impl::store_chain(Connection& db, std::int64_t book, std::int64_t author, const ChainRow& head) const {
  auto& put = db.statement(
      "INSERT INTO chain(book, author, seq, hash) VALUES(?,?,?,?) ON CONFLICT(book, author) DO UPDATE SET "
      "seq=excluded.seq, hash=excluded.hash");
  put.bind(1, book);
  put.bind(2, author);
  put.bind(3, static_cast<std::int64_t>(head.seq));
  bind_blob(put, 4, head.hash);
  put.exec();
}

Heads Ledger::Impl::heads(Connection& db, std::int64_t book) const {
  auto& query = db.statement("SELECT a.id, c.seq, c.hash FROM chain c JOIN author a ON a.n=c.author WHERE c.book=? ORDER BY a.id");
  query.bind(1, book);
  Heads out;
  while (query.executeStep())
    out.push_back({id_of<AuthorId>(query, 0), static_cast<std::uint64_t>(query.getColumn(1).getInt64()), digest_in(query, 2)});
  return out;
}

void Ledger::Impl::refresh_heads(Connection& db, std::int64_t book) const {
  auto& put = db.statement("UPDATE book SET heads=? WHERE n=?");
  const Digest digest = digest_of_heads(heads(db, book));
  bind_blob(put, 1, digest);
  put.bind(2, book);
  put.exec();
}

void Ledger::Impl::store_clock(Connection& db) const { set_meta(db, kClockKey, big_endian(clock.last().raw)); }

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
  std::uint64_t incarnation = 0;
  randombytes_buf(&incarnation, sizeof incarnation);
  const PublicKey& key = options.key.public_key();
  Bytes record(key.begin(), key.end());
  const Bytes number = big_endian(incarnation);
  record.insert(record.end(), number.begin(), number.end());
  set_meta(db, kSelfKey, record);
  become(db, incarnation);
}

Outcome<> Ledger::Impl::start() {
  if (options.registry == nullptr) throw std::logic_error("a ledger needs a field registry");
  auto opened = Database::open(options.file, options.vfs);
  if (!opened) return fail(opened.error());
  database = std::move(*opened);
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
    sweep_forgotten(db);
    if (const auto last = meta(db, kClockKey)) clock = HybridClock(*options.clock, Stamp{from_big_endian(*last)});
    for (const auto& projection : options.projections) {
      const std::string name = "projection " + std::string(projection->name());
      const Bytes version = big_endian(static_cast<std::uint64_t>(projection->version()));
      if (meta(db, name) == version) continue;
      rebuild_projection(db, *projection);
      set_meta(db, name, version);
    }
  });
  if (!started) return started;
  (void)scrub_if_due();  // if it can't be done now, the next start tries again
  return {};
}

Ledger::Ledger(std::unique_ptr<Impl> impl) : impl_(std::move(impl)) {}
Ledger::~Ledger() = default;

Outcome<std::unique_ptr<Ledger>> Ledger::open(LedgerOptions options) {
  auto impl = std::make_unique<Impl>(std::move(options));
  if (auto started = impl->start(); !started) return fail(started.error());
  return std::unique_ptr<Ledger>(new Ledger(std::move(impl)));
}

// ------------------------------------------------------------------------------------------------ local actions

Committed Ledger::Impl::append(Connection& db, const NewEntry& wanted) {
  const std::int64_t book = book_number(db, wanted.book, wanted.kind);
  ChainRow head = chain(db, book, self_number, chain_start(wanted.book, wanted.kind, self_id));
  Entry entry;
  entry.seq = head.seq + 1;
  entry.stamp = clock.tick();
  // What is replaced may come from a device whose clock runs ahead: this entry follows it, our own clock does not.
  if (entry.stamp <= wanted.after) entry.stamp.raw = wanted.after.raw + 1;
  entry.schema = options.registry->schema();
  entry.action = wanted.action;
  entry.writes = wanted.writes;
  // Writes of one entity share its id in the bytes only where they stand together.
  std::stable_sort(entry.writes.begin(), entry.writes.end(), [](const Write& a, const Write& b) { return a.entity < b.entity; });
  const Bytes body = encode_entry(entry, self_id);
  if (body.size() > kMaxEntryBytes)
    throw Abort{{FaultCode::bad_input, "too much at once (more than 256 KiB)", "", "shorten the notes or do it in several steps"}};
  head = {entry.seq, chain_next(head.hash, digest_of(body))};
  Committed committed;
  committed.position = insert_entry(db, book, self_number, entry.seq, 0, body);
  committed.dot = Dot{self_id, entry.seq, 0};
  committed.stamp = entry.stamp;
  store_chain(db, book, self_number, head);
  refresh_heads(db, book);
  store_clock(db);
  Applier applier(db, *options.registry, options.projections);
  applier.apply(book, wanted.book, self_id, entry);
  applier.finish();
  return committed;
}

Outcome<Committed> Ledger::append(const Draft& draft) {
  if (draft.empty()) return fail(FaultCode::bad_input, "nothing was changed", "", "change something first");
  if (draft.writes().size() > kMaxWritesPerEntry)
    return fail(FaultCode::bad_input, "too much at once (" + std::to_string(draft.writes().size()) + " fields)", "",
                "do it in several steps of at most " + std::to_string(kMaxWritesPerEntry) + " fields");
  Committed committed;
  auto written = impl_->write([&](Connection& db) {
    committed = impl_->append(db, {draft.book(), draft.kind(), draft.action(), draft.writes(), draft.newest_replaced()});
  });
  if (!written) return fail(written.error());
  impl_->announce(committed.position);
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
  std::optional<EntityState> out;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement("SELECT e.state FROM entity e JOIN book b ON b.n=e.book WHERE b.id=? AND e.id=?");
    bind_blob(query, 1, book.bytes);
    bind_blob(query, 2, id.bytes);
    if (query.executeStep()) out = state_in(query, book, id, 0);
  });
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
    auto& query = db.statement("SELECT id, kind, heads FROM book WHERE forgotten=0 ORDER BY id");
    while (query.executeStep())
      if (!kind || query.getColumn(1).getInt() == static_cast<int>(*kind)) out.push_back(book_info(query));
  });
  return out;
}

std::optional<BookInfo> Ledger::book(const BookId& id) const {
  std::optional<BookInfo> out;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement("SELECT id, kind, heads FROM book WHERE id=? AND forgotten=0");
    bind_blob(query, 1, id.bytes);
    if (query.executeStep()) out = book_info(query);
  });
  return out;
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
        "SELECT b.id, q.entity, q.tag, e.state FROM question q JOIN book b ON b.n=q.book JOIN entity e ON e.book=q.book AND "
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
    auto& query = db.statement("SELECT body FROM entry WHERE book=? AND author=? AND seq=?");
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

std::int64_t Ledger::position() const {
  std::int64_t out = 0;
  impl_->database->read([&](Connection& db) {
    auto& query = db.statement("SELECT coalesce(max(position), 0) FROM entry");
    query.executeStep();
    out = query.getColumn(0).getInt64();
  });
  return out;
}

void Ledger::read(const std::function<void(Connection&)>& query) const { impl_->database->read(query); }

// ------------------------------------------------------------------------------------------------ small state

std::optional<Bytes> Ledger::remembered(std::string_view key) const {
  std::optional<Bytes> out;
  impl_->database->read([&](Connection& db) { out = meta(db, "room " + std::string(key)); });
  return out;
}

Outcome<> Ledger::remember(std::string_view key, ByteView value) {
  return impl_->write([&](Connection& db) { set_meta(db, "room " + std::string(key), value); });
}

Outcome<> Ledger::transact(const std::function<void(Connection&)>& work) { return impl_->write(work); }

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
