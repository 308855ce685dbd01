#include "tests/faults/cli_tablet.h"

#include <algorithm>
#include <array>
#include <catch2/catch.hpp>
#include <set>
#include <sstream>

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

/// Of one player: each brings another racket, since those before are still in the room, and the app takes 24 of one player.
constexpr int kMostHandOvers = 18;

std::string note_text(int note) {
  return "turn " + std::to_string(note);
}

/// 0 where it is no such text.
int number_in(const std::string& note) {
  return note.starts_with("turn ") ? std::stoi(note.substr(5)) : 0;
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

CliTablet::Player& CliTablet::player_of(const std::string& book) {
  const auto id = BookId::from_hex(book).value();
  return *std::find_if(players_.begin(), players_.end(), [&](const Player& one) { return one.book == id; });
}

std::vector<std::string> CliTablet::acts(std::mt19937_64& random, std::size_t count) {
  std::vector<std::string> out;
  std::map<EntityId, std::size_t> ahead;  // steps that are planned already
  while (out.size() < count) {
    Player& player = players_[random() % players_.size()];
    const std::string book = player.book.hex();
    const Job& job = player.jobs[random() % player.jobs.size()];
    const std::size_t next = job.step + 1 + ahead[job.id];
    const auto kind = random() % 4;
    if (kind < 2 && !job.doubted && next < kSteps.size()) {
      ++ahead[job.id];
      out.push_back("stage " + book + ' ' + job.id.hex() + ' ' + std::to_string(static_cast<int>(kSteps[next])));
    } else if (kind == 2 && player.hand_overs < kMostHandOvers) {
      ++player.hand_overs;
      out.push_back("same " + book + ' ' + note_text(++last_act_));
    } else {
      out.push_back("person " + book + ' ' + note_text(++last_act_));
    }
  }
  return out;
}

void CliTablet::did(const std::string& act) {
  std::istringstream words(act);
  std::string kind, book, what;
  words >> kind >> book >> what;
  Player& player = player_of(book);
  int number = 0;
  words >> number;
  if (kind == "stage") {
    for (Job& job : player.jobs)
      if (job.id.hex() == what) job.step = step_of(static_cast<Stage>(number));
  } else {
    if (kind == "same") player.handed_over.push_back(number);
    if (kind == "person") player.said = number;
  }
  ++confirmed_;
}

void CliTablet::doubt(const std::string& act) {
  std::istringstream words(act);
  std::string kind, book, job;
  words >> kind >> book >> job;
  if (kind == "stage")
    for (Job& one : player_of(book).jobs) one.doubted = one.doubted || one.id.hex() == job;
}

std::vector<std::string> CliTablet::lost(const Ledger& ledger) const {
  std::vector<std::string> out;
  for (const Player& player : players_) lost_of(player, ledger, out);
  return out;
}

void CliTablet::lost_of(const Player& player, const Ledger& ledger, std::vector<std::string>& out) const {
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
  for (const EntityState& setup : ledger.entities(player.book, kSetup)) note = std::max(note, number_in(from_state<Setup>(setup).note));
  if (note < player.note) out.push_back(whose + "its note is " + std::to_string(note) + " and not " + std::to_string(player.note));
  int said = -1;
  for (const EntityState& person : ledger.entities(player.book, kPerson)) said = number_in(from_state<Person>(person).note);
  if (said < player.said) out.push_back(whose + "the player's note is " + std::to_string(said) + " and not " + std::to_string(player.said));
  std::set<int> drop_offs;
  for (const EntityState& one : ledger.entities(player.book, kDropOff)) drop_offs.insert(number_in(from_state<DropOff>(one).note));
  for (const int number : player.handed_over)
    if (!drop_offs.contains(number)) out.push_back(whose + "drop-off " + std::to_string(number) + " is not there");
}

}  // namespace weavelog::testing
