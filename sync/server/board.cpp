#include "sync/server/board.h"

#include <algorithm>

#include "core/base/digest.h"
#include "core/desk/board_page.h"
#include "core/desk/phrases.h"

namespace weavelog {
namespace {

constexpr std::size_t kTagCharacters = 32;

/// The phrases' languages, English first: for who reads none of them.
std::vector<Language> languages() {
  auto all = desk_words().languages();
  std::stable_partition(all.begin(), all.end(), [](const Language& language) { return language == Language(); });
  return all;
}

}  // namespace

Outcome<Address> board_address(std::string_view text, const std::string& host) {
  const bool port_alone = !text.empty() && std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
  if (port_alone) return Address::parse((host.find(':') == std::string::npos ? host : "[" + host + "]") + ":" + std::string(text), true);
  if (text.rfind(':') == std::string_view::npos || text.back() == ']')
    return fail(FaultCode::bad_input, "\"" + std::string(text.substr(0, 60)) + "\" names no port", "board", "write PORT or ADDRESS:PORT");
  return Address::parse(text, true);
}

BoardPages board_pages(const BoardNow& board, const Language& language, UnixMs now) {
  BoardPages pages;
  pages.json = board_json(board, language, now);
  pages.etag = "\"" + to_hex(digest_of(as_bytes(pages.json))).substr(0, kTagCharacters) + "\"";
  pages.html = board_html(board, language, now, pages.etag);
  return pages;
}

Outcome<std::unique_ptr<BoardHost>> start_board(const Ledger& ledger, const BookId& event, BoardShow show, const Address& address) {
  BoardHostOptions options;
  options.address = address.host;
  options.port = address.port;
  options.languages = languages();
  options.policy = board_policy();
  options.render = [&ledger, event, show](const Language& language) -> Outcome<BoardPages> {
    const UnixMs now = ledger.wall().now();
    return board_pages(board_now(ledger, event, show, now), language, now);
  };
  return BoardHost::start(std::move(options));
}

}  // namespace weavelog
