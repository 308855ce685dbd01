#pragma once
// What a room has today: rackets strung before, in a table that somebody kept by hand, read from CSV.
//
// Columns of ours, in any order: family_name, given_name, name (both in one: "Family, Given" or "Given Family"), native_name, country, birth_year, hand,
// tour_number; date (2031-05-26, 26.05.2031, or with slashes in the order that the whole table tells), event, racket, maker, model; mains_string, mains_gauge, mains_tension, crosses_string,
// crosses_gauge, crosses_tension, string and tension (both directions in one: "25/24", "25"), prestretch, stringer, note. A name, and a string or a
// tension, are required. Headers are recognised by common words for these in four languages, or said by hand.

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/csv.h"
#include "core/desk/past_job_columns.h"
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

/// The last day on which something can have been strung, for PastJobsOptions: that of the device's clock, wherever on the earth it is.
[[nodiscard]] std::string last_past_day(UnixMs now);

/// In which order dates with slashes are written.
enum class DayOrder : std::uint8_t { unsaid, days_first, months_first };
/// How that is known.
enum class DayOrderBy : std::uint8_t {
  none,   ///< nothing hangs on it: there are no such dates, or both orders make the same days of them
  said,   ///< a person said it
  table,  ///< a number above 12 tells it
  taken,  ///< nothing tells: days first was taken, as most lists have it; to be asked about
  clash,  ///< the table tells both (only with leave_doubts): days first was taken, what does not fit is broken
};

struct PastJobsOptions {
  CsvOptions csv;
  /// Ours and the file's header: these columns and, for what is not named here, those that are recognised.
  std::vector<std::pair<std::string, std::string>> columns;
  /// One of ours or "" for every column of the file, as a person looked at them: `columns` and the words of the headers do not count then.
  std::optional<std::vector<std::string>> meanings;
  /// Of tensions for which neither cell nor header says one; nothing: found from the figures.
  std::optional<Unit> unit;
  DayOrder day_order = DayOrder::unsaid;  ///< unsaid: found from the dates
  std::string last_day;                   ///< ISO 8601: nothing was strung on a later one, so such a row is broken; "": any day will do
  /// For who asks a person: where the figures tell no unit, or the dates both orders, the table is read all the same and PastJobs says so.
  bool leave_doubts = false;
};

/// Why a row was left out, for people in the fault, and apart for who says it in another language.
struct PastFault : Fault {
  std::size_t line = 0;  ///< of the file
  std::string ours;      ///< the column of ours that is wrong
  std::string cell;      ///< what stands there; "" for nothing
  bool odd_unit = false; ///< a tension that is none in the unit of the others, or of its header
  bool to_come = false;  ///< a day after PastJobsOptions::last_day
  std::optional<CsvFault> broken;  ///< the row itself can't be read as one of the table
};

struct PastJobs {
  std::vector<PastJob> rows;
  std::vector<PastFault> faults;   ///< why rows were left out: line, column, what was expected
  std::vector<ColumnUse> columns;  ///< in the file's order
  Unit unit = Unit::none;          ///< in which tensions without a unit were read; none if all say theirs
  bool unit_found = false;         ///< by the figures, not said: to be looked at
  bool unit_open = false;          ///< only with leave_doubts: the figures fit no single unit; tensions have none where nothing says one
  DayOrder day_order = DayOrder::unsaid;  ///< in which dates with slashes were read; unsaid if there are none
  DayOrderBy day_order_by = DayOrderBy::none;
};

/// Fails as a whole where read_csv() does; bad_input if no column holds a name, none a string or a tension, a column was named that the file or we do
/// not have, two are taken for one, tensions without a unit fit no single one, or dates with slashes are in both orders.
[[nodiscard]] Outcome<PastJobs> read_past_jobs(std::string_view bytes, const PastJobsOptions& options = {}, std::string_view source = {});
/// The same of a table that was read already.
[[nodiscard]] Outcome<PastJobs> past_jobs_of(const CsvTable& table, const PastJobsOptions& options = {}, std::string_view source = {});

}  // namespace weavelog
