#include "core/desk/prices.h"

#include <algorithm>
#include <limits>

#include "core/base/text.h"
#include "core/desk/made_from.h"
#include "core/desk/money.h"
#include "core/people/price_list.h"

namespace weavelog {

EntityState new_price(const EventRecord& event, std::string_view service) {
  EntityState fresh;
  fresh.book = event.book;
  fresh.kind = kPrice;
  fresh.id = made_from(event.event.id(), "weavelog price 1", search_key(service));
  return fresh;
}

Outcome<Draft> set_price(const EventRecord& event, const std::string& service, std::optional<std::int64_t> amount_minor) {
  if (is_blank(service)) return fail(FaultCode::bad_input, "the service has no name", "service", "say what it is");
  if (amount_minor && (*amount_minor < 0 || *amount_minor > kMostMinor))
    return fail(FaultCode::bad_input, "a price is not below zero, and not that large", "amount", "check the amount");
  const auto currency = currency_of(event);
  if (!currency) return fail(currency.error());
  const std::string key = search_key(service);
  Draft draft(event.book, kEventBook, kActEdit);
  const auto held = std::find_if(event.prices.begin(), event.prices.end(),
                                 [&](const Loaded<Price>& price) { return search_key(price.now.service) == key; });
  Price wanted{service, amount_minor, *currency};
  if (held != event.prices.end()) {
    wanted.service = held->now.service;
    put_changes(draft, held->seen, wanted);
    return draft;
  }
  put_changes(draft, new_price(event, service), wanted);
  return draft;
}

Outcome<Draft> set_currency(const Ledger& ledger, const EventRecord& event, const std::string& currency) {
  if (!decimals_of_currency(currency))
    return fail(FaultCode::bad_input, "\"" + currency + "\" is not a currency", "currency", "write its three letters, such as EUR");
  const auto& prices = event.prices;
  const bool priced = std::any_of(prices.begin(), prices.end(), [&](const Loaded<Price>& price) {
    return price.now.amount_minor && price.now.currency != currency;
  });
  const auto lines = money_between(ledger, event.book, std::numeric_limits<std::int64_t>::min(), std::numeric_limits<std::int64_t>::max());
  const bool charged = std::any_of(lines.begin(), lines.end(), [&](const MoneyRow& row) { return row.currency != currency; });
  if (priced || charged)
    return fail(FaultCode::refused, charged ? "there are lines in another currency" : "there are prices in another currency", "currency",
                "keep the currency that the event began with");
  EventInfo wanted = event.event.now;
  wanted.currency = currency;
  Draft draft(event.book, kEventBook, kActEdit);
  put_changes(draft, event.event.seen, wanted);
  return draft;
}

}  // namespace weavelog
