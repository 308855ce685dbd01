#pragma once

#include <QString>

#include <span>
#include <vector>

#include "core/base/language.h"
#include "core/model/queries.h"

// What the tag of one racket says, as text in the room's language; what nobody said is "".
struct TagContent {
  weavelog::BookId player;
  weavelog::EntityId dropOff;
  std::int64_t number = 0;  // 0: it has none
  std::int64_t bags = 0;    // of the whole hand-over
  QString family, given, native;
  QString initials;        // "A. B."
  QString racket;          // its mark, maker and model
  QString mains, crosses;  // "Tarnbrook Silk 1.25 mm"
  struct Tension {
    QString amount, unit;  // "24.5", "kg", as said
  };
  Tension mainsTension, crossesTension;
  QString mainsPrestretch, crossesPrestretch;  // "pre-stretch 10 %"
  QString prestretch;                          // of both: "pre-stretch 10 % / 0 %"
  QString making;   // "2 pieces, 4 knots"
  QString stencil;  // of racket and string, with their inks
  QString note;
  QString unanswered;  // which of it two people told differently, and nobody has answered yet
  QString readyBy;
  weavelog::Rush rush = weavelog::Rush::none;
  QString rushWords;  // "RUSH"; "" for none
  QString event;
  std::string code;  // what a scanner reads; empty without a number
};

// The family name; the native name where there is none.
[[nodiscard]] QString nameOnTag(const TagContent& tag);
// "A. B." of given names in alphabets that have capitals; "" otherwise.
[[nodiscard]] QString initialsOf(const std::string& given);

// "24.5 / 23.5 kg"; each with its unit where the units differ.
[[nodiscard]] QString tensionsOnTag(const TagContent& tag);
// For jobs of today's event, in their order. Jobs that are gone are left out.
[[nodiscard]] std::vector<TagContent> tagContents(const weavelog::Ledger& ledger, std::span<const weavelog::JobRow> jobs,
                                                  const weavelog::Language& language, const std::string& zone);
