// Bundles that are cut short, altered, hostile, newer, or interrupted.

#include <fstream>

#include "core/log/archive.h"
#include "sync/carry/carried_file.h"
#include "tests/sync/carry/carriers.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// Enough for several chunks.
struct Long {
  SyncDevice desk{"desk"};
  BundleWish wish;
  Carried bundle;
  explicit Long(const SyncDevice& to) {
    fill_shelves(desk, 30, 24);
    wish = wish_for(desk, to.ledger->self().key);
    wish.chunk_bytes = 4096;
    bundle = make(desk, wish);
  }
};

/// The chunks' ends in the file.
std::vector<std::size_t> boundaries(ByteView file) {
  std::vector<std::size_t> out;
  std::size_t at = 20 + (file[18] | static_cast<std::size_t>(file[19]) << 8) + 8;
  while (at < file.size()) {
    std::size_t length = 0;
    for (std::size_t i = 0; i < 4; ++i) length |= static_cast<std::size_t>(file[at + i]) << (8 * i);
    at += 4 + length;
    out.push_back(at);
  }
  return out;
}

/// A bundle of chunks that no program writes, properly signed and sealed.
Bytes made_of(const DeviceKey& maker, const PublicKey& to, const std::vector<std::pair<std::uint8_t, Bytes>>& chunks, bool last = true) {
  auto sealer = ChunkSealer::create(to, make_bundle_id());
  REQUIRE(sealer);
  ChunkWriter writer(std::move(*sealer), maker);
  Bytes out = writer.head();
  for (std::size_t i = 0; i < chunks.size(); ++i) {
    const Bytes chunk = writer.add(chunks[i].first, chunks[i].second, last && i + 1 == chunks.size());
    out.insert(out.end(), chunk.begin(), chunk.end());
  }
  return out;
}

}  // namespace

TEST_CASE("a bundle that was cut short anywhere gives what came before, says so, and goes on later") {
  SyncDevice tablet("tablet");
  const Long sent(tablet);
  const auto ends = boundaries(sent.bundle.file);
  REQUIRE(ends.size() > 8);
  REQUIRE(ends.back() == sent.bundle.file.size());
  std::vector<std::size_t> cuts{0, 1, 15, 16, 19, 20, 60, ends[0] - 1};
  for (const std::size_t end : ends)
    for (const std::size_t by : {0U, 1U, 3U, 4U, 21U, 300U})
      if (end + by < sent.bundle.file.size()) cuts.push_back(end + by);
  for (const std::size_t cut : cuts) {
    INFO("cut at " << cut << " of " << sent.bundle.file.size());
    SyncDevice fresh("fresh", ":memory:", tablet.ledger->key());
    const auto taken = try_take(fresh, ByteView(sent.bundle.file).first(cut));
    if (cut < ends[0]) {
      REQUIRE_FALSE(taken);
      CHECK(taken.error().code == FaultCode::malformed);
      CHECK(fresh.ledger->books().empty());
      continue;
    }
    REQUIRE(taken);
    CHECK(taken->end == ChunkEnd::cut_short);
    CHECK_FALSE(taken->complete());
    REQUIRE(taken->fault);
    CHECK(taken->fault->what.find("ends early") != std::string::npos);
    CHECK(taken->quarantined == 0);
    CHECK_FALSE(taken->gaps);
    CHECK(taken->applied == taken->entries);
    CHECK_FALSE(receipt_of(*fresh.ledger, *taken).complete);
  }
  // On one device: part, more, all.
  SyncDevice slow("slow", ":memory:", tablet.ledger->key());
  CHECK(take(slow, ByteView(sent.bundle.file).first(ends[3] + 10)).end == ChunkEnd::cut_short);
  const std::size_t held = slow.ledger->books().size();
  CHECK(held > 0);
  CHECK(held < 30);
  CHECK(slow.ledger->verify().faults.empty());
  CHECK(take(slow, ByteView(sent.bundle.file).first(ends[6])).known > 0);
  const TakenBundle whole = take(slow, sent.bundle.file);
  CHECK(whole.complete());
  CHECK(whole.applied + whole.known == 720);
  CHECK(same_books(sent.desk, slow));
  CHECK(slow.ledger->verify().faults.empty());
}

TEST_CASE("a flipped bit anywhere is noticed, and only whole parts before it are taken") {
  SyncDevice tablet("tablet");
  const Long sent(tablet);
  const auto ends = boundaries(sent.bundle.file);
  std::vector<std::size_t> places;
  for (std::size_t at = 0; at < ends[0] + 40; at += 3) places.push_back(at);
  for (std::size_t at = ends[0]; at < sent.bundle.file.size(); at += 701) places.push_back(at);
  for (const std::size_t end : ends)
    if (end < sent.bundle.file.size()) places.push_back(end + 2);
  for (const std::size_t place : places) {
    INFO("byte " << place);
    Bytes file = sent.bundle.file;
    file[place] ^= static_cast<std::uint8_t>(1U << (place % 8));
    SyncDevice fresh("fresh", ":memory:", tablet.ledger->key());
    const auto taken = try_take(fresh, file);
    if (place < ends[0]) {
      CHECK_FALSE(taken);
      CHECK(fresh.ledger->books().empty());
      continue;
    }
    REQUIRE(taken);
    CHECK(taken->fault);
    CHECK_FALSE(taken->complete());
    CHECK(taken->quarantined == 0);
    CHECK(fresh.ledger->verify().faults.empty());
  }
}

TEST_CASE("bytes after the end of a bundle, or a second one, are not taken for a part of it") {
  SyncDevice tablet("tablet");
  const Long sent(tablet);
  Bytes file = sent.bundle.file;
  file.insert(file.end(), sent.bundle.file.begin(), sent.bundle.file.end());
  const TakenBundle taken = take(tablet, file);
  CHECK(taken.applied == 720);
  CHECK(taken.end == ChunkEnd::altered);
  REQUIRE(taken.fault);
  CHECK(taken.fault->what.find("after its end") != std::string::npos);
}

TEST_CASE("parts that change places, come twice or are missing are noticed") {
  SyncDevice tablet("tablet");
  const Long sent(tablet);
  const auto ends = boundaries(sent.bundle.file);
  const auto part = [&](std::size_t from, std::size_t to) { return ByteView(sent.bundle.file).subspan(from, to - from); };
  const auto glued = [](std::initializer_list<ByteView> parts) {
    Bytes out;
    for (const ByteView one : parts) out.insert(out.end(), one.begin(), one.end());
    return out;
  };
  const std::size_t all = sent.bundle.file.size();
  for (const Bytes& file : {glued({part(0, ends[1]), part(ends[2], ends[3]), part(ends[1], ends[2]), part(ends[3], all)}),
                            glued({part(0, ends[2]), part(ends[1], all)}), glued({part(0, ends[1]), part(ends[2], all)})}) {
    SyncDevice fresh("fresh", ":memory:", tablet.ledger->key());
    const TakenBundle taken = take(fresh, file);
    CHECK(taken.end == ChunkEnd::altered);
    CHECK(fresh.ledger->verify().faults.empty());
  }
}

TEST_CASE("a bundle of a newer program is refused with what to do, unless this one may read it") {
  SyncDevice tablet("tablet");
  const Long sent(tablet);
  const auto with_versions = [&](std::uint8_t format, std::uint8_t oldest) {
    Bytes file = sent.bundle.file;
    file[16] = format;
    file[17] = oldest;
    const std::size_t length = 20 + (file[18] | static_cast<std::size_t>(file[19]) << 8);
    const Digest check = digest_of({as_bytes("weavelog bundle head 1"), ByteView(file).first(length)});
    std::copy_n(check.begin(), 8, file.begin() + static_cast<std::ptrdiff_t>(length));
    return file;
  };
  const auto newer = try_take(tablet, with_versions(kBundleFormat + 2, kBundleFormat + 1));
  REQUIRE_FALSE(newer);
  CHECK(newer.error().code == FaultCode::newer);
  CHECK(newer.error().what_to_do.find("update") != std::string::npos);
  // Sealed under another head, its chunks do not open; but its head is read.
  const auto readable = BundleHead::read(source_of(with_versions(kBundleFormat + 1, 1)));
  REQUIRE(readable);
  CHECK(readable->format == kBundleFormat + 1);
}

TEST_CASE("parts of later versions: optional ones are passed over, others end it as newer") {
  SyncDevice tablet("tablet"), maker("maker");
  BundleManifest manifest;
  manifest.maker = maker.ledger->self();
  const Bytes begin = encode_manifest(manifest);
  const DeviceKey& key = maker.ledger->key();
  const PublicKey to = tablet.ledger->self().key;
  CHECK(take(tablet, made_of(key, to, {{1, begin}, {200, {1, 2}}, {3, {0, 0}}})).complete());
  const TakenBundle newer = take(tablet, made_of(key, to, {{1, begin}, {9, {1, 2}}, {3, {0, 0}}}));
  REQUIRE(newer.fault);
  CHECK(newer.fault->code == FaultCode::newer);
  for (const auto& [what, file] : std::vector<std::pair<std::string, Bytes>>{
           {"no end", made_of(key, to, {{1, begin}, {200, {}}})},
           {"two manifests", made_of(key, to, {{1, begin}, {1, begin}, {3, {}}})},
           {"an end before the end", made_of(key, to, {{1, begin}, {3, {}}, {3, {}}})},
           {"another message", made_of(key, to, {{1, begin}, {2, encode_frame(Ack{1})}, {3, {}}})},
           {"a batch out of order", made_of(key, to, {{1, begin}, {2, encode_frame(PackedEntries{{5, {}}})}, {3, {}}})},
           {"no frame", made_of(key, to, {{1, begin}, {2, {7}}, {3, {}}})}}) {
    INFO(what);
    const TakenBundle taken = take(tablet, file);
    CHECK(taken.fault);
    CHECK(taken.entries == 0);
  }
  CHECK_FALSE(try_take(tablet, made_of(key, to, {{2, begin}, {3, {}}})));
  CHECK_FALSE(try_take(tablet, made_of(key, to, {{1, {1, 2, 3}}, {3, {}}})));
}

TEST_CASE("somebody who can open a bundle can't make another one of it in its maker's name") {
  SyncDevice tablet("tablet"), maker("maker"), thief("thief");
  BundleManifest manifest;
  manifest.maker = maker.ledger->self();
  const auto forged = try_take(tablet, made_of(thief.ledger->key(), tablet.ledger->self().key, {{1, encode_manifest(manifest)}, {3, {}}}));
  REQUIRE_FALSE(forged);
  CHECK(forged.error().code == FaultCode::untrusted);
}

TEST_CASE("a hostile file that asks for much memory or work is refused before it is given") {
  SyncDevice tablet("tablet"), maker("maker");
  fill_shelves(maker, 1, 1);
  for (const PassphraseCost& cost : {PassphraseCost{9, 8}, PassphraseCost{1, 256 * 1024 + 1}}) {
    Bytes file = make(maker, wish_for(maker, ForPassphrase{"ferry to the island", kQuick})).file;
    // The head with other parameters: salt, passes, memory, and what follows.
    Bytes head(file.begin(), file.begin() + 20 + 17 + 16);
    OutArchive ar(head);
    ar.varint(cost.passes);
    ar.varint(cost.memory_kib);
    const auto length = file[18] | static_cast<std::size_t>(file[19]) << 8;
    head.insert(head.end(), file.begin() + 20 + 17 + 16 + 2, file.begin() + 20 + static_cast<std::ptrdiff_t>(length));
    head[18] = static_cast<std::uint8_t>(head.size() - 20);
    head[19] = static_cast<std::uint8_t>((head.size() - 20) >> 8);
    const Digest check = digest_of({as_bytes("weavelog bundle head 1"), head});
    head.insert(head.end(), check.begin(), check.begin() + 8);
    const auto refused = try_take(tablet, head, "ferry to the island");
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == FaultCode::refused);
    CHECK(refused.error().what.find("at most 8 over 256 MB") != std::string::npos);
  }
}

TEST_CASE("taking in stops between two parts when asked to, and goes on from there") {
  SyncDevice tablet("tablet");
  const Long sent(tablet);
  TakeOptions options = taking(tablet);
  options.go_on = [](std::uint64_t entries) { return entries < 100; };
  const auto stopped = try_take(tablet, sent.bundle.file, {}, options);
  REQUIRE(stopped);
  CHECK(stopped->fault);
  CHECK(stopped->applied >= 100);
  CHECK(stopped->applied < 720);
  CHECK(take(tablet, sent.bundle.file).complete());
  CHECK(same_books(sent.desk, tablet));
}

TEST_CASE("a file gets its name when it is whole, and a half one leaves nothing behind") {
  const TemporaryFolder folder;
  const auto file = folder / "event.bundle";
  const auto broken = write_carried_file(file, false, [](const ByteSink& sink) -> Outcome<> {
    if (auto done = sink(as_bytes("half")); !done) return done;
    return fail(FaultCode::io, "the stick was pulled out");
  });
  CHECK(broken.error().what == "the stick was pulled out");
  CHECK(std::filesystem::is_empty(folder.path()));
  REQUIRE(write_carried_file(file, false, [](const ByteSink& sink) { return sink(as_bytes("whole")); }));
  CHECK(write_carried_file(file, false, [](const ByteSink& sink) { return sink(as_bytes("other")); }).error().code == FaultCode::conflict);
  CHECK(as_text(*read_small_file(file, 10)) == "whole");
  REQUIRE(write_carried_file(file, true, [](const ByteSink& sink) { return sink(as_bytes("other")); }));
  CHECK(as_text(*read_small_file(file, 10)) == "other");
  CHECK(read_small_file(file, 4).error().code == FaultCode::malformed);
  CHECK(read_carried_file(folder / "none").error().code == FaultCode::not_found);
  CHECK(read_carried_file(folder.path()).error().code == FaultCode::refused);
  CHECK(write_carried_file(folder / "no" / "where", false, [](const ByteSink&) -> Outcome<> { return {}; }).error().code == FaultCode::not_found);
}
