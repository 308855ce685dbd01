#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include "app-qml/view/app_device.h"
#include "sync/net/exchange_guest.h"

class QQmlEngine;
class QJSEngine;

// Who is enrolled at the event server, as a head of the room sees and changes it; and how long that server keeps players' books, which everybody
// sees and whoever may write the event changes.
class DevicesModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // A head's tablet, connected: it may ask for the list and change it.
  Q_PROPERTY(bool manages READ manages NOTIFY changed)
  // [{key, name, role, since, revoked, late, self}], role as ExchangeModel::Role, since and revoked as days in words; oldest first.
  Q_PROPERTY(QVariantList devices READ devices NOTIFY changed)
  // The list has been asked for and has not come yet.
  Q_PROPERTY(bool asking READ asking NOTIFY changed)
  // Why the last change was not made; "" if it was.
  Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
  // Days after the event's last one; -1: the books are kept.
  Q_PROPERTY(int keepDays READ keepDays NOTIFY ruleChanged)
  // "22 June 2031"; "" while they are kept.
  Q_PROPERTY(QString keptUntil READ keptUntil NOTIFY ruleChanged)
  // The rule can be set: there is an event whose last day is said, and this tablet may.
  Q_PROPERTY(bool setsRule READ setsRule NOTIFY ruleChanged)

 public:
  // `device` must be open and outlive it.
  explicit DevicesModel(AppDevice& device, QObject* parent = nullptr);
  static DevicesModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] bool manages() const;
  [[nodiscard]] QVariantList devices() const { return devices_; }
  [[nodiscard]] bool asking() const { return asking_; }
  [[nodiscard]] QString trouble() const { return trouble_; }
  [[nodiscard]] int keepDays() const { return keepDays_; }
  [[nodiscard]] QString keptUntil() const { return keptUntil_; }
  [[nodiscard]] bool setsRule() const { return setsRule_; }

  Q_INVOKABLE void ask();
  Q_INVOKABLE void rename(const QString& key, const QString& name);
  Q_INVOKABLE void setRole(const QString& key, int role);
  Q_INVOKABLE void revoke(const QString& key);
  // -1: they are kept. True when that is on disk; otherwise the work has told why.
  Q_INVOKABLE bool setKeepDays(int days, const QString& say);

 signals:
  void changed();
  void ruleChanged();

 private:
  template <class Wish>
  void wish(const QString& key, Wish send);
  void follow();
  void readRule();

  AppDevice& device_;
  QVariantList devices_;
  bool asking_ = false;
  QString trouble_;
  bool wished_ = false;  // the next fault of the connection may be the answer
  int keepDays_ = -1;
  QString keptUntil_;
  bool setsRule_ = false;
};
