#pragma once

#include "app-qml/papers/paper.h"

// How even the room's work is: the rackets' chart with its limits, what stands out, machines against their gauge, and the rackets one by one; all
// estimates. Faults: not_found (no event, nothing measured).
[[nodiscard]] weavelog::Outcome<std::vector<PaperPage>> evenness(const weavelog::Ledger& ledger, const PaperRequest& request, const PaperSize& size);
