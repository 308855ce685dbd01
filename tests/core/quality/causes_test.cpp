#include "core/quality/causes.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

using namespace weavelog;

namespace {

const double kQuiet[] = {0.6, -1.1, 0.2, 1.4, -0.5, -0.9, 1.0, 0.1, -0.3, 0.7};

/// Two stringers who take turns on two machines, with readings as they scatter.
std::vector<SuspectRacket> quiet_room(std::size_t count) {
  std::vector<SuspectRacket> out;
  for (std::size_t i = 0; i < count; ++i)
    out.push_back({kQuiet[i % 10], 1, i % 2 == 0 ? "Ida" : "Bo", i / 2 % 2 == 0 ? "T1" : "T2", "frame " + std::to_string(i % 7), ""});
  return out;
}

CauseFinding first(const std::vector<SuspectRacket>& room) { return causes_of(room, room.size() - 1).value().findings.front(); }

}  // namespace

TEST_CASE("an ordinary racket is taken for scatter") {
  const auto room = quiet_room(24);
  const auto report = causes_of(room, 23).value();
  CHECK(report.findings.front().cause == Cause::scatter);
  CHECK(report.findings.front().chance > 0.8);
  double sum = 0;
  for (const CauseFinding& one : report.findings) sum += one.chance;
  CHECK(sum == Approx(1));
  CHECK(report.findings.size() == kCauses);
}

TEST_CASE("each cause is the first one where only it fits") {
  SECTION("a machine, low under everybody's hands") {
    auto room = quiet_room(40);
    for (std::size_t i = 16; i < 40; ++i)
      if (room[i].machine == "T1") room[i].percent -= 3.5;
    room.resize(38);  // the last one is from T1
    const auto one = first(room);
    CHECK(one.cause == Cause::machine_calibration);
    CHECK(one.chance > 0.8);
    CHECK(one.percent == Approx(-3.4).margin(0.8));
    CHECK((one.band.low < -3.5 && -3.5 < one.band.high));
    CHECK(one.elsewhere >= 3);
  }
  SECTION("a stringer, high on every machine") {
    auto room = quiet_room(40);
    for (std::size_t i = 16; i < 40; ++i)
      if (room[i].stringer == "Bo") room[i].percent += 3.5;
    const auto one = first(room);
    CHECK(one.cause == Cause::stringer);
    CHECK(one.chance > 0.8);
    CHECK(one.elsewhere >= 3);
  }
  SECTION("a clamp that slips now and then") {
    auto room = quiet_room(32);
    for (const std::size_t i : {16U, 25U, 29U}) room[i].percent -= 8;  // T1, Ida and Bo
    room.resize(30);
    const auto one = first(room);
    CHECK(one.cause == Cause::clamp_slip);
    CHECK(one.chance > 0.8);
    CHECK(one.low == 3);
  }
  SECTION("a frame that was off before, on other machines by other people") {
    auto room = quiet_room(29);
    for (SuspectRacket& one : room)
      if (one.frame == "frame 0") one.percent += 4.5;
    const auto one = first(room);
    CHECK(one.cause == Cause::frame);
    CHECK(one.rackets == 5);
  }
  SECTION("a racket that alone is far too stiff") {
    auto room = quiet_room(24);
    room.back().percent = 14;
    room.back().frame = "a new one";
    const auto one = first(room);
    CHECK(one.cause == Cause::wrong_string);
    CHECK(one.percent > 10);
  }
  SECTION("a reel that is not what it says") {
    auto room = quiet_room(40);
    for (SuspectRacket& one : room) one.string = "Lumen 1.25";
    for (std::size_t i = 26; i < 40; i += 1) {
      if (i % 3 == 0) continue;
      room[i].string = "Lumen 1.30";
      room[i].percent += 5;
    }
    room.resize(39);
    const auto one = first(room);
    CHECK(one.cause == Cause::wrong_string);
    CHECK(one.rackets > 3);
  }
}

TEST_CASE("machine and stringer that never part are not told apart, and a gauge tells") {
  std::vector<SuspectRacket> room;
  for (std::size_t i = 0; i < 30; ++i) {
    room.push_back({kQuiet[i % 10], 1, "Ida", "T1", "", ""});
    room.push_back({kQuiet[(i + 3) % 10] - (i > 15 ? 3.5 : 0), 1, "Bo", "T2", "", ""});
  }
  auto report = causes_of(room, room.size() - 1).value();
  CHECK(report.machine_or_stringer);
  CHECK(report.findings[0].chance == Approx(report.findings[1].chance));
  // The gauge says that T2 pulls right: it was Bo. Or that it pulls low: it was T2.
  CauseOptions options;
  options.gauged["T2"] = {0.1, 0.3};
  CHECK(causes_of(room, room.size() - 1, options)->findings.front().cause == Cause::stringer);
  options.gauged["T2"] = {-3.4, 0.4};
  CHECK(causes_of(room, room.size() - 1, options)->findings.front().cause == Cause::machine_calibration);
}

TEST_CASE("where a clamp slips now and then, a racket that reads right is not accused, its machine's chart is") {
  auto room = quiet_room(34);
  for (const std::size_t i : {17U, 25U, 29U}) room[i].percent -= 9;  // T1
  room.resize(34);
  REQUIRE(room.back().machine == "T1");
  CHECK(causes_of(room, 33)->findings.front().cause == Cause::scatter);
  CauseOptions options;
  options.question = CauseQuestion::chart;
  CHECK(causes_of(room, 33, options)->findings.front().cause == Cause::clamp_slip);
}

TEST_CASE("what can't be asked is refused") {
  const auto room = quiet_room(5);
  CHECK_FALSE(causes_of(room, 5));
  CauseOptions options;
  options.scatter = 0;
  CHECK_FALSE(causes_of(room, 2, options));
  auto broken = room;
  broken[1].percent = std::numeric_limits<double>::quiet_NaN();
  CHECK_FALSE(causes_of(broken, 2));
  CHECK(causes_of(broken, 0));
  // As far out as can be: still chances.
  auto wild = room;
  wild[4].percent = -1e6;
  const auto report = causes_of(wild, 4).value();
  double sum = 0;
  for (const CauseFinding& one : report.findings) sum += one.chance;
  CHECK(sum == Approx(1));
}

TEST_CASE("evidence is said in a sentence, in every language") {
  CHECK(quality_words().gaps().empty());
  CHECK(quality_words().languages().size() == 4);
  auto room = quiet_room(40);
  for (std::size_t i = 16; i < 40; ++i)
    if (room[i].machine == "T1") room[i].percent -= 3.5;
  room.resize(38);
  const auto report = causes_of(room, 37).value();
  const std::string english = evidence_words(Language(), room[37], report.findings[0]);
  CHECK(english.find("from T1 read ") != std::string::npos);
  CHECK(english.find(" % low on average (estimate), ") != std::string::npos);
  CHECK(english.find("by others") != std::string::npos);
  for (const char* tag : {"en", "de", "fr", "es"})
    for (const CauseFinding& one : report.findings) {
      const Language language = *Language::from(tag);
      CHECK(evidence_words(language, room[37], one).size() > 40);
      CHECK(advice_words(language, room[37], one).size() > 15);
    }
}
