#include "tests/faults/cli_tablet.h"

#include <array>
#include <catch2/catch.hpp>

#include "core/model/fields.h"
#include "core/model/player.h"
#include "core/model/queries.h"
#include "core/model/tables.h"

namespace weavelog::testing {
namespace json = boost::json;
namespace {

constexpr std::array kSteps{Stage::received, Stage::inspected, Stage::cut_out,    Stage::on_machine,
                            Stage::strung,   Stage::checked,   Stage::stencilled, Stage::ready};
constexpr std::array kStepNames{"received", "inspected", "cut_out",    "on_machine",
                                "strung",   "checked",   "stencilled", "ready"};

std::string as_told(const json::value& document, const char* key) {
  return std::string(document.at(key).as_string());
}

std::string note_text(int note) {
  return "turn " + std::to_string(note);
}

/// An invented name of syllables, another one for each number.
std::string family_name(std::size_t number) {
  constexpr std::array kSyllables{"bar", "den", "fol", "gim", "hul", "kest", "lom", "mar", "nev", "pol"};
  std::string name;
  for (int i = 0; i < 5; ++i, number /= kSyllables.size()) name += kSyllables[number % kSyllables.size()];
  return name;
}

std::size_t step_of(Stage stage) {
  for (std::size_t i = 0; i < kSteps.size(); ++i)
    if (kSteps[i] == stage) return i;
  return 0;
}

}  // namespace

std::unique_ptr<Station> open_folder(const std::filesystem::path& folder) {
  StationOptions options;
  options.folder = folder;
  options.device_name = "looked into";
  options.registry = &model_registry();
  options.projections = {std::make_shared<ModelTables>()};
  auto station = Station::open(std::move(options));
  if (!station) FAIL(station.error().message());
  return std::move(*station);
}

Finished CliTablet::run(const std::vector<std::string>& words, KillAfter kill) const {
  std::vector<std::string> command{WEAVELOG_CLI_PROGRAM, "--data", folder_.string(),
                                   "--device",           name_,    "--json"};
  command.insert(command.end(), words.begin(), words.end());
  return run_program(command, {}, kill);
}

json::value CliTablet::ask(const std::vector<std::string>& words) const {
  const Finished finished = run(words);
  INFO(name_ << ": " << words.front() << ": " << finished.out << finished.err);
  REQUIRE(finished.status == 0);
  return json::parse(finished.out);
}

Finished CliTablet::write(std::mt19937_64& random, KillAfter kill) {
  if (players_.empty() || random() % 3 == 0) return drop_off(random, kill);
  Player& player = players_[random() % players_.size()];
  Job& job = player.jobs[random() % player.jobs.size()];
  if (random() % 2 == 0) return change_note(player, kill);
  if (job.doubted || job.step + 1 == kSteps.size()) return drop_off(random, kill);
  return move_on(job, kill);
}

Finished CliTablet::drop_off(std::mt19937_64& random, KillAfter kill) {
  const std::string name = family_name(random() % 10'000) + " " + name_ + " " + std::to_string(++named_);
  Finished finished =
      run({"drop-off", "--person", "family_name=" + name, "--rackets", "2", "--both", "25kg", "--set",
           "mains_string=Tarnbrook Silk", "--set", "crosses_string=Tarnbrook Silk", "--confirm", "--new"},
          kill);
  if (finished.status != 0) return finished;
  const json::value told = json::parse(finished.out);
  Player player;
  player.book = BookId::from_hex(as_told(told, "book")).value();
  for (const json::value& job : told.at("jobs").as_array())
    player.jobs.push_back({EntityId::from_hex(as_told(job, "job")).value()});
  REQUIRE(player.jobs.size() == 2);
  players_.push_back(std::move(player));
  ++confirmed_;
  return finished;
}

Finished CliTablet::change_note(Player& player, KillAfter kill) {
  // One that was killed may be stored or not: the next says something newer than either.
  const int next = ++player.last_note;
  Finished finished = run({"setup", player.book.hex(), "--set", "note=" + note_text(next)}, kill);
  if (finished.status == 0) {
    player.note = next;
    ++confirmed_;
  }
  return finished;
}

Finished CliTablet::move_on(Job& job, KillAfter kill) {
  Finished finished = run({"stage", job.id.hex(), kStepNames[job.step + 1]}, kill);
  if (finished.status == 0) {
    ++job.step;
    ++confirmed_;
  } else {
    job.doubted = true;
  }
  return finished;
}

std::vector<std::string> CliTablet::lost(const Ledger& ledger) const {
  std::vector<std::string> out;
  for (const Player& player : players_) {
    const std::string whose = name_ + ", book " + player.book.hex() + ": ";
    for (const Job& told : player.jobs) {
      const auto held = find_job(ledger, player.book, told.id);
      if (!held || !held->mains_tension) {
        out.push_back(whose + "job " + told.id.hex() + " is not there");
      } else if (step_of(held->stage) < told.step) {
        out.push_back(whose + "job " + told.id.hex() + " is not yet " + kStepNames[told.step]);
      }
    }
    int note = -1;
    for (const EntityState& setup : ledger.entities(player.book, kSetup)) {
      const std::string held = from_state<Setup>(setup).note;
      note = held.starts_with("turn ") ? std::stoi(held.substr(5)) : 0;
    }
    if (note < player.note)
      out.push_back(whose + "its note is " + std::to_string(note) + " and not " +
                    std::to_string(player.note));
  }
  return out;
}

}  // namespace weavelog::testing
