// forget, forgotten: a player withdraws.

#include <algorithm>

#include "core/base/iso_time.h"
#include "core/desk/person_books.h"
#include "core/model/queries.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/told_times.h"

namespace weavelog::cli {
namespace {

struct ForgetArguments {
  std::string player;
  bool confirm = false;
};

/// Entry lists are the event's and stay; they may still say the name.
json::array events_that_name(Context& context, const std::vector<BookId>& books) {
  json::array out;
  for (const EventRow& event : all_events(context.ledger()))
    if (const auto record = load_event(context.ledger(), event.book))
      for (const auto& entry : record->entries)
        if (std::find(books.begin(), books.end(), entry.now.player) != books.end()) {
          out.emplace_back(event.name);
          break;
        }
  return out;
}

Outcome<Ending> forget(Context& context, const ForgetArguments& arguments) {
  const auto book = choose_player(context, arguments.player);
  if (!book) return fail(book.error());
  const auto row = find_player(context.ledger(), *book);
  const std::string name =
      row ? row->family_name + (row->given_name.empty() ? "" : ", " + row->given_name) : book->hex();
  const LinkedBooks linked = linked_books(context.ledger(), *book);
  const std::vector<BookId> here = with_linked(context.ledger(), {*book});
  json::array named = events_that_name(context, here);
  json::array books;
  for (const auto* list : {&here, &linked.elsewhere})
    for (const BookId& one : *list)
      if (!context.ledger().is_forgotten(one)) books.push_back(json::string(one.hex()));
  const std::size_t count = books.size();
  json::object out{{"book", book->hex()}, {"books", std::move(books)}, {"forgotten", arguments.confirm}, {"still_in_entry_lists", named}};
  std::string text;
  if (!arguments.confirm) {
    text = name +
           ": setups, rackets, jobs, notes and search terms would be erased here and on every device that "
           "this one meets, and "
           "could not be brought back.\n" +
           (count > 1 ? "All " + std::to_string(count) + " books of this person that are linked go together.\n" : std::string()) +
           "Nothing was erased; add --confirm when the player has asked for it";
    out["player"] = name;
    context.answer(out, text);
    return Ending::needs_answer;
  }
  const auto report = forget_person(context.ledger(), *book);
  if (!report) return fail(report.error());
  text = std::string(count > 1 ? "all " + std::to_string(count) + " linked books forgotten" : "forgotten") + "; the other devices learn of it at their next exchange";
  for (const json::value& event : named)
    text += "\nthe entry list of " + std::string(event.as_string()) + " still names the player";
  out["gone_from_file"] = !report->not_yet_gone.has_value();
  if (report->not_yet_gone)
    text += "\nold pages of the file are overwritten later: " + report->not_yet_gone->message();
  context.answer(out, text);
  return Ending::done;
}

struct ForgottenArguments {};

Outcome<Ending> forgotten(Context& context, const ForgottenArguments&) {
  json::array list;
  std::string text;
  ToldTimes told(context);
  for (const Forgotten& one : context.ledger().forgotten()) {
    const bool here = one.heard_from == PublicKey{};
    list.push_back(json::object{{"book", one.stub.book.hex()},
                                {"by", one.stub.device},
                                {"key", to_hex(one.stub.key)},
                                {"at", iso_utc(one.stub.at)},
                                {"heard", iso_utc(one.heard)},
                                {"heard_from", here ? json::value() : json::value(to_hex(one.heard_from))}});
    text += told(one.stub.at) + "  by " + one.stub.device + " (" + to_hex(one.stub.key).substr(0, 12) +
            ")  book " + one.stub.book.hex() +
            (here ? "" : ", heard from " + to_hex(one.heard_from).substr(0, 12)) + "\n";
  }
  context.answer(list, text.empty() ? "nobody was forgotten" : text);
  return Ending::done;
}

}  // namespace

void add_forget_commands(CLI::App& app, Work& chosen) {
  add_command<ForgetArguments>(
      app, chosen, "forget",
      "Erase everything on a player who withdraws, here and on every device this one meets", forget,
      [](CLI::App& command, ForgetArguments& arguments) {
        command
            .add_option("PLAYER", arguments.player,
                        "A name that finds exactly one, or six or more characters of the book's number")
            ->required();
        command.add_flag("--confirm", arguments.confirm,
                         "The player has asked for it: erase. Can't be undone");
        command.footer(
            "--json: one object: book, books (all that are linked, which go with it), forgotten, still_in_entry_lists, gone_from_file. Exit code 3 without "
            "--confirm.");
      });
  add_command<ForgottenArguments>(app, chosen, "forgotten", "Which books were forgotten, on whose order", forgotten,
                       [](CLI::App& command, ForgottenArguments&) {
                         command.footer("--json: an array of {book, by, key, at, heard, heard_from}.");
                       });
}

}  // namespace weavelog::cli
