#include "app-qml/view/prices_model.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "app-qml/view/model_text.h"
#include "app-qml/view/money_text.h"
#include "core/base/text.h"
#include "core/desk/money.h"
#include "core/desk/prices.h"
#include "core/model/stock_tables.h"
#include "core/people/price_list.h"

namespace {

std::string upper(const QString& typed) {
  return typed.trimmed().toUpper().toStdString();
}

}  // namespace

PricesModel::PricesModel(Work& work, QObject* parent) : QObject(parent), work_(work) {
  connect(&work_, &Work::changed, this, &PricesModel::refresh);
  refresh();
}

void PricesModel::refresh() {
  // Rows on the screen are made anew by the signal: only where something is another one.
  const auto shown = [this] { return std::tuple(hasEvent(), currency_, fault_, ofJobs_, others_); };
  const auto before = shown();
  event_.reset();
  currency_.clear();
  fault_.clear();
  ofJobs_.clear();
  others_.clear();
  if (work_.event())
    if (auto event = weavelog::load_event(work_.ledger(), work_.event())) event_ = std::move(*event);
  if (event_) {
    const auto currency = weavelog::currency_of(*event_);
    if (currency)
      currency_ = *currency;
    else if (!event_->prices.empty())
      fault_ = qtext(currency.error().what);
    // Folded name -> name and price. Job services stand in their own order, strings in the order of their names.
    std::map<std::string, std::pair<std::string, std::optional<std::int64_t>>> strings, rest;
    std::map<std::string, std::int64_t> listed;
    for (const auto& price : event_->prices) {
      const std::string key = weavelog::search_key(price.now.service);
      if (price.now.amount_minor) listed.emplace(key, *price.now.amount_minor);
      if (!price.now.amount_minor) continue;
      (key.starts_with("string ") ? strings : rest).emplace(key, std::pair(price.now.service, price.now.amount_minor));
    }
    for (const auto& level : weavelog::stock_levels(work_.ledger(), work_.event(), work_.now())) {
      const auto& item = level.item.now;
      if (item.owner != weavelog::StringOwner::room) continue;
      const std::string service = "string " + item.name;
      strings.try_emplace(weavelog::search_key(service), std::pair(service, std::optional<std::int64_t>()));
    }
    const auto row = [&](const std::string& service, const std::optional<std::int64_t>& minor) {
      return QVariantMap{{"service", qtext(service)},
                         {"amount", minor ? moneyText(work_, *minor, currency_) : QString()},
                         {"typed", minor ? moneyTyped(work_, *minor, currency_) : QString()}};
    };
    for (const std::string_view name : weavelog::kJobServices) {
      const std::string key = weavelog::search_key(name);
      const auto found = listed.find(key);
      ofJobs_.append(row(std::string(name), found == listed.end() ? std::nullopt : std::optional(found->second)));
      rest.erase(key);
      if (name == "string")
        for (const auto& [folded, string] : strings) ofJobs_.append(row(string.first, string.second));
    }
    for (const auto& [folded, other] : rest) others_.append(row(other.first, other.second));
  }
  if (shown() != before) emit changed();
}

bool PricesModel::set(const QString& service, const QString& amount, const QString& say) {
  if (!event_) return false;
  std::optional<std::int64_t> minor;
  if (!amount.trimmed().isEmpty()) {
    const auto typed = moneyFrom(amount, currency_);
    if (!typed) {
      work_.tell(typed.error());
      return false;
    }
    minor = *typed;
  }
  const auto draft = weavelog::set_price(*event_, service.trimmed().toStdString(), minor);
  return draft && draft->empty() ? true : work_.commit(draft, say);
}

bool PricesModel::setCurrency(const QString& currency, const QString& say) {
  return event_ && work_.commit(weavelog::set_currency(work_.ledger(), *event_, upper(currency)), say);
}

QString PricesModel::wrongWith(const QString& amount) const {
  if (amount.trimmed().isEmpty()) return {};
  const auto minor = moneyFrom(amount, currency_);
  if (!minor) return QString::fromStdString(minor.error().what);
  return *minor >= 0 ? QString() : tr("A price is not below zero.");
}

QString PricesModel::wrongCurrency(const QString& currency) const {
  if (currency.trimmed().isEmpty() || weavelog::decimals_of_currency(upper(currency))) return {};
  return tr("No such currency; write its three letters, such as EUR.");
}
