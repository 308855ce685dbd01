#pragma once
// Is this person of the entry list one that we know? Certain, likely (a person is asked) or new.

#include <cstdint>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "core/base/id.h"
#include "core/people/match_weights.h"
#include "core/people/person_facts.h"

namespace weavelog {

enum class EvidenceField : std::uint8_t { name, country, birth_year, hand, tour_number, rackets, strings, others };
enum class Likeness : std::uint8_t {
  unsaid,      ///< one side does not say
  same,        ///< rackets and strings: one of them is
  near,        ///< name: spelling differs; birth year: one or ten off, digits turned; tour number: a slip
  short_form,  ///< name: a usual short form of the given name
  part,        ///< name: a part or an initial of it
  family,      ///< name: the family name only
  given,       ///< name: the given name only
  different,
  possible,  ///< others: a relative or somebody of the same name would look alike
};

struct Evidence {
  EvidenceField field;
  Likeness agreement;
  double weight;  ///< bits for (positive) or against
  bool operator==(const Evidence&) const = default;
};

struct Candidate {
  BookId book;
  double weight = 0;       ///< bits, prior included
  double probability = 0;  ///< that it is this one, given all candidates and that it may be none
  std::vector<Evidence> evidence;
  bool swapped = false;  ///< family and given name changed places
  bool alias = false;    ///< by the native or another name of one of the two

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

/// What mistakes cost, in questions: the bands follow from it.
struct MatchCosts {
  double wrong = 2'500;  ///< one player's history given to another without a question
  double against = 5;    ///< so many times more, where strings speak against it and no tour number for it: namesakes of one racket come out so
  double missed = 5;     ///< one who is known taken for new: found out later, then linked by hand

  /// From here on asking costs more than taking it for true.
  [[nodiscard]] double known(bool doubtful = false) const { return 1 - 1 / (doubtful ? against * wrong : wrong); }
  /// Below this asking costs more than taking it for false.
  [[nodiscard]] double likely() const { return 1 / missed; }
};

/// All persons known here, ready to be asked. Immutable, so any number of threads may ask. 5,000 persons take
/// some ten megabytes.
///
/// *Known* needs the probability that the costs ask for, no birth years far apart, and beside the name another field that agrees.
class PersonIndex {
 public:
  static constexpr std::size_t kMaxCandidates = 5;

  explicit PersonIndex(const std::vector<std::pair<BookId, PersonFacts>>& persons, const MatchWeights& weights = MatchWeights::usual(),
                       const MatchCosts& costs = {});
  ~PersonIndex();
  PersonIndex(PersonIndex&&) noexcept;
  PersonIndex& operator=(PersonIndex&&) noexcept;

  [[nodiscard]] MatchResult match(const PersonFacts& facts) const;
  [[nodiscard]] std::size_t size() const;

  /// For learning: every comparison that match() would look at, and two persons known here compared with each other.
  [[nodiscard]] std::vector<Comparison> comparisons(const PersonFacts& facts) const;
  [[nodiscard]] Comparison compared(std::size_t a, std::size_t b) const;
  /// The folded country of a person known here, "" if it is not said.
  [[nodiscard]] const std::string& country(std::size_t person) const;
  /// As many persons as the priors are shared out among.
  [[nodiscard]] double circuit() const;

 private:
  struct Tables;
  std::unique_ptr<const Tables> tables_;
};

/// The evidence for two records being one person, without a prior and without knowing how common names are here. Symmetric.
[[nodiscard]] std::vector<Evidence> compare_persons(const PersonFacts& a, const PersonFacts& b);
/// What a comparison says, in bits by the weights, relatives and namesakes among `persons` included.
[[nodiscard]] std::vector<Evidence> evidence_of(const Comparison& comparison, const MatchWeights& weights, double persons);

}  // namespace weavelog
