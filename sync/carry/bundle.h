#pragma once
// Bundle: one file that carries books: an event, some players for a colleague, everything for another tablet. It holds the frames that
// a session would send (stubs, packed entries with what proves them), in chunks that its maker signs one by one and that are sealed for
// who receives it (bundle_seal.h). Any number of chunks from the beginning is causally closed, so that what a damaged or shortened
// file still holds can be taken in, and taking it in again goes on from there.
//
// A backup is a bundle that holds everything of one tablet, private kit, pictures and players who agreed to nothing included, for that
// tablet or for one that takes its place.

#include <functional>
#include <vector>

#include "core/store/ledger.h"
#include "sync/carry/bundle_seal.h"
#include "sync/carry/known_as.h"
#include "sync/exchange/content_files.h"
#include "sync/exchange/peer_store.h"
#include "sync/trust/device_list.h"
#include "sync/trust/rights.h"
#include "sync/wire/messages.h"

namespace weavelog {

/// What a bundle says about itself, to whoever can open it.
struct BundleManifest {
  AuthorCard maker;
  UnixMs made = 0;  ///< by the maker's clock
  std::uint64_t books = 0;
  std::uint64_t entries = 0;
  std::uint64_t stubs = 0;
  /// The event for whose room it was made: players who agreed to that room only may be in it. None: for anybody.
  BookId room;
  std::string note;  ///< for people; at most 1 KiB
  bool backup = false;         ///< everything of its maker, and for nobody else
  std::uint64_t pictures = 0;  ///< of a backup
  bool operator==(const BundleManifest&) const = default;
};

// ------------------------------------------------------------------------------------------------ making

struct BundleWish {
  std::vector<BookId> books;
  std::string note;
  SealFor receiver;
  BookId room;  ///< the receiver works in the room of that event; none: anywhere
  /// As for a session with that room: consent and private kit decide. Asked once a book, as the bundle is begun.
  std::function<bool(const BookId&, BookKind)> may_leave;
  /// Leave out what may not leave or is not held, instead of refusing the whole: for "everything".
  bool leave_out = false;
  /// A backup: `may_leave` and `room` do not count, and the pictures of the books come from here, if it is given.
  bool backup = false;
  const ContentFiles* pictures = nullptr;
  /// Called after every chunk with the entries written so far; false stops, with the fault refused.
  std::function<bool(std::uint64_t entries)> go_on;
  std::size_t chunk_bytes = 192 * 1024;  ///< of entries, about; 4 KiB to 192 KiB
};

/// What stands in the bundle that was written.
struct MadeBundle {
  BundleId id;
  std::optional<PublicKey> for_device;  ///< only that one can open it
  BundleManifest manifest;    ///< as planned when it was begun
  std::uint64_t books = 0;    ///< as written: books may have grown or gone meanwhile
  std::uint64_t entries = 0;
  std::uint64_t pictures = 0, pictures_gone = 0;  ///< written whole; thrown away or damaged since they were listed, and so not in it
  std::uint64_t bytes = 0;
  std::vector<BookId> left_out;
};

/// Writes the bundle piece by piece; what it needs of memory does not grow with the entries. Faults: refused (the player did not agree;
/// the receiver was revoked), not_found (a book), bad_input (receiver's key, passphrase, note), those of the sink, io.
[[nodiscard]] Outcome<MadeBundle> make_bundle(const Ledger& ledger, const DeviceList& devices, const BundleWish& wish, const ByteSink& sink);

/// What it would be, before anything is written.
struct BundleSize {
  std::uint64_t books = 0;
  std::uint64_t entries = 0;
  std::uint64_t stubs = 0;
  std::uint64_t pictures = 0;
  std::uint64_t bytes = 0;  ///< estimated from how a sample packs; seldom off by more than a third
  std::vector<BookId> left_out;
};
/// Faults: those of make_bundle that concern the books.
[[nodiscard]] Outcome<BundleSize> bundle_size(const Ledger& ledger, const BundleWish& wish);

// ------------------------------------------------------------------------------------------------ reading

/// Reads a bundle without taking anything in.
class BundleReader {
 public:
  /// Head and manifest. Faults: those of BundleHead::read and ChunkOpener::create; malformed (it ends or is altered before the manifest
  /// is there), untrusted (not signed by the maker that it names).
  [[nodiscard]] static Outcome<BundleReader> open(ByteSource source, const OpenWith& with);

  [[nodiscard]] const BundleHead& head() const { return head_; }
  [[nodiscard]] const BundleManifest& manifest() const { return manifest_; }

  /// The next stubs, entries or, in a backup, part of a picture; nothing at the end, which `end` then tells about.
  /// Faults: malformed, untrusted (a chunk that the maker did not sign), newer, those of the source. After a fault or the end there is nothing more.
  [[nodiscard]] Outcome<std::optional<Message>> next();
  [[nodiscard]] ChunkEnd end() const { return end_; }
  [[nodiscard]] std::uint64_t chunks() const { return chunks_; }

 private:
  BundleReader(ByteSource source, BundleHead head, ChunkOpener opener);
  struct Chunk {
    std::uint8_t kind = 0;
    Bytes payload;
    bool last = false;
  };
  /// The maker's signature is checked; the first chunk says who that is.
  [[nodiscard]] Outcome<std::optional<Chunk>> next_chunk();

  ByteSource source_;
  BundleHead head_;
  ChunkOpener opener_;
  BundleManifest manifest_;
  Digest running_{};
  ChunkEnd end_ = ChunkEnd::whole;
  std::uint64_t chunks_ = 0, batches_ = 0;
  bool done_ = false;
};

// ------------------------------------------------------------------------------------------------ taking in

struct TakeOptions {
  Ledger* ledger = nullptr;
  DeviceList* devices = nullptr;
  PeerStore* peers = nullptr;
  /// The event in whose room this device works. A bundle that was made for the room of another event is refused.
  BookId room;
  /// By what this device knows of the player's wish: held books that may not come from that room (the bundle's) are left out.
  std::function<bool(const BookId&, BookKind, const BookId& room)> may_take = [](const BookId&, BookKind, const BookId&) { return true; };
  /// What its maker may write and begin here, if it is enrolled. Books that it may not begin are left out.
  RoomRights rights;
  /// Also from a device that is not known here and did not need to be told a passphrase.
  bool from_stranger = false;
  /// Where the pictures of a backup go; null: they are left out.
  ContentFiles* pictures = nullptr;
  /// Called after every chunk with the entries read so far; false stops, with what is taken in by then.
  std::function<bool(std::uint64_t entries)> go_on;
};

struct TakenBundle {
  BundleId id;
  BundleManifest manifest;
  KnownAs maker{};
  ChunkEnd end = ChunkEnd::whole;
  std::optional<Fault> fault;  ///< why it was not read or taken to its end; what came before is taken in
  std::uint64_t entries = 0;   ///< read
  std::uint64_t applied = 0, known = 0, quarantined = 0;
  std::uint64_t forks = 0;     ///< chains of which the bundle holds another branch
  bool gaps = false;           ///< entries came of which those before were put aside or left out here
  std::uint64_t books_read = 0;
  std::vector<BookId> books;   ///< of which entries were offered to the ledger
  std::vector<BookId> withheld;   ///< left out because of consent
  std::vector<BookId> forgotten;  ///< left out because they were forgotten
  std::vector<BookId> not_begun;  ///< left out because its maker's role may not bring them here
  std::uint64_t erased = 0;       ///< players forgotten here because the bundle says that they withdrew
  std::uint64_t pictures = 0;     ///< taken in
  std::uint64_t pictures_failed = 0;  ///< that could not be stored, or did not come whole
  std::uint64_t pictures_gone = 0;    ///< that its maker no longer had when it came to them: they are not in it
  std::vector<std::string> wrong_clocks;
  /// All that the bundle holds is in the ledger, apart from books that were left out.
  [[nodiscard]] bool complete() const;
};

/// Whether a backup by `maker` may be put back here: on the device itself, on one that holds no player yet, and on one that has begun
/// to take its place by taking such a backup in.
[[nodiscard]] bool stands_in_for(const Ledger& ledger, const PublicKey& maker);
/// Whether what the bundle's maker brings is taken in here at all. Faults: as of take_bundle.
[[nodiscard]] Outcome<> may_bring(const BundleReader& reader, const TakeOptions& options);
/// Whether a book of it that is not held here may come with it: RoomRights::may_begin, but for backups and makers that are not enrolled.
[[nodiscard]] bool may_begin(const BundleManifest& manifest, const TakeOptions& options, const BatchBook& book);

/// Takes the bundle in by the same way as a session's batches, chunk by chunk, each durable before the next is read. Faults: those of
/// BundleReader::open, refused (its maker was revoked, or is enrolled here as a reader; it is for another room; a backup of another
/// tablet), untrusted (a stranger); then nothing was taken. Later ones stand in the report.
[[nodiscard]] Outcome<TakenBundle> take_bundle(ByteSource source, const OpenWith& with, const TakeOptions& options);

}  // namespace weavelog
