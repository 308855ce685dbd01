#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QStringList>
#include <QTimer>

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app-qml/view/beside_screen.h"
#include "app-qml/view/work.h"
#include "core/desk/room_promise.h"
#include "core/model/player.h"

// What the room can promise for some rackets: the earliest time that it keeps, and whether a time that was said can be kept. Worked out beside
// the screen, a moment after the last ask(), and only while somebody looks.
class PromiseAnswer : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("What is asked about is a model of its own")
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
  void setWatched(bool watched);
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] QString earliest() const { return earliest_; }
  [[nodiscard]] QString confidence() const { return confidence_; }
  [[nodiscard]] bool answered() const { return answered_; }
  [[nodiscard]] bool canBeKept() const { return canBeKept_; }
  [[nodiscard]] QString chance() const { return chance_; }
  [[nodiscard]] bool impossible() const { return impossible_; }
  [[nodiscard]] QStringList mustMove() const { return mustMove_; }

  // What was asked about is promised for the earliest time.
  Q_INVOKABLE void takeEarliest();

 signals:
  void changed();
  void watchedChanged();

 protected:
  struct Racket {
    weavelog::Agreed agreed;
    std::string pattern;
  };
  struct Asked {
    std::vector<Racket> rackets;
    weavelog::Rush rush = weavelog::Rush::none;
    std::optional<weavelog::UnixMs> wish;
    std::vector<weavelog::EntityId> without;  // rackets of the queue that are asked about
  };

  explicit PromiseAnswer(Work& work, QObject* parent = nullptr);
  [[nodiscard]] Work& work() const { return work_; }
  // Something about the question changed.
  void ask();
  // What to ask; no rackets: nothing.
  [[nodiscard]] virtual Asked asked() const = 0;
  virtual void promiseFor(weavelog::UnixMs at) = 0;

 private:
  struct Answer;
  void start();
  void take(const Answer& answer);

  Work& work_;
  bool watched_ = false, stale_ = true;
  bool answered_ = false, canBeKept_ = false, impossible_ = false;
  QString fault_, earliest_, confidence_, chance_;
  QStringList mustMove_;
  std::optional<weavelog::UnixMs> earliestAt_;
  std::vector<weavelog::EntityId> without_;             // that room_ was read without
  std::shared_ptr<const weavelog::RoomPromises> room_;  // the queue, as long as nothing changes in the room
  QTimer soon_;
  BesideScreen beside_{*this};  // ends before what it reports to
};
