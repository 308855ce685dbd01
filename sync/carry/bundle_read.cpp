// Reading a bundle, and taking it in.

#include <algorithm>
#include <set>
#include <unordered_set>

#include "core/base/salted_hash.h"
#include "core/log/archive.h"
#include "core/model/fields.h"
#include "core/store/database.h"
#include "sync/carry/bundle_chunk.h"
#include "sync/exchange/borrowed_names.h"
#include "sync/exchange/incoming_books.h"

namespace weavelog {
namespace {

const char* const kAgain = "copy the file again from where it was made, and take it in once more";

tl::unexpected<Fault> malformed(const std::string& what) { return fail(FaultCode::malformed, what, "bundle", "have it made again"); }

}  // namespace

BundleReader::BundleReader(ByteSource source, BundleHead head, ChunkOpener opener)
    : source_(std::move(source)), head_(std::move(head)), opener_(std::move(opener)), running_(head_.digest) {}

Outcome<BundleReader> BundleReader::open(ByteSource source, const OpenWith& with) {
  auto head = BundleHead::read(source);
  if (!head) return fail(head.error());
  auto opener = ChunkOpener::create(*head, with);
  if (!opener) return fail(opener.error());
  BundleReader reader(std::move(source), std::move(*head), std::move(*opener));
  auto first = reader.next_chunk();
  if (!first) return fail(first.error());
  if (!*first)
    return fail(FaultCode::malformed, reader.end_ == ChunkEnd::cut_short ? "it ends before its first part" : "its first part is damaged", "bundle",
                std::string(kAgain) + "; nothing was taken");
  return reader;
}

Outcome<std::optional<BundleReader::Chunk>> BundleReader::next_chunk() {
  if (done_) return std::optional<Chunk>{};
  done_ = true;  // until this one is found to be good
  auto next = opener_.next(source_);
  if (!next) return fail(next.error());
  if (!next->plain) {
    end_ = next->end;
    return std::optional<Chunk>{};
  }
  const ByteView plain = *next->plain;
  Signature signature;
  if (plain.size() < 1 + signature.size()) return malformed("a part without its maker's signature");
  Chunk chunk;
  chunk.kind = plain[0];
  chunk.last = next->last;
  std::copy_n(plain.begin() + 1, signature.size(), signature.begin());
  const ByteView payload = plain.subspan(1 + signature.size());
  chunk.payload.assign(payload.begin(), payload.end());
  running_ = next_digest(running_, chunk.kind, payload);
  if (chunks_++ == 0) {
    if (chunk.kind != static_cast<std::uint8_t>(ChunkKind::manifest)) return malformed("it does not begin with what it holds");
    auto manifest = decode_manifest(payload);
    if (!manifest) return fail(manifest.error());
    manifest_ = std::move(*manifest);
  }
  if (!verify(manifest_.maker.key, chunk_message(running_), signature))
    return fail(FaultCode::untrusted, "a part is not signed by the device that the bundle names as its maker", "bundle",
                "somebody altered it; have it made again");
  done_ = false;
  return std::optional(std::move(chunk));
}

Outcome<std::optional<Message>> BundleReader::next() {
  for (;;) {
    auto chunk = next_chunk();
    if (!chunk) return fail(chunk.error());
    if (!*chunk) return std::optional<Message>{};
    const Chunk& held = **chunk;
    if (held.kind == static_cast<std::uint8_t>(ChunkKind::frame) && !held.last) {
      done_ = true;
      auto message = decode_frame(held.payload);
      if (!message) return fail(message.error());
      const Entries* entries = entries_in(*message);
      const bool picture = manifest_.backup && std::holds_alternative<ContentPart>(*message);
      if (entries == nullptr && !picture && !std::holds_alternative<Stubs>(*message)) return malformed("a message that no bundle holds");
      if (entries != nullptr && entries->number != ++batches_) return malformed("a part out of order");
      done_ = false;
      return std::optional(std::move(*message));
    }
    if (held.kind == static_cast<std::uint8_t>(ChunkKind::end) && held.last) continue;  // to see that nothing follows
    done_ = true;
    if (held.last) return malformed("it ends with something else than its end");
    if (held.kind == static_cast<std::uint8_t>(ChunkKind::end) || held.kind == static_cast<std::uint8_t>(ChunkKind::manifest))
      return malformed("a part out of order");
    if (held.kind < kOptionalChunks)
      return fail(FaultCode::newer, "a part that this version does not know (" + std::to_string(held.kind) + ")", "bundle",
                  "update Weavelog on this device, and take it in once more");
    done_ = false;
  }
}

// ------------------------------------------------------------------------------------------------ taking in

namespace {

constexpr std::string_view kStandsInFor = "carry.stands_in_for";

class Taker {
 public:
  Taker(const TakeOptions& options, BundleReader reader)
      : options_(options), reader_(std::move(reader)), weigher_(*options.ledger, *options.devices) {
    out_.id = reader_.head().id;
    out_.manifest = reader_.manifest();
    out_.maker = known_as(*options_.ledger, *options_.devices, out_.manifest.maker.key);
  }

  Outcome<TakenBundle> run() {
    if (auto may = may_bring(reader_, options_); !may) return fail(may.error());
    if (auto kept = stand_in(); !kept) return fail(kept.error());
    const auto number = options_.peers->number_of(out_.manifest.maker.key);
    if (!number) return fail(number.error());
    peer_ = *number;
    while (!out_.fault) {
      auto message = reader_.next();
      if (!message) {
        out_.fault = message.error();
        out_.end = ChunkEnd::altered;
        break;
      }
      if (!*message) {
        out_.end = reader_.end();
        break;
      }
      if (auto taken = take_safely(**message); !taken) {
        out_.fault = taken.error();
      } else if (options_.go_on && !options_.go_on(out_.entries)) {
        out_.fault = Fault{FaultCode::refused, "stopped by hand", "bundle", "take it in once more to go on"};
      }
    }
    if (out_.end == ChunkEnd::whole && !out_.fault) {  // else it says itself that not all came
      end_picture();
      if (options_.pictures != nullptr && out_.manifest.pictures > pictures_begun_) out_.pictures_gone = out_.manifest.pictures - pictures_begun_;
    }
    out_.books_read = read_.size();
    if (!out_.fault && out_.end != ChunkEnd::whole) out_.fault = ended_early();
    return std::move(out_);
  }

 private:
  /// From the first chunk on this device counts as one that takes the maker's place, so that an interrupted restore can go on.
  Outcome<> stand_in() {
    const PublicKey& maker = out_.manifest.maker.key;
    if (!out_.manifest.backup || out_.maker == KnownAs::self) return {};
    return options_.ledger->remember(kStandsInFor, maker);
  }

  Outcome<> take_safely(const Message& message) {
    try {
      return take(message);
    } catch (const SQLite::Exception& error) {
      return fail(fault_of(error, "the ledger"));
    }
  }

  Outcome<> take(const Message& message) {
    if (const auto* stubs = std::get_if<Stubs>(&message)) return obey(*stubs);
    if (const auto* part = std::get_if<ContentPart>(&message)) return take_picture(*part);
    const Batch& whole = entries_in(message)->batch;
    out_.entries += whole.entries.size();
    Batch batch = without_withheld(whole);
    if (auto beyond = beyond_role(batch)) return fail(std::move(*beyond));
    // A server's word for a name is taken, as in a session with it, and this device's own; and a backup is put back under the name that its tablet
    // had, which may be this one's.
    if (!out_.manifest.backup && out_.maker != KnownAs::self && !options_.devices->host(out_.manifest.maker.key))
      if (const auto borrowed = borrowed_names(*options_.ledger, *options_.devices, weigher_, batch); !borrowed.empty()) take_names_away(batch, borrowed);
    // What comes from a host and was not here is shared with it from then on, as after a session with it.
    const auto [fresh, apart] = options_.devices->host(out_.manifest.maker.key)
                                    ? incoming_books(*options_.ledger, *options_.peers, peer_, out_.manifest.maker.key, batch,
                                                     [this](const BookId& book) { return withheld_.contains(book); })
                                    : IncomingBooks{};
    Outcome<ApartBegun> begun;
    if (!apart.empty()) begun = options_.peers->begin_apart(peer_, batch, apart);
    if (!begun) return fail(begun.error());
    const auto report = options_.ledger->ingest(batch, peer_);
    if (!report) return fail(report.error());
    out_.applied += report->applied;
    out_.known += report->known;
    out_.quarantined += report->quarantined;
    out_.forks += report->forks.size();
    out_.gaps = out_.gaps || report->gaps;
    for (const AuthorId& author : report->wrong_clocks)
      for (const AuthorCard& card : batch.authors)
        if (card.id() == author && std::find(out_.wrong_clocks.begin(), out_.wrong_clocks.end(), card.device) == out_.wrong_clocks.end())
          out_.wrong_clocks.push_back(card.device);
    if (auto counted = options_.devices->count_late(report->applied_by); !counted) return counted;
    if (!apart.empty())
      if (auto kept = options_.peers->keep_apart(peer_, batch, apart, *begun); !kept) return kept;
    return options_.peers->widen(peer_, fresh);
  }

  /// As in a session.
  [[nodiscard]] std::optional<Fault> beyond_role(const Batch& batch) {
    const auto member = options_.devices->member(out_.manifest.maker.key);
    if (!member) return std::nullopt;  // a stranger is let in by hand
    const auto author = weigher_.beyond(out_.manifest.maker.key, member->role, options_.rights, OwnWords::if_new, batch);
    if (!author) return std::nullopt;
    return Fault{FaultCode::refused,
                 "\"" + out_.manifest.maker.device + "\", which made this bundle, is enrolled here as a " + name_of(member->role) +
                     ", and it holds what only others of the room may change",
                 "bundle", "ask the head of the room for another role, or let the head bring it"};
  }

  /// As in a session: a device passes on what it obeyed, and vouches for it if it could have ordered it; else who ordered it must
  /// have been in a position to.
  Outcome<> obey(const Stubs& message) {
    // Who takes its place forgets with it whom it forgot.
    const bool vouches = out_.manifest.backup || options_.devices->may_order_forgetting(out_.manifest.maker.key);
    std::vector<Stub> obeyed;
    std::vector<BookId> declined;
    for (const Stub& stub : message.stubs)
      if (vouches || options_.devices->may_order_forgetting(stub.key)) {
        obeyed.push_back(stub);
      } else if (options_.ledger->book(stub.book)) {
        declined.push_back(stub.book);
      }
    if (auto kept = options_.peers->decline(peer_, declined); !kept) return kept;
    const auto report = options_.ledger->obey(obeyed, out_.manifest.maker.key);
    if (!report) return fail(report.error());
    out_.erased += report->erased.size();
    return {};
  }

  /// Without the entries of books that are not to be taken: forgotten ones, which the ledger would leave out too, and those whose
  /// players said here that nobody may pass them on.
  Batch without_withheld(const Batch& whole) {
    Batch out = whole;
    std::vector<bool> leave(whole.books.size());
    for (std::size_t i = 0; i < whole.books.size(); ++i) {
      const BatchBook& book = whole.books[i];
      const bool first = read_.insert(book.id).second;
      if (options_.ledger->is_forgotten(book.id)) {
        leave[i] = true;
        if (first) out_.forgotten.push_back(book.id);
      } else if (withheld_.contains(book.id)) {
        leave[i] = true;
      } else if (first && !out_.manifest.backup && options_.ledger->book(book.id) && !options_.may_take(book.id, book.kind, out_.manifest.room)) {
        // Asked once: a consent that comes with the bundle itself was weighed by who made it.
        leave[i] = true;
        withheld_.insert(book.id);
        out_.withheld.push_back(book.id);
      } else if (first && !may_begin(out_.manifest, options_, book)) {
        leave[i] = true;
        withheld_.insert(book.id);
        out_.not_begun.push_back(book.id);
      } else if (first) {
        out_.books.push_back(book.id);
      }
    }
    std::erase_if(out.entries, [&](const BatchEntry& entry) { return entry.book < leave.size() && leave[entry.book]; });
    return out;
  }

  /// One that can't be stored is counted and does not stop the rest, which is worth more.
  Outcome<> take_picture(const ContentPart& part) {
    if (options_.pictures == nullptr) return {};
    if (!picture_ || picture_->book != part.book || picture_->hash != part.hash) {
      end_picture();
      ++pictures_begun_;
      // Of a book that was left out nothing is wanted.
      picture_ = Picture{part.book, part.hash, !options_.ledger->book(part.book), {}};
    }
    if (picture_->done) return {};
    Bytes& bytes = picture_->bytes;
    if (part.offset != bytes.size() || part.size > options_.pictures->bounds().one) {
      end_picture();
      return {};
    }
    bytes.insert(bytes.end(), part.bytes.begin(), part.bytes.end());
    if (bytes.size() < part.size) return {};
    const bool whole = bytes.size() == part.size && digest_of(bytes) == part.hash;
    ++(whole && options_.pictures->add(part.book, bytes) ? out_.pictures : out_.pictures_failed);
    picture_->done = true;
    picture_->bytes = {};
    return {};
  }

  void end_picture() {
    if (!picture_ || picture_->done) return;
    ++out_.pictures_failed;
    picture_->done = true;
    picture_->bytes = {};
  }

  Fault ended_early() const {
    std::string what = out_.end == ChunkEnd::cut_short ? "the file ends early" : "a part of the file is damaged";
    what += ": " + std::to_string(out_.entries) + " of " + std::to_string(out_.manifest.entries) + " entries of " + std::to_string(out_.books_read) +
            " of " + std::to_string(out_.manifest.books) + " books could be read, and are taken in";
    if (out_.end == ChunkEnd::altered && out_.entries >= out_.manifest.entries) what = "all of it is taken in, but the file goes on after its end";
    return {FaultCode::malformed, std::move(what), "bundle", kAgain};
  }

  const TakeOptions& options_;
  BundleReader reader_;
  RoleWeigher weigher_;
  TakenBundle out_;
  std::int64_t peer_ = 0;
  std::unordered_set<BookId, SaltedIdHash> read_, withheld_;
  struct Picture {
    BookId book;
    Digest hash{};
    bool done = false;  ///< counted, or not wanted
    Bytes bytes;        ///< what has come of it
  };
  std::optional<Picture> picture_;
  std::uint64_t pictures_begun_ = 0;
};

}  // namespace

bool TakenBundle::complete() const {
  return !fault && end == ChunkEnd::whole && quarantined == 0 && forks == 0 && !gaps && pictures_failed == 0;
}

bool stands_in_for(const Ledger& ledger, const PublicKey& maker) {
  if (maker == ledger.self().key || ledger.books(kPlayerBook).empty()) return true;
  const auto kept = ledger.remembered(kStandsInFor);
  return kept && std::equal(kept->begin(), kept->end(), maker.begin(), maker.end());
}

bool may_begin(const BundleManifest& manifest, const TakeOptions& options, const BatchBook& book) {
  if (manifest.backup || options.ledger->book(book.id)) return true;
  const auto member = options.devices->member(manifest.maker.key);
  return !member || options.rights.may_begin(member->role, book);
}

Outcome<> may_bring(const BundleReader& reader, const TakeOptions& options) {
  const BundleManifest& manifest = reader.manifest();
  const std::string who = "\"" + manifest.maker.device + "\"";
  const KnownAs maker = known_as(*options.ledger, *options.devices, manifest.maker.key);
  if (manifest.backup && !stands_in_for(*options.ledger, manifest.maker.key))
    return fail(FaultCode::refused, "this is the backup of " + who + ", with players who did not agree that others get it", "bundle",
                "put it back on that tablet or on a new one; for a colleague have a bundle of players made");
  if (maker == KnownAs::revoked)
    return fail(FaultCode::refused, who + ", which made this bundle, was revoked", "bundle", "have somebody else in the room make it");
  if (const auto member = options.devices->member(manifest.maker.key); member && member->role == Role::reader)
    return fail(FaultCode::refused, who + ", which made this bundle, is enrolled here as a reader", "bundle",
                "ask the head of the room for another role");
  if (manifest.room && manifest.room != options.room)
    return fail(FaultCode::refused, "this bundle was made for the room of another event, and players in it may have agreed to that room only",
                "bundle", "take it in on a device that works there, or have it made for anybody");
  // Who was told a passphrase knows from whom.
  if (maker == KnownAs::stranger && reader.head().for_device && !options.from_stranger)
    return fail(FaultCode::untrusted, who + ", which made this bundle, is not known here", "bundle",
                "compare the words of its key with whoever gave it to you, then take it in as from a stranger");
  return {};
}

Outcome<TakenBundle> take_bundle(ByteSource source, const OpenWith& with, const TakeOptions& options) {
  if (options.ledger == nullptr || options.devices == nullptr || options.peers == nullptr)
    throw std::logic_error("taking a bundle in needs a ledger, a device list and a peer store");
  auto reader = BundleReader::open(std::move(source), with);
  if (!reader) return fail(reader.error());
  try {
    return Taker(options, std::move(*reader)).run();
  } catch (const SQLite::Exception& error) {
    return fail(fault_of(error, "the ledger"));
  }
}

}  // namespace weavelog
