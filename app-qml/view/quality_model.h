#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QUrl>
#include <QVariant>

#include <memory>

#include "app-qml/view/beside_screen.h"
#include "app-qml/view/save_note.h"
#include "app-qml/view/work.h"
#include "core/desk/room_quality.h"

class QQmlEngine;
class QJSEngine;

// How even the room's work is: strung racket after strung racket, what stands out and why, what the room can hold, and what its machines
// pull for what is set.
class QualityModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // Somebody looks at it: only then, or while a racket is looked at, it is worked out.
  Q_PROPERTY(bool watched MEMBER watched_ WRITE setWatched NOTIFY watchedChanged)
  Q_PROPERTY(bool busy READ busy NOTIFY changed)
  // It was worked out at least once.
  Q_PROPERTY(bool ready READ ready NOTIFY changed)
  Q_PROPERTY(QString fault READ fault NOTIFY changed)
  // Whose rackets are shown: "" all, "machine:NAME", "stringer:NAME"; and [{value, text}].
  Q_PROPERTY(QString of READ of WRITE setOf NOTIFY changed)
  Q_PROPERTY(QVariantList choices READ choices NOTIFY changed)
  // [{told, percent, average, mark ("", "racket", "machine", "stringer"), beyond, text, detail}]: the newest, oldest first; percent and average in per cent,
  // mark: the gravest alarm that it set off; text and detail say it in words.
  Q_PROPERTY(QVariantList points READ points NOTIFY changed)
  // All of which something was read, also those before the points.
  Q_PROPERTY(int rackets READ rackets NOTIFY changed)
  // Either way, in per cent: the limits of a racket by itself, the room's tolerance; how far the chart has to reach.
  Q_PROPERTY(double limit READ limit NOTIFY changed)
  Q_PROPERTY(double tolerance READ tolerance NOTIFY changed)
  Q_PROPERTY(double reach READ reach NOTIFY changed)
  // Sentences: how much a reading scatters; what the room can hold.
  Q_PROPERTY(QString scatter READ scatter NOTIFY changed)
  Q_PROPERTY(QString capability READ capability NOTIFY changed)
  // [{titles: [{mark, text}], when, text (why), advice, causes: [{text, chance (0 to 100)}]}]: the newest first, of all rackets; one a racket
  Q_PROPERTY(QVariantList alarms READ alarms NOTIFY changed)
  Q_PROPERTY(int olderAlarms READ olderAlarms NOTIFY changed)
  // Where the scatter comes from; readings that can't be: a line each.
  Q_PROPERTY(QStringList variance READ variance NOTIFY changed)
  Q_PROPERTY(QStringList leftOut READ leftOut NOTIFY changed)
  // The pull that is wanted, kg as text; "": the middle of each machine's readings. What is wrong with it, or "".
  Q_PROPERTY(QString wanted READ wanted WRITE setWanted NOTIFY changed)
  Q_PROPERTY(QString wrongWanted READ wrongWanted NOTIFY changed)
  // [{id, name, pulls, known, beyond, sentences: [..], missing, due, overdue, points: [{x, y}], line: [{x, y}], low, high, reach}]: x what was set in the machine's
  // unit from low to high, y how far the pull was off in per cent, to reach either way.
  Q_PROPERTY(QVariantList machines READ machines NOTIFY changed)
  // The rules as text: per cent and days; "" where nothing was said, then 4 and 1 hold.
  Q_PROPERTY(QString ruledTolerance READ ruledTolerance NOTIFY changed)
  Q_PROPERTY(QString ruledDays READ ruledDays NOTIFY changed)
  // By who asked with look(): {off, told, text}
  Q_PROPERTY(QVariantMap verdicts READ verdicts NOTIFY changed)

  // What became of the last file that was saved; gone when nobody looks any more.
  Q_PROPERTY(SaveNote* saved READ saved CONSTANT)

 public:
  explicit QualityModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static QualityModel* create(QQmlEngine* engine, QJSEngine* script);

  // `who` looks at a racket: whether it is off is in `verdicts` under that name, until they look at another, or at none ("").
  Q_INVOKABLE void look(const QString& who, const QString& job);
  // What to set on a machine (by its id) for a pull that is agreed, as a sentence with its band; "" where its line says that no correction is needed, or says
  // nothing. Holds until changed().
  Q_INVOKABLE QString correction(const QString& machine, const QString& amount, const QString& unit) const;
  // False: failed() of the work has told why.
  Q_INVOKABLE bool setRules(const QString& tolerance, const QString& days, const QString& say);
  // Writes the chart's points, those before the newest too, as a table for other programs; saved() tells where, or why not.
  Q_INVOKABLE bool save(const QUrl& file);
  // Chart, alarms, machines and rackets as PDF on A4; written beside the screen: busy until then, then saved() tells where, or why not.
  Q_INVOKABLE void savePdf(const QUrl& file);

  void setWatched(bool watched);
  [[nodiscard]] bool busy() const { return beside_.busy() || writing_.busy(); }
  [[nodiscard]] bool ready() const { return made_ != nullptr; }
  [[nodiscard]] QString fault() const { return fault_; }
  [[nodiscard]] QString of() const { return of_; }
  void setOf(const QString& of);
  [[nodiscard]] QVariantList choices() const { return choices_; }
  [[nodiscard]] QVariantList points() const { return points_; }
  [[nodiscard]] int rackets() const { return rackets_; }
  [[nodiscard]] double limit() const { return limit_; }
  [[nodiscard]] double tolerance() const { return tolerance_; }
  [[nodiscard]] double reach() const { return reach_; }
  [[nodiscard]] QString scatter() const { return scatter_; }
  [[nodiscard]] QString capability() const { return capability_; }
  [[nodiscard]] QVariantList alarms() const { return alarms_; }
  [[nodiscard]] int olderAlarms() const { return olderAlarms_; }
  [[nodiscard]] QStringList variance() const { return variance_; }
  [[nodiscard]] QStringList leftOut() const { return leftOut_; }
  [[nodiscard]] QString wanted() const { return wanted_; }
  void setWanted(const QString& wanted);
  [[nodiscard]] QString wrongWanted() const;
  [[nodiscard]] QVariantList machines() const { return machines_; }
  [[nodiscard]] QString ruledTolerance() const { return ruledTolerance_; }
  [[nodiscard]] QString ruledDays() const { return ruledDays_; }
  [[nodiscard]] QVariantMap verdicts() const { return verdicts_; }

  [[nodiscard]] SaveNote* saved() { return &saved_; }

 signals:
  void changed();
  void watchedChanged();

 private:
  using Made = weavelog::Outcome<weavelog::RoomQuality>;
  void refresh();
  void show();
  void showRoom();
  void showPoints();
  void showAlarms();
  void showMachines();
  void showVerdicts();
  [[nodiscard]] weavelog::Watched watchedKind() const;
  [[nodiscard]] std::string watchedName() const;
  [[nodiscard]] QString figure(double value, int decimals = 1) const;
  [[nodiscard]] QString setFigure(double value) const;
  [[nodiscard]] QString capabilityWords() const;
  [[nodiscard]] QVariantMap machineCard(const weavelog::MachineQuality& machine) const;

  Work& work_;
  SaveNote saved_{this};
  bool watched_ = false;
  QString fault_, of_, scatter_, capability_, wanted_, ruledTolerance_, ruledDays_;
  QVariantList choices_, points_, alarms_, machines_;
  QStringList variance_, leftOut_;
  QVariantMap verdicts_;
  QMap<QString, QString> looked_;
  int rackets_ = 0, olderAlarms_ = 0;
  double limit_ = 0, tolerance_ = 4, reach_ = 6;
  std::shared_ptr<const Made> made_;
  BesideScreen beside_{*this}, writing_{*this};  // end before what they report to
};
