// link, unlink, linked, also-known: which books are one person's, and by what else somebody is called.

#include <algorithm>

#include "core/base/iso_time.h"
#include "core/desk/other_names.h"
#include "core/desk/person_books.h"
#include "core/desk/phrases.h"
#include "core/model/field_json.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/field_input.h"
#include "sync/cli/render.h"

namespace weavelog::cli {
namespace {

struct LinkArguments {
  std::string player, other, by, family, given, native, why, answer;
  bool others = false, drop = false;
  std::optional<std::size_t> number, question;
};

std::string who(Context& context, const LinkArguments& arguments) {
  return arguments.by.empty() ? context.ledger().self().device : arguments.by;
}

Outcome<> store(Context& context, const Outcome<std::vector<Draft>>& drafts) {
  if (!drafts) return fail(drafts.error());
  for (const Draft& draft : *drafts)
    if (auto stored = context.workplace().commit(draft); !stored) return fail(stored.error());
  return {};
}

/// Books by as many characters of their numbers as tell them apart, six at least: those that were made in one go begin alike for long.
class ShortNumbers {
 public:
  explicit ShortNumbers(const Ledger& ledger, const std::vector<BookId>& more = {}) {
    for (const BookInfo& book : ledger.books(kPlayerBook)) all_.push_back(book.id.hex());
    for (const BookId& book : more) all_.push_back(book.hex());
    std::sort(all_.begin(), all_.end());
    all_.erase(std::unique(all_.begin(), all_.end()), all_.end());
  }
  [[nodiscard]] std::string operator()(const BookId& book) const {
    const std::string number = book.hex();
    const auto at = std::lower_bound(all_.begin(), all_.end(), number);
    std::size_t alike = 5;
    const auto beside = [&](const std::string& other) {
      alike = std::max<std::size_t>(alike, static_cast<std::size_t>(std::mismatch(number.begin(), number.end(), other.begin(), other.end()).first - number.begin()));
    };
    if (at != all_.begin()) beside(*std::prev(at));
    if (at != all_.end() && std::next(at) != all_.end()) beside(*std::next(at));
    return number.substr(0, alike + 1);
  }

 private:
  std::vector<std::string> all_;
};

/// "Wendelmoor Ilse, last at Harbour Open": whose book it is, and from where.
std::string whose(Context& context, const BookId& book) {
  const auto row = find_player(context.ledger(), book);
  if (!row) return "is not on this device";
  return name_text(row->family_name, row->given_name, row->native_name) + (row->last_event.empty() ? "" : ", last at " + row->last_event);
}

/// The books of a person, and where they differ.
Outcome<Ending> tell(Context& context, const BookId& book) {
  const auto person = load_person(context.ledger(), book);
  if (!person) return fail(person.error());
  const ShortNumbers shortened_to(context.ledger(), person->elsewhere);
  json::array here, elsewhere, questions;
  std::string text;
  ToldTimes told(context);
  for (const PlayerRecord& record : person->records) {
    here.push_back(json::object{{"book", record.book.hex()}, {"name", listed_name(record.person.now)}, {"jobs", record.jobs.size()}});
    text += shortened_to(record.book) + "  " + whose(context, record.book) + "; rackets strung: " + std::to_string(record.jobs.size()) + "\n";
  }
  for (const BookId& other : person->elsewhere) {
    elsewhere.push_back(json::string(other.hex()));
    text += shortened_to(other) + "  is not on this device\n";
  }
  std::size_t number = 0;
  for (const BookDifference& one : differences(*person)) {
    json::array answers;
    text += "question " + std::to_string(++number) + ": " + field_words(context.language(), one.name) +
            (one.subject.empty() ? "" : " of " + setup_words(context.language(), one.subject)) + "\n";
    for (const BookAnswer& answer : one.answers) {
      answers.push_back(json::object{{"book", answer.book.hex()}, {"value", value_words({}, one.name, answer.value)}, {"at", iso_utc(answer.at)}});
      text += "  " + std::to_string(answers.size()) + "  " + value_words(context.language(), one.name, answer.value) + "  (" +
              whose(context, answer.book) + ", " + shortened_to(answer.book) + ", " + told(answer.at) + ")\n";
    }
    questions.push_back(json::object{{"field", one.name}, {"subject", one.subject}, {"answers", std::move(answers)}});
  }
  const bool open = !questions.empty();
  if (open) text += "say which is right: linked PLAYER --settle QUESTION --right ANSWER\n";
  context.answer(json::object{{"books", std::move(here)}, {"elsewhere", std::move(elsewhere)}, {"differences", std::move(questions)}}, text);
  return open ? Ending::needs_answer : Ending::done;
}

/// One of the answers by its number in the list, or by its book's.
Outcome<Value> right_answer(const BookDifference& difference, const std::string& said) {
  std::vector<const BookAnswer*> meant;
  const auto number = whole_from(said, "--right");
  if (number && said.size() < 6) {
    if (*number >= 1 && static_cast<std::size_t>(*number) <= difference.answers.size()) meant.push_back(&difference.answers[static_cast<std::size_t>(*number - 1)]);
  } else if (said.size() >= 6) {
    for (const BookAnswer& answer : difference.answers)
      if (answer.book.hex().starts_with(said)) meant.push_back(&answer);
  }
  if (meant.size() == 1) return meant.front()->value;
  return fail(FaultCode::bad_input, meant.empty() ? "it was not said which book is right" : "several books begin so", "--right",
              "give the number of the answer, or as much of the book's as `linked PLAYER` shows");
}

Outcome<Ending> link(Context& context, const LinkArguments& arguments) {
  const auto one = choose_player(context, arguments.player), other = choose_player(context, arguments.other);
  if (!one) return fail(one.error());
  if (!other) return fail(other.error());
  const LinkSaid said = arguments.others ? LinkSaid::other_person : LinkSaid::same_person;
  if (auto stored = store(context, say_of_books(context.ledger(), *one, *other, said, who(context, arguments), context.now())); !stored)
    return fail(stored.error());
  return tell(context, *one);
}

Outcome<Ending> unlink(Context& context, const LinkArguments& arguments) {
  const auto book = choose_player(context, arguments.player);
  if (!book) return fail(book.error());
  if (auto stored = store(context, part_book(context.ledger(), *book, who(context, arguments), context.now())); !stored) return fail(stored.error());
  return tell(context, *book);
}

Outcome<Ending> linked(Context& context, const LinkArguments& arguments) {
  if (!arguments.player.empty()) {
    const auto book = choose_player(context, arguments.player);
    if (!book) return fail(book.error());
    if (arguments.question) {
      const auto person = load_person(context.ledger(), *book);
      if (!person) return fail(person.error());
      const auto open = differences(*person);
      if (*arguments.question == 0 || *arguments.question > open.size())
        return fail(FaultCode::not_found, "there is no such question", std::to_string(*arguments.question), "`linked PLAYER` lists them");
      const BookDifference& one = open[*arguments.question - 1];
      const auto chosen = right_answer(one, arguments.answer);
      if (!chosen) return fail(chosen.error());
      if (auto stored = store(context, settle(*person, one, *chosen)); !stored) return fail(stored.error());
    }
    return tell(context, *book);
  }
  json::array groups;
  std::string text;
  const auto all = all_linked_books(context.ledger());
  std::vector<BookId> away;
  for (const LinkedBooks& group : all) away.insert(away.end(), group.elsewhere.begin(), group.elsewhere.end());
  const ShortNumbers shortened_to(context.ledger(), away);
  for (const LinkedBooks& group : all) {
    json::array books;
    for (const auto* list : {&group.here, &group.elsewhere})
      for (const BookId& book : *list) {
        const auto row = list == &group.here ? find_player(context.ledger(), book) : std::nullopt;
        const std::string name = row ? row->family_name + " " + row->given_name : std::string();
        books.push_back(json::object{{"book", book.hex()}, {"name", name}, {"here", list == &group.here}});
        text += (books.size() == 1 ? "" : "  = ") + shortened_to(book) + "  " + whose(context, book) + "\n";
      }
    groups.push_back(std::move(books));
  }
  context.answer(groups, text.empty() ? "no books are linked" : text);
  return Ending::done;
}

Outcome<Ending> also_known(Context& context, const LinkArguments& arguments) {
  auto record = load_chosen(context, arguments.player);
  if (!record) return fail(record.error());
  Outcome<Draft> draft = fail(FaultCode::bad_input, "", "", "");
  bool change = true;
  if (arguments.drop) {
    if (!arguments.number || *arguments.number == 0 || *arguments.number > record->other_names.size())
      return fail(FaultCode::not_found, "there is no such other name", "--drop", "`also-known PLAYER` lists them");
    draft = drop_other_name(*record, record->other_names[*arguments.number - 1].id());
  } else if (!arguments.family.empty() || !arguments.given.empty() || !arguments.native.empty()) {
    OtherName name;
    name.family_name = arguments.family;
    name.given_name = arguments.given;
    name.native_name = arguments.native;
    if (!arguments.why.empty()) name.why = *choice_from<NameWhy>(arguments.why);
    draft = add_other_name(*record, name, who(context, arguments), context.now());
  } else {
    change = false;
  }
  if (change) {
    if (!draft) return fail(draft.error());
    if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
    record = load_player(context.ledger(), record->book);
    if (!record) return fail(record.error());
  }
  json::array names;
  std::string text;
  for (const auto& name : record->other_names) {
    names.push_back(json::object{{"family_name", name.now.family_name}, {"given_name", name.now.given_name}, {"native_name", name.now.native_name},
                                 {"why", name_of_choice(name.now.why)}, {"by", name.now.by}});
    text += std::to_string(names.size()) + "  " + other_name_words(name.now) + "\n";
  }
  context.answer(names, text.empty() ? "no other name is known" : text);
  return Ending::done;
}

void add_by(CLI::App& command, LinkArguments& arguments) { command.add_option("--by", arguments.by, "Who says so; default: the device's name"); }

constexpr const char* kPersonForm =
    "Ends with 3 if the books differ. --json: one object: books [{book, name, jobs}], elsewhere [book], differences [{field, subject, answers\n"
    "[{book, value, at}]}].";

}  // namespace

void add_link_commands(CLI::App& app, Work& chosen) {
  add_command<LinkArguments>(app, chosen, "link", "Say that two books are one person's: shown together from then on", link,
                             [](CLI::App& command, LinkArguments& arguments) {
                               command.add_option("PLAYER", arguments.player, "A name, or six or more characters of the book's number")->required();
                               command.add_option("OTHER", arguments.other, "Likewise")->required();
                               command.add_flag("--different", arguments.others, "They are two people's: nobody is asked again");
                               add_by(command, arguments);
                               command.footer(kPersonForm);
                             });
  add_command<LinkArguments>(app, chosen, "unlink", "Part a book from those that it is linked to; each is as it was", unlink,
                             [](CLI::App& command, LinkArguments& arguments) {
                               command.add_option("PLAYER", arguments.player, "A name, or six or more characters of the book's number")->required();
                               add_by(command, arguments);
                               command.footer(kPersonForm);
                             });
  add_command<LinkArguments>(app, chosen, "linked", "Which books are one person's; of one player, where they differ", linked,
                             [](CLI::App& command, LinkArguments& arguments) {
                               command.add_option("PLAYER", arguments.player, "Default: all that are linked");
                               auto* question = command.add_option("--settle", arguments.question, "Number of a question that is answered");
                               command.add_option("--right", arguments.answer, "The answer that is right: its number in the list, or six or more characters of its book's")->needs(question);
                               command.footer(std::string("--json without PLAYER: a list of lists [{book, name, here}]. With PLAYER: ") + kPersonForm);
                             });
  add_command<LinkArguments>(app, chosen, "also-known", "Other names by which a player is found and recognised", also_known,
                             [](CLI::App& command, LinkArguments& arguments) {
                               command.add_option("PLAYER", arguments.player, "A name, or six or more characters of the book's number")->required();
                               command.add_option("--family", arguments.family, "Another family name");
                               command.add_option("--given", arguments.given, "Another given name");
                               command.add_option("--native", arguments.native, "In the own script");
                               command.add_option("--why", arguments.why, "Why")->check(CLI::IsMember({"former", "married", "short_form", "other_spelling"}));
                               command.add_flag("--drop", arguments.drop, "Take one back")->needs(
                                   command.add_option("--number", arguments.number, "Its number in the list"));
                               add_by(command, arguments);
                               command.footer("--json: a list: [{family_name, given_name, native_name, why, by}].");
                             });
}

}  // namespace weavelog::cli
