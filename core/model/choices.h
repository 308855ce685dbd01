#pragma once
// Small closed choices. Stored as integers; 0 always means "not said". A number of a newer version is kept as
// it is.

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace weavelog {

enum class Hand : std::uint8_t { unsaid = 0, right = 1, left = 2 };
/// What the player allows (see the consent texts): asked on the turned screen, withdrawable.
enum class ConsentChoice : std::uint8_t {
  unsaid = 0,
  this_room = 1,
  events_entered = 2,
  any_room = 3,
  withdrawn = 4
};
enum class Supply : std::uint8_t { unsaid = 0, reel = 1, set = 2 };
enum class StringOwner : std::uint8_t { unsaid = 0, room = 1, player = 2 };
enum class Rush : std::uint8_t { none = 0, rush = 1, on_court = 2 };
enum class EntryVia : std::uint8_t { unsaid = 0, direct = 1, qualifier = 2, lucky_loser = 3, wild_card = 4, alternate = 5 };
enum class TeamRole : std::uint8_t { unsaid = 0, head = 1, desk = 2, stringer = 3, reader = 4 };

/// Why there is more or less string in stock.
enum class StockWhy : std::uint8_t { unsaid = 0, received = 1, used = 2, counted = 3, spoilt = 4, returned = 5, taken_away = 6 };
/// The lists by which a room works.
enum class WorkList : std::uint8_t { unsaid = 0, bench = 1, check = 2 };
/// What was measured: the pull of a tension head, how stiff a string bed is, the tone that it gives.
enum class ReadingKind : std::uint8_t { unsaid = 0, tension_head = 1, bed_stiffness = 2, tone = 3 };
/// What a string is made of, as its package says.
enum class StringMaterial : std::uint8_t { unsaid = 0, natural_gut = 1, multifilament = 2, synthetic_gut = 3, polyester = 4, aramid = 5 };
/// What somebody said of two books.
enum class LinkSaid : std::uint8_t { unsaid = 0, same_person = 1, other_person = 2 };
/// Why somebody is known by another name as well.
enum class NameWhy : std::uint8_t { unsaid = 0, former = 1, married = 2, short_form = 3, other_spelling = 4 };
/// How the room was paid.
enum class PaidBy : std::uint8_t { unsaid = 0, cash = 1, card = 2, room_account = 3, prize_money = 4 };

/// How a machine pulls.
enum class MachineKind : std::uint8_t { unsaid = 0, constant_pull = 1, lockout = 2, drop_weight = 3 };
/// What was done to a machine, or happened to it.
enum class CareKind : std::uint8_t { unsaid = 0, clamps_cleaned = 1, calibrated = 2, out_of_order = 3, back_in_order = 4 };

/// How a draw is played.
enum class DrawKind : std::uint8_t { unsaid = 0, knock_out = 1, qualifying = 2, round_robin = 3 };
/// How a match came to its winner.
enum class EndOfMatch : std::uint8_t { unsaid = 0, played = 1, walkover = 2, retired = 3, disqualified = 4 };

/// What an inspection finds on a frame.
enum class FrameFault : std::uint8_t {
  unsaid = 0,
  crack = 1,
  dent = 2,
  grommet_split = 3,
  grommet_missing = 4,
  bumper_worn = 5,
  sharp_hole = 6,
  other = 7,
};
enum class FramePart : std::uint8_t { unsaid = 0, head = 1, throat = 2, shaft = 3, handle = 4 };
/// What may be done about it: the room proposes one, the player answers with one.
enum class FrameRemedy : std::uint8_t { unsaid = 0, string_anyway = 1, tube = 2, replace_strip = 3, do_not_string = 4 };

/// Where a racket is on its way through the room.
enum class Stage : std::uint8_t {
  none = 0,
  received = 1,
  inspected = 2,
  waiting = 3,  ///< for an answer of the player
  cut_out = 4,
  on_machine = 5,
  strung = 6,
  checked = 7,
  stencilled = 8,
  ready = 9,
  collected = 10,
  aside = 11,  ///< taken out of the run, with a reason
};
inline constexpr std::size_t kStageCount = 12;

template <class Enum>
struct Choice {
  Enum value;
  std::string_view name;  ///< stable, snake_case: exports, commands, phrases
};

/// Every value with its name, in order of number.
[[nodiscard]] std::span<const Choice<Hand>> choices(Hand);
[[nodiscard]] std::span<const Choice<ConsentChoice>> choices(ConsentChoice);
[[nodiscard]] std::span<const Choice<Supply>> choices(Supply);
[[nodiscard]] std::span<const Choice<StringOwner>> choices(StringOwner);
[[nodiscard]] std::span<const Choice<Rush>> choices(Rush);
[[nodiscard]] std::span<const Choice<EntryVia>> choices(EntryVia);
[[nodiscard]] std::span<const Choice<TeamRole>> choices(TeamRole);
[[nodiscard]] std::span<const Choice<Stage>> choices(Stage);
[[nodiscard]] std::span<const Choice<StockWhy>> choices(StockWhy);
[[nodiscard]] std::span<const Choice<WorkList>> choices(WorkList);
[[nodiscard]] std::span<const Choice<ReadingKind>> choices(ReadingKind);
[[nodiscard]] std::span<const Choice<StringMaterial>> choices(StringMaterial);
[[nodiscard]] std::span<const Choice<LinkSaid>> choices(LinkSaid);
[[nodiscard]] std::span<const Choice<NameWhy>> choices(NameWhy);
[[nodiscard]] std::span<const Choice<PaidBy>> choices(PaidBy);
[[nodiscard]] std::span<const Choice<MachineKind>> choices(MachineKind);
[[nodiscard]] std::span<const Choice<CareKind>> choices(CareKind);
[[nodiscard]] std::span<const Choice<DrawKind>> choices(DrawKind);
[[nodiscard]] std::span<const Choice<EndOfMatch>> choices(EndOfMatch);
[[nodiscard]] std::span<const Choice<FrameFault>> choices(FrameFault);
[[nodiscard]] std::span<const Choice<FramePart>> choices(FramePart);
[[nodiscard]] std::span<const Choice<FrameRemedy>> choices(FrameRemedy);

/// "on_court"; "" for a number of a newer version.
template <class Enum>
[[nodiscard]] std::string_view name_of_choice(Enum value) {
  for (const auto& choice : choices(Enum{}))
    if (choice.value == value) return choice.name;
  return {};
}
template <class Enum>
[[nodiscard]] std::optional<Enum> choice_from(std::string_view name) {
  for (const auto& choice : choices(Enum{}))
    if (choice.name == name) return choice.value;
  return std::nullopt;
}

}  // namespace weavelog
