#pragma once
// What commands need that talk with an event server.

#include <functional>
#include <string>

#include "sync/cli/context.h"
#include "sync/net/exchange_guest.h"

namespace weavelog::cli {

[[nodiscard]] bool agreed(const GuestStatus& status);
/// Nothing more will come of it.
[[nodiscard]] bool over(const GuestStatus& status);
[[nodiscard]] Fault why_not(const GuestStatus& status, const Address& address, int seconds);
/// Consent and the ledger say what may leave. `context` must outlive the guest.
void go_by_consent(Context& context, ExchangeGuestOptions& options);
/// The host of that name or beginning of its key; for "" the one in use. Faults: not_found, bad_input (several).
[[nodiscard]] Outcome<KnownHost> choose_host(Context& context, const std::string& wanted);
/// Stays with the host for as long as `talk` needs. Faults: those of an exchange.
[[nodiscard]] Outcome<GuestStatus> talk_with_host(Context& context, const std::string& wanted, int seconds,
                                                  const std::function<void(ExchangeGuest&)>& talk);
/// Fetches a picture from the host. Faults: those of an exchange, and of ContentFetch.
[[nodiscard]] Outcome<> fetch_content(Context& context, const std::string& wanted, int seconds, const BookId& book, const Digest& content);

}  // namespace weavelog::cli
