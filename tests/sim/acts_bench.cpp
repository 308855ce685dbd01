// Work on a player's rackets, and what is said of who the player is.

#include "core/desk/bench.h"
#include "core/desk/check.h"
#include "core/desk/inspection.h"
#include "core/desk/new_time.h"
#include "core/desk/other_names.h"
#include "core/desk/person_books.h"
#include "core/desk/photo.h"
#include "core/desk/work_list.h"
#include "tests/sim/acts_parts.h"

namespace weavelog::sim {
namespace {

constexpr std::array kFaults{FrameFault::crack, FrameFault::grommet_split, FrameFault::bumper_worn, FrameFault::other};
constexpr std::array kProposals{FrameRemedy::unsaid, FrameRemedy::string_anyway, FrameRemedy::tube, FrameRemedy::replace_strip};
constexpr std::array kAnswers{FrameRemedy::string_anyway, FrameRemedy::tube, FrameRemedy::replace_strip, FrameRemedy::do_not_string};

/// A player, one of the rackets, and who does it when.
struct Work {
  PlayerRecord record;
  EntityId job;
  std::string by;
  UnixMs at = 0;
};

std::optional<Act> inspected(const Work& work, Random& random) {
  const PlayerRecord& record = work.record;
  if (!record.findings.empty() && random.chance(600)) {
    const EntityId finding = random.pick(record.findings).id();
    switch (random.below(4)) {
      case 0:
        return made(override_finding(record, finding, work.by, "the coach waits", work.at), "answers for a frame by name");
      case 1:
        return made(mend_finding(record, finding, work.by, work.at), "mends a frame");
      default:
        return made(answer_finding(record, finding, {random.pick(kAnswers), "the player", work.by, work.at}), "hears what to do about a frame");
    }
  }
  std::vector<FoundOnFrame> found(static_cast<std::size_t>(random.below(3)));
  for (FoundOnFrame& one : found) {
    one.fault = random.pick(kFaults);
    one.part = FramePart::head;
    one.clock_minutes = random.between(0, 719);
    one.proposal = random.pick(kProposals);
    one.note = "seen " + mark_of(record.book);
  }
  return made(inspect(record, work.job, found, work.by, work.at), "inspects a frame: " + std::to_string(found.size()) + " found");
}

std::optional<Act> benched(const Work& work, Random& random) {
  const PlayerRecord& record = work.record;
  const BenchHand hand{work.by, work.at};
  switch (random.below(8)) {
    case 0: {
      Reading measured;
      measured.job = work.job;
      measured.what = ReadingKind::bed_stiffness;
      measured.value = Quantity{Decimal{random.between(250, 450), 1}, units_of(measured.what).front()};
      measured.by = work.by;
      measured.at = work.at;
      return made(put_reading(record, work.job, measured), "measures a bed");
    }
    case 1:
      return made(note_bench(record, work.job, "bench " + std::to_string(random.below(9)) + " " + mark_of(record.book), hand), "notes something at the bench");
    case 2:
    case 3: {
      CheckFound found;
      const bool fails = random.chance(200);
      found.items = {{"=knots", !fails}, {"=marks", true}};
      const auto back = redo_stages(record.stage_of(work.job).stage);
      if (fails && !back.empty()) {
        found.reason = "a knot slipped";
        found.back_to = back.front();
      }
      found.by = work.by;
      found.at = work.at;
      return made(check_racket(record, work.job, found), fails ? "sends a racket back" : "checks a racket");
    }
    case 4: {
      const auto steps = work_list({}, WorkList::bench);
      return made(tick_step(record, work.job, random.pick(steps).name, random.chance(800), hand), "ticks a step");
    }
    default: {
      const Stage now = record.stage_of(work.job).stage;
      const auto to = now < Stage::cut_out ? Stage::cut_out : now == Stage::cut_out ? Stage::on_machine : Stage::strung;
      return made(step_at_bench(record, work.job, {to, work.by, "as it is", work.at}), "takes a racket on at the bench");
    }
  }
}

std::optional<Act> named(const Work& work, Device& device, Random& random) {
  const PlayerRecord& record = work.record;
  if (random.chance(350)) {
    const auto books = books_at(device, kPlayerBook);
    if (books.empty()) return std::nullopt;  // what was seen a while ago is forgotten, and was all that there was
    const BookId other = random.pick(books);
    const LinkSaid said = random.chance(700) ? LinkSaid::same_person : LinkSaid::other_person;
    auto drafts = say_of_books(device.ledger(), record.book, other, said, work.by, work.at);
    if (!drafts || drafts->empty()) return std::nullopt;
    return made(std::move(drafts->front()), said == LinkSaid::same_person ? "says that two books are one person's" : "parts two books");
  }
  if (!record.other_names.empty() && random.chance(200))
    return made(drop_other_name(record, random.pick(record.other_names).id()), "takes another name back");
  OtherName name;
  name.family_name = one_of(kFamilies, random) + " " + mark_of(record.book);
  name.given_name = one_of(kGivens, random);
  name.why = NameWhy::former;
  return made(add_other_name(record, name, work.by, work.at), "notes another name");
}

std::optional<Act> pictured(const Work& work, Random& random) {
  PhotoTaken taken;
  if (!work.record.findings.empty() && random.chance(500)) taken.finding = random.pick(work.record.findings).id();
  taken.content[0] = static_cast<std::uint8_t>(random.below(200));
  taken.media_type = "image/jpeg";
  taken.size = 1 + random.below(100'000);
  taken.note = "picture " + mark_of(work.record.book);
  taken.by = work.by;
  taken.at = work.at;
  return made(put_photo(work.record, work.job, taken), "notes a picture");
}

}  // namespace

std::optional<Act> act_at_bench(EventKind kind, Device& device, Random& random) {
  auto record = some_player(device, random);
  if (!record || record->jobs.empty()) return std::nullopt;
  Work work{std::move(*record), {}, one_of(kStringers, random), device.clock.now()};
  work.job = random.pick(work.record.jobs).id();
  switch (kind) {
    case EventKind::inspect:
      return inspected(work, random);
    case EventKind::bench:
      return benched(work, random);
    case EventKind::picture:
      return pictured(work, random);
    case EventKind::new_time: {
      const auto jobs = promised_with(work.record, work.job);
      return made(agree_time(work.record, jobs, {work.at + random.between(1, 30) * 3'600'000, "the player", work.at}), "promises another time");
    }
    default:
      return named(work, device, random);
  }
}

}  // namespace weavelog::sim
