#include "core/desk/first_time.h"

#include <array>

namespace weavelog {
namespace {

constexpr auto kQuestions = std::to_array<FirstTimeQuestion>({
    {AskedOf::person, "family_name", true},
    {AskedOf::person, "given_name", false},
    {AskedOf::person, "country", false},
    {AskedOf::person, "language", false},
    {AskedOf::person, "tension_unit", false},
    {AskedOf::racket, "label", false},
    {AskedOf::racket, "maker", false},
    {AskedOf::racket, "model", false},
    {AskedOf::agreed, "mains_string", true},
    {AskedOf::agreed, "mains_gauge", false},
    {AskedOf::agreed, "mains_supply", false},
    {AskedOf::agreed, "mains_owner", false},
    {AskedOf::agreed, "crosses_string", true},
    {AskedOf::agreed, "crosses_gauge", false},
    {AskedOf::agreed, "crosses_supply", false},
    {AskedOf::agreed, "crosses_owner", false},
    {AskedOf::agreed, "mains_tension", true},
    {AskedOf::agreed, "crosses_tension", true},
    {AskedOf::agreed, "mains_prestretch", false},
    {AskedOf::agreed, "crosses_prestretch", false},
    {AskedOf::agreed, "pieces", false},
    {AskedOf::agreed, "knots", false},
    {AskedOf::agreed, "knot_pretension", false},
    {AskedOf::agreed, "racket_stencil", false},
    {AskedOf::agreed, "racket_ink", false},
    {AskedOf::agreed, "string_stencil", false},
    {AskedOf::agreed, "string_ink", false},
    {AskedOf::agreed, "dampener", false},
    {AskedOf::agreed, "overgrip", false},
    {AskedOf::drop_off, "ready_by", false},
    {AskedOf::drop_off, "collected_by", false},
    {AskedOf::agreed, "note", false},
    {AskedOf::person, "contact", false},
    {AskedOf::person, "consent", false},
});

template <class S>
bool has_value(const S& held, std::string_view field) {
  bool found = false;
  for_each_field<S>([&](FieldTag, std::string_view name, bool, auto member) {
    if (name == field) found = !is_cleared(to_value(held.*member));
  });
  return found;
}

}  // namespace

std::span<const FirstTimeQuestion> first_time_questions() {
  return kQuestions;
}

bool is_answered(const FirstTimeAnswers& answers, const FirstTimeQuestion& question) {
  switch (question.of) {
    case AskedOf::person:
      return has_value(answers.person, question.field);
    case AskedOf::racket:
      return has_value(answers.racket, question.field);
    case AskedOf::agreed:
      return has_value(answers.agreed, question.field);
    case AskedOf::drop_off:
      return has_value(answers.drop_off, question.field);
  }
  return false;
}

std::vector<FirstTimeQuestion> still_needed(const FirstTimeAnswers& answers) {
  std::vector<FirstTimeQuestion> open;
  for (const FirstTimeQuestion& question : kQuestions)
    if (question.needed && !is_answered(answers, question)) open.push_back(question);
  return open;
}

}  // namespace weavelog
