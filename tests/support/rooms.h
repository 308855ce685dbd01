#pragma once
// Ledgers with Weavelog's own model and tables, and short cuts for what tests do all the time.

#include <catch2/catch.hpp>
#include <memory>

#include "core/model/event.h"
#include "core/model/fields.h"
#include "core/model/player.h"
#include "core/model/tables.h"
#include "core/store/ledger.h"

namespace weavelog::testing {

/// 2031-05-26T10:00:00Z
inline constexpr UnixMs kMonday = 1'937'556'000'000;
inline constexpr UnixMs kMinute = 60'000;
inline constexpr UnixMs kHour = 60 * kMinute;
inline constexpr UnixMs kDay = 24 * kHour;

/// Takes the value out of an outcome, or fails the test with its fault.
template <class T>
T must(Outcome<T> outcome) {
  if (!outcome) FAIL(outcome.error().message());
  return std::move(*outcome);
}

/// One tablet of a stringing room.
struct Tablet {
  ManualClock clock{kMonday};
  std::unique_ptr<Ledger> ledger;

  explicit Tablet(const std::string& name, const std::filesystem::path& file = ":memory:") {
    LedgerOptions options;
    options.file = file;
    options.registry = &model_registry();
    options.clock = &clock;
    options.device_name = name;
    options.projections.push_back(std::make_shared<ModelTables>());
    ledger = must(Ledger::open(std::move(options)));
  }

  Committed append(const Draft& draft) {
    clock.advance(1000);
    return must(ledger->append(draft));
  }
  Committed append(const Outcome<Draft>& draft) {
    if (!draft) FAIL(draft.error().message());
    return append(*draft);
  }

  /// A player with a name and nothing else.
  BookId add_player(const std::string& family, const std::string& given, const std::string& native = {}) {
    const BookId book = ledger->create_book_id();
    Draft draft(book, kPlayerBook, kActNewPlayer);
    Person person;
    person.family_name = family;
    person.given_name = given;
    person.native_name = native;
    (void)put_new(draft, person, clock.now());
    append(draft);
    return book;
  }

  /// Writes a new entity in an action of its own.
  template <class S>
  EntityId add(const BookId& book, const S& wanted, BookKind kind = kPlayerBook) {
    Draft draft(book, kind, kActEdit);
    const EntityState fresh = put_new(draft, wanted, clock.now());
    append(draft);
    return fresh.id;
  }

  /// Changes an entity as this tablet sees it now.
  template <class S, class Change>
  Committed change(const BookId& book, const EntityId& id, Change&& change) {
    const auto state = ledger->entity(book, id);
    REQUIRE(state);
    S now = from_state<S>(*state);
    change(now);
    Draft draft(book, kPlayerBook, kActEdit);
    put_changes(draft, *state, now);
    return append(draft);
  }
};

/// Both tablets hold what either had of the book.
inline void meet(Tablet& a, Tablet& b, const BookId& book) {
  const auto forth = a.ledger->missing(book, b.ledger->heads(book), 1 << 30);
  const auto back = b.ledger->missing(book, a.ledger->heads(book), 1 << 30);
  (void)must(b.ledger->ingest(forth, 0));
  (void)must(a.ledger->ingest(back, 0));
}

[[nodiscard]] inline Quantity said(const char* amount, Unit unit) {
  return {must(Decimal::parse(amount)), unit};
}
[[nodiscard]] inline Quantity kg(const char* amount) {
  return said(amount, Unit::kilogram_force);
}
[[nodiscard]] inline Quantity lb(const char* amount) {
  return said(amount, Unit::pound_force);
}
[[nodiscard]] inline Quantity mm(const char* amount) {
  return said(amount, Unit::millimetre);
}

/// A complete wish in invented strings.
[[nodiscard]] inline Agreed day_wish() {
  Agreed wish;
  wish.mains_string = "Tarnbrook Silk";
  wish.mains_gauge = mm("1.25");
  wish.mains_supply = Supply::reel;
  wish.mains_owner = StringOwner::player;
  wish.mains_tension = kg("25");
  wish.mains_prestretch = said("10", Unit::percent);
  wish.crosses_string = "Velmora Round";
  wish.crosses_gauge = mm("1.23");
  wish.crosses_supply = Supply::set;
  wish.crosses_owner = StringOwner::room;
  wish.crosses_tension = kg("24");
  wish.crosses_prestretch = said("0", Unit::percent);
  wish.pieces = 2;
  wish.knots = 4;
  wish.racket_stencil = "open ring";
  wish.racket_ink = "red";
  wish.string_stencil = "bar";
  wish.string_ink = "black";
  wish.dampener = "round";
  wish.overgrip = "white";
  wish.note = "knots to the outside";
  return wish;
}

}  // namespace weavelog::testing
