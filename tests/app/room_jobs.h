#pragma once
// Jobs in a room, for the tests of its view models.

#include <QAbstractItemModel>

#include "core/desk/questions.h"
#include "core/desk/stages.h"
#include "core/model/queries.h"
#include "tests/app/device_room.h"

namespace weavelog::testing {

struct MadeJob {
  BookId book;
  EntityId job;
};

/// Today's event with players and rackets, as the desk would take them in.
struct RoomOfJobs : AppRoom {
  BookId event;

  RoomOfJobs() {
    event = addEvent("Harbour", "2031-05-26");
    device->chooseEvent(event);
  }

  /// One racket of a player, received.
  MadeJob receive(const BookId& player, const Agreed& agreed, std::optional<std::int64_t> tag = {},
                  std::optional<UnixMs> ready_by = {}, Rush rush = Rush::none, const EntityId& setup = {}) {
    Draft draft(player, kPlayerBook, kActDropOff);
    Racket racket;
    racket.label = "2";
    const auto racket_id = put_new(draft, racket, clock.now()).id;
    DropOff drop_off;
    drop_off.event = event;
    drop_off.event_name = "Harbour";
    drop_off.at = clock.now();
    const auto drop_off_id = put_new(draft, drop_off, clock.now()).id;
    Job job;
    static_cast<Agreed&>(job) = agreed;
    job.drop_off = drop_off_id;
    job.racket = racket_id;
    job.setup = setup;
    job.event = event;
    job.at = clock.now();
    job.ready_by = ready_by;
    job.rush = rush;
    job.tag_number = tag;
    const auto job_id = put_new(draft, job, clock.now()).id;
    StageMark mark;
    mark.job = job_id;
    mark.stage = Stage::received;
    mark.at = clock.now();
    (void)put_new(draft, mark, clock.now());
    append(draft);
    return {player, job_id};
  }
  void step(const MadeJob& made, Stage to, const std::string& by, const std::string& reason = {}) {
    const auto record = must(load_player(ledger(), made.book));
    append(must(take_step(record, std::span(&made.job, 1), StageStep{to, by, reason, clock.now()})));
  }
  /// Bo, on a tablet of his own, and Ines, here, each step the racket on while apart; then the tablets meet.
  void stepApart(const MadeJob& made, Stage bo, Stage ines);
  [[nodiscard]] Stage stageOf(const MadeJob& made) const {
    return must(load_player(ledger(), made.book)).stage_of(made.job).stage;
  }
};

[[nodiscard]] inline QString hex(const BookId& id) {
  return QString::fromStdString(id.hex());
}
[[nodiscard]] inline QString hex(const EntityId& id) {
  return QString::fromStdString(id.hex());
}
[[nodiscard]] inline QVariant role(const QAbstractItemModel& model, int row, const char* name) {
  return model.data(model.index(row, 0), model.roleNames().key(name, -1));
}

/// Another tablet that holds the same book, without a network between.
inline void bringTo(Tablet& tablet, AppRoom& room, const BookId& book) {
  (void)must(tablet.ledger->ingest(room.ledger().missing(book, tablet.ledger->heads(book), 1 << 30), 0));
}
inline void bringFrom(Tablet& tablet, AppRoom& room, const BookId& book) {
  (void)must(room.ledger().ingest(tablet.ledger->missing(book, room.ledger().heads(book), 1 << 30), 0));
}

/// The other tablet hears of both answers to the book's question and closes it; then the two meet.
inline void closeThere(Tablet& tablet, AppRoom& room, const BookId& book, const Value& answer) {
  bringTo(tablet, room, book);
  tablet.append(must(close_question(tablet.ledger->open_questions(book).at(0), answer)));
  bringFrom(tablet, room, book);
}

inline void RoomOfJobs::stepApart(const MadeJob& made, Stage bo, Stage ines) {
  Tablet other("Bench tablet");
  bringTo(other, *this, made.book);
  const auto record = must(load_player(*other.ledger, made.book));
  other.append(must(take_step(record, std::span(&made.job, 1), StageStep{bo, "Bo", {}, kMonday})));
  step(made, ines, "Ines");
  bringFrom(other, *this, made.book);
}

}  // namespace weavelog::testing
