#include "app-qml/papers/paper_page.h"

#include <QPainter>
#include <QPainterPath>
#include <QRawFont>
#include <QTextLayout>
#include <algorithm>
#include <cmath>

#include "app-qml/papers/qr_code.h"

namespace {

// Type is laid out in twentieths of a millimetre, so that its sizes are whole numbers and fine enough.
constexpr qreal unitsPerMm = 20;
constexpr qreal hair = 0.01;  // mm, for sums that do not come out even
constexpr qsizetype mostCharacters = 2000;

struct Laid {
  std::shared_ptr<QTextLayout> layout;
  int lines = 0;
  QSizeF size;        // mm
  bool fits = false;  // no line is wider than it may be
};

QFont fontOf(int units, bool bold) {
  QFont font;
  font.setFamilies({QStringLiteral("Noto Sans"), QStringLiteral("Noto Sans Arabic"), QStringLiteral("Noto Sans Hebrew"),
                    QStringLiteral("Noto Sans Thai"), QStringLiteral("Noto Sans Devanagari"), QStringLiteral("WenQuanYi Micro Hei")});
  font.setPixelSize(std::max(1, units));
  font.setBold(bold);
  font.setHintingPreference(QFont::PreferNoHinting);
  return font;
}

Laid lay(const QString& text, int units, bool bold, Qt::Alignment align, qreal width, bool anywhere) {
  Laid out;
  out.layout = std::make_shared<QTextLayout>(text, fontOf(units, bold));
  QTextOption option(align & Qt::AlignHorizontal_Mask);
  option.setUseDesignMetrics(true);
  option.setWrapMode(anywhere ? QTextOption::WrapAtWordBoundaryOrAnywhere : QTextOption::WordWrap);
  out.layout->setTextOption(option);
  out.layout->setCacheEnabled(true);
  const qreal most = width * unitsPerMm;
  qreal y = 0;
  qreal widest = 0;
  out.layout->beginLayout();
  while (true) {
    QTextLine line = out.layout->createLine();
    if (!line.isValid()) break;
    line.setLineWidth(most);
    line.setPosition({0, y});
    y += line.height();
    widest = std::max(widest, line.naturalTextWidth());
    ++out.lines;
  }
  out.layout->endLayout();
  out.fits = widest <= most + hair;
  out.size = QSizeF(std::min(widest, most) / unitsPerMm, y / unitsPerMm);
  return out;
}

// The ink of a line of figures, in mm from the layout's origin; of one type only.
QRectF inkOf(const QTextLayout& layout) {
  QRectF ink;
  for (const QGlyphRun& run : layout.glyphRuns()) {
    const auto glyphs = run.glyphIndexes();
    const auto places = run.positions();
    const QRawFont font = run.rawFont();
    for (qsizetype i = 0; i < glyphs.size(); ++i) {
      const QRectF box = font.pathForGlyph(glyphs[i]).boundingRect();
      if (!box.isEmpty()) ink |= box.translated(places[i]);
    }
  }
  return {ink.topLeft() / unitsPerMm, ink.size() / unitsPerMm};
}

qreal placed(qreal from, qreal room, qreal size, bool atStart, bool atEnd) {
  if (atStart) return from;
  return atEnd ? from + room - size : from + (room - size) / 2;
}

QString bounded(const QString& text) {
  const QString clean = text.trimmed();
  return clean.size() <= mostCharacters ? clean : clean.left(mostCharacters) + QChar(0x2026);
}

}  // namespace

QString apart(const QString& text) {
  return text.isEmpty() ? text : QChar(0x2068) + text + QChar(0x2069);
}

PaperWords wordsIn(qreal width, const QString& given, const PaperStyle& style) {
  const QString text = bounded(given);
  if (text.isEmpty()) return {};
  Laid laid = lay(text, static_cast<int>(style.most * unitsPerMm), style.bold, style.align, width, true);
  return {text, std::move(laid.layout), laid.size, style.white};
}

void PaperPage::put(QPointF at, PaperWords words) {
  if (!words.layout) return;
  texts_.append(words.text);
  words_.push_back({at, std::move(words)});
}

QRectF PaperPage::put(const QRectF& box, const QString& given, const PaperStyle& style) {
  const QString text = bounded(given);
  if (text.isEmpty() || box.width() <= 0 || box.height() <= 0) return {box.topLeft(), QSizeF()};
  QRectF ink;
  const auto fits = [&](const Laid& laid, int lines) {
    if (!laid.fits || laid.lines > lines) return false;
    if (!style.figures || laid.lines > 1) return laid.size.height() <= box.height() + hair;
    ink = inkOf(*laid.layout);
    return ink.height() <= box.height() + hair && ink.width() <= box.width() + hair;
  };
  const auto at = [&](int units, bool anywhere) { return lay(text, units, style.bold, style.align, box.width(), anywhere); };
  int high = std::max(1, static_cast<int>(style.most * unitsPerMm));
  int low = std::clamp(static_cast<int>(style.least * unitsPerMm), 1, high);
  Laid held = at(high, false);
  if (!fits(held, style.lines)) {
    held = at(low, false);
    if (fits(held, style.lines)) {
      while (high - low > 1) {
        const int middle = (low + high) / 2;
        Laid tried = at(middle, false);
        if (fits(tried, style.lines)) {
          low = middle;
          held = std::move(tried);
        } else {
          high = middle;
        }
      }
      (void)fits(held, style.lines);  // its ink
    } else {
      // Nothing is cut off: more lines, words broken, and smaller as long as it takes.
      const int any = static_cast<int>(mostCharacters);
      held = at(low, true);
      while (!fits(held, any) && low > 1) held = at(low = std::max(1, low * 9 / 10), true);
    }
  }
  if (style.figures && held.lines == 1) {
    const QPointF corner(placed(box.left(), box.width(), ink.width(), style.align & Qt::AlignLeft, style.align & Qt::AlignRight),
                         placed(box.top(), box.height(), ink.height(), style.align & Qt::AlignTop, style.align & Qt::AlignBottom));
    put(corner - ink.topLeft(), {text, std::move(held.layout), ink.size(), style.white});
    return {corner, ink.size()};
  }
  const qreal y = placed(box.top(), box.height(), held.size.height(), style.align & Qt::AlignTop, style.align & Qt::AlignBottom);
  put({box.left(), y}, {text, std::move(held.layout), held.size, style.white});
  return {QPointF(box.left(), y), held.size};
}

void PaperPage::put(const QRectF& box, const QImage& image) {
  if (image.isNull()) return;
  images_.push_back({QRectF(box.topLeft(), QSizeF(image.size()).scaled(box.size(), Qt::KeepAspectRatio)), image});
}

void PaperPage::fill(const QRectF& box) {
  inks_.push_back({{box}, 0, {}, false, false});
}

void PaperPage::frame(const QRectF& box, qreal line) {
  inks_.push_back({{box}, line, {}, false, false});
}

void PaperPage::draw(const QPainterPath& lines, qreal line, bool dashed) {
  if (!lines.isEmpty() && line > 0) inks_.push_back({{}, line, lines, dashed, false});
}

void PaperPage::fill(const QPolygonF& area) {
  QPainterPath path;
  path.addPolygon(area);
  path.closeSubpath();
  inks_.push_back({{}, 0, path, false, false});
}

void PaperPage::clear(const QRectF& box) {
  inks_.push_back({{box}, 0, {}, false, true});
}

bool PaperPage::code(const QRectF& box, const std::string& text) {
  const auto rows = codeModules(text);
  if (rows.empty()) return false;
  const auto size = static_cast<int>(rows.size());
  const qreal module = std::min(box.width(), box.height()) / (size + 2 * codeQuietZone);
  const QPointF corner = box.center() - QPointF(size, size) * module / 2;
  // Dark modules beside each other are one area: no reader of PDF may leave a hair between them.
  Ink ink;
  for (int y = 0; y < size; ++y) {
    const auto& row = rows[static_cast<std::size_t>(y)];
    for (int x = 0; x < size; ++x) {
      if (!row[static_cast<std::size_t>(x)]) continue;
      int end = x + 1;
      while (end < size && row[static_cast<std::size_t>(end)]) ++end;
      ink.areas.push_back({corner + QPointF(x, y) * module, QSizeF((end - x) * module, module)});
      x = end;
    }
  }
  inks_.push_back(std::move(ink));
  return true;
}

void PaperPage::draw(QPainter& painter, qreal dotsPerMm) const {
  painter.save();
  painter.scale(dotsPerMm, dotsPerMm);
  for (const Ink& ink : inks_) {
    if (!ink.path.isEmpty()) {
      QPen pen(Qt::black, ink.line, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
      if (ink.dashed) pen.setDashPattern({3, 2});
      painter.setPen(ink.line > 0 ? pen : QPen(Qt::NoPen));
      painter.setBrush(ink.line > 0 ? QBrush(Qt::NoBrush) : QBrush(Qt::black));
      painter.drawPath(ink.path);
      continue;
    }
    painter.setPen(ink.line > 0 ? QPen(Qt::black, ink.line, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin) : QPen(Qt::NoPen));
    painter.setBrush(ink.line > 0 ? QBrush(Qt::NoBrush) : QBrush(ink.white ? Qt::white : Qt::black));
    if (ink.areas.size() == 1) {
      painter.drawRect(ink.areas.front());
      continue;
    }
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    for (const QRectF& area : ink.areas) path.addRect(area);
    painter.drawPath(path);
  }
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  for (const Image& one : images_) painter.drawImage(one.box, one.image);
  painter.scale(1 / unitsPerMm, 1 / unitsPerMm);
  for (const Placed& placed : words_) {
    painter.setPen(placed.words.white ? Qt::white : Qt::black);
    placed.words.layout->draw(&painter, placed.at * unitsPerMm);
  }
  painter.restore();
}

QImage PaperPage::picture(qreal dotsPerMm) const {
  QImage image((size_ * dotsPerMm).toSize().expandedTo({1, 1}), QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
  draw(painter, dotsPerMm);
  return image;
}
