#pragma once

#include "app-qml/papers/paper_page.h"

// What charts on paper share: all black and white, since not every printer has grey.

// A figure on a white plate, its middle at a place; mm of type.
void plate(PaperPage& page, QPointF middle, const QString& text, qreal type, bool framed = false);
// Text beside an axis: in a box that is as high as the type, centred at y.
void axisWords(PaperPage& page, qreal left, qreal width, qreal y, const QString& text, Qt::Alignment align);
// A line from one place to another.
void ruled(PaperPage& page, QPointF from, QPointF to, qreal thickness, bool dashed = false);
