// DNS-SD with real daemons: a D-Bus and an Avahi of its own in each of two rooms. The server listens at a port that nobody asks by broadcast, so
// that what is found was published.

#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <functional>
#include <memory>
#include <thread>

#include "tests/faults/cli_tablet.h"
#include "tests/faults/namespaces.h"
#include "tests/faults/plan.h"
#include "tests/support/temporary_folder.h"

using namespace weavelog::testing;
namespace json = boost::json;

namespace {

constexpr const char* kAvahi = "/usr/sbin/avahi-daemon";
constexpr const char* kBus = "/usr/bin/dbus-daemon";

void write(const std::filesystem::path& file, const std::string& text) { std::ofstream(file) << text; }

/// Of one room; started in its network namespace by whoever makes it.
class Daemons {
 public:
  Daemons(const TemporaryFolder& folder, const std::string& name) : folder_(folder / name), name_(name) {
    std::filesystem::create_directory(folder_);
    const std::string socket = (folder_ / "bus").string();
    address_ = "unix:path=" + socket;
    write(folder_ / "bus.conf",
          "<busconfig><type>system</type><listen>" + address_ +
              "</listen><auth>EXTERNAL</auth><policy context=\"default\"><allow user=\"*\"/><allow own=\"*\"/><allow send_destination=\"*\"/>"
              "<allow receive_sender=\"*\"/></policy></busconfig>");
    write(folder_ / "avahi.conf", "[server]\nhost-name=" + name +
                                      "\nuse-ipv4=yes\nuse-ipv6=no\nenable-dbus=yes\n[wide-area]\nenable-wide-area=no\n[publish]\n"
                                      "publish-hinfo=no\npublish-workstation=no\n");
    bus_ = std::make_unique<Running>(std::vector<std::string>{kBus, "--config-file=" + (folder_ / "bus.conf").string(), "--nofork", "--nopidfile"});
    for (int i = 0; i < 100 && !std::filesystem::exists(socket); ++i) std::this_thread::sleep_for(std::chrono::milliseconds(20));
    start();
  }
  void start() {
    // The daemon keeps its number and socket at one place of the machine: a folder of its own over it.
    avahi_ = std::make_unique<Running>(std::vector<std::string>{
        "/usr/bin/env", "DBUS_SYSTEM_BUS_ADDRESS=" + address_, "/usr/bin/unshare", "-m", "/bin/sh", "-c",
        std::string("mkdir -p /run/avahi-daemon && mount -t tmpfs none /run/avahi-daemon && exec ") + kAvahi +
            " --no-drop-root --no-chroot --no-rlimits --no-proc-title -f " + (folder_ / "avahi.conf").string() + " 2>" +
            (folder_ / "avahi.log").string()});
  }
  void stop() { avahi_->stop(); }
  [[nodiscard]] std::vector<std::string> with(const std::vector<std::string>& command) const {
    std::vector<std::string> out{"/usr/bin/env", "DBUS_SYSTEM_BUS_ADDRESS=" + address_};
    out.insert(out.end(), command.begin(), command.end());
    return out;
  }
  [[nodiscard]] std::string log() const {
    std::ifstream in(folder_ / "avahi.log");
    return {std::istreambuf_iterator<char>(in), {}};
  }

 private:
  std::filesystem::path folder_;
  std::string name_, address_;
  std::unique_ptr<Running> bus_, avahi_;
};

}  // namespace

TEST_CASE("a server at a port of its own is found by DNS-SD, follows its daemon, and is gone when it ends") {
  if (!std::filesystem::exists(kAvahi) || !std::filesystem::exists(kBus)) return skip("dns-sd", "no avahi-daemon or no dbus-daemon is installed here");
  std::unique_ptr<TwoRooms> rooms;
  try {
    rooms = std::make_unique<TwoRooms>();
  } catch (const std::exception& error) {
    return skip("dns-sd", error.what());
  }
  TemporaryFolder folder;
  std::unique_ptr<Daemons> here, there;
  std::unique_ptr<Running> server;
  const auto tablet = [&](const std::vector<std::string>& words) {
    const TwoRooms::Inside inside = rooms->at_tablet();
    std::vector<std::string> command{WEAVELOG_CLI_PROGRAM, "--json", "--data", (folder / "tablet").string()};
    command.insert(command.end(), words.begin(), words.end());
    return run_program(there->with(command));
  };
  const auto found = [&]() -> json::value {
    const Finished near = tablet({"near", "--seconds", "2"});
    UNSCOPED_INFO(near.err);
    const json::value list = json::parse(near.out);
    return list.as_array().empty() ? json::value() : list.as_array().front();
  };
  /// Daemons need a moment to hear each other; it is asked again until it is so.
  const auto becomes = [&](const std::function<bool(const json::value&)>& holds) {
    for (int tries = 0; tries < 10; ++tries)
      if (holds(found())) return true;
    return false;
  };
  {
    const TwoRooms::Inside inside = rooms->at_server();
    here = std::make_unique<Daemons>(folder, "desk");
    server = std::make_unique<Running>(here->with({WEAVELOG_SERVER_PROGRAM, "--data", (folder / "server").string(), "--listen",
                                                   std::string(kServerAddress) + ":0", "--event", "Harbour Open", "--invite", "stringer", "--json",
                                                   "--quiet"}));
  }
  {
    const TwoRooms::Inside inside = rooms->at_tablet();
    there = std::make_unique<Daemons>(folder, "bench");
  }
  const auto listening = server->line();
  REQUIRE(listening);
  const std::string address = std::string(kServerAddress) + ":" + std::to_string(json::parse(*listening).at("port").as_int64());
  const auto invitation = server->line();
  REQUIRE(invitation);
  const auto is_ours = [&](const json::value& one) { return one.is_object() && one.at("address").as_string() == address; };
  INFO(here->log() << there->log());
  REQUIRE(becomes(is_ours));
  CHECK(found().at("event").as_string() == "Harbour Open");
  // The server's daemon ends and starts anew while the server runs on.
  here->stop();
  CHECK(becomes([&](const json::value& one) { return !is_ours(one); }));
  {
    const TwoRooms::Inside inside = rooms->at_server();
    here->start();
  }
  CHECK(becomes(is_ours));

  // Paired at the address that was found; from now on the port is asked by broadcast too.
  const Finished paired = tablet({"pair", std::string(json::parse(*invitation).at("words").as_string()), "--at", address});
  INFO(paired.out << paired.err);
  CHECK(paired.status == 0);

  server->stop();
  CHECK(becomes([&](const json::value& one) { return !is_ours(one); }));
  // The tablet's daemon is gone: it finds nobody and says no more.
  there->stop();
  CHECK(tablet({"near", "--seconds", "1"}).status == 4);
}
