#pragma once

#include <QJSEngine>
#include <QQmlEngine>
#include <QVariant>

// Hands objects that C++ makes (with their files, clocks and ledgers) to the QML singletons of the same type,
// per engine and without globals: provide() before anything is loaded, and the type's create() returns
// provided().

// The object stays C++'s own and must outlive the engine.
template <class T>
void provide(QQmlEngine& engine, T& object) {
  QJSEngine::setObjectOwnership(&object, QJSEngine::CppOwnership);
  engine.setProperty(T::staticMetaObject.className(), QVariant::fromValue<QObject*>(&object));
}

// Null when nobody provided one.
template <class T>
[[nodiscard]] T* provided(const QQmlEngine* engine) {
  return qobject_cast<T*>(engine->property(T::staticMetaObject.className()).template value<QObject*>());
}
