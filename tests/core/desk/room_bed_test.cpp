#include "core/desk/room_bed.h"

#include <catch2/catch.hpp>
#include <algorithm>
#include <cmath>

#include "core/desk/bench.h"
#include "core/desk/event_book.h"
#include "core/desk/stages.h"
#include "core/model/stock.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

Quantity kilograms(std::int64_t tenths) {
  return {{tenths, 1}, Unit::kilogram_force};
}

/// One player's rackets, of which everything is said but what a test takes away.
struct BedRoom : Desk {
  BookId book;
  EntityId racket;

  BedRoom() {
    book = ledger->create_book_id();
    Draft draft(book, kPlayerBook, kActDropOff);
    Person person;
    person.family_name = "Wendelmoor";
    person.tension_unit = Unit::kilogram_force;
    (void)put_new(draft, person, clock.now());
    Racket one;
    one.label = "1";
    one.maker = "Orrel";
    one.model = "Field 98";
    one.head_size = Quantity{{98, 0}, Unit::square_inch};
    one.mains_count = 16;
    one.crosses_count = 20;
    racket = put_new(draft, one, clock.now()).id;
    append(draft);
  }
  [[nodiscard]] static Agreed agreed() {
    Agreed out;
    out.mains_string = "Tarnbrook Silk";
    out.mains_gauge = Quantity{{125, 2}, Unit::millimetre};
    out.mains_tension = kilograms(240);
    out.crosses_tension = kilograms(230);
    out.pieces = 1;
    return out;
  }
  EntityId job(const Agreed& said, const EntityId& of, std::optional<UnixMs> ready_by = {}) {
    Draft draft(book, kPlayerBook, kActDropOff);
    Job made;
    static_cast<Agreed&>(made) = said;
    made.racket = of;
    made.event = event;
    made.at = clock.now();
    made.ready_by = ready_by;
    const EntityId id = put_new(draft, made, clock.now()).id;
    append(draft);
    return id;
  }
  void strung(const EntityId& job) {
    Draft draft(book, kPlayerBook, kActStage);
    StageMark mark;
    mark.job = job;
    mark.stage = Stage::strung;
    mark.at = clock.now();
    (void)put_new(draft, mark, clock.now());
    append(draft);
  }
  void read(const EntityId& job, ReadingKind what, const Quantity& value) {
    Reading reading;
    reading.what = what;
    reading.value = value;
    reading.at = clock.now();
    reading.by = "Bo";
    append(put_reading(load(book), job, reading));
  }
  [[nodiscard]] static std::vector<BedStringChoice> stock() {
    BedStringChoice silk{"Tarnbrook Silk", {BedMaterial::multifilament, 1.25}, true, true};
    BedStringChoice wire{"Velmora Round", {BedMaterial::polyester, 1.20}, true, true};
    return {silk, wire};
  }
  [[nodiscard]] RoomBed bed(const EntityId& job, std::optional<UnixMs> match = {}) const {
    return must(room_bed(load(book), job, stock(), clock.now(), match));
  }
};

Quantity newtons_per_mm(double value) {
  return {Decimal::rounded(value / 1000, 3), Unit::newton_per_millimetre};
}

}  // namespace

TEST_CASE("a bed is made of what was said of racket and job; nothing said is nothing assumed in silence") {
  BedRoom room;
  const EntityId job = room.job(BedRoom::agreed(), room.racket);
  room.strung(job);
  room.clock.set(room.clock.now() + 90 * kMinute);
  const RoomBed bed = room.bed(job, room.clock.now() + 3 * kHour);
  CHECK(bed.assumed.empty());
  CHECK(bed.setup.area == Approx(98 * 6.4516));  // NIST SP 811, App. B.8
  CHECK(bed.setup.pattern.mains == 16);
  CHECK(bed.setup.pattern.crosses == 20);
  CHECK(bed.setup.mains.pulled == Approx(24.0 * 9.80665));
  CHECK(bed.setup.crosses.pulled == Approx(23.0 * 9.80665));
  CHECK(bed.setup.mains.kind == BedStringKind{BedMaterial::multifilament, 1.25});
  CHECK(bed.setup.crosses.kind == bed.setup.mains.kind);
  CHECK(bed.setup.after == Approx(90 * 60).margin(2));
  CHECK(bed.at_match().after == Approx(270 * 60).margin(2));
  CHECK(bed.setup.pieces == 1);

  Agreed little;
  little.mains_string = "Nobody's";
  little.mains_tension = Quantity{{52, 0}, Unit::pound_force};
  const EntityId plain = room.job(little, {});
  const RoomBed assumed = room.bed(plain);
  CHECK(assumed.assumed == std::vector{BedGap::head_size, BedGap::pattern, BedGap::material, BedGap::gauge, BedGap::crosses_tension, BedGap::pieces,
                                       BedGap::strung_at, BedGap::match_at});
  CHECK(assumed.setup.crosses.pulled == Approx(52 * 4.4482216152605));
  CHECK(assumed.match_at == room.clock.now() + 2 * kHour);
  CHECK(assumed.unit == Unit::kilogram_force);  // the player's own, whatever this job says

  // What is wanted at a time is thought to be played then, until that has passed.
  const UnixMs noon = room.clock.now() + kHour;
  const EntityId wanted = room.job(BedRoom::agreed(), room.racket, noon);
  CHECK(room.bed(wanted).match_at == noon);
  CHECK(room.bed(wanted).assumed.back() == BedGap::match_at);
  room.clock.set(noon + kMinute);
  CHECK(room.bed(wanted).match_at == room.clock.now() + 2 * kHour);

  const auto none = room_bed(room.load(room.book), room.job({}, room.racket), {}, room.clock.now());
  REQUIRE_FALSE(none);
  CHECK(none.error().where == "tension");
  CHECK(room_bed(room.load(room.book), EntityId{}, {}, room.clock.now()).error().code == FaultCode::not_found);
}

TEST_CASE("a bed says its figures with bands, and less is left of it at the match") {
  BedRoom room;
  const EntityId job = room.job(BedRoom::agreed(), room.racket);
  room.strung(job);
  room.clock.set(room.clock.now() + 10 * kMinute);
  const RoomBed bed = room.bed(job, room.clock.now() + 20 * kHour);
  const MeasuredBeds nothing = measured_beds(room.load(room.book), BedRoom::stock());
  CHECK(nothing.readings == 0);
  const BedFigures figures = must(figures_of(bed, nothing));
  CHECK(figures.from_data == 0);
  CHECK(figures.stiffness.value == Approx(must(nothing.reckoner.value(bed.setup, {BedGoal::Kind::stiffness, 0}))));
  CHECK(figures.stiffness.low < figures.stiffness.value);
  CHECK(figures.stiffness_match.value < figures.stiffness.value);
  CHECK(figures.tone_match.value < figures.tone.value);
  // Small-load stiffness goes with the tension, the tone with its root.
  CHECK(figures.stiffness_match.value / figures.stiffness.value == Approx(std::pow(figures.tone_match.value / figures.tone.value, 2)).epsilon(0.01));
  CHECK(figures.mains_match.value < figures.mains.value);
  CHECK(figures.mains.value < bed.setup.mains.pulled * 0.75);  // some 30 % are gone just off the machine: Cross and Bower 2001
  CHECK(figures.mains.value > bed.setup.mains.pulled * 0.6);
  CHECK(figures.left_match.low < figures.left_match.value);
  const auto curve = must(left_over_time(bed, nothing, 20 * 3600));
  CHECK(curve.front().seconds == Approx(60));
  CHECK(curve.back().seconds == Approx(86'400));
  for (std::size_t i = 1; i < curve.size(); ++i) CHECK(curve[i].left.value < curve[i - 1].left.value);
}

TEST_CASE("a device whose clock is years behind still tells a bed: a match that far away is not believed") {
  BedRoom room;
  const auto job = room.job(BedRoom::agreed(), room.racket, room.clock.now() + 5 * 365 * kDay);
  const auto record = room.load(room.book);
  for (const auto& match : {std::optional<UnixMs>{}, std::optional<UnixMs>{room.clock.now() + 5 * 365 * kDay}}) {
    const RoomBed bed = must(room_bed(record, job, {}, room.clock.now(), match));
    CHECK(std::count(bed.assumed.begin(), bed.assumed.end(), BedGap::match_at) == 1);
    CHECK(bed.match_at - room.clock.now() < kDay);
    CHECK(must(figures_of(bed, measured_beds(record, {}))).stiffness_match.value > 0);
  }
}

TEST_CASE("earlier readings of this player's rackets draw the figures to them, and narrow the band") {
  BedRoom room;
  const MeasuredBeds nothing;
  double reckoned = 0;
  for (int i = 0; i < 4; ++i) {
    const EntityId job = room.job(BedRoom::agreed(), room.racket);
    room.strung(job);
    room.clock.set(room.clock.now() + 15 * kMinute);
    reckoned = must(nothing.reckoner.value(room.bed(job).setup, {BedGoal::Kind::stiffness, 0}));
    room.read(job, ReadingKind::bed_stiffness, newtons_per_mm(1.12 * reckoned));  // this frame is stiffer than the model
    room.clock.set(room.clock.now() + kDay);
  }
  const EntityId job = room.job(BedRoom::agreed(), room.racket);
  room.strung(job);
  room.clock.set(room.clock.now() + 15 * kMinute);
  const MeasuredBeds measured = measured_beds(room.load(room.book), BedRoom::stock());
  CHECK(measured.readings == 4);
  CHECK(measured.left_out == 0);
  const BedFigures model = must(figures_of(room.bed(job), nothing)), read = must(figures_of(room.bed(job), measured));
  CHECK(read.stiffness.value / model.stiffness.value > 1.09);
  CHECK(read.stiffness.value / model.stiffness.value < 1.121);
  CHECK(read.stiffness.relative_sd < 0.6 * model.stiffness.relative_sd);
  CHECK(read.tone.value / model.tone.value == Approx(std::sqrt(read.stiffness.value / model.stiffness.value)));
  // The tension takes its share of that only: the model may be off as well.
  CHECK(read.mains.value > model.mains.value);
  CHECK(read.mains.value / model.mains.value < read.stiffness.value / model.stiffness.value);
  CHECK(read.mains.relative_sd < model.mains.relative_sd);
  CHECK(read.from_data > 0.5);

  // A tone that fits counts; what is of another scale, or can't be of this racket, is left out and told.
  room.read(job, ReadingKind::tone, {Decimal::rounded(read.tone.value, 1), Unit::hertz});
  room.read(job, ReadingKind::bed_stiffness, {Decimal{68, 0}, Unit::none});
  room.read(job, ReadingKind::bed_stiffness, newtons_per_mm(3 * reckoned));
  const MeasuredBeds more = measured_beds(room.load(room.book), BedRoom::stock());
  CHECK(more.readings == 5);
  CHECK(more.left_out == 2);
}

TEST_CASE("two readings of one stringing tell how its string loses tension") {
  BedRoom room;
  const EntityId job = room.job(BedRoom::agreed(), room.racket);
  room.strung(job);
  const UnixMs off = room.clock.now();
  // Twice what is believed of a multifilament a decade.
  for (const auto& [minutes, value] : {std::pair{1, 36.0}, std::pair{10, 34.2}, std::pair{100, 32.4}, std::pair{1000, 30.6}}) {
    room.clock.set(off + minutes * kMinute);
    room.read(job, ReadingKind::bed_stiffness, newtons_per_mm(value * 1000));
  }
  const MeasuredBeds measured = measured_beds(room.load(room.book), BedRoom::stock());
  CHECK(measured.reckoner.relaxation().readings() == 4);
  const RelaxationCase silk{BedMaterial::multifilament, 0, 20};
  CHECK(must(measured.reckoner.relaxation().left_at(silk, 86'400)).left.value < must(RelaxationModel().left_at(silk, 86'400)).left.value - 0.02);
}

TEST_CASE("the same feel with another string comes in half units of the player's, and keeps the stiffness at the match") {
  BedRoom room;
  const EntityId job = room.job(BedRoom::agreed(), room.racket);
  room.strung(job);
  const RoomBed bed = room.bed(job, room.clock.now() + 5 * kHour);
  const MeasuredBeds nothing;
  BedChange change;
  change.string = BedRoom::stock()[1];
  const Equivalent wire = must(same_feel(bed, nothing, change));
  CHECK(wire.mains.set.unit == Unit::kilogram_force);
  CHECK(std::fmod(wire.mains.set.amount.to_double(), 0.5) == 0);
  CHECK(wire.mains.exact < bed.setup.mains.pulled);  // the polyester stretches less under load, so it wants a lower tension
  CHECK(wire.mains.low < wire.mains.exact);
  CHECK(wire.mains.exact < wire.mains.high);
  CHECK(wire.reached == Approx(wire.wanted).epsilon(0.03));  // within what half a kilogram makes

  // A kilogram more on the mains: the crosses make up for it, in pounds where the player speaks so.
  RoomBed pounds = bed;
  pounds.unit = Unit::pound_force;
  BedChange kilo;
  kilo.mains_more = 9.80665;
  const Equivalent other = must(same_feel(pounds, nothing, kilo));
  CHECK(other.crosses.exact < bed.setup.crosses.pulled);
  CHECK(other.mains.exact == Approx(bed.setup.mains.pulled + 9.80665));
  CHECK(other.crosses.set.unit == Unit::pound_force);
  CHECK(std::fmod(other.crosses.set.amount.to_double(), 0.5) == 0);

  BedChange larger;
  larger.area = 105 * 6.4516;
  CHECK(must(same_feel(bed, nothing, larger)).mains.exact > bed.setup.mains.pulled);
  BedChange denser;
  denser.pattern = {18, 20};
  CHECK(must(same_feel(bed, nothing, denser)).mains.exact < bed.setup.mains.pulled);
  BedChange thinner;
  thinner.gauge = 1.15;
  CHECK(must(same_feel(bed, nothing, thinner)).mains.exact > bed.setup.mains.pulled);
  BedChange stretched;
  stretched.pre_stretch = 10;
  CHECK(must(same_feel(bed, nothing, stretched)).mains.exact < bed.setup.mains.pulled);  // more is left of it at the match

  CHECK(same_feel(bed, nothing, {}).error().code == FaultCode::bad_input);
  kilo.crosses_more = 9.80665;
  CHECK(same_feel(bed, nothing, kilo).error().code == FaultCode::bad_input);
}

TEST_CASE("the strings of the stock carry their material and gauge, each once") {
  BedRoom room;
  room.append(new_event(room.event, {"Harbour Open", "", "2031-05-26", "2031-06-08", "Europe/Lisbon", "EUR", {}}, room.clock.now()));
  for (const auto& [name, material, gauge] :
       {std::tuple{"Velmora Round", StringMaterial::polyester, 120}, std::tuple{"Velmora Round", StringMaterial::unsaid, 120},
        std::tuple{"Velmora Round", StringMaterial::polyester, 125}, std::tuple{"Tarnbrook Silk", StringMaterial::unsaid, 0}}) {
    StockItem item;
    item.name = name;
    item.supply = Supply::reel;
    item.material = material;
    if (gauge > 0) item.gauge = Quantity{{gauge, 2}, Unit::millimetre};
    (void)room.add(room.event, item, kEventBook);
  }
  const auto strings = bed_strings(*room.ledger, room.event);
  REQUIRE(strings.size() == 3);
  CHECK(strings[0].name == "Tarnbrook Silk");
  CHECK_FALSE(strings[0].material_said);
  CHECK(strings[1].kind == BedStringKind{BedMaterial::polyester, 1.20});
  CHECK(strings[1].material_said);
  CHECK(strings[2].kind.gauge == 1.25);
  // The polyester in two gauges says the material of a job, but not its gauge.
  Agreed said = BedRoom::agreed();
  said.mains_string = "velmora round";
  said.mains_gauge.reset();
  const RoomBed bed = must(room_bed(room.load(room.book), room.job(said, room.racket), strings, room.clock.now()));
  CHECK(bed.setup.mains.kind.material == BedMaterial::polyester);
  CHECK(std::find(bed.assumed.begin(), bed.assumed.end(), BedGap::gauge) != bed.assumed.end());
  CHECK_FALSE(match_of(*room.ledger, room.event, room.load(room.book).person.now, room.clock.now()));
}

TEST_CASE("a racket that nobody measured yet is corrected by those of other players on this device") {
  BedRoom room;
  // Three other players' rackets, of other models with the same string: all a tenth stiffer than reckoned.
  const BookId own = room.book;
  const EntityId own_racket = room.racket;
  for (int player = 0; player < 3; ++player) {
    room.book = room.ledger->create_book_id();
    Draft draft(room.book, kPlayerBook, kActDropOff);
    Person person;
    person.family_name = "Ondrel " + std::to_string(player);
    (void)put_new(draft, person, room.clock.now());
    Racket one;
    one.maker = "Orrel";
    one.model = "Hill " + std::to_string(player);
    one.head_size = Quantity{{100, 0}, Unit::square_inch};
    room.racket = put_new(draft, one, room.clock.now()).id;
    room.append(draft);
    for (int i = 0; i < 4; ++i) {
      const EntityId job = room.job(BedRoom::agreed(), room.racket);
      room.strung(job);
      room.clock.set(room.clock.now() + (i + 1) * 5 * kHour);
      const MeasuredBeds nothing;
      room.read(job, ReadingKind::bed_stiffness, newtons_per_mm(1.1 * must(nothing.reckoner.value(room.bed(job).setup, {BedGoal::Kind::stiffness, 0}))));
    }
  }
  // One that came without its stages: nobody knows how long after stringing it was read.
  const EntityId past = room.job(BedRoom::agreed(), room.racket);
  room.read(past, ReadingKind::bed_stiffness, newtons_per_mm(30'000));
  room.book = own;
  room.racket = own_racket;
  const EntityId job = room.job(BedRoom::agreed(), own_racket);
  room.strung(job);
  const auto others = measured_players(*room.ledger, own);
  CHECK(others.size() == 3);
  const MeasuredBeds alone = measured_beds(room.load(own), BedRoom::stock()), all = measured_beds(room.load(own), BedRoom::stock(), others);
  CHECK(alone.readings == 0);
  CHECK(all.readings == 12);
  CHECK(all.own == 0);
  CHECK(all.ages.known == 12);
  CHECK(all.ages.unknown == 1);
  CHECK(all.ages.mean_percent > 3);
  const BedFigures model = must(figures_of(room.bed(job), alone)), read = must(figures_of(room.bed(job), all));
  CHECK(read.stiffness.value / model.stiffness.value > 1.05);
  CHECK(read.stiffness.value / model.stiffness.value < 1.1);
  CHECK(read.stiffness.relative_sd < model.stiffness.relative_sd);
  CHECK(read.from_data > 0.3);
  CHECK(read.from_data < 0.95);
  REQUIRE(read.correction.levels.size() == 3);  // all, the string, its material; nothing of this racket or its model
  CHECK(read.correction.levels[0].readings == 12);
}
