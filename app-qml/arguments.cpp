#include "app-qml/arguments.h"

#include <CLI/CLI.hpp>
#include <QDir>
#include <QFileInfo>
#include <regex>

namespace {

std::string checkSize(const std::string& text) {
  static const std::regex form("([0-9]{3,4})x([0-9]{3,5})");
  std::smatch match;
  if (std::regex_match(text, match, form) && std::stoi(match[1]) >= 320 && std::stoi(match[2]) >= 320)
    return {};
  return "'" + text + "' is no window size; write WIDTHxHEIGHT, each at least 320, such as 1280x800";
}

std::string checkGrabFile(const std::string& text) {
  const QFileInfo file(QString::fromStdString(text));
  if (file.isDir() || !file.absoluteDir().exists()) {
    return "'" + text + "' cannot be written; name a .png file in a folder that exists";
  }
  if (file.suffix().compare(QLatin1String("png"), Qt::CaseInsensitive) != 0) {
    return "'" + text + "' is no .png file; give the picture a name that ends in .png";
  }
  return {};
}

std::string checkPage(const std::string& text) {
  for (const char* page : {"player:", "drop-off:", "first:", "confirm:", "consent:", "new:", "inspect:", "check:", "stencils:", "people:", "machines:",
                           "numbers:", "account:", "day:", "prices:"})
    if (text.starts_with(page)) return {};
  return "'" + text + "' is no page; write one such as player:NAME";
}

}  // namespace

std::variant<Arguments, EarlyEnd> readArguments(int argc, const char* const* argv) {
  CLI::App app("Weavelog: what a player's rackets are strung with, from one event to the next.", "weavelog");
  Arguments out;
  std::string size;
  std::string grab;
  std::string theme;
  std::string language;
  std::string place;
  std::string data;
  std::string page;
  app.add_flag("--gallery", out.gallery, "Show every part of the screens in every state");
  auto* demo = app.add_flag("--demo", out.demo, "An invented event to try things on; nothing of it is kept");
  app.add_flag("--timing", out.timing, "Tell on standard error how long the first frame took");
  app.add_option("--size", size, "Size of the window, such as 1280x800 or 412x915")
      ->type_name("WxH")
      ->check(CLI::Validator(checkSize, ""));
  app.add_option("--grab", grab, "Save the page that opens as a PNG picture and leave")
      ->type_name("FILE")
      ->check(CLI::Validator(checkGrabFile, ""));
  app.add_option("--theme", theme, "light or dark, for this run only")
      ->type_name("THEME")
      ->check(CLI::IsMember({"light", "dark"}));
  app.add_option("--language", language, "en, fr, es or de, for this run only")
      ->type_name("CODE")
      ->check(CLI::IsMember({"en", "fr", "es", "de"}));
  app.add_option("--data", data, "The folder of this device's ledger and key; made if it is missing")
      ->type_name("DIR")
      ->excludes(demo);
  app.add_option("--show", page,
                 "A page of the desk for the first player so found: player:NAME, drop-off:NAME, first:NAME, "
                 "confirm:NAME, consent:NAME (a player who never answered), or new:NAME for somebody new; "
                 "inspect:NAME for the frame of a racket in the room; check: or stencils: for the first strung racket in the room; "
                 "of the team: people:, machines:, numbers:; of the money: account:NAME, day:, prices:")
      ->type_name("PAGE")
      ->check(CLI::Validator(checkPage, ""));
  app.add_option("--place", place,
                 "The place that opens: desk, room, bench, players, money, stock, team, questions, exchange, settings")
      ->type_name("PLACE")
      ->check(CLI::IsMember({"desk", "room", "bench", "players", "money", "stock", "team", "questions", "exchange", "settings"}));
  try {
    app.parse(argc, argv);
  } catch (const CLI::CallForHelp&) {
    return EarlyEnd{0, app.help()};
  } catch (const CLI::ParseError& error) {
    return EarlyEnd{2, std::string("weavelog: ") + error.what() + " (see weavelog --help)\n"};
  }
  if (!size.empty()) {
    const auto cross = size.find('x');
    out.size = QSize(std::stoi(size.substr(0, cross)), std::stoi(size.substr(cross + 1)));
  }
  out.grabFile = QString::fromStdString(grab);
  out.theme = QString::fromStdString(theme);
  out.language = QString::fromStdString(language);
  out.dataFolder = QString::fromStdString(data);
  out.page = QString::fromStdString(page);
  out.place = QString::fromStdString(place);
  return out;
}
