#pragma once
// ContentExchange: the part of a session that carries contents (pictures), from protocol 4 on. Whoever wants one asks for it part by part,
// so that never more than one part (64 kB) of a session is under way and entries do not wait behind a picture.
//
//   ContentWish     ->             who wants it: from this offset on
//                   <-             ContentPart, or ContentAbsent
//
// A guest also names what was made on it, once the entries that name it are with the host (ContentOffer); the host asks for what it does
// not hold, while it has room, and says how much of it is settled (ContentSettled). So a picture is at the server before anybody asks.

#include <cstdint>
#include <deque>
#include <functional>
#include <optional>
#include <set>
#include <utility>
#include <vector>

#include "sync/exchange/content_files.h"
#include "sync/wire/messages.h"

namespace weavelog {

/// waiting: in the queue, or sought by the host; coming: parts come; here: whole and checked, on the disk.
enum class FetchState : std::uint8_t { waiting, coming, here, failed };

/// A content that somebody here wants.
struct ContentFetch {
  BookId book;
  Digest hash{};
  FetchState state = FetchState::waiting;
  std::uint64_t size = 0;  ///< in bytes; 0 until it is known
  std::uint64_t held = 0;
  std::optional<Fault> fault;  ///< why it failed: not_found (nobody who is connected has it), refused, newer, no_space, io
};

struct ContentRules {
  ContentFiles* files = nullptr;  ///< null: nothing is given or taken
  /// True if an entry of the book, as it is held here, names that content: nothing else is given, taken or kept.
  std::function<bool(const BookId&, const Digest&)> names;
  /// A host asks others who are connected for what it does not hold; true if there is anybody.
  std::function<bool(const BookId&, const Digest&)> seek;
};

/// Used by one session, on its thread.
class ContentExchange {
 public:
  struct Talk {
    std::function<void(const Message&)> send;
    std::function<bool(const BookId&)> may_send;  ///< the peer may have this book
  };
  ContentExchange(ContentRules rules, Talk talk);
  ~ContentExchange();
  ContentExchange(const ContentExchange&) = delete;
  ContentExchange& operator=(const ContentExchange&) = delete;

  /// Entries can cross from now on. `spoken`: the peer speaks of contents; `takes`: it may bring some; `offers`: what was made here is told.
  void open(bool spoken, bool takes, bool offers);
  /// Somebody here wants it. What is held already is there at once.
  void fetch(const BookId& book, const Digest& hash);
  /// The host passes a guest's wish on: given up as soon as this peer does not have it.
  void seek_here(const BookId& book, const Digest& hash);
  /// All entries of ours are with the host: names what was made here and was not named yet. `revision` is another number once entries or
  /// books of the scope have been added.
  void offer(std::int64_t revision);
  /// Twice a second.
  void tick();
  /// The session is over.
  void stop();

  // A fault ends the session.
  [[nodiscard]] Outcome<> take(const ContentWish& wish);
  [[nodiscard]] Outcome<> take(const ContentPart& part);
  [[nodiscard]] Outcome<> take(const ContentAbsent& absent);
  [[nodiscard]] Outcome<> take(const ContentOffer& offer);
  [[nodiscard]] Outcome<> take(const ContentSettled& settled);

  /// Those that are under way, and the last that ended.
  [[nodiscard]] const std::vector<ContentFetch>& fetches() const { return fetches_; }
  [[nodiscard]] std::uint64_t received() const { return received_; }
  [[nodiscard]] std::uint64_t sent() const { return sent_; }
  /// Offered to the host and not known to be settled; nothing before the first offer was made.
  [[nodiscard]] std::optional<std::uint64_t> unsettled() const;

 private:
  using Key = std::pair<BookId, Digest>;
  enum class Why : std::uint8_t { person, passed_on, offered };
  struct Want {
    Key key;
    Why why{};
    int pause = 0;  ///< ticks until it is asked for again
    int tries = 0;
    bool again = false;  ///< it was begun anew already
  };
  struct UnderWay {
    Want want;
    std::uint64_t asked = 0;   ///< offset
    std::uint64_t size = 0;    ///< 0 until told
    bool from_start = false;   ///< every byte comes from this peer
    int waited = 0;            ///< ticks
    bool stale = false;        ///< no answer for long: others may fetch it, and what comes yet is not used
  };

  void add(const Key& key, Why why);
  void go();
  void ask(Want want);
  void ended(const Want& want, std::optional<Fault> fault);
  void begin_anew(Want want);
  /// An answer after others may have gone on with it: asked for once more.
  [[nodiscard]] bool came_late();
  /// The peer's: what is under way fails with it, and what only this peer gave is thrown away.
  [[nodiscard]] tl::unexpected<Fault> lie(const char* what);
  [[nodiscard]] bool named(const Key& key) const;
  [[nodiscard]] ContentFetch* shown(const Key& key);
  void settle();

  ContentRules rules_;
  Talk talk_;
  bool open_ = false, spoken_ = false, takes_ = false, offers_ = false;
  std::deque<Want> wants_;
  std::optional<UnderWay> under_way_;
  std::vector<ContentFetch> fetches_;
  std::optional<Key> proved_;  ///< given last, and read whole and checked before its first part went
  std::uint64_t received_ = 0, sent_ = 0;
  // A host's: of what was offered to it.
  std::uint64_t offered_pending_ = 0, settled_ = 0, settled_said_ = 0;
  // A guest's: what it offered.
  std::set<Key> offered_;
  std::uint64_t settled_there_ = 0;
  bool told_ = false, unnamed_ = false;
  std::uint64_t made_seen_ = 0;
  std::int64_t revision_seen_ = -1;
};

}  // namespace weavelog
