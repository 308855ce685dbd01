#include "core/desk/questions.h"

#include <algorithm>

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

}  // namespace

std::vector<QuestionLine> question_lines(const PlayerRecord& record, const OriginOf& origin_of) {
  std::vector<QuestionLine> lines;
  for (const OpenQuestion& question : record.questions) {
    QuestionLine line;
    line.question = question;
    if (const FieldInfo* info = model_registry().find(question.cell.tag)) line.field = info->name;
    line.subject = subject_of(record, question.entity);
    for (const CellValue& held : question.cell.values) {
      AnswerLine answer;
      answer.dot = held.dot;
      answer.value = held.value;
      answer.at = held.stamp.wall_ms();
      if (const auto origin = origin_of(held.dot)) {
        answer.device = origin->author.device;
        answer.action = origin->action;
      }
      answer.event_name = event_at(record, held.dot.author, held.stamp);
      line.answers.push_back(std::move(answer));
    }
    std::sort(line.answers.begin(), line.answers.end(), [](const AnswerLine& a, const AnswerLine& b) {
      return a.at != b.at ? a.at > b.at : a.dot > b.dot;
    });
    lines.push_back(std::move(line));
  }
  return lines;
}

std::vector<QuestionLine> question_lines(const Ledger& ledger, const PlayerRecord& record) {
  return question_lines(record, [&](const Dot& dot) { return ledger.origin(record.book, dot); });
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
  Draft draft(seen.book, kPlayerBook, kActCloseQuestion);
  draft.put(state, seen.cell.tag, answer);
  return draft;
}

}  // namespace weavelog
