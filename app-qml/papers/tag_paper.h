#pragma once

#include "app-qml/papers/paper_page.h"
#include "app-qml/papers/paper_size.h"
#include "app-qml/papers/tag_content.h"

// Tags that hang on rackets and bags: large print, black on white, a code to scan.

// One for each racket.
[[nodiscard]] std::vector<PaperPage> racketTags(std::span<const TagContent> tags, const PaperSize& size, const weavelog::Language& language);
// One for each bag: what one drop-off brought in.
[[nodiscard]] std::vector<PaperPage> bagTags(std::span<const TagContent> tags, const PaperSize& size, const weavelog::Language& language);
// Small racket tags on sheets of labels, from position `start` (1 is the first) of the first sheet on.
[[nodiscard]] std::vector<PaperPage> labelSheets(std::span<const TagContent> tags, const PaperSize& size, int start,
                                                 const weavelog::Language& language);
