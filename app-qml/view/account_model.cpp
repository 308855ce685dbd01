#include "app-qml/view/account_model.h"

#include <algorithm>
#include <tuple>

#include "app-qml/view/model_text.h"
#include "app-qml/view/money_text.h"
#include "core/base/text.h"
#include "core/desk/prices.h"
#include "core/model/queries.h"

namespace {

QString tagText(const std::optional<std::int64_t>& tag) {
  return tag ? QString::number(*tag) : QString();
}

std::vector<weavelog::EntityId> idsOf(const QStringList& jobs) {
  std::vector<weavelog::EntityId> out;
  for (const QString& job : jobs) out.push_back(idFrom<weavelog::EntityId>(job));
  return out;
}

}  // namespace

AccountModel::AccountModel(Work& work, QObject* parent) : QObject(parent), work_(work) {
  connect(&work_, &Work::changed, this, &AccountModel::refresh);
}

QString AccountModel::book() const {
  return event_ ? idText(book_) : QString();
}

void AccountModel::show(const QString& book) {
  book_ = idFrom<weavelog::BookId>(book);
  refresh();
}

std::string AccountModel::who() const {
  return work_.who().isEmpty() ? work_.ledger().self().device : work_.who().toStdString();
}

void AccountModel::refresh() {
  // Rows on the screen are made anew by the signal: only where something is another one.
  const auto shown = [this] { return std::tuple(book(), name_, currency_, due_, parts_, uncharged_, wares_, questions_); };
  const auto before = shown();
  event_.reset();
  record_.reset();
  name_.clear();
  currency_.clear();
  due_.clear();
  parts_.clear();
  uncharged_.clear();
  wares_.clear();
  questions_ = 0;
  if (book_ && work_.event())
    if (auto event = weavelog::load_event(work_.ledger(), work_.event())) event_ = std::move(*event);
  if (event_) {
    if (auto record = weavelog::load_player(work_.ledger(), book_)) record_ = std::move(*record);
    if (record_) name_ = qtext(weavelog::listed_name(record_->person.now));
    currency_ = weavelog::currency_of(*event_).value_or(std::string());
    const auto statement = weavelog::statement_of(work_.ledger(), work_.event(), book_);
    readDue(statement);
    readParts(statement);
    readUncharged(statement);
    readWares();
  }
  if (shown() != before) emit changed();
}

void AccountModel::readDue(const weavelog::Statement& statement) {
  auto accounts = statement.accounts;
  const auto own = std::find_if(accounts.begin(), accounts.end(), [&](const auto& one) { return one.currency == currency_; });
  if (own == accounts.end()) {
    if (!currency_.empty()) accounts.insert(accounts.begin(), weavelog::Account{currency_, 0, 0});
  } else {
    std::rotate(accounts.begin(), own, own + 1);
  }
  for (const auto& account : accounts) {
    const auto due = account.due();
    due_.append(QVariantMap{{"digits", moneyDigits(due < 0 ? -due : due, account.currency)},
                            {"currency", qtext(account.currency)},
                            {"sign", due > 0 ? 1 : due < 0 ? -1 : 0},
                            {"charged", moneyText(work_, account.charged, account.currency)},
                            {"paid", moneyText(work_, account.paid, account.currency)},
                            {"typed", due > 0 ? moneyTyped(work_, due, account.currency) : QString()}});
  }
}

void AccountModel::readParts(const weavelog::Statement& statement) {
  for (const auto& part : statement.parts) {
    QVariantList lines;
    bool charged = false;
    for (const auto& line : part.lines) {
      const auto& row = line.row;
      if (line.open) ++questions_;
      charged = charged || (!row.payment && !row.reverses && !line.reversed && row.amount > 0);
      lines.append(QVariantMap{{"id", idText(row.id)},
                               {"service", qtext(row.service)},
                               {"payment", row.payment},
                               {"means", static_cast<int>(row.means)},
                               {"note", qtext(row.note)},
                               {"amount", moneyText(work_, row.payment ? -row.amount : row.amount, row.currency)},
                               {"at", work_.timeText(row.at)},
                               {"by", qtext(row.by)},
                               {"reversed", line.reversed},
                               {"reverses", static_cast<bool>(row.reverses)},
                               {"open", line.open}});
    }
    QStringList sums;
    for (const auto& sum : part.sums) sums.append(moneyText(work_, sum.due(), sum.currency));
    parts_.append(QVariantMap{{"job", idText(part.job)},
                              {"tag", tagText(part.tag_number)},
                              {"racket", qtext(part.racket_label)},
                              {"sum", sums.join(QStringLiteral(" + "))},
                              {"charged", charged},
                              {"lines", lines}});
  }
}

void AccountModel::readUncharged(const weavelog::Statement& statement) {
  if (!record_ || currency_.empty()) return;
  std::vector<weavelog::MoneyRow> rows;
  for (const auto& line : statement.lines) rows.push_back(line.row);
  for (const auto& id : weavelog::uncharged_jobs(*record_, work_.event(), rows)) {
    const auto price = weavelog::price_of(*event_, *record_, id);
    if (!price) continue;
    const auto& job = record_->job(id)->now;
    const auto* racket = record_->racket(job.racket);
    QVariantList lines, unpriced;
    for (const auto& line : price->lines)
      lines.append(QVariantMap{{"service", qtext(line.service)},
                               {"note", qtext(line.note)},
                               {"amount", moneyText(work_, line.amount_minor, price->currency)}});
    for (const auto& service : price->unpriced) unpriced.append(qtext(service));
    uncharged_.append(QVariantMap{{"job", idText(id)},
                                  {"tag", tagText(job.tag_number)},
                                  {"racket", racket ? qtext(racket->now.label) : QString()},
                                  {"sum", moneyText(work_, price->sum(), price->currency)},
                                  {"lines", lines},
                                  {"unpriced", unpriced}});
  }
}

void AccountModel::readWares() {
  for (const auto& price : event_->prices) {
    if (!price.now.amount_minor || *price.now.amount_minor <= 0) continue;
    const std::string key = weavelog::search_key(price.now.service);
    const bool of_job = std::any_of(weavelog::kJobServices.begin(), weavelog::kJobServices.end(),
                                    [&](std::string_view name) { return key == weavelog::search_key(name); });
    if (of_job || key.starts_with("string ")) continue;
    wares_.append(QVariantMap{{"service", qtext(price.now.service)},
                              {"amount", moneyText(work_, *price.now.amount_minor, price.now.currency)},
                              {"typed", moneyTyped(work_, *price.now.amount_minor, price.now.currency)}});
  }
}

bool AccountModel::charge(const QStringList& jobs, const QString& say) {
  if (!event_ || !record_) return false;
  return work_.commit(weavelog::charge_jobs(work_.ledger(), *event_, *record_, idsOf(jobs), who(), work_.now()), say);
}

QString AccountModel::sumOf(const QStringList& jobs) const {
  if (!event_ || !record_) return {};
  std::int64_t sum = 0;
  for (const auto& job : idsOf(jobs)) {
    const auto price = weavelog::price_of(*event_, *record_, job);
    // A few dozen prices of at most kMostMinor each do not leave 64 bits.
    if (price) sum += std::min(price->sum(), weavelog::kMostMinor * 100);
  }
  return moneyText(work_, sum, currency_);
}

bool AccountModel::discount(const QString& job, int perMille, const QString& reason, const QString& say) {
  if (!event_) return false;
  return work_.commit(weavelog::discount(work_.ledger(), *event_, book_, idFrom<weavelog::EntityId>(job), perMille,
                                         reason.trimmed().toStdString(), who(), work_.now()),
                      say);
}

bool AccountModel::pay(const QString& amount, int means, const QString& note, const QString& say) {
  if (!event_) return false;
  const auto minor = moneyFrom(amount, currency_);
  if (!minor) {
    work_.tell(minor.error());
    return false;
  }
  return work_.commit(weavelog::take_payment(*event_, book_, *minor, static_cast<weavelog::PaidBy>(means),
                                             note.trimmed().toStdString(), who(), work_.now()),
                      say);
}

bool AccountModel::reverse(const QString& line, const QString& reason, const QString& say) {
  if (!event_) return false;
  return work_.commit(weavelog::reverse(work_.ledger(), *event_, idFrom<weavelog::EntityId>(line), reason.trimmed().toStdString(),
                                        who(), work_.now()),
                      say);
}

bool AccountModel::sell(const QString& service, const QString& each, int count, const QString& note, const QString& say) {
  if (!event_) return false;
  const auto minor = moneyFrom(each, currency_);
  if (!minor) {
    work_.tell(minor.error());
    return false;
  }
  return work_.commit(weavelog::charge_sale(*event_, book_,
                                            {service.trimmed().toStdString(), *minor, count, note.trimmed().toStdString()}, who(),
                                            work_.now()),
                      say);
}

QString AccountModel::wrongWith(const QString& amount) const {
  if (amount.trimmed().isEmpty()) return {};
  const auto minor = moneyFrom(amount, currency_);
  if (!minor) return QString::fromStdString(minor.error().what);
  return *minor > 0 ? QString() : tr("It has to be more than nothing.");
}

QString AccountModel::told(const QString& amount) const {
  const auto minor = moneyFrom(amount, currency_);
  return minor ? moneyText(work_, *minor, currency_) : QString();
}
