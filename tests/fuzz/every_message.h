#pragma once
// One of every message, with something in each of its fields: what to begin with. A test counts them against the variant.

#include <vector>

#include "sync/wire/messages.h"

namespace weavelog::fuzz {

[[nodiscard]] std::vector<Message> every_message();
/// Their frames, made once.
[[nodiscard]] const std::vector<Bytes>& every_frame();

}  // namespace weavelog::fuzz
