#pragma once

#include <QTranslator>
#include <memory>

class QQmlEngine;

// Puts the texts of the screens into a language while the app runs. English is the language of the sources.
class Translation {
 public:
  // "en", "fr", "es" or "de". Every text on the screen follows at once; engine may be null before there is
  // one.
  void use(const QString& language, QQmlEngine* engine);

 private:
  std::unique_ptr<QTranslator> translator_;
};
