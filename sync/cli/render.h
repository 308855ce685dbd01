#pragma once
// Rows and findings as --json documents and as lines for people.

#include <boost/json.hpp>
#include <set>
#include <span>
#include <string>
#include <vector>

#include "core/desk/check_setup.h"
#include "core/desk/questions.h"
#include "core/model/queries.h"
#include "core/people/arrival.h"
#include "sync/cli/told_times.h"
#include "sync/exchange/session.h"

namespace weavelog::cli {

namespace json = boost::json;

/// {"book", "family_name", "given_name", "native_name", "country", "birth_year", "consent", "last_event",
/// "last_at"}; what is not known is left out, as in exports.
[[nodiscard]] json::object row_json(const PlayerRow& row);
/// "Wendelmoor Ilse (NED, 2002)  last: Harbour Open, Mon, May 26, 11:00 AM  019..."
[[nodiscard]] std::string row_text(const PlayerRow& row, ToldTimes& told);
[[nodiscard]] std::string name_text(const std::string& family, const std::string& given,
                                    const std::string& native);

/// {"job", "book", "event", "event_name", "player", "racket", "racket_label", "tag_number", "stage", "clash",
/// "at", "ready_by", "rush", "mains_string", "mains_tension", "crosses_string", "crosses_tension"}.
[[nodiscard]] json::object row_json(const JobRow& row);
[[nodiscard]] std::string row_text(const JobRow& row, ToldTimes& told);
/// The same where doubled_tags() are known: one of them is said beside the tag ("tag_doubled"), with the job's number, by which to name it.
[[nodiscard]] json::object row_json(const JobRow& row, const std::set<std::int64_t>& doubled);
[[nodiscard]] std::string row_text(const JobRow& row, ToldTimes& told, const std::set<std::int64_t>& doubled);

[[nodiscard]] json::object row_json(const EventRow& row);
/// {"entry", "family_name", ..., "band", "linked", "candidates": [{"book", "name", "probability", "evidence",
/// "last", "may_cross"}]}
[[nodiscard]] json::object line_json(const ArrivalLine& line);
[[nodiscard]] std::string line_text(const ArrivalLine& line);
[[nodiscard]] std::string_view name_of_band(MatchBand band);
/// "name same, country same, birth_year near".
[[nodiscard]] std::string evidence_text(const std::vector<Evidence>& evidence);
/// {field: {"agreement", "bits"}}, and "swapped" or "other_name" where the names met so.
[[nodiscard]] json::object evidence_bits_json(const Candidate& candidate);

/// {"number", "book", "field", "subject", "answers": [{"pick", "value", "device", "event", "at", "action"}]}
[[nodiscard]] json::object question_json(const QuestionLine& line, std::size_t number);
[[nodiscard]] std::string question_text(const Language& language, const QuestionLine& line,
                                        std::size_t number, ToldTimes& told);

/// {"field", "before", "after"}, values as a person reads them.
[[nodiscard]] json::array changes_json(const Language& language, const std::vector<Change>& changes);
/// {"refused", "code", "field", "what", "what_to_do"}
[[nodiscard]] json::array findings_json(const Language& language, const std::vector<SetupFinding>& findings);
[[nodiscard]] std::string findings_text(const Language& language, const std::vector<SetupFinding>& findings);

/// A setup's or job's values, "  mains tension: 25 kg", those not said left out.
[[nodiscard]] std::string agreed_text(const Language& language, const Agreed& agreed);

/// A line that says why layers two and three were not compared; empty if they were.
[[nodiscard]] std::string not_compared_line(const VerifyReport& report);

/// {"host", "role", "event", "sent", "received", "quarantined", "forgotten", "not_kept", "not_begun", "forks", "clock_ahead_ms", "wrong_clocks", "agreed", "words",
/// "books", "at"}
[[nodiscard]] json::object exchange_json(const SessionStatus& status);
[[nodiscard]] std::string exchange_text(const SessionStatus& status);
/// Books that the other side did not take, as a guest tells it.
[[nodiscard]] std::string not_begun_words(std::uint64_t books);

}  // namespace weavelog::cli
