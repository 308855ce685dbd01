#include "core/desk/tag_code.h"

#include <catch2/catch.hpp>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>


using namespace weavelog;

namespace {

BookId book(std::uint8_t last) {
  BookId id;
  id.bytes = {0x01, 0x8f, 0, 0, 0, 0, 0x70, 0, 0x80, 0, 0, 0, 0, 0, 0, last};
  return id;
}
const BookId kToday = book(1), kOther = book(2);

}  // namespace

TEST_CASE("the check character is the standard's") {
  // ISO/IEC 7064, MOD 37,36. Worked examples from memory: the identifier of the Global Release Identifier standard, A1-2425G-ABC1234002-M,
  // and those told of ISAN (ISO 15706, 15706-2), 0000-0000-3A8D-0000-Z-0000-0000-6 and 0000-0001-8947-0000-8-0000-0000-D.
  CHECK(check_character("A12425GABC1234002") == 'M');
  CHECK(check_character("000000003A8D0000") == 'Z');
  CHECK(check_character("000000003A8D000000000000") == '6');
  CHECK(check_character("0000000189470000") == '8');
  CHECK(check_character("000000018947000000000000") == 'D');
  CHECK_THROWS_AS(check_character("WL:"), std::logic_error);
}

TEST_CASE("a tag's code says its event and its number") {
  for (const std::int64_t number : {std::int64_t{1}, std::int64_t{36}, std::int64_t{137}, kHighestTagNumber}) {
    const auto code = tag_code(kToday, number);
    REQUIRE(code);
    CHECK(code->substr(0, 3) == "WL:");
    CHECK(code->size() <= 21);
    const auto read = tag_code_from(*code);
    REQUIRE(read);
    CHECK(*read == TagCode{event_short_id(kToday), number});
    CHECK(tag_number_from(*code, kToday) == number);
  }
  CHECK(event_short_id(kToday).size() == 6);
  CHECK(event_short_id(kToday) != event_short_id(kOther));
  // Printed tags outlive the version that printed them: this very text is to be read for ever. Computed with another program too.
  CHECK(tag_code(kToday, 137).value() == "WL:AS59RB:137:9");
}

TEST_CASE("a tag without an event or with a number that is none has no code") {
  CHECK(tag_code(BookId{}, 1).error().code == FaultCode::bad_input);
  CHECK(tag_code(kToday, 0).error().code == FaultCode::bad_input);
  CHECK(tag_code(kToday, -4).error().code == FaultCode::bad_input);
  CHECK(tag_code(kToday, kHighestTagNumber + 1).error().code == FaultCode::bad_input);
}

TEST_CASE("a scanner may type spaces round the code and lower case") {
  std::string code = tag_code(kToday, 52).value();
  for (char& c : code)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  CHECK(tag_number_from("  " + code + "\r\n", kToday) == 52);
}

TEST_CASE("every single misread character in a tag's code is found, and nearly every swap of neighbours") {
  // ISO/IEC 7064 finds every single substitution. Of swaps of neighbours a hybrid system may miss a few: fewer than chance would.
  const std::string alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
  int swaps = 0, unseen = 0;
  for (const std::int64_t number : {1, 19, 91, 137, 1024, 987654321}) {
    const std::string code = tag_code(kToday, number).value();
    for (std::size_t i = 0; i < code.size(); ++i) {
      for (const char c : alphabet) {
        if (c == code[i]) continue;
        std::string wrong = code;
        wrong[i] = c;
        INFO(wrong);
        CHECK_FALSE(tag_code_from(wrong));
      }
      if (i + 1 == code.size() || code[i] == code[i + 1]) continue;
      std::string swapped = code;
      std::swap(swapped[i], swapped[i + 1]);
      ++swaps;
      if (tag_code_from(swapped)) ++unseen;
    }
  }
  CHECK(swaps > 60);
  CHECK(unseen <= swaps / 36);
}

TEST_CASE("a tag of another event is refused by what it is") {
  const auto read = tag_number_from(tag_code(kOther, 3).value(), kToday);
  REQUIRE_FALSE(read);
  CHECK(read.error().code == FaultCode::refused);
  CHECK(read.error().what == "this tag is of another event");
  CHECK_FALSE(read.error().what_to_do.empty());
}

TEST_CASE("what is no tag's code is told from a damaged one") {
  for (const char* text : {"", " ", "WL", "137", "Wladimir", "WL 4", "Kova", "https://example.org", "wl4K7Q0B137T"}) {
    INFO(text);
    CHECK_FALSE(looks_like_tag_code(text));
    REQUIRE_FALSE(tag_code_from(text));
    CHECK(tag_code_from(text).error().code == FaultCode::bad_input);
  }
  const std::string id = event_short_id(kToday);
  const std::vector<std::string> damaged = {
      "WL:",           "WL:::",         "WL:" + id,      "WL:" + id + ":",      "WL:" + id + "::0",
      "WL:" + id + ":-1:0", "WL:" + id + ":+1:0", "WL:" + id + ":01:0", "WL:" + id + ":1 :0", "WL:" + id + ":99999999999999999999:0",
      "WL:" + id + ":1:00", "WL:" + id + ":1:\xC3\x84", "WL:ILOU00:1:0", tag_code(kToday, 5).value() + ":"};
  for (const std::string& text : damaged) {
    INFO(text);
    CHECK(looks_like_tag_code(text));
    REQUIRE_FALSE(tag_code_from(text));
    CHECK(tag_code_from(text).error().code == FaultCode::malformed);
  }
  CHECK_FALSE(tag_code_from("WL:" + std::string(1'000'000, '1')));
}

TEST_CASE("a scanner that types for another keyboard is told so") {
  // A scanner that sends the keys of a US keyboard to a device set to German types Ö for the colon.
  const auto read = tag_code_from("WLÖ4K7Q0BÖ137ÖT");
  REQUIRE_FALSE(read);
  CHECK(read.error().code == FaultCode::bad_input);
  CHECK(read.error().what.find("keyboard") != std::string::npos);
}
