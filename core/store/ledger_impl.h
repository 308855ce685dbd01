#pragma once
// What the sources of the ledger share. Not for others.

#include <condition_variable>
#include <map>
#include <mutex>
#include <thread>
#include <unordered_map>
#include <vector>

#include "core/store/applier.h"
#include "core/store/database.h"
#include "core/store/entity_cache.h"
#include "core/store/late_entries.h"
#include "core/store/ledger.h"
#include "core/store/newest.h"

namespace weavelog {

/// Thrown inside a write transaction to undo it and hand the fault to the caller.
struct Abort {
  Fault fault;
};

/// An author seals its chain whenever it hands it over, and at every so many entries, so that what proves a part of a chain (the
/// digests from its end to the next seal) stays short.
inline constexpr std::uint64_t kSealEvery = 1024;

struct ChainRow {
  std::uint64_t seq = 0;
  Digest hash{};
};

/// The body of one entry, by book, author and number.
inline constexpr const char* kBodyInChain =
    "SELECT e.body FROM link l JOIN entry e ON e.position=l.position WHERE l.book=? AND l.author=? AND l.seq=?";

// Of a row; SQLite's exception where it holds no such thing.
[[nodiscard]] Digest digest_in(SQLite::Statement& row, int column);
template <class T>
[[nodiscard]] T id_in(SQLite::Statement& row, int column) {
  const auto id = T::from_bytes(blob_of(row, column));
  if (!id) damaged("an identifier of the wrong length");
  return *id;
}

/// What the ledger remembers of itself, and for other rooms, under a name.
[[nodiscard]] std::optional<Bytes> meta(Connection& db, std::string_view key);
void set_meta(Connection& db, std::string_view key, ByteView value);

void sort_by_author(Heads& heads);

/// What an entry of our own is made from.
struct NewEntry {
  BookId book;
  BookKind kind{};
  ActionKind action{};
  std::vector<Write> writes;
  Stamp after;  ///< its stamp has to come after this one, the newest that it replaces
};

struct Ledger::Impl {
  LedgerOptions options;
  std::unique_ptr<Database> database;
  // Changed inside write transactions only; `self` is read elsewhere too, under its mutex.
  mutable std::mutex self_mutex;
  AuthorCard self;
  AuthorId self_id;
  std::int64_t self_number = 0;
  HybridClock clock;

  std::mutex erasers_mutex;
  std::vector<std::function<void(Connection&, const BookId&)>> erasers;

  // What the writer need not read again, as of the last commit; changed by who holds the database only.
  EntityCache entities;
  std::int64_t next_position = 0;   ///< 0: to be read
  std::int64_t clock_position = 0;  ///< up to which the stored clock covers our own entries
  struct OwnBook {
    std::int64_t number = 0;
    BookKind kind{};
    ChainRow head;  ///< of our chain in it
  };
  std::unordered_map<BookId, OwnBook, IdHash> own_books;

  /// What follows from entries of our own that are on disk, and is not written yet (late_entries.cpp).
  struct Late {
    std::vector<Link> links;
    Applier applier;
    std::size_t bytes = 0;                                      ///< of the entries
    static constexpr std::size_t kMost = 4096;                  ///< entries
    static constexpr std::size_t kMostBytes = 4 * 1024 * 1024;  ///< of them
    /// It holds so many times what it should at most.
    [[nodiscard]] bool full(std::size_t times = 1) const { return links.size() >= times * kMost || bytes >= times * kMostBytes; }
    Late(Connection& db, const FieldRegistry& registry, std::span<const std::shared_ptr<Projection>> projections, EntityCache& cache)
        : applier(db, registry, projections, cache) {}
  };
  std::unique_ptr<Late> late;     ///< null: there is nothing, or if the database is unsettled, it has to be made from the entries
  std::int64_t rows_written = 0;  ///< up to which position all that follows was written too, by the transaction; 0: none was
  bool rows_marked = false;       ///< `meta` says up to where all is written; else everything is

  mutable std::mutex listeners_mutex;
  std::vector<std::pair<int, std::function<void(std::int64_t)>>> listeners;
  int next_listener = 1;
  mutable std::map<std::uint64_t, std::thread::id> announcing;  ///< who calls listeners this moment, in the order in which they began
  mutable std::uint64_t next_announcement = 1;
  mutable std::condition_variable announced;

  mutable Newest known_newest;

  explicit Impl(LedgerOptions given) : options(std::move(given)), clock(*options.clock) {}

  /// Reads or makes our author. Changes members that a rolled-back transaction would have to restore: call it last.
  void become(Connection& db, std::uint64_t incarnation);
  /// Opens what LedgerOptions say; called once by Ledger::open.
  [[nodiscard]] Outcome<> start();
  [[nodiscard]] Outcome<> start_once();
  /// A write transaction whose Abort becomes its fault. What the writer remembers is forgotten: the work may be anything.
  [[nodiscard]] Outcome<> write(const std::function<void(Connection&)>& work);
  /// The same for work that keeps what the writer remembers true; `keep` adds to it once the work is on disk.
  [[nodiscard]] Outcome<> write_on(const std::function<void(Connection&)>& work, const std::function<void()>& keep);
  /// The same where what is late may stay so.
  [[nodiscard]] Outcome<> commit(const std::function<void(Connection&)>& work, const std::function<void()>& keep, Durable durable = Durable::now);

  // What is late (late_entries.cpp).
  /// Writes it, if there is anything.
  [[nodiscard]] Outcome<> settle();
  /// The same within a transaction that will be undone.
  void show_late(Connection& db);
  /// Makes it from the entries.
  void read_late(Connection& db, std::span<const std::shared_ptr<Projection>> projections);
  void write_late(Connection& db);
  /// At the start: writes what the last program did not come to write; with one connection that is left to the first look, and true.
  [[nodiscard]] bool catch_up(Connection& db);
  /// Says that all up to there is written, which whoever adds entries says before the next start looks.
  static void mark_rows(Connection& db, std::int64_t position);
  /// False if something is that would have to be made from the entries first.
  [[nodiscard]] bool knows_late() const;
  /// An entity as our last actions left it, if one of them had to do with it.
  [[nodiscard]] std::optional<EntityState> late_state(const BookId& book, const EntityId& id) const;
  void forget_what_was_read();
  /// As of the caller's snapshot, if it has one, else as of now.
  [[nodiscard]] Newest::Place newest_place() const;
  void announce(std::int64_t position) const;

  // Rows, inside a transaction.
  [[nodiscard]] std::int64_t author_number(Connection& db, const AuthorCard& card) const;
  [[nodiscard]] std::optional<std::int64_t> find_author(Connection& db, const AuthorId& id) const;
  /// Aborts with `refused` if the book is forgotten, with `malformed` if it is of another kind.
  [[nodiscard]] std::int64_t book_number(Connection& db, const BookId& book, BookKind kind) const;
  [[nodiscard]] std::optional<std::int64_t> find_book(Connection& db, const BookId& book) const;
  /// The chain's head, or its start if there is none yet.
  [[nodiscard]] ChainRow chain(Connection& db, std::int64_t book, std::int64_t author, const Digest& start) const;
  /// The entry alone; its position.
  std::int64_t insert_body(Connection& db, std::int64_t book, std::int64_t author, std::uint64_t seq, std::int64_t source, ByteView body);
  /// And its link: its number, and its chain's hash up to it.
  std::int64_t insert_entry(Connection& db, std::int64_t book, std::int64_t author, const ChainRow& link, std::int64_t source,
                            ByteView body);
  void store_waypoint(Connection& db, std::int64_t book, std::int64_t author, std::uint64_t seq, const Signature& signature) const;
  /// Stores the clock as of the entry of that position.
  void store_clock(Connection& db, std::int64_t position);
  /// The stored clock, and what our own entries since then have given.
  void read_clock(Connection& db);
  [[nodiscard]] OwnBook own_book(Connection& db, const BookId& book, BookKind kind) const;
  [[nodiscard]] std::int64_t take_position(Connection& db);
  void new_incarnation(Connection& db);
  /// Writes one entry of our own, with our clock; `own` moves on, and what follows is late. Aborts on one that is too large.
  [[nodiscard]] Committed append(Connection& db, const NewEntry& wanted, OwnBook& own);
  /// The greatest stamp among the values that the entry replaces.
  [[nodiscard]] Stamp newest_replaced(std::int64_t book, const BookId& book_id, const Entry& entry) const;
  /// In a transaction of its own; with two connections what follows is written in it too.
  [[nodiscard]] Outcome<Committed> append(const NewEntry& wanted);

  // Forks (fork.cpp).
  /// The chain's hash at `seq`, from its start.
  [[nodiscard]] Digest chain_hash(Connection& db, std::int64_t book, std::int64_t author, Digest start, std::uint64_t seq) const;
  /// How often we have said our words of a branch again before.
  [[nodiscard]] int note_fork(Connection& db, std::int64_t book, std::int64_t author, std::uint64_t seq) const;
  [[nodiscard]] bool in_fork(Connection& db, std::int64_t book, std::int64_t author, std::uint64_t seq) const;
  /// What entries of ours from that number on hold and we did not take back ourselves, to be said again by append().
  [[nodiscard]] std::vector<NewEntry> standing_words(Connection& db, std::int64_t book, const BookId& book_id, BookKind kind,
                                                     const AuthorId& author, std::uint64_t from) const;
  /// Cuts a chain of ours back; what is cut off is kept in quarantine.
  void step_back(Connection& db, std::int64_t book, const BookId& book_id, std::int64_t author, const ChainRow& to) const;
  void count_words_said_again(Connection& db, std::int64_t book, std::int64_t author) const;
  /// Puts every entry of a book behind those that it goes on from, where taking over another branch has brought some in late.
  /// The newest position, if any was moved.
  std::optional<std::int64_t> put_in_causal_order(Connection& db, std::int64_t book, const BookId& book_id);
  /// Layers two and three of one book anew.
  void rebuild_book(Connection& db, std::int64_t book, const BookId& book_id) const;

  [[nodiscard]] Heads heads(Connection& db, std::int64_t book) const;
  /// Calls `found` with the bytes of one entry, if it is here.
  void read_body(const BookId& book, const AuthorId& author, std::uint64_t seq, const std::function<void(ByteView)>& found) const;
  [[nodiscard]] AuthorCard card(Connection& db, std::int64_t author) const;
  /// Erases all of a book but its row, which then says that it is forgotten, and keeps the stub. True if it was held here.
  [[nodiscard]] bool erase(Connection& db, const Stub& stub, const PublicKey& from);
  /// Erases entries and rows of a held book, and what rooms and projections have of it; what is left is its row in `book`.
  void wipe(Connection& db, const BookId& id, std::int64_t book);
  /// What other rooms keep of it and what was put aside of it. True if something was put aside.
  bool wipe_traces(Connection& db, const BookId& id, std::optional<std::int64_t> book);
  /// Erases books of which only the stub came along (with a restored backup).
  void sweep_forgotten(Connection& db);
  [[nodiscard]] std::vector<Forgotten> to_sweep(Connection& db) const;
  /// Of books that an earlier version let go, whose numbers others may have since.
  static void drop_idle_forks(Connection& db);
  /// sweep_forgotten once what is late is written; a fault if that can't be and there is something to sweep.
  [[nodiscard]] Outcome<> sweep_late();
  /// Overwrites what was erased, if that is still to be done.
  [[nodiscard]] Outcome<> scrub_if_due();
  /// Works out the hash of every link, for a file that had none.
  void relink(Connection& db) const;
  void compare_with_rebuild(VerifyReport& report) const;
  /// Makes layers two and three anew, inside the caller's transaction.
  void rebuild(Connection& db) const;
  void rebuild_projection(Connection& db, Projection& projection) const;
  /// False if its rows are to be made anew.
  [[nodiscard]] static bool is_current(Connection& db, const Projection& projection);
};

}  // namespace weavelog
