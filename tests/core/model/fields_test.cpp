#include "core/model/fields.h"

#include <catch2/catch.hpp>
#include <set>

#include "core/model/bench.h"
#include "core/model/link.h"
#include "core/model/list_step.h"
#include "core/model/photo.h"
#include "tests/support/rooms.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// Some value for every kind of member, different from "no value".
struct Fill {
  int n = 1;
  void operator()(std::string& member) { member = "text " + std::to_string(n++); }
  void operator()(Bytes& member) { member = {1, static_cast<std::uint8_t>(n++)}; }
  void operator()(std::optional<Quantity>& member) {
    member = Quantity{{240 + n++, 1}, Unit::kilogram_force};
  }
  void operator()(std::optional<std::int64_t>& member) { member = n++; }
  void operator()(std::optional<bool>& member) { member = false; }
  template <class Tag>
  void operator()(Id<Tag>& member) {
    member.bytes[0] = static_cast<std::uint8_t>(n++);
  }
  template <class Enum>
  requires std::is_enum_v<Enum>
  void operator()(Enum& member) { member = static_cast<Enum>(1); }
};

template <class S>
S filled() {
  S out;
  Fill fill;
  for_each_field<S>([&](FieldTag, std::string_view, bool, auto member) { fill(out.*member); });
  return out;
}

EntityState stored(const Draft& draft, EntityState state) {
  std::uint32_t index = 0;
  for (const Write& write : draft.writes()) state.apply(write, Dot{AuthorId{{1}}, 1, index++}, Stamp{7});
  return state;
}

/// Outside the visitor: a check inside it would be compiled once for every kind of member of every struct.
void check_registered(FieldTag tag, std::string_view name, bool guarded, EntityKind kind, std::uint32_t base) {
  const FieldInfo* info = model_registry().find(tag);
  REQUIRE(info != nullptr);
  CHECK(info->name == name);
  CHECK(info->guarded == guarded);
  CHECK(info->entity == kind);
  // A hundred numbers a kind.
  CHECK(static_cast<std::uint32_t>(tag) / 100 == base / 100);
}

}  // namespace

TEMPLATE_TEST_CASE("every field of a struct survives being put and loaded", "", Person, Racket, Setup,
                   DropOff, Job, StageMark, ConsentGiven, EventInfo, TeamMember, EntryListItem, Price, BenchRecord, CheckResult, Reading, Photo, ListStep, BookLink, OtherName) {
  const auto wanted = filled<TestType>();
  Draft draft(BookId{{9}}, kPlayerBook, kActEdit);
  const EntityState state = stored(draft, put_new(draft, wanted, kMonday));
  // put_new gives the state before its writes; they are applied here as the ledger would.
  const EntityState after = stored(draft, state);
  CHECK(from_state<TestType>(after) == wanted);
  CHECK(compare(wanted, from_state<TestType>(after)).empty());

  std::size_t fields = 0;
  for_each_field<TestType>([&](FieldTag tag, std::string_view name, bool guarded, auto) {
    ++fields;
    check_registered(tag, name, guarded, Described<TestType>::kind, Described<TestType>::base);
  });
  CHECK(draft.writes().size() == fields);
  CHECK(compare(TestType{}, wanted).size() == fields);

  Draft again(BookId{{9}}, kPlayerBook, kActEdit);
  put_changes(again, after, wanted);
  CHECK(again.empty());
  put_changes(again, after, TestType{});
  CHECK(again.writes().size() == fields);
  for (const Write& write : again.writes()) CHECK(is_cleared(write.value));
}

TEST_CASE("field tags are stored and sent, so they never change") {
  // One line a field, appended to when a field is added; a changed line here is a broken database somewhere.
  const std::pair<FieldTag, std::uint32_t> known[] = {
      {tag_of<Person>(&Person::family_name), 101},
      {tag_of<Person>(&Person::consent), 111},
      {tag_of<Racket>(&Racket::label), 201},
      {tag_of<Racket>(&Racket::pieces_needed), 210},
      {tag_of<Setup>(&Setup::name), 301},
      {tag_of<Setup>(&Agreed::mains_string), 321},
      {tag_of<Setup>(&Agreed::mains_tension), 325},
      {tag_of<Setup>(&Agreed::crosses_tension), 335},
      {tag_of<Setup>(&Agreed::note), 363},
      {tag_of<DropOff>(&DropOff::event), 401},
      {tag_of<DropOff>(&DropOff::confirmed_digest), 422},
      {tag_of<Job>(&Job::drop_off), 501},
      {tag_of<Job>(&Job::tag_number), 509},
      {tag_of<Job>(&Job::time_agreed_by), 510},
      {tag_of<Job>(&Agreed::mains_tension), 525},
      {tag_of<Job>(&Agreed::string_ink), 554},
      {tag_of<StageMark>(&StageMark::stage), 602},
      {tag_of<ConsentGiven>(&ConsentGiven::choice), 701},
      {tag_of<BookLink>(&BookLink::other), 1301},
      {tag_of<BookLink>(&BookLink::by), 1304},
      {tag_of<OtherName>(&OtherName::family_name), 1401},
      {tag_of<OtherName>(&OtherName::by), 1406},
      {tag_of<EventInfo>(&EventInfo::name), 2001},
      {tag_of<EventInfo>(&EventInfo::keep_days), 2007},
      {tag_of<TeamMember>(&TeamMember::device), 2105},
      {tag_of<EntryListItem>(&EntryListItem::player), 2211},
      {tag_of<Price>(&Price::amount_minor), 2302},
  };
  for (const auto& [tag, number] : known) CHECK(static_cast<std::uint32_t>(tag) == number);
}

TEST_CASE("what a player agrees to is guarded, what is said by the way is not") {
  const std::set<std::string_view> open{
      "mains_supply", "mains_owner", "crosses_supply", "crosses_owner", "dampener", "overgrip", "note"};
  for_each_field<Agreed>([&](FieldTag, std::string_view name, bool guarded, auto) {
    CAPTURE(name);
    CHECK(guarded == !open.contains(name));
  });
  CHECK(model_registry().guarded(tag_of<Person>(&Person::consent)));
}

TEST_CASE("a choice of a newer version is kept, one that does not fit is left unsaid") {
  EntityState state = new_entity(BookId{{9}}, kStageMark, kMonday);
  const auto put = [&](std::int64_t number) {
    Draft draft(state.book, kPlayerBook, kActEdit);
    draft.put(state, tag_of<StageMark>(&StageMark::stage), Value{number});
    return from_state<StageMark>(stored(draft, state)).stage;
  };
  CHECK(put(9) == Stage::ready);
  CHECK(static_cast<int>(put(77)) == 77);
  CHECK(name_of_choice(put(77)).empty());
  CHECK(put(256 + 9) == Stage::none);
  CHECK(put(-1) == Stage::none);
  CHECK(choice_from<Stage>("on_machine") == Stage::on_machine);
  CHECK_FALSE(choice_from<Stage>("flying"));
}

TEST_CASE("every action has a name") {
  for (std::uint16_t n = 1; n <= 14; ++n) CHECK_FALSE(name_of(ActionKind{n}).empty());
  CHECK(name_of(ActionKind{999}).empty());
}
