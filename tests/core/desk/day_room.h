#pragma once
// A room with stringers, machines and shifts on an invented Monday, into which rackets are brought.

#include "core/base/iso_time.h"
#include "core/desk/machines.h"
#include "core/desk/room_day.h"
#include "core/desk/shifts.h"
#include "core/desk/stages.h"
#include "tests/core/desk/desk_room.h"

namespace weavelog::testing {

struct DayRoom : Desk {
  std::int64_t tag = 0;

  explicit DayRoom(const std::string& name = "head") : Desk(name) {}

  void open(std::initializer_list<const char*> stringers = {"Merrin", "Odalys"}) {
    append(new_event(event, {"Harbour Open", "", "2031-05-26", "2031-06-08", "Europe/Lisbon", "EUR", {}}, clock.now()));
    for (const char* name : stringers) {
      TeamMember one;
      one.name = name;
      one.role = TeamRole::stringer;
      append(put_team_member(must(load_event(*ledger, event)), one, clock.now()));
      Machine machine;
      machine.name = std::string("machine of ") + name;
      machine.kind = MachineKind::constant_pull;
      machine.whose = name;
      append(add_machine(event, load_machines(*ledger, event), machine, clock.now()));
    }
  }
  [[nodiscard]] UnixMs at(const char* time) const { return must(moment_from(std::string("2031-05-26T") + time, "Europe/Lisbon", 0)); }
  [[nodiscard]] EntityId member(const std::string& name) const {
    for (const auto& one : must(load_event(*ledger, event)).team)
      if (one.now.name == name) return one.id();
    FAIL("nobody is called " << name);
    return {};
  }
  void shift(const char* name, const char* from, const char* until) {
    Shift one;
    one.member = member(name);
    one.from = at(from);
    one.until = at(until);
    append(add_shift(must(load_event(*ledger, event)), one, clock.now()));
  }
  struct Brought {
    BookId player;
    EntityId job;
  };
  Brought bring(const char* family, std::optional<UnixMs> ready_by, Rush rush = Rush::none) {
    const BookId book = ledger->create_book_id();
    const PlayerRecord nobody = record_of(book, {}, {});
    auto request = first_request(1);
    request.new_person->family_name = family;
    request.drop_off.ready_by = ready_by;
    request.drop_off.rush = rush;
    request.lines[0].tag_number = ++tag;
    append(drop_off(nobody, request, read_back_of(nobody, request), "Mara"));
    return {book, load(book).jobs.at(0).id()};
  }
  void step(const Brought& one, Stage to, const std::string& by) {
    StageStep step;
    step.to = to;
    step.by = by;
    step.at = clock.now();
    append(take_step(load(one.player), std::vector{one.job}, step));
  }
  [[nodiscard]] RoomDay day() const { return must(RoomDay::make(*ledger, event, clock.now())); }
};

}  // namespace weavelog::testing
