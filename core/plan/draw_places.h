#pragma once
// Making a draw: where seeds and byes go by the published rules, the rest by lot.
//
// Lines of the seeds: ITF Pro Circuit Rulebook 2015, placement of seeds (16 and 32 lines); published draws of 128 lines of major championships;
// 64 lines by halving these; 8 and 256 lines by the same sections (our own). Byes: the same rulebook, (iii): to the seeds in descending order,
// thereafter so as to be equal in the sections of the draw. fixtures/published/draw_places.json has the values and their sources.

#include "core/plan/bracket.h"

namespace weavelog {

/// Seeds that are drawn by lot for lines of their own: seeds 3 and 4 for two lines, 5 to 8 for four, ...
struct SeedGroup {
  std::size_t first = 0, last = 0;   ///< seeds, from 1
  std::vector<std::size_t> lines{};  ///< from 0, from the top
};

/// The groups of a draw of 4, 8, ... 256 lines, highest seeds first; 32 seeds at most, one in four lines. Empty of other sizes.
[[nodiscard]] std::vector<SeedGroup> seed_groups(std::size_t lines);

/// How many seeds so many players may have: a power of two, at most one in three, two always (USTA Friend at Court 2010, Draw Regulations
/// II.A.2), and no more than there are lines for.
[[nodiscard]] std::size_t most_seeds(std::size_t players);

/// The draw of 4 to 256 entries, of which those with a seed are placed as seeds. Empty names are places of qualifiers. The same `lot` gives the
/// same draw. Faults: bad_input (too few or too many entries, a bye among them, somebody twice, seeds that are not 1, 2, 3, ..., more seeds
/// than there are lines for).
[[nodiscard]] Outcome<std::vector<BracketLine>> make_draw(std::vector<BracketLine> entries, std::uint64_t lot);

}  // namespace weavelog
