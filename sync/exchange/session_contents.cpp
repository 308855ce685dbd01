// Session, continued: pictures (content_exchange.h).

#include "sync/exchange/session.h"

namespace weavelog {

void Session::open_contents() {
  if (!open()) return;
  // A reader brings nothing, pictures no more than entries.
  const bool writes = status_.role != Role::reader;
  contents_.open(protocol_ >= kProtocolWithContents, options_.side == Side::guest || writes, options_.side == Side::guest && writes);
}

/// Once all entries are there: the host takes only what an entry names.
void Session::offer_contents() {
  if (options_.side == Side::guest && open() && idle() && short_up_to_ == 0) 
    contents_.offer(options_.ledger->position() + static_cast<std::int64_t>(scope_known_));
}

Session::Frames Session::fetch(const BookId& book, const Digest& hash) {
  return guarded([&] {
    if (options_.side == Side::host) {
      contents_.seek_here(book, hash);
    } else {
      contents_.fetch(book, hash);
    }
  });
}

template <class M>
void Session::pass_contents(const M& message) {
  if (auto taken = contents_.take(message); !taken) close(taken.error());
}

void Session::handle(const ContentWish& wish, ByteView) {
  if (expect(open() && protocol_ >= kProtocolWithContents, "content wish")) pass_contents(wish);
}

void Session::handle(const ContentPart& part, ByteView) {
  if (expect(open() && protocol_ >= kProtocolWithContents, "content part")) pass_contents(part);
}

void Session::handle(const ContentAbsent& absent, ByteView) {
  if (expect(open() && protocol_ >= kProtocolWithContents, "content absent")) pass_contents(absent);
}

void Session::handle(const ContentOffer& offer, ByteView) {
  if (expect(options_.side == Side::host && open() && protocol_ >= kProtocolWithContents, "content offer")) pass_contents(offer);
}

void Session::handle(const ContentSettled& settled, ByteView) {
  if (expect(options_.side == Side::guest && open() && protocol_ >= kProtocolWithContents, "content settled")) pass_contents(settled);
}

}  // namespace weavelog
