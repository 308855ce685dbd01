#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QUrl>
#include <QVariant>

#include "app-qml/view/save_note.h"
#include "app-qml/view/work.h"

class QQmlEngine;
class QJSEngine;

// The numbers of today's event, or of one of its days.
class NumbersModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // Only while it is seen is it counted.
  Q_PROPERTY(bool watched READ watched WRITE setWatched NOTIFY changed)
  // Only what happened today.
  Q_PROPERTY(bool today READ today WRITE setToday NOTIFY changed)
  // {jobs, strung, ready, collected, inRoom, rush, onCourt, redone, aside, late, overdue, waiting: numbers;
  //  onTime ("94 %"), turnaround, slow, wait ("1 h 20 min"): "" while not known}
  Q_PROPERTY(QVariantMap sums READ sums NOTIFY changed)
  // Each [{key, taken, strung, ready, late}]
  Q_PROPERTY(QVariantList days READ days NOTIFY changed)
  Q_PROPERTY(QVariantList hours READ hours NOTIFY changed)
  Q_PROPERTY(QVariantList stringers READ stringers NOTIFY changed)
  Q_PROPERTY(QVariantList strings READ strings NOTIFY changed)
  Q_PROPERTY(QVariantList tensions READ tensions NOTIFY changed)
  // {name, now, before, whole, more ("+12 %")}; empty where there is no year before
  Q_PROPERTY(QVariantMap growth READ growth NOTIFY changed)

  // What became of the last file that was saved; gone when nobody looks any more.
  Q_PROPERTY(SaveNote* saved READ saved CONSTANT)

 public:
  explicit NumbersModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static NumbersModel* create(QQmlEngine* engine, QJSEngine* script);

  // Writes the table for other programs; saved() tells where, or why not.
  Q_INVOKABLE bool save(const QUrl& file);

  [[nodiscard]] bool watched() const { return watched_; }
  void setWatched(bool watched);
  [[nodiscard]] bool today() const { return today_; }
  void setToday(bool today);
  [[nodiscard]] QVariantMap sums() const { return sums_; }
  [[nodiscard]] QVariantList days() const { return days_; }
  [[nodiscard]] QVariantList hours() const { return hours_; }
  [[nodiscard]] QVariantList stringers() const { return stringers_; }
  [[nodiscard]] QVariantList strings() const { return strings_; }
  [[nodiscard]] QVariantList tensions() const { return tensions_; }
  [[nodiscard]] QVariantMap growth() const { return growth_; }

  [[nodiscard]] SaveNote* saved() { return &saved_; }

 signals:
  void changed();

 private:
  void refresh();

  Work& work_;
  SaveNote saved_{this};
  bool watched_ = false, today_ = false;
  QVariantMap sums_, growth_;
  QVariantList days_, hours_, stringers_, strings_, tensions_;
};
