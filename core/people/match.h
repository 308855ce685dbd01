#pragma once
// Is this person of the entry list one that we know? Certain, likely (a person is asked) or new.

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/base/id.h"
#include "core/model/event.h"
#include "core/model/player.h"

namespace weavelog {

/// What is known of a person, in any part; empty means not said.
struct PersonFacts {
  std::string family;
  std::string given;
  std::string native;
  std::string country;  ///< three letters, Olympic or ISO
  std::optional<std::int64_t> birth_year;
  Hand hand = Hand::unsaid;
  std::string tour_number;
};

[[nodiscard]] PersonFacts facts_of(const Person& person);
[[nodiscard]] PersonFacts facts_of(const EntryListItem& item);

enum class EvidenceField : std::uint8_t { name, country, birth_year, hand, tour_number };
enum class Likeness : std::uint8_t {
  unsaid,  ///< one side does not say
  same,
  near,    ///< name: spelling or order differs; birth year: one off
  part,    ///< name: a part or an initial of it
  family,  ///< name: the family name only
  different,
};

struct Evidence {
  EvidenceField field;
  Likeness agreement;
  double weight;  ///< bits for (positive) or against
};

struct Candidate {
  BookId book;
  double weight = 0;       ///< bits, prior included
  double probability = 0;  ///< that it is this one, given all candidates and that it may be none
  std::vector<Evidence> evidence;

  [[nodiscard]] Likeness agreement(EvidenceField field) const;
};

enum class MatchBand : std::uint8_t {
  known,   ///< one candidate, beyond doubt
  likely,  ///< ask a person
  new_person,
};

struct MatchResult {
  MatchBand band = MatchBand::new_person;
  std::vector<Candidate> candidates;  ///< best first, at most kMaxCandidates; empty for a new person
};

/// All persons known here, ready to be asked. Immutable, so any number of threads may ask. 5,000 persons take
/// a few megabytes.
class PersonIndex {
 public:
  static constexpr std::size_t kMaxCandidates = 5;
  /// *Known* needs this probability, no contradiction of birth year, and beside the same name another field
  /// that agrees; beside a name that is nearly the same, the tour number.
  static constexpr double kKnown = 0.99;
  /// Below this nobody is asked.
  static constexpr double kLikely = 0.1;

  explicit PersonIndex(const std::vector<std::pair<BookId, PersonFacts>>& persons);
  ~PersonIndex();
  PersonIndex(PersonIndex&&) noexcept;
  PersonIndex& operator=(PersonIndex&&) noexcept;

  [[nodiscard]] MatchResult match(const PersonFacts& facts) const;
  [[nodiscard]] std::size_t size() const;

 private:
  struct Tables;
  std::unique_ptr<const Tables> tables_;
};

/// The evidence for two records being one person, without a prior. Symmetric.
[[nodiscard]] std::vector<Evidence> compare_persons(const PersonFacts& a, const PersonFacts& b);

}  // namespace weavelog
