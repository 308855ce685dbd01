// A doubtful frame by commands alone: found, asked, answered, let go on by name, put right.

#include "tests/cli/device.h"

using namespace weavelog::testing;

namespace {

struct InspectionDesk : CliDevice {
  InspectionDesk() : CliDevice("Desk 1") {
    (void)ask({"new-event", "Harbour Open", "--time-zone", "Europe/Lisbon"});
    (void)ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  }
};

}  // namespace

TEST_CASE("a cracked frame waits for the player's answer, which goes with it") {
  const InspectionDesk desk;
  const auto found = desk.ask({"inspect", "1", "--found", "crack@2:30=string_anyway: along the edge", "--by", "Mara"});
  CHECK(text_at(found, "/stage") == "waiting");
  CHECK(text_at(found, "/may_go_on") == "false");
  CHECK(text_at(found, "/findings/0/clock_minutes") == "150");
  CHECK(text_at(found, "/findings/0/question").find("2 h 30") != std::string::npos);  // the player reads French
  CHECK(text_at(found, "/findings/0/words").find("half past 2") != std::string::npos);  // the bench does not
  CHECK(text_at(found, "/findings/0/words").find("along the edge") != std::string::npos);
  CHECK(text_at(found, "/caution").find("crack") != std::string::npos);
  CHECK(text_at(desk.ask({"--language", "de", "frame", "1"}), "/caution").find("Riss") != std::string::npos);
  CHECK(text_at(desk.ask({"stage", "1", "cut_out"}, 1), "/error/what").find("not answered") != std::string::npos);
  CHECK(text_at(desk.ask({"stage", "1", "on_machine", "--reason", "late"}, 1), "/error/code") == "refused");

  const auto answered = desk.ask({"frame-answer", "1", "do_not_string", "--said-by", "her coach", "--by", "Mara"});
  CHECK(text_at(answered, "/stage") == "aside");
  CHECK(text_at(answered, "/findings/0/answered_by") == "her coach");
  (void)desk.ask({"frame-override", "1", "--by", "Ruud"}, 2);
  const auto over = desk.ask({"frame-override", "1", "--by", "Ruud", "--reason", "she signed for it"});
  CHECK(text_at(over, "/may_go_on") == "true");
  (void)desk.ask({"stage", "1", "inspected", "--reason", "taken up again"});
  (void)desk.ask({"stage", "1", "cut_out"});
  const auto mended = desk.ask({"frame-mended", "1", "--by", "Mara"});
  CHECK(text_at(mended, "/findings/0/mended_by") == "Mara");
  CHECK(text_at(desk.ask({"verify"}), "/well") == "true");
}

TEST_CASE("a sound frame is inspected; what is typed wrongly is named and stores nothing") {
  const InspectionDesk desk;
  const auto what = [&](const std::string& typed) { return text_at(desk.ask({"inspect", "2", "--found", typed}, 1), "/error/where"); };
  CHECK(what("crack") == "\"crack\"");
  CHECK(what("scratch@2") == "finding");
  CHECK(what("crack@13") == "place");
  CHECK(what("crack@2:75") == "place");
  CHECK(what("crack@2=glue") == "proposal");
  CHECK(what("other@throat") == "note");
  CHECK(size_at(desk.ask({"frame", "2"}), "/findings") == 0);
  const auto sound = desk.ask({"inspect", "2"});
  CHECK(text_at(sound, "/stage") == "inspected");
  (void)desk.ask({"frame-answer", "2", "tube", "--said-by", "she"}, 4);
  (void)desk.ask({"inspect", "99"}, 4);
}
