#pragma once

#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <QTimer>

#include <atomic>
#include <filesystem>
#include <memory>
#include <mutex>
#include <optional>

#include "app-qml/view/work.h"
#include "core/base/clock.h"
#include "core/base/outcome.h"

namespace weavelog {
class ExchangeGuest;
struct ExchangeGuestOptions;
struct GuestStatus;
}  // namespace weavelog

class QQmlEngine;
class QJSEngine;
class Settings;

// The device behind the app: its folder, its ledger, the event of today, and the connection to an event
// server.
//
// Where the folder cannot be opened the object is there all the same and says why: no screen that needs a
// ledger is made then.
class AppDevice : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(bool open READ isOpen CONSTANT)
  // Why it is not open: what, where, what to do; each may be empty.
  Q_PROPERTY(QString faultWhat READ faultWhat CONSTANT)
  Q_PROPERTY(QString faultWhere READ faultWhere CONSTANT)
  Q_PROPERTY(QString faultToDo READ faultToDo CONSTANT)
  // Where this device keeps everything; "" while it is not open.
  Q_PROPERTY(QString folder READ folder CONSTANT)
  // Hexadecimal; "" while there is no event.
  Q_PROPERTY(QString event READ event NOTIFY eventChanged)
  Q_PROPERTY(QString eventName READ eventName NOTIFY eventChanged)

 public:
  // Opens the folder, which is made if it is missing. `settings` and `clock` must outlive it.
  AppDevice(const std::filesystem::path& folder, Settings& settings,
            const weavelog::WallClock& clock = weavelog::WallClock::system());
  ~AppDevice() override;
  AppDevice(const AppDevice&) = delete;
  AppDevice& operator=(const AppDevice&) = delete;

  // What provide() gave the engine; null without.
  static AppDevice* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] bool isOpen() const { return work_ != nullptr; }
  // Why it is not open. Only then.
  [[nodiscard]] const weavelog::Fault& fault() const { return *fault_; }
  [[nodiscard]] QString faultWhat() const;
  [[nodiscard]] QString faultWhere() const;
  [[nodiscard]] QString faultToDo() const;

  // What the view models work with. Only while open.
  [[nodiscard]] Work& work() const { return *work_; }
  [[nodiscard]] weavelog::Station& station() const { return *station_; }
  [[nodiscard]] weavelog::Ledger& ledger() const { return station_->ledger(); }

  [[nodiscard]] QString folder() const;
  [[nodiscard]] QString event() const;
  [[nodiscard]] QString eventName() const { return eventName_; }
  // Goes over to another event that this device holds, and keeps that for the next start. Otherwise the event
  // that begins last is today's. While it is another one than the event server's, coming back to that server changes nothing.
  void chooseEvent(const weavelog::BookId& event);
  // The event of the event server that this device works for; none where it works for none, or never met it.
  [[nodiscard]] weavelog::BookId hostsEvent() const;
  // The next meeting with an event server goes over to its event, whatever was chosen meanwhile: a person asked for that server.
  void followAgain();

  // The connection to an event server; null while there is none.
  [[nodiscard]] weavelog::ExchangeGuest* guest() const { return guest_.get(); }
  // Empty while there is no connection.
  [[nodiscard]] weavelog::GuestStatus connection() const;
  // Starts one instead of what there is. `may_leave` is filled in here.
  void connectWith(weavelog::ExchangeGuestOptions options);
  // What comes and goes from now on is counted (core/people/arrival_account.h); an arrival that was going on is over.
  void beginArrival();
  // Ends it; waits for its threads.
  void hangUp();
  // What is written from now on is for this event server, also after the next start.
  void useHost(const weavelog::PublicKey& key);
  // A colleague's tablet that plays the host without an event: it is met, and what is written here is not for it.
  [[nodiscard]] bool isOnlyMet(const weavelog::PublicKey& key) const;
  // The event whose room books may go to: that of the event server, whichever event is on the screen. Any thread.
  [[nodiscard]] weavelog::BookId room() const;
  // Ends it, and what is written from now on is for nobody until another event server is met.
  void leaveHost();

 signals:
  // The ledger has new entries, of this device or by an exchange: once for all that came within a moment, on
  // the thread of the screens. work().changed() follows it.
  void changed();
  void eventChanged();
  void arrivalBegun();
  // The connection's status is another one, on the thread of the screens.
  void connectionChanged();

 private:
  void openFolder(const std::filesystem::path& folder, const weavelog::WallClock& clock);
  void findEvent();
  void useEvent(const weavelog::BookId& event);
  void followHost();
  void followRoom();
  void noteAway(const std::optional<weavelog::PublicKey>& host);

  Settings& settings_;
  std::optional<weavelog::Fault> fault_;
  std::unique_ptr<weavelog::Station> station_;
  std::unique_ptr<weavelog::Workplace> workplace_;
  std::unique_ptr<Work> work_;
  std::unique_ptr<weavelog::ExchangeGuest> guest_;
  int subscription_ = -1;
  QString eventName_;
  mutable std::mutex roomMutex_;
  weavelog::BookId room_;
  bool eventChosen_ = false;
  QTimer gather_;
  std::atomic<bool> ledgerMoved_ = false;
  std::atomic<bool> connectionMoved_ = false;
};
