#include "core/people/consent.h"

#include <algorithm>

#include "core/model/player.h"
#include "core/model/queries.h"

namespace weavelog {
namespace {

/// All answers that stand, usually one.
std::vector<ConsentChoice> standing_answers(const Ledger& ledger, const BookId& book) {
  std::vector<ConsentChoice> answers;
  for (const OpenQuestion& question : ledger.open_questions(book)) {
    if (question.cell.tag != tag_of<Person>(&Person::consent)) continue;
    for (const CellValue& held : question.cell.values) {
      answers.push_back(ConsentChoice::unsaid);
      from_value(held.value, answers.back());
    }
  }
  if (answers.empty()) {
    if (const auto row = find_player(ledger, book)) answers.push_back(row->consent);
  }
  return answers;
}

bool given_at(const Ledger& ledger, const BookId& book, const BookId& room) {
  const ConsentGiven* newest = nullptr;
  std::vector<ConsentGiven> all;
  for (const EntityState& state : ledger.entities(book, kConsentGiven))
    all.push_back(from_state<ConsentGiven>(state));
  for (const ConsentGiven& given : all)
    if (given.choice == ConsentChoice::this_room &&
        (newest == nullptr || given.at.value_or(0) >= newest->at.value_or(0)))
      newest = &given;
  return newest != nullptr && newest->event && newest->event == room;
}

}  // namespace

bool may_cross(const Ledger& ledger, const BookId& book, BookKind kind, const BookId& room) {
  if (kind == kKitBook) return false;
  if (kind != kPlayerBook) return true;
  const auto answers = standing_answers(ledger, book);
  const auto said = [&](ConsentChoice choice) {
    return std::find(answers.begin(), answers.end(), choice) != answers.end();
  };
  if (said(ConsentChoice::withdrawn)) return false;
  return !said(ConsentChoice::this_room) || given_at(ledger, book, room);
}

}  // namespace weavelog
