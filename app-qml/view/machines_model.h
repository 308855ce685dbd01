#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include "app-qml/view/work.h"
#include "core/desk/machines.h"

class QQmlEngine;
class QJSEngine;

// The machines of today's event: which can be used, whose clamps are due, what their last calibration showed.
class MachinesModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // [{id, name, kind (1 constant-pull, 2 lockout, 3 drop-weight), maker, most, prestretch, whose, strung, due, cleaned, broken, reason,
  //   by, asked, read, off (per cent, signed, "" for none), calibrated}]
  Q_PROPERTY(QVariantList machines READ machines NOTIFY changed)
  Q_PROPERTY(int needing READ needing NOTIFY changed)  // out of order, or clamps due

 public:
  explicit MachinesModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static MachinesModel* create(QQmlEngine* engine, QJSEngine* script);

  // {name, kind, maker, model, whose, most, prestretch, every}; texts as typed. False: failed() of the work has told why.
  Q_INVOKABLE bool add(const QVariantMap& machine, const QString& say);
  Q_INVOKABLE bool clean(const QString& machine, const QString& say);
  Q_INVOKABLE bool breakDown(const QString& machine, const QString& reason, const QString& say);
  Q_INVOKABLE bool mend(const QString& machine, const QString& say);
  // Both tensions in kilograms as typed, unless they name their unit.
  Q_INVOKABLE bool calibrate(const QString& machine, const QString& asked, const QString& read, const QString& say);
  // "" or what is wrong with a tension; an empty one is not wrong.
  Q_INVOKABLE QString wrongTension(const QString& tension) const;

  [[nodiscard]] QVariantList machines() const { return machines_; }
  [[nodiscard]] int needing() const { return needing_; }

 signals:
  void changed();

 private:
  void refresh();
  bool note(const QString& machine, weavelog::MachineCare care, const QString& say);

  Work& work_;
  QVariantList machines_;
  int needing_ = 0;
};
