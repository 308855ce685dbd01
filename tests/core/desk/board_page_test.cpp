#include "core/desk/board_page.h"

#include <sodium.h>

#include <boost/json.hpp>
#include <catch2/catch.hpp>
#include <cmath>
#include <regex>

#include "core/base/bytes.h"
#include "core/base/language.h"
#include "core/desk/phrases.h"
#include "tests/support/published.h"
#include "tests/support/rooms.h"
#include "tests/support/words.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

BoardNow some_board() {
  BoardNow board;
  board.event = "Harbour Open";
  board.zone = "Europe/Lisbon";  // an hour after UTC in May
  board.ready = {{{"7", 1, {}, false}, {"12", 1, {}, false}}, 2, 0};
  board.desk = {{{"31", 1, {}, false}}, 1, 0};
  board.work = {{{"40", 1, kMonday - kHour, true}, {"41", 1, kMonday + 2 * kHour, false}, {"42", 1, kMonday + 24 * kHour, false}, {"43", 1, {}, false}}, 4, 0};
  return board;
}
Language language(const char* tag) { return *Language::from(tag); }
std::string html(const BoardNow& board, const char* tag = "en") { return board_html(board, language(tag), kMonday, "\"etag\""); }
std::size_t count_of(const std::string& text, std::string_view part) {
  std::size_t n = 0;
  for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + part.size())) ++n;
  return n;
}

/// Relative luminance and contrast: WCAG 2.x, glossary; checked against the published values below.
double luminance(std::string_view colour) {
  double out = 0;
  constexpr double kWeights[] = {0.2126, 0.7152, 0.0722};
  for (std::size_t i = 0; i < 3; ++i) {
    const double part = std::stoi(std::string(colour.substr(1 + 2 * i, 2)), nullptr, 16) / 255.0;
    out += kWeights[i] * (part <= 0.04045 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4));
  }
  return out;
}
double contrast(std::string_view one, std::string_view other) {
  const double a = luminance(one), b = luminance(other);
  return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

}  // namespace

TEST_CASE("board page: times are told in the event's zone and the reader's way, another day with its day") {
  const auto work = [](const char* tag) {
    return boost::json::parse(board_json(some_board(), language(tag), kMonday)).at("parts").at("work").at("rows");
  };
  const auto german = work("de");
  CHECK(german.at(0).at(0) == "40");
  CHECK(german.at(0).at(1) == "10:00, verspätet");
  CHECK(german.at(1).at(1) == "13:00");
  CHECK(holds(std::string(german.at(2).at(1).as_string()), "11:00"));
  CHECK(holds(std::string(german.at(2).at(1).as_string()), "27"));
  CHECK(german.at(3).at(1) == "");
  CHECK(holds(std::string(work("en").at(1).at(1).as_string()), "1:00"));
}

TEST_CASE("board page: equal boards give equal bytes while the day lasts, another board gives others") {
  BoardNow board = some_board();
  const std::string before = board_json(board, language("es"), kMonday);
  CHECK(board_json(board, language("es"), kMonday + kHour) == before);
  board.ready.rows[0].who = "8";
  CHECK(board_json(board, language("es"), kMonday) != before);
}

TEST_CASE("board page: nothing in a book can become markup") {
  BoardNow board = some_board();
  board.event = "</title><script>alert(1)</script>&\"'>";
  board.ready.rows[0].who = "<img src=x onerror=alert(1)>";
  board.zone = "\"><script>";
  const std::string page = html(board);
  CHECK(count_of(page, "<script>") == 1);
  CHECK(count_of(page, "</script>") == 1);
  CHECK_FALSE(holds(page, "<img"));
  CHECK(holds(page, "&lt;/title&gt;&lt;script&gt;alert(1)&lt;/script&gt;&amp;&quot;&#39;&gt;"));
  CHECK(holds(page, "data-zone=\"&quot;&gt;&lt;script&gt;\""));
  // As JSON it stays a text, which the script writes as a text.
  CHECK(boost::json::parse(board_json(board, Language(), kMonday)).at("event").as_string() == board.event.c_str());
}

TEST_CASE("board page: the script never makes markup out of text") {
  const std::string script(board_script());
  for (const char* way : {"innerHTML", "outerHTML", "insertAdjacent", "document.write", "eval", "Function(", "DOMParser"}) CHECK_FALSE(holds(script, way));
  CHECK_FALSE(holds(script, "</"));
  CHECK_FALSE(holds(board_style(), "</"));
}

TEST_CASE("board page: is one document that fetches nothing from elsewhere, and its policy names its style and script") {
  const std::string page = html(some_board());
  CHECK(page.starts_with("<!DOCTYPE html>\n<html dir=\"ltr\" lang=\"en\""));
  for (const char* outside : {"http://", "https://", "src=", "@import", "url("}) CHECK_FALSE(holds(page, outside));
  CHECK(std::regex_search(page, std::regex("<link[^>]*href=\"(?!data:)")) == false);
  CHECK(holds(board_policy(), "default-src 'none'"));
  CHECK_FALSE(holds(board_policy(), "unsafe"));
  // Content Security Policy, level 3, section 8.4: the digest is over what stands between the tags.
  for (const auto& [tag, directive] : {std::pair("style", "style-src"), std::pair("script", "script-src")}) {
    const std::string begin = std::string("<") + tag + ">", end = std::string("</") + tag + ">";
    const auto from = page.find(begin) + begin.size();
    const std::string inside = page.substr(from, page.find(end, from) - from);
    REQUIRE_FALSE(inside.empty());
    unsigned char digest[crypto_hash_sha256_BYTES];
    crypto_hash_sha256(digest, as_bytes(inside).data(), inside.size());
    char text[64];
    sodium_bin2base64(text, sizeof text, digest, sizeof digest, sodium_base64_VARIANT_ORIGINAL);
    CHECK(holds(board_policy(), std::string(directive) + " 'sha256-" + text + "'"));
  }
}

TEST_CASE("board page: the digest of a policy is the published one") {
  // FIPS 180-4 example "abc" (SHA-256 ba7816bf...20015ad), in Base64.
  unsigned char digest[crypto_hash_sha256_BYTES];
  crypto_hash_sha256(digest, as_bytes("abc").data(), 3);
  CHECK(to_hex({digest, sizeof digest}) == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}

TEST_CASE("board page: landmarks, headings and table headers are there, and no meaning is lost to the layout") {
  const std::string page = html(some_board());
  for (const char* landmark : {"<header>", "<main>", "<footer>", "role=\"alert\"", "role=\"status\""}) CHECK(count_of(page, landmark) == 1);
  CHECK(count_of(page, "<h1>") == 1);
  CHECK(count_of(page, "<section") == 3);
  CHECK(count_of(page, "<table role=\"table\" aria-labelledby=") == 3);
  CHECK(count_of(page, "scope=\"col\" role=\"columnheader\"") == 4);  // tag three times, expected once
  CHECK(count_of(page, "scope=\"row\" role=\"rowheader\"") == 7);
  CHECK(holds(page, "<noscript><meta http-equiv=\"refresh\" content=\"15\"></noscript>"));
  CHECK(holds(page, "name=\"viewport\""));
  CHECK_FALSE(holds(page, "user-scalable"));
  BoardNow initials = some_board();
  initials.show = BoardShow::initials;
  CHECK(count_of(html(initials), "scope=\"col\" role=\"columnheader\"") == 7);
}

TEST_CASE("board page: the style sheet knows no left and no right, so it reads both ways") {
  const std::string sheet = board_style();
  CHECK_FALSE(std::regex_search(sheet, std::regex(R"([{;](left|right|top|bottom|margin-left|margin-right|padding-left|padding-right|text-align:left|float):)")));
  CHECK(holds(sheet, "inset-inline-start"));
  CHECK(holds(html(some_board()), "<bdi id=\"event\">"));
  CHECK(holds(sheet, "prefers-color-scheme:dark"));
}

TEST_CASE("board page: every language says it in its own words") {
  CHECK(holds(html(some_board(), "en"), "Ready for pick-up"));
  CHECK(holds(html(some_board(), "de"), "Bitte zur Annahme kommen"));
  CHECK(holds(html(some_board(), "fr"), "<html dir=\"ltr\" lang=\"fr\""));
  CHECK(holds(html(some_board(), "es"), "Listas para recoger"));
  for (const Language& one : desk_words().languages()) {
    const std::string page = html(some_board(), one.tag().c_str());
    CHECK(holds(page, "{when}"));  // for the script
    CHECK(holds(page, "{who}"));
  }
}

// Source of the values: fixtures/published/README.md, contrast.csv (WCAG 2.x, glossary).
TEST_CASE("board page: contrast follows the published formula", "[published]") {
  const auto rows = test::published_rows("contrast.csv");
  REQUIRE(rows.size() >= 15);
  for (const auto& row : rows) {
    CAPTURE(row.at("colour1"), row.at("colour2"));
    CHECK(contrast(row.at("colour1"), row.at("colour2")) == Approx(std::stod(row.at("contrast"))).epsilon(1e-9));
  }
}

TEST_CASE("board page: every text can be read on its ground, light and dark") {
  const auto colour = [](std::string_view name) {
    for (const BoardColour& one : board_colours())
      if (one.name == name) return one;
    throw std::runtime_error("no colour " + std::string(name));
  };
  REQUIRE(board_colour_pairs().size() >= 7);
  for (const auto& pair : board_colour_pairs()) {
    CAPTURE(pair.ink, pair.ground);
    const BoardColour ink = colour(pair.ink), ground = colour(pair.ground);
    CHECK(contrast(ink.light, ground.light) >= pair.least_ratio);
    CHECK(contrast(ink.dark, ground.dark) >= pair.least_ratio);
  }
  for (const BoardColour& one : board_colours()) {
    const auto used = [&](const auto& pair) { return pair.ink == one.name || pair.ground == one.name; };
    CAPTURE(one.name);
    CHECK(std::any_of(board_colour_pairs().begin(), board_colour_pairs().end(), used));
    CHECK(holds(board_style(), "var(--" + std::string(one.name) + ")"));
  }
}
