// Making a bundle: what the ledger would send to somebody who holds nothing, frame after frame into sealed chunks.

#include <algorithm>
#include <deque>
#include <unordered_set>

#include "core/base/text.h"
#include "core/log/archive.h"
#include "core/store/database.h"
#include "sync/carry/bundle_chunk.h"

namespace weavelog {
namespace {

constexpr std::size_t kStubsPerChunk = 1000;
constexpr std::size_t kLongestNote = 1024;

/// What goes in, and what it holds now.
struct Plan {
  std::deque<BookHeads> books;  ///< as of a receiver who holds nothing
  std::vector<BookId> left_out;
  std::uint64_t entries = 0, bytes = 0, stubs = 0;
  std::vector<HeldContent> pictures;
};

Outcome<Plan> plan_of(const Ledger& ledger, const BundleWish& wish) {
  Plan plan;
  std::unordered_set<BookId, IdHash> seen;
  for (const BookId& id : wish.books) {
    if (!seen.insert(id).second) continue;
    const auto book = ledger.book(id);
    const bool leaves = book && (wish.backup || !wish.may_leave || wish.may_leave(id, book->kind));
    if (leaves) {
      plan.books.push_back({id, book->kind, {}});
    } else if (wish.leave_out) {
      plan.left_out.push_back(id);
    } else if (!book) {
      return fail(FaultCode::not_found, ledger.is_forgotten(id) ? "the player withdrew and was forgotten" : "this device does not hold the book",
                  "book " + id.hex(), "");
    } else {
      return fail(FaultCode::refused, "the player did not agree that this book goes to others", "book " + id.hex(),
                  "ask the player and record the answer first");
    }
  }
  ledger.read([&](Connection& db) {
    for (const BookHeads& book : plan.books) {
      auto& query = db.statement("SELECT count(*), coalesce(sum(length(e.body)), 0) FROM book b JOIN link l ON l.book=b.n JOIN entry e ON e.position=l.position WHERE b.id=?");
      bind_blob(query, 1, book.book.bytes);
      if (!query.executeStep()) continue;
      plan.entries += static_cast<std::uint64_t>(query.getColumn(0).getInt64());
      plan.bytes += static_cast<std::uint64_t>(query.getColumn(1).getInt64());
    }
    auto& stubs = db.statement("SELECT count(*) FROM stub");
    if (stubs.executeStep()) plan.stubs = static_cast<std::uint64_t>(stubs.getColumn(0).getInt64());
  });
  if (wish.backup && wish.pictures != nullptr) {
    plan.pictures = wish.pictures->all();
    std::erase_if(plan.pictures, [&](const HeldContent& one) { return !seen.contains(one.book); });
  }
  return plan;
}

Bytes message_of(std::uint64_t number, Batch batch) { return encode_frame(PackedEntries{{number, std::move(batch)}}); }

Fault stopped() { return {FaultCode::refused, "stopped by hand", "bundle", ""}; }

/// False: it was thrown away or damaged since it was listed, and nothing of it goes. The rest must not be lost for it.
template <class Put>
Outcome<bool> write_picture(const ContentFiles& pictures, const HeldContent& picture, Put put) {
  Bytes whole;
  for (;;) {
    const auto piece = pictures.read_piece(picture.book, picture.hash, whole.size(), kContentPartBytes);
    if (!piece || piece->size > pictures.bounds().one) return false;
    if (piece->bytes.empty()) break;
    whole.insert(whole.end(), piece->bytes.begin(), piece->bytes.end());
  }
  if (digest_of(whole) != picture.hash) return false;
  for (std::size_t offset = 0; offset < whole.size(); offset += kContentPartBytes) {
    const ByteView part = ByteView(whole).subspan(offset, std::min<std::size_t>(kContentPartBytes, whole.size() - offset));
    if (auto done = put(encode_frame(ContentPart{picture.book, picture.hash, whole.size(), offset, Bytes(part.begin(), part.end())})); !done)
      return fail(done.error());
  }
  return true;
}

}  // namespace

Digest next_digest(const Digest& before, std::uint8_t kind, ByteView payload) {
  const std::uint8_t one[] = {kind};
  return digest_of({before, one, payload});
}

Bytes chunk_message(const Digest& running) {
  const ByteView words = as_bytes("weavelog bundle chunk 1");
  Bytes out(words.begin(), words.end());
  out.insert(out.end(), running.begin(), running.end());
  return out;
}

Bytes encode_manifest(const BundleManifest& manifest) {
  Bytes out;
  OutArchive ar(out);
  ar(manifest.maker.key, manifest.maker.incarnation, manifest.maker.device, manifest.made, manifest.books, manifest.entries, manifest.stubs,
     manifest.room, manifest.note);
  if (manifest.backup) ar(manifest.backup, manifest.pictures);
  return out;
}

Outcome<BundleManifest> decode_manifest(ByteView payload) {
  try {
    InArchive ar(payload);
    BundleManifest out;
    ar(out.maker.key, out.maker.incarnation, out.maker.device, out.made, out.books, out.entries, out.stubs, out.room, out.note);
    if (ar.left() > 0) ar(out.backup, out.pictures);
    // A newer program that lets this one read its bundles may say more.
    if (out.note.size() > kLongestNote || out.maker.device.size() > kLongestNote) throw ArchiveError("a text that is too long");
    return out;
  } catch (const ArchiveError& error) {
    return fail(FaultCode::malformed, error.what(), "bundle's manifest");
  }
}

ChunkWriter::ChunkWriter(ChunkSealer sealer, DeviceKey key)
    : sealer_(std::move(sealer)), key_(std::move(key)), running_(sealer_.head().digest) {}

Bytes ChunkWriter::add(std::uint8_t kind, ByteView payload, bool last) {
  running_ = next_digest(running_, kind, payload);
  const Signature signature = key_.sign(chunk_message(running_));
  Bytes plain{kind};
  plain.insert(plain.end(), signature.begin(), signature.end());
  plain.insert(plain.end(), payload.begin(), payload.end());
  return sealer_.seal(plain, last);
}

Outcome<MadeBundle> make_bundle(const Ledger& ledger, const DeviceList& devices, const BundleWish& wish, const ByteSink& sink) {
  auto note = clean_text(wish.note, "note");
  if (!note) return fail(note.error());
  if (note->size() > kLongestNote) return fail(FaultCode::bad_input, "a note of more than 1 KiB", "note", "make it shorter");
  if (const auto* to = std::get_if<PublicKey>(&wish.receiver))
    if (known_as(ledger, devices, *to) == KnownAs::revoked)
      return fail(FaultCode::refused, "the receiving device was revoked", "receiver", "pair it again first if it is back in good hands");
  auto plan = plan_of(ledger, wish);
  if (!plan) return fail(plan.error());
  MadeBundle made;
  made.id = make_bundle_id();
  if (const auto* to = std::get_if<PublicKey>(&wish.receiver)) made.for_device = *to;
  made.manifest = {ledger.self(), ledger.wall().now(), plan->books.size(), plan->entries, plan->stubs, wish.backup ? BookId{} : wish.room,
                   *note,         wish.backup,         plan->pictures.size()};
  made.left_out = std::move(plan->left_out);
  auto sealer = ChunkSealer::create(wish.receiver, made.id, wish.backup ? kBackupFormat : kPlainBundleFormat);
  if (!sealer) return fail(sealer.error());
  ChunkWriter writer(std::move(*sealer), ledger.key());
  const auto put = [&](const Bytes& bytes) {
    made.bytes += bytes.size();
    return sink(bytes);
  };
  if (auto done = put(writer.head()); !done) return fail(done.error());
  const auto chunk = [&](ChunkKind kind, const Bytes& payload, bool last = false) {
    return put(writer.add(static_cast<std::uint8_t>(kind), payload, last));
  };
  if (auto done = chunk(ChunkKind::manifest, encode_manifest(made.manifest)); !done) return fail(done.error());

  try {
    std::int64_t told = 0;
    for (auto some = ledger.forgotten(told, kStubsPerChunk); !some.empty(); some = ledger.forgotten(told, kStubsPerChunk)) {
      told = some.back().number;
      Stubs message;
      for (const Forgotten& one : some) message.stubs.push_back(one.stub);
      if (auto done = chunk(ChunkKind::frame, encode_frame(message)); !done) return fail(done.error());
    }
    const std::size_t size = std::clamp<std::size_t>(wish.chunk_bytes, 4096, 192 * 1024);
    std::unordered_set<BookId, IdHash> written;
    for (std::uint64_t number = 1; !plan->books.empty(); ++number) {
      Batch batch = ledger.missing(plan->books, size);
      if (batch.empty()) break;
      made.entries += batch.entries.size();
      for (const BatchBook& book : batch.books) written.insert(book.id);
      if (auto done = chunk(ChunkKind::frame, message_of(number, std::move(batch))); !done) return fail(done.error());
      if (wish.go_on && !wish.go_on(made.entries)) return fail(stopped());
    }
    for (const HeldContent& picture : plan->pictures) {
      const auto whole = write_picture(*wish.pictures, picture, [&](const Bytes& frame) { return chunk(ChunkKind::frame, frame); });
      if (!whole) return fail(whole.error());
      ++(*whole ? made.pictures : made.pictures_gone);
      if (wish.go_on && !wish.go_on(made.entries)) return fail(stopped());
    }
    made.books = written.size();
  } catch (const SQLite::Exception& error) {
    return fail(fault_of(error, "the ledger"));
  } catch (const std::length_error& error) {
    return fail(FaultCode::bad_input, error.what(), "bundle", "report this; nothing was lost");
  }
  Bytes totals;
  OutArchive ar(totals);
  ar(made.books, made.entries);
  if (auto done = chunk(ChunkKind::end, totals, true); !done) return fail(done.error());
  return made;
}

Outcome<BundleSize> bundle_size(const Ledger& ledger, const BundleWish& wish) {
  auto plan = plan_of(ledger, wish);
  if (!plan) return fail(plan.error());
  BundleSize out;
  out.books = plan->books.size();
  out.entries = plan->entries;
  out.stubs = plan->stubs;
  out.left_out = std::move(plan->left_out);
  constexpr std::size_t kSample = 192 * 1024, kChunkExtra = 100, kHead = 400, kStub = 130;
  Batch sample = ledger.missing(plan->books, kSample);
  std::uint64_t held = 0;
  for (const BatchEntry& entry : sample.entries) held += entry.body.size();
  const std::uint64_t packed = sample.empty() ? 0 : message_of(1, std::move(sample)).size();
  // The first chunk of many is like those after it.
  out.bytes = kHead + out.stubs * kStub + (held == 0 ? 0 : plan->bytes * packed / held) + (plan->bytes / kSample + 2) * kChunkExtra;
  out.pictures = plan->pictures.size();
  for (const HeldContent& picture : plan->pictures) out.bytes += picture.size + (picture.size / kContentPartBytes + 1) * (kChunkExtra + 100);
  return out;
}

}  // namespace weavelog
