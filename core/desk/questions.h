#pragma once
// Open questions as a person reads them: each answer with who, where and when; and the action that closes
// one.

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/base/language.h"
#include "core/desk/check_setup.h"
#include "core/desk/player_record.h"

namespace weavelog {

struct AnswerLine {
  Dot dot;
  Value value;
  std::string device;      ///< the name that the writing device gave itself
  std::string event_name;  ///< where it was said, as far as the drop-offs tell; may be empty
  UnixMs at = 0;
  ActionKind action{};
};

struct QuestionLine {
  OpenQuestion question;            ///< exactly what was seen: closing replaces this and nothing else
  std::string_view field;           ///< name in the registry; empty for a field of a newer version
  std::string subject;              ///< what it is about: the setup's name, the racket's label
  std::vector<AnswerLine> answers;  ///< newest first
  BookId player;                    ///< whom it is about
  std::optional<std::int64_t> tag_number;  ///< of a charge's job
  std::string currency;             ///< of a charge's amount: its answers are minor units of it
};

using OriginOf = std::function<std::optional<Origin>(const Dot&)>;

[[nodiscard]] std::vector<QuestionLine> question_lines(const PlayerRecord& record, const OriginOf& origin_of);
[[nodiscard]] std::vector<QuestionLine> question_lines(const Ledger& ledger, const PlayerRecord& record);

/// What was charged at an event by different prices while apart; of one player if given. `subject` is the service.
[[nodiscard]] std::vector<QuestionLine> money_questions(const Ledger& ledger, const BookId& event, std::optional<BookId> player = {});
/// All open questions that are about a player, those of the own book first.
[[nodiscard]] std::vector<QuestionLine> questions_about(const Ledger& ledger, const PlayerRecord& record);
/// What answers one field (by name) of a setup, job or charge now, as a question's line with that one answer: how it was closed. Nothing while
/// its answers differ, or where what it was about is gone.
[[nodiscard]] std::optional<QuestionLine> closed_line(const Ledger& ledger, const BookId& book, const EntityId& entity,
                                                      std::string_view field);
/// An answer as a person reads it: value_words, and an amount with its currency.
[[nodiscard]] std::string answer_words(const Language& language, const QuestionLine& line, const Value& answer);

/// Why a setup or job with that answer would be refused (check_setup()), by the field that is asked about: a slip of the finger is caught before
/// it closes what two people disagree on. Nothing for questions about anything else.
[[nodiscard]] std::optional<SetupFinding> slip_in_answer(const Ledger& ledger, const OpenQuestion& question, const Value& answer);

/// The entry that closes a question with an answer, one of those given or another. An answer that arrives
/// later opens it again. Faults: bad_input if the value is of another kind than the answers.
[[nodiscard]] Outcome<Draft> close_question(const OpenQuestion& seen, const Value& answer);

}  // namespace weavelog
