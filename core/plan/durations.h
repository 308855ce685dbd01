#pragma once
// How long a racket takes at the bench, learned from readings: a lognormal time, whose logarithm adds up from the room, the string's
// material, the pattern, one or two pieces, and the stringer. All of these begin at first guesses and move away from them only as far as
// readings carry them: with few of their own a stringer counts as the room, with many as themselves (normal priors on the logarithm; what
// stringers differ by among each other is learned too).
//
// Assumptions, our own: the parts multiply; stringers do not change over an event; a reading is far off if it lies more than 3.5 spreads from
// what the others say (an interruption, a forgotten stop), and is left out then.

#include <map>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace weavelog {

/// What of a racket says how long it takes. Nothing said counts as usual.
struct WorkKind {
  std::string pattern;   ///< "16x19", "16 × 19"
  std::string material;  ///< "natural gut", "multifilament", "synthetic gut", "polyester", "hybrid", or any other word
  int pieces = 1;        ///< 1 or 2
};

/// One racket that was strung: from its coming on the machine to its being strung.
struct WorkReading {
  std::string stringer;
  WorkKind kind;
  double minutes = 0;
};

/// Less or more than this is no racket that was strung without a break: common practice, no source.
inline constexpr double kShortestWork = 4, kLongestWork = 240;  // minutes

/// A lognormal time. Its logarithm is in doubt by a part that is the same for all rackets of one stringer (how well stringer, room and kind
/// of work are known) and by one that is new with every racket.
struct WorkTime {
  double log_median = 0;  ///< of minutes
  double shared = 0;      ///< standard deviation of the stringer's part
  double own = 0;         ///< standard deviation of the racket's part

  [[nodiscard]] double sigma() const;
  [[nodiscard]] double median() const;             ///< minutes
  [[nodiscard]] double mean() const;               ///< minutes
  [[nodiscard]] double spread() const;             ///< minutes: standard deviation
  [[nodiscard]] double quantile(double p) const;   ///< minutes; 0 < p < 1
};

class WorkTimes {
 public:
  /// With no readings: the first guesses alone.
  explicit WorkTimes(std::span<const WorkReading> readings = {});

  /// Of a racket at a stringer; nobody ("") or one of whom nothing is known is anybody of the room.
  [[nodiscard]] WorkTime of(std::string_view stringer, const WorkKind& kind) const;
  /// Of the doubt about such rackets, what is the same for two stringers (as a standard deviation of the logarithm; none if they are not
  /// doubted alike): if the room is slower than thought, both are.
  [[nodiscard]] double in_common(std::string_view one, std::string_view other, const WorkKind& kind) const;
  /// How many times as long as the room a stringer takes; 1 of one who is not known.
  [[nodiscard]] double pace(std::string_view stringer) const;

  struct Stringer {
    std::string name;
    std::size_t readings = 0;
    double pace = 1;    ///< times as long as the room
    double spread = 0;  ///< standard deviation of the logarithm of one racket's time
    std::size_t part = 0;  ///< its number among the parts below
  };
  /// In order of their names.
  [[nodiscard]] const std::vector<Stringer>& stringers() const { return stringers_; }
  [[nodiscard]] std::size_t used() const { return used_; }
  /// Places among the readings that were left out: impossible, or far off.
  [[nodiscard]] const std::vector<std::size_t>& ignored() const { return ignored_; }

 private:
  [[nodiscard]] std::vector<std::size_t> parts_of(std::string_view stringer, const WorkKind& kind) const;

  // Parts of the logarithm: 0 the room, 1 two pieces, then materials, patterns, stringers, as they came out, with their covariances.
  std::vector<double> parts_, covariances_;
  std::map<std::string, std::size_t> materials_, patterns_;
  std::vector<Stringer> stringers_;
  double between_ = 0;  // standard deviation between stringers
  double noise_ = 0;
  std::size_t used_ = 0;
  std::vector<std::size_t> ignored_;
};

/// "16x19" for every way to write it; what is no pattern as it stands.
[[nodiscard]] std::string pattern_key(std::string_view pattern);

}  // namespace weavelog
