#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>

#include <optional>

#include "core/base/language.h"
#include "sync/exchange/workplace.h"

class QQmlEngine;
class QJSEngine;

// What the room's view models work with: the workplace, the event of today, who stands at this device and in
// what language it speaks. What a person does goes through commit(), and can be taken back with undo().
class Work : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON

 public:
  // `workplace` must outlive it.
  explicit Work(weavelog::Workplace& workplace, QObject* parent = nullptr);
  // That of the engine's device, which must be open.
  static Work* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] weavelog::Workplace& workplace() const { return workplace_; }
  [[nodiscard]] weavelog::Ledger& ledger() const { return workplace_.station().ledger(); }
  [[nodiscard]] weavelog::UnixMs now() const { return ledger().wall().now(); }
  [[nodiscard]] const weavelog::BookId& event() const { return event_; }
  [[nodiscard]] const QString& who() const { return who_; }
  [[nodiscard]] const weavelog::Language& language() const { return language_; }
  // IANA name of the event's zone; the device's own while there is no event.
  [[nodiscard]] const std::string& zone() const { return zone_; }

  // Also where the same event has got another time zone.
  void setEvent(const weavelog::BookId& event);
  void setWho(const QString& who);
  void setLanguage(const QString& language);
  // The ledger has new entries, or time has gone on: everybody looks again.
  Q_INVOKABLE void refresh() { emit changed(); }

  // "14:05" today, with the day otherwise; "" for no time.
  [[nodiscard]] QString timeText(const std::optional<weavelog::UnixMs>& at) const;

  // Writes an action. True when it is on disk; otherwise failed() has told why. `say` is what the toast says,
  // with an offer to take it back; empty: nothing is said.
  bool commit(const weavelog::Outcome<weavelog::Draft>& draft, const QString& say);
  // Makes failed() say what went wrong.
  void tell(const weavelog::Fault& fault);
  // Takes the newest committed action back. False: failed() has told why.
  Q_INVOKABLE bool undo();

 signals:
  void changed();
  void done(const QString& text);
  void failed(const QString& what, const QString& whatToDo);

 private:
  struct LastAction {
    weavelog::BookId book;
    std::uint64_t seq = 0;
  };

  weavelog::Workplace& workplace_;
  weavelog::BookId event_;
  QString who_;
  weavelog::Language language_;
  std::string zone_;
  std::optional<LastAction> last_;
};
