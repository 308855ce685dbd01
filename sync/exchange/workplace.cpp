#include "sync/exchange/workplace.h"

#include "core/model/fields.h"
#include "sync/trust/rights.h"

namespace weavelog {
namespace {

std::string event_key(const PublicKey& host) { return "event of host " + to_hex(host); }

}  // namespace

BookId event_of_host(const Ledger& ledger, const PublicKey& host) {
  const auto kept = ledger.remembered(event_key(host));
  return kept ? BookId::from_bytes(*kept).value_or(BookId{}) : BookId{};
}

Outcome<> remember_event_of_host(Ledger& ledger, const PublicKey& host, const BookId& event) {
  if (!event || event_of_host(ledger, host) == event) return {};
  return ledger.remember(event_key(host), event.bytes);
}

Workplace::Workplace(Station& station, std::function<bool(const BookId&, BookKind)> may_leave)
    : station_(station), may_leave_(std::move(may_leave)) {}

void Workplace::set_host(std::optional<PublicKey> host) {
  const std::lock_guard guard(mutex_);
  host_ = host;
}

std::optional<PublicKey> Workplace::host() const {
  const std::lock_guard guard(mutex_);
  return host_;
}

Outcome<Committed> Workplace::commit(const Draft& draft) {
  // The scope first: a crash in between leaves a book ticked that does not exist yet, which does no harm; the other way
  // round a confirmed job would stay on this tablet. Whether it may leave is asked when it is to be sent: this very action may decide it.
  if (const auto to = host()) {
    const auto event = event_of_host(station_.ledger(), *to);
    // The host would refuse it, and everything that this device says after it.
    if (const auto known = station_.devices().host(*to); known && event)
      if (auto allowed = check_right(known->role, event, draft.book(), draft.kind(), draft.action()); !allowed) return fail(allowed.error());
    const auto peer = station_.peers().number_of(*to);
    if (!peer) return fail(peer.error());
    // Another event's money and team are nothing to this host: that book stays with the devices of its own room.
    if ((!event || belongs_to_room(event, draft.book(), draft.kind())) && !station_.peers().in_scope(*peer, draft.book()))
      if (auto widened = station_.peers().widen(*peer, {draft.book()}); !widened) return fail(widened.error());
  }
  return station_.ledger().append(draft);
}

Outcome<> Workplace::tick(const std::vector<BookId>& books) {
  const auto to = host();
  if (!to) return fail(FaultCode::bad_input, "no event server is chosen", "", "pair with the event server first");
  for (const BookId& book : books) {
    const auto held = station_.ledger().book(book);
    if (!held) return fail(FaultCode::not_found, "this device does not hold the book", "book " + book.hex(), "");
    if (!may_leave_(held->id, held->kind))
      return fail(FaultCode::refused, "the player did not agree that this book goes there, or is not known to be at that event", "book " + book.hex(),
                  "find the player in the entry list, or ask and record the answer first");
  }
  const auto peer = station_.peers().number_of(*to);
  if (!peer) return fail(peer.error());
  return station_.peers().widen(*peer, books);
}

bool Workplace::is_ticked(const BookId& book) const {
  const auto to = host();
  if (!to) return false;
  const auto peer = station_.peers().number_of(*to);
  return peer && station_.peers().in_scope(*peer, book);
}

}  // namespace weavelog
