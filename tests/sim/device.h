#pragma once
// One simulated device: a clock, a disk and, while it is up, the real station on it.

#include <memory>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "core/desk/player_record.h"
#include "sync/exchange/workplace.h"
#include "tests/sim/clock.h"
#include "tests/sim/disk.h"

namespace weavelog::sim {

/// Which fields a device knows: an older and a newer program than today's side by side.
enum class Program : std::uint8_t { older, today, newer };
[[nodiscard]] const FieldRegistry& registry_of(Program program);
/// Fields that only the newer program knows.
inline constexpr FieldTag kNewerNote{199};    ///< of a person; anybody's last word
inline constexpr FieldTag kNewerAgreed{399};  ///< of a setup; guarded

/// The key of the so-manieth device: the same in every run, since making one takes time.
[[nodiscard]] const DeviceKey& key_of(std::size_t number);

/// Makes what all runs share and what takes chance to make. To be called before a run is seeded.
void prepare_devices();

enum class Duty : std::uint8_t { server, tablet, hostile };

class Device {
 public:
  struct Making {
    std::size_t number = 0;      ///< names it
    std::size_t key_number = 0;  ///< of key_of(): its own, or that of the device it was copied from
    Duty duty = Duty::tablet;
    Program program = Program::today;
    std::uint64_t seed = 0;
    std::size_t sector = 512;
    std::size_t page = 4096;      ///< of its database
    bool one_connection = false;  ///< of its program to its database: it reads where it writes
  };
  /// Its disk holds an empty ledger of another key, which opens faster than none and makes it a new author
  /// all the same.
  Device(const Making& making, const Time& time);

  /// Opens the station; false (and why in `fault`) if it can't.
  bool start();
  /// Closes as a program that is told to end.
  void end();
  /// Dies. Whoever has sessions on it must have dropped them.
  void die(Stop how);
  [[nodiscard]] bool up() const { return station_ != nullptr; }
  /// True once the disk has stopped under the running program, which therefore answers nobody any more.
  [[nodiscard]] bool gone() const { return disk.stopped(); }

  [[nodiscard]] Station& station() { return *station_; }
  [[nodiscard]] Ledger& ledger() { return station_->ledger(); }
  [[nodiscard]] const Ledger& ledger() const { return station_->ledger(); }
  [[nodiscard]] Workplace& work() { return *work_; }
  [[nodiscard]] const PublicKey& key() const { return key_of(key_number).public_key(); }
  /// True if the ledger has grown since the last time this was asked.
  [[nodiscard]] bool take_grown() { return std::exchange(grown_, false); }
  /// What may go to that event's room, as this device knows the players' wishes.
  [[nodiscard]] bool may_leave(const BookId& book, BookKind kind, const BookId& room);

  /// Its file is an old or a foreign copy from now on: it may give numbers again until a peer has shown it
  /// entries of its own that it did not know.
  void forget_knowing();
  void ask_whether_it_knows();

  const Making making;
  const std::size_t key_number;
  std::string name;
  DeviceClock clock;
  Disk disk;
  std::optional<Fault> fault;  ///< of the last start

  // What its person remembers between two looks at the screen.
  std::optional<std::size_t> host;           ///< the server at whose event it is
  std::vector<OpenQuestion> seen_questions;  ///< as they stood when last looked at
  std::optional<PlayerRecord> seen_record;

  // What the simulator knows about it.
  BookId event;            ///< a server's own
  UnixMs latest_wall = 0;  ///< the greatest time its clock ever showed while it worked
  std::size_t restores =
      0;                 ///< how often its files were put back: what it confirmed before no longer binds it
  bool unaware = false;  ///< see forget_knowing()
  std::set<BookId> forgot;  ///< books that its ledger knows to be forgotten: they must not come back
  std::set<BookId> tried_in;  ///< books into which somebody tried to write: whether that was stored is seen at the next start
  std::set<BookId> not_to_stay;  ///< that it was given and was to let go again, because of what the player said

 private:
  std::unique_ptr<Station> station_;
  std::unique_ptr<Workplace> work_;
  bool grown_ = false;
  bool news_ = false;  ///< the ledger has grown since ask_whether_it_knows()
  AuthorId unaware_author_;
  std::int64_t taken_back_ = 0;  ///< entries of its own that came from peers, as it became unaware
};

}  // namespace weavelog::sim
