#pragma once

#include <QtQml/qqmlregistration.h>
#include <QFont>
#include <QObject>

#include <algorithm>

#include "app-qml/ui/theme/colours.h"

class QQmlEngine;
class QJSEngine;

// Sizes of type in pixels by what they are for, already multiplied with the text scale. "giant" is told from
// two metres: a digit about 20 mm high on a 10-inch tablet (160 pixels an inch).
struct TypeSizes {
  Q_GADGET
  QML_VALUE_TYPE(typeSizes)
  Q_PROPERTY(int caption MEMBER caption CONSTANT)
  Q_PROPERTY(int body MEMBER body CONSTANT)
  Q_PROPERTY(int title MEMBER title CONSTANT)
  Q_PROPERTY(int heading MEMBER heading CONSTANT)
  Q_PROPERTY(int figure MEMBER figure CONSTANT)
  Q_PROPERTY(int giant MEMBER giant CONSTANT)

 public:
  int caption = 0, body = 0, title = 0, heading = 0, figure = 0, giant = 0;
};

// What every screen and part looks like: one object, shared by QML (singleton `Theme`), set from Settings.
class Theme : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON
  Q_PROPERTY(bool dark READ dark WRITE setDark NOTIFY darkChanged)
  Q_PROPERTY(double textScale READ textScale WRITE setTextScale NOTIFY textScaleChanged)
  // Whether the language of the screens is read from right to left.
  Q_PROPERTY(bool rightToLeft READ rightToLeft WRITE setRightToLeft NOTIFY rightToLeftChanged)
  Q_PROPERTY(Colours colour READ colour NOTIFY darkChanged)
  Q_PROPERTY(TypeSizes type READ type NOTIFY textScaleChanged)
  // Distances between things, in pixels.
  Q_PROPERTY(int hair MEMBER hair CONSTANT)
  Q_PROPERTY(int tight MEMBER tight CONSTANT)
  Q_PROPERTY(int gap MEMBER gap CONSTANT)
  Q_PROPERTY(int room MEMBER room CONSTANT)
  Q_PROPERTY(int page MEMBER page CONSTANT)
  Q_PROPERTY(int radius MEMBER radius CONSTANT)
  // The least a finger is offered, and what a main action offers.
  Q_PROPERTY(int touch MEMBER touch CONSTANT)
  Q_PROPERTY(int mainTouch READ mainTouch NOTIFY textScaleChanged)
  Q_PROPERTY(int phoneWidth MEMBER phoneWidth CONSTANT)

 public:
  static constexpr double leastTextScale = 0.85;
  static constexpr double mostTextScale = 1.6;

  explicit Theme(QObject* parent) : QObject(parent) {}

  // What provide() gave the engine (view/provided.h), otherwise a light one of its own.
  static Theme* create(QQmlEngine* engine, QJSEngine* script);

  [[nodiscard]] bool dark() const { return dark_; }
  void setDark(bool dark);
  [[nodiscard]] double textScale() const { return textScale_; }
  // Clamped to leastTextScale..mostTextScale.
  void setTextScale(double scale);
  [[nodiscard]] bool rightToLeft() const { return rightToLeft_; }
  void setRightToLeft(bool rightToLeft);
  [[nodiscard]] const Colours& colour() const { return dark_ ? darkColours() : lightColours(); }
  [[nodiscard]] TypeSizes type() const;
  // Two lines of a button fit, whatever the text scale, so that no button changes its height with its words.
  [[nodiscard]] int mainTouch() const { return std::max(60, static_cast<int>(60 * textScale_)); }

 signals:
  void darkChanged();
  void textScaleChanged();
  void rightToLeftChanged();

 private:
  const int hair = 2;
  const int tight = 6;
  const int gap = 12;
  const int room = 20;
  const int page = 28;
  const int radius = 6;
  const int touch = 48;
  // Below this width the places are a bar at the bottom and sheets take the whole width.
  const int phoneWidth = 720;
  bool dark_ = false;
  bool rightToLeft_ = false;
  double textScale_ = 1.0;
};

// The font of the app. The default family changes with what a machine has installed, so it is named, and the
// scripts of players' names have their fallbacks behind it.
[[nodiscard]] QFont themeFont();
