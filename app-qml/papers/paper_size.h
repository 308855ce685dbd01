#pragma once

#include <QSizeF>
#include <QString>

#include <optional>
#include <span>

// The papers that there are.
enum class PaperKind { tags, bagTags, labels, workList, pickUpList, statement, wrapUp, stringBed, evenness, card, cardSheet, record };

// What they are printed on. Widths of rolls and the grid of the label sheet: common practice, no source.
struct PaperSize {
  const char* key;            // "62x100"
  QSizeF page;                // mm; a height of 0 is as long as it needs
  qreal margin;               // mm that printers of this width can't reach
  int columns = 1, rows = 1;  // of labels or cards on the page
};

// Those that a paper can be printed on, the usual one first.
[[nodiscard]] std::span<const PaperSize> sizesFor(PaperKind kind);
// Nothing where the paper can't be printed on it. An empty key is the usual one.
[[nodiscard]] std::optional<PaperSize> sizeFor(PaperKind kind, const QString& key);
// By what a person knows of the roll: "62", "80", "62x29", "a4".
[[nodiscard]] std::optional<PaperSize> sizeForRoll(PaperKind kind, const QString& roll);

// "tags", "bag-tags", "labels", "work-list", "pick-up-list", "statement", "wrap-up", "string-bed", "evenness", "card", "card-sheet", "record".
[[nodiscard]] const char* nameOf(PaperKind kind);
[[nodiscard]] std::optional<PaperKind> paperKindFrom(const QString& name);
[[nodiscard]] std::span<const PaperKind> allPaperKinds();
