#pragma once
// The quarantine as one intake sees it: what of a batch is put aside, with a reason and within bounds, and what comes out again once it is applied.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/clock.h"
#include "core/log/batch.h"
#include "core/store/database.h"

namespace weavelog {

inline constexpr const char* kForked = "another entry stands under this number here: the device was copied or its log was forged (fork)";
inline constexpr const char* kUnproved = "the author's signature does not cover this entry after those held here (forged, or a fork)";
inline constexpr const char* kBranchUnproved =
    "another entry stands under this number here, and its author's signature does not cover this one (forged, or a fork)";
inline constexpr const char* kBranchBeyond =
    "it goes on from another entry than the one that stands here: the device was copied or its log was forged (fork)";
inline constexpr const char* kOtherKind = "a book of one kind is offered as another";
inline constexpr const char* kNotSentBefore = "it replaces a value that its sender should have sent before";
inline constexpr const char* kNotAfter = "its time stamp is not after what it replaces";

/// What is put aside for another reason than kUnproved, kBranchUnproved, kBranchBeyond and kOtherKind is proved to be its author's.
[[nodiscard]] bool proves_author(std::string_view reason);

/// For one batch, whose entries are meant by their places in it; within the transaction that takes it in.
class Aside {
 public:
  /// `authors`: the ids of the batch's, which may come later. All must outlive it.
  Aside(Connection& db, const Batch& batch, const std::vector<AuthorId>& authors, const WallClock& clock);

  /// Nothing lay there before this batch.
  [[nodiscard]] bool empty() const { return empty_; }
  /// The very entry was put aside before. `proved`: and its author had signed it. Who else said it, perhaps before its author did, does not count.
  [[nodiscard]] bool holds(std::size_t i, bool proved);
  /// False if it was neither kept nor is it to be counted: what comes again need not fit. Noise beyond its bounds is counted only. Throws Abort when
  /// there is no room for something new, because then the exchange has to end.
  bool put(std::size_t i, const std::string& reason, bool comes_again);
  /// It was applied.
  void take_out(std::size_t i);

 private:
  void measure();
  /// Book, author, number and body.
  void bind_entry(SQLite::Statement& to, int first, std::size_t i) const;

  Connection& db_;
  const Batch& batch_;
  const std::vector<AuthorId>& authors_;
  const WallClock& clock_;
  bool empty_ = true;
  std::optional<std::int64_t> held_;  ///< in bytes and rows, once it was asked
  std::int64_t unproved_ = 0;         ///< of that, what nobody proved
};

}  // namespace weavelog
