#pragma once

#include <QtQml/qqmlregistration.h>
#include <QLocale>
#include <QObject>
#include <QString>

// Decimal figures as the steppers and screens handle them: text such as "24.5" with a point and at most three
// places, never a binary fraction, so that what was said is what is stored. "" stands for no figure.
class Figures : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_SINGLETON

 public:
  explicit Figures(QObject* parent = nullptr) : QObject(parent) {}

  // What a person typed, with a point or a comma, as a figure; "" when it is none (signs other than a leading
  // minus, letters, more than three places or more than six digits before them).
  [[nodiscard]] Q_INVOKABLE static QString read(const QString& typed);

  // The figure one step up or down (step may be negative), held within least..most. From no figure it is
  // `first`, or least where that is none. A figure between two steps goes to the next whole step in that direction: 24.3 up by 0.5 is 24.5.
  [[nodiscard]] Q_INVOKABLE static QString stepped(const QString& figure, const QString& step,
                                                   const QString& least, const QString& most, const QString& first = {});

  // Whether a figure lies within least..most, both included.
  [[nodiscard]] Q_INVOKABLE static bool within(const QString& figure, const QString& least,
                                               const QString& most);

  // The figure with the decimal sign of a language, as it is read on a screen.
  [[nodiscard]] Q_INVOKABLE static QString shown(const QString& figure, const QString& language);

  // The same with its thousands set apart, where it is only read: "12,345.5".
  [[nodiscard]] Q_INVOKABLE static QString grouped(const QString& figure, const QString& language);
};
