#include "core/people/name_key.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/base/text.h"

namespace weavelog {
namespace {

// Words that lists leave out, move or join to the name at will.
constexpr auto kParticles = std::to_array<std::string_view>(
    {"af",  "al",    "av",  "bin",    "bint", "d",   "da",  "dal", "de",  "degli", "dei",
     "del", "della", "den", "der",    "des",  "di",  "do",  "dos", "du",  "e",     "el",
     "ibn", "jr",    "la",  "las",    "le",   "les", "los", "lo",  "mac", "mc",    "st",
     "ter", "the",   "van", "vander", "vom",  "von", "y",   "zu",  "zum", "zur"});

bool is_particle(std::string_view word) {
  return std::find(kParticles.begin(), kParticles.end(), word) != kParticles.end();
}

NameWord name_word(std::string_view word) {
  NameWord out{std::string(word), sound_of(word)};
  for (const char c : word) out.letters |= 1U << (static_cast<unsigned char>(c) & 31);
  return out;
}

std::vector<NameWord> words_without_particles(std::string_view key) {
  std::vector<NameWord> out;
  for (const auto word : words_of(key))
    if (!is_particle(word)) out.push_back(name_word(word));
  if (out.empty())
    for (const auto word : words_of(key)) out.push_back(name_word(word));
  return out;
}

std::string run_together(std::string_view key) {
  std::string out(key);
  out.erase(std::remove(out.begin(), out.end(), ' '), out.end());
  return out;
}

// In order: the first that fits at a place is taken. Longer spellings stand before their beginnings.
constexpr auto kSpellings = std::to_array<std::pair<std::string_view, std::string_view>>(
    {{"shch", "s"}, {"tsch", "s"}, {"sch", "s"}, {"sh", "s"}, {"sz", "s"}, {"ch", "s"}, {"cz", "s"},
     {"zh", "z"},   {"kh", "h"},   {"ph", "f"},  {"th", "t"}, {"dj", "d"}, {"ck", "k"}, {"ts", "z"},
     {"tz", "z"},   {"ks", "x"},   {"ae", "a"},  {"oe", "o"}, {"ue", "u"}, {"aa", "a"}, {"ou", "u"},
     {"y", "i"},    {"j", "i"},    {"w", "v"},   {"q", "k"},  {"c", "k"}});

}  // namespace

std::string sound_of(std::string_view word) {
  std::string out;
  const auto put = [&out](char c) {
    if (out.empty() || out.back() != c) out.push_back(c);
  };
  while (!word.empty()) {
    const auto found = std::find_if(kSpellings.begin(), kSpellings.end(),
                                    [&](const auto& spelling) { return word.starts_with(spelling.first); });
    if (found == kSpellings.end()) {
      put(word.front());
      word.remove_prefix(1);
    } else {
      for (const char c : found->second) put(c);
      word.remove_prefix(found->first.size());
    }
  }
  return out;
}

NameKey name_key(std::string_view family, std::string_view given, std::string_view native) {
  NameKey out;
  const std::string family_key = search_key(family);
  const std::string given_key = search_key(given);
  out.family = words_without_particles(family_key);
  out.given = words_without_particles(given_key);
  for (const auto* part : {&out.family, &out.given})
    for (const auto& word : *part) out.sorted_words.push_back(word.text);
  std::sort(out.sorted_words.begin(), out.sorted_words.end());

  for (std::string form : {run_together(family_key + given_key), run_together(given_key + family_key),
                           run_together(search_key(native))}) {
    if (!form.empty() && std::find(out.joined.begin(), out.joined.end(), form) == out.joined.end())
      out.joined.push_back(std::move(form));
  }
  return out;
}

}  // namespace weavelog
