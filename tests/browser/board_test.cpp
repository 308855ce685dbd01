// The board as people see it: a real event server, a real tablet that works on, and a real browser that watches.

#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <iostream>
#include <optional>
#include <thread>

#include "tests/browser/browser.h"
#include "tests/cli/device.h"

using namespace weavelog::testing;
using namespace std::chrono_literals;

namespace {

/// An event with rackets 1 to 4 of one player in the room, and its board, which can be stopped and started again where it was.
struct Room {
  TemporaryFolder folder;
  CliDevice desk{"Desk 1"};
  std::string show, address, port = "0", board_port = "0";
  std::optional<Running> server;

  explicit Room(std::string by) : show(std::move(by)) {
    start();
    const auto invitation = json::parse(server->line().value());
    (void)desk.ask({"pair", text_at(invitation, "/code")});
    (void)desk.ask({"drop-off", "--stdin", "--confirm"}, 0, first_hand_over());
    (void)desk.ask({"exchange"});
  }
  void start() {
    const std::vector<std::string> command{WEAVELOG_SERVER_PROGRAM, "--data", folder.path().string() + "/data", "--listen", "127.0.0.1:" + port, "--event",
                                           "Harbour Open", "--board", board_port, "--board-show", show, "--json", "--quiet", "--unlisted"};
    server.emplace(command);
    port = text_at(json::parse(server->line().value()), "/port");
    const auto board = json::parse(server->line().value());
    address = text_at(board, "/board");
    board_port = text_at(board, "/port");
  }
  int stop() {
    const int status = server->stop();
    server.reset();
    return status;
  }
  void stage(const std::string& tag, const std::string& stage) {
    (void)desk.ask({"stage", tag, stage, "--reason", "test"});
    (void)desk.ask({"exchange"});
  }
};

bool skipped() {
  if (Browser::installed()) return false;
  std::cout << "skipped: no browser is installed (chromium-headless-shell)" << std::endl;
  return true;
}

/// Pictures for people to look at, where a folder for them is named.
void picture(Browser& browser, const std::string& name) {
  if (const char* folder = std::getenv("WEAVELOG_PICTURES")) browser.screenshot(std::string(folder) + "/" + name + ".png");
}

std::string who(const std::string& part) {
  return "[...document.querySelectorAll('#" + part + " tbody th')].map(cell => cell.textContent).join(' ')";
}
bool any_of(const std::vector<std::string>& lines, const std::string& wanted) {
  return std::any_of(lines.begin(), lines.end(), [&](const std::string& line) { return line.starts_with(wanted); });
}

}  // namespace

TEST_CASE("browser: a racket turns ready on the open page, and the page says since when it is not up to date") {
  if (skipped()) return;
  Room room("tag");
  Browser browser(*Browser::installed());
  browser.size(1280, 800);
  browser.open(room.address);
  CHECK(browser.text("document.title") == "What is ready – Harbour Open");
  CHECK(browser.text(who("work")) == "1 2 3 4");
  CHECK(browser.text(who("ready")).empty());
  CHECK(browser.value("document.getElementById('desk').hidden") == json::value(true));
  // The page holds nothing of the player, wherever one looks.
  const std::string all = browser.text("document.documentElement.outerHTML");
  for (const char* secret : {"Wendelmoor", "Ilse", "Tarnbrook", "Velmora", "open ring", "knots"}) CHECK(all.find(secret) == std::string::npos);

  room.stage("2", "ready");
  CHECK(browser.becomes(who("ready") + " === '2'", 15s));
  CHECK(browser.text(who("work")) == "1 3 4");
  CHECK(browser.text("document.getElementById('said').textContent") == "Now ready for pick-up: 2");
  CHECK(browser.text("document.querySelector('#ready tbody tr').className") == "new");
  CHECK(browser.text("document.querySelector('#ready .count').textContent") == "1");
  room.stage("3", "waiting");
  CHECK(browser.becomes(who("desk") + " === '3' && !document.getElementById('desk').hidden", 15s));
  room.stage("2", "collected");
  CHECK(browser.becomes(who("ready") + " === '' && document.querySelector('#ready table').hidden", 15s));
  CHECK(browser.complaints().empty());  // the policy let style, script and fetch through, and nothing failed

  CHECK(browser.value("document.getElementById('stale').hidden") == json::value(true));
  CHECK(room.stop() == 0);
  CHECK(browser.becomes("!document.getElementById('stale').hidden", 25s));
  CHECK(browser.text("document.getElementById('stale').textContent").starts_with("Not up to date since "));
  CHECK(browser.text("document.getElementById('stale').textContent").find('{') == std::string::npos);
  CHECK(browser.text(who("work")) == "1 4");  // what was known stays to be read
  picture(browser, "stale");
}

TEST_CASE("browser: the board comes back by itself when the server does") {
  if (skipped()) return;
  Room room("tag");
  Browser browser(*Browser::installed());
  browser.open(room.address);
  (void)room.stop();
  REQUIRE(browser.becomes("!document.getElementById('stale').hidden", 25s));
  room.start();
  CHECK(browser.becomes("document.getElementById('stale').hidden", 25s));
  CHECK(browser.text(who("work")) == "1 2 3 4");
}

TEST_CASE("browser: the reader's language, a phone, the dark, and a screen reader") {
  if (skipped()) return;
  Room room("initials");
  room.stage("2", "ready");
  Browser browser(*Browser::installed());
  browser.language("de-AT,de;q=0.9,en;q=0.5");
  browser.size(412, 915, true);
  browser.dark(true);
  browser.open(room.address);
  CHECK(browser.text("document.documentElement.lang") == "de");
  CHECK(browser.text("document.querySelector('#ready h2').textContent") == "Abholbereit 1");
  CHECK(browser.text(who("ready")) == "I. W.");
  CHECK(browser.text("document.querySelector('#work tbody td').textContent") == "× 3");
  // Nothing stands out of a phone's screen, and it is dark.
  CHECK(browser.value("document.documentElement.scrollWidth") == json::value(412));
  CHECK(browser.text("getComputedStyle(document.documentElement).backgroundColor") == "rgb(15, 23, 25)");
  // A poll later it still speaks German: the script asks in the language of the page.
  REQUIRE(browser.becomes("performance.getEntriesByName(location.origin + '/board.json').length > 1", 15s));
  CHECK(browser.text("document.documentElement.lang") == "de");
  picture(browser, "phone-dark-de");
  const auto spoken = browser.spoken();
  for (const char* wanted : {"banner", "main", "contentinfo", "heading Harbour Open", "heading Abholbereit 1", "region Abholbereit 1", "table Abholbereit 1",
                             "columnheader Initialen", "columnheader Voraussichtlich", "rowheader I. W.", "cell × 3"}) {
    CAPTURE(wanted, spoken);
    CHECK(any_of(spoken, wanted));
  }
  CHECK(browser.complaints().empty());
}

TEST_CASE("browser: without script the page is whole and asks to be loaded again") {
  if (skipped()) return;
  Room room("tag");
  Browser browser(*Browser::installed());
  browser.script(false);
  browser.open(room.address);
  const auto spoken = browser.spoken();
  CHECK(any_of(spoken, "rowheader 1"));
  CHECK(any_of(spoken, "heading In work 4"));
  room.stage("1", "ready");
  bool seen = false;
  for (const auto end = std::chrono::steady_clock::now() + 40s; !seen && std::chrono::steady_clock::now() < end;) {
    std::this_thread::sleep_for(500ms);
    seen = any_of(browser.spoken(), "heading Ready for pick-up 1");
  }
  CHECK(seen);
}
