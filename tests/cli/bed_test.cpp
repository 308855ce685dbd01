// `bed` and `tone` out of values and files: no folder, no database.

#include <cmath>

#include "core/bed/wav.h"
#include "tests/cli/no_folder.h"
#include "tests/core/bed/made_sound.h"

using namespace weavelog::testing;

namespace {

using Bench = NoFolder;

double number(const json::value& of, const std::string& pointer) {
  return of.at_pointer(pointer).to_number<double>();
}

}  // namespace

TEST_CASE("a bed out of words: geometry, stiffness, map, what is left, the equivalent") {
  const Bench bench;
  const auto geometry = bench.ask({"bed", "geometry", "head=100in2", "pattern=16x19"});
  CHECK(number(geometry, "/area_cm2") == Approx(645.16));
  CHECK(size_at(geometry, "/mains") == 16);
  CHECK(number(geometry, "/string/metres") == Approx(11).margin(1.2));
  CHECK(geometry.at("within_rules").as_bool());

  const std::vector<std::string> setup{"head=100in2", "string=polyester", "gauge=1.25", "tension=24kg"};
  const auto with = [&](std::vector<std::string> before, std::vector<std::string> after = {}) {
    before.insert(before.end(), setup.begin(), setup.end());
    before.insert(before.end(), after.begin(), after.end());
    return before;
  };
  const auto stiff = bench.ask(with({"bed", "stiffness"}));
  CHECK(number(stiff, "/stiffness_N_per_mm/low") < number(stiff, "/stiffness_N_per_mm/value"));
  CHECK(number(stiff, "/stiffness_N_per_mm/value") == Approx(34).margin(8));
  CHECK(number(stiff, "/correction/from_data") == 0);

  const auto out = (bench.home / "map.csv").string();
  CHECK(size_at(bench.ask(with({"bed", "map"}, {"--out", out})), "/points") > 100);
  CHECK(std::filesystem::file_size(out) > 2000);

  const auto left = bench.ask(with({"bed", "relax"}, {"--at", "1h,1d"}));
  CHECK(number(left, "/at/0/left/value") > number(left, "/at/1/left/value"));

  const auto thinner = bench.ask(with({"bed", "equivalent"}, {"--change", "gauge=1.15"}));
  CHECK(number(thinner, "/mains/exact") > 24);
  CHECK(text_at(thinner, "/mains/unit") == "kg");
  CHECK(number(thinner, "/from_model") == 1);

  // Own readings: that thinner string was measured stiffer than reckoned, so less is needed.
  const auto measured = bench.file("measured.csv",
                                   "setup,stiffness,frame\nhead=100in2 string=polyester gauge=1.25 tension=24kg,34N/mm,A\nhead=100in2 "
                                   "string=polyester gauge=1.15 tension=24kg,36N/mm,A\n"
                                   "head=100in2 string=polyester gauge=1.15 tension=24kg,36.3N/mm,A\n");
  const auto corrected = bench.ask(with({"bed", "equivalent"}, {"frame=A", "--change", "gauge=1.15", "--measured", measured}));
  CHECK(number(corrected, "/mains/exact") < number(thinner, "/mains/exact"));
  CHECK(number(corrected, "/from_data") > 0.05);
  CHECK(Bench::run({"--language", "de", "bed", "stiffness", "tension=24kg"}).out.find("Nur Modell") != std::string::npos);
}

TEST_CASE("a tone out of a recording and as typed, or the admission that it is not known") {
  const Bench bench;
  weavelog::made::Tap tap;
  tap.hz = 590;
  tap.rate = 16'000;
  const auto wav = [&](const char* called, int taps) {
    const weavelog::Bytes bytes = weavelog::wav_of({weavelog::made::sounds_of(tap, 4, taps, true), tap.rate, 1, 16, false});
    return bench.file(called, std::string(bytes.begin(), bytes.end()));
  };
  tap.level_db = 25;
  const auto heard = bench.ask({"tone", "listen", wav("good.wav", 3), "head=100in2", "string=polyester", "gauge=1.25", "tension=24kg"});
  CHECK(number(heard, "/hz") == Approx(590).epsilon(0.005));
  CHECK(number(heard, "/confidence") > 0.95);
  CHECK(number(heard, "/tension_N/value") == Approx(160).margin(30));
  tap.level_db = -30;
  const auto unknown = bench.ask({"tone", "listen", wav("loud.wav", 1)}, 3);
  CHECK_FALSE(unknown.at("known").as_bool());
  CHECK(unknown.at("hz").is_null());
  CHECK_FALSE(text_at(unknown, "/advice").empty());

  const auto typed = bench.ask({"tone", "value", "590", "head=100in2", "string=polyester", "gauge=1.25", "tension=24kg"});
  CHECK(number(typed, "/stiffness_N_per_mm/value") == Approx(33).margin(6));
}

TEST_CASE("impossible beds and readings end with one error that names the place") {
  const Bench bench;
  const auto fault = [&](std::vector<std::string> words) {
    const auto said = bench.ask(std::move(words), 1);
    return text_at(said, "/error/where") + ": " + text_at(said, "/error/what");
  };
  CHECK(fault({"bed", "stiffness", "tension=-3kg"}) == "mains, tension: no machine pulls this tension");
  CHECK(fault({"bed", "stiffness", "head=20in2", "tension=24kg"}).rfind("head: ", 0) == 0);
  CHECK(fault({"bed", "stiffness"}).find("the tension is not told") != std::string::npos);
  CHECK(fault({"tone", "value", "54", "tension=24kg"}).find("no tone of a string bed") != std::string::npos);
  CHECK(fault({"tone", "listen", bench.file("a.wav", "no sound at all")}).find("this is no WAV file") != std::string::npos);
  const weavelog::Bytes silence = weavelog::wav_of({std::vector<float>(9000, 0.0F), 8000, 1, 16, false});
  const auto silent = bench.file("silent.wav", std::string(silence.begin(), silence.end()));
  CHECK(fault({"tone", "listen", silent}) == silent + ": silent: nothing above -66 dB");
  CHECK(Bench::run({"tone", "listen", (bench.home / "none.wav").string()}).status == 4);
}
