// Where answers and files go: a standard output that takes nothing, disks that are full, files that were there before.

#include <sys/stat.h>

#include <cstring>

#include "tests/cli/no_folder.h"
#include "tests/support/small_disk.h"

using namespace weavelog::testing;
namespace fs = std::filesystem;

namespace {

/// The program as a shell runs it, with what is behind it: "> /dev/full".
Finished in_shell(const std::vector<std::string>& words, const std::string& behind) {
  std::vector<std::string> command{"/bin/sh", "-c", "\"$0\" \"$@\" " + behind, WEAVELOG_CLI_PROGRAM};
  command.insert(command.end(), words.begin(), words.end());
  return run_program(command);
}

std::string content(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

std::size_t files_in(const fs::path& folder) {
  return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

bool mounted(SmallDisk& disk, const std::string& size) {
  const int error = disk.mount(size);
  if (error != 0) WARN("skipped: no small disk can be mounted here (" << std::strerror(error) << ")");
  return error == 0;
}

}  // namespace

TEST_CASE("an answer that standard output did not take is said, and the command has not gone well") {
  const CliDevice desk("Desk 1");
  (void)desk.ask({"new-event", "Harbour Open"});
  (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  for (const std::vector<std::string>& words :
       {std::vector<std::string>{"--data", desk.data(), "find", "Wendelmoor"}, {"--data", desk.data(), "--json", "find", "Wendelmoor"},
        {"--data", desk.data(), "export", "player", "Wendelmoor"}, {"--help"}, {"charge", "--help"}, {"name", "Ann Lee", "Lee Ann"}}) {
    const Finished lost = in_shell(words, "> /dev/full");
    INFO(words.back() << ": " << lost.err);
    CHECK(lost.status == 1);
    CHECK(lost.err.find("standard output") != std::string::npos);
    CHECK(lost.err.find("No space left") != std::string::npos);
    CHECK(lost.err.find('\n') == lost.err.size() - 1);
  }
  // What goes wrong besides keeps its own ending and is said first.
  const Finished nobody = in_shell({"--data", desk.data(), "--json", "show", "Nobody"}, "> /dev/full");
  CHECK(nobody.status == 4);
  CHECK(nobody.err.find("Nobody") < nobody.err.find("standard output"));
  // A closed one takes nothing either, and no file that is opened takes its place.
  const Finished closed = in_shell({"--data", desk.data(), "export", "jobs", "--csv"}, ">&-");
  CHECK(closed.status == 1);
  const Finished made = in_shell({"--data", desk.data(), "bundle", "make", (desk.home / "all.bundle").string(), "--all", "--words"}, ">&-");
  CHECK(made.status == 1);
  CHECK(content(desk.home / "all.bundle").find("It opens with") == std::string::npos);
  CHECK(text_at(desk.ask({"verify"}), "/well") == "true");
}

TEST_CASE("a reader that has enough is no fault") {
  // The pipe is closed before anything is written into it.
  const Finished piped = run_program({"/bin/bash", "-c", "(sleep 0.3; \"$0\" --help) | true; exit ${PIPESTATUS[0]}", WEAVELOG_CLI_PROGRAM});
  CHECK(piped.status == 0);
  CHECK(piped.err.empty());
}

TEST_CASE("a full disk leaves the file that was there, and no part of the new one") {
  SmallDisk disk;
  if (!mounted(disk, "256k")) return;
  const CliDevice desk("Desk 1");
  (void)desk.ask({"new-event", "Harbour Open"});
  (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  std::string long_draw = "line,player,rating\n";
  for (int line = 1; line <= 64; ++line) long_draw += std::to_string(line) + ",Player with a rather long name " + std::to_string(line) + ",1500\n";
  const std::string draw = desk.file("draw.csv", long_draw), people = desk.file("people.csv", "stringer\nMara\nBo\n");
  const fs::path kept = disk.path() / "kept";
  std::ofstream(kept) << "what was there";
  disk.fill();
  const std::vector<std::vector<std::string>> commands{
      {"export", "player", "Wendelmoor", "--out", kept.string()},
      {"numbers", "--csv", "--out", kept.string()},
      {"plan", "draw", "--entries", desk.file("list.csv", long_draw), "--out", kept.string()},
      {"plan", "benches", "--draw", draw, "--people", people, "--out", kept.string()},
      {"bed", "map", "head=100in2", "pattern=16x19", "string=polyester", "gauge=1.25", "tension=24kg", "--out", kept.string()}};
  for (const auto& words : commands) {
    const auto fault = desk.ask(words, 1);
    INFO(words.front() << " " << json::serialize(fault));
    CHECK(text_at(fault, "/error/code") == "no_space");
    CHECK(text_at(fault, "/error/what").find("No space left") != std::string::npos);
    CHECK(text_at(fault, "/error/where") == kept.string());
    CHECK(content(kept) == "what was there");
    CHECK(files_in(disk.path()) == 2);  // and what fills it
  }
  disk.clear();
  (void)desk.run({"export", "player", "Wendelmoor", "--out", kept.string()});
  CHECK(content(kept).find("Wendelmoor") != std::string::npos);
  CHECK(files_in(disk.path()) == 1);
}

TEST_CASE("a copy of the database names the full stick, not the database") {
  SmallDisk disk;
  if (!mounted(disk, "64k")) return;
  const CliDevice desk("Desk 1");
  (void)desk.ask({"new-event", "Harbour Open"});
  (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
  const fs::path copy = disk.path() / "copy.weavelog";
  const auto fault = desk.ask({"backup", copy.string()}, 1);
  CHECK(text_at(fault, "/error/code") == "no_space");
  CHECK(text_at(fault, "/error/where") == copy.string());
  CHECK(text_at(fault, "/error/what").find("not stored") == std::string::npos);
  CHECK(files_in(disk.path()) == 0);
  CHECK(text_at(desk.ask({"verify"}), "/well") == "true");
}

TEST_CASE("a file that is written keeps its mode and its link, and why it can't be is said") {
  const CliDevice desk("Desk 1");
  (void)desk.ask({"new-event", "Harbour Open"});
  const fs::path file = desk.home / "numbers.csv", link = desk.home / "newest.csv";
  std::ofstream(file) << "before";
  REQUIRE(::chmod(file.c_str(), 0640) == 0);
  fs::create_symlink(file, link);
  REQUIRE(desk.run({"numbers", "--csv", "--out", link.string()}).status == 0);
  CHECK(fs::is_symlink(link));
  CHECK(content(file).find("before") == std::string::npos);
  struct stat info {};
  REQUIRE(::stat(file.c_str(), &info) == 0);
  CHECK((info.st_mode & 0777) == 0640);
  // A new one is as the system makes them.
  const fs::path fresh = desk.home / "fresh.csv";
  CHECK(in_shell({"--data", desk.data(), "numbers", "--csv", "--out", fresh.string()}, "").status == 0);
  const auto mask = ::umask(0);
  ::umask(mask);
  REQUIRE(::stat(fresh.c_str(), &info) == 0);
  CHECK((info.st_mode & 0777) == (0666 & ~mask));
  // What is no file is written to as it is.
  const Finished device = desk.run({"numbers", "--csv", "--out", "/dev/stdout"});
  CHECK(device.status == 0);
  CHECK(device.out == content(fresh));
  const Finished behind = in_shell({"--data", desk.data(), "numbers", "--csv", "--out", "/dev/stdout"}, ">> \"" + fresh.string() + "\"");
  CHECK(behind.status == 0);
  CHECK(content(fresh) == device.out + device.out);
  CHECK(text_at(desk.ask({"numbers", "--csv", "--out", "/dev/full"}, 1), "/error/code") == "no_space");
  CHECK(text_at(desk.ask({"numbers", "--csv", "--out", (desk.home / "no" / "where.csv").string()}, 4), "/error/what").find("No such file") != std::string::npos);
  CHECK(text_at(desk.ask({"numbers", "--csv", "--out", desk.home.path().string()}, 1), "/error/what").find("folder") != std::string::npos);
}

TEST_CASE("a bundle and a copy of the database each name the command that takes them in") {
  const CliDevice desk("Desk 1"), other("Desk 2");
  (void)desk.ask({"new-event", "Harbour Open"});
  const std::string bundle = (desk.home / "all.weavelog").string(), copy = (desk.home / "tablet.weavelog").string();
  (void)desk.ask({"bundle", "make", bundle, "--backup", "--words"});
  (void)desk.ask({"backup", copy});
  const auto restored = other.ask({"restore", bundle}, 1);
  CHECK(text_at(restored, "/error/what_to_do").find("bundle read") != std::string::npos);
  CHECK_FALSE(fs::exists(other.data()));
  const auto read = other.ask({"bundle", "read", copy}, 1);
  CHECK(text_at(read, "/error/what_to_do").find("restore") != std::string::npos);
  CHECK(text_at(other.ask({"bundle", "read", desk.file("x.csv", "a,b\n")}, 1), "/error/what_to_do").find("restore") == std::string::npos);
}
