#include "core/desk/cautions.h"

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
  }
  return {};
}

std::string caution_text(const Language& language, Caution caution) {
  return desk_words().say(language, "caution." + std::string(name_of(caution)));
}

std::vector<Caution> cautions_for(Stage next, const Agreed& agreed, const Racket* racket, bool frame_doubt) {
  std::vector<Caution> cautions;
  if (frame_doubt && next != Stage::collected && next != Stage::aside)
    cautions.push_back(Caution::cracked_frame);
  if (next == Stage::cut_out) cautions.push_back(Caution::cut_out);
  if (next == Stage::on_machine) cautions.push_back(Caution::under_tension);
  if ((next == Stage::received || next == Stage::on_machine) && over_range(agreed, racket))
    cautions.push_back(Caution::tension_over_range);
  return cautions;
}

}  // namespace weavelog
