#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>

#include <vector>

#include "app-qml/view/keyed_rows.h"
#include "app-qml/view/work.h"

// Players who are chosen to go somewhere. The rows are those found, the chosen ones first while nothing is typed. Who may not go can't be
// chosen, and the row says why.
//
// Roles: book, name, detail, chosen, allowed, why ("" if it may go).
class PlayerChoice : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("it belongs to a model")
  Q_PROPERTY(int count READ rowCount NOTIFY changed)
  Q_PROPERTY(int chosen READ chosen NOTIFY changed)
  Q_PROPERTY(QString typed READ typed WRITE setTyped NOTIFY changed)

 public:
  // `work` must outlive it.
  explicit PlayerChoice(Work& work, QObject* parent);

  [[nodiscard]] int chosen() const { return static_cast<int>(chosen_.size()); }
  [[nodiscard]] const std::vector<weavelog::BookId>& books() const { return chosen_; }
  [[nodiscard]] const QString& typed() const { return typed_; }
  void setTyped(const QString& typed);
  // The room to which they go: consent depends on it.
  void setRoom(const weavelog::BookId& room);
  // Nobody chosen, nothing typed.
  void clear();
  // The ledger may have changed.
  void refresh();

  Q_INVOKABLE void choose(const QString& book, bool chosen);
  // Everybody of today's event who may go.
  Q_INVOKABLE void chooseThoseOfEvent();
  Q_INVOKABLE void chooseNobody();

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

 signals:
  // Of the rows, or of who is chosen.
  void changed();

 private:
  friend struct KeyedRows;
  struct Row {
    weavelog::BookId book;
    QString name, detail, why;
    bool chosen = false;
    [[nodiscard]] const weavelog::BookId& key() const { return book; }
    bool operator==(const Row&) const = default;
  };

  Work& work_;
  QString typed_;
  weavelog::BookId room_;
  std::vector<Row> rows_;
  std::vector<weavelog::BookId> chosen_;
};
