// demo play: a made-up event from its first day to its last, on an event server and tablets that exchange.

#include <cstdio>
#include <iostream>

#include "fixtures/demo/play.h"
#include "sync/cli/commands.h"

namespace weavelog::cli {
namespace {

std::string number(double value, int decimals) {
  char text[48];
  std::snprintf(text, sizeof text, "%.*f", decimals, value);
  return text;
}

Outcome<Ending> play(const Settings& settings, demo::PlayOptions options) {
  options.folder = settings.folder;
  options.tell = [](const std::string& line) { std::cerr << line << '\n' << std::flush; };
  const auto played = demo::play_event(options);
  if (!played) return fail(played.error());
  const demo::PlayTally& happened = played->happened;
  json::array differences, screens;
  std::string text = std::to_string(happened.taken_in) + " taken in, " + std::to_string(happened.strung) + " strung, " +
                     std::to_string(happened.redone) + " of them again, " + std::to_string(happened.collected) + " collected, " +
                     std::to_string(happened.aside) + " put aside\n" + std::to_string(played->entries) + " entries, " +
                     std::to_string(played->exchanges) + " exchanges, tablets cut off for " + std::to_string(played->cut_off_hours) + " hours, " +
                     number(played->seconds, 0) + " s\n";
  const demo::PlayPromises& promises = played->promises;
  text += std::to_string(promises.given) + " promises, " + (promises.given > 0 ? number(100.0 * static_cast<double>(promises.kept) / static_cast<double>(promises.given), 1) : "0") +
          " % kept, " + number(promises.slack, 0) + " minutes before their time on the mean; of them " + std::to_string(promises.asked_given) +
          " whose player had to be asked, " + std::to_string(promises.asked_kept) + " kept; " + std::to_string(promises.apart_given) +
          " taken in by a desk that was cut off, " + std::to_string(promises.apart_kept) + " kept; " + std::to_string(promises.again) +
          " were agreed anew\n";
  for (const demo::ScreenTime& screen : played->screens) {
    screens.push_back(json::object{{"what", screen.what}, {"ms", screen.ms}});
    text += "  " + screen.what + ": " + number(screen.ms, 1) + " ms\n";
  }
  for (const std::string& line : played->differences) {
    differences.push_back(json::string(line));
    text += line + "\n";
  }
  text += played->differences.empty() ? "all " + std::to_string(played->devices) + " devices tell what happened: board, numbers, stock, accounts\n"
                                      : std::to_string(played->differences.size()) + " differences\n";
  const json::object document{{"taken_in", happened.taken_in},
                              {"strung", happened.strung},
                              {"redone", happened.redone},
                              {"collected", happened.collected},
                              {"aside", happened.aside},
                              {"waited", happened.waited},
                              {"rush", happened.rush},
                              {"charged_minor", happened.charged()},
                              {"paid_minor", happened.paid()},
                              {"promises", json::object{{"given", promises.given}, {"kept", promises.kept}, {"slack_minutes", promises.slack},
                                                        {"asked_given", promises.asked_given}, {"asked_kept", promises.asked_kept},
                                                        {"apart_given", promises.apart_given}, {"apart_kept", promises.apart_kept}, {"again", promises.again}}},
                              {"entries", played->entries},
                              {"devices", played->devices},
                              {"exchanges", played->exchanges},
                              {"cut_off_hours", played->cut_off_hours},
                              {"boards_compared", played->boards_compared},
                              {"seconds", played->seconds},
                              {"screens", std::move(screens)},
                              {"differences", std::move(differences)}};
  Context(settings).answer(document, text);
  return played->differences.empty() ? Ending::done : Ending::fault;
}

}  // namespace

void add_demo_command(CLI::App& app, FolderWork& chosen) {
  CLI::App* group = app.add_subcommand("demo", "Made-up events");
  group->require_subcommand(1);
  CLI::App* command = group->add_subcommand("play", "Play a whole event; every device gets a folder below --data, to be looked at with the app");
  const auto options = std::make_shared<demo::PlayOptions>();
  command->option_defaults()->always_capture_default();
  command->add_option("--players", options->players, "Players")->check(CLI::Range(8, 2000));
  command->add_option("--jobs", options->jobs, "Rackets strung, about")->check(CLI::Range(8, 50'000));
  command->add_option("--tablets", options->tablets, "Tablets: desks and benches")->check(CLI::Range(4, 24));
  command->add_option("--days", options->days, "Days")->check(CLI::Range(1, 30));
  command->add_option("--seed", options->seed, "Another number makes another event");
  command->footer(
      "Drop-offs, inspections, answers, stringing, redoing, pick-ups, charges, payments; tablets cut off for hours and back. In the end every\n"
      "device is asked, and told apart from what happened. Exit code 1 if any differs.\n"
      "--json: one object: taken_in, strung, redone, collected, aside, waited, rush, charged_minor, paid_minor, entries, devices, exchanges,\n"
      "cut_off_hours, boards_compared, seconds, screens [{what, ms}], differences.");
  command->callback([&chosen, options] { chosen = [options](const Settings& settings) { return play(settings, *options); }; });
}

}  // namespace weavelog::cli
