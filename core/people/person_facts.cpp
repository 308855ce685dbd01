#include "core/people/person_facts.h"

#include <algorithm>
#include <string_view>

#include "core/base/text.h"
#include "core/people/country.h"

namespace weavelog {
namespace {

constexpr std::size_t kMaxNames = 8;
constexpr std::size_t kMaxThings = 16;
/// Longer words are looked up by their beginning.
constexpr std::size_t kMaxKeyed = 16;

std::vector<std::string> folded(const std::vector<std::string>& things) {
  std::vector<std::string> out;
  for (const std::string& thing : things) {
    if (out.size() == kMaxThings) break;
    std::string key = search_key(thing);
    if (!key.empty()) out.push_back(std::move(key));
  }
  std::sort(out.begin(), out.end());
  out.erase(std::unique(out.begin(), out.end()), out.end());
  return out;
}

/// FNV-1a, 64 bits.
class Hash {
 public:
  explicit Hash(char kind) { add(kind); }
  Hash& add(std::string_view text) {
    for (const char c : text) add(c);
    add('\n');
    return *this;
  }
  Hash& add(std::int64_t number) { return add(std::string_view(std::to_string(number))); }
  [[nodiscard]] std::uint64_t value() const { return value_; }

 private:
  void add(char c) { value_ = (value_ ^ static_cast<unsigned char>(c)) * 1099511628211U; }
  std::uint64_t value_ = 14695981039346656037U;
};

void add_family_keys(const NameWord& word, std::vector<std::uint64_t>& out) {
  out.push_back(Hash('f').add(word.sound).value());
  if (word.skeleton.size() >= 3) out.push_back(Hash('c').add(word.skeleton).value());
  for (const std::uint16_t group : word.groups) out.push_back(Hash('g').add(std::int64_t{group}).value());
  const std::string_view text = std::string_view(word.text).substr(0, kMaxKeyed);
  if (const auto bare = without_joined_particle(word.text); bare != word.text) out.push_back(Hash('f').add(sound_of(bare)).value());
  if (text.size() < 4) return;
  out.push_back(Hash('d').add(text).value());
  for (std::size_t i = 0; i < text.size(); ++i)
    out.push_back(Hash('d').add(std::string(text.substr(0, i)) + std::string(text.substr(i + 1))).value());
}

void add_given_keys(const NameWord& word, const PersonKey& person, std::vector<std::uint64_t>& out) {
  if (word.text.size() < 2) return;
  const auto with = [&](std::string_view name) {
    if (!person.country.empty()) out.push_back(Hash('G').add(name).add(person.country).value());
    if (person.birth_year) out.push_back(Hash('Y').add(name).add(*person.birth_year).value());
  };
  with(word.sound);
  for (const std::uint16_t group : word.groups) with("#" + std::to_string(group));
}

}  // namespace

PersonFacts facts_of(const Person& person) {
  return {person.family_name, person.given_name, person.native_name, person.country, person.birth_year, person.hand, person.tour_number};
}

PersonFacts facts_of(const EntryListItem& item) {
  return {item.family_name, item.given_name, item.native_name, item.country, item.birth_year, item.hand, item.tour_number};
}

PersonKey person_key(const PersonFacts& facts) {
  PersonKey out;
  const auto add = [&out](NameKey key) {
    if (!key.empty() && out.names.size() < kMaxNames) out.names.push_back(std::move(key));
  };
  add(name_key(facts.family, facts.given));
  if (!facts.native.empty()) add(whole_name_key(facts.native));
  for (const std::string& alias : facts.also_known_as) add(alias_key(alias, facts.given));
  out.country = country_key(trimmed(facts.country));
  out.birth_year = facts.birth_year;
  out.hand = facts.hand;
  out.tour_number = search_key(facts.tour_number);
  out.tour_number.erase(std::remove(out.tour_number.begin(), out.tour_number.end(), ' '), out.tour_number.end());
  out.rackets = folded(facts.rackets);
  out.strings = folded(facts.strings);
  return out;
}

std::vector<std::uint64_t> blocking_keys(const PersonKey& person, bool asked) {
  std::vector<std::uint64_t> out;
  for (const NameKey& name : person.names) {
    for (const NameWord& word : name.family) {
      add_family_keys(word, out);
      if (asked) out.push_back(Hash('s').add(word.sound).value());
    }
    for (const NameWord& word : name.given) {
      add_given_keys(word, person, out);
      // Looked for by the family name alone: those whose given name it is have theirs in the other column.
      out.push_back(Hash(asked ? 'f' : 's').add(word.sound).value());
    }
    for (const auto& form : name.joined) out.push_back(Hash('j').add(form).value());
  }
  if (person.birth_year && !person.country.empty()) out.push_back(Hash('y').add(person.country).add(*person.birth_year).value());
  if (!person.tour_number.empty()) out.push_back(Hash('n').add(person.tour_number).value());
  std::sort(out.begin(), out.end());
  out.erase(std::unique(out.begin(), out.end()), out.end());
  return out;
}

}  // namespace weavelog
