#include "core/desk/board_page.h"

#include <sodium.h>

#include <array>
#include <boost/json.hpp>

#include "core/base/digest.h"
#include "core/base/localised.h"
#include "core/desk/phrases.h"

namespace weavelog {
namespace {

/// How often a browser without script asks again, in seconds.
constexpr std::string_view kRefresh = "15";
/// Where a script puts in what it knows only later.
constexpr std::string_view kWhenLater = "{when}";
constexpr std::string_view kWhoLater = "{who}";

struct Part {
  std::string_view name;
  std::string_view classes;
  std::string_view heading;  ///< phrase
  const BoardPart BoardNow::*rows;
  bool times;
};
constexpr Part kParts[] = {
    {"desk", "desk cards", "board.desk", &BoardNow::desk, false},
    {"ready", "ready cards", "board.ready", &BoardNow::ready, false},
    {"work", "work", "board.work", &BoardNow::work, true},
};

std::string_view name_of(BoardShow show) { return show == BoardShow::tag ? "tag" : "initials"; }

/// The board in words of one language.
class Words {
 public:
  Words(const BoardNow& board, const Language& language, UnixMs now)
      : board_(board),
        language_(language),
        time_(language, board.zone, Moment::Form::time_of_day),
        day_(language, board.zone, Moment::Form::day),
        day_and_time_(language, board.zone, Moment::Form::day_and_time),
        today_(day_(now)) {}

  [[nodiscard]] std::string say(std::string_view key, const PhraseArgs& args = {}) const { return desk_words().say(language_, key, args); }
  [[nodiscard]] std::string time(UnixMs at) const { return time_(at); }

  [[nodiscard]] std::vector<std::string> columns(const Part& part) const {
    std::vector<std::string> out{say(board_.show == BoardShow::tag ? "board.tag" : "board.initials")};
    if (board_.show == BoardShow::initials) out.push_back(say("board.rackets"));
    if (part.times) out.push_back(say("board.expected"));
    return out;
  }
  [[nodiscard]] std::vector<std::string> cells(const Part& part, const BoardRow& row) const {
    std::vector<std::string> out{row.who};
    if (board_.show == BoardShow::initials) out.push_back("× " + std::to_string(row.rackets));
    if (part.times) out.push_back(row.ready_by ? expected(*row.ready_by, row.late) : std::string());
    return out;
  }
  [[nodiscard]] std::string more(const BoardPart& part) const { return part.more > 0 ? say("board.more", {{"n", part.more}}) : std::string(); }
  [[nodiscard]] std::string note() const {
    if (board_.unlisted == 0) return {};
    return say("board.unlisted", {{"n", board_.unlisted}, {"show", std::string(name_of(board_.show))}});
  }

 private:
  [[nodiscard]] std::string expected(UnixMs at, bool late) const {
    const std::string when = day_(at) == today_ ? time_(at) : day_and_time_(at);
    return late ? say("board.delayed", {{"when", when}}) : when;
  }

  const BoardNow& board_;
  const Language& language_;
  MomentWriter time_, day_, day_and_time_;
  std::string today_;
};

/// What stays the same on a page that is open.
std::string page_mark(const BoardNow& board, const Language& language) {
  const std::string told = std::string(name_of(board.show)) + " " + language.tag() + " " + board.zone;
  return to_hex(digest_of({as_bytes(board_policy()), as_bytes(told)})).substr(0, 16);
}

/// 'sha256-...' as Content Security Policy, level 3, section 2.3.1 has it.
std::string source_digest(std::string_view text) {
  std::array<unsigned char, crypto_hash_sha256_BYTES> digest{};
  crypto_hash_sha256(digest.data(), as_bytes(text).data(), text.size());
  std::array<char, sodium_base64_ENCODED_LEN(crypto_hash_sha256_BYTES, sodium_base64_VARIANT_ORIGINAL)> out{};
  sodium_bin2base64(out.data(), out.size(), digest.data(), digest.size(), sodium_base64_VARIANT_ORIGINAL);
  return "'sha256-" + std::string(out.data()) + "'";
}

/// ` name="text"`
std::string attribute(std::string_view name, std::string_view text) {
  return " " + std::string(name) + "=\"" + html_escaped(text) + "\"";
}
std::string hidden_if(bool hidden) { return hidden ? " hidden" : ""; }

std::string row_html(const std::vector<std::string>& cells) {
  std::string out = "<tr role=\"row\">";
  for (std::size_t i = 0; i < cells.size(); ++i) {
    out += i == 0 ? "<th scope=\"row\" role=\"rowheader\">" : "<td role=\"cell\">";
    out += html_escaped(cells[i]);
    out += i == 0 ? "</th>" : "</td>";
  }
  return out + "</tr>\n";
}

std::string section_html(const Words& words, const Part& part, const BoardPart& held) {
  const std::string name(part.name);
  const bool empty = held.rows.empty();
  std::string out = "<section" + attribute("id", name) + attribute("class", part.classes) + attribute("aria-labelledby", name + "-head") +
                    hidden_if(part.name == "desk" && empty) + ">\n<h2" + attribute("id", name + "-head") + ">" +
                    html_escaped(words.say(part.heading)) + " <span class=\"count\">" + std::to_string(held.rackets) + "</span></h2>\n";
  // The head of a table is there for screen readers alone; that the times are expected ones, all want to know.
  if (part.times) out += "<p class=\"label\" aria-hidden=\"true\">" + html_escaped(words.say("board.expected")) + "</p>\n";
  // Cards are laid out by the style sheet, which takes a table's meaning from some browsers: the roles give it back.
  out += "<table role=\"table\"" + attribute("aria-labelledby", name + "-head") + hidden_if(empty) +
         ">\n<thead class=\"away\" role=\"rowgroup\"><tr role=\"row\">";
  for (const std::string& column : words.columns(part))
    out += "<th scope=\"col\" role=\"columnheader\">" + html_escaped(column) + "</th>";
  out += "</tr></thead>\n<tbody role=\"rowgroup\">\n";
  for (const BoardRow& row : held.rows) out += row_html(words.cells(part, row));
  out += "</tbody>\n</table>\n";
  const std::string more = words.more(held);
  out += "<p class=\"none\"" + hidden_if(!empty) + ">" + html_escaped(words.say("board.none")) + "</p>\n";
  return out + "<p class=\"more\"" + hidden_if(more.empty()) + ">" + html_escaped(more) + "</p>\n</section>\n";
}

}  // namespace

std::string html_escaped(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  for (const char c : text) {
    switch (c) {
      case '&': out += "&amp;"; break;
      case '<': out += "&lt;"; break;
      case '>': out += "&gt;"; break;
      case '"': out += "&quot;"; break;
      case '\'': out += "&#39;"; break;
      default: out += c;
    }
  }
  return out;
}

const std::string& board_policy() {
  static const std::string policy = "default-src 'none'; style-src " + source_digest(board_style()) + "; script-src " +
                                    source_digest(board_script()) +
                                    "; connect-src 'self'; img-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; "
                                    "require-trusted-types-for 'script'; trusted-types 'none'";
  return policy;
}

std::string board_json(const BoardNow& board, const Language& language, UnixMs now) {
  const Words words(board, language, now);
  boost::json::object parts;
  for (const Part& part : kParts) {
    const BoardPart& held = board.*part.rows;
    boost::json::array rows;
    for (const BoardRow& row : held.rows) {
      boost::json::array cells;
      for (const std::string& cell : words.cells(part, row)) cells.emplace_back(cell);
      rows.push_back(std::move(cells));
    }
    parts[std::string(part.name)] = {{"count", std::to_string(held.rackets)}, {"rows", std::move(rows)}, {"more", words.more(held)}};
  }
  return boost::json::serialize(boost::json::object{
      {"page", page_mark(board, language)}, {"event", board.event}, {"note", words.note()}, {"parts", std::move(parts)}});
}

std::string board_html(const BoardNow& board, const Language& language, UnixMs now, std::string_view etag) {
  const Words words(board, language, now);
  const std::string title = words.say("board.title"), note = words.note();
  // The four languages of the phrases are written from left to right; the sheet does not depend on it.
  std::string out = "<!DOCTYPE html>\n<html dir=\"ltr\"" + attribute("lang", language.tag()) + attribute("data-page", page_mark(board, language)) +
                    attribute("data-etag", etag) + attribute("data-zone", board.zone) + attribute("data-at", std::to_string(now)) +
                    attribute("data-asof", words.say("board.as_of", {{"when", std::string(kWhenLater)}})) +
                    attribute("data-stale", words.say("board.stale", {{"when", std::string(kWhenLater)}})) +
                    attribute("data-ready", words.say("board.now_ready", {{"who", std::string(kWhoLater)}})) + ">\n<head>\n<meta charset=\"utf-8\">\n<title>" +
                    html_escaped(title + " – " + board.event) +
                    "</title>\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
                    "<meta name=\"color-scheme\" content=\"light dark\">\n<meta name=\"robots\" content=\"noindex\">\n"
                    "<link rel=\"icon\" href=\"data:,\">\n<noscript><meta http-equiv=\"refresh\" content=\"" +
                    std::string(kRefresh) + "\"></noscript>\n<style>" + board_style() + "</style>\n</head>\n<body" +
                    attribute("class", name_of(board.show)) + ">\n";
  out += "<header>\n<h1><bdi id=\"event\">" + html_escaped(board.event) + "</bdi></h1>\n<p class=\"title\">" + html_escaped(title) +
         "</p>\n<p class=\"asof\" id=\"asof\">" + html_escaped(words.say("board.as_of", {{"when", words.time(now)}})) +
         "</p>\n</header>\n<p id=\"stale\" role=\"alert\" hidden></p>\n<p id=\"said\" role=\"status\"></p>\n<main>\n";
  for (const Part& part : kParts) out += section_html(words, part, board.*part.rows);
  out += "</main>\n<footer>\n<p id=\"note\"" + hidden_if(note.empty()) + ">" + html_escaped(note) + "</p>\n<p>" +
         html_escaped(words.say("board.about")) + "</p>\n</footer>\n<script>";
  out += board_script();
  return out + "</script>\n</body>\n</html>\n";
}

}  // namespace weavelog
