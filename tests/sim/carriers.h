#pragma once
// What people carry from device to device where there is no network: bundles on sticks, receipts that come back, player cards on paper.
// They are in somebody's pocket for as long as it takes, are copied badly, lost, handed to the wrong device, and read twice.

#include <deque>
#include <optional>

#include "sync/carry/bundle.h"
#include "sync/carry/card_intake.h"
#include "sync/carry/receipt.h"
#include "tests/sim/acts.h"
#include "tests/sim/room.h"

namespace weavelog::sim {

class Carriers {
 public:
  explicit Carriers(Room& room) : room_(room) {}

  /// Somebody at the device makes a bundle for another one, or the hostile device does.
  void make_bundle(std::size_t place, std::size_t other, Random& random);
  /// Somebody plugs one of the sticks in.
  void take_bundle(std::size_t place, Random& random);
  /// Receipts that came back to the device are read.
  void read_receipts(std::size_t place);
  void make_card(std::size_t place, Random& random);
  /// Somebody scans one of the cards: what is to be written, if anything.
  [[nodiscard]] std::optional<Act> scan_card(std::size_t place, Random& random);

 private:
  struct Held {
    EntryKey key;
    Digest body{};
    Digest hash{};  ///< of its chain up to there
  };
  struct Stick {
    Bytes file;
    BundleId id;
    PublicKey maker{};
    std::optional<PublicKey> for_device;  ///< else for who knows the words
    std::string words;
    BookId room;
    bool hostile = false;
    std::vector<Held> entries;     ///< all that it holds, in order
    std::vector<BookHeads> heads;  ///< of what it holds
    std::set<BookId> stubs;
  };
  struct Slip {
    Bytes file;
    PublicKey maker{};
    Receipt receipt;
  };
  struct Card {
    std::string text;
    BookId book;
  };

  [[nodiscard]] std::optional<Stick> honest(Device& device, const Stick& wanted, Random& random);
  void note_content(Stick& stick, const OpenWith& with) const;
  void make_hostile(Stick& stick, Random& random);
  void take(std::size_t place, const Stick& stick, ByteView file, bool tampered);
  void check_receipt(std::size_t place, const Stick& stick, const TakenBundle& taken, const Receipt& receipt);
  [[nodiscard]] BookId room_of(const Device& device) const;

  Room& room_;
  std::deque<Stick> sticks_;
  std::vector<Slip> slips_;
  std::deque<Card> cards_;
};

}  // namespace weavelog::sim
