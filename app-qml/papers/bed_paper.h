#pragma once

#include "app-qml/papers/paper.h"

// The string beds of request.jobs, each from a page of its own on: the bed drawn with the lines of equal stiffness, its figures now and at the match
// with their bands, what is left of the tension over time, what keeps its feel, and cautions. All estimates; of several one that can't be told says
// why. Faults: not_found (no racket), bad_input (more than 60), those of room_bed() of a single one.
[[nodiscard]] weavelog::Outcome<std::vector<PaperPage>> bedSheets(const weavelog::Ledger& ledger, const PaperRequest& request, const PaperSize& size);
