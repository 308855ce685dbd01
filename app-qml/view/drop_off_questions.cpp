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

std::string_view fieldOf(const weavelog::OpenQuestion& question) {
  const auto* info = weavelog::model_registry().find(question.cell.tag);
  return info != nullptr ? std::string_view(info->name) : std::string_view();
}

const weavelog::OpenQuestion* openIn(const weavelog::PlayerRecord& record, const DropOffState::Asked& asked) {
  for (const auto& question : record.questions)
    if (question.entity == asked.entity && fieldOf(question) == asked.field) return &question;
  return nullptr;
}

// Which lines go by a setup or job, as indices: those picked, or all; and whether any does, new rackets aside.
struct LinesOn {
  std::vector<std::size_t> lines;
  bool goBy = false;
};
LinesOn linesOn(const DropOffState& state, const weavelog::PlayerRecord& record, const weavelog::EntityId& entity, bool pickedOnly) {
  LinesOn out;
  for (std::size_t i = 0; i < state.lines.size(); ++i) {
    const auto& line = state.lines[i];
    if (pickedOnly && !line.picked) continue;
    const auto by = weavelog::goes_by(record, line.asked);
    const bool goesBy = std::find(by.begin(), by.end(), entity) != by.end();
    out.goBy = out.goBy || goesBy;
    // A new racket is wanted as the one before it, and goes by what that one goes by.
    if (goesBy || line.asked.made) out.lines.push_back(i);
  }
  if (!out.goBy) out.lines.clear();
  return out;
}

std::optional<DraftQuestion> questionAt(const DropOffState& state, const weavelog::PlayerRecord& record, int at) {
  auto all = draftQuestions(state, record);
  if (at < 0 || at >= static_cast<int>(all.size())) return std::nullopt;
  return std::move(all[static_cast<std::size_t>(at)]);
}

weavelog::QuestionLine lineOf(const DraftQuestion& asked, const weavelog::PlayerRecord& record, const Work& work) {
  for (auto& line : weavelog::question_lines(work.ledger(), record))
    if (line.question.entity == asked.question.entity && line.question.cell.tag == asked.question.cell.tag) {
      // As they came: one more stands below those that are looked at.
      const auto came = [&](const weavelog::AnswerLine& answer) {
        for (const auto& held : line.question.cell.values)
          if (held.dot == answer.dot) return asked.seen->seen.indexOf(seenAnswer(held));
        return asked.seen->seen.size();
      };
      std::stable_sort(line.answers.begin(), line.answers.end(), [&](const auto& a, const auto& b) { return came(a) < came(b); });
      return std::move(line);
    }
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

void followQuestions(DropOffState& state, const weavelog::PlayerRecord& record, const Work& work) {
  for (const auto& question : record.questions) {
    const auto field = fieldOf(question);
    if (partOfField(field) < 0) continue;
    auto held = std::find_if(state.asked.begin(), state.asked.end(),
                             [&](const auto& one) { return one.entity == question.entity && one.field == field; });
    if (held == state.asked.end()) held = state.asked.insert(held, DropOffState::Asked{question.entity, std::string(field), {}, false, {}});
    held->closed = false;  // a later answer opens it again
    held->unlike.clear();
    for (const auto& value : question.cell.values)
      if (!held->seen.contains(seenAnswer(value))) held->seen.append(seenAnswer(value));
  }
  std::vector<DropOffState::Asked> still;
  for (auto& one : state.asked) {
    if (one.closed || openIn(record, one) != nullptr) {
      still.push_back(std::move(one));
      continue;
    }
    const auto chosen = std::find_if(state.settled.begin(), state.settled.end(),
                                     [&](const auto& settled) { return settled.entity == one.entity && settled.field == one.field; });
    const Value here = chosen != state.settled.end() ? valueIn(chosen->answer, one.field) : Value{};
    const bool chose = chosen != state.settled.end();
    if (chose) state.settled.erase(chosen);
    const auto closed = weavelog::closed_line(work.ledger(), state.book, one.entity, one.field);
    if (!closed) continue;
    const Value& answer = closed->answers.front().value;
    const auto on = linesOn(state, record, one.entity, false);
    for (const std::size_t line : on.lines) putInto(state.lines[line].asked.agreed, one.field, answer);
    // Whoever chose the same, or closed it here, has nothing to read.
    if (!on.goBy || (chose && here == answer)) continue;
    one.closed = true;
    if (chose) one.unlike = qtext(weavelog::value_words(work.language(), one.field, here));
    still.push_back(std::move(one));
  }
  state.asked = std::move(still);
}

std::vector<DraftQuestion> draftQuestions(const DropOffState& state, const weavelog::PlayerRecord& record) {
  std::vector<DraftQuestion> all;
  for (const auto& seen : state.asked) {
    const auto* question = openIn(record, seen);
    if (question == nullptr && !seen.closed) continue;
    DraftQuestion asked;
    asked.field = question != nullptr ? fieldOf(*question) : std::string_view(seen.field);
    asked.seen = &seen;
    if (question != nullptr) asked.question = *question;
    asked.question.entity = seen.entity;
    auto on = linesOn(state, record, seen.entity, true);
    if (!on.goBy) continue;
    asked.lines = std::move(on.lines);
    for (const auto& one : state.settled) {
      if (question == nullptr || one.entity != seen.entity || one.field != seen.field) continue;
      const auto& values = question->cell.values;
      if (std::all_of(values.begin(), values.end(), [&](const auto& held) { return one.seen.contains(seenAnswer(held)); })) asked.settled = &one;
    }
    all.push_back(std::move(asked));
  }
  return all;
}

QStringList openFields(const DropOffState& state, const weavelog::PlayerRecord& record, WishLines lines) {
  QStringList names;
  for (const auto& asked : draftQuestions(state, record)) {
    if (asked.settled != nullptr || asked.closed()) continue;
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
    if (asked.settled != nullptr || asked.closed()) continue;
    const int here = partOfField(asked.field);
    part = part < 0 ? here : std::min(part, here);
  }
  return part;
}

QVariantList listedQuestions(const DropOffState& state, const weavelog::PlayerRecord& record, const Work& work) {
  QVariantList out;
  for (const auto& asked : draftQuestions(state, record)) {
    const auto line = asked.closed() ? weavelog::closed_line(work.ledger(), state.book, asked.question.entity, asked.field)
                                           .value_or(weavelog::QuestionLine{})
                                     : lineOf(asked, record, work);
    AnswerForm form;
    QVariantList answers;
    int chosen = -1;
    const Value settled = asked.settled != nullptr ? valueIn(asked.settled->answer, asked.field) : Value{};
    for (const auto& answer : line.answers) {
      form.take(asked.field, answer.value);
      if (asked.closed()) break;
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
    out.append(QVariantMap{{"key", idText(asked.seen->entity) + qtext(asked.field)},
                           {"field", fieldLabel(work.language(), asked.field)},
                           {"subject", qtext(weavelog::setup_words(work.language(), line.subject))},
                           {"rackets", rackets.join(QStringLiteral(", "))},
                           {"part", partOfField(asked.field)},
                           {"entry", static_cast<int>(form.entry)},
                           {"units", form.units},
                           {"answers", answers},
                           {"chosen", chosen},
                           {"other", other ? editable(settled).toString() : QString()},
                           {"unit", other && said != nullptr ? qtext(weavelog::symbol_of(said->unit)) : QString()},
                           {"closed", asked.closed() && !line.answers.empty() ? shownAnswer(work, line, line.answers.front()) : QVariantMap()},
                           {"unlike", asked.seen->unlike}});
  }
  return out;
}

bool settleQuestion(DropOffState& state, const weavelog::PlayerRecord& record, const Work& work, int question, int answer) {
  const auto asked = questionAt(state, record, question);
  if (!asked || asked->closed()) return false;
  const auto line = lineOf(*asked, record, work);
  if (answer < 0 || answer >= static_cast<int>(line.answers.size())) return false;
  settle(state, *asked, line.answers[static_cast<std::size_t>(answer)].value);
  return true;
}

weavelog::Outcome<> settleOtherwise(DropOffState& state, const weavelog::PlayerRecord& record, const Work& work, int question,
                                    const QString& text, const QString& unit) {
  const auto asked = questionAt(state, record, question);
  if (!asked || asked->closed()) return weavelog::fail(weavelog::FaultCode::not_found, "this question is closed", {}, "look at the page again");
  AnswerForm form;
  for (const auto& held : asked->question.cell.values) form.take(asked->field, held.value);
  const auto value = readAnswer(work, form, asked->question, text, unit);
  if (!value) return weavelog::fail(value.error());
  settle(state, *asked, *value);
  return {};
}

void questionsRead(DropOffState& state) {
  std::erase_if(state.asked, [](const auto& one) { return one.closed; });
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
