#include "sync/cli/host_talk.h"

#include <algorithm>
#include <chrono>

#include "core/base/text.h"
#include "core/desk/photo.h"
#include "core/people/consent.h"
#include "sync/cli/render.h"

namespace weavelog::cli {

bool agreed(const GuestStatus& status) {
  return status.session.state == SessionState::agreed;
}
bool over(const GuestStatus& status) {
  return agreed(status) || status.session.at_odds || status.fault || status.session.fault;
}

Fault why_not(const GuestStatus& status, const Address& address, int seconds) {
  if (status.session.fault) return *status.session.fault;
  if (status.fault) return *status.fault;
  if (status.session.at_odds && status.session.not_kept > 0)
    return {FaultCode::refused,
            std::to_string(status.session.not_kept) + " players' books were given that may not be kept here, by what the players agreed to; they were let go again, everything else crossed",
            address.text(), "ask the players for their consent at the desk, or have the other device updated"};
  if (status.session.at_odds && status.session.not_begun > 0)
    return {FaultCode::refused, not_begun_words(status.session.not_begun) + "; everything else crossed", address.text(),
            "ask the players for their consent at the desk, or let the head of the room bring what is another event's"};
  if (status.session.at_odds)
    return {FaultCode::conflict, "everything crossed that can, but of some books the two devices hold different entries",
            address.text(), "run `weavelog-cli verify` on both; a device that was copied, or a consent withdrawn on one side, does this"};
  return {FaultCode::io, "the two devices were not done within " + std::to_string(seconds) + " seconds",
          address.text(), "try again with more --seconds; what has crossed already stays"};
}

void go_by_consent(Context& context, ExchangeGuestOptions& options) {
  options.may_leave = context.workplace().may_leave();
  options.may_stay = [&context](const BookId& book, BookKind kind, const BookId& room, bool settled) {
    return may_stay(context.ledger(), book, kind, room, settled);
  };
  options.leaves_by = [&context] { return LeaveRule{context.room(), crossing_mark(context.ledger(), context.room())}; };
  options.names_content = [&context](const BookId& book, const Digest& content) { return names_photo(context.ledger(), book, content); };
}

Outcome<KnownHost> choose_host(Context& context, const std::string& wanted) {
  if (wanted.empty()) {
    if (auto host = context.host()) return *host;
    return fail(FaultCode::not_found, "this device was never paired with an event server", "",
                "use `pair` first");
  }
  std::vector<KnownHost> meant;
  for (const KnownHost& host : context.station().devices().hosts())
    if (search_key(host.name) == search_key(wanted) ||
        (wanted.size() >= 6 && to_hex(host.key).starts_with(wanted)))
      meant.push_back(host);
  const std::string where = "host \"" + wanted + "\"";
  if (meant.empty())
    return fail(FaultCode::not_found, "this device does not know such a host", where, "`hosts` lists them");
  if (meant.size() > 1)
    return fail(FaultCode::bad_input, "several hosts are called so", where,
                "give the beginning of its key, as `hosts` lists it");
  return meant.front();
}

Outcome<GuestStatus> talk_with_host(Context& context, const std::string& wanted, int seconds, const std::function<void(ExchangeGuest&)>& talk) {
  const auto host = choose_host(context, wanted);
  if (!host) return fail(host.error());
  ExchangeGuestOptions options = ExchangeGuest::to_return(*host);
  options.keep_trying = false;
  go_by_consent(context, options);
  ExchangeGuest guest(context.station(), std::move(options), {});
  const auto time = std::chrono::seconds(seconds);
  (void)guest.wait(time, over);
  if (!agreed(guest.status())) return fail(why_not(guest.status(), host->address, seconds));
  talk(guest);
  return guest.status();
}

Outcome<> fetch_content(Context& context, const std::string& wanted, int seconds, const BookId& book, const Digest& content) {
  const auto host = choose_host(context, wanted);
  if (!host) return fail(host.error());
  ExchangeGuestOptions options = ExchangeGuest::to_return(*host);
  options.keep_trying = false;
  go_by_consent(context, options);
  ExchangeGuest guest(context.station(), std::move(options), {});
  guest.fetch_content(book, content);
  const auto ended = [&](const ContentFetch& one) { return one.state >= FetchState::here; };
  (void)guest.wait(std::chrono::seconds(seconds), [&](const GuestStatus& status) {
    return status.fault || status.session.fault || std::any_of(status.session.fetches.begin(), status.session.fetches.end(), ended);
  });
  const GuestStatus status = guest.status();
  for (const ContentFetch& one : status.session.fetches) {
    if (one.state == FetchState::here) return {};
    if (one.state == FetchState::failed) return fail(*one.fault);
  }
  if (status.session.fault) return fail(*status.session.fault);
  if (status.fault) return fail(*status.fault);
  return fail(FaultCode::io, "the picture did not come within " + std::to_string(seconds) + " seconds", host->address.text(),
              "try again with more --seconds; it goes on from what has come");
}

}  // namespace weavelog::cli
