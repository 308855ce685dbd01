#include "core/desk/cautions.h"

#include <algorithm>
#include <array>

#include "core/base/text.h"
#include "core/desk/stages.h"

namespace weavelog {
namespace {

bool over_range(const Agreed& agreed, const Racket* racket) {
  const auto high = racket && racket->tension_high ? in_newtons(*racket->tension_high) : std::nullopt;
  if (!high) return false;
  const auto over = [&](const std::optional<Quantity>& tension) {
    return tension && in_newtons(*tension).value_or(0) > *high;
  };
  return over(agreed.mains_tension) || over(agreed.crosses_tension);
}

/// As search keys have them. Beginnings of words, and words that begin names or other words.
constexpr std::array<std::string_view, 11> kPainBeginnings{"elbow",      "injur",   "coude",     "douleur",
                                                           "douloureu",  "blessur", "epicond",   "ellbogen",
                                                           "ellenbogen", "schmerz", "armschmerz"};
constexpr std::array<std::string_view, 9> kPainWords{"pain",  "pains", "painful", "sore",     "hurt",
                                                     "hurts", "codo",  "dolor",   "tennisarm"};

}  // namespace

std::string_view name_of(Caution caution) {
  switch (caution) {
    case Caution::cut_out:
      return "cut_out";
    case Caution::under_tension:
      return "under_tension";
    case Caution::cracked_frame:
      return "cracked_frame";
    case Caution::tension_over_range:
      return "tension_over_range";
    case Caution::arm_pain:
      return "arm_pain";
    case Caution::stencil_ink:
      return "stencil_ink";
  }
  return {};
}

std::string caution_text(const Language& language, Caution caution) {
  return desk_words().say(language, "caution." + std::string(name_of(caution)));
}

std::string caution_for_player(const Language& language, Caution caution) {
  const std::string key = "caution." + std::string(name_of(caution)) + ".player";
  return desk_words().has(key) ? desk_words().say(language, key) : caution_text(language, caution);
}

std::optional<std::string> doubt_about(const PlayerRecord& record, const EntityId& racket) {
  if (!racket) return std::nullopt;
  for (const auto& finding : record.findings)
    if (finding.now.racket == racket && finding.now.fault == FrameFault::crack && !finding.now.mended_at)
      return finding.now.note;
  const auto newest = std::find_if(record.jobs.rbegin(), record.jobs.rend(),
                                   [&](const Loaded<Job>& job) { return job.now.racket == racket; });
  if (newest == record.jobs.rend()) return std::nullopt;
  const Stage now = record.stage_of(newest->id()).stage;
  if (now != Stage::waiting && now != Stage::aside) return std::nullopt;
  std::optional<std::string> doubt;
  for (const auto& placed : marks_of(record, newest->id()))
    if (placed.mark.stage == Stage::waiting) doubt = placed.mark.reason;
  return doubt;
}

bool speaks_of_pain(std::string_view note) {
  const std::string key = search_key(note);
  const auto words = words_of(key);
  return std::any_of(words.begin(), words.end(), [](std::string_view word) {
    return std::find(kPainWords.begin(), kPainWords.end(), word) != kPainWords.end() ||
           std::any_of(kPainBeginnings.begin(), kPainBeginnings.end(),
                       [&](std::string_view begin) { return word.starts_with(begin); });
  });
}

std::vector<Caution> cautions_at_desk(const PlayerRecord& record, const EntityId& known, const Racket* racket,
                                      const Agreed& agreed) {
  auto cautions = cautions_for(Stage::received, agreed, racket, doubt_about(record, known).has_value());
  if (speaks_of_pain(agreed.note) || speaks_of_pain(record.person.now.note))
    cautions.push_back(Caution::arm_pain);
  return cautions;
}

std::vector<Caution> cautions_for(Stage next, const Agreed& agreed, const Racket* racket, bool frame_doubt) {
  std::vector<Caution> cautions;
  if (frame_doubt && next != Stage::collected && next != Stage::aside)
    cautions.push_back(Caution::cracked_frame);
  if (next == Stage::cut_out) cautions.push_back(Caution::cut_out);
  if (next == Stage::on_machine) cautions.push_back(Caution::under_tension);
  if ((next == Stage::received || next == Stage::on_machine) && over_range(agreed, racket))
    cautions.push_back(Caution::tension_over_range);
  if (next == Stage::cut_out && speaks_of_pain(agreed.note)) cautions.push_back(Caution::arm_pain);
  if (next == Stage::stencilled) cautions.push_back(Caution::stencil_ink);
  return cautions;
}

}  // namespace weavelog
