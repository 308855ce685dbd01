// takings, close-day: the money of a day, and its box.

#include "sync/cli/money_day.h"

#include <algorithm>
#include <limits>

#include "core/base/iso_time.h"
#include "core/model/field_json.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/told_times.h"

namespace weavelog::cli {

std::string close_words(Context& context, const EventRecord& event, const DayClose& close) {
  return (close.at ? "at " + ToldTimes(context)(*close.at, event.book) + " " : std::string()) + "by " + close.by + ", with " +
         money_words(context.language(), close.counted_minor.value_or(0), close.currency) + " counted";
}

namespace {

struct MoneyDayArguments {
  std::string event, day, counted, note, by;
  bool again = false;
};

/// All lines of a day, or of the whole event where no day is given.
Outcome<std::vector<MoneyRow>> lines_of(Context& context, const EventRecord& event, const std::string& day) {
  DayBounds bounds{std::numeric_limits<std::int64_t>::min(), std::numeric_limits<std::int64_t>::max()};
  if (!day.empty()) {
    const auto held = bounds_of_day(day, event.event.now.time_zone);
    if (!held) return fail(held.error());
    bounds = *held;
  }
  return money_between(context.ledger(), event.book, bounds.from, bounds.until);
}

/// Sums as a document and as lines.
struct TotalsTold {
  json::object document;
  std::string text;
};
TotalsTold told_totals(const Context& context, const EventRecord& event, const std::vector<MoneyRow>& lines) {
  json::array list;
  std::string text;
  for (const MoneyTotals& totals : totals_of(lines)) {
    json::object services, means;
    const auto words = [&](std::int64_t amount) { return money_words(context.language(), amount, totals.currency); };
    for (const auto& [service, sum] : totals.by_service) {
      services[service] = sum;
      text += service + ": " + words(sum) + "\n";
    }
    text += "charged: " + words(totals.charged) + "\n";
    for (const auto& [how, sum] : totals.by_means) {
      means[name_of_choice(how)] = sum;
      text += "paid, " + std::string(name_of_choice(how)) + ": " + words(sum) + "\n";
    }
    text += "paid: " + words(totals.paid) + "\n";
    list.push_back(json::object{{"currency", totals.currency},
                                {"charged_minor", totals.charged},
                                {"paid_minor", totals.paid},
                                {"by_service", std::move(services)},
                                {"by_means", std::move(means)}});
  }
  return {json::object{{"event", event.book.hex()}, {"lines", lines.size()}, {"totals", std::move(list)}},
          text.empty() ? "nothing was charged or paid\n" : text};
}

Outcome<Ending> takings(Context& context, const MoneyDayArguments& arguments) {
  const auto event = event_here(context, arguments.event);
  if (!event) return fail(event.error());
  const auto lines = lines_of(context, *event, arguments.day);
  if (!lines) return fail(lines.error());
  const TotalsTold told = told_totals(context, *event, *lines);
  context.answer(told.document, told.text);
  return Ending::done;
}

json::object close_json(const DayClose& close) {
  json::object out{{"cash_minor", close.cash_minor.value_or(0)}, {"counted_minor", close.counted_minor.value_or(0)},
                   {"difference_minor", box_difference(close)}, {"currency", close.currency}, {"by", close.by}, {"note", close.note}};
  if (close.at) out["at"] = iso_utc(*close.at);
  return out;
}

/// What the box should hold of the day, what was counted, and what lies between.
std::string box_text(const Context& context, const DayClose& close) {
  const auto words = [&](std::int64_t amount) { return money_words(context.language(), amount, close.currency); };
  const std::int64_t more = box_difference(close);
  return "cash by the lines: " + words(close.cash_minor.value_or(0)) + "\ncounted: " + words(close.counted_minor.value_or(0)) + "\ndifference: " +
         (more == 0 ? "none" : words(more < 0 ? -more : more) + (more < 0 ? " too little in the box" : " too much in the box")) + "\n";
}

Outcome<Ending> close_books(Context& context, const MoneyDayArguments& arguments) {
  const auto event = event_here(context, arguments.event);
  if (!event) return fail(event.error());
  const auto lines = lines_of(context, *event, arguments.day);
  if (!lines) return fail(lines.error());
  const auto currency = currency_of(*event);
  if (!currency) return fail(currency.error());
  const auto counted = minor_from(arguments.counted, *currency);
  if (!counted) return fail(counted.error());
  const std::string by = arguments.by.empty() ? context.ledger().self().device : arguments.by;
  const UnixMs now = context.now();
  const auto draft = close_day(*event, arguments.day, *lines, *counted, arguments.note, by, now);
  if (!draft) return fail(draft.error());
  const auto before = closes_of_day(context.ledger(), event->book, arguments.day);
  const bool stores = before.empty() || arguments.again;
  TotalsTold told = told_totals(context, *event, *lines);
  json::array closed_before;
  for (const DayClose& one : before) {
    closed_before.push_back(close_json(one));
    told.text += "closed before " + close_words(context, *event, one) + "\n";
  }
  if (stores) {
    if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
    // Not simply the newest: a device whose clock is ahead may have closed the day as well.
    const auto closes = closes_of_day(context.ledger(), event->book, arguments.day);
    const auto own = std::find_if(closes.begin(), closes.end(),
                                  [&](const DayClose& one) { return one.at == now && one.by == by && one.counted_minor == *counted; });
    if (own == closes.end()) return fail(FaultCode::conflict, "the day was closed, but that can't be shown", arguments.day, "look with `close-day` again");
    told.document["closed"] = close_json(*own);
    told.text += box_text(context, *own);
  } else {
    told.text += "nothing was stored; --again closes it once more, with this count\n";
  }
  told.document["stored"] = stores;
  told.document["closed_before"] = std::move(closed_before);
  context.answer(told.document, told.text);
  return stores ? Ending::done : Ending::needs_answer;
}

void add_event(CLI::App& command, MoneyDayArguments& arguments) {
  command.add_option("--event", arguments.event, "NAME or number of the event; default: the one in use");
}

}  // namespace

void add_money_day_commands(CLI::App& app, Work& chosen) {
  const auto totals_form = "--json: event, lines (how many), totals: [{currency, charged_minor, paid_minor, by_service, by_means}].";
  add_command<MoneyDayArguments>(app, chosen, "takings", "What was charged and paid on a day, or in all", takings,
                                 [&](CLI::App& command, MoneyDayArguments& arguments) {
                                   command.add_option("DAY", arguments.day, "Such as 2031-05-26, in the event's time zone; none: all days");
                                   add_event(command, arguments);
                                   command.footer(totals_form);
                                 });
  add_command<MoneyDayArguments>(app, chosen, "close-day", "Close the books of a day with what lies in the box", close_books,
                                 [&](CLI::App& command, MoneyDayArguments& arguments) {
                                   command.add_option("DAY", arguments.day, "Such as 2031-05-26, in the event's time zone")->required();
                                   command.add_option("--counted", arguments.counted, "Cash in the box")->required();
                                   command.add_option("--note", arguments.note, "A remark");
                                   command.add_flag("--again", arguments.again, "Also a day that was closed before; otherwise that ends with 3");
                                   command.add_option("--by", arguments.by, "Who does it; default: the device's name");
                                   add_event(command, arguments);
                                   command.footer(std::string(totals_form) + "\nAnd stored, closed {cash_minor (of the lines), counted_minor, difference_minor, currency, "
                                                                          "at, by, note}, closed_before, a list\nof the same, newest first.");
                                 });
}

}  // namespace weavelog::cli
