#include "core/bed/listen.h"

#include <algorithm>
#include <cmath>
#include <complex>
#include <numbers>
#include <string>

#include "core/bed/spectrum.h"
#include "core/bed/taps_together.h"

namespace weavelog {
namespace {

constexpr double kMostSeconds = 60, kLeastSeconds = 0.15;
constexpr double kSureOf = 0.005;  // what "right" means: within half a percent
/// To be told; where a room rings along errors have longer tails than their spread says. Of 15,600 made-up recordings these leave 4 of 8,454
/// that were told beyond half a percent, by 0.55 % at most; at 0.95 throughout it was 13 of 10,629, by 0.76 % at most.
constexpr double kConfident = 0.98, kConfidentInEcho = 0.998;
constexpr std::size_t kMostTaps = 6;
constexpr double kClearOfEcho = 34, kHidesEcho = 24;  // dB
constexpr int kTapsInEcho = 3;
// Found by trying on made-up rooms: how an echo that shows beside the tone raises the doubt.
constexpr double kMovedEcho = 1.0, kTimesEcho = 2.0;
constexpr double kEcho = 1.0;

std::string counted(double value) {
  return std::to_string(std::lround(value));
}

class Listener {
 public:
  Listener(std::span<const float> samples, double rate, double low, double high)
      : samples_(samples), rate_(rate), low_(low), high_(high), coarse_(power_of_two(0.08 * rate)), fine_(power_of_two(0.36 * rate)) {}

  HeardTone hear() {
    HeardTone out;
    const std::vector<double> onsets = find_onsets();
    for (const double at : onsets) out.taps.push_back(hear_tap(at));
    out = agree(std::move(out));
    if (out.hz) return out;
    // No tap is clear enough by itself: what they have in common.
    HeardTone together = taps_together(samples_, rate_, low_, high_);
    return together.hz ? together : out;
  }

 private:
  [[nodiscard]] std::size_t sample_at(double seconds) const { return seconds <= 0 ? 0 : static_cast<std::size_t>(seconds * rate_); }
  [[nodiscard]] double length() const { return static_cast<double>(samples_.size()) / rate_; }

  /// Moments at which the energy between low and high grows suddenly, the loudest few, in time.
  std::vector<double> find_onsets() {
    constexpr double kHop = 0.005, kFrame = 0.04;
    const std::vector<float> window = hann(sample_at(kFrame));
    const double by_bin = rate_ / static_cast<double>(coarse_.size());
    const auto first = static_cast<std::size_t>(0.85 * low_ / by_bin), last = static_cast<std::size_t>(1.2 * high_ / by_bin);
    std::vector<double> energy;
    for (double at = 0; at + kFrame <= length(); at += kHop) {
      const std::vector<double>& power = coarse_.of(samples_, sample_at(at), window);
      double sum = 1e-12;
      for (std::size_t k = first; k <= last && k < power.size(); ++k) sum += power[k];
      energy.push_back(sum);
    }
    if (energy.size() < 8) return {};
    std::vector<double> sorted = energy;
    std::sort(sorted.begin(), sorted.end());
    const double quiet = sorted[sorted.size() / 5];
    struct Onset {
      double at = 0, energy = 0;
    };
    std::vector<Onset> found;
    const auto growth = [&](std::size_t t) {
      double before = 0;
      int count = 0;
      for (std::size_t back = 9; back <= 24 && back <= t; ++back, ++count) before += energy[t - back];
      before = count >= 3 ? before / count : quiet;
      return energy[t] / std::max(before, quiet * 0.3);
    };
    for (std::size_t t = 0; t < energy.size(); ++t) {
      const double here = growth(t);
      if (here < 2.0) continue;
      bool highest = true;
      for (std::size_t near = t >= 12 ? t - 12 : 0; near < std::min(energy.size(), t + 13) && highest; ++near)
        highest = near == t || energy[near] < energy[t] || (energy[near] == energy[t] && near > t);
      // The frame that holds most begins near the tap.
      if (highest) found.push_back({static_cast<double>(t) * kHop, energy[t]});
    }
    std::stable_sort(found.begin(), found.end(), [](const Onset& a, const Onset& b) { return a.energy > b.energy; });
    if (found.size() > kMostTaps) found.resize(kMostTaps);
    std::vector<double> out;
    for (const Onset& one : found)
      if (one.energy * 30 > found.front().energy) out.push_back(one.at);
    std::sort(out.begin(), out.end());
    return out;
  }

  /// Noise by bin before a tap, or well after it; smoothed over some 30 Hz so that chance dips don't flatter.
  bool noise_about(double tap, std::span<const float> window, std::vector<double>& noise) {
    noise.assign(fine_.size() / 2 + 1, 0);
    int count = 0;
    const double needs = std::min(0.09, static_cast<double>(window.size()) / rate_);
    const auto add = [&](double from) {
      // Only as much of the window as ends before the tap.
      const std::vector<double>& power = fine_.of(samples_, sample_at(from), window.first(std::min(window.size(), sample_at(needs))));
      for (std::size_t k = 0; k < noise.size(); ++k) noise[k] += power[k];
      ++count;
    };
    for (double from = tap - needs - 0.008; from >= 0 && count < 14; from -= 0.03) add(from);
    if (count < 2)
      for (double from = tap + 0.45; from + needs <= length() && count < 14; from += 0.03) add(from);
    if (count == 0) return false;
    for (double& one : noise) one /= count;
    const auto reach = static_cast<std::size_t>(std::max(1.0, 12.0 * static_cast<double>(fine_.size()) / rate_));
    noise = smoothed(noise, reach);
    return true;
  }

  /// When a tap begins: where what dies away fits best from. Below 0: the recording ends there.
  double start_of(double near) {
    const double by_bin = rate_ / static_cast<double>(fine_.size());
    const std::vector<float> middling = dying(0.03, rate_);
    double best = -1, start = -1;
    for (double from = std::max(0.0, near - 0.005); from <= near + 0.045; from += 0.004) {
      if (from + 0.06 > length()) break;
      const std::vector<double>& power = fine_.of(samples_, sample_at(from), middling);
      const double here = power[strongest_bin(power, low_, high_, by_bin)];
      if (here > best) best = here, start = from;
    }
    return start;
  }

  HeardTap hear_tap(double near) {
    HeardTap out;
    out.at = near;
    const double by_bin = rate_ / static_cast<double>(fine_.size());
    double start = start_of(near);
    if (start < 0) {
      out.doubt = ToneDoubt::too_noisy;
      return out;
    }
    out.at = start;
    start += 0.004;
    const std::vector<float> middling = dying(0.03, rate_);
    std::vector<double> noise;
    const bool quiet_known = noise_about(out.at, middling, noise);
    const std::vector<double> power = fine_.of(samples_, sample_at(start), middling);
    double loudest = 0;
    for (const double one : power) loudest = std::max(loudest, one);
    if (!quiet_known) {  // the middle of all bins up to 2 kHz is as good as nothing better
      const auto end = std::min(power.size(), static_cast<std::size_t>(2000 / by_bin));
      std::vector<double> sorted(power.begin() + static_cast<std::ptrdiff_t>(std::min(end - 1, static_cast<std::size_t>(200 / by_bin))),
                                 power.begin() + static_cast<std::ptrdiff_t>(end));
      std::nth_element(sorted.begin(), sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2), sorted.end());
      noise.assign(power.size(), sorted[sorted.size() / 2] / std::numbers::ln2);
    }
    for (double& one : noise) one = std::max(one, 1e-7 * loudest + 1e-12);
    const auto over = [&](double hz, double value) {
      return value / noise[std::min(noise.size() - 1, static_cast<std::size_t>(std::lround(hz / by_bin)))];
    };

    // Which of the partials. The strongest one between low and high, unless one below it explains it as a higher mode.
    const SpectrumPeak strongest = top_at(power, strongest_bin(power, low_, high_, by_bin), by_bin);
    const double least = strongest.power * 0.12;  // 9 dB below
    const std::vector<SpectrumPeak> partials = peaks_between(power, 200, std::min(2 * high_, 0.45 * rate_), by_bin, least);
    SpectrumPeak base = strongest;
    for (const SpectrumPeak& other : partials) {
      const double below = strongest.hz / other.hz;
      if (other.hz >= low_ && other.hz < base.hz && below > 1.40 && below < 2.45 && over(other.hz, other.power) >= 8) base = other;
    }
    // Whatever else is near as strong has to be a higher mode of it.
    bool several = false;
    for (const SpectrumPeak& other : partials)
      if (std::abs(other.hz / base.hz - 1) >= 0.01 && other.hz < 1.38 * base.hz && over(other.hz, other.power) >= 4) several = true;
    // A lower mode that is as strong could hide in the noise there: then nobody can tell whether this is the lowest.
    for (double at = std::max(low_, base.hz / 1.8); at < base.hz / 1.38; at += by_bin)
      if (8 * noise[static_cast<std::size_t>(at / by_bin)] > strongest.power) several = true;
    // A louder tone just above the range, of which this could be a skirt or which could be the tone itself.
    const SpectrumPeak above = top_at(power, strongest_bin(power, high_, std::min(1.38 * high_, 0.45 * rate_), by_bin), by_bin);
    if (above.power > strongest.power && above.hz < 1.38 * base.hz) several = true;
    if (base.hz <= low_ + 2 * by_bin || base.hz >= high_ - 2 * by_bin) several = true;
    fit(out, base.hz, start, noise, by_bin);
    if (several && out.doubt == ToneDoubt::none) out.doubt = ToneDoubt::several;
    return out;
  }

  /// A tone that dies away, near `hz` from `start` on: its frequency, its decay, how far both are doubted.
  void fit(HeardTap& out, double hz, double start, const std::vector<double>& noise, double by_bin) {
    constexpr double kDecays[] = {0.008, 0.012, 0.018, 0.026, 0.038, 0.055, 0.080, 0.115, 0.165};
    const auto noise_at = [&](double at) { return noise[std::min(noise.size() - 1, static_cast<std::size_t>(std::lround(at / by_bin)))]; };
    SpectrumPeak best;
    for (const double decay : kDecays) {
      if (start + 1.5 * decay > length()) break;
      const std::vector<double>& power = fine_.of(samples_, sample_at(start), dying(decay, rate_));
      const SpectrumPeak top = top_at(power, strongest_bin(power, hz * 0.955, hz * 1.045, by_bin), by_bin);
      if (top.power > best.power) {
        best = top;
        out.decay = decay;
      }
    }
    out.hz = best.hz;
    refine_decay(out, start, by_bin);
    // What is left beside the fitted tone close to it counts as noise too: echoes of a room ring at the very same place, and move the tone.
    const double beside = left_beside(out, start, by_bin);
    const double noise_here = noise_at(best.hz), over = best.power / (noise_here + kEcho * std::max(0.0, beside - 3 * noise_here));
    out.above_noise = 10 * std::log10(std::max(over, 1e-9));
    // What noise does to a frequency (as a sinusoid that dies away is measured at best), and what everything else does: the same tone heard early and
    // late must be one.
    const double by_noise = 1 / (2 * std::numbers::pi * out.decay) * std::sqrt(2 / std::max(over, 1e-9));
    const std::vector<float> window = dying(out.decay, rate_), brief = dying(std::max(0.008, 0.5 * out.decay), rate_);
    const auto heard_from = [&](double from, const std::vector<float>& through) {
      const std::vector<double>& power = fine_.of(samples_, sample_at(from), through);
      return top_at(power, strongest_bin(power, best.hz * 0.97, best.hz * 1.03, by_bin), by_bin).hz;
    };
    const double early = heard_from(start, brief), later = heard_from(start + 0.5 * out.decay, window), late = heard_from(start + out.decay, window);
    const double moved = std::max({std::abs(early - best.hz) / 2, std::abs(later - best.hz), std::abs(late - best.hz) / 1.5});
    // Where noise is loud an echo could hide in it.
    const bool echoes = out.above_noise < kClearOfEcho && (beside > 6 * noise_here || out.above_noise < kHidesEcho);
    out.relative_sd = std::sqrt(by_noise * by_noise + (echoes ? kMovedEcho : 0.25) * moved * moved) / best.hz + 0.0004;
    if (echoes) out.relative_sd *= kTimesEcho;
    out.echoes = echoes;
    if (out.decay > 0.14)
      out.doubt = ToneDoubt::steady;
    else if (over < 20 || !(out.relative_sd < 0.02))
      out.doubt = ToneDoubt::too_noisy;
  }

  /// Between the decays that were tried, by the parabola through three of them.
  void refine_decay(HeardTap& out, double start, double by_bin) {
    double logs[3];
    for (int i = -1; i <= 1; ++i) {
      const double decay = out.decay * std::exp(0.3 * i);
      const std::vector<double>& power = fine_.of(samples_, sample_at(start), dying(decay, rate_));
      logs[i + 1] = std::log(power[strongest_bin(power, out.hz * 0.985, out.hz * 1.015, by_bin)] + 1e-30);
    }
    const double bend = logs[0] - 2 * logs[1] + logs[2];
    if (bend < 0) out.decay *= std::exp(0.3 * std::clamp(0.5 * (logs[0] - logs[2]) / bend, -1.0, 1.0));
  }

  /// Takes the tone that dies away out of the recording; the largest power within 30 Hz that is left, in the measure of Spectrum.
  double left_beside(const HeardTap& tap, double start, double by_bin) {
    const std::vector<float> window = dying(tap.decay, rate_);
    const std::size_t from = sample_at(start), count = std::min(window.size(), samples_.size() - from);
    std::complex<double> sum = 0;
    const double turn = 2 * std::numbers::pi * tap.hz / rate_;
    double energy = 0;
    for (std::size_t i = 0; i < count; ++i) {
      const double w = static_cast<double>(window[i]);
      sum += static_cast<double>(samples_[from + i]) * w * std::polar(1.0, -turn * static_cast<double>(i));
      energy += w * w;
    }
    const std::complex<double> strength = 2.0 * sum / energy;
    std::vector<float> left(count);
    for (std::size_t i = 0; i < count; ++i)
      left[i] = samples_[from + i] - static_cast<float>((strength * std::polar(1.0, turn * static_cast<double>(i))).real()) * window[i];
    const std::vector<float> longer = dying(1.5 * tap.decay, rate_);
    double most = 0;
    const std::span<const float> through(longer.data(), std::min(longer.size(), count));
    const std::vector<double>& power = fine_.of(left, 0, through);
    most = power[strongest_bin(power, tap.hz - 30, tap.hz + 30, by_bin)];
    return most;
  }

  /// What all taps say together.
  static HeardTone agree(HeardTone out) {
    if (out.taps.empty()) {
      out.doubt = ToneDoubt::no_tap;
      return out;
    }
    const HeardTap* best = nullptr;
    for (const HeardTap& tap : out.taps)
      if (tap.doubt == ToneDoubt::none && (best == nullptr || tap.relative_sd < best->relative_sd)) best = &tap;
    if (best == nullptr) {
      out.doubt = std::max_element(out.taps.begin(), out.taps.end(), [](const HeardTap& a, const HeardTap& b) {
                    return a.above_noise < b.above_noise;
                  })->doubt;
      return out;
    }
    std::vector<const HeardTap*> agreeing;
    int differing = 0;
    for (const HeardTap& tap : out.taps) {
      const double off = std::abs(tap.hz / best->hz - 1);
      if (tap.doubt != ToneDoubt::none) {  // a clear tone of which only the choice is doubted counts against
        if (tap.doubt == ToneDoubt::several && off > 0.02) ++differing;
      } else if (off > 0.012 + 2 * (tap.relative_sd + best->relative_sd)) {
        ++differing;
      } else {
        agreeing.push_back(&tap);
      }
    }
    double weights = 0, sum = 0, apart = 0, last = -1;
    bool echoes = false;
    int own = 0;  // taps, and not one tap's late echo
    for (const HeardTap* tap : agreeing) {
      const double weight = 1 / (tap->relative_sd * tap->relative_sd);
      weights += weight;
      sum += weight * tap->hz;
      echoes = echoes || tap->echoes;
      if (last < 0 || tap->at - last > 0.25) ++own;
      last = tap->at;
    }
    const double hz = sum / weights;
    for (const HeardTap* tap : agreeing) apart += std::pow((tap->hz / hz - 1) / tap->relative_sd, 2);
    const double freely = static_cast<double>(agreeing.size()) - 1;
    const double sd = std::sqrt(std::max(1.0, freely > 0 ? 1.5 * apart / freely : 1.0) / weights);
    // Chance that it is within half a percent, were it only for noise; and that it is the right tone at all.
    const double near = std::erf(kSureOf / (sd * std::numbers::sqrt2));
    const double choice = std::clamp(1 - std::exp(-(best->above_noise - 9) / 2.2), 0.0, 1.0);
    out.relative_sd = sd;
    out.confidence = near * choice;
    if (differing >= static_cast<int>(agreeing.size())) {
      out.doubt = ToneDoubt::taps_differ;
      out.confidence = 0;
    } else if (out.confidence < (echoes ? kConfidentInEcho : kConfident)) {
      out.doubt = echoes ? ToneDoubt::echoes : ToneDoubt::too_noisy;
    } else if (echoes && own < kTapsInEcho) {
      // An echo can move a tone without anything to see in one tap; the next one, from where it lies otherwise, is moved otherwise.
      out.doubt = ToneDoubt::echoes;
      out.confidence = std::min(out.confidence, 0.8);
    } else {
      out.hz = hz;
    }
    return out;
  }

  std::span<const float> samples_;
  double rate_, low_, high_;
  Spectrum coarse_, fine_;
};

/// Runs of equal samples at the top: a converter that could not go further.
bool is_clipped(std::span<const float> samples, float loudest) {
  std::size_t run = 0, runs = 0;
  for (std::size_t i = 0; i < samples.size(); ++i) {
    const bool top = std::abs(samples[i]) >= loudest * 0.9999F;
    run = top && (run == 0 || std::signbit(samples[i]) == std::signbit(samples[i - 1])) ? run + 1 : (top ? 1 : 0);
    if (run == 3) ++runs;
  }
  return runs >= 2 || (runs >= 1 && loudest >= 0.98F);
}

}  // namespace

std::string_view name_of(ToneDoubt doubt) {
  switch (doubt) {
    case ToneDoubt::none:
      return "none";
    case ToneDoubt::no_tap:
      return "no_tap";
    case ToneDoubt::too_noisy:
      return "too_noisy";
    case ToneDoubt::several:
      return "several";
    case ToneDoubt::steady:
      return "steady";
    case ToneDoubt::taps_differ:
      return "taps_differ";
    case ToneDoubt::echoes:
      return "echoes";
  }
  return {};
}

Outcome<HeardTone> listen(std::span<const float> samples, double rate, const ListenOptions& options) {
  const auto wrong = [](std::string what, std::string what_to_do) {
    return fail(FaultCode::bad_input, std::move(what), "recording", std::move(what_to_do));
  };
  if (!(rate >= 6000 && rate <= 400'000)) return wrong("no recording has this rate", "give 6,000 to 400,000 samples a second");
  double low = options.lowest, high = options.highest;
  if (options.expected) {
    if (!(*options.expected >= 150 && *options.expected <= 2000)) return wrong("no bed sounds so", "give the expected tone in Hz, 150 to 2,000");
    low = *options.expected * 0.72;
    high = *options.expected * 1.36;
  }
  if (!(low >= 100 && high > low * 1.05 && high <= 0.22 * rate * 2 && high <= 3000))
    return wrong("this range of tones is none", "give a lower and an upper tone in Hz, 100 to 3,000");
  samples = samples.first(std::min(samples.size(), static_cast<std::size_t>(kMostSeconds * rate)));
  if (static_cast<double>(samples.size()) < kLeastSeconds * rate)
    return wrong("too short: " + counted(1000 * static_cast<double>(samples.size()) / rate) + " ms", "record half a second or more around the tap");
  float loudest = 0;
  double mean = 0;
  for (const float one : samples) {
    if (!std::isfinite(one)) return wrong("a sample is no number", "record again");
    loudest = std::max(loudest, std::abs(one));
    mean += static_cast<double>(one);
  }
  mean /= static_cast<double>(samples.size());
  std::vector<float> level(samples.begin(), samples.end());
  float most = 0;
  for (float& one : level) {
    one -= static_cast<float>(mean);
    most = std::max(most, std::abs(one));
  }
  if (most < 5e-4F) return wrong("silent: nothing above -66 dB", "check that the microphone is on, and tap the bed close to it");
  if (is_clipped(samples, loudest)) return wrong("clipped: too loud for the microphone", "tap more softly or hold the racket further off");
  return Listener(level, rate, low, high).hear();
}

}  // namespace weavelog
