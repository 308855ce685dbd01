#include "tests/ui/walker.h"

#include <QAccessible>
#include <functional>

namespace {

void walk(QQuickItem* item, const std::function<void(QQuickItem*)>& visit) {
  if (item == nullptr || !item->isVisible()) return;
  visit(item);
  for (auto* child : item->childItems()) walk(child, visit);
}

bool isPressed(const QQuickItem* item) {
  return item->inherits("QQuickAbstractButton") || item->inherits("QQuickTextInput") ||
         item->inherits("QQuickTextEdit") || item->inherits("QQuickMouseArea");
}

QString describe(const QQuickItem* item) {
  return QStringLiteral("%1 '%2' text '%3' (%4 x %5)")
      .arg(QString::fromLatin1(item->metaObject()->className()), item->objectName(),
           item->property("text").toString())
      .arg(item->width())
      .arg(item->height());
}

}  // namespace

QList<QQuickItem*> Walker::interactive(QQuickItem* root) const {
  QList<QQuickItem*> found;
  walk(root, [&](QQuickItem* item) {
    if (isPressed(item)) found.append(item);
  });
  return found;
}

QStringList Walker::tooSmall(QQuickItem* root, double size) const {
  QStringList found;
  for (const auto* item : interactive(root)) {
    if (item->width() < size || item->height() < size) found.append(describe(item));
  }
  return found;
}

QStringList Walker::nameless(QQuickItem* root) const {
  QStringList found;
  for (auto* item : interactive(root)) {
    auto* reader = QAccessible::queryAccessibleInterface(item);
    if (reader == nullptr || !reader->isValid() || reader->text(QAccessible::Name).isEmpty() ||
        reader->role() == QAccessible::NoRole || reader->role() == QAccessible::Client) {
      found.append(describe(item));
    }
  }
  return found;
}

QStringList Walker::unreachable(QQuickItem* root) const {
  QStringList found;
  for (auto* item : interactive(root)) {
    if (!item->isEnabled() || item->activeFocusOnTab()) continue;
    // The choices of one bar are one stop of the tab key: the arrows go between them.
    bool throughGroup = false;
    for (auto* other : interactive(item->parentItem())) {
      throughGroup = throughGroup || (roleOf(item) == QAccessible::RadioButton && other->activeFocusOnTab());
    }
    if (!throughGroup) found.append(describe(item));
  }
  return found;
}

QStringList Walker::cutOff(QQuickItem* root) const {
  QStringList found;
  walk(root, [&](QQuickItem* item) {
    if (!item->inherits("QQuickText") || item->property("text").toString().isEmpty()) return;
    const bool wider = item->property("contentWidth").toDouble() > item->width() + 1;
    const auto* around = item->parentItem();
    const bool beyond =
        around != nullptr && around->width() > 0 && item->x() + item->width() > around->width() + 1;
    if (wider || beyond || item->property("truncated").toBool()) found.append(describe(item));
  });
  return found;
}

QStringList Walker::texts(QQuickItem* root) const {
  QStringList found;
  walk(root, [&](QQuickItem* item) {
    if (item->inherits("QQuickText")) found.append(item->property("text").toString());
  });
  return found;
}

QStringList Walker::beyondSides(QQuickItem* root) const {
  const auto sideways = [root](const QQuickItem* item) {
    for (const auto* up = item->parentItem(); up != nullptr && up != root; up = up->parentItem())
      if (up->inherits("QQuickFlickable") && up->property("contentWidth").toDouble() > up->width() + 1) return true;
    return false;
  };
  QStringList found;
  walk(root, [&](QQuickItem* item) {
    const bool read = item->inherits("QQuickText") && !item->property("text").toString().isEmpty();
    if (!read && !isPressed(item)) return;
    const QRectF lies = item->mapRectToItem(root, QRectF(0, 0, item->width(), item->height()));
    if ((lies.left() < -1 || lies.right() > root->width() + 1) && !sideways(item)) found.append(describe(item));
  });
  return found;
}

QString Walker::nameOf(QQuickItem* item) const {
  auto* reader = QAccessible::queryAccessibleInterface(item);
  return reader == nullptr ? QString() : reader->text(QAccessible::Name);
}

int Walker::roleOf(QQuickItem* item) const {
  auto* reader = QAccessible::queryAccessibleInterface(item);
  return reader == nullptr ? QAccessible::NoRole : reader->role();
}

QQuickItem* Walker::find(QQuickItem* root, const QString& objectName) const {
  QQuickItem* found = nullptr;
  walk(root, [&](QQuickItem* item) {
    if (found == nullptr && item->objectName() == objectName) found = item;
  });
  return found;
}
