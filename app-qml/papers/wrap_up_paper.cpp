#include "app-qml/papers/wrap_up_paper.h"

#include <QDateTime>
#include <QStringList>
#include <QTimeZone>
#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

#include "app-qml/papers/list_flow.h"
#include "app-qml/papers/list_papers.h"
#include "app-qml/papers/paper_words.h"
#include "core/desk/money.h"
#include "core/desk/stages.h"
#include "core/model/stock_tables.h"

namespace {

using weavelog::Language;
using weavelog::Stage;

// Whatever is counted is counted where it happened: a racket taken in on Monday and ready on Tuesday is in both days.
struct Count {
  std::int64_t takenIn = 0, strung = 0, ready = 0, onTime = 0, late = 0;
};

struct Counts {
  Count all;
  std::map<QDate, Count> byDay;
  std::map<std::string, Count> byStringer;
  std::map<std::string, Count> byString;
  std::map<std::int64_t, Count> byTension;  // of the mains, whole kilograms: 24 is from 24 to under 25
};

QString words(const std::string& text) {
  return QString::fromStdString(text);
}

std::string stringOf(const weavelog::Agreed& agreed) {
  if (agreed.crosses_string.empty() || agreed.crosses_string == agreed.mains_string) return agreed.mains_string;
  return agreed.mains_string + " / " + agreed.crosses_string;
}

std::optional<std::int64_t> kilogramsOf(const std::optional<weavelog::Quantity>& tension) {
  const auto held = tension ? weavelog::converted_force(*tension, weavelog::Unit::kilogram_force, 3) : std::nullopt;
  return held ? std::optional(static_cast<std::int64_t>(std::floor(held->amount.to_double()))) : std::nullopt;
}

// The newest mark of a stage.
const weavelog::StageMark* newest(const std::vector<weavelog::PlacedMark>& marks, Stage stage) {
  const weavelog::StageMark* found = nullptr;
  for (const auto& placed : marks)
    if (placed.mark.stage == stage) found = &placed.mark;
  return found;
}

void count(Counts& counts, const weavelog::PlayerRecord& record, const weavelog::Loaded<weavelog::Job>& job, const QTimeZone& zone) {
  const auto marks = weavelog::marks_of(record, job.id());
  const auto dayOf = [&](std::int64_t at) -> Count& { return counts.byDay[QDateTime::fromMSecsSinceEpoch(at, zone).date()]; };
  const auto add = [&](std::int64_t Count::*what, std::int64_t at, const std::string& by) {
    ++(counts.all.*what);
    ++(dayOf(at).*what);
    ++(counts.byStringer[by].*what);
    ++(counts.byString[stringOf(job.now)].*what);
    if (const auto kilograms = kilogramsOf(job.now.mains_tension)) ++(counts.byTension[*kilograms].*what);
  };
  const auto* strung = newest(marks, Stage::strung);
  const std::string by = strung ? strung->by : std::string();
  if (job.now.at) {
    ++counts.all.takenIn;
    ++dayOf(*job.now.at).takenIn;
  }
  if (strung && strung->at) add(&Count::strung, *strung->at, by);
  const Stage stage = record.stage_of(job.id()).stage;
  const auto* ready = stage == Stage::ready || stage == Stage::collected ? newest(marks, Stage::ready) : nullptr;
  if (!ready || !ready->at) return;
  add(&Count::ready, *ready->at, by);
  if (job.now.ready_by) add(*ready->at <= *job.now.ready_by ? &Count::onTime : &Count::late, *ready->at, by);
}

Counts countsOf(const weavelog::Ledger& ledger, const PaperRequest& request) {
  Counts counts;
  QTimeZone zone(QByteArray::fromStdString(request.zone));
  if (!zone.isValid()) zone = QTimeZone::utc();
  for (const auto& book : weavelog::players_at(ledger, request.event)) {
    const auto record = weavelog::load_player(ledger, book);
    if (!record) continue;
    for (const auto& job : record->jobs)
      if (job.now.event == request.event) count(counts, *record, job, zone);
  }
  return counts;
}

QString number(std::int64_t value) {
  return QString::number(value);
}

// "12 of 13"; "" where nothing had a time.
QString onTime(const Language& language, const Count& count) {
  if (count.onTime + count.late == 0) return {};
  return paperSay(language, "wrap_up.of", {{"part", count.onTime}, {"all", count.onTime + count.late}});
}

ListColumn figures(const Language& language, const char* key) {
  return {paperSay(language, key), 20, false, Qt::AlignRight};
}

template <class Map, class Words>
std::vector<QStringList> rowsOf(const Language& language, const Map& counts, Words&& wordsOf) {
  std::vector<QStringList> rows;
  for (const auto& [key, one] : counts)
    if (one.strung + one.ready > 0) rows.push_back({wordsOf(key), number(one.strung), number(one.ready), onTime(language, one)});
  return rows;
}

void byMost(std::vector<QStringList>& rows) {
  std::stable_sort(rows.begin(), rows.end(), [](const auto& a, const auto& b) { return a[1].toLongLong() > b[1].toLongLong(); });
}

void tellJobs(ListFlow& flow, const weavelog::Ledger& ledger, const PaperRequest& request) {
  const Language& language = request.language;
  const Counts counts = countsOf(ledger, request);
  const Count& all = counts.all;
  flow.table({{{}, 60}, {{}, 40, true, Qt::AlignRight}}, {{paperSay(language, "wrap_up.taken_in"), number(all.takenIn)},
                                                          {paperSay(language, "wrap_up.strung"), number(all.strung)},
                                                          {paperSay(language, "wrap_up.ready"), number(all.ready)},
                                                          {paperSay(language, "wrap_up.on_time"), onTime(language, all)}});
  const auto table = [&](const char* title, const char* first, const std::vector<QStringList>& rows) {
    if (rows.empty()) return;
    flow.heading(paperSay(language, title));
    flow.table({{paperSay(language, first), 60},
                figures(language, "wrap_up.strung"),
                figures(language, "wrap_up.ready"),
                figures(language, "wrap_up.on_time")},
               rows);
  };
  if (!counts.byDay.empty()) {
    std::vector<QStringList> days;
    for (const auto& [day, one] : counts.byDay) {
      const auto noon = QDateTime(day, QTime(12, 0), QTimeZone::utc()).toMSecsSinceEpoch();
      days.push_back({timeOnPaper(language, noon, "UTC", weavelog::Moment::Form::day), number(one.takenIn), number(one.strung), number(one.ready),
                      onTime(language, one)});
    }
    flow.heading(paperSay(language, "wrap_up.by_day"));
    flow.table({{paperSay(language, "wrap_up.day"), 40, true},
                figures(language, "wrap_up.taken_in"),
                figures(language, "wrap_up.strung"),
                figures(language, "wrap_up.ready"),
                figures(language, "wrap_up.on_time")},
               days);
  }
  const QString unsaid = paperSay(language, "tag.unsaid");
  const auto name = [&](const std::string& key) { return key.empty() ? unsaid : words(key); };
  auto stringers = rowsOf(language, counts.byStringer, name);
  auto strings = rowsOf(language, counts.byString, name);
  byMost(stringers);
  byMost(strings);
  table("wrap_up.by_stringer", "wrap_up.stringer", stringers);
  table("wrap_up.by_string", "wrap_up.string", strings);
  table("wrap_up.by_tension", "wrap_up.tension", rowsOf(language, counts.byTension, [&](std::int64_t kilograms) {
          return paperSay(language, "wrap_up.kilograms", {{"from", kilograms}, {"to", kilograms + 1}});
        }));
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
