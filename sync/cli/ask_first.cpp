#include "sync/cli/ask_first.h"

#include <algorithm>

#include "sync/cli/render.h"

namespace weavelog::cli {

Ending ask_first(Context& context, const PlayerRecord& record, std::span<const OpenQuestion> asked) {
  const Language language = context.language_for(record.person.now);
  const auto lines = question_lines(context.ledger(), record);
  ToldTimes told(context, language);
  json::array questions;
  std::string text = "open questions have to be closed first, with `answer`:\n";
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (std::none_of(asked.begin(), asked.end(), [&](const OpenQuestion& one) {
          return one.entity == lines[i].question.entity && one.cell.tag == lines[i].question.cell.tag;
        }))
      continue;
    questions.push_back(question_json(lines[i], i + 1));
    text += question_text(language, lines[i], i + 1, told) + "\n";
  }
  context.answer(
      json::object{{"book", record.book.hex()}, {"stored", false}, {"open_questions", std::move(questions)}},
      text);
  return Ending::needs_answer;
}

}  // namespace weavelog::cli
