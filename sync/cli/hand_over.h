#pragma once
// What every hand-over at the desk has in common: reading back, and storing what the player confirmed.

#include <CLI/CLI.hpp>
#include <string>
#include <vector>

#include "core/desk/drop_off.h"
#include "sync/cli/context.h"
#include "sync/cli/field_input.h"

namespace weavelog::cli {

struct DeskArguments {
  std::string ready_by;
  std::string rush;
  std::string brought_by;
  std::string collected_by;
  std::string place;
  std::string note;
  std::string by;        ///< who takes it in; default: the device's name
  std::int64_t tag = 0;  ///< of the first racket; 0: the next free one
  std::string event;
  bool confirm = false;
};

void add_desk_options(CLI::App& command, DeskArguments& arguments);
/// What `answer_hand_over` prints with --json, for help.
[[nodiscard]] std::string hand_over_footer();

/// The event's part of a request: event, times, language, device. `typing` says how times are told.
struct DeskSetting {
  DropOffRequest request;
  Typing typing;
  std::string by;
};
/// Faults: those of Context::event if one was named; a device that holds no event works without.
[[nodiscard]] Outcome<DeskSetting> set_desk(Context& context, const Person& person,
                                            const DeskArguments& arguments);

/// Numbers the tags, reads back, and stores if the player confirmed; prints all of it. Needed answers that
/// are missing end it with needs_answer, nothing stored.
[[nodiscard]] Outcome<Ending> answer_hand_over(Context& context, const PlayerRecord& record, DeskSetting desk,
                                               const DeskArguments& arguments);

}  // namespace weavelog::cli
