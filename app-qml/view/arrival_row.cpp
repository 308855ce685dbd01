#include "app-qml/view/arrival_row.h"

#include <QCoreApplication>

#include <algorithm>

#include "app-qml/view/match_words.h"
#include "app-qml/view/word_list.h"

namespace {

using weavelog::Gain;

struct ArrivalWords {
  Q_DECLARE_TR_FUNCTIONS(ArrivalWords)
};

QString dottedParts(const QStringList& parts) { return joined(parts, QStringLiteral("  ·  ")); }

QString newerText(const Gain& gain) {
  if (!gain.newer_days) return {};
  return *gain.newer_days == 0 ? ArrivalWords::tr("newer by hours") : ArrivalWords::tr("newer by %n day(s)", "", static_cast<int>(*gain.newer_days));
}

QString roomGets(const Gain& gain) {
  if (gain.nothing()) return ArrivalWords::tr("The room has this already");
  const QString rackets = racketsText(gain.jobs);
  if (gain.first) return rackets.isEmpty() ? ArrivalWords::tr("All new to the room") : ArrivalWords::tr("All new to the room: %1").arg(rackets);
  return dottedParts({rackets.isEmpty() ? ArrivalWords::tr("The room gets what was agreed") : ArrivalWords::tr("The room gets %1 more").arg(rackets), newerText(gain)});
}

QString cameHere(const Gain& gain) {
  if (gain.nothing()) return {};
  const QString rackets = racketsText(gain.jobs);
  if (gain.first) return rackets.isEmpty() ? ArrivalWords::tr("Came from the room") : ArrivalWords::tr("Came from the room: %1").arg(rackets);
  return dottedParts({ArrivalWords::tr("Came from the room: %1 more").arg(rackets), newerText(gain)});
}

void addCandidate(ArrivalRow& row, const ArrivalSight& sight, const weavelog::ArrivalCandidate& candidate, const weavelog::BookSums& sums) {
  std::vector<weavelog::BookId> going;
  for (const auto& book : candidate.books)
    if (sight.mayLeave(book)) going.push_back(book);
  // What may not go is not the room's gain, but what it has of this person counts.
  auto person = going;
  if (row.linkedTo && !row.books.empty()) person.push_back(row.linkedTo);
  const Gain there = weavelog::gain_there(person, sums, sight.atRoom);
  QVariantMap shown = candidateShown(candidate);
  shown.insert(QStringLiteral("room"), roomGets(there));
  shown.insert(QStringLiteral("atRoom"), sight.atRoom(candidate.match.book));
  if (row.band == ArrivalRow::Likely) shown.insert(QStringLiteral("facts"), factsShown(sight.ledger, candidate));
  row.candidates.append(shown);
  row.books.push_back(candidate.match.book);
  row.going.push_back(std::move(going));
  row.there.push_back(there);
}

ArrivalRow rowOf(const weavelog::ArrivalLine& line, const ArrivalSight& sight, const weavelog::BookSums& sums, const weavelog::Arrival* goingOn) {
  ArrivalRow row;
  row.entry = line.entry;
  if (line.linked) row.linkedTo = line.item.player;
  row.band = line.band == weavelog::MatchBand::known ? ArrivalRow::Known : line.band == weavelog::MatchBand::likely ? ArrivalRow::Likely : ArrivalRow::New;
  row.name = matchName(line.item.family_name, line.item.given_name, line.item.native_name);
  const QString year = line.item.birth_year ? QString::number(*line.item.birth_year) : QString();
  row.detail = dottedParts({QString::fromStdString(line.item.country), year, QString::fromStdString(line.item.draw)});
  for (const auto& candidate : line.candidates) addCandidate(row, sight, candidate, sums);
  if (row.band == ArrivalRow::Likely) {
    row.facts = factsShown(line.item);
    // The room's own book of this player knows more than the list.
    if (row.asksForLink())
      for (const char* of : {"rackets", "setup", "seen"})
        row.facts[QString::fromLatin1(of)] = row.candidates.first().toMap()[QStringLiteral("facts")].toMap()[QString::fromLatin1(of)];
  }
  if (line.candidates.empty() || (row.band == ArrivalRow::Likely && !row.linkedTo)) return row;
  if (goingOn != nullptr) row.here = weavelog::gain_here(line.candidates.front().books, sums, *goingOn);
  row.came = cameHere(row.here);
  if (row.asksForLink()) return row;
  // Who was ticked before, or came from the room, with all that is linked.
  const auto& all = row.going.front();
  row.sent = sight.atRoom(row.books.front()) && std::all_of(all.begin(), all.end(), sight.atRoom);
  if (row.sent) row.ticked = 0;
  return row;
}

}  // namespace

std::vector<ArrivalRow> arrivalRows(const ArrivalSight& sight) {
  const auto goingOn = weavelog::arrival_going_on(sight.ledger);
  const auto sums = weavelog::book_sums(sight.ledger);
  std::vector<ArrivalRow> rows;
  for (const auto& line : weavelog::arrival(sight.ledger, sight.event, sight.now, goingOn ? &*goingOn : nullptr))
    rows.push_back(rowOf(line, sight, sums, goingOn ? &*goingOn : nullptr));
  return rows;
}
