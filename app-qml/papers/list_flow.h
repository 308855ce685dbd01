#pragma once

#include <functional>

#include "app-qml/papers/paper_page.h"
#include "app-qml/papers/paper_size.h"

// One column of a table.
struct ListColumn {
  QString heading;
  qreal share = 1;  // of the width, beside the others
  bool bold = false;
  Qt::Alignment align = Qt::AlignLeft;
};

// Headings, paragraphs and tables below each other, on as many pages as they take: sheets with a head and page numbers, or a roll as long
// as it needs. On a roll a table of more than three columns stands as blocks, one a row. Rows are never parted or cut off.
class ListFlow {
 public:
  // `pageWords` tells a page's number and how many there are.
  ListFlow(const PaperSize& size, const QString& title, const QStringList& below, std::function<QString(int, int)> pageWords);

  void heading(const QString& text);
  // Of a part below a heading, smaller.
  void subheading(const QString& text);
  void paragraph(const QString& text, bool large = false);
  // A row has a text for each column; lines of a text are parted by QChar::LineSeparator.
  void table(const std::vector<ListColumn>& columns, const std::vector<QStringList>& rows);
  // A picture of that height over the whole width, drawn into its box (mm); on one page.
  void figure(qreal height, const std::function<void(PaperPage&, const QRectF&)>& draw);
  // Of the page between its margins, mm.
  [[nodiscard]] qreal width() const { return size_.page.width() - 2 * size_.margin; }
  // Ends it.
  [[nodiscard]] std::vector<PaperPage> take();

 private:
  [[nodiscard]] bool onRoll() const { return size_.page.height() <= 0; }
  [[nodiscard]] qreal left() const { return size_.margin; }
  [[nodiscard]] qreal bottom() const;
  void newPage();
  // Room for that much; true if it began a page for it.
  bool need(qreal height);
  void line(qreal thickness);
  void headings(const std::vector<ListColumn>& columns, const std::vector<qreal>& widths);
  void blocks(const std::vector<ListColumn>& columns, const std::vector<QStringList>& rows);

  PaperSize size_;
  QString title_;
  std::function<QString(int, int)> pageWords_;
  std::vector<PaperPage> pages_;
  qreal y_ = 0;
};
