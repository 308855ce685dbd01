// Matching measured on invented lists with truth (fixtures/people), and weights learnt from them without it.
#include "core/people/learn_weights.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "fixtures/people/measure.h"

using namespace weavelog;
using namespace weavelog::people;

namespace {

std::vector<PersonFacts> entries_of(const PeopleLists& lists, std::size_t most) {
  std::vector<PersonFacts> out;
  for (std::size_t i = 0; i < std::min(most, lists.entries.size()); ++i) out.push_back(lists.entries[i].facts);
  return out;
}

ListSizes sizes(std::uint64_t chance, std::size_t entries) {
  ListSizes out;
  out.chance = chance;
  out.entries = entries;
  return out;
}

std::string said(const MatchTable& table) {
  std::string out = std::to_string(table.entries) + " entries, " + std::to_string(table.with_book) + " with a book, " +
                    std::to_string(table.known_right) + " known, " + std::to_string(table.known_wrong) + " wrong, " + std::to_string(table.asked) +
                    " asked, " + std::to_string(table.missed) + " missed\n";
  for (std::size_t bin = 0; bin < table.bins.size(); ++bin) {
    const Bin& one = table.bins[bin];
    if (one.pairs > 0)
      out += "to " + std::to_string(bin_end(bin)) + ": " + std::to_string(one.pairs) + " pairs, said " + std::to_string(one.said) + ", right " +
             std::to_string(one.right) + "\n";
  }
  return out;
}

}  // namespace

TEST_CASE("invented people are the same everywhere, with twins, siblings and namesakes among them", "[people]") {
  const auto people = invented_people(2'000, 3);
  const auto again = invented_people(2'000, 3);
  std::size_t twins = 0, siblings = 0, namesakes = 0;
  for (std::size_t i = 0; i < people.size(); ++i) {
    CHECK((people[i].family == again[i].family && people[i].given == again[i].given && people[i].tour_number == again[i].tour_number));
    twins += people[i].kind == TruePerson::Kind::twin;
    siblings += people[i].kind == TruePerson::Kind::sibling;
    namesakes += people[i].kind == TruePerson::Kind::namesake;
  }
  CHECK(twins > 20);
  CHECK(siblings > 30);
  CHECK(namesakes > 0);
  // One record of it, so that another machine or library would be noticed.
  const ListedPerson one = listed(people, 42, 7);
  CHECK(one.facts.family + "|" + one.facts.given + "|" + one.facts.country == "Łazoranowicz|Łukasz|POL");
}

TEST_CASE("every kind of noise comes up in the lists", "[people]") {
  const PeopleLists lists = people_lists(sizes(4, 5'000));
  for (std::size_t noise = 0; noise < kNoises; ++noise) {
    std::size_t found = 0;
    for (const ListedPerson& entry : lists.entries) found += entry.has(static_cast<Noise>(noise));
    INFO(name_of(static_cast<Noise>(noise)));
    CHECK(found >= 15);
  }
}

TEST_CASE("weights learnt without labels come near those that labels give", "[people]") {
  const PeopleLists lists = people_lists(sizes(5, 3'000));
  const PersonIndex index = index_of(lists);
  const LearntWeights learnt = learn_weights(index, entries_of(lists, 3'000));
  CHECK(learnt.rounds < 30);
  CHECK(learnt.expected_known / static_cast<double>(learnt.entries) == Approx(0.7).margin(0.02));
  // With labels: how true pairs really come out, of country, birth year, tour number and family name.
  std::vector<PersonKey> books(lists.people.size());
  std::vector<bool> has_book(lists.people.size());
  for (const ListedPerson& one : lists.known) books[one.person] = person_key(one.facts), has_book[one.person] = true;
  MatchWeights::Table counts{};
  for (const ListedPerson& entry : lists.entries) {
    if (!has_book[entry.person]) continue;
    const Comparison comparison = compare(person_key(entry.facts), books[entry.person], {});
    for (std::size_t field = 0; field < kComparedFields; ++field)
      if (comparison.level[field] != Comparison::kUnsaid) ++counts[field][static_cast<std::size_t>(comparison.level[field])];
  }
  for (std::size_t field = 0; field < kComparedFields; ++field) {
    double sum = 0;
    for (const double one : counts[field]) sum += one;
    for (std::size_t level = 0; level < levels_of(static_cast<ComparedField>(field)); ++level) {
      CAPTURE(field, level);
      CHECK(learnt.weights.same[field][level] == Approx(counts[field][level] / sum).margin(0.012));
    }
  }
}

TEST_CASE("short lists and empty ones teach nothing that is not there", "[people]") {
  const PeopleLists lists = people_lists(sizes(6, 5));
  const LearntWeights few = learn_weights(index_of(lists), entries_of(lists, 5));
  for (std::size_t field = 0; field < kComparedFields; ++field)
    for (std::size_t level = 0; level < levels_of(static_cast<ComparedField>(field)); ++level)
      CHECK(few.weights.same[field][level] == Approx(MatchWeights::usual().same[field][level]).margin(0.1));
  CHECK(learn_weights(PersonIndex({}), {}).weights.known == MatchWeights::usual().known);
}

// Aims: nobody given to another without a question, 97 of 100 of those known found, 3 of 100 entries asked about. All of it, on 150,000 entries, is
// weavelog-bench --only match.
TEST_CASE("entries of 10,000 people find their books, few are asked about, nobody is mistaken", "[people]") {
  MatchTable table;
  for (const std::uint64_t chance : {21, 22}) {
    const PeopleLists lists = people_lists(sizes(chance, 10'000));
    const PersonIndex index = index_of(lists);
    table.add(measured(lists, index_of(lists, learn_weights(index, entries_of(lists, 3'000)).weights)));
  }
  INFO(said(table));
  CHECK(table.known_right > 13'000);
  CHECK(table.known_wrong == 0);
  CHECK(table.found_share() >= 0.97);
  CHECK(table.asked_share() <= 0.03);
  // Calibration: of pairs that are said to be true with some probability so many are, within what chance does (four deviations) and a tenth.
  for (const Bin& bin : table.bins) {
    if (bin.pairs < 20) continue;
    const double n = static_cast<double>(bin.pairs), p = bin.said / n;
    CHECK(std::fabs(static_cast<double>(bin.right) / n - p) < 4 * std::sqrt(p * (1 - p) / n) + 0.1 * (1 - p) + 0.002);
  }
}

TEST_CASE("with what is usual for weights nobody is mistaken either, and some more are asked about", "[people]") {
  const PeopleLists lists = people_lists(sizes(23, 5'000));
  const MatchTable table = measured(lists, index_of(lists));
  INFO(said(table));
  CHECK(table.known_wrong == 0);
  CHECK(table.found_share() >= 0.97);
  CHECK(table.asked_share() <= 0.05);
}

TEST_CASE("where lists say little, questions grow and mistakes do not", "[people]") {
  ListSizes sparse = sizes(24, 5'000);
  sparse.sparse = true;
  const PeopleLists lists = people_lists(sparse);
  const MatchTable table = measured(lists, index_of(lists));
  INFO(said(table));
  CHECK(table.known_wrong == 0);
  CHECK(table.found_share() >= 0.97);
  CHECK(table.asked_share() <= 0.2);
}

TEST_CASE("twins and siblings are not taken for each other", "[people]") {
  const PeopleLists lists = people_lists(sizes(25, 0));
  const PersonIndex index = index_of(lists);
  std::vector<bool> has_book(lists.people.size());
  for (const ListedPerson& one : lists.known) has_book[one.person] = true;
  std::size_t tried = 0, mistaken = 0;
  for (std::size_t person = 0; person < lists.people.size(); ++person) {
    if (has_book[person] || lists.people[person].kind == TruePerson::Kind::plain) continue;
    for (std::uint64_t chance = 0; chance < 10; ++chance) {
      ++tried;
      mistaken += index.match(listed(lists.people, person, 1'000 + chance).facts).band == MatchBand::known;
    }
  }
  INFO(tried << " records of relatives and namesakes of persons known");
  CHECK(tried > 1'000);
  CHECK(mistaken == 0);
}
