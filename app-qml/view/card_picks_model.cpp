#include "app-qml/view/card_picks_model.h"

#include <QQmlEngine>
#include <algorithm>
#include <map>

#include "app-qml/papers/card_paper.h"
#include "app-qml/papers/paper_words.h"
#include "app-qml/view/app_device.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/provided.h"
#include "core/people/country.h"

namespace {

constexpr std::size_t mostShown = 60;
constexpr std::size_t mostPlayers = 200'000;

}  // namespace

CardPicksModel* CardPicksModel::create(QQmlEngine* engine, QJSEngine*) {
  return new CardPicksModel(provided<AppDevice>(engine)->work());  // the engine takes it over
}

void CardPicksModel::begin() {
  typed_.clear();
  ticked_.clear();
  std::map<std::string, std::pair<QString, int>> counted;  // as it is written most lately, and how many
  for (const auto& row : weavelog::find_players(work_.ledger(), {}, mostPlayers)) {
    if (row.country.empty()) continue;
    auto& one = counted.try_emplace(weavelog::country_key(row.country), qtext(row.country), 0).first->second;
    ++one.second;
  }
  countries_.clear();
  for (const auto& [key, one] : counted)
    countries_.append(
        QVariantMap{{QStringLiteral("value"), qtext(key)}, {QStringLiteral("text"), QStringLiteral("%1 (%2)").arg(one.first).arg(one.second)}});
  emit countriesChanged();
  search();
  emit tickedChanged();
}

void CardPicksModel::setTyped(const QString& typed) {
  if (typed == typed_) return;
  typed_ = typed;
  search();
}

void CardPicksModel::search() {
  beginResetModel();
  rows_ = weavelog::find_players(work_.ledger(), typed_.toStdString(), mostShown + 1);
  more_ = rows_.size() > mostShown;
  if (more_) rows_.resize(mostShown);
  endResetModel();
  emit rowsChanged();
}

void CardPicksModel::tick(const QString& book, bool ticked) {
  const auto id = idFrom<weavelog::BookId>(book);
  if (!id) return;
  if (ticked)
    ticked_.insert(id);
  else
    ticked_.erase(id);
  tickedAnew();
}

void CardPicksModel::tickCountry(const QString& code) {
  for (const auto& book : playersOfCountry(work_.ledger(), code.toStdString())) ticked_.insert(book);
  tickedAnew();
}

void CardPicksModel::tickRoom() {
  for (const auto& row : openJobs(work_.ledger(), work_.event())) ticked_.insert(row.book);
  tickedAnew();
}

void CardPicksModel::tickNobody() {
  ticked_.clear();
  tickedAnew();
}

void CardPicksModel::tickedAnew() {
  if (!rows_.empty()) emit dataChanged(index(0, 0), index(count() - 1, 0), {TickedRole});
  emit tickedChanged();
}

QStringList CardPicksModel::books() const {
  std::vector<std::pair<QString, QString>> named;
  for (const auto& book : ticked_)
    if (const auto row = weavelog::find_player(work_.ledger(), book)) named.emplace_back(nameOnPaper(*row), idText(book));
  std::sort(named.begin(), named.end());
  QStringList out;
  for (const auto& [name, book] : named) out.append(book);
  return out;
}

int CardPicksModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : count();
}

QVariant CardPicksModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= count()) return {};
  const auto& row = rows_[static_cast<std::size_t>(index.row())];
  switch (role) {
    case BookRole:
      return idText(row.book);
    case NameRole:
      return nameOnPaper(row);
    case AboutRole:
      return qtext(row.country);
    case TickedRole:
      return ticked_.contains(row.book);
    default:
      return {};
  }
}

QHash<int, QByteArray> CardPicksModel::roleNames() const {
  return {{BookRole, "book"}, {NameRole, "name"}, {AboutRole, "about"}, {TickedRole, "ticked"}};
}
