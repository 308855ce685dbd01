#pragma once
// Connections between the devices: frames of real sessions on their way, with latency, stalls, cuts,
// flipped bytes and frames that come twice.

#include <array>
#include <deque>
#include <map>
#include <memory>
#include <queue>

#include "sync/exchange/session.h"
#include "tests/sim/lies.h"
#include "tests/sim/room.h"

namespace weavelog::sim {

/// One side of a connection.
struct End {
  std::size_t device = 0;
  std::unique_ptr<Session> session;  ///< none: that side is gone, and the other does not know yet
  /// Batches sent and not yet confirmed: which entries each holds.
  std::map<std::uint64_t, std::vector<std::pair<EntryKey, Digest>>> sent;
  std::size_t restores = 0;  ///< of the device when this began
  UnixMs last_arrival = 0;   ///< of what it sent: a connection keeps its order
  std::deque<Bytes> coming;  ///< frames on their way to it, as they were sent
  bool stalled = false;      ///< what it sends from now on gets lost
  bool woken = false;        ///< a look at the ledger is on its way
};

struct Link {
  std::size_t number = 0;
  std::array<End, 2> ends;  ///< guest, host
  UnixMs fastest = 0, slowest = 0;
  Random random;
  std::size_t frames = 0;
  bool flip_next = false;      ///< a byte of the next frame
  bool repeat_next = false;    ///< the next frame comes twice
  std::unique_ptr<Liar> liar;  ///< alters the guest's frames
  bool tainted = false;  ///< something was altered: confirmations do not count, and it may end in any way
  bool disk_fault = false;  ///< one side ended it because of its disk
  bool revoked = false;  ///< the guest was revoked, before it began or since
  bool pairing = false;
  bool unsure = false;   ///< the host may not have known the guest when it began
  Digest certificate{};
};

struct LinkTemper {
  UnixMs fastest = 0, slowest = 0;
  std::size_t batch_bytes = 4096;
  bool lies = false;
  std::uint64_t salt = 0;
};

class Network {
 public:
  explicit Network(Room& room) : room_(room) {}

  /// A guest calls a server; pairs first if it has to. Nothing if one of them is down or the server is out of
  /// reach.
  Link* connect(const Visit& visit, const LinkTemper& temper);
  /// Delivers what arrives until then and moves the time on.
  void run_until(UnixMs time);
  /// Delivers everything that is under way, and lets all quiet ends say where they stand.
  void settle();
  /// Ends one connection on both sides; false if there is none of that number.
  bool hang_up(std::size_t number);
  /// As hang_up(), but whoever was about to hear something first gets a piece of it.
  bool cut(std::size_t number);
  void drop_all_of(std::size_t device);
  void drop_all();
  /// The server will have nothing to do with that device any more, in sessions that go on either.
  void note_revoked(std::size_t server, const PublicKey& guest);
  /// The device's ledger may have grown.
  void wake(std::size_t device);

  [[nodiscard]] std::map<std::size_t, Link>& links() { return links_; }

 private:
  enum class What : std::uint8_t { frame, wake, tick };
  struct Arrival {
    UnixMs at = 0;
    std::uint64_t order = 0;
    std::size_t link = 0;
    std::size_t side = 0;  ///< that it arrives at
    What what = What::frame;
    Bytes frame;
    bool operator<(const Arrival& other) const {
      return at != other.at ? at > other.at : order > other.order;
    }
  };

  void push(Link& link, std::size_t side, What what, Bytes frame, UnixMs at);
  void send(Link& link, std::size_t side, Session::Frames frames);
  void note_sent(std::size_t link, std::size_t side, std::uint64_t number, const Batch& sent);
  void note_answer(Link& link, std::size_t side, const Bytes& frame);
  [[nodiscard]] bool speaks_older(const Link& link) const;
  void note_arrived(Link& link, std::size_t side, const Bytes& frame);
  void arrive(Arrival arrival);
  void mind_forgotten(std::size_t place, std::size_t message);
  void after(Link& link, std::size_t side);
  void check_fault(Link& link, std::size_t side, const Fault& fault);

  Room& room_;
  std::map<std::size_t, Link> links_;
  std::priority_queue<Arrival> queue_;
  std::uint64_t order_ = 0;
  std::size_t next_link_ = 1;
};

}  // namespace weavelog::sim
