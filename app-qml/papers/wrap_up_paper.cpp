#include "app-qml/papers/wrap_up_paper.h"

#include <QStringList>
#include <limits>

#include "app-qml/papers/list_flow.h"
#include "app-qml/papers/list_papers.h"
#include "app-qml/papers/paper_words.h"
#include "core/base/local_time.h"
#include "core/desk/money.h"
#include "core/desk/numbers.h"
#include "core/model/stock_tables.h"

namespace {

using weavelog::Language;
using weavelog::NumbersRow;

QString number(std::int64_t value) {
  return QString::number(value);
}

// "12 of 13"; "" where nothing had a time.
QString onTime(const Language& language, std::int64_t onTime, std::int64_t late) {
  return onTime + late == 0 ? QString() : paperSay(language, "wrap_up.of", {{"part", onTime}, {"all", onTime + late}});
}

// "1 h 20 min".
QString span(const Language& language, const std::optional<std::int64_t>& ms) {
  if (!ms) return {};
  const std::int64_t minutes = *ms / 60'000;
  return paperSay(language, "wrap_up.span", {{"hours", minutes / 60}, {"minutes", minutes % 60}});
}

ListColumn figures(const Language& language, const char* key) {
  return {paperSay(language, key), 20, false, Qt::AlignRight};
}

void tellSums(ListFlow& flow, const weavelog::Ledger& ledger, const PaperRequest& request, const weavelog::RoomNumbers& numbers) {
  const Language& language = request.language;
  std::vector<QStringList> rows;
  const auto add = [&](const char* key, const QString& figure) {
    if (!figure.isEmpty()) rows.push_back({paperSay(language, key), figure});
  };
  add("wrap_up.taken_in", number(numbers.jobs));
  if (const auto growth = weavelog::growth_of(ledger, request.event, request.zone, request.now))
    add("wrap_up.year_before", paperSay(language, "wrap_up.of", {{"part", growth->last_sum}, {"all", growth->last_whole}}));
  add("wrap_up.strung", number(numbers.strung));
  if (numbers.redone > 0) add("wrap_up.redone", number(numbers.redone));
  add("wrap_up.ready", number(numbers.ready));
  add("wrap_up.on_time", onTime(language, numbers.on_time, numbers.late));
  if (numbers.rush > 0) add("wrap_up.rush", number(numbers.rush));
  add("wrap_up.turnaround", span(language, numbers.turnaround));
  if (numbers.in_room > 0) add("wrap_up.in_room", number(numbers.in_room));
  flow.table({{{}, 60}, {{}, 40, true, Qt::AlignRight}}, rows);
}

void tellJobs(ListFlow& flow, const weavelog::Ledger& ledger, const PaperRequest& request) {
  const Language& language = request.language;
  const auto numbers = weavelog::numbers_of(weavelog::job_facts(ledger, request.event), request.zone, request.now);
  tellSums(flow, ledger, request, numbers);
  const auto table = [&](const char* title, const char* first, const std::vector<NumbersRow>& counts, const auto& wordsOf) {
    if (counts.empty()) return;
    std::vector<QStringList> rows;
    for (const NumbersRow& row : counts)
      rows.push_back({wordsOf(row.key), number(row.taken_in), number(row.strung), number(row.ready), onTime(language, row.on_time, row.late)});
    flow.heading(paperSay(language, title));
    flow.table({{paperSay(language, first), 44, true},
                figures(language, "wrap_up.taken_in"),
                figures(language, "wrap_up.strung"),
                figures(language, "wrap_up.ready"),
                figures(language, "wrap_up.on_time")},
               rows);
  };
  const auto asItIs = [](const std::string& key) { return words(key); };
  table("wrap_up.by_day", "wrap_up.day", numbers.by_day, [&](const std::string& key) {
    const weavelog::LocalTime local(request.zone);
    return timeOnPaper(language, local.begin_of(weavelog::day_from(key).value_or(0)), request.zone, weavelog::Moment::Form::day);
  });
  table("wrap_up.by_stringer", "wrap_up.stringer", numbers.by_stringer, asItIs);
  table("wrap_up.by_string", "wrap_up.string", numbers.by_string, asItIs);
  table("wrap_up.by_tension", "wrap_up.tension", numbers.by_tension, [&](const std::string& key) {
    const std::int64_t kilograms = std::stoll(key);
    return paperSay(language, "wrap_up.kilograms", {{"from", kilograms}, {"to", kilograms + 1}});
  });
}

void tellMoney(ListFlow& flow, const weavelog::Ledger& ledger, const PaperRequest& request) {
  const Language& language = request.language;
  const auto lines =
      weavelog::money_between(ledger, request.event, std::numeric_limits<std::int64_t>::min(), std::numeric_limits<std::int64_t>::max());
  for (const auto& totals : weavelog::totals_of(lines)) {
    const auto money = [&](std::int64_t minor) { return words(weavelog::money_words(language, minor, totals.currency)); };
    std::vector<QStringList> rows;
    for (const auto& [service, sum] : totals.by_service) rows.push_back({serviceWords(language, service, {}), money(sum)});
    rows.push_back({paperSay(language, "statement.charged"), money(totals.charged)});
    for (const auto& [means, sum] : totals.by_means)
      rows.push_back({paperSay(language, "statement.paid_by", {{"means", std::string(weavelog::name_of_choice(means))}}), money(sum)});
    rows.push_back({paperSay(language, "statement.paid"), money(totals.paid)});
    flow.heading(paperSay(language, "wrap_up.money"));
    flow.table({{{}, 60}, {{}, 40, true, Qt::AlignRight}}, rows);
  }
}

void tellStock(ListFlow& flow, const weavelog::Ledger& ledger, const PaperRequest& request) {
  const Language& language = request.language;
  std::vector<QStringList> rows;
  for (const auto& level : weavelog::stock_levels(ledger, request.event, std::numeric_limits<std::int64_t>::min())) {
    const bool reel = level.item.now.supply == weavelog::Supply::reel;
    const auto amount = [&](std::int64_t held) {
      if (!reel) return paperSay(language, "wrap_up.sets", {{"n", held}});
      return saidOnPaper(language, weavelog::Quantity{weavelog::Decimal::rounded(static_cast<double>(held) / 1000, 1), weavelog::Unit::metre});
    };
    rows.push_back(
        {stackedOnPaper({joinedOnPaper({words(level.item.now.name), saidOnPaper(language, level.item.now.gauge)}), words(level.item.now.whose)}),
         amount(level.used), amount(level.left)});
  }
  if (rows.empty()) return;
  flow.heading(paperSay(language, "wrap_up.stock"));
  flow.table({{paperSay(language, "wrap_up.string"), 60}, figures(language, "wrap_up.used"), figures(language, "wrap_up.left")}, rows);
}

}  // namespace

std::vector<PaperPage> wrapUp(const weavelog::Ledger& ledger, const PaperRequest& request, const PaperSize& size) {
  ListFlow flow(size, paperSay(request.language, "paper.wrap_up"), belowTitle(ledger, request, request.language), pageNumbers(request.language));
  tellJobs(flow, ledger, request);
  tellMoney(flow, ledger, request);
  tellStock(flow, ledger, request);
  return flow.take();
}
