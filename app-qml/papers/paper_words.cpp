#include "app-qml/papers/paper_words.h"

#include <QStringList>

#include "app-qml/papers/paper_page.h"

namespace weavelog {
std::span<const PhraseText> paper_phrases();  // embedded by the build
}

const weavelog::Phrases& paperPhrases() {
  static const weavelog::Phrases phrases({weavelog::paper_phrases()});
  return phrases;
}

QString paperSay(const weavelog::Language& language, std::string_view key, const weavelog::PhraseArgs& args) {
  return QString::fromStdString(paperPhrases().say(language, key, args));
}

QString saidOnPaper(const weavelog::Language& language, const std::optional<weavelog::Quantity>& quantity) {
  return quantity ? QString::fromStdString(weavelog::localised(language, *quantity)) : QString();
}

QString timeOnPaper(const weavelog::Language& language, const std::optional<weavelog::UnixMs>& at, const std::string& zone,
                    weavelog::Moment::Form form) {
  return at ? QString::fromStdString(weavelog::localised(language, weavelog::Moment{*at, zone, form})) : QString();
}

QString joinedOnPaper(const QStringList& parts) {
  QStringList kept;
  for (const QString& part : parts)
    if (!part.isEmpty()) kept.append(apart(part));
  return kept.join(QStringLiteral(" · "));
}

QString stackedOnPaper(QStringList lines) {
  lines.removeAll(QString());
  return lines.join(QChar::LineSeparator);
}
