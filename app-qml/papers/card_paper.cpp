#include "app-qml/papers/card_paper.h"

#include <QFileInfo>
#include <QPainterPath>
#include <QSaveFile>
#include <algorithm>

#include "app-qml/papers/paper_words.h"
#include "app-qml/papers/qr_code.h"
#include "app-qml/papers/stack.h"
#include "core/model/queries.h"
#include "core/people/country.h"
#include "sync/carry/player_card.h"

namespace {

using weavelog::fail;
using weavelog::FaultCode;
using weavelog::Outcome;

constexpr std::size_t mostCards = 500;
constexpr QSizeF cardSize{85.6, 54};  // mm
// The code with its quiet zone. A code of version 25 has 117 modules and 8 of quiet zone: 0.336 mm each, 2.7 dots of a printer of 203 dots to the
// inch. The smallest that we print; tests read it at 20 mm too, where 300 dots to the inch are needed.
constexpr qreal codeSide = 42;

// "Tarnbrook Silk / Velmora Round"; one where both are alike.
QString both(const QString& mains, const QString& crosses) {
  if (crosses.isEmpty() || crosses == mains) return mains;
  return (mains.isEmpty() ? QStringLiteral("–") : apart(mains)) + QStringLiteral(" / ") + apart(crosses);
}

QString nameOfBook(const weavelog::Ledger& ledger, const weavelog::BookId& book) {
  const auto row = weavelog::find_player(ledger, book);
  return row ? nameOnPaper(*row) : words(book.hex().substr(0, 8));
}

CardOnPaper onPaper(const weavelog::MadeCard& made, const PaperRequest& request) {
  const auto person = made.card.person();
  const auto setups = made.card.setups();
  CardOnPaper out;
  out.code = made.text;
  out.language = languageOnPaper(person.language, request.language);
  out.name = words(person.family_name.empty() ? person.native_name : person.family_name);
  out.given = person.family_name.empty() ? QString() : words(person.given_name);
  out.native = person.family_name.empty() ? QString() : words(person.native_name);
  if (!person.country.empty()) out.given = joinedOnPaper({out.given, words(person.country)});
  if (!setups.empty()) {
    const weavelog::Agreed& wish = setups.front();
    out.strings = both(words(wish.mains_string), words(wish.crosses_string));
    out.tensions = both(saidOnPaper(out.language, wish.mains_tension), saidOnPaper(out.language, wish.crosses_tension));
  }
  const auto count = [](std::uint64_t n) { return static_cast<std::int64_t>(n); };
  out.holds = paperSay(out.language, "card.holds", {{"setups", count(setups.size())}, {"rackets", count(made.card.rackets().size())}});
  if (made.card.setups_left_out + made.card.rackets_left_out > 0)
    out.leftOut =
        paperSay(out.language, "card.left_out", {{"setups", count(made.card.setups_left_out)}, {"rackets", count(made.card.rackets_left_out)}});
  out.made = paperSay(out.language, "card.made", {{"when", dateOnPaper(out.language, made.card.made, request.zone).toStdString()}});
  out.device = paperSay(out.language, "card.device", {{"device", made.card.device}});
  return out;
}

void addWords(Stack& stack, PaperPage& page, const CardOnPaper& card) {
  const auto line = [&](qreal height, const QString& text, PaperStyle style) {
    if (!text.isEmpty()) stack.add(height, [&page, text, style](const QRectF& row) { page.put(row, text, style); });
  };
  line(11, card.name, {.most = 6.4, .least = 2.6, .lines = 2, .bold = true});
  line(4.4, card.given, {.most = 3.4, .least = 1.8});
  line(4.4, card.native, {.most = 3.4, .least = 1.8});
  stack.addRule(page);
  line(7, card.strings, {.most = 3.1, .least = 1.8, .lines = 2, .bold = true});
  line(5, card.tensions, {.most = 4, .least = 2, .bold = true});
  line(4, card.holds, {.most = 2.5, .least = 1.6, .lines = 2});
  line(3.6, card.leftOut, {.most = 2.2, .least = 1.5, .lines = 2});
  line(3.6, card.made, {.most = 2.5, .least = 1.6});
  line(4.6, card.device, {.most = 2.5, .least = 1.5, .lines = 2});
}

// Along: the code at the right, words at the left, what the card is for below both.
void flatCard(PaperPage& page, const QRectF& box, const CardOnPaper& card) {
  const qreal foot = box.height() - codeSide;
  page.code({box.right() - codeSide, box.top(), codeSide, codeSide}, card.code);
  Stack stack({box.left(), box.top(), box.width() - codeSide - 1, codeSide});
  addWords(stack, page, card);
  stack.draw();
  page.put({box.left(), box.top() + codeSide, box.width(), foot}, paperSay(card.language, "card.about"), {.most = 2.4, .least = 1.5, .lines = 2});
}

// Upright, for a bag's tag: the code as wide as the label.
void uprightCard(PaperPage& page, const QRectF& box, const CardOnPaper& card) {
  page.code({box.left(), box.top(), box.width(), box.width()}, card.code);
  Stack stack({box.left(), box.top() + box.width(), box.width(), box.height() - box.width()});
  addWords(stack, page, card);
  stack.add(6, [&](const QRectF& row) { page.put(row, paperSay(card.language, "card.about"), {.most = 2.4, .least = 1.5, .lines = 3}); });
  stack.draw();
}

}  // namespace

std::vector<weavelog::BookId> playersOfCountry(const weavelog::Ledger& ledger, const std::string& code) {
  constexpr std::size_t mostPlayers = 200'000;
  auto rows = weavelog::find_players(ledger, {}, mostPlayers);
  std::erase_if(rows, [key = weavelog::country_key(code)](const auto& row) { return weavelog::country_key(row.country) != key; });
  std::sort(rows.begin(), rows.end(),
            [](const auto& a, const auto& b) { return std::pair(a.family_name, a.given_name) < std::pair(b.family_name, b.given_name); });
  std::vector<weavelog::BookId> out;
  for (const auto& row : rows) out.push_back(row.book);
  return out;
}

Outcome<CardsOnPaper> cardsOnPaper(const weavelog::Ledger& ledger, const PaperRequest& request) {
  if (request.players.empty()) return fail(FaultCode::not_found, "nobody was chosen", "player cards", "choose the players whose cards they are");
  if (request.players.size() > mostCards)
    return fail(FaultCode::bad_input, std::to_string(request.players.size()) + " cards are more than " + std::to_string(mostCards), "player cards",
                "make them in parts");
  CardsOnPaper out;
  std::optional<weavelog::Fault> first;
  for (const auto& player : request.players) {
    const auto made = weavelog::make_card(ledger, player);
    if (made) {
      out.cards.push_back(onPaper(*made, request));
      out.cards.back().player = player;
      continue;
    }
    if (!first) first = made.error();
    out.leftOut.append(nameOfBook(ledger, player) + QStringLiteral(": ") +
                       (made.error().code == FaultCode::refused ? paperSay(request.language, "card.refused") : words(made.error().what)));
  }
  if (out.cards.empty()) return fail(*first);
  return out;
}

Outcome<> saveCardPicture(const std::string& code, const QString& file) {
  constexpr int leastDots = 600;
  const auto failed = [&](const QString& why) {
    return fail(FaultCode::io, "the picture can't be written: " + why.toStdString(), file.toStdString(),
                "choose a folder that you may write to and that has room");
  };
  if (const QFileInfo there(file); there.exists() && !there.isFile()) return failed(QStringLiteral("there is something that is no file"));
  QSaveFile out(file);
  if (!out.open(QIODevice::WriteOnly)) return failed(out.errorString());
  if (!codePicture(code, leastDots, codeSide).save(&out, "PNG") || !out.commit()) return failed(out.errorString());
  return {};
}

std::vector<PaperPage> singleCards(std::span<const CardOnPaper> cards, const PaperSize& size) {
  std::vector<PaperPage> pages;
  const QRectF box = QRectF(QPointF(), size.page).adjusted(size.margin, size.margin, -size.margin, -size.margin);
  for (const CardOnPaper& card : cards) {
    PaperPage page(size.page);
    (size.page.width() >= cardSize.width() ? flatCard : uprightCard)(page, box, card);
    pages.push_back(std::move(page));
  }
  return pages;
}

std::vector<PaperPage> cardSheets(std::span<const CardOnPaper> cards, const PaperSize& size) {
  constexpr qreal hair = 0.15, gap = 1.5, length = 4;  // mm; the marks stand off the cards, so that none is left on one
  std::vector<PaperPage> pages;
  const auto perSheet = static_cast<std::size_t>(size.columns * size.rows);
  const QRectF grid(QPointF((size.page.width() - size.columns * cardSize.width()) / 2, (size.page.height() - size.rows * cardSize.height()) / 2),
                    QSizeF(size.columns * cardSize.width(), size.rows * cardSize.height()));
  for (std::size_t i = 0; i < cards.size(); ++i) {
    const auto place = static_cast<int>(i % perSheet);
    if (place == 0) {
      PaperPage page(size.page);
      QPainterPath marks;
      const auto mark = [&](QPointF from, QPointF by) {
        marks.moveTo(from);
        marks.lineTo(from + by);
      };
      for (int column = 0; column <= size.columns; ++column) {
        const qreal x = grid.left() + column * cardSize.width();
        mark({x, grid.top() - gap}, {0, -length});
        mark({x, grid.bottom() + gap}, {0, length});
      }
      for (int row = 0; row <= size.rows; ++row) {
        const qreal y = grid.top() + row * cardSize.height();
        mark({grid.left() - gap, y}, {-length, 0});
        mark({grid.right() + gap, y}, {length, 0});
      }
      page.draw(marks, hair);
      pages.push_back(std::move(page));
    }
    const QRectF card(QPointF(grid.left() + place % size.columns * cardSize.width(), grid.top() + place / size.columns * cardSize.height()),
                      cardSize);
    flatCard(pages.back(), card.adjusted(size.margin, size.margin, -size.margin, -size.margin), cards[i]);
  }
  return pages;
}
