#include "app-qml/view/players_model.h"

#include <algorithm>

#include "app-qml/view/carry_words.h"
#include "app-qml/view/model_text.h"
#include "app-qml/view/word_list.h"
#include "core/base/text.h"
#include "core/model/tables.h"
#include "core/people/name_found.h"

namespace {

QString dotted(const QStringList& parts) { return joined(parts, QStringLiteral(" · ")); }

}  // namespace

PlayersModel::PlayersModel(Work& work, bool withEntries, QObject* parent)
    : QAbstractListModel(parent), work_(work), withEntries_(withEntries) {
  connect(&work_, &Work::changed, this, &PlayersModel::refresh);
  refresh();
}

void PlayersModel::setTyped(const QString& typed) {
  if (typed == typed_) return;
  typed_ = typed;
  limit_ = page;
  emit typedChanged();
  search();
}

void PlayersModel::leaveOut(std::vector<weavelog::BookId> books) {
  if (books == leftOut_) return;
  leftOut_ = std::move(books);
  search();
}

void PlayersModel::refresh() {
  known_ = static_cast<int>(weavelog::count_players(work_.ledger()));
  readEntries();
  search();
}

void PlayersModel::readEntries() {
  entries_.clear();
  if (!withEntries_ || !work_.event()) return;
  for (auto& row : weavelog::entry_list(work_.ledger(), work_.event())) {
    if (row.held_here) continue;
    std::string words = weavelog::search_words(row.family_name, row.given_name, row.native_name);
    entries_.push_back({std::move(row), std::move(words)});
  }
}

PlayersModel::Row PlayersModel::rowOf(const weavelog::PlayerRow& player) const {
  Row row;
  row.book = player.book;
  row.name = listedName(player.family_name, player.given_name, player.native_name);
  row.native = qtext(player.native_name);
  row.detail = dotted({qtext(player.country), qtext(player.last_event),
                       dayText(work_.language(), player.last_at, work_.zone())});
  return row;
}

std::vector<PlayersModel::Row> PlayersModel::freshRows() const {
  const std::string key = weavelog::search_key(typed_.toStdString());
  std::vector<Row> rows;
  for (const Entry& entry : entries_) {
    if (!weavelog::name_found(entry.words, key)) continue;
    Row row;
    row.entry = entry.row.id;
    row.name = listedName(entry.row.family_name, entry.row.given_name, entry.row.native_name);
    row.native = qtext(entry.row.native_name);
    row.detail = dotted({qtext(entry.row.country), qtext(entry.row.draw)});
    rows.push_back(std::move(row));
  }
  return rows;
}

void PlayersModel::search() {
  const auto players = weavelog::find_players(work_.ledger(), typed_.toStdString(), limit_);
  more_ = players.size() == limit_;
  std::vector<Row> rows;
  rows.reserve(players.size());
  for (const auto& player : players)
    if (std::find(leftOut_.begin(), leftOut_.end(), player.book) == leftOut_.end()) rows.push_back(rowOf(player));
  if (!more_)
    for (auto& row : freshRows()) rows.push_back(std::move(row));
  if (rows == rows_) {
    emit countChanged();
    return;
  }
  // Rows at the end are added, so that a list that is being scrolled keeps its place.
  if (rows.size() > rows_.size() && std::equal(rows_.begin(), rows_.end(), rows.begin())) {
    beginInsertRows({}, static_cast<int>(rows_.size()), static_cast<int>(rows.size()) - 1);
    rows_ = std::move(rows);
    endInsertRows();
  } else {
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
  }
  emit countChanged();
}

int PlayersModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : count();
}

QVariant PlayersModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= count()) return {};
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  switch (role) {
    case BookRole:
      return idText(row.book);
    case EntryRole:
      return idText(row.entry);
    case Qt::DisplayRole:
    case NameRole:
      return row.name;
    case OwnScriptRole:
      return row.native == row.name ? QString() : row.native;
    case AboutRole:
      return row.detail;
    case FreshRole:
      return !row.book;
    default:
      return {};
  }
}

QHash<int, QByteArray> PlayersModel::roleNames() const {
  return {{BookRole, "book"},           {EntryRole, "entry"}, {NameRole, "name"},
          {OwnScriptRole, "ownScript"}, {AboutRole, "about"}, {FreshRole, "fresh"}};
}

bool PlayersModel::canFetchMore(const QModelIndex& parent) const {
  return !parent.isValid() && more_;
}

void PlayersModel::fetchMore(const QModelIndex& parent) {
  if (!canFetchMore(parent)) return;
  limit_ += page;
  search();
}
