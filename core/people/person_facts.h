#pragma once
// What is known of a person when two records are compared, and the same made comparable.

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/model/event.h"
#include "core/model/player.h"
#include "core/people/name_key.h"

namespace weavelog {

/// What is known of a person, in any part; empty means not said.
struct PersonFacts {
  std::string family;
  std::string given;
  std::string native;   ///< the whole name in the person's own script
  std::string country;  ///< three letters, Olympic or ISO
  std::optional<std::int64_t> birth_year;
  Hand hand = Hand::unsaid;
  std::string tour_number;
  /// Other names, before a marriage for example: "Family, Given" or a family name alone.
  std::vector<std::string> also_known_as{};
  std::vector<std::string> rackets{};  ///< makers and models
  std::vector<std::string> strings{};
};

[[nodiscard]] PersonFacts facts_of(const Person& person);
[[nodiscard]] PersonFacts facts_of(const EntryListItem& item);

/// Facts folded. At most 8 names and 16 rackets and strings are looked at.
struct PersonKey {
  std::vector<NameKey> names;  ///< the usual one, the native one, others; those that are empty left out
  std::string country;
  std::optional<std::int64_t> birth_year;
  Hand hand = Hand::unsaid;
  std::string tour_number;
  std::vector<std::string> rackets;  ///< sorted, each once
  std::vector<std::string> strings;
};

[[nodiscard]] PersonKey person_key(const PersonFacts& facts);

/// Two records that share none of these are never compared: hashes of family names and their sounds, also with one letter left out, of the
/// given name with country or birth year, of country and birth year, of the tour number. A slip in one part leaves the others.
/// `asked`: of the one who is looked for, so that family and given name may have changed places.
[[nodiscard]] std::vector<std::uint64_t> blocking_keys(const PersonKey& person, bool asked);

}  // namespace weavelog
