#include "core/desk/past_jobs.h"

#include <catch2/catch.hpp>

#include "core/desk/bring_past_jobs.h"
#include "core/desk/last_time.h"
#include "core/model/queries.h"
#include "tests/core/desk/desk_room.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

constexpr const char* kTable =
    "Nachname;Vorname;Land;Datum;Turnier;Saite;Spannung;Besaiter;Farbe\n"
    "Wendelmoor;Ilse;NED;26.05.2030;Harbour Open;Tarnbrook Silk / Velmora Round;25/24;Merrin;rot\n"
    "Wendelmoor;Ilse;NED;27.05.2030;Harbour Open;Tarnbrook Silk / Velmora Round;25,5/24,5;Merrin;rot\n"
    "Okonjo;Ada;;;;Velmora Round;23 kg;;\n";

std::string fault_of(const std::string& table, const PastJobsOptions& options = {}) {
  const auto read = read_past_jobs(table, options, "old.csv");
  return read ? std::string("no fault") : read.error().message();
}
std::vector<std::uint64_t> bring(Desk& desk, const PastJobs& jobs, LikelyPlayers likely = LikelyPlayers::leave_out) {
  PastImport import{"old.csv", desk.clock.now(), {}};
  std::vector<std::uint64_t> out;
  for (const Draft& draft : past_job_drafts(*desk.ledger, jobs, plan_past_jobs(*desk.ledger, jobs), likely, "Mara", desk.clock.now())) {
    const auto stored = desk.append(draft);
    import.actions.emplace_back(draft.book(), stored.dot.seq);
    out.push_back(stored.dot.seq);
  }
  REQUIRE(note_past_import(*desk.ledger, import));
  return out;
}

}  // namespace

TEST_CASE("a table kept by hand is read by the words that its headers use") {
  const auto jobs = must(read_past_jobs(kTable));
  REQUIRE(jobs.rows.size() == 3);
  CHECK(jobs.faults.empty());
  CHECK(jobs.columns.back().ours.empty());  // the colour is nobody's
  CHECK(jobs.rows[0].person.family_name == "Wendelmoor");
  CHECK(jobs.rows[0].date == "2030-05-26");
  CHECK(jobs.rows[0].agreed.crosses_string == "Velmora Round");
  CHECK(jobs.rows[1].agreed.mains_tension == Quantity{{255, 1}, Unit::kilogram_force});
  CHECK(jobs.rows[1].stringer == "Merrin");
  CHECK(jobs.rows[2].agreed.crosses_tension == Quantity{{23, 0}, Unit::kilogram_force});
  CHECK(jobs.unit == Unit::kilogram_force);
  CHECK(jobs.unit_found);
}

TEST_CASE("the unit of bare figures is found only where they speak for one") {
  std::string table = "name,tension\nIlse Wendelmoor,55\nAda Okonjo,52/50\nTess Farrow,24\n";
  for (int i = 0; i < 10; ++i) table += "Mira Kova," + std::to_string(48 + i) + "\n";
  const auto pounds = must(read_past_jobs(table));
  CHECK(pounds.unit == Unit::pound_force);
  CHECK(pounds.rows.size() == 12);
  REQUIRE(pounds.faults.size() == 1);  // 24 among pounds: it is not guessed at
  CHECK(pounds.faults[0].message().find("line 4") != std::string::npos);
  CHECK(pounds.rows[0].person.family_name == "Wendelmoor");
  CHECK(pounds.rows[0].person.given_name == "Ilse");
  CHECK(fault_of("name,tension\nIlse Wendelmoor,55\nAda Okonjo,24\n").find("fit no single one") != std::string::npos);
  PastJobsOptions said;
  said.unit = Unit::kilogram_force;
  const auto kilos = must(read_past_jobs("name,tension\nIlse Wendelmoor,24\nAda Okonjo,24 / 23 kg\nTess Farrow,52 lb\n", said));
  CHECK(kilos.rows.size() == 3);
  CHECK_FALSE(kilos.unit_found);
  CHECK(kilos.rows[1].agreed.mains_tension->unit == Unit::kilogram_force);
  CHECK(kilos.rows[2].agreed.mains_tension->unit == Unit::pound_force);
  CHECK(must(read_past_jobs("name,tension\nIlse Wendelmoor,240\n")).unit == Unit::newton);
}

TEST_CASE("columns are said by hand where their names say nothing") {
  const std::string table = "who,x,y\n\"Wendelmoor, Ilse\",Tarnbrook Silk,25 kg\n";
  CHECK(fault_of(table).find("no column holds the players' names") != std::string::npos);
  PastJobsOptions options;
  options.columns = {{"name", "who"}, {"string", "x"}, {"tension", "y"}};
  const auto jobs = must(read_past_jobs(table, options));
  REQUIRE(jobs.rows.size() == 1);
  CHECK(jobs.rows[0].person.given_name == "Ilse");
  options.columns = {{"name", "who"}, {"colour", "x"}};
  CHECK(fault_of(table, options).find("no column of ours") != std::string::npos);
  options.columns = {{"name", "nobody"}};
  CHECK(fault_of(table, options).find("has no column") != std::string::npos);
  options.columns = {{"name", "who"}, {"name", "x"}};
  CHECK(fault_of(table, options).find("two columns") != std::string::npos);
  CHECK(fault_of("name,colour\nIlse,red\n").find("no column holds a string or a tension") != std::string::npos);
}

TEST_CASE("a header that says a unit gives it to the figures below") {
  const auto jobs = must(read_past_jobs("name,Tension (kg),gauge mains [mm]\nIlse Wendelmoor,24,1.25\nAda Okonjo,24.5/23.5,1.3\nTess Farrow,52 lb,\nMira Kova,25 / 52 lb,\n", {}, "old.csv"));
  CHECK(jobs.unit == Unit::none);  // nothing was left to be found
  CHECK_FALSE(jobs.unit_found);
  REQUIRE(jobs.columns.size() == 3);
  CHECK(jobs.columns[1] == ColumnUse{"Tension (kg)", "tension", Unit::kilogram_force});
  CHECK(jobs.columns[2] == ColumnUse{"gauge mains [mm]", "mains_gauge", Unit::millimetre});
  REQUIRE(jobs.rows.size() == 4);
  CHECK(jobs.rows[0].agreed.mains_tension == Quantity{{24, 0}, Unit::kilogram_force});
  CHECK(jobs.rows[1].agreed.crosses_tension == Quantity{{235, 1}, Unit::kilogram_force});
  CHECK(jobs.rows[2].agreed.mains_tension == Quantity{{52, 0}, Unit::pound_force});  // the cell knows better
  CHECK(jobs.rows[3].agreed.mains_tension == Quantity{{25, 0}, Unit::pound_force});  // its unit stands behind both
  // One that can't be what the header says is not turned into it.
  const auto odd = must(read_past_jobs("name,Tension (kg)\nIlse Wendelmoor,55\nAda Okonjo,24\n", {}, "old.csv"));
  CHECK(odd.rows.size() == 1);
  REQUIRE(odd.faults.size() == 1);
  CHECK(odd.faults[0].message().find("as the column says") != std::string::npos);
  // "mains (kg)" is no string; a header of nothing but a unit is a tension.
  const auto uses = recognised_columns({"mains (kg)", "crosses, lb", "LBS", "Saite", "mains", "Racket N"});
  CHECK(uses[0] == ColumnUse{"mains (kg)", "mains_tension", Unit::kilogram_force});
  CHECK(uses[1] == ColumnUse{"crosses, lb", "crosses_tension", Unit::pound_force});
  CHECK(uses[2].ours == "tension");
  CHECK(uses[3] == ColumnUse{"Saite", "string", Unit::none});
  CHECK(uses[4] == ColumnUse{"mains", "mains_string", Unit::none});
  CHECK(uses[5].unit == Unit::none);
}

TEST_CASE("a header that means two things is left to the person") {
  // "Main" is French for hand and English for the long strings, "Tag" German for day and English for the slip of paper.
  const auto uses = recognised_columns({"Name", "Main", "Tag", "kg"});
  CHECK(uses[0].ours == "name");
  CHECK(uses[1].ours.empty());
  CHECK(uses[2].ours.empty());
  PastJobsOptions options;
  options.columns = {{"hand", "Main"}, {"date", "Tag"}};
  const auto jobs = must(read_past_jobs("Name,Main,Tag,kg\nIlse Wendelmoor,izquierda,26.05.2030,24\nAda Okonjo,derecha,5.6.2030,24\n", options));
  REQUIRE(jobs.rows.size() == 2);
  CHECK(jobs.rows[0].person.hand == Hand::left);
  CHECK(jobs.rows[1].person.hand == Hand::right);
  CHECK(jobs.rows[1].date == "2030-06-05");
}

TEST_CASE("dates with slashes are read in the order that the whole table tells") {
  const auto table = [](const std::string& dates) {
    std::string out = "name,date,tension\n";
    std::size_t from = 0;
    while (from < dates.size()) {
      const auto end = std::min(dates.find(' ', from), dates.size());
      out += "Ilse Wendelmoor," + dates.substr(from, end - from) + ",24 kg\n";
      from = end + 1;
    }
    return out;
  };
  const auto days = must(read_past_jobs(table("03/04/2030 26/05/2030")));
  CHECK(days.day_order == DayOrder::days_first);
  CHECK(days.day_order_by == DayOrderBy::table);
  CHECK(days.rows.at(0).date == "2030-04-03");
  const auto months = must(read_past_jobs(table("03/04/2030 5/26/2030 26.05.2030")));
  CHECK(months.day_order == DayOrder::months_first);
  CHECK(months.day_order_by == DayOrderBy::table);
  CHECK(months.rows.at(0).date == "2030-03-04");
  CHECK(months.rows.at(1).date == "2030-05-26");
  CHECK(months.rows.at(2).date == "2030-05-26");  // with points the day stands first everywhere
  const auto taken = must(read_past_jobs(table("03/04/2030 05/06/2030")));
  CHECK(taken.day_order_by == DayOrderBy::taken);
  CHECK(taken.rows.at(0).date == "2030-04-03");
  CHECK(must(read_past_jobs(table("04/04/2030 2030-05-26"))).day_order_by == DayOrderBy::none);  // either way the same day
  CHECK(must(read_past_jobs(table("2030-05-26 26.05.2030"))).day_order == DayOrder::unsaid);
  CHECK(fault_of(table("26/05/2030 05/26/2030")).find("day first in line 2, month first in line 3") != std::string::npos);
  PastJobsOptions said;
  said.day_order = DayOrder::months_first;
  const auto by_person = must(read_past_jobs(table("03/04/2030 26/05/2030"), said));
  CHECK(by_person.day_order_by == DayOrderBy::said);
  CHECK(by_person.rows.at(0).date == "2030-03-04");
  CHECK(by_person.faults.size() == 1);  // a month of 26 there is none
  PastJobsOptions asking;
  asking.leave_doubts = true;
  const auto clash = must(read_past_jobs(table("26/05/2030 05/26/2030"), asking));
  CHECK(clash.day_order_by == DayOrderBy::clash);
  CHECK(clash.rows.size() == 1);
  CHECK(clash.faults.size() == 1);
  for (const char* bad : {"31/02/2030", "1/1/30", "1//2030", "1/2/3/2030", "00/01/2030", "1.2/2030"}) {
    CAPTURE(bad);
    CHECK(must(read_past_jobs(table(bad))).faults.size() == 1);
  }
}

TEST_CASE("what a person looked at column by column counts as said, and doubts are told where somebody asks for them") {
  const std::string table = "who,x,x,date\nIlse Wendelmoor,Silk,24,1\nAda Okonjo,Silk,52,2\n";
  PastJobsOptions options;
  options.leave_doubts = true;
  options.meanings = {"name", "string", "tension", ""};  // of two headers alike each by its place; the date is not one
  const auto jobs = must(read_past_jobs(table, options));
  CHECK(jobs.faults.empty());
  CHECK(jobs.unit_open);
  REQUIRE(jobs.rows.size() == 2);
  CHECK(jobs.rows[1].agreed.mains_tension == Quantity{{52, 0}, Unit::none});
  options.unit = Unit::pound_force;
  CHECK_FALSE(must(read_past_jobs(table, options)).unit_open);
  options.meanings = {"name", "string"};
  CHECK(fault_of(table, options).find("2 columns were said, the file has 4") != std::string::npos);
  options.meanings = {"name", "string", "string", ""};
  CHECK(fault_of(table, options).find("two columns are taken for string") != std::string::npos);
  options.meanings = {"name", "colour", "", ""};
  CHECK(fault_of(table, options).find("no column of ours") != std::string::npos);
}

TEST_CASE("a broken cell is named with its line and column, and leaves its row out") {
  const auto jobs = must(read_past_jobs("name,country,birth_year,hand,date,string,tension,mains gauge\n"
                                        "Ilse Wendelmoor,NED,2002,left,2030-05-26,Silk,25 kg,1.25\n"
                                        "Ada Okonjo,Nigeria,2002,left,2030-05-26,Silk,25 kg,1.25\n"
                                        "Ada Okonjo,NGR,soon,left,2030-05-26,Silk,25 kg,1.25\n"
                                        "Ada Okonjo,NGR,2001,both,2030-05-26,Silk,25 kg,1.25\n"
                                        "Ada Okonjo,NGR,2001,,27/27/2030,Silk,25 kg,1.25\n"
                                        "Ada Okonjo,NGR,2001,,2030-05-26,Silk,tight,1.25\n"
                                        "Ada Okonjo,NGR,2001,,2030-05-26,Silk,25 kg,125\n"
                                        ",NGR,2001,,2030-05-26,Silk,25 kg,1.25\n"
                                        "Ada Okonjo,NGR,2001,,2030-05-26,,,1.25\n",
                                        {}, "old.csv"));
  CHECK(jobs.rows.size() == 1);
  REQUIRE(jobs.faults.size() == 8);
  for (std::size_t i = 0; i < 8; ++i) CHECK(jobs.faults[i].where.find("old.csv, line " + std::to_string(i + 3)) != std::string::npos);
  CHECK(jobs.faults[4].where.find("tension") != std::string::npos);
  CHECK(jobs.faults[5].what.find("gauge") != std::string::npos);
}

TEST_CASE("a tension for both directions that can't be read is one mistake") {
  CHECK(must(read_past_jobs("name,tension\nIlse Wendelmoor,tight\n")).faults.size() == 1);
  CHECK(must(read_past_jobs("name,tension\nIlse Wendelmoor,tight / loose\n")).faults.size() == 2);
}

TEST_CASE("what is brought in is the players' history, once however often the file comes") {
  Desk desk;
  const auto jobs = must(read_past_jobs(kTable));
  const PastPlan plan = plan_past_jobs(*desk.ledger, jobs);
  REQUIRE(plan.players.size() == 2);
  CHECK(plan.in_band(MatchBand::new_person) == 2);
  CHECK(plan.fresh() == 3);
  CHECK(bring(desk, jobs).size() == 2);
  REQUIRE(count_players(*desk.ledger) == 2);
  const BookId ilse = find_players(*desk.ledger, "wendel").at(0).book;
  const auto record = desk.load(ilse);
  REQUIRE(record.jobs.size() == 2);
  CHECK(record.rackets.size() == 1);
  CHECK(record.stage_of(record.jobs[0].id()).stage == Stage::collected);
  const auto last = same_as_last_time(record, {});
  REQUIRE(last);
  CHECK(last->proposal.mains_tension == Quantity{{255, 1}, Unit::kilogram_force});
  CHECK(last->event_name == "Harbour Open");
  // Again: known by what it says, also she of whom neither country nor year is known.
  const PastPlan again = plan_past_jobs(*desk.ledger, jobs);
  CHECK(again.fresh() == 0);
  CHECK(again.in_band(MatchBand::known) == 2);
  CHECK(bring(desk, jobs).empty());
  CHECK(count_players(*desk.ledger) == 2);
  // One row more.
  const auto more = must(read_past_jobs(std::string(kTable) + "Wendelmoor;Ilse;NED;02.06.2030;Lakeside;Tarnbrook Silk;24;;\n"));
  CHECK(plan_past_jobs(*desk.ledger, more).fresh() == 1);
  CHECK(bring(desk, more).size() == 1);
  CHECK(desk.load(ilse).jobs.size() == 3);
}

TEST_CASE("who is likely known is asked about, and left out until somebody says") {
  Desk desk;
  const BookId held = desk.first_drop_off(1);
  const auto jobs = must(read_past_jobs("name,tension,string\nIlse Wendelmoor,25 kg,Silk\n"));
  const PastPlan plan = plan_past_jobs(*desk.ledger, jobs);
  REQUIRE(plan.players.size() == 1);
  CHECK(plan.players[0].band == MatchBand::likely);
  CHECK(plan.players[0].book == held);
  CHECK(plan.players[0].looks_like == "Wendelmoor Ilse");
  CHECK(past_job_drafts(*desk.ledger, jobs, plan, LikelyPlayers::leave_out, "Mara", desk.clock.now()).empty());
  CHECK(past_job_drafts(*desk.ledger, jobs, plan, LikelyPlayers::take_as_new, "Mara", desk.clock.now()).at(0).book() != held);
  CHECK(bring(desk, jobs, LikelyPlayers::take_as_known).size() == 1);
  CHECK(desk.load(held).jobs.size() == 2);
  CHECK(plan_past_jobs(*desk.ledger, jobs).players[0].band == MatchBand::known);
}

TEST_CASE("an import is taken back as one, but for players on whom work has gone on") {
  Desk desk;
  const auto append = [&](const Draft& draft) { return Outcome<Committed>(desk.append(draft)); };
  CHECK(take_back_import(*desk.ledger, append).error().code == FaultCode::not_found);
  const auto jobs = must(read_past_jobs(kTable));
  (void)bring(desk, jobs);
  const BookId ada = find_players(*desk.ledger, "okonjo").at(0).book;
  const auto setup = desk.load(ada).jobs.at(0);
  desk.change<Job>(ada, setup.id(), [](Job& now) { now.mains_tension = Quantity{{24, 0}, Unit::kilogram_force}; });
  const TakenBack taken = must(take_back_import(*desk.ledger, append));
  CHECK(taken.undone == 1);
  REQUIRE(taken.kept.size() == 1);
  CHECK(taken.kept[0].where.find("Okonjo Ada") != std::string::npos);
  CHECK(find_players(*desk.ledger, "wendel").empty());
  CHECK(find_players(*desk.ledger, "okonjo").size() == 1);
  CHECK(past_imports(*desk.ledger).empty());
  CHECK(take_back_import(*desk.ledger, append).error().code == FaultCode::not_found);
  // And brought in again after all.
  CHECK(bring(desk, jobs).size() == 1);
  CHECK(find_players(*desk.ledger, "wendel").size() == 1);
}

TEST_CASE("an import before the newest one is taken back by its place") {
  Desk desk;
  const auto append = [&](const Draft& draft) { return Outcome<Committed>(desk.append(draft)); };
  (void)bring(desk, must(read_past_jobs("name,tension\nIlse Wendelmoor,25 kg\n")));
  desk.clock.advance(1000);
  (void)bring(desk, must(read_past_jobs("name,tension\nAda Okonjo,24 kg\n")));
  REQUIRE(past_imports(*desk.ledger).size() == 2);
  CHECK(take_back_import(*desk.ledger, append, 2).error().code == FaultCode::not_found);
  CHECK(must(take_back_import(*desk.ledger, append, 1)).undone == 1);
  CHECK(find_players(*desk.ledger, "wendel").empty());
  CHECK(find_players(*desk.ledger, "okonjo").size() == 1);
  CHECK(past_imports(*desk.ledger).size() == 1);
}

TEST_CASE("a long history of one player goes into as many actions as it takes") {
  Desk desk;
  std::string table = "name,country,date,string,tension\n";
  for (int i = 0; i < 250; ++i) table += "Ilse Wendelmoor,NED,2030-0" + std::to_string(1 + i % 9) + "-1" + std::to_string(i % 10) + ",Silk," + std::to_string(20 + i % 9) + " kg\n";
  const auto jobs = must(read_past_jobs(table));
  CHECK(bring(desk, jobs).size() == 5);
  CHECK(desk.load(find_players(*desk.ledger, "wendel").at(0).book).jobs.size() == 250);
  CHECK(plan_past_jobs(*desk.ledger, jobs).fresh() == 0);
  const TakenBack taken = must(take_back_import(*desk.ledger, [&](const Draft& draft) { return Outcome<Committed>(desk.append(draft)); }));
  CHECK(taken.undone == 5);
  CHECK(taken.kept.empty());
  CHECK(find_players(*desk.ledger, "wendel").empty());
}

TEST_CASE("a day after the last that can be is no day of a past job, wherever on the earth it was") {
  PastJobsOptions options;
  options.last_day = "2031-05-26";
  const auto jobs = must(read_past_jobs("name,date,tension\nIlse Wendelmoor,26.05.2031,25 kg\nAda Okonjo,2031-05-27,24 kg\nTess Farrow,,24 kg\n", options, "old.csv"));
  CHECK(jobs.rows.size() == 2);
  REQUIRE(jobs.faults.size() == 1);
  CHECK(jobs.faults[0].to_come);
  CHECK(jobs.faults[0].line == 3);
  CHECK(jobs.faults[0].ours == "date");
  CHECK(jobs.faults[0].where == "old.csv, line 3, column 2 (date)");
  // 2031-05-26T09:59:59Z is still that day in Kiritimati (UTC+14); a second later it is the next.
  CHECK(last_past_day(1'937'555'999'000) == "2031-05-26");
  CHECK(last_past_day(1'937'556'000'000) == "2031-05-27");
}
