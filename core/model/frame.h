#pragma once
// What an inspection found on a racket's frame: part of the player's book, so that it follows the racket to the next event.

#include <array>

#include "core/model/field.h"
#include "core/model/fields.h"

namespace weavelog {

/// One place on one frame. The room proposes what to do; the player's answer is guarded, so that two different ones stay until
/// a person picks one.
struct FrameFinding {
  EntityId racket;
  EntityId job;  ///< for which the racket was in the room
  FrameFault fault = FrameFault::unsaid;
  FramePart part = FramePart::unsaid;
  std::optional<std::int64_t> clock_minutes;  ///< where on the head, as on a clock: 0 to 719, head = 0 (12 o'clock), throat = 360
  std::string note;
  std::optional<std::int64_t> at;
  std::string by;
  FrameRemedy proposal = FrameRemedy::unsaid;  ///< unsaid: only noted, nothing is asked of the player
  FrameRemedy answer = FrameRemedy::unsaid;
  std::string answered_by;  ///< who spoke for the player
  std::string answer_taken_by;
  std::optional<std::int64_t> answered_at;
  std::string override_by;  ///< who lets the racket go on without an answer, or against it
  std::string override_reason;
  std::optional<std::int64_t> override_at;
  std::string mended_by;  ///< who put it right: a new strip, tubing; from then on it is history
  std::optional<std::int64_t> mended_at;
  bool operator==(const FrameFinding&) const = default;
};

inline constexpr auto kFrameFindingFields = std::to_array<Field<FrameFinding>>({
    {1, "racket", &FrameFinding::racket},
    {2, "job", &FrameFinding::job},
    {3, "fault", &FrameFinding::fault},
    {4, "part", &FrameFinding::part},
    {5, "clock_minutes", &FrameFinding::clock_minutes},
    {6, "note", &FrameFinding::note},
    {7, "at", &FrameFinding::at},
    {8, "by", &FrameFinding::by},
    {9, "proposal", &FrameFinding::proposal},
    {10, "answer", &FrameFinding::answer, true},
    {11, "answered_by", &FrameFinding::answered_by},
    {12, "answer_taken_by", &FrameFinding::answer_taken_by},
    {13, "answered_at", &FrameFinding::answered_at},
    {14, "override_by", &FrameFinding::override_by},
    {15, "override_reason", &FrameFinding::override_reason},
    {16, "override_at", &FrameFinding::override_at},
    {17, "mended_by", &FrameFinding::mended_by},
    {18, "mended_at", &FrameFinding::mended_at},
});
template <>
struct Described<FrameFinding> {
  static constexpr EntityKind kind = kFrameFinding;
  static constexpr std::uint32_t base = 800;
  static constexpr std::span<const Field<FrameFinding>> table = kFrameFindingFields;
};

}  // namespace weavelog
