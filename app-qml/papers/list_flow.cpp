#include "app-qml/papers/list_flow.h"

#include <QRegularExpression>
#include <QSet>
#include <algorithm>

#include "app-qml/papers/paper_words.h"

namespace {

constexpr qreal body = 3.3;  // mm of type
constexpr qreal captionSize = 2.7;
constexpr qreal gap = 2;        // between columns
constexpr qreal padding = 0.9;  // above and below a row
constexpr qreal footer = 6;
constexpr qreal hairOfWord = 0.1;  // so that a word fits where it is as wide as its column
constexpr qreal longestRoll = 400;  // mm: no printer is handed more at once

// Columns by their shares, but none narrower than its longest word as long as others have room to spare: a word that is broken is hard to
// read.
std::vector<qreal> widthsOf(const std::vector<ListColumn>& columns, const std::vector<QStringList>& rows, qreal width) {
  qreal shares = 0, missing = 0, spare = 0;
  for (const auto& column : columns) shares += column.share;
  std::vector<qreal> widths, words(columns.size(), 0);
  for (std::size_t i = 0; i < columns.size(); ++i) {
    static const QRegularExpression between(QStringLiteral("[ \\t\\n\\x{2028}]+"));  // not at a space that holds together
    QSet<QString> seen;
    const auto measure = [&](const QString& text, qreal most, bool bold) {
      for (const QString& word : text.split(between, Qt::SkipEmptyParts)) {
        if (seen.contains(word)) continue;
        seen.insert(word);
        words[i] = std::max(words[i], wordsIn(width, word, {.most = most, .bold = bold}).size.width() + hairOfWord);
      }
    };
    measure(columns[i].heading, captionSize, false);
    for (const QStringList& row : rows) measure(row.value(static_cast<qsizetype>(i)), body, columns[i].bold);
    widths.push_back(width * columns[i].share / shares);
    missing += std::max<qreal>(0, words[i] - widths[i]);
    spare += std::max<qreal>(0, widths[i] - words[i]);
  }
  if (missing <= 0 || spare <= 0) return widths;
  const qreal given = std::min<qreal>(1, spare / missing), taken = std::min<qreal>(1, missing / spare);
  for (std::size_t i = 0; i < columns.size(); ++i) widths[i] += (words[i] - widths[i]) * (words[i] > widths[i] ? given : taken);
  return widths;
}

}  // namespace

ListFlow::ListFlow(const PaperSize& size, const QString& title, const QStringList& below, std::function<QString(int, int)> pageWords)
    : size_(size), title_(title), pageWords_(std::move(pageWords)) {
  newPage();
  const auto put = [this](const QString& text, const PaperStyle& style) {
    PaperWords words = wordsIn(width(), text, style);
    const qreal height = words.size.height();
    pages_.back().put({left(), y_}, std::move(words));
    y_ += height;
  };
  put(title, {.most = onRoll() ? 5.6 : 7.5, .bold = true});
  for (const QString& text : below)
    if (!text.isEmpty()) put(text, {.most = onRoll() ? 3.2 : 3.6});
  y_ += 1;
  line(0.5);
  y_ += 1;
}

qreal ListFlow::bottom() const {
  return onRoll() ? longestRoll : size_.page.height() - size_.margin - footer;
}

void ListFlow::newPage() {
  pages_.emplace_back(QSizeF(size_.page.width(), onRoll() ? longestRoll : size_.page.height()));
  y_ = size_.margin;
  if (pages_.size() == 1) return;
  PaperWords words = wordsIn(width(), title_, {.most = captionSize, .bold = true});
  const qreal height = words.size.height();
  pages_.back().put({left(), y_}, std::move(words));
  y_ += height + 0.6;
  line(0.3);
  y_ += 1;
}

bool ListFlow::need(qreal height) {
  if (y_ + height <= bottom()) return false;
  if (onRoll()) pages_.back().setSize({size_.page.width(), y_ + size_.margin});
  newPage();
  return true;
}

void ListFlow::line(qreal thickness) {
  pages_.back().fill({left(), y_, width(), thickness});
  y_ += thickness;
}

void ListFlow::heading(const QString& text) {
  PaperWords words = wordsIn(width(), text, {.most = onRoll() ? 4.2 : 4.8, .bold = true});
  // Not alone at the end of a page.
  need(words.size.height() + 24);
  y_ += 3;
  const qreal height = words.size.height();
  pages_.back().put({left(), y_}, std::move(words));
  y_ += height + 1;
}

void ListFlow::subheading(const QString& text) {
  if (text.isEmpty()) return;
  PaperWords words = wordsIn(width(), text, {.most = body + 0.3, .bold = true});
  const qreal height = words.size.height();
  need(height + 14);
  y_ += 1;
  pages_.back().put({left(), y_}, std::move(words));
  y_ += height + 0.5;
  line(0.3);
}

void ListFlow::paragraph(const QString& text, bool large) {
  if (text.isEmpty()) return;
  PaperWords words = wordsIn(width(), text, {.most = large ? 6 : body, .bold = large});
  const qreal height = words.size.height();
  need(height + 1);
  pages_.back().put({left(), y_}, std::move(words));
  y_ += height + 1;
}

void ListFlow::figure(qreal height, const std::function<void(PaperPage&, const QRectF&)>& draw) {
  need(height + 2);
  draw(pages_.back(), QRectF(left(), y_, width(), height));
  y_ += height + 2;
}

void ListFlow::headings(const std::vector<ListColumn>& columns, const std::vector<qreal>& widths) {
  std::vector<PaperWords> cells;
  qreal height = 0;
  for (std::size_t i = 0; i < columns.size(); ++i) {
    cells.push_back(wordsIn(widths[i], columns[i].heading, {.most = captionSize, .align = columns[i].align}));
    height = std::max(height, cells.back().size.height());
  }
  if (height <= 0) return;
  qreal x = left();
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const qreal low = height - cells[i].size.height();
    pages_.back().put({x, y_ + low}, std::move(cells[i]));
    x += widths[i] + gap;
  }
  y_ += height + 0.5;
  line(0.3);
}

void ListFlow::table(const std::vector<ListColumn>& columns, const std::vector<QStringList>& rows) {
  if (onRoll() && columns.size() > 3) {
    blocks(columns, rows);
    return;
  }
  const auto widths = widthsOf(columns, rows, width() - gap * static_cast<qreal>(columns.size() - 1));
  need(18);
  headings(columns, widths);
  for (const QStringList& row : rows) {
    std::vector<PaperWords> cells;
    qreal height = 0;
    for (std::size_t i = 0; i < columns.size(); ++i) {
      const PaperStyle style{.most = body, .bold = columns[i].bold, .align = columns[i].align};
      cells.push_back(wordsIn(widths[i], row.value(static_cast<qsizetype>(i)), style));
      height = std::max(height, cells.back().size.height());
    }
    height += 2 * padding;
    if (need(height)) headings(columns, widths);
    // What is higher than a whole page is made smaller.
    const qreal most = bottom() - y_;
    qreal x = left();
    for (std::size_t i = 0; i < cells.size(); ++i) {
      if (cells[i].size.height() + padding > most) {
        const PaperStyle style{.most = body, .least = body, .lines = 1, .bold = columns[i].bold, .align = columns[i].align | Qt::AlignTop};
        pages_.back().put({x, y_ + padding, widths[i], most - padding}, row.value(static_cast<qsizetype>(i)), style);
      } else {
        pages_.back().put({x, y_ + padding}, std::move(cells[i]));
      }
      x += widths[i] + gap;
    }
    y_ += std::min(height, most);
    line(0.1);
  }
  y_ += 1;
}

void ListFlow::blocks(const std::vector<ListColumn>& columns, const std::vector<QStringList>& rows) {
  for (const QStringList& row : rows) {
    QStringList strong;
    QStringList rest;
    for (std::size_t i = 0; i < columns.size(); ++i) {
      QString text = row.value(static_cast<qsizetype>(i));
      if (text.isEmpty()) continue;
      text.replace(QChar::LineSeparator, QStringLiteral(", "));
      (columns[i].bold ? strong : rest).append(text);
    }
    PaperWords head = wordsIn(width(), joinedOnPaper(strong), {.most = 4, .bold = true});
    PaperWords below = wordsIn(width(), joinedOnPaper(rest), {.most = 3});
    const qreal first = head.size.height();
    const qreal second = below.size.height();
    need(first + second + 2 * padding);
    pages_.back().put({left(), y_ + padding}, std::move(head));
    pages_.back().put({left(), y_ + padding + first}, std::move(below));
    y_ += first + second + 2 * padding;
    line(0.2);
  }
  y_ += 1;
}

std::vector<PaperPage> ListFlow::take() {
  if (onRoll()) {
    pages_.back().setSize({size_.page.width(), y_ + size_.margin});
    return std::move(pages_);
  }
  const int count = static_cast<int>(pages_.size());
  for (int i = 0; i < count; ++i) {
    const QRectF box(left(), size_.page.height() - size_.margin - footer + 1, width(), footer - 1);
    pages_[static_cast<std::size_t>(i)].put(box, pageWords_(i + 1, count), {.most = captionSize, .least = 2, .align = Qt::AlignRight | Qt::AlignBottom});
  }
  return std::move(pages_);
}
