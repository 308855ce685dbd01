#pragma once

#include <QtQml/qqmlregistration.h>
#include <QAbstractListModel>

#include <map>

#include "app-qml/view/app_device.h"
#include "app-qml/view/arrival_row.h"
#include "app-qml/view/beside_screen.h"
#include "app-qml/view/keyed_rows.h"

class QQmlEngine;
class QJSEngine;

// The entry list of today's event beside what this device knows: known, likely or new, with what each had last and what the room would
// gain. Ticked players' books go to the event server; nobody else's does, and it never learns of them.
class ArrivalModel : public QAbstractListModel {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // Of the whole list, whatever is shown of it.
  Q_PROPERTY(int count READ count NOTIFY countChanged)
  Q_PROPERTY(int known READ known NOTIFY countChanged)
  Q_PROPERTY(int likely READ likely NOTIFY countChanged)
  Q_PROPERTY(int fresh READ fresh NOTIFY countChanged)
  // Somebody looks at it: the list follows what comes in.
  Q_PROPERTY(bool looking READ looking WRITE setLooking NOTIFY lookingChanged)
  // Which lines are shown, and how many more of these there are.
  Q_PROPERTY(Filter filter READ filter WRITE setFilter NOTIFY filterChanged)
  Q_PROPERTY(int hidden READ hidden NOTIFY filterChanged)
  // Ticked and not sent yet.
  Q_PROPERTY(int ticked READ ticked NOTIFY tickedChanged)
  // Likely ones that nobody has answered.
  Q_PROPERTY(int unanswered READ unanswered NOTIFY tickedChanged)
  // What either side gains in all: {roomPlayers, roomFirst, roomRackets, roomNewer} of those who are ticked, {herePlayers, hereFirst,
  // hereRackets, hereNewer} of what has come. First: nothing of them was there; newer: players of whom the last time is newer.
  Q_PROPERTY(QVariant gains READ gains NOTIFY tickedChanged)
  // Players of the list whose history stays here as things are, and why: [{name, why}], as Stay.
  Q_PROPERTY(QVariantList staying READ staying NOTIFY tickedChanged)
  // What those who are ticked agreed to: [{choice, count}], as ConsentChoice.
  Q_PROPERTY(QVariantList consents READ consents NOTIFY tickedChanged)

 public:
  enum Band { Known = ArrivalRow::Known, Likely = ArrivalRow::Likely, New = ArrivalRow::New };
  Q_ENUM(Band)
  enum Filter { All, OnlyKnown, OnlyLikely, OnlyNew };
  Q_ENUM(Filter)
  enum Stay { NotAgreed, NotAnswered, NotTicked };
  Q_ENUM(Stay)

  explicit ArrivalModel(AppDevice& device, QObject* parent = nullptr);
  static ArrivalModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] int count() const { return static_cast<int>(all_.size()); }
  [[nodiscard]] int known() const { return countOf(ArrivalRow::Known); }
  [[nodiscard]] int likely() const { return countOf(ArrivalRow::Likely); }
  [[nodiscard]] int fresh() const { return countOf(ArrivalRow::New); }
  [[nodiscard]] bool looking() const { return looking_; }
  void setLooking(bool looking);
  [[nodiscard]] Filter filter() const { return filter_; }
  void setFilter(Filter filter);
  [[nodiscard]] int hidden() const { return hidden_; }
  [[nodiscard]] int ticked() const;
  [[nodiscard]] int unanswered() const;
  [[nodiscard]] QVariantMap gains() const;
  [[nodiscard]] QVariantList staying() const;
  [[nodiscard]] QVariantList consents() const;

  // Compares the list anew, beside the screens; the rows follow.
  Q_INVOKABLE void look();
  Q_INVOKABLE void showMore();
  // Says which of a shown row's candidates it is (from 0), and that the book may cross; -1 takes that back. Kept until it is sent.
  Q_INVOKABLE void tick(int row, int candidate);
  Q_INVOKABLE void tickAllKnown();
  // The ticked books go to the event server, now or when it is back. False: failed() of the work has told why.
  Q_INVOKABLE bool send();

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
  [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

 signals:
  void countChanged();
  void filterChanged();
  void lookingChanged();
  void tickedChanged();

 private:
  friend struct KeyedRows;
  using Row = ArrivalRow;

  [[nodiscard]] int countOf(Row::Band band) const;
  [[nodiscard]] bool isTicked(const Row& row) const { return !row.sent && row.ticked >= 0; }
  void take(std::vector<Row> rows);
  void show();
  void setTick(Row& row, int candidate);
  void keepTicks();
  void readTicks();
  bool sayWho(const Row& row);

  AppDevice& device_;
  std::vector<Row> all_;
  std::vector<Row> rows_;                                // what is shown
  std::map<weavelog::EntityId, weavelog::BookId> ticks_;  // by entry, which candidate
  bool looking_ = false;
  Filter filter_ = All;
  std::size_t most_ = 0;
  int hidden_ = 0;
  BesideScreen beside_{*this};  // ends before what it reports to
};
