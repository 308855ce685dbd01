#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include <memory>
#include <optional>

#include "app-qml/view/beside_screen.h"
#include "app-qml/view/work.h"
#include "core/plan/forecast.h"

class QQmlEngine;
class QJSEngine;

// What today's event has still to expect: rackets by day and hour, benches and string, each with its band.
class ForecastModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // Somebody looks at it: only then it is worked out.
  Q_PROPERTY(bool watched MEMBER watched_ WRITE setWatched NOTIFY watchedChanged)
  Q_PROPERTY(bool busy READ busy NOTIFY changed)
  Q_PROPERTY(QString fault READ fault NOTIFY changed)
  // [{name, mean, low, high, benches}]: rackets of each day, whole numbers; low is exceeded nine times of ten, high one time.
  Q_PROPERTY(QVariantList days READ days NOTIFY changed)
  // Which day's hours are shown.
  Q_PROPERTY(int day READ day WRITE setDay NOTIFY changed)
  // [{name, mean, low, high, benches}]: from the first to the last that expects anything.
  Q_PROPERTY(QVariantList hours READ hours NOTIFY changed)
  // [{name, mean, low, high}]: metres of all days, most first.
  Q_PROPERTY(QVariantList strings READ strings NOTIFY changed)
  // {mean, low, high, perMatch (text)}
  Q_PROPERTY(QVariantMap sums READ sums NOTIFY changed)

 public:
  explicit ForecastModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static ForecastModel* create(QQmlEngine* engine, QJSEngine* script);

  void setWatched(bool watched);
  [[nodiscard]] bool busy() const { return beside_.busy(); }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] QVariantList days() const { return days_; }
  [[nodiscard]] int day() const { return day_; }
  void setDay(int day);
  [[nodiscard]] QVariantList hours() const { return hours_; }
  [[nodiscard]] QVariantList strings() const { return strings_; }
  [[nodiscard]] QVariantMap sums() const { return sums_; }

 signals:
  void changed();
  void watchedChanged();

 private:
  void refresh();
  void show();

  Work& work_;
  bool watched_ = false;
  QString fault_;
  int day_ = 0;
  QVariantList days_, hours_, strings_;
  QVariantMap sums_;
  std::optional<weavelog::Forecast> made_;
  BesideScreen beside_{*this};  // ends before what it reports to
};
