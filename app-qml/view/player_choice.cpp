#include "app-qml/view/player_choice.h"

#include <algorithm>

#include "app-qml/view/carry_words.h"
#include "app-qml/view/model_text.h"
#include "core/model/queries.h"

namespace {

enum ChoiceRole { BookRole = Qt::UserRole + 1, NameRole, DetailRole, ChosenRole, AllowedRole, WhyRole };

constexpr std::size_t rowsShown = 40;

}  // namespace

PlayerChoice::PlayerChoice(Work& work, QObject* parent) : QAbstractListModel(parent), work_(work) {}

void PlayerChoice::setTyped(const QString& typed) {
  if (typed == typed_) return;
  typed_ = typed;
  refresh();
}

void PlayerChoice::setRoom(const weavelog::BookId& room) {
  room_ = room;
  refresh();
}

void PlayerChoice::clear() {
  chosen_.clear();
  typed_.clear();
  refresh();
}

void PlayerChoice::choose(const QString& book, bool chosen) {
  const auto id = idFrom<weavelog::BookId>(book);
  const auto at = std::find(chosen_.begin(), chosen_.end(), id);
  if (chosen == (at != chosen_.end())) return;
  if (!chosen) {
    chosen_.erase(at);
  } else if (weavelog::may_cross(work_.ledger(), id, weavelog::kPlayerBook, room_)) {
    chosen_.push_back(id);
  }
  refresh();
}

void PlayerChoice::chooseThoseOfEvent() {
  chosen_.clear();
  if (const auto event = work_.event())
    for (const auto& book : weavelog::players_at(work_.ledger(), event))
      if (weavelog::may_cross(work_.ledger(), book, weavelog::kPlayerBook, room_)) chosen_.push_back(book);
  refresh();
}

void PlayerChoice::chooseNobody() {
  chosen_.clear();
  refresh();
}

void PlayerChoice::refresh() {
  const auto& ledger = work_.ledger();
  std::erase_if(chosen_, [&](const auto& book) {
    return !ledger.book(book) || !weavelog::may_cross(ledger, book, weavelog::kPlayerBook, room_);
  });
  std::vector<Row> rows;
  const auto add = [&](const weavelog::PlayerRow& player) {
    Row row;
    row.book = player.book;
    row.name = listedName(player.family_name, player.given_name, player.native_name);
    QStringList detail{qtext(player.country), qtext(player.last_event)};
    detail.removeAll(QString());
    row.detail = detail.join(QStringLiteral(" · "));
    row.why = crossingText(weavelog::crossing(ledger, player.book, weavelog::kPlayerBook, room_));
    row.chosen = std::find(chosen_.begin(), chosen_.end(), player.book) != chosen_.end();
    rows.push_back(std::move(row));
  };
  if (typed_.trimmed().isEmpty())
    for (std::size_t i = 0; i < std::min(chosen_.size(), rowsShown); ++i)
      if (const auto player = weavelog::find_player(ledger, chosen_[i])) add(*player);
  for (const auto& player : weavelog::find_players(ledger, typed_.toStdString(), rowsShown))
    if (rows.size() < rowsShown && std::none_of(rows.begin(), rows.end(), [&](const Row& row) { return row.book == player.book; })) add(player);
  KeyedRows::update(*this, std::move(rows));
  emit changed();
}

int PlayerChoice::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(rows_.size()); }

QHash<int, QByteArray> PlayerChoice::roleNames() const {
  return {{BookRole, "book"}, {NameRole, "name"}, {DetailRole, "detail"}, {ChosenRole, "chosen"}, {AllowedRole, "allowed"}, {WhyRole, "why"}};
}

QVariant PlayerChoice::data(const QModelIndex& index, int role) const {
  if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
  const Row& row = rows_[static_cast<std::size_t>(index.row())];
  switch (role) {
    case BookRole: return idText(row.book);
    case Qt::DisplayRole:
    case NameRole: return row.name;
    case DetailRole: return row.detail;
    case ChosenRole: return row.chosen;
    case AllowedRole: return row.why.isEmpty();
    case WhyRole: return row.why;
    default: return {};
  }
}
