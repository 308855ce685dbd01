#include "core/people/consent.h"

#include <algorithm>

#include "core/model/linked.h"
#include "core/model/player.h"
#include "core/model/queries.h"
#include "core/model/stage_now.h"
#include "core/store/database.h"

namespace weavelog {
namespace {

/// All answers that stand, usually one.
std::vector<ConsentChoice> standing_answers(const Ledger& ledger, const BookId& book) {
  std::vector<ConsentChoice> answers;
  // Asked for every book that changed, at every comparison; that there are several answers is rare.
  bool open = false;
  ledger.read([&](Connection& db) {
    SQLite::Statement& query = db.statement(
        "SELECT (SELECT consent FROM model_player WHERE book=?1), "
        "EXISTS(SELECT 1 FROM question q JOIN book b ON b.n=q.book WHERE b.id=?1 AND q.tag=?2)");
    bind_blob(query, 1, book.bytes);
    query.bind(2, static_cast<std::int64_t>(tag_of<Person>(&Person::consent)));
    query.executeStep();
    open = query.getColumn(1).getInt() != 0;
    if (!open && !query.getColumn(0).isNull()) answers.push_back(static_cast<ConsentChoice>(query.getColumn(0).getInt()));
  });
  if (!open) return answers;
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

std::vector<ConsentGiven> given(const Ledger& ledger, const BookId& book) {
  std::vector<ConsentGiven> out;
  for (const EntityState& state : ledger.entities(book, kConsentGiven))
    if (exists(state)) out.push_back(from_state<ConsentGiven>(state));
  return out;
}

/// Was "this room" said last at this one?
bool this_room_is(const Ledger& ledger, const BookId& book, const BookId& room) {
  BookId said;
  std::int64_t newest = INT64_MIN;
  for (const ConsentGiven& one : given(ledger, book))
    if (one.choice == ConsentChoice::this_room && one.at.value_or(0) >= newest) {
      newest = one.at.value_or(0);
      said = one.event;
    }
  return said && said == room;
}

/// Named in the entry list, by whichever of a person's books, or seen there: with a racket strung, or asked for consent.
bool is_at(const Ledger& ledger, const BookId& book, const BookId& event) {
  if (at_event(ledger, book, event)) return true;
  const LinkedBooks linked = linked_books(ledger, book);
  for (const auto* books : {&linked.here, &linked.elsewhere})
    for (const BookId& other : *books)
      if (other != book && is_entered(ledger, other, event)) return true;
  const auto all = given(ledger, book);
  return std::any_of(all.begin(), all.end(), [&](const ConsentGiven& one) { return one.event == event; });
}

}  // namespace

Crossing crossing(const Ledger& ledger, const BookId& book, BookKind kind, const BookId& room, bool entered) {
  if (kind == kKitBook) return Crossing::private_kit;
  if (kind != kPlayerBook) return Crossing::may;
  const auto answers = standing_answers(ledger, book);
  const auto said = [&](ConsentChoice choice) {
    return std::find(answers.begin(), answers.end(), choice) != answers.end();
  };
  if (said(ConsentChoice::withdrawn)) return Crossing::withdrew;
  if (said(ConsentChoice::this_room) && !this_room_is(ledger, book, room)) return Crossing::other_room;
  const bool by_event = said(ConsentChoice::events_entered) || said(ConsentChoice::unsaid);
  if (!room || entered || !by_event || is_at(ledger, book, room)) return Crossing::may;
  // A new player of whom nothing else is known is where this is written down.
  if (!said(ConsentChoice::events_entered) && !had_rackets_strung(ledger, book)) return Crossing::may;
  return Crossing::not_entered;
}

bool may_cross(const Ledger& ledger, const BookId& book, BookKind kind, const BookId& room, bool entered) {
  return crossing(ledger, book, kind, room, entered) == Crossing::may;
}

bool may_stay(const Ledger& ledger, const BookId& book, BookKind kind, const BookId& room, bool settled) {
  const Crossing said = crossing(ledger, book, kind, room);
  return said == Crossing::may || (!settled && said == Crossing::not_entered);
}

std::uint64_t crossing_mark(const Ledger& ledger, const BookId& room) {
  // FNV-1a: a change that it misses would only wait for the next one.
  std::uint64_t mark = 14695981039346656037ULL;
  const auto take = [&](ByteView bytes) {
    for (const std::uint8_t byte : bytes) mark = (mark ^ byte) * 1099511628211ULL;
  };
  for (const BookId& player : entered_players(ledger, room)) take(player.bytes);
  for (const SaidLink& link : said_links(ledger)) {
    take(link.book.bytes);
    take(link.other.bytes);
    mark = (mark ^ static_cast<std::uint64_t>(link.said)) * 1099511628211ULL;
  }
  return mark;
}

}  // namespace weavelog
