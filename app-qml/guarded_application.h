#pragma once
// The application, in which a database that fails while a screen asks it (a pulled disk, damaged pages)
// becomes the one fault on the screen instead of the end of the program. What was confirmed before is on disk
// either way.

#include <QGuiApplication>
#include <functional>

#include "core/base/outcome.h"

class GuardedApplication : public QGuiApplication {
 public:
  using QGuiApplication::QGuiApplication;
  void onFault(std::function<void(const weavelog::Fault&)> tell) { tell_ = std::move(tell); }
  bool notify(QObject* receiver, QEvent* event) override;

 private:
  std::function<void(const weavelog::Fault&)> tell_;
};
