// `quality` and `calibrate` out of files alone: no folder, no database.

#include <cmath>

#include "core/plan/chance.h"
#include "tests/cli/no_folder.h"

using namespace weavelog::testing;

namespace {

using Files = NoFolder;

double number_at(const json::value& document, const std::string& pointer) {
  boost::system::error_code error;
  const json::value* found = document.find_pointer(pointer, error);
  if (found == nullptr) FAIL("no " << pointer << " in " << json::serialize(document));
  return found->to_number<double>();
}

/// A room of three benches with wanted stiffness; from racket 60 on, T2 pulls `percent` off.
std::string room(double percent) {
  weavelog::Chance chance(4);
  std::string out = "racket,reading,wanted,stringer,machine,frame\n";
  const char* people[] = {"Ida", "Bo", "Cy"};
  for (int i = 0; i < 120; ++i) {
    const int stringer = i % 3, machine = i % 5 == 0 ? (stringer + 1) % 3 : stringer;
    const double wanted = 28 + i % 7;
    const double value = wanted * (1 + (1.75 * chance.normal() + (i >= 60 && machine == 1 ? percent : 0)) / 100);
    out += std::to_string(i + 1) + "," + std::to_string(value) + " N/mm," + std::to_string(wanted) + " N/mm," + people[stringer] + ",T" +
           std::to_string(machine + 1) + ",frame " + std::to_string(i % 40) + "\n";
  }
  return out;
}

}  // namespace

TEST_CASE("statistics of a column have all digits, read as written") {
  const Files files;
  // NIST StRD, SmLs07 and NumAcc3: what doubles cannot hold is not lost.
  const char* first[] = {"1000000000000.4", "1000000000000.3", "1000000000000.5", "1000000000000.3", "1000000000000.5",
                         "1000000000000.3", "1000000000000.5", "1000000000000.3", "1000000000000.5"};
  std::string anova = "treatment,response\n", plain = "x\n1000000.2\n";
  for (int t = 0; t < 9; ++t)
    for (int i = 0; i < 21; ++i) {
      const long tenths = first[t][14] - '0' + (i == 0 ? 0 : i % 2 == 1 ? -1 : 1);
      anova += std::to_string(t + 1) + ",1000000000000." + std::to_string(tenths) + "\n";
    }
  for (int i = 0; i < 1000; ++i) plain += i % 2 == 0 ? "1000000.1\n" : "1000000.3\n";
  const auto table = files.ask({"quality", "column", files.file("a.csv", anova), "--value", "response", "--by", "treatment"});
  CHECK(number_at(table, "/one_way/f") == 21.0);
  CHECK(number_at(table, "/one_way/between/squares") == 1.68);
  CHECK(number_at(table, "/one_way/within/squares") == 1.8);
  CHECK(number_at(table, "/one_way/residual_deviation") == 0.1);
  const auto hard = files.ask({"quality", "column", files.file("n.csv", plain)});
  CHECK(number_at(hard, "/mean") == 1000000.2);
  CHECK(number_at(hard, "/deviation") == 0.1);
  CHECK(number_at(hard, "/lag1") == -0.999);
  const auto line = files.ask({"quality", "column", files.file("l.csv", "x,y\n1,3\n2,5\n3,7\n4,9.5\n"), "--value", "y", "--x", "x"});
  CHECK(number_at(line, "/line/coefficients/1/coefficient") == 2.15);
  CHECK(number_at(line, "/line/coefficients/0/coefficient") == 0.75);
  // As text, digits are all there too.
  CHECK(files.run({"quality", "column", files.file("n.csv", plain)}).out.find("mean       1000000.2\ndeviation  0.1\nlag-1      -0.999\n") != std::string::npos);

  const auto fault = files.ask({"quality", "column", files.file("b.csv", "x\n1\ntwo\n")}, 1);
  CHECK(text_at(fault, "/error/where").find("b.csv, line 3, column 1 (x)") != std::string::npos);
  CHECK(text_at(files.ask({"quality", "column", (files.home / "none.csv").string()}, 4), "/error/what") == "there is no such file");
  files.ask({"quality", "column", files.file("c.csv", "x\n1\n2\n"), "--by", "y"}, 1);
}

TEST_CASE("a machine that went low signals, and is named with its evidence") {
  const Files files;
  const auto path = files.file("room.csv", room(-4));
  const auto found = files.ask({"quality", "signals", path});
  REQUIRE(size_at(found, "/signals") > 0);
  bool machine = false;
  for (const json::value& signal : found.at("signals").as_array())
    for (const json::value& chart : signal.at("charts").as_array()) {
      if (text_at(chart, "/chart") != "machine" || text_at(chart, "/name") != "T2" || machine) continue;
      machine = true;
      CHECK(number_at(chart, "/percent") < -1.5);
      CHECK(std::stoi(text_at(signal, "/racket")) > 60);
      CHECK(std::stoi(text_at(signal, "/racket")) <= 95);
    }
  CHECK(machine);
  const auto why = files.ask({"quality", "causes", path, "--racket", "106"});
  CHECK(text_at(why, "/causes/0/cause") == "machine_calibration");
  CHECK(text_at(why, "/causes/0/evidence").find("from T2 read ") != std::string::npos);
  const auto german = files.ask({"--language", "de", "quality", "causes", path, "--racket", "106"});
  CHECK(text_at(german, "/causes/0/advice").find("T2 vor dem nächsten Schläger") == 0);
  // A gauge that found T2 right speaks against it.
  const auto gauged = files.ask({"quality", "causes", path, "--racket", "106", "--gauged", "T2=0.1,0.3"});
  CHECK(text_at(gauged, "/causes/0/cause") != "machine_calibration");
  files.ask({"quality", "causes", path, "--gauged", "T2"}, 1);
  files.ask({"quality", "causes", path, "--racket", "999"}, 4);
}

TEST_CASE("charts, variance and capability come out of readings") {
  const Files files;
  const auto quiet = files.file("quiet.csv", room(0)), low = files.file("low.csv", room(-4));
  const auto charts = files.ask({"quality", "charts", low, "--by", "machine", "--csv", (files.home / "out.csv").string()});
  REQUIRE(size_at(charts, "/charts") == 3);
  CHECK(number_at(charts, "/charts/0/limits/centre") == 0);
  CHECK(number_at(charts, "/charts/0/limits/upper") == Approx(3 * number_at(charts, "/scatter/percent")));
  std::ifstream written(files.home / "out.csv");
  std::string header;
  std::getline(written, header);
  CHECK(header.find("chart,name,racket,value,unit,centre") == 0);

  // The e-Handbook's ten readings (6.3.2.2), as one setup.
  std::string example = "reading,setup\n";
  for (const char* one : {"49.6", "47.6", "49.9", "51.3", "47.8", "51.2", "52.6", "52.4", "53.6", "52.1"}) example += std::string(one) + ",a\n";
  const auto setup = files.ask({"quality", "charts", files.file("h.csv", example), "--by", "setup"});
  CHECK(number_at(setup, "/charts/0/limits/upper") == Approx(55.8024116801).epsilon(1e-11));
  CHECK(number_at(setup, "/charts/0/limits/lower") == Approx(45.8175883199).epsilon(1e-11));
  const auto few = files.ask({"quality", "charts", files.file("f.csv", "reading,setup\n25,a\n25.1,a\n24.8,a\n"), "--by", "setup"});
  CHECK(text_at(few, "/charts/0/no_limits/what") == "so few readings have no limits: 3");

  const auto split = files.ask({"quality", "variance", low});
  CHECK(text_at(split, "/splits/1/by") == "machine");
  CHECK(number_at(split, "/splits/1/variance") > 0.5);
  CHECK(number_at(files.ask({"quality", "variance", quiet}), "/splits/1/variance") < 0.4);
  const auto keeps = files.ask({"quality", "capability", quiet, "--tolerance", "4"});
  CHECK(number_at(keeps, "/pp") == Approx(4 / (3 * 1.75)).epsilon(0.2));
  CHECK(number_at(keeps, "/pp_band/low") < number_at(keeps, "/pp"));
  files.ask({"quality", "capability", files.file("f.csv", "reading,wanted\n25,25\n25.1,25\n"), "--tolerance", "4"}, 1);
  files.ask({"quality", "capability", quiet}, 2);
  const auto power = files.ask({"quality", "power", "--scatter", "2", "--within", "10"});
  CHECK(number_at(power, "/charts/0/false_alarm_every") == Approx(370.4).margin(0.05));
  CHECK(number_at(power, "/charts/1/false_alarm_every") == Approx(91.75).margin(0.01));
  CHECK(number_at(power, "/charts/2/found_within") > 0.97);
}

TEST_CASE("a reading in another unit is refused with its place") {
  const Files files;
  const auto fault = files.ask({"quality", "signals", files.file("r.csv", "racket,reading,wanted\n1,25 N/mm,25 N/mm\n2,55 N/mm,25 N/mm\n")}, 1);
  CHECK(text_at(fault, "/error/where").find("r.csv, line 3, column 2 (reading)") != std::string::npos);
  CHECK(text_at(fault, "/error/what").find("as if in pounds for kilograms") != std::string::npos);
  files.ask({"quality", "signals", files.file("s.csv", "reading\n25\n26\n")}, 1);  // nothing to hold them against
}

TEST_CASE("a machine is calibrated against a gauge") {
  const Files files;
  std::string table = "machine,set,pulled,at\n";
  const double now[] = {19.3, 19.5, 21.2, 21.4, 23.3, 23.1, 25.2, 25.2, 27.1, 27.3};
  for (int i = 0; i < 10; ++i) table += "T1," + std::to_string(20 + 2 * (i / 2)) + " kg," + std::to_string(now[i]) + " kg,2031-05-26\n";
  const auto one = files.ask({"calibrate", files.file("g.csv", table), "--want", "25", "--want", "55 lb", "--now", "2031-07-01"});
  CHECK(number_at(one, "/settings/0/set") == Approx(25.784615384615).epsilon(1e-12));
  CHECK(one.at("settings").at(0).at("needed").as_bool());
  CHECK(number_at(one, "/settings/1/wanted") == Approx(24.9476).epsilon(1e-5));
  CHECK(text_at(one, "/state") == "beyond");
  CHECK(one.at("due").at("overdue").as_bool());
  CHECK(number_at(one, "/straight/coefficients/1") == 0.975);
  const auto said = files.run({"calibrate", files.file("g.csv", table), "--want", "25"});
  CHECK(said.out.find("To pull 25.00\u00a0kg, set 25.78\u00a0kg (estimate, 95 % between ") != std::string::npos);
  files.ask({"calibrate", files.file("g.csv", table), "--want", "40"}, 1);
  files.ask({"calibrate", files.file("g.csv", table), "--want", "25 mm"}, 1);
  files.ask({"calibrate", files.file("g.csv", table), "--machine", "T9"}, 4);
  const auto few = files.ask({"calibrate", files.file("few.csv", "set,pulled\n20,20.1\n22,22.2\n")}, 1);
  CHECK(text_at(few, "/error/what_to_do") == "pull at three settings or more, each twice");
}
