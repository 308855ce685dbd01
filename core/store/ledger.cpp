#include "core/store/ledger.h"

#include <sodium.h>

#include <algorithm>
#include <stdexcept>

#include "core/store/entry_rules.h"
#include "core/store/ledger_impl.h"
#include "core/store/schema.h"

namespace weavelog {
namespace {

constexpr const char* kSelfKey = "self";
constexpr const char* kPlaceKey = "place";
constexpr const char* kClockKey = "clock";
constexpr std::int64_t kClockEvery = 64;
/// An entry of fewer bytes can't break any bound of its form.
constexpr std::size_t kSmallEnough = 16 * 1024;

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

}  // namespace

// ------------------------------------------------------------------------------------------------ transactions

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
    if (rows_written != 0) rows_marked = options.one_thread;
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
  std::uint64_t number = 0;
  {
    const std::lock_guard guard(listeners_mutex);
    now = listeners;
    announcing.emplace(next_announcement, std::this_thread::get_id());
    number = next_announcement++;
  }
  struct End {
    const Impl& impl;
    std::uint64_t number;
    ~End() {
      const std::lock_guard guard(impl.listeners_mutex);
      impl.announcing.erase(number);
      impl.announced.notify_all();
    }
  } const end{*this, number};
  for (const auto& [handle, listener] : now) listener(position);
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

// ------------------------------------------------------------------------------------------------ opening

void Ledger::Impl::become(Connection& db, std::uint64_t incarnation) {
  AuthorCard card{options.key.public_key(), incarnation, options.device_name};
  if (card.device.empty()) {
    auto& query = db.statement("SELECT device FROM author WHERE key=? AND device<>'' ORDER BY id=? DESC, n DESC LIMIT 1");
    const AuthorId own = card.id();
    bind_blob(query, 1, card.key);
    bind_blob(query, 2, own.bytes);
    if (query.executeStep()) options.device_name = card.device = query.getColumn(0).getString();
  }
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
  if (started || options.one_thread) return started;
  // A quota that is used up is told as an error of the disk.
  if (started.error().code != FaultCode::no_space && started.error().code != FaultCode::io) return started;
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
    // Only now has every projection the tables of which it forgets what it shows.
    if (!behind) {
      sweep_forgotten(db);
      drop_idle_forks(db);
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

Stamp Ledger::Impl::newest_replaced(std::int64_t book, const BookId& book_id, const Entry& entry) const {
  Stamp newest;
  for (const Write& write : entry.writes) {
    if (write.replaces.empty()) continue;
    const Cell* cell = late->applier.state(book, book_id, write.entity).find(write.tag);
    if (cell == nullptr) continue;
    for (const Dot& dot : write.replaces)
      if (const CellValue* held = cell->find(dot)) newest = std::max(newest, held->stamp);
  }
  return newest;
}

Committed Ledger::Impl::append(Connection& db, const NewEntry& wanted, OwnBook& own) {
  if (!late) late = std::make_unique<Late>(db, *options.registry, options.projections, entities);
  Entry entry;
  entry.seq = own.head.seq + 1;
  entry.stamp = clock.tick();
  entry.writes = wanted.writes;
  // More answers than one entry can replace come from a faulty device: the rest stays standing, and is replaced the next time.
  for (Write& write : entry.writes)
    if (write.replaces.size() > kMaxWritesPerEntry) write.replaces.resize(kMaxWritesPerEntry);
  // What is replaced may come from a device whose clock runs ahead: this entry follows it, our own clock does not. A stamp that no clock
  // gives is taken by others only right after what they see replaced.
  const Stamp after = wanted.after < kNewestStamp ? wanted.after : newest_replaced(own.number, wanted.book, entry);
  const bool ahead = entry.stamp <= after;
  if (ahead) entry.stamp.raw = after.raw + 1;
  if (entry.stamp <= after)
    throw Abort{{FaultCode::refused, "what stands here came from a faulty device, with the last time stamp that there is: nothing can follow it",
                 "book " + wanted.book.hex(), "put it into another field, such as a note"}};
  entry.schema = options.registry->schema();
  entry.action = wanted.action;
  // Writes of one entity share its id in the bytes only where they stand together.
  std::stable_sort(entry.writes.begin(), entry.writes.end(), [](const Write& a, const Write& b) { return a.entity < b.entity; });
  const Bytes body = encode_entry(entry, self_id);
  // A word counts as confirmed only if every device can read it.
  if (body.size() > kMaxEntryBytes || (body.size() > kSmallEnough && !decode_entry(body, self_id)))
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
        if (!options.one_thread) {
          write_late(db);
        } else if (!rows_marked) {
          mark_rows(db, committed.position - 1);  // from here on rows may be behind their entries
        }
      },
      [&] {
        rows_marked = options.one_thread;
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
  std::unique_lock guard(impl_->listeners_mutex);
  std::erase_if(impl_->listeners, [&](const auto& held) { return held.first == handle; });
  // One that another thread is calling this moment may be this one, and what it works on is gone as soon as this returns. Listeners are short.
  const auto begun_before = [this, next = impl_->next_announcement] {
    return std::any_of(impl_->announcing.begin(), impl_->announcing.lower_bound(next), [](const auto& one) { return one.second != std::this_thread::get_id(); });
  };
  impl_->announced.wait(guard, [&] { return !begun_before(); });
}

}  // namespace weavelog
