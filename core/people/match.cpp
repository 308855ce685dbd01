#include "core/people/match.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <string_view>
#include <unordered_map>

#include "core/base/text.h"
#include "core/people/country.h"
#include "core/people/evidence.h"
#include "core/people/name_key.h"
#include "core/people/similarity.h"

namespace weavelog {
namespace {

// Estimates of our own, no source, until weights are learned from links that people confirmed. The u of names
// say how seldom two different players of a tour are called alike; m how lists spell one and the same player.
constexpr Odds kNameSame{0.80, 1e-5};
constexpr Odds kNameNear{0.12, 1e-4};
constexpr Odds kNamePart{0.06, 5e-4};
constexpr Odds kNameFamily{0.01, 5e-3};
constexpr Odds kNameDifferent{0.01, 0.994};
constexpr Odds kCountry{0.97, 0.05};
constexpr Odds kYearSame{0.97, 0.06};
constexpr Odds kYearNear{0.02, 0.11};
constexpr Odds kYearDifferent{0.01, 0.83};
constexpr Odds kHandRight{0.86, 0.77};  // seven of eight players are right-handed
constexpr Odds kHandLeft{0.12, 0.016};
constexpr Odds kHandDifferent{0.02, 0.21};
constexpr Odds kTourNumber{0.90, 1e-4};  // a player may have one number for each tour
/// Chance that a person of an entry list is among those known here, shared out among all of them; who knows
/// only a handful of persons still meets them among at least this many players.
constexpr double kShareKnown = 0.5;
constexpr std::size_t kSmallestTour = 500;

/// Longer words than any name's are cut before they are compared.
constexpr std::size_t kMaxCompared = 64;

struct Prepared {
  NameKey name;
  std::string country;
  std::optional<std::int64_t> birth_year;
  Hand hand = Hand::unsaid;
  std::string tour_number;
};

Prepared prepared(const PersonFacts& facts) {
  return {name_key(facts.family, facts.given, facts.native), country_key(trimmed(facts.country)),
          facts.birth_year, facts.hand, search_key(facts.tour_number)};
}

/// How many slips leave a word recognisable.
std::size_t slips_allowed(std::size_t length) {
  return length < 4 ? 0 : length < 8 ? 1 : 2;
}

bool nearly_spelled(std::string_view a, std::string_view b) {
  a = a.substr(0, kMaxCompared);
  b = b.substr(0, kMaxCompared);
  const std::size_t shorter = std::min(a.size(), b.size());
  const std::size_t slips = slips_allowed(shorter);
  if (slips == 0 || std::max(a.size(), b.size()) - shorter > slips) return a == b;
  return jaro_winkler(a, b) >= 0.8 && damerau_levenshtein(a, b) <= slips;
}

bool near_words(const NameWord& a, const NameWord& b) {
  if (a.text == b.text || (a.sound == b.sound && a.sound.size() >= 2)) return true;
  const auto changed = static_cast<std::size_t>(std::popcount(a.letters ^ b.letters));
  return changed <= 2 * slips_allowed(std::min(a.text.size(), b.text.size())) &&
         nearly_spelled(a.text, b.text);
}

bool is_initial_of(const NameWord& a, const NameWord& b) {
  return (a.text.size() == 1 || b.text.size() == 1) && a.text[0] == b.text[0];
}

bool any_near(const std::vector<NameWord>& a, const std::vector<NameWord>& b) {
  return std::any_of(a.begin(), a.end(), [&](const auto& x) {
    return std::any_of(b.begin(), b.end(), [&](const auto& y) { return near_words(x, y); });
  });
}

std::vector<const NameWord*> all_words(const NameKey& name) {
  std::vector<const NameWord*> out;
  for (const auto* part : {&name.family, &name.given})
    for (const auto& word : *part) out.push_back(&word);
  return out;
}

Likeness compare_names(const NameKey& a, const NameKey& b) {
  if (a.empty() || b.empty()) return Likeness::unsaid;
  if (!a.sorted_words.empty() && a.sorted_words == b.sorted_words) return Likeness::same;
  for (const auto& x : a.joined)
    if (std::find(b.joined.begin(), b.joined.end(), x) != b.joined.end()) return Likeness::same;

  // Each word of the shorter name takes its likeness in the longer one, whatever the order: lists swap family
  // and given name.
  auto fewer = all_words(a);
  auto more = all_words(b);
  if (fewer.size() > more.size()) std::swap(fewer, more);
  const std::size_t surplus = more.size() - fewer.size();
  std::size_t near = 0;
  std::size_t initials = 0;
  for (const bool by_initial : {false, true}) {
    for (auto& word : fewer) {
      if (!word) continue;
      const auto found = std::find_if(more.begin(), more.end(), [&](const NameWord* other) {
        return other && (by_initial ? is_initial_of(*word, *other) : near_words(*word, *other));
      });
      if (found == more.end()) continue;
      ++(by_initial ? initials : near);
      word = nullptr;
      *found = nullptr;
    }
  }
  if (near > 0 && near == fewer.size() && surplus == 0) return Likeness::near;
  // Words that one list runs together and the other parts.
  if (surplus > 0) {
    for (const auto& x : a.joined)
      for (const auto& y : b.joined)
        if (std::min(x.size(), y.size()) >= 8 && nearly_spelled(x, y)) return Likeness::near;
  }
  const bool whole = near + initials == fewer.size();
  if (whole && near > 0 && fewer.size() >= 2) return Likeness::part;
  if (any_near(a.family, b.family) || (whole && near > 0)) {
    const bool given_unsaid = a.given.empty() || b.given.empty();
    return given_unsaid || any_near(a.given, b.given) ? Likeness::part : Likeness::family;
  }
  return Likeness::different;
}

Evidence name_evidence(const NameKey& a, const NameKey& b) {
  const Likeness agreement = compare_names(a, b);
  const double weight = [&] {
    switch (agreement) {
      case Likeness::same:
        return weight_of(kNameSame);
      case Likeness::near:
        return weight_of(kNameNear);
      case Likeness::part:
        return weight_of(kNamePart);
      case Likeness::family:
        return weight_of(kNameFamily);
      case Likeness::different:
        return weight_of(kNameDifferent);
      case Likeness::unsaid:
        break;
    }
    return 0.0;
  }();
  return {EvidenceField::name, agreement, weight};
}

Evidence year_evidence(std::optional<std::int64_t> a, std::optional<std::int64_t> b) {
  if (!a || !b) return {EvidenceField::birth_year, Likeness::unsaid, 0};
  if (*a == *b) return {EvidenceField::birth_year, Likeness::same, weight_of(kYearSame)};
  if (*a == *b + 1 || *b == *a + 1) return {EvidenceField::birth_year, Likeness::near, weight_of(kYearNear)};
  return {EvidenceField::birth_year, Likeness::different, weight_of(kYearDifferent)};
}

Evidence hand_evidence(Hand a, Hand b) {
  if (a == Hand::unsaid || b == Hand::unsaid) return {EvidenceField::hand, Likeness::unsaid, 0};
  if (a != b) return {EvidenceField::hand, Likeness::different, weight_of(kHandDifferent)};
  return {EvidenceField::hand, Likeness::same, weight_of(a == Hand::left ? kHandLeft : kHandRight)};
}

Evidence text_evidence(EvidenceField field, const std::string& a, const std::string& b, const Odds& odds) {
  if (a.empty() || b.empty()) return {field, Likeness::unsaid, 0};
  return a == b ? Evidence{field, Likeness::same, weight_of(odds)}
                : Evidence{field, Likeness::different, weight_against(odds)};
}

std::vector<Evidence> compare(const Prepared& a, const Prepared& b) {
  return {name_evidence(a.name, b.name),
          text_evidence(EvidenceField::country, a.country, b.country, kCountry),
          year_evidence(a.birth_year, b.birth_year), hand_evidence(a.hand, b.hand),
          text_evidence(EvidenceField::tour_number, a.tour_number, b.tour_number, kTourNumber)};
}

/// Two records that share none of these are never compared. A slip in one word leaves the others; slips in
/// all of them leave country with birth year, or the tour number.
std::vector<std::string> blocking_keys(const Prepared& person) {
  std::vector<std::string> out;
  for (const NameWord* word : all_words(person.name)) {
    out.push_back("w" + word->sound);
    if (word->sound.size() > 3) out.push_back("p" + word->sound.substr(0, 3));
  }
  for (const auto& form : person.name.joined) out.push_back("j" + form);
  if (person.birth_year && !person.country.empty())
    out.push_back("y" + person.country + std::to_string(*person.birth_year));
  if (!person.tour_number.empty()) out.push_back("n" + person.tour_number);
  std::sort(out.begin(), out.end());
  out.erase(std::unique(out.begin(), out.end()), out.end());
  return out;
}

bool beyond_doubt(const Candidate& candidate) {
  if (candidate.probability < PersonIndex::kKnown) return false;
  const Likeness name = candidate.agreement(EvidenceField::name);
  const Likeness year = candidate.agreement(EvidenceField::birth_year);
  if (year == Likeness::different || year == Likeness::near) return false;
  const bool same_number = candidate.agreement(EvidenceField::tour_number) == Likeness::same;
  if (name == Likeness::same) {
    return same_number || year == Likeness::same ||
           candidate.agreement(EvidenceField::country) == Likeness::same;
  }
  return same_number && (name == Likeness::near || name == Likeness::part);
}

}  // namespace

PersonFacts facts_of(const Person& person) {
  return {person.family_name, person.given_name, person.native_name, person.country,
          person.birth_year,  person.hand,       person.tour_number};
}

PersonFacts facts_of(const EntryListItem& item) {
  return {item.family_name, item.given_name, item.native_name, item.country,
          item.birth_year,  item.hand,       item.tour_number};
}

std::vector<Evidence> compare_persons(const PersonFacts& a, const PersonFacts& b) {
  return compare(prepared(a), prepared(b));
}

Likeness Candidate::agreement(EvidenceField field) const {
  for (const auto& each : evidence)
    if (each.field == field) return each.agreement;
  return Likeness::unsaid;
}

struct PersonIndex::Tables {
  std::vector<std::pair<BookId, Prepared>> persons;
  std::unordered_map<std::string, std::vector<std::uint32_t>> blocks;
};

PersonIndex::PersonIndex(const std::vector<std::pair<BookId, PersonFacts>>& persons) {
  auto tables = std::make_unique<Tables>();
  tables->persons.reserve(persons.size());
  for (const auto& [book, facts] : persons) {
    const auto number = static_cast<std::uint32_t>(tables->persons.size());
    tables->persons.emplace_back(book, prepared(facts));
    for (auto& key : blocking_keys(tables->persons.back().second))
      tables->blocks[std::move(key)].push_back(number);
  }
  tables_ = std::move(tables);
}
PersonIndex::~PersonIndex() = default;
PersonIndex::PersonIndex(PersonIndex&&) noexcept = default;
PersonIndex& PersonIndex::operator=(PersonIndex&&) noexcept = default;

std::size_t PersonIndex::size() const {
  return tables_->persons.size();
}

MatchResult PersonIndex::match(const PersonFacts& facts) const {
  if (tables_->persons.empty()) return {};
  const Prepared wanted = prepared(facts);
  std::vector<std::uint32_t> numbers;
  for (const auto& key : blocking_keys(wanted)) {
    const auto block = tables_->blocks.find(key);
    if (block != tables_->blocks.end())
      numbers.insert(numbers.end(), block->second.begin(), block->second.end());
  }
  std::sort(numbers.begin(), numbers.end());
  numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());

  const double prior =
      weight_of_prior(kShareKnown / static_cast<double>(std::max(tables_->persons.size(), kSmallestTour)));
  std::vector<Candidate> candidates;
  double all_odds = 1;  // that it is none of them
  for (const auto number : numbers) {
    const auto& [book, person] = tables_->persons[number];
    Candidate candidate{book, prior, 0, compare(wanted, person)};
    for (const auto& each : candidate.evidence) candidate.weight += each.weight;
    all_odds += std::exp2(candidate.weight);
    // A shared word, country or year without more is not worth keeping.
    if (candidate.weight > -7) candidates.push_back(std::move(candidate));
  }
  for (auto& candidate : candidates) candidate.probability = std::exp2(candidate.weight) / all_odds;
  std::sort(candidates.begin(), candidates.end(), [](const auto& a, const auto& b) {
    return a.weight != b.weight ? a.weight > b.weight : a.book < b.book;
  });
  if (candidates.size() > kMaxCandidates) candidates.resize(kMaxCandidates);

  // Several who share the probability are each worth asking about if together they pass.
  double together = 0;
  for (const auto& candidate : candidates) together += candidate.probability;
  if (together < kLikely) return {};
  return {beyond_doubt(candidates.front()) ? MatchBand::known : MatchBand::likely, std::move(candidates)};
}

}  // namespace weavelog
