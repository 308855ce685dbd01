#pragma once

#include <QVariant>

#include <string>

#include "app-qml/papers/qr_code.h"

// A text as a QR code for CodeSquare: rows of booleans. Empty for a text that no code can hold.
[[nodiscard]] inline QVariantList codeRows(const std::string& text) {
  QVariantList rows;
  for (const auto& modules : codeModules(text)) {
    QVariantList row;
    for (const bool dark : modules) row.append(dark);
    rows.append(QVariant(row));
  }
  return rows;
}
