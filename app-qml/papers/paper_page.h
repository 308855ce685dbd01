#pragma once

#include <QImage>
#include <QPainterPath>
#include <QPointF>
#include <QPolygonF>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <QStringList>

#include <memory>
#include <string>
#include <vector>

class QPainter;
class QTextLayout;

// How a text stands in its box. Sizes are those of the type (its em), in millimetres.
struct PaperStyle {
  qreal most = 4;   // as large as this where it fits
  qreal least = 2;  // broken inside words, then made smaller still, only below this
  int lines = 1;    // as many lines at most while the type is above `least`
  bool bold = false;
  bool white = false;    // on a black ground
  bool figures = false;  // of digits and capitals: the box is filled by the ink, not by the line with its empty parts
  Qt::Alignment align = Qt::AlignLeft | Qt::AlignVCenter;
};

// A text that is laid out and not yet put anywhere.
struct PaperWords {
  QString text;
  std::shared_ptr<QTextLayout> layout;
  QSizeF size;  // mm
  bool white = false;
};
// In type of the size `most`, on as many lines of that width (mm) as it takes.
[[nodiscard]] PaperWords wordsIn(qreal width, const QString& text, const PaperStyle& style);

// One page to be printed: black on white, everything in millimetres from the top left. It is laid out once and drawn alike on paper
// and on a screen.
class PaperPage {
 public:
  explicit PaperPage(QSizeF size) : size_(size) {}

  [[nodiscard]] QSizeF size() const { return size_; }
  void setSize(QSizeF size) { size_ = size; }

  // The largest type between most and least at which the whole text stands in the box, on as many lines as the style allows; below
  // least it is broken anywhere and made smaller until it fits, so that nothing is ever cut off. Returns what it covers. Beyond 2,000
  // characters a text ends in an ellipsis.
  QRectF put(const QRectF& box, const QString& text, const PaperStyle& style);
  void put(QPointF at, PaperWords words);
  void fill(const QRectF& box);
  void frame(const QRectF& box, qreal line);
  // Lines of that thickness; dashed ones by dashes of three times that and gaps of two.
  void draw(const QPainterPath& lines, qreal line, bool dashed = false);
  // A black area.
  void fill(const QPolygonF& area);
  // White over what was drawn before, for a figure to be written on.
  void clear(const QRectF& box);
  // A picture as large as it can be in the box, from its top left; an empty one is left out.
  void put(const QRectF& box, const QImage& image);
  // A QR code with the quiet zone of four modules that ISO/IEC 18004 asks for inside the box; as large as it can be, centred. A text
  // that no code can hold is left out: false.
  bool code(const QRectF& box, const std::string& text);

  // Everything that is written on it, in the order of putting.
  [[nodiscard]] const QStringList& texts() const { return texts_; }
  // Draws it into a device of that many dots a millimetre.
  void draw(QPainter& painter, qreal dotsPerMm) const;
  [[nodiscard]] QImage picture(qreal dotsPerMm) const;

 private:
  struct Placed {
    QPointF at;
    PaperWords words;
  };
  struct Ink {
    std::vector<QRectF> areas;
    qreal line = 0;  // 0: filled
    QPainterPath path{};  // in place of areas
    bool dashed = false, white = false;
  };

  struct Image {
    QRectF box;
    QImage image;
  };

  QSizeF size_;
  std::vector<Ink> inks_;
  std::vector<Image> images_;
  std::vector<Placed> words_;
  QStringList texts_;
};

// A part of a line that keeps its own direction: a name in Arabic or Hebrew beside figures.
[[nodiscard]] QString apart(const QString& text);
