#include "app-qml/view/accounts_model.h"

#include <algorithm>
#include <map>

#include "app-qml/view/model_text.h"
#include "app-qml/view/money_text.h"
#include "core/base/text.h"
#include "core/desk/player_record.h"
#include "core/desk/statement.h"
#include "core/model/queries.h"

AccountsModel::AccountsModel(Work& work, QObject* parent) : QAbstractListModel(parent), work_(work) {
  connect(&work_, &Work::changed, this, &AccountsModel::refresh);
}

void AccountsModel::setTyped(const QString& typed) {
  if (typed_ == typed) return;
  typed_ = typed;
  emit typedChanged();
  refresh();
}

void AccountsModel::setWatched(bool watched) {
  if (watched_ == watched) return;
  watched_ = watched;
  emit watchedChanged();
  refresh();
}

void AccountsModel::refresh() {
  if (!watched_) return;
  std::map<weavelog::BookId, Row> found;
  if (work_.event()) {
    for (const auto& book : weavelog::players_at(work_.ledger(), work_.event())) found[book].book = book;
    for (const auto& debtor : weavelog::accounts_at(work_.ledger(), work_.event())) {
      Row& row = found[debtor.player];
      row.book = debtor.player;
      row.lines = true;
      QStringList sums;
      for (const auto& account : debtor.accounts) {
        const auto due = account.due();
        if (due == 0) continue;
        if (row.sign == 0 || due > 0) row.sign = due > 0 ? 1 : -1;
        sums.append(moneyText(work_, due < 0 ? -due : due, account.currency));
      }
      row.due = sums.join(QStringLiteral(" + "));
    }
  }
  owing_ = 0;
  const std::string wanted = weavelog::search_key(typed_.toStdString());
  std::vector<Row> rows;
  for (auto& [book, row] : found) {
    if (row.sign > 0) ++owing_;
    // An account whose player's book is not held here still shows, under its number.
    const auto player = weavelog::find_player(work_.ledger(), book);
    row.name = idText(book).left(8);
    if (player) {
      weavelog::Person person;
      person.family_name = player->family_name;
      person.given_name = player->given_name;
      person.native_name = player->native_name;
      row.name = qtext(weavelog::listed_name(person));
    }
    if (wanted.empty() || weavelog::search_key(row.name.toStdString()).find(wanted) != std::string::npos) rows.push_back(std::move(row));
  }
  std::sort(rows.begin(), rows.end(), [](const Row& a, const Row& b) {
    const auto rank = [](const Row& row) { return row.sign > 0 ? 0 : row.sign < 0 ? 1 : 2; };
    const int by_rank = rank(a) - rank(b);
    return by_rank != 0 ? by_rank < 0 : a.name != b.name ? a.name.localeAwareCompare(b.name) < 0 : a.book < b.book;
  });
  KeyedRows::update(*this, std::move(rows));
  emit countChanged();
}

int AccountsModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : count();
}

QVariant AccountsModel::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  switch (role) {
    case BookRole:
      return idText(row.book);
    case Qt::DisplayRole:
    case NameRole:
      return row.name;
    case DueRole:
      return row.due;
    case SignRole:
      return row.sign;
    case LinesRole:
      return row.lines;
    default:
      return {};
  }
}

QHash<int, QByteArray> AccountsModel::roleNames() const {
  return {{BookRole, "book"}, {NameRole, "name"}, {DueRole, "due"}, {SignRole, "sign"}, {LinesRole, "lines"}};
}
