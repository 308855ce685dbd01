#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QVariant>

#include "app-qml/view/work.h"
#include "core/desk/event_book.h"

class QQmlEngine;
class QJSEngine;

// Who is on the team of today's event, who is here when, and whose days grow too long.
class TeamModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  // What the place shows: "people", "machines", "lists", "numbers" or "evenness".
  Q_PROPERTY(QString view MEMBER view_ NOTIFY viewChanged)
  Q_PROPERTY(bool hasEvent READ hasEvent NOTIFY changed)
  // [{id, name, role (0 unsaid, 1 head, 2 desk, 3 stringer, 4 reader), languages, skills, here, until}]
  Q_PROPERTY(QVariantList members READ members NOTIFY changed)
  // Of today and later: [{id, name, day, from, until}]
  Q_PROPERTY(QVariantList shifts READ shifts NOTIFY changed)
  // [{name, day, length ("13 h 30 min"), rest}]: too long a day, or with `rest` too short a rest before it
  Q_PROPERTY(QVariantList warnings READ warnings NOTIFY changed)

 public:
  explicit TeamModel(Work& work, QObject* parent = nullptr);
  // Works on the engine's device, which must be open.
  static TeamModel* create(QQmlEngine* engine, QJSEngine* script);

  // A page to begin with: "people:", "machines:", "lists:", "numbers:" or "evenness:". False: it is none of these.
  Q_INVOKABLE bool open(const QString& page);
  // Adds a member, or brings what is said of the one of that name up to date. False: failed() of the work has told why.
  Q_INVOKABLE bool setMember(const QString& name, int role, const QString& languages, const QString& skills, const QString& say);
  // A shift in `days` days from today; times as on a clock, "8:00"; an end that is not after the beginning is on the next day.
  Q_INVOKABLE bool addShift(const QString& member, int days, const QString& from, const QString& until, const QString& say);
  Q_INVOKABLE bool removeShift(const QString& shift, const QString& say);
  // "" or what is wrong with a time of day; an empty one is not wrong.
  Q_INVOKABLE QString wrongTime(const QString& time) const;
  // "Mon, 26 May" in so many days.
  Q_INVOKABLE QString dayIn(int days) const;

  [[nodiscard]] bool hasEvent() const { return static_cast<bool>(work_.event()); }
  [[nodiscard]] QVariantList members() const { return members_; }
  [[nodiscard]] QVariantList shifts() const { return shifts_; }
  [[nodiscard]] QVariantList warnings() const { return warnings_; }

 signals:
  void changed();
  void viewChanged();

 private:
  void refresh();
  [[nodiscard]] std::string dateIn(int days) const;

  Work& work_;
  QString view_ = QStringLiteral("people");
  QVariantList members_, shifts_, warnings_;
};
