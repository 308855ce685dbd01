#pragma once
// By what else a player is called: a name from before a marriage, the short form that the desk hears, another spelling. They are found and
// recognised by each of them.

#include "core/desk/player_record.h"

namespace weavelog {

/// Stores another name; `at` and `by` of it are set by this. Faults: not_found (no player yet); bad_input (no name, nobody named); refused (the
/// player is called so already).
[[nodiscard]] Outcome<Draft> add_other_name(const PlayerRecord& record, OtherName name, const std::string& by, UnixMs at);
/// Takes it back. Faults: not_found.
[[nodiscard]] Outcome<Draft> drop_other_name(const PlayerRecord& record, const EntityId& name);

/// "Given Family", and the name in the own script in brackets.
[[nodiscard]] std::string other_name_words(const OtherName& name);

}  // namespace weavelog
