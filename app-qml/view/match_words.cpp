#include "app-qml/view/match_words.h"

#include <QCoreApplication>

#include <algorithm>

#include "app-qml/view/word_list.h"

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

QVariantMap candidateShown(const weavelog::ArrivalCandidate& candidate) {
  const auto& player = candidate.player;
  QString last;
  if (candidate.last) {
    last = joined({QString::fromStdString(candidate.last->tensions()), QString::fromStdString(candidate.last->mains_string),
                   QString::fromStdString(candidate.last->event_name)},
                  dot);
    if (candidate.last->days) last = joined({last, MatchWords::tr("%n day(s) ago", "", static_cast<int>(*candidate.last->days))}, dot);
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
