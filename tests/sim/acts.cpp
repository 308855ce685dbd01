#include "tests/sim/acts_parts.h"

#include <algorithm>

#include "core/desk/consent.h"
#include "core/desk/drop_off.h"
#include "core/desk/event_book.h"
#include "core/desk/questions.h"
#include "core/desk/stages.h"
#include "core/desk/undo.h"
#include "core/store/database.h"

namespace weavelog::sim {
namespace {

Quantity tension(Random& random) {
  if (random.chance(200)) return {Decimal{random.between(45, 60), 0}, Unit::pound_force};
  return {Decimal{random.between(200, 280), 1}, Unit::kilogram_force};
}

Agreed wish(Random& random) {
  Agreed out;
  out.mains_string = one_of(kStrings, random);
  out.mains_gauge = Quantity{Decimal{random.between(120, 130), 2}, Unit::millimetre};
  out.mains_tension = tension(random);
  if (random.chance(500)) {
    out.crosses_string = one_of(kStrings, random);
    out.crosses_tension = tension(random);
  }
  if (random.chance(300)) out.racket_stencil = "open ring";
  return out;
}

DropOffRequest request_for(Device& device, Random& random) {
  DropOffRequest request;
  request.drop_off.event = event_here(device);
  request.drop_off.event_name = "Harbour Open";
  request.drop_off.at = device.clock.now();
  if (random.chance(500)) request.drop_off.ready_by = device.clock.now() + random.between(1, 8) * 3'600'000;
  request.device = device.ledger().self().id();
  return request;
}

std::optional<Act> hand_over(const PlayerRecord& record, const DropOffRequest& request, Random& random,
                             const std::string& what) {
  std::optional<std::string> confirmed;
  if (random.chance(150)) confirmed = read_back_of(record, request);
  return made(drop_off(record, request, confirmed, one_of(kStringers, random)), what);
}

std::optional<Act> new_player(Device& device, Random& random) {
  const PlayerRecord nobody = record_of(device.ledger().create_book_id(), {}, {});
  DropOffRequest request = request_for(device, random);
  request.new_person = Person{};
  request.new_person->family_name = one_of(kFamilies, random) + " " + mark_of(nobody.book);
  request.new_person->given_name = one_of(kGivens, random);
  const std::uint64_t rackets = 1 + random.below(3);
  const Agreed first = wish(random);
  for (std::uint64_t i = 0; i < rackets; ++i) {
    DropOffLine line;
    line.made = Racket{};
    line.made->label = std::to_string(i + 1);
    line.agreed = first;
    line.keep_as = "day";
    request.lines.push_back(std::move(line));
  }
  return hand_over(nobody, request, random, "new player, " + std::to_string(rackets) + " rackets");
}

std::optional<Act> known_player(Device& device, Random& random) {
  const auto record = some_player(device, random);
  if (!record || record->rackets.empty()) return std::nullopt;
  DropOffRequest request = request_for(device, random);
  const auto& racket = random.pick(record->rackets);
  const auto last = same_as_last_time(*record, racket.id());
  DropOffLine line = last ? line_from(*last) : DropOffLine{};
  line.racket = racket.id();
  if (!last) line.agreed = wish(random);
  if (random.chance(500)) line.agreed.mains_tension = tension(random);
  request.lines.push_back(std::move(line));
  return hand_over(*record, request, random, "same as last time, or nearly");
}

std::optional<Act> step(Device& device, Random& random) {
  const auto record = some_player(device, random);
  if (!record || record->jobs.empty()) return std::nullopt;
  const EntityId job = random.pick(record->jobs).id();
  const UnixMs now = device.clock.now();
  const std::string by = one_of(kStringers, random);
  if (random.chance(100) || record->stage_of(job).clash) {
    const auto to = static_cast<Stage>(1 + random.below(kStageCount - 1));
    return made(take_step(*record, std::span(&job, 1), {to, by, "as it stands here", now}),
                "sets a stage with a reason");
  }
  return made(advance(*record, job, by, now), "moves a racket on");
}

template <class S>
std::optional<Act> changed(const PlayerRecord& record, const Loaded<S>& held, const S& wanted,
                           std::string what) {
  Draft draft(record.book, kPlayerBook, kActEdit);
  put_changes(draft, held.seen, wanted);
  return made(std::move(draft), std::move(what));
}

/// One of the guarded fields.
void change_one(Agreed& now, Random& random) {
  switch (random.below(5)) {
    case 0:
      now.mains_string = one_of(kStrings, random);
      break;
    case 1:
      now.crosses_tension = tension(random);
      break;
    case 2:
      now.racket_ink = random.chance(500) ? "red" : "";
      break;
    default:
      now.mains_tension = tension(random);
  }
}

std::optional<Act> change_agreed(Device& device, Random& random) {
  const auto record = some_player(device, random);
  if (!record) return std::nullopt;
  if (!record->setups.empty() && random.chance(600)) {
    const auto& held = random.pick(record->setups);
    Setup now = held.now;
    change_one(now, random);
    return changed(*record, held, now, "changes a setup");
  }
  if (record->jobs.empty()) return std::nullopt;
  const auto& held = random.pick(record->jobs);
  Job now = held.now;
  change_one(now, random);
  return changed(*record, held, now, "changes a job");
}

std::optional<Act> change_plain(Device& device, Random& random) {
  const auto record = some_player(device, random);
  if (!record) return std::nullopt;
  const std::string number = std::to_string(random.below(1000));
  if (record->rackets.empty() || random.chance(500)) {
    if (!record->person.id()) return std::nullopt;
    Person now = record->person.now;
    (random.chance(500) ? now.contact : now.note) =
        random.chance(100) ? "" : "note " + number + " " + mark_of(record->book);
    if (random.chance(100)) now.family_name = one_of(kFamilies, random) + " " + mark_of(record->book);
    return changed(*record, record->person, now, "changes a person");
  }
  const auto& held = random.pick(record->rackets);
  Racket now = held.now;
  now.model = "Model " + number;
  if (random.chance(200)) now.label = number;
  return changed(*record, held, now, "changes a racket");
}

std::optional<Act> close(Device& device, Random& random) {
  std::vector<OpenQuestion> questions = device.seen_questions;
  if (questions.empty() || random.chance(300)) questions = device.ledger().open_questions();
  if (questions.empty()) return std::nullopt;
  const OpenQuestion& seen = random.pick(questions);
  auto act = made(close_question(seen, random.pick(seen.cell.values).value),
                  "closes a question of " + std::to_string(seen.cell.values.size()) + " answers");
  if (act) act->closes = seen;
  return act;
}

std::optional<Act> take_back(Device& device, Random& random) {
  const auto books = books_at(device, kPlayerBook);
  if (books.empty()) return std::nullopt;
  const BookId book = random.pick(books);
  const auto seq = last_action(device.ledger(), book, 20);
  if (!seq) return std::nullopt;
  return made(undo(device.ledger(), book, *seq), "undoes action " + std::to_string(*seq));
}

std::optional<Act> in_event(EventKind kind, Device& device, Random& random) {
  const BookId book = event_here(device);
  if (!book) return std::nullopt;
  const auto record = load_event(device.ledger(), book);
  if (!record) return std::nullopt;
  if (kind == EventKind::team) {
    TeamMember member;
    member.name = one_of(kStringers, random);
    member.skills = "skill " + std::to_string(random.below(20));
    return made(put_team_member(*record, member, device.clock.now()), "changes the team");
  }
  std::string csv = "family_name,given_name,country,seed\n";
  for (std::uint64_t i = 3 + random.below(5); i > 0; --i)
    csv += one_of(kFamilies, random) + "," + one_of(kGivens, random) + ",NOR," +
           std::to_string(1 + random.below(32)) + "\n";
  const auto list = read_entry_list(csv);
  if (!list) return std::nullopt;
  ImportDrafts drafts = import_entries(*record, list->rows, device.clock.now());
  if (drafts.drafts.empty()) return std::nullopt;
  return made(std::move(drafts.drafts.front()), "brings an entry list in");
}

std::optional<Act> consent(Device& device, Random& random) {
  const auto record = some_player(device, random);
  if (!record || !record->person.id()) return std::nullopt;
  // Withdrawing is rare: a book that may not leave takes no further part.
  const auto choice = random.chance(150)   ? ConsentChoice::withdrawn
                      : random.chance(500) ? ConsentChoice::any_room
                                           : ConsentChoice::events_entered;
  Confirmation said;
  said.text = consent_text(said.language, choice);
  said.at = device.clock.now();
  said.device = device.ledger().self().id();
  return made(give_consent(*record, choice, said, event_here(device)),
              "consent " + std::to_string(static_cast<int>(choice)));
}

std::optional<Act> newer_field(Device& device, Random& random) {
  if (device.making.program != Program::newer) return std::nullopt;
  const auto record = some_player(device, random);
  if (!record || !record->person.id()) return std::nullopt;
  Draft draft(record->book, kPlayerBook, kActEdit);
  // A kind of value that today's program does not know either.
  const UnknownValue strange{static_cast<std::uint8_t>(15 * 4 + 2),
                             Bytes(1 + random.below(9), static_cast<std::uint8_t>(random.next()))};
  draft.put(
      record->person.seen, kNewerNote,
      random.chance(500) ? Value{strange} : Value{std::string("newer ") + std::to_string(random.below(100))});
  if (!record->setups.empty())
    draft.put(random.pick(record->setups).seen, kNewerAgreed, Value{random.between(1, 9)});
  return made(std::move(draft), "writes what only newer programs know");
}

}  // namespace

std::optional<PlayerRecord> some_player(Device& device, Random& random) {
  if (device.seen_record && random.chance(300))
    return device.seen_record;  // what stands there may be old by now
  const auto books = books_at(device, kPlayerBook);
  if (books.empty()) return std::nullopt;
  auto record = load_player(device.ledger(), random.pick(books));
  if (!record) return std::nullopt;
  return std::move(*record);
}

std::optional<Act> made(Outcome<Draft> draft, std::string what) {
  if (!draft || draft->empty()) return std::nullopt;
  return Act{std::move(*draft), std::move(what), {}};
}

BookId event_here(Device& device) {
  if (device.event) return device.event;
  const auto events = books_at(device, kEventBook);
  return events.empty() ? BookId{} : events.front();
}

std::string mark_of(const BookId& book) {
  // The last bytes are chance; as letters, so that search terms hold them too.
  std::string out;
  for (const std::uint8_t byte : ByteView(book.bytes).last(6)) {
    out += static_cast<char>('a' + byte / 16);
    out += static_cast<char>('a' + byte % 16);
  }
  return out;
}

std::vector<BookId> books_at(Device& device, std::optional<BookKind> kind) {
  std::vector<BookId> out;
  device.ledger().read([&](Connection& db) {
    // As Ledger::books() gives them, which works out their heads too.
    auto& query = db.statement(
        "SELECT id FROM book WHERE forgotten=0 AND (?1 IS NULL OR kind=?1) AND EXISTS(SELECT 1 FROM chain c WHERE c.book=book.n) "
        "ORDER BY id");
    if (kind) query.bind(1, static_cast<int>(*kind));
    while (query.executeStep()) out.push_back(BookId::from_bytes(blob_of(query, 0)).value());
  });
  return out;
}

bool is_act(EventKind kind) {
  return kind <= EventKind::draws && kind != EventKind::look;
}

std::optional<Act> act_of(EventKind kind, Device& device, Random& random) {
  switch (kind) {
    case EventKind::new_player:
      return new_player(device, random);
    case EventKind::drop_off:
      return known_player(device, random);
    case EventKind::step:
      return step(device, random);
    case EventKind::change_agreed:
      return change_agreed(device, random);
    case EventKind::change_plain:
      return change_plain(device, random);
    case EventKind::close_question:
      return close(device, random);
    case EventKind::undo:
      return take_back(device, random);
    case EventKind::import_entries:
    case EventKind::team:
      return in_event(kind, device, random);
    case EventKind::consent:
      return consent(device, random);
    case EventKind::newer_field:
      return newer_field(device, random);
    default:
      return is_at_the_bench(kind) ? act_at_bench(kind, device, random) : is_in_the_room(kind) ? act_in_room(kind, device, random) : std::nullopt;
  }
}

}  // namespace weavelog::sim
