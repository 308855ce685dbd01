#pragma once

#include <functional>

#include "app-qml/papers/paper.h"

// The room's lists, and a player's statement.

// Every racket that is not ready yet, by the time it was promised for.
[[nodiscard]] std::vector<PaperPage> workList(const weavelog::Ledger& ledger, const PaperRequest& request, const PaperSize& size);
// Every racket that is ready, with room for who collects it to sign.
[[nodiscard]] std::vector<PaperPage> pickUpList(const weavelog::Ledger& ledger, const PaperRequest& request, const PaperSize& size);
// What one player was charged and paid, and what is due: in the player's language where papers speak it. Faults: not_found.
[[nodiscard]] weavelog::Outcome<std::vector<PaperPage>> statement(const weavelog::Ledger& ledger, const PaperRequest& request, const PaperSize& size);

// The event's name and place, and when it was printed: what stands below every title.
[[nodiscard]] QStringList belowTitle(const weavelog::Ledger& ledger, const PaperRequest& request, const weavelog::Language& language);
// "Page 1 of 3".
[[nodiscard]] std::function<QString(int, int)> pageNumbers(const weavelog::Language& language);
// "String Tarnbrook Silk": a service of the price list as a line of an account says it.
[[nodiscard]] QString serviceWords(const weavelog::Language& language, const std::string& service, const std::string& note);
