#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>
#include <QVariant>

#include "app-qml/view/keyed_rows.h"
#include "app-qml/view/work.h"
#include "core/model/stock_tables.h"

class QQmlEngine;
class QJSEngine;

// What string is there at today's event: the room's, the stringers' from their own bags, the players' own; what is left of each,
// and until when at today's pace.
class StockModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(bool hasEvent READ hasEvent NOTIFY countChanged)
  Q_PROPERTY(int count READ count NOTIFY countChanged)
  Q_PROPERTY(int low READ low NOTIFY countChanged)

 public:
  enum Owner { Room, Stringer, Player };
  Q_ENUM(Owner)
  // How the time of running out is told: not at all, "by 14:05", "by Thursday", "by 12 June".
  enum Gone { Never, AtTime, OnWeekday, OnDay };
  Q_ENUM(Gone)
  enum Role {
    ItemRole = Qt::UserRole,  // hexadecimal
    NameRole,
    GaugeRole,     // "1,25 mm"
    OwnerRole,
    FirstRole,     // of its owners
    WhoseRole,     // the stringer's or the player's name
    ReelRole,      // in metres; otherwise in sets
    LeftRole,      // metres as a figure with one decimal, "12.5", or the number of sets
    UsedTodayRole, // the same; "" for nothing
    LowMarkRole,   // the same; "" for none
    LowRole,
    GoneRole,
    GoneWhenRole,
    NoteRole,
  };

  explicit StockModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static StockModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] bool hasEvent() const;
  [[nodiscard]] int count() const { return static_cast<int>(rows_.size()); }
  [[nodiscard]] int low() const;

  // A new item with what is there of it: {name, gauge, reel, owner, whose, player, low, amount, note}; texts as typed, `player` a
  // book. False: failed() of the work has told why.
  Q_INVOKABLE bool add(const QVariantMap& item, const QString& say);
  // Something came, went or was counted; `why` is a number of StockWhy, the amount in metres or sets.
  Q_INVOKABLE bool move(const QString& item, int why, const QString& amount, const QString& note, const QString& say);
  // "" or what is wrong with an amount (metres of a reel, or sets), a gauge; an empty one is not wrong.
  Q_INVOKABLE QString wrongWith(const QString& amount, bool reel) const;
  Q_INVOKABLE QString wrongGauge(const QString& gauge) const;
  // Players with rackets at the event: [{value (book), text (name)}].
  Q_INVOKABLE QVariantList players() const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

 signals:
  void countChanged();

 private:
  friend struct KeyedRows;

  struct Row {
    weavelog::EntityId item;
    QString name, gauge, whose, left, used, lowMark, goneWhen, note;
    Owner owner = Room;
    Gone gone = Never;
    bool reel = false, low = false, first = false;
    [[nodiscard]] const weavelog::EntityId& key() const { return item; }
    bool operator==(const Row&) const = default;
  };

  void refresh();
  [[nodiscard]] Row rowOf(const weavelog::StockLevel& level) const;
  [[nodiscard]] std::string who() const;

  Work& work_;
  std::vector<Row> rows_;
};
