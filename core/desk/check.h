#pragma once
// The check of a strung racket: what is in order goes on, what is not goes back to be done again, with a reason, and is counted.

#include <span>
#include <string>
#include <vector>

#include "core/base/language.h"
#include "core/desk/player_record.h"

namespace weavelog {

/// One item of a check.
struct CheckedItem {
  std::string name;  ///< as in core/desk/work_list.h
  bool ok = true;
  bool operator==(const CheckedItem&) const = default;
};

struct CheckFound {
  std::vector<CheckedItem> items;
  std::string reason;           ///< needed if an item is not in order
  Stage back_to = Stage::none;  ///< and so is where the racket goes
  std::string by;
  UnixMs at = 0;
};

/// Stores what the check found and moves the racket on, in one action: to `checked` if all is in order (from there on it stays where it is),
/// otherwise back to `back_to` with the reason. Faults: not_found; bad_input (nothing was looked at, an item twice, no reason, no stage to go
/// back to, or either where all is in order); refused (not strung yet, collected or put aside; the frame is in doubt); conflict (its
/// stage clashes).
[[nodiscard]] Outcome<Draft> check_racket(const PlayerRecord& record, const EntityId& job, const CheckFound& found);

/// Where a racket at that stage may be sent back to, the usual one first; none where it can't be checked.
[[nodiscard]] std::span<const Stage> redo_stages(Stage now);

/// A job's checks, newest first.
[[nodiscard]] std::vector<const Loaded<CheckResult>*> checks_of(const PlayerRecord& record, const EntityId& job);
/// What a check holds of its items, and how it is held.
[[nodiscard]] std::vector<CheckedItem> checked_items(const CheckResult& check);
[[nodiscard]] std::string join_items(std::span<const CheckedItem> items);

/// "not in order: knots tight, no clamp marks (a knot slipped)"; "all in order".
[[nodiscard]] std::string check_words(const Language& language, const CheckResult& check);

}  // namespace weavelog
