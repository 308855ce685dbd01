#pragma once
// Range-based set reconciliation: two sides find out what the other lacks with a few short messages, however
// much they have in common. The bytes (reconcile_wire.h) are those of the open negentropy protocol, version
// 1, so independent implementations can check them; how ranges are divided is each side's own choice.

#include <cstdint>
#include <set>
#include <span>
#include <vector>

#include "core/base/digest.h"
#include "core/base/outcome.h"
#include "sync/exchange/fingerprint.h"
#include "sync/exchange/reconcile_set.h"
#include "sync/exchange/reconcile_wire.h"

namespace weavelog {

/// One side of one reconciliation; make a new one for the next. No input or output, no clock, not
/// thread-safe. The side that calls initiate() learns both differences and says when it is over; the other
/// only answers.
class Reconciler {
 public:
  /// No message is longer than frame_limit bytes (0 = no limit, else at least 4096). Throws
  /// std::invalid_argument for a smaller limit.
  explicit Reconciler(ReconcileSet items, std::size_t frame_limit = 0);
  /// Items in any order; sorts them and removes doubles. Throws for a stamp of 2^64 - 1, too.
  explicit Reconciler(std::vector<ReconcileItem> items, std::size_t frame_limit = 0)
      : Reconciler(ReconcileSet(std::move(items)), frame_limit) {}

  /// The first message; makes this side the initiator.
  [[nodiscard]] Bytes initiate();

  struct Step {
    Bytes reply;               ///< to send back; empty (initiator only) = finished
    std::vector<Digest> have;  ///< ids that we hold and they don't (initiator only; each reported once)
    std::vector<Digest> need;  ///< ids that they hold and we don't (initiator only; each reported once)
  };
  /// Answers a message. A message of another version gets the version byte that we speak (responder) or a
  /// `newer` or `malformed` fault (initiator). Any other bad message is a `malformed` fault; this reconciler
  /// is then done. So is an initiator's run that goes on for 100,000 messages or reports 1,048,576 needed
  /// ids: ask for the whole set instead. Beside that, work and memory follow the sizes of the message and of
  /// our own set.
  [[nodiscard]] Outcome<Step> receive(ByteView message);

 private:
  struct Span {
    std::size_t begin;
    std::size_t end;
  };

  [[nodiscard]] std::size_t index_of(const RangeBound& bound, std::size_t from) const;
  [[nodiscard]] RangeBound bound_before(std::size_t index) const;
  [[nodiscard]] RangeFingerprint fingerprint_of(Span span) const;
  [[nodiscard]] std::vector<ReconcileItem> items_of(Span span) const;

  /// Each of these answers one range and returns the bound up to which it could: `upper`, or less for want of
  /// room.
  RangeBound describe(RangeWriter& out, const RangeBound& lower, const RangeBound& upper, Span span) const;
  RangeBound list(RangeWriter& out, const RangeBound& lower, const RangeBound& upper, Span span) const;
  [[nodiscard]] bool fits(const RangeWriter& out, std::size_t more) const;

  [[nodiscard]] bool same_ids(Span span, ByteView theirs) const;
  Outcome<> note_differences(Span span, ByteView theirs, Step& step);

  ReconcileSet items_;
  std::size_t frame_limit_;
  bool initiator_ = false;
  std::size_t received_ = 0;
  std::set<std::size_t> have_reported_;  // indexes of items; a frame limit can make the same range come twice
  std::set<Digest> need_reported_;
};

}  // namespace weavelog
