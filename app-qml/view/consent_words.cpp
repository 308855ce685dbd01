#include "app-qml/view/consent_words.h"

#include "app-qml/view/model_text.h"
#include "core/desk/consent.h"
#include "core/desk/phrases.h"

QVariantMap consentWords(const weavelog::Language& language, bool withdrawable) {
  const auto say = [&](std::string_view key) { return qtext(weavelog::desk_words().say(language, key)); };
  QVariantList all;
  for (const auto& choice : weavelog::choices(weavelog::ConsentChoice{})) {
    if (choice.value == weavelog::ConsentChoice::unsaid) continue;
    if (choice.value == weavelog::ConsentChoice::withdrawn && !withdrawable) continue;
    all.append(QVariantMap{{"value", static_cast<int>(choice.value)},
                           {"text", qtext(weavelog::consent_text(language, choice.value))}});
  }
  return {
      {"title", say("consent.title")}, {"about", say("consent.about")},   {"later", say("consent.later")},
      {"open", say("consent.open")},   {"answer", say("consent.answer")}, {"change", say("consent.change")},
      {"keep", say("consent.keep")}, {"yes", say("read_back.yes")},   {"no", say("read_back.no")},       {"choices", all}};
}
