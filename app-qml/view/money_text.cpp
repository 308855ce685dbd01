#include "app-qml/view/money_text.h"

#include <QCoreApplication>
#include <QLocale>

#include "core/base/decimal.h"
#include "core/desk/money.h"
#include "core/people/price_list.h"

namespace {

QString said(const char* text, int number = -1) {
  return QCoreApplication::translate("MoneyText", text, nullptr, number);
}

}  // namespace

QString moneyText(const Work& work, std::int64_t minor, const std::string& currency) {
  return QString::fromStdString(weavelog::money_words(work.language(), minor, currency));
}

QString moneyDigits(std::int64_t minor, const std::string& currency) {
  const weavelog::Decimal amount{minor, weavelog::decimals_of_currency(currency).value_or(0)};
  return QString::fromStdString(amount.text());
}

QString moneyTyped(const Work& work, std::int64_t minor, const std::string& currency) {
  QString out = moneyDigits(minor, currency);
  return out.replace(u'.', QLocale(QString::fromStdString(work.language().tag())).decimalPoint());
}

weavelog::Outcome<std::int64_t> moneyFrom(const QString& typed, const std::string& currency) {
  const std::string text = typed.trimmed().toStdString();
  auto minor = weavelog::minor_from(text, currency);
  if (minor) return minor;
  // The same refusals in the language of the screens, told apart as minor_from does.
  weavelog::Fault fault = minor.error();
  const auto decimals = weavelog::decimals_of_currency(currency);
  const auto amount = weavelog::Decimal::parse(text);
  if (!decimals)
    fault.what = said(QT_TRANSLATE_NOOP("MoneyText", "The event has no currency yet.")).toStdString();
  else if (!amount)
    fault.what = said(QT_TRANSLATE_NOOP("MoneyText", "That is no amount; write it such as 25.50.")).toStdString();
  else if (amount->trimmed().scale > *decimals)
    fault.what = said(QT_TRANSLATE_N_NOOP("MoneyText", "%n decimal(s) at most in this currency."), *decimals).toStdString();
  else
    fault.what = said(QT_TRANSLATE_NOOP("MoneyText", "That is too much.")).toStdString();
  fault.where.clear();
  fault.what_to_do.clear();
  return weavelog::fail(std::move(fault));
}
