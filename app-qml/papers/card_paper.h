#pragma once

#include <span>

#include "app-qml/papers/paper.h"

// Player cards on paper: the code, and beside it in print whose it is, what was agreed last, who signed it and when.
struct CardOnPaper {
  weavelog::BookId player;
  std::string code;
  weavelog::Language language;  // the player's, where papers speak it
  QString name, given, native;
  QString strings, tensions;  // of the newest setup on it; "" for none
  QString holds;              // "2 setups, 3 rackets"
  QString leftOut;            // what had no room
  QString made, device;
};
struct CardsOnPaper {
  std::vector<CardOnPaper> cards;
  QStringList leftOut;
};

// Everybody of a country here, by family name; its code in either of the two usual lists.
[[nodiscard]] std::vector<weavelog::BookId> playersOfCountry(const weavelog::Ledger& ledger, const std::string& code);

// Makes and signs the cards of request.players. Who withdrew or agreed to one room only, or is not here, is left out. Faults: not_found (nobody was
// asked for), bad_input (more than 500), those of make_card() where nobody is left.
[[nodiscard]] weavelog::Outcome<CardsOnPaper> cardsOnPaper(const weavelog::Ledger& ledger, const PaperRequest& request);

// The code alone as PNG, 600 dots wide or more, with its quiet zone. In one go: a file that was there stays as it was where that fails. Faults: io.
[[nodiscard]] weavelog::Outcome<> saveCardPicture(const std::string& code, const QString& file);

// One card a page.
[[nodiscard]] std::vector<PaperPage> singleCards(std::span<const CardOnPaper> cards, const PaperSize& size);
// Cards side by side, with marks at the edges of the sheet where it is cut.
[[nodiscard]] std::vector<PaperPage> cardSheets(std::span<const CardOnPaper> cards, const PaperSize& size);
