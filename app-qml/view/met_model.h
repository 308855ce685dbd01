#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>

#include "app-qml/view/app_device.h"
#include "app-qml/view/player_choice.h"

class QQmlEngine;
class QJSEngine;

// A colleague's tablet that plays the host without an event, while this one is connected with it: whose books go there.
class MetModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // What it is called; "" while there is no such connection.
  Q_PROPERTY(QString host READ host NOTIFY changed)
  // This tablet was let in as a reader: it brings nothing.
  Q_PROPERTY(bool onlyGets READ onlyGets NOTIFY changed)
  Q_PROPERTY(PlayerChoice* choice READ choice CONSTANT)
  // The names of those whose books cross already, either way.
  Q_PROPERTY(QString given READ given NOTIFY changed)

 public:
  // `device` must be open and outlive it.
  explicit MetModel(AppDevice& device, QObject* parent = nullptr);
  static MetModel* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] QString host() const { return host_; }
  [[nodiscard]] bool onlyGets() const { return onlyGets_; }
  [[nodiscard]] PlayerChoice* choice() { return &choice_; }
  [[nodiscard]] QString given() const { return given_; }

  // Those who are chosen go there, now and whenever the two meet again. False: failed() of the work has told why.
  Q_INVOKABLE bool give();

 signals:
  void changed();

 private:
  void follow();
  [[nodiscard]] QString namesOfGiven() const;

  AppDevice& device_;
  PlayerChoice choice_;
  QString host_, given_;
  bool onlyGets_ = false;
};
