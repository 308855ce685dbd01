#include "core/log/value_codec.h"

#include <algorithm>

namespace weavelog {
namespace {

// Kinds are stored and sent: never renumber. Unit codes and shapes likewise.
enum Head : std::uint8_t {
  kCleared = 0 * 4 + 0,
  kFalse = 1 * 4 + 0,
  kTrue = 2 * 4 + 0,
  kInteger = 3 * 4 + 1,
  kText = 4 * 4 + 2,
  kBytes = 5 * 4 + 2,
  kQuantity = 6 * 4 + 2,
  kEntity = 7 * 4 + 3,
  kBook = 8 * 4 + 3,
};

struct Saver {
  OutArchive& ar;
  void operator()(std::monostate) const { ar.byte(kCleared); }
  void operator()(bool value) const { ar.byte(value ? kTrue : kFalse); }
  void operator()(std::int64_t value) const {
    ar.byte(kInteger);
    ar.zigzag(value);
  }
  void operator()(const std::string& value) const {
    ar.byte(kText);
    ar.sized(as_bytes(value));
  }
  void operator()(const Bytes& value) const {
    ar.byte(kBytes);
    ar.sized(value);
  }
  void operator()(const Quantity& value) const {
    ar.byte(kQuantity);
    Bytes inner;
    OutArchive packed(inner);
    packed.zigzag(value.amount.mantissa);
    packed.byte(value.amount.scale);
    packed.byte(static_cast<std::uint8_t>(value.unit));
    ar.sized(inner);
  }
  void operator()(const EntityId& value) const {
    ar.byte(kEntity);
    ar.raw(value.bytes);
  }
  void operator()(const BookId& value) const {
    ar.byte(kBook);
    ar.raw(value.bytes);
  }
  void operator()(const UnknownValue& value) const {
    ar.byte(value.head);
    if ((value.head & 3) == 2) {
      ar.sized(value.payload);
    } else {
      ar.raw(value.payload);
    }
  }
};

Quantity load_quantity(ByteView bytes) {
  InArchive packed(bytes);
  Quantity quantity;
  quantity.amount.mantissa = packed.zigzag();
  quantity.amount.scale = packed.byte();
  quantity.unit = static_cast<Unit>(packed.byte());
  if (quantity.amount.scale > 9) throw ArchiveError("a decimal with more than nine places");
  packed.expect_end();
  return quantity;
}

UnknownValue load_unknown(InArchive& ar, std::uint8_t head) {
  UnknownValue unknown{head, {}};
  switch (head & 3) {
    case 1: {
      OutArchive(unknown.payload).varint(ar.varint());
      break;
    }
    case 2: {
      const ByteView taken = ar.sized(kMaxEntryBytes);
      unknown.payload.assign(taken.begin(), taken.end());
      break;
    }
    case 3: {
      const ByteView taken = ar.take(16);
      unknown.payload.assign(taken.begin(), taken.end());
      break;
    }
    default:
      break;
  }
  return unknown;
}

}  // namespace

std::uint64_t AuthorTable::place(const AuthorId& author) {
  if (authors_.size() <= kLookedThrough) {
    const auto found = std::find(authors_.begin(), authors_.end(), author);
    if (found != authors_.end()) return static_cast<std::uint64_t>(found - authors_.begin());
    authors_.push_back(author);
    return authors_.size() - 1;
  }
  for (std::size_t place = places_.size(); place < authors_.size(); ++place) places_.emplace(authors_[place], place);
  const auto [found, fresh] = places_.try_emplace(author, authors_.size());
  if (fresh) authors_.push_back(author);
  return found->second;
}

const AuthorId& AuthorTable::at(std::uint64_t place) const {
  if (place >= authors_.size()) throw ArchiveError("an author that is not in the table");
  return authors_[static_cast<std::size_t>(place)];
}

void save_value(OutArchive& ar, const Value& value) { std::visit(Saver{ar}, value); }

Value load_value(InArchive& ar) {
  const std::uint8_t head = ar.byte();
  switch (head) {
    case kCleared: return std::monostate{};
    case kFalse: return false;
    case kTrue: return true;
    case kInteger: return ar.zigzag();
    case kText: return std::string(as_text(ar.sized(kMaxEntryBytes)));
    case kBytes: {
      const ByteView taken = ar.sized(kMaxEntryBytes);
      return Bytes(taken.begin(), taken.end());
    }
    case kQuantity: return load_quantity(ar.sized(64));
    case kEntity: return *EntityId::from_bytes(ar.take(16));
    case kBook: return *BookId::from_bytes(ar.take(16));
    default: return load_unknown(ar, head);
  }
}

}  // namespace weavelog
