#include "app-qml/paper_command.h"

#include <algorithm>

#include "app-qml/papers/paper.h"

using weavelog::fail;
using weavelog::FaultCode;

weavelog::Outcome<> writePaper(const Arguments& arguments, const Work& work) {
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
  if (!arguments.player.isEmpty()) {
    const auto players = weavelog::find_players(work.ledger(), arguments.player.toStdString(), 1);
    if (players.empty()) return fail(FaultCode::not_found, "no such player", arguments.player.toStdString(), "type another part of the name");
    request.player = players.front().book;
  } else if (request.kind == PaperKind::statement) {
    return fail(FaultCode::bad_input, "a statement is one player's", "--paper statement", "say whose with --player");
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
