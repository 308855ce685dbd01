#include "sync/cli/render.h"

#include "core/base/iso_time.h"
#include "core/desk/phrases.h"
#include "core/model/field_json.h"
#include "sync/trust/proquint.h"

namespace weavelog::cli {
namespace {

/// Sets a member unless it holds nothing.
template <class T>
void put(json::object& out, std::string_view name, const T& member) {
  if (!is_cleared(to_value(member))) out[name] = to_json(name, member);
}

constexpr std::string_view kEvidenceNames[] = {"name", "country", "birth_year", "hand", "tour_number", "rackets", "strings", "others"};
constexpr std::string_view kLikenessNames[] = {"unsaid", "same", "near", "short_form", "part", "family", "given", "different", "possible"};
constexpr std::string_view kBandNames[] = {"known", "likely", "new"};

json::object evidence_json(const std::vector<Evidence>& evidence) {
  json::object out;
  for (const Evidence& one : evidence)
    if (one.agreement != Likeness::unsaid)
      out[kEvidenceNames[static_cast<std::size_t>(one.field)]] =
          json::string(kLikenessNames[static_cast<std::size_t>(one.agreement)]);
  return out;
}

json::object last_json(const LastSetup& last) {
  json::object out;
  put(out, "mains_string", last.mains_string);
  put(out, "crosses_string", last.crosses_string);
  put(out, "mains_tension", last.mains_tension);
  put(out, "crosses_tension", last.crosses_tension);
  out["tensions"] = last.tensions();
  put(out, "event_name", last.event_name);
  put(out, "at", last.at);
  if (last.days) out["days_ago"] = *last.days;
  return out;
}

}  // namespace

std::string name_text(const std::string& family, const std::string& given, const std::string& native) {
  std::string name = family;
  if (!given.empty()) name += (name.empty() ? "" : " ") + given;
  if (name.empty()) return native;
  return native.empty() ? name : name + " · " + native;
}

json::object row_json(const PlayerRow& row) {
  json::object out{{"book", row.book.hex()}};
  put(out, "family_name", row.family_name);
  put(out, "given_name", row.given_name);
  put(out, "native_name", row.native_name);
  put(out, "country", row.country);
  put(out, "birth_year", row.birth_year);
  put(out, "hand", row.hand);
  put(out, "tour_number", row.tour_number);
  put(out, "consent", row.consent);
  put(out, "last_event", row.last_event);
  put(out, "last_at", row.last_at);
  return out;
}

std::string row_text(const PlayerRow& row, ToldTimes& told) {
  std::string out = name_text(row.family_name, row.given_name, row.native_name);
  if (!row.country.empty() || row.birth_year) {
    out += " (" + row.country;
    if (row.birth_year) out += (row.country.empty() ? "" : ", ") + std::to_string(*row.birth_year);
    out += ")";
  }
  if (row.last_at)
    out += "  last: " + (row.last_event.empty() ? "" : row.last_event + ", ") + told(*row.last_at);
  return out + "  " + row.book.hex();
}

json::object row_json(const JobRow& row) {
  json::object out{{"job", row.job.hex()}, {"book", row.book.hex()}};
  put(out, "event", row.event);
  put(out, "event_name", row.event_name);
  out["player"] = name_text(row.family_name, row.given_name, row.native_name);
  put(out, "racket", row.racket);
  put(out, "racket_label", row.racket_label);
  put(out, "racket_model", row.racket_model);
  put(out, "drop_off", row.drop_off);
  put(out, "tag_number", row.tag_number);
  out["stage"] = to_json("stage", row.stage);
  put(out, "stage_at", row.stage_at);
  put(out, "stage_by", row.stage_by);
  out["clash"] = row.clash;
  put(out, "at", row.at);
  put(out, "ready_by", row.ready_by);
  put(out, "rush", row.rush);
  put(out, "mains_string", row.mains_string);
  put(out, "mains_tension", row.mains_tension);
  put(out, "crosses_string", row.crosses_string);
  put(out, "crosses_tension", row.crosses_tension);
  return out;
}

json::object row_json(const JobRow& row, const std::set<std::int64_t>& doubled) {
  json::object out = row_json(row);
  if (row.tag_number) out["tag_doubled"] = doubled.contains(*row.tag_number);
  return out;
}

std::string row_text(const JobRow& row, ToldTimes& told) { return row_text(row, told, {}); }

std::string row_text(const JobRow& row, ToldTimes& told, const std::set<std::int64_t>& doubled) {
  LastSetup tensions;
  tensions.mains_tension = row.mains_tension;
  tensions.crosses_tension = row.crosses_tension;
  std::string out = row.tag_number ? "tag " + std::to_string(*row.tag_number) : "job " + row.job.hex();
  if (row.tag_number && doubled.contains(*row.tag_number)) out += " DOUBLED (job " + row.job.hex() + ")";
  out += "  " + name_text(row.family_name, row.given_name, row.native_name);
  if (!row.racket_label.empty()) out += ", racket " + row.racket_label;
  out += "  " + tensions.tensions() + "  " + std::string(name_of_choice(row.stage));
  if (row.clash) out += " (moved on by two people: look)";
  if (row.ready_by) out += "  ready by " + told(*row.ready_by, row.event);
  if (row.rush != Rush::none) out += "  " + std::string(name_of_choice(row.rush));
  return out;
}

json::object row_json(const EventRow& row) {
  json::object out{{"book", row.book.hex()}};
  put(out, "name", row.name);
  put(out, "place", row.place);
  put(out, "first_day", row.first_day);
  put(out, "last_day", row.last_day);
  out["open_jobs"] = row.open_jobs;
  return out;
}

std::string evidence_text(const std::vector<Evidence>& evidence) {
  std::string out;
  for (const Evidence& one : evidence) {
    if (one.agreement == Likeness::unsaid) continue;
    if (!out.empty()) out += ", ";
    out += std::string(kEvidenceNames[static_cast<std::size_t>(one.field)]) + " " +
           std::string(kLikenessNames[static_cast<std::size_t>(one.agreement)]);
  }
  return out;
}

json::object evidence_bits_json(const Candidate& candidate) {
  json::object out;
  for (const Evidence& one : candidate.evidence)
    if (one.agreement != Likeness::unsaid)
      out[kEvidenceNames[static_cast<std::size_t>(one.field)]] =
          json::object{{"agreement", kLikenessNames[static_cast<std::size_t>(one.agreement)]}, {"bits", one.weight}};
  if (candidate.swapped) out["swapped"] = true;
  if (candidate.alias) out["other_name"] = true;
  return out;
}

std::string_view name_of_band(MatchBand band) {
  return kBandNames[static_cast<std::size_t>(band)];
}

json::object line_json(const ArrivalLine& line) {
  json::object out{{"entry", line.entry.hex()}};
  for (auto& [name, value] : fields_json(line.item)) out[name] = value;
  out["band"] = name_of_band(line.band);
  out["linked"] = line.linked;
  json::array candidates;
  for (const ArrivalCandidate& candidate : line.candidates) {
    json::object one{{"book", candidate.match.book.hex()},
                     {"name", name_text(candidate.player.family_name, candidate.player.given_name,
                                        candidate.player.native_name)},
                     {"probability", candidate.match.probability},
                     {"evidence", evidence_json(candidate.match.evidence)},
                     {"may_cross", candidate.may_cross}};
    if (candidate.last) one["last"] = last_json(*candidate.last);
    candidates.push_back(std::move(one));
  }
  out["candidates"] = std::move(candidates);
  return out;
}

std::string line_text(const ArrivalLine& line) {
  std::string out(name_of_band(line.band));
  out += "  " + name_text(line.item.family_name, line.item.given_name, line.item.native_name);
  if (!line.item.country.empty()) out += " (" + line.item.country + ")";
  for (const ArrivalCandidate& candidate : line.candidates) {
    out +=
        "\n    " +
        name_text(candidate.player.family_name, candidate.player.given_name, candidate.player.native_name) +
        ": " + evidence_text(candidate.match.evidence);
    if (candidate.last) {
      out += "; last " + candidate.last->tensions();
      if (candidate.last->days) out += ", " + std::to_string(*candidate.last->days) + " days ago";
    }
    if (!candidate.may_cross) out += "; did not agree to travel";
    out += "  " + candidate.match.book.hex();
  }
  return out;
}

json::object question_json(const QuestionLine& line, std::size_t number) {
  json::object out{{"number", number},
                   {"book", line.question.book.hex()},
                   {"entity", line.question.entity.hex()},
                   {"field", line.field},
                   {"subject", line.subject}};
  if (line.tag_number) out["tag"] = *line.tag_number;
  json::array answers;
  for (std::size_t i = 0; i < line.answers.size(); ++i) {
    const AnswerLine& answer = line.answers[i];
    answers.push_back(json::object{{"pick", i + 1},
                                   {"value", answer_words({}, line, answer.value)},
                                   {"device", answer.device},
                                   {"event", answer.event_name},
                                   {"at", iso_utc(answer.at)},
                                   {"action", name_of(answer.action)}});
  }
  out["answers"] = std::move(answers);
  return out;
}

std::string question_text(const Language& language, const QuestionLine& line, std::size_t number, ToldTimes& told) {
  std::string out = std::to_string(number) + ". " + field_words(language, line.field);
  if (!line.subject.empty()) out += " (" + setup_words(language, line.subject) + (line.tag_number ? ", tag " + std::to_string(*line.tag_number) : "") + ")";
  for (std::size_t i = 0; i < line.answers.size(); ++i) {
    const AnswerLine& answer = line.answers[i];
    out += "\n   " + std::to_string(i + 1) + ") " + answer_words(language, line, answer.value) + "  " +
           answer.device + (answer.event_name.empty() ? "" : ", " + answer.event_name) + ", " +
           told(answer.at);
  }
  return out;
}

json::array changes_json(const Language& language, const std::vector<Change>& changes) {
  json::array out;
  for (const Change& change : changes)
    out.push_back(json::object{{"field", change.name},
                               {"before", value_words(language, change.name, change.before)},
                               {"after", value_words(language, change.name, change.after)}});
  return out;
}

json::array findings_json(const Language& language, const std::vector<SetupFinding>& findings) {
  json::array out;
  for (const SetupFinding& finding : findings)
    out.push_back(json::object{{"refused", finding.refused},
                               {"code", finding.code},
                               {"field", finding.field},
                               {"what", finding.what(language)},
                               {"what_to_do", finding.what_to_do(language)}});
  return out;
}

std::string findings_text(const Language& language, const std::vector<SetupFinding>& findings) {
  std::string out;
  for (const SetupFinding& finding : findings)
    out += std::string(finding.refused ? "refused: " : "look: ") + finding.where(language) + ": " +
           finding.what(language) + "; " + finding.what_to_do(language) + "\n";
  return out;
}

std::string agreed_text(const Language& language, const Agreed& agreed) {
  std::string out;
  for_each_field<Agreed>([&](FieldTag, std::string_view name, bool, auto member) {
    const Value value = to_value(agreed.*member);
    if (!is_cleared(value))
      out += "  " + field_words(language, name) + ": " + value_words(language, name, value) + "\n";
  });
  return out;
}

json::object exchange_json(const SessionStatus& status) {
  json::object out{{"host", status.peer.device}, {"role", name_of(status.role)}};
  put(out, "event", status.event);
  out["sent"] = status.entries_sent;
  out["received"] = status.entries_received;
  out["quarantined"] = status.quarantined;
  out["forgotten"] = status.forgotten;
  out["not_kept"] = status.not_kept;
  out["not_begun"] = status.not_begun;
  out["forks"] = status.forks;
  out["clock_ahead_ms"] = status.clock_ahead_ms;
  json::array clocks;
  for (const std::string& device : status.wrong_clocks) clocks.emplace_back(device);
  out["wrong_clocks"] = std::move(clocks);
  out["agreed"] = status.agreed.has_value();
  if (status.agreed) {
    out["words"] = agreement_words(status.agreed->digest);
    out["books"] = status.agreed->books;
    out["at"] = iso_utc(status.agreed->at);
  }
  return out;
}

std::string exchange_text(const SessionStatus& status) {
  std::string out = status.peer.device + ": " + std::to_string(status.entries_sent) + " entries sent, " +
                    std::to_string(status.entries_received) + " received";
  if (status.quarantined > 0)
    out += ", " + std::to_string(status.quarantined) + " put aside (see `quarantine`)";
  if (status.forgotten > 0)
    out += "\n" + std::to_string(status.forgotten) + " players withdrew and were erased here (see `forgotten`)";
  if (status.not_kept > 0)
    out += "\n" + std::to_string(status.not_kept) + " players' books were given that may not be kept here, by what the players agreed to; they were let go again";
  if (status.not_begun > 0) out += "\n" + not_begun_words(status.not_begun);
  if (status.forks > 0)
    out += "\n" + std::to_string(status.forks) +
           " chains have parted: a device was copied and both copies wrote (see `verify`)";
  for (const std::string& device : status.wrong_clocks)
    out += "\nthe clock of \"" + device + "\" is far ahead; set it right";
  if (status.clock_ahead_ms > HybridClock::kTooFarAhead || status.clock_ahead_ms < -HybridClock::kTooFarAhead)
    out += "\nthe clocks of the two devices are " + std::to_string(status.clock_ahead_ms / 60'000) +
           " minutes apart";
  if (status.agreed)
    out += "\nboth agree on " + std::to_string(status.agreed->books) +
           " books: " + agreement_words(status.agreed->digest);
  return out;
}

std::string not_begun_words(std::uint64_t books) {
  return (books == 1 ? std::string("one book of this device was") : std::to_string(books) + " books of this device were") +
         " not taken there: another event's, which only a head's device may bring, or a player's who did not agree to it";
}

std::string not_compared_line(const VerifyReport& report) {
  if (report.not_compared.empty()) return {};
  return "the entries are whole, but whether the screens show what they give could not be looked at: " + report.not_compared + "; try again\n";
}

}  // namespace weavelog::cli
