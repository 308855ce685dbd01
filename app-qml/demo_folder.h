#pragma once

#include <filesystem>

#include "core/base/outcome.h"

// Makes a device in the folder that holds the demo: today's event of an invented circuit, its players and a
// queue of rackets at every stage. Faults: those of Station::open and of the ledger.
[[nodiscard]] weavelog::Outcome<> fillWithDemo(const std::filesystem::path& folder);
