#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>

#include "app-qml/view/keyed_rows.h"
#include "app-qml/view/work.h"

// Everybody with rackets or money at today's event: who owes something first, then by name. Read anew only while it is
// looked at.
class AccountsModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("Made by the app")
  Q_PROPERTY(QString typed READ typed WRITE setTyped NOTIFY typedChanged)
  Q_PROPERTY(bool watched READ watched WRITE setWatched NOTIFY watchedChanged)
  Q_PROPERTY(int count READ count NOTIFY countChanged)
  // Of all, whatever is typed.
  Q_PROPERTY(int owing READ owing NOTIFY countChanged)

 public:
  enum Role {
    BookRole = Qt::UserRole,  // hexadecimal
    NameRole,                 // family name first
    DueRole,                  // "25,50 EUR", what is owed by either side; "" if the account is even
    SignRole,                 // 1 the player owes, 0 even, -1 the room owes
    LinesRole,                // something was charged or paid
  };

  explicit AccountsModel(Work& work, QObject* parent = nullptr);

  [[nodiscard]] QString typed() const { return typed_; }
  void setTyped(const QString& typed);
  [[nodiscard]] bool watched() const { return watched_; }
  void setWatched(bool watched);
  [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }
  [[nodiscard]] int owing() const { return owing_; }

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

 signals:
  void typedChanged();
  void watchedChanged();
  void countChanged();

 private:
  friend struct KeyedRows;

  struct Row {
    weavelog::BookId book;
    QString name, due;
    int sign = 0;
    bool lines = false;
    [[nodiscard]] const weavelog::BookId& key() const { return book; }
    bool operator==(const Row&) const = default;
  };

  void refresh();

  Work& work_;
  QString typed_;
  bool watched_ = false;
  int owing_ = 0;
  std::vector<Row> rows_;
};
