// Wrong use, wrong input, and what is on disk.

#include <SQLiteCpp/SQLiteCpp.h>

#include "core/model/fields.h"
#include "core/store/ledger.h"
#include "tests/cli/device.h"

using namespace weavelog;
using namespace weavelog::testing;

namespace {

/// One line, with the program's name in front.
void check_complaint(const Finished& finished, int ending) {
  INFO(finished.out << finished.err);
  CHECK(finished.status == ending);
  CHECK(finished.err.starts_with("weavelog-cli: "));
  REQUIRE_FALSE(finished.err.empty());
  CHECK(finished.err.find('\n') == finished.err.size() - 1);
}

void run_sql(const std::string& file, const char* sql) {
  SQLite::Database db(file, SQLite::OPEN_READWRITE);
  db.exec(sql);
}

}  // namespace

TEST_CASE("wrong arguments end with 2 and one line that says where to look") {
  const CliDevice device("desk");
  check_complaint(device.run({}), 2);
  check_complaint(device.run({"dance"}), 2);
  check_complaint(device.run({"find", "--no-such-option"}), 2);
  check_complaint(device.run({"stage", "100"}), 2);
  check_complaint(device.run({"--language", "xx", "find"}), 2);
  check_complaint(run_program({WEAVELOG_CLI_PROGRAM, "find"}), 2);
  const auto fault = device.ask({"dance"}, 2);
  CHECK(text_at(fault, "/error/code") == "bad_input");
  CHECK_FALSE(std::filesystem::exists(device.data()));
}

TEST_CASE("every command explains itself, and says what it prints with --json") {
  const CliDevice device("desk");
  for (const char* command :
       {"pair",  "hosts", "exchange", "invite",    "events",  "new-event", "arrival",  "tick",
        "find",  "show",  "history",  "setup",     "consent", "undo",      "drop-off", "same",
        "stage", "board", "next",     "questions", "answer",  "verify",    "rebuild",  "quarantine"}) {
    const auto help = device.run({command, "--help"});
    INFO(command);
    CHECK(help.status == 0);
    CHECK(help.out.find("--json") != std::string::npos);
  }
  const auto help = device.run({"--help"});
  CHECK(help.out.find("Exit codes: 0 done") != std::string::npos);
}

TEST_CASE("what is not there ends with 4, what is wrong with 1, each with what, where and what to do") {
  const CliDevice device("desk");
  CHECK(text_at(device.ask({"show", "Nobody"}, 4), "/error/where") == "player \"Nobody\"");
  CHECK_FALSE(text_at(device.ask({"board"}, 4), "/error/what_to_do").empty());
  (void)device.ask({"find", "Nobody"}, 4);
  (void)device.ask({"exchange"}, 4);
  (void)device.ask({"pair", "lusab-babad"}, 1);
  (void)device.ask({"pair", "lusab-babad-gutih-tugad-gutuk"}, 1);
  CHECK(text_at(device.ask({"new-event", "Harbour", "--currency", "euro"}, 1), "/error/where") == "currency");
  check_complaint(device.run({"import", "entries", (device.home / "none.csv").string()}), 4);
}

TEST_CASE("a broken entry list names line and column, and comes in only when asked to") {
  const CliDevice device("head");
  (void)device.ask({"new-event", "Harbour Open", "--time-zone", "Europe/Lisbon"});
  const auto list = device.file(
      "entries.csv",
      "family_name,given_name,native_name,country,seed\nŁukowska,Ania,,POL,1\nLindgrove,Ida,,Sweden,2\n"
      "Wang,Xiaoming,王小明,CHN,first\nOkonjo,Ada,,NGR,\n");
  const auto refused = device.ask({"import", "entries", list}, 1);
  CHECK(text_at(refused, "/imported") == "false");
  CHECK(text_at(refused, "/good_rows") == "2");
  REQUIRE(size_at(refused, "/faults") == 2);
  CHECK(text_at(refused, "/faults/0/where").find("line 3, column 4 (country)") != std::string::npos);
  CHECK(text_at(refused, "/faults/1/where").find("line 4, column 5 (seed)") != std::string::npos);
  CHECK(size_at(device.ask({"export", "event"}), "/entries") == 0);

  const auto taken = device.ask({"import", "entries", list, "--good-rows"});
  CHECK(text_at(taken, "/added") == "2");
  CHECK(text_at(device.ask({"import", "entries", list, "--good-rows"}), "/unchanged") == "2");
  CHECK(size_at(device.ask({"export", "event"}), "/entries") == 2);

  const auto latin = device.file("latin.csv", "family_name,given_name\nM\xFCllerin,Ida\n");
  CHECK(text_at(device.ask({"import", "entries", latin}, 1), "/error/where").find("line 2") !=
        std::string::npos);
  CHECK(text_at(device.ask({"import", "entries", latin, "--encoding", "latin-1"}), "/added") == "1");

  const auto prices =
      device.file("prices.csv", "service,amount,currency\nRestring,25.50,EUR\nRush,ten,EUR\n");
  CHECK(text_at(device.ask({"import", "prices", prices}, 1), "/faults/0/where")
            .find("line 3, column 2 (amount)") != std::string::npos);
  CHECK(text_at(device.ask({"import", "prices", prices, "--good-rows"}), "/added") == "1");
  CHECK(text_at(device.ask({"export", "event"}), "/prices/0/amount_minor") == "2550");
}

TEST_CASE("a second program on one database is turned away while the first works") {
  const CliDevice device("desk");
  (void)device.ask({"new-event", "Harbour Open"});
  LedgerOptions options;
  options.file = device.data() + "/ledger.db";
  options.registry = &model_registry();
  const auto holder = Ledger::open(options);
  REQUIRE(holder);
  const auto finished = device.run({"--json", "verify"});
  CHECK(finished.status == 1);
  CHECK(text_at(json::parse(finished.out), "/error/code") == "locked");
}

TEST_CASE("a database of a newer version is left alone") {
  const CliDevice device("desk");
  (void)device.ask({"new-event", "Harbour Open"});
  run_sql(device.data() + "/ledger.db", "PRAGMA user_version=9999");
  CHECK(text_at(device.ask({"events"}, 1), "/error/code") == "newer");
}

TEST_CASE("a damaged database is named, and nothing in it is touched") {
  const CliDevice device("desk");
  (void)device.ask({"new-event", "Harbour Open"});
  const std::string file = device.data() + "/ledger.db";
  for (const char* rest : {"-wal", "-shm"}) std::filesystem::remove(file + rest);
  std::ofstream(file, std::ios::binary | std::ios::trunc) << std::string(8192, 'x');
  const auto fault = device.ask({"events"}, 1);
  CHECK(text_at(fault, "/error/code") == "damaged");
  CHECK(text_at(fault, "/error/where").find("ledger.db") != std::string::npos);
  CHECK(std::filesystem::file_size(file) == 8192);
}
