#include "core/people/name_key.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/base/text.h"
#include "core/people/name_groups.h"

namespace weavelog {
namespace {

// Words that lists leave out, move or join to the name at will.
constexpr auto kParticles = std::to_array<std::string_view>(
    {"abu", "af",    "al",  "av",  "bar", "ben", "bin",   "bint",   "d",      "da",  "dal", "dalla", "das",   "de",  "degli", "dei",
     "del", "della", "den", "der", "des", "di",  "do",    "dos",    "du",     "e",   "el",  "het",   "ibn",   "ii",  "iii",   "jr",
     "la",  "las",   "le",  "les", "lo",  "los", "mac",   "mc",     "of",     "op",  "s",   "saint", "santa", "sr",  "st",    "t",
     "te",  "ten",   "ter", "the", "und", "van", "vande", "vander", "vanden", "vom", "von", "y",     "zu",    "zum", "zur"});
// Those that are also written together with the name, longest first.
constexpr auto kJoinedParticles =
    std::to_array<std::string_view>({"vander", "vanden", "della", "vande", "dalla", "van", "von", "del", "al", "el", "di", "de", "mc"});

bool is_particle(std::string_view word) {
  return std::find(kParticles.begin(), kParticles.end(), word) != kParticles.end();
}

enum class Part { family, given };

NameWord name_word(std::string_view word, Part part) {
  NameWord out;
  out.text = word;
  out.sound = sound_of(word);
  out.skeleton = skeleton_of(out.sound);
  for (const char c : word) out.letters |= 1U << (static_cast<unsigned char>(c) & 31);
  out.groups = part == Part::family ? family_spellings().of(word) : given_short_forms().of(word);
  return out;
}

std::vector<NameWord> words_without_particles(std::string_view key, Part part) {
  std::vector<NameWord> out;
  const auto words = words_of(key);
  for (const auto word : words)
    if (!is_particle(word)) out.push_back(name_word(word, part));
  if (out.empty())
    for (const auto word : words) out.push_back(name_word(word, part));
  return out;
}

std::string run_together(std::string_view key) {
  std::string out(key);
  out.erase(std::remove(out.begin(), out.end(), ' '), out.end());
  return out;
}

/// Letters of Hebrew or Arabic: U+0580 to U+06FF.
bool leaves_vowels_out(std::string_view text) {
  return std::any_of(text.begin(), text.end(), [](char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte >= 0xD6 && byte <= 0xDB;
  });
}

/// Greek eta as passports have it (ELOT 743: i), where search keys go by the letter.
std::string with_passport_letters(std::string_view text) {
  static constexpr auto kEtas = std::to_array<std::pair<std::string_view, std::string_view>>({{"η", "ι"}, {"ή", "ι"}, {"Η", "Ι"}, {"Ή", "Ι"}});
  std::string out(text);
  for (const auto& [eta, iota] : kEtas)
    for (std::size_t at = out.find(eta); at != std::string::npos; at = out.find(eta, at + iota.size())) out.replace(at, eta.size(), iota);
  return out;
}

std::string name_search_key(std::string_view text) {
  return search_key(with_passport_letters(text));
}

// In order: the first that fits at a place is taken. Longer spellings stand before their beginnings.
constexpr auto kSpellings = std::to_array<std::pair<std::string_view, std::string_view>>(
    {{"shch", "s"}, {"tsch", "s"}, {"sch", "s"}, {"eau", "o"}, {"aie", "aie"}, {"sh", "s"}, {"sz", "s"}, {"ch", "s"}, {"cz", "s"},  {"cs", "s"},
     {"hs", "x"},   {"zh", "z"},   {"rz", "z"},  {"kh", "h"},  {"gh", "g"},    {"ph", "f"}, {"th", "t"}, {"dt", "t"}, {"dj", "d"},  {"ck", "k"},
     {"ts", "z"},   {"tz", "z"},   {"ks", "x"},  {"ae", "a"},  {"oe", "o"},    {"ue", "u"}, {"aa", "a"}, {"ou", "u"}, {"ei", "ai"}, {"ey", "ai"},
     {"ej", "ai"},  {"ay", "ai"},  {"ie", "i"},  {"y", "i"},   {"j", "i"},     {"w", "v"},  {"q", "k"},  {"c", "k"}});

NameKey key_of(std::string_view family_key, std::string_view given_key) {
  NameKey out;
  out.family = words_without_particles(family_key, Part::family);
  out.given = words_without_particles(given_key, Part::given);
  const std::string family = run_together(family_key), given = run_together(given_key);
  for (std::string form : {family + given, given + family})
    if (!form.empty() && std::find(out.joined.begin(), out.joined.end(), form) == out.joined.end()) out.joined.push_back(std::move(form));
  return out;
}

}  // namespace

std::string sound_of(std::string_view word) {
  std::string out;
  const auto put = [&out](char c) {
    if (out.empty() || out.back() != c) out.push_back(c);
  };
  while (!word.empty()) {
    const auto found = std::find_if(kSpellings.begin(), kSpellings.end(), [&](const auto& spelling) { return word.starts_with(spelling.first); });
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

std::string_view without_joined_particle(std::string_view word) {
  for (const auto particle : kJoinedParticles)
    if (word.starts_with(particle) && word.size() >= particle.size() + 4) return word.substr(particle.size());
  return word;
}

std::string skeleton_of(std::string_view sound) {
  std::string out;
  for (const char c : sound)
    if (std::string_view("aeiouh").find(c) == std::string_view::npos && (out.empty() || out.back() != c)) out.push_back(c);
  return out;
}

NameKey name_key(std::string_view family, std::string_view given) {
  NameKey out = key_of(name_search_key(family), name_search_key(given));
  out.unvowelled = leaves_vowels_out(family) || leaves_vowels_out(given);
  if (out.unvowelled) {  // the article is part of the word there
    for (NameWord& word : out.family) {
      const std::string bare(without_joined_particle(word.text));
      if (bare != word.text) word = name_word(bare, Part::family);
    }
  }
  return out;
}

NameKey whole_name_key(std::string_view name) {
  if (const auto comma = name.find(','); comma != std::string_view::npos) return name_key(name.substr(0, comma), name.substr(comma + 1));
  name = trimmed(name);
  const std::string key = name_search_key(name);
  const bool spaced = name.find(' ') != std::string_view::npos;
  if (spaced) {
    const auto space = name.rfind(' ');
    return name_key(name.substr(space + 1), name.substr(0, space));
  }
  const auto space = std::min(key.find(' '), key.size());
  NameKey out = key_of(key.substr(0, space), space < key.size() ? std::string_view(key).substr(space + 1) : std::string_view());
  out.unvowelled = leaves_vowels_out(name);
  return out;
}

NameKey alias_key(std::string_view alias, std::string_view given) {
  const auto comma = alias.find(',');
  return comma == std::string_view::npos ? name_key(alias, given) : name_key(alias.substr(0, comma), alias.substr(comma + 1));
}

}  // namespace weavelog
