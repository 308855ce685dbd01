#include "app-qml/view/drop_off_questions.h"

#include <algorithm>

#include "app-qml/view/answer_form.h"
#include "app-qml/view/drop_off_lines.h"
#include "app-qml/view/model_text.h"
#include "core/desk/phrases.h"

namespace {

using weavelog::Agreed;
using weavelog::Value;

QString seenAnswer(const weavelog::CellValue& held) {
  return qtext(held.dot.author.hex()) + QStringLiteral(":%1:%2").arg(held.dot.seq).arg(held.dot.index);
}

Value valueIn(const Agreed& agreed, std::string_view field) {
  Value out;
  weavelog::for_each_field<Agreed>([&](weavelog::FieldTag, std::string_view name, bool, auto member) {
    if (name == field) out = weavelog::to_value(agreed.*member);
  });
  return out;
}

void settle(DropOffState& state, const DraftQuestion& asked, const Value& value) {
  DropOffState::Settled settled;
  settled.entity = asked.question.entity;
  settled.field = asked.field;
  for (const auto& held : asked.question.cell.values) settled.seen.append(seenAnswer(held));
  putInto(settled.answer, asked.field, value);
  for (const std::size_t line : asked.lines) putInto(state.lines[line].asked.agreed, asked.field, value);
  std::erase_if(state.settled, [&](const auto& one) { return one.entity == settled.entity && one.field == settled.field; });
  state.settled.push_back(std::move(settled));
}

std::optional<DraftQuestion> questionAt(const DropOffState& state, const weavelog::PlayerRecord& record, int at) {
  auto all = draftQuestions(state, record);
  if (at < 0 || at >= static_cast<int>(all.size())) return std::nullopt;
  return std::move(all[static_cast<std::size_t>(at)]);
}

weavelog::QuestionLine lineOf(const DraftQuestion& asked, const weavelog::PlayerRecord& record, const Work& work) {
  for (auto& line : weavelog::question_lines(work.ledger(), record))
    if (line.question.entity == asked.question.entity && line.question.cell.tag == asked.question.cell.tag) return std::move(line);
  return {};
}

}  // namespace

void putInto(weavelog::Agreed& agreed, std::string_view field, const weavelog::Value& value) {
  weavelog::for_each_field<Agreed>([&](weavelog::FieldTag, std::string_view name, bool, auto member) {
    if (name != field) return;
    agreed.*member = {};
    if (!weavelog::is_cleared(value)) weavelog::from_value(value, agreed.*member);
  });
}

std::vector<DraftQuestion> draftQuestions(const DropOffState& state, const weavelog::PlayerRecord& record) {
  std::vector<DraftQuestion> all;
  for (const auto& question : record.questions) {
    DraftQuestion asked{question, {}, {}, nullptr};
    if (const auto* info = weavelog::model_registry().find(question.cell.tag)) asked.field = info->name;
    if (partOfField(asked.field) < 0) continue;
    bool counts = false;
    for (std::size_t i = 0; i < state.lines.size(); ++i) {
      const auto& line = state.lines[i];
      if (!line.picked) continue;
      const auto on = weavelog::questions_on(record, line.asked);
      const bool goesBy = std::any_of(on.begin(), on.end(), [&](const auto& one) {
        return one.entity == question.entity && one.cell.tag == question.cell.tag;
      });
      counts = counts || goesBy;
      // A new racket is wanted as the one before it, and goes by what that one goes by.
      if (goesBy || line.asked.made) asked.lines.push_back(i);
    }
    if (!counts) continue;
    for (const auto& one : state.settled) {
      if (one.entity != question.entity || one.field != asked.field) continue;
      const auto& values = question.cell.values;
      if (std::all_of(values.begin(), values.end(), [&](const auto& held) { return one.seen.contains(seenAnswer(held)); })) asked.settled = &one;
    }
    all.push_back(std::move(asked));
  }
  return all;
}

QStringList openFields(const DropOffState& state, const weavelog::PlayerRecord& record, WishLines lines) {
  QStringList names;
  for (const auto& asked : draftQuestions(state, record)) {
    if (asked.settled != nullptr) continue;
    const bool concerns = std::any_of(asked.lines.begin(), asked.lines.end(), [&](std::size_t at) {
      return std::find(lines.begin(), lines.end(), &state.lines[at]) != lines.end();
    });
    if (concerns && !names.contains(qtext(asked.field))) names.append(qtext(asked.field));
  }
  return names;
}

int partOfField(std::string_view field) {
  if (field.ends_with("_stencil") || field.ends_with("_ink") || field == "bags") return 3;
  if (field.ends_with("_string") || field.ends_with("_gauge")) return 1;
  if (field.ends_with("_tension") || field.ends_with("_prestretch") || field == "pieces" || field == "knots" || field == "knot_pretension")
    return 2;
  return -1;
}

int partInQuestion(const DropOffState& state, const weavelog::PlayerRecord& record) {
  int part = -1;
  for (const auto& asked : draftQuestions(state, record)) {
    if (asked.settled != nullptr) continue;
    const int here = partOfField(asked.field);
    part = part < 0 ? here : std::min(part, here);
  }
  return part;
}

QVariantList listedQuestions(const DropOffState& state, const weavelog::PlayerRecord& record, const Work& work) {
  QVariantList out;
  for (const auto& asked : draftQuestions(state, record)) {
    const auto line = lineOf(asked, record, work);
    AnswerForm form;
    QVariantList answers;
    int chosen = -1;
    const Value settled = asked.settled != nullptr ? valueIn(asked.settled->answer, asked.field) : Value{};
    for (const auto& answer : line.answers) {
      form.take(asked.field, answer.value);
      if (asked.settled != nullptr && chosen < 0 && answer.value == settled) chosen = static_cast<int>(answers.size());
      answers.append(shownAnswer(work, line, answer));
    }
    const bool other = asked.settled != nullptr && chosen < 0;
    const auto* said = std::get_if<weavelog::Quantity>(&settled);
    if (other) chosen = static_cast<int>(answers.size());
    QStringList rackets;
    for (const std::size_t at : asked.lines) {
      const auto* racket = racketOf(state.lines[at], record);
      rackets.append(racket != nullptr && !racket->label.empty() ? qtext(racket->label) : QString::number(at + 1));
    }
    out.append(QVariantMap{{"field", fieldLabel(work.language(), asked.field)},
                           {"subject", qtext(weavelog::setup_words(work.language(), line.subject))},
                           {"rackets", rackets.join(QStringLiteral(", "))},
                           {"part", partOfField(asked.field)},
                           {"entry", static_cast<int>(form.entry)},
                           {"units", form.units},
                           {"answers", answers},
                           {"chosen", chosen},
                           {"other", other ? editable(settled).toString() : QString()},
                           {"unit", other && said != nullptr ? qtext(weavelog::symbol_of(said->unit)) : QString()}});
  }
  return out;
}

bool settleQuestion(DropOffState& state, const weavelog::PlayerRecord& record, const Work& work, int question, int answer) {
  const auto asked = questionAt(state, record, question);
  if (!asked) return false;
  const auto line = lineOf(*asked, record, work);
  if (answer < 0 || answer >= static_cast<int>(line.answers.size())) return false;
  settle(state, *asked, line.answers[static_cast<std::size_t>(answer)].value);
  return true;
}

weavelog::Outcome<> settleOtherwise(DropOffState& state, const weavelog::PlayerRecord& record, const Work& work, int question,
                                    const QString& text, const QString& unit) {
  const auto asked = questionAt(state, record, question);
  if (!asked) return weavelog::fail(weavelog::FaultCode::not_found, "this question is closed", {}, "look at the page again");
  AnswerForm form;
  for (const auto& held : asked->question.cell.values) form.take(asked->field, held.value);
  const auto value = form.read(text, unit);
  if (!value) return weavelog::fail(value.error());
  Agreed agreed = state.lines[asked->lines.front()].asked.agreed;
  putInto(agreed, asked->field, *value);
  if (auto sound = soundAnswer(agreed, asked->field, work.language()); !sound) return sound;
  settle(state, *asked, *value);
  return {};
}

void reopenQuestion(DropOffState& state, const weavelog::PlayerRecord& record, int question) {
  const auto asked = questionAt(state, record, question);
  if (!asked) return;
  std::erase_if(state.settled, [&](const auto& one) { return one.entity == asked->question.entity && one.field == asked->field; });
}

std::vector<weavelog::SettledField> settledOf(const DropOffState& state, const weavelog::PlayerRecord& record, std::size_t line) {
  std::vector<weavelog::SettledField> out;
  for (const auto& asked : draftQuestions(state, record)) {
    if (asked.settled == nullptr || std::find(asked.lines.begin(), asked.lines.end(), line) == asked.lines.end()) continue;
    weavelog::SettledField field{asked.field, {}, valueIn(asked.settled->answer, asked.field)};
    for (const auto& held : asked.question.cell.values) field.answers.push_back(held.value);
    out.push_back(std::move(field));
  }
  return out;
}

weavelog::Outcome<std::vector<weavelog::Draft>> closings(const DropOffState& state, const weavelog::PlayerRecord& record) {
  std::vector<weavelog::Draft> out;
  for (const auto& asked : draftQuestions(state, record)) {
    if (asked.settled == nullptr) continue;
    auto draft = weavelog::close_question(asked.question, valueIn(asked.settled->answer, asked.field));
    if (!draft) return weavelog::fail(draft.error());
    out.push_back(std::move(*draft));
  }
  return out;
}
