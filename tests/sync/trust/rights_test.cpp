#include "sync/trust/rights.h"

#include <catch2/catch.hpp>
#include <map>
#include <set>

#include "core/model/fields.h"

using namespace weavelog;

namespace {

constexpr Role kRoles[] = {Role::head, Role::desk, Role::stringer, Role::reader};
constexpr std::uint16_t kNewestAction = 45;

/// What each role may do in an event's book, all 45 actions and one of a later version.
const std::map<std::set<Role>, std::set<ActionKind>>& event_table() {
  static const std::map<std::set<Role>, std::set<ActionKind>> table{
      {{Role::head}, {kActNewEvent, kActTeam, kActImportPrices, kActList}},
      {{Role::head, Role::desk},
       {kActEdit, kActImportEntryList, kActCharge, kActDiscount, kActPayment, kActReverse, kActCloseDay, kActStock, kActMachine, kActShift, kActDraw,
        kActBenches, kActDayPlan}}};
  return table;
}

}  // namespace

TEST_CASE("who may write what in an event's book: every role against every action", "[trust]") {
  for (std::uint16_t number = 1; number <= kNewestAction + 1; ++number) {
    const ActionKind action{number};
    std::set<Role> may{Role::head, Role::desk, Role::stringer};
    for (const auto& [roles, actions] : event_table())
      if (actions.contains(action)) may = roles;
    for (const Role role : kRoles) {
      INFO(name_of(role) << " does action " << number);
      CHECK(may_write(role, kEventBook, action) == may.contains(role));
    }
  }
}

TEST_CASE("in players' and other books everybody but a reader may write", "[trust]") {
  for (const BookKind kind : {kPlayerBook, kKitBook, BookKind{9}})
    for (std::uint16_t number = 1; number <= kNewestAction + 1; ++number)
      for (const Role role : kRoles) CHECK(may_write(role, kind, ActionKind{number}) == (role != Role::reader));
}

TEST_CASE("a role at one event says nothing of the book of another event", "[trust]") {
  const BookId here = make_id<BookId>(1'800'000'000'000), elsewhere = make_id<BookId>(1'800'000'000'001);
  CHECK(belongs_to_room(here, here, kEventBook));
  CHECK_FALSE(belongs_to_room(here, elsewhere, kEventBook));
  CHECK(belongs_to_room(here, elsewhere, kPlayerBook));
  CHECK_FALSE(check_right(Role::stringer, here, here, kEventBook, kActTeam));
  CHECK(check_right(Role::stringer, here, elsewhere, kEventBook, kActTeam));
  const auto refused = check_right(Role::reader, here, elsewhere, kPlayerBook, kActDropOff);
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == FaultCode::refused);
  CHECK(refused.error().what.find("reader") != std::string::npos);
}
