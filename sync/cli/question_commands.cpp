#include <algorithm>
#include <set>

#include "core/desk/money.h"
#include "core/desk/questions.h"
#include "core/model/book_kind.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/field_input.h"
#include "sync/cli/render.h"

namespace weavelog::cli {
namespace {

struct QuestionsArguments {
  std::string player;
};

Outcome<Ending> questions(Context& context, const QuestionsArguments& arguments) {
  std::vector<BookId> books;
  if (!arguments.player.empty()) {
    const auto book = choose_player(context, arguments.player);
    if (!book) return fail(book.error());
    books.push_back(*book);
  } else {
    std::set<BookId> events;
    for (const OpenQuestion& question : context.ledger().open_questions()) {
      if (book_kind_of(question.kind) == kPlayerBook) books.push_back(question.book);
      if (question.kind == kCharge) events.insert(question.book);
    }
    for (const BookId& event : events)
      for (const QuestionLine& line : money_questions(context.ledger(), event)) books.push_back(line.player);
    std::sort(books.begin(), books.end());
    books.erase(std::unique(books.begin(), books.end()), books.end());
  }
  json::array list;
  std::string text;
  ToldTimes told(context);
  for (const BookId& book : books) {
    const auto record = load_player(context.ledger(), book);
    if (!record) continue;  // of a kind of book that a newer version has
    const auto lines = questions_about(context.ledger(), *record);
    if (lines.empty()) continue;
    const std::string name = listed_name(record->person.now);
    text += name + "  " + book.hex() + "\n";
    for (std::size_t i = 0; i < lines.size(); ++i) {
      json::object one = question_json(lines[i], i + 1);
      one["player"] = name;
      list.push_back(std::move(one));
      text += question_text(context.language(), lines[i], i + 1, told) + "\n";
    }
  }
  const bool none = list.empty();
  context.answer(list, none ? "no open questions" : text);
  return none ? Ending::done : Ending::needs_answer;
}

struct AnswerArguments {
  std::string player;
  std::size_t number = 0;
  std::string value;
  std::size_t pick = 0;
};

/// Reads the value as the field's, and says what it is as a stored value.
template <class S>
Outcome<Value> value_of(std::string_view field, const std::string& typed, const Typing& typing) {
  S held{};
  if (auto set = set_field(held, field, typed, typing); !set) return fail(set.error());
  Value value;
  for_each_field<S>([&](FieldTag, std::string_view name, bool, auto member) {
    if (name == field) value = to_value(held.*member);
  });
  return value;
}

Outcome<Value> typed_value(const PlayerRecord& record, const QuestionLine& line, const std::string& typed,
                           UnixMs now) {
  const Typing typing{"UTC", now, record.person.now.tension_unit};
  if (!line.currency.empty()) {
    const auto minor = minor_from(typed, line.currency);
    if (!minor) return fail(minor.error());
    return Value{*minor};
  }
  if (line.question.kind == kCharge) return Value{typed};
  if (line.question.kind == kPerson) return value_of<Person>(line.field, typed, typing);
  return value_of<Agreed>(line.field, typed, typing);
}

Outcome<Ending> answer(Context& context, const AnswerArguments& arguments) {
  const auto record = load_chosen(context, arguments.player);
  if (!record) return fail(record.error());
  const auto lines = questions_about(context.ledger(), *record);
  const std::string where = "question " + std::to_string(arguments.number);
  if (arguments.number < 1 || arguments.number > lines.size())
    return fail(FaultCode::not_found, "the player has " + std::to_string(lines.size()) + " open questions",
                where, "`questions` lists them with their numbers");
  const QuestionLine& line = lines[arguments.number - 1];
  if (arguments.value.empty() == (arguments.pick == 0))
    return fail(FaultCode::bad_input, "say one answer: a value, or --pick", where,
                "`questions` lists the answers given");
  Value value;
  if (arguments.pick > 0) {
    if (arguments.pick > line.answers.size())
      return fail(FaultCode::not_found, "there are " + std::to_string(line.answers.size()) + " answers",
                  where, "pick one of them");
    value = line.answers[arguments.pick - 1].value;
  } else {
    auto typed = typed_value(*record, line, arguments.value, context.now());
    if (!typed) return fail(typed.error());
    value = std::move(*typed);
    if (const auto slip = slip_in_answer(context.ledger(), line.question, value)) return fail(slip->fault());
  }
  const auto draft = close_question(line.question, value);
  if (!draft) return fail(draft.error());
  if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  const auto after = load_player(context.ledger(), record->book);
  if (!after) return fail(after.error());
  const std::size_t left = questions_about(context.ledger(), *after).size();
  const std::string said = answer_words(context.language(), line, value);
  context.answer(json::object{{"book", record->book.hex()},
                              {"field", line.field},
                              {"value", answer_words({}, line, value)},
                              {"open_questions", left}},
                 field_words(context.language(), line.field) + ": " + said + "; " + std::to_string(left) +
                     " questions left");
  return Ending::done;
}

}  // namespace

void add_question_commands(CLI::App& app, Work& chosen) {
  add_command<QuestionsArguments>(app, chosen, "questions",
                                  "Open questions: what was answered differently by two people", questions,
                                  [](CLI::App& command, QuestionsArguments& arguments) {
                                    command.add_option("PLAYER", arguments.player, "Of one player only");
                                    command.footer(
                                        "--json: an array of {number, book, player, entity, field, subject, "
                                        "answers: [{pick, value, device, event, at,\n"
                                        "action}]}, answers newest first. Exit code 3 if there are any.");
                                  });
  add_command<AnswerArguments>(
      app, chosen, "answer", "Close an open question with the player's word", answer,
      [](CLI::App& command, AnswerArguments& arguments) {
        command.add_option("PLAYER", arguments.player, "A name that finds exactly one, or the book's number")
            ->required();
        command.add_option("NUMBER", arguments.number, "Of the question, as `questions` lists it")
            ->required();
        command.add_option("VALUE", arguments.value, "The answer, such as 24kg");
        command.add_option("--pick", arguments.pick, "One of the answers given, by its number");
        command.footer("--json: one object: book, field, value, open_questions (how many are left).");
      });
}

}  // namespace weavelog::cli
