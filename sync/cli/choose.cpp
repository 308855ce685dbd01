#include "sync/cli/choose.h"

#include <algorithm>
#include <charconv>

#include "core/base/text.h"
#include "core/desk/last_time.h"
#include "core/desk/phrases.h"
#include "core/desk/stages.h"
#include "core/desk/tags.h"

namespace weavelog::cli {
namespace {

bool looks_like_number(const std::string& text) {
  return text.size() >= 6 && text.size() <= 32 &&
         text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

bool is_digits(const std::string& text) {
  return !text.empty() && text.find_first_not_of("0123456789") == std::string::npos;
}

std::string called(const PlayerRow& row) {
  std::string name = row.family_name.empty() ? row.native_name : row.family_name;
  if (!row.given_name.empty()) name += " " + row.given_name;
  return name + " (" + row.book.hex() + ")";
}

/// So many players are found at most by what was typed, and jobs by a tag: a count that goes on from there helps nobody.
constexpr std::size_t kMostFound = 1000;

tl::unexpected<Fault> several(const std::string& where, const std::vector<std::string>& meant, const std::string& what_to_do) {
  return fail(FaultCode::bad_input, several_words(meant), where, what_to_do);
}

std::vector<std::string> split(const std::string& text) {
  std::vector<std::string> parts;
  std::size_t begin = 0;
  while (begin <= text.size()) {
    const std::size_t end = std::min(text.find(',', begin), text.size());
    parts.emplace_back(trimmed(std::string_view(text).substr(begin, end - begin)));
    begin = end + 1;
  }
  return parts;
}

bool in_room(const PlayerRecord& record, const BookId& event, const EntityId& racket) {
  return std::any_of(record.jobs.begin(), record.jobs.end(), [&](const Loaded<Job>& job) {
    return job.now.racket == racket && job.now.event == event && is_open(record.stage_of(job.id()).stage);
  });
}

Outcome<std::vector<EntityId>> first_at_hand(const PlayerRecord& record, const BookId& event,
                                             std::size_t count) {
  std::vector<EntityId> pool = rackets_of_last_drop_off(record);
  // Beyond those of last time, the player's others in order of making.
  for (const auto& racket : record.rackets)
    if (std::find(pool.begin(), pool.end(), racket.id()) == pool.end()) pool.push_back(racket.id());
  std::erase_if(pool, [&](const EntityId& racket) { return in_room(record, event, racket); });
  if (pool.size() < count)
    return fail(FaultCode::conflict,
                "only " + std::to_string(pool.size()) + " known rackets of the player are not in the room",
                std::to_string(count) + " rackets", "hand those over, or use `drop-off` for new ones");
  pool.resize(count);
  return pool;
}

}  // namespace

std::string several_words(std::span<const std::string> meant) {
  constexpr std::size_t most = 4;
  std::string out = std::to_string(meant.size()) + " are meant: ";
  for (std::size_t at = 0; at < std::min(meant.size(), most); ++at) out += (at == 0 ? "" : "; ") + meant[at];
  return meant.size() > most ? out + " and " + std::to_string(meant.size() - most) + " more" : out;
}

Outcome<BookId> choose_player(Context& context, const std::string& wanted) {
  const std::string where = "player \"" + shortened(wanted, 40) + "\"";
  Ledger& ledger = context.ledger();
  if (looks_like_number(wanted)) {
    std::vector<BookId> meant;
    for (const BookInfo& book : ledger.books(kPlayerBook))
      if (book.id.hex().starts_with(wanted)) meant.push_back(book.id);
    if (meant.size() == 1) return meant.front();
    if (meant.size() > 1) {
      std::vector<std::string> named;
      for (const BookId& book : meant) {
        const auto row = find_player(ledger, book);
        named.push_back(row ? called(*row) : book.hex());
      }
      return several(where, named, "give more of the book's number, or all of it; those that came out of one table begin alike");
    }
  }
  const auto found = find_players(ledger, wanted, kMostFound);
  if (is_blank(wanted) || found.empty())
    return fail(FaultCode::not_found, "nobody of that name or number is known on this device", where,
                "look with `find`, or exchange with the event server first");
  if (found.size() > 1) {
    // One who is called exactly so is meant, although others' names begin alike.
    std::vector<const PlayerRow*> exact;
    for (const PlayerRow& row : found)
      if (search_key(row.family_name + " " + row.given_name) == search_key(wanted) ||
          search_key(row.given_name + " " + row.family_name) == search_key(wanted) ||
          search_key(row.native_name) == search_key(wanted))
        exact.push_back(&row);
    if (exact.size() == 1) return exact.front()->book;
    std::vector<std::string> named;
    for (const PlayerRow& row : found) named.push_back(called(row));
    return several(where, named, "say more of the name, or give the book's number");
  }
  return found.front().book;
}

Outcome<PlayerRecord> load_chosen(Context& context, const std::string& wanted) {
  const auto book = choose_player(context, wanted);
  if (!book) return fail(book.error());
  return load_player(context.ledger(), *book);
}

Outcome<JobRow> choose_job(Context& context, const BookId& event, const std::string& wanted) {
  std::vector<JobRow> meant;
  bool by_tag = false;
  if (is_digits(wanted) && wanted.size() <= 5) {
    by_tag = true;
    meant = find_jobs_by_tag(context.ledger(), std::stoll(wanted), event, kMostFound);
    const bool any_open =
        std::any_of(meant.begin(), meant.end(), [](const JobRow& row) { return is_open(row.stage); });
    if (any_open) std::erase_if(meant, [](const JobRow& row) { return !is_open(row.stage); });
    if (!any_open && meant.size() > 1) meant.resize(1);  // the newest
  } else if (looks_like_number(wanted)) {
    for (JobRow& row : page_of_jobs(context.ledger(), {}, {}, 100'000))
      if (row.job.hex().starts_with(wanted)) meant.push_back(std::move(row));
  }
  const std::string where = "job \"" + shortened(wanted, 40) + "\"";
  if (meant.empty())
    return fail(FaultCode::not_found, "no such tag or job at this event", where, "look at the board");
  if (meant.size() > 1) {
    std::vector<std::string> named;
    for (const JobRow& row : meant) named.push_back(tagged_racket_words(row) + (row.tag_number ? ", job " + row.job.hex() : ""));
    return several(where, named,
                   by_tag ? "give a whole job number in place of the tag; `new-tag` with that number gives one of them another tag"
                          : "give more of the job's number, or all of it; those of one hand-over begin alike");
  }
  return meant.front();
}

namespace {

Outcome<JobHere> loaded(Context& context, const BookId& book, const EntityId& id, const JobRow& row) {
  auto record = load_player(context.ledger(), book);
  if (!record) return fail(record.error());
  if (!record->job(id)) return fail(FaultCode::not_found, "no such job", id.hex(), "look at the board again");
  return JobHere{row, std::move(*record)};
}

}  // namespace

Outcome<EventRecord> event_here(Context& context, const std::string& words) {
  const auto event = context.event(words);
  if (!event) return fail(event.error());
  return load_event(context.ledger(), *event);
}

Outcome<JobHere> job_here(Context& context, const std::string& event_words, const std::string& job) {
  const auto event = context.event(event_words);
  if (!event && !event_words.empty()) return fail(event.error());
  const auto row = choose_job(context, event.value_or(BookId{}), job);
  if (!row) return fail(row.error());
  return loaded(context, row->book, row->job, *row);
}

Outcome<JobHere> job_again(Context& context, const JobHere& here) {
  const auto row = find_job(context.ledger(), here.row.book, here.row.job);
  return loaded(context, here.row.book, here.row.job, row.value_or(here.row));
}

Outcome<std::vector<EntityId>> choose_rackets(const PlayerRecord& record, const BookId& event,
                                              const std::string& wanted) {
  if (wanted.empty()) {
    auto rackets = rackets_of_last_drop_off(record);
    if (rackets.empty())
      return fail(FaultCode::not_found, "the player has handed no racket over yet", "rackets",
                  "use `drop-off`");
    return rackets;
  }
  if (is_digits(wanted)) {
    if (wanted.size() > 3 || std::stoi(wanted) < 1)
      return fail(FaultCode::bad_input, "\"" + shortened(wanted, 40) + "\" is no number of rackets",
                  "rackets", "say 1 or more, or the rackets' labels");
    return first_at_hand(record, event, static_cast<std::size_t>(std::stoi(wanted)));
  }
  std::vector<EntityId> rackets;
  for (const std::string& part : split(wanted)) {
    const std::string label = part.starts_with('#') ? part.substr(1) : part;
    std::vector<EntityId> same;
    for (const auto& racket : record.rackets)
      if (search_key(racket.now.label) == search_key(label) || racket.id().hex() == label)
        same.push_back(racket.id());
    if (same.empty())
      return fail(FaultCode::not_found, "the player has no racket labelled \"" + shortened(label, 40) + "\"",
                  "rackets", "`show` lists the player's rackets");
    if (same.size() > 1)
      return fail(FaultCode::bad_input, "several rackets are labelled \"" + shortened(label, 40) + "\"",
                  "rackets", "give the racket's number, as `show --json` has it");
    rackets.push_back(same.front());
  }
  return rackets;
}

Outcome<MachineNow> choose_machine(Context& context, const BookId& event, const std::string& wanted) {
  auto machines = event_machines(context.ledger(), event, context.zone_of(event), context.now());
  for (auto& machine : machines)
    if (search_key(machine.machine.now.name) == search_key(wanted)) return std::move(machine);
  std::size_t number = 0;
  const auto [stop, error] = std::from_chars(wanted.data(), wanted.data() + wanted.size(), number);
  if (error == std::errc() && stop == wanted.data() + wanted.size() && number >= 1 && number <= machines.size())
    return std::move(machines[number - 1]);
  return fail(FaultCode::not_found, "no machine of that name or number", wanted, "`machines` lists them");
}

Outcome<const Loaded<Setup>*> choose_setup(const PlayerRecord& record, const std::string& wanted) {
  if (!wanted.empty()) {
    for (const auto& setup : record.setups)
      if (search_key(setup_words({}, setup.now.name)) == search_key(wanted) || setup.now.name == wanted || setup.id().hex() == wanted)
        return &setup;
  } else {
    const auto last = same_as_last_time(record, {});
    if (last && last->setup) return record.setup(last->setup);
    if (!record.setups.empty()) return &record.setups.back();
  }
  return fail(FaultCode::not_found, "the player has no such setup",
              wanted.empty() ? "setup" : "setup \"" + wanted + "\"",
              "`show` lists the player's setups; a drop-off makes the first");
}

}  // namespace weavelog::cli
