#include "app-qml/paper_command.h"

#include <algorithm>
#include <iostream>

#include "app-qml/papers/card_paper.h"
#include "app-qml/view/photo_image.h"
#include "sync/carry/player_card.h"

using weavelog::fail;
using weavelog::FaultCode;

namespace {

weavelog::Outcome<> writePicture(const weavelog::Ledger& ledger, const PaperRequest& request, const QString& file) {
  if (request.players.size() != 1) return fail(FaultCode::bad_input, "a picture holds one card", "--out", "name one player, or write a PDF");
  const auto made = weavelog::make_card(ledger, request.players.front());
  return made ? saveCardPicture(made->text, file) : fail(made.error());
}

// Cards of the players named, of a country's, or of everybody with an open racket at the event.
weavelog::Outcome<> writeCards(const Arguments& arguments, const Work& work, PaperRequest request) {
  if (!arguments.country.isEmpty())
    for (const auto& book : playersOfCountry(work.ledger(), arguments.country.toStdString())) request.players.push_back(book);
  if (arguments.players.empty() && arguments.country.isEmpty())
    for (const auto& row : openJobs(work.ledger(), request.event))
      if (std::find(request.players.begin(), request.players.end(), row.book) == request.players.end()) request.players.push_back(row.book);
  std::vector<weavelog::BookId> given = request.players;
  weavelog::Outcome<> written;
  if (arguments.outFile.endsWith(QLatin1String(".png"), Qt::CaseInsensitive)) {
    written = writePicture(work.ledger(), request, arguments.outFile);
  } else {
    const auto paper = makePaper(work.ledger(), request);
    if (!paper) return fail(paper.error());
    for (const QString& one : paper->leftOut) std::cerr << "weavelog: left out: " << one.toStdString() << "\n";
    given = paper->cards;
    written = writePdf(*paper, arguments.outFile);
  }
  if (!written) return written;
  return work.workplace().station().peers().note_handed(weavelog::HandedAs::card, {}, given, work.now());
}

}  // namespace

weavelog::Outcome<> writePaper(const Arguments& arguments, AppDevice& device) {
  const Work& work = device.work();
  PaperRequest request;
  request.kind = *paperKindFrom(arguments.paper);
  if (!arguments.roll.isEmpty()) {
    const auto size = sizeForRoll(request.kind, arguments.roll);
    if (!size)
      return fail(FaultCode::bad_input, arguments.paper.toStdString() + " are not printed on that", "--roll " + arguments.roll.toStdString(),
                  "leave it out, or take another");
    request.size = QLatin1String(size->key);
  }
  request.event = work.event();
  request.language = work.language();
  request.zone = work.zone();
  request.now = work.now();
  request.start = arguments.start;
  request.byTag = arguments.byTag;
  request.picture = heldPhotos(device.station().contents());
  const bool cards = request.kind == PaperKind::card || request.kind == PaperKind::cardSheet;
  if (arguments.players.size() > 1 && !cards)
    return fail(FaultCode::bad_input, "several players have no " + arguments.paper.toStdString() + " together", "--player", "name one");
  for (const QString& name : arguments.players) {
    const auto players = weavelog::find_players(work.ledger(), name.toStdString(), 1);
    if (players.empty()) return fail(FaultCode::not_found, "no such player", name.toStdString(), "type another part of the name");
    request.players.push_back(players.front().book);
  }
  if (!arguments.country.isEmpty() && !cards)
    return fail(FaultCode::bad_input, "a team has no " + arguments.paper.toStdString(), "--country", "leave it out");
  if (cards) return writeCards(arguments, work, std::move(request));
  if (!request.players.empty()) {
    request.player = request.players.front();
  } else if (request.kind == PaperKind::statement || request.kind == PaperKind::record) {
    return fail(FaultCode::bad_input, "a " + arguments.paper.toStdString() + " is one player's", "--paper " + arguments.paper.toStdString(), "say whose with --player");
  }
  request.jobs = openJobs(work.ledger(), request.event);
  if (!arguments.tags.empty()) {
    // Those that were asked for by number are printed at any stage.
    request.jobs = weavelog::page_of_jobs(work.ledger(), request.event, {}, 20'000);
    std::erase_if(request.jobs, [&](const auto& row) {
      return std::none_of(arguments.tags.begin(), arguments.tags.end(),
                          [&](const auto& range) { return row.tag_number && *row.tag_number >= range.first && *row.tag_number <= range.second; });
    });
    std::stable_sort(request.jobs.begin(), request.jobs.end(), [](const auto& a, const auto& b) { return a.tag_number < b.tag_number; });
    if (request.jobs.empty()) return fail(FaultCode::not_found, "none of these tag numbers is at this event", "--tags", "give others");
  }
  if (request.player) std::erase_if(request.jobs, [&](const auto& row) { return row.book != request.player; });
  const auto paper = makePaper(work.ledger(), request);
  if (!paper) return fail(paper.error());
  return writePdf(*paper, arguments.outFile);
}
