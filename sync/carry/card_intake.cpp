#include "sync/carry/card_intake.h"

#include <algorithm>

#include "core/desk/player_record.h"
#include "core/log/derived_id.h"
#include "core/people/consent.h"
#include "core/store/database.h"

namespace weavelog {
namespace {

/// The same for every device that takes the card in.
EntityId id_of(const PlayerCard& card) { return derived_id(card.made, card.digest); }

/// What is held here of an item of the card.
EntityState held_of(const Ledger& ledger, const PlayerCard& card, const CardItem& item) {
  EntityState none;
  none.book = card.book;
  none.kind = item.kind;
  none.id = item.id;
  auto held = ledger.entity(card.book, item.id);
  if (held) return std::move(*held);
  if (item.kind != kPerson) return none;
  // A book has one person: the one that stands here is meant.
  for (EntityState& state : ledger.entities(card.book, kPerson))
    if (exists(state)) return std::move(state);
  return none;
}

std::string called(const CardItem& item) {
  if (item.kind == kSetup) return from_item<Setup>(item).name;
  return item.kind == kRacket ? from_item<Racket>(item).label : std::string();
}

std::vector<FieldTag> tags_of(EntityKind kind) {
  std::vector<FieldTag> out;
  for (const FieldInfo& field : model_registry().fields())
    if (field.entity == kind && on_cards(kind, field.tag)) out.push_back(field.tag);
  std::sort(out.begin(), out.end());
  return out;
}

const Value* value_in(const CardItem& item, FieldTag tag) {
  for (const auto& [one, value] : item.values)
    if (one == tag) return &value;
  return nullptr;
}

bool open_in(const CardItem& item, FieldTag tag) { return std::find(item.open.begin(), item.open.end(), tag) != item.open.end(); }

void weigh_item(const EntityState& ours, const CardItem& item, SaidTimes& times, std::vector<CardLine>& lines) {
  for (const FieldTag tag : tags_of(item.kind)) {
    const Cell* cell = ours.find(tag);
    const Value* theirs = value_in(item, tag);
    const bool asked_there = open_in(item, tag);
    CardLine line{item.kind, ours.id, called(item), tag, model_registry().guarded(tag), Value{}, 0, Value{}, item.changed, {}};
    if (theirs != nullptr) line.cards = *theirs;
    if (cell == nullptr) {
      if (theirs == nullptr && !asked_there) continue;
      line.verdict = asked_there ? CardVerdict::question : CardVerdict::fresh;
    } else {
      const CellValue& latest = cell->latest();
      line.ours = latest.value;
      line.ours_at = times.of(latest);
      const bool asked_here = line.guarded && cell->split();
      if (!asked_here && !asked_there && line.ours == line.cards) continue;
      if (asked_here || asked_there) {
        line.verdict = CardVerdict::question;
      } else {
        line.verdict = line.ours_at < line.cards_at ? CardVerdict::newer : CardVerdict::older;
      }
    }
    lines.push_back(std::move(line));
  }
}

}  // namespace

std::string_view name_of(CardVerdict verdict) {
  constexpr std::string_view kNames[] = {"fresh", "newer", "older", "question"};
  return kNames[static_cast<std::size_t>(verdict)];
}

std::size_t CardFindings::count(CardVerdict verdict) const {
  return static_cast<std::size_t>(std::count_if(lines.begin(), lines.end(), [&](const CardLine& line) { return line.verdict == verdict; }));
}

Outcome<CardFindings> weigh_card(const Ledger& ledger, const DeviceList& devices, const PlayerCard& card) {
  const std::string where = "player card";
  try {
    if (ledger.is_forgotten(card.book))
      return fail(FaultCode::refused, "this player withdrew and was forgotten here", where,
                  "if the player wants to be known again, begin a new book and ask for consent");
    const auto book = ledger.book(card.book);
    if (book && book->kind != kPlayerBook) return fail(FaultCode::refused, "the card speaks of a book that is no player's", where, "do not use it");
    if (book && !may_cross(ledger, card.book, kPlayerBook))
      return fail(FaultCode::refused, "the player withdrew, or agreed to one room only", where, "ask the player and record the answer first");
    CardFindings out;
    out.signer = known_as(ledger, devices, card.key);
    if (out.signer == KnownAs::revoked)
      return fail(FaultCode::refused, "the card is whole, but was signed by \"" + card.device + "\", which was revoked here", where,
                  "ask the player, or somebody else for a card");
    out.held = book.has_value();
    out.ahead = card.made > ledger.wall().now() + HybridClock::kTooFarAhead;
    if (const auto before = ledger.entity(card.book, id_of(card))) out.taken = card.made;
    SaidTimes times(ledger, card.book);
    for (const CardItem& item : card.items) {
      const EntityState ours = held_of(ledger, card, item);
      if (ours.kind == item.kind) weigh_item(ours, item, times, out.lines);
    }
    return out;
  } catch (const SQLite::Exception& error) {
    return fail(fault_of(error, "the ledger"));
  }
}

Outcome<Draft> take_card(const Ledger& ledger, const DeviceList& devices, const PlayerCard& card, bool accept_newer) {
  const auto findings = weigh_card(ledger, devices, card);
  if (!findings) return fail(findings.error());
  Draft draft(card.book, kPlayerBook, kActTakeCard);
  try {
    SaidTimes times(ledger, card.book);
    for (const CardItem& item : card.items) {
      const EntityState ours = held_of(ledger, card, item);
      if (ours.kind != item.kind) continue;
      std::vector<CardLine> lines;
      weigh_item(ours, item, times, lines);
      for (CardLine& line : lines)
        if (line.verdict == CardVerdict::fresh || (line.verdict == CardVerdict::newer && accept_newer))
          draft.put(ours, line.tag, std::move(line.cards));
    }
    EntityState before;
    before.book = card.book;
    before.kind = kCardTaken;
    before.id = id_of(card);
    if (findings->taken) before = ledger.entity(card.book, before.id).value_or(before);
    CardTaken note;
    note.made_at = card.made;
    note.device = card.device;
    note.key.assign(card.key.begin(), card.key.end());
    note.digest.assign(card.digest.begin(), card.digest.end());
    put_changes(draft, before, note);
    // Said with every action that goes by the card: it tells how old the values are (SaidTimes).
    if (!draft.empty()) draft.put(before, tag_of<CardTaken>(&CardTaken::made_at), *note.made_at);
  } catch (const SQLite::Exception& error) {
    return fail(fault_of(error, "the ledger"));
  }
  return draft;
}

}  // namespace weavelog
