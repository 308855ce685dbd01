#include "core/bed/taps_together.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <numbers>

#include "core/bed/spectrum.h"
#include "core/quality/distributions.h"

namespace weavelog {
namespace {

constexpr std::array<double, 8> kDecays{0.012, 0.018, 0.027, 0.04, 0.06, 0.09, 0.13, 0.2};
constexpr double kLongestDecay = 0.1;
constexpr std::size_t kMiddling = 2;
// A bed has all but died away by then.
constexpr double kLate = 0.25, kDied = 0.1;
constexpr std::size_t kFewest = 3, kMostStarts = 10;
// What taps say is a mean of logarithms of power over noise, so that a loud voice at one tap does not outvote the others; noise alone has 0.6.
constexpr double kMost = 1000, kPlain = 2.0, kHalfPlain = 1.2, kAsLoud = -1.4;
constexpr double kSpeaks = 6;      // a tap has the tone: its power over the noise there
constexpr double kSame = 0.012;    // within which taps speak of one tone
constexpr double kMostOf = 0.4;    // of what may be taps have to have it
constexpr double kMargin = 0.3;    // by which it has to stand above others near it
constexpr double kHides = 8;       // a lower mode over noise that could not be overheard
constexpr double kOwn = 0.0005, kPrior = 2;  // what taps differ by without noise; as how many taps that noise is all counts
constexpr double kSure = 0.98;     // to be told

class Together {
 public:
  Together(std::span<const float> samples, double rate, double low, double high)
      : samples_(samples), rate_(rate), low_(low), high_(high), fine_(power_of_two(0.36 * rate)), by_bin_(rate / static_cast<double>(fine_.size())) {}

  HeardTone hear() {
    HeardTone out;
    out.doubt = ToneDoubt::too_noisy;
    find_starts();
    if (starts_.size() < kFewest) return out;
    look();
    // What most taps have in common.
    const std::size_t from = bin(low_), to = bin(std::min(1.38 * high_, 0.45 * rate_));
    std::size_t best = from;
    for (std::size_t k = from; k <= to; ++k)
      if (said_[k] > said_[best]) best = k;
    std::size_t d = centre(best);
    std::vector<const Tap*> own = having(best, d);
    const auto said_by_own = [&](std::size_t k) {
      double sum = 0;
      for (const Tap* tap : own) sum += std::log1p(std::min(kMost, tap->power[decay_[k]][k] / tap->noise[k]));
      return sum / static_cast<double>(own.size());
    };
    // It may be a higher mode: what is plain in a mode's ratio below is the bed's lowest.
    for (int down = 0; down < 3 && own.size() >= kFewest; ++down) {
      std::size_t lower = 0;
      for (std::size_t k = bin(std::max(low_, hz(best) / 2.45)); k < bin(hz(best) / 1.38); ++k)
        if (is_top(k) && said_by_own(k) > kPlain && (lower == 0 || said_by_own(k) > said_by_own(lower))) lower = k;
      if (lower == 0) break;
      best = lower;
      d = centre(best);
      own = having(best, d);
    }
    const double at = hz(best);
    if (own.size() < kFewest || static_cast<double>(own.size()) < kMostOf * static_cast<double>(taps_.size())) return out;
    std::size_t died = 0;
    for (const Tap* tap : own) died += tap->late[bin(at)] < kDied * tap->power[kMiddling][bin(at)] ? 1 : 0;
    while (2 * died >= own.size() && d > 0 && kDecays[d] > kLongestDecay) --d;
    if (2 * died < own.size()) {
      out.doubt = ToneDoubt::steady;
      return out;
    }
    bool several = at <= low_ * 1.01 || at >= high_ * 0.99;
    const double here = said_by_own(best);
    for (std::size_t k = bin(at / 1.38); k <= bin(at * 1.38) && k <= to; ++k)
      if (std::abs(hz(k) / at - 1) > 1.5 * kSame && is_top(k) && said_by_own(k) > here - kMargin) several = true;
    // A lower mode as strong as this one would have to be heard at nearly all taps, or it could hide; and what is half plain could be one.
    for (std::size_t k = bin(std::max(low_, at / 1.8)); k < bin(at / 1.38); ++k) {
      std::size_t heard = 0;
      double louder = 0;  // than this one, before noise is looked at
      for (const Tap* tap : own) louder += std::log(tap->power[decay_[k]][k] / tap->power[d][best]) / static_cast<double>(own.size());
      for (const Tap* tap : own) heard += kHides * tap->noise[k] < tap->power[d][best] ? 1 : 0;
      if (2 * heard <= own.size() || (is_top(k) && said_by_own(k) > (louder > kAsLoud ? kHalfPlain : kPlain))) several = true;
    }
    measure(out, best, d, own);
    if (several && out.hz) {
      out.hz.reset();
      out.doubt = ToneDoubt::several;
      out.confidence = 0;
    }
    return out;
  }

 private:
  struct Tap {
    double at = 0;
    std::vector<double> noise, late;
    std::array<std::vector<double>, kDecays.size()> power;
  };

  /// Power over noise at the strongest place near k.
  [[nodiscard]] double over(const Tap& tap, std::size_t d, std::size_t k) const {
    const std::size_t top = strongest_bin(tap.power[d], hz(k) * (1 - kSame), hz(k) * (1 + kSame), by_bin_);
    return tap.power[d][top] / tap.noise[top];
  }
  /// Of samples from a moment on, no further than is looked at.
  [[nodiscard]] std::vector<double> power_of(std::span<const float> samples, std::size_t from, std::span<const float> window) {
    const std::vector<double>& power = fine_.of(samples, from, window);
    return {power.begin(), power.begin() + static_cast<std::ptrdiff_t>(std::min(power.size(), bin(1.45 * high_) + 2))};
  }
  [[nodiscard]] std::size_t bin(double at) const { return static_cast<std::size_t>(std::lround(at / by_bin_)); }
  [[nodiscard]] double hz(std::size_t k) const { return static_cast<double>(k) * by_bin_; }
  [[nodiscard]] std::size_t sample_at(double seconds) const { return seconds <= 0 ? 0 : static_cast<std::size_t>(seconds * rate_); }
  [[nodiscard]] double length() const { return static_cast<double>(samples_.size()) / rate_; }
  [[nodiscard]] bool is_top(std::size_t k) const { return said_[k] >= said_[k - 1] && said_[k] >= said_[k + 1]; }

  /// When taps begin: moments at which more sounds than at most others, each frequency held against itself, so that voices and machines count little.
  void find_starts() {
    constexpr double kHop = 0.005, kFrame = 0.04;
    Spectrum brief(power_of_two(0.08 * rate_));
    const std::vector<float> window = hann(sample_at(kFrame));
    const double by_bin = rate_ / static_cast<double>(brief.size());
    const auto first = static_cast<std::size_t>(0.85 * low_ / by_bin), last = static_cast<std::size_t>(std::min(2.4 * high_, 0.45 * rate_) / by_bin);
    std::vector<std::vector<float>> frames;
    for (double at = 0; at + kFrame <= length(); at += kHop) {
      const std::vector<double>& power = brief.of(samples_, sample_at(at), window);
      frames.emplace_back(power.begin() + static_cast<std::ptrdiff_t>(first), power.begin() + static_cast<std::ptrdiff_t>(last));
    }
    if (frames.size() < 30) return;
    std::vector<double> level(frames.size(), 0);
    std::vector<float> column(frames.size());
    for (std::size_t k = 0; k < frames.front().size(); ++k) {
      for (std::size_t t = 0; t < frames.size(); ++t) column[t] = frames[t][k];
      std::nth_element(column.begin(), column.begin() + static_cast<std::ptrdiff_t>(column.size() / 2), column.end());
      const double usual = std::max(1e-20, static_cast<double>(column[column.size() / 2]));
      for (std::size_t t = 0; t < frames.size(); ++t) level[t] += std::log1p(static_cast<double>(frames[t][k]) / usual);
    }
    struct Onset {
      double at = 0, growth = 0;
    };
    std::vector<Onset> found;
    for (std::size_t t = 12; t < level.size(); ++t) {
      double before = 0;
      for (std::size_t back = 9; back <= 12; ++back) before += level[t - back] / 4;
      bool highest = true;
      for (std::size_t near = t - 12; near < std::min(level.size(), t + 13) && highest; ++near)
        highest = near == t || level[near] < level[t] || (level[near] == level[t] && near > t);
      if (highest) found.push_back({static_cast<double>(t) * kHop, level[t] - before});
    }
    std::stable_sort(found.begin(), found.end(), [](const Onset& a, const Onset& b) { return a.growth > b.growth; });
    for (const Onset& one : found) {
      if (starts_.size() == kMostStarts || one.growth < 0.4 * found.front().growth) break;
      const double start = start_of(one.at);
      if (start >= 0 && std::none_of(starts_.begin(), starts_.end(), [&](double other) { return std::abs(other - start) < 0.2; })) starts_.push_back(start);
    }
    std::sort(starts_.begin(), starts_.end());
  }
  /// Where what dies away fits best from; below 0 where the recording ends.
  double start_of(double near) {
    const std::vector<float> middling = dying(0.03, rate_);
    double best = -1, start = -1;
    for (double from = std::max(0.0, near - 0.005); from <= near + 0.045; from += 0.004) {
      if (from + 0.06 > length()) break;
      const std::vector<double>& power = fine_.of(samples_, sample_at(from), middling);
      const double here = power[strongest_bin(power, low_, high_, by_bin_)];
      if (here > best) best = here, start = from;
    }
    return start;
  }

  void look() {
    const auto reach = static_cast<std::size_t>(std::max(1.0, 12.0 / by_bin_));
    for (std::size_t i = 0; i < starts_.size(); ++i) {
      Tap tap;
      tap.at = starts_[i];
      tap.noise = noise_about(i, reach);
      double loudest = 0;
      for (std::size_t d = 0; d < kDecays.size(); ++d) {
        tap.power[d] = power_of(samples_, sample_at(tap.at + 0.004), dying(kDecays[d], rate_));
        for (const double one : tap.power[d]) loudest = std::max(loudest, one);
      }
      for (double& one : tap.noise) one = std::max(one, 1e-7 * loudest + 1e-12);
      tap.late = power_of(samples_, sample_at(tap.at + kLate), dying(kDecays[kMiddling], rate_));
      taps_.push_back(std::move(tap));
    }
    said_.assign(taps_.front().noise.size(), 0);
    decay_.assign(said_.size(), 0);
    const std::size_t half = std::max(kFewest, (taps_.size() + 1) / 2);  // others may be no taps
    std::vector<double> logs(taps_.size());
    for (std::size_t k = 0; k < said_.size(); ++k)
      for (std::size_t d = 0; d < kDecays.size(); ++d) {
        for (std::size_t i = 0; i < taps_.size(); ++i) logs[i] = std::log1p(std::min(kMost, taps_[i].power[d][k] / taps_[i].noise[k]));
        std::nth_element(logs.begin(), logs.begin() + static_cast<std::ptrdiff_t>(half - 1), logs.end(), std::greater<>());
        double sum = 0;
        for (std::size_t i = 0; i < half; ++i) sum += logs[i];
        sum /= static_cast<double>(half);
        if (d == 0 || sum > said_[k]) said_[k] = sum, decay_[k] = d;
      }
  }

  /// The taps that have it.
  [[nodiscard]] std::vector<const Tap*> having(std::size_t k, std::size_t d) const {
    std::vector<const Tap*> out;
    for (const Tap& tap : taps_)
      if (over(tap, d, k) >= kSpeaks) out.push_back(&tap);
    return out;
  }

  /// Noise that is low beside a tone makes its skirt stand out: the middle of where each tap is loudest, uphill from there; and the decay that fits best.
  std::size_t centre(std::size_t& best) const {
    std::size_t d = decay_[best];
    for (int round = 0; round < 2; ++round) {
      std::vector<std::size_t> tops;
      std::array<double, kDecays.size()> fits{};
      for (const Tap* tap : having(best, d)) {
        const std::vector<double>& power = tap->power[d];
        std::size_t k = best;
        while (k > 1 && k + 2 < power.size() && std::abs(hz(k) / hz(best) - 1) < 0.04 && std::max(power[k - 1], power[k + 1]) > power[k])
          k = power[k - 1] > power[k + 1] ? k - 1 : k + 1;
        tops.push_back(k);
      }
      if (tops.empty()) return d;
      std::nth_element(tops.begin(), tops.begin() + static_cast<std::ptrdiff_t>(tops.size() / 2), tops.end());
      best = tops[tops.size() / 2];
      for (const Tap* tap : having(best, d))
        for (std::size_t i = 0; i < kDecays.size(); ++i) {
          const std::size_t top = strongest_bin(tap->power[i], hz(best) * (1 - kSame), hz(best) * (1 + kSame), by_bin_);
          fits[i] += std::log(tap->power[i][top]);
        }
      d = static_cast<std::size_t>(std::max_element(fits.begin(), fits.end()) - fits.begin());
    }
    return d;
  }

  /// Before the tap and well after it, in pieces as long as what is listened through; and what sounds up to just before it, which dies not with the tap.
  std::vector<double> noise_about(std::size_t i, std::size_t reach) {
    const double tap = starts_[i], needs = 0.09;
    const double begin = i > 0 ? starts_[i - 1] + 0.3 : 0, end = i + 1 < starts_.size() ? starts_[i + 1] - 0.02 : length();
    const std::vector<float> window = dying(0.03, rate_), whole(window.begin(), window.begin() + static_cast<std::ptrdiff_t>(std::min(window.size(), sample_at(needs))));
    std::vector<double> noise;
    int count = 0;
    const auto add = [&](double from) {
      const std::vector<double> power = power_of(samples_, sample_at(from), whole);
      noise.resize(power.size(), 0);
      for (std::size_t k = 0; k < noise.size(); ++k) noise[k] += power[k];
      ++count;
    };
    for (double from = tap - needs - 0.008; from >= begin && count < 10; from -= 0.03) add(from);
    const int before = count;
    for (double from = tap + 0.35; from + needs <= end && count < before + 6; from += 0.03) add(from);
    if (count == 0) return power_of(samples_, sample_at(tap), whole);  // nothing else to hear: it has nothing to say
    for (double& one : noise) one /= count;
    noise = smoothed(noise, reach);
    // Backwards in time up to just before the tap: a voice's syllable that has begun already is as loud there.
    const std::size_t last = sample_at(tap - 0.008), count_of = std::min(whole.size(), last);
    if (count_of * 2 > whole.size()) {
      std::vector<float> backwards(samples_.begin() + static_cast<std::ptrdiff_t>(last - count_of), samples_.begin() + static_cast<std::ptrdiff_t>(last));
      std::reverse(backwards.begin(), backwards.end());
      const std::vector<double> just = smoothed(power_of(backwards, 0, std::span<const float>(whole).first(count_of)), reach);
      for (std::size_t k = 0; k < noise.size(); ++k) noise[k] = std::max(noise[k], just[k]);
    }
    return noise;
  }

  /// Each tap's own frequency near the common one, and how far they agree.
  void measure(HeardTone& out, std::size_t best, std::size_t d, const std::vector<const Tap*>& own) {
    struct One {
      double log = 0, variance = 0;
    };
    std::vector<One> ones;
    for (const Tap* one : own) {
      const Tap& tap = *one;
      const std::vector<double>& power = tap.power[d];
      const SpectrumPeak top = top_at(power, strongest_bin(power, hz(best) * (1 - kSame), hz(best) * (1 + kSame), by_bin_), by_bin_);
      const double over = top.power / tap.noise[bin(top.hz)];
      const std::size_t k = bin(top.hz);
      if (over < kSpeaks || power[k] < power[k - 1] || power[k] < power[k + 1]) continue;  // the skirt of something else
      const double by_noise = 1 / (2 * std::numbers::pi * kDecays[d]) * std::sqrt(2 / over) / top.hz;
      ones.push_back({std::log(top.hz), by_noise * by_noise + kOwn * kOwn});
      out.taps.push_back({tap.at, top.hz, std::sqrt(ones.back().variance), kDecays[d], false, 10 * std::log10(over), ToneDoubt::none});
    }
    if (ones.size() < kFewest || static_cast<double>(ones.size()) < kMostOf * static_cast<double>(taps_.size())) return;
    double weights = 0, sum = 0, apart = 0;
    for (const One& one : ones) weights += 1 / one.variance, sum += one.log / one.variance;
    const double mean = sum / weights, n = static_cast<double>(ones.size());
    for (const One& one : ones) apart += std::pow(one.log - mean, 2) / one.variance;
    // How much more they differ than noise has it, drawn to once as kPrior taps more; of its doubt comes Student's distribution.
    const double freedom = n - 1 + kPrior;
    const double usual = std::max(1.0, (apart + kPrior) / freedom);
    out.relative_sd = std::sqrt(usual / weights);
    const double t = std::log(1.005) / out.relative_sd;
    out.confidence = 1 - student_two_sided(t, freedom);
    if (out.confidence < kSure) return;
    out.hz = std::exp(mean);
    out.doubt = ToneDoubt::none;
  }

  std::span<const float> samples_;
  double rate_, low_, high_;
  std::vector<double> starts_;
  Spectrum fine_;
  double by_bin_;
  std::vector<Tap> taps_;
  std::vector<double> said_;
  std::vector<std::size_t> decay_;
};

}  // namespace

HeardTone taps_together(std::span<const float> samples, double rate, double low, double high) {
  return Together(samples, rate, low, high).hear();
}

}  // namespace weavelog
