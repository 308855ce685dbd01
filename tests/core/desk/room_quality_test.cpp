#include "core/desk/room_quality.h"

#include <catch2/catch.hpp>

#include "core/base/csv.h"
#include "core/desk/bench.h"
#include "tests/core/desk/day_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// Scatter of about 1.5 per cent that is the same in every run.
double noise(int i) {
  static constexpr double of[] = {0.4, -1.9, 1.2, -0.6, 2.1, -1.1, 0.2, 1.6, -2.2, 0.9, -0.3, -1.4, 1.8, 0.1, -0.8, 1.3, -1.7, 0.6, 2.4, -0.1};
  return of[static_cast<std::size_t>(i) % std::size(of)];
}

struct QualityRoom : DayRoom {
  int strung = 0;

  QualityRoom() {
    open();
    clock.set(at("09:00"));
  }
  [[nodiscard]] EntityId machine(const std::string& stringer) const {
    for (const auto& one : load_machines(*ledger, event))
      if (one.now.name == "machine of " + stringer) return one.id();
    FAIL("no machine of " << stringer);
    return {};
  }
  /// One of a model, strung by somebody on somebody's machine.
  Brought string(const std::string& by, const std::string& on, const char* model = "Corvid 98") {
    const BookId book = ledger->create_book_id();
    const PlayerRecord nobody = record_of(book, {}, {});
    auto request = first_request(1);
    request.new_person->family_name = "Player" + std::to_string(++strung);
    request.lines[0].made->model = model;
    request.lines[0].tag_number = strung;
    append(drop_off(nobody, request, read_back_of(nobody, request), "Mara"));
    const Brought out{book, load(book).jobs.at(0).id()};
    StageStep mount{Stage::on_machine, by, {}, clock.now()};
    mount.machine = machine(on);
    append(take_step(load(book), std::vector{out.job}, mount));
    return out;
  }
  void read(const Brought& racket, double kilograms, Unit unit = Unit::kilogram_force_per_centimetre, const std::string& note = {}) {
    Reading reading;
    reading.what = ReadingKind::bed_stiffness;
    reading.value = Quantity{Decimal::rounded(kilograms, 2), unit};
    reading.at = clock.now();
    reading.by = "Mara";
    reading.note = note;
    append(put_reading(load(racket.player), racket.job, reading));
    clock.advance(10 * kMinute);
  }
  Brought string_and_read(const std::string& by, const std::string& on, double percent, const char* model = "Corvid 98") {
    const Brought out = string(by, on, model);
    read(out, 30 * (1 + percent / 100));
    return out;
  }
  void pull(const std::string& machine_of_whom, double set, double shown) {
    MachineCare care;
    care.machine = machine(machine_of_whom);
    care.what = CareKind::calibrated;
    care.by = "Mara";
    care.asked = Quantity{Decimal::rounded(set, 1), Unit::kilogram_force};
    care.read = Quantity{Decimal::rounded(shown, 2), Unit::kilogram_force};
    append(note_care(event, care, clock.now()));
  }
  [[nodiscard]] RoomQuality quality() const { return must(RoomQuality::make(*ledger, event)); }
};

const Language kEnglish = Language::from("en").value();

}  // namespace

TEST_CASE("a room that is even raises no alarm, and says what it can hold") {
  QualityRoom room;
  DayRoom::Brought last;
  for (int i = 0; i < 40; ++i) last = room.string_and_read(i % 2 == 0 ? "Merrin" : "Odalys", i % 2 == 0 ? "Merrin" : "Odalys", noise(i));
  const RoomQuality quality = room.quality();
  REQUIRE(quality.rackets().size() == 40);
  CHECK(quality.alarms().empty());
  CHECK(quality.scatter().readings >= 20);
  CHECK(quality.scatter().percent == Approx(1.5).margin(0.7));
  const QualityRacket& one = quality.rackets().front();
  CHECK(one.stringer == "Merrin");
  CHECK(one.machine == "machine of Merrin");
  CHECK(one.deviation.against == Against::kind);
  CHECK(one.deviation.percent == Approx(noise(0)).margin(0.6));
  REQUIRE(one.machine_average);
  const Capability capability = must(quality.capability());
  CHECK(capability.count == 40);
  CHECK(capability.seen_outside == 0);
  CHECK(capability.outside_band.high >= capability.outside);
  CHECK(must(quality.capability(Watched::stringer, "Odalys")).count == 20);
  CHECK(quality.capability(Watched::machine, "nobody's").error().code == FaultCode::bad_input);
  // Every racket is of another frame, so frames tell nothing; who strung it hardly does.
  for (const VariancePart& part : quality.variance()) {
    CHECK(part.by != VariancePart::By::frame);
    CHECK(part.share < 0.3);
    CHECK(part.band.low <= part.share);
    CHECK(part.share <= part.band.high);
  }
  CHECK(quality.variance().size() == 2);
  const auto verdict = quality.racket_off(last.job);
  CHECK(verdict.state == RoomQuality::Verdict::State::even);
  CHECK(quality.verdict_words(kEnglish, verdict).find("within the room’s tolerance of 4 %") != std::string::npos);
  const CsvTable csv = must(read_csv(quality_csv(quality)));
  CHECK(csv.faults.empty());
  CHECK(csv.rows.size() == 40);
  CHECK(must(read_csv(quality_csv(quality, Watched::stringer, "Odalys"))).rows.size() == 20);
}

TEST_CASE("a machine that pulls low from some racket on is found before ten went out, and the bench is told why") {
  QualityRoom room;
  for (int i = 0; i < 30; ++i) (void)room.string_and_read(i % 3 == 0 ? "Odalys" : "Merrin", i % 2 == 0 ? "Merrin" : "Odalys", noise(i));
  REQUIRE(room.quality().alarms().empty());
  int until = 0;
  DayRoom::Brought last;
  for (int i = 0; i < 10 && until == 0; ++i) {
    (void)room.string_and_read(i % 2 == 0 ? "Merrin" : "Odalys", "Odalys", noise(i + 3));
    last = room.string_and_read(i % 2 == 0 ? "Odalys" : "Merrin", "Merrin", noise(i) - 4.5);
    const RoomQuality now = room.quality();
    for (const QualityAlarm& alarm : now.alarms())
      if (alarm.alarm.watched == Watched::machine && alarm.alarm.name == "machine of Merrin") until = i + 1;
  }
  CHECK(until > 0);
  const RoomQuality quality = room.quality();
  const auto verdict = quality.racket_off(last.job);
  REQUIRE(verdict.state == RoomQuality::Verdict::State::off);
  CHECK(verdict.causes.findings.front().cause == Cause::machine_calibration);
  const std::string words = quality.verdict_words(kEnglish, verdict);
  CHECK(words.find("below") != std::string::npos);
  CHECK(words.find("the machine’s calibration") != std::string::npos);
  CHECK(words.find("Check machine of Merrin with the gauge") != std::string::npos);
  CHECK_FALSE(quality.alarms().back().causes.findings.empty());
  for (const char* language : {"de", "fr", "es"}) CHECK(quality.verdict_words(Language::from(language).value(), verdict).size() > 60);
}

TEST_CASE("where too little was read nothing is told, and an instrument's own scale stands for itself") {
  QualityRoom room;
  const auto first = room.string_and_read("Merrin", "Merrin", 0);
  const auto never = room.string("Merrin", "Merrin");
  RoomQuality quality = room.quality();
  REQUIRE(quality.rackets().size() == 1);
  CHECK(quality.rackets()[0].deviation.against == Against::nothing);
  CHECK(quality.racket_off(first.job).state == RoomQuality::Verdict::State::too_few);
  CHECK(quality.verdict_words(kEnglish, quality.racket_off(first.job)).find("Too few") == 0);
  CHECK(quality.racket_off(never.job).state == RoomQuality::Verdict::State::not_read);
  CHECK(quality.verdict_words(kEnglish, quality.racket_off(never.job)).empty());
  CHECK(quality.capability().error().code == FaultCode::bad_input);
  CHECK(quality.variance().empty());
  CHECK(quality.scatter().readings == 0);
  // Five on an own scale compare with each other, never with kg/cm; N/mm is the same measure.
  for (int i = 0; i < 5; ++i) room.read(room.string("Merrin", "Merrin"), 61 + i * 0.1, Unit::none, "needle");
  for (int i = 0; i < 4; ++i) room.read(room.string("Odalys", "Odalys"), 29.42 + i * 0.1, Unit::newton_per_millimetre);
  quality = room.quality();
  REQUIRE(quality.rackets().size() == 10);
  for (const QualityRacket& racket : quality.rackets()) {
    CHECK(racket.deviation.against == Against::kind);
    CHECK(racket.deviation.percent == Approx(0).margin(2.5));
  }
  CHECK(quality.left_out().empty());
}

TEST_CASE("the newest reading since it was strung counts, and one that can't be of the racket is left out and said") {
  QualityRoom room;
  for (int i = 0; i < 8; ++i) (void)room.string_and_read("Merrin", "Merrin", noise(i));
  const auto racket = room.string("Odalys", "Odalys");
  room.read(racket, 66.1);  // as if in pounds
  RoomQuality quality = room.quality();
  CHECK(quality.rackets().size() == 8);
  REQUIRE(quality.left_out().size() == 1);
  CHECK(quality.left_out()[0].where.find("9 Ilse Player9") != std::string::npos);
  CHECK(quality.left_out()[0].what.find("pounds") != std::string::npos);
  room.read(racket, 30.1);
  quality = room.quality();
  CHECK(quality.left_out().empty());
  CHECK(quality.rackets().size() == 9);
  room.step(racket, Stage::strung, "Odalys");
  room.read(racket, 29.9);  // read again, now that it is off the machine
  CHECK(room.quality().rackets().size() == 10);
  room.read(racket, 30.2);
  CHECK(room.quality().rackets().size() == 10);
  CHECK(text_of(room.quality().rackets().back().read) == "30.20 kg/cm");
  // It goes back: what was read of it is cut out, though it still counts among what was strung.
  quality = room.quality();
  CHECK(quality.racket_off(racket.job).state == RoomQuality::Verdict::State::even);
  const StageStep back{Stage::cut_out, "Odalys", "a cross was missed", room.clock.now()};
  room.append(take_step(room.load(racket.player), std::vector{racket.job}, back));
  quality = room.quality();
  CHECK(quality.rackets().size() == 10);
  CHECK(quality.racket_off(racket.job).state == RoomQuality::Verdict::State::not_read);
}

TEST_CASE("a machine's pulls against the gauge tell what to set and when to look again") {
  QualityRoom room;
  RoomQuality quality = room.quality();
  REQUIRE(quality.machines().size() == 2);
  CHECK_FALSE(quality.machines()[0].due);
  CHECK_FALSE(quality.machines()[0].calibration);
  room.pull("Merrin", 25, 24.3);
  quality = room.quality();
  const auto of = [&](const char* name) -> const MachineQuality& {
    for (const auto& one : quality.machines())
      if (one.name == std::string("machine of ") + name) return one;
    FAIL("none");
    return quality.machines()[0];
  };
  CHECK_FALSE(of("Merrin").calibration);
  REQUIRE(of("Merrin").due);
  const UnixMs looked = *of("Merrin").due - kDay;
  CHECK(looked <= room.clock.now());
  // Three per cent low, at three settings, each twice.
  for (const double set : {20.0, 25.0, 30.0}) {
    room.pull("Merrin", set, set * 0.97 + 0.02);
    room.pull("Merrin", set, set * 0.97 - 0.02);
  }
  room.append(must(set_quality_rules(room.event, quality_rules(*room.ledger, room.event), {40, 7})));
  quality = room.quality();
  REQUIRE(of("Merrin").calibration);
  const auto setting = must(of("Merrin").calibration->setting_for(24));
  CHECK(setting.set == Approx(24 / 0.97).margin(0.1));
  CHECK(setting.needed);
  CHECK(of("Merrin").calibration->state() == Calibration::State::beyond);
  CHECK(*of("Merrin").due >= room.clock.now() + 6 * kDay);
  CHECK_FALSE(of("Odalys").calibration);
}

TEST_CASE("the room's rules have their bounds") {
  QualityRoom room;
  QualityRulesNow now = quality_rules(*room.ledger, room.event);
  CHECK(now.tolerance == 4);
  CHECK(now.every_days == 1);
  for (const QualityRules wrong : {QualityRules{4, {}}, QualityRules{201, {}}, QualityRules{-40, {}}, QualityRules{{}, 0}, QualityRules{{}, 366}, QualityRules{}})
    CHECK(set_quality_rules(room.event, now, wrong).error().code == FaultCode::bad_input);
  room.append(must(set_quality_rules(room.event, now, {25, 2})));
  now = quality_rules(*room.ledger, room.event);
  CHECK(now.tolerance == 2.5);
  CHECK(now.every_days == 2);
  CHECK(set_quality_rules(room.event, now, {25, 2}).error().code == FaultCode::bad_input);
  room.append(must(set_quality_rules(room.event, now, {30, {}})));
  now = quality_rules(*room.ledger, room.event);
  CHECK(now.tolerance == 3);
  CHECK(now.every_days == 1);
  // What another device wrote beyond sense is as if it had said nothing.
  Draft draft(room.event, kEventBook, kActEdit);
  put_changes(draft, now.held.seen, QualityRules{-7, 100'000});
  room.append(draft);
  CHECK(quality_rules(*room.ledger, room.event).tolerance == 4);
  CHECK(quality_rules(*room.ledger, room.event).every_days == 1);
  CHECK(RoomQuality::make(*room.ledger, room.ledger->create_book_id()).error().code == FaultCode::not_found);
}
