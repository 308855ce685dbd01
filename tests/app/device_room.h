#pragma once
// A device of the app in a folder of its own, with a clock set by hand.

#include <QCoreApplication>
#include <QDeadlineTimer>
#include <QFile>
#include <QUrl>
#include <catch2/catch.hpp>
#include <functional>

#include "app-qml/guarded_application.h"
#include "app-qml/view/app_device.h"
#include "app-qml/view/settings.h"
#include "tests/support/rooms.h"
#include "tests/support/temporary_folder.h"

namespace weavelog::testing {

/// That of the app, without a display: signals between threads and timers need one, once for the whole
/// program.
inline GuardedApplication& needApplication() {
  static int count = 3;
  static char name[] = "test_app", option[] = "-platform", platform[] = "offscreen";
  static char* arguments[] = {name, option, platform, nullptr};
  static GuardedApplication application(count, arguments);
  return application;
}

/// Runs the loop until it holds; false if it does not within five seconds.
inline bool waitUntil(const std::function<bool()>& holds) {
  const QDeadlineTimer end(60'000);  // for a machine that does other things as well
  while (!holds()) {
    if (end.hasExpired()) return false;
    QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents | QEventLoop::AllEvents, 20);
  }
  return true;
}

[[nodiscard]] inline Person named(const std::string& family, const std::string& given = {}) {
  Person person;
  person.family_name = family;
  person.given_name = given;
  return person;
}

struct AppRoom {
  TemporaryFolder folder;
  ManualClock clock{kMonday};
  std::unique_ptr<Settings> settings;
  std::unique_ptr<AppDevice> device;

  AppRoom() {
    needApplication();
    settings = std::make_unique<Settings>(std::make_unique<QSettings>(
        QString::fromStdString((folder / "settings.ini").string()), QSettings::IniFormat));
    settings->useForThisRun("en", "light");
    settings->setDeviceName("Desk tablet");
    settings->setStringer("Ines");
    start();
  }
  /// Opens the device; again after a stop: what is in memory only is lost.
  void start() { device = std::make_unique<AppDevice>(folder / "device", *settings, clock); }
  void stop() { device.reset(); }

  [[nodiscard]] Ledger& ledger() const { return device->ledger(); }
  /// A file that lies on the device, for what a person picks.
  [[nodiscard]] QUrl file(const std::string& name, const Bytes& bytes) const {
    const QString path = QString::fromStdString((folder / name).string());
    QFile out(path);
    REQUIRE(out.open(QIODevice::WriteOnly));
    out.write(reinterpret_cast<const char*>(bytes.data()), static_cast<qint64>(bytes.size()));
    return QUrl::fromLocalFile(path);
  }
  Committed append(const Draft& draft) {
    clock.advance(1000);
    return must(ledger().append(draft));
  }
  BookId addEvent(const std::string& name, const std::string& first_day) {
    const BookId book = ledger().create_book_id();
    Draft draft(book, kEventBook, kActNewEvent);
    EventInfo info;
    info.name = name;
    info.first_day = first_day;
    info.time_zone = "Europe/Lisbon";
    (void)put_new(draft, info, clock.now());
    append(draft);
    return book;
  }
  BookId addPlayer(const Person& person) {
    const BookId book = ledger().create_book_id();
    Draft draft(book, kPlayerBook, kActNewPlayer);
    (void)put_new(draft, person, clock.now());
    append(draft);
    return book;
  }
};

}  // namespace weavelog::testing
