#pragma once
// A desk at an invented event, with a drop-off ready to be made.

#include "core/desk/drop_off.h"
#include "core/desk/player_record.h"
#include "tests/support/rooms.h"

namespace weavelog::testing {

struct Desk : Tablet {
  BookId event;

  explicit Desk(const std::string& name = "desk") : Tablet(name) { event = ledger->create_book_id(); }

  [[nodiscard]] PlayerRecord load(const BookId& book) const { return must(load_player(*ledger, book)); }

  /// A new player who hands over so many new rackets with one wish.
  [[nodiscard]] DropOffRequest first_request(int rackets) const {
    DropOffRequest request;
    request.new_person = Person{};
    request.new_person->family_name = "Wendelmoor";
    request.new_person->given_name = "Ilse";
    request.drop_off.event = event;
    request.drop_off.event_name = "Harbour Open";
    request.drop_off.at = clock.now();
    request.drop_off.ready_by = clock.now() + 3 * kHour;
    request.language = Language::from("fr").value();
    request.device = ledger->self().id();
    for (int i = 1; i <= rackets; ++i) {
      DropOffLine line;
      line.made = Racket{};
      line.made->label = std::to_string(i);
      line.agreed = day_wish();
      line.keep_as = "day";
      line.tag_number = 100 + i;
      request.lines.push_back(std::move(line));
    }
    return request;
  }

  BookId first_drop_off(int rackets) {
    const BookId book = ledger->create_book_id();
    const PlayerRecord nobody = record_of(book, {}, {});
    const auto request = first_request(rackets);
    append(drop_off(nobody, request, read_back_of(nobody, request), "Mara"));
    return book;
  }
};

}  // namespace weavelog::testing
