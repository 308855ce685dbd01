#include "app-qml/papers/paper_words.h"

#include <QStringList>
#include <algorithm>

#include "app-qml/papers/paper_page.h"
#include "core/base/local_time.h"

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

weavelog::Language languageOnPaper(const std::string& players, const weavelog::Language& rooms) {
  const auto own = weavelog::Language::from(players);
  if (!own) return rooms;
  const auto spoken = paperPhrases().languages();
  return std::any_of(spoken.begin(), spoken.end(), [&](const auto& one) { return one.base() == own->base(); }) ? *own : rooms;
}

QString nameOnPaper(const weavelog::PlayerRow& player) {
  QStringList names{QString::fromStdString(player.family_name), QString::fromStdString(player.given_name)};
  names.removeAll(QString());
  return names.isEmpty() ? QString::fromStdString(player.native_name) : names.join(u' ');
}

QString saidOnPaper(const weavelog::Language& language, const std::optional<weavelog::Quantity>& quantity) {
  return quantity ? QString::fromStdString(weavelog::localised(language, *quantity)) : QString();
}

QString timeOnPaper(const weavelog::Language& language, const std::optional<weavelog::UnixMs>& at, const std::string& zone,
                    weavelog::Moment::Form form) {
  return at ? QString::fromStdString(weavelog::localised(language, weavelog::Moment{*at, zone, form})) : QString();
}

QString dateOnPaper(const weavelog::Language& language, weavelog::UnixMs at, const std::string& zone) {
  const std::string date = weavelog::date_text(weavelog::LocalTime(zone).day_of(at));
  return timeOnPaper(language, at, zone, weavelog::Moment::Form::day) + u' ' + QString::fromStdString(date.substr(0, date.find('-', 1)));
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
