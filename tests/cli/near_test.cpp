// Who is near, with the real programs. Other servers of this machine may answer at the default port: only
// ours, known by its certificate, are looked at.

#include "tests/cli/event_server.h"

using namespace weavelog::testing;

namespace {

/// What `near` says of a server; null if it is not there.
json::value told_of(const json::value& list, const EventServer& server) {
  for (const json::value& one : list.as_array())
    if (text_at(one, "/fingerprint") == server.fingerprint) return one;
  return {};
}

}  // namespace

TEST_CASE("a tablet sees who is near, and whether it knows them") {
  EventServer harbour("Harbour Open", {"stringer"}), lakeside("Lakeside Cup", {});
  const CliDevice tablet("Bench 2");
  const std::vector<std::string> look{"near",       "--seconds", "1",          "--port",
                                      harbour.port, "--port",    lakeside.port};
  const auto strangers = tablet.ask(look);
  const auto seen = told_of(strangers, harbour);
  CHECK(text_at(seen, "/name") == "Event server");
  CHECK(text_at(seen, "/event") == "Harbour Open");
  CHECK(text_at(seen, "/address") == harbour.address);
  CHECK(text_at(seen, "/words").size() == 23);
  CHECK(text_at(seen, "/known") == "false");
  CHECK(text_at(told_of(strangers, lakeside), "/event") == "Lakeside Cup");

  // The address that was seen is what the words need.
  CHECK(text_at(tablet.ask({"pair", harbour.words[0], "--at", text_at(seen, "/address")}), "/role") ==
        "stringer");
  const auto known = tablet.ask(look);
  CHECK(text_at(told_of(known, harbour), "/known") == "true");
  CHECK(text_at(told_of(known, harbour), "/key") == text_at(tablet.ask({"hosts"}), "/0/key"));
  CHECK(text_at(told_of(known, lakeside), "/known") == "false");
  // The port of a server that is known is asked without being said.
  CHECK(told_of(tablet.ask({"near", "--seconds", "1"}), harbour).is_object());
  const auto spoken = tablet.run({"near", "--seconds", "1"});
  CHECK(spoken.out.find("* Event server (Harbour Open)  " + harbour.address) != std::string::npos);

  harbour.program.kill();
  CHECK(told_of(json::parse(tablet.run({"--json", "near", "--seconds", "1"}).out), harbour).is_null());
}

TEST_CASE("an unlisted server is not seen, and can be paired with all the same") {
  EventServer server("Harbour Open", {"stringer"}, {"--unlisted"});
  const CliDevice tablet("Bench 2");
  const auto looked = tablet.run({"--json", "near", "--seconds", "1", "--port", server.port});
  CHECK((looked.status == 0 || looked.status == 4));
  const auto list = json::parse(looked.out);
  CHECK(told_of(list, server).is_null());
  CHECK(looked.status == (list.as_array().empty() ? 4 : 0));
  CHECK(text_at(tablet.ask({"pair", server.codes[0]}), "/agreed") == "true");
}

TEST_CASE("ports and times that are none are wrong use") {
  const CliDevice tablet("Bench 2");
  for (const auto& words : {std::vector<std::string>{"near", "--port", "0"},
                            {"near", "--port", "65536"},
                            {"near", "--seconds", "0"},
                            {"near", "--seconds", "ten"}})
    CHECK(tablet.run(words).status == 2);
}
