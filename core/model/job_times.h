#pragma once
// When a job reached what the numbers of the room ask for: its marks folded in order of their stamps. A part of ModelTables.

#include <optional>
#include <span>
#include <string>

#include "core/model/stage_now.h"

namespace weavelog {

/// Times are those that the marks' makers told, Unix milliseconds. A racket that is strung again counts when it was strung last.
struct JobTimes {
  EntityId machine;                        ///< on which it was put last, where that was said
  std::optional<std::int64_t> mounted_at;  ///< when
  std::optional<std::int64_t> strung_at;
  std::string strung_by;
  std::int64_t strung_count = 0;
  std::optional<std::int64_t> ready_at;
  std::optional<std::int64_t> collected_at;
  std::optional<std::int64_t> waiting_since;  ///< for an answer, now
  std::int64_t waited = 0;                    ///< for answers before, ms
  Stamp stamp;                                ///< of the newest mark that is in here
  bool operator==(const JobTimes&) const = default;

  /// Takes a mark in that is newer than all before.
  void take(const PlacedMark& placed);
};

/// In any order of marks the same answer.
[[nodiscard]] JobTimes job_times(std::span<const PlacedMark> marks);

}  // namespace weavelog
