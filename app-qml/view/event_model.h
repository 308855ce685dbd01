#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include <vector>

#include "app-qml/view/app_device.h"
#include "core/desk/without_event.h"

class QQmlEngine;
class QJSEngine;

// The events that this device holds: which one the screens look at, what is said of it, and making one without a server.
//
// What a person fills in is a form: {name, place, firstDay, lastDay ("2031-05-26"), timeZone, currency, who}.
class EventModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // [{id, name, detail (days and place), waiting (rackets that are not done), shown, hosts (the event server's)}], newest first
  Q_PROPERTY(QVariantList events READ events NOTIFY changed)
  // Whether this device may change what is said of the event on the screen: its own, or as head of the server's.
  Q_PROPERTY(bool mayChange READ mayChange NOTIFY changed)
  // The name of the event server's event where another one is on the screen; "" otherwise.
  Q_PROPERTY(QString hosts READ hosts NOTIFY changed)
  // Rackets that were taken in here without an event and whose they are; read when asked() is told.
  Q_PROPERTY(int left READ left NOTIFY leftChanged)
  Q_PROPERTY(QString leftNames READ leftNames NOTIFY leftChanged)

 public:
  // `device` must be open and outlive it.
  explicit EventModel(AppDevice& device, QObject* parent = nullptr);
  // Works on the engine's device.
  static EventModel* create(QQmlEngine* engine, QJSEngine* script);

  // Somebody wants to make an event, or to change the one on the screen: asked() follows.
  Q_INVOKABLE void ask(bool change = false);
  // What a form begins with: a new event's, or as the event on the screen stands.
  Q_INVOKABLE QVariantMap fresh() const;
  Q_INVOKABLE QVariantMap held() const;
  // What is wrong, by field of the form; empty if nothing is. An event that came without days, as a server makes one by its name alone, may be
  // changed without: `change` tells that it is the one on the screen.
  Q_INVOKABLE QVariantMap wrong(const QVariantMap& form, bool change = false) const;
  // "Monday, 26 May 2031" for a day that exists; "" otherwise.
  Q_INVOKABLE QString dayWords(const QString& day) const;
  // So many days later, as a form has it; today's where it was no day.
  Q_INVOKABLE QString moved(const QString& day, int days) const;
  // Makes the event, with whoever fills it in on its team, goes over to it, and takes in what was taken in without one. False: nothing was
  // made; wrong() or failed() of the work tells why.
  Q_INVOKABLE bool make(const QVariantMap& form, bool takesLeft);
  // Changes the event on the screen, all but its currency. False likewise.
  Q_INVOKABLE bool change(const QVariantMap& form, const QString& say);
  // Goes over to an event of the list, or to the event server's.
  Q_INVOKABLE void show(const QString& event);
  Q_INVOKABLE void showHosts();

  [[nodiscard]] QVariantList events() const { return events_; }
  [[nodiscard]] bool mayChange() const { return mayChange_; }
  [[nodiscard]] QString hosts() const { return hosts_; }
  [[nodiscard]] int left() const;
  [[nodiscard]] QString leftNames() const;

 signals:
  void changed();
  void leftChanged();
  void asked(bool change);
  // A new event is on the screen.
  void made();

 private:
  void refresh();
  void readLeft();
  [[nodiscard]] std::string today() const;

  AppDevice& device_;
  QVariantList events_;
  bool mayChange_ = false;
  QString hosts_;
  std::vector<weavelog::WithoutEvent> left_;
};
