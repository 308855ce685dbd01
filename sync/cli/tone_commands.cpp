// tone: out of a recording, or as read off a device, and what it says of the bed.

#include <cmath>

#include "core/bed/bed_words.h"
#include "core/bed/listen.h"
#include "core/bed/wav.h"
#include "sync/cli/bed_input.h"

namespace weavelog::cli {
namespace {

struct ToneArguments {
  BedArguments bed;
  std::string file;
  double hz = 0, doubt = 0.3;
  double lowest = 0, highest = 0;
};

/// What a tone says of a setup: members for the answer and lines for people.
Outcome<> add_meaning(const ToneArguments& arguments, double hz, double relative_sd, json::object& out, std::string& text) {
  if (arguments.bed.words.empty() && arguments.bed.setup.empty()) return {};
  const auto told = told_setup(arguments.bed);
  if (!told) return fail(told.error());
  const auto reckoner = bed_reckoner(arguments.bed);
  if (!reckoner) return fail(reckoner.error());
  const auto said = reckoner->from_tone(told->setup, hz, relative_sd);
  if (!said) return fail(said.error());
  out["tension_N"] = estimate_json(said->tension);
  out["mains_N"] = estimate_json(said->mains);
  out["crosses_N"] = estimate_json(said->crosses);
  out["stiffness_N_per_mm"] = estimate_json(said->stiffness, 1000);
  out["part_of_pulled"] = estimate_json(said->of_pulled);
  const auto band = [&](const BedEstimate& one) {
    return tension_text(one.value, told->unit) + " (" + tension_text(one.low, told->unit) + " to " + tension_text(one.high, told->unit) + ")";
  };
  text += "tension in the bed " + band(said->tension) + ", " + estimate_text(said->of_pulled, 0.01, 0, "%") + " of what was pulled\nstiffness " +
          estimate_text(said->stiffness, 1000, 1, "N/mm") + "\nestimates\n";
  return {};
}

Outcome<Ending> value(const Settings& settings, const ToneArguments& arguments) {
  if (!(arguments.doubt >= 0 && arguments.doubt < 50))
    return fail(FaultCode::bad_input, "a doubt is a part of the reading", "--doubt", "give percent");
  if (arguments.bed.words.empty() && arguments.bed.setup.empty())
    return fail(FaultCode::bad_input, "a tone says something of a setup alone", "setup",
                "give it in words, as head=100in2 string=polyester gauge=1.25 tension=24kg");
  json::object out{{"hz", arguments.hz}};
  std::string text = fixed(arguments.hz, 1) + " Hz\n";
  if (auto said = add_meaning(arguments, arguments.hz, arguments.doubt / 100, out, text); !said) return fail(said.error());
  Context(settings).answer(out, text);
  return Ending::done;
}

Outcome<Ending> hear(const Settings& settings, const ToneArguments& arguments) {
  const auto bytes = plan_file(arguments.file);
  if (!bytes) return fail(bytes.error());
  const auto recording = read_wav(as_bytes(*bytes), arguments.file);
  if (!recording) return fail(recording.error());
  ListenOptions options;
  if (arguments.lowest > 0) options.lowest = arguments.lowest;
  if (arguments.highest > 0) options.highest = arguments.highest;
  if (!arguments.bed.words.empty() || !arguments.bed.setup.empty()) {
    const auto told = told_setup(arguments.bed);
    if (!told) return fail(told.error());
    const auto reckoner = bed_reckoner(arguments.bed);
    if (!reckoner) return fail(reckoner.error());
    const auto expected = reckoner->value(told->setup, {BedGoal::Kind::tone, 0});
    if (!expected) return fail(expected.error());
    options.expected = *expected;
  }
  const auto heard = listen(recording->samples, recording->rate, options);
  if (!heard) {
    Fault fault = heard.error();
    fault.where = arguments.file;
    return fail(std::move(fault));
  }
  json::array taps;
  for (const HeardTap& tap : heard->taps)
    taps.push_back(json::object{{"at_s", tap.at},
                                {"hz", tap.hz},
                                {"doubt_percent", 100 * tap.relative_sd},
                                {"decay_s", tap.decay},
                                {"above_noise_dB", tap.above_noise},
                                {"why_not", std::string(name_of(tap.doubt))}});
  json::object out{{"known", heard->hz.has_value()},
                   {"hz", nullptr},
                   {"confidence", heard->confidence},
                   {"why_not", std::string(name_of(heard->doubt))},
                   {"taps", std::move(taps)}};
  std::string text;
  if (!heard->hz) {
    const std::string advice = advice_words(Context(settings).language(), heard->doubt);
    text = advice + "\n";
    out["advice"] = advice;
  } else {
    out["hz"] = *heard->hz;
    const BedEstimate tone = BedEstimate::of(*heard->hz, heard->relative_sd);
    out["band_Hz"] = estimate_json(tone);
    text = estimate_text(tone, 1, 1, "Hz") + ", confidence " + fixed(100 * heard->confidence, 0) + " %\n";
    if (auto said = add_meaning(arguments, *heard->hz, heard->relative_sd, out, text); !said) return fail(said.error());
  }
  Context(settings).answer(out, text);
  return heard->hz ? Ending::done : Ending::needs_answer;
}

}  // namespace

void add_tone_commands(CLI::App& app, FolderWork& chosen) {
  CLI::App* tone = app.add_subcommand("tone", "The tone of a string bed, and what it says of tension and stiffness; without --data");
  tone->require_subcommand(1);
  add_plan_command<ToneArguments>(
      *tone, chosen, "listen", "Out of a WAV recording of one to six taps on the bed", hear, [](CLI::App& command, ToneArguments& arguments) {
        command.add_option("FILE", arguments.file, "WAV, PCM or float; at most the first 60 s are heard")->required();
        add_bed_options(command, arguments.bed);
        command.add_option("--lowest", arguments.lowest, "Hz from which on the tone is sought (380)");
        command.add_option("--highest", arguments.highest, "Hz up to which it is sought (850)");
        command.footer(
            "--json: known, hz (null if it is not known), band_Hz, confidence, why_not, advice, taps [{at_s, hz, doubt_percent, decay_s, "
            "above_noise_dB, why_not}], and with a\n"
            "setup tension_N, mains_N, crosses_N, stiffness_N_per_mm, part_of_pulled. Ends with 3 if the tone is not known.");
      });
  add_plan_command<ToneArguments>(*tone, chosen, "value", "As read off a device", value, [](CLI::App& command, ToneArguments& arguments) {
    command.add_option("HZ", arguments.hz, "Hertz")->required();
    add_bed_options(command, arguments.bed);
    command.add_option("--doubt", arguments.doubt, "Of the reading, percent (standard deviation)")->capture_default_str();
    command.footer(kBandFooter);
  });
}

}  // namespace weavelog::cli
