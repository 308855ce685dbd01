#include "core/bed/spectrum.h"

#include <kiss_fftr.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace weavelog {

struct Spectrum::Work {
  explicit Work(std::size_t size) : plan(kiss_fftr_alloc(static_cast<int>(size), 0, nullptr, nullptr)), in(size), out(size / 2 + 1) {}
  struct Freed {
    void operator()(kiss_fftr_state* state) const { kiss_fftr_free(state); }
  };
  std::unique_ptr<kiss_fftr_state, Freed> plan;
  std::vector<float> in;
  std::vector<kiss_fft_cpx> out;
};

Spectrum::Spectrum(std::size_t size) : size_(size), work_(std::make_unique<Work>(size)), power_(size / 2 + 1) {}
Spectrum::~Spectrum() = default;

const std::vector<double>& Spectrum::of(std::span<const float> samples, std::size_t from, std::span<const float> window) {
  double energy = 0;
  std::fill(work_->in.begin(), work_->in.end(), 0.0F);
  const std::size_t count = std::min({window.size(), size_, from < samples.size() ? samples.size() - from : 0});
  for (std::size_t i = 0; i < count; ++i) {
    work_->in[i] = samples[from + i] * window[i];
    energy += static_cast<double>(window[i]) * static_cast<double>(window[i]);
  }
  kiss_fftr(work_->plan.get(), work_->in.data(), work_->out.data());
  for (std::size_t k = 0; k < power_.size(); ++k) {
    const double r = static_cast<double>(work_->out[k].r), i = static_cast<double>(work_->out[k].i);
    power_[k] = energy > 0 ? (r * r + i * i) / energy : 0;
  }
  return power_;
}

std::size_t power_of_two(double least) {
  std::size_t out = 256;
  while (static_cast<double>(out) < least) out *= 2;
  return out;
}

std::vector<float> dying(double decay, double rate) {
  const auto length = static_cast<std::size_t>(4 * decay * rate);
  std::vector<float> out(length);
  for (std::size_t i = 0; i < length; ++i) out[i] = static_cast<float>(std::exp(-static_cast<double>(i) / rate / decay));
  return out;
}

std::vector<float> hann(std::size_t length) {
  std::vector<float> out(length);
  for (std::size_t i = 0; i < length; ++i)
    out[i] = static_cast<float>(0.5 - 0.5 * std::cos(2 * std::numbers::pi * (static_cast<double>(i) + 0.5) / static_cast<double>(length)));
  return out;
}

SpectrumPeak top_at(const std::vector<double>& power, std::size_t k, double hz_by_bin) {
  if (k == 0 || k + 1 >= power.size() || !(power[k - 1] > 0 && power[k] > 0 && power[k + 1] > 0))
    return {static_cast<double>(k) * hz_by_bin, power[k]};
  const double a = std::log(power[k - 1]), b = std::log(power[k]), c = std::log(power[k + 1]);
  const double bend = a - 2 * b + c, shift = bend < 0 ? std::clamp(0.5 * (a - c) / bend, -0.5, 0.5) : 0;
  return {(static_cast<double>(k) + shift) * hz_by_bin, std::exp(b - 0.25 * (a - c) * shift)};
}

std::size_t strongest_bin(const std::vector<double>& power, double from, double to, double hz_by_bin) {
  const auto a = static_cast<std::size_t>(std::max(1.0, std::ceil(from / hz_by_bin)));
  const auto b = std::min(power.size() - 2, static_cast<std::size_t>(to / hz_by_bin));
  std::size_t best = a;
  for (std::size_t k = a; k <= b; ++k)
    if (power[k] > power[best]) best = k;
  return best;
}

std::vector<SpectrumPeak> peaks_between(const std::vector<double>& power, double from, double to, double hz_by_bin, double least) {
  std::vector<SpectrumPeak> out;
  const auto a = static_cast<std::size_t>(std::max(1.0, std::ceil(from / hz_by_bin))),
             b = std::min(power.size() - 2, static_cast<std::size_t>(to / hz_by_bin));
  for (std::size_t k = a; k <= b; ++k) {
    if (power[k] < least || power[k] < power[k - 1] || power[k] <= power[k + 1]) continue;
    const auto stands = [&](int way) {
      double lowest = power[k];
      for (std::size_t i = k; i > 0 && i + 1 < power.size(); i = way > 0 ? i + 1 : i - 1) {
        lowest = std::min(lowest, power[i]);
        if (power[i] > power[k]) return lowest * 2.5 < power[k];
        if (std::abs(static_cast<double>(i) - static_cast<double>(k)) * hz_by_bin > 600) break;
      }
      return true;
    };
    if (stands(-1) && stands(1)) out.push_back(top_at(power, k, hz_by_bin));
  }
  return out;
}

std::vector<double> smoothed(const std::vector<double>& power, std::size_t reach) {
  std::vector<double> sums(power.size() + 1, 0), out(power.size());
  for (std::size_t k = 0; k < power.size(); ++k) sums[k + 1] = sums[k] + power[k];
  for (std::size_t k = 0; k < power.size(); ++k) {
    const std::size_t a = k >= reach ? k - reach : 0, b = std::min(power.size(), k + reach + 1);
    out[k] = std::max((sums[b] - sums[a]) / static_cast<double>(b - a), 0.5 * power[k]);
  }
  return out;
}

}  // namespace weavelog
