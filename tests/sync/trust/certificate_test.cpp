#include "sync/trust/certificate.h"

#include <sys/stat.h>

#include <catch2/catch.hpp>
#include <fstream>
#include <sstream>

#include "tests/support/temporary_folder.h"

using namespace weavelog;
using weavelog::testing::TemporaryFolder;
namespace fs = std::filesystem;

TEST_CASE("certificate: made once, the same after every start", "[trust]") {
  const TemporaryFolder folder;
  const auto first = load_or_create_certificate(folder / "server.pem");
  REQUIRE(first);
  const auto second = load_or_create_certificate(folder / "server.pem");
  REQUIRE(second);
  CHECK(first->fingerprint == second->fingerprint);
  CHECK(first->key_pem == second->key_pem);
  struct stat info {};
  REQUIRE(::stat((folder / "server.pem").c_str(), &info) == 0);
  CHECK((info.st_mode & 0777) == 0600);
  CHECK(std::distance(fs::directory_iterator(folder.path()), fs::directory_iterator()) == 1);
  CHECK(make_certificate()->fingerprint != first->fingerprint);
}

TEST_CASE("certificate: the fingerprint is what openssl x509 -fingerprint prints", "[trust]") {
  const TemporaryFolder folder;
  const auto made = load_or_create_certificate(folder / "server.pem");
  REQUIRE(made);
  const fs::path out = folder / "out.txt";
  const std::string command = "openssl x509 -noout -fingerprint -sha256 -startdate -enddate -in '" +
                              (folder / "server.pem").string() + "' >'" + out.string() + "' 2>/dev/null";
  if (std::system(command.c_str()) != 0) {
    WARN("no openssl program here: not compared");
    return;
  }
  std::stringstream text;
  text << std::ifstream(out).rdbuf();
  std::string hex;
  for (const char c : text.str().substr(0, text.str().find('\n'))) {
    if (c != ':') hex.push_back(static_cast<char>(std::tolower(c)));
  }
  CHECK(hex == "sha256 fingerprint=" + to_hex(made->fingerprint));
  // RFC 5280, section 4.1.2.5: 99991231235959Z is "no well-defined expiration date".
  CHECK(text.str().find("notBefore=Jan  1 00:00:00 1970 GMT") != std::string::npos);
  CHECK(text.str().find("notAfter=Dec 31 23:59:59 9999 GMT") != std::string::npos);
}

TEST_CASE("certificate: a damaged or open file is a clear fault and stays", "[trust]") {
  const TemporaryFolder folder;
  const fs::path file = folder / "server.pem";
  REQUIRE(load_or_create_certificate(file));
  fs::resize_file(file, fs::file_size(file) / 2);
  const auto size = fs::file_size(file);
  const auto damaged = load_or_create_certificate(file);
  REQUIRE_FALSE(damaged);
  CHECK(damaged.error().code == FaultCode::damaged);
  CHECK(damaged.error().where == file.string());
  CHECK(fs::file_size(file) == size);

  fs::permissions(file, fs::perms::group_read, fs::perm_options::add);
  CHECK(load_or_create_certificate(file).error().code == FaultCode::refused);

  // Key and certificate that do not belong together.
  const auto one = make_certificate();
  const auto two = make_certificate();
  fs::remove(file);
  std::ofstream(file) << one->key_pem << two->certificate_pem;
  fs::permissions(file, fs::perms::owner_read | fs::perms::owner_write);
  CHECK(load_or_create_certificate(file).error().code == FaultCode::damaged);
}
