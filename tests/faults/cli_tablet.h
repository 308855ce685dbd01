#pragma once
// A tablet of the faults: a folder, the real command line on it, and what it was told is stored.

#include <boost/json.hpp>
#include <filesystem>
#include <map>
#include <memory>
#include <optional>
#include <random>
#include <string>
#include <vector>

#include "sync/exchange/station.h"
#include "tests/support/process.h"

namespace weavelog::testing {

/// Kills that are waited for, in milliseconds after the start; none: it may come to its end.
using KillAfter = std::optional<std::chrono::milliseconds>;

/// A folder's station, opened with Weavelog's own model. Fails the test where it can't be.
[[nodiscard]] std::unique_ptr<Station> open_folder(const std::filesystem::path& folder);

class CliTablet {
 public:
  CliTablet(std::filesystem::path folder, std::string name)
      : folder_(std::move(folder)), name_(std::move(name)) {}

  [[nodiscard]] const std::filesystem::path& folder() const { return folder_; }
  [[nodiscard]] const std::string& name() const { return name_; }

  /// A command with --json as it stands.
  Finished run(const std::vector<std::string>& words, KillAfter kill = {}) const;
  /// The same; the test fails unless it ends with 0.
  boost::json::value ask(const std::vector<std::string>& words) const;

  /// One write of some kind, killed or not: a player who is new, a changed note, a stage. What ended with 0
  /// is remembered.
  Finished write(std::mt19937_64& random, KillAfter kill);
  /// A player who is new, with two rackets.
  Finished drop_off(std::mt19937_64& random, KillAfter kill = {});

  /// What a person at the app on this folder may do next, a line each as app_hand.cpp reads them.
  [[nodiscard]] std::vector<std::string> acts(std::mt19937_64& random, std::size_t count);
  /// The app said that this is stored.
  void did(const std::string& act);
  /// The app was killed before it said so: it may be stored or not.
  void doubt(const std::string& act);

  [[nodiscard]] std::size_t confirmed() const { return confirmed_; }
  /// What this ledger lacks of all that was confirmed here, each in a line.
  [[nodiscard]] std::vector<std::string> lost(const Ledger& ledger) const;

 private:
  struct Job {
    EntityId id;
    std::size_t step = 0;  ///< confirmed
    bool doubted = false;  ///< a write that was killed may have moved it on
  };
  struct Player {
    BookId book;
    std::vector<Job> jobs;
    int note = 0;  ///< confirmed
    int last_note = 0;
    // By the app: the number in the player's note, and those in the notes of drop-offs.
    int said = 0, hand_overs = 0;
    std::vector<int> handed_over;
  };
  [[nodiscard]] Player& player_of(const std::string& book);
  void lost_of(const Player& player, const Ledger& ledger, std::vector<std::string>& out) const;
  Finished change_note(Player& player, KillAfter kill);
  Finished move_on(Job& job, KillAfter kill);

  std::filesystem::path folder_;
  std::string name_;
  std::vector<Player> players_;
  std::size_t confirmed_ = 0;
  std::size_t named_ = 0;
  int last_act_ = 0;
};

}  // namespace weavelog::testing
