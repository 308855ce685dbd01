#pragma once
// Two persons compared field by field, each outcome one of a few levels, and how often strangers come out so.

#include <array>
#include <cstdint>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/people/name_likeness.h"
#include "core/people/person_facts.h"

namespace weavelog {

/// What is compared. The order is that of the tables of weights.
enum class ComparedField : std::uint8_t { family, given, country, birth_year, hand, tour_number, rackets, strings };
inline constexpr std::size_t kComparedFields = 8;

// Levels of the fields that are not names, from 0. Names: NameLevel.
enum class CountryLevel : std::uint8_t { same, different };
enum class YearLevel : std::uint8_t {
  same,
  near,  ///< one off, ten off, or its last two digits changed places
  different,
};
enum class HandLevel : std::uint8_t { both_right, both_left, different };
enum class NumberLevel : std::uint8_t { same, slip, different };
enum class ThingsLevel : std::uint8_t {
  shared,  ///< one of theirs is the same
  different,
};

struct Comparison {
  static constexpr std::int8_t kUnsaid = -1;
  /// Of each field; kUnsaid if one side does not say.
  std::array<std::int8_t, kComparedFields> level;
  /// How often a stranger's would come out so, where it depends on the value (a common name is weak); 0: as the table of weights has it.
  std::array<double, kComparedFields> chance{};
  bool swapped = false;  ///< family and given name changed places
  bool alias = false;    ///< by another name than the first one of both

  Comparison() { level.fill(kUnsaid); }
  [[nodiscard]] std::int8_t of(ComparedField field) const { return level[static_cast<std::size_t>(field)]; }
};

/// How common values are among the persons known here, drawn to what is usual where few are known.
class ValueCounts {
 public:
  ValueCounts() = default;
  explicit ValueCounts(const std::vector<PersonKey>& persons);

  /// That somebody else of this country ("" if not known to be the same) has a family name of that sound, or a given name.
  [[nodiscard]] double family(const NameWord& word, const std::string& country) const;
  [[nodiscard]] double given(const NameWord& word, const std::string& country) const;
  /// Any short form of that given name; its initial.
  [[nodiscard]] double short_form(const NameWord& word) const;
  [[nodiscard]] double initial(const NameWord& word) const;
  [[nodiscard]] double country(const std::string& country) const;
  [[nodiscard]] double tour_number(const std::string& number) const;
  [[nodiscard]] double thing(const std::string& thing) const;

 private:
  using Counts = std::unordered_map<std::string, double>;
  /// Of names that nobody else here bears: how often a person more bears one, as a part of one person (Good 1953), by country, "" for all.
  using Unseen = std::unordered_map<std::string, double>;
  void learn_unseen();
  [[nodiscard]] double name(char kind, const NameWord& word, const std::string& country, double usual) const;
  [[nodiscard]] double count(const std::string& key) const;

  Counts counts_;  ///< by kind and value
  double persons_ = 0;
  Unseen families_, givens_;
};

/// `b` is the one whose values are looked up in `counts`.
[[nodiscard]] Comparison compare(const PersonKey& a, const PersonKey& b, const ValueCounts& counts);

}  // namespace weavelog
