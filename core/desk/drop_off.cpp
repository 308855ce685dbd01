#include "core/desk/drop_off.h"

#include <algorithm>

#include "core/desk/check_setup.h"
#include "core/desk/new_time.h"
#include "core/desk/stages.h"

namespace weavelog {
namespace {

const Racket* racket_of(const PlayerRecord& record, const DropOffLine& line) {
  if (line.made) return &*line.made;
  const auto* known = record.racket(line.racket);
  return known ? &known->now : nullptr;
}

std::string line_place(const PlayerRecord& record, const DropOffLine& line, std::size_t index) {
  const Racket* racket = racket_of(record, line);
  return racket && !racket->label.empty() ? "racket " + racket->label : "racket " + std::to_string(index + 1);
}

/// The open job of a racket, if it is in this room. One that is open at another event was never marked there
/// as collected: the player has the racket in hand.
const Loaded<Job>* open_job(const PlayerRecord& record, const EntityId& racket, const BookId& event) {
  for (const Loaded<Job>& job : record.jobs)
    if (job.now.racket == racket && job.now.event == event && is_open(record.stage_of(job.id()).stage))
      return &job;
  return nullptr;
}

Outcome<> check_line(const PlayerRecord& record, const DropOffRequest& request, std::size_t index) {
  const DropOffLine& line = request.lines[index];
  const std::string place = line_place(record, line, index);
  if (!line.made) {
    if (!record.racket(line.racket))
      return fail(FaultCode::not_found, "the player has no such racket", place,
                  "choose one of the player's, or add it");
    for (std::size_t other = 0; other < index; ++other)
      if (!request.lines[other].made && request.lines[other].racket == line.racket)
        return fail(FaultCode::bad_input, "the racket is handed over twice", place,
                    "take one of the two out");
    if (const auto* job = open_job(record, line.racket, request.drop_off.event))
      return fail(FaultCode::conflict,
                  "the racket is in the room already (" +
                      std::string(name_of_choice(record.stage_of(job->id()).stage)) + ")",
                  place, "mark it as collected or put aside first");
  }
  if (line.setup && !record.setup(line.setup))
    return fail(FaultCode::not_found, "the player has no such setup", place, "choose another one");
  if (auto sound = require_sound(line.agreed, racket_of(record, line)); !sound) {
    Fault fault = sound.error();
    fault.where = place + ", " + fault.where;
    return fail(std::move(fault));
  }
  return {};
}

/// Setups made in this action, so that rackets with one wish share one.
class NewSetups {
 public:
  NewSetups(Draft& draft, UnixMs at) : draft_(draft), at_(at) {}

  EntityId id_for(const DropOffLine& line) {
    if (line.setup || line.keep_as.empty()) return line.setup;
    for (const auto& [setup, id] : made_)
      if (setup.name == line.keep_as && static_cast<const Agreed&>(setup) == line.agreed) return id;
    Setup setup;
    static_cast<Agreed&>(setup) = line.agreed;
    setup.name = line.keep_as;
    const EntityId id = put_new(draft_, setup, at_).id;
    made_.emplace_back(setup, id);
    return id;
  }

 private:
  Draft& draft_;
  UnixMs at_;
  std::vector<std::pair<Setup, EntityId>> made_;
};

}  // namespace

DropOffLine line_from(const LastTime& last) {
  DropOffLine line;
  line.racket = last.racket;
  line.agreed = last.proposal;
  line.setup = last.setup;
  line.last_time = last.as_strung;
  return line;
}

std::vector<EntityId> goes_by(const PlayerRecord& record, const DropOffLine& line) {
  std::vector<EntityId> out;
  const auto add = [&](const EntityId& id) {
    if (id && std::find(out.begin(), out.end(), id) == out.end()) out.push_back(id);
  };
  add(line.setup);
  if (const auto last = same_as_last_time(record, line.made ? EntityId{} : line.racket)) {
    add(last->setup);
    add(last->job);
  }
  return out;
}

std::vector<OpenQuestion> questions_on(const PlayerRecord& record, const DropOffLine& line) {
  const auto by = goes_by(record, line);
  std::vector<OpenQuestion> questions;
  for (const OpenQuestion& question : record.questions)
    if (std::find(by.begin(), by.end(), question.entity) != by.end()) questions.push_back(question);
  return questions;
}

std::string read_back_of(const PlayerRecord& record, const DropOffRequest& request) {
  ReadBackRequest wanted;
  wanted.language = request.language;
  wanted.rush = request.drop_off.rush;
  // Who confirms has to see a slip in the year, so it is told where it is not this one.
  if (const auto& ready = request.drop_off.ready_by)
    wanted.ready_by = moment_told(*ready, request.time_zone, request.drop_off.at.value_or(*ready));
  for (const DropOffLine& line : request.lines) {
    const Racket* racket = racket_of(record, line);
    wanted.lines.push_back(
        {racket ? racket->label : std::string(), line.agreed, line.last_time,
         cautions_at_desk(record, line.made ? EntityId{} : line.racket, racket, line.agreed), line.settled});
  }
  return read_back(wanted);
}

Outcome<Draft> drop_off(const PlayerRecord& record, const DropOffRequest& request,
                        const std::optional<std::string>& confirmed_text, const std::string& by) {
  if (request.lines.empty())
    return fail(FaultCode::bad_input, "no racket was handed over", {}, "choose at least one");
  if (!request.drop_off.at)
    return fail(FaultCode::bad_input, "the drop-off has no time", {}, "give the time of day");
  if (const auto& ready = request.drop_off.ready_by)
    if (auto sound = check_promise(*ready, *request.drop_off.at, "ready by"); !sound) return fail(sound.error());
  if (const auto& bags = request.drop_off.bags; bags && (*bags < 0 || *bags > kMostBags))
    return fail(FaultCode::bad_input, std::to_string(*bags) + " bags can't be", "bags", "give 0 to " + std::to_string(kMostBags));
  if (!record.person.id() && !request.new_person)
    return fail(FaultCode::bad_input, "it is not said whose rackets these are", {},
                "choose or add the player");
  for (std::size_t i = 0; i < request.lines.size(); ++i)
    if (auto checked = check_line(record, request, i); !checked) return fail(checked.error());
  // Whoever confirms sees exactly what is confirmed.
  if (confirmed_text && *confirmed_text != read_back_of(record, request))
    return fail(FaultCode::bad_input, "what was confirmed is not what is about to be stored", "read-back",
                "read it back again and have it confirmed");

  const UnixMs at = *request.drop_off.at;
  Draft draft(record.book, kPlayerBook, kActDropOff);
  if (!record.person.id()) {
    Person person = *request.new_person;
    if (request.consent) person.consent = request.consent->choice;
    (void)put_new(draft, person, at);
  } else if (request.consent) {
    draft.put(record.person.seen, tag_of<Person>(&Person::consent), to_value(request.consent->choice));
  }
  if (request.consent) {
    const Confirmation said{request.consent->text, request.language, at, request.device};
    if (auto noted = note_consent(draft, request.consent->choice, said, request.drop_off.event); !noted)
      return fail(noted.error());
  }

  DropOff hand_over = request.drop_off;
  if (confirmed_text) confirm(hand_over, {*confirmed_text, request.language, at, request.device});
  EntityState fresh = new_entity(record.book, kDropOff, at);
  if (request.id) fresh.id = request.id;
  put_changes(draft, fresh, hand_over);
  const EntityId hand_over_id = fresh.id;

  NewSetups setups(draft, at);
  std::int64_t order = 0;
  for (const DropOffLine& line : request.lines) {
    Job job;
    static_cast<Agreed&>(job) = line.agreed;
    job.drop_off = hand_over_id;
    job.racket = line.made ? put_new(draft, *line.made, at).id : line.racket;
    job.setup = setups.id_for(line);
    job.event = hand_over.event;
    job.at = at;
    job.ready_by = hand_over.ready_by;
    job.rush = hand_over.rush;
    job.order = ++order;
    job.tag_number = line.tag_number;
    const EntityId job_id = put_new(draft, job, at).id;
    (void)put_new(draft, StageMark{job_id, Stage::received, at, by, {}, {}}, at);
  }
  return draft;
}

Outcome<std::vector<Draft>> consent_beside(const Ledger& ledger, const BookId& stored, const DropOffRequest& request) {
  if (!request.consent) return std::vector<Draft>{};
  auto books = load_person(ledger, stored);
  if (!books) return fail(books.error());
  std::erase_if(books->records, [&](const PlayerRecord& record) { return record.book == stored; });
  const Confirmation said{request.consent->text, request.language, request.drop_off.at.value_or(0), request.device};
  return give_consent(*books, request.consent->choice, said, request.drop_off.event);
}

bool still_confirmed(const PlayerRecord& record, const EntityId& job_id) {
  const auto* job = record.job(job_id);
  const auto* hand_over = job ? record.drop_off(job->now.drop_off) : nullptr;
  if (!hand_over || !is_confirmed(hand_over->now)) return false;
  const Cell* confirmed = hand_over->seen.find(tag_of<DropOff>(&DropOff::confirmed_text));
  return std::none_of(job->seen.cells.begin(), job->seen.cells.end(), [&](const Cell& cell) {
    return model_registry().guarded(cell.tag) &&
           (cell.split() || cell.latest().stamp > confirmed->latest().stamp);
  });
}

Outcome<Draft> confirm_again(const PlayerRecord& record, const EntityId& drop_off,
                             const Confirmation& confirmation) {
  const auto* hand_over = record.drop_off(drop_off);
  if (!hand_over)
    return fail(FaultCode::not_found, "no such drop-off", drop_off.hex(), "look at the player again");
  if (confirmation.text.empty())
    return fail(FaultCode::bad_input, "nothing was read back", "read-back",
                "read it back and have it confirmed");
  DropOff now = hand_over->now;
  confirm(now, confirmation);
  Draft draft(record.book, kPlayerBook, kActEdit);
  put_changes(draft, hand_over->seen, now);
  return draft;
}

}  // namespace weavelog
