#include "core/base/iso_time.h"

#include <catch2/catch.hpp>

using namespace weavelog;

namespace {
// 2031-05-26T10:00:00Z; `date -u -d 2031-05-26T10:00:00Z +%s` gives 1937556000.
constexpr UnixMs kMonday = 1'937'556'000'000;
constexpr UnixMs kHour = 3'600'000;

UnixMs read(std::string_view text, const std::string& zone = "UTC") {
  const auto at = moment_from(text, zone, kMonday);
  return at ? *at : -1;
}
}  // namespace

TEST_CASE("moments are written as ISO 8601") {
  CHECK(iso_utc(kMonday) == "2031-05-26T10:00:00Z");
  CHECK(iso_utc(0) == "1970-01-01T00:00:00Z");
  CHECK(iso_utc(-5) == "-5");
}

TEST_CASE("moments are read as scripts and people write them") {
  CHECK(read("2031-05-26T10:00:00Z", "Asia/Tokyo") == kMonday);
  CHECK(read("2031-05-26T12:00", "Europe/Paris") == kMonday);  // summer time, two hours ahead
  CHECK(read("2031-01-26 11:00", "Europe/Paris") == kMonday - 120 * 24 * kHour);
  CHECK(read("16:30") == kMonday + 6 * kHour + kHour / 2);
  CHECK(read("9:30") == kMonday + 23 * kHour + kHour / 2);  // passed today: tomorrow
  CHECK(read("12:30", "Europe/Paris") == kMonday + kHour / 2);
  CHECK(read("+90") == kMonday + 90 * 60'000);
}

TEST_CASE("what is no time is refused") {
  for (const char* text : {"", "soon", "24:00", "12:60", "1230", "2031-02-29T10:00", "2031-05-26",
                           "2031-05-26T10:00+02", "+", "+-5", "+1e9", "12:30 pm"})
    CHECK(read(text) == -1);
}

TEST_CASE("days and zones that exist") {
  CHECK(is_iso_date("2032-02-29"));
  CHECK_FALSE(is_iso_date("2031-02-29"));
  CHECK_FALSE(is_iso_date("2031-13-01"));
  CHECK_FALSE(is_iso_date("2031-05-26T10:00"));
  CHECK(is_time_zone("Europe/Lisbon"));
  CHECK_FALSE(is_time_zone("Harbour/Nowhere"));
}
