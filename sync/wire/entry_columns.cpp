#include "sync/wire/entry_columns.h"

#include <algorithm>
#include <deque>
#include <map>
#include <span>

#include "sync/wire/entry_tables.h"

namespace weavelog {
namespace {

/// What stands in each column. Numbers are stored in no file, but both sides must agree: add at the end.
enum Column : std::size_t {
  kPlaces,   // of book and author, each as a difference to the entry before; whether the entry travels whole
  kSeqs,     // less the one expected
  kStamps,   // milliseconds as a difference to the entry before, and the counter
  kHeads,    // schema and action
  kCounts,   // of groups, and of each group's writes
  kIds,      // 0 a new one, 1 by its number, 2 and more by how recently it was used
  kNewIds,   // time, counter and end of one
  kKinds,    // of an entity, where it is not as before
  kTags,     // as a difference to the write before
  kDots,     // 0: replaces exactly what is expected
  kWhole,    // bodies
  kFixed
};

constexpr std::int64_t kTimeLike = 100'000'000'000;

/// Each takes three bytes of its entry at least, so that no entry that can be read has more.
constexpr std::uint64_t kMaxDotsPerEntry = kMaxEntryBytes / 3;

/// The columns on their way out. Its functions take what they write; those of ColumnsIn give it.
class ColumnsOut {
 public:
  static constexpr bool kReads = false;
  ColumnsOut() {
    for (std::size_t i = 0; i < kFixed; ++i) columns_.emplace_back();
  }

  void number(std::size_t column, std::uint64_t& value) { columns_[column].ar.varint(value); }
  void bytes(std::size_t column, Bytes& value) { columns_[column].ar.raw(value); }
  /// A column of its own for what comes again under this key.
  std::size_t open(std::uint64_t key) {
    bool fresh = false;
    const std::size_t column = opened_.find(key, columns_.size(), fresh);
    if (fresh) columns_.emplace_back();
    return column;
  }
  void save(OutArchive& ar) const {
    ar.varint(columns_.size() - kFixed);
    for (const Held& column : columns_) ar.sized(column.bytes);
  }

 private:
  struct Held {
    Bytes bytes;
    OutArchive ar{bytes};
  };
  std::deque<Held> columns_;
  OpenedColumns opened_;
};

/// Checks every size against what is left in its column.
class ColumnsIn {
 public:
  static constexpr bool kReads = true;
  explicit ColumnsIn(InArchive& ar) {
    const std::size_t count = kFixed + ar.count(1, ar.left());
    columns_.reserve(count);
    for (std::size_t i = 0; i < count; ++i) columns_.emplace_back(ar.sized(ar.left()));
    next_ = kFixed;
  }

  void number(std::size_t column, std::uint64_t& value) { value = columns_[column].varint(); }
  /// `value` has the size that it will have: its size must be checked with left() before.
  void bytes(std::size_t column, Bytes& value) {
    const ByteView taken = columns_[column].take(value.size());
    std::copy(taken.begin(), taken.end(), value.begin());
  }
  std::size_t open(std::uint64_t key) {
    bool fresh = false;
    const std::size_t column = opened_.find(key, next_, fresh);
    if (fresh && next_++ == columns_.size()) throw ArchiveError("a column that is missing");
    return column;
  }
  [[nodiscard]] std::size_t left(std::size_t column) const { return columns_[column].left(); }
  void expect_end() const {
    if (next_ != columns_.size()) throw ArchiveError("left-over columns");
    for (const ByteReader& column : columns_) column.expect_end();
  }

 private:
  std::vector<ByteReader> columns_;  // small ones: a sender can name as many as it has bytes
  std::size_t next_ = 0;
  OpenedColumns opened_;
};

std::uint64_t zigzag(std::int64_t value) { return (static_cast<std::uint64_t>(value) << 1) ^ static_cast<std::uint64_t>(value >> 63); }
std::int64_t unzigzag(std::uint64_t value) { return static_cast<std::int64_t>(value >> 1) ^ -static_cast<std::int64_t>(value & 1); }
/// Differences wrap, so that any number can be said.
std::int64_t less(std::uint64_t a, std::uint64_t b) { return static_cast<std::int64_t>(a - b); }

/// Goes over an entry and its columns, writing or reading as Columns does: one code for both, so both say the same.
template <class Columns>
class EntryWalk {
 public:
  EntryWalk(Columns& columns, const Batch& batch) : columns_(columns) {
    for (const AuthorCard& author : batch.authors) {
      authors_.push_back(author.id());
      ids_.add(authors_.back().bytes);
    }
  }

  [[nodiscard]] const AuthorId& author(std::uint32_t place) const { return authors_[place]; }

  /// Book, author, number and whether the body travels whole.
  void place(BatchEntry& entry, bool& whole) {
    std::uint64_t code = zigzag(less(entry.book, book_)) << 1 | (whole ? 1 : 0);
    columns_.number(kPlaces, code);
    whole = (code & 1) != 0;
    entry.book = static_cast<std::uint32_t>(book_ + static_cast<std::uint64_t>(unzigzag(code >> 1)));
    book_ = entry.book;
    difference(kPlaces, entry.author, author_);
    author_ = entry.author;
    std::uint64_t& expected = next_[{entry.book, entry.author}];
    std::uint64_t seq = entry.seq;
    difference(kSeqs, seq, expected + 1);
    entry.seq = seq;
    expected = seq;
  }

  void entry(Entry& entry, const BatchEntry& where) {
    seq_ = where.seq;
    dots_ = 0;
    said_.push_back({where.author, where.seq});
    entry.seq = where.seq;
    std::uint64_t ms = entry.stamp.raw >> 16, counter = entry.stamp.raw & 0xffff;
    std::uint64_t code = zigzag(less(ms, ms_));
    columns_.number(kStamps, code);
    ms_ = ms = (ms_ + static_cast<std::uint64_t>(unzigzag(code))) & 0xffff'ffff'ffffU;
    columns_.number(kStamps, counter);
    entry.stamp.raw = ms << 16 | (counter & 0xffff);
    small(kHeads, entry.schema);
    small(kHeads, entry.action);
    groups(entry);
  }

 private:
  template <class Number>
  void small(std::size_t column, Number& value) {
    auto wide = static_cast<std::uint64_t>(value);
    columns_.number(column, wide);
    value = static_cast<Number>(wide);
    if (static_cast<std::uint64_t>(value) != wide) throw ArchiveError("an integer out of its range");
  }
  template <class Number>
  void difference(std::size_t column, Number& value, std::uint64_t before) {
    std::uint64_t code = zigzag(less(value, before));
    columns_.number(column, code);
    value = static_cast<Number>(before + static_cast<std::uint64_t>(unzigzag(code)));
  }

  void groups(Entry& entry) {
    std::uint64_t left = 0;
    for (std::size_t i = 0; i < entry.writes.size(); ++i) left += begins_group(entry, i) ? 1 : 0;
    columns_.number(kCounts, left);
    if (left > kMaxWritesPerEntry) throw ArchiveError("too many writes");
    for (std::size_t at = 0; left > 0; --left) {
      std::uint64_t count = 0;
      if constexpr (!Columns::kReads) {
        count = 1;
        while (at + count < entry.writes.size() && !begins_group(entry, at + count)) ++count;
      }
      columns_.number(kCounts, count);
      if (count > kMaxWritesPerEntry - at) throw ArchiveError("too many writes");
      if constexpr (Columns::kReads) {
        if (count > columns_.left(kTags)) throw ArchiveError("a count larger than what follows");
        entry.writes.resize(at + count);
      }
      if (count > 0) group({entry.writes.data() + at, static_cast<std::size_t>(count)}, static_cast<std::uint32_t>(at));
      at += count;
    }
  }
  static bool begins_group(const Entry& entry, std::size_t i) {
    return i == 0 || entry.writes[i].entity != entry.writes[i - 1].entity || entry.writes[i].kind != entry.writes[i - 1].kind;
  }

  void group(std::span<Write> writes, std::uint32_t first) {
    EntityId entity = writes.front().entity;
    const std::uint32_t number = id(entity.bytes);
    auto kind = static_cast<std::uint64_t>(writes.front().kind);
    if (number >= kinds_.size()) kinds_.resize(ids_.size());
    std::uint64_t& expected = kinds_[number];
    difference(kKinds, kind, expected);
    expected = kind;
    if (kind > 0xffff) throw ArchiveError("an integer out of its range");
    std::uint64_t tag_before = 0;
    for (std::size_t i = 0; i < writes.size(); ++i) {
      Write& write = writes[i];
      write.entity = entity;
      write.kind = static_cast<EntityKind>(kind);
      auto tag = static_cast<std::uint64_t>(write.tag);
      difference(kTags, tag, tag_before);
      if (tag > 0xffff'ffffU) throw ArchiveError("an integer out of its range");
      tag_before = tag;
      write.tag = static_cast<FieldTag>(tag);
      value(write.value, tag);
      replaces(write, number, first + static_cast<std::uint32_t>(i));
    }
  }

  std::uint32_t id(IdBytes& id) {
    std::uint64_t code = 0;
    if constexpr (!Columns::kReads)
      if (const auto known = ids_.find(id)) code = ids_.place(*known) == kRecent ? 1 : 2 + ids_.place(*known);
    columns_.number(kIds, code);
    if (code == 0) return new_id(id);
    std::uint64_t number = 0;
    if (code == 1) {
      if constexpr (!Columns::kReads) number = *ids_.find(id);
      columns_.number(kIds, number);
    } else {
      number = ids_.at_place(code - 2);
    }
    id = ids_.at(number);
    ids_.use(static_cast<std::uint32_t>(number));
    return static_cast<std::uint32_t>(number);
  }

  /// The time of a new id is near its entry's, and its end near that of the one before if the same device made it.
  std::uint32_t new_id(IdBytes& id) {
    const auto part = [&](std::size_t begin, std::size_t end, std::uint64_t before) {
      std::uint64_t value = 0;
      for (std::size_t i = begin; i < end; ++i) value = value << 8 | id[i];
      difference(kNewIds, value, before);
      for (std::size_t i = end; i-- > begin; value >>= 8) id[i] = static_cast<std::uint8_t>(value);
    };
    part(0, 6, ms_);
    part(6, 8, 0x7000);
    std::uint64_t before = 0;
    for (std::size_t i = 8; i < 16; ++i) before = before << 8 | last_id_[i];
    part(8, 16, before);
    last_id_ = id;
    if constexpr (Columns::kReads)
      if (ids_.find(id)) throw ArchiveError("an id that is said twice");
    return ids_.add(id);
  }

  // --- values: a column for each tag's kinds, numbers and bytes

  void value(Value& value, std::uint64_t tag) {
    std::uint64_t kind = value.index();  // of the variant: what it says on the wire, so its order is part of the format
    columns_.number(columns_.open(tag * 4), kind);
    switch (kind) {
      case 0: return void(start<std::monostate>(value));
      case 1: return flag(start<bool>(value), tag);
      case 2: return integer(start<std::int64_t>(value), tag);
      case 3: return quantity(start<Quantity>(value), tag);
      case 4: return text(start<std::string>(value), tag);
      case 5: return bytes(start<Bytes>(value), tag);
      case 6: return void(id(start<EntityId>(value).bytes));
      case 7: return void(id(start<BookId>(value).bytes));
      case 8: {
        auto& unknown = start<UnknownValue>(value);
        small(columns_.open(tag * 4 + 1), unknown.head);
        return bytes(unknown.payload, tag);
      }
      default: throw ArchiveError("a value of no kind");
    }
  }
  template <class T>
  static T& start(Value& value) {
    if constexpr (Columns::kReads) value = T{};
    return std::get<T>(value);
  }
  void flag(bool& value, std::uint64_t tag) {
    std::uint64_t code = value ? 1 : 0;
    columns_.number(columns_.open(tag * 4 + 1), code);
    value = code != 0;
  }
  void integer(std::int64_t& value, std::uint64_t tag) {
    const std::size_t column = columns_.open(tag * 4 + 1);
    std::uint64_t near_time = value > kTimeLike ? 1 : 0;
    columns_.number(column, near_time);
    std::uint64_t code = zigzag(near_time != 0 ? less(static_cast<std::uint64_t>(value), ms_) : value);
    columns_.number(column, code);
    value = near_time != 0 ? less(ms_ + static_cast<std::uint64_t>(unzigzag(code)), 0) : unzigzag(code);
  }
  void quantity(Quantity& value, std::uint64_t tag) {
    const std::size_t column = columns_.open(tag * 4 + 1);
    std::uint64_t code = zigzag(value.amount.mantissa);
    columns_.number(column, code);
    value.amount.mantissa = unzigzag(code);
    small(column, value.amount.scale);
    small(column, value.unit);
    if (value.amount.scale > 9) throw ArchiveError("a decimal with more than nine places");
  }
  void text(std::string& value, std::uint64_t tag) {
    Bytes held(value.begin(), value.end());
    bytes_of(held, tag);
    if constexpr (Columns::kReads) value.assign(held.begin(), held.end());
  }
  /// Sixteen bytes are an id, such as that of the mark before.
  void bytes(Bytes& value, std::uint64_t tag) {
    std::uint64_t is_id = value.size() == 16 ? 1 : 0;
    columns_.number(columns_.open(tag * 4 + 1), is_id);
    if (is_id == 0) return bytes_of(value, tag);
    IdBytes held{};
    if constexpr (!Columns::kReads) std::copy(value.begin(), value.end(), held.begin());
    id(held);
    if constexpr (Columns::kReads) value.assign(held.begin(), held.end());
  }
  void bytes_of(Bytes& value, std::uint64_t tag) {
    const std::size_t column = columns_.open(tag * 4 + 2);
    std::uint64_t size = value.size();
    columns_.number(columns_.open(tag * 4 + 3), size);
    if constexpr (Columns::kReads) {
      if (size > columns_.left(column)) throw ArchiveError("a count larger than what follows");
      if (size > kMaxEntryBytes) throw ArchiveError("a value of more than 256 KiB");
      value.resize(static_cast<std::size_t>(size));
    }
    columns_.bytes(column, value);
  }

  // --- what is replaced: expected is what stands in the field by this batch

  void replaces(Write& write, std::uint32_t entity, std::uint32_t index) {
    LastWrites::Said& last = last_writes_.of(entity, write.tag);
    const std::optional<Dot> standing = last.given() ? std::optional(dot_of(last)) : std::nullopt;
    last = {static_cast<std::uint32_t>(said_.size()), index};
    const bool usual = !standing ? write.replaces.empty() : write.replaces.size() == 1 && write.replaces.front() == *standing;
    std::uint64_t code = usual ? 0 : 1 + write.replaces.size();
    columns_.number(kDots, code);
    if (code == 0) {
      if constexpr (Columns::kReads)
        if (standing) write.replaces.assign(1, *standing);
      return;
    }
    if constexpr (Columns::kReads) {
      if (code - 1 > columns_.left(kDots)) throw ArchiveError("a count larger than what follows");
      // Else an entry of a hundred bytes could name hundreds of thousands.
      dots_ += code - 1;
      if (code - 1 > kMaxWritesPerEntry || dots_ > kMaxDotsPerEntry) throw ArchiveError("too many writes that are replaced");
      write.replaces.resize(static_cast<std::size_t>(code - 1));
    }
    for (Dot& dot : write.replaces) {
      id(dot.author.bytes);
      difference(kDots, dot.seq, seq_);
      small(kDots, dot.index);
    }
  }
  [[nodiscard]] Dot dot_of(const LastWrites::Said& said) const {
    const SaidEntry& entry = said_[said.entry - 1];
    return {authors_[entry.author], entry.seq, said.index};
  }

  /// An entry that was gone over.
  struct SaidEntry {
    std::uint32_t author;
    std::uint64_t seq;
  };
  struct Place {
    std::uint32_t book, author;
    auto operator<=>(const Place&) const = default;
  };

  Columns& columns_;
  std::vector<AuthorId> authors_;
  IdTable ids_;
  std::uint64_t book_ = 0, author_ = 0, ms_ = 0, seq_ = 0;
  std::uint64_t dots_ = 0;  ///< of the entry that is gone over
  std::vector<SaidEntry> said_;
  IdBytes last_id_{};
  std::map<Place, std::uint64_t> next_;
  std::vector<std::uint64_t> kinds_;  ///< of every id by its number
  LastWrites last_writes_;
};

}  // namespace

void save_entries(OutArchive& ar, const Batch& batch) {
  ColumnsOut columns;
  EntryWalk<ColumnsOut> walk(columns, batch);
  for (const BatchEntry& held : batch.entries) {
    BatchEntry where{held.book, held.author, held.seq, {}};
    auto entry = decode_entry(held.body, walk.author(held.author));
    bool whole = !entry || entry->seq != held.seq || encode_entry(*entry, walk.author(held.author)) != held.body;
    walk.place(where, whole);
    if (!whole) {
      walk.entry(*entry, where);
      continue;
    }
    Bytes body = held.body;
    std::uint64_t size = body.size();
    columns.number(kWhole, size);
    columns.bytes(kWhole, body);
  }
  ar.varint(batch.entries.size());
  columns.save(ar);
}

void load_entries(InArchive& ar, Batch& batch) {
  const std::uint64_t count = ar.varint();
  ColumnsIn columns(ar);
  EntryWalk<ColumnsIn> walk(columns, batch);
  if (count > columns.left(kPlaces)) throw ArchiveError("a count larger than what follows");
  batch.entries.clear();
  for (std::uint64_t i = 0; i < count; ++i) {
    BatchEntry& held = batch.entries.emplace_back();
    bool whole = false;
    walk.place(held, whole);
    if (held.author >= batch.authors.size()) throw ArchiveError("an author that is not in the table");
    if (!whole) {
      Entry entry;
      walk.entry(entry, held);
      held.body = encode_entry(entry, walk.author(held.author));
      if (held.body.size() > kMaxEntryBytes) throw ArchiveError("an entry of more than 256 KiB");
      continue;
    }
    std::uint64_t size = 0;
    columns.number(kWhole, size);
    if (size > columns.left(kWhole)) throw ArchiveError("a count larger than what follows");
    if (size > kMaxEntryBytes) throw ArchiveError("an entry of more than 256 KiB");
    held.body.resize(static_cast<std::size_t>(size));
    columns.bytes(kWhole, held.body);
  }
  columns.expect_end();
}

}  // namespace weavelog
