// `plan` out of files alone: no folder, no database.

#include "tests/cli/no_folder.h"

using namespace weavelog::testing;

namespace {

using Desk = NoFolder;

std::string read_file(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

const char* kDraw =
    "line,player,seed,rating\n1,Iria Lourençote,1,1900\n2,bye,,\n3,Nerea Ibañarte,,1500\n4,Tove Sandmoor,,1500\n"
    "5,Mireille Aubrac-Lenz,3,1700\n6,,,\n7,Kaja Brentvold,,1500\n8,Ysolde Tarn,2,1800\n";

}  // namespace

TEST_CASE("odds of a draw in a file, without any database") {
  const Desk desk;
  const auto draw = desk.file("draw.csv", kDraw);
  const auto all = desk.ask({"plan", "odds", "--draw", draw});
  CHECK(text_at(all, "/by") == "rating");
  CHECK(text_at(all, "/rounds/0") == "quarter-final");
  REQUIRE(size_at(all, "/players") == 7);  // the bye is nobody
  CHECK(all.at("players").at(0).at("reaches").at(1).to_number<double>() == 1);
  double wins = 0;
  for (const auto& player : all.at("players").as_array()) wins += player.at("wins").to_number<double>();
  CHECK(wins == Approx(1));

  const auto one = desk.ask({"plan", "odds", "--draw", draw, "--player", "lourencote", "--by", "even"});
  CHECK(text_at(one, "/player/meets/0/round_name") == "semi-final");
  CHECK(one.at("player").at("meets").at(0).at("odds").to_number<double>() == Approx(0.5));
  CHECK(one.at("player").at("wins").to_number<double>() == Approx(0.25));

  const auto results = desk.file("results.csv", "round,winner\n1,Tove Sandmoor\n2,Tove Sandmoor\n");
  const auto after = desk.ask({"plan", "odds", "--draw", draw, "--results", results, "--by", "seed", "--player", "1"});
  CHECK(after.at("player").at("wins").to_number<double>() == 0);
  CHECK(after.at("player").at("matches_left").to_number<double>() == 0);
  CHECK(desk.run({"plan", "odds", "--draw", draw}).out.find("(not known yet)") != std::string::npos);
  CHECK_FALSE(std::filesystem::exists(desk.home / "ledger.db"));
}

TEST_CASE("what is wrong with a draw or its results is named and located") {
  const Desk desk;
  const auto draw = desk.file("draw.csv", kDraw);
  const auto fault = [&](const std::vector<std::string>& words, int ending = 1) {
    return text_at(desk.ask(words, ending), "/error/where") + ": " + text_at(desk.ask(words, ending), "/error/what");
  };
  CHECK(fault({"plan", "odds", "--draw", (desk.home / "none.csv").string()}, 4).find("no such file") != std::string::npos);
  CHECK(fault({"plan", "odds", "--draw", desk.home.path().string()}).find("folder") != std::string::npos);
  CHECK(fault({"plan", "odds", "--draw", desk.file("six.csv", "line,player\n1,A\n2,B\n3,C\n4,D\n5,E\n6,F\n")}).find("2, 4, 8") != std::string::npos);
  CHECK(fault({"plan", "odds", "--draw", desk.file("gap.csv", "line,player\n1,A\n2,B\n3,C\n5,D\n")}).find("line 5, column 1 (line)") !=
        std::string::npos);
  CHECK(fault({"plan", "odds", "--draw", desk.file("twice.csv", "line,player\n1,A\n2,B\n3,A\n4,D\n")}).find("twice") != std::string::npos);
  CHECK(fault({"plan", "odds", "--draw", draw, "--results", desk.file("early.csv", "round,winner\n2,1\n")}).find("not decided yet") !=
        std::string::npos);
  CHECK(fault({"plan", "odds", "--draw", draw, "--results", desk.file("lost.csv", "round,winner\n1,3\n2,4\n")}).find("lost in an earlier round") !=
        std::string::npos);
  CHECK(fault({"plan", "odds", "--draw", draw, "--results", desk.file("beyond.csv", "round,winner\n4,1\n")}).find("no round 4") != std::string::npos);
  CHECK(fault({"plan", "odds", "--draw", draw, "--player", "Nobody"}, 4).find("no such player") != std::string::npos);
  CHECK(fault({"plan", "odds", "--draw", draw, "--player", "e"}).find("players of this draw are meant") != std::string::npos);
  CHECK(fault({"plan", "odds", "--draw", desk.file("bare.csv", "line,player\n1,A\n2,B\n"), "--by", "rating"}).find("rating") != std::string::npos);
  CHECK(desk.run({"plan", "odds"}).status == 2);
  CHECK(desk.run({"plan"}).status == 2);
  CHECK(desk.run({"plan", "odds", "--draw", draw, "--by", "luck"}).status == 2);
}

TEST_CASE("every other command still asks for its folder") {
  const auto finished = Desk::run({"events"});
  CHECK(finished.status == 2);
  CHECK(finished.err.find("--data is required") != std::string::npos);
}

namespace {

const char* kPeople = "stringer,machine,most,days\nMaren Oldvik,Table 1,,\nPio Castellane,Table 2,,\nSuna Brekke,Table 3,,\nTeodor Halm,Table 4,,\n";

std::string bench_of(const json::value& plan, const std::string& player) {
  for (const json::value& one : plan.at("players").as_array())
    if (text_at(one, "/player") == player) return text_at(one, "/bench");
  return {};
}

}  // namespace

TEST_CASE("home benches out of files: planned, asked for, kept as far as can be") {
  const Desk desk;
  const auto draw = desk.file("draw.csv", kDraw), people = desk.file("people.csv", kPeople);
  const auto wishes = desk.file("wishes.csv", "player,wish,with\nYsolde Tarn,only,Pio Castellane\nKaja Brentvold,never,Table 4\n");
  const auto kept = (desk.home / "plan.json").string();
  const auto plan = desk.ask({"plan", "benches", "--draw", draw, "--people", people, "--wishes", wishes, "--hard-from", "never", "--out", kept,
                              "--move", "Tove Sandmoor=Suna Brekke / Table 3"});
  CHECK(size_at(plan, "/players") == 6);  // neither the bye nor the place that is not filled yet
  CHECK(size_at(plan, "/benches") == 4);
  CHECK(bench_of(plan, "Ysolde Tarn") == "Pio Castellane / Table 2");
  CHECK(bench_of(plan, "Kaja Brentvold") != "Teodor Halm / Table 4");
  CHECK(text_at(plan, "/rule") == "none");
  CHECK(plan.at("expected_meetings").at("late").to_number<double>() == 0);  // no round counts as late
  CHECK(plan.at("floor").to_number<double>() <= plan.at("cost").at("total").to_number<double>() + 1e-9);
  CHECK(text_at(plan, "/proposed/allowed") == "true");
  CHECK_FALSE(text_at(plan, "/players/0/why").empty());
  CHECK(json::parse(desk.run({"plan", "benches", "--draw", draw, "--people", people, "--wishes", wishes, "--hard-from", "never", "--json"}).out)
            .at("players") == plan.at("players"));

  const auto results = desk.file("results.csv", "round,winner\n1,3\n1,Ysolde Tarn\n");
  const auto after = desk.ask(
      {"plan", "benches", "--draw", draw, "--results", results, "--people", people, "--wishes", wishes, "--hard-from", "never", "--last", kept});
  CHECK(size_at(after, "/players") == 4);
  CHECK(size_at(after, "/moved") == 0);
  const auto pins = desk.file("pins.csv", "player,bench\nIria Lourençote,Teodor Halm / Table 4\n");
  const auto pinned = desk.ask({"plan", "benches", "--draw", draw, "--people", people, "--pins", pins, "--last", kept});
  CHECK(bench_of(pinned, "Iria Lourençote") == "Teodor Halm / Table 4");
  const auto said = desk.run({"--language", "de", "plan", "benches", "--draw", draw, "--people", people, "--pins", pins});
  CHECK(said.out.find("Iria Lourençote ist auf Teodor Halm / Table 4 festgesetzt.") != std::string::npos);
}

TEST_CASE("who plays qualifying has a home bench too, and keeps it in the main draw") {
  const Desk desk;
  std::string lines = kDraw;
  lines.replace(lines.find("seed,rating"), 11, "seed,rating,qualifier");
  std::string with;  // line 6 waits for the first section
  for (std::size_t from = 0, row = 0; from < lines.size(); ++row) {
    const std::size_t to = lines.find('\n', from);
    with += lines.substr(from, to - from) + (row == 0 ? "" : row == 6 ? ",1" : ",") + "\n";
    from = to + 1;
  }
  const auto draw = desk.file("draw.csv", with), people = desk.file("people.csv", kPeople), kept = (desk.home / "plan.json").string();
  const auto qualifying = desk.file("qualifying.csv", "line,player,rating\n1,Quo A,1500\n2,Quo B,1500\n3,Quo C,1500\n4,Quo D,1700\n");
  const std::vector<std::string> words{"plan",     "benches",      "--draw", draw,          "--people", people,  "--qualifying",
                                       qualifying, "--qualifiers", "1",      "--hard-from", "never",    "--out", kept};
  const auto plan = desk.ask(words);
  CHECK(size_at(plan, "/players") == 10);
  CHECK(text_at(plan, "/days") == "5");  // two of qualifying, three of the draw
  CHECK(bench_of(plan, "Quo A") != bench_of(plan, "Quo B"));
  auto later = words;
  const auto results = desk.file("results.csv", "round,winner\n1,Quo B\n1,Quo D\n2,Quo B\n");
  later.insert(later.end(), {"--qualifying-results", results, "--last", kept});
  const auto after = desk.ask(later);
  CHECK(size_at(after, "/players") == 7);
  CHECK(bench_of(after, "Quo B") == bench_of(plan, "Quo B"));
}

TEST_CASE("a plan that can't be made says why, and the last one stays") {
  const Desk desk;
  const auto draw = desk.file("draw.csv", kDraw);
  auto people = desk.file("people.csv", kPeople);
  const auto kept = desk.file("plan.json", R"({"players": [{"player": "Ysolde Tarn", "bench": "Pio Castellane / Table 2"}]})");
  const auto fault = [&](std::vector<std::string> more, int ending = 1) {
    std::vector<std::string> words{"plan", "benches", "--draw", draw, "--people", people, "--out", kept};
    words.insert(words.end(), more.begin(), more.end());
    const auto document = desk.ask(words, ending);
    return text_at(document, "/error/where") + ": " + text_at(document, "/error/what");
  };
  const auto wishes = desk.file("wishes.csv", "player,wish,with\nYsolde Tarn,only,Table 2\nYsolde Tarn,never,Pio Castellane\n");
  const auto contradicts = fault({"--wishes", wishes});
  CHECK(contradicts.find("wishes.csv, line 3: no bench is left for Ysolde Tarn") != std::string::npos);
  CHECK(contradicts.find("only with Table 2 (" + wishes + ", line 2)") != std::string::npos);
  CHECK(fault({"--pins", desk.file("pins.csv", "player,bench\nNobody,Table 1\n")}).find("pins.csv, line 2") != std::string::npos);
  CHECK(fault({"--last", draw}).find("no JSON") != std::string::npos);
  CHECK(fault({"--last", desk.file("other.json", "[1]")}).find("no plan") != std::string::npos);
  CHECK(fault({"--move", "Ysolde Tarn"}).find("names no bench") != std::string::npos);
  CHECK(fault({"--move", "Nobody=Table 1"}, 4).find("no such player") != std::string::npos);
  CHECK(fault({"--hard-from", "breakfast"}).find("no round") != std::string::npos);
  CHECK(fault({"--results", draw, "--results", draw}).find("more results than draws") != std::string::npos);
  people = desk.file("few.csv", "stringer,most\nMaren Oldvik,5\n");
  CHECK(fault({}).find("the shifts can't carry") != std::string::npos);
  CHECK(read_file(kept).find("Pio Castellane") != std::string::npos);
  CHECK(json::parse(read_file(kept)).at("players").as_array().size() == 1);
}

TEST_CASE("a draw is made out of entries, and read again") {
  const Desk desk;
  std::string entries = "player,seed,rating,entry,qualifier\n";
  for (int i = 1; i <= 12; ++i)
    entries += "Player " + std::to_string(i) + "," + (i <= 4 ? std::to_string(i) : "") + "," + std::to_string(2000 - 20 * i) + "," +
               (i == 12 ? "WC" : "") + ",\n";
  entries += ",,,Q,1\n";
  const auto from = desk.file("entries.csv", entries), into = (desk.home / "draw.csv").string();
  const auto made = desk.ask({"plan", "draw", "--entries", from, "--out", into, "--lot", "5"});
  REQUIRE(size_at(made, "/lines") == 16);
  CHECK(text_at(made, "/lines/0/player") == "Player 1");
  CHECK(text_at(made, "/lines/1/player") == "bye");
  CHECK(text_at(made, "/lines/15/player") == "Player 2");
  CHECK(desk.run({"plan", "draw", "--entries", from, "--lot", "5"}).out == read_file(into));

  const auto qualifying = desk.file("qualifying.csv", "line,player,rating\n1,Quo A,1500\n2,Quo B,1500\n3,Quo C,1500\n4,Quo D,1700\n");
  const auto results = desk.file("qualifying_results.csv", "round,winner,end\n1,Quo A,\n1,Quo D,walkover\n2,Quo A,retired\n");
  const auto open = desk.ask({"plan", "odds", "--draw", into, "--qualifying", qualifying, "--qualifiers", "1"});
  const auto fed = desk.ask(
      {"plan", "odds", "--draw", into, "--qualifying", qualifying, "--qualifiers", "1", "--qualifying-results", results, "--player", "Quo A"});
  CHECK(text_at(fed, "/player/player") == "Quo A");
  CHECK(size_at(open, "/players") == 13);
  CHECK(desk.run({"plan", "odds", "--draw", into, "--qualifying", qualifying}).status == 2);
  CHECK(text_at(desk.ask({"plan", "odds", "--draw", into, "--qualifying", qualifying, "--qualifiers", "3"}, 1), "/error/what")
            .find("can't be 3 sections") != std::string::npos);
  CHECK(text_at(desk.ask({"plan", "draw", "--entries", desk.file("few.csv", "player\nA\nB\n")}, 1), "/error/what").find("4 to 256") !=
        std::string::npos);
}

TEST_CASE("groups and orders of play out of files") {
  const Desk desk;
  const auto group = desk.file("group.csv", "player,rating\nAda Kestrel,1600\nBo Lindham,1500\nCleo Marsten,1500\n");
  const auto results = desk.file("results.csv", "winner,loser\nBo Lindham,Ada Kestrel\n");
  const auto told = desk.ask({"plan", "group", "--players", group, "--results", results});
  CHECK(text_at(told, "/standing/0/player") == "Bo Lindham");
  CHECK(text_at(told, "/standing/0/matches_left") == "1");
  CHECK(size_at(told, "/rounds") == 3);
  const auto wrong = desk.ask({"plan", "group", "--players", group, "--results", desk.file("bad.csv", "winner,loser\nNobody,Ada Kestrel\n")}, 1);
  CHECK(text_at(wrong, "/error/where").find("bad.csv, line 2, column 1 (winner)") != std::string::npos);

  const auto draw = desk.file("draw.csv", kDraw);
  const auto order = desk.file("order.csv",
                               "day,court,draw,round,match,at,not_before,follows\n2031-06-02,Centre,Singles,1,2,11:00,,\n2031-06-02,Centre,Singles,1,"
                               "4,,14:00,\n2031-06-02,Court 2,Singles,2,1,,,\n");
  const auto times = desk.ask({"plan", "order", "--order", order, "--draw", "Singles=" + draw, "--time-zone", "Europe/Lisbon"});
  REQUIRE(times.as_array().size() == 3);
  CHECK(text_at(times, "/0/begin") == "2031-06-02T10:00:00Z");
  CHECK(text_at(times, "/0/players/1") == "Tove Sandmoor");
  CHECK(text_at(times, "/1/begin") == "2031-06-02T13:00:00Z");
  CHECK(text_at(times, "/2/begin") == "2031-06-02T12:30:00Z");  // the match before it takes 90 minutes, the player rests 60
  CHECK(text_at(times, "/2/estimated") == "true");
  const auto early = desk.ask(
      {"plan", "order", "--order", desk.file("early.csv", "day,court,round,match,at\n2031-06-02,Centre,2,1,10:00\n2031-06-02,Centre,1,2,11:00\n"),
       "--draw", draw, "--time-zone", "UTC"},
      1);
  CHECK(text_at(early, "/error/what").find("before one that leads to it") != std::string::npos);
  CHECK(text_at(early, "/error/where").find("early.csv, line 2") != std::string::npos);
  CHECK(text_at(desk.ask({"plan", "order", "--order", order, "--draw", draw, "--time-zone", "Europe/Lisbon"}, 1), "/error/what")
            .find("no draw of this name") != std::string::npos);
}

TEST_CASE("a draw is made of an event's entry list as well, of the draw that is meant") {
  const Desk desk;
  std::string rows = "family_name,given_name,native_name,country,birth_year,seed,entry,draw,hand,tour_number\n";
  for (const char* who : {"Kova,Mira,,CZE,2001,1,direct", "Okafor,Ada,,NGR,,2,DA", "Velt,Jana,,GER,,,wild card", "Quill,,,,,,lucky loser"}) rows += std::string(who) + ",Singles,,\n";
  const auto one = desk.file("one.csv", rows);
  const auto made = desk.ask({"plan", "draw", "--entries", one});
  REQUIRE(size_at(made, "/lines") == 4);
  CHECK(text_at(made, "/lines/0/player") == "Kova Mira");
  CHECK(text_at(made, "/lines/0/seed") == "1");
  const auto text = desk.run({"plan", "draw", "--entries", one}).out;
  CHECK(text.find("Velt Jana,,,,WC") != std::string::npos);
  CHECK(text.find("Quill,,,,LL") != std::string::npos);
  for (const char* who : {"Abel,Bo", "Berg,Cy", "Carr,Di", "Dorn,Ed"}) rows += std::string(who) + ",,,,,,Doubles,,\n";
  const auto two = desk.file("two.csv", rows);
  CHECK(text_at(desk.ask({"plan", "draw", "--entries", two}, 1), "/error/what").find("2 draws: Singles, Doubles") != std::string::npos);
  CHECK(size_at(desk.ask({"plan", "draw", "--entries", two, "--draw", "doubles"}), "/lines") == 4);
  CHECK(text_at(desk.ask({"plan", "draw", "--entries", two, "--draw", "Mixed"}, 4), "/error/what_to_do").find("Singles, Doubles") != std::string::npos);
  CHECK(text_at(desk.ask({"plan", "draw", "--entries", desk.file("x.csv", "name\nA\n")}, 1), "/error/what").find("player") != std::string::npos);
  CHECK(text_at(desk.ask({"plan", "draw", "--entries", desk.file("y.csv", "family_name,seed\nA,\n,\nC,\nD,\n")}, 1), "/error/where").find("line 3") != std::string::npos);
}
