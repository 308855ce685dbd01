// Two tablets and the real event server on loopback.

#include <SQLiteCpp/SQLiteCpp.h>

#include "tests/cli/event_server.h"

using namespace weavelog::testing;

TEST_CASE("two tablets and a server come to agree, with a question between them closed by the desk") {
  EventServer server("Harbour Open", {"head", "stringer"});
  const CliDevice desk("Desk 1"), bench("Bench 2");
  const auto paired = desk.ask({"pair", server.codes[0]});
  CHECK(text_at(paired, "/role") == "head");
  CHECK(text_at(paired, "/agreed") == "true");
  CHECK(text_at(bench.ask({"pair", server.words[1], "--at", server.address}), "/role") == "stringer");
  CHECK(text_at(bench.ask({"pair", server.codes[0]}, 1), "/error/code") != "");  // used up
  CHECK(text_at(desk.ask({"hosts"}), "/0/in_use") == "true");
  CHECK(text_at(desk.ask({"events"}), "/0/name") == "Harbour Open");

  const auto stored = desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  const auto sent = desk.ask({"exchange"});
  CHECK(text_at(sent, "/sent") != "0");
  const auto received = bench.ask({"exchange"});
  CHECK(text_at(received, "/words") == text_at(desk.ask({"exchange"}), "/words"));
  CHECK(text_at(bench.ask({"show", "Wendelmoor"}), "/last_tensions") == "25 / 24 kg");

  // Apart: both change the same tension; the bench also works on.
  (void)bench.ask({"setup", "Wendelmoor", "--name", "day", "--mains", "24kg"});
  (void)bench.ask({"stage", "1", "cut_out"});
  (void)desk.ask({"setup", "Wendelmoor", "--name", "day", "--mains", "26kg"});
  (void)desk.ask({"exchange"});
  (void)bench.ask({"exchange"});
  (void)desk.ask({"exchange"});
  CHECK(text_at(desk.ask({"board"}), "/stages/1/stage") == "cut_out");

  const auto open = desk.ask({"questions"}, 3);
  REQUIRE(size_at(open, "") == 1);
  CHECK(text_at(open, "/0/field") == "mains_tension");
  REQUIRE(size_at(open, "/0/answers") == 2);
  CHECK(text_at(open, "/0/answers/0/device") == "Desk 1");
  CHECK(text_at(open, "/0/answers/1/device") == "Bench 2");
  CHECK(text_at(open, "/0/answers/1/value") == "24\xC2\xA0kg");
  CHECK(text_at(open, "/0/answers/1/event") == "Harbour Open");
  // A slip of the finger is caught as where a setup is changed.
  CHECK(text_at(desk.ask({"answer", "Wendelmoor", "1", "240kg"}, 1), "/error/code") == "bad_input");
  CHECK(size_at(desk.ask({"questions"}, 3), "") == 1);
  CHECK(text_at(desk.ask({"answer", "Wendelmoor", "1", "24.5kg"}), "/open_questions") == "0");
  const auto last = desk.ask({"exchange"});
  const auto agreed = bench.ask({"exchange"});
  CHECK(text_at(agreed, "/words") == text_at(last, "/words"));
  CHECK(size_at(bench.ask({"questions"}), "") == 0);
  CHECK(text_at(bench.ask({"verify"}), "/well") == "true");
}

TEST_CASE("at the next event the known player is found, ticked, and served as last time") {
  const CliDevice tablet("Bench 2");
  {
    EventServer harbour("Harbour Open", {"stringer"});
    (void)tablet.ask({"pair", harbour.codes[0]});
    (void)tablet.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
    (void)tablet.ask({"drop-off", "--person", "family_name=Okonjo", "--rackets", "1", "--both", "22kg",
                      "--set", "mains_string=Fenwick Thread", "--set", "crosses_string=Fenwick Thread",
                      "--confirm"});
    for (const char* tag : {"1", "2", "3", "4"})
      (void)tablet.ask({"stage", tag, "collected", "--reason", "end of the event"});
    (void)tablet.ask({"exchange"});
  }
  EventServer lakeside("Lakeside Cup", {"head", "desk"});
  const CliDevice other("Desk 9");
  (void)tablet.ask({"pair", lakeside.codes[0]});
  (void)other.ask({"pair", lakeside.codes[1]});
  const auto list = tablet.file(
      "entries.csv",
      "family_name,given_name,country,birth_year\nWENDELMOOR,ILSE,NED,2002\nLindgrove,Ida,SWE,1999\n");
  CHECK(text_at(tablet.ask({"import", "entries", list}), "/added") == "2");
  const auto arrived = tablet.ask({"arrival"});
  CHECK(text_at(arrived, "/known") == "1");
  CHECK(text_at(arrived, "/entries/1/candidates/0/last/tensions") == "25 / 24 kg");
  CHECK(text_at(arrived, "/entries/1/candidates/0/last/days_ago") == "0");
  (void)tablet.ask({"exchange"});
  (void)other.ask({"exchange"});
  (void)other.ask({"find", "Wendelmoor"}, 4);  // nobody crosses before being ticked

  CHECK(text_at(tablet.ask({"tick", "--known"}), "/linked") == "1");
  (void)tablet.ask({"exchange"});
  (void)other.ask({"exchange"});
  CHECK(size_at(other.ask({"find"}), "") == 1);  // and only those ticked
  CHECK(text_at(other.ask({"arrival"}), "/entries/1/linked") == "true");

  const auto stored = other.ask({"same", "Wendelmoor", "--rackets", "3", "--mains", "-1kg", "--confirm"});
  CHECK(size_at(stored, "/jobs") == 3);
  CHECK(text_at(stored, "/jobs/0/event_name") == "Lakeside Cup");
  CHECK(text_at(stored, "/read_back").find("25\xC2\xA0kg → 24\xC2\xA0kg") != std::string::npos);

  const auto invited = tablet.ask({"invite", "reader"});
  const CliDevice reader("Screen");
  CHECK(text_at(reader.ask({"pair", text_at(invited, "/code")}), "/role") == "reader");
  CHECK(text_at(other.ask({"invite", "desk"}, 1), "/error/code") == "refused");
}

TEST_CASE("a player who has withdrawn stays here") {
  EventServer server("Harbour Open", {"head"});
  const CliDevice desk("Desk 1");
  (void)desk.ask({"new-event", "Practice week"});
  (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  (void)desk.ask({"consent", "Wendelmoor", "withdrawn", "--confirm"});
  (void)desk.ask({"pair", server.codes[0]});
  CHECK(text_at(desk.ask({"tick", "Wendelmoor"}, 1), "/error/code") == "refused");
}

TEST_CASE("a tablet that stays connected says what comes, tells when the server is gone, and ends cleanly at SIGTERM") {
  EventServer server("Harbour Open", {"head", "stringer"});
  const CliDevice desk("Desk 1"), bench("Bench 2");
  (void)desk.ask({"pair", server.codes[0]});
  (void)bench.ask({"pair", server.codes[1]});

  Running staying({WEAVELOG_CLI_PROGRAM, "--data", bench.data(), "--json", "exchange", "--stay"});
  /// The first line told for which `wanted` holds.
  const auto told = [&](const auto& wanted) -> json::value {
    while (const auto line = staying.line()) {
      json::value said = json::parse(*line);
      if (wanted(said)) return said;
    }
    FAIL("the tablet ended, or said nothing of it in time");
    return {};
  };
  (void)told([](const json::value& said) { return text_at(said, "/agreed") == "true"; });
  CHECK(text_at(bench.ask({"find"}, 1), "/error/code") == "locked");  // the one that stays has the ledger

  (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  (void)desk.ask({"exchange"});
  const auto came = told([](const json::value& said) { return text_at(said, "/received") != "0"; });
  CHECK(text_at(came, "/connected") == "true");

  server.program.kill();
  const auto gone = told([](const json::value& said) { return text_at(said, "/connected") == "false"; });
  CHECK(text_at(gone, "/fault/code") != "");
  CHECK(staying.stop() == 0);
  CHECK(text_at(bench.ask({"show", "Wendelmoor"}), "/last_tensions") == "25 / 24 kg");
  CHECK(text_at(bench.ask({"verify"}), "/well") == "true");
}

TEST_CASE("a book that the server does not take from a device in its role is told in plain words") {
  EventServer server("Harbour Open", {"stringer"});
  const CliDevice bench("Bench 2");
  (void)bench.ask({"pair", server.codes[0]});
  const std::string other = text_at(bench.ask({"new-event", "Lakeside Days"}), "/book");
  (void)bench.ask({"events", "--use", "Harbour Open"});
  // This program does not choose the book of another event for a server; one that did is heard all the same.
  SQLite::Database(bench.data() + "/ledger.db", SQLite::OPEN_READWRITE)
      .exec("INSERT INTO exchange_scope(peer, book) SELECT n, x'" + other + "' FROM exchange_peer");
  const auto told = bench.ask({"exchange"}, 1);
  CHECK(text_at(told, "/error/code") == "refused");
  CHECK(text_at(told, "/error/what").find("one book of this device was not taken there: another event's") != std::string::npos);
  CHECK(text_at(told, "/error/what_to_do").find("head of the room") != std::string::npos);
}
