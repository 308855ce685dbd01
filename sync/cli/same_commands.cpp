#include "core/desk/last_time.h"
#include "sync/cli/ask_first.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/hand_over.h"
#include "sync/cli/wish_input.h"

namespace weavelog::cli {
namespace {

struct SameArguments {
  std::string player;
  std::string rackets;
  WishArguments wish;
  DeskArguments desk;
};

Outcome<Ending> same(Context& context, const SameArguments& arguments) {
  const auto record = load_chosen(context, arguments.player);
  if (!record) return fail(record.error());
  auto desk = set_desk(context, record->person.now, arguments.desk);
  if (!desk) return fail(desk.error());
  const auto rackets = choose_rackets(*record, desk->request.drop_off.event, arguments.rackets);
  if (!rackets) return fail(rackets.error());
  std::vector<OpenQuestion> open;  // of all rackets, so that nobody is asked twice
  for (const EntityId& racket : *rackets) {
    const auto last = same_as_last_time(*record, racket);
    if (!last)
      return fail(FaultCode::not_found, "nothing was agreed with the player yet",
                  listed_name(record->person.now), "use `drop-off` and ask everything");
    open.insert(open.end(), last->questions.begin(), last->questions.end());
    if (!open.empty()) continue;
    const auto wish = with_wish(last->proposal, arguments.wish, desk->typing);
    if (!wish) return fail(wish.error());
    DropOffLine line = line_from(*last);
    line.agreed = *wish;
    if (!line.last_time) line.last_time = last->proposal;
    desk->request.lines.push_back(std::move(line));
  }
  if (!open.empty()) return ask_first(context, *record, open);
  return answer_hand_over(context, *record, std::move(*desk), arguments.desk);
}

}  // namespace

void add_same_commands(CLI::App& app, Work& chosen) {
  add_command<SameArguments>(
      app, chosen, "same", "Same as last time, with a change if there is one", same,
      [](CLI::App& command, SameArguments& arguments) {
        command.add_option("PLAYER", arguments.player, "A name that finds exactly one, or the book's number")
            ->required();
        command.add_option("--rackets", arguments.rackets,
                           "How many of last time's, or labels parted by commas (\"#3\" for a label of "
                           "digits); default: all of last time's");
        add_wish_options(command, arguments.wish);
        add_desk_options(command, arguments.desk);
        command.footer(
            "Example: weavelog-cli --data tablet same \"Wendelmoor Ilse\" --rackets 3 --mains -1kg "
            "--ready-by 16:30 --confirm\n" +
            wish_footer() + "\n" + hand_over_footer() +
            "\nOpen questions on what it goes by: open_questions instead, exit code 3, nothing stored.");
      });
}

}  // namespace weavelog::cli
