#include "app-qml/view/day_money.h"

#include <algorithm>
#include <tuple>

#include "app-qml/view/model_text.h"
#include "app-qml/view/money_text.h"

DayMoney::DayMoney(Work& work, QObject* parent) : QObject(parent), work_(work) {
  connect(&work_, &Work::changed, this, &DayMoney::refresh);
}

void DayMoney::setWatched(bool watched) {
  if (watched_ == watched) return;
  watched_ = watched;
  refresh();
}

void DayMoney::step(int days) {
  const auto next = weavelog::day_after(day_, days);
  if (next.empty()) return;
  day_ = next;
  refresh();
}

void DayMoney::showToday() {
  day_ = weavelog::day_at(work_.now(), work_.zone());
  refresh();
}

bool DayMoney::today() const {
  return day_ == weavelog::day_at(work_.now(), work_.zone());
}

QString DayMoney::dayText() const {
  const auto bounds = weavelog::bounds_of_day(day_, work_.zone());
  return bounds ? ::dayText(work_.language(), bounds->from + (bounds->until - bounds->from) / 2, work_.zone()) : QString();
}

void DayMoney::refresh() {
  if (!watched_) return;
  // Rows on the screen are made anew by the signal: only where something is another one.
  const auto shown = [this] { return std::tuple(dayText(), currency_, totals_, closes_, cash(), event_.has_value(), today()); };
  const auto before = shown();
  if (day_.empty()) day_ = weavelog::day_at(work_.now(), work_.zone());
  event_.reset();
  lines_.clear();
  totals_.clear();
  closes_.clear();
  currency_.clear();
  if (work_.event())
    if (auto event = weavelog::load_event(work_.ledger(), work_.event())) event_ = std::move(*event);
  if (event_) {
    currency_ = weavelog::currency_of(*event_).value_or(std::string());
    if (const auto bounds = weavelog::bounds_of_day(day_, work_.zone()))
      lines_ = weavelog::money_between(work_.ledger(), work_.event(), bounds->from, bounds->until);
    readTotals();
    readCloses();
  }
  if (shown() != before || shownDay_ != day_) emit changed();
  shownDay_ = day_;
}

void DayMoney::readTotals() {
  for (const auto& totals : weavelog::totals_of(lines_)) {
    QVariantList services, means;
    for (const auto& [service, sum] : totals.by_service)
      services.append(QVariantMap{{"service", qtext(service)}, {"amount", moneyText(work_, sum, totals.currency)}});
    for (const auto& [how, sum] : totals.by_means)
      means.append(QVariantMap{{"means", static_cast<int>(how)}, {"amount", moneyText(work_, sum, totals.currency)}});
    totals_.append(QVariantMap{{"currency", qtext(totals.currency)},
                               {"charged", moneyText(work_, totals.charged, totals.currency)},
                               {"paid", moneyText(work_, totals.paid, totals.currency)},
                               {"services", services},
                               {"means", means}});
  }
}

void DayMoney::readCloses() {
  std::int64_t charged = 0, paid = 0;
  for (const auto& totals : weavelog::totals_of(lines_))
    if (totals.currency == currency_) {
      charged = totals.charged;
      paid = totals.paid;
    }
  const auto since = [&](std::int64_t now, const std::optional<std::int64_t>& then, const std::string& currency) {
    const auto more = weavelog::Account{{}, now, then.value_or(0)}.due();
    return more == 0 || currency != currency_ ? QString() : moneyText(work_, more, currency);
  };
  for (const auto& close : weavelog::closes_of_day(work_.ledger(), work_.event(), day_)) {
    const auto difference = weavelog::box_difference(close);
    closes_.append(QVariantMap{{"at", work_.timeText(close.at)},
                               {"by", qtext(close.by)},
                               {"note", qtext(close.note)},
                               {"counted", moneyText(work_, close.counted_minor.value_or(0), close.currency)},
                               {"difference", moneyText(work_, std::abs(difference), close.currency)},
                               {"sign", difference > 0 ? 1 : difference < 0 ? -1 : 0},
                               {"chargedSince", since(charged, close.charged_minor, close.currency)},
                               {"paidSince", since(paid, close.paid_minor, close.currency)}});
  }
}

std::int64_t DayMoney::cashMinor() const {
  for (const auto& totals : weavelog::totals_of(lines_)) {
    if (totals.currency != currency_) continue;
    const auto cash = totals.by_means.find(weavelog::PaidBy::cash);
    if (cash != totals.by_means.end()) return cash->second;
  }
  return 0;
}

QString DayMoney::cash() const {
  return currency_.empty() ? QString() : moneyText(work_, cashMinor(), currency_);
}

QString DayMoney::wrongWith(const QString& counted) const {
  if (counted.trimmed().isEmpty()) return {};
  const auto minor = moneyFrom(counted, currency_);
  if (!minor) return QString::fromStdString(minor.error().what);
  return *minor >= 0 ? QString() : tr("A box can't hold less than nothing.");
}

QVariantMap DayMoney::difference(const QString& counted) const {
  const auto minor = moneyFrom(counted, currency_);
  if (!minor || *minor < 0) return {};
  const auto more = *minor - cashMinor();
  return {{"sign", more > 0 ? 1 : more < 0 ? -1 : 0}, {"amount", moneyText(work_, more < 0 ? -more : more, currency_)}};
}

bool DayMoney::close(const QString& counted, const QString& note, const QString& say) {
  if (!event_) return false;
  const auto minor = moneyFrom(counted, currency_);
  if (!minor) {
    work_.tell(minor.error());
    return false;
  }
  const auto by = work_.who().isEmpty() ? work_.ledger().self().device : work_.who().toStdString();
  return work_.commit(weavelog::close_day(*event_, day_, lines_, *minor, note.trimmed().toStdString(), by, work_.now()), say);
}
