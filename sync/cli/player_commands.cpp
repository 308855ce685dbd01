#include <algorithm>

#include "core/desk/check_setup.h"
#include "core/desk/consent.h"
#include "core/desk/export.h"
#include "core/desk/last_time.h"
#include "core/desk/read_back.h"
#include "core/desk/phrases.h"
#include "core/desk/undo.h"
#include "sync/cli/ask_first.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/entered.h"
#include "sync/cli/render.h"
#include "sync/cli/wish_input.h"

namespace weavelog::cli {
namespace {

// ----------------------------------------------------------------------------------------------------------
// find

struct FindArguments {
  std::vector<std::string> words;
  std::size_t limit = 50;
};

Outcome<Ending> find(Context& context, const FindArguments& arguments) {
  std::string typed;
  for (const std::string& word : arguments.words) typed += (typed.empty() ? "" : " ") + word;
  json::array list;
  std::string text;
  ToldTimes told(context);
  for (const PlayerRow& row : find_players(context.ledger(), typed, arguments.limit)) {
    list.push_back(row_json(row));
    text += row_text(row, told) + "\n";
  }
  const bool none = list.empty();
  if (none) text = "nobody of that name on this device\n";
  context.answer(list, text + entered_text(context, typed));
  return none ? Ending::not_found : Ending::done;
}

// ----------------------------------------------------------------------------------------------------------
// show

struct PlayerArguments {
  std::string player;
};

Outcome<Ending> show(Context& context, const PlayerArguments& arguments) {
  const auto record = load_chosen(context, arguments.player);
  if (!record) return fail(record.error());
  const Language language = context.language_for(record->person.now);
  const auto lines = question_lines(context.ledger(), *record);
  const auto last = same_as_last_time(*record, {});
  ToldTimes told(context, language);

  json::object out = json::parse(player_json(*record)).as_object();
  json::array questions;
  for (std::size_t i = 0; i < lines.size(); ++i) questions.push_back(question_json(lines[i], i + 1));
  out["open_questions"] = std::move(questions);
  if (const auto summary = last_setup(context.ledger(), record->book, context.now()))
    out["last_tensions"] = summary->tensions();

  const Person& person = record->person.now;
  std::string text = listed_name(person) + "  " + record->book.hex() + "\n";
  if (last) {
    if (last->at) text += "last: " + last->event_name + ", " + told(*last->at, record->job(last->job) ? record->job(last->job)->now.event : BookId{}) + "\n";
    text += agreed_text(language, last->proposal);
    for (const std::string& line : change_lines(language, last->since)) text += line + "\n";
  }
  for (const auto& racket : record->rackets)
    text += "racket " + racket.now.label + "  " + racket.now.maker + " " + racket.now.model + "\n";
  for (std::size_t i = 0; i < lines.size(); ++i) text += question_text(language, lines[i], i + 1, told) + "\n";
  context.answer(out, text);
  return Ending::done;
}

// -------------------------------------------------------------------------------------------------------
// history

struct HistoryArguments {
  std::string player;
  std::size_t limit = 500;
};

Outcome<Ending> history(Context& context, const HistoryArguments& arguments) {
  const auto book = choose_player(context, arguments.player);
  if (!book) return fail(book.error());
  json::array list;
  std::string text;
  ToldTimes told(context);
  for (const JobRow& row : history_of(context.ledger(), *book, arguments.limit)) {
    list.push_back(row_json(row));
    text += (row.at ? told(*row.at, row.event) : "") + "  " + row.event_name + "  " + row_text(row, told) + "\n";
  }
  context.answer(list, text.empty() ? "nothing was strung yet" : text);
  return Ending::done;
}

// ---------------------------------------------------------------------------------------------------------
// setup

struct SetupArguments {
  std::string player;
  std::string name;
  WishArguments wish;
};

/// An open question that the wish answers, with a value of its own.
struct Closing {
  OpenQuestion question;
  Value answer;
};

std::string_view field_of(const OpenQuestion& question) {
  const FieldInfo* info = model_registry().find(question.cell.tag);
  return info ? std::string_view(info->name) : std::string_view("field");
}

/// The value that a setup has in a field.
Value value_in(const Setup& setup, FieldTag field) {
  EntityState none;
  none.kind = Described<Setup>::kind;
  Draft all(BookId{}, kPlayerBook, kActEdit);
  put_changes(all, none, setup);
  for (const Write& write : all.writes())
    if (write.tag == field) return write.value;
  return {};
}

/// What the wish says about an open question: nothing if it does not name its field, or only changes it by an amount. Then it comes out
/// differently, depending on the answer that it starts from.
std::optional<Closing> closing_of(const OpenQuestion& question, const EntityState& seen, const WishArguments& arguments, const Typing& typing) {
  std::optional<Value> said;
  for (const CellValue& held : question.cell.values) {
    EntityState one = seen;
    for (Cell& cell : one.cells)
      if (cell.tag == question.cell.tag) cell.values.assign(1, held);
    auto setup = from_state<Setup>(one);
    const auto wish = with_wish(setup, arguments, typing);
    if (!wish) return std::nullopt;
    static_cast<Agreed&>(setup) = *wish;
    const Value value = value_in(setup, question.cell.tag);
    if (said && *said != value) return std::nullopt;
    said = value;
  }
  return said ? std::optional(Closing{question, *said}) : std::nullopt;
}

Outcome<Ending> edit_setup(Context& context, const SetupArguments& arguments) {
  const auto record = load_chosen(context, arguments.player);
  if (!record) return fail(record.error());
  const auto setup = choose_setup(*record, arguments.name);
  if (!setup) return fail(setup.error());
  const Language language = context.language_for(record->person.now);

  Typing typing;
  typing.now = context.now();
  typing.tension_unit = record->person.now.tension_unit;
  const Agreed& before = (*setup)->now;
  const auto after = with_wish(before, arguments.wish, typing);
  if (!after) return fail(after.error());
  // Nobody's word is overruled by a slip: what is open is answered in so many words, or asked first.
  std::vector<Closing> closings;
  std::vector<OpenQuestion> unsaid;
  for (const OpenQuestion& question : record->questions) {
    if (question.entity != (*setup)->id()) continue;
    auto closing = closing_of(question, (*setup)->seen, arguments.wish, typing);
    if (closing)
      closings.push_back(std::move(*closing));
    else
      unsaid.push_back(question);
  }
  if (!unsaid.empty()) return ask_first(context, *record, unsaid);
  if (auto sound = require_sound(*after, nullptr); !sound) return fail(sound.error());
  auto changes = compare(before, *after);
  Setup wanted = (*setup)->now;
  static_cast<Agreed&>(wanted) = *after;
  Draft draft(record->book, kPlayerBook, kActEdit);
  put_changes(draft, (*setup)->seen, wanted);
  for (const Closing& closing : closings) {
    // Also where the answer is the one that was shown: the other one is answered with it.
    const bool put = std::any_of(draft.writes().begin(), draft.writes().end(), [&](const Write& write) { return write.tag == closing.question.cell.tag; });
    if (!put) draft.put((*setup)->seen, closing.question.cell.tag, closing.answer);
    std::erase_if(changes, [&](const Change& change) { return change.name == field_of(closing.question); });
  }
  if (!draft.empty())
    if (auto stored = context.workplace().commit(draft); !stored) return fail(stored.error());

  const auto findings = check_setup(*after, nullptr);
  json::array closed;
  std::string text;
  for (const Closing& closing : closings) {
    const std::string_view field = field_of(closing.question);
    json::array answers;
    std::string given;
    for (const CellValue& held : closing.question.cell.values) {
      const std::string words = value_words(language, field, held.value);
      given += (given.empty() ? "" : ", ") + words;
      answers.push_back(json::string(words));
    }
    const std::string now = value_words(language, field, closing.answer);
    closed.push_back(json::object{{"field", field}, {"answers", std::move(answers)}, {"value", now}});
    text += "closes the open question: " + field_words(language, field) + ", " + given + " → " + now + "\n";
  }
  for (const std::string& line : change_lines(language, changes)) text += line + "\n";
  text += findings_text(language, findings);
  context.answer(json::object{{"book", record->book.hex()},
                              {"setup", (*setup)->id().hex()},
                              {"changes", changes_json(language, changes)},
                              {"closed", std::move(closed)},
                              {"findings", findings_json(language, findings)},
                              {"stored", !draft.empty()}},
                 text.empty() ? "nothing was changed" : text);
  return Ending::done;
}

// -------------------------------------------------------------------------------------------------------
// consent

struct ConsentArguments {
  std::string player;
  std::string choice;
  bool confirm = false;
};

Outcome<Ending> consent(Context& context, const ConsentArguments& arguments) {
  const auto book = choose_player(context, arguments.player);
  if (!book) return fail(book.error());
  const auto person = load_person(context.ledger(), *book);
  if (!person) return fail(person.error());
  const auto choice = choice_from<ConsentChoice>(arguments.choice);
  if (!choice || *choice == ConsentChoice::unsaid)
    return no_choice(arguments.choice, "consent", {"this_room", "events_entered", "any_room", "withdrawn"});
  const Language language = context.language_for(person->records.front().person.now);
  const std::string text = consent_text(language, *choice);
  const auto drafts =
      give_consent(*person, *choice, {text, language, context.now(), context.ledger().self().id()},
                   context.event().value_or(BookId{}));
  if (!drafts) return fail(drafts.error());
  if (arguments.confirm)
    for (const Draft& draft : *drafts)
      if (auto stored = context.workplace().commit(draft); !stored) return fail(stored.error());
  const std::size_t books = drafts->size();
  context.answer(json::object{{"book", book->hex()},
                              {"books", books},
                              {"consent", arguments.choice},
                              {"text", text},
                              {"language", language.tag()},
                              {"stored", arguments.confirm}},
                 text + (books > 1 ? "\nfor all " + std::to_string(books) + " books of this person that are linked" : "") + (arguments.confirm ? "" : "\nnot stored; add --confirm when the player has agreed"));
  return Ending::done;
}

// ----------------------------------------------------------------------------------------------------------
// undo

Outcome<Ending> take_back(Context& context, const PlayerArguments& arguments) {
  const auto book = choose_player(context, arguments.player);
  if (!book) return fail(book.error());
  const auto seq = last_action(context.ledger(), *book);
  if (!seq)
    return fail(FaultCode::not_found, "this device has done nothing there that could be undone",
                arguments.player, "only what was done here can be undone here");
  const auto entry = context.ledger().entry(*book, context.ledger().self().id(), *seq);
  const auto draft = undo(context.ledger(), *book, *seq);
  if (!draft) return fail(draft.error());
  if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  const std::string action(entry ? name_of(entry->action) : "");
  context.answer(json::object{{"book", book->hex()}, {"undone", action}}, "undone: " + action);
  return Ending::done;
}

void add_player_option(CLI::App& command, std::string& player) {
  command
      .add_option("PLAYER", player,
                  "A name that finds exactly one, or six or more characters of the book's number")
      ->required();
}

}  // namespace

void add_player_commands(CLI::App& app, Work& chosen) {
  add_command<FindArguments>(
      app, chosen, "find", "Find players by the beginnings of their names", find,
      [](CLI::App& command, FindArguments& arguments) {
        command.add_option("WORDS", arguments.words,
                           "Beginnings of names, in any script; none: who came last");
        command.add_option("--limit", arguments.limit, "At most so many")
            ->check(CLI::Range(1, 100000))
            ->capture_default_str();
        command.footer(
            "--json: an array of {book, family_name, given_name, native_name, country, birth_year, hand,\n"
            "tour_number, consent, last_event, last_at}. Exit code 4 if no player is found.\n"
            "Without --json it also names who is on the event's entry list only.");
      });
  add_command<PlayerArguments>(app, chosen, "show", "Setup, rackets, last job and open questions of a player",
                               show, [](CLI::App& command, PlayerArguments& arguments) {
                                 add_player_option(command, arguments.player);
                                 command.footer(
                                     "--json: the player's export (see `export player`), open_questions as "
                                     "`questions` has them, and last_tensions.");
                               });
  add_command<HistoryArguments>(app, chosen, "history", "All jobs of a player, newest first", history,
                                [](CLI::App& command, HistoryArguments& arguments) {
                                  add_player_option(command, arguments.player);
                                  command.add_option("--limit", arguments.limit, "At most so many")
                                      ->check(CLI::Range(1, 100000))
                                      ->capture_default_str();
                                  command.footer("--json: an array of jobs as `board` has them.");
                                });
  add_command<SetupArguments>(
      app, chosen, "setup", "Change a setup of a player", edit_setup,
      [](CLI::App& command, SetupArguments& arguments) {
        add_player_option(command, arguments.player);
        command.add_option("--name", arguments.name, "Which setup; default: that of the newest job");
        add_wish_options(command, arguments.wish);
        command.footer(
            wish_footer() +
            "\nAn open question on the setup has to be answered first (exit code 3, open_questions, nothing stored), unless a value of its own is given\n"
            "for what it is about, not one kilo less; closed then says what was answered by that.\n"
            "--json: one object: book, setup, changes: [{field, before, after}], closed: [{field, answers, value}], findings, stored.");
      });
  add_command<ConsentArguments>(
      app, chosen, "consent", "Show a player what is agreed to, and record the answer", consent,
      [](CLI::App& command, ConsentArguments& arguments) {
        add_player_option(command, arguments.player);
        command.add_option("CHOICE", arguments.choice, "this_room, events_entered, any_room or withdrawn")
            ->required();
        command.add_flag("--confirm", arguments.confirm, "The player has agreed: store it");
        command.footer("--json: one object: book, books (linked ones, all answered alike), consent, text, language, stored.");
      });
  add_command<PlayerArguments>(app, chosen, "undo",
                               "Take back the last thing that this device did in a player's book", take_back,
                               [](CLI::App& command, PlayerArguments& arguments) {
                                 add_player_option(command, arguments.player);
                                 command.footer("--json: one object: book, undone (the action).");
                               });
}

}  // namespace weavelog::cli
