#include "app-qml/view/bed_picture.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace {

double number(const QVariant& list, int at) {
  return list.toList().value(at).toDouble();
}

}  // namespace

BedPicture::BedPicture(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setAntialiasing(true);
  connect(this, &BedPicture::changed, this, [this] { update(); });
}

void BedPicture::paint(QPainter* painter) {
  if (outline_.isEmpty()) return;
  double wide = 1, high = 1;
  for (const QVariant& point : outline_) {
    wide = std::max(wide, std::abs(number(point, 0)));
    high = std::max(high, std::abs(number(point, 1)));
  }
  constexpr double edge = 6;  // of the frame, pixels
  const double unit = std::min((width() - 2 * edge) / (2 * wide), (height() - 2 * edge) / (2 * high));
  if (!(unit > 0)) return;
  const auto place = [&](double x, double y) { return QPointF(width() / 2 + unit * x, height() / 2 - unit * y); };
  QTransform onto;  // from millimetres
  onto.translate(width() / 2, height() / 2);
  onto.scale(unit, -unit);
  // Steps beside each other without a hair between them: not smoothed, their edges are drawn later.
  painter->setRenderHint(QPainter::Antialiasing, false);
  painter->setPen(Qt::NoPen);
  const QVariantList areas = map_.value(QStringLiteral("areas")).toList(), edges = map_.value(QStringLiteral("edges")).toList();
  for (int i = 0; i < areas.size() && i < stepColours_.size(); ++i) {
    painter->setBrush(stepColours_[i].value<QColor>());
    painter->drawPath(onto.map(areas[i].value<QPainterPath>()));
  }
  painter->setBrush(Qt::NoBrush);
  painter->setRenderHint(QPainter::Antialiasing);
  const bool mapped = !areas.isEmpty();
  for (const QVariant& one : strings_) {
    const QVariantList line = one.toList();
    const bool main = line.value(4).toInt() == 1;
    painter->setPen(QPen(main ? mainsColour_ : crossesColour_, mapped ? 1 : std::max(1.0, 1.3 * unit), Qt::SolidLine, Qt::FlatCap));
    painter->drawLine(place(line.value(0).toDouble(), line.value(1).toDouble()), place(line.value(2).toDouble(), line.value(3).toDouble()));
  }
  painter->setPen(QPen(frameColour_, 1.5, Qt::SolidLine, Qt::RoundCap));
  for (const QVariant& line : edges) painter->drawPath(onto.map(line.value<QPainterPath>()));
  QPolygonF frame;
  for (const QVariant& point : outline_) frame << place(number(point, 0), number(point, 1));
  painter->setPen(QPen(frameColour_, 5, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
  painter->setBrush(Qt::NoBrush);
  painter->drawPolygon(frame);
  painter->setFont(font_);
  const QFontMetricsF letters(font_);
  for (const QVariant& one : map_.value(QStringLiteral("spots")).toList()) {
    const QVariantList spot = one.toList();
    const QString text = spot.value(2).toString();
    QRectF plate(0, 0, letters.horizontalAdvance(text) + 8, letters.height());
    plate.moveCenter(place(spot.value(0).toDouble(), spot.value(1).toDouble()));
    painter->setPen(QPen(frameColour_, 1));
    painter->setBrush(plateColour_);
    painter->drawRoundedRect(plate, 3, 3);
    painter->drawText(plate, Qt::AlignCenter, text);
  }
}

TensionLeftPicture::TensionLeftPicture(QQuickItem* parent) : QQuickPaintedItem(parent) {
  setAntialiasing(true);
  connect(this, &TensionLeftPicture::changed, this, [this] { update(); });
}

void TensionLeftPicture::paint(QPainter* painter) {
  if (curve_.size() < 2) return;
  double least = 1;
  for (const QVariant& point : curve_) least = std::min(least, number(point, 2));
  for (const QVariant& part : parts_) least = std::min(least, number(part, 0));
  painter->setFont(font_);
  const QFontMetricsF letters(font_);
  const double left = letters.horizontalAdvance(QStringLiteral("100 % ")) + 2, top = letters.height() + 2, foot = letters.height() + 4;
  const QRectF face(left, top, width() - left - 8, height() - top - foot);
  if (!(face.width() > 10 && face.height() > 10)) return;
  const double first = std::log(number(curve_.front(), 0)), last = std::log(number(curve_.back(), 0));
  const auto x = [&](double seconds) {
    return face.left() + face.width() * std::clamp((std::log(std::max(seconds, 1.0)) - first) / (last - first), 0.0, 1.0);
  };
  const auto y = [&](double part) { return face.top() + face.height() * std::clamp((1 - part) / std::max(0.01, 1 - least), 0.0, 1.0); };
  painter->setRenderHint(QPainter::Antialiasing);
  QPolygonF band;
  for (const QVariant& point : curve_) band << QPointF(x(number(point, 0)), y(number(point, 3)));
  for (auto point = curve_.rbegin(); point != curve_.rend(); ++point) band << QPointF(x(number(*point, 0)), y(number(*point, 2)));
  painter->setPen(Qt::NoPen);
  painter->setBrush(bandColour_);
  painter->drawPolygon(band);
  painter->setBrush(Qt::NoBrush);
  for (const QVariant& part : parts_) {
    const double at = y(number(part, 0));
    painter->setPen(QPen(lineColour_, 1));
    painter->drawLine(QPointF(face.left(), at), QPointF(face.right(), at));
    painter->setPen(inkColour_);
    painter->drawText(QRectF(0, at - letters.height() / 2, left - 4, letters.height()), Qt::AlignRight | Qt::AlignVCenter,
                      part.toList().value(1).toString());
  }
  // Of two names that would lie on each other the second one is left out.
  const auto names = [&](const QVariantList& list, double from, bool lines) {
    double free = -1e9;
    for (const QVariant& one : list) {
      const double at = x(number(one, 0));
      const QString text = one.toList().value(1).toString();
      const double wide = letters.horizontalAdvance(text), begin = std::clamp(at - wide / 2, 0.0, std::max(0.0, width() - wide));
      painter->setPen(QPen(lines ? inkColour_ : lineColour_, lines ? 2 : 1, lines ? Qt::DashLine : Qt::SolidLine));
      painter->drawLine(QPointF(at, face.top()), QPointF(at, face.bottom() + (lines ? 0 : 3)));
      if (begin < free) continue;
      free = begin + wide + 6;
      painter->setPen(inkColour_);
      painter->drawText(QRectF(begin, from, wide + 1, letters.height()), Qt::AlignLeft | Qt::AlignVCenter, text);
    }
  };
  names(times_, face.bottom() + 4, false);
  names(moments_, 0, true);
  QPainterPath line(QPointF(x(number(curve_.front(), 0)), y(number(curve_.front(), 1))));
  for (const QVariant& point : curve_) line.lineTo(x(number(point, 0)), y(number(point, 1)));
  painter->setPen(QPen(curveColour_, 3));
  painter->drawPath(line);
}
