#pragma once
// Inspection before anything is cut: what was found on the frame, what the room proposes, what the player answers. A racket of
// which something is still to be answered does not go on to cutting out or to a machine, unless somebody answers for it by name.

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/language.h"
#include "core/desk/player_record.h"

namespace weavelog {

/// One tap on the drawing of the frame.
struct FoundOnFrame {
  FrameFault fault = FrameFault::unsaid;
  FramePart part = FramePart::head;
  std::optional<std::int64_t> clock_minutes;  ///< on the head, 0 to 719, head = 12 o'clock
  FrameRemedy proposal = FrameRemedy::unsaid;  ///< unsaid: noted only
  std::string note;
};

/// Stores what was found (nothing: the frame is sound) and moves the job on, in one action: to `inspected`, or to `waiting` if the
/// player has something to answer. Faults: not_found; bad_input (no fault or place said, a place that is none; "other" without a
/// note); refused (the racket is past its inspection); conflict (its stage clashes).
[[nodiscard]] Outcome<Draft> inspect(const PlayerRecord& record, const EntityId& job, std::span<const FoundOnFrame> found,
                                     const std::string& by, UnixMs at);

struct FrameAnswer {
  FrameRemedy remedy = FrameRemedy::unsaid;
  std::string said_by;   ///< the player, a coach
  std::string taken_by;  ///< who of the room heard it
  UnixMs at = 0;
};

/// Stores the player's answer. Where it was the last that the job waited for, the job is `inspected` again, or put aside if any answer
/// says not to string. Faults: not_found; bad_input (no answer, nobody named); refused (the finding asks nothing).
[[nodiscard]] Outcome<Draft> answer_finding(const PlayerRecord& record, const EntityId& finding, const FrameAnswer& answer);

/// Somebody lets the racket go on although the player has not answered, or against the answer. Faults: not_found; bad_input (no name, no
/// reason); refused (nothing holds the racket).
[[nodiscard]] Outcome<Draft> override_finding(const PlayerRecord& record, const EntityId& finding, const std::string& by,
                                              const std::string& reason, UnixMs at);

/// What was found has been put right: from now on it is history. Faults: not_found; bad_input (no name); refused (it was before).
[[nodiscard]] Outcome<Draft> mend_finding(const PlayerRecord& record, const EntityId& finding, const std::string& by, UnixMs at);

/// Findings of a racket, newest first; those that were put right only if asked for.
[[nodiscard]] std::vector<const Loaded<FrameFinding>*> findings_of(const PlayerRecord& record, const EntityId& racket,
                                                                  bool mended_too = false);

enum class FrameHold : std::uint8_t {
  none = 0,         ///< the racket may go on
  unanswered = 1,   ///< the player has not answered yet
  two_answers = 2,  ///< two different answers were taken apart: a person picks one
  refused = 3,      ///< the player said not to string it
};
/// Whether and why a finding holds its job back.
[[nodiscard]] FrameHold holding_of(const PlayerRecord& record, const Loaded<FrameFinding>& finding);
/// The fault that a step to cutting out or to a machine meets, if a finding of that job holds it back.
[[nodiscard]] std::optional<Fault> held_back(const PlayerRecord& record, const EntityId& job);

/// "crack at 2 o'clock": what and where, in the reader's language. Half hours are told as such.
[[nodiscard]] std::string finding_words(const Language& language, const FrameFinding& finding);
/// The place alone: "at half past 2", "at the throat".
[[nodiscard]] std::string place_words(const Language& language, FramePart part, std::optional<std::int64_t> clock_minutes);
/// What the player is asked, with the proposal.
[[nodiscard]] std::string finding_question(const Language& language, const FrameFinding& finding);
[[nodiscard]] std::string remedy_words(const Language& language, FrameRemedy remedy);

}  // namespace weavelog
