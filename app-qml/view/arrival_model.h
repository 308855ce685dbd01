#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>

#include "app-qml/view/app_device.h"
#include "app-qml/view/beside_screen.h"
#include "app-qml/view/keyed_rows.h"

class QQmlEngine;
class QJSEngine;

// The entry list of today's event beside what this device knows: known, likely or new, with what each had last. Ticked
// players' books go to the event server; nobody else's does, and it never learns of them.
class ArrivalModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(int count READ count NOTIFY countChanged)
  Q_PROPERTY(int known READ known NOTIFY countChanged)
  Q_PROPERTY(int likely READ likely NOTIFY countChanged)
  // Ticked and not sent yet.
  Q_PROPERTY(int ticked READ ticked NOTIFY tickedChanged)

 public:
  enum Band { Known, Likely, New };
  Q_ENUM(Band)

  explicit ArrivalModel(AppDevice& device, QObject* parent = nullptr);
  static ArrivalModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }
  [[nodiscard]] int known() const;
  [[nodiscard]] int likely() const;
  [[nodiscard]] int ticked() const;

  // Compares the list anew, beside the screens; the rows follow.
  Q_INVOKABLE void look();
  // Says which of a row's candidates it is (from 0), and that the book may cross; -1 takes that back.
  Q_INVOKABLE void tick(int row, int candidate);
  Q_INVOKABLE void tickAllKnown();
  // The ticked books go to the event server, now or when it is back. False: failed() of the work has told why.
  Q_INVOKABLE bool send();

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

 signals:
  void countChanged();
  void tickedChanged();

 private:
  friend struct KeyedRows;

  struct Row {
    weavelog::EntityId entry;
    Band band = New;
    QString name, detail;
    QVariantList candidates;  // [{name, detail, last, like, unlike, mayCross}]
    std::vector<weavelog::BookId> books;
    int ticked = -1;
    bool sent = false;  // a candidate's book crosses already

    [[nodiscard]] const weavelog::EntityId& key() const { return entry; }
    bool operator==(const Row&) const = default;
  };

  [[nodiscard]] std::vector<Row> compared(const weavelog::BookId& event, weavelog::UnixMs now) const;
  void take(std::vector<Row> rows);
  bool link(const Row& row);

  AppDevice& device_;
  std::vector<Row> rows_;
  BesideScreen beside_{*this};  // ends before what it reports to
};
