#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include <memory>

#include "app-qml/view/beside_screen.h"
#include "app-qml/view/work.h"
#include "core/desk/plan_sight.h"

class QQmlEngine;
class QJSEngine;

// The day of today's event: which racket is strung where and when from now on, what of it is not as it was told, and what has happened since
// somebody last looked at this device.
class DayModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // Somebody looks at it: only then it is worked out. What was there when they turn away counts as seen.
  Q_PROPERTY(bool watched MEMBER watched_ WRITE setWatched NOTIFY watchedChanged)
  Q_PROPERTY(bool busy READ busy NOTIFY changed)
  // It was worked out at least once.
  Q_PROPERTY(bool ready READ ready NOTIFY changed)
  // Why there can be no plan, and what to do; "" where there can.
  Q_PROPERTY(QString fault READ fault NOTIFY changed)
  // Minutes from the axis' beginning, which is a whole hour: how long it is, and where now is.
  Q_PROPERTY(int minutes READ minutes NOTIFY changed)
  Q_PROPERTY(int now READ now NOTIFY changed)
  // [{at (minutes), text}]: the whole hours.
  Q_PROPERTY(QVariantList hours READ hours NOTIFY changed)
  // [{name, machine, closed: [{from, until}], jobs: [{job, book, tag, name, from, until, times, promised, late (minutes), changed, inWork, onCourt, away}]}]; from and
  // until in minutes; times and promised as text; away: the home bench's name where it is another one.
  Q_PROPERTY(QVariantList benches READ benches NOTIFY changed)
  // What is not as it was told: one line a racket.
  Q_PROPERTY(QStringList changes READ changes NOTIFY changed)
  // What happened since the last look, and when that was ("" if nobody ever looked).
  Q_PROPERTY(QStringList news READ news NOTIFY changed)
  Q_PROPERTY(QString lookedAt READ lookedAt NOTIFY changed)
  // What keeps rackets out of the plan, or should be looked at: waiting for an answer, two on one machine, no room in the shifts.
  Q_PROPERTY(QStringList doubts READ doubts NOTIFY changed)
  Q_PROPERTY(int rackets READ rackets NOTIFY changed)
  Q_PROPERTY(int late READ late NOTIFY changed)
  // Something was told already; and of how many rackets something else would be told now.
  Q_PROPERTY(bool told READ told NOTIFY changed)
  Q_PROPERTY(int toTell READ toTell NOTIFY changed)

 public:
  // `folder`: of the device, where it is kept what was seen.
  DayModel(Work& work, const QString& folder, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static DayModel* create(QQmlEngine* engine, QJSEngine* script);

  void setWatched(bool watched);
  [[nodiscard]] bool busy() const { return beside_.busy(); }
  [[nodiscard]] bool ready() const { return made_ != nullptr; }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] int minutes() const { return minutes_; }
  [[nodiscard]] int now() const { return now_; }
  [[nodiscard]] QVariantList hours() const { return hours_; }
  [[nodiscard]] QVariantList benches() const { return benches_; }
  [[nodiscard]] QStringList changes() const { return changes_; }
  [[nodiscard]] QStringList news() const { return news_; }
  [[nodiscard]] QString lookedAt() const { return lookedAt_; }
  [[nodiscard]] QStringList doubts() const { return doubts_; }
  [[nodiscard]] int rackets() const { return rackets_; }
  [[nodiscard]] int late() const { return late_; }
  [[nodiscard]] bool told() const { return told_; }
  [[nodiscard]] int toTell() const { return toTell_; }

  // Works the day out as if nothing had been told yet, until that is told or nobody looks any more.
  Q_INVOKABLE void planAnew();
  // Everybody's tablet shows this plan from now on. `say` is what the toast says.
  Q_INVOKABLE bool tell(const QString& say);
  // What happened was read.
  Q_INVOKABLE void seen();

 signals:
  void changed();
  void watchedChanged();

 private:
  struct Made;
  void refresh();
  void show();
  void showBenches();
  void showNews();
  void keepSight();
  [[nodiscard]] QString sightFile() const;
  [[nodiscard]] QString clock(weavelog::UnixMs at) const;

  Work& work_;
  QString folder_;
  bool watched_ = false, told_ = false;
  bool anew_ = false;  // somebody wants a plan as if nothing had been told, and has not told it yet
  QString fault_, lookedAt_;
  int minutes_ = 0, now_ = 0, rackets_ = 0, late_ = 0, toTell_ = 0;
  QVariantList hours_, benches_;
  QStringList changes_, news_, doubts_;
  std::shared_ptr<const Made> made_;
  std::optional<weavelog::PlanSight> before_;  // the last look
  weavelog::BookId beforeOf_;                  // of that event
  BesideScreen beside_{*this};  // ends before what it reports to
};
