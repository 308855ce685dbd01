#pragma once

#include <QString>
#include <QVariant>

#include <vector>

#include "core/model/linked.h"
#include "core/people/arrival.h"

// One line of the entry list as the arrival shows it.
struct ArrivalRow {
  enum Band { Known, Likely, New };

  weavelog::EntityId entry;
  weavelog::BookId linkedTo;  // who it is, by what the list says; may be none
  Band band = New;
  QString name, detail;
  QVariantMap facts;                                 // of a likely one: factsShown()
  QVariantList candidates;                           // [candidateShown() and {room, atRoom}; facts, of a likely one]
  std::vector<weavelog::BookId> books;               // of each candidate
  std::vector<std::vector<weavelog::BookId>> going;  // of each candidate: what would go, those that may not left out
  std::vector<weavelog::Gain> there;                 // the room's, of each candidate
  weavelog::Gain here;                               // what has come of this player
  QString came;                                      // the same in words; "" for nothing
  int ticked = -1;
  bool sent = false;  // nothing is to be asked or sent any more: both sides have it, or it is on its way

  [[nodiscard]] const weavelog::EntityId& key() const { return entry; }
  // The list's own book came from the room, and one of ours may be the same player's: the first candidate stands for "none of these".
  [[nodiscard]] bool asksForLink() const { return linkedTo && books.size() > 1; }
  // The one that is shown where nothing is chosen.
  [[nodiscard]] int shown() const { return ticked >= 0 ? ticked : asksForLink() ? 1 : 0; }
  bool operator==(const ArrivalRow&) const = default;
};

// What the rows are made with: what the device holds, what may leave and what the room has already.
struct ArrivalSight {
  const weavelog::Ledger& ledger;
  weavelog::BookId event;
  weavelog::UnixMs now = 0;
  std::function<bool(const weavelog::BookId&)> mayLeave;
  std::function<bool(const weavelog::BookId&)> atRoom;
};
// The entry list, line by line. Touches nothing but the ledger, so any thread may ask.
[[nodiscard]] std::vector<ArrivalRow> arrivalRows(const ArrivalSight& sight);
