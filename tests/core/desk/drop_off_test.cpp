#include "core/desk/drop_off.h"

#include <catch2/catch.hpp>

#include "core/desk/adjust.h"
#include "core/desk/last_time.h"
#include "core/desk/new_time.h"
#include "core/desk/stages.h"
#include "core/model/queries.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

TEST_CASE("a first drop-off brings everything into being in one action") {
  Desk desk;
  const BookId book = desk.ledger->create_book_id();
  const auto request = desk.first_request(4);
  const PlayerRecord nobody = record_of(book, {}, {});
  const std::string text = read_back_of(nobody, request);
  const auto committed = desk.append(drop_off(nobody, request, text, "Mara"));
  CHECK(committed.position > 0);
  CHECK(desk.ledger->heads(book).at(0).seq == 1);

  const PlayerRecord record = desk.load(book);
  CHECK(record.person.now.family_name == "Wendelmoor");
  CHECK(record.rackets.size() == 4);
  CHECK(record.setups.size() == 1);  // four rackets with one wish
  REQUIRE(record.jobs.size() == 4);
  REQUIRE(record.drop_offs.size() == 1);
  const DropOff& hand_over = record.drop_offs[0].now;
  CHECK(hand_over.confirmed_text == text);
  CHECK(is_confirmed(hand_over));
  CHECK(hand_over.confirmed_language == "fr");
  CHECK(AuthorId::from_bytes(hand_over.confirmed_device) == desk.ledger->self().id());
  for (const auto& job : record.jobs) {
    CHECK(static_cast<const Agreed&>(job.now) == day_wish());
    CHECK(job.now.setup == record.setups[0].id());
    CHECK(job.now.drop_off == record.drop_offs[0].id());
    CHECK(record.stage_of(job.id()).stage == Stage::received);
    CHECK(record.stage_of(job.id()).by == "Mara");
  }
  CHECK(find_players(*desk.ledger, "wendel").at(0).last_event == "Harbour Open");
  CHECK(jobs_at_stage(*desk.ledger, desk.event, Stage::received).size() == 4);
}

TEST_CASE("a changed confirmation text is noticed for ever") {
  Desk desk;
  const BookId book = desk.first_drop_off(1);
  DropOff hand_over = desk.load(book).drop_offs.at(0).now;
  REQUIRE(is_confirmed(hand_over));
  hand_over.confirmed_text += " ";
  CHECK_FALSE(is_confirmed(hand_over));
  CHECK_FALSE(is_confirmed(DropOff{}));
}

TEST_CASE("a change after the confirmation asks again") {
  Desk desk;
  const BookId book = desk.first_drop_off(2);
  const EntityId job = desk.load(book).jobs.at(0).id();
  const EntityId other = desk.load(book).jobs.at(1).id();
  CHECK(still_confirmed(desk.load(book), job));
  CHECK_FALSE(still_confirmed(desk.load(book), EntityId{{1}}));
  desk.change<Job>(book, job, [](Job& now) { now.overgrip = "blue"; });  // not guarded
  CHECK(still_confirmed(desk.load(book), job));
  desk.change<Job>(book, job, [](Job& now) { now.mains_tension = kg("24"); });
  CHECK_FALSE(still_confirmed(desk.load(book), job));
  CHECK(still_confirmed(desk.load(book), other));
  const PlayerRecord record = desk.load(book);
  Confirmation again{"2 rackets, one changed", Language{}, desk.clock.now(), desk.ledger->self().id()};
  desk.append(confirm_again(record, record.drop_offs.at(0).id(), again));
  CHECK(still_confirmed(desk.load(book), job));
  again.text.clear();
  CHECK_FALSE(confirm_again(record, record.drop_offs.at(0).id(), again));
}

TEST_CASE("what was not on the screen is not stored as confirmed") {
  Desk desk;
  const PlayerRecord nobody = record_of(desk.ledger->create_book_id(), {}, {});
  auto request = desk.first_request(1);
  const std::string text = read_back_of(nobody, request);
  request.lines[0].agreed.mains_tension = kg("26");
  const auto refused = drop_off(nobody, request, text, "Mara");
  REQUIRE_FALSE(refused);
  CHECK(refused.error().where == "read-back");
  CHECK(drop_off(nobody, request, read_back_of(nobody, request), "Mara"));
  const auto unconfirmed = drop_off(nobody, request, std::nullopt, "Mara");
  REQUIRE(unconfirmed);
}

TEST_CASE("a time that has passed or lies far ahead is refused at the drop-off, as at a new time, and the read-back shows its year") {
  const Desk desk;
  const PlayerRecord nobody = record_of(desk.ledger->create_book_id(), {}, {});
  auto request = desk.first_request(1);
  const UnixMs now = *request.drop_off.at;
  CHECK(read_back_of(nobody, request).find("2031") == std::string::npos);
  request.drop_off.ready_by = now - 4000LL * 86'400'000;
  CHECK(read_back_of(nobody, request).find(" 2020") != std::string::npos);  // Monday is in May 2031
  const auto why = [&] {
    const auto refused = drop_off(nobody, request, std::nullopt, "Mara");
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == FaultCode::bad_input);
    CHECK(refused.error().where == "ready by");
    return refused.error().what;
  };
  CHECK(why().find("has passed") != std::string::npos);
  request.drop_off.ready_by = now;
  CHECK(why().find("has passed") != std::string::npos);
  request.drop_off.ready_by = now + kFarthestPromise + 1;
  CHECK(why().find("30 days") != std::string::npos);
  request.drop_off.ready_by = now + kFarthestPromise;
  CHECK(drop_off(nobody, request, std::nullopt, "Mara"));
}

TEST_CASE("a drop-off that cannot be meant is refused with one clear reason") {
  Desk desk;
  const BookId book = desk.first_drop_off(2);
  const PlayerRecord record = desk.load(book);
  auto request = desk.first_request(0);
  request.new_person.reset();
  const auto why = [&] {
    const auto result = drop_off(record, request, std::nullopt, "Mara");
    REQUIRE_FALSE(result);
    CHECK_FALSE(result.error().what_to_do.empty());
    return result.error().message();
  };
  CHECK(why().find("no racket was handed over") != std::string::npos);

  DropOffLine line;
  line.racket = record.rackets[0].id();
  line.agreed = day_wish();
  request.lines = {line};
  CHECK(why().find("in the room already (received)") != std::string::npos);
  const EntityId job = record.jobs[0].now.racket == line.racket ? record.jobs[0].id() : record.jobs[1].id();
  desk.append(take_step(record, std::span(&job, 1),
                        {Stage::aside, "Mara", "does not want it strung", desk.clock.now()}));
  CHECK(drop_off(desk.load(book), request, std::nullopt, "Mara"));

  const PlayerRecord later = desk.load(book);
  request.lines = {line, line};
  CHECK(drop_off(later, request, std::nullopt, "Mara").error().what == "the racket is handed over twice");
  request.lines = {line};
  request.lines[0].racket = EntityId{{42}};
  CHECK(drop_off(later, request, std::nullopt, "Mara").error().code == FaultCode::not_found);
  request.lines = {line};
  request.lines[0].setup = EntityId{{42}};
  CHECK(drop_off(later, request, std::nullopt, "Mara").error().code == FaultCode::not_found);
  request.lines = {line};
  request.lines[0].agreed.mains_tension = kg("55");
  const auto slip = drop_off(later, request, std::nullopt, "Mara");
  REQUIRE_FALSE(slip);
  CHECK(slip.error().where.find("mains tension") != std::string::npos);
  CHECK(slip.error().where.find("racket ") != std::string::npos);
}

TEST_CASE("same as last time, one kilo less, at another event") {
  Desk desk;
  const BookId book = desk.first_drop_off(4);
  PlayerRecord record = desk.load(book);
  std::vector<EntityId> jobs;
  for (const auto& job : record.jobs) jobs.push_back(job.id());
  desk.append(take_step(record, jobs, {Stage::on_machine, "Mara", "", desk.clock.now()}));
  for (const Stage stage : {Stage::strung, Stage::ready, Stage::collected})
    desk.append(take_step(desk.load(book), jobs, {stage, "Mara", "", desk.clock.now()}));

  desk.clock.advance(21 * kDay);
  record = desk.load(book);
  const auto rackets = rackets_of_last_drop_off(record);
  REQUIRE(rackets.size() == 4);
  auto last = same_for_each(record, std::span(rackets).first(3));
  REQUIRE(last.size() == 3);
  auto request = desk.first_request(0);
  request.new_person.reset();
  request.drop_off.event = {};
  request.drop_off.event_name = "Lakeside Cup";
  request.drop_off.at = desk.clock.now();
  request.language = Language::from("en").value();
  for (const LastTime& one : last) {
    CHECK(one.event_name == "Harbour Open");
    CHECK(one.own_racket);
    CHECK(one.since.empty());
    CHECK(one.questions.empty());
    CHECK(one.proposal == day_wish());
    DropOffLine line = line_from(one);
    line.agreed = must(adjusted(one.proposal, {StringPart::mains, kg("-1")}));
    request.lines.push_back(line);
  }
  const std::string text = read_back_of(record, request);
  CHECK(text.find("3 rackets") != std::string::npos);
  CHECK(text.find("Changed: mains tension, 25\u00a0kg → 24\u00a0kg.") != std::string::npos);
  desk.append(drop_off(record, request, text, "Jonas"));

  record = desk.load(book);
  CHECK(record.setups.size() == 1);
  CHECK(record.jobs.size() == 7);
  // The next one starts from what was strung today.
  for (const EntityId& racket : std::span(rackets).first(3))
    CHECK(same_as_last_time(record, racket)->proposal.mains_tension == kg("24"));
  CHECK(same_as_last_time(record, rackets[3])->proposal.mains_tension == kg("25"));
  CHECK(history_of(*desk.ledger, book).at(0).event_name == "Lakeside Cup");
}

TEST_CASE("a racket that was never marked as collected at another event can be handed over at this one") {
  Desk desk;
  const BookId book = desk.first_drop_off(1);
  const auto record = desk.load(book);
  DropOffRequest request;
  request.drop_off.event = desk.ledger->create_book_id();
  request.drop_off.at = desk.clock.now();
  request.lines.push_back(line_from(same_as_last_time(record, record.rackets.front().id()).value()));
  desk.append(drop_off(record, request, {}, "Mara"));
  request.drop_off.event = desk.event;
  CHECK(drop_off(record, request, {}, "Mara").error().code == FaultCode::conflict);
}
