#include "core/people/name_likeness.h"

#include <algorithm>
#include <array>
#include <bit>

#include "core/people/similarity.h"

namespace weavelog {
namespace {

/// Longer words than any name's are cut before they are compared.
constexpr std::size_t kMaxCompared = 64;
/// More words than any name has.
constexpr std::size_t kMaxWords = 12;

/// How many slips leave a word recognisable.
std::size_t slips_allowed(std::size_t length) {
  return length < 4 ? 0 : length < 8 ? 1 : 2;
}
/// From here on few other names are so near.
constexpr std::size_t kLongWord = 7;

bool nearly_spelled(std::string_view a, std::string_view b) {
  a = a.substr(0, kMaxCompared);
  b = b.substr(0, kMaxCompared);
  const std::size_t shorter = std::min(a.size(), b.size());
  const std::size_t slips = slips_allowed(shorter);
  if (slips == 0 || std::max(a.size(), b.size()) - shorter > slips) return a == b;
  return jaro_winkler(a, b) >= 0.8 && damerau_levenshtein(a, b) <= slips;
}

bool share_group(const NameWord& a, const NameWord& b) {
  return std::any_of(a.groups.begin(), a.groups.end(),
                     [&](std::uint16_t group) { return std::binary_search(b.groups.begin(), b.groups.end(), group); });
}

/// Consonants in Arabic or Hebrew letters: a final t may be silent, a y or w a vowel.
bool same_skeleton(const NameWord& a, const NameWord& b) {
  const std::string &x = a.skeleton, &y = b.skeleton;
  if (x.size() < 2 || y.size() < 2) return false;
  if (x == y) return true;
  const std::string &longer = x.size() > y.size() ? x : y, &shorter = x.size() > y.size() ? y : x;
  return shorter.size() >= 2 && longer.size() == shorter.size() + 1 && longer.starts_with(shorter) && (longer.back() == 't' || longer.back() == 'v');
}

bool is_initial(const NameWord& word) {
  return word.text.size() == 1;
}

/// One word against another where any of the kinds may come.
NameLevel word_level(const NameWord& a, const NameWord& b, bool given, bool unvowelled) {
  const NameLevel plain = compare_words(a, b, unvowelled);
  if (plain == NameLevel::same || plain == NameLevel::sound) return plain;
  if (share_group(a, b)) return given ? NameLevel::short_form : NameLevel::sound;
  if (given && (is_initial(a) || is_initial(b)) && a.text[0] == b.text[0]) return NameLevel::initial;
  return plain;
}

struct PartLikeness {
  NameLevel level = NameLevel::different;
  const NameWord* word = nullptr;  ///< of the second side: the rarest can't be known here, so the last that agreed
};

using Words = std::vector<NameWord>;

bool run_together_alike(const Words& a, const Words& b, bool& exact) {
  std::string x, y;
  for (const NameWord& word : a) x += word.text;
  for (const NameWord& word : b) y += word.text;
  exact = x == y;
  return exact || (std::min(x.size(), y.size()) >= 6 && nearly_spelled(x, y));
}

/// Family names with each other, or given names: the worst of the words that find a partner, "part" if some find none.
PartLikeness compare_parts(const Words& a, const Words& b, bool given, bool unvowelled) {
  if (a.size() == 1 && b.size() == 1) {
    const NameLevel level = word_level(a[0], b[0], given, unvowelled);
    return {level, level == NameLevel::different ? nullptr : &b[0]};
  }
  const Words& fewer = a.size() <= b.size() ? a : b;
  const Words& more = a.size() <= b.size() ? b : a;
  std::array<bool, kMaxWords> taken{};
  PartLikeness out{NameLevel::same, nullptr};
  std::size_t found = 0;
  for (std::size_t i = 0; i < std::min(fewer.size(), kMaxWords); ++i) {
    NameLevel best = NameLevel::different;
    std::size_t at = 0;
    for (std::size_t j = 0; j < std::min(more.size(), kMaxWords); ++j) {
      if (taken[j]) continue;
      const NameLevel level = word_level(fewer[i], more[j], given, unvowelled);
      if (level < best) best = level, at = j;
    }
    if (best == NameLevel::different) continue;
    taken[at] = true;
    ++found;
    out.level = std::max(out.level, best);
    out.word = &fewer == &b ? &fewer[i] : &more[at];
  }
  if (found == fewer.size() && fewer.size() == more.size()) return out;
  bool exact = false;
  if (fewer.size() != more.size() && run_together_alike(a, b, exact)) return {exact ? NameLevel::same : NameLevel::slip, &b.back()};
  if (found == 0) {
    // "J.-P." or "JP" for Jean-Pierre.
    const auto initials = [](const Words& words) {
      std::string text;
      for (const NameWord& word : words) text += word.text[0];
      return text;
    };
    if (given && more.size() >= 2 && fewer.size() == 1 && fewer[0].text == initials(more)) return {NameLevel::initial, &b.front()};
    return {};
  }
  if (found < fewer.size() && !given) return {NameLevel::part, out.word};
  if (found < fewer.size())
    return fewer.size() == more.size() || out.level > NameLevel::short_form ? PartLikeness{} : PartLikeness{NameLevel::part, out.word};
  return {out.level == NameLevel::initial ? NameLevel::initial : NameLevel::part, out.word};
}

NameLikeness compare_in_order(const Words& family_a, const Words& given_a, const Words& family_b, const Words& given_b, bool unvowelled) {
  NameLikeness out;
  out.said = true;
  const PartLikeness family = compare_parts(family_a, family_b, false, unvowelled);
  out.family = family.level;
  out.family_word = family.word;
  if (!given_a.empty() && !given_b.empty()) {
    const PartLikeness given = compare_parts(given_a, given_b, true, unvowelled);
    out.given_said = true;
    out.given = given.level;
    out.given_word = given.word;
  }
  return out;
}

/// The same whichever of two names comes first.
bool likelier(const NameLikeness& a, const NameLikeness& b) {
  return a.rank() != b.rank() ? a.rank() > b.rank() : a.said && a.family < b.family;
}

Words all_words(const NameKey& name) {
  Words out = name.family;
  out.insert(out.end(), name.given.begin(), name.given.end());
  return out;
}

bool same_words(const Words& a, const Words& b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const NameWord& x, const NameWord& y) { return x.text == y.text; });
}

/// The same words or letters, however they are divided into family and given name.
bool same_undivided(const NameKey& a, const NameKey& b) {
  for (const auto& x : a.joined)
    if (std::find(b.joined.begin(), b.joined.end(), x) != b.joined.end()) return true;
  if (a.family.size() + a.given.size() != b.family.size() + b.given.size() || a.family.size() + a.given.size() < 3) return false;
  const auto sorted = [](const NameKey& name) {
    std::vector<std::string_view> words;
    for (const auto* part : {&name.family, &name.given})
      for (const NameWord& word : *part) words.push_back(word.text);
    std::sort(words.begin(), words.end());
    return words;
  };
  return sorted(a) == sorted(b);
}

NameLikeness compare_one(const NameKey& a, const NameKey& b) {
  if (a.empty() || b.empty()) return {};
  const bool unvowelled = a.unvowelled || b.unvowelled;
  NameLikeness best = compare_in_order(a.family, a.given, b.family, b.given, unvowelled);
  if (best.family == NameLevel::same && best.given_said && best.given == NameLevel::same) return best;
  if (same_undivided(a, b)) {
    const bool both = !a.given.empty() || !b.given.empty();
    best.swapped = same_words(a.family, b.given) && !same_words(a.family, b.family);
    best.family = NameLevel::same;
    best.given_said = both;
    best.given = both ? NameLevel::same : NameLevel::different;
    best.family_word = b.family.empty() ? nullptr : &b.family.back();
    best.given_word = b.given.empty() ? nullptr : &b.given.back();
    return best;
  }
  // Lists swap family and given name; some have only one column for both.
  NameLikeness swapped;
  if (!a.given.empty() && !b.given.empty()) {
    // Whose columns are right is not known either.
    swapped = compare_in_order(a.given, a.family, b.family, b.given, unvowelled);
    const NameLikeness other = compare_in_order(a.family, a.given, b.given, b.family, unvowelled);
    if (likelier(other, swapped)) swapped = other;
  } else if (a.given.empty() != b.given.empty()) {
    const Words& whole = a.given.empty() ? a.family : b.family;
    if (whole.size() >= 2) {
      const NameKey& parted = a.given.empty() ? b : a;
      const PartLikeness all = compare_parts(whole, all_words(parted), true, unvowelled);
      if (all.level <= NameLevel::slip) {
        swapped.said = swapped.given_said = true;
        swapped.family = swapped.given = all.level == NameLevel::short_form ? NameLevel::sound : all.level;
        if (!b.given.empty()) swapped.family_word = &b.family.back(), swapped.given_word = &b.given.back();
      }
    }
  }
  if (swapped.said && likelier(swapped, best)) {
    best = swapped;
    best.swapped = true;
  }
  return best;
}

}  // namespace

int NameLikeness::rank() const {
  if (!said) return -100;
  constexpr std::array<int, kNameLevels> family_rank{20, 17, 14, 13, 9, 10, 0, -6};
  constexpr std::array<int, kNameLevels> given_rank{14, 12, 10, 8, 5, 7, 6, -5};
  return family_rank[static_cast<std::size_t>(family)] + (given_said ? given_rank[static_cast<std::size_t>(given)] : 0) - (alias ? 1 : 0);
}

NameLevel compare_words(const NameWord& a, const NameWord& b, bool unvowelled) {
  if (a.text == b.text) return NameLevel::same;
  if (a.sound == b.sound && a.sound.size() >= 2) return NameLevel::sound;
  if (unvowelled) return same_skeleton(a, b) ? NameLevel::sound : NameLevel::different;
  if (a.text.ends_with(b.text) ? without_joined_particle(a.text) == b.text : b.text.ends_with(a.text) && without_joined_particle(b.text) == a.text)
    return NameLevel::sound;
  const std::size_t shorter = std::min(a.text.size(), b.text.size());
  const auto changed = static_cast<std::size_t>(std::popcount(a.letters ^ b.letters));
  if (changed > 2 * slips_allowed(shorter) || !nearly_spelled(a.text, b.text)) return NameLevel::different;
  return shorter >= kLongWord ? NameLevel::slip : NameLevel::slip_short;
}

NameLikeness compare_names(const std::vector<NameKey>& a, const std::vector<NameKey>& b) {
  NameLikeness best;
  for (std::size_t i = 0; i < a.size(); ++i) {
    for (std::size_t j = 0; j < b.size(); ++j) {
      NameLikeness one = compare_one(a[i], b[j]);
      one.alias = i + j > 0;
      if (likelier(one, best)) best = one;
    }
  }
  return best;
}

}  // namespace weavelog
