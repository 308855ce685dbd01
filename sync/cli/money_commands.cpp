// charge, sell, discount, pay, statement, reverse, price: the room's money.

#include "core/base/iso_time.h"
#include "core/base/text.h"
#include "core/desk/prices.h"
#include "core/desk/statement.h"
#include "core/model/field_json.h"
#include "sync/cli/choose.h"
#include "sync/cli/commands.h"
#include "sync/cli/field_input.h"
#include "sync/cli/money_day.h"
#include "sync/cli/render.h"

namespace weavelog::cli {
namespace {

json::object line_json(const StatementLine& line, std::size_t number) {
  const MoneyRow& row = line.row;
  json::object out{{"number", number}, {"line", row.id.hex()}, {"kind", row.payment ? "payment" : "charge"}};
  if (row.job) out["job"] = row.job.hex();
  if (line.tag_number) out["tag"] = *line.tag_number;
  if (!line.racket_label.empty()) out["racket"] = line.racket_label;
  if (row.payment) {
    out["means"] = name_of_choice(row.means);
  } else {
    out["service"] = row.service;
  }
  out["amount_minor"] = row.amount;
  out["currency"] = row.currency;
  out["at"] = iso_utc(row.at);
  out["by"] = row.by;
  if (!row.note.empty()) out["note"] = row.note;
  if (row.reverses) out["reverses"] = row.reverses.hex();
  if (line.reversed) out["reversed"] = true;
  if (line.open) out["open_question"] = true;
  return out;
}

std::string line_text(const Language& language, const StatementLine& line, std::size_t number, const std::string& at) {
  const MoneyRow& row = line.row;
  std::string out = std::to_string(number) + "  " + at + "  ";
  if (line.tag_number) out += "tag " + std::to_string(*line.tag_number) + "  ";
  if (!line.racket_label.empty()) out += "racket " + line.racket_label + "  ";
  out += row.payment ? "paid, " + std::string(name_of_choice(row.means)) : row.service;
  out += (row.note.empty() ? "" : ": " + row.note) + "  " + money_words(language, row.amount, row.currency) + "  " + row.by;
  if (line.open) out += "  (open question: see `questions`)";
  return out + (row.reverses ? "  (reversal)\n" : line.reversed ? "  (reversed)\n" : "\n");
}

/// `remarks` are what a person has to know besides the lines, a line each.
Outcome<Ending> tell_statement(Context& context, const BookId& event, const BookId& player, const std::vector<std::string>& remarks = {}) {
  const Statement statement = statement_of(context.ledger(), event, player);
  json::array list, accounts;
  std::string text;
  ToldTimes told(context);
  for (const StatementLine& line : statement.lines) {
    list.push_back(line_json(line, list.size() + 1));
    text += line_text(context.language(), line, list.size(), told(line.row.at, event));
  }
  for (const Account& account : statement.accounts) {
    accounts.push_back(json::object{{"currency", account.currency},
                                    {"charged_minor", account.charged},
                                    {"paid_minor", account.paid},
                                    {"due_minor", account.due()}});
    text += "due: " + money_words(context.language(), account.due(), account.currency) + "\n";
  }
  if (text.empty()) text = "nothing was charged or paid\n";
  json::array said;
  for (const std::string& remark : remarks) {
    said.push_back(json::string(remark));
    text += remark + "\n";
  }
  context.answer(json::object{{"player", player.hex()}, {"lines", std::move(list)}, {"accounts", std::move(accounts)}, {"remarks", std::move(said)}}, text);
  return Ending::done;
}

Outcome<Ending> store(Context& context, const Outcome<Draft>& draft, const BookId& event, const BookId& player,
                      const std::vector<std::string>& remarks = {}) {
  if (!draft) return fail(draft.error());
  if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
  return tell_statement(context, event, player, remarks);
}

/// Cash that comes or goes after the box of the day was counted.
std::vector<std::string> remarks_on_cash(Context& context, const EventRecord& event) {
  const std::string day = day_at(context.now(), event.event.now.time_zone);
  const auto closes = closes_of_day(context.ledger(), event.book, day);
  if (closes.empty()) return {};
  return {day + " was closed " + close_words(context, event, closes.front()) + "; this cash is not in that count: count the box again, `close-day " + day +
          " --counted AMOUNT --again`"};
}

struct MoneyArguments {
  std::string whom, event, amount, means, reason, note, by;
  std::string service;
  std::size_t line = 0;
  std::int64_t count = 1;
};

std::string who(Context& context, const MoneyArguments& arguments) {
  return arguments.by.empty() ? context.ledger().self().device : arguments.by;
}

Outcome<Ending> charge(Context& context, const MoneyArguments& arguments) {
  const auto event = event_here(context, arguments.event);
  if (!event) return fail(event.error());
  const auto row = choose_job(context, event->book, arguments.whom);
  if (!row) return fail(row.error());
  const auto record = load_player(context.ledger(), row->book);
  if (!record) return fail(record.error());
  const auto price = price_of(*event, *record, row->job);
  std::vector<std::string> remarks;
  if (price)
    for (const std::string& field : price->unowned) {
      const Job& job = record->job(row->job)->now;
      remarks.push_back("string not charged (" + (field == "mains_owner" ? job.mains_string : job.crosses_string) +
                        "): not said whose it is; at the drop-off --set " + field + "=room says so, `sell` charges this one");
    }
  return store(context,
               charge_jobs(context.ledger(), *event, *record, std::span(&row->job, 1), who(context, arguments), context.now()),
               event->book, row->book, remarks);
}

/// "12.5" per cent as parts of a thousand.
Outcome<std::int64_t> per_mille_from(const std::string& text) {
  const auto percent = Decimal::parse(text);
  const Decimal exact = percent ? percent->trimmed() : Decimal{};
  if (!percent || exact.scale > 1 || exact.mantissa <= 0)
    return fail(FaultCode::bad_input, "\"" + text + "\" is no share", "discount", "give per cent with at most one decimal, 0.1 to 100");
  return exact.scale == 0 ? exact.mantissa * 10 : exact.mantissa;  // at most 15 digits: it fits
}

Outcome<Ending> take_off(Context& context, const MoneyArguments& arguments) {
  const auto share = per_mille_from(arguments.amount);
  if (!share) return fail(share.error());
  const auto event = event_here(context, arguments.event);
  if (!event) return fail(event.error());
  const auto row = choose_job(context, event->book, arguments.whom);
  if (!row) return fail(row.error());
  return store(context,
               discount(context.ledger(), *event, row->book, row->job, *share, arguments.reason, who(context, arguments), context.now()),
               event->book, row->book);
}

/// What the price list asks for a service.
Outcome<std::int64_t> listed(const EventRecord& event, const std::string& service) {
  for (const auto& price : event.prices)
    if (price.now.amount_minor && search_key(price.now.service) == search_key(service)) return *price.now.amount_minor;
  return fail(FaultCode::not_found, "the price list has no price for \"" + service + "\"", event.event.now.name, "give one with --each");
}

Outcome<Ending> sell(Context& context, const MoneyArguments& arguments) {
  const auto event = event_here(context, arguments.event);
  if (!event) return fail(event.error());
  const auto player = choose_player(context, arguments.whom);
  if (!player) return fail(player.error());
  const auto currency = currency_of(*event);
  if (!currency) return fail(currency.error());
  const auto each = arguments.amount.empty() ? listed(*event, arguments.service) : minor_from(arguments.amount, *currency);
  if (!each) return fail(each.error());
  return store(context,
               charge_sale(*event, *player, {arguments.service, *each, arguments.count, arguments.note}, who(context, arguments), context.now()),
               event->book, *player);
}

Outcome<Ending> price(Context& context, const MoneyArguments& arguments) {
  auto event = event_here(context, arguments.event);
  if (!event) return fail(event.error());
  if (!arguments.service.empty()) {
    std::optional<std::int64_t> amount;
    if (arguments.amount != "none") {
      const auto currency = currency_of(*event);
      if (!currency) return fail(currency.error());
      const auto typed = minor_from(arguments.amount, *currency);
      if (!typed) return fail(typed.error());
      amount = *typed;
    }
    const auto draft = set_price(*event, arguments.service, amount);
    if (!draft) return fail(draft.error());
    if (!draft->empty())
      if (auto stored = context.workplace().commit(*draft); !stored) return fail(stored.error());
    event = load_event(context.ledger(), event->book);
    if (!event) return fail(event.error());
  }
  json::array list;
  std::string text;
  for (const auto& one : event->prices) {
    if (!one.now.amount_minor) continue;
    list.push_back(json::object{{"service", one.now.service}, {"amount_minor", *one.now.amount_minor}, {"currency", one.now.currency}});
    text += one.now.service + ": " + money_words(context.language(), *one.now.amount_minor, one.now.currency) + "\n";
  }
  context.answer(list, text.empty() ? "nothing has a price\n" : text);
  return Ending::done;
}

Outcome<Ending> pay(Context& context, const MoneyArguments& arguments) {
  std::vector<std::string_view> names;
  for (const auto& choice : choices(PaidBy{}))
    if (choice.value != PaidBy::unsaid) names.push_back(choice.name);
  const auto means = choice_from<PaidBy>(arguments.means);
  if (!means || *means == PaidBy::unsaid) return no_choice(arguments.means, "means", names);
  const auto event = event_here(context, arguments.event);
  if (!event) return fail(event.error());
  const auto player = choose_player(context, arguments.whom);
  if (!player) return fail(player.error());
  const auto currency = currency_of(*event);
  if (!currency) return fail(currency.error());
  const auto amount = minor_from(arguments.amount, *currency);
  if (!amount) return fail(amount.error());
  return store(context, take_payment(*event, *player, *amount, *means, arguments.note, who(context, arguments), context.now()), event->book,
               *player, *means == PaidBy::cash ? remarks_on_cash(context, *event) : std::vector<std::string>());
}

Outcome<Ending> statement(Context& context, const MoneyArguments& arguments) {
  const auto event = event_here(context, arguments.event);
  if (!event) return fail(event.error());
  const auto player = choose_player(context, arguments.whom);
  if (!player) return fail(player.error());
  return tell_statement(context, event->book, *player);
}

Outcome<Ending> reverse_line(Context& context, const MoneyArguments& arguments) {
  const auto event = event_here(context, arguments.event);
  if (!event) return fail(event.error());
  const auto player = choose_player(context, arguments.whom);
  if (!player) return fail(player.error());
  const auto lines = money_of_player(context.ledger(), event->book, *player);
  if (arguments.line < 1 || arguments.line > lines.size())
    return fail(FaultCode::not_found, "no line of that number", std::to_string(arguments.line), "`statement` lists them");
  const MoneyRow& line = lines[arguments.line - 1];
  return store(context, reverse(context.ledger(), *event, line.id, arguments.reason, who(context, arguments), context.now()), event->book, *player,
               line.payment && line.means == PaidBy::cash ? remarks_on_cash(context, *event) : std::vector<std::string>());
}

void add_event(CLI::App& command, MoneyArguments& arguments) {
  command.add_option("--event", arguments.event, "NAME or number of the event; default: the one in use");
}
void add_by(CLI::App& command, MoneyArguments& arguments) {
  command.add_option("--by", arguments.by, "Who does it; default: the device's name");
  add_event(command, arguments);
}
constexpr const char* kJob = "Tag number, or six or more characters of the job's number";
constexpr const char* kPlayer = "Name, or six or more characters of the book's number";
constexpr const char* kStatementForm =
    "--json: player, lines: [{number, line, kind, job, tag, racket, service or means, amount_minor, currency, at, by, note, reverses, reversed,\n"
    "open_question}], accounts: [{currency, charged_minor, paid_minor, due_minor}], remarks. Amounts are whole minor units (cents).";

}  // namespace

void add_money_commands(CLI::App& app, Work& chosen) {
  add_command<MoneyArguments>(app, chosen, "charge", "Put a job's price on the player's account", charge,
                              [](CLI::App& command, MoneyArguments& arguments) {
                                command.add_option("JOB-OR-TAG", arguments.whom, kJob)->required();
                                add_by(command, arguments);
                                command.footer(kStatementForm);
                              });
  add_command<MoneyArguments>(app, chosen, "discount", "Take a part off a job's price, or all of it", take_off,
                              [](CLI::App& command, MoneyArguments& arguments) {
                                command.add_option("JOB-OR-TAG", arguments.whom, kJob)->required();
                                command.add_option("PERCENT", arguments.amount, "0.1 to 100; 100 is free of charge")->required();
                                command.add_option("--reason", arguments.reason, "Why")->required();
                                add_by(command, arguments);
                                command.footer(kStatementForm);
                              });
  add_command<MoneyArguments>(app, chosen, "sell", "Charge something that belongs to no job: an overgrip, a reel", sell,
                              [](CLI::App& command, MoneyArguments& arguments) {
                                command.add_option("PLAYER", arguments.whom, kPlayer)->required();
                                command.add_option("SERVICE", arguments.service, "As the price list calls it, or any words")->required();
                                command.add_option("--each", arguments.amount, "Price of one, such as 2.50; default: the price list's");
                                command.add_option("--count", arguments.count, "How many")->capture_default_str();
                                command.add_option("--note", arguments.note, "A remark");
                                add_by(command, arguments);
                                command.footer(kStatementForm);
                              });
  add_command<MoneyArguments>(app, chosen, "price", "What services cost; set one, or take it off the list", price,
                              [](CLI::App& command, MoneyArguments& arguments) {
                                auto* service = command.add_option("SERVICE", arguments.service, "labour, string, \"string NAME\", or any other");
                                auto* amount = command.add_option("AMOUNT", arguments.amount, "Such as 25.50; `none` takes it off");
                                service->needs(amount);
                                amount->needs(service);
                                add_event(command, arguments);
                                command.footer("--json: an array of {service, amount_minor, currency}.");
                              });
  add_command<MoneyArguments>(app, chosen, "pay", "Take a payment", pay, [](CLI::App& command, MoneyArguments& arguments) {
    command.add_option("PLAYER", arguments.whom, kPlayer)->required();
    command.add_option("AMOUNT", arguments.amount, "In the event's currency, such as 25.50")->required();
    command.add_option("MEANS", arguments.means, "cash, card, room_account, prize_money")->required();
    command.add_option("--note", arguments.note, "A remark");
    add_by(command, arguments);
    command.footer(kStatementForm);
  });
  add_command<MoneyArguments>(app, chosen, "statement", "What a player was charged and paid", statement,
                              [](CLI::App& command, MoneyArguments& arguments) {
                                command.add_option("PLAYER", arguments.whom, kPlayer)->required();
                                add_event(command, arguments);
                                command.footer(kStatementForm);
                              });
  add_command<MoneyArguments>(app, chosen, "reverse", "Take a line of a statement back by one of the opposite amount", reverse_line,
                              [](CLI::App& command, MoneyArguments& arguments) {
                                command.add_option("PLAYER", arguments.whom, kPlayer)->required();
                                command.add_option("LINE", arguments.line, "Its number in `statement`")->required();
                                command.add_option("--reason", arguments.reason, "Why")->required();
                                add_by(command, arguments);
                                command.footer(kStatementForm);
                              });
}

}  // namespace weavelog::cli
