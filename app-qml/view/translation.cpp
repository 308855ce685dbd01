#include "app-qml/view/translation.h"

#include <QCoreApplication>
#include <QLocale>
#include <QQmlEngine>

void Translation::use(const QString& language, QQmlEngine* engine) {
  translator_.reset();  // takes itself out of the application
  auto next = std::make_unique<QTranslator>();
  if (next->load(QStringLiteral(":/i18n/weavelog_%1.qm").arg(language))) {
    translator_ = std::move(next);
    QCoreApplication::installTranslator(translator_.get());
  }
  QLocale::setDefault(QLocale(language));
  if (engine != nullptr) engine->retranslate();
}
