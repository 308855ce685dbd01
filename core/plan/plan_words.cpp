#include "core/plan/plan_words.h"

#include <cmath>

namespace weavelog {

const Phrases& plan_words() {
  static const Phrases words({plan_phrases()});
  return words;
}

std::string round_words(const Language& language, int rounds, int round) {
  const std::int64_t matches = std::int64_t{1} << (rounds - round);
  const std::string key = "round." + std::to_string(matches);
  return plan_words().has(key) ? plan_words().say(language, key) : plan_words().say(language, "round.other", {{"n", 2 * matches}});
}

std::string round_words(const Language& language, const HomeBenches& room, const BenchMeeting& meeting) {
  const DrawnPeople& draw = room.draw(meeting.draw);
  return draw.further > 0 ? plan_words().say(language, "round.qualifying") : round_words(language, draw.bracket->rounds(), meeting.round);
}

std::string reason_words(const Language& language, const HomeBenches& room, const BenchChoice& choice, std::size_t person,
                         const BenchReason& reason) {
  const HomeBench& here = room.benches()[choice[person]];
  PhraseArgs args{
      {"player", room.people()[person].name}, {"bench", here.name}, {"stringer", here.stringer}, {"other", room.benches()[reason.other_bench].name}};
  if (reason.meeting) {
    const double percent = 100 * reason.meeting->odds;
    args.emplace_back("opponent", room.people()[reason.meeting->other].name);
    args.emplace_back("round", round_words(language, room, *reason.meeting));
    args.emplace_back("odds", percent < 1 ? "< 1" : std::to_string(std::lround(percent)));
  }
  return plan_words().say(language, "reason." + std::string(name_of(reason.kind)), args);
}

std::string_view name_of(BenchReason::Kind kind) {
  switch (kind) {
    case BenchReason::Kind::pinned: return "pinned";
    case BenchReason::Kind::wished: return "wished";
    case BenchReason::Kind::only_one: return "only_one";
    case BenchReason::Kind::apart: return "apart";
    case BenchReason::Kind::even_load: return "even_load";
    case BenchReason::Kind::before: return "before";
    case BenchReason::Kind::stayed: return "stayed";
    case BenchReason::Kind::skill: return "skill";
    case BenchReason::Kind::language: return "language";
    case BenchReason::Kind::as_good: return "as_good";
  }
  return {};
}

std::string_view name_of(BenchSolution::Rule rule) {
  switch (rule) {
    case BenchSolution::Rule::none: return "none";
    case BenchSolution::Rule::kept: return "kept";
    case BenchSolution::Rule::impossible: return "impossible";
    case BenchSolution::Rule::not_found: return "not_found";
  }
  return {};
}

}  // namespace weavelog
