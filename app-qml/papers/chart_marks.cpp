#include "app-qml/papers/chart_marks.h"

namespace {

constexpr qreal axisType = 2.5;  // mm

}  // namespace

void plate(PaperPage& page, QPointF middle, const QString& text, qreal type, bool framed) {
  PaperWords words = wordsIn(60, text, {.most = type});
  const QSizeF size = words.size;
  const QRectF box(middle - QPointF(size.width() / 2, size.height() / 2), size);
  const QRectF around = box.adjusted(-0.6, 0.3, 0.6, -0.3);
  page.clear(around);
  if (framed) page.frame(around, 0.15);
  page.put(box.topLeft(), std::move(words));
}

void axisWords(PaperPage& page, qreal left, qreal width, qreal y, const QString& text, Qt::Alignment align) {
  page.put(QRectF(left, y - 2, width, 4), text, {.most = axisType, .least = 1.8, .align = align | Qt::AlignVCenter});
}

void ruled(PaperPage& page, QPointF from, QPointF to, qreal thickness, bool dashed) {
  QPainterPath path(from);
  path.lineTo(to);
  page.draw(path, thickness, dashed);
}
