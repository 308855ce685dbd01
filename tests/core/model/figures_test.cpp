// How long the screens' questions take with 1,000 players and 50,000 jobs. Not part of a usual run: test_core
// "[figures]".

#include <algorithm>
#include <catch2/catch.hpp>
#include <chrono>

#include "core/model/queries.h"
#include "core/model/stage_now.h"
#include "tests/support/processor_time.h"
#include "tests/support/rooms.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

constexpr int kPlayers = 1000;
constexpr int kJobsEach = 50;

double milliseconds(const std::function<void()>& work) {
  std::vector<double> took;
  for (int i = 0; i < 21; ++i) {
    const double start = processor_ms();
    work();
    took.push_back(processor_ms() - start);
  }
  std::nth_element(took.begin(), took.begin() + 10, took.end());
  return took[10];
}

/// Names out of syllables, so that a letter begins many and three letters few.
std::string name_of(int n) {
  static constexpr const char* kSyllables[] = {"ar",  "bel", "cor", "dun", "el",
                                               "fal", "gor", "hin", "is",  "jor"};
  std::string name;
  for (int rest = n + 1000; rest > 0; rest /= 10) name += kSyllables[rest % 10];
  name[0] = static_cast<char>(name[0] - 'a' + 'A');
  return name;
}

void fill(Tablet& tablet, const std::vector<BookId>& events) {
  for (int p = 0; p < kPlayers; ++p) {
    Draft draft(tablet.ledger->create_book_id(), kPlayerBook, kActImportJobs);
    Person person;
    person.family_name = name_of(p);
    person.given_name = name_of(p * 7 % 1000);
    (void)put_new(draft, person, tablet.clock.now());
    for (int j = 0; j < kJobsEach; ++j) {
      Job job;
      static_cast<Agreed&>(job) = day_wish();
      job.event = events[static_cast<std::size_t>(j % 12)];
      job.at = kMonday - j * kDay + p;
      job.ready_by = *job.at + kHour;
      job.tag_number = p * kJobsEach + j;
      const EntityId id = put_new(draft, job, tablet.clock.now()).id;
      std::vector<EntityId> after;
      const int steps = j == 0 ? p % 6 + 1 : 6;
      static constexpr Stage kSteps[] = {Stage::received, Stage::cut_out, Stage::on_machine,
                                         Stage::strung,   Stage::ready,   Stage::collected};
      for (int s = 0; s < steps; ++s)
        after = {
            put_new(draft, StageMark{id, kSteps[s], *job.at, "Mara", {}, join_ids(after)}, tablet.clock.now())
                .id};
    }
    tablet.append(draft);
  }
}

}  // namespace

TEST_CASE("figures: 50,000 jobs", "[.figures]") {
  TemporaryFolder folder;
  Tablet tablet("figures", folder.path() / "figures.db");
  std::vector<BookId> events;
  for (int e = 0; e < 12; ++e) {
    events.push_back(tablet.ledger->create_book_id());
    EventInfo info;
    info.name = "Event " + std::to_string(e);
    tablet.add(events.back(), info, kEventBook);
  }
  const double start = processor_ms();
  fill(tablet, events);
  const double seconds = (processor_ms() - start) / 1000;
  const Ledger& ledger = *tablet.ledger;
  REQUIRE(count_jobs(ledger) == kPlayers * kJobsEach);

  const auto middle = job_key_at(ledger, {}, 25'000);
  const BookId player = find_players(ledger, "", 1).at(0).book;
  const std::pair<const char*, std::function<void()>> questions[] = {
      {"find players, one letter", [&] { (void)find_players(ledger, "b"); }},
      {"find players, three letters", [&] { (void)find_players(ledger, "bel"); }},
      {"find players, two words", [&] { (void)find_players(ledger, "belar co"); }},
      {"find players, nothing typed", [&] { (void)find_players(ledger, ""); }},
      {"find by tag number", [&] { (void)find_jobs_by_tag(ledger, 4711); }},
      {"history of a player, 50 jobs", [&] { (void)history_of(ledger, player); }},
      {"jobs of an event at one stage", [&] { (void)jobs_at_stage(ledger, events[0], Stage::strung); }},
      {"next job for a bench", [&] { (void)next_jobs(ledger, events[0]); }},
      {"count by stage", [&] { (void)count_by_stage(ledger, events[0]); }},
      {"clashing jobs", [&] { (void)clashing_jobs(ledger, events[0]); }},
      {"first page of 50 jobs", [&] { (void)page_of_jobs(ledger, {}, {}, 50); }},
      {"page of 50 jobs in the middle", [&] { (void)page_of_jobs(ledger, {}, middle, 50); }},
      {"key of row 49,000", [&] { (void)job_key_at(ledger, {}, 49'000); }},
      {"count of all jobs", [&] { (void)count_jobs(ledger); }},
      {"all events", [&] { (void)all_events(ledger); }},
      {"highest tag", [&] { (void)highest_tag(ledger, events[0]); }},
  };
  WARN("written in " << seconds << " s of processor time");
  for (const auto& [what, ask] : questions) {
    const double took = milliseconds(ask);
    WARN(what << ": " << took << " ms");
    // Generous, so that a busy machine passes; a missing index does not.
    CHECK(took < 25);
  }
}
