#include "core/quality/causes.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

#include "core/plan/chance.h"

namespace weavelog {
namespace {

constexpr double kClearly = 3;
constexpr std::size_t kFarthest = 5000;  // rackets that are looked back over, whoever strung them

/// Readings that a cause would have moved alike: their information and their weighted sum.
struct Sum {
  double information = 0, weighted = 0;
  std::size_t count = 0;

  void add(double percent, double sigma) {
    information += 1 / (sigma * sigma);
    weighted += percent / (sigma * sigma);
    ++count;
  }
};

/// ln of how much more likely a shared shift ~ N(mean, spread^2) makes readings than none.
double log_ratio(const Sum& sum, double mean, double spread) {
  const double precision = 1 / (spread * spread), all = sum.information + precision, weighted = sum.weighted + mean * precision;
  return 0.5 * std::log(precision / all) + 0.5 * (weighted * weighted / all - mean * mean * precision);
}
double log_normal(double x, double mean, double sigma) { return -0.5 * (x - mean) * (x - mean) / (sigma * sigma) - std::log(sigma); }

double log_mean(const std::vector<double>& logs) {
  const double most = *std::max_element(logs.begin(), logs.end());
  double sum = 0;
  for (const double one : logs) sum += std::exp(one - most);
  return most + std::log(sum / static_cast<double>(logs.size()));
}

struct Weighed {
  double log = 0;
  CauseFinding finding;
};

class Case {
 public:
  Case(std::span<const SuspectRacket> rackets, std::size_t at, const CauseOptions& options) : rackets_(rackets), at_(at), options_(options) {}

  /// Places of this racket and those before it, newest first, of which `same` holds.
  template <class Same>
  [[nodiscard]] std::vector<std::size_t> back(Same&& same) const {
    std::vector<std::size_t> out;
    for (std::size_t i = at_ + 1; i-- > 0 && out.size() < options_.window && at_ - i < kFarthest;)
      if (i == at_ || same(rackets_[i])) out.push_back(i);
    return out;
  }
  [[nodiscard]] double sigma(std::size_t i) const { return options_.scatter * rackets_[i].doubt; }

  /// A shift that began at one of these, each as likely.
  [[nodiscard]] Weighed step(Cause cause, const std::vector<std::size_t>& places, double mean, double spread) const {
    Sum sum;
    std::vector<double> logs;
    std::vector<Sum> sums;
    for (const std::size_t place : places) {
      sum.add(rackets_[place].percent, sigma(place));
      sums.push_back(sum);
      logs.push_back(log_ratio(sum, mean, spread));
    }
    const auto best = static_cast<std::size_t>(std::max_element(logs.begin(), logs.end()) - logs.begin());
    Weighed out{log_mean(logs), finding(cause, sums[best], mean, spread)};
    return out;
  }
  [[nodiscard]] Weighed shared(Cause cause, const std::vector<std::size_t>& places, double spread) const {
    Sum sum;
    for (const std::size_t place : places) sum.add(rackets_[place].percent, sigma(place));
    return {log_ratio(sum, 0, spread), finding(cause, sum, 0, spread)};
  }
  /// Some slipped and this one did (or, asked of a chart, may have); `spared` gets the weight of slips of which it is none.
  [[nodiscard]] Weighed slip(const std::vector<std::size_t>& places, double& spared) const {
    std::vector<double> logs, without;
    for (const double often : {0.05, 0.15, 0.3, 0.5}) {
      double rest = 0;  // of the others, back to where it began
      const double here = std::exp(slipped(at_));
      for (const std::size_t place : places) {
        if (place != at_) rest += std::log(1 - often + often * std::exp(slipped(place)));
        const bool whole = options_.question == CauseQuestion::chart;
        logs.push_back(rest + std::log(whole ? 1 - often + often * here : often * here));
        without.push_back(rest + std::log(1 - often));
      }
    }
    spared = log_mean(without);
    Sum sum;
    sum.add(rackets_[at_].percent, sigma(at_));
    Weighed out{log_mean(logs), finding(Cause::clamp_slip, sum, -options_.slip, options_.slip_spread)};
    out.finding.rackets = places.size();
    for (const std::size_t place : places)
      if (rackets_[place].percent < -2 * sigma(place)) ++out.finding.low;
    return out;
  }

 private:
  [[nodiscard]] double slipped(std::size_t i) const {
    const double wide = std::hypot(sigma(i), options_.slip_spread);
    return std::min(500.0, log_normal(rackets_[i].percent, -options_.slip, wide) - log_normal(rackets_[i].percent, 0, sigma(i)));
  }
  [[nodiscard]] static CauseFinding finding(Cause cause, const Sum& sum, double mean, double spread) {
    const double precision = 1 / (spread * spread), all = sum.information + precision;
    const double middle = (sum.weighted + mean * precision) / all, half = normal_quantile(0.975) / std::sqrt(all);
    CauseFinding out;
    out.cause = cause, out.percent = middle, out.band = {middle - half, middle + half}, out.rackets = sum.count;
    return out;
  }

  std::span<const SuspectRacket> rackets_;
  std::size_t at_;
  const CauseOptions& options_;
};

Decimal tenth(double value) { return Decimal::rounded(std::fabs(value), 1); }

}  // namespace

std::string_view name_of(Cause cause) {
  switch (cause) {
    case Cause::scatter: return "scatter";
    case Cause::machine_calibration: return "machine_calibration";
    case Cause::clamp_slip: return "clamp_slip";
    case Cause::wrong_string: return "wrong_string";
    case Cause::frame: return "frame";
    case Cause::stringer: return "stringer";
  }
  return {};
}

Outcome<CauseReport> causes_of(std::span<const SuspectRacket> rackets, std::size_t at, const CauseOptions& options) {
  if (at >= rackets.size()) return fail(FaultCode::not_found, "there is no such racket", {}, "name one that was read");
  if (!(options.scatter > 0) || !std::isfinite(options.scatter))
    return fail(FaultCode::bad_input, "the scatter of a reading is above 0", {}, "give it in per cent");
  for (std::size_t i = 0; i <= at; ++i)
    if (!std::isfinite(rackets[i].percent) || !(rackets[i].doubt > 0))
      return fail(FaultCode::bad_input, "the deviation is no number", "racket " + std::to_string(i + 1), "leave it out");
  const SuspectRacket& here = rackets[at];
  const Case one(rackets, at, options);
  std::vector<Weighed> all;
  const auto before = [&](Cause cause) { return std::log(std::max(1e-300, options.before[static_cast<std::size_t>(cause)])); };
  const auto put = [&](Weighed weighed) {
    weighed.log += before(weighed.finding.cause);
    all.push_back(weighed);
  };
  CauseFinding scatter;
  double spared = 0;
  scatter.rackets = 1;
  scatter.percent = here.percent;
  const double own = normal_quantile(0.975) * options.scatter * here.doubt;
  scatter.band = {here.percent - own, here.percent + own};
  put({0, scatter});
  std::vector<std::size_t> of_machine, of_stringer;
  if (!here.machine.empty()) {
    of_machine = one.back([&](const SuspectRacket& other) { return other.machine == here.machine; });
    const auto gauged = options.gauged.find(here.machine);
    Weighed weighed = one.step(Cause::machine_calibration, of_machine, 0, options.shift);
    if (gauged != options.gauged.end()) {
      // It is off as the gauge says, or has moved since. That it is off has the chance that it had before, by how well either explains the gauge.
      const double moved = std::clamp(gauged->second.moved, 1e-6, 1.0), error = std::max(0.1, gauged->second.error), percent = gauged->second.percent;
      const double often = options.before[static_cast<std::size_t>(Cause::machine_calibration)];
      const double odds = std::log(often / (1 - often)) + log_normal(percent, 0, std::hypot(error, options.shift)) - log_normal(percent, 0, error);
      const double off = 1 / (1 + std::exp(-std::clamp(odds, -600.0, 600.0)));
      const Weighed still = one.step(Cause::machine_calibration, of_machine, percent, error);
      const double held = still.log + std::log(off), free = weighed.log + std::log((1 - off) * often * moved + 1e-300), most = std::max(free, held);
      if (held > free) weighed.finding = still.finding;
      weighed.log = most + std::log(std::exp(free - most) + std::exp(held - most)) - before(Cause::machine_calibration);
    }
    for (std::size_t i = 0; i < weighed.finding.rackets; ++i)
      if (rackets[of_machine[i]].stringer != here.stringer) ++weighed.finding.elsewhere;
    put(weighed);
    put(one.slip(of_machine, spared));
    if (options.question == CauseQuestion::racket) {  // a clamp that slips, but not at this racket
      const double more = before(Cause::clamp_slip) + spared, most = std::max(all.front().log, more);
      all.front().log = most + std::log(std::exp(all.front().log - most) + std::exp(more - most));
    }
  }
  // Alone with this racket, or since a new reel.
  {
    Weighed alone = one.shared(Cause::wrong_string, {at}, options.wrong);
    if (!here.string.empty()) {
      const auto places = one.back([&](const SuspectRacket& other) { return other.string == here.string; });
      const Weighed reel = one.step(Cause::wrong_string, places, 0, options.wrong);
      const double together = log_mean({alone.log, reel.log});
      if (reel.log > alone.log) alone = reel;
      alone.log = together;
    }
    put(alone);
  }
  if (!here.frame.empty()) {
    const auto places = one.back([&](const SuspectRacket& other) { return other.frame == here.frame; });
    if (places.size() > 1) put(one.shared(Cause::frame, places, options.shift));
  }
  if (!here.stringer.empty()) {
    of_stringer = one.back([&](const SuspectRacket& other) { return other.stringer == here.stringer; });
    Weighed weighed = one.step(Cause::stringer, of_stringer, 0, options.shift);
    for (std::size_t i = 0; i < weighed.finding.rackets; ++i)
      if (rackets[of_stringer[i]].machine != here.machine) ++weighed.finding.elsewhere;
    put(weighed);
  }
  double most = -std::numeric_limits<double>::infinity(), sum = 0;
  for (const Weighed& weighed : all) most = std::max(most, weighed.log);
  for (const Weighed& weighed : all) sum += std::exp(weighed.log - most);
  CauseReport out;
  for (Weighed& weighed : all) {
    weighed.finding.chance = std::exp(weighed.log - most) / sum;
    out.findings.push_back(weighed.finding);
  }
  std::stable_sort(out.findings.begin(), out.findings.end(), [](const CauseFinding& a, const CauseFinding& b) { return a.chance > b.chance; });
  std::vector<const CauseFinding*> named;
  for (const CauseFinding& finding : out.findings)
    if (finding.cause != Cause::scatter) named.push_back(&finding);
  const auto pair = [](const CauseFinding& a) { return a.cause == Cause::machine_calibration || a.cause == Cause::stringer; };
  out.stands_out = !named.empty() && (named.size() == 1 || named[0]->chance > kClearly * named[1]->chance);
  out.machine_or_stringer =
      (of_machine.size() > 1 && of_machine == of_stringer) || (named.size() > 1 && !out.stands_out && pair(*named[0]) && pair(*named[1]));
  return out;
}

const Phrases& quality_words() {
  static const Phrases words({quality_phrases()});
  return words;
}

std::string evidence_words(const Language& language, const SuspectRacket& racket, const CauseFinding& finding) {
  const bool low = finding.percent < 0;
  const bool alone = finding.rackets == 1 && (finding.cause == Cause::machine_calibration || finding.cause == Cause::stringer);
  return quality_words().say(
      language, "evidence." + std::string(name_of(finding.cause)) + (alone ? ".one" : ""),
      {{"side", std::string(low ? "low" : "high")},
       {"percent", tenth(finding.percent)},
       {"own", tenth(racket.percent)},
       {"own_side", std::string(racket.percent < 0 ? "low" : "high")},
       {"band", tenth((finding.band.high - finding.band.low) / 2)},
       {"n", static_cast<std::int64_t>(finding.rackets)},
       {"few", static_cast<std::int64_t>(finding.low)},
       {"elsewhere", static_cast<std::int64_t>(finding.elsewhere)},
       {"machine", racket.machine},
       {"stringer", racket.stringer.empty() ? std::string("?") : racket.stringer},
       {"frame", racket.frame},
       {"string", racket.string.empty() ? std::string("?") : racket.string}});
}

std::string advice_words(const Language& language, const SuspectRacket& racket, const CauseFinding& finding) {
  return quality_words().say(language, "advice." + std::string(name_of(finding.cause)),
                             {{"machine", racket.machine},
                              {"stringer", racket.stringer},
                              {"frame", racket.frame},
                              {"string", racket.string},
                              {"own_side", std::string(racket.percent < 0 ? "low" : "high")}});
}

}  // namespace weavelog
