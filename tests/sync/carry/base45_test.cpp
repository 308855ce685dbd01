// Base45 against the examples of its standard.

#include <catch2/catch.hpp>

#include "sync/carry/base45.h"

using namespace weavelog;

TEST_CASE("Base45 gives and takes the examples of RFC 9285, sections 4.3 and 4.4") {
  const std::pair<std::string_view, std::string_view> examples[] = {
      {"AB", "BB8"}, {"Hello!!", "%69 VD92EX0"}, {"base-45", "UJCLQE7W581"}, {"ietf!", "QED8WEX0"}};
  for (const auto& [plain, text] : examples) {
    CHECK(to_base45(as_bytes(plain)) == text);
    const auto back = from_base45(text);
    REQUIRE(back);
    CHECK(as_text(*back) == plain);
  }
  CHECK(to_base45({}).empty());
  CHECK(from_base45("")->empty());
}

TEST_CASE("Base45 that stands for more than its bytes can hold, or has other characters, is refused") {
  // RFC 9285, section 6: "FGW" is 65535, "GGW" would be 65536.
  CHECK(*from_base45("FGW") == Bytes{0xff, 0xff});
  CHECK_FALSE(from_base45("GGW"));
  CHECK_FALSE(from_base45(":::"));
  CHECK(*from_base45("U5") == Bytes{0xff});
  CHECK_FALSE(from_base45("V5"));
  CHECK_FALSE(from_base45("bb8"));
  CHECK_FALSE(from_base45("BB"  "_"));
  CHECK_FALSE(from_base45("BB8A"));
  Bytes all;
  for (int i = 0; i < 513; ++i) {
    CHECK(*from_base45(to_base45(all)) == all);
    all.push_back(static_cast<std::uint8_t>(i * 7));
  }
}
