#include "sync/exchange/reconcile_wire.h"

#include <algorithm>
#include <string>

namespace weavelog {
namespace {

constexpr std::size_t kFingerprintBytes = std::tuple_size_v<RangeFingerprint>;
constexpr std::size_t kWireIdBytes = std::tuple_size_v<Digest>;

}  // namespace

void append_range_varint(Bytes& out, std::uint64_t value) {
  int shift = 63;
  while (shift > 0 && value >> shift == 0) shift -= 7;
  for (; shift > 0; shift -= 7) out.push_back(static_cast<std::uint8_t>((value >> shift & 0x7f) | 0x80));
  out.push_back(static_cast<std::uint8_t>(value & 0x7f));
}

RangeReader::RangeReader(ByteView message)
    : message_(message), at_(std::min<std::size_t>(1, message.size())) {}

tl::unexpected<Fault> RangeReader::bad(std::string what) const {
  return fail(FaultCode::malformed, std::move(what), "reconciliation message, byte " + std::to_string(at_),
              "exchange again; if it happens again, update both devices");
}

Outcome<std::uint64_t> RangeReader::varint() {
  std::uint64_t value = 0;
  for (bool first = true;; first = false) {
    if (at_end()) return bad("it ends within a number");
    const std::uint8_t byte = message_[at_];
    if (first && byte == 0x80) return bad("a number with a leading zero");
    if (value >> 57 != 0) return bad("a number over 64 bits");
    ++at_;
    value = value << 7 | (byte & 0x7fU);
    if ((byte & 0x80) == 0) return value;
  }
}

Outcome<ByteView> RangeReader::take(std::uint64_t count) {
  if (count > message_.size() - at_) return bad("it ends too early");
  const ByteView taken = message_.subspan(at_, static_cast<std::size_t>(count));
  at_ += taken.size();
  return taken;
}

Outcome<RangeBound> RangeReader::bound() {
  if (lower_.stamp == kInfiniteStamp) return bad("a range after the one that has no end");
  const auto stamp = varint();
  if (!stamp) return fail(stamp.error());
  const auto length = varint();
  if (!length) return fail(length.error());
  if (*length > kWireIdBytes) return bad("a bound with more than 32 bytes of id");
  if (*stamp == 0) {
    if (*length != 0) return bad("an id beside the infinite stamp");
    return kInfinity;
  }
  const std::uint64_t difference = *stamp - 1;
  if (difference >= kInfiniteStamp - lower_.stamp) return bad("a stamp over 64 bits");
  const auto prefix = take(*length);
  if (!prefix) return fail(prefix.error());
  RangeBound upper{lower_.stamp + difference, {}};
  std::copy(prefix->begin(), prefix->end(), upper.id.begin());
  if (upper < lower_) return bad("a range that ends before it begins");
  return upper;
}

Outcome<WireRange> RangeReader::next() {
  const auto upper = bound();
  if (!upper) return fail(upper.error());
  const auto mode = varint();
  if (!mode) return fail(mode.error());
  std::uint64_t payload = 0;
  if (*mode == static_cast<std::uint64_t>(RangeMode::fingerprint)) {
    payload = kFingerprintBytes;
  } else if (*mode == static_cast<std::uint64_t>(RangeMode::id_list)) {
    const auto count = varint();
    if (!count) return fail(count.error());
    if (*count > (message_.size() - at_) / kWireIdBytes) return bad("an id list longer than the message");
    payload = *count * kWireIdBytes;
  } else if (*mode != static_cast<std::uint64_t>(RangeMode::skip)) {
    return bad("a range of unknown mode " + std::to_string(*mode));
  }
  const auto bytes = take(payload);
  if (!bytes) return fail(bytes.error());
  lower_ = *upper;
  return WireRange{*upper, static_cast<RangeMode>(*mode), *bytes};
}

void RangeWriter::head(const RangeBound& upper, RangeMode mode) {
  if (upper.stamp == kInfiniteStamp) {
    append_range_varint(out_, 0);
    append_range_varint(out_, 0);
  } else {
    append_range_varint(out_, 1 + (upper.stamp - stamp_));
    stamp_ = upper.stamp;
    std::size_t length = kWireIdBytes;
    while (length > 0 && upper.id[length - 1] == 0) --length;
    append_range_varint(out_, length);
    out_.insert(out_.end(), upper.id.begin(), upper.id.begin() + static_cast<std::ptrdiff_t>(length));
  }
  append_range_varint(out_, static_cast<std::uint64_t>(mode));
}

void RangeWriter::begin(const RangeBound& upper, RangeMode mode) {
  if (skipping_) head(skip_to_, RangeMode::skip);
  skipping_ = false;
  head(upper, mode);
}

void RangeWriter::skip(const RangeBound& upper) {
  skipping_ = true;
  skip_to_ = upper;
}

void RangeWriter::fingerprint(const RangeBound& upper, const RangeFingerprint& value) {
  begin(upper, RangeMode::fingerprint);
  out_.insert(out_.end(), value.begin(), value.end());
}

void RangeWriter::id_list(const RangeBound& upper, std::span<const ReconcileItem> items) {
  begin(upper, RangeMode::id_list);
  append_range_varint(out_, items.size());
  for (const auto& item : items) out_.insert(out_.end(), item.id.begin(), item.id.end());
}

void RangeWriter::rewind(const Mark& mark) {
  out_.resize(mark.size);
  stamp_ = mark.stamp;
  skipping_ = mark.skipping;
  skip_to_ = mark.skip_to;
}

}  // namespace weavelog
