#include "app-qml/view/scan_ear.h"

#include <algorithm>
#include <utility>

#include "core/desk/tag_code.h"

void ScanEar::typed(const QString& text, qint64 at) {
  if (text.isEmpty()) return;
  if (at - last_ > pause) heard_.clear();
  if (heard_.isEmpty() || at - last_ > machine) fastFrom_ = heard_.size();
  last_ = at;
  heard_ += text;
  if (heard_.size() > most) {
    const qsizetype over = heard_.size() - most;
    heard_.remove(0, over);
    fastFrom_ = std::max<qsizetype>(0, fastFrom_ - over);
  }
}

std::optional<QString> ScanEar::entered(qint64 at) {
  const QString heard = std::exchange(heard_, {});
  if (heard.isEmpty() || at - last_ > pause) return std::nullopt;
  for (qsizetype begin = heard.size() - 1; begin >= 0; --begin) {
    const QString tail = heard.mid(begin);
    if (!weavelog::looks_like_tag_code(tail.toStdString()) || tail.front().isSpace()) continue;
    const bool fast = begin >= fastFrom_ && at - last_ <= machine;
    if (fast || weavelog::tag_code_from(tail.toStdString())) return tail;
  }
  return std::nullopt;
}
