#pragma once

#include <QVariant>

#include "app-qml/view/drop_off_state.h"
#include "app-qml/view/work.h"
#include "core/desk/person_books.h"

// The rackets of a drop-off in the making, beside what the player's book holds.

// The racket of a line, made here or known; null for one that the book has lost.
[[nodiscard]] const weavelog::Racket* racketOf(const DropOffState::Line& line,
                                               const weavelog::PlayerRecord& record);
// Stage of the racket's open job at the event; -1 if it is not in that room. A job that is open at another
// event was never marked there as collected: the racket is here.
[[nodiscard]] int openStageOf(const DropOffState::Line& line, const weavelog::PlayerRecord& record,
                              const weavelog::BookId& event);
// The rackets of last time first and picked, unless they are in the room, then the player's others.
[[nodiscard]] std::vector<DropOffState::Line> linesOfLastTime(const weavelog::PlayerRecord& record,
                                                              const weavelog::BookId& event);
// Rackets that only the person's other books know, not picked, as they would be taken into this one (the first of `books`): with their own last
// setups. Of those that this book knows too, the newer last time of either holds: it is put into `lines`.
void addLinesOfOtherBooks(std::vector<DropOffState::Line>& lines, const weavelog::PersonBooks& books);
// One more racket, picked: wanted as the one before it, numbered after the others.
[[nodiscard]] DropOffState::Line oneMore(const std::vector<DropOffState::Line>& lines,
                                         const weavelog::PlayerRecord& record);
// [{label, model, fields, picked, stage, made, mains, crosses}]
[[nodiscard]] QVariantList listedLines(const std::vector<DropOffState::Line>& lines,
                                       const weavelog::PlayerRecord& record, const weavelog::BookId& event,
                                       const weavelog::Language& language);

// Rackets that are wanted with the same tensions: [{rackets ("1, 2"), mains, crosses, key (name of their setup as it is kept; "" where they differ),
// name (as it reads in the language)}], in the
// order in which they come.
[[nodiscard]] QVariantList tensionGroups(const std::vector<const DropOffState::Line*>& lines, const weavelog::PlayerRecord& record,
                                         const weavelog::Language& language);
// Names the setup of such a group: the player's own of that name and wish, or a new one. "": as it was before it was named. False: no such group.
bool nameTensionGroup(const std::vector<DropOffState::Line*>& lines, int group, const QString& name, const weavelog::PlayerRecord& record);
