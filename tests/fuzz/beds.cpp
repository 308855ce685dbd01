// What beds are made from: words, tables, recordings.

#include <bit>
#include <cmath>

#include "core/bed/equivalents.h"
#include "core/bed/listen.h"
#include "core/bed/setup_words.h"
#include "core/bed/wav.h"
#include "tests/fuzz/target_list.h"

namespace weavelog::fuzz {
namespace {

Bytes bytes_of(std::string_view text) {
  return Bytes(text.begin(), text.end());
}

}  // namespace

void run_bed_setup(ByteView input) {
  const std::string_view text = as_text(input);
  std::vector<std::string> words;
  for (std::size_t from = 0; from <= text.size();) {
    const std::size_t to = std::min(text.find('\n', from), text.size());
    words.emplace_back(text.substr(from, to - from));
    from = to + 1;
  }
  (void)setup_in_json(text, "setup.json");
  if (auto corners = read_corners(text, "corners.csv")) (void)HeadOutline::of_corners(std::move(*corners));
  if (const auto readings = read_relaxation(text, "readings.csv"))
    if (const auto fitted = RelaxationModel::fitted(*readings)) {
      const auto left = fitted->left_at({}, 86'400);
      must_hold(left && left->left.low >= 0 && left->left.low <= left->left.value && left->left.value <= left->left.high && left->left.high <= 1,
                "what is left is no part");
    }
  const auto told = setup_in_words(words);
  if (!told) return;
  const BedReckoner reckoner;
  const auto value = reckoner.value(told->setup, {}, 1);
  if (value) must_hold(std::isfinite(*value) && *value > 0, "a stiffness is none");
}

std::vector<Bytes> seeds_bed_setup() {
  return {bytes_of("head=100in2\npattern=16x19\nstring=polyester\ngauge=1.25\ntension=24kg\nafter=2h"),
          bytes_of("main_positions=-60|-20|20|60\ncross_positions=-80|0|80\nmains=50lb\ncrosses_string=gut\nweaving_loss=5%"),
          bytes_of("{\"head\": \"645cm2\", \"gauge\": 1.3, \"mains\": \"24.5kg\"}"), bytes_of("x,y\n0,0\n250,0\n250,330\n0,330\n"),
          bytes_of("racket,after,value,material\nA,60s,180,polyester\nA,1d,165,polyester\nB,1h,170,gut\n")};
}

void run_recording(ByteView input) {
  const auto recording = read_wav(input, "tap.wav");
  if (!recording) return;
  const auto samples = std::span(recording->samples).first(std::min<std::size_t>(recording->samples.size(), 60'000));
  const auto heard = listen(samples, recording->rate);
  if (!heard || !heard->hz) return;
  must_hold(*heard->hz > 300 && *heard->hz < 900, "a tone lies where none was sought");
  must_hold(heard->confidence >= 0.9 && heard->confidence <= 1, "a tone is told without confidence");
}

std::vector<Bytes> seeds_recording() {
  Recording recording{std::vector<float>(2400), 8000, 1, 16, false};
  for (std::size_t i = 800; i < recording.samples.size(); ++i) {
    const auto t = static_cast<double>(i - 800);
    recording.samples[i] = static_cast<float>(0.5 * std::exp(-t / 250) * std::sin(0.45 * t));
  }
  Bytes sixteen = wav_of(recording);
  Bytes floating(sixteen.begin(), sixteen.begin() + 44);
  floating[20] = 3;
  floating[32] = 4;
  floating[34] = 32;
  for (const float one : recording.samples) {
    const auto raw = std::bit_cast<std::uint32_t>(one);
    for (int i = 0; i < 4; ++i) floating.push_back(static_cast<std::uint8_t>(raw >> (8 * i)));
  }
  return {std::move(sixteen), std::move(floating)};
}

}  // namespace weavelog::fuzz
