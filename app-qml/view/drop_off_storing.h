#pragma once

#include <QVariant>

#include "app-qml/view/drop_off_state.h"
#include "app-qml/view/work.h"
#include "core/desk/player_record.h"

// From the answers to what is stored.

// Language of the read-back.
[[nodiscard]] weavelog::Language languageOf(const DropOffState& state);
// The picked rackets as they are handed over now, with today's event and the next free tag numbers; and what
// the player has answered about consent and about open questions.
[[nodiscard]] weavelog::DropOffRequest requestOf(const DropOffState& state, const weavelog::PlayerRecord& record, const Work& work);
// [{tag, racket}], in the order of the drop-off.
[[nodiscard]] QVariantList tagsOf(const weavelog::DropOffRequest& request,
                                  const weavelog::PlayerRecord& record);
// An entry of today's list is that player, said once for the whole room. False: failed() of the work has told why.
bool linkEntry(Work& work, const weavelog::EntityId& entry, const weavelog::BookId& player);
// The entry list says from now on which book is a new player's. A failure costs the link only and is told.
void linkEntryOf(const DropOffState& state, Work& work);
