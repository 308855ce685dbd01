#pragma once

#include <QString>
#include <QVariant>

#include "app-qml/view/work.h"
#include "core/model/event.h"
#include "core/people/arrival.h"

// What a comparison of two people says, for the person who has to decide: at an arrival and at a drop-off alike.

// "Wendelmoor Ilse"; the name in its own script where there is no other.
[[nodiscard]] QString matchName(const std::string& family, const std::string& given, const std::string& native);
// What speaks for a candidate, or against: "name, country".
[[nodiscard]] QString matchEvidence(const weavelog::Candidate& candidate, bool speaksFor);
// A relative or somebody of the same name would look alike.
[[nodiscard]] bool othersAlike(const weavelog::Candidate& candidate);
// "12 rackets", of nothing "".
[[nodiscard]] QString racketsText(std::size_t rackets);
// What is told of somebody, in words that can stand beside those of another: {name, born, country, rackets, setup, seen}, each "" where nothing is known.
[[nodiscard]] QVariantMap factsShown(const weavelog::Ledger& ledger, const weavelog::ArrivalCandidate& candidate);
// The same of a line of an entry list, which knows nothing of rackets.
[[nodiscard]] QVariantMap factsShown(const weavelog::EntryListItem& item);
// A candidate as the screens show it: {name, detail, last, like, unlike, othersAlike, mayCross, consent}; consent is the number of ConsentChoice.
[[nodiscard]] QVariantMap candidateShown(const weavelog::ArrivalCandidate& candidate);
