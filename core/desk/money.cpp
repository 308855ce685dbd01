#include "core/desk/money.h"

#include <algorithm>
#include <array>
#include <limits>

#include "core/base/iso_time.h"
#include "core/base/local_time.h"
#include "core/base/localised.h"
#include "core/base/text.h"
#include "core/desk/inspection.h"
#include "core/desk/made_from.h"
#include "core/people/price_list.h"

namespace weavelog {
namespace {

std::int64_t plus(std::int64_t a, std::int64_t b) {
  std::int64_t out = 0;
  if (__builtin_add_overflow(a, b, &out)) return a < 0 ? std::numeric_limits<std::int64_t>::min() : std::numeric_limits<std::int64_t>::max();
  return out;
}

std::int64_t minus(std::int64_t a, std::int64_t b) {
  std::int64_t out = 0;
  if (__builtin_sub_overflow(a, b, &out)) return a < 0 ? std::numeric_limits<std::int64_t>::min() : std::numeric_limits<std::int64_t>::max();
  return out;
}

constexpr std::string_view kChargeUse = "weavelog charge 1";
constexpr const char* kDiscount = "discount";

/// Prices by service, as typed in any case.
class Prices {
 public:
  explicit Prices(const EventRecord& event) {
    for (const auto& price : event.prices)
      if (price.now.amount_minor) prices_.emplace(search_key(price.now.service), *price.now.amount_minor);
  }
  [[nodiscard]] std::optional<std::int64_t> find(std::string_view service) const {
    const auto found = prices_.find(search_key(service));
    return found == prices_.end() ? std::nullopt : std::optional(found->second);
  }
  [[nodiscard]] std::optional<std::int64_t> of_string(const std::string& name) const {
    const auto named = find("string " + name);
    return named ? named : find("string");
  }

 private:
  std::map<std::string, std::int64_t> prices_;
};

Charge charge_of(const BookId& player, const EntityId& job, const ChargeLine& line, const std::string& currency, const std::string& by,
                 UnixMs at) {
  Charge charge;
  charge.player = player;
  charge.job = job;
  charge.service = line.service;
  charge.amount_minor = line.amount_minor;
  charge.currency = currency;
  charge.at = at;
  charge.by = by;
  charge.note = line.note;
  return charge;
}

/// What is held under an identifier, so that what stands there, if only the traces of an undone action, is replaced.
EntityState held_at(const Ledger& ledger, const BookId& book, EntityKind kind, const EntityId& id) {
  if (auto held = ledger.entity(book, id)) return std::move(*held);
  EntityState fresh;
  fresh.book = book;
  fresh.kind = kind;
  fresh.id = id;
  return fresh;
}

/// Whether what a line costs was answered differently while apart.
Outcome<> check_closed(const Ledger& ledger, const BookId& event, const MoneyRow& row) {
  const auto state = row.payment ? std::nullopt : ledger.entity(event, row.id);
  const Cell* amount = state ? state->find(tag_of<Charge>(&Charge::amount_minor)) : nullptr;
  const Cell* currency = state ? state->find(tag_of<Charge>(&Charge::currency)) : nullptr;
  if ((amount && amount->split()) || (currency && currency->split()))
    return fail(FaultCode::conflict, "two tablets charged different amounts for it", row.service, "close the open question first");
  return {};
}

constexpr std::array kAutomatic{"labour", "stencil", "rush", "on-court rush", "grommet strip", "tubing", "string, mains", "string, crosses"};

}  // namespace

Outcome<std::string> currency_of(const EventRecord& event) {
  std::string currency = event.event.now.currency;
  for (const auto& price : event.prices) {
    if (currency.empty()) currency = price.now.currency;
    if (price.now.currency != currency)
      return fail(FaultCode::bad_input, "the prices are of several currencies (" + currency + ", " + price.now.currency + ")",
                  event.event.now.name, "import a price list of one currency");
  }
  if (!decimals_of_currency(currency))
    return fail(FaultCode::bad_input, "the event has no currency", event.event.now.name, "give the event one, or import a price list");
  return currency;
}

std::int64_t JobPrice::sum() const {
  std::int64_t out = 0;
  for (const ChargeLine& line : lines) out = plus(out, line.amount_minor);
  return out;
}

Outcome<JobPrice> price_of(const EventRecord& event, const PlayerRecord& record, const EntityId& id) {
  const Loaded<Job>* job = record.job(id);
  if (!job) return fail(FaultCode::not_found, "no such job", id.hex(), "look at the board again");
  auto currency = currency_of(event);
  if (!currency) return fail(currency.error());
  const Prices prices(event);
  JobPrice out;
  out.currency = std::move(*currency);
  const auto add = [&](const std::string& service, const std::string& note, std::optional<std::int64_t> amount) {
    if (amount)
      out.lines.push_back({service, note, *amount});
    else
      out.unpriced.push_back(note.empty() ? service : service + " " + note);
  };
  const Job& now = job->now;
  add("labour", {}, prices.find("labour"));
  const bool mains = now.mains_owner == StringOwner::room, crosses = now.crosses_owner == StringOwner::room;
  // Two lines of one job and service would be one line: both halves of a string of one name make it whole.
  if (mains && crosses && now.mains_string == now.crosses_string) {
    add("string", now.mains_string, prices.of_string(now.mains_string));
  } else {
    const auto half = [&](const std::string& service, const std::string& name, bool odd) {
      const auto whole = prices.of_string(name);
      add(service, name, whole ? std::optional(*whole / 2 + (odd ? *whole % 2 : 0)) : std::nullopt);
    };
    if (mains) half("string, mains", now.mains_string, true);
    if (crosses) half("string, crosses", now.crosses_string, false);
  }
  const auto nobody_said = [&](const char* field, StringOwner owner, const std::string& name) {
    if (owner == StringOwner::unsaid && !name.empty() && prices.of_string(name).value_or(0) != 0) out.unowned.emplace_back(field);
  };
  nobody_said("mains_owner", now.mains_owner, now.mains_string);
  nobody_said("crosses_owner", now.crosses_owner, now.crosses_string);
  if (!now.racket_stencil.empty() || !now.string_stencil.empty()) add("stencil", {}, prices.find("stencil"));
  if (now.rush == Rush::rush) add("rush", {}, prices.find("rush"));
  if (now.rush == Rush::on_court) add("on-court rush", {}, prices.find("on-court rush"));
  std::int64_t strips = 0, tubes = 0;
  for (const auto& finding : record.findings) {
    if (finding.now.job != id) continue;
    if (finding.now.answer == FrameRemedy::replace_strip) ++strips;
    if (finding.now.answer == FrameRemedy::tube) ++tubes;
  }
  // One strip goes round the whole head, however many of its grommets are split.
  if (strips > 0) add("grommet strip", {}, prices.find("grommet strip"));
  if (tubes > 0) {
    const auto one = prices.find("tubing");
    add("tubing", {}, one ? std::optional(*one * std::min<std::int64_t>(tubes, 100)) : std::nullopt);
  }
  return out;
}

bool is_charged(std::span<const MoneyRow> lines, const EntityId& job) {
  return std::any_of(lines.begin(), lines.end(), [&](const MoneyRow& row) {
    if (row.job != job || row.payment || row.reverses || row.service == kDiscount) return false;
    return std::none_of(lines.begin(), lines.end(), [&](const MoneyRow& other) { return other.reverses == row.id; });
  });
}

Outcome<Draft> charge_jobs(const Ledger& ledger, const EventRecord& event, const PlayerRecord& record, std::span<const EntityId> jobs,
                           const std::string& by, UnixMs at) {
  if (jobs.empty()) return fail(FaultCode::bad_input, "no job was chosen", "charge", "choose one at least");
  Draft draft(event.book, kEventBook, kActCharge);
  for (const EntityId& job : jobs) {
    const auto price = price_of(event, record, job);
    if (!price) return fail(price.error());
    const auto so_far = money_of_job(ledger, event.book, job);
    if (is_charged(so_far, job))
      return fail(FaultCode::refused, "this job was charged before", "job " + job.hex(), "reverse all its lines to charge it anew");
    if (!price->unpriced.empty()) {
      std::string list;
      for (const std::string& service : price->unpriced) list += (list.empty() ? "" : ", ") + service;
      return fail(FaultCode::bad_input, "the price list has no price for: " + list, event.event.now.name,
                  "give them a price, 0 if they are free");
    }
    // Lines that were all reversed may be charged anew, under identifiers of another round: those of the first are taken.
    const auto round = std::count_if(so_far.begin(), so_far.end(), [](const MoneyRow& row) { return !row.payment && row.reverses; });
    const std::string suffix = round == 0 ? "" : "\n" + std::to_string(round);
    for (const ChargeLine& line : price->lines) {
      const auto seen = held_at(ledger, event.book, kCharge, made_from(job, kChargeUse, line.service + suffix));
      put_changes(draft, seen, charge_of(record.book, job, line, price->currency, by, at));
    }
  }
  return draft;
}

Outcome<Draft> charge_sale(const EventRecord& event, const BookId& player, const Sale& sale, const std::string& by, UnixMs at) {
  const auto currency = currency_of(event);
  if (!currency) return fail(currency.error());
  if (is_blank(sale.service)) return fail(FaultCode::bad_input, "it was not said what is sold", "service", "say what it is, such as overgrip");
  const std::string key = search_key(sale.service);
  if (key == kDiscount || std::any_of(kAutomatic.begin(), kAutomatic.end(), [&](const char* name) { return key == search_key(name); }))
    return fail(FaultCode::bad_input, "\"" + sale.service + "\" is charged with a job", "service", "charge the job, or call it otherwise");
  if (sale.count < 1 || sale.count > 1000) return fail(FaultCode::bad_input, "there is no such number of pieces", "count", "give 1 to 1,000");
  std::int64_t sum = 0;
  if (sale.each_minor <= 0 || __builtin_mul_overflow(sale.each_minor, sale.count, &sum) || sum > kMostMinor)
    return fail(FaultCode::bad_input, "what is sold costs more than nothing, and not that much", "amount", "check the amount");
  std::string note = sale.note;
  if (sale.count > 1) {
    const Decimal each{sale.each_minor, decimals_of_currency(*currency).value_or(0)};
    note = std::to_string(sale.count) + " \xC3\x97 " + each.text() + (note.empty() ? "" : ": " + note);
  }
  Draft draft(event.book, kEventBook, kActCharge);
  (void)put_new(draft, charge_of(player, {}, {sale.service, note, sum}, *currency, by, at), at);
  return draft;
}

Outcome<Draft> discount(const Ledger& ledger, const EventRecord& event, const BookId& player, const EntityId& job, std::int64_t per_mille,
                        const std::string& reason, const std::string& by, UnixMs at) {
  if (!job) return fail(FaultCode::bad_input, "a discount is on a job", "job", "reverse what was sold and charge it at another price");
  if (is_blank(reason)) return fail(FaultCode::bad_input, "a discount needs a reason", "reason", "say why");
  if (per_mille < 1 || per_mille > 1000)
    return fail(FaultCode::bad_input, "a discount is above nothing and at most everything", "discount", "give 0.1 to 100 per cent");
  const auto currency = currency_of(event);
  if (!currency) return fail(currency.error());
  std::int64_t sum = 0;
  for (const MoneyRow& row : money_of_job(ledger, event.book, job)) {
    if (auto closed = check_closed(ledger, event.book, row); !closed) return fail(closed.error());
    if (!row.payment && row.currency == *currency) sum = plus(sum, row.amount);
  }
  if (sum <= 0) return fail(FaultCode::refused, "nothing is charged for this job", "job " + job.hex(), "charge it first");
  sum = std::min(sum, kMostMinor * 100);
  const std::int64_t off = (sum * per_mille + 500) / 1000;
  if (off == 0) return fail(FaultCode::refused, "that is less than the smallest coin", "discount", "take off more");
  Draft draft(event.book, kEventBook, kActDiscount);
  (void)put_new(draft, charge_of(player, job, {kDiscount, reason, -off}, *currency, by, at), at);
  return draft;
}

Outcome<Draft> take_payment(const EventRecord& event, const BookId& player, std::int64_t amount_minor, PaidBy means,
                            const std::string& note, const std::string& by, UnixMs at) {
  const auto currency = currency_of(event);
  if (!currency) return fail(currency.error());
  if (amount_minor <= 0 || amount_minor > kMostMinor)
    return fail(FaultCode::bad_input, "a payment is above zero and not that large", "amount", "check the amount; reverse a line to give money back");
  if (means == PaidBy::unsaid || name_of_choice(means).empty())
    return fail(FaultCode::bad_input, "it was not said how it was paid", "payment", "choose one");
  Draft draft(event.book, kEventBook, kActPayment);
  Payment payment;
  payment.player = player;
  payment.amount_minor = amount_minor;
  payment.currency = *currency;
  payment.means = means;
  payment.at = at;
  payment.by = by;
  payment.note = note;
  (void)put_new(draft, payment, at);
  return draft;
}

Outcome<Draft> reverse(const Ledger& ledger, const EventRecord& event, const EntityId& id, const std::string& reason, const std::string& by,
                       UnixMs at) {
  const auto line = money_line(ledger, event.book, id);
  if (!line) return fail(FaultCode::not_found, "no such line", id.hex(), "look at the statement again");
  if (is_blank(reason)) return fail(FaultCode::bad_input, "a reversal needs a reason", "reason", "say why");
  // Reversed by two tablets while apart, it is reversed once.
  const EntityId reversal = made_from(id, kChargeUse, "reversed");
  const bool before = money_line(ledger, event.book, reversal).has_value();
  if (before || line->reverses)
    return fail(FaultCode::refused, before ? "this line was reversed before" : "this line reverses another", id.hex(), "write a new line instead");
  if (auto closed = check_closed(ledger, event.book, *line); !closed) return fail(closed.error());
  Draft draft(event.book, kEventBook, kActReverse);
  const EntityState seen = held_at(ledger, event.book, line->payment ? kPayment : kCharge, reversal);
  const std::int64_t amount = minus(0, line->amount);
  if (line->payment)
    put_changes(draft, seen, Payment{line->player, amount, line->currency, line->means, at, by, reason, id});
  else
    put_changes(draft, seen, Charge{line->player, line->job, line->service, amount, line->currency, at, by, reason, id});
  return draft;
}

std::int64_t Account::due() const { return minus(charged, paid); }

std::vector<Account> accounts_of(std::span<const MoneyRow> lines) {
  std::map<std::string, Account> found;
  for (const MoneyRow& row : lines) {
    Account& account = found[row.currency];
    account.currency = row.currency;
    auto& sum = row.payment ? account.paid : account.charged;
    sum = plus(sum, row.amount);
  }
  std::vector<Account> out;
  for (auto& [currency, account] : found) out.push_back(std::move(account));
  return out;
}

std::vector<MoneyTotals> totals_of(std::span<const MoneyRow> lines) {
  std::map<std::string, MoneyTotals> found;
  for (const MoneyRow& row : lines) {
    MoneyTotals& totals = found[row.currency];
    totals.currency = row.currency;
    const auto add = [&](std::int64_t& sum) { sum = plus(sum, row.amount); };
    add(row.payment ? totals.paid : totals.charged);
    add(row.payment ? totals.by_means[row.means] : totals.by_service[row.service]);
  }
  std::vector<MoneyTotals> out;
  for (auto& [currency, totals] : found) out.push_back(std::move(totals));
  return out;
}

std::string day_after(const std::string& day, int days) {
  const auto date = day_from(day);
  const std::string out = date ? date_text(*date + days) : std::string();
  return is_iso_date(out) ? out : std::string();
}

Outcome<DayBounds> bounds_of_day(const std::string& day, const std::string& zone) {
  const auto date = day_from(day);
  if (!date) return fail(FaultCode::bad_input, "\"" + day + "\" is not a day", "day", "write it as 2031-05-26");
  const LocalTime local(zone);
  return DayBounds{local.begin_of(*date), local.begin_of(*date + 1)};
}

std::string day_at(UnixMs at, const std::string& zone) { return date_text(LocalTime(zone).day_of(at)); }

Outcome<Draft> close_day(const EventRecord& event, const std::string& day, std::span<const MoneyRow> lines, std::int64_t counted_minor,
                         const std::string& note, const std::string& by, UnixMs at) {
  const auto currency = currency_of(event);
  if (!currency) return fail(currency.error());
  const auto bounds = bounds_of_day(day, event.event.now.time_zone);
  if (!bounds) return fail(bounds.error());
  if (counted_minor < 0 || counted_minor > kMostMinor * 100)
    return fail(FaultCode::bad_input, "the box can't hold that", "counted", "count it again");
  const auto totals = totals_of(lines);
  for (const MoneyTotals& one : totals)
    if (one.currency != *currency)
      return fail(FaultCode::bad_input, "there are lines in " + one.currency + " on that day", day, "settle those apart, reverse them here");
  DayClose close;
  close.day = day;
  close.from = bounds->from;
  close.until = bounds->until;
  close.currency = *currency;
  close.charged_minor = totals.empty() ? 0 : totals.front().charged;
  close.paid_minor = totals.empty() ? 0 : totals.front().paid;
  close.cash_minor = 0;
  if (!totals.empty())
    if (const auto cash = totals.front().by_means.find(PaidBy::cash); cash != totals.front().by_means.end()) close.cash_minor = cash->second;
  close.counted_minor = counted_minor;
  close.at = at;
  close.by = by;
  close.note = note;
  Draft draft(event.book, kEventBook, kActCloseDay);
  (void)put_new(draft, close, at);
  return draft;
}

std::vector<DayClose> closes_of_day(const Ledger& ledger, const BookId& event, const std::string& day) {
  std::vector<DayClose> out;
  for (const EntityState& state : ledger.entities(event, kDayClose))
    if (auto close = from_state<DayClose>(state); close.day == day) out.push_back(std::move(close));
  std::stable_sort(out.begin(), out.end(), [](const DayClose& a, const DayClose& b) { return a.at.value_or(0) > b.at.value_or(0); });
  return out;
}

std::int64_t box_difference(const DayClose& close) {
  constexpr std::int64_t most = kMostMinor * 1000;
  return std::clamp(minus(close.counted_minor.value_or(0), close.cash_minor.value_or(0)), -most, most);
}

std::string money_words(const Language& language, std::int64_t minor, const std::string& currency) {
  return localised(language, Decimal{minor, decimals_of_currency(currency).value_or(0)}) + "\xC2\xA0" + currency;
}

Outcome<std::int64_t> minor_from(std::string_view text, const std::string& currency) {
  const auto decimals = decimals_of_currency(currency);
  if (!decimals)
    return fail(FaultCode::bad_input, "\"" + currency + "\" is not a currency", "currency", "write its three letters, such as EUR");
  const auto amount = Decimal::parse(text);
  if (!amount) return fail(amount.error());
  const Decimal exact = amount->trimmed();
  if (exact.scale > *decimals)
    return fail(FaultCode::bad_input, "\"" + std::string(text) + "\" has more decimals than " + currency + " has", "amount",
                "round it to " + std::to_string(*decimals));
  std::int64_t out = exact.mantissa;
  for (std::uint8_t i = exact.scale; i < *decimals; ++i) {
    if (out > kMostMinor || out < -kMostMinor) break;
    out *= 10;
  }
  if (out > kMostMinor || out < -kMostMinor) return fail(FaultCode::bad_input, "that is too much", "amount", "check the amount");
  return out;
}

}  // namespace weavelog
