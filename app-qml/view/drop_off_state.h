#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

#include "core/desk/drop_off.h"

// A drop-off in the making, as it is kept on disk until it is stored or thrown away.
struct DropOffState {
  struct Line {
    weavelog::DropOffLine asked;
    bool picked = false;
  };

  // An open question that the player answers at this desk; stored when the read-back is confirmed.
  struct Settled {
    weavelog::EntityId entity;
    std::string field;              // name in the registry
    QStringList seen;               // the answers that stood there, as seenAnswer(): a later one asks again
    weavelog::Agreed answer;        // that field of it only
  };

  // A question that was open when this desk looked last, in the order in which they came: its card keeps its place.
  struct Asked {
    weavelog::EntityId entity;
    std::string field;   // name in the registry
    QStringList seen;    // its answers, as seenAnswer(), in the order in which they came
    bool closed = false; // answered elsewhere since, and nobody has read so here
    QString unlike;      // what was chosen here, where that is another answer
  };

  QString id;                // of the drop-off, in the book too once it is stored
  weavelog::BookId book;     // of the player; new where `person` is to be made
  bool fresh = false;        // the player's book begins with this drop-off
  weavelog::EntityId entry;  // of the entry list, that a new player came from; may be none
  weavelog::Person person;   // of a new player
  bool asWhole = false;      // every question is asked, as at a first time
  weavelog::DropOff dropOff;
  std::vector<Line> lines;
  std::vector<Settled> settled;
  std::vector<Asked> asked;
  QString language;                                                   // of the read-back
  weavelog::ConsentChoice consent = weavelog::ConsentChoice::unsaid;  // what the player answered meanwhile
  weavelog::UnixMs begun = 0;
};

// JSON, with every field under its name in the registry, so that a draft of an older version reads in a newer
// one.
[[nodiscard]] QByteArray toBytes(const std::vector<DropOffState>& states);
// What cannot be read is left out.
[[nodiscard]] std::vector<DropOffState> dropOffsFrom(const QByteArray& bytes);
