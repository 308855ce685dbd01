#include "app-qml/view/model_text.h"

#include <QLocale>

#include "core/base/localised.h"
#include "core/desk/phrases.h"

QString dayText(const weavelog::Language& language, const std::optional<weavelog::UnixMs>& at,
                const std::string& zone) {
  if (!at) return {};
  return qtext(weavelog::localised(language, weavelog::Moment{*at, zone, weavelog::Moment::Form::day}));
}

QString fieldLabel(const weavelog::Language& language, std::string_view field) {
  QString words = qtext(weavelog::field_words(language, field));
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return words;
}

QString saidText(const weavelog::Language& language, const std::optional<weavelog::Quantity>& quantity) {
  return quantity ? qtext(weavelog::localised(language, *quantity)) : QString();
}

QString racketText(const weavelog::Racket& racket) {
  return qtext(racket.label + " " + racket.maker + " " + racket.model).simplified();
}

QString languageName(const std::string& tag) {
  const auto language = weavelog::Language::from(tag);
  return language ? qtext(language->own_name()) : QString();
}

QVariant editable(const weavelog::Value& value) {
  if (const auto* number = std::get_if<std::int64_t>(&value)) return QVariant::fromValue<qlonglong>(*number);
  if (const auto* quantity = std::get_if<weavelog::Quantity>(&value)) return qtext(quantity->amount.text());
  if (const auto* text = std::get_if<std::string>(&value)) return qtext(*text);
  return {};
}
