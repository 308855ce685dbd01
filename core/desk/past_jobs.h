#pragma once
// What a room has today: rackets strung before, in a table that somebody kept by hand, read from CSV.
//
// Columns of ours, in any order: family_name, given_name, name (both in one: "Family, Given" or "Given Family"), native_name, country, birth_year, hand,
// tour_number; date (2031-05-26, 26.05.2031 or 26/05/2031), event, racket, maker, model; mains_string, mains_gauge, mains_tension, crosses_string,
// crosses_gauge, crosses_tension, string and tension (both directions in one: "25/24", "25"), prestretch, stringer, note. A name, and a string or a
// tension, are required. Headers are recognised by common words for these in four languages, or said by hand.

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/csv.h"
#include "core/model/player.h"

namespace weavelog {

struct PastJob {
  std::size_t line = 0;  ///< of the file
  Person person;
  std::string date;  ///< ISO 8601; "" if it was not said
  std::string event_name;
  Racket racket;     ///< label, maker, model
  Agreed agreed;
  std::string stringer;
};

struct PastJobsOptions {
  CsvOptions csv;
  /// Ours and the file's header: these columns and, for what is not named here, those that are recognised.
  std::vector<std::pair<std::string, std::string>> columns;
  /// Of tensions without one; nothing: found from the figures.
  std::optional<Unit> unit;
};

/// What a header of the file was taken for; "" for nothing.
struct ColumnUse {
  std::string header;
  std::string ours;
};

struct PastJobs {
  std::vector<PastJob> rows;
  std::vector<Fault> faults;       ///< why rows were left out: line, column, what was expected
  std::vector<ColumnUse> columns;  ///< in the file's order
  Unit unit = Unit::none;          ///< in which tensions without a unit were read; none if all say theirs
  bool unit_found = false;         ///< by the figures, not said: to be looked at
};

/// Names of our columns, in the order above.
[[nodiscard]] std::vector<std::string_view> past_job_columns();

/// Fails as a whole where read_csv() does; bad_input if no column holds a name, none a string or a tension, a column was named that the file or we do
/// not have, two are taken for one, or tensions without a unit fit no single one (with the lines: say the unit).
[[nodiscard]] Outcome<PastJobs> read_past_jobs(std::string_view bytes, const PastJobsOptions& options = {}, std::string_view source = {});

}  // namespace weavelog
