#pragma once
// Wall clock (a seam, so that tests and the simulator can set it) and the hybrid logical clock over it.

#include <compare>
#include <cstdint>
#include <memory>

namespace weavelog {

/// Milliseconds since 1970-01-01 UTC.
using UnixMs = std::int64_t;

class WallClock {
 public:
  virtual ~WallClock() = default;
  [[nodiscard]] virtual UnixMs now() const = 0;
  /// The machine's own clock; never destroyed.
  [[nodiscard]] static const WallClock& system();
};

/// A clock that a test sets by hand.
class ManualClock final : public WallClock {
 public:
  explicit ManualClock(UnixMs now) : now_(now) {}
  [[nodiscard]] UnixMs now() const override { return now_; }
  void set(UnixMs now) { now_ = now; }
  void advance(UnixMs by) { now_ += by; }

 private:
  UnixMs now_;
};

/// A hybrid-logical-clock stamp in one integer that sorts as the stamp does: 48 bits of wall milliseconds, 16 of counter.
struct Stamp {
  std::uint64_t raw = 0;

  [[nodiscard]] static constexpr Stamp of(std::uint64_t wall_ms, std::uint16_t counter) {
    return Stamp{(wall_ms << 16) | counter};
  }
  [[nodiscard]] constexpr UnixMs wall_ms() const { return static_cast<UnixMs>(raw >> 16); }
  [[nodiscard]] constexpr std::uint16_t counter() const { return static_cast<std::uint16_t>(raw & 0xffff); }
  auto operator<=>(const Stamp&) const = default;
};

/// Hybrid logical clock (Kulkarni, Demirbas, Madappa, Avva, Leone 2014, "Logical Physical Clocks", Figure 5).
/// A full counter carries into the wall part, so a stamp always exists. Not thread-safe.
class HybridClock {
 public:
  /// A remote stamp further ahead of the wall than this is not adopted: see witness().
  static constexpr UnixMs kTooFarAhead = 10 * 60 * 1000;
  /// In the year 10,332: nearly all that 48 bits hold, so that words can still follow what a forger dates at the end of time
  /// (core/store/entry_rules.h). No wall counts beyond it.
  static constexpr UnixMs kLatestWall = (UnixMs{1} << 48) - (UnixMs{1} << 44) - 1;

  /// Starts after `last`, the newest stamp ever given or seen, which the caller must have kept on disk.
  explicit HybridClock(const WallClock& wall, Stamp last = {}) : wall_(&wall), last_(last) {}

  /// The next stamp for an event of our own: after everything given or witnessed.
  [[nodiscard]] Stamp tick();
  /// Takes a remote stamp in, as one event. False, and the clock is left alone, if it is too far ahead of the wall.
  bool witness(Stamp remote);
  /// True if the stamp lies further than kTooFarAhead beyond the wall clock now.
  [[nodiscard]] bool too_far_ahead(Stamp remote) const;
  [[nodiscard]] Stamp last() const { return last_; }
  [[nodiscard]] const WallClock& wall() const { return *wall_; }

 private:
  [[nodiscard]] std::uint64_t wall_now() const;

  const WallClock* wall_;
  Stamp last_;
};

}  // namespace weavelog
