#include "sync/exchange/reconcile.h"

#include <algorithm>
#include <stdexcept>
#include <string>
#include <tuple>

namespace weavelog {
namespace {

constexpr std::size_t kIdBytes = std::tuple_size_v<Digest>;
// More cost more bytes a round, fewer more rounds: with twelve, ten differences among a million take three rounds.
constexpr std::size_t kBuckets = 12;
/// Below this, the ids themselves cost about as much as another round of fingerprints would.
constexpr std::size_t kListBelow = 2 * kBuckets;
constexpr std::size_t kLeastFrame = 4096;
constexpr std::size_t kMostMessages = 100'000;
constexpr std::size_t kMostNeeded = std::size_t{1} << 20;
/// A skip and the head of an id list, with its count.
constexpr std::size_t kMostListHead = kMostSkipAndFingerprint + 10;

const char* const kWhere = "reconciliation";
const char* const kAgain = "exchange again; if it happens again, update both devices";

/// The ids of an id list, sorted, so that membership is a binary search.
std::vector<Digest> sorted_ids(ByteView bytes) {
  std::vector<Digest> ids(bytes.size() / kIdBytes);
  for (std::size_t i = 0; i < ids.size(); ++i) {
    const ByteView id = bytes.subspan(i * kIdBytes, kIdBytes);
    std::copy(id.begin(), id.end(), ids[i].begin());
  }
  std::sort(ids.begin(), ids.end());
  return ids;
}

/// Checks the whole message, so that nothing of a bad one is acted on; the bound up to which it asks
/// anything.
Outcome<RangeBound> end_of_questions(ByteView message) {
  RangeBound end{};
  for (RangeReader ranges(message); !ranges.at_end();) {
    const auto range = ranges.next();
    if (!range) return fail(range.error());
    if (range->mode != RangeMode::skip) end = range->upper;
  }
  return end;
}

}  // namespace

Reconciler::Reconciler(ReconcileSet items, std::size_t frame_limit) : items_(std::move(items)), frame_limit_(frame_limit) {
  if (frame_limit_ != 0 && frame_limit_ < kLeastFrame) {
    throw std::invalid_argument("Reconciler: a frame limit under 4096 bytes");
  }
}

Bytes Reconciler::initiate() {
  initiator_ = true;
  received_ = 0;
  have_reported_.clear();
  need_reported_.clear();
  RangeWriter out;
  // Fewer than kListBelow ids or kBuckets fingerprints: under kLeastFrame, so this always says everything.
  describe(out, RangeBound{}, kInfinity, {0, items_.size()});
  return out.take();
}

Outcome<Reconciler::Step> Reconciler::receive(ByteView message) {
  if (message.empty()) return fail(FaultCode::malformed, "an empty message", kWhere, kAgain);
  if (message[0] != kReconcileVersion) {
    const bool some_version = (message[0] & 0xf0) == (kReconcileVersion & 0xf0);
    if (some_version && !initiator_) return Step{{kReconcileVersion}, {}, {}};
    const bool newer = some_version && message[0] > kReconcileVersion;
    return fail(newer ? FaultCode::newer : FaultCode::malformed,
                "the first byte is " + std::to_string(message[0]) + ", not that of version 1", kWhere,
                newer ? "update this device" : kAgain);
  }
  if (initiator_ && ++received_ > kMostMessages) {
    return fail(FaultCode::malformed, "it does not come to an end", kWhere, kAgain);
  }
  const auto end = end_of_questions(message);
  if (!end) return fail(end.error());

  Step step;
  RangeWriter out;
  RangeBound lower{};
  std::size_t begin = 0;
  for (RangeReader ranges(message); !ranges.at_end();) {
    const auto range = ranges.next();
    if (!range) return fail(range.error());
    const RangeBound& upper = range->upper;
    const Span span{begin, index_of(upper, begin)};
    RangeBound done = upper;
    if (range->mode == RangeMode::fingerprint) {
      const RangeFingerprint ours = fingerprint_of(span);
      if (std::equal(ours.begin(), ours.end(), range->payload.begin())) {
        out.skip(upper);
      } else {
        done = describe(out, lower, upper, span);
      }
    } else if (range->mode == RangeMode::id_list && initiator_) {
      if (auto noted = note_differences(span, range->payload, step); !noted) return fail(noted.error());
      out.skip(upper);
    } else if (range->mode == RangeMode::id_list && !same_ids(span, range->payload)) {
      done = list(out, lower, upper, span);
    } else {
      out.skip(upper);
    }
    if (done != upper) {
      // The frame is full. One fingerprint over all that is still asked makes the other side ask for it
      // again.
      const std::size_t from = index_of(done, begin);
      out.fingerprint(*end, fingerprint_of({from, index_of(*end, from)}));
      break;
    }
    lower = upper;
    begin = span.end;
  }
  if (!initiator_ || !out.only_skips()) step.reply = out.take();
  return step;
}

std::size_t Reconciler::index_of(const RangeBound& bound, std::size_t from) const {
  return std::max(from, items_.lower_bound(bound));
}

/// The shortest bound between the items index - 1 and index.
RangeBound Reconciler::bound_before(std::size_t index) const {
  const ReconcileItem& last = items_.at(index - 1);
  const ReconcileItem& next = items_.at(index);
  RangeBound bound{next.stamp, {}};
  if (last.stamp == next.stamp) {
    const auto differing = std::mismatch(last.id.begin(), last.id.end(), next.id.begin()).second;
    std::copy(next.id.begin(), differing + 1, bound.id.begin());
  }
  return bound;
}

RangeFingerprint Reconciler::fingerprint_of(Span span) const { return items_.fingerprint(span.begin, span.end); }

std::vector<ReconcileItem> Reconciler::items_of(Span span) const {
  std::vector<ReconcileItem> out;
  for (std::size_t i = span.begin; i < span.end; ++i) out.push_back(items_.at(i));
  return out;
}

bool Reconciler::fits(const RangeWriter& out, std::size_t more) const {
  return frame_limit_ == 0 || out.size() + more + kMostSkipAndFingerprint <= frame_limit_;
}

RangeBound Reconciler::describe(RangeWriter& out, const RangeBound& lower, const RangeBound& upper,
                                Span span) const {
  const std::size_t count = span.end - span.begin;
  if (count < kListBelow) return list(out, lower, upper, span);
  const auto mark = out.mark();
  std::size_t begin = span.begin;
  for (std::size_t i = 1; i <= kBuckets; ++i) {
    const std::size_t end = span.begin + count / kBuckets * i + count % kBuckets * i / kBuckets;
    out.fingerprint(i == kBuckets ? upper : bound_before(end), fingerprint_of({begin, end}));
    begin = end;
  }
  if (fits(out, 0)) return upper;
  out.rewind(mark);
  return lower;
}

RangeBound Reconciler::list(RangeWriter& out, const RangeBound& lower, const RangeBound& upper,
                            Span span) const {
  const std::size_t count = span.end - span.begin;
  if (fits(out, kMostListHead + count * kIdBytes)) {
    out.id_list(upper, items_of(span));
    return upper;
  }
  if (!fits(out, kMostListHead + kIdBytes)) return lower;
  const std::size_t room = frame_limit_ - out.size() - kMostSkipAndFingerprint - kMostListHead;
  const Span first{span.begin, span.begin + room / kIdBytes};
  const RangeBound cut = bound_before(first.end);
  out.id_list(cut, items_of(first));
  return cut;
}

bool Reconciler::same_ids(Span span, ByteView theirs) const {
  const auto ours = items_of(span);
  if (theirs.size() != ours.size() * kIdBytes) return false;
  const std::vector<Digest> ids = sorted_ids(theirs);
  return std::all_of(ours.begin(), ours.end(), [&](const ReconcileItem& item) {
    return std::binary_search(ids.begin(), ids.end(), item.id);
  });
}

Outcome<> Reconciler::note_differences(Span span, ByteView theirs, Step& step) {
  const std::vector<Digest> ids = sorted_ids(theirs);
  std::vector<bool> shared(ids.size(), false);
  for (std::size_t i = span.begin; i < span.end; ++i) {
    const Digest& id = items_.at(i).id;
    const auto [first, last] = std::equal_range(ids.begin(), ids.end(), id);
    for (auto same = first; same != last; ++same) shared[static_cast<std::size_t>(same - ids.begin())] = true;
    if (first == last && have_reported_.insert(i).second) step.have.push_back(id);
  }
  for (std::size_t i = 0; i < ids.size(); ++i) {
    if (shared[i] || need_reported_.count(ids[i]) != 0) continue;
    if (need_reported_.size() == kMostNeeded) {
      return fail(FaultCode::malformed, "the other side names over a million ids that are unknown here",
                  kWhere, "exchange the whole set");
    }
    need_reported_.insert(ids[i]);
    step.need.push_back(ids[i]);
  }
  return {};
}

}  // namespace weavelog
