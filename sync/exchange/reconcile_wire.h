#pragma once
// The bytes of reconciliation messages: the negentropy protocol, version 1, an open specification.
//
//   message := 0x61 range*           a range begins where the one before it ended; the first at stamp 0, id 0
//   range   := bound mode payload    the bound is exclusive; what follows the last range is skipped
//   bound   := stamp length prefix   stamp: 0 = infinity, else 1 + difference to the bound before; the prefix
//   is
//                                    the first `length` bytes of an id whose other bytes are 0
//   mode    := 0 skip, no payload | 1 fingerprint, 16 bytes | 2 id list, a count and 32 bytes an id
//
// Every number is a varint: base 128, most significant digit first, the high bit set on all but the last
// byte.

#include <compare>
#include <cstdint>
#include <limits>
#include <span>

#include "core/base/outcome.h"
#include "sync/exchange/fingerprint.h"

namespace weavelog {

/// One thing that a side holds. The id must determine the stamp.
struct ReconcileItem {
  std::uint64_t stamp = 0;  ///< any clock or number; 2^64 - 1 is reserved
  Digest id{};

  auto operator<=>(const ReconcileItem&) const = default;
};

/// An exclusive upper bound, in the same order as items.
using RangeBound = ReconcileItem;
inline constexpr std::uint64_t kInfiniteStamp = std::numeric_limits<std::uint64_t>::max();
inline constexpr RangeBound kInfinity{kInfiniteStamp, {}};

inline constexpr std::uint8_t kReconcileVersion = 0x61;
/// The most bytes that a skip followed by a fingerprint takes (two bounds of 10 + 1 + 32 bytes, two modes).
inline constexpr std::size_t kMostSkipAndFingerprint = 2 * (10 + 1 + 32 + 1) + 16;

enum class RangeMode : std::uint8_t { skip = 0, fingerprint = 1, id_list = 2 };

/// Appends the protocol's varint.
void append_range_varint(Bytes& out, std::uint64_t value);

/// A range as read. `payload` views the message: nothing, 16 bytes, or 32 bytes an id.
struct WireRange {
  RangeBound upper;
  RangeMode mode = RangeMode::skip;
  ByteView payload;
};

/// Reads the ranges of a message (after its version byte) one by one without keeping them: its memory does
/// not depend on the message. The message must outlive it.
class RangeReader {
 public:
  explicit RangeReader(ByteView message);
  [[nodiscard]] bool at_end() const { return at_ == message_.size(); }
  /// The next range; not to be called at the end. `malformed` where the bytes break the format.
  [[nodiscard]] Outcome<WireRange> next();

 private:
  Outcome<std::uint64_t> varint();
  Outcome<ByteView> take(std::uint64_t count);
  Outcome<RangeBound> bound();
  tl::unexpected<Fault> bad(std::string what) const;

  ByteView message_;
  std::size_t at_ = 1;
  RangeBound lower_{};
};

/// Writes a message. Neighbouring skips become one, a last skip is left out.
class RangeWriter {
 public:
  RangeWriter() : out_{kReconcileVersion} {}
  void skip(const RangeBound& upper);
  void fingerprint(const RangeBound& upper, const RangeFingerprint& value);
  void id_list(const RangeBound& upper, std::span<const ReconcileItem> items);
  [[nodiscard]] std::size_t size() const { return out_.size(); }
  /// True if nothing but skips was written.
  [[nodiscard]] bool only_skips() const { return out_.size() == 1; }
  [[nodiscard]] Bytes take() { return std::move(out_); }

  /// A place to come back to.
  struct Mark {
    std::size_t size;
    std::uint64_t stamp;
    bool skipping;
    RangeBound skip_to;
  };
  [[nodiscard]] Mark mark() const { return {out_.size(), stamp_, skipping_, skip_to_}; }
  /// Forgets what was written since the mark.
  void rewind(const Mark& mark);

 private:
  void begin(const RangeBound& upper, RangeMode mode);
  void head(const RangeBound& upper, RangeMode mode);

  Bytes out_;
  std::uint64_t stamp_ = 0;
  bool skipping_ = false;
  RangeBound skip_to_{};
};

}  // namespace weavelog
