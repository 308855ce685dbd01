#include "app-qml/view/match_words.h"

#include <QCoreApplication>

#include <algorithm>

#include "app-qml/view/word_list.h"
#include "core/model/fields.h"
#include "core/model/player.h"

namespace {

using weavelog::EvidenceField;
using weavelog::Likeness;

struct MatchWords {
  Q_DECLARE_TR_FUNCTIONS(MatchWords)
};

const QString dot = QStringLiteral("  ·  ");

QString yearText(const std::optional<std::int64_t>& year) {
  return year ? QString::number(*year) : QString();
}

QString nameWords(Likeness agreement) {
  switch (agreement) {
    case Likeness::same: return MatchWords::tr("name");
    case Likeness::short_form: return MatchWords::tr("short form of the name");
    case Likeness::part: return MatchWords::tr("part of the name");
    case Likeness::family: return MatchWords::tr("family name");
    case Likeness::given: return MatchWords::tr("given name");
    default: return MatchWords::tr("name nearly");
  }
}

QString fieldWords(const weavelog::Evidence& one) {
  switch (one.field) {
    case EvidenceField::name: return nameWords(one.agreement);
    case EvidenceField::country: return MatchWords::tr("country");
    case EvidenceField::birth_year: return MatchWords::tr("birth year");
    case EvidenceField::hand: return MatchWords::tr("hand");
    case EvidenceField::tour_number: return MatchWords::tr("tour number");
    case EvidenceField::rackets: return MatchWords::tr("rackets");
    case EvidenceField::strings: return MatchWords::tr("strings");
    case EvidenceField::others: break;  // is said by othersAlike()
  }
  return {};
}

QString seenText(const weavelog::LastSetup& last) {
  const QString days = last.days ? MatchWords::tr("%n day(s) ago", "", static_cast<int>(*last.days)) : QString();
  return joined({QString::fromStdString(last.event_name), days}, dot);
}

// "3 rackets: Corvane Tour 98"
QString ownRackets(const weavelog::Ledger& ledger, const std::vector<weavelog::BookId>& books) {
  std::size_t count = 0;
  QStringList models;
  for (const auto& book : books)
    for (const auto& state : ledger.entities(book, weavelog::kRacket)) {
      const auto racket = weavelog::from_state<weavelog::Racket>(state);
      ++count;
      const QString model = QString::fromStdString(racket.maker + " " + racket.model).simplified();
      if (!model.isEmpty() && !models.contains(model)) models.append(model);
    }
  const QString number = racketsText(count);
  return models.isEmpty() ? number : MatchWords::tr("%1: %2").arg(number, models.join(QStringLiteral(", ")));
}

}  // namespace

QString matchName(const std::string& family, const std::string& given, const std::string& native) {
  const QString name = joined({QString::fromStdString(family), QString::fromStdString(given)}, QStringLiteral(" "));
  return name.isEmpty() ? QString::fromStdString(native) : name;
}

QString matchEvidence(const weavelog::Candidate& candidate, bool speaksFor) {
  QStringList parts;
  for (const auto& one : candidate.evidence)
    if (one.agreement != Likeness::unsaid && (one.weight > 0) == speaksFor) parts.append(fieldWords(one));
  return joined(parts, QStringLiteral(", "));
}

bool othersAlike(const weavelog::Candidate& candidate) {
  return std::any_of(candidate.evidence.begin(), candidate.evidence.end(), [](const auto& one) {
    return one.field == EvidenceField::others && one.agreement == Likeness::possible && one.weight < 0;
  });
}

QString racketsText(std::size_t rackets) {
  return rackets == 0 ? QString() : MatchWords::tr("%n racket(s)", "", static_cast<int>(rackets));
}

QVariantMap factsShown(const weavelog::Ledger& ledger, const weavelog::ArrivalCandidate& candidate) {
  const auto& player = candidate.player;
  QString setup, seen;
  if (candidate.last) {
    const auto& last = *candidate.last;
    const bool hybrid = !last.crosses_string.empty() && last.crosses_string != last.mains_string;
    const QString string = QString::fromStdString(hybrid ? last.mains_string + " / " + last.crosses_string : last.mains_string);
    setup = joined({QString::fromStdString(last.tensions()), string}, dot);
    seen = seenText(last);
  }
  return {{QStringLiteral("name"), matchName(player.family_name, player.given_name, player.native_name)},
          {QStringLiteral("born"), yearText(player.birth_year)},
          {QStringLiteral("country"), QString::fromStdString(player.country)},
          {QStringLiteral("rackets"), ownRackets(ledger, candidate.books)},
          {QStringLiteral("setup"), setup},
          {QStringLiteral("seen"), seen}};
}

QVariantMap factsShown(const weavelog::EntryListItem& item) {
  return {{QStringLiteral("name"), matchName(item.family_name, item.given_name, item.native_name)},
          {QStringLiteral("born"), yearText(item.birth_year)},
          {QStringLiteral("country"), QString::fromStdString(item.country)},
          {QStringLiteral("rackets"), QString()},
          {QStringLiteral("setup"), QString()},
          {QStringLiteral("seen"), QString()}};
}

QVariantMap candidateShown(const weavelog::ArrivalCandidate& candidate) {
  const auto& player = candidate.player;
  QString last;
  if (candidate.last) {
    last = joined({QString::fromStdString(candidate.last->tensions()), QString::fromStdString(candidate.last->mains_string), seenText(*candidate.last)}, dot);
  }
  return {{QStringLiteral("name"), matchName(player.family_name, player.given_name, player.native_name)},
          {QStringLiteral("detail"), joined({QString::fromStdString(player.country), yearText(player.birth_year)}, dot)},
          {QStringLiteral("last"), last},
          {QStringLiteral("like"), matchEvidence(candidate.match, true)},
          {QStringLiteral("unlike"), matchEvidence(candidate.match, false)},
          {QStringLiteral("othersAlike"), othersAlike(candidate.match)},
          {QStringLiteral("mayCross"), candidate.may_cross},
          {QStringLiteral("consent"), static_cast<int>(player.consent)}};
}
