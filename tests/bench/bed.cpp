// A string bed: what a solve takes, and how tones are heard in made-up rooms.

#include "core/bed/equivalents.h"
#include "core/bed/listen.h"
#include "tests/bench/benches.h"
#include "tests/bench/room.h"
#include "tests/core/bed/made_sound.h"

namespace weavelog::bench {
namespace {

const std::string kBedBench = "string bed";

template <class Work>
void timed(Report& report, const char* what, int runs, const char* target, Work work) {
  Figure figure{kBedBench, what, "ms", {}, {}, target, ""};
  for (int run = 0; run < runs; ++run) {
    const Stopwatch watch;
    work();
    figure.runs.values.push_back(watch.milliseconds());
  }
  report.say(figure);
}

void hear(Report& report, made::Noise noise, const char* name, double level, double echo, int taps, int recordings) {
  int right = 0, wrong = 0;
  Runs took;
  Chance pick(7 + static_cast<std::uint64_t>(noise), static_cast<std::uint64_t>(level + 100 + 7 * echo));
  for (int i = 0; i < recordings; ++i) {
    made::Tap tap;
    tap.hz = 430 + pick.uniform() * 330;
    tap.decay = 0.015 + 0.05 * pick.uniform();
    tap.higher = 0.1 + 0.6 * pick.uniform();
    tap.noise = noise;
    tap.level_db = level;
    tap.echo_db = echo;
    tap.echo_seconds = 0.2 + 0.5 * pick.uniform();
    const auto samples = made::sounds_of(tap, static_cast<std::uint64_t>(i) + 90'000, taps, true);
    const Stopwatch watch;
    const auto tone = must(listen(samples, tap.rate));
    took.values.push_back(watch.milliseconds());
    if (tone.hz) ++(std::abs(*tone.hz / tap.hz - 1) <= 0.005 ? right : wrong);
  }
  char what[128];
  std::snprintf(what, sizeof what, "%s %.0f dB, %s, %d tap%s: ", name, level,
                echo > 60 ? "no echo" : ("echo " + std::to_string(static_cast<int>(echo)) + " dB").c_str(), taps, taps == 1 ? "" : "s");
  report.say(kBedBench, what + std::string("told within 0.5 %"), "%", 100.0 * right / recordings);
  report.say(kBedBench, what + std::string("told wrong"), "of " + std::to_string(recordings), wrong, "0");
  report.say(kBedBench, what + std::string("time, half"), "ms", took.median());
}

}  // namespace

void string_bed(Report& report, const Setting& setting) {
  const int runs = setting.full ? 101 : 21;
  BedSetup setup;
  setup.mains.kind = setup.crosses.kind = {BedMaterial::polyester, 1.25};
  const auto net = must(net_of(setup, 170, 160));
  timed(report, "16 x 19, made and pressed lightly", runs, "under 5 ms", [&] { (void)must(must(net_of(setup, 170, 160)).press_lightly({})); });
  timed(report, "16 x 19, 1,000 N with the strings' stretch", runs, "under 5 ms", [&] { (void)must(net.press({}, 1000)); });
  timed(report, "16 x 19, four lowest modes", runs, "under 5 ms", [&] { (void)must(net.modes(4)); });
  timed(report, "16 x 19, map of the bed", runs, "", [&] { (void)net.map({}); });
  const BedReckoner reckoner;
  timed(report, "all figures of a setup with their bands", setting.full ? 21 : 5, "", [&] { (void)must(reckoner.whole(setup, 500)); });
  EquivalentAsk ask;
  ask.from = ask.to = setup;
  ask.to.mains.kind.gauge = 1.2;
  timed(report, "an equivalent with its band", setting.full ? 21 : 5, "", [&] { (void)must(equivalent(ask, reckoner)); });
  const int recordings = setting.full ? 250 : 25;
  for (const auto& [noise, name] : {std::pair{made::Noise::white, "white noise"}, std::pair{made::Noise::pink, "pink noise"},
                                    std::pair{made::Noise::voices, "voices"}, std::pair{made::Noise::machine, "machines"}})
    for (const double level : {20.0, 0.0}) {
      hear(report, noise, name, level, 100, 1, recordings);
      for (const double echo : {20.0, 12.0}) hear(report, noise, name, level, echo, 3, recordings);
      if (level > 0) continue;
      hear(report, noise, name, level, 100, 3, recordings / 2);  // what several taps say together
      for (const double echo : {100.0, 20.0, 12.0}) hear(report, noise, name, level, echo, 5, recordings / 2);
    }
}

}  // namespace weavelog::bench
