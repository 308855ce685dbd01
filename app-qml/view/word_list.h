#pragma once

#include <QString>
#include <QStringList>

// Words put together for a person to read.

[[nodiscard]] inline QString firstUpper(QString text) {
  if (!text.isEmpty()) text[0] = text[0].toUpper();
  return text;
}
// Those that are not empty, with `between` between them.
[[nodiscard]] inline QString joined(QStringList parts, const QString& between) {
  parts.removeAll(QString());
  return parts.join(between);
}
