// `match` and `name` out of files and words: no folder, no database.

#include "fixtures/people/lists.h"
#include "tests/cli/no_folder.h"

using namespace weavelog::testing;

namespace {

constexpr const char* kEntries =
    "id,family_name,given_name,country,birth_year,hand,tour_number\n"
    "e1,WENDELMOOR,Ilse,NED,2002,right,T4711\n"
    "e2,Щеглова,Юлия,RUS,1999,,\n"
    "e3,Okonjo,Ada,NGR,2001,left,\n";
constexpr const char* kBooks =
    "id,family_name,given_name,also_known_as,country,birth_year,hand,tour_number\n"
    "b1,Brandsma,Ilse,Wendelmoor,NLD,2002,right,T4711\n"
    "b2,Shcheglova,Yuliya,,RUS,1999,right,T1\n"
    "b3,Lindgrove,Tora,,SWE,1990,right,T2\n";

}  // namespace

TEST_CASE("two files are matched with score, band and evidence a pair") {
  const NoFolder bench;
  const auto a = bench.file("a.csv", kEntries), b = bench.file("b.csv", kBooks);
  const auto answer = bench.ask({"match", a, b});
  CHECK(answer.at("a_rows").to_number<int>() == 3);
  CHECK(answer.at("known").to_number<int>() + answer.at("likely").to_number<int>() == 2);
  CHECK(answer.at("new").to_number<int>() == 1);
  CHECK(text_at(answer, "/weights") == "usual");
  CHECK(text_at(answer, "/new_persons/0/a") == "e3");
  REQUIRE(size_at(answer, "/pairs") == 2);
  CHECK(text_at(answer, "/pairs/0/a") == "e1");
  CHECK(text_at(answer, "/pairs/0/b") == "b1");
  CHECK(text_at(answer, "/pairs/0/band") == "known");
  CHECK(answer.at_pointer("/pairs/0/score").to_number<double>() > 0.999);
  CHECK(text_at(answer, "/pairs/0/evidence/name/agreement") == "same");
  CHECK(answer.at_pointer("/pairs/0/evidence/other_name").as_bool());
  CHECK(answer.at_pointer("/pairs/0/evidence/tour_number/bits").to_number<double>() > 10);
  CHECK(text_at(answer, "/pairs/1/b_name") == "Shcheglova, Yuliya");
  CHECK(text_at(answer, "/pairs/1/evidence/name/agreement") == "near");
  const auto told = NoFolder::run({"match", a, b});
  CHECK(told.out.find("known   line 2 WENDELMOOR, Ilse = line 2 Brandsma, Ilse") == 0);
  CHECK(told.out.find("new     line 4 Okonjo, Ada") != std::string::npos);
}

TEST_CASE("lists that are long enough teach the weights, and the right ones are found") {
  const NoFolder bench;
  weavelog::people::ListSizes sizes;
  sizes.people = 1'500;
  sizes.known = 1'000;
  sizes.entries = 400;
  const auto lists = weavelog::people::people_lists(sizes);
  const auto a = bench.file("a.csv", weavelog::people::lists_csv(lists.entries, "a")),
             b = bench.file("b.csv", weavelog::people::lists_csv(lists.known, "b"));
  const auto answer = bench.ask({"match", a, b});
  CHECK(text_at(answer, "/weights") == "learnt");
  std::map<std::string, std::string> truth;
  std::istringstream lines(weavelog::people::truth_csv(lists));
  for (std::string line; std::getline(lines, line);) {
    while (!line.empty() && line.back() == '\r') line.pop_back();
    truth[line.substr(0, line.find(','))] = line.substr(line.find(',') + 1);
  }
  std::size_t known = 0, wrong = 0;
  for (const auto& pair : answer.at("pairs").as_array()) {
    if (text_at(pair, "/band") != "known") continue;
    ++known;
    const auto found = truth.find(text_at(pair, "/a"));
    wrong += found == truth.end() || found->second != text_at(pair, "/b");
  }
  CHECK(known > 220);
  CHECK(wrong == 0);
}

TEST_CASE("files that can't be matched end with one error that names the place") {
  const NoFolder bench;
  const auto good = bench.file("good.csv", kBooks);
  const auto fault = [&](const std::string& content) {
    const auto file = bench.file("bad.csv", content);
    const auto said = bench.ask({"match", file, good}, 1);
    CHECK(said.as_object().size() == 1);
    CHECK_FALSE(text_at(said, "/error/what_to_do").empty());
    const std::string where = text_at(said, "/error/where");
    return where.substr(std::min(where.find("bad.csv"), where.size())) + ": " + text_at(said, "/error/what");
  };
  CHECK(fault("").rfind("bad.csv: ", 0) == 0);
  CHECK(fault("surname,first\nA,B\n") == "bad.csv: the header line has no column family_name");
  CHECK(fault("family_name,given_name\n") == "bad.csv: there are no persons below the header line");
  CHECK(fault("family_name,birth_year\nKova,199\nVelt,1x\n") ==
        "bad.csv, line 2, column 2 (birth_year): \"199\" is not a whole number from 1900 to 2099 (and 1 more faults in this file)");
  CHECK(fault("family_name\nM\xFCller\n").find("line 2") != std::string::npos);
  CHECK(fault(std::string(17 * 1024 * 1024, 'x')).rfind("bad.csv", 0) == 0);
  std::string many = "family_name\n";
  for (int i = 0; i < 50'001; ++i) many += "K\n";
  CHECK(fault(many).rfind("bad.csv", 0) == 0);
  CHECK(NoFolder::run({"match", (bench.home / "none.csv").string(), good}).status == 4);
  CHECK(NoFolder::run({"match", good}).status == 2);
  const auto latin = bench.file("latin.csv", "family_name,given_name\nM\xFCller,Ida\n");
  CHECK(size_at(bench.ask({"match", latin, good, "--encoding", "windows-1252"}), "/new_persons") == 1);
}

TEST_CASE("two names: their keys, sounds and how alike they are") {
  const NoFolder bench;
  const auto same = bench.ask({"name", "Щеглова, Юлия", "Yuliya Scheglova"});
  CHECK(text_at(same, "/a/latin") == "Shcheglova, Iuliia");
  CHECK(text_at(same, "/family") == "sound");
  CHECK(text_at(same, "/given") == "sound");
  CHECK(text_at(same, "/a/family/0/sound") == text_at(same, "/b/family/0/sound"));
  // Winkler (1994), Census RR94/05, Table 2.1.
  const auto martha = bench.ask({"name", "MARTHA", "MARHTA"});
  CHECK(martha.at_pointer("/whole/jaro_winkler").to_number<double>() == Approx(173.0 / 180));
  CHECK(martha.at_pointer("/words/0/edits").to_number<int>() == 1);
  CHECK(text_at(bench.ask({"name", "Lindgrove, Kate", "Katherine Lindgrove"}), "/given") == "short_form");
  CHECK(text_at(bench.ask({"name", " ", "x"}, 1), "/error/where") == "the first name");
  CHECK(NoFolder::run({"name", "a\xFF", "b"}).status == 1);
  CHECK(NoFolder::run({"name", std::string(5'000, 'a'), "b"}).status == 1);
  CHECK(NoFolder::run({"name", "a"}).status == 2);
}
