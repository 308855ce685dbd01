#include "app-qml/view/card_words.h"

#include "app-qml/view/model_text.h"
#include "app-qml/view/word_list.h"
#include "core/desk/phrases.h"
#include "core/desk/player_record.h"

namespace {

QString pair(const QString& mains, const QString& crosses) {
  return crosses.isEmpty() || crosses == mains ? mains : mains + QStringLiteral(" / ") + crosses;
}

}  // namespace

QVariantList cardLines(const weavelog::Language& language, const weavelog::PlayerCard& card) {
  QVariantList out;
  for (const auto& setup : card.setups()) {
    const QString text = joined({pair(qtext(setup.mains_string), qtext(setup.crosses_string)),
                                 pair(saidText(language, setup.mains_tension), saidText(language, setup.crosses_tension))},
                                QStringLiteral(", "));
    out.append(QVariantMap{{QStringLiteral("kind"), QStringLiteral("setup")},
                           {QStringLiteral("text"), text},
                           {QStringLiteral("detail"), qtext(weavelog::setup_words(language, setup.name))}});
  }
  for (const auto& racket : card.rackets()) {
    const QString pattern =
        racket.mains_count && racket.crosses_count ? QStringLiteral("%1 × %2").arg(*racket.mains_count).arg(*racket.crosses_count) : QString();
    out.append(QVariantMap{
        {QStringLiteral("kind"), QStringLiteral("racket")}, {QStringLiteral("text"), racketText(racket)}, {QStringLiteral("detail"), pattern}});
  }
  return out;
}

QString cardName(const weavelog::PlayerCard& card) {
  return qtext(weavelog::listed_name(card.person()));
}

QString cardAbout(const weavelog::PlayerCard& card) {
  const auto person = card.person();
  const QString native = qtext(person.native_name);
  return joined({native == cardName(card) ? QString() : native, qtext(person.country), languageName(person.language)}, QStringLiteral(" · "));
}
