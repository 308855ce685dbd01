#pragma once
// What the files of acts share.

#include <array>

#include "tests/sim/acts.h"

namespace weavelog::sim {

inline constexpr std::array kFamilies{"Wendelmoor", "Tarnquist", "Lindqvar", "Møllerup", "Ágoston", "Querin", "Brandlund"};
inline constexpr std::array kGivens{"Ilse", "Mara", "Edvin", "Jorun", "Halla", "Anselm", "Birte", "Oda"};
inline constexpr std::array kStrings{"Tarnbrook Silk", "Velmora Round", "Orrin Seven", "Kestrel Twist"};
inline constexpr std::array kStringers{"Mara", "Jonas", "Runa"};

template <class List>
std::string one_of(const List& list, Random& random) {
  return list[static_cast<std::size_t>(random.below(list.size()))];
}

/// A player book that this device holds: the one on the screen if there is one, or any.
[[nodiscard]] std::optional<PlayerRecord> some_player(Device& device, Random& random);
/// The event at which the device works: its own, or that of a server whose event book it holds.
[[nodiscard]] BookId event_here(Device& device);
/// Nothing if the desk refused, or nothing is to be written.
[[nodiscard]] std::optional<Act> made(Outcome<Draft> draft, std::string what);

/// acts_bench.cpp: work on a player's rackets, and what is said of who the player is.
[[nodiscard]] std::optional<Act> act_at_bench(EventKind kind, Device& device, Random& random);
/// acts_room.cpp: what stands in the event's book.
[[nodiscard]] std::optional<Act> act_in_room(EventKind kind, Device& device, Random& random);

}  // namespace weavelog::sim
