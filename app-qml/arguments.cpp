#include "app-qml/arguments.h"

#include <CLI/CLI.hpp>
#include <QDir>
#include <QFileInfo>
#include <algorithm>
#include <regex>

#include "app-qml/papers/paper_size.h"

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
  for (const char* page : {"player:", "drop-off:", "first:", "confirm:", "consent:", "new:", "inspect:", "bed:", "camera:", "check:", "stencils:",
                           "people:", "machines:", "lists:", "numbers:", "evenness:", "account:", "day:", "prices:", "benches:", "schedule:", "forecast:",
                           "card:", "record:", "cards:", "take-card:", "past-jobs:"})
    if (text.starts_with(page)) return {};
  return "'" + text + "' is no page; write one such as player:NAME";
}

std::string checkPaperFile(const std::string& text) {
  const QFileInfo file(QString::fromStdString(text));
  if (file.isDir() || !file.absoluteDir().exists()) return "'" + text + "' cannot be written; name a .pdf file in a folder that exists";
  if (file.suffix().compare(QLatin1String("png"), Qt::CaseInsensitive) == 0) return {};  // of a card
  if (file.suffix().compare(QLatin1String("pdf"), Qt::CaseInsensitive) != 0)
    return "'" + text + "' is no .pdf file; give the paper a name that ends in .pdf";
  return {};
}

// "12,14-20": false if it is no list of tag numbers.
bool readTags(const std::string& text, std::vector<std::pair<std::int64_t, std::int64_t>>& out) {
  static const std::regex form("([0-9]{1,9})(?:-([0-9]{1,9}))?");
  std::size_t from = 0;
  while (from <= text.size()) {
    const std::size_t end = std::min(text.find(',', from), text.size());
    std::smatch match;
    const std::string part = text.substr(from, end - from);
    if (!std::regex_match(part, match, form)) return false;
    const std::int64_t first = std::stoll(match[1]);
    const std::int64_t last = match[2].matched ? std::stoll(match[2]) : first;
    if (last < first) return false;
    out.emplace_back(first, last);
    from = end + 1;
  }
  return true;
}

std::string checkTags(const std::string& text) {
  std::vector<std::pair<std::int64_t, std::int64_t>> tags;
  return readTags(text, tags) ? std::string() : "'" + text + "' is no list of tag numbers; write one such as 12,14-20";
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
                 "inspect:NAME for the frame of a racket in the room, bed:NAME for its string bed; camera: to scan with it; "
                 "check: or stencils: for the first strung racket in the room; "
                 "of the team: people:, machines:, lists:, numbers:, evenness:; of the money: account:NAME, day:, prices:; of the plan: benches:, schedule:, forecast:; "
                 "of the players: card:NAME to give, record:NAME for all that is held, cards: for several, take-card:PICTURE to take one in, past-jobs:TABLE to bring in")
      ->type_name("PAGE")
      ->check(CLI::Validator(checkPage, ""));
  app.add_option("--place", place,
                 "The place that opens: desk, room, bench, players, plan, money, stock, team, questions, exchange, settings")
      ->type_name("PLACE")
      ->check(CLI::IsMember({"desk", "room", "bench", "players", "plan", "money", "stock", "team", "questions", "exchange", "settings"}));
  std::string picture;
  app.add_option("--read-code", picture, "Say what the codes on a picture hold, a line each, and leave: `weavelog --read-code card.png | weavelog-cli card read --from -`")
      ->type_name("PICTURE");
  std::string paper;
  std::string roll;
  std::string outFile;
  std::string tags;
  std::vector<std::string> players;
  std::string country;
  std::vector<std::string> papers;
  for (const PaperKind kind : allPaperKinds()) papers.emplace_back(nameOf(kind));
  auto* asked = app.add_option("--paper", paper,
                               "Write a paper of today's event as PDF and leave: tags, bag-tags, labels, work-list, pick-up-list, statement, wrap-up, string-bed, evenness, card, card-sheet, record (all that is held on a player)")
                    ->type_name("PAPER")
                    ->check(CLI::IsMember(papers));
  auto* pdf = app.add_option("--out", outFile, "The PDF to write; of one card a PNG picture of its code too")->type_name("FILE")->check(CLI::Validator(checkPaperFile, ""));
  asked->needs(pdf);
  pdf->needs(asked);
  app.add_option("--roll", roll, "What the paper is printed on: 62, 62x29 or 80 (widths of rolls, mm), or a4")
      ->type_name("ROLL")
      ->check(CLI::IsMember({"62", "62x29", "80", "a4"}))
      ->needs(asked);
  app.add_option("--tags", tags, "Only these tag numbers, such as 12,14-20; otherwise those of all open rackets")
      ->type_name("NUMBERS")
      ->check(CLI::Validator(checkTags, ""))
      ->needs(asked);
  app.add_option("--player", players, "Whose statement or record, only whose tags, or whose card: the first player so found; for cards as often as there are players")
      ->type_name("NAME")
      ->allow_extra_args(false)
      ->needs(asked);
  app.add_option("--country", country, "Cards of everybody of a country, such as POR; without it and --player, of those with an open racket")
      ->type_name("CODE")
      ->needs(asked);
  app.add_option("--start", out.start, "The first free label of a sheet, counted from the top left, row by row")
      ->type_name("POSITION")
      ->check(CLI::Range(1, 999))
      ->needs(asked);
  app.add_flag("--by-tag", out.byTag, "The pick-up list by tag number, not by family name")->needs(asked);
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
  out.pictureFile = QString::fromStdString(picture);
  out.paper = QString::fromStdString(paper);
  out.roll = QString::fromStdString(roll);
  out.outFile = QString::fromStdString(outFile);
  for (const std::string& one : players) out.players.push_back(QString::fromStdString(one));
  out.country = QString::fromStdString(country);
  if (out.outFile.endsWith(QLatin1String(".png"), Qt::CaseInsensitive) && out.paper != QLatin1String(nameOf(PaperKind::card)))
    return EarlyEnd{2, "weavelog: --out: only a card is written as a picture; name a .pdf file (see weavelog --help)\n"};
  if (!tags.empty()) (void)readTags(tags, out.tags);
  return out;
}
