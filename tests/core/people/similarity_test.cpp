// Jaro-Winkler: Winkler (1994), Census RR94/05, Table 2.1, exact values of the plain algorithm. Edit
// distances: textbook pairs.
#include "core/people/similarity.h"

#include <catch2/catch.hpp>

#include "tests/support/published.h"

using namespace weavelog;

namespace {
double from_rational(const std::string& text) {
  const auto slash = text.find('/');
  return slash == std::string::npos ? std::stod(text)
                                    : std::stod(text.substr(0, slash)) / std::stod(text.substr(slash + 1));
}
}  // namespace

TEST_CASE("Jaro and Jaro-Winkler give the exact values of the published pairs, both ways round", "[published]") {
  int checked = 0;
  for (const auto& row : test::published_rows("names_jaro_winkler.csv")) {
    const auto& a = row.at("s1");
    const auto& b = row.at("s2");
    CAPTURE(a, b);
    const double jaro_exact = from_rational(row.at("jaro_exact"));
    const double winkler_exact = from_rational(row.at("jaro_winkler_exact_p0.1_max4"));
    CHECK(jaro(a, b) == Approx(jaro_exact).epsilon(1e-12));
    CHECK(jaro(b, a) == Approx(jaro_exact).epsilon(1e-12));
    CHECK(jaro_winkler(a, b) == Approx(winkler_exact).epsilon(1e-12));
    CHECK(jaro_winkler(b, a) == Approx(winkler_exact).epsilon(1e-12));
    ++checked;
  }
  CHECK(checked == 19);
}

TEST_CASE("the edit distance is the true Damerau-Levenshtein one", "[published]") {
  int checked = 0;
  for (const auto& row : test::published_rows("names_edit_distance.csv")) {
    CAPTURE(row.at("s1"), row.at("s2"));
    const auto exact = std::stoul(row.at("damerau_levenshtein_true"));
    CHECK(damerau_levenshtein(row.at("s1"), row.at("s2")) == exact);
    CHECK(damerau_levenshtein(row.at("s2"), row.at("s1")) == exact);
    ++checked;
  }
  CHECK(checked == 12);
}

TEST_CASE("empty texts are alike and unlike anything else") {
  CHECK(jaro_winkler("", "") == 1);
  CHECK(jaro_winkler("", "a") == 0);
  CHECK(damerau_levenshtein("", "") == 0);
}
