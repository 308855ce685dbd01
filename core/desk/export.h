#pragma once
// All that is held on a player or an event, for people and other programs: JSON (RFC 8259) and CSV (RFC
// 4180).
//
// Times are ISO 8601 in UTC, quantities {"amount": "24.5", "unit": "kg"} with the digits as spoken, choices
// by name, identifiers and digests in hexadecimal, fields without a value left out.

#include <span>
#include <string>
#include <vector>

#include "core/desk/player_record.h"
#include "core/log/entry.h"
#include "core/model/event.h"

namespace weavelog {

/// Lines of one event's book that are about a player.
struct EventHolding {
  BookId event;
  std::string name;
  std::vector<EntityState> entities;
};
/// Every line of every event held here that names the player's book or a job in it. Walks over all events.
[[nodiscard]] std::vector<EventHolding> held_in_events(const Ledger& ledger, const PlayerRecord& record);

/// One action as it was written into a book.
struct WrittenEntry {
  AuthorId author;
  std::string device;  ///< that wrote it, as it calls itself
  Entry entry;
};
/// Everything that was ever written into the book and is held here, in the order of its stamps. Reads every entry.
[[nodiscard]] std::vector<WrittenEntry> written_entries(const Ledger& ledger, const BookId& book);

/// {"format": "weavelog-player", "version": 1, "book", "person", "rackets", "setups", "drop_offs", "jobs"
/// (each with "stage" and "marks"), "consents", "findings", "benches", "checks", "readings", "photos", "links", "other_names",
/// "cards", "open_questions", "events", "entries"}; what events hold about the player stands under "events", one object an event: {"book", "name"} and those
/// lists of its export in which the player occurs ("entries", "charges", ...). The entries at the end hold what was written, earlier answers too:
/// {"at", "device", "author", "number", "action", "writes": [{"entity", "kind", "field", "value"}]}, a value that was taken away without "value".
[[nodiscard]] std::string player_json(const PlayerRecord& record, std::span<const EventHolding> events = {}, std::span<const WrittenEntry> entries = {});
/// {"format": "weavelog-event", "version": 1, "book", "event", "team", "entries", "prices", "lists"} out of the
/// entities of one event book.
[[nodiscard]] std::string event_json(const BookId& book, std::span<const EntityState> entities);
/// One row a job, oldest first: time, event, tag, racket, everything agreed, stage.
[[nodiscard]] std::string job_history_csv(const PlayerRecord& record);

}  // namespace weavelog
