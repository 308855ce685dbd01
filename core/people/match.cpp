#include "core/people/match.h"

#include <algorithm>
#include <cmath>
#include <unordered_map>

#include "core/people/evidence.h"

namespace weavelog {
namespace {

/// Who knows only a handful of persons still meets them among at least this many players.
constexpr std::size_t kSmallestCircuit = 500;
/// Less is not worth a look: a shared word, country or year without more.
constexpr double kLeastWeight = -7;
/// Nor is one of several who is so unlikely.
constexpr double kLeastProbability = 0.005;

Likeness name_likeness(const Comparison& comparison) {
  if (comparison.of(ComparedField::family) == Comparison::kUnsaid) return Likeness::unsaid;
  const auto family = static_cast<NameLevel>(comparison.of(ComparedField::family));
  const bool given_said = comparison.of(ComparedField::given) != Comparison::kUnsaid;
  const auto given = given_said ? static_cast<NameLevel>(comparison.of(ComparedField::given)) : NameLevel::different;
  if (family == NameLevel::different) return given_said && given <= NameLevel::slip_short ? Likeness::given : Likeness::different;
  if (!given_said) return Likeness::part;
  if (given == NameLevel::different) return Likeness::family;
  if (family == NameLevel::part || given == NameLevel::part || given == NameLevel::initial) return Likeness::part;
  if (given == NameLevel::short_form) return Likeness::short_form;
  return family == NameLevel::same && given == NameLevel::same ? Likeness::same : Likeness::near;
}

/// A field of two or three levels: the same first, different last.
Likeness field_likeness(const Comparison& comparison, ComparedField field) {
  const auto level = comparison.of(field);
  if (level == Comparison::kUnsaid) return Likeness::unsaid;
  if (static_cast<std::size_t>(level) + 1 == levels_of(field)) return Likeness::different;
  return level == 0 || field == ComparedField::hand ? Likeness::same : Likeness::near;
}

bool beyond_doubt(const Candidate& candidate, const MatchCosts& costs) {
  const bool doubtful = candidate.agreement(EvidenceField::tour_number) != Likeness::same && candidate.agreement(EvidenceField::strings) == Likeness::different;
  if (candidate.probability < costs.known(doubtful)) return false;
  const Likeness year = candidate.agreement(EvidenceField::birth_year);
  if (year == Likeness::different) return false;
  const Likeness name = candidate.agreement(EvidenceField::name);
  if (name == Likeness::unsaid || name == Likeness::different || name == Likeness::given || name == Likeness::family) return false;
  return year == Likeness::same || candidate.agreement(EvidenceField::country) == Likeness::same ||
         candidate.agreement(EvidenceField::tour_number) == Likeness::same;
}

}  // namespace

std::vector<Evidence> evidence_of(const Comparison& comparison, const MatchWeights& weights, double persons) {
  const auto bits = [&](ComparedField field) { return weight_of_field(comparison, field, weights); };
  std::vector<Evidence> out{{EvidenceField::name, name_likeness(comparison), bits(ComparedField::family) + bits(ComparedField::given)}};
  constexpr std::pair<EvidenceField, ComparedField> kOthers[] = {
      {EvidenceField::country, ComparedField::country}, {EvidenceField::birth_year, ComparedField::birth_year},
      {EvidenceField::hand, ComparedField::hand},       {EvidenceField::tour_number, ComparedField::tour_number},
      {EvidenceField::rackets, ComparedField::rackets}, {EvidenceField::strings, ComparedField::strings}};
  for (const auto& [field, compared] : kOthers) out.push_back({field, field_likeness(comparison, compared), bits(compared)});
  const Chances chances = chances_of(comparison, weights);
  const double doubt = std::log2(chances.stranger / chances.other(weights, persons));
  // A tenth of a bit is nobody's doubt.
  out.push_back({EvidenceField::others, doubt < -0.1 ? Likeness::possible : Likeness::unsaid, std::min(doubt, 0.0)});
  return out;
}

std::vector<Evidence> compare_persons(const PersonFacts& a, const PersonFacts& b) {
  return evidence_of(compare(person_key(a), person_key(b), {}), MatchWeights::usual(), kSmallestCircuit);
}

Likeness Candidate::agreement(EvidenceField field) const {
  for (const auto& each : evidence)
    if (each.field == field) return each.agreement;
  return Likeness::unsaid;
}

struct PersonIndex::Tables {
  std::vector<BookId> books;
  std::vector<PersonKey> persons;
  ValueCounts counts;
  std::unordered_map<std::uint64_t, std::vector<std::uint32_t>> blocks;
  MatchWeights weights;
  MatchCosts costs;

  /// Who shares a blocking key with that person, ascending.
  [[nodiscard]] std::vector<std::uint32_t> worth_comparing(const PersonKey& wanted) const {
    std::vector<std::uint32_t> numbers;
    for (const std::uint64_t key : blocking_keys(wanted, true)) {
      const auto block = blocks.find(key);
      if (block != blocks.end()) numbers.insert(numbers.end(), block->second.begin(), block->second.end());
    }
    std::sort(numbers.begin(), numbers.end());
    numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());
    return numbers;
  }
};

PersonIndex::PersonIndex(const std::vector<std::pair<BookId, PersonFacts>>& persons, const MatchWeights& weights, const MatchCosts& costs) {
  auto tables = std::make_unique<Tables>();
  tables->weights = weights;
  tables->costs = costs;
  tables->books.reserve(persons.size());
  tables->persons.reserve(persons.size());
  for (const auto& [book, facts] : persons) {
    const auto number = static_cast<std::uint32_t>(tables->persons.size());
    tables->books.push_back(book);
    tables->persons.push_back(person_key(facts));
    for (const std::uint64_t key : blocking_keys(tables->persons.back(), false)) tables->blocks[key].push_back(number);
  }
  tables->counts = ValueCounts(tables->persons);
  tables_ = std::move(tables);
}
PersonIndex::~PersonIndex() = default;
PersonIndex::PersonIndex(PersonIndex&&) noexcept = default;
PersonIndex& PersonIndex::operator=(PersonIndex&&) noexcept = default;

std::size_t PersonIndex::size() const {
  return tables_->persons.size();
}

double PersonIndex::circuit() const {
  return static_cast<double>(std::max(tables_->persons.size(), kSmallestCircuit));
}

std::vector<Comparison> PersonIndex::comparisons(const PersonFacts& facts) const {
  const PersonKey wanted = person_key(facts);
  std::vector<Comparison> out;
  for (const auto number : tables_->worth_comparing(wanted)) out.push_back(compare(wanted, tables_->persons[number], tables_->counts));
  return out;
}

Comparison PersonIndex::compared(std::size_t a, std::size_t b) const {
  return compare(tables_->persons.at(a), tables_->persons.at(b), tables_->counts);
}

const std::string& PersonIndex::country(std::size_t person) const {
  return tables_->persons.at(person).country;
}

MatchResult PersonIndex::match(const PersonFacts& facts) const {
  if (tables_->persons.empty()) return {};
  const PersonKey wanted = person_key(facts);
  const MatchWeights& weights = tables_->weights;
  const double persons = circuit();
  // Odds against "none of them", who are the rest of the circuit's players.
  const double prior = weights.known / persons / (1 - weights.known);
  struct Found {
    std::uint32_t number;
    double odds;
    Comparison comparison;
  };
  std::vector<Found> found;
  double all_odds = 1;
  for (const auto number : tables_->worth_comparing(wanted)) {
    Comparison comparison = compare(wanted, tables_->persons[number], tables_->counts);
    const Chances chances = chances_of(comparison, weights);
    const double odds = prior * chances.same / chances.other(weights, persons);
    all_odds += odds;
    if (odds > std::exp2(kLeastWeight)) found.push_back({number, odds, comparison});
  }
  std::sort(found.begin(), found.end(),
            [&](const Found& a, const Found& b) { return a.odds != b.odds ? a.odds > b.odds : tables_->books[a.number] < tables_->books[b.number]; });
  if (found.size() > kMaxCandidates) found.resize(kMaxCandidates);

  MatchResult out;
  double together = 0;
  for (const Found& one : found) {
    Candidate candidate;
    candidate.book = tables_->books[one.number];
    candidate.weight = std::log2(one.odds);
    candidate.probability = one.odds / all_odds;
    candidate.evidence = evidence_of(one.comparison, weights, persons);
    candidate.swapped = one.comparison.swapped;
    candidate.alias = one.comparison.alias;
    together += candidate.probability;
    if (candidate.probability < kLeastProbability && !out.candidates.empty()) continue;
    out.candidates.push_back(std::move(candidate));
  }
  // Several who share the probability are each worth asking about if together they pass.
  if (together < tables_->costs.likely()) return {};
  out.band = beyond_doubt(out.candidates.front(), tables_->costs) ? MatchBand::known : MatchBand::likely;
  return out;
}

}  // namespace weavelog
