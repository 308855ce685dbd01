#pragma once
// Numbers on tags: which are in use, which two rackets carry at once, and another number for a racket.

#include <set>
#include <span>
#include <string>
#include <vector>

#include "core/desk/player_record.h"
#include "core/model/queries.h"

namespace weavelog {

/// What a person types and a tag has room for.
inline constexpr std::int64_t kHighestTyped = 99'999;

/// The next free number at an event: one more than the highest that was given out, or, where nobody could type that any more, the lowest that no
/// racket carries that was not collected yet. `given`: numbers that are given out in the same go. More than kHighestTyped where none is left,
/// which check_new_tags() refuses.
[[nodiscard]] std::int64_t next_tag(const Ledger& ledger, const BookId& event, const std::set<std::int64_t>& given = {});

/// The rackets of an event that carry the number and were not collected yet, newest first; those put aside among them.
[[nodiscard]] std::vector<JobRow> rackets_with_tag(const Ledger& ledger, const BookId& event, std::int64_t number);

/// Numbers that more than one racket in the room (received to ready) carries: two desks gave them out while apart.
[[nodiscard]] std::set<std::int64_t> doubled_tags(const Ledger& ledger, const BookId& event);

/// Numbers for new tags. Faults: bad_input (not from 1 to kHighestTyped, or one of them twice), conflict (a racket has one of them already; it is
/// named).
[[nodiscard]] Outcome<> check_new_tags(const Ledger& ledger, const BookId& event, std::span<const std::int64_t> numbers);

/// Puts another number on a racket, as an edit of its player's book that can be undone. Nothing to do: an empty draft. Faults: not_found (no such
/// job); refused (the racket was collected); those of check_new_tags().
[[nodiscard]] Outcome<Draft> give_tag(const Ledger& ledger, const PlayerRecord& record, const EntityId& job, std::int64_t number);

/// "7, Kova Mira, racket 2"; without a number the job's.
[[nodiscard]] std::string tagged_racket_words(const JobRow& row);

}  // namespace weavelog
