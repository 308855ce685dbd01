#include "core/plan/draw_places.h"

#include <algorithm>
#include <array>
#include <bit>
#include <set>

#include "core/base/text.h"
#include "core/plan/chance.h"

namespace weavelog {
namespace {

/// Of 128 lines, from 1. Odd: the first line of a section, even: the last, so that other sizes follow by scaling.
constexpr std::array<std::size_t, 32> kLines{1,  128, 33, 96, 32, 64, 65, 97, 17,  49,  80, 112, 16, 48, 81, 113,
                                             9,  24,  41, 56, 73, 88, 105, 120, 8, 25, 40, 57, 72, 89, 104, 121};
constexpr std::array<std::size_t, 9> kGroupEnds{1, 2, 4, 8, 12, 16, 24, 32, 0};

std::size_t scaled(std::size_t line, std::size_t lines) {
  return line % 2 == 1 ? (line - 1) * lines / 128 : line * lines / 128 - 1;
}

template <class T>
void shuffle(std::vector<T>& all, Chance& chance) {
  for (std::size_t left = all.size(); left > 1; --left) std::swap(all[left - 1], all[chance.below(left)]);
}

Outcome<> check(const std::vector<BracketLine>& entries) {
  if (entries.size() < 4 || entries.size() > 256)
    return fail(FaultCode::bad_input, "a draw has 4 to 256 entries, and here are " + std::to_string(entries.size()), {},
                "add some, or divide them into several draws");
  std::set<std::string> people;
  for (std::size_t at = 0; at < entries.size(); ++at) {
    const std::string place = "entry " + std::to_string(at + 1);
    if (entries[at].bye) return fail(FaultCode::bad_input, "a bye is no entry", place, "leave it out: byes are placed with the draw");
    for (const std::string& one : people_of(entries[at]))
      if (!people.insert(search_key(one)).second) return fail(FaultCode::bad_input, one + " is entered twice", place, "leave one of the two out");
  }
  return {};
}

/// First-round pairs that get a bye when the seeds have theirs: each time from where there are fewest, half by half down to the pair.
std::vector<std::size_t> spread_byes(std::vector<bool> has_bye, std::size_t count, Chance& chance) {
  std::vector<std::size_t> out;
  const std::size_t pairs = has_bye.size();
  for (; count > 0; --count) {
    std::size_t from = 0, size = pairs;
    while (size > 1) {
      size /= 2;
      const auto byes = [&](std::size_t first) {
        return std::count(has_bye.begin() + static_cast<std::ptrdiff_t>(first), has_bye.begin() + static_cast<std::ptrdiff_t>(first + size), true);
      };
      const auto upper = byes(from), lower = byes(from + size);
      if (lower < upper || (lower == upper && chance.below(2) == 1)) from += size;
    }
    has_bye[from] = true;
    out.push_back(from);
  }
  return out;
}

}  // namespace

std::vector<SeedGroup> seed_groups(std::size_t lines) {
  std::vector<SeedGroup> out;
  if (lines < 4 || lines > 256 || !std::has_single_bit(lines)) return out;
  std::size_t first = 1;
  for (const std::size_t last : kGroupEnds) {
    if (last == 0 || last > std::max<std::size_t>(lines / 4, 2)) break;
    SeedGroup group{first, last};
    for (std::size_t seed = first; seed <= last; ++seed) group.lines.push_back(scaled(kLines[seed - 1], lines));
    std::sort(group.lines.begin(), group.lines.end());
    out.push_back(std::move(group));
    first = last + 1;
  }
  return out;
}

std::size_t most_seeds(std::size_t players) {
  return std::min<std::size_t>(32, std::max<std::size_t>(2, std::bit_floor(players / 3)));
}

Outcome<std::vector<BracketLine>> make_draw(std::vector<BracketLine> entries, std::uint64_t lot) {
  if (auto checked = check(entries); !checked) return fail(checked.error());
  const std::size_t lines = std::bit_ceil(entries.size()), byes = lines - entries.size();
  std::vector<BracketLine> seeds, others;
  for (BracketLine& entry : entries) (entry.seed ? seeds : others).push_back(std::move(entry));
  std::sort(seeds.begin(), seeds.end(), [](const auto& a, const auto& b) { return *a.seed < *b.seed; });
  const auto groups = seed_groups(lines);
  for (std::size_t at = 0; at < seeds.size(); ++at)
    if (*seeds[at].seed != static_cast<std::int64_t>(at) + 1)
      return fail(FaultCode::bad_input, "seeds have to be 1, 2, 3, ..., each once", "seed " + std::to_string(*seeds[at].seed), "number them anew");
  if (!seeds.empty() && seeds.size() > groups.back().last)
    return fail(FaultCode::bad_input,
                "a draw of " + std::to_string(lines) + " lines has places for " + std::to_string(groups.back().last) + " seeds, and here are " +
                    std::to_string(seeds.size()),
                {}, "leave the others without a seed");
  Chance chance(lot);
  std::vector<BracketLine> out(lines);
  std::vector<bool> taken(lines), has_bye(lines / 2);
  std::vector<std::size_t> line_of(seeds.size());
  for (const SeedGroup& group : groups) {
    auto free = group.lines;
    shuffle(free, chance);
    for (std::size_t seed = group.first; seed <= std::min(group.last, seeds.size()); ++seed) line_of[seed - 1] = free[seed - group.first];
  }
  std::size_t left = byes;
  const auto put_bye = [&](std::size_t line) {
    out[line].bye = true;
    taken[line] = true;
    has_bye[line / 2] = true;
    --left;
  };
  for (std::size_t at = 0; at < seeds.size(); ++at) {
    out[line_of[at]] = std::move(seeds[at]);
    taken[line_of[at]] = true;
    if (left > 0) put_bye(line_of[at] ^ 1);
  }
  for (const std::size_t pair : spread_byes(has_bye, left, chance))
    // On the outer line of its half, as beside the seeds there: the player stands above in the upper half, below in the lower.
    put_bye(2 * pair + (pair < lines / 4 ? 1 : 0));
  shuffle(others, chance);
  std::size_t next = 0;
  for (std::size_t line = 0; line < lines; ++line)
    if (!taken[line]) out[line] = std::move(others[next++]);
  return out;
}

}  // namespace weavelog
