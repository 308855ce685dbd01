#include "core/log/entry.h"

#include "core/log/value_codec.h"

namespace weavelog {
namespace {

constexpr std::uint64_t kFormat = 1;

void save_dots(OutArchive& ar, const std::vector<Dot>& dots, std::uint64_t seq, AuthorTable& authors) {
  ar.varint(dots.size());
  for (const Dot& dot : dots) {
    const std::uint64_t place = authors.place(dot.author);
    ar.varint(place);
    // Our own earlier entries are near: the distance back is short where the number is long.
    ar.varint(place == 0 ? seq - dot.seq : dot.seq);
    ar.varint(dot.index);
  }
}

std::vector<Dot> load_dots(InArchive& ar, std::uint64_t seq, const AuthorTable& authors) {
  std::vector<Dot> dots(ar.count(3, kMaxWritesPerEntry));
  for (Dot& dot : dots) {
    const std::uint64_t place = ar.varint();
    dot.author = authors.at(place);
    const std::uint64_t number = ar.varint();
    if (place == 0 && (number == 0 || number >= seq)) throw ArchiveError("replaces a write that its author had not made");
    if (place != 0 && number == 0) throw ArchiveError("an entry number of zero");
    dot.seq = place == 0 ? seq - number : number;
    dot.index = ar.varint_as<std::uint32_t>();
  }
  return dots;
}

Entry load_entry(InArchive& ar, const AuthorId& author) {
  if (ar.varint() != kFormat) throw ArchiveError("an entry of another format");
  Entry entry;
  entry.seq = ar.varint();
  if (entry.seq == 0) throw ArchiveError("an entry number of zero");
  entry.stamp.raw = ar.varint();
  entry.schema = ar.varint_as<std::uint32_t>();
  entry.action = static_cast<ActionKind>(ar.varint_as<std::uint16_t>());
  AuthorTable authors;
  authors.add(author);
  for (std::size_t n = ar.count(16, kMaxWritesPerEntry); n > 0; --n) {
    const AuthorId other = *AuthorId::from_bytes(ar.take(16));
    // Place 0 is the author's: under another one it could name writes of its own that it had not made yet.
    if (other == author) throw ArchiveError("an author that is listed twice");
    authors.add(other);
  }
  for (std::size_t groups = ar.count(19, kMaxWritesPerEntry); groups > 0; --groups) {
    const EntityId entity = *EntityId::from_bytes(ar.take(16));
    const auto kind = static_cast<EntityKind>(ar.varint_as<std::uint16_t>());
    std::size_t writes = ar.count(3, kMaxWritesPerEntry);
    if (entry.writes.size() + writes <= kMaxWritesPerEntry) entry.writes.reserve(entry.writes.size() + writes);
    for (; writes > 0; --writes) {
      if (entry.writes.size() == kMaxWritesPerEntry) throw ArchiveError("too many writes");
      Write& write = entry.writes.emplace_back();
      write.entity = entity;
      write.kind = kind;
      write.tag = static_cast<FieldTag>(ar.varint_as<std::uint32_t>());
      write.value = load_value(ar);
      write.replaces = load_dots(ar, entry.seq, authors);
    }
  }
  if (entry.writes.empty()) throw ArchiveError("an entry without writes");
  ar.expect_end();
  return entry;
}

}  // namespace

Bytes encode_entry(const Entry& entry, const AuthorId& author) {
  AuthorTable authors;
  authors.add(author);
  Bytes groups;
  groups.reserve(48 * entry.writes.size());  // so that most entries take one piece of memory
  OutArchive body(groups);
  std::size_t group_count = 0;
  for (std::size_t i = 0; i < entry.writes.size();) {
    std::size_t end = i + 1;
    while (end < entry.writes.size() && entry.writes[end].entity == entry.writes[i].entity &&
           entry.writes[end].kind == entry.writes[i].kind)
      ++end;
    body.raw(entry.writes[i].entity.bytes);
    body.varint(static_cast<std::uint16_t>(entry.writes[i].kind));
    body.varint(end - i);
    for (; i < end; ++i) {
      body.varint(static_cast<std::uint32_t>(entry.writes[i].tag));
      save_value(body, entry.writes[i].value);
      save_dots(body, entry.writes[i].replaces, entry.seq, authors);
    }
    ++group_count;
  }
  Bytes out;
  out.reserve(32 + 16 * authors.all().size() + groups.size());
  OutArchive ar(out);
  ar.varint(kFormat);
  ar.varint(entry.seq);
  ar.varint(entry.stamp.raw);
  ar.varint(entry.schema);
  ar.varint(static_cast<std::uint16_t>(entry.action));
  ar.varint(authors.all().size() - 1);
  for (std::size_t i = 1; i < authors.all().size(); ++i) ar.raw(authors.all()[i].bytes);
  ar.varint(group_count);
  ar.raw(groups);
  return out;
}

Outcome<Entry> decode_entry(ByteView body, const AuthorId& author) {
  if (body.size() > kMaxEntryBytes) return fail(FaultCode::malformed, "an entry of more than 256 KiB", "entry");
  try {
    InArchive ar(body);
    return load_entry(ar, author);
  } catch (const ArchiveError& error) {
    return fail(FaultCode::malformed, error.what(), "entry");
  }
}

std::optional<ActionKind> action_in(ByteView body) {
  try {
    InArchive ar(body);
    if (ar.varint() != kFormat) return std::nullopt;
    for (int skipped = 0; skipped < 3; ++skipped) (void)ar.varint();  // number, stamp, schema
    return static_cast<ActionKind>(ar.varint_as<std::uint16_t>());
  } catch (const ArchiveError&) {
    return std::nullopt;
  }
}

Digest chain_start(const BookId& book, BookKind kind, const AuthorId& author) {
  const std::uint8_t kind_byte = static_cast<std::uint8_t>(kind);
  return digest_of({as_bytes("weavelog chain 1"), book.bytes, {&kind_byte, 1}, author.bytes});
}

Digest chain_next(const Digest& previous, const Digest& body_digest) { return digest_of({previous, body_digest}); }

Bytes seal_message(std::uint64_t seq, const Digest& chain_hash) {
  Bytes out;
  OutArchive ar(out);
  ar.raw(as_bytes("weavelog seal 1"));
  ar.varint(seq);
  ar.raw(chain_hash);
  return out;
}

}  // namespace weavelog
