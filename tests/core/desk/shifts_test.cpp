#include "core/desk/shifts.h"

#include <catch2/catch.hpp>

#include "core/base/iso_time.h"
#include "core/base/local_time.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

const std::string kZone = "Europe/Lisbon";

struct Team : Desk {
  Team() {
    append(new_event(event, {"Harbour Open", "", "2031-05-26", "2031-06-08", kZone, "EUR", {}}, clock.now()));
    for (const char* name : {"Mara", "Joren"}) {
      TeamMember member;
      member.name = name;
      append(put_team_member(record(), member, clock.now()));
    }
  }
  [[nodiscard]] EventRecord record() const { return must(load_event(*ledger, event)); }
  [[nodiscard]] EntityId member(std::size_t i) const { return record().team.at(i).id(); }
  [[nodiscard]] static std::int64_t at(const char* local) { return must(moment_from(local, kZone, 0)); }
  void shift(std::size_t who, const char* from, const char* until) {
    append(add_shift(record(), Shift{member(who), at(from), at(until), {}}, clock.now()));
  }
  [[nodiscard]] std::vector<ShiftWarning> warnings() const { return shift_warnings(load_shifts(*ledger, event), kZone); }
};

}  // namespace

TEST_CASE("who is here is told by the shifts that cover the moment") {
  Team team;
  team.shift(0, "2031-05-26T08:00", "2031-05-26T16:00");
  team.shift(1, "2031-05-26T14:00", "2031-05-27T01:00");
  const auto shifts = load_shifts(*team.ledger, team.event);
  CHECK(present_at(shifts, Team::at("2031-05-26T08:00")) == std::vector{team.member(0)});
  CHECK(present_at(shifts, Team::at("2031-05-26T15:00")).size() == 2);
  CHECK(present_at(shifts, Team::at("2031-05-26T16:00")) == std::vector{team.member(1)});
  CHECK(present_at(shifts, Team::at("2031-05-27T01:00")).empty());
  team.append(remove_shift(team.event, shifts.front()));
  CHECK(load_shifts(*team.ledger, team.event).size() == 1);
}

TEST_CASE("a day of more than twelve hours is warned of, also in pieces, past midnight, and never twice for one hour") {
  Team team;
  team.shift(0, "2031-05-26T08:00", "2031-05-26T20:00");
  CHECK(team.warnings().empty());
  team.shift(0, "2031-05-26T19:00", "2031-05-26T20:00");  // lies in the first
  CHECK(team.warnings().empty());
  team.shift(0, "2031-05-26T21:00", "2031-05-26T22:00");
  team.shift(1, "2031-05-26T14:00", "2031-05-27T02:30");
  const auto warnings = team.warnings();
  REQUIRE(warnings.size() == 2);
  CHECK(warnings[0].kind == ShiftWarning::Kind::long_day);
  CHECK(warnings[0].member == team.member(0));
  CHECK(warnings[0].length == 13 * kHour);
  CHECK(warnings[1].member == team.member(1));
  CHECK(warnings[1].length == 12 * kHour + 30 * kMinute);
  CHECK(date_text(warnings[1].day) == "2031-05-26");
}

// Directive 2003/88/EC, article 3: eleven consecutive hours of rest in every 24.
TEST_CASE("less than eleven hours between two days are warned of") {
  Team team;
  team.shift(0, "2031-05-26T12:00", "2031-05-26T22:00");
  team.shift(0, "2031-05-27T09:00", "2031-05-27T12:00");
  CHECK(team.warnings().empty());
  team.shift(0, "2031-05-27T13:00", "2031-05-27T21:30");
  team.shift(0, "2031-05-28T08:00", "2031-05-28T12:00");
  const auto warnings = team.warnings();
  REQUIRE(warnings.size() == 1);
  CHECK(warnings[0].kind == ShiftWarning::Kind::short_rest);
  CHECK(warnings[0].length == 10 * kHour + 30 * kMinute);
  CHECK(date_text(warnings[0].day) == "2031-05-28");
}

// Europe/Lisbon puts its clocks forward at 01:00 on the last Sunday of March (Directive 2000/84/EC): 2031-03-30.
TEST_CASE("hours are counted as they pass, not as clocks show them") {
  Team team;
  team.shift(0, "2031-03-29T14:00", "2031-03-30T03:00");  // thirteen on the clock, twelve that pass
  CHECK(team.warnings().empty());
}

TEST_CASE("what is no shift is refused") {
  Team team;
  const auto code = [&](const Shift& shift) { return add_shift(team.record(), shift, 1).error().code; };
  CHECK(code({EntityId{}, 1, 2, {}}) == FaultCode::not_found);
  CHECK(code({team.member(0), {}, 2, {}}) == FaultCode::bad_input);
  CHECK(code({team.member(0), 5, 5, {}}) == FaultCode::bad_input);
  CHECK(code({team.member(0), 0, 37 * kHour, {}}) == FaultCode::bad_input);
  CHECK(code({team.member(0), -5, INT64_MAX, {}}) == FaultCode::bad_input);
}
