#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include "app-qml/view/work.h"
#include "core/desk/cautions.h"
#include "core/desk/check.h"

class QQmlEngine;
class QJSEngine;

// One strung racket at the check, or before its stencils: the room's list with what was found, where it goes if it is done again; the
// marks that it gets.
class CheckModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(bool hasJob READ hasJob NOTIFY changed)
  Q_PROPERTY(QString job READ job NOTIFY changed)
  // "Okafor Sade"; the racket's label and frame; the tag's number.
  Q_PROPERTY(QString player READ player NOTIFY changed)
  Q_PROPERTY(QString racket READ racket NOTIFY changed)
  Q_PROPERTY(QString tag READ tag NOTIFY changed)
  // What it is compared with: jobBrief().
  Q_PROPERTY(QVariantMap brief READ brief NOTIFY changed)
  Q_PROPERTY(int stage READ stage NOTIFY changed)
  // The racket can be checked now: strung, and not yet collected.
  Q_PROPERTY(bool open READ isOpen NOTIFY changed)
  // [{name, text, found}], found as Found.
  Q_PROPERTY(QVariantList items READ items NOTIFY changed)
  Q_PROPERTY(int wrong READ wrong NOTIFY changed)
  Q_PROPERTY(int unseen READ unseen NOTIFY changed)
  // Stages, the usual one first.
  Q_PROPERTY(QVariantList waysBack READ waysBack NOTIFY changed)
  Q_PROPERTY(int backTo READ backTo WRITE setBackTo NOTIFY changed)
  Q_PROPERTY(QString reason READ reason WRITE setReason NOTIFY changed)
  // Everything was looked at, and what is not in order has its reason and its way back.
  Q_PROPERTY(bool complete READ isComplete NOTIFY changed)
  Q_PROPERTY(bool begun READ isBegun NOTIFY changed)
  // [{text, detail, passed}], newest first.
  Q_PROPERTY(QVariantList history READ history NOTIFY changed)
  Q_PROPERTY(int redos READ redos NOTIFY changed)
  // [{mark, ink, ofString}]: none agreed, none here.
  Q_PROPERTY(QVariantList stencils READ stencils NOTIFY changed)
  // About ink, until it was read for this job; otherwise "".
  Q_PROPERTY(QString caution READ caution NOTIFY changed)

 public:
  enum class Found { Unseen, Right, Wrong };
  Q_ENUM(Found)

  explicit CheckModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static CheckModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] bool hasJob() const { return hasJob_; }
  [[nodiscard]] QString job() const { return job_ ? QString::fromStdString(job_.hex()) : QString(); }
  [[nodiscard]] QString player() const { return player_; }
  [[nodiscard]] QString racket() const { return racket_; }
  [[nodiscard]] QString tag() const { return tag_; }
  [[nodiscard]] QVariantMap brief() const { return brief_; }
  [[nodiscard]] int stage() const { return static_cast<int>(stage_); }
  [[nodiscard]] bool isOpen() const { return !weavelog::redo_stages(stage_).empty(); }
  [[nodiscard]] QVariantList items() const;
  [[nodiscard]] int wrong() const { return count(Found::Wrong); }
  [[nodiscard]] int unseen() const { return count(Found::Unseen); }
  [[nodiscard]] QVariantList waysBack() const;
  [[nodiscard]] int backTo() const { return backTo_; }
  void setBackTo(int stage);
  [[nodiscard]] QString reason() const { return reason_; }
  void setReason(const QString& reason);
  [[nodiscard]] bool isComplete() const;
  [[nodiscard]] bool isBegun() const;
  [[nodiscard]] QVariantList history() const { return history_; }
  [[nodiscard]] int redos() const { return redos_; }
  [[nodiscard]] QVariantList stencils() const { return stencils_; }
  [[nodiscard]] QString caution() const { return caution_; }

  // Opens the check, or the stencils, of a racket.
  Q_INVOKABLE void show(const QString& book, const QString& job);
  Q_INVOKABLE void showStencils(const QString& book, const QString& job);
  // The same for the first racket of today's event that can be checked.
  Q_INVOKABLE void showFirst(bool stencils);
  // What was found at one item; found again it is unseen.
  Q_INVOKABLE void find(int row, int found);
  // What was not looked at apart is in order.
  Q_INVOKABLE void restIsRight();
  // Forgets what was found so far.
  Q_INVOKABLE void startAgain();
  // Stores the check. `say` is what the toast says. False: nothing was written.
  Q_INVOKABLE bool store(const QString& say);
  // The stencils are on.
  Q_INVOKABLE bool stencilled(const QString& say);

 signals:
  void changed();
  void checkAsked();
  void stencilsAsked();

 private:
  struct Item {
    std::string name;
    QString text;
    Found found = Found::Unseen;
  };

  void look(const QString& book, const QString& job);
  void refresh();
  [[nodiscard]] int count(Found found) const;

  Work& work_;
  weavelog::BookId book_;
  weavelog::EntityId job_;
  bool hasJob_ = false;
  QString player_, racket_, tag_, reason_, caution_;
  weavelog::Stage stage_ = weavelog::Stage::none;
  std::vector<Item> items_;
  int backTo_ = 0, redos_ = 0;
  QVariantList history_, stencils_;
  QVariantMap brief_;
  weavelog::CautionsShown shown_;
};
