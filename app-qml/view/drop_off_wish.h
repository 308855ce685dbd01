#pragma once

#include <QStringList>
#include <QVariant>

#include <span>

#include "app-qml/view/drop_off_state.h"
#include "core/base/language.h"

// What is asked for, looked at and changed for several rackets at once, as QML handles it.

// The rackets that the questions are for; none of the pointers is null.
using WishLines = std::span<const DropOffState::Line* const>;
using EditedWishLines = std::span<DropOffState::Line* const>;

// Names of the fields in which the rackets differ.
[[nodiscard]] QStringList differingFields(WishLines lines);
// What they have in each of these: field -> "24 kg, 25 kg", in the order of the rackets.
[[nodiscard]] QVariantMap apartTexts(WishLines lines, const weavelog::Language& language);
// Every field by its name; as if nothing were said where the rackets differ.
[[nodiscard]] QVariantMap wishOf(WishLines lines);
// Field -> symbol of the unit in which each tension is said; `usual` where none is.
[[nodiscard]] QVariantMap unitsOf(WishLines lines, weavelog::Unit usual);
// [{label, before, after}]: what is not as last time, the same change once.
[[nodiscard]] QVariantList changesOf(WishLines lines, const weavelog::Language& language);

// A figure that had no unit yet gets that of its field, a tension `tension`. False: nothing was changed.
bool setWish(EditedWishLines lines, const QString& field, const QVariant& value, weavelog::Unit tension);
// One field of what is asked for becomes that of another.
void copyWish(const weavelog::Agreed& from, weavelog::Agreed& to, const QString& field);
// A figure by one step for each line that has one, in the unit in which it is said, held within least..most.
void stepWish(EditedWishLines lines, const QString& field, const QString& by, const QString& least, const QString& most, weavelog::Unit usual);
// The digits stay as they were said.
void setWishUnit(EditedWishLines lines, const QString& field, weavelog::Unit unit);
// "mains" or "crosses" by so much, in the unit in which each is said, else in `usual`. Ends at the first
// racket that cannot take it; those before it are changed.
[[nodiscard]] weavelog::Outcome<> adjustWish(EditedWishLines lines, const QString& part,
                                             const weavelog::Decimal& by, weavelog::Unit usual);
// Steps that a person usually asks for in a unit: "-1", "-0.5", "0.5", "1".
[[nodiscard]] QStringList usualSteps(weavelog::Unit unit);
// Where the first step of a tension or a gauge goes that is not said yet: the middle of what is usual (SetupLimits: common practice, no
// source), as a round figure of the unit; "" for other fields.
[[nodiscard]] QString usualFirst(std::string_view field, weavelog::Unit tension);
// String, gauge, supply and owner of the crosses become those of the mains.
void sameStringForCrosses(EditedWishLines lines);
