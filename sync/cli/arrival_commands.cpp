#include <algorithm>

#include "core/model/linked.h"
#include "core/people/arrival.h"
#include "core/people/consent.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/entered.h"
#include "sync/cli/render.h"

namespace weavelog::cli {
namespace {

struct ArrivalArguments {
  std::string event;
  std::string only;
};

Outcome<Ending> show_arrival(Context& context, const ArrivalArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  json::array list;
  std::string text;
  std::size_t counts[3] = {};
  for (const ArrivalLine& line : arrival(context.ledger(), *event, context.now())) {
    ++counts[static_cast<std::size_t>(line.band)];
    if (!arguments.only.empty() && arguments.only != name_of_band(line.band)) continue;
    list.push_back(line_json(line));
    text += line_text(line) + "\n";
  }
  text += std::to_string(counts[0]) + " known, " + std::to_string(counts[1]) + " likely, " +
          std::to_string(counts[2]) + " new";
  context.answer(json::object{{"event", event->hex()},
                              {"known", counts[0]},
                              {"likely", counts[1]},
                              {"new", counts[2]},
                              {"entries", std::move(list)}},
                 text);
  return Ending::done;
}

struct TickArguments {
  std::vector<std::string> players;
  bool known = false;
  std::string event;
};

Outcome<Ending> tick(Context& context, const TickArguments& arguments) {
  if (arguments.players.empty() && !arguments.known)
    return fail(FaultCode::bad_input, "nobody was ticked", "tick",
                "name players, or give --known for all known ones");
  // Without an event in use there is no entry list, but books can be ticked all the same.
  const auto event = context.event(arguments.event);
  if (!event && (arguments.known || !arguments.event.empty())) return fail(event.error());
  const auto lines = event ? arrival(context.ledger(), *event, context.now()) : std::vector<ArrivalLine>();

  std::vector<BookId> books;
  std::vector<std::string> kept_back;
  const auto add = [&](const BookId& book) {
    if (std::find(books.begin(), books.end(), book) == books.end()) books.push_back(book);
  };
  for (const std::string& player : arguments.players) {
    const auto book = choose_player(context, player);
    if (!book) return fail(book.error());
    add(*book);
  }
  if (arguments.known) {
    for (const ArrivalLine& line : lines) {
      if (line.band != MatchBand::known) continue;
      const ArrivalCandidate& candidate = line.candidates.front();
      if (candidate.may_cross)
        add(candidate.match.book);
      else
        kept_back.push_back(name_text(line.item.family_name, line.item.given_name, line.item.native_name));
    }
  }
  // Whoever was ticked is that entry: said once, known to the whole room; and who is entered may go there, so this comes first. Nothing is
  // said of somebody who may not.
  for (const BookId& book : books)
    if (event && !may_cross(context.ledger(), book, kPlayerBook, *event, !entries_of(lines, book).empty()))
      return fail(FaultCode::refused, "the player did not agree that this book goes there, or is not known to be at that event", "book " + book.hex(),
                  "find the player in the entry list, or ask and record the answer first");
  std::size_t linked = 0;
  if (event) {
    const auto record = load_event(context.ledger(), *event);
    if (!record) return fail(record.error());
    std::vector<std::pair<EntityId, BookId>> links;
    for (const BookId& book : books)
      for (const EntityId& entry : entries_of(lines, book)) links.emplace_back(entry, book);
    const auto draft = link_entries(*record, links);
    if (!draft) return fail(draft.error());
    if (!draft->empty())
      if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
    linked = links.size();
  }
  // At a device that works alone saying who somebody is is all there is to it.
  if (linked > 0 && !context.workplace().host()) {
    context.answer(json::object{{"ticked", json::array()}, {"linked", linked}, {"kept_back", json::array()}},
                   std::to_string(linked) + " linked to the entry list; no event server is chosen, so no book goes across");
    return Ending::done;
  }
  // One person's books go together; a linked one whose player did not agree to travel stays.
  std::vector<BookId> all;
  for (const BookId& book : with_linked(context.ledger(), books)) {
    if (std::find(books.begin(), books.end(), book) != books.end() || context.workplace().may_leave()(book, kPlayerBook)) {
      all.push_back(book);
    } else if (const auto row = find_player(context.ledger(), book)) {
      kept_back.push_back(name_text(row->family_name, row->given_name, row->native_name));
    }
  }
  if (auto ticked = context.workplace().tick(all); !ticked) return fail(ticked.error());
  json::array ticked, back;
  for (const BookId& book : all) ticked.push_back(json::string(book.hex()));
  for (const std::string& name : kept_back) back.push_back(json::string(name));
  std::string text = std::to_string(books.size()) + " players go across at the next exchange, " +
                     std::to_string(linked) + " linked to the entry list";
  for (const std::string& name : kept_back) text += "\nstays here, did not agree to travel: " + name;
  context.answer(
      json::object{{"ticked", std::move(ticked)}, {"linked", linked}, {"kept_back", std::move(back)}}, text);
  return Ending::done;
}

}  // namespace

void add_arrival_commands(CLI::App& app, Work& chosen) {
  add_command<ArrivalArguments>(app, chosen, "arrival",
                                "Who of the entry list is known here: known, likely (look) or new",
                                show_arrival, [](CLI::App& command, ArrivalArguments& arguments) {
                                  command.add_option("--event", arguments.event,
                                                     "NAME or number of the event; default: the one in use");
                                  command.add_option("--only", arguments.only, "Only these")
                                      ->check(CLI::IsMember({"known", "likely", "new"}));
                                  command.footer(
                                      "--json: one object: event, known, likely, new (counts), entries: "
                                      "[{entry, the entry's fields, band, linked,\n"
                                      "candidates: [{book, name, probability, evidence, last: {tensions, "
                                      "days_ago, ...}, may_cross}]}].");
                                });
  add_command<TickArguments>(app, chosen, "tick", "Let players' books go across to the event server in use",
                             tick, [](CLI::App& command, TickArguments& arguments) {
                               command.add_option("PLAYER", arguments.players, "Names or book numbers");
                               command.add_flag("--known", arguments.known,
                                                "All of the entry list that are known beyond doubt");
                               command.add_option("--event", arguments.event,
                                                  "NAME or number of the event; default: the one in use");
                               command.footer(
                                   "Without an event server it only says who of the entry list they are.\n"
                                   "--json: one object: ticked (books, linked ones with them), linked (count), kept_back (names of "
                                   "those who did not agree to travel).");
                             });
}

}  // namespace weavelog::cli
