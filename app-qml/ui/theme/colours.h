#pragma once

#include <QtQml/qqmlregistration.h>
#include <QColor>
#include <QObject>
#include <QString>

#include <span>

// Every colour of the app under the name of what it means. The two tables live in C++ because both QML (as a
// typed value, so that qmllint finds a misspelt name) and the contrast test read them; a JSON resource would
// have to be parsed at start and would lose the types.
struct Colours {
  Q_GADGET
  QML_VALUE_TYPE(colours)
  // Grounds, from the back to the front.
  Q_PROPERTY(QColor ground MEMBER ground CONSTANT)
  Q_PROPERTY(QColor surface MEMBER surface CONSTANT)
  Q_PROPERTY(QColor raised MEMBER raised CONSTANT)
  Q_PROPERTY(QColor field MEMBER field CONSTANT)
  // What is written and drawn on them.
  Q_PROPERTY(QColor ink MEMBER ink CONSTANT)
  Q_PROPERTY(QColor quietInk MEMBER quietInk CONSTANT)
  Q_PROPERTY(QColor line MEMBER line CONSTANT)
  Q_PROPERTY(QColor controlLine MEMBER controlLine CONSTANT)
  Q_PROPERTY(QColor focus MEMBER focus CONSTANT)
  // The one accent: what can be done next, and what is chosen.
  Q_PROPERTY(QColor action MEMBER action CONSTANT)
  Q_PROPERTY(QColor actionPressed MEMBER actionPressed CONSTANT)
  Q_PROPERTY(QColor onAction MEMBER onAction CONSTANT)
  Q_PROPERTY(QColor chosenGround MEMBER chosenGround CONSTANT)
  Q_PROPERTY(QColor onChosen MEMBER onChosen CONSTANT)
  // What a word or a mark stands for.
  Q_PROPERTY(QColor agreed MEMBER agreed CONSTANT)
  Q_PROPERTY(QColor agreedGround MEMBER agreedGround CONSTANT)
  Q_PROPERTY(QColor attention MEMBER attention CONSTANT)
  Q_PROPERTY(QColor attentionGround MEMBER attentionGround CONSTANT)
  Q_PROPERTY(QColor danger MEMBER danger CONSTANT)
  Q_PROPERTY(QColor dangerGround MEMBER dangerGround CONSTANT)
  Q_PROPERTY(QColor dangerAction MEMBER dangerAction CONSTANT)
  Q_PROPERTY(QColor dangerActionPressed MEMBER dangerActionPressed CONSTANT)
  Q_PROPERTY(QColor onDangerAction MEMBER onDangerAction CONSTANT)
  Q_PROPERTY(QColor rush MEMBER rush CONSTANT)
  Q_PROPERTY(QColor onRush MEMBER onRush CONSTANT)
  Q_PROPERTY(QColor disabledGround MEMBER disabledGround CONSTANT)
  Q_PROPERTY(QColor disabledInk MEMBER disabledInk CONSTANT)
  Q_PROPERTY(QColor toast MEMBER toast CONSTANT)
  Q_PROPERTY(QColor onToast MEMBER onToast CONSTANT)
  Q_PROPERTY(QColor scrim MEMBER scrim CONSTANT)
  // A code is scanned by other devices: dark on light in both tables.
  Q_PROPERTY(QColor codeDark MEMBER codeDark CONSTANT)
  Q_PROPERTY(QColor codeLight MEMBER codeLight CONSTANT)

 public:
  QColor ground, surface, raised, field;
  QColor ink, quietInk, line, controlLine, focus;
  QColor action, actionPressed, onAction, chosenGround, onChosen;
  QColor agreed, agreedGround, attention, attentionGround, danger, dangerGround;
  QColor dangerAction, dangerActionPressed, onDangerAction, rush, onRush;
  QColor disabledGround, disabledInk, toast, onToast, scrim, codeDark, codeLight;

  bool operator==(const Colours&) const = default;
};

[[nodiscard]] const Colours& lightColours();
[[nodiscard]] const Colours& darkColours();

// Relative luminance and contrast ratio of two opaque sRGB colours, 1 to 21: WCAG 2.x, glossary.
[[nodiscard]] double relativeLuminance(const QColor& colour);
[[nodiscard]] double contrastRatio(const QColor& one, const QColor& other);

// Two meanings that the screens put on each other, and the ratio they must reach: 4.5 for text, 3 for large
// text and for the parts of a control that tell what it is (WCAG 2.x, 1.4.3 and 1.4.11).
struct ColourPair {
  const char* ink;
  const char* ground;
  double leastRatio;
};
[[nodiscard]] std::span<const ColourPair> colourPairs();
