// Installs the libraries to a folder of the test's own and builds a stranger's program against them.

#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "tests/support/temporary_folder.h"

using namespace weavelog::testing;

namespace {

/// A library built with a sanitizer needs a program that is.
const std::string kFlags = std::string(WEAVELOG_SANITIZE).empty() ? "" : " '-DCMAKE_CXX_FLAGS=-fsanitize=" WEAVELOG_SANITIZE "'";

std::string content_of(const std::filesystem::path& file) {
  std::ifstream in(file);
  return std::string((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
}

std::string output_of(const std::string& command, const std::filesystem::path& log) {
  const int status = std::system((command + " >'" + log.string() + "' 2>&1").c_str());
  const std::string text = content_of(log);
  INFO(command << "\n" << text);
  REQUIRE(status == 0);
  return text;
}

}  // namespace

TEST_CASE("the program shown in README is the one that is built here") {
  const std::filesystem::path source = WEAVELOG_CONSUMER;
  const std::string program = content_of(source / "consumer.cpp");
  REQUIRE(program.size() > 1000);
  CHECK(content_of(source / ".." / ".." / "README.md").find("```cpp\n" + program + "```") != std::string::npos);
}

TEST_CASE("a program that is not ours finds the installed package, builds and brings two ledgers together") {
  TemporaryFolder folder;
  const std::filesystem::path source = WEAVELOG_CONSUMER;
  const auto mine = folder / "mine";
  std::filesystem::create_directory(mine);
  std::filesystem::copy_file(source / "consumer.cpp", mine / "consumer.cpp");
  std::filesystem::copy_file(source / "consumer.cmake", mine / "CMakeLists.txt");
  const auto log = folder / "log";
  const std::string prefix = (folder / "prefix").string();
  output_of("cmake --install '" WEAVELOG_BUILD_TREE "' --prefix '" + prefix + "' --component libraries", log);
  output_of("cmake -G Ninja -S '" + mine.string() + "' -B '" + mine.string() + "/build' -DCMAKE_PREFIX_PATH='" + prefix + "'" + kFlags, log);
  output_of("cmake --build '" + mine.string() + "/build'", log);
  CHECK(output_of("'" + mine.string() + "/build/consumer' '" + folder.path().string() + "'", log) == "apples\n");
}
