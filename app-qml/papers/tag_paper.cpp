#include "app-qml/papers/tag_paper.h"

#include <QStringList>
#include <algorithm>

#include "app-qml/papers/paper_words.h"
#include "app-qml/papers/stack.h"

namespace {

using Language = weavelog::Language;

// White words on a black ground: seen from afar, and read by who sees no colour.
void band(PaperPage& page, const QRectF& box, const QString& words) {
  page.fill(box);
  page.put(box.adjusted(1, 0.4, -1, -0.4), words,
           {.most = box.height(), .least = 1.4, .lines = 2, .bold = true, .white = true, .align = Qt::AlignCenter});
}

// Something and its figure: a small caption above.
void tension(PaperPage& page, const QRectF& box, const QString& caption, const TagContent::Tension& said, const QString& unsaid) {
  const qreal head = std::min(3.6, box.height() * 0.28);
  page.put({box.left(), box.top(), box.width(), head}, caption, {.most = 3, .least = 1.6});
  const QRectF rest(box.left(), box.top() + head + 0.6, box.width(), box.height() - head - 1.2);
  if (said.amount.isEmpty()) {
    page.put(rest, unsaid, {.most = 4, .least = 2, .lines = 2});
    return;
  }
  const qreal unit = rest.width() * 0.26;
  const QRectF figure = page.put({rest.left(), rest.top(), rest.width() - unit - 1, rest.height()}, said.amount,
                                 {.most = 30, .least = 3, .bold = true, .figures = true});
  page.put({figure.right() + 1, rest.top(), unit, rest.height()}, said.unit, {.most = 6, .least = 2, .bold = true});
}

void halves(PaperPage& page, const QRectF& box, const QString& left, const QString& right, const PaperStyle& style) {
  const qreal width = (box.width() - 2) / 2;
  page.put({box.left(), box.top(), width, box.height()}, left, style);
  page.put({box.left() + width + 2, box.top(), width, box.height()}, right, style);
}

QString readyWords(const Language& language, const QString& readyBy) {
  return readyBy.isEmpty() ? QString() : paperSay(language, "tag.ready_by", {{"when", readyBy.toStdString()}});
}

QString personWords(const TagContent& tag) {
  QString given = tag.family.isEmpty() ? QString() : tag.given;
  return joinedOnPaper({given, tag.native == nameOnTag(tag) ? QString() : tag.native});
}

void largeTag(PaperPage& page, const QRectF& box, const TagContent& tag, const Language& language) {
  Stack stack(box);
  stack.add(22, [&](const QRectF& row) {
    const qreal code = std::min(22.0, row.height());
    page.put({row.left(), row.top() + 1, row.width() - code - 1, row.height() - 3}, tag.number > 0 ? QString::number(tag.number) : QString(),
             {.most = 40, .least = 4, .bold = true, .figures = true});
    if (!tag.code.empty()) page.code({row.right() - code, row.top(), code, code}, tag.code);
  });
  if (!tag.rushWords.isEmpty()) stack.add(8, [&](const QRectF& row) { band(page, row, tag.rushWords); });
  stack.add(10, [&](const QRectF& row) { page.put(row, nameOnTag(tag), {.most = 9, .least = 3.4, .lines = 2, .bold = true}); });
  if (const QString person = personWords(tag); !person.isEmpty())
    stack.add(5, [&, person](const QRectF& row) { page.put(row, person, {.most = 4, .least = 2.4}); });
  stack.addRule(page);
  stack.add(14, [&](const QRectF& row) {
    const QString unsaid = paperSay(language, "tag.unsaid");
    const qreal width = (row.width() - 2) / 2;
    tension(page, {row.left(), row.top(), width, row.height()}, paperSay(language, "tag.mains"), tag.mainsTension, unsaid);
    tension(page, {row.left() + width + 2, row.top(), width, row.height()}, paperSay(language, "tag.crosses"), tag.crossesTension, unsaid);
  });
  stack.add(8.5, [&](const QRectF& row) {
    halves(page, row, tag.mains, tag.crosses, {.most = 3.6, .least = 2, .lines = 2, .bold = true, .align = Qt::AlignLeft | Qt::AlignTop});
  });
  if (!tag.mainsPrestretch.isEmpty() || !tag.crossesPrestretch.isEmpty())
    stack.add(4.2, [&](const QRectF& row) { halves(page, row, tag.mainsPrestretch, tag.crossesPrestretch, {.most = 3, .least = 1.8}); });
  stack.addRule(page);
  if (!tag.unanswered.isEmpty()) stack.add(6, [&](const QRectF& row) { band(page, row.adjusted(0, 0, 0, -0.6), tag.unanswered); });
  if (!tag.readyBy.isEmpty())
    stack.add(7.5,
              [&](const QRectF& row) { page.put(row, readyWords(language, tag.readyBy), {.most = 5.4, .least = 2.6, .lines = 2, .bold = true}); });
  if (!tag.racket.isEmpty()) stack.add(4.8, [&](const QRectF& row) { page.put(row, tag.racket, {.most = 3.4, .least = 2, .lines = 2}); });
  if (!tag.making.isEmpty()) stack.add(4.2, [&](const QRectF& row) { page.put(row, tag.making, {.most = 3.2, .least = 2}); });
  if (!tag.stencil.isEmpty()) stack.add(5.2, [&](const QRectF& row) { page.put(row, tag.stencil, {.most = 3.2, .least = 2, .lines = 2}); });
  if (!tag.note.isEmpty()) stack.add(6.5, [&](const QRectF& row) { page.put(row, tag.note, {.most = 3, .least = 1.8, .lines = 3}); });
  stack.add(3.6, [&](const QRectF& row) { page.put(row, tag.event, {.most = 2.4, .least = 1.6}); });
  stack.draw();
}

void smallTag(PaperPage& page, const QRectF& box, const TagContent& tag, const Language& language) {
  const qreal upper = box.height() * 0.68;
  const qreal code = tag.code.empty() ? 0 : upper;
  if (code > 0) page.code({box.right() - code, box.top(), code, code}, tag.code);
  Stack left({box.left(), box.top(), box.width() - code - 1, upper});
  left.add(7.2, [&](const QRectF& row) {
    const QRectF room = row.adjusted(0, 0.3, 0, -0.7);
    const QRectF figure = page.put({room.left(), room.top(), tag.rushWords.isEmpty() ? room.width() : room.width() * 0.52, room.height()},
                                   tag.number > 0 ? QString::number(tag.number) : QString(), {.most = 20, .least = 3, .bold = true, .figures = true});
    if (!tag.rushWords.isEmpty()) band(page, {figure.right() + 1.5, room.top(), room.right() - figure.right() - 1.5, room.height()}, tag.rushWords);
  });
  left.add(5.2, [&](const QRectF& row) {
    page.put(row, stackedOnPaper({nameOnTag(tag) + (tag.family.isEmpty() || tag.initials.isEmpty() ? QString() : u' ' + tag.initials)}),
             {.most = 4.4, .least = 2.4, .lines = 2, .bold = true});
  });
  left.add(4.8, [&](const QRectF& row) { page.put(row, tensionsOnTag(tag), {.most = 4.4, .least = 2.2, .bold = true}); });
  left.draw();
  Stack below({box.left(), box.top() + upper, box.width(), box.height() - upper});
  const QString strings =
      tag.crosses.isEmpty() || tag.crosses == tag.mains ? tag.mains : apart(tag.mains) + QStringLiteral(" / ") + apart(tag.crosses);
  below.add(3.8, [&](const QRectF& row) { page.put(row, strings, {.most = 2.9, .least = 1.7, .lines = 2}); });
  below.add(3.8, [&](const QRectF& row) {
    page.put(row, joinedOnPaper({readyWords(language, tag.readyBy), tag.prestretch, tag.unanswered}),
             {.most = 3, .least = 1.7, .lines = 2, .bold = true});
  });
  if (const QString rest = joinedOnPaper({tag.stencil, tag.racket}); !rest.isEmpty())
    below.add(3, [&, rest](const QRectF& row) { page.put(row, rest, {.most = 2.5, .least = 1.5, .lines = 2}); });
  below.draw();
}

// What one drop-off brought in.
struct Bag {
  std::vector<const TagContent*> tags;

  [[nodiscard]] QString numbers() const {
    QStringList out;
    for (const auto* tag : tags)
      if (tag->number > 0) out.append(QString::number(tag->number));
    return out.join(QStringLiteral("  "));
  }
  [[nodiscard]] QString readyBy() const {
    QStringList out;
    for (const auto* tag : tags)
      if (!tag->readyBy.isEmpty() && !out.contains(tag->readyBy)) out.append(tag->readyBy);
    return out.join(QStringLiteral(" / "));
  }
  // "3 rackets, 2 bags".
  [[nodiscard]] QString count(const Language& language) const {
    const QString rackets = paperSay(language, "bag.rackets", {{"n", static_cast<std::int64_t>(tags.size())}});
    const std::int64_t bags = tags.front()->bags;
    return bags > 0 ? rackets + QStringLiteral(", ") + paperSay(language, "bag.bags", {{"n", bags}}) : rackets;
  }
  // That of the racket that hurries most.
  [[nodiscard]] QString rushWords() const {
    return (*std::max_element(tags.begin(), tags.end(), [](auto* a, auto* b) { return a->rush < b->rush; }))->rushWords;
  }
};

void largeBag(PaperPage& page, const QRectF& box, const Bag& bag, const Language& language) {
  const TagContent& first = *bag.tags.front();
  const QString count = bag.count(language);
  Stack stack(box);
  stack.add(18, [&](const QRectF& row) { page.put(row, nameOnTag(first), {.most = 14, .least = 4, .lines = 2, .bold = true}); });
  if (const QString person = personWords(first); !person.isEmpty())
    stack.add(7, [&, person](const QRectF& row) { page.put(row, person, {.most = 5, .least = 2.6, .lines = 2}); });
  if (!bag.rushWords().isEmpty()) stack.add(8, [&](const QRectF& row) { band(page, row, bag.rushWords()); });
  stack.addRule(page);
  stack.add(24, [&](const QRectF& row) {
    const qreal code = first.code.empty() ? 0 : std::min(24.0, row.height());
    page.put({row.left(), row.top(), row.width() - code - 1, row.height()}, count, {.most = 9, .least = 3.4, .lines = 3, .bold = true});
    if (code > 0) page.code({row.right() - code, row.top(), code, code}, first.code);
  });
  if (!bag.numbers().isEmpty()) {
    stack.add(4, [&](const QRectF& row) { page.put(row, paperSay(language, "bag.tags"), {.most = 3, .least = 2}); });
    stack.add(20, [&](const QRectF& row) {
      page.put(row, bag.numbers(), {.most = 11, .least = 2.6, .lines = 8, .bold = true, .align = Qt::AlignLeft | Qt::AlignTop});
    });
  }
  stack.addRule(page);
  if (const QString ready = bag.readyBy(); !ready.isEmpty())
    stack.add(8, [&, ready](const QRectF& row) { page.put(row, readyWords(language, ready), {.most = 5, .least = 2.2, .lines = 3, .bold = true}); });
  stack.add(4, [&](const QRectF& row) { page.put(row, first.event, {.most = 2.8, .least = 1.6}); });
  stack.draw();
}

void smallBag(PaperPage& page, const QRectF& box, const Bag& bag, const Language& language) {
  const TagContent& first = *bag.tags.front();
  const qreal upper = box.height() * 0.72;
  const qreal code = first.code.empty() ? 0 : upper;
  if (code > 0) page.code({box.right() - code, box.top(), code, code}, first.code);
  Stack left({box.left(), box.top(), box.width() - code - 1, upper});
  left.add(9, [&](const QRectF& row) {
    page.put(row, nameOnTag(first) + (first.family.isEmpty() || first.initials.isEmpty() ? QString() : u' ' + first.initials),
             {.most = 6.5, .least = 2.6, .lines = 2, .bold = true});
  });
  const QString count = bag.count(language);
  left.add(4.6, [&](const QRectF& row) { page.put(row, count, {.most = 4, .least = 2, .bold = true}); });
  if (const QString rush = bag.rushWords(); !rush.isEmpty()) left.add(4.2, [&, rush](const QRectF& row) { band(page, row, rush); });
  left.draw();
  Stack below({box.left(), box.top() + upper, box.width(), box.height() - upper});
  below.add(4, [&](const QRectF& row) { page.put(row, bag.numbers(), {.most = 3.6, .least = 1.6, .lines = 3, .bold = true}); });
  below.add(3, [&](const QRectF& row) { page.put(row, readyWords(language, bag.readyBy()), {.most = 2.8, .least = 1.6, .lines = 2}); });
  below.draw();
}

QRectF innerBox(const PaperSize& size) {
  return QRectF(QPointF(), size.page).adjusted(size.margin, size.margin, -size.margin, -size.margin);
}

constexpr qreal largeFrom = 60;  // mm

}  // namespace

std::vector<PaperPage> racketTags(std::span<const TagContent> tags, const PaperSize& size, const Language& language) {
  std::vector<PaperPage> pages;
  for (const TagContent& tag : tags) {
    PaperPage page(size.page);
    (size.page.height() >= largeFrom ? largeTag : smallTag)(page, innerBox(size), tag, language);
    pages.push_back(std::move(page));
  }
  return pages;
}

std::vector<PaperPage> bagTags(std::span<const TagContent> tags, const PaperSize& size, const Language& language) {
  std::vector<Bag> bags;
  for (const TagContent& tag : tags) {
    const auto same = std::find_if(
        bags.begin(), bags.end(), [&](const Bag& bag) { return bag.tags.front()->player == tag.player && bag.tags.front()->dropOff == tag.dropOff; });
    if (same == bags.end()) {
      bags.push_back({{&tag}});
    } else {
      same->tags.push_back(&tag);
    }
  }
  std::vector<PaperPage> pages;
  for (const Bag& bag : bags) {
    PaperPage page(size.page);
    (size.page.height() >= largeFrom ? largeBag : smallBag)(page, innerBox(size), bag, language);
    pages.push_back(std::move(page));
  }
  return pages;
}

std::vector<PaperPage> labelSheets(std::span<const TagContent> tags, const PaperSize& size, int start, const Language& language) {
  std::vector<PaperPage> pages;
  const int perSheet = size.columns * size.rows;
  const qreal width = size.page.width() / size.columns;
  // Sheets of this grid leave half a millimetre at top and bottom.
  const qreal height = static_cast<int>(size.page.height() / size.rows);
  const qreal top = (size.page.height() - height * size.rows) / 2;
  int place = std::clamp(start, 1, perSheet) - 1;
  for (const TagContent& tag : tags) {
    if (pages.empty() || place == perSheet) {
      if (place == perSheet) place = 0;
      pages.emplace_back(size.page);
    }
    const QRectF label(place % size.columns * width, top + place / size.columns * height, width, height);
    smallTag(pages.back(), label.adjusted(size.margin, size.margin, -size.margin, -size.margin), tag, language);
    ++place;
  }
  return pages;
}
