#include "core/bed/listen.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "core/bed/wav.h"
#include "tests/core/bed/made_sound.h"

using namespace weavelog;
using made::Noise;

namespace {

made::Tap some_tap(Chance& pick, Noise noise, double level, double echo) {
  made::Tap tap;
  tap.hz = 430 + pick.uniform() * 330;
  tap.decay = 0.015 + 0.05 * pick.uniform();
  tap.higher = 0.1 + 0.6 * pick.uniform();
  tap.noise = noise;
  tap.level_db = level;
  tap.echo_db = echo;
  tap.echo_seconds = 0.2 + 0.5 * pick.uniform();
  tap.rate = 11'025;
  return tap;
}

struct Tally {
  int right = 0, wrong = 0, unknown = 0;
};

/// How recordings of `taps` taps each come out.
Tally heard(Noise noise, double level, double echo, int recordings, int taps) {
  Tally out;
  Chance pick(31 + static_cast<std::uint64_t>(noise), static_cast<std::uint64_t>(level + 100 + 7 * echo));
  for (int i = 0; i < recordings; ++i) {
    const made::Tap tap = some_tap(pick, noise, level, echo);
    const auto tone = listen(made::sounds_of(tap, static_cast<std::uint64_t>(i) + 500, taps, true), tap.rate).value();
    if (!tone.hz)
      ++out.unknown;
    else if (std::abs(*tone.hz / tap.hz - 1) <= 0.005)
      ++out.right;
    else
      ++out.wrong;
  }
  return out;
}

std::string refused(std::vector<float> samples, double rate = 22'050) {
  const auto tone = listen(samples, rate);
  return tone ? "no fault" : tone.error().what;
}

}  // namespace

TEST_CASE("tones in noise are heard to half a percent, and never told wrong with confidence", "[bed]") {
  for (const Noise noise : {Noise::white, Noise::pink, Noise::voices, Noise::machine})
    for (const double level : {20.0, 6.0, 0.0}) {
      const Tally tally = heard(noise, level, 100, 6, 3);
      INFO(static_cast<int>(noise) << " at " << level << " dB: " << tally.right << " right, " << tally.wrong << " wrong, " << tally.unknown
                                   << " not known");
      CHECK(tally.wrong == 0);
      CHECK(tally.right >= (level == 20 ? 5 : noise == Noise::voices ? 0 : 4));
    }
}

TEST_CASE("five taps among voices as loud as they are told in most cases, and never wrong", "[bed]") {
  const Tally tally = heard(Noise::voices, 0, 100, 12, 5);
  INFO(tally.right << " right, " << tally.wrong << " wrong, " << tally.unknown << " not known");
  CHECK(tally.wrong == 0);
  CHECK(tally.right >= 7);
}

TEST_CASE("voices and machines alone have nothing in common that could be a tone", "[bed]") {
  Chance chance(6);
  for (const Noise noise : {Noise::white, Noise::voices, Noise::machine})
    for (int i = 0; i < 4; ++i) {
      std::vector<float> samples;
      for (const double one : made::noise_of(noise, 35'000, 11'025, chance)) samples.push_back(static_cast<float>(0.05 * one));
      CHECK_FALSE(listen(samples, 11'025).value().hz);
    }
}

TEST_CASE("a room that rings along is heard through by three taps or admitted", "[bed]") {
  int right = 0;
  for (const double echo : {20.0, 14.0}) {
    const Tally tally = heard(Noise::pink, 15, echo, 10, 3);
    INFO(echo << " dB: " << tally.right << " right, " << tally.wrong << " wrong, " << tally.unknown << " not known");
    CHECK(tally.wrong == 0);
    right += tally.right;
  }
  CHECK(right >= 11);
}

TEST_CASE("noise alone, a voice, hum and a beep have no tone of a bed", "[bed]") {
  Chance chance(4);
  for (const Noise noise : {Noise::white, Noise::pink, Noise::voices, Noise::machine})
    for (int i = 0; i < 6; ++i) {
      const auto rest = made::noise_of(noise, 11'025, 11'025, chance);
      std::vector<float> samples;
      for (const double one : rest) samples.push_back(static_cast<float>(0.05 * one));
      const auto tone = listen(samples, 11'025).value();
      INFO(static_cast<int>(noise));
      CHECK_FALSE(tone.hz);
    }
  std::vector<float> beep(11'025);
  for (std::size_t i = 3000; i < beep.size(); ++i) beep[i] = 0.3F * static_cast<float>(std::sin(0.35 * static_cast<double>(i)));
  const auto tone = listen(beep, 11'025).value();
  CHECK_FALSE(tone.hz);
  CHECK(tone.doubt == ToneDoubt::steady);
}

TEST_CASE("a higher mode that is louder is not taken for the lowest", "[bed]") {
  made::Tap tap;
  tap.hz = 520;
  tap.higher = 1.2;
  tap.rate = 11'025;
  tap.level_db = 30;
  int right = 0;
  for (std::uint64_t i = 0; i < 8; ++i) {
    const auto tone = listen(made::sounds_of(tap, 900 + i, 3, true), tap.rate).value();
    if (tone.hz) CHECK(*tone.hz == Approx(520).epsilon(0.005));
    right += tone.hz.has_value();
  }
  CHECK(right >= 4);
}

TEST_CASE("two rackets in one recording are not averaged", "[bed]") {
  made::Tap tap;
  tap.rate = 11'025;
  tap.level_db = 40;
  tap.hz = 520;
  auto samples = made::sound_of(tap, 1, 1);
  tap.hz = 640;
  const auto other = made::sound_of(tap, 2, 2);
  samples.insert(samples.end(), other.begin(), other.end());
  const auto tone = listen(samples, tap.rate).value();
  CHECK_FALSE(tone.hz);
  CHECK(tone.doubt == ToneDoubt::taps_differ);
  // Who knows what the racket should sound like is not misled by its neighbour far off.
  CHECK_FALSE(listen(samples, tap.rate, {380, 850, 2500.0}));
}

TEST_CASE("recordings that can't be heard are named", "[bed]") {
  made::Tap tap;
  tap.level_db = 40;
  const auto good = made::sound_of(tap, 3, 3);
  CHECK(refused(good) == "no fault");
  CHECK(refused({}) == "too short: 0 ms");
  CHECK(refused(std::vector<float>(2000, 0.1F)) == "too short: 91 ms");
  CHECK(refused(std::vector<float>(22'050, 0.0F)).rfind("silent", 0) == 0);
  CHECK(refused(std::vector<float>(22'050, 0.4F)).rfind("silent", 0) == 0);  // an offset is no sound
  std::vector<float> loud;
  for (const float one : good) loud.push_back(std::clamp(one * 6, -1.0F, 1.0F));
  CHECK(refused(loud).rfind("clipped", 0) == 0);
  for (float& one : loud) one *= 0.5F;  // turned down afterwards
  CHECK(refused(loud).rfind("clipped", 0) == 0);
  auto broken = good;
  broken[5] = std::nanf("");
  CHECK(refused(broken) == "a sample is no number");
  CHECK(refused(good, 100) == "no recording has this rate");
  CHECK(refused(good, std::nan("")) == "no recording has this rate");
}

TEST_CASE("WAV files of all usual kinds give the same sound", "[bed]") {
  made::Tap tap;
  tap.seconds = 0.5;
  Recording recording{made::sound_of(tap, 9, 9), tap.rate, 1, 16, false};
  const Bytes sixteen = wav_of(recording);
  const auto back = read_wav(sixteen).value();
  REQUIRE(back.samples.size() == recording.samples.size());
  CHECK(back.rate == tap.rate);
  for (std::size_t i = 0; i < back.samples.size(); i += 37) CHECK(back.samples[i] == Approx(recording.samples[i]).margin(5e-5));

  const auto made_of = [&](int bits, int code, int channels) {
    Bytes out = sixteen;
    out.resize(44);
    const auto put = [&](std::size_t at, std::uint32_t value, int width) {
      for (int i = 0; i < width; ++i) out[at + static_cast<std::size_t>(i)] = static_cast<std::uint8_t>(value >> (8 * i));
    };
    put(20, static_cast<std::uint32_t>(code), 2);
    put(22, static_cast<std::uint32_t>(channels), 2);
    put(32, static_cast<std::uint32_t>(channels * bits / 8), 2);
    put(34, static_cast<std::uint32_t>(bits), 2);
    for (const float one : recording.samples)
      for (int channel = 0; channel < channels; ++channel) {
        const float sample = channel == channels - 1 ? one : 0.0F;  // the loudest channel is the last
        if (code == 3) {
          const auto raw = std::bit_cast<std::uint32_t>(sample);
          for (int i = 0; i < 4; ++i) out.push_back(static_cast<std::uint8_t>(raw >> (8 * i)));
        } else {
          const auto value = static_cast<std::int64_t>(std::lround(static_cast<double>(sample) * (std::pow(2.0, bits - 1) - 1)));
          const auto raw = static_cast<std::uint64_t>(bits == 8 ? value + 128 : value);
          for (int i = 0; i < bits / 8; ++i) out.push_back(static_cast<std::uint8_t>(raw >> (8 * i)));
        }
      }
    put(40, static_cast<std::uint32_t>(out.size() - 44), 4);
    return out;
  };
  struct Kind {
    int bits, code, channels;
    double margin;
  };
  for (const Kind& kind : {Kind{24, 1, 1, 1e-6}, Kind{32, 1, 1, 1e-7}, Kind{32, 3, 2, 0.0}, Kind{16, 1, 3, 5e-5}, Kind{8, 1, 1, 0.01}}) {
    const auto read = read_wav(made_of(kind.bits, kind.code, kind.channels)).value();
    REQUIRE(read.samples.size() == recording.samples.size());
    double worst = 0;
    for (std::size_t i = 0; i < read.samples.size(); ++i)
      worst = std::max(worst, std::abs(static_cast<double>(read.samples[i] - recording.samples[i])));
    CHECK(worst <= kind.margin);
  }
}

TEST_CASE("damaged and compressed WAV files are named with the place", "[bed]") {
  Recording recording{std::vector<float>(1000, 0.1F), 8000, 1, 16, false};
  const Bytes good = wav_of(recording);
  const auto said = [&](auto change) {
    Bytes bytes = good;
    change(bytes);
    const auto read = read_wav(bytes, "tap.wav");
    return read ? "no fault" : read.error().message();
  };
  CHECK(said([](Bytes& b) { b.resize(600); }) == "no fault");  // cut off: as far as it goes
  CHECK(said([](Bytes& b) { b[0] = 'X'; }).find("tap.wav, byte 0: this is no WAV file") == 0);
  CHECK(said([](Bytes& b) { b.resize(30); }).find("cut off") != std::string::npos);
  CHECK(said([](Bytes& b) { b.resize(40); }).find("no sound") != std::string::npos);
  CHECK(said([](Bytes& b) { b[20] = 85; }).find("tap.wav, byte 20: this WAV is compressed") == 0);
  CHECK(said([](Bytes& b) { b[22] = 0; }).find("channels") != std::string::npos);
  CHECK(said([](Bytes& b) { b[34] = 12; }).find("this size") != std::string::npos);
  CHECK(said([](Bytes& b) { b.clear(); }).find("no WAV") != std::string::npos);
}
