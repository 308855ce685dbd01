#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QTimer>
#include <QVariant>

#include <memory>

#include "app-qml/view/beside_screen.h"
#include "app-qml/view/drop_off_draft.h"
#include "core/desk/room_promise.h"

class QQmlEngine;
class QJSEngine;

// What the desk can promise for the drop-off in the making: the earliest time that the room keeps, and whether the time that was said can be kept.
class PromiseModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // Somebody looks at it: only then it is worked out.
  Q_PROPERTY(bool watched MEMBER watched_ WRITE setWatched NOTIFY watchedChanged)
  // Why nothing can be promised by reckoning; "" where it can.
  Q_PROPERTY(QString fault READ fault NOTIFY changed)
  // "12:40"; "" while it is not known.
  Q_PROPERTY(QString earliest READ earliest NOTIFY changed)
  // Of ten or a hundred promises like this one so many are kept: "95 %".
  Q_PROPERTY(QString confidence READ confidence NOTIFY changed)
  // A time was said, and the answer to it is here.
  Q_PROPERTY(bool answered READ answered NOTIFY changed)
  Q_PROPERTY(bool canBeKept READ canBeKept NOTIFY changed)
  Q_PROPERTY(QString chance READ chance NOTIFY changed)
  // Not even before all that waits.
  Q_PROPERTY(bool impossible READ impossible NOTIFY changed)
  // Whose promises it would cost, one line each.
  Q_PROPERTY(QStringList mustMove READ mustMove NOTIFY changed)

 public:
  PromiseModel(Work& work, DropOffDraft& draft, QObject* parent = nullptr);
  // Works on the engine's device, which must be open, and its desk.
  static PromiseModel* create(QQmlEngine* engine, QJSEngine* script);

  void setWatched(bool watched);
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] QString earliest() const { return earliest_; }
  [[nodiscard]] QString confidence() const { return confidence_; }
  [[nodiscard]] bool answered() const { return answered_; }
  [[nodiscard]] bool canBeKept() const { return canBeKept_; }
  [[nodiscard]] QString chance() const { return chance_; }
  [[nodiscard]] bool impossible() const { return impossible_; }
  [[nodiscard]] QStringList mustMove() const { return mustMove_; }

  // The drop-off is promised for the earliest time.
  Q_INVOKABLE void takeEarliest();

 signals:
  void changed();
  void watchedChanged();

 private:
  struct Asked;
  struct Answer;
  void ask();
  void start();
  void take(const Answer& answer);

  Work& work_;
  DropOffDraft& draft_;
  bool watched_ = false, stale_ = true;
  bool answered_ = false, canBeKept_ = false, impossible_ = false;
  QString fault_, earliest_, confidence_, chance_;
  QStringList mustMove_;
  std::optional<weavelog::UnixMs> earliestAt_;
  std::shared_ptr<const weavelog::RoomPromises> room_;  // the queue, as long as nothing changes in the room
  QTimer soon_;
  BesideScreen beside_{*this};  // ends before what it reports to
};
