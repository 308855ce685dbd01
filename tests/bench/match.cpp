// Matching people on invented lists: how many are mistaken, asked about, missed, and whether probabilities are what they say.

#include <cstdio>
#include <optional>

#include "core/people/learn_weights.h"
#include "fixtures/people/measure.h"
#include "tests/bench/benches.h"

namespace weavelog::bench {
namespace {

using namespace people;

constexpr const char* kMatchBench = "match";

struct Measured {
  MatchTable table;
  double learning_s = 0;
};

Measured measured_lists(std::size_t lists_count, std::size_t entries, bool sparse, const std::optional<LearnOptions>& learn) {
  Measured out;
  for (std::size_t i = 0; i < lists_count; ++i) {
    ListSizes sizes;
    sizes.chance = 100 + i;
    sizes.entries = entries;
    sizes.sparse = sparse;
    const PeopleLists lists = people_lists(sizes);
    PersonIndex index = index_of(lists);
    if (learn) {
      std::vector<PersonFacts> asked;
      for (const ListedPerson& one : lists.entries) asked.push_back(one.facts);
      Stopwatch watch;
      index = index_of(lists, learn_weights(index, asked, *learn).weights);
      out.learning_s += watch.seconds();
    }
    out.table.add(measured(lists, index));
  }
  return out;
}

void say(Report& report, const std::string& what, const MatchTable& table, bool aims) {
  const auto line = [&](const char* metric, const char* unit, double value, const char* target) {
    report.say(kMatchBench, what + ": " + metric, unit, value, aims ? target : "");
  };
  line("entries", "", static_cast<double>(table.entries), "");
  line("of them with a book", "", static_cast<double>(table.with_book), "");
  line("offered as known", "", static_cast<double>(table.known_right + table.known_wrong), "100,000");
  line("of them wrong", "", static_cast<double>(table.known_wrong), "0");
  line("true pairs known or likely", "%", 100 * table.found_share(), "97");
  line("entries that need a question", "%", 100 * table.asked_share(), "3");
}

void say_calibration(Report& report, const MatchTable& table) {
  double begin = 0;
  for (std::size_t bin = 0; bin < table.bins.size(); ++bin) {
    const Bin& one = table.bins[bin];
    char name[120];
    std::snprintf(name, sizeof name, "of %zu pairs scored %.3g to %.4g (mean %.4f), true", one.pairs, begin, std::min(bin_end(bin), 1.0),
                  one.pairs > 0 ? one.said / static_cast<double>(one.pairs) : 0.0);
    if (one.pairs > 0) report.say(kMatchBench, name, "%", 100 * static_cast<double>(one.right) / static_cast<double>(one.pairs), "");
    begin = bin_end(bin);
  }
}

void say_noises(Report& report, const MatchTable& table) {
  for (std::size_t noise = 0; noise < kNoises; ++noise) {
    const NoiseRow& row = table.by_noise[noise];
    if (row.pairs == 0) continue;
    const double all = static_cast<double>(row.pairs);
    char name[120];
    std::snprintf(name, sizeof name, "%s, %zu pairs: known %.1f %%, asked %.1f %%; missed", std::string(name_of(static_cast<Noise>(noise))).c_str(),
                  row.pairs, 100 * static_cast<double>(row.known) / all, 100 * static_cast<double>(row.likely) / all);
    report.say(kMatchBench, name, "%", 100 * (all - static_cast<double>(row.known) - static_cast<double>(row.likely)) / all, "");
  }
}

/// A list of an event against a tablet.
void speed(Report& report) {
  ListSizes sizes;
  sizes.known = 5'000;
  sizes.entries = 300;
  const PeopleLists lists = people_lists(sizes);
  Figure figure{kMatchBench, "300 entries against 5,000 players, the index made anew", "ms", {}, {}, "1,000", ""};
  for (int run = 0; run < 5; ++run) {
    Stopwatch watch;
    const PersonIndex index = index_of(lists);
    for (const ListedPerson& entry : lists.entries) (void)index.match(entry.facts);
    figure.runs.values.push_back(watch.milliseconds());
  }
  report.say(figure);
}

}  // namespace

void match(Report& report, const Setting& setting) {
  speed(report);
  // Fifteen peoples of 10,000 each: another people, not only other lists, so that no pair of namesakes decides.
  const std::size_t lists = setting.full ? 15 : 3;
  const Measured learnt = measured_lists(lists, 10'000, false, LearnOptions{});
  say(report, "weights learnt from the lists", learnt.table, true);
  report.say(kMatchBench, "learning, for 10,000 entries and 7,000 books", "s", learnt.learning_s / static_cast<double>(lists), "");
  say_calibration(report, learnt.table);
  say_noises(report, learnt.table);
  const Measured arrivals = measured_lists(setting.full ? 500 : 20, 300, false, LearnOptions::at_arrival());
  say(report, "300 entries, learnt as at an arrival", arrivals.table, true);
  report.say(kMatchBench, "learning, for 300 entries and 7,000 books", "s", arrivals.learning_s / (setting.full ? 500 : 20), "");
  say(report, "usual weights", measured_lists(lists, 10'000, false, std::nullopt).table, false);
  say(report, "lists that say little, learnt", measured_lists(setting.full ? 5 : 1, 10'000, true, LearnOptions{}).table, false);
}

}  // namespace weavelog::bench
