#pragma once

#include "app-qml/papers/paper.h"

// All that is held on one player, of every book that is linked to be theirs, with pictures, in the player's language where papers speak it:
// what they are given who ask for it. Faults: not_found.
[[nodiscard]] weavelog::Outcome<std::vector<PaperPage>> recordPages(const weavelog::Ledger& ledger, const PaperRequest& request, const PaperSize& size);
