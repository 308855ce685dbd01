// `plan schedule`, `plan promise`, `plan forecast` out of files alone.

#include "tests/cli/no_folder.h"

using namespace weavelog::testing;

namespace {

struct PlanFiles : NoFolder {
  [[nodiscard]] static std::vector<std::string> planned(std::vector<std::string> words) {
    words.insert(words.begin(), "plan");
    return words;
  }
  [[nodiscard]] static Finished run(std::vector<std::string> words) { return NoFolder::run(planned(std::move(words))); }
  [[nodiscard]] static json::value ask(std::vector<std::string> words, int ending = 0) { return NoFolder::ask(planned(std::move(words)), ending); }
  /// A command for a day at eight o'clock.
  [[nodiscard]] static std::vector<std::string> day(const char* command, const std::string& shifts, const std::string& jobs,
                                                    std::vector<std::string> more = {}) {
    std::vector<std::string> out{command, "--shifts", shifts, "--jobs", jobs, "--day", "2031-05-26", "--at", "08:00", "--zone", "Europe/Lisbon"};
    out.insert(out.end(), more.begin(), more.end());
    return out;
  }
};

const char* kShifts =
    "stringer,machine,from,until,kind\nMaren Oldvik,Table 1,08:00,18:00,\nMaren Oldvik,,12:00,12:45,break\n"
    "Pio Castellane,Table 2,08:00,16:00,\n,Table 2,09:00,09:40,out of order\n";
const char* kJobs =
    "racket,player,arrives,due,match,bench,since\n101,Iria Lourençote,08:00,09:00,,Table 1,07:50\n102,Nerea Ibañarte,08:00,,11:00,,\n"
    "103,Tove Sandmoor,08:30,09:30,,,\n104,Kaja Brentvold,08:00,08:45,,,\n";

const json::value* job_of(const json::value& plan, const std::string& racket) {
  for (const json::value& one : plan.at("jobs").as_array())
    if (text_at(one, "/racket") == racket) return &one;
  return nullptr;
}

}  // namespace

TEST_CASE("a day is planned out of files, and a rush on from the plan that was told") {
  const PlanFiles files;
  const auto shifts = files.file("shifts.csv", kShifts), jobs = files.file("jobs.csv", kJobs);
  const auto kept = (files.home / "plan.json").string();
  const auto plan = PlanFiles::ask(PlanFiles::day("schedule", shifts, jobs, {"--out", kept}));
  REQUIRE(size_at(plan, "/jobs") == 4);
  CHECK(text_at(*job_of(plan, "101"), "/fixed") == "in_work");
  CHECK(text_at(*job_of(plan, "102"), "/due") == "2031-05-26T09:00:00Z");  // eleven in Lisbon less an hour
  CHECK(plan.at("late_minutes").to_number<double>() == 0);
  CHECK(size_at(plan, "/changes") == 0);
  CHECK(size_at(plan, "/unfitting") == 0);

  const auto with_rush = files.file("rush.csv", std::string("on_court,") + [] {
    std::string text = kJobs;
    for (std::size_t at = text.find('\n'); at != std::string::npos && at + 1 < text.size(); at = text.find('\n', at + 1)) text.insert(at + 1, "no,");
    return text + "yes,105,Ysolde Tarn,08:00,08:30,,,\n";
  }());
  const auto after = PlanFiles::ask(PlanFiles::day("schedule", shifts, with_rush, {"--last", kept, "--event"}));
  CHECK(text_at(*job_of(after, "105"), "/fixed") == "on_court");
  CHECK(text_at(*job_of(after, "105"), "/begin") == "2031-05-26T07:00:00Z");
  CHECK(size_at(after, "/changes") >= 1);
  CHECK(PlanFiles::run(PlanFiles::day("schedule", shifts, with_rush, {"--last", kept})).out.find("changed: 104, told") != std::string::npos);

  // The same in JSON, with the home benches of another plan.
  const auto json_jobs = files.file("jobs.json", R"([{"racket": 7, "player": "Ilse", "due": "10:00"}, {"racket": "8", "only": ["Table 2"]}])");
  const auto homes = files.file("homes.json", R"({"players": [{"player": "Ilse", "bench": "Pio Castellane / Table 2"}]})");
  const auto other = PlanFiles::ask(PlanFiles::day("schedule", shifts, json_jobs, {"--benches", homes}));
  CHECK(text_at(*job_of(other, "7"), "/bench") == "Pio Castellane / Table 2");
  CHECK(text_at(*job_of(other, "8"), "/bench") == "Pio Castellane / Table 2");
}

TEST_CASE("shifts that can't carry the load end with 3 and name the rackets; bad input leaves the last plan") {
  const PlanFiles files;
  const auto few = files.file("few.csv", "stringer,from,until\nMaren Oldvik,08:00,09:00\n"),
             jobs = files.file("jobs.csv", "racket,minutes\n1,40\n2,40\n3,30\n");
  const auto kept = (files.home / "plan.json").string();
  const auto plan = PlanFiles::ask(PlanFiles::day("schedule", few, jobs, {"--out", kept}), 3);
  CHECK(size_at(plan, "/unfitting") == 2);
  CHECK(text_at(plan, "/overload/what").find("can't carry the load") != std::string::npos);
  const auto before = json::serialize(json::parse([&] { std::ifstream in(kept); return std::string(std::istreambuf_iterator<char>(in), {}); }()));
  const auto fault = [&](const std::string& shifts, const std::string& rackets, std::vector<std::string> more = {}, int ending = 1) {
    more.insert(more.end(), {"--out", kept});
    const auto document = PlanFiles::ask(PlanFiles::day("schedule", shifts, rackets, more), ending);
    return text_at(document, "/error/where") + ": " + text_at(document, "/error/what");
  };
  CHECK(fault(few, files.file("twice.csv", "racket\n1\n1\n")).find("twice.csv, line 3, column 1 (racket)") != std::string::npos);
  CHECK(fault(files.file("both.csv", "stringer,machine,from,until\nAna,M1,08:00,12:00\nAna,M2,11:00,13:00\n"), jobs)
            .find("stringer Ana is at Ana / M1 and at Ana / M2 at once") != std::string::npos);
  CHECK(fault(few, (files.home / "none.csv").string(), {}, 4).find("no such file") != std::string::npos);
  CHECK(fault(few, jobs, {"--last", jobs}).find("no JSON") != std::string::npos);
  CHECK(text_at(PlanFiles::ask({"schedule", "--shifts", few, "--jobs", jobs, "--zone", "Mars/Olympus"}, 1), "/error/where") == "--zone");
  CHECK(fault(files.file("empty.csv", "stringer,from,until\n"), jobs).find("there is no bench") != std::string::npos);
  std::ifstream in(kept);
  CHECK(json::serialize(json::parse(std::string(std::istreambuf_iterator<char>(in), {}))) == before);
  CHECK(PlanFiles::run({"schedule"}).status == 2);
}

TEST_CASE("a time is promised, and a wish that can't be kept says what would have to move") {
  const PlanFiles files;
  const auto shifts = files.file("shifts.csv", kShifts), jobs = files.file("jobs.csv", kJobs);
  std::string readings = "stringer,minutes\n";
  for (int i = 0; i < 30; ++i) readings += "Maren Oldvik," + std::to_string(26 + i % 5) + "\nPio Castellane," + std::to_string(20 + i % 4) + "\n";
  const auto work = files.file("work.csv", readings);
  const auto free = PlanFiles::ask(PlanFiles::day("promise", shifts, jobs, {"--work", work}));
  CHECK(free.at("chance").to_number<double>() >= 0.945);
  CHECK(text_at(free, "/ready_by") > "2031-05-26T07:30:00Z");
  CHECK(text_at(free, "/ready_by") < "2031-05-26T11:00:00Z");
  std::string ends = "due,ready\n";
  for (int i = 0; i < 60; ++i) ends += i % 3 == 0 ? "07:00,07:10\n" : "07:00,06:50\n";
  const auto wary = PlanFiles::ask(PlanFiles::day("promise", shifts, jobs, {"--work", work, "--settled", files.file("settled.csv", ends)}));
  CHECK(wary.at("confidence").to_number<double>() >= 0.98);  // a third was late
  CHECK(text_at(wary, "/ready_by") >= text_at(free, "/ready_by"));
  const auto easy = PlanFiles::ask(PlanFiles::day("promise", shifts, jobs, {"--work", work, "--wish", "13:30"}));
  CHECK(text_at(easy, "/wish/can_be_kept") == "true");
  const auto hard = PlanFiles::ask(PlanFiles::day("promise", shifts, jobs, {"--work", work, "--wish", "08:50"}), 3);
  CHECK(text_at(hard, "/wish/can_be_kept") == "false");
  CHECK(size_at(hard, "/wish/must_move") >= 1);
  CHECK(text_at(hard, "/ready_by") == text_at(free, "/ready_by"));
  const auto said = PlanFiles::run(PlanFiles::day("promise", shifts, jobs, {"--work", work, "--wish", "08:10"}));
  CHECK(said.status == 3);
  CHECK(said.out.find("not even before all that waits") != std::string::npos);
  CHECK(text_at(PlanFiles::ask(PlanFiles::day("promise", shifts, jobs, {"--wish", "soon"}), 1), "/error/where") == "--wish");
  CHECK(text_at(PlanFiles::ask(PlanFiles::day("promise", shifts, jobs, {"--only", "Table 9"}), 4), "/error/where") == "--only");
  CHECK(text_at(PlanFiles::ask(
                    PlanFiles::day("promise", files.file("short.csv", "stringer,from,until\nAna,08:00,08:10\n"), files.file("none.csv", "racket\n")), 1),
                "/error/what")
            .find("no time can be promised") != std::string::npos);
}

TEST_CASE("rackets, benches and string to come out of files") {
  const PlanFiles files;
  const auto players =
      files.file("players.csv",
                 "player,draw,chances,matches,rackets,string\nIria,singles,1|0.6,3,9,Tarnbrook Silk\nNerea,singles,1|0.4,3,4,Velmora Round\n"
                 "Tove,singles,1|0.5,0,,Velmora Round\nKaja,singles,1|0.5,1,2,\n");
  const auto hours = files.file("hours.csv", "hour,rackets\n8,30\n9,20\n15,10\n");
  const auto said = PlanFiles::ask({"forecast", "--players", players, "--days", "2031-05-27,2031-05-28", "--hours", hours});
  REQUIRE(size_at(said, "/days") == 2);
  CHECK(text_at(said, "/days/0/day") == "2031-05-27");
  const auto number = [&](const char* at) { return said.at_pointer(at).to_number<double>(); };
  CHECK(number("/days/0/rackets/mean") > number("/days/1/rackets/mean"));
  CHECK(number("/rackets/low") <= number("/rackets/middle"));
  CHECK(number("/rackets/middle") <= number("/rackets/high"));
  CHECK(number("/days/0/benches") >= 1);
  CHECK(size_at(said, "/strings") == 2);
  CHECK(PlanFiles::ask({"forecast", "--players", players, "--days", "2031-05-27,2031-05-28", "--hours", hours}) == said);
  const auto fault = [&](const std::vector<std::string>& words) {
    return text_at(PlanFiles::ask(words, 1), "/error/where") + ": " + text_at(PlanFiles::ask(words, 1), "/error/what");
  };
  CHECK(fault({"forecast", "--players", players, "--days", "2031-05-27"}).find("player Iria: there are 2 chances for 1 days") != std::string::npos);
  CHECK(fault({"forecast", "--players", players, "--days", "a,b", "--hours", players}).find("the column hour is missing") != std::string::npos);
  CHECK(PlanFiles::run({"forecast", "--players", players, "--days", "a,b"}).out.find("all days: ") != std::string::npos);
}
