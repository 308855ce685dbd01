#pragma once
// Power spectra of pieces of a recording, windows, and the maxima in them, as core/bed listens with.

#include <cstddef>
#include <memory>
#include <span>
#include <vector>

struct kiss_fftr_state;

namespace weavelog {

/// Power spectra of a piece of the recording under a window, zero-padded to a length of its own. Power is by the window's energy, so that white
/// noise has its variance in every bin, whatever the window.
class Spectrum {
 public:
  /// `size`: a power of two.
  explicit Spectrum(std::size_t size);
  ~Spectrum();
  Spectrum(const Spectrum&) = delete;
  Spectrum& operator=(const Spectrum&) = delete;

  /// Of samples from `from` on; size() / 2 + 1 bins, good until the next call.
  const std::vector<double>& of(std::span<const float> samples, std::size_t from, std::span<const float> window);
  [[nodiscard]] std::size_t size() const { return size_; }

 private:
  struct Work;
  std::size_t size_;
  std::unique_ptr<Work> work_;
  std::vector<double> power_;
};

/// The least power of two that is not below; 256 at least.
[[nodiscard]] std::size_t power_of_two(double least);
/// What falls by e in `decay` seconds, four times as long.
[[nodiscard]] std::vector<float> dying(double decay, double rate);
[[nodiscard]] std::vector<float> hann(std::size_t length);

struct SpectrumPeak {
  double hz = 0, power = 0;
};
/// The top of the parabola through a maximum and its neighbours, in logarithms.
[[nodiscard]] SpectrumPeak top_at(const std::vector<double>& power, std::size_t k, double hz_by_bin);
/// Strongest bin between two frequencies.
[[nodiscard]] std::size_t strongest_bin(const std::vector<double>& power, double from, double to, double hz_by_bin);
/// Maxima of `least` power that stand out of what lies between them and anything stronger by 4 dB at least, rising.
[[nodiscard]] std::vector<SpectrumPeak> peaks_between(const std::vector<double>& power, double from, double to, double hz_by_bin, double least);
/// Each bin's mean over `reach` bins either way, and no less than half of itself: chance dips don't flatter.
[[nodiscard]] std::vector<double> smoothed(const std::vector<double>& power, std::size_t reach);

}  // namespace weavelog
