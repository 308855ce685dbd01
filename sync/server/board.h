#pragma once
// The board for players and coaches: core/desk's pages of the event on the server's own BoardHost.

#include <memory>

#include "core/desk/board.h"
#include "sync/net/board_host.h"
#include "sync/trust/address.h"

namespace weavelog {

/// Where the board is, out of "PORT" or "ADDRESS:PORT"; `host` is the address where none is said. Port 0 is any free one. Fault: bad_input.
[[nodiscard]] Outcome<Address> board_address(std::string_view text, const std::string& host);

/// The ledger has to outlive the host. Faults: as BoardHost::start().
[[nodiscard]] Outcome<std::unique_ptr<BoardHost>> start_board(const Ledger& ledger, const BookId& event, BoardShow show, const Address& address);

/// What the host shows of the event in one language, made anew.
[[nodiscard]] BoardPages board_pages(const BoardNow& board, const Language& language, UnixMs now);

}  // namespace weavelog
