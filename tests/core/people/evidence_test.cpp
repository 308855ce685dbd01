// Fellegi and Sunter (1969); worked cases in fixtures/published/names_fellegi_sunter.json.
#include "core/people/evidence.h"

#include <catch2/catch.hpp>

#include "tests/support/published.h"

using namespace weavelog;

namespace {
double number_in(const boost::json::value& object, std::string_view key) {
  return std::stod(test::text_in(object, key));
}
}  // namespace

TEST_CASE("weights and probabilities follow the worked cases", "[published]") {
  const auto cases = test::published_json("names_fellegi_sunter.json");
  for (const auto& example : cases.at("own").as_array()) {
    double total = weight_of_prior(number_in(example, "prior"));
    if (example.as_object().contains("prior_weight"))
      CHECK(total == Approx(number_in(example, "prior_weight")).epsilon(1e-10));
    for (const auto& field : example.at("fields").as_array()) {
      const Odds odds{number_in(field, "m"), number_in(field, "u")};
      const double weight = field.at("agree").as_bool() ? weight_of(odds) : weight_against(odds);
      CAPTURE(test::text_in(field, "field"));
      CHECK(weight == Approx(number_in(field, "weight")).epsilon(1e-10));
      total += weight;
    }
    CHECK(total == Approx(number_in(example, "total_weight")).epsilon(1e-10));
    CHECK(probability_of(total) == Approx(number_in(example, "probability")).epsilon(1e-10));
  }
  CHECK(cases.at("own").as_array().size() == 3);
}

TEST_CASE("the published guide's example and table of probabilities hold", "[published]") {
  const auto cases = test::published_json("names_fellegi_sunter.json");
  const auto& example = cases.at("published_example");
  double total = 0;
  for (const auto& term : example.at("terms").as_array()) total += term.to_number<double>();
  CHECK(total == Approx(example.at("sum_of_printed_terms").to_number<double>()));
  CHECK(probability_of(9.48) == Approx(number_in(example, "p_at_9_48")).epsilon(1e-10));
  CHECK(probability_of(9.47) == Approx(number_in(example, "p_at_9_47")).epsilon(1e-10));
  for (const auto& pair : cases.at("weight_to_probability").as_array())
    CHECK(probability_of(std::stod(pair.at(0).as_string().c_str())) ==
          Approx(std::stod(pair.at(1).as_string().c_str())).epsilon(1e-10));
}

TEST_CASE("weights far out stay finite probabilities") {
  CHECK(probability_of(5000) == 1);
  CHECK(probability_of(-5000) == 0);
}
