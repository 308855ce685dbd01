#include "app-qml/view/figures.h"

#include <QRegularExpression>
#include <algorithm>
#include <optional>

namespace {

constexpr qint64 oneFigure = 1000;  // three places

std::optional<qint64> thousandths(const QString& figure) {
  static const QRegularExpression form(QStringLiteral("^(-?)([0-9]{1,6})(?:[.,]([0-9]{0,3}))?$"));
  const auto match = form.match(figure.trimmed());
  if (!match.hasMatch()) return std::nullopt;
  const qint64 whole = match.captured(2).toLongLong();
  const qint64 places = match.captured(3).leftJustified(3, u'0').toLongLong();
  const qint64 value = whole * oneFigure + places;
  return match.captured(1).isEmpty() ? value : -value;
}

QString text(qint64 value) {
  const qint64 size = std::abs(value);
  QString places = QString::number(size % oneFigure).rightJustified(3, u'0');
  while (places.endsWith(u'0')) places.chop(1);
  QString out = (value < 0 ? QStringLiteral("-") : QString()) + QString::number(size / oneFigure);
  if (!places.isEmpty()) out += u'.' + places;
  return out;
}

// Rounds toward minus infinity.
qint64 floorDiv(qint64 value, qint64 by) {
  return value / by - (value % by < 0 ? 1 : 0);
}

}  // namespace

QString Figures::read(const QString& typed) {
  const auto value = thousandths(typed);
  return value ? text(*value) : QString();
}

QString Figures::stepped(const QString& figure, const QString& step, const QString& least,
                         const QString& most, const QString& first) {
  const auto by = thousandths(step);
  const auto low = thousandths(least);
  const auto high = thousandths(most);
  if (!by || *by == 0 || !low || !high || *low > *high) return figure;
  const auto from = thousandths(figure);
  if (!from) return text(std::clamp(thousandths(first).value_or(*low), *low, *high));
  const qint64 size = std::abs(*by);
  const qint64 below = floorDiv(*from, size) * size;
  const bool onStep = below == *from;
  const qint64 next = *by > 0 ? below + size : (onStep ? below - size : below);
  return text(std::clamp(next, *low, *high));
}

bool Figures::within(const QString& figure, const QString& least, const QString& most) {
  const auto value = thousandths(figure);
  const auto low = thousandths(least);
  const auto high = thousandths(most);
  return value && low && high && *low <= *value && *value <= *high;
}

QString Figures::shown(const QString& figure, const QString& language) {
  QString out = figure;
  return out.replace(u'.', QLocale(language).decimalPoint());
}

QString Figures::grouped(const QString& figure, const QString& language) {
  const auto value = thousandths(figure);
  if (!value) return shown(figure, language);
  const qsizetype places = figure.contains(u'.') ? figure.size() - figure.indexOf(u'.') : 0;
  const QString whole = QLocale(language).toString(std::abs(*value) / oneFigure);
  return (*value < 0 ? QStringLiteral("-") : QString()) + whole + shown(figure.right(places), language);
}
