#include "core/bed/net.h"

#include <boost/json.hpp>
#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

#include "core/bed/setup.h"
#include "tests/support/published.h"

using namespace weavelog;
using weavelog::test::published_json;

namespace {

double number(const boost::json::value& of, std::string_view name) {
  const auto& value = of.at(name);
  return value.is_string() ? std::stod(std::string(value.as_string())) : value.to_number<double>();
}

HeadOutline rectangle(double width, double length) {
  return HeadOutline::of_corners({{0, 0}, {width, 0}, {width, length}, {0, length}}).value();
}

/// Evenly spaced strings all over a head, the frame one gap beyond the outermost.
StringNet even_net(const HeadOutline& head, int mains, int crosses, const NetString& main, const NetString& cross) {
  BedPattern pattern;
  for (int i = 1; i <= mains; ++i) pattern.main_positions.push_back(head.half_width() * (2.0 * i / (mains + 1) - 1));
  for (int i = 1; i <= crosses; ++i) pattern.cross_positions.push_back(head.half_length() * (2.0 * i / (crosses + 1) - 1));
  const auto layout = lay_out(head, pattern).value();
  return StringNet::make(layout, std::vector<NetString>(layout.mains.size(), main), std::vector<NetString>(layout.crosses.size(), cross)).value();
}

/// A membrane of tension S (N/m) and mass sigma (kg/m2), woven: by two strings a gap, each with half the mass.
StringNet woven(const HeadOutline& head, int mains, int crosses, double sx, double sy, double sigma) {
  const double gap_x = 2 * head.half_width() / (mains + 1) / 1000, gap_y = 2 * head.half_length() / (crosses + 1) / 1000;
  return even_net(head, mains, crosses, {sy * gap_x, 0, sigma * gap_x / 2}, {sx * gap_y, 0, sigma * gap_y / 2});
}

StringNet study_bed(const boost::json::value& row, double elasticity) {
  const std::string pattern_text(row.at("pattern").as_string());
  BedPattern pattern;
  pattern.widening = 1;
  pattern.mains = std::stoi(pattern_text);
  pattern.crosses = std::stoi(pattern_text.substr(pattern_text.find('x') + 1));
  const auto head = HeadOutline::of_axes(1000 * number(row, "half_width_m"), 1000 * number(row, "half_length_m")).value();
  const auto layout = lay_out(head, pattern).value();
  const NetString string{number(row, "tension_N"), elasticity, 0.0015};
  return StringNet::make(layout, std::vector<NetString>(layout.mains.size(), string), std::vector<NetString>(layout.crosses.size(), string)).value();
}

/// log2 of how much smaller an error becomes from one grid to one twice as fine.
double order(double coarse, double fine) {
  return std::log2(std::abs(coarse / fine));
}

}  // namespace

TEST_CASE("modes of a net come to those of a rectangular membrane, with the square of the gap", "[bed][published]") {
  // Closed form; fixtures/published/membrane_modes.json.
  const auto document = published_json("membrane_modes.json");
  for (const auto& row : document.at("rectangle").as_array()) {
    if (number(row, "m") != 1 || number(row, "n") != 1) continue;
    std::vector<double> errors;
    for (const int strings : {7, 15, 31}) {
      const auto net = woven(rectangle(1000 * number(row, "a_m"), 1000 * number(row, "b_m")), strings, strings, number(row, "Sx_N_per_m"),
                             number(row, "Sy_N_per_m"), number(row, "sigma_kg_m2"));
      errors.push_back(net.modes(1).value()[0] / number(row, "f_Hz") - 1);
    }
    CHECK(std::abs(errors.back()) < 2e-3);
    CHECK(order(errors[0], errors[1]) == Approx(2).margin(0.25));
    CHECK(order(errors[1], errors[2]) == Approx(2).margin(0.25));
  }
}

TEST_CASE("modes of a net come to the zeros of Bessel functions on a circle, and to Mathieu's on an ellipse", "[bed][published]") {
  const auto document = published_json("membrane_modes.json");
  const double sigma = 0.24, s = 16'000, radius = 141.6;
  const double truth = number(document.at("circle").as_array()[0], "f_Hz");
  std::vector<double> errors;
  for (const int strings : {11, 23, 47})
    errors.push_back(woven(HeadOutline::of_axes(radius, radius).value(), strings, strings, s, s, sigma).modes(1).value()[0] / truth - 1);
  CHECK(std::abs(errors[1]) < 6e-3);
  CHECK(std::abs(errors[2]) < 2e-3);
  CHECK(order(errors[0], errors[2]) > 2);  // over two halvings: at least as the gap
  const auto second = woven(HeadOutline::of_axes(radius, radius).value(), 47, 47, s, s, sigma).modes(6).value();
  CHECK(second[1] == Approx(number(document.at("circle").as_array()[1], "f_Hz")).epsilon(0.004));
  CHECK(second[5] == Approx(number(document.at("circle").as_array()[2], "f_Hz")).epsilon(0.006));
  for (const auto& row : document.at("equal_area_shape").at("ellipse").as_array()) {
    const double aspect = number(row, "aspect"), root = std::sqrt(aspect);
    const auto net = woven(HeadOutline::of_axes(radius / root, radius * root).value(), 43, 43, s, s, sigma);
    CHECK(net.modes(1).value()[0] / truth == Approx(number(row, "f_over_equal_area_circle")).epsilon(0.003));
  }
}

TEST_CASE("a disc load on a fine net sinks as on a membrane", "[bed][published]") {
  const auto document = published_json("membrane_deflection.json");
  for (const auto& row : document.at("circular_disc_load").as_array()) {
    const double radius = 1000 * number(row, "R_m"), s = number(row, "S_N_per_m");
    NetContact contact;
    contact.radius = 1000 * number(row, "b_m");
    std::vector<double> errors;
    for (const int strings : {23, 55}) {
      const auto net = woven(HeadOutline::of_axes(radius, radius).value(), strings, strings, s, s, 0.24);
      errors.push_back(net.press_lightly(contact).value().stiffness() / number(row, "k_mean_N_per_m") - 1);
    }
    CHECK(std::abs(errors[1]) < 0.012);
    CHECK(std::abs(errors[1]) < std::abs(errors[0]) + 1e-3);
  }
}

TEST_CASE("a rectangular patch on a fine net sinks as on a rectangular membrane, with the square of the gap", "[bed][published]") {
  // Poisson's equation on a rectangle with an even load on a patch in the middle: the double sine series (Navier's way, standard; the file's values
  // were made by series and confirmed by finite differences).
  const auto series = [](double p, double s, double a, double b, double u, double v) {
    double sum = 0;
    const double pi = std::numbers::pi;
    for (int m = 1; m < 1200; m += 2)
      for (int n = 1; n < 1200; n += 2) {
        const double load = 16 * p / (pi * pi * u * v * m * n) * std::sin(m * pi * u / (2 * a)) * std::sin(n * pi * v / (2 * b));
        sum += load / (s * pi * pi * (m * m / (a * a) + n * n / (b * b)));  // in the middle sin(m pi / 2) comes twice, so its sign falls out
      }
    return sum;
  };
  const auto document = published_json("membrane_deflection.json");
  for (const auto& row : document.at("rectangular_patch_load").as_array()) {
    const double a = number(row, "a_m"), b = number(row, "b_m"), u = number(row, "patch_x_m"), v = number(row, "patch_y_m"),
                 s = number(row, "S_N_per_m");
    const double p = number(row, "P_N"), wanted = number(row, "w_centre_m");
    CHECK(series(p, s, a, b, u, v) == Approx(wanted).epsilon(1e-5));
    // The net takes loads on crossings: by reciprocity what the patch does to the middle is what a load in the middle does to the patch.
    std::vector<double> errors;
    for (const double gap : {0.02, 0.01}) {
      const int nx = static_cast<int>(std::lround(a / gap)) - 1, ny = static_cast<int>(std::lround(b / gap)) - 1;
      const auto net = woven(rectangle(1000 * a, 1000 * b), nx, ny, s, s, 0.24);
      NetContact middle;
      middle.radius = 1;
      middle.share = NetContact::Share::crossings;
      const auto shape = net.shape_under(middle, 1).value();
      const auto crossings = net.crossings();
      double sunk = 0;
      for (std::size_t i = 0; i < shape.size(); ++i) {
        const auto covered = [&](double at, double half) {  // of a crossing's own gap, by the patch
          return std::clamp((std::min(at / 1000 + gap / 2, half) - std::max(at / 1000 - gap / 2, -half)) / gap, 0.0, 1.0);
        };
        sunk += p * covered(crossings[i].x, u / 2) * covered(crossings[i].y, v / 2) * gap * gap / (u * v) * shape[i];
      }
      errors.push_back(sunk / wanted - 1);
    }
    CHECK(std::abs(errors[1]) < 0.01);
    CHECK(order(errors[0], errors[1]) > 1.7);
  }
}

TEST_CASE("blocks of a four by four net sink as solved by hand", "[bed]") {
  // Gaps of 1 m and tensions of 1 N: four times a crossing less its four neighbours is its load. By symmetry a corner c, a side e and an inner i are
  // left.
  const auto net = even_net(rectangle(5000, 5000), 4, 4, {1, 0, 0}, {1, 0, 0});
  NetContact block;
  block.share = NetContact::Share::crossings;
  // A quarter on each of the inner four: 4c = 2e, 4e = c + e + i, 4i = 2i + 2e + 1/4, so c = 1/24, e = 1/12, i = 5/24.
  block.radius = 800;
  const auto inner = net.press_lightly(block).value();
  CHECK(inner.loaded == 4);
  CHECK(inner.mean == Approx(5 / 24.0).epsilon(1e-12));
  CHECK(inner.deepest == Approx(5 / 24.0).epsilon(1e-12));
  CHECK(inner.mains_share == Approx(0.5).epsilon(1e-12));
  const auto shape = net.shape_under(block, 1).value();
  const double by_hand[] = {1 / 24.0, 1 / 12.0, 1 / 12.0, 1 / 24.0, 1 / 12.0, 5 / 24.0, 5 / 24.0, 1 / 12.0};
  for (std::size_t k = 0; k < 8; ++k) {
    CHECK(shape[k] == Approx(by_hand[k]).epsilon(1e-12));
    CHECK(shape[15 - k] == Approx(by_hand[k]).epsilon(1e-12));
  }
  // A sixteenth on each of all: 4c = 2e + f, 3e = c + i + f, 2i = 2e + f with f = 1/16, so c = 5/6 f, e = 7/6 f, i = 5/3 f; their mean is 29/384.
  block.radius = 2200;
  const auto all = net.press_lightly(block).value();
  CHECK(all.loaded == 16);
  CHECK(all.mean == Approx(29 / 384.0).epsilon(1e-12));
  CHECK(all.deepest == Approx(5 / 48.0).epsilon(1e-12));
  // Strings twice as tight sink half as far, whatever the block.
  CHECK(even_net(rectangle(5000, 5000), 4, 4, {2, 0, 0}, {2, 0, 0}).press_lightly(block).value().mean == Approx(29 / 768.0).epsilon(1e-12));
}

TEST_CASE("crossing strings sink by the exact Green's function of the grid", "[bed][published]") {
  const auto document = published_json("membrane_deflection.json");
  for (const auto& row : document.at("grid_green_function").as_array()) {
    const int nx = static_cast<int>(number(row, "nx")), ny = static_cast<int>(number(row, "ny"));
    // cx works along x (crosses), cy along y; unit gaps of 1 m, so tension by gap is the number itself.
    const auto net = even_net(rectangle(1000.0 * (nx + 1), 1000.0 * (ny + 1)), nx, ny, {number(row, "cy"), 0, 0}, {number(row, "cx"), 0, 0});
    const auto& node = row.at("load_node").as_array();
    NetContact contact;
    contact.x = 1000 * (node[0].to_number<double>() + 1 - (nx + 1) / 2.0);
    contact.y = 1000 * (node[1].to_number<double>() + 1 - (ny + 1) / 2.0);
    contact.radius = 100;
    contact.share = NetContact::Share::crossings;
    CHECK(net.press_lightly(contact).value().mean == Approx(number(row, "w_at_load")).epsilon(1e-12));
  }
  for (const auto& row : document.at("grid_patch_load").as_array()) {
    const int nx = static_cast<int>(number(row, "nx")), ny = static_cast<int>(number(row, "ny"));
    const auto& origin = row.at("block_origin").as_array();
    if (number(row, "block") == 4) {  // sixteen crossings lie in no disc of their own: one by one
      const auto net = even_net(rectangle(1000.0 * (nx + 1), 1000.0 * (ny + 1)), nx, ny, {1, 0, 0}, {1, 0, 0});
      std::vector<double> sum(16, 0.0);
      const auto place = [&](int k) {
        return static_cast<std::size_t>((origin[0].to_number<int>() + k / 4) * ny + origin[1].to_number<int>() + k % 4);
      };
      for (int k = 0; k < 16; ++k) {
        NetContact one;
        one.x = 1000 * (origin[0].to_number<double>() + k / 4 + 1 - (nx + 1) / 2.0);
        one.y = 1000 * (origin[1].to_number<double>() + k % 4 + 1 - (ny + 1) / 2.0);
        one.radius = 100;
        one.share = NetContact::Share::crossings;
        const auto shape = net.shape_under(one, 1 / 16.0).value();
        for (int i = 0; i < 16; ++i) sum[static_cast<std::size_t>(i)] += shape[place(i)];
      }
      double mean = 0;
      for (const double one : sum) mean += one / 16;
      CHECK(mean == Approx(number(row, "mean_w")).epsilon(1e-12));
      CHECK(*std::max_element(sum.begin(), sum.end()) == Approx(number(row, "max_w")).epsilon(1e-12));
      continue;
    }
    NetContact four;
    four.x = 1000 * (origin[0].to_number<double>() + 1.5 - (nx + 1) / 2.0);
    four.y = 1000 * (origin[1].to_number<double>() + 1.5 - (ny + 1) / 2.0);
    four.radius = 800;
    four.share = NetContact::Share::crossings;
    const auto pressed = even_net(rectangle(1000.0 * (nx + 1), 1000.0 * (ny + 1)), nx, ny, {1, 0, 0}, {1, 0, 0}).press_lightly(four).value();
    CHECK(pressed.loaded == 4);
    CHECK(pressed.mean == Approx(number(row, "mean_w")).epsilon(1e-12));
    CHECK(pressed.deepest == Approx(number(row, "max_w")).epsilon(1e-12));
  }
  const auto net = even_net(rectangle(4000, 4000), 3, 3, {1, 0, 0}, {1, 0, 0});
  NetContact middle;
  middle.radius = 100;
  middle.share = NetContact::Share::crossings;
  const auto shape = net.shape_under(middle, 1).value();
  const double expected[] = {1 / 16.0, 1 / 8.0, 1 / 16.0, 1 / 8.0, 3 / 8.0, 1 / 8.0, 1 / 16.0, 1 / 8.0, 1 / 16.0};
  for (std::size_t i = 0; i < 9; ++i) CHECK(shape[i] == Approx(expected[i]).epsilon(1e-12));
}

TEST_CASE("beds of a model study come out alike, small loads to its last digits, large ones within its two bounds", "[bed][published]") {
  const auto document = published_json("bed_physics.json");
  for (const auto& row : document.at("bed_linear").at("rows").as_array()) {
    NetContact contact;
    contact.radius = 1000 * number(row, "contact_radius_m");
    contact.share = NetContact::Share::crossings;
    const auto pressed = study_bed(row, 0).press_lightly(contact).value();
    CHECK(pressed.loaded == static_cast<int>(number(row, "loaded_crossings")));
    CHECK(pressed.stiffness() == Approx(number(row, "k_grid_N_per_m")).epsilon(1e-8));
  }
  const auto& bed = document.at("bed_linear").at("rows").as_array()[1];
  for (const auto& row : document.at("bed_loaded").at("rows").as_array()) {
    const auto net = study_bed(bed, number(row, "EA_N"));
    NetContact contact;
    contact.share = NetContact::Share::crossings;
    // There, strings do not slip and crossings may move sideways: between our two ways to take crossings.
    const double slide = net.press(contact, number(row, "load_N")).value().stiffness();
    const double hold = net.press(contact, number(row, "load_N"), StringNet::Crossings::hold).value().stiffness();
    const double study = number(row, "secant_k_N_per_m");
    CHECK(slide <= study * (1 + 1e-6));
    CHECK(study <= hold * (1 + 1e-6));
    CHECK(slide == Approx(study).epsilon(0.02));
  }
}

TEST_CASE("one string under a load in its middle is a textbook's", "[bed][published]") {
  const auto document = published_json("bed_physics.json");
  // One main crossed by one cross of next to no tension.
  const auto single = [](double length_mm, double at_mm, NetString string) {
    BedPattern pattern;
    pattern.main_positions = {0};
    pattern.cross_positions = {at_mm - length_mm / 2};
    const auto layout = lay_out(rectangle(1e5 - 1, length_mm), pattern).value();
    return StringNet::make(layout, std::vector<NetString>{string}, std::vector<NetString>{{1e-6, 0, 1e-12}}).value();
  };
  for (const auto& row : document.at("string_point").at("rows").as_array()) {
    const double length = 1000 * number(row, "length_m"), at = 1000 * number(row, "load_position_m");
    NetContact contact;
    contact.y = at - length / 2;
    contact.radius = 1;
    contact.share = NetContact::Share::crossings;
    CHECK(single(length, at, {number(row, "tension_N"), 0, 0.001}).press_lightly(contact).value().stiffness() ==
          Approx(number(row, "stiffness_N_per_m")).epsilon(1e-6));
  }
  for (const auto& row : document.at("string_point_nonlinear").at("rows").as_array()) {
    const double length = 1000 * number(row, "length_m");
    NetContact contact;
    contact.radius = 1;
    contact.share = NetContact::Share::crossings;
    const auto pressed =
        single(length, length / 2, {number(row, "tension_N"), number(row, "EA_N"), 0.001}).press(contact, number(row, "force_exact_N")).value();
    CHECK(pressed.mean == Approx(number(row, "midspan_deflection_m")).epsilon(1e-6));
  }
  for (const auto& row : document.at("string_frequency").at("rows").as_array()) {
    BedPattern pattern;
    const double length = 1000 * number(row, "length_m");
    for (int i = 1; i < 60; ++i) pattern.cross_positions.push_back(length * (i / 60.0 - 0.5));
    pattern.main_positions = {0};
    const auto layout = lay_out(rectangle(1e5 - 1, length), pattern).value();
    const auto net = StringNet::make(layout, std::vector<NetString>{{number(row, "tension_N"), 0, number(row, "linear_density_kg_m")}},
                                     std::vector<NetString>(59, {1e-6, 0, 1e-14}));
    CHECK(net.value().modes(static_cast<int>(number(row, "mode_n"))).value().back() == Approx(number(row, "frequency_Hz")).epsilon(5e-4));
  }
}

TEST_CASE("a finer net of the same strings sinks alike under the same disc", "[bed]") {
  BedSetup setup;
  const auto coarse = net_of(setup, 170, 160, 1).value(), fine = net_of(setup, 170, 160, 6).value();
  CHECK(coarse.press_lightly({}).value().stiffness() == Approx(fine.press_lightly({}).value().stiffness()).epsilon(1e-9));
  CHECK(coarse.press({}, 800).value().stiffness() == Approx(fine.press({}, 800).value().stiffness()).epsilon(0.004));
  CHECK(coarse.modes(1).value()[0] == Approx(fine.modes(1).value()[0]).epsilon(0.01));
}

TEST_CASE("stiffness is proportional to tension, and goes with the geometric mean of mains and crosses", "[bed]") {
  BedSetup setup;
  const auto stiff = [&](double mains, double crosses) { return net_of(setup, mains, crosses).value().press_lightly({}).value().stiffness(); };
  CHECK(stiff(220, 200) == Approx(1.1 * stiff(200, 200 / 1.1)).epsilon(1e-9));
  CHECK(stiff(220, 180) == Approx(stiff(std::sqrt(220.0 * 180), std::sqrt(220.0 * 180))).epsilon(0.01));
  const auto pressed = net_of(setup, 200, 200).value().press_lightly({}).value();
  CHECK(std::log(stiff(202, 200) / stiff(198, 200)) / std::log(202.0 / 198) == Approx(pressed.mains_share).margin(1e-4));
}

TEST_CASE("a net that can't be is named", "[bed]") {
  BedSetup setup;
  const auto layout = layout_of(setup).value();
  const std::vector<NetString> good(16, {200, 0, 0.0015}), slack(16, {-5, 0, 0}), crosses(19, {200, 0, 0.0015});
  CHECK(StringNet::make(layout, slack, crosses).error().where == "main 1");
  CHECK_FALSE(StringNet::make(layout, crosses, crosses));
  const auto net = StringNet::make(layout, good, crosses).value();
  NetContact off;
  off.x = 500;
  CHECK(net.press_lightly(off).error().where == "contact");
  off = {};
  off.radius = -1;
  CHECK_FALSE(net.press_lightly(off));
  CHECK_FALSE(net.press({}, -3));
  CHECK_FALSE(net.press({}, std::nan("")));
  CHECK_FALSE(net.modes(0));
  CHECK(net.map({}).size() > 100);
}
