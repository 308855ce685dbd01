#include "app-qml/papers/paper.h"

#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QFileInfo>
#include <QSaveFile>
#include <algorithm>

#include "app-qml/papers/bed_paper.h"
#include "app-qml/papers/card_paper.h"
#include "app-qml/papers/evenness_paper.h"
#include "app-qml/papers/list_papers.h"
#include "app-qml/papers/paper_words.h"
#include "app-qml/papers/record_paper.h"
#include "app-qml/papers/tag_paper.h"
#include "app-qml/papers/wrap_up_paper.h"
#include "core/desk/stages.h"

namespace {

using weavelog::fail;
using weavelog::FaultCode;
using weavelog::Outcome;
using Pages = Outcome<std::vector<PaperPage>>;

constexpr int dotsPerInch = 1200;
constexpr qreal mmPerInch = 25.4;
constexpr std::size_t mostChosen = 20'000;

QPageSize pageSizeOf(const PaperPage& page) {
  return QPageSize(page.size(), QPageSize::Millimeter, QString(), QPageSize::ExactMatch);
}

Pages tagPages(const weavelog::Ledger& ledger, const PaperRequest& request, const PaperSize& size) {
  const auto tags = tagContents(ledger, request.jobs, request.language, request.zone);
  if (tags.empty()) return fail(FaultCode::not_found, "there is no racket to make tags for", {}, "take a racket in first, or choose others");
  if (request.kind == PaperKind::tags) return racketTags(tags, size, request.language);
  if (request.kind == PaperKind::bagTags) return bagTags(tags, size, request.language);
  const int perSheet = size.columns * size.rows;
  if (request.start < 1 || request.start > perSheet)
    return fail(FaultCode::bad_input, "a sheet has the positions 1 to " + std::to_string(perSheet), "start " + std::to_string(request.start),
                "count from the top left, row by row");
  return labelSheets(tags, size, request.start, request.language);
}

// Cards are made before they are laid out: who has none is told beside the paper.
Pages cardPages(const weavelog::Ledger& ledger, const PaperRequest& request, const PaperSize& size, Paper& paper) {
  auto cards = cardsOnPaper(ledger, request);
  if (!cards) return fail(cards.error());
  paper.leftOut = std::move(cards->leftOut);
  for (const CardOnPaper& card : cards->cards) paper.cards.push_back(card.player);
  return request.kind == PaperKind::card ? singleCards(cards->cards, size) : cardSheets(cards->cards, size);
}

Pages pagesOf(const weavelog::Ledger& ledger, const PaperRequest& request, const PaperSize& size, Paper& paper) {
  switch (request.kind) {
    case PaperKind::workList:
      return workList(ledger, request, size);
    case PaperKind::pickUpList:
      return pickUpList(ledger, request, size);
    case PaperKind::statement:
      return statement(ledger, request, size);
    case PaperKind::wrapUp:
      return wrapUp(ledger, request, size);
    case PaperKind::stringBed:
      return bedSheets(ledger, request, size);
    case PaperKind::evenness:
      return evenness(ledger, request, size);
    case PaperKind::record:
      return recordPages(ledger, request, size);
    case PaperKind::card:
    case PaperKind::cardSheet:
      return cardPages(ledger, request, size, paper);
    default:
      return tagPages(ledger, request, size);
  }
}

}  // namespace

Outcome<Paper> makePaper(const weavelog::Ledger& ledger, const PaperRequest& request) {
  const auto size = sizeFor(request.kind, request.size);
  if (!size)
    return fail(FaultCode::bad_input, std::string(nameOf(request.kind)) + " can't be printed on that", request.size.toStdString(),
                "choose another size");
  // A player's, of whatever event.
  const bool players = request.kind == PaperKind::card || request.kind == PaperKind::cardSheet || request.kind == PaperKind::record;
  if (!request.event && !players) return fail(FaultCode::not_found, "there is no event", {}, "pair with an event server, or make an event");
  Paper paper;
  auto pages = pagesOf(ledger, request, *size, paper);
  if (!pages) return fail(pages.error());
  std::string key = "paper." + std::string(nameOf(request.kind));
  std::replace(key.begin(), key.end(), '-', '_');
  paper.title = paperSay(request.language, key);
  paper.pages = std::move(*pages);
  return paper;
}

Outcome<> writePdf(const Paper& paper, const QString& file) {
  const auto failed = [&](const QString& why) {
    return fail(FaultCode::io, "the paper can't be written: " + why.toStdString(), file.toStdString(),
                "choose a folder that you may write to and that has room");
  };
  if (paper.pages.empty()) return fail(FaultCode::not_found, "the paper has no page", file.toStdString());
  // What is no file must not be replaced by one: a device, a pipe.
  if (const QFileInfo there(file); there.exists() && !there.isFile()) return failed(QStringLiteral("there is something that is no file"));
  QSaveFile out(file);
  if (!out.open(QIODevice::WriteOnly)) return failed(out.errorString());
  {
    QPdfWriter writer(&out);
    writer.setResolution(dotsPerInch);
    writer.setTitle(paper.title);
    writer.setCreator(QStringLiteral("Weavelog"));
    writer.setPageMargins(QMarginsF());
    writer.setPageSize(pageSizeOf(paper.pages.front()));
    QPainter painter;
    if (!painter.begin(&writer)) return failed(QStringLiteral("no painter"));
    bool first = true;
    for (const PaperPage& page : paper.pages) {
      if (!first) {
        writer.setPageSize(pageSizeOf(page));
        if (!writer.newPage()) return failed(out.errorString());
      }
      first = false;
      page.draw(painter, dotsPerInch / mmPerInch);
    }
    if (!painter.end()) return failed(out.errorString());
  }
  if (out.error() != QFileDevice::NoError || !out.commit()) return failed(out.errorString());
  return {};
}

std::vector<weavelog::JobRow> openJobs(const weavelog::Ledger& ledger, const weavelog::BookId& event) {
  std::vector<weavelog::JobRow> out;
  for (const auto& choice : weavelog::choices(weavelog::Stage{})) {
    if (!weavelog::is_open(choice.value)) continue;
    auto rows = weavelog::jobs_at_stage(ledger, event, choice.value, mostChosen);
    std::move(rows.begin(), rows.end(), std::back_inserter(out));
  }
  std::stable_sort(out.begin(), out.end(), [](const auto& a, const auto& b) { return a.tag_number < b.tag_number; });
  return out;
}

std::vector<weavelog::JobRow> newestDropOff(const weavelog::Ledger& ledger, const weavelog::BookId& player) {
  auto rows = weavelog::history_of(ledger, player);
  if (rows.empty()) return rows;
  const auto newest = rows.front().drop_off;
  std::erase_if(rows, [&](const auto& row) { return row.drop_off != newest; });
  std::stable_sort(rows.begin(), rows.end(), [](const auto& a, const auto& b) { return a.order < b.order; });
  return rows;
}
