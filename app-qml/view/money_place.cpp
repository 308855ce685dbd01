#include "app-qml/view/money_place.h"

#include "app-qml/view/model_text.h"
#include "app-qml/view/money_text.h"
#include "app-qml/view/provided.h"
#include "core/desk/statement.h"
#include "core/model/queries.h"

MoneyPlace* MoneyPlace::create(QQmlEngine* engine, QJSEngine*) {
  return provided<MoneyPlace>(engine);
}

QVariantMap MoneyPlace::standing(const QString& book) const {
  const auto player = idFrom<weavelog::BookId>(book);
  if (!player || !work_.event()) return {};
  const auto rows = weavelog::money_of_player(work_.ledger(), work_.event(), player);
  QStringList due;
  for (const auto& account : weavelog::accounts_of(rows))
    if (account.due() > 0) due.append(moneyText(work_, account.due(), account.currency));
  const auto record = weavelog::load_player(work_.ledger(), player);
  const auto uncharged = record ? weavelog::uncharged_jobs(*record, work_.event(), rows).size() : 0;
  return {{"due", due.join(QStringLiteral(" + "))}, {"uncharged", static_cast<int>(uncharged)}};
}

bool MoneyPlace::open(const QString& page) {
  const auto kind = page.section(u':', 0, 0);
  if (kind == QLatin1String("account")) {
    const auto found = weavelog::find_players(work_.ledger(), page.section(u':', 1).toStdString(), 1);
    if (!found.empty()) go(idText(found.front().book));
    return true;
  }
  if (kind != QLatin1String("day") && kind != QLatin1String("prices")) return false;
  setView(kind);
  emit asked();
  return true;
}
