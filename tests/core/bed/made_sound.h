#pragma once
// Taps on a bed as a microphone in a room would hear them, made up: the lowest mode and higher ones, the click of the blow, the frame, a room's echo,
// and noise. Used by tests and bench.

#include <cmath>
#include <numbers>
#include <vector>

#include "core/plan/chance.h"

namespace weavelog::made {

enum class Noise { white, pink, voices, machine };

struct Tap {
  double hz = 600;
  double decay = 0.035;  ///< s, of the lowest mode
  double higher = 0.4;   ///< strength of higher modes by the lowest
  double level_db = 20;  ///< tone by noise: root mean squares over the 100 ms after the tap
  Noise noise = Noise::white;
  double echo_db = 100;       ///< direct sound by echo, in energy; 100: none
  double echo_seconds = 0.4;  ///< in which the echo falls by 60 dB
  double rate = 22'050;
  double seconds = 0.7, at = 0.3;
};

inline double root_mean_square(const std::vector<double>& samples, std::size_t from, std::size_t to) {
  double sum = 0;
  for (std::size_t i = from; i < to && i < samples.size(); ++i) sum += samples[i] * samples[i];
  return std::sqrt(sum / static_cast<double>(to - from));
}

inline std::vector<double> noise_of(Noise kind, std::size_t count, double rate, Chance& chance) {
  std::vector<double> out(count, 0.0);
  const double turn = 2 * std::numbers::pi / rate;
  if (kind == Noise::white)
    for (double& one : out) one = chance.normal();
  if (kind == Noise::pink) {  // three one-pole filters that come near 1/f (P. Kellet's economy filter, from memory)
    double a = 0, b = 0, c = 0;
    for (double& one : out) {
      const double white = chance.normal();
      a = 0.99765 * a + white * 0.0990460;
      b = 0.96300 * b + white * 0.2965164;
      c = 0.57000 * c + white * 1.0526913;
      one = a + b + c + white * 0.1848;
    }
  }
  if (kind == Noise::voices)  // three voices: harmonics of a gliding pitch under a formant, in syllables
    for (int voice = 0; voice < 3; ++voice) {
      const double pitch = 95 + 150 * chance.uniform(), formant = 400 + 500 * chance.uniform(), syllable = 0.12 + 0.15 * chance.uniform();
      const double shift = chance.uniform() * syllable, glide = 0.06 * (chance.uniform() - 0.5);
      std::vector<double> start(14);
      for (double& one : start) one = 2 * std::numbers::pi * chance.uniform();
      for (std::size_t i = 0; i < count; ++i) {
        const double t = static_cast<double>(i) / rate, place = std::fmod(t + shift, syllable) / syllable;
        const double loud = place < 0.75 ? std::sin(std::numbers::pi * place / 0.75) : 0;
        if (loud <= 0) continue;
        double sum = 0;
        for (int k = 1; k <= 14; ++k) {
          const double f = pitch * k;
          const double strength = 1.0 / (1 + std::pow((f - formant) / 180, 2)) + 0.25 / k;
          sum += strength * std::sin(2 * std::numbers::pi * f * (t + glide * t * t) + start[static_cast<std::size_t>(k - 1)]);
        }
        out[i] += loud * sum;
      }
    }
  if (kind == Noise::machine) {  // hum, a motor with partials, and hiss
    const double motor = 40 + 60 * chance.uniform();
    for (std::size_t i = 0; i < count; ++i) {
      const double t = static_cast<double>(i);
      out[i] = 0.35 * chance.normal();
      for (int k = 1; k <= 12; ++k) out[i] += std::sin(turn * 50 * k * t + k * k) / k + 0.6 * std::sin(turn * motor * k * t + 3 * k) / std::sqrt(k);
    }
  }
  return out;
}

/// `echo_seed`: where in the room the racket is.
inline std::vector<float> sound_of(const Tap& tap, std::uint64_t seed, std::uint64_t echo_seed) {
  Chance chance(seed, 77), room(echo_seed, 78);
  const auto count = static_cast<std::size_t>(tap.seconds * tap.rate), from = static_cast<std::size_t>(tap.at * tap.rate);
  std::vector<double> tone(count, 0.0), rest(count, 0.0);
  struct Partial {
    double ratio, strength, decay;
  };
  // Ratios of an ellipse of aspect 1.35 or so, each a little off, as hands and rooms have it.
  const auto about = [&](double ratio) { return ratio * (1 + 0.02 * chance.normal()); };
  const Partial partials[] = {
      {about(1.50), tap.higher, 0.8}, {about(1.68), tap.higher * 0.8, 0.7}, {about(2.02), tap.higher * 0.6, 0.6}, {about(2.32), tap.higher, 0.6}};
  const double turn = 2 * std::numbers::pi / tap.rate, phase = 2 * std::numbers::pi * chance.uniform();
  const auto ring = [&](std::vector<double>& into, double hz, double strength, double decay, double start) {
    for (std::size_t i = from; i < count; ++i) {
      const double t = static_cast<double>(i - from);
      const double dying = std::exp(-t / tap.rate / decay);
      if (dying < 1e-5) break;
      into[i] += strength * dying * (1 - std::exp(-t / tap.rate / 0.0008)) * std::sin(turn * hz * t + start);
    }
  };
  ring(tone, tap.hz, 1, tap.decay, phase);
  for (const Partial& partial : partials)
    if (tap.higher > 0)
      ring(rest, tap.hz * partial.ratio, partial.strength * (0.3 + chance.uniform()), tap.decay * partial.decay, 6 * chance.uniform());
  ring(rest, 120 + 60 * chance.uniform(), 0.4, 0.08, 1);
  for (std::size_t i = from; i < std::min(count, from + static_cast<std::size_t>(0.003 * tap.rate)); ++i) rest[i] += 0.8 * chance.normal();
  std::vector<double> whole(count);
  for (std::size_t i = 0; i < count; ++i) whole[i] = tone[i] + rest[i];
  if (tap.echo_db < 60) {  // single echoes, denser and weaker with time
    std::vector<double> echoed(count, 0.0);
    double energy = 0;
    std::vector<std::pair<std::size_t, double>> echoes;
    for (int k = 0; k < 160; ++k) {
      const double t = 0.003 + tap.echo_seconds * 0.75 * std::pow(room.uniform(), 0.8);
      const double strength = room.normal() * std::exp(-6.9 * t / tap.echo_seconds) * std::pow(t, -0.2);
      echoes.emplace_back(static_cast<std::size_t>(t * tap.rate), strength);
      energy += strength * strength;
    }
    const double scale = std::pow(10, -tap.echo_db / 20) / std::sqrt(energy);
    for (const auto& [delay, strength] : echoes)
      for (std::size_t i = from + delay; i < count; ++i) echoed[i] += scale * strength * whole[i - delay];
    for (std::size_t i = 0; i < count; ++i) whole[i] += echoed[i];
  }
  std::vector<double> noise = noise_of(tap.noise, count, tap.rate, chance);
  const std::size_t end = std::min(count, from + static_cast<std::size_t>(0.1 * tap.rate));
  const double wanted = root_mean_square(tone, from, end) * std::pow(10, -tap.level_db / 20), has = root_mean_square(noise, from, end);
  const double whole_noise = root_mean_square(noise, 0, count);
  const double scale = wanted / std::max(has, 0.5 * whole_noise);
  double loudest = 0;
  for (std::size_t i = 0; i < count; ++i) loudest = std::max(loudest, std::abs(whole[i] += scale * noise[i]));
  std::vector<float> out(count);
  for (std::size_t i = 0; i < count; ++i) out[i] = static_cast<float>(0.7 * whole[i] / loudest);
  return out;
}

/// `taps` of them one after the other; `moved`: the racket lies elsewhere each time.
inline std::vector<float> sounds_of(const Tap& tap, std::uint64_t seed, int taps, bool moved) {
  std::vector<float> out;
  for (int i = 0; i < taps; ++i) {
    const auto number = static_cast<std::uint64_t>(i);
    const std::vector<float> one = sound_of(tap, seed * 16 + number, seed * 16 + (moved ? number : 0));
    out.insert(out.end(), one.begin(), one.end());
  }
  return out;
}

}  // namespace weavelog::made
