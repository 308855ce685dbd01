#pragma once

#include <QObject>
#include <QQuickItem>
#include <QStringList>

// Walks the tree of items for the tests and names what a finger, the keyboard or a screen reader would miss.
class Walker : public QObject {
  Q_OBJECT

 public:
  // Every visible, enabled or disabled item below root that can be pressed or typed into.
  [[nodiscard]] Q_INVOKABLE QList<QQuickItem*> interactive(QQuickItem* root) const;
  // Those of them that are smaller than size in either direction, as text.
  [[nodiscard]] Q_INVOKABLE QStringList tooSmall(QQuickItem* root, double size) const;
  // Those that a screen reader would not know by role and name.
  [[nodiscard]] Q_INVOKABLE QStringList nameless(QQuickItem* root) const;
  // Those enabled ones that the tab key can never reach, alone or through the group that they belong to.
  [[nodiscard]] Q_INVOKABLE QStringList unreachable(QQuickItem* root) const;
  // Texts that are wider or higher than what they stand in, or cut off.
  [[nodiscard]] Q_INVOKABLE QStringList cutOff(QQuickItem* root) const;
  // What is pressed, typed into or read and reaches beyond the left or the right edge of root. What lies in a view that scrolls sideways
  // is left out.
  [[nodiscard]] Q_INVOKABLE QStringList beyondSides(QQuickItem* root) const;
  // What is read on the screen below root.
  [[nodiscard]] Q_INVOKABLE QStringList texts(QQuickItem* root) const;
  // What a screen reader is told.
  [[nodiscard]] Q_INVOKABLE QString nameOf(QQuickItem* item) const;
  [[nodiscard]] Q_INVOKABLE int roleOf(QQuickItem* item) const;
  [[nodiscard]] Q_INVOKABLE QQuickItem* find(QQuickItem* root, const QString& objectName) const;
};
