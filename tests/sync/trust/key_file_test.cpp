#include "sync/trust/key_file.h"

#include <sys/stat.h>

#include <catch2/catch.hpp>
#include <fstream>
#include <iterator>

#include "tests/support/temporary_folder.h"

using namespace weavelog;
using weavelog::testing::TemporaryFolder;
namespace fs = std::filesystem;

namespace {
std::string content_of(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}
void overwrite(const fs::path& file, const std::string& content) {
  std::ofstream(file, std::ios::binary | std::ios::trunc) << content;
}
}  // namespace

TEST_CASE("key file: made once with owner-only rights, then the same key", "[trust]") {
  const TemporaryFolder folder;
  const fs::path file = folder.path() / "data" / "device.key";
  const auto first = load_or_create_key(file);
  REQUIRE(first);
  struct stat info {};
  REQUIRE(::stat(file.c_str(), &info) == 0);
  CHECK((info.st_mode & 0777) == 0600);
  REQUIRE(::stat(file.parent_path().c_str(), &info) == 0);
  CHECK((info.st_mode & 0777) == 0700);
  const auto second = load_or_create_key(file);
  REQUIRE(second);
  CHECK(first->public_key() == second->public_key());
  CHECK(first->seed() == second->seed());
  CHECK(std::distance(fs::directory_iterator(file.parent_path()), fs::directory_iterator()) == 1);
}

TEST_CASE("key file: a file that others can read is refused", "[trust]") {
  const TemporaryFolder folder;
  const fs::path file = folder / "device.key";
  REQUIRE(load_or_create_key(file));
  for (const auto wrong : {fs::perms::group_read, fs::perms::others_read, fs::perms::group_write}) {
    fs::permissions(file, fs::perms::owner_read | fs::perms::owner_write | wrong);
    const auto key = load_or_create_key(file);
    REQUIRE_FALSE(key);
    CHECK(key.error().code == FaultCode::refused);
    CHECK(key.error().what_to_do.find("chmod 600") != std::string::npos);
  }
}

TEST_CASE("key file: any damage is a clear fault and the file stays as it was", "[trust]") {
  const TemporaryFolder folder;
  const fs::path file = folder / "device.key";
  REQUIRE(load_or_create_key(file));
  const std::string whole = content_of(file);
  const auto check = [&](const std::string& content, FaultCode code) {
    INFO(content);
    overwrite(file, content);
    const auto key = load_or_create_key(file);
    REQUIRE_FALSE(key);
    CHECK(key.error().code == code);
    CHECK(key.error().where == file.string());
    CHECK(content_of(file) == content);
  };
  for (std::size_t cut = 0; cut < whole.size(); cut += 7) check(whole.substr(0, cut), FaultCode::damaged);
  for (std::size_t at = 22; at < whole.size(); at += 5) {
    std::string flipped = whole;
    flipped[at] = flipped[at] == 'a' ? 'b' : 'a';
    check(flipped, FaultCode::damaged);
  }
  check("something else altogether\n", FaultCode::damaged);
  check(std::string(100000, 'x'), FaultCode::damaged);
  std::string newer = whole;
  newer.replace(newer.find("key 1"), 5, "key 2");
  check(newer, FaultCode::newer);
  overwrite(file, whole);
  CHECK(load_or_create_key(file));
}

TEST_CASE("key file: what is not a plain file neither hangs nor crashes", "[trust]") {
  const TemporaryFolder folder;
  REQUIRE(::mkfifo((folder / "pipe").c_str(), 0600) == 0);
  CHECK(load_or_create_key(folder / "pipe").error().code == FaultCode::damaged);
  CHECK_FALSE(load_or_create_key(folder.path()));
  CHECK_FALSE(load_or_create_key(folder.path() / "pipe" / "device.key"));
}
