// Forgetting, revoking, backing up, from the command line with the real programs.

#include <SQLiteCpp/SQLiteCpp.h>

#include "tests/cli/event_server.h"

using namespace weavelog::testing;

namespace {

/// Everything in a device's folder, as bytes.
std::string bytes_below(const std::string& folder) {
  std::string all;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(folder)) {
    if (!entry.is_regular_file()) continue;
    std::ifstream in(entry.path(), std::ios::binary);
    all.append(std::istreambuf_iterator<char>(in), {});
  }
  return all;
}

}  // namespace

TEST_CASE(
    "a player who withdraws is erased on the tablet, the server and the other tablet, and does not come "
    "back") {
  EventServer server("Harbour Open", {"head", "stringer"});
  const CliDevice desk("Desk 1"), bench("Bench 2");
  (void)desk.ask({"pair", server.codes[0]});
  (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  (void)desk.ask({"exchange"});
  (void)bench.ask({"pair", server.codes[1]});
  REQUIRE(size_at(bench.ask({"find", "wendel"}), "") == 1);
  REQUIRE(bytes_below(bench.data()).find("Wendelmoor") != std::string::npos);

  CHECK(text_at(desk.ask({"forget", "Wendelmoor"}, 3), "/forgotten") == "false");
  REQUIRE(size_at(desk.ask({"find", "wendel"}), "") == 1);
  const auto done = desk.ask({"forget", "Wendelmoor", "--confirm"});
  CHECK(text_at(done, "/forgotten") == "true");
  CHECK(text_at(done, "/gone_from_file") == "true");
  CHECK(size_at(desk.ask({"find", "wendel"}, 4), "") == 0);
  CHECK(text_at(desk.ask({"forgotten"}), "/0/by") == "Desk 1");
  (void)desk.ask({"exchange"});
  const auto learnt = bench.ask({"exchange"});
  CHECK(text_at(learnt, "/forgotten") == "1");
  CHECK(text_at(learnt, "/agreed") == "true");
  CHECK(size_at(bench.ask({"find", "wendel"}, 4), "") == 0);
  CHECK(text_at(bench.ask({"verify"}), "/stubs") == "1");
  for (const std::string& folder : {desk.data(), bench.data(), server.folder.path().string()})
    for (const char* secret : {"Wendelmoor", "wendelmoor", "Ilse", "knots to the outside"}) {
      INFO(folder << ": " << secret);
      CHECK(bytes_below(folder).find(secret) == std::string::npos);
    }
}

TEST_CASE("codes that are open are shown with who asked for them, and withdrawn") {
  EventServer server("Harbour Open", {"head", "stringer"});
  const CliDevice head("Desk 1");
  (void)head.ask({"pair", server.codes[0]});
  (void)head.ask({"invite", "desk"});
  server.program.stop();
  const auto codes = [&](const std::vector<std::string>& more, int status = 0) {
    std::vector<std::string> command{WEAVELOG_CLI_PROGRAM, "--data", server.folder.path().string() + "/data", "--json", "codes"};
    command.insert(command.end(), more.begin(), more.end());
    const auto out = run_program(command);
    INFO(out.out << out.err);
    REQUIRE(out.status == status);
    return json::parse(out.out);
  };
  auto open = codes({});
  REQUIRE(open.as_array().size() == 2);
  CHECK(open.at(0).at("role") == "stringer");
  CHECK(open.at(0).at("asked_by").is_null());
  CHECK(open.at(1).at("role") == "desk");
  CHECK(open.at(1).at("asked_by").is_string());
  (void)codes({"--withdraw", "zzzz"}, 4);
  {
    // Numbers are random; these two begin alike.
    SQLite::Database behind(server.folder.path().string() + "/data/ledger.db", SQLite::OPEN_READWRITE);
    behind.exec("UPDATE trust_invitation SET number = CASE asked_by IS NULL WHEN 1 THEN x'abcd0102030405a6' ELSE x'abcd0102030405b7' END WHERE used_by IS NULL");
  }
  const auto both = codes({"--withdraw", "abcd"}, 1);
  CHECK(text_at(both, "/error/code") == "bad_input");
  CHECK(text_at(both, "/error/what").starts_with("2 are meant: "));
  for (const char* number : {"abcd0102030405a6 (stringer)", "abcd0102030405b7 (desk)"}) CHECK(text_at(both, "/error/what").find(number) != std::string::npos);
  open = codes({});
  CHECK(open.as_array().size() == 2);
  CHECK(codes({"--withdraw", text_at(open, "/1/number")}).as_array().size() == 1);
  CHECK(codes({"--withdraw", "all"}).as_array().empty());
}

TEST_CASE("the head sees who is enrolled and shuts a lost tablet out") {
  EventServer server("Harbour Open", {"head", "stringer"});
  const CliDevice head("Desk 1"), lost("Lost one");
  (void)head.ask({"pair", server.codes[0]});
  (void)lost.ask({"pair", server.codes[1]});
  const auto devices = head.ask({"devices"});
  CHECK(size_at(devices, "") >= 2);
  CHECK(lost.ask({"revoke", "Desk 1"}, 1).at("error").at("code") == "refused");
  CHECK(head.ask({"revoke", "nobody"}, 4).at("error").at("code") == "not_found");
  const auto now = head.ask({"revoke", "lost one"});
  bool revoked = false;
  for (const auto& device : now.as_array())
    if (device.at("name") == "Lost one") revoked = device.at("revoked").is_string();
  CHECK(revoked);
  const auto refused = lost.ask({"exchange"}, 1);
  CHECK(refused.at("error").at("code") == "refused");
  CHECK(text_at(refused, "/error/what").find("revoked") != std::string::npos);
}

TEST_CASE("a backup is taken beside the running server, and restored only where that is said") {
  EventServer server("Harbour Open", {"head"});
  const CliDevice desk("Desk 1"), other("Desk 2");
  (void)desk.ask({"pair", server.codes[0]});
  (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  (void)desk.ask({"exchange"});
  const std::string file = (desk.home / "backup.db").string();
  // The server has its database open and locked.
  const auto of_server = run_program(
      {WEAVELOG_CLI_PROGRAM, "--data", server.folder.path().string() + "/data", "--json", "backup", file});
  INFO(of_server.out << of_server.err);
  REQUIRE(of_server.status == 0);
  CHECK(desk.ask({"backup", file}, 1).at("error").at("code") == "conflict");
  const auto restored = other.ask({"restore", file});
  CHECK(text_at(restored, "/players") == "1");
  CHECK(text_at(restored, "/well") == "true");
  CHECK(size_at(other.ask({"find", "wendel"}), "") == 1);
  CHECK(other.ask({"restore", file}, 1).at("error").at("code") == "conflict");
  const auto again = other.ask({"restore", file, "--overwrite"});
  CHECK(std::filesystem::exists(text_at(again, "/replaced")));
  CHECK(other.ask({"restore", "no such file"}, 4).at("error").at("code") == "not_found");
}

TEST_CASE("verify ends with 1 and names what is wrong where the database was changed by hand") {
  const CliDevice desk("Desk 1");
  (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  CHECK(text_at(desk.ask({"verify"}), "/well") == "true");
  {
    std::fstream raw(desk.data() + "/ledger.db", std::ios::in | std::ios::out | std::ios::binary);
    std::string bytes(std::istreambuf_iterator<char>(raw), {});
    bool changed = false;
    for (std::size_t at = bytes.find("Tarnbrook"); at != std::string::npos;
         at = bytes.find("Tarnbrook", at + 1)) {
      raw.clear();
      raw.seekp(static_cast<std::streamoff>(at));
      raw << "Tarnbrock";
      changed = true;
    }
    REQUIRE(changed);
  }
  const auto report = desk.ask({"verify"}, 1);
  CHECK(text_at(report, "/well") == "false");
  CHECK(size_at(report, "/faults") > 0);
}
