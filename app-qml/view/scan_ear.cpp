#include "app-qml/view/scan_ear.h"

#include <algorithm>
#include <utility>

#include "core/desk/tag_code.h"
#include "sync/carry/player_card.h"

bool ScanEar::typed(const QString& text, qint64 at) {
  if (text.isEmpty()) return card_;
  if (at - last_ > pause) forget();
  if (heard_.isEmpty() || at - last_ > machine) fastFrom_ = heard_.size();
  last_ = at;
  heard_ += text;
  if (card_) {
    // More than any code holds: a key that is stuck, and no card.
    if (heard_.size() > mostOfCard) forget();
    return true;
  }
  static const QString prefix = QString::fromLatin1(weavelog::kCardPrefix.data(), static_cast<qsizetype>(weavelog::kCardPrefix.size()));
  if (heard_.endsWith(prefix) && heard_.size() - prefix.size() >= fastFrom_) {
    heard_ = prefix;
    fastFrom_ = 0;
    return card_ = true;
  }
  if (heard_.size() > most) {
    const qsizetype over = heard_.size() - most;
    heard_.remove(0, over);
    fastFrom_ = std::max<qsizetype>(0, fastFrom_ - over);
  }
  return false;
}

std::optional<QString> ScanEar::entered(qint64 at) {
  const QString heard = std::exchange(heard_, {});
  const bool card = std::exchange(card_, false);
  if (heard.isEmpty() || at - last_ > pause) return std::nullopt;
  if (card) return heard;
  for (qsizetype begin = heard.size() - 1; begin >= 0; --begin) {
    const QString tail = heard.mid(begin);
    if (!weavelog::looks_like_tag_code(tail.toStdString()) || tail.front().isSpace()) continue;
    const bool fast = begin >= fastFrom_ && at - last_ <= machine;
    if (fast || weavelog::tag_code_from(tail.toStdString())) return tail;
  }
  return std::nullopt;
}
