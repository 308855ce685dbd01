#pragma once

#include <QtQml/qqmlregistration.h>
#include <QElapsedTimer>
#include <QObject>
#include <QVariant>

#include "app-qml/view/machine_choice.h"
#include "app-qml/view/stage_column.h"

class QQmlEngine;
class QJSEngine;

// The room's board: a column for each stage of today's event, and the steps that move a racket from one to
// the next.
class RoomModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(bool hasEvent READ hasEvent NOTIFY boardChanged)
  // One StageColumn a stage, received to ready, then put aside; always the same objects.
  Q_PROPERTY(QVariantList columns READ columns CONSTANT)
  // Rackets in the room's care; put aside and collected ones not counted.
  Q_PROPERTY(int open READ open NOTIFY boardChanged)
  // Rackets in all columns.
  Q_PROPERTY(int shown READ shown NOTIFY boardChanged)
  Q_PROPERTY(int late READ late NOTIFY boardChanged)
  Q_PROPERTY(int collected READ collected NOTIFY boardChanged)
  // Rackets that two people moved on while apart.
  Q_PROPERTY(int clashes READ clashes NOTIFY boardChanged)
  // On which machine the racket that is looked at goes, or is.
  Q_PROPERTY(MachineChoice* machine READ machine CONSTANT)

 public:
  // `work` must outlive it.
  explicit RoomModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static RoomModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] bool hasEvent() const { return static_cast<bool>(work_.event()); }
  [[nodiscard]] QVariantList columns() const;
  [[nodiscard]] int open() const { return open_; }
  [[nodiscard]] int shown() const { return shown_; }
  [[nodiscard]] int late() const { return late_; }
  [[nodiscard]] int collected() const { return collected_; }
  [[nodiscard]] int clashes() const { return clashes_; }
  [[nodiscard]] MachineChoice* machine() { return &machine_; }

  // False for a tap on a stage button that comes within half a second of the one before, or of anything that was just done: a finger that
  // taps twice means one racket, and the next card slides under it. Every tap begins the half second anew.
  Q_INVOKABLE bool tapCounts();
  // This racket is looked at, so that its machine can be chosen.
  Q_INVOKABLE void lookAt(const QString& book, const QString& job);
  // What speaks against putting it on the usual machine; empty: one tap does it.
  Q_INVOKABLE QStringList machineDoubts(const QString& book, const QString& job);
  // The usual next step; to a machine: the usual one. Refused for a racket that waits for its player's answer. `done` is what the toast says.
  Q_INVOKABLE bool advance(const QString& book, const QString& job, const QString& done);
  // Any step; one that does not follow needs a reason, and of a racket that waits what the player answered. To a machine: the one
  // chosen for the racket that is looked at, or the usual one.
  // `seen`: how it stood for who takes the step, as stepsOf() said; where it moved on since, nothing is written. "": as it stands.
  Q_INVOKABLE bool take(const QString& book, const QString& job, int stage, const QString& reason,
                        const QString& done, const QString& seen = {});
  // What can follow for one job: {stage: the present one, steps: stages that need no reason, others: stages
  // that need one, clash, marks: [{stage, at, by, reason, machine}], newest first, bags: with how many it came, collectedBy,
  // awaits: the player's answer about the frame is missing, brief: jobBrief(), seen: tells how it stands from how it stood}. Empty for a job that is not
  // here.
  Q_INVOKABLE QVariantMap stepsOf(const QString& book, const QString& job) const;

 signals:
  void boardChanged();

 private:
  void refresh();
  [[nodiscard]] weavelog::StageStep stepOf(const weavelog::PlayerRecord& record, const weavelog::EntityId& job, weavelog::Stage to);

  Work& work_;
  MachineChoice machine_;
  QElapsedTimer tapped_;
  weavelog::BookId lookedBook_;
  weavelog::EntityId looked_;
  std::vector<std::unique_ptr<StageColumn>> columns_;
  int open_ = 0, shown_ = 0, late_ = 0, collected_ = 0, clashes_ = 0;
};
