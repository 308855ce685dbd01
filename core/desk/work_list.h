#pragma once
// The lists by which a room works: the steps at the bench, the items of the check. A room that never changed a list has the common
// practice; with its first change that is written down in its event's book and is its own from then on.

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/language.h"
#include "core/model/list_step.h"
#include "core/store/ledger.h"

namespace weavelog {

/// A line of a list as the room has it.
struct WorkStep {
  EntityId id;       ///< none while the room has the common practice
  std::string name;  ///< how records name it: "=" and the key of common practice, or the room's own words
  ListStep step;
  bool own = false;  ///< the room added it
};

/// What a room has of a list, in its order; steps that are turned off only if asked for. `steps`: all that the event's book holds.
[[nodiscard]] std::vector<WorkStep> work_list(std::span<const Loaded<ListStep>> steps, WorkList list, bool off_too = false);
/// All lines of all lists that an event's book holds; none where a room has the common practice.
[[nodiscard]] std::vector<Loaded<ListStep>> list_steps(const Ledger& ledger, const BookId& event);

/// What a step says in a language: the room's words for it, or for every language, or the common practice.
[[nodiscard]] std::string step_words(const Language& language, const ListStep& step);
/// The same for the name that a record holds, where the list is not at hand.
[[nodiscard]] std::string step_words(const Language& language, std::string_view name);

/// What is to be different about a step; what is not given stays.
struct StepChange {
  std::optional<std::string> text{};      ///< "": the common practice's words again
  std::optional<std::string> language{};  ///< of the text: "en", "de", "fr", "es"; not given: for every language
  std::optional<bool> off{};
  std::optional<std::size_t> place{};  ///< from 1
};
/// Changes the step of that name. Faults: not_found; bad_input (no such language or place, nothing to change, a step without words, words
/// that another step has, or that are too long).
[[nodiscard]] Outcome<Draft> change_step(const BookId& event, std::span<const Loaded<ListStep>> steps, WorkList list, std::string_view name,
                                         const StepChange& change);
/// Adds a step of the room's own words, or turns the one of these words on again; at the end if no place is given. Faults: bad_input (as above; too many steps).
[[nodiscard]] Outcome<Draft> add_step(const BookId& event, std::span<const Loaded<ListStep>> steps, WorkList list, const std::string& text,
                                      std::optional<std::size_t> place, UnixMs at);

/// The list as common practice has it: its words, its order, nothing turned off but what the room added, which can be added again. Faults:
/// bad_input (it is so already, no such list).
[[nodiscard]] Outcome<Draft> usual_list(const BookId& event, std::span<const Loaded<ListStep>> steps, WorkList list);

/// A list is read at the bench: so many lines, and so long ones, at most.
inline constexpr std::size_t kMostSteps = 40;
inline constexpr std::size_t kLongestStep = 300;

/// Names of steps as records hold them, one a line, and back.
[[nodiscard]] std::string join_names(std::span<const std::string> names);
[[nodiscard]] std::vector<std::string> split_names(std::string_view lines);

}  // namespace weavelog
