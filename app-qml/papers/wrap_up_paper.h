#pragma once

#include "app-qml/papers/paper.h"

// What an event comes to: rackets by day, stringer, string and tension, how many were on time; money; what is left of the string.
[[nodiscard]] std::vector<PaperPage> wrapUp(const weavelog::Ledger& ledger, const PaperRequest& request, const PaperSize& size);
