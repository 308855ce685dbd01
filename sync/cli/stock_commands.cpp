// stock, stock-add, stock-move, stock-use: string on reels and in sets.

#include "core/base/iso_time.h"
#include "core/base/local_time.h"
#include "core/base/localised.h"
#include "core/desk/stock.h"
#include "core/model/field_json.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/field_input.h"
#include "sync/cli/told_times.h"

namespace weavelog::cli {
namespace {

std::string amount_text(const Language& language, std::int64_t amount, Supply supply) {
  if (supply != Supply::reel) return std::to_string(amount) + (amount == 1 ? " set" : " sets");
  return metres_words(language, amount);
}

/// Since the event's midnight: today's pace.
std::int64_t since_morning(Context& context, const BookId& event) {
  const LocalTime local(context.zone_of(event));
  return local.begin_of(local.day_of(context.now()));
}

json::object level_json(const StockLevel& level, std::size_t number, std::int64_t now) {
  json::object out = fields_json(level.item.now);
  out["number"] = number;
  out["item"] = level.item.id().hex();
  out["left"] = level.left;
  out["unit"] = level.item.now.supply == Supply::reel ? "mm" : "sets";
  out["used_today"] = level.used;
  out["low"] = level.low();
  if (const auto at = level.runs_out_at(now)) out["runs_out_at"] = iso_utc(*at);
  return out;
}

Outcome<Ending> tell_stock(Context& context, const BookId& event) {
  json::array list;
  std::string text;
  ToldTimes told(context);
  for (const StockLevel& level : stock_levels(context.ledger(), event, since_morning(context, event))) {
    list.push_back(level_json(level, list.size() + 1, context.now()));
    const StockItem& item = level.item.now;
    text += std::to_string(list.size()) + "  " + item.name;
    if (item.gauge) text += " " + localised(context.language(), *item.gauge);
    text += "  " + amount_text(context.language(), level.left, item.supply) + " left";
    if (level.used > 0) text += ", " + amount_text(context.language(), level.used, item.supply) + " used today";
    if (const auto at = level.runs_out_at(context.now())) text += ", gone " + told(*at, event) + " at this pace";
    text += level.low() ? "  (low)\n" : "\n";
  }
  context.answer(list, text.empty() ? "nothing in stock\n" : text);
  return Ending::done;
}

struct StockArguments {
  std::string event, name, gauge, material, supply, player, whose, low, note, amount, why, by, job, part;
  std::size_t item = 0;
};

Outcome<StockLevel> item_of(Context& context, const BookId& event, std::size_t number) {
  auto levels = stock_levels(context.ledger(), event, 0);
  if (number < 1 || number > levels.size())
    return fail(FaultCode::not_found, "no string of that number in stock", std::to_string(number), "`stock` lists them");
  return std::move(levels[number - 1]);
}

Outcome<Ending> store_stock(Context& context, const BookId& event, const Outcome<Draft>& draft) {
  if (!draft) return fail(draft.error());
  if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  return tell_stock(context, event);
}

Outcome<Ending> show(Context& context, const StockArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  return tell_stock(context, *event);
}

Outcome<Ending> add(Context& context, const StockArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  StockItem item;
  item.name = arguments.name;
  item.whose = arguments.whose;
  item.note = arguments.note;
  const auto supply = choice_from<Supply>(arguments.supply);
  if (!supply || *supply == Supply::unsaid) return no_choice(arguments.supply, "supply", {"reel", "set"});
  item.supply = *supply;
  if (!arguments.gauge.empty()) {
    const auto gauge = quantity_from(arguments.gauge, Unit::millimetre, "gauge");
    if (!gauge) return fail(gauge.error());
    item.gauge = *gauge;
  }
  if (!arguments.material.empty()) {
    const auto material = choice_from<StringMaterial>(arguments.material);
    if (!material) {
      std::vector<std::string_view> names;
      for (const auto& choice : choices(StringMaterial{})) names.push_back(choice.name);
      return no_choice(arguments.material, "material", names);
    }
    item.material = *material;
  }
  item.owner = StringOwner::room;
  if (!arguments.player.empty()) {
    const auto player = choose_player(context, arguments.player);
    if (!player) return fail(player.error());
    item.player = *player;
    item.owner = StringOwner::player;
  }
  if (!arguments.low.empty()) {
    const auto low = stock_amount_from(arguments.low, *supply);
    if (!low) return fail(low.error());
    item.low_mark = *low;
  }
  return store_stock(context, *event, add_stock_item(*event, item, context.now()));
}

Outcome<Ending> move(Context& context, const StockArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const auto why = choice_from<StockWhy>(arguments.why);
  if (!why || *why == StockWhy::unsaid || *why == StockWhy::used)
    return no_choice(arguments.why, "reason", {"received", "counted", "spoilt", "returned", "taken_away"});
  const auto item = item_of(context, *event, arguments.item);
  if (!item) return fail(item.error());
  const auto amount = stock_amount_from(arguments.amount, item->item.now.supply);
  if (!amount) return fail(amount.error());
  const auto by = arguments.by.empty() ? context.ledger().self().device : arguments.by;
  return store_stock(context, *event, move_stock(*event, {item->item.id(), *why, *amount, arguments.note, by, context.now()}));
}

Outcome<Ending> use(Context& context, const StockArguments& arguments) {
  const auto event = context.event(arguments.event);
  if (!event) return fail(event.error());
  const auto row = choose_job(context, *event, arguments.job);
  if (!row) return fail(row.error());
  const auto record = load_player(context.ledger(), row->book);
  if (!record) return fail(record.error());
  const auto by = arguments.by.empty() ? context.ledger().self().device : arguments.by;
  std::vector<StockUse> uses;
  if (arguments.item == 0) {
    uses = suggest_uses(*record, row->job, stock_levels(context.ledger(), *event, 0));
    if (uses.empty())
      return fail(FaultCode::not_found, "nothing in stock fits this job", "job " + row->job.hex(), "say which with --item and --amount");
  } else {
    const auto item = item_of(context, *event, arguments.item);
    if (!item) return fail(item.error());
    const auto amount = stock_amount_from(arguments.amount, item->item.now.supply);
    if (!amount) return fail(amount.error());
    uses.push_back({item->item.id(), arguments.part, *amount});
  }
  return store_stock(context, *event, use_for_job(*event, row->job, uses, by, context.now()));
}

void add_stock_event(CLI::App& command, StockArguments& arguments) {
  command.add_option("--event", arguments.event, "NAME or number of the event; default: the one in use");
  command.footer(
      "--json: an array of what is in stock: [{number, item, name, gauge, supply, owner, player, whose, left, unit (mm or sets), used_today,\n"
      "low, low_mark, runs_out_at}].");
}
void add_by(CLI::App& command, StockArguments& arguments) {
  command.add_option("--by", arguments.by, "Who does it; default: the device's name");
  add_stock_event(command, arguments);
}

}  // namespace

void add_stock_commands(CLI::App& app, Work& chosen) {
  add_command<StockArguments>(app, chosen, "stock", "What string is left, and until when at today's pace", show, add_stock_event);
  add_command<StockArguments>(app, chosen, "stock-add", "A string that the room or a player has here", add,
                              [](CLI::App& command, StockArguments& arguments) {
                                command.add_option("NAME", arguments.name, "As jobs call it")->required();
                                command.add_option("SUPPLY", arguments.supply, "reel or set")->required();
                                command.add_option("--gauge", arguments.gauge, "In mm");
                                command.add_option("--material", arguments.material,
                                                   "natural_gut, multifilament, synthetic_gut, polyester, aramid: how long it takes and how its tension goes follow it");
                                command.add_option("--player", arguments.player, "Whose own string it is");
                                command.add_option("--whose", arguments.whose, "The stringer from whose bag it is");
                                command.add_option("--low", arguments.low, "Metres or sets at which it is called low");
                                command.add_option("--note", arguments.note, "A remark");
                                add_stock_event(command, arguments);
                              });
  add_command<StockArguments>(app, chosen, "stock-move", "String that came, went or was counted", move,
                              [](CLI::App& command, StockArguments& arguments) {
                                command.add_option("NUMBER", arguments.item, "Its number in `stock`")->required();
                                command.add_option("REASON", arguments.why, "received, counted, spoilt, returned, taken_away")->required();
                                command.add_option("AMOUNT", arguments.amount, "Metres of a reel, or sets")->required();
                                command.add_option("--note", arguments.note, "A remark");
                                add_by(command, arguments);
                              });
  add_command<StockArguments>(app, chosen, "stock-use", "Take the string of a job off the stock", use,
                              [](CLI::App& command, StockArguments& arguments) {
                                command.add_option("JOB-OR-TAG", arguments.job, "Tag number, or six or more characters of the job's number")->required();
                                auto* item = command.add_option("--item", arguments.item, "Its number in `stock`; default: what fits the job");
                                command.add_option("--amount", arguments.amount, "Metres of a reel, or sets")->needs(item);
                                arguments.part = "bed";
                                command.add_option("--part", arguments.part, "mains, crosses or bed")
                                    ->check(CLI::IsMember({"mains", "crosses", "bed"}))
                                    ->capture_default_str();
                                add_by(command, arguments);
                              });
}

}  // namespace weavelog::cli
