#pragma once
// The workload in one of Weavelog's own stations: every layer and index that the app has, nothing switched
// off.

#include <filesystem>
#include <memory>
#include <string>
#include <unordered_map>

#include "sync/exchange/station.h"
#include "tests/bench/workload/operations.h"

namespace weavelog::bench {

class Replica {
 public:
  enum class Connections : std::uint8_t { one, two };  ///< to the database: as the command line has it, or the app
  /// Opens or makes the station in the folder. Throws std::runtime_error on any fault, as all of its
  /// functions do.
  Replica(const std::filesystem::path& folder, const std::string& name, Connections connections = Connections::one);

  /// One action: what its maker sees is read, the draft is made and stored durably.
  void apply(const Action& action);
  /// Has everything written that whoever reads would have written first.
  void finish();
  /// Learns which record is where from the tables, for a station that was not filled by apply().
  void find_records();
  [[nodiscard]] std::string digest(const std::set<std::string>& left_out = {}) const;
  /// The book of a player.
  [[nodiscard]] BookId book_of(const std::string& player) const { return place(player).book; }
  /// True if both answers stand in the field.
  [[nodiscard]] bool holds_both(const Contended& contended) const;

  [[nodiscard]] Station& station() { return *station_; }
  [[nodiscard]] ManualClock& clock() { return clock_; }
  [[nodiscard]] const std::filesystem::path& database() const { return database_; }

 private:
  struct Place {
    BookId book;
    EntityId entity;  ///< the job, or the player's person
    EntityId setup;   ///< of a player
    Bytes newest;     ///< of a job: the mark that was made last
  };
  class Making;

  [[nodiscard]] const Place& place(const std::string& record) const;

  ManualClock clock_;
  std::filesystem::path database_;
  std::unique_ptr<Station> station_;
  std::unordered_map<std::string, Place> places_;
};

/// Reads a player's setup and last ten jobs with their events as a screen does; how many jobs and events
/// there were.
struct Reading {
  std::size_t cells = 0, jobs = 0, events = 0;
};
[[nodiscard]] Reading read_player(Ledger& ledger, const BookId& book);

}  // namespace weavelog::bench
