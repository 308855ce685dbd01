#include "core/people/comparison.h"

#include <algorithm>
#include <array>
#include <cstdlib>

#include "core/people/similarity.h"

namespace weavelog {
namespace {

// What is usual where few persons are known (from memory, rounded; no list). By sound.
struct Common {
  std::string_view sound;
  double share;
};
constexpr auto kCommonFamilies = std::to_array<Common>({
    {"vang", 0.012},   {"li", 0.02},       {"zang", 0.011},   {"liu", 0.009},      {"sen", 0.009},      {"iang", 0.006},      {"huang", 0.004},
    {"kim", 0.012},    {"park", 0.005},    {"soi", 0.003},    {"nguien", 0.01},    {"tran", 0.003},     {"garkia", 0.006},    {"lopez", 0.004},
    {"smit", 0.004},   {"silva", 0.004},   {"santos", 0.003}, {"martinez", 0.004}, {"gonzalez", 0.004}, {"rodriguez", 0.004}, {"fernandez", 0.003},
    {"ivanov", 0.002}, {"ivanova", 0.002}, {"novak", 0.002},  {"muler", 0.003},    {"sing", 0.004},     {"sato", 0.002},      {"ali", 0.002},
});

/// Persons that a shape of name has behind it before any is counted.
constexpr double kUsualFamily = 5e-4, kUsualGiven = 4e-3, kUsualCountry = 0.05, kUsualThing = 0.05, kUsualInitial = 0.07;
/// As many persons as what is usual is worth.
constexpr double kNameSpread = 300, kCompatriots = 60, kGivenSpread = 300, kCountrySpread = 20, kThingSpread = 20, kInitialSpread = 50;
/// Compatriots share names so much more often than others.
constexpr double kOneLanguage = 4;

std::string key_of(char kind, std::string_view value, std::string_view country = {}) {
  std::string out(1, kind);
  out += value;
  if (!country.empty()) {
    out += '\n';
    out += country;
  }
  return out;
}

double usual_family(const NameWord& word) {
  for (const Common& one : kCommonFamilies)
    if (one.sound == word.sound) return one.share;
  // A language of few syllables has few names of two or three letters.
  return word.text.size() <= 3 ? 4 * kUsualFamily : kUsualFamily;
}

YearLevel year_level(std::int64_t a, std::int64_t b) {
  if (a == b) return YearLevel::same;
  const auto apart = std::llabs(a - b);
  const bool turned = a / 100 == b / 100 && a % 10 == b / 10 % 10 && b % 10 == a / 10 % 10;
  return apart == 1 || apart == 10 || turned ? YearLevel::near : YearLevel::different;
}

NumberLevel number_level(const std::string& a, const std::string& b) {
  if (a == b) return NumberLevel::same;
  constexpr std::size_t kShort = 4, kLong = 40;
  const std::size_t shorter = std::min(a.size(), b.size()), longer = std::max(a.size(), b.size());
  if (shorter < kShort || longer > kLong || longer - shorter > 1) return NumberLevel::different;
  return damerau_levenshtein(a, b) <= 1 ? NumberLevel::slip : NumberLevel::different;
}

std::vector<std::string> in_both(const std::vector<std::string>& a, const std::vector<std::string>& b) {
  std::vector<std::string> out;
  std::set_intersection(a.begin(), a.end(), b.begin(), b.end(), std::back_inserter(out));
  return out;
}

}  // namespace

ValueCounts::ValueCounts(const std::vector<PersonKey>& persons) : persons_(static_cast<double>(persons.size())) {
  for (const PersonKey& person : persons) {
    if (!person.country.empty()) ++counts_[key_of('c', person.country)];
    if (!person.tour_number.empty()) ++counts_[key_of('n', person.tour_number)];
    for (const auto* things : {&person.rackets, &person.strings})
      for (const std::string& thing : *things) ++counts_[key_of('t', thing)];
    if (person.names.empty()) continue;
    for (const NameWord& word : person.names.front().family) {
      ++counts_[key_of('f', word.sound)];
      if (!person.country.empty()) ++counts_[key_of('f', word.sound, person.country)];
    }
    for (const NameWord& word : person.names.front().given) {
      ++counts_[key_of('g', word.sound)];
      if (!person.country.empty()) ++counts_[key_of('g', word.sound, person.country)];
      ++counts_[key_of('i', word.text.substr(0, 1))];
      for (const std::uint16_t group : word.groups) ++counts_[key_of('s', std::to_string(group))];
    }
  }
  learn_unseen();
}

double ValueCounts::count(const std::string& key) const {
  const auto found = counts_.find(key);
  return found == counts_.end() ? 0 : found->second;
}

void ValueCounts::learn_unseen() {
  // A name borne by one person here is borne by nobody else; as often as names are borne by two, somebody more bears one of these. Countries
  // differ much in it, small ones are drawn to what holds within all.
  struct Twice {
    double once = 0, twice = 0;
    void add(double count) { once += count == 1, twice += count == 2; }
    [[nodiscard]] double unseen(double usual, double worth) const { return std::clamp((2 * twice + worth * usual) / (once + worth), 0.01, 1.0); }
  };
  for (const char kind : {'f', 'g'}) {
    Twice all, within;
    std::unordered_map<std::string, Twice> countries;
    for (const auto& [key, count] : counts_) {
      if (key[0] != kind) continue;
      const std::size_t end = key.find('\n');
      if (end == std::string::npos) {
        all.add(count);
      } else {
        within.add(count);
        countries[key.substr(end + 1)].add(count);
      }
    }
    constexpr double kUsualAll = 0.1, kUsualWithin = 0.3, kWorth = 50, kCountryWorth = 30;
    Unseen& out = kind == 'f' ? families_ : givens_;
    out[""] = all.unseen(kUsualAll, kWorth);
    const double usual = within.unseen(kUsualWithin, kWorth);
    for (const auto& [country, twice] : countries) out[country] = twice.unseen(usual, kCountryWorth);
  }
}

double ValueCounts::name(char kind, const NameWord& word, const std::string& country, double usual) const {
  const Unseen& learnt = kind == 'f' ? families_ : givens_;
  const auto of_country = learnt.find(country);
  const double unseen = of_country == learnt.end() ? 0.3 : of_country->second;
  // The one who is compared is among those counted and is not somebody else. Few persons say little: what is usual holds.
  const auto share = [](double bearers, double not_seen, double persons, double worth, double usually) {
    const double others = (bearers <= 1 ? not_seen : bearers - 1) * persons / (persons + worth);
    return (others + usually * worth) / (persons + worth);
  };
  if (country.empty()) return share(count(key_of(kind, word.sound)), unseen, persons_, kNameSpread, usual);
  return share(count(key_of(kind, word.sound, country)), unseen, count(key_of('c', country)), kCompatriots, kOneLanguage * usual);
}

double ValueCounts::family(const NameWord& word, const std::string& country) const {
  return name('f', word, country, usual_family(word));
}
double ValueCounts::given(const NameWord& word, const std::string& country) const {
  return name('g', word, country, kUsualGiven);
}

double ValueCounts::short_form(const NameWord& word) const {
  double out = 0;
  for (const std::uint16_t group : word.groups)
    out = std::max(out, (count(key_of('s', std::to_string(group))) + 4 * kUsualGiven * kGivenSpread) / (persons_ + kGivenSpread));
  return out > 0 ? out : 4 * kUsualGiven;
}

double ValueCounts::initial(const NameWord& word) const {
  return (count(key_of('i', word.text.substr(0, 1))) + kUsualInitial * kInitialSpread) / (persons_ + kInitialSpread);
}

double ValueCounts::country(const std::string& country) const {
  return (count(key_of('c', country)) + kUsualCountry * kCountrySpread) / (persons_ + kCountrySpread);
}

double ValueCounts::tour_number(const std::string& number) const {
  constexpr double kNumbers = 1e5;  // so seldom do two of different tours have one
  return (std::max(0.0, count(key_of('n', number)) - 1) + 1) / (persons_ + kNumbers);
}

double ValueCounts::thing(const std::string& thing) const {
  return (count(key_of('t', thing)) + kUsualThing * kThingSpread) / (persons_ + kThingSpread);
}

Comparison compare(const PersonKey& a, const PersonKey& b, const ValueCounts& counts) {
  Comparison out;
  const auto put = [&out](ComparedField field, auto level, double chance = 0) {
    out.level[static_cast<std::size_t>(field)] = static_cast<std::int8_t>(level);
    out.chance[static_cast<std::size_t>(field)] = chance;
  };
  const bool same_country = !a.country.empty() && a.country == b.country;
  const std::string& country = same_country ? a.country : std::string();

  const NameLikeness names = compare_names(a.names, b.names);
  if (names.said) {
    out.swapped = names.swapped;
    out.alias = names.alias;
    const bool by_family = names.family_word && names.family <= NameLevel::sound;
    put(ComparedField::family, names.family, by_family ? counts.family(*names.family_word, country) : 0);
    if (names.given_said) {
      double chance = 0;
      if (names.given_word) {
        const NameWord& word = *names.given_word;
        if (names.given <= NameLevel::sound) chance = counts.given(word, country);
        if (names.given == NameLevel::short_form) chance = counts.short_form(word);
        if (names.given == NameLevel::initial) chance = counts.initial(word);
      }
      put(ComparedField::given, names.given, chance);
    }
  }
  if (!a.country.empty() && !b.country.empty()) {
    const double chance = counts.country(b.country);
    put(ComparedField::country, same_country ? CountryLevel::same : CountryLevel::different, same_country ? chance : 1 - chance);
  }
  if (a.birth_year && b.birth_year) put(ComparedField::birth_year, year_level(*a.birth_year, *b.birth_year));
  if (a.hand != Hand::unsaid && b.hand != Hand::unsaid)
    put(ComparedField::hand, a.hand != b.hand ? HandLevel::different : a.hand == Hand::left ? HandLevel::both_left : HandLevel::both_right);
  if (!a.tour_number.empty() && !b.tour_number.empty()) {
    const NumberLevel level = number_level(a.tour_number, b.tour_number);
    put(ComparedField::tour_number, level, level == NumberLevel::same ? counts.tour_number(b.tour_number) : 0);
  }
  const auto things = [&](ComparedField field, const std::vector<std::string>& of_a, const std::vector<std::string>& of_b) {
    if (of_a.empty() || of_b.empty()) return;
    double rarest = 1;
    for (const std::string& thing : in_both(of_a, of_b)) rarest = std::min(rarest, counts.thing(thing));
    const bool shared = rarest < 1;
    // Who names many things shares one more often.
    const double chance = std::min(0.9, rarest * static_cast<double>(of_a.size()));
    put(field, shared ? ThingsLevel::shared : ThingsLevel::different, shared ? chance : 0);
  };
  things(ComparedField::rackets, a.rackets, b.rackets);
  things(ComparedField::strings, a.strings, b.strings);
  return out;
}

}  // namespace weavelog
