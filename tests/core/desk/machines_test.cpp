#include "core/desk/machines.h"

#include <catch2/catch.hpp>

#include "core/base/local_time.h"
#include "core/desk/event_book.h"
#include "core/desk/stages.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {


struct Shop : Desk {
  Shop() { append(new_event(event, {"Harbour Open", "", "2031-05-26", "2031-06-08", "Europe/Lisbon", "EUR", {}}, clock.now())); }
  EntityId machine(const std::string& name, std::optional<std::int64_t> every = {}) {
    Machine wanted;
    wanted.name = name;
    wanted.kind = MachineKind::constant_pull;
    wanted.max_tension = kg("40");
    wanted.clean_every = every;
    append(add_machine(event, load_machines(*ledger, event), wanted, clock.now()));
    return load_machines(*ledger, event).back().id();
  }
  void care(const EntityId& id, CareKind what, const std::string& note = {}) {
    MachineCare done;
    done.machine = id;
    done.what = what;
    done.by = "Mara";
    done.note = note;
    append(note_care(event, done, clock.now()));
  }
  [[nodiscard]] MachineNow now(const EntityId& id) const {
    for (auto& one : event_machines(*ledger, event, "Europe/Lisbon", clock.now()))
      if (one.machine.id() == id) return one;
    FAIL("no such machine");
    return {};
  }
  void mount(const BookId& book, const EntityId& on) {
    const auto record = load(book);
    for (const auto& job : record.jobs) {
      const EntityId id = job.id();
      append(take_step(load(book), std::span(&id, 1), StageStep{Stage::on_machine, "Mara", {}, clock.now(), on}));
    }
  }
};

}  // namespace

TEST_CASE("clamps are due after so many rackets, and not once they were cleaned") {
  Shop shop;
  const EntityId machine = shop.machine("1", 3);
  shop.mount(shop.first_drop_off(2), machine);
  CHECK(shop.now(machine).strung == 2);
  CHECK_FALSE(shop.now(machine).cleaning_due);
  shop.mount(shop.first_drop_off(1), machine);
  CHECK(shop.now(machine).cleaning_due);
  shop.clock.advance(kMinute);
  shop.care(machine, CareKind::clamps_cleaned);
  CHECK(shop.now(machine).strung == 0);
  CHECK_FALSE(shop.now(machine).cleaning_due);
}

TEST_CASE("clamps without a count are due in the evening of a day on which the machine was used") {
  Shop shop;
  const EntityId used = shop.machine("by the window"), idle = shop.machine("spare");
  shop.mount(shop.first_drop_off(1), used);
  const LocalTime local("Europe/Lisbon");
  const UnixMs evening = local.begin_of(local.day_of(shop.clock.now())) + 18 * kHour;
  shop.clock.set(evening - kMinute);
  CHECK_FALSE(shop.now(used).cleaning_due);
  shop.clock.set(evening);
  CHECK(shop.now(used).cleaning_due);
  CHECK_FALSE(shop.now(idle).cleaning_due);
  shop.care(used, CareKind::clamps_cleaned);
  CHECK_FALSE(shop.now(used).cleaning_due);
}

TEST_CASE("a machine is out of order until somebody says that it is back, by the times that were told") {
  Shop shop;
  const EntityId machine = shop.machine("1");
  shop.care(machine, CareKind::out_of_order, "a clamp slips");
  CHECK(shop.now(machine).out_of_order->note == "a clamp slips");
  const auto refused = require_in_order(shop.now(machine));
  REQUIRE_FALSE(refused);
  CHECK(refused.error().code == FaultCode::refused);
  CHECK(refused.error().what.find("a clamp slips") != std::string::npos);
  shop.clock.advance(kHour);
  shop.care(machine, CareKind::back_in_order);
  CHECK_FALSE(shop.now(machine).out_of_order);
  CHECK(require_in_order(shop.now(machine)));
}

TEST_CASE("a calibration tells how far the gauge was from what was set") {
  Shop shop;
  const EntityId machine = shop.machine("1");
  MachineCare reading;
  reading.machine = machine;
  reading.what = CareKind::calibrated;
  reading.by = "Joren";
  CHECK(note_care(shop.event, reading, 1).error().code == FaultCode::bad_input);
  reading.asked = kg("25");
  reading.read = kg("24.5");
  shop.append(note_care(shop.event, reading, shop.clock.now()));
  CHECK(shop.now(machine).off_per_mille() == -20);
  reading.read = Quantity{Decimal::parse("249.0889").value(), Unit::newton};  // 25.4 kgf: 25.4 x 9.80665 N (CGPM 1901)
  shop.clock.advance(kMinute);
  shop.append(note_care(shop.event, reading, shop.clock.now()));
  CHECK(shop.now(machine).off_per_mille() == 16);
  CHECK(shop.ledger->verify().faults.empty());
}

TEST_CASE("what is said of a machine is checked") {
  Shop shop;
  (void)shop.machine("By the window");
  const auto held = load_machines(*shop.ledger, shop.event);
  const auto code_of = [&](const Machine& machine) {
    const auto draft = add_machine(shop.event, held, machine, 1);
    return draft ? std::optional<FaultCode>() : std::optional(draft.error().code);
  };
  Machine machine;
  machine.name = "2";
  machine.kind = MachineKind::lockout;
  CHECK_FALSE(code_of(machine));
  for (const auto& wrong : std::vector<std::function<void(Machine&)>>{
           [](Machine& m) { m.name = " "; }, [](Machine& m) { m.name = "by the WINDOW"; }, [](Machine& m) { m.kind = MachineKind::unsaid; },
           [](Machine& m) { m.max_tension = Quantity{Decimal::parse("3").value(), Unit::metre}; }, [](Machine& m) { m.max_tension = kg("0"); },
           [](Machine& m) { m.prestretch = "0 10 21"; }, [](Machine& m) { m.prestretch = "ten"; }, [](Machine& m) { m.clean_every = 0; }}) {
    Machine bad = machine;
    wrong(bad);
    CHECK(code_of(bad) == FaultCode::bad_input);
  }
  CHECK(prestretches_from("20, 0 10 10%").value() == std::vector<std::int64_t>{0, 10, 20});
  Machine renamed = held.front().now;
  renamed.name = "by the door";
  shop.append(change_machine(shop.event, held, held.front(), renamed));
  CHECK(load_machines(*shop.ledger, shop.event).front().now.name == "by the door");
}

TEST_CASE("what speaks against a machine is said in words, and nothing where nothing does") {
  Machine machine;
  machine.max_tension = kg("26");
  machine.prestretch = "0 10 20";
  const Language english = *Language::from("en");
  Agreed agreed;
  agreed.mains_tension = kg("25");
  agreed.mains_prestretch = Quantity{{10, 0}, Unit::percent};
  CHECK(machine_doubts(english, machine, agreed).empty());
  agreed.crosses_tension = Quantity{{59, 0}, Unit::pound_force};  // 26.76 kg: 1 lb is 0.45359237 kg by definition
  agreed.crosses_prestretch = Quantity{{15, 0}, Unit::percent};
  const auto doubts = machine_doubts(english, machine, agreed);
  REQUIRE(doubts.size() == 2);
  CHECK(doubts[0].find("59") != std::string::npos);
  CHECK(doubts[1].find("0, 10, 20") != std::string::npos);
  CHECK(machine_doubts(*Language::from("de"), machine, agreed)[0].find("Hersteller") != std::string::npos);
  // Of a machine of which nothing is known nothing is said.
  CHECK(machine_doubts(english, Machine{}, agreed).empty());
}

TEST_CASE("the usual machine is the one used last, one's own, or the only one, and never one that is out of order") {
  Shop shop;
  const auto usual = [&](const std::string& by) {
    return usual_machine(*shop.ledger, shop.event, event_machines(*shop.ledger, shop.event, "Europe/Lisbon", shop.clock.now()), by);
  };
  CHECK_FALSE(usual("Mara"));
  const EntityId first = shop.machine("1");
  CHECK(usual("Mara") == first);
  const EntityId second = shop.machine("2");
  CHECK_FALSE(usual("Mara"));
  shop.mount(shop.first_drop_off(1), second);
  CHECK(usual("Mara") == second);
  CHECK_FALSE(usual("Ruud"));
  shop.clock.advance(kMinute);
  shop.mount(shop.first_drop_off(1), first);
  CHECK(usual("Mara") == first);
  shop.care(first, CareKind::out_of_order, "a clamp slips");
  CHECK_FALSE(usual("Mara"));
  CHECK(usual("Ruud") == second);
}
