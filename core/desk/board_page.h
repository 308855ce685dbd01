#pragma once
// The board as a web page and as the JSON that keeps the page up to date. The page is one document: its style and its script are part of
// it and the policy names them by their digests, so that nothing else can run or be fetched.

#include <span>
#include <string>
#include <string_view>

#include "core/base/language.h"
#include "core/desk/board.h"

namespace weavelog {

/// {"page", "event", "note", "parts": {"ready" | "desk" | "work": {"count", "rows": [[cell, ...], ...], "more"}}}: every text in the
/// language and ready to be shown. "page" changes when a page that is open has to be loaded anew. Equal boards give equal bytes within
/// a day of the event's zone.
[[nodiscard]] std::string board_json(const BoardNow& board, const Language& language, UnixMs now);

/// The whole document; UTF-8. `etag` is that of the JSON of the same board and language.
[[nodiscard]] std::string board_html(const BoardNow& board, const Language& language, UnixMs now, std::string_view etag);

/// Content-Security-Policy (W3C, level 3) for the document.
[[nodiscard]] const std::string& board_policy();

/// Text for HTML: what could begin markup or end an attribute is written as a character reference.
[[nodiscard]] std::string html_escaped(std::string_view text);

/// A colour by its name in the style sheet, "#RRGGBB".
struct BoardColour {
  std::string_view name;
  std::string_view light;
  std::string_view dark;
};
[[nodiscard]] std::span<const BoardColour> board_colours();
/// Text that stands on a ground, with the contrast that it has at least (WCAG 2.2, 1.4.3 and 1.4.6).
struct BoardColourPair {
  std::string_view ink;
  std::string_view ground;
  double least_ratio = 7;
};
[[nodiscard]] std::span<const BoardColourPair> board_colour_pairs();
/// The style sheet and the script as they stand in the document.
[[nodiscard]] const std::string& board_style();
[[nodiscard]] std::string_view board_script();

}  // namespace weavelog
