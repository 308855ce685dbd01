#include "app-qml/papers/paper_size.h"

#include <array>

namespace {

constexpr PaperSize tagSizes[] = {{"62x100", {62, 100}, 3}, {"62x29", {62, 29}, 2}, {"80x100", {80, 100}, 4}};
constexpr PaperSize labelSizes[] = {{"a4-3x8", {210, 297}, 4, 3, 8}};
constexpr PaperSize listSizes[] = {{"a4", {210, 297}, 12}, {"80", {80, 0}, 4}, {"62", {62, 0}, 3}};

constexpr PaperSize chartSizes[] = {{"a4", {210, 297}, 12}};  // points of charts need the width; a record is kept

// As large as a bank card (ISO/IEC 7810, ID-1: 85.60 by 53.98 mm), or a label for a bag's tag.
constexpr PaperSize cardSizes[] = {{"85x54", {85.6, 54}, 2.5}, {"62x100", {62, 100}, 3}};
constexpr PaperSize cardSheetSizes[] = {{"a4-2x5", {210, 297}, 2.5, 2, 5}};

constexpr std::array kinds{PaperKind::tags,      PaperKind::bagTags, PaperKind::labels,    PaperKind::workList, PaperKind::pickUpList,
                           PaperKind::statement, PaperKind::wrapUp,  PaperKind::stringBed, PaperKind::evenness, PaperKind::card,     PaperKind::cardSheet,
                           PaperKind::record};

}  // namespace

std::span<const PaperSize> sizesFor(PaperKind kind) {
  switch (kind) {
    case PaperKind::tags:
    case PaperKind::bagTags:
      return tagSizes;
    case PaperKind::labels:
      return labelSizes;
    case PaperKind::evenness:
    case PaperKind::record:
      return chartSizes;
    case PaperKind::card:
      return cardSizes;
    case PaperKind::cardSheet:
      return cardSheetSizes;
    default:
      return listSizes;
  }
}

std::optional<PaperSize> sizeFor(PaperKind kind, const QString& key) {
  for (const PaperSize& size : sizesFor(kind))
    if (key.isEmpty() || key == QLatin1String(size.key)) return size;
  return std::nullopt;
}

std::optional<PaperSize> sizeForRoll(PaperKind kind, const QString& roll) {
  if (const auto exact = sizeFor(kind, roll)) return exact;
  for (const PaperSize& size : sizesFor(kind))
    if (QLatin1String(size.key).startsWith(roll + u'x') || QLatin1String(size.key).startsWith(roll + u'-')) return size;
  return std::nullopt;
}

const char* nameOf(PaperKind kind) {
  switch (kind) {
    case PaperKind::tags:
      return "tags";
    case PaperKind::bagTags:
      return "bag-tags";
    case PaperKind::labels:
      return "labels";
    case PaperKind::workList:
      return "work-list";
    case PaperKind::pickUpList:
      return "pick-up-list";
    case PaperKind::statement:
      return "statement";
    case PaperKind::wrapUp:
      return "wrap-up";
    case PaperKind::stringBed:
      return "string-bed";
    case PaperKind::evenness:
      return "evenness";
    case PaperKind::card:
      return "card";
    case PaperKind::cardSheet:
      return "card-sheet";
    case PaperKind::record:
      return "record";
  }
  return "";
}

std::optional<PaperKind> paperKindFrom(const QString& name) {
  for (const PaperKind kind : kinds)
    if (name == QLatin1String(nameOf(kind))) return kind;
  return std::nullopt;
}

std::span<const PaperKind> allPaperKinds() {
  return kinds;
}
