#include "app-qml/guarded_application.h"

#include <cstdio>

#include "core/store/database.h"

bool GuardedApplication::notify(QObject* receiver, QEvent* event) {
  try {
    return QGuiApplication::notify(receiver, event);
  } catch (const SQLite::Exception& error) {
    const weavelog::Fault fault = weavelog::fault_of(error, "ledger.db");
    std::fprintf(stderr, "weavelog: %s\n", fault.message().c_str());
    if (tell_) tell_(fault);
    return false;
  }
}
