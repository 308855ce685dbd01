#pragma once
// Ledger: one device's books in one SQLite file. An acknowledged write is on disk. Three layers: entry bytes; entity rows with
// their cells packed; projections (typed tables that screens ask). Whoever reads finds all three as of the same entry.

#include <cstdint>
#include <deque>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/clock.h"
#include "core/log/batch.h"
#include "core/log/cell.h"
#include "core/log/draft.h"
#include "core/log/registry.h"
#include "core/log/stub.h"

namespace weavelog {

/// A database connection with its prepared statements (core/store/database.h): `connection.statement("SELECT ...")`.
class Connection;

/// What one transaction did to one entity.
struct EntityChange {
  const EntityState& state;        ///< as it is now
  bool fresh = false;              ///< it had no row before
  std::span<const FieldTag> tags;  ///< that were written, ordered; may name one twice
};

/// Typed tables of layer three. Called inside the ledger's transaction, on the writer's connection; may throw
/// SQLite::Exception, which undoes the whole transaction: not for what an entry says, which may be confirmed already. Names its tables itself, with a prefix of its own.
class Projection {
 public:
  virtual ~Projection() = default;
  [[nodiscard]] virtual std::string_view name() const = 0;
  /// Raised when the tables change; the ledger then rebuilds them from the entity rows at open.
  [[nodiscard]] virtual int version() const = 0;
  /// Drops what there is and creates the tables empty.
  virtual void create(Connection& db) = 0;
  /// Entities came into being or changed: bring their rows up to date. Called once a transaction, with each entity once, in
  /// an order that respects causality; the entity rows are written before.
  virtual void apply(Connection& db, std::span<const EntityChange> changes) = 0;
  /// The book is forgotten: erase all rows of it.
  virtual void forget(Connection& db, const BookId& book) = 0;
  /// Of all that its tables say, however rows are numbered and in whatever order they stand: equal before and after a rebuild. Asked by verify.
  [[nodiscard]] virtual Digest digest(Connection& db) const = 0;
};

struct LedgerOptions {
  std::filesystem::path file;  ///< ":memory:" for a private one in memory
  std::string vfs;             ///< SQLite's name of the disk, if it is not the machine's (a simulated one)
  /// Only one reads and writes: one connection does both (Connections::one), and what follows from an action's entry is written when
  /// somebody reads, or with that of many others.
  bool one_thread = false;
  const FieldRegistry* registry = nullptr;
  const WallClock* clock = &WallClock::system();
  DeviceKey key = DeviceKey::generate();
  std::string device_name;  ///< "": the one under which this key wrote here before
  std::vector<std::shared_ptr<Projection>> projections;
};

/// What a committed action was named.
struct Committed {
  std::int64_t position = 0;  ///< in this ledger, rises by one with every entry
  Dot dot;                    ///< of its first write
  Stamp stamp;
};

struct BookInfo {
  BookId id;
  BookKind kind{};
  Digest heads{};  ///< digest over all heads of the book: equal on two devices exactly if they hold the same entries
};

/// A guarded field with more than one different answer.
struct OpenQuestion {
  BookId book;
  EntityId entity;
  EntityKind kind{};
  Cell cell;
};

/// Who wrote something, when: what stands beside every answer and every line of a history.
struct Origin {
  AuthorCard author;
  Stamp stamp;
  ActionKind action{};
};

struct Quarantined {
  std::int64_t number = 0;
  BookId book;
  AuthorId author;
  std::uint64_t seq = 0;
  std::string reason;
  UnixMs at = 0;
  std::string device;  ///< the author's name; empty if none of its entries was ever taken in
};

/// One author wrote two different entries under one number of a book: its database was copied, and both copies wrote on.
struct Fork {
  BookId book;
  AuthorCard author;
  std::uint64_t seq = 0;  ///< the first number that has two entries
  UnixMs seen = 0;        ///< by this device's clock
};

/// Somebody whose entries this device holds.
struct KnownAuthor {
  AuthorCard card;
  bool wrong_clock = false;  ///< it wrote with a clock that was far ahead of ours
};

/// A book that was forgotten, as this device heard of it.
struct Forgotten {
  std::int64_t number = 0;  ///< rises in the order in which this device heard of them
  Stub stub;
  UnixMs heard = 0;
  PublicKey heard_from{};  ///< the device that handed it over; zeros: it was ordered here
};

struct ForgetReport {
  std::vector<BookId> erased;  ///< books that were held here
  std::size_t refused = 0;     ///< stubs that do not prove themselves, or of a kind of book that can't be forgotten
  /// Why old pages of the file still hold what was erased; it is tried again at every start.
  std::optional<Fault> not_yet_gone;
};

struct IngestReport {
  std::size_t applied = 0;
  std::size_t known = 0;        ///< already there, byte for byte
  std::size_t forgotten = 0;    ///< of books that were forgotten: left out
  std::size_t quarantined = 0;  ///< kept aside with a reason; of what nobody proved only so much is kept, not applied
  bool gaps = false;            ///< the sender was wrong about what is held here: reconcile with it
  bool other_kind = false;      ///< some of it was of a book that is held here as one of another kind, and is kept aside: it must not count as held
  std::vector<AuthorId> wrong_clocks;  ///< authors whose stamps lie too far ahead
  std::vector<std::pair<AuthorCard, std::size_t>> applied_by;  ///< how many entries of whom, a line for every book
  std::vector<std::pair<BookId, AuthorId>> forks;              ///< chains of which the sender holds another branch, kept aside
  std::int64_t position = 0;
};

struct VerifyReport {
  std::size_t entries = 0;
  std::size_t entities = 0;
  std::size_t stubs = 0;  ///< of forgotten books
  std::size_t forks = 0;  ///< chains of which two branches were met; not a fault of this database
  std::vector<std::string> faults;  ///< empty: all is well
  /// Why the tables for screens and the open questions could not be compared with what the entries give (a full disk, another program that
  /// writes); empty if they were. That is no fault of the database.
  std::string not_compared;
};

/// Heads of one book as a version vector, ordered by author.
using Heads = std::vector<Head>;
/// What BookInfo::heads is for these.
[[nodiscard]] Digest digest_of_heads(const Heads& heads);

/// What somebody holds of a book.
struct BookHeads {
  BookId book;
  BookKind kind{};
  Heads heads;
  bool operator==(const BookHeads&) const = default;
};

/// Thread-safe: one writer connection behind a lock, readers on connections of their own.
class Ledger {
 public:
  /// Creates the file if there is none. Faults: locked (another program has it), damaged, newer, no_space, io.
  [[nodiscard]] static Outcome<std::unique_ptr<Ledger>> open(LedgerOptions options);
  ~Ledger();
  Ledger(const Ledger&) = delete;
  Ledger& operator=(const Ledger&) = delete;

  // --- local actions
  /// Writes one entry, durable when it returns. Faults: bad_input (empty or too large), refused (forgotten book), no_space, io.
  [[nodiscard]] Outcome<Committed> append(const Draft& draft);
  [[nodiscard]] BookId create_book_id() const;
  /// Who writes here now. A device that is given entries of its own which it does not remember (it was restored from an
  /// older copy) takes them back and goes on under a new incarnation, so this can change with an ingest.
  [[nodiscard]] AuthorCard self() const;
  /// The device's key, for proofs at an exchange.
  [[nodiscard]] const DeviceKey& key() const;
  [[nodiscard]] const WallClock& wall() const;
  [[nodiscard]] const FieldRegistry& registry() const;

  // --- reading (a snapshot each)
  [[nodiscard]] std::optional<EntityState> entity(const BookId& book, const EntityId& id) const;
  /// All entities of a book, of one kind if given, ordered by id (which is by time of making).
  [[nodiscard]] std::vector<EntityState> entities(const BookId& book, std::optional<EntityKind> kind = {}) const;
  [[nodiscard]] std::vector<BookInfo> books(std::optional<BookKind> kind = {}) const;
  /// The books that got entries after `position`, for those who keep an overview. If entries were deleted meanwhile (a book was
  /// forgotten), which shows in a count of deletions other than that given, all books.
  struct BooksSince {
    std::vector<BookInfo> books;
    bool all = false;
    std::int64_t position = 0;
    std::int64_t deletions = 0;
  };
  [[nodiscard]] BooksSince books_since(std::int64_t position, std::int64_t deletions) const;
  [[nodiscard]] std::optional<BookInfo> book(const BookId& id) const;
  [[nodiscard]] Heads heads(const BookId& book) const;
  [[nodiscard]] std::vector<OpenQuestion> open_questions(std::optional<BookId> book = {}) const;
  /// One entry as it was written, for history and undo.
  [[nodiscard]] std::optional<Entry> entry(const BookId& book, const AuthorId& author, std::uint64_t seq) const;
  /// These very bytes stand under that number here.
  [[nodiscard]] bool holds(const BookId& book, const AuthorId& author, std::uint64_t seq, ByteView body) const;
  [[nodiscard]] std::optional<Origin> origin(const BookId& book, const Dot& dot) const;
  [[nodiscard]] std::vector<Quarantined> quarantine() const;
  /// What an entry that was put aside says, as far as it can be read.
  [[nodiscard]] std::optional<Entry> quarantined_entry(std::int64_t number) const;
  /// Every fork that was met, oldest first.
  [[nodiscard]] std::vector<Fork> forks() const;
  /// Everybody whose entries are held here, ourselves included.
  [[nodiscard]] std::vector<KnownAuthor> authors() const;
  /// The newest position: 0 for an empty ledger.
  [[nodiscard]] std::int64_t position() const;
  /// Runs a query on a reader connection; may block while another reader query runs, never while a writer writes.
  void read(const std::function<void(Connection&)>& query) const;

  // --- exchange
  /// Entries of the given books after `position`, oldest first, without those that came from peer `not_from`, until about
  /// `max_bytes`.
  /// `next` is the position to go on from (== the ledger's position when there is no more).
  struct Since {
    Batch batch;
    std::int64_t next = 0;
  };
  [[nodiscard]] Since since(std::int64_t position, const std::function<bool(const BookId&)>& wanted,
                            std::int64_t not_from, std::size_t max_bytes) const;
  /// What somebody with these heads of the book lacks, oldest first, until about `max_bytes`; empty when nothing is lacking.
  [[nodiscard]] Batch missing(const BookId& book, const Heads& theirs, std::size_t max_bytes) const;
  /// The same for several books one after the other. `theirs` is brought up to date for what the batch holds; books of which
  /// nothing is lacking any more are taken from its front.
  [[nodiscard]] Batch missing(std::deque<BookHeads>& theirs, std::size_t max_bytes) const;
  /// Takes a batch in, in one transaction, durable when it returns. A chain whose seal does not prove it or that does not
  /// continue the one held here, and an entry that breaks a rule with all after it in its chain, go to quarantine with the
  /// reason; a chain with a gap and a forgotten book are left out; the rest is applied. What replaces a value that is not here
  /// may only come too early: it goes to quarantine, counts as a gap, and leaves the quarantine when it is applied. `from` is the
  /// caller's number for the peer (0: nobody). Faults: malformed (indexes or bounds), refused (quarantine full), no_space, io.
  [[nodiscard]] Outcome<IngestReport> ingest(const Batch& batch, std::int64_t from);

  /// Authors of the book whose chain, as somebody with these heads holds it, is another branch than the one held here: compared
  /// where the shorter of the two ends. Chains that are longer there than here are left out: only the other side can tell.
  [[nodiscard]] std::vector<AuthorId> forked(const BookId& book, const Heads& theirs) const;

  // --- forgetting (core/store/forget.cpp)
  /// A person orders it here: everything of the book is erased, from the file too, and a stub signed by this device stays, which
  /// refuses the book's return. Works for a book that is not held here as well, so that it never comes. Faults: refused (a kind
  /// of book that is about nobody), not_found (neither held nor `kind` given), no_space, io.
  [[nodiscard]] Outcome<ForgetReport> forget(const BookId& book, std::optional<BookKind> kind = {});
  /// Others ordered it and `from` handed it over. The caller has seen to it that they may (sync/trust/forgetting.h).
  [[nodiscard]] Outcome<ForgetReport> obey(std::span<const Stub> stubs, const PublicKey& from);
  /// Lets books go because a rule of this device says so (an event is over): everything of them is erased, from the file too, and nothing
  /// refuses their return. In one transaction: all or none. Faults: refused (a kind of book that is about nobody, or entries of this device's
  /// own in it, which it would then number anew), no_space, io.
  [[nodiscard]] Outcome<ForgetReport> shed(std::span<const BookId> books);
  /// In the order heard, those after a number.
  [[nodiscard]] std::vector<Forgotten> forgotten(std::int64_t after = 0, std::size_t most = 1'000'000) const;
  [[nodiscard]] bool is_forgotten(const BookId& book) const;
  /// What else to erase with a book, in the same transaction: for rooms with tables of their own.
  void erase_with(std::function<void(Connection&, const BookId&)> erase);

  // --- small state of other rooms, in the same file. What names a book (its number in hexadecimal) is erased with it: the
  // elements of a JSON array that do, else the whole value.
  [[nodiscard]] std::optional<Bytes> remembered(std::string_view key) const;
  [[nodiscard]] Outcome<> remember(std::string_view key, ByteView value);
  /// Runs `work` in a write transaction, for tables of other rooms, which live beside the ledger's; those it leaves alone. Exceptions of
  /// SQLite become faults.
  [[nodiscard]] Outcome<> transact(const std::function<void(Connection&)>& work);

  /// Called after every commit of entries, on the committing thread, outside the lock. Keep it short; returns a handle for unsubscribe.
  int subscribe(std::function<void(std::int64_t position)> listener);
  /// When it returns, the listener is not being called and will not be; so none may wait for whoever calls this.
  void unsubscribe(int handle);

  // --- care
  /// Entity rows and open questions again from the entries, compared with what is stored; the hash chains and their authors'
  /// signatures; the stubs' signatures; SQLite's own check.
  [[nodiscard]] VerifyReport verify() const;
  /// Layers two and three made anew.
  [[nodiscard]] Outcome<> rebuild();

  struct Impl;  ///< core/store/ledger_impl.h, for the sources of this room only

 private:
  explicit Ledger(std::unique_ptr<Impl> impl);
  std::unique_ptr<Impl> impl_;
};

}  // namespace weavelog
