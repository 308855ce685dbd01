#pragma once

#include <QImage>

#include <functional>
#include <vector>

#include "app-qml/papers/paper_page.h"
#include "app-qml/papers/paper_size.h"
#include "core/base/language.h"
#include "core/base/outcome.h"
#include "core/desk/room_bed.h"
#include "core/model/queries.h"
#include "core/quality/watch.h"

// What is to be printed, and on what.
struct PaperRequest {
  PaperKind kind = PaperKind::tags;
  QString size;  // key of a PaperSize; "": the usual one
  weavelog::BookId event;
  weavelog::Language language;  // of the room
  std::string zone = "UTC";     // IANA name
  weavelog::UnixMs now = 0;
  weavelog::BookId player;             // of a statement or a record
  std::vector<weavelog::BookId> players;  // of cards, in their order
  std::vector<weavelog::JobRow> jobs;  // of tags, labels and string beds, in their order
  int start = 1;                       // first position on a sheet of labels
  bool byTag = false;                  // the pick-up list: by tag number in place of family name
  std::optional<weavelog::BedChange> change;                      // of string beds: told before the usual ones
  weavelog::Watched watched = weavelog::Watched::racket;          // evenness: of all rackets, of a machine or a stringer
  std::function<QImage(const weavelog::BookId&, const weavelog::Bytes&)> picture;  // of a record: a photo by its hash; none: without
  std::string watchedName;                                        // which one
};

struct Paper {
  QString title;  // names the file and the printer's job
  std::vector<PaperPage> pages;
  std::vector<weavelog::BookId> cards;  // players whose cards are on it
  QStringList leftOut;  // who of those that were asked for is not on it, and why
};

// Lays a paper out; nothing is written. Faults: not_found (no event, no such player, no job to make tags for), bad_input (the paper
// can't be printed on that size, no such position on the sheet, too many cards), those of make_card() where there is no card at all.
[[nodiscard]] weavelog::Outcome<Paper> makePaper(const weavelog::Ledger& ledger, const PaperRequest& request);

// Writes it as PDF in one go: a file that was there stays as it was where that fails. Faults: io, no_space (as the disk tells).
[[nodiscard]] weavelog::Outcome<> writePdf(const Paper& paper, const QString& file);

// The open rackets of an event by tag number: those that may need a tag.
[[nodiscard]] std::vector<weavelog::JobRow> openJobs(const weavelog::Ledger& ledger, const weavelog::BookId& event);
// The rackets of a player's newest drop-off.
[[nodiscard]] std::vector<weavelog::JobRow> newestDropOff(const weavelog::Ledger& ledger, const weavelog::BookId& player);
