#include "core/desk/questions.h"

#include <algorithm>
#include <set>

#include "core/desk/money.h"
#include "core/desk/phrases.h"
#include "core/model/book_kind.h"
#include "core/model/queries.h"

namespace weavelog {
namespace {

/// The event at which a device was when it wrote: that of the newest drop-off it had taken in by then;
/// otherwise of the newest by anyone.
std::string event_at(const PlayerRecord& record, const AuthorId& author, Stamp stamp) {
  const Loaded<DropOff>* by_device = nullptr;
  const Loaded<DropOff>* by_anyone = nullptr;
  Stamp device_stamp;
  Stamp anyone_stamp;
  for (const Loaded<DropOff>& drop_off : record.drop_offs) {
    const Cell* cell = drop_off.seen.find(tag_of<DropOff>(&DropOff::event_name));
    if (!cell) continue;
    const CellValue& held = cell->latest();
    if (held.stamp > stamp) continue;
    if (held.dot.author == author && held.stamp >= device_stamp) {
      by_device = &drop_off;
      device_stamp = held.stamp;
    }
    if (held.stamp >= anyone_stamp) {
      by_anyone = &drop_off;
      anyone_stamp = held.stamp;
    }
  }
  if (by_device) return by_device->now.event_name;
  return by_anyone ? by_anyone->now.event_name : std::string();
}

std::string subject_of(const PlayerRecord& record, const EntityId& entity) {
  if (const auto* setup = record.setup(entity)) return setup->now.name;
  EntityId racket_id = entity;
  if (const auto* job = record.job(entity)) racket_id = job->now.racket;
  if (const auto* racket = record.racket(racket_id)) return racket->now.label;
  return {};
}

/// The answers of a question, newest first; `event_of` tells where one was said.
std::vector<AnswerLine> answers_of(const OpenQuestion& question, const OriginOf& origin_of,
                                   const std::function<std::string(const CellValue&)>& event_of) {
  std::vector<AnswerLine> out;
  for (const CellValue& held : question.cell.values) {
    AnswerLine answer;
    answer.dot = held.dot;
    answer.value = held.value;
    answer.at = held.stamp.wall_ms();
    if (const auto origin = origin_of(held.dot)) {
      answer.device = origin->author.device;
      answer.action = origin->action;
    }
    answer.event_name = event_of(held);
    out.push_back(std::move(answer));
  }
  std::sort(out.begin(), out.end(),
            [](const AnswerLine& a, const AnswerLine& b) { return a.at != b.at ? a.at > b.at : a.dot > b.dot; });
  return out;
}

}  // namespace

std::vector<QuestionLine> question_lines(const PlayerRecord& record, const OriginOf& origin_of) {
  std::vector<QuestionLine> lines;
  for (const OpenQuestion& question : record.questions) {
    QuestionLine line;
    line.question = question;
    if (const FieldInfo* info = model_registry().find(question.cell.tag)) line.field = info->name;
    line.subject = subject_of(record, question.entity);
    line.player = record.book;
    line.answers = answers_of(question, origin_of,
                              [&](const CellValue& held) { return event_at(record, held.dot.author, held.stamp); });
    lines.push_back(std::move(line));
  }
  return lines;
}

std::vector<QuestionLine> question_lines(const Ledger& ledger, const PlayerRecord& record) {
  return question_lines(record, [&](const Dot& dot) { return ledger.origin(record.book, dot); });
}

std::vector<QuestionLine> money_questions(const Ledger& ledger, const BookId& event, std::optional<BookId> player) {
  std::vector<QuestionLine> lines;
  for (OpenQuestion& question : ledger.open_questions(event)) {
    if (question.kind != kCharge) continue;
    const auto state = ledger.entity(event, question.entity);
    if (!state) continue;
    const Charge charge = from_state<Charge>(*state);
    if (player && charge.player != *player) continue;
    QuestionLine line;
    if (const FieldInfo* info = model_registry().find(question.cell.tag)) line.field = info->name;
    line.player = charge.player;
    if (question.cell.tag == tag_of<Charge>(&Charge::amount_minor)) line.currency = charge.currency;
    line.subject = charge.service;
    if (const auto job = charge.job ? find_job(ledger, charge.player, charge.job) : std::nullopt) line.tag_number = job->tag_number;
    const auto origin_of = [&](const Dot& dot) { return ledger.origin(event, dot); };
    line.answers = answers_of(question, origin_of, [](const CellValue&) { return std::string(); });
    line.question = std::move(question);
    lines.push_back(std::move(line));
  }
  return lines;
}

std::vector<QuestionLine> questions_about(const Ledger& ledger, const PlayerRecord& record) {
  auto lines = question_lines(ledger, record);
  std::set<BookId> events;
  for (const OpenQuestion& question : ledger.open_questions())
    if (book_kind_of(question.kind) == kEventBook) events.insert(question.book);
  for (const BookId& event : events)
    for (QuestionLine& line : money_questions(ledger, event, record.book)) lines.push_back(std::move(line));
  return lines;
}

std::optional<QuestionLine> closed_line(const Ledger& ledger, const BookId& book, const EntityId& entity, std::string_view field) {
  const auto state = ledger.entity(book, entity);
  if (!state) return std::nullopt;
  const Cell* cell = nullptr;
  QuestionLine line;
  for (const Cell& one : state->cells)
    if (const FieldInfo* info = model_registry().find(one.tag); info != nullptr && info->name == field) cell = &one, line.field = info->name;
  if (cell == nullptr || cell->values.empty() || cell->split()) return std::nullopt;
  line.question = {book, entity, state->kind, *cell};
  const auto record = state->kind == kCharge ? fail(FaultCode::not_found, "") : load_player(ledger, book);
  if (record) line.subject = subject_of(*record, entity);
  if (state->kind == kCharge && cell->tag == tag_of<Charge>(&Charge::amount_minor)) line.currency = from_state<Charge>(*state).currency;
  line.answers = answers_of(line.question, [&](const Dot& dot) { return ledger.origin(book, dot); },
                            [&](const CellValue& held) { return record ? event_at(*record, held.dot.author, held.stamp) : std::string(); });
  line.answers.resize(1);  // equal ones fold into the newest
  return line;
}

std::string answer_words(const Language& language, const QuestionLine& line, const Value& answer) {
  const auto* minor = std::get_if<std::int64_t>(&answer);
  return minor && !line.currency.empty() ? money_words(language, *minor, line.currency) : value_words(language, line.field, answer);
}

namespace {

/// The agreed values of a setup or job with one of them answered.
template <class S>
Agreed answered(const EntityState& state, FieldTag tag, const Value& value) {
  S out = from_state<S>(state);
  for_each_field<S>([&](FieldTag one, std::string_view, bool, auto member) {
    if (one == tag) from_value(value, out.*member);
  });
  return out;
}

}  // namespace

std::optional<SetupFinding> slip_in_answer(const Ledger& ledger, const OpenQuestion& question, const Value& answer) {
  const auto state = ledger.entity(question.book, question.entity);
  const auto* field = model_registry().find(question.cell.tag);
  if (!state || field == nullptr || (state->kind != kSetup && state->kind != kJob)) return std::nullopt;
  const Agreed agreed = state->kind == kSetup ? answered<Setup>(*state, field->tag, answer) : answered<Job>(*state, field->tag, answer);
  for (SetupFinding& finding : check_setup(agreed, nullptr))
    if (finding.refused && finding.field == field->name) return std::move(finding);
  return std::nullopt;
}

Outcome<Draft> close_question(const OpenQuestion& seen, const Value& answer) {
  const bool fits = std::any_of(seen.cell.values.begin(), seen.cell.values.end(), [&](const CellValue& held) {
    return is_cleared(held.value) || held.value.index() == answer.index();
  });
  if (!fits && !is_cleared(answer)) {
    const FieldInfo* info = model_registry().find(seen.cell.tag);
    return fail(FaultCode::bad_input, "\"" + text_of(answer) + "\" is not an answer to this question",
                std::string(info ? info->name : "field"),
                "choose one of the answers, or say one of the same kind");
  }
  EntityState state;
  state.book = seen.book;
  state.id = seen.entity;
  state.kind = seen.kind;
  state.cells.push_back(seen.cell);
  Draft draft(seen.book, book_kind_of(seen.kind), kActCloseQuestion);
  draft.put(state, seen.cell.tag, answer);
  return draft;
}

}  // namespace weavelog
