#pragma once

#include <QStringList>
#include <QVariant>

#include "app-qml/view/drop_off_state.h"
#include "app-qml/view/drop_off_wish.h"
#include "core/desk/player_record.h"

// What is in the way of a drop-off, and what is odd about it.

// field -> {what, toDo, refused}, the first of each field; `missing`: what is not said yet is one too.
[[nodiscard]] QVariantMap findingsOf(WishLines lines, const weavelog::PlayerRecord& record,
                                     const weavelog::Language& language, bool missing);
// [{rackets, text, written}]: what has to be said about the picked rackets before they are taken, each once;
// `rackets` are the labels of those that it is about, "" where it is about the player; `written`: the reason
// of a doubt about a frame.
[[nodiscard]] QVariantList cautionsOf(const DropOffState& state, const weavelog::PlayerRecord& record,
                                      const weavelog::Language& language);
// Questions that stringing waits for and that are not answered for a picked racket, as words.
[[nodiscard]] QStringList stillNeededFor(const DropOffState& state, const weavelog::PlayerRecord& record,
                                         const weavelog::Language& language);
// Index of the first picked racket with a wish that is refused; -1: none.
[[nodiscard]] int firstRefused(const DropOffState& state, const weavelog::PlayerRecord& record);
// Which page of the questions holds what is in the way: 0 player and rackets, 1 strings, 2 tensions; -1:
// none.
[[nodiscard]] int partInTheWay(const DropOffState& state, const weavelog::PlayerRecord& record);
