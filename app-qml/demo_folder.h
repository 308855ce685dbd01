#pragma once

#include <filesystem>

#include "core/base/outcome.h"

// What the demo's tablet is called: what people sign there must not bear the name of somebody's machine.
inline constexpr char demoTabletName[] = "Demo tablet";

// Makes a device in the folder that holds the demo: today's event of an invented circuit, its players and a
// queue of rackets at every stage. Faults: those of Station::open and of the ledger.
[[nodiscard]] weavelog::Outcome<> fillWithDemo(const std::filesystem::path& folder);
