#pragma once

#include <QtQml/qqmlregistration.h>
#include <QColor>
#include <QQuickPaintedItem>
#include <QVariant>

// A string bed as it lies before one, tip up: the frame's outline and the strings, cut where they pass below another; with a map, the steps of
// stiffness below the strings, their edges as lines and figures in a few places. Painted, because three hundred pieces are one picture.
class BedPicture : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  // [[x, y, x, y, main (1) or cross (0)], ...] and [[x, y], ...], mm, y towards the tip.
  Q_PROPERTY(QVariantList strings MEMBER strings_ NOTIFY changed)
  Q_PROPERTY(QVariantList outline MEMBER outline_ NOTIFY changed)
  // {areas: [QPainterPath, ...], edges: [QPainterPath, ...], spots: [[x, y, text], ...]}, mm, lowest step first; empty: no map.
  Q_PROPERTY(QVariantMap map MEMBER map_ NOTIFY changed)
  // Of its steps.
  Q_PROPERTY(QVariantList stepColours MEMBER stepColours_ NOTIFY changed)
  Q_PROPERTY(QColor plateColour MEMBER plateColour_ NOTIFY changed)
  Q_PROPERTY(QFont font MEMBER font_ NOTIFY changed)
  Q_PROPERTY(QColor frameColour MEMBER frameColour_ NOTIFY changed)
  Q_PROPERTY(QColor mainsColour MEMBER mainsColour_ NOTIFY changed)
  Q_PROPERTY(QColor crossesColour MEMBER crossesColour_ NOTIFY changed)

 public:
  explicit BedPicture(QQuickItem* parent = nullptr);
  void paint(QPainter* painter) override;

 signals:
  void changed();

 private:
  QVariantList strings_, outline_, stepColours_;
  QVariantMap map_;
  QColor frameColour_ = Qt::black, mainsColour_ = Qt::black, crossesColour_ = Qt::darkGray, plateColour_ = Qt::white;
  QFont font_;
};

// What is left of the tension over the time since stringing, with its band; time grows tenfold by equal steps.
class TensionLeftPicture : public QQuickPaintedItem {
  Q_OBJECT
  QML_ELEMENT
  // [[seconds, left, low, high], ...]: parts of the tension at one minute, rising times.
  Q_PROPERTY(QVariantList curve MEMBER curve_ NOTIFY changed)
  // [[seconds, text], ...]: upright lines, such as the match.
  Q_PROPERTY(QVariantList moments MEMBER moments_ NOTIFY changed)
  // [[seconds, text], ...] below, [[part, text], ...] at the side.
  Q_PROPERTY(QVariantList times MEMBER times_ NOTIFY changed)
  Q_PROPERTY(QVariantList parts MEMBER parts_ NOTIFY changed)
  Q_PROPERTY(QColor inkColour MEMBER inkColour_ NOTIFY changed)
  Q_PROPERTY(QColor lineColour MEMBER lineColour_ NOTIFY changed)
  Q_PROPERTY(QColor curveColour MEMBER curveColour_ NOTIFY changed)
  Q_PROPERTY(QColor bandColour MEMBER bandColour_ NOTIFY changed)
  Q_PROPERTY(QFont font MEMBER font_ NOTIFY changed)

 public:
  explicit TensionLeftPicture(QQuickItem* parent = nullptr);
  void paint(QPainter* painter) override;

 signals:
  void changed();

 private:
  QVariantList curve_, moments_, times_, parts_;
  QColor inkColour_ = Qt::black, lineColour_ = Qt::gray, curveColour_ = Qt::black, bandColour_ = Qt::lightGray;
  QFont font_;
};
